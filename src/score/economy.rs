//! Economy: what the job cost beside a skilled technician's way.
//!
//! ```text
//! E = 4^(−R/Δ)        R = max(0, cost − target), Δ = a quarter of the target
//! ```
//! The same form as the decision-regret score, with the stored way of the job as target. Source of
//! the form: published (exponential discount of avoidable cost), constants design choice.

use crate::bench::job::Job;
use crate::score::report::Part;

const OF: f64 = 15.0;

pub(super) fn mark(job: &Job) -> Part {
    let target = job.scenario().reference.cost;
    let cost = job.cost();
    let avoidable = (cost - target).max(0.0);
    let share = if target > 0.0 {
        libm::pow(4.0, -avoidable / (0.25 * target))
    } else {
        0.0
    };
    let mut reasons = vec![format!("cost {cost:.0}, target {target:.0}")];
    if job.ledger().fitted.len() > 1 {
        reasons.push(format!("parts fitted: {}", job.ledger().fitted.len()));
    }
    Part {
        name: "economy",
        of: OF,
        points: OF * share,
        reasons,
    }
}
