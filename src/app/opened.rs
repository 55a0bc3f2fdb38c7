//! Jobs opened from files and links, on the list of jobs: what came in, what was wrong with what
//! did not, and a way to forget.

use std::sync::Arc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::kept_sets;
use crate::app::open_files::OpenFiles;
use crate::app::open_files::OpenedFile;
use crate::app::own;
use crate::app::route::Route;
use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::Problem;
use crate::scenario::share;

/// Who hears of changes.
#[derive(Properties, PartialEq)]
pub struct OpenedJobsProps {
    /// Something was opened.
    #[prop_or_default]
    pub on_change: Callback<()>,
}

/// The section.
#[component]
pub fn OpenedJobs(props: &OpenedJobsProps) -> Html {
    let jobs = use_state(Vec::<Arc<Scenario>>::new);
    let told = use_state(Vec::<String>::new);
    let refresh = {
        let jobs = jobs.clone();
        Callback::from(move |()| {
            let jobs = jobs.clone();
            spawn_local(async move { jobs.set(own::listed().await) });
        })
    };
    {
        let refresh = refresh.clone();
        use_effect_with((), move |()| refresh.emit(()));
    }
    let on_files = {
        let (told, refresh) = (told.clone(), refresh.clone());
        let on_change = props.on_change.clone();
        Callback::from(move |files: Vec<OpenedFile>| {
            let (told, refresh) = (told.clone(), refresh.clone());
            let on_change = on_change.clone();
            spawn_local(async move {
                told.set(take(files).await);
                refresh.emit(());
                on_change.emit(());
            });
        })
    };
    let forget = |id: String| {
        let refresh = refresh.clone();
        Callback::from(move |_: MouseEvent| {
            let (id, refresh) = (id.clone(), refresh.clone());
            spawn_local(async move {
                // What cannot be forgotten stays on the list, which says it.
                let _ = own::forget(&id).await;
                refresh.emit(());
            });
        })
    };
    html! {
        <section class="opened stack" aria-labelledby="opened">
            <h2 id="opened">{ "From your instructor" }</h2>
            <OpenFiles {on_files} what="Jobs and training sets that were given to you" />
            <p><a href={Route::Assessment(None).href()}>{ "Sit an assessment" }</a></p>
            <div role="status"><ul class="opened__told">{ for told.iter().map(|line| html! { <li>{ line }</li> }) }</ul></div>
            if !jobs.is_empty() {
                <ul class="opened__list">
                    { for jobs.iter().map(|job| html! {
                        <li class="opened__job" key={job.id.clone()}>
                            <a href={Route::Bench(job.id.clone()).href()}>{ &job.title }</a>
                            <span class="opened__who">{ format!("{} · {}", job.customer.name, job.machine.name) }</span>
                            <button type="button" class="button button--small" onclick={forget(job.id.clone())}
                                    aria-label={format!("Forget “{}”", job.title)}>{ "Forget" }</button>
                        </li>
                    }) }
                </ul>
            }
        </section>
    }
}

/// Keeps what is sound; says one line for each file.
async fn take(files: Vec<OpenedFile>) -> Vec<String> {
    if files.is_empty() {
        return vec!["There is no job among these files: jobs end in .json.".to_owned()];
    }
    let mut told = Vec::new();
    for file in files {
        if let Ok(text) = &file.text
            && share::is_set(text)
        {
            told.extend(take_set(&file.name, text).await);
            continue;
        }
        let read = file
            .text
            .map_err(|why| vec![format!("{}: {why}", file.name)])
            .and_then(|text| {
                share::read_shared(&file.name, &text)
                    .map_err(|error| error.problems.iter().map(Problem::to_string).collect())
            });
        match read {
            Err(problems) => told.extend(problems),
            Ok(job) => match own::keep(&job, true).await {
                Ok(_) => told.push(format!("{}: “{}” is on the list.", file.name, job.title)),
                Err(error) => told.push(format!("{}: {error}", file.name)),
            },
        }
    }
    told
}

/// Keeps a training set with the jobs in it.
async fn take_set(name: &str, text: &str) -> Vec<String> {
    match scenario::set_from_text(name, text) {
        Err(error) => error.problems.iter().map(Problem::to_string).collect(),
        Ok(set) => vec![match kept_sets::keep(&set).await {
            Ok(()) => format!(
                "{name}: the training set “{}” with {} jobs is at the top of this page.",
                set.title,
                set.jobs.len()
            ),
            Err(error) => format!("{name}: {error}"),
        }],
    }
}
