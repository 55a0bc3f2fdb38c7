//! Economy by the bill: what the job cost beside a skilled technician's way. It stands in for what the
//! decisions show where those are not judged; the form is that of [`formula::economy`].

use crate::bench::hint;
use crate::bench::job::Job;
use crate::score::formula;

/// A quarter of the target above it brings economy to a quarter. Design choice.
const SPAN_RATIO: f64 = 0.25;

/// Share, and why; `cost` is with the visit to come where the machine was not put right.
pub(super) fn mark(job: &Job, cost: f64) -> (f64, Vec<String>) {
    let target = job.scenario().reference.cost;
    let hints = hint::of(job.log());
    let asked: f64 = hints.iter().map(|(_, rung)| rung.cost_ratio()).sum();
    let above = (cost - target).max(0.0) + asked * target;
    let share = if target > 0.0 {
        formula::economy(above, SPAN_RATIO * target)
    } else {
        0.0
    };
    let again = if cost > job.cost() {
        " with the visit to come"
    } else {
        ""
    };
    let mut reasons = vec![format!("cost {cost:.0}{again}, target {target:.0}")];
    if job.ledger().fitted.len() > 1 {
        reasons.push(format!("parts fitted: {}", job.ledger().fitted.len()));
    }
    if !hints.is_empty() {
        reasons.push(hints_words(hints.len(), asked));
    }
    (share, reasons)
}

/// Such as `2 hints: 15 % of what the job should cost`.
pub(super) fn hints_words(n: usize, ratio: f64) -> String {
    let hints = if n == 1 { "hint" } else { "hints" };
    format!(
        "{n} {hints}: {:.0} % of what the job should cost",
        100.0 * ratio
    )
}
