//! A job that came as a link: what it is, then the person decides whether to take it.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::hooks::go_to;
use crate::app::own;
use crate::app::route::Route;
use crate::language::worded;
use crate::say;
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
        Ok(job) => html! { <Offer job={job.clone()} letters={props.letters.len()} /> },
        Err(error) => html! {
            <main class="page page--narrow stack" id="main" tabindex="-1">
                <h1>{ say!("This link holds no job that can be opened") }</h1>
                <ul class="stack">{ for error.problems.iter().map(|problem| html! { <li>{ problem.to_string() }</li> }) }</ul>
                <p><a href={Route::Jobs.href()}>{ say!("To the jobs") }</a></p>
            </main>
        },
    }
}

#[derive(Properties, PartialEq)]
struct OfferProps {
    job: JobFile,
    letters: usize,
}

#[component]
fn Offer(props: &OfferProps) -> Html {
    let told = use_state(String::new);
    let keep = |then: fn(String) -> Route| {
        let (job, told) = (props.job.clone(), told.clone());
        Callback::from(move |_: MouseEvent| {
            let (job, told) = (job.clone(), told.clone());
            spawn_local(async move {
                match own::keep(&job, true).await {
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
                <p class="field__hint">{ say!("The link holds the whole job, {n} characters. Nothing was asked of a server.", n = props.letters) }</p>
            </section>
            <p class="row">
                <button type="button" class="button button--main" onclick={keep(Route::Bench)}>{ say!("Start this job") }</button>
                <button type="button" class="button" onclick={keep(|_| Route::Jobs)}>{ say!("Keep it for later") }</button>
            </p>
            <p role="status">{ (*told).clone() }</p>
        </main>
    }
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
    fn a_link_that_was_cut_says_what_to_do() {
        let text = as_text::<OpenJobScreen>(|| OpenJobProps {
            letters: "1AbC".into(),
        });
        assert!(text.contains("copy the whole address"), "{text}");
    }
}
