//! One's own page: skills, what comes next, safety, jobs done, and all data. It stays in this browser.

use std::collections::BTreeMap;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::file_kind::OpenedFile;
use crate::app::format;
use crate::app::hand_over;
use crate::app::job_tile;
use crate::app::library;
use crate::app::me::everything;
use crate::app::me::history;
use crate::app::me::next;
use crate::app::me::next::Advice;
use crate::app::me::skills::Skills;
use crate::app::me::sure::Sure;
use crate::app::open_files::OpenFiles;
use crate::app::phrase::HOLES;
use crate::app::phrase::phrase;
use crate::app::route::Route;
use crate::app::store::SavedJob;
use crate::app::store::Store;
use crate::assess::assessment_file::RefreshFile;
use crate::assess::calendar;
use crate::assess::refresher::Due;
use crate::bench::safety;
use crate::language::said;
use crate::language::worded;
use crate::records::practice;
use crate::records::practice::Practice;
use crate::records::practice::Standing;
use crate::say;
use crate::text;

const MS_PER_DAY: f64 = 86_400_000.0;
/// Largest file of everything, bytes: some thousand jobs.
const MOST_BYTES: f64 = 100_000_000.0;

/// What the page shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MeModel {
    /// Finished jobs, newest first; with each whether its debrief can still be opened.
    pub jobs: Vec<(Practice, bool)>,
    /// Skills, least known first.
    pub standings: Vec<Standing>,
    /// What to do next.
    pub next: Vec<Advice>,
}

/// The screen: reads what is kept, then shows it.
#[component]
pub fn MeScreen() -> Html {
    let model = use_state(|| None::<MeModel>);
    let refresh = {
        let model = model.clone();
        Callback::from(move |()| {
            let model = model.clone();
            spawn_local(async move { model.set(Some(read().await)) });
        })
    };
    {
        let refresh = refresh.clone();
        use_effect_with((), move |()| refresh.emit(()));
    }
    html! {
        <main class="page me" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Me") }</h1>
                <p class="page__lead">{ say!("What your finished jobs show. All of it is kept in this browser only; nobody else sees it.") }</p>
            </header>
            if let Some(model) = &*model {
                <Known model={model.clone()} />
            }
            <Everything on_changed={refresh} />
        </main>
    }
}

async fn read() -> MeModel {
    // What cannot be read is not there; the section of data says where things are kept.
    let mut done = history::all().await.unwrap_or_default();
    let texts = Store::open().await.all("job/").await.unwrap_or_default();
    let saved: Vec<SavedJob> = texts
        .iter()
        .filter_map(|(_, text)| SavedJob::read(text).ok())
        .collect();
    let tiles = job_tile::tiles(&library::all(), &saved);
    let standings = practice::standings(&done, today(), &RefreshFile::default());
    let next = next::next(&standings, &tiles, today());
    done.reverse();
    let is_kept = |one: &Practice| {
        saved
            .iter()
            .any(|s| s.scenario == one.job && s.seed == one.seed && s.verdict.is_some())
    };
    MeModel {
        jobs: done
            .into_iter()
            .map(|one| (one.clone(), is_kept(&one)))
            .collect(),
        standings,
        next,
    }
}

fn today() -> f64 {
    js_sys::Date::now() / MS_PER_DAY
}

/// What is known.
#[derive(Properties, PartialEq)]
pub struct KnownProps {
    /// What the page shows.
    pub model: MeModel,
}

/// Skills, advice, safety, jobs.
#[component]
pub fn Known(props: &KnownProps) -> Html {
    let model = &props.model;
    if model.jobs.is_empty() {
        return html! {
            <section class="card me__empty">
                <p>{ say!("Nothing yet. When a job is finished, this page shows what it told of your skills.") }</p>
                <p><a class="button button--main" href={Route::Jobs.href()}>{ say!("To the jobs") }</a></p>
            </section>
        };
    }
    html! {
        <>
            <section aria-labelledby="next">
                <h2 id="next">{ say!("Next" as "what to do next") }</h2>
                { advice(&model.next) }
            </section>
            <section aria-labelledby="skills">
                <h2 id="skills">{ say!("Skills") }</h2>
                <Skills standings={model.standings.clone()} />
                <p class="me__note">{ say!("A skill counts as known from a chance of 95 %, the line in each bar. The paler band says how far the chance could be off; it narrows with every job.") }</p>
                <Reminders due={model.standings.iter().map(|s| s.due.clone()).collect::<Vec<_>>()} />
            </section>
            <section aria-labelledby="safety">
                <h2 id="safety">{ say!("Safety") }</h2>
                { broken(&model.jobs) }
            </section>
            <section aria-labelledby="done">
                <h2 id="done">{ say!("Jobs done") }</h2>
                { done(&model.jobs) }
            </section>
        </>
    }
}

fn advice(list: &[Advice]) -> Html {
    if list.is_empty() {
        return html! { <p>{ say!("Every skill you have shown is known and none is due. Any job you like.") }</p> };
    }
    html! {
        <ol class="me__next">{ for list.iter().map(|one| html! {
            <li>{ reason(one) }{ " " }
                if let Some((id, title)) = &one.job {
                    <a href={Route::Bench(id.clone()).href()}>{ worded(title).into_owned() }</a>
                }
            </li>
        }) }</ol>
    }
}

/// Such as `Belt: it is due in 3 days.`
fn reason(one: &Advice) -> Html {
    let skill = format::sentence(&worded(&one.skill));
    phrase(
        &say!("{skill}: {why}.", skill = HOLES[0], why = one.why),
        &[html! { <b>{ skill }</b> }],
    )
}

/// How often each rule was broken, the worst first.
fn broken(jobs: &[(Practice, bool)]) -> Html {
    let mut counts: BTreeMap<(u8, &str), (usize, f64)> = BTreeMap::new();
    for (job, _) in jobs {
        for one in &job.result.safety {
            let worst_first = match one.severity.as_str() {
                "critical" => 0,
                "major" => 1,
                _ => 2,
            };
            let count = counts.entry((worst_first, &one.rule)).or_default();
            count.0 += 1;
            count.1 = count.1.max(job.day());
        }
    }
    if counts.is_empty() {
        let none = match jobs.len() {
            n @ 1 => say!("No rule broken in {n} job.", n),
            n => say!("No rule broken in {n} jobs.", n),
        };
        return html! { <p>{ none }</p> };
    }
    let severity = |order: u8| {
        [text!("critical"), text!("major"), text!("minor")]
            .get(usize::from(order))
            .map_or("", |word| said(word))
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Safety rules, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Rule" as "of safety") }</th><th scope="col">{ say!("How grave") }</th><th scope="col" class="numbers">{ say!("Times" as "how often") }</th><th scope="col" class="numbers">{ say!("Last" as "the latest day") }</th></tr></thead>
                <tbody>{ for counts.iter().map(|((order, id), (n, day))| html! {
                    <tr key={(*id).to_owned()}>
                        <th scope="row">{ safety::rule(id).map_or(*id, |rule| said(rule.title)) }</th>
                        <td>{ severity(*order) }</td>
                        <td class="numbers">{ n }</td>
                        <td class="numbers">{ format::date(*day) }</td>
                    </tr>
                }) }</tbody>
            </table>
        </div>
    }
}

fn done(jobs: &[(Practice, bool)]) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Jobs done, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Day") }</th><th scope="col">{ say!("Job") }</th><th scope="col" class="numbers">{ say!("Marks") }</th><th scope="col" class="numbers">{ say!("Cost") }</th><th scope="col" class="numbers">{ say!("On site") }</th></tr></thead>
                <tbody>{ for jobs.iter().map(|(job, is_kept)| html! {
                    <tr>
                        <td class="numbers">{ format::date(job.day()) }</td>
                        <th scope="row">
                            if *is_kept { <a href={Route::Debrief(job.job.clone()).href()}>{ worded(&job.title).into_owned() }</a> } else { { worded(&job.title).into_owned() } }
                        </th>
                        <td class="numbers">{ format!("{:.0}", job.result.total) }</td>
                        <td class="numbers">{ format::money(job.result.cost) }</td>
                        <td class="numbers">{ say!("{n} min", n = format!("{:.0}", job.result.minutes)) }</td>
                    </tr>
                }) }</tbody>
            </table>
        </div>
    }
}

#[derive(Properties, PartialEq)]
struct RemindersProps {
    due: Vec<Due>,
}

/// The days on which skills are due, as a file for any calendar.
#[component]
fn Reminders(props: &RemindersProps) -> Html {
    let told = use_state(|| "");
    let onclick = {
        let (told, due) = (told.clone(), props.due.clone());
        Callback::from(move |_: MouseEvent| {
            let now_s = (js_sys::Date::now() / 1000.0) as u64;
            let text = calendar::calendar(&due, now_s, "me");
            told.set(
                match hand_over::save("refreshers.ics", "text/calendar", &text) {
                    Ok(()) => say!("Saved. Open the file with your calendar."),
                    Err(_) => say!("The browser did not let the page save a file."),
                },
            );
        })
    };
    html! {
        <p class="row no-print"><button type="button" class="button" {onclick}>{ say!("Save these days for my calendar") }</button><span role="status">{ *told }</span></p>
    }
}

#[derive(Properties, PartialEq)]
struct EverythingProps {
    on_changed: Callback<()>,
}

/// All data: out as one file, in from one, gone.
#[component]
fn Everything(props: &EverythingProps) -> Html {
    let told = use_state(Vec::<String>::new);
    let say = {
        let told = told.clone();
        Callback::from(move |lines: Vec<String>| told.set(lines))
    };
    let save = {
        let say = say.clone();
        Callback::from(move |_: MouseEvent| {
            let say = say.clone();
            spawn_local(async move { say.emit(vec![saved().await]) });
        })
    };
    let on_files = {
        let (say, on_changed) = (say.clone(), props.on_changed.clone());
        Callback::from(move |files: Vec<OpenedFile>| {
            let (say, on_changed) = (say.clone(), on_changed.clone());
            spawn_local(async move {
                let mut lines = Vec::new();
                for file in files {
                    match file.text {
                        Ok(text) => lines.extend(everything::bring(&file.name, &text).await),
                        Err(why) => lines.push(say!("{file}: {why}", file = file.name, why)),
                    }
                }
                say.emit(lines);
                on_changed.emit(());
            });
        })
    };
    let erase = {
        let on_changed = props.on_changed.clone();
        Callback::from(move |()| {
            let (say, on_changed) = (say.clone(), on_changed.clone());
            spawn_local(async move {
                let said = match everything::erase().await {
                    Ok(()) => say!("Everything is erased."),
                    Err(_) => say!("The browser did not let the page erase everything."),
                };
                say.emit(vec![said.to_owned()]);
                on_changed.emit(());
            });
        })
    };
    html! {
        <section class="me__data stack no-print" aria-labelledby="everything">
            <h2 id="everything">{ say!("Everything of yours") }</h2>
            <p>{ say!("Jobs, drafts, marks and settings in one file: to take to another device, or to keep.") }</p>
            <p class="row">
                <button type="button" class="button" onclick={save}>{ say!("Save everything") }</button>
                <Sure ask={say!("Erase everything")} yes={say!("Yes, erase everything")} on_yes={erase} />
            </p>
            <OpenFiles {on_files} what={say!("Files that “Save everything” made")} most_bytes={MOST_BYTES} />
            <div role="status"><ul class="opened__told">{ for told.iter().map(|line| html! { <li>{ line }</li> }) }</ul></div>
        </section>
    }
}

async fn saved() -> String {
    let Ok(text) = everything::gather().await else {
        return say!("The browser did not give what it keeps.").to_owned();
    };
    match hand_over::save("tubwright_everything.json", "application/json", &text) {
        Ok(()) => say!("Saved. Keep the file where only you can open it.").to_owned(),
        Err(_) => say!("The browser did not let the page save a file.").to_owned(),
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn without_a_finished_job_the_page_leads_to_the_jobs() {
        let text = as_text::<Known>(|| KnownProps {
            model: MeModel::default(),
        });
        assert!(
            text.contains("Nothing yet") && text.contains("href=\"#/jobs\""),
            "{text}"
        );
    }
}
