//! Once the decisions are judged, what is kept of the job is marked by them.

use crate::app::me::history;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::job::Job;
use crate::records::result::JobResult;
use crate::score::Report;

/// Puts the marks by decisions in place of those by the bill.
///
/// # Errors
/// When the browser refuses.
pub async fn settle(job: &Job, report: &Report) -> Result<(), StorageError> {
    let (id, seed, log) = (&job.scenario().id, job.seed(), job.log());
    let store = Store::open().await;
    let key = SavedJob::key(id);
    if let Some(text) = store.get(&key).await? {
        let mut saved = SavedJob::read(&text)?;
        if let Some(verdict) = saved.verdict.as_mut().filter(|_| saved.log == log) {
            verdict.marks = report.total;
            store.put(&key, &saved.write()?).await?;
        }
    }
    for mut done in history::all().await? {
        if done.job == *id && done.seed == seed && done.log == log {
            done.result = JobResult::from_report(job, report);
            history::keep(&done).await?;
        }
    }
    Ok(())
}
