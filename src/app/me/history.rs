//! Finished jobs as they are kept in this browser, each for good, however often it is worked again.

use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::records::practice::Practice;

/// Keys of finished jobs start so.
pub const PREFIX: &str = "done/";

/// Keeps a finished job.
///
/// # Errors
/// When the browser refuses or has no room.
pub async fn keep(practice: &Practice) -> Result<(), StorageError> {
    let text = serde_json::to_string(practice).map_err(|_| StorageError::Refused)?;
    Store::open().await.put(&key(practice), &text).await
}

/// All finished jobs, oldest first. What cannot be read is left out.
///
/// # Errors
/// When the browser refuses.
pub async fn all() -> Result<Vec<Practice>, StorageError> {
    let texts = Store::open().await.all(PREFIX).await?;
    let mut jobs: Vec<Practice> = texts
        .iter()
        .filter_map(|(_, text)| Practice::read(text))
        .collect();
    jobs.sort_by(|a, b| a.ended_ms.total_cmp(&b.ended_ms));
    Ok(jobs)
}

/// Two jobs do not end in the same millisecond of one browser; one job does not end twice.
fn key(practice: &Practice) -> String {
    format!("{PREFIX}{:015.0}/{}", practice.ended_ms, practice.job)
}
