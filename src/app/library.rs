//! The jobs and training sets that ship with the page.

use std::sync::Arc;

use gloo::timers::future::TimeoutFuture;

use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::set_file::SetFile;

/// How long they are read at a stretch, ms: a page that is not back by then feels stuck.
const STRETCH_MS: f64 = 8.0;

/// Reads them all before the first screen needs them, with rests in which the page can do other things.
pub async fn read_ahead() {
    let mut until_ms = js_sys::Date::now() + STRETCH_MS;
    for () in scenario::read_ahead() {
        if js_sys::Date::now() > until_ms {
            TimeoutFuture::new(0).await;
            until_ms = js_sys::Date::now() + STRETCH_MS;
        }
    }
}

/// The job with this name.
pub fn find(id: &str) -> Option<Arc<Scenario>> {
    // A test holds that what ships is sound.
    scenario::job(id).ok().flatten()
}

/// All jobs, opening job first.
pub fn all() -> Vec<Arc<Scenario>> {
    scenario::jobs().unwrap_or_default()
}

/// All training sets.
pub fn sets() -> &'static [SetFile] {
    scenario::set_files().unwrap_or_default()
}
