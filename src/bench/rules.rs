//! Safety findings of a job: the rules held against each act, before and after it.

use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;

/// One broken rule.
#[derive(Clone, Debug, PartialEq)]
pub struct SafetyFinding {
    /// Name of the rule.
    pub rule: &'static str,
    /// When.
    pub tick: Tick,
    /// Step of the log, from 1.
    pub step: usize,
}

/// Rules that look before an act.
pub(in crate::bench) fn before(_job: &mut Job, _action: &Action) -> Vec<Event> {
    Vec::new()
}
/// Rules that look after it.
pub(in crate::bench) fn after(_job: &mut Job, _action: &Action) -> Vec<Event> {
    Vec::new()
}
/// Rules that look at hand-over.
pub(in crate::bench) fn at_hand_over(_job: &mut Job) -> Vec<Event> {
    Vec::new()
}
