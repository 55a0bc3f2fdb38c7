//! The jobs and training sets that ship with the page.

use std::sync::Arc;

use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::set_file::SetFile;

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
