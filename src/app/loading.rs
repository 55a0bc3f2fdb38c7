//! Opening a job: the saved log is replayed, or a fresh job begins.

use crate::app::bench::contexts::Door;
use crate::app::route::Route;
use crate::app::view::Order;
use thiserror::Error;
use yew::prelude::*;

use crate::app::crash;
use crate::app::library;
use crate::app::own;
use crate::app::session::Session;
use crate::app::sitting;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::job::Job;
use crate::machine::MachineError;
use crate::say;

/// A job ready to be worked on.
pub struct Loaded {
    /// The session.
    pub session: Session,
    /// How it is kept.
    pub saved: SavedJob,
    /// What to say when nothing outlives the page.
    pub warning: Option<&'static str>,
}

/// Why a job cannot be opened.
#[derive(Debug, Error)]
pub enum LoadError {
    /// No job of this name ships or was opened here.
    #[error("{}", say!("There is no job named “{id}”.", id = .0))]
    NoSuchJob(String),
    /// What was kept cannot be read.
    #[error("{0}")]
    Storage(StorageError),
    /// It was written by another version, which alone can replay it exactly.
    #[error(
        "{}",
        say!("This job was begun with version {version} of the program and cannot be continued by this one.", version = .0)
    )]
    OtherEngine(String),
    /// The machine cannot be set up.
    #[error("{}", say!("The machine of this job cannot be set up: {why}", why = .0))]
    Machine(MachineError),
}

impl LoadError {
    /// Starting from the bell would help.
    pub fn can_start_again(&self) -> bool {
        matches!(self, Self::Storage(_) | Self::OtherEngine(_))
    }
}

/// Opens a job by the name of its scenario.
///
/// # Errors
/// When there is no such job, or its log cannot be replayed.
pub async fn load(id: &str) -> Result<Loaded, LoadError> {
    let drawn = sitting::find(id);
    let scenario = match drawn
        .as_ref()
        .map(|drawn| drawn.0.clone())
        .or_else(|| library::find(id))
    {
        Some(ships) => ships,
        None => own::find(id)
            .await
            .map_err(LoadError::Storage)?
            .ok_or_else(|| LoadError::NoSuchJob(id.to_owned()))?,
    };
    let seed = drawn.map_or_else(fresh_seed, |drawn| drawn.1);
    let store = Store::open().await;
    let kept = store
        .get(&SavedJob::key(id))
        .await
        .map_err(LoadError::Storage)?;
    let mut saved = match kept {
        Some(text) => SavedJob::read(&text).map_err(LoadError::Storage)?,
        None => SavedJob::fresh(id, seed),
    };
    if !saved.is_of_this_engine() {
        return Err(LoadError::OtherEngine(saved.engine));
    }
    forgive(&mut saved);
    let (job, _) = Job::replay(scenario, saved.seed, &saved.log).map_err(LoadError::Machine)?;
    let mut session = Session::new(job, saved.seen, saved.suspects.clone());
    session.is_exam = sitting::is_sitting(id);
    let warning = matches!(store, Store::Memory(_)).then(|| store.words());
    Ok(Loaded {
        session,
        saved,
        warning,
    })
}

/// Opens a job from the bell, whatever was done before.
///
/// # Errors
/// When there is no such job.
pub async fn afresh(id: &str) -> Result<Loaded, LoadError> {
    // A job that cannot be removed is overwritten by the first act.
    let _ = Store::open().await.remove(&SavedJob::key(id)).await;
    load(id).await
}

/// Keeps a job and opens it as it stands then.
///
/// # Errors
/// When it cannot be kept or replayed.
pub async fn reopen(saved: &SavedJob) -> Result<Loaded, LoadError> {
    let (key, text) = (SavedJob::key(&saved.scenario), saved.write());
    let kept = Store::open()
        .await
        .put(&key, &text.map_err(LoadError::Storage)?)
        .await;
    kept.map_err(LoadError::Storage)?;
    load(&saved.scenario).await
}

/// After the program has failed once, nothing is watched again; after it failed twice, the last
/// act is left out.
fn forgive(saved: &mut SavedJob) {
    let failures = crash::count();
    if failures >= 1 {
        saved.seen = 0;
    }
    if failures >= 2 {
        saved.log.pop();
    }
}

/// A job of one's own: any number will do, kept small enough for any reader of JSON.
fn fresh_seed() -> u64 {
    (js_sys::Math::random() * 9.0e15) as u64
}

/// What stands there when a job cannot be opened.
pub fn trouble_page(trouble: &LoadError, id: &str, door: &Door) -> Html {
    let again = door.0.reform(|_: MouseEvent| Order::StartAgain);
    html! {
        <main class="page page--narrow" id="main" tabindex="-1">
            <h1>{ say!("This job cannot be opened") }</h1>
            <p>{ trouble.to_string() }</p>
            if trouble.can_start_again() {
                <button type="button" class="button button--main" onclick={again}>{ say!("Start {id} again", id) }</button>
            }
            <p><a href={Route::Jobs.href()}>{ say!("To the jobs") }</a></p>
        </main>
    }
}
