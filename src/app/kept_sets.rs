//! Training sets that came from an instructor: kept in this browser, their own jobs under names made
//! from what is in them.

use std::sync::Arc;

use crate::app::library;
use crate::app::own;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::scenario::read::read_back;
use crate::scenario::set_file::SetFile;
use crate::scenario::share;

const PREFIX: &str = "set/";

/// A set as it is kept: every job by the name under which this browser knows it.
#[derive(Clone, Debug)]
pub struct KeptSet {
    /// Its name.
    pub id: String,
    /// The set.
    pub set: SetFile,
    /// Those of its jobs that do not ship.
    pub own: Vec<Arc<Scenario>>,
}

/// Keeps a set that was read and found sound.
///
/// # Errors
/// When the browser refuses or has no room.
pub async fn keep(set: &SetFile) -> Result<(), StorageError> {
    let inside = share::travelling(set);
    let mut jobs = Vec::new();
    for id in &set.jobs {
        jobs.push(match inside.get(id) {
            // A shipped job that travels along is the shipped one, with what was done on it.
            Some(job) if !ships(id, job) => own::keep(job, false).await?,
            _ => id.clone(),
        });
    }
    let kept = SetFile {
        jobs,
        files: Default::default(),
        sealed: Default::default(),
        ..set.clone()
    };
    let text = serde_json::to_string(&kept).map_err(|_| StorageError::Refused)?;
    let key = key(&share::name_of_set(&kept));
    Store::open().await.put(&key, &text).await
}

/// All that are kept.
pub async fn all() -> Vec<KeptSet> {
    // A list that cannot be read is an empty one; opening a set again says why.
    let texts = Store::open().await.all(PREFIX).await.unwrap_or_default();
    let mut sets = Vec::new();
    for (key, text) in &texts {
        let Some(set) = read_back::<SetFile>(text) else {
            continue;
        };
        let mut own = Vec::new();
        for id in &set.jobs {
            if library::find(id).is_none() {
                own.extend(own::find(id).await.ok().flatten());
            }
        }
        let id = key.strip_prefix(PREFIX).unwrap_or(key).to_owned();
        sets.push(KeptSet { id, set, own });
    }
    sets
}

/// What a set is kept under; what was done on its jobs is not.
pub fn key(id: &str) -> String {
    format!("{PREFIX}{id}")
}

/// A text as a set is kept.
pub fn is_readable(text: &str) -> bool {
    read_back::<SetFile>(text).is_some()
}

fn ships(id: &str, job: &JobFile) -> bool {
    let jobs = scenario::job_files().unwrap_or_default();
    jobs.iter()
        .any(|shipped| shipped.id == id && shipped.file == *job)
}
