//! The safety rules held against each act of a job.
//!
//! The same rule broken again before the plug is moved counts once.

use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::facts;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::safety::SafetyFinding;

/// Holds the rules against an act, with the facts as they are when it begins.
pub(in crate::bench) fn before(job: &mut Job, action: &Action) -> Vec<Event> {
    let situation = facts::situation(job, action);
    let (tick, step) = (job.tick(), job.log().len());
    if matches!(action, Action::Plug { .. }) {
        job.bench.exposure += 1;
    }
    let exposure = job.bench.exposure;
    let mut events = Vec::new();
    for rule in safety::broken(&situation) {
        let known = job
            .safety
            .iter()
            .any(|f| f.rule == rule.id && f.exposure == exposure);
        if !known {
            job.safety.push(SafetyFinding {
                rule: rule.id,
                severity: rule.severity,
                tick,
                step,
                exposure,
            });
            events.push(Event::Rule {
                rule: rule.id.to_owned(),
            });
        }
    }
    events
}
