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
    let text = serde_json::to_string(&Suspended { sitting, jobs }).ok()?;
    Some(letters::to_letters(&text))
}

/// Reads what was kept there; `None` for anything else.
pub fn read(letters: &str) -> Option<Suspended> {
    read_back(&letters::from_letters(letters)?)
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

/// Puts what was kept there into this browser, unless the same sitting has got further here.
pub async fn restore(letters: &str) -> Found {
    let Some(kept) = read(letters) else {
        return Found::Nothing;
    };
    let store = Store::open().await;
    let here = store
        .get(running::KEY)
        .await
        .ok()
        .flatten()
        .and_then(|text| Sitting::read(&text));
    let is_further = here.is_some_and(|here| {
        here.candidate == kept.sitting.candidate
            && here.text == kept.sitting.text
            && (here.handed_in || here.used_s >= kept.sitting.used_s)
    });
    if is_further {
        return Found::Here;
    }
    match put(&store, &kept).await {
        Some(()) => Found::Restored,
        // What cannot be taken up is begun anew.
        None => Found::Nothing,
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
