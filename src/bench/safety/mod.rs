//! Safety rules: a table of data, each with a predicate over a [`Situation`].
//!
//! A rule is an event of the simulated job, never a missing button press. The same rule
//! broken again in one exposure counts once; that, and what a severity costs, is the
//! score's affair. Order of work: published, EN 50110-1; limits: EN 50678 and EN 50699,
//! IEC 60335-1, IEC 60364-4-41; all from memory, the current editions win. This is
//! training: local codes and licensed practice come first.

mod closing; // tests and hand-over
mod handling; // weight, edges, heat, people
mod isolation; // switching off, proving dead, capacitors
mod measuring; // instruments
mod motion; // baskets, belts, interlocks
mod orderly; // a job in perfect order
mod power; // what is energised
pub mod situation; // the facts a rule looks at
mod water; // taps, hoses, tubs

use crate::bench::notebook::Tick;
use crate::bench::safety::situation::Situation;

/// How bad a broken rule is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Poor habit.
    Minor,
    /// Somebody or something could have been hurt.
    Major,
    /// Life at risk: the job fails.
    Critical,
}

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Name in files; never renumbered.
    pub id: &'static str,
    /// How bad.
    pub severity: Severity,
    /// What was done, in plain words.
    pub title: &'static str,
    /// Why it is dangerous.
    pub why: &'static str,
    /// Where the rule comes from.
    pub source: &'static str,
    /// What to do instead.
    pub right_way: &'static str,
    /// Whether the situation breaks the rule.
    pub is_broken: fn(&Situation) -> bool,
}

/// One broken rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SafetyFinding {
    /// Name of the rule.
    pub rule: &'static str,
    /// How bad it is.
    pub severity: Severity,
    /// When.
    pub tick: Tick,
    /// Step of the log, from 1.
    pub step: usize,
    /// How often the plug had been moved by then.
    pub exposure: u32,
}

/// Every rule, by theme, in the order of a job.
pub fn rules() -> impl Iterator<Item = &'static Rule> {
    isolation::RULES
        .iter()
        .chain(measuring::RULES)
        .chain(power::RULES)
        .chain(motion::RULES)
        .chain(water::RULES)
        .chain(handling::RULES)
        .chain(closing::RULES)
}

/// The rule of this id.
pub fn rule(id: &str) -> Option<&'static Rule> {
    rules().find(|rule| rule.id == id)
}

/// Rules a situation breaks, in the order of the table.
pub fn broken(situation: &Situation) -> impl Iterator<Item = &'static Rule> {
    rules().filter(move |rule| (rule.is_broken)(situation))
}

#[cfg(test)]
mod cases;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::safety::situation::Act;
    use std::collections::BTreeSet;

    const ACTS: [Act; 21] = [
        Act::Other,
        Act::Touch,
        Act::ReachInside,
        Act::ReachIntoBasket,
        Act::OpenCover,
        Act::TakeOff,
        Act::PullConnector,
        Act::Measure,
        Act::Discharge,
        Act::PlugIn,
        Act::SwitchOn,
        Act::Start,
        Act::ResetDevice,
        Act::PullInletHose,
        Act::PullDrainHose,
        Act::OpenTap,
        Act::Tilt,
        Act::LeaveUntil,
        Act::HandOver,
        Act::BridgeLid,
        Act::WorkOnHouseWiring,
    ];

    #[test]
    fn an_orderly_job_breaks_no_rule() {
        // The last two acts are wrong in themselves.
        for act in &ACTS[..19] {
            let situation = Situation::orderly(*act);
            let ids: Vec<_> = broken(&situation).map(|rule| rule.id).collect();
            assert!(ids.is_empty(), "{act:?}: {ids:?}");
        }
    }

    #[test]
    fn every_rule_is_named_once_and_says_everything() {
        let ids: BTreeSet<_> = rules().map(|rule| rule.id).collect();
        assert_eq!(ids.len(), rules().count());
        assert!(ids.len() >= 34);
        for entry in rules() {
            for text in [entry.title, entry.why, entry.source, entry.right_way] {
                assert!(text.len() > 10, "{}", entry.id);
            }
            assert!(rule(entry.id).is_some());
        }
    }

    #[test]
    fn all_three_severities_are_used() {
        for severity in [Severity::Minor, Severity::Major, Severity::Critical] {
            assert!(rules().filter(|rule| rule.severity == severity).count() >= 8);
        }
    }
}
