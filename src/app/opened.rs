//! Jobs opened from files and links, on the list of jobs: what came in, what was wrong with what
//! did not, and a way to forget.

use std::sync::Arc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::file_kind::taken;
use crate::app::forgotten::use_forgotten;
use crate::app::kept_sets;
use crate::app::open_files::OpenFiles;
use crate::app::own;
use crate::app::route::Route;
use crate::app::told_files::Told;
use crate::app::told_files::ToldFiles;
use crate::bench::scenario::Scenario;
use crate::language::worded;
use crate::say;
use crate::scenario;
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
    let told = use_state(Told::default);
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
    let forgotten = use_forgotten("forgotten-jobs", &refresh);
    let forget = |job: &Scenario| {
        let (forgotten, title) = (forgotten.clone(), worded(&job.title).into_owned());
        let id = job.id.clone();
        Callback::from(move |_: MouseEvent| forgotten.forget(title.clone(), own::keys(&id)))
    };
    html! {
        <section class="opened stack" aria-labelledby="opened">
            <h2 id="opened">{ say!("From your instructor") }</h2>
            <OpenFiles {on_files} what={say!("Jobs and training sets that were given to you")} />
            <p><a href={Route::Assessment(None).href()}>{ say!("Sit an assessment") }</a></p>
            <ToldFiles told={(*told).clone()} />
            { forgotten.rows() }
            if !jobs.is_empty() {
                <ul class="opened__list">
                    { for jobs.iter().map(|job| html! {
                        <li class="opened__job" key={job.id.clone()}>
                            <a href={Route::Bench(job.id.clone()).href()}>{ worded(&job.title).into_owned() }</a>
                            <span class="opened__who">{ format!("{} · {}", worded(&job.customer.name), worded(&job.machine.name)) }</span>
                            <button type="button" class="button button--small" onclick={forget(job)}
                                    aria-label={say!("Forget “{title}”", title = worded(&job.title))}>{ say!("Forget") }</button>
                        </li>
                    }) }
                </ul>
            }
        </section>
    }
}

/// Keeps what is sound; every file is answered for.
async fn take(files: Vec<OpenedFile>) -> Told {
    let mut told = Told::default();
    for file in files {
        match taken(&file, &[Kind::Job, Kind::Copy, Kind::Set]) {
            Err(untaken) => told.not_taken(untaken),
            Ok((Kind::Set, text)) => take_set(&file.name, text, &mut told).await,
            Ok((_, text)) => take_job(&file.name, text, &mut told).await,
        }
    }
    told
}

async fn take_job(name: &str, text: &str, told: &mut Told) {
    match share::read_shared(name, text) {
        Err(error) => told.not_sound(&error),
        Ok(job) => match own::keep(&job, true).await {
            Ok(_) => told.opened.push(say!(
                "{name}: “{title}” is on the list.",
                name,
                title = worded(&job.title)
            )),
            Err(error) => told.wrong.push(format!("{name}: {error}")),
        },
    }
}

/// Keeps a training set with the jobs in it.
async fn take_set(name: &str, text: &str, told: &mut Told) {
    match scenario::set_from_text(name, text) {
        Err(error) => told.not_sound(&error),
        Ok(set) => match kept_sets::keep(&set).await {
            Ok(()) => told.opened.push(say!(
                "{name}: the training set “{title}” with {n} jobs is at the top of this page.",
                name,
                title = worded(&set.title),
                n = set.jobs.len()
            )),
            Err(error) => told.wrong.push(format!("{name}: {error}")),
        },
    }
}
