//! One assessment being made: form at the left; at the side what is wrong, how reliable so many jobs
//! are, and giving it out.

use serde_json::Value;
use serde_json::json;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::assessments::given::free_name;
use crate::app::assessments::room_codes::RoomCodes;
use crate::app::assessments::rules::Rules;
use crate::app::assessments::slips::Slips;
use crate::app::assessments::slots::Slots;
use crate::app::assessments::table;
use crate::app::assessments::table::row;
use crate::app::desk::checks::check_lines;
use crate::app::desk::state::Edit;
use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::file_kind::taken;
use crate::app::forgotten::use_forgotten;
use crate::app::net;
use crate::app::open_files::OpenFiles;
use crate::app::route::Route;
use crate::app::sitting;
use crate::app::store::Store;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::language::decimals;
use crate::say;
use crate::scenario::Problem;

/// The screen: those that are kept, and the one that is worked on.
#[component]
pub fn MakeScreen() -> Html {
    let kept = use_state(Vec::<Given>::new);
    let now = use_state(|| None::<Given>);
    let told = use_state(Vec::<String>::new);
    let wanted = use_mut_ref(named_in_address);
    let refresh = {
        let (now, kept) = (now.setter(), kept.setter());
        Callback::from(move |()| {
            let (now, kept, wanted) = (now.clone(), kept.clone(), wanted.take());
            spawn_local(async move {
                let mut all = Given::all().await;
                if let Some(at) = all.iter().position(|given| given.file.id == wanted) {
                    now.set(Some(all.remove(at)));
                }
                kept.set(all);
            });
        })
    };
    let id = now.as_ref().map(|given| given.file.id.clone());
    use_effect_with(id.unwrap_or_default(), |id| name_in_address(id));
    {
        let refresh = refresh.clone();
        use_effect_with(now.is_none(), move |is_list| {
            if *is_list {
                refresh.emit(());
            }
        });
    }
    let forgotten = use_forgotten("forgotten-assessments", &refresh);
    // One to work on, or back to the list; while one is worked on, `kept` are the others.
    let open = {
        let (now, kept, told) = (now.clone(), kept.clone(), told.clone());
        Callback::from(move |given: Option<Given>| {
            if let Some(given) = &given {
                let others = kept.iter().filter(|one| one.file.id != given.file.id);
                kept.set(others.cloned().collect());
            }
            told.set(Vec::new());
            now.set(given);
        })
    };
    let fresh = {
        let (open, kept, told) = (open.clone(), kept.clone(), told.clone());
        Callback::from(move |file: Option<AssessmentFile>| match net::random() {
            Some(key) => {
                let mut given = match file {
                    Some(file) => Given::of(key, file),
                    None => Given::new(key),
                };
                let is_taken = |id: &str| kept.iter().any(|one| one.file.id == id);
                given.file.id = free_name(&given.file.id, is_taken);
                open.emit(Some(given));
            }
            None => told.set(vec![
                say!(
                    "This browser gives no random numbers, so it can make no key: use another one."
                )
                .to_owned(),
            ]),
        })
    };
    let on_files = {
        let (fresh, told) = (fresh.clone(), told.clone());
        Callback::from(move |files: Vec<OpenedFile>| {
            let (mut lines, mut is_taken) = (Vec::new(), false);
            for file in files {
                match taken(&file, &[Kind::Assessment]) {
                    Err(untaken) => lines.push(untaken.words()),
                    Ok(_) if is_taken => lines.push(say!(
                        "{file} is an assessment, too: one is worked on at a time.",
                        file = file.name
                    )),
                    Ok((_, text)) => match sitting::assessment(&file.name, text) {
                        Ok(read) => {
                            is_taken = true;
                            fresh.emit(Some(read.file));
                        }
                        Err(error) => lines.extend(error.problems.iter().map(Problem::to_string)),
                    },
                }
            }
            told.set(lines);
        })
    };
    let change = {
        let (now, kept, told) = (now.clone(), kept.clone(), told.clone());
        Callback::from(move |next: Given| {
            let Some(before) = (*now).clone() else {
                return;
            };
            let next = next.changed(&before, &kept);
            now.set(Some(next.clone()));
            let mut earlier = None;
            if next.file.id != before.file.id {
                if before.given_out {
                    kept.set(kept.iter().cloned().chain([before]).collect());
                    let words = say!(
                        "What was given out stays on the list as it was. This is a new one: give out its own file, link and slips."
                    );
                    told.set(vec![words.to_owned()]);
                } else {
                    earlier = Some(before.stored_at());
                }
            }
            if next.file.id.is_empty() || next.file.title.trim().is_empty() {
                return;
            }
            let told = told.clone();
            spawn_local(async move {
                if let Err(error) = next.keep().await {
                    told.set(vec![error.to_string()]);
                } else if let Some(key) = earlier {
                    // Where it cannot be removed, the list has it under both names.
                    let _ = Store::open().await.remove(&key).await;
                }
            });
        })
    };
    let say = html! { <div role="status"><ul class="opened__told">{ for told.iter().map(|line| html! { <li>{ line }</li> }) }</ul></div> };
    if let Some(given) = &*now {
        return html! {
            <main class="page desk desk--even" id="main" tabindex="-1">
                <header class="desk__bar no-print"><h1>{ say!("Make an assessment") }</h1>{ say }
                    <button type="button" class="button button--quiet" onclick={open.reform(|_: MouseEvent| None)}>{ say!("All assessments") }</button></header>
                <Editor given={given.clone()} on_change={change} />
            </main>
        };
    }
    html! {
        <main class="page stack" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Make an assessment") }</h1>
                <p class="page__lead">{ say!("Say which skills at which level, how many jobs, and what passes. Each candidate then gets jobs of their own, equally hard, and a result that can be checked.") }</p>
            </header>
            <p class="row">
                <button type="button" class="button button--main" onclick={fresh.reform(|_: MouseEvent| None)}>{ say!("Make a new one") }</button>
                <a class="button" href={Route::Cohort.href()}>{ say!("Review results") }</a>
                <a class="button" href={Route::Observer.href()}>{ say!("Observer’s sheet") }</a>
            </p>
            <OpenFiles {on_files} what={say!("Files of assessments to work on")} />
            { say }
            <section class="stack" aria-labelledby="kept">
                <h2 id="kept">{ say!("Made here") }</h2>
                { forgotten.rows() }
                if kept.is_empty() { <p>{ say!("None yet.") }</p> }
                <ul class="opened__list">{ for kept.iter().map(|given| {
                    let (chosen, title) = (given.clone(), given.file.title.clone());
                    let onclick = open.reform(move |_: MouseEvent| Some(chosen.clone()));
                    let forget = {
                        let (forgotten, key, title) = (forgotten.clone(), given.stored_at(), title.clone());
                        Callback::from(move |_: MouseEvent| forgotten.forget(title.clone(), vec![key.clone()]))
                    };
                    html! { <li class="opened__job" key={given.file.id.clone()}><button type="button" class="desk__go" {onclick}>{ &title }</button>
                        <span class="opened__who">{ &given.file.id }{ " · " }{ say!("{n} candidates", n = given.candidates.lines().count()) }
                            if given.given_out { { " · " }{ say!("given out") } }</span>
                        <button type="button" class="button button--small" onclick={forget} aria-label={say!("Forget “{title}”", title)}>{ say!("Forget") }</button></li> }
                }) }</ul>
            </section>
        </main>
    }
}

/// Before the name in the address: a page that is loaded again comes back to what was worked on.
const NAMED: char = '?';

fn named_in_address() -> String {
    let hash = gloo::utils::window().location().hash();
    let hash = hash.unwrap_or_default();
    let name = hash.split_once(NAMED).map(|(_, name)| name.to_owned());
    name.unwrap_or_default()
}

fn name_in_address(id: &str) {
    let list = Route::MakeAssessment.href();
    let address = match id {
        "" => list,
        id => format!("{list}{NAMED}{id}"),
    };
    // In place of the one before, so that “back” still leaves the screen; it cannot be refused.
    let _ = gloo::utils::window().location().replace(&address);
}

#[derive(Properties, PartialEq)]
struct EditorProps {
    given: Given,
    on_change: Callback<Given>,
}

/// The form and its side.
#[component]
fn Editor(props: &EditorProps) -> Html {
    let given = &props.given;
    let with = |change: fn(&mut Given, String)| {
        let (given, on_change) = (given.clone(), props.on_change.clone());
        Callback::from(move |to: String| {
            let mut next = given.clone();
            change(&mut next, to);
            on_change.emit(next);
        })
    };
    let title = with(|given, to| given.file.title = to);
    let on_title = Callback::from(move |edit: Edit| {
        if let Edit::Set(_, Value::String(to)) = edit {
            title.emit(to);
        }
    });
    let to_file = {
        let (given, on_change) = (given.clone(), props.on_change.clone());
        Callback::from(move |file: AssessmentFile| {
            on_change.emit(Given {
                file,
                ..given.clone()
            })
        })
    };
    let on_slots = {
        let (file, to_file) = (given.file.clone(), to_file.clone());
        Callback::from(move |jobs| {
            to_file.emit(AssessmentFile {
                jobs,
                ..file.clone()
            })
        })
    };
    let on_pauses = {
        let (given, on_change) = (given.clone(), props.on_change.clone());
        Callback::from(move |pauses: bool| on_change.emit(given.clone().with_pauses(pauses)))
    };
    let on_given = {
        let (given, on_change) = (given.clone(), props.on_change.clone());
        Callback::from(move |()| {
            on_change.emit(Given {
                given_out: true,
                ..given.clone()
            })
        })
    };
    let told = table::told(&given.file);
    html! {
        <>
            <div class="desk__form no-print">
                { row("title", json!(given.file.title), &told, on_title) }
                <Slots slots={given.file.jobs.clone()} on_change={on_slots} />
                <Rules file={given.file.clone()} told={told.clone()} on_change={to_file} />
                <RoomCodes given={given.clone()} on_change={on_pauses} />
            </div>
            <div class="desk__live">
                <div class="no-print" role="status">
                    if given.given_out {
                        <p class="notice">{ say!("This has been given out, and its results stand on it as it is. A change here makes a new one, with slips of its own; this one stays on the list, and its results still count.") }</p>
                    }
                </div>
                <section class="no-print" aria-labelledby="sure"><h2 id="sure">{ say!("How sure its decisions are") }</h2>
                    <p role="status">{ sureness(given.file.n_jobs()) }</p>
                </section>
                if told.is_empty() {
                    <Slips given={given.clone()} {on_given} on_candidates={with(|given, to| given.candidates = to)} />
                } else {
                    <section class="notice" aria-label={say!("Still to do")}><p class="notice__title">{ say!("Still to do") }</p><ul class="fairness desk__list">{ check_lines(&told) }</ul></section>
                }
            </div>
        </>
    }
}

/// How reliable so many jobs are at least, and whether that will do.
fn sureness(n: usize) -> String {
    let ratio = decide::least_reliability(n);
    let least = decimals(format!("{ratio:.2}"));
    if ratio >= 0.8 {
        say!(
            "{n} jobs: reliability at least {least} of 1. Enough for a decision about one person.",
            n,
            least
        )
    } else {
        say!(
            "{n} jobs: reliability at least {least} of 1. For a decision about one person alone 0.8 is asked: add jobs, or take several sittings and the practical together.",
            n,
            least
        )
    }
}
