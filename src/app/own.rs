//! Jobs of one's own: opened from a file or a link, or tried from the desk. They are kept in this
//! browser as letters that do not show the answer, under a name made from what is in them.

use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::scenario::read::read_back;
use crate::scenario::share;

const PREFIX: &str = "own/";

/// A job of one's own as it is kept.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OwnJob {
    /// The job in letters.
    pub letters: String,
    /// It stands on the list of jobs; one that is only tried does not.
    pub listed: bool,
    /// The draft it was tried from last.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub draft: Option<String>,
}

impl OwnJob {
    /// The job as it is kept from now on; what was so before stays so.
    fn of(job: &JobFile, listed: bool, draft: Option<&str>, earlier: Option<&Self>) -> Self {
        Self {
            letters: share::to_letters(job),
            listed: listed || earlier.is_some_and(|own| own.listed),
            draft: draft.map(str::to_owned).or_else(|| earlier?.draft.clone()),
        }
    }
}

/// Keeps a job; returns its name. A job that is kept already stays as it is, and is listed from
/// the first time that it was to be.
///
/// # Errors
/// When the browser refuses or has no room.
pub async fn keep(job: &JobFile, listed: bool) -> Result<String, StorageError> {
    put(job, listed, None).await
}

/// Keeps the job of a draft off the list and forgets what was done on it before: to try it from
/// the bell on.
///
/// # Errors
/// When the browser refuses or has no room.
pub async fn keep_to_try(job: &JobFile, draft: &str) -> Result<String, StorageError> {
    let id = put(job, false, Some(draft)).await?;
    Store::open().await.remove(&SavedJob::key(&id)).await?;
    Ok(id)
}

async fn put(job: &JobFile, listed: bool, draft: Option<&str>) -> Result<String, StorageError> {
    let id = share::name_of(job);
    let store = Store::open().await;
    let earlier = store.get(&key(&id)).await?;
    let earlier = earlier.as_deref().and_then(read);
    let own = OwnJob::of(job, listed, draft, earlier.as_ref());
    let text = serde_json::to_string(&own).map_err(|_| StorageError::Refused)?;
    store.put(&key(&id), &text).await?;
    Ok(id)
}

/// A job of one's own by its name.
///
/// # Errors
/// When the browser refuses, or what was kept cannot be read.
pub async fn find(id: &str) -> Result<Option<Arc<Scenario>>, StorageError> {
    let Some(text) = Store::open().await.get(&key(id)).await? else {
        return Ok(None);
    };
    let own = read(&text).ok_or(StorageError::Damaged)?;
    let scenario = open(id, &own).ok_or(StorageError::Damaged)?;
    Ok(Some(Arc::new(scenario)))
}

/// The letters of a job of one's own; none for another.
pub async fn letters(id: &str) -> Option<String> {
    let text = Store::open().await.get(&key(id)).await.ok()??;
    read(&text).map(|own| own.letters)
}

/// The draft a job of one's own was tried from; none for another.
pub async fn draft_of(id: &str) -> Option<String> {
    let text = Store::open().await.get(&key(id)).await.ok()??;
    read(&text)?.draft
}

/// All that stand on the list.
pub async fn listed() -> Vec<Arc<Scenario>> {
    // A list that cannot be read is an empty one; opening a job says why.
    let texts = Store::open().await.all(PREFIX).await.unwrap_or_default();
    let one = |(key, text): &(String, String)| {
        let own = read(text).filter(|own| own.listed)?;
        open(key.strip_prefix(PREFIX)?, &own).map(Arc::new)
    };
    texts.iter().filter_map(one).collect()
}

/// What a job and what was done on it are kept under.
pub fn keys(id: &str) -> Vec<String> {
    vec![SavedJob::key(id), key(id)]
}

/// A text as it is kept under this name.
pub fn is_readable(id: &str, text: &str) -> bool {
    read(text).is_some_and(|own| open(id, &own).is_some())
}

fn key(id: &str) -> String {
    format!("{PREFIX}{id}")
}

fn read(text: &str) -> Option<OwnJob> {
    read_back(text)
}

fn open(id: &str, own: &OwnJob) -> Option<Scenario> {
    let job = share::from_letters(id, &own.letters).ok()?;
    scenario::job_of(id, &job).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job_files;

    #[test]
    fn a_tried_job_knows_its_draft_and_forgets_it_by_nothing_that_is_kept_later() {
        let job = &job_files().expect("sound")[0].file;
        let tried = OwnJob::of(job, false, Some("d1"), None);
        let text = serde_json::to_string(&tried).expect("finite");
        let again = read(&text).expect("as it was written");
        assert_eq!((again.listed, again.draft.as_deref()), (false, Some("d1")));
        let opened = OwnJob::of(job, true, None, Some(&again));
        assert_eq!((opened.listed, opened.draft.as_deref()), (true, Some("d1")));
        let from_another = OwnJob::of(job, false, Some("d2"), Some(&opened));
        assert!(from_another.listed && from_another.draft.as_deref() == Some("d2"));
    }

    #[test]
    fn a_job_kept_before_drafts_were_noted_is_still_read() {
        let job = &job_files().expect("sound")[0].file;
        let text = serde_json::to_string(&OwnJob::of(job, true, None, None)).expect("finite");
        assert!(!text.contains("draft"), "{text}");
        assert_eq!(read(&text).expect("readable").draft, None);
    }
}
