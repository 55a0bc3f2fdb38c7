//! A job that came as a link: what it is, then the person decides whether to take it.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::format;
use crate::app::hooks::go_to;
use crate::app::own;
use crate::app::route::Route;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::Problem;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;

/// The link's data.
#[derive(Properties, PartialEq)]
pub struct OpenJobProps {
    /// Its letters.
    pub letters: AttrValue,
}

/// The screen.
#[component]
pub fn OpenJobScreen(props: &OpenJobProps) -> Html {
    let read = use_memo(props.letters.clone(), |letters| {
        share::from_letters(say!("link"), letters)
    });
    match &*read {
        Ok(job) => html! { <Offer job={job.clone()} /> },
        Err(error) => html! {
            <main class="page page--narrow stack" id="main" tabindex="-1">
                <h1>{ say!("This link holds no job that can be opened") }</h1>
                <ul class="stack">{ for error.problems.iter().map(|problem| html! { <li>{ plainly(problem) }</li> }) }</ul>
                <p><a href={Route::Jobs.href()}>{ say!("To the jobs") }</a></p>
            </main>
        },
    }
}

/// What is wrong first, then where it stands: who opens a link cannot mend it.
fn plainly(problem: &Problem) -> String {
    let words = format::sentence(&problem.remedy);
    match format!("{} {}", problem.path, problem.found).trim() {
        "" => words,
        place => format!("{words} ({place})"),
    }
}

#[derive(Properties, PartialEq)]
struct OfferProps {
    job: JobFile,
}

#[component]
fn Offer(props: &OfferProps) -> Html {
    let told = use_state(String::new);
    let done = use_state_eq(|| false);
    {
        let done = done.setter();
        use_effect_with(share::name_of(&props.job), move |id| {
            let id = id.clone();
            spawn_local(async move { done.set(is_done(&id).await) });
        });
    }
    let keep = |anew: bool, then: fn(String) -> Route| {
        let (job, told) = (props.job.clone(), told.clone());
        Callback::from(move |_: MouseEvent| {
            let (job, told) = (job.clone(), told.clone());
            spawn_local(async move {
                match kept(&job, anew).await {
                    Ok(id) => go_to(&then(id)),
                    Err(error) => told.set(error.to_string()),
                }
            });
        })
    };
    let job = &props.job;
    html! {
        <main class="page page--narrow stack" id="main" tabindex="-1">
            <h1>{ say!("A job for you") }</h1>
            <section class="card stack" aria-labelledby="offered">
                <h2 id="offered" class="card__title">{ worded(&job.title).into_owned() }</h2>
                <p class="job-card__quote">{ worded(&job.customer.complaint).into_owned() }</p>
                <p>{ say!("{who}, {home} · level {level}", who = worded(&job.customer.name), home = worded(&job.customer.home), level = job.level) }</p>
                <p>{ facts(job) }</p>
                <p class="field__hint">{ say!("The link holds the whole job. Nothing was asked of a server.") }</p>
            </section>
            <p class="row">
                if *done {
                    <button type="button" class="button button--main" onclick={keep(false, Route::Debrief)}>{ say!("See the debrief") }</button>
                    <button type="button" class="button" onclick={keep(true, Route::Bench)}>{ say!("Do it again") }</button>
                } else {
                    <button type="button" class="button button--main" onclick={keep(false, Route::Bench)}>{ say!("Start this job") }</button>
                    <button type="button" class="button" onclick={keep(false, |_| Route::Jobs)}>{ say!("Keep it for later") }</button>
                }
            </p>
            <p role="status">{ (*told).clone() }</p>
        </main>
    }
}

/// This job was finished in this browser.
async fn is_done(id: &str) -> bool {
    let text = Store::open().await.get(&SavedJob::key(id)).await;
    let saved = text.ok().flatten().map(|text| SavedJob::read(&text));
    saved.is_some_and(|saved| saved.is_ok_and(|saved| saved.verdict.is_some()))
}

/// Keeps the job; `anew` forgets what was done on it. What it came to stays among the jobs done.
async fn kept(job: &JobFile, anew: bool) -> Result<String, StorageError> {
    let id = own::keep(job, true).await?;
    if anew {
        Store::open().await.remove(&SavedJob::key(&id)).await?;
    }
    Ok(id)
}

/// The machine, and what is to be reached where the job says so.
fn facts(job: &JobFile) -> String {
    let whole = |number: f64| format!("{number:.0}");
    let packed = scenario::job_of(say!("link"), job).ok();
    let minutes = job.rules.minutes.map(whole);
    let marks = job.rules.pass_marks.map(whole);
    let facts = [
        packed.map(|job| worded(&job.machine.name).into_owned()),
        minutes.map(|minutes| say!("at most {minutes} minutes on site", minutes)),
        marks.map(|least| say!("at least {least} of 100 marks", least)),
    ];
    let facts: Vec<String> = facts.into_iter().flatten().collect();
    facts.join(" · ")
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::scenario::job_files;

    #[test]
    fn hostile_text_is_shown_as_text() {
        let text = as_text::<OpenJobScreen>(|| {
            let mut job = job_files().expect("sound")[0].file.clone();
            job.title = "<img src=x onerror=alert(1)>".to_owned();
            OpenJobProps {
                letters: share::to_letters(&job).into(),
            }
        });
        assert!(
            text.contains("&lt;img src=x") && !text.contains("<img"),
            "{text}"
        );
    }

    #[test]
    fn the_machine_and_what_is_to_be_reached_stand_on_the_offer() {
        let mut job = job_files().expect("sound")[0].file.clone();
        (job.rules.minutes, job.rules.pass_marks) = (None, None);
        let machine = facts(&job);
        assert!(!machine.is_empty());
        (job.rules.minutes, job.rules.pass_marks) = (Some(90.0), Some(60.0));
        let all = "at most 90 minutes on site · at least 60 of 100 marks";
        assert_eq!(facts(&job), format!("{machine} · {all}"));
    }

    #[test]
    fn a_link_that_was_cut_says_what_to_do() {
        let text = as_text::<OpenJobScreen>(|| OpenJobProps {
            letters: "1AbC".into(),
        });
        assert!(text.contains("copy the whole address"), "{text}");
    }
}
