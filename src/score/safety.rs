//! Safety: a gate and a grade, by the formula of [`formula::safety`]; each broken rule names its step.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::safety::Severity;
use crate::language::said;
use crate::say;
use crate::score::formula;
use crate::score::formula::Breach;
use crate::score::formula::Gravity;
use crate::score::lost::Lost;
use crate::score::lost::Why;
use crate::score::visit;

/// Safety as far as it was kept.
pub(super) struct Safety {
    pub share: f64,
    pub is_gate_open: bool,
    pub reasons: Vec<String>,
    pub lost: Vec<Lost>,
}

/// The grade, whether the gate stands open, and why.
pub(super) fn mark(job: &Job) -> Safety {
    let breaches: Vec<Breach> = job
        .safety()
        .iter()
        .map(|finding| Breach {
            rule: finding.rule,
            gravity: match finding.severity {
                Severity::Minor => Gravity::Minor,
                Severity::Major => Gravity::Major,
                Severity::Critical => Gravity::Critical,
            },
            exposure: finding.exposure,
        })
        .collect();
    let broken = job.safety().iter().map(|finding| {
        let title = safety::rule(finding.rule).map_or(finding.rule, |rule| said(rule.title));
        say!("step {step}: {title}", step = finding.step, title)
    });
    let mut reasons: Vec<String> = broken.collect();
    let left = visit::was_left_for_danger(job);
    let exposed = was_exposed(job);
    if left {
        reasons.push(say!("went away when it was not safe").to_owned());
    } else if !exposed {
        reasons.push(say!("nothing was tested or repaired").to_owned());
    } else if reasons.is_empty() {
        reasons.push(say!("no safety rule was broken").to_owned());
    }
    let (share, is_gate_open) = formula::safety(&breaches, exposed || left);
    if !is_gate_open {
        reasons.push(say!(
            "a rule whose breach can kill: at most {most} of 100 for the whole job",
            most = format!("{:.0}", formula::CRITICAL_CAP),
        ));
    }
    let lost = if exposed || left {
        rules(job)
    } else {
        Lost::all(None, Why::NothingRisked)
    };
    Safety {
        share,
        is_gate_open,
        reasons,
        lost,
    }
}

/// What each broken rule took off, in their order: the share that was left by then, and of the same
/// rule in the same exposure only the first.
fn rules(job: &Job) -> Vec<Lost> {
    let mut seen = BTreeSet::new();
    let mut left = 1.0;
    let firsts = job
        .safety()
        .iter()
        .filter(|finding| seen.insert((finding.rule, finding.exposure)));
    firsts
        .map(|finding| {
            let ratio = match finding.severity {
                Severity::Minor => formula::MINOR_RATIO,
                Severity::Major => formula::MAJOR_RATIO,
                Severity::Critical => 0.0,
            };
            let share = left * ratio;
            left -= share;
            let why = Why::Rule {
                rule: finding.rule.to_owned(),
                can_kill: finding.severity == Severity::Critical,
            };
            Lost::at(Some(finding.step), share, why)
        })
        .collect()
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

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::PanelKey;
    use crate::bench::action::Sense;
    use crate::bench::visit::Condition;
    use crate::scenario::job;
    use crate::score::report::assess;

    #[test]
    fn going_on_where_it_smells_of_gas_caps_the_whole_job() {
        let mut scenario = (*job("no_water").expect("sound").expect("ships")).clone();
        scenario.visit.place = vec![Condition::GasSmell];
        let mut job = Job::new(Arc::new(scenario), 1).expect("starts");
        job.act(Action::Sense {
            sense: Sense::Smell,
            place: "floor".to_owned(),
        });
        job.act(Action::Key {
            key: PanelKey::Power,
        });
        let marked = mark(&job);
        assert!(!marked.is_gate_open);
        let kills = |one: &&Lost| matches!(one.why, Why::Rule { can_kill: true, .. });
        let killing = marked.lost.iter().find(kills).expect("a rule was broken");
        assert_eq!((killing.step, killing.share), (Some(2), 0.0));
        let lost: f64 = marked.lost.iter().map(|one| one.share).sum();
        assert!((lost - (1.0 - marked.share)).abs() < 1e-9);
        assert!(marked.reasons.iter().any(|r| r.contains("at most 39")));
        let report = assess(&job).expect("can be marked");
        assert!(!report.safe && report.total <= formula::CRITICAL_CAP);
    }
}
