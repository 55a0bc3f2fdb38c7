//! Keeping a job after an act: its log, and once it is over what a person keeps of it for good.

use crate::app::me::history;
use crate::app::session::Session;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;

/// Takes over what the session has come to; what is returned keeps it, and waits for the browser.
pub fn keep(
    saved: &mut SavedJob,
    session: &Session,
) -> impl Future<Output = Result<(), StorageError>> + use<> {
    let finished = saved.take(session, js_sys::Date::now());
    let (key, text) = (SavedJob::key(&saved.scenario), saved.write());
    async move {
        Store::open().await.put(&key, &text?).await?;
        match finished {
            Some(finished) => history::keep(&finished).await,
            None => Ok(()),
        }
    }
}
