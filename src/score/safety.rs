//! Safety: a gate and a grade.
//!
//! ```text
//! S = product over broken rules of (1 - s)      s = 0.30 major, 0.10 minor; critical closes the gate
//! ```
//! Source of the form: design choice. Without any test or repair nothing was at risk, and nothing is
//! given.

use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::safety::Severity;
use crate::score::report::Part;
use crate::score::visit;

const OF: f64 = 20.0;
const MAJOR_RATIO: f64 = 0.30;
const MINOR_RATIO: f64 = 0.10;
const CRITICAL_RATIO: f64 = 1.0;

/// Marks with the gate.
pub(super) struct SafetyMark {
    pub part: Part,
    pub critical: bool,
}

pub(super) fn mark(job: &Job) -> SafetyMark {
    let mut share = 1.0;
    let mut reasons = Vec::new();
    for finding in job.safety() {
        share *= 1.0
            - match finding.severity {
                Severity::Minor => MINOR_RATIO,
                Severity::Major => MAJOR_RATIO,
                Severity::Critical => CRITICAL_RATIO,
            };
        let title = safety::rule(finding.rule).map_or(finding.rule, |rule| rule.title);
        reasons.push(format!("step {}: {title}", finding.step));
    }
    if visit::was_left_for_danger(job) {
        reasons.push("went away when it was not safe".to_owned());
    } else if !was_exposed(job) {
        share = 0.0;
        reasons.push("nothing was tested or repaired".to_owned());
    } else if reasons.is_empty() {
        reasons.push("no safety rule was broken".to_owned());
    }
    let critical = job
        .safety()
        .iter()
        .any(|f| f.severity == Severity::Critical);
    SafetyMark {
        part: Part {
            name: "safety",
            of: OF,
            points: OF * share,
            reasons,
        },
        critical,
    }
}

fn was_exposed(job: &Job) -> bool {
    job.log().iter().any(|entry| {
        matches!(
            entry.action,
            Action::Work { .. }
                | Action::Meter { .. }
                | Action::TakeOff { .. }
                | Action::Key { .. }
        )
    })
}
