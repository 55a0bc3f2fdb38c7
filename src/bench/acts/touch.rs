//! Bare hands on conductors: what flows, and what opens.

use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::job::Job;

pub(super) fn hazards(_job: &mut Job, _action: &Action) -> Vec<Event> {
    Vec::new()
}
