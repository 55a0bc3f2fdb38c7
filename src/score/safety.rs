//! Safety: a gate and a grade.
//!
//! ```text
//! S = product over broken rules of (1 - s)      s = 0.30 major, 0.10 minor; critical closes the gate
//! ```
//! Source of the form: design choice. The same rule broken again in one exposure counts once.

use crate::bench::job::Job;
use crate::score::report::Part;

const OF: f64 = 20.0;

/// Marks with the gate.
pub(super) struct SafetyMark {
    pub part: Part,
    pub critical: bool,
}

pub(super) fn mark(_job: &Job) -> SafetyMark {
    SafetyMark {
        part: Part {
            name: "safety",
            of: OF,
            points: OF,
            reasons: Vec::new(),
        },
        critical: false,
    }
}
