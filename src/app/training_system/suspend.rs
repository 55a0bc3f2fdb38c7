//! A sitting as a training system keeps it between two visits: the sitting, and the log of each job,
//! as letters.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::app::sitting;
use crate::app::sitting::running;
use crate::app::sitting::state::Sitting;
use crate::app::store::SavedJob;
use crate::app::store::Store;
use crate::assess::letters;
use crate::scenario::read::read_back;

/// Sittings that were put aside are kept under such keys.
const ASIDE: &str = "aside/";

/// What is kept there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Suspended {
    sitting: Sitting,
    /// Each job as it is kept here, by its key.
    jobs: BTreeMap<String, String>,
}

/// The letters of the sitting that runs here; none when there is none.
pub async fn letters() -> Option<String> {
    let (sitting, n_jobs) = running::with(|now| (now.sitting.clone(), now.n_jobs()))?;
    let saved = sitting::progress(n_jobs).await;
    let kept = saved.into_iter().flatten();
    let jobs = kept.filter_map(|job| Some((SavedJob::key(&job.scenario), job.write().ok()?)));
    let jobs = jobs.collect();
    written(&Suspended { sitting, jobs })
}

/// Reads what was kept there; `None` for anything else.
pub fn read(letters: &str) -> Option<Suspended> {
    read_back(&letters::from_letters(letters)?)
}

/// The same as letters with nothing but that it was handed in, for where there is no room for more;
/// none for work that goes on.
pub fn shortened(letters: &str) -> Option<String> {
    let mut kept = read(letters).filter(|kept| kept.sitting.handed_in)?;
    kept.sitting.records.clear();
    kept.sitting.is_bare = true;
    kept.jobs.clear();
    written(&kept)
}

fn written(kept: &Suspended) -> Option<String> {
    Some(letters::to_letters(&serde_json::to_string(kept).ok()?))
}

/// Who has started the page.
pub struct Started {
    /// Number of the learner.
    pub learner: String,
    /// The system says that it is the first time.
    pub is_first: bool,
}

/// What there is of work that was kept there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// It is in this browser now.
    Restored,
    /// The same sitting has got at least as far in this browser.
    Here,
    /// None that could be taken up.
    Nothing,
}

/// Puts what was kept there into this browser, unless the same sitting has got further here. Work of
/// another learner, or of another attempt, is put aside: it is nobody's here but theirs.
pub async fn restore(letters: &str, started: &Started) -> Found {
    let store = Store::open().await;
    let (kept, here) = (read(letters), here(&store).await);
    let is_it = |own: &Sitting| match &kept {
        Some(kept) => own.is_same(&kept.sitting),
        None => !started.is_first && own.learner.as_deref() == Some(&started.learner),
    };
    let is_behind = |own: &Sitting| {
        let kept = kept.as_ref();
        kept.is_some_and(|kept| !own.is_as_far_as(&kept.sitting))
    };
    match here {
        Some(here) if is_it(&here.sitting) && !is_behind(&here.sitting) => return Found::Here,
        Some(here) if !is_it(&here.sitting) => put_aside(&store, &here).await,
        _ => {}
    }
    sitting::forget_all().await;
    // What cannot be removed is replaced, or of a sitting that is read as another's.
    let _ = store.remove(running::KEY).await;
    let aside = store.all(ASIDE).await.unwrap_or_default();
    let aside = aside.iter().filter_map(|(_, letters)| read(letters));
    let mut best = kept.clone();
    for own in aside.filter(|own| is_it(&own.sitting)) {
        let is_further = best.as_ref();
        if is_further.is_none_or(|best| !best.sitting.is_as_far_as(&own.sitting)) {
            best = Some(own);
        }
    }
    let Some(best) = best else {
        return Found::Nothing;
    };
    match put(&store, &best).await {
        Some(()) => Found::Restored,
        // What cannot be taken up is begun anew.
        None => Found::Nothing,
    }
}

/// The sitting of this browser with its jobs, as it is kept.
async fn here(store: &Store) -> Option<Suspended> {
    let text = store.get(running::KEY).await.ok().flatten()?;
    Some(Suspended {
        sitting: Sitting::read(&text)?,
        jobs: sitting::all_kept(store).await.into_iter().collect(),
    })
}

async fn put_aside(store: &Store, here: &Suspended) {
    let (learner, began) = (here.sitting.learner.as_deref(), here.sitting.started_ms);
    let key = format!("{ASIDE}{}/{began}", learner.unwrap_or_default());
    if let Some(letters) = written(here) {
        // Where the browser keeps nothing, there is nothing to put aside.
        let _ = store.put(&key, &letters).await;
    }
}

async fn put(store: &Store, kept: &Suspended) -> Option<()> {
    let text = serde_json::to_string(&kept.sitting).ok()?;
    store.put(running::KEY, &text).await.ok()?;
    for (key, text) in &kept.jobs {
        let is_its = |job: &SavedJob| SavedJob::key(&job.scenario) == *key && job.ends_some_day();
        if SavedJob::read(text).is_ok_and(|job| is_its(&job)) {
            store.put(key, text).await.ok()?;
        }
    }
    Some(())
}
