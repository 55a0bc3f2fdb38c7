//! Keeping a job after an act: its log, and once it is over what a person keeps of it for good.

use crate::app::me::history;
use crate::app::session::Session;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::app::training_system;

/// Takes over what the session has come to; what is returned keeps it, and waits for the browser.
pub fn keep(
    saved: &mut SavedJob,
    session: &Session,
) -> impl Future<Output = Result<(), StorageError>> + use<> {
    let finished = saved.take(session, js_sys::Date::now());
    let is_exam = session.is_exam;
    let (key, text) = (SavedJob::key(&saved.scenario), saved.write());
    async move {
        Store::open().await.put(&key, &text?).await?;
        if is_exam {
            training_system::saved();
        }
        match finished {
            Some(finished) if !is_exam => history::keep(&finished).await,
            _ => Ok(()),
        }
    }
}
