//! What is in the way of an act: steps that must come off first, a thing that is not there, the moment.

use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::state::Bench;
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

/// The refusal of an act at something that is not there.
pub(super) fn unknown(name: &str) -> Refusal {
    Refusal::Unknown {
        name: name.to_owned(),
    }
}

/// The refusal of an act that the moment does not allow.
pub(super) fn not_now(why: &str) -> Option<Refusal> {
    Some(Refusal::NotNow {
        why: why.to_owned(),
    })
}
