//! What is in the way of an act: steps that must come off first.

use crate::bench::event::Refusal;
use crate::bench::job::Bench;
use crate::bench::job::Job;
use crate::bench::workshop::Workshop;

/// Steps that must come off before `needs` are reached, in working order.
pub fn missing(workshop: &Workshop, bench: &Bench, needs: &[String]) -> Vec<String> {
    workshop
        .closure(needs)
        .into_iter()
        .filter(|step| !bench.off.contains(&step.id))
        .map(|step| step.id.clone())
        .collect()
}

/// The refusal of an act that needs these steps off, where one is on.
pub(super) fn in_the_way(job: &Job, needs: &[String]) -> Option<Refusal> {
    let steps = missing(&job.scenario().workshop, &job.bench, needs);
    (!steps.is_empty()).then_some(Refusal::InTheWay { steps })
}
