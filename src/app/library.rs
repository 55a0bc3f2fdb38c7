//! The jobs that ship with the page.

use std::sync::Arc;

use crate::bench::scenario::Scenario;

/// The job with this name.
pub fn find(id: &str) -> Option<Arc<Scenario>> {
    all().into_iter().find(|scenario| scenario.id == id)
}

/// All jobs, opening job first.
pub fn all() -> Vec<Arc<Scenario>> {
    Vec::new()
}
