//! Where points went: each thing that cost points of a part, the step it was done or left out at, and
//! why, as data.
//!
//! What the entries of a part cost adds up to what the part is below full.

use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::job::Job;

/// Points that went.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lost {
    /// Step of the log, from 1; none for what belongs to no single one.
    pub step: Option<usize>,
    /// Share of the part, 0..1.
    pub share: f64,
    /// The same, points.
    pub points: f64,
    /// Why.
    pub why: Why,
}

/// Why points went.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// A safety rule was broken.
    Rule {
        /// Its name.
        rule: String,
        /// Its breach can kill: the whole job is capped.
        can_kill: bool,
    },
    /// Nothing was tested or repaired, so nothing was at risk.
    NothingRisked,
    /// No cause was stated.
    NothingStated,
    /// The cause stated first is not, or not only, what is wrong.
    StatedFirst,
    /// The cause stated last is not, or not only, what is wrong.
    StatedLast,
    /// The only cause stated is not, or not only, what is wrong.
    Stated,
    /// The machine still fails at hand-over.
    NotPutRight,
    /// A right answer counts half where this had no evidence behind it.
    WithoutEvidence,
    /// Another decision would have been cheaper, by so much money.
    Avoidable(f64),
    /// A hint was asked for.
    Hint,
    /// Something was damaged, to be paid with so much money.
    Damage(f64),
    /// Somebody has to come again, for so much money.
    Callback(f64),
    /// A part was fitted for nothing, at such a price.
    NeedlessPart(f64),
    /// The rest of what the job cost above its target.
    AboveTarget {
        /// What it cost, money unit.
        cost: f64,
        /// Its target, money unit.
        target: f64,
    },
    /// The job has no target to compare with.
    NoTarget,
    /// It was due and left out; English, for [`worded`](crate::language::worded).
    LeftOut(String),
    /// Nothing was begun, so nothing was due.
    NothingDue,
    /// The evidence gave the repair or the hand-over so much of a chance, 0..1.
    Unjustified {
        /// Probability that it puts things right.
        p: Option<f64>,
    },
    /// Nothing in the notebook spoke for the part.
    NothingSpokeForIt,
    /// The part fitted was sound.
    PartWasSound,
    /// Not every line offered with the cause bears it out.
    Offered {
        /// Lines that a sound machine would not have given.
        n_telling: usize,
        /// Lines that were offered.
        n_offered: usize,
    },
    /// Nothing is wrong, and too few readings show it.
    TooFewReadings,
}

impl Lost {
    /// A share of a part, at a step.
    pub(super) fn at(step: Option<usize>, share: f64, why: Why) -> Self {
        Self {
            step,
            share,
            points: 0.0,
            why,
        }
    }

    /// The whole part, at a step.
    pub(super) fn all(step: Option<usize>, why: Why) -> Vec<Self> {
        vec![Self::at(step, 1.0, why)]
    }
}

/// Steps of the log, from 1, whose act is asked for.
pub(super) fn steps(job: &Job, is_asked: impl Fn(&Action) -> bool) -> Vec<usize> {
    let log = job.log().iter().enumerate();
    log.filter(|(_, entry)| is_asked(&entry.action))
        .map(|(at, _)| at + 1)
        .collect()
}

/// The step that ended the job; none while it is open.
pub(super) fn ended(job: &Job) -> Option<usize> {
    let is_end = |action: &Action| matches!(action, Action::Close | Action::MakeSafeAndLeave);
    steps(job, is_end).pop()
}

/// Steps of the works done, in their order.
pub(super) fn works(job: &Job) -> Vec<usize> {
    steps(job, |action| matches!(action, Action::Work { .. }))
}

/// Steps of the causes stated, in their order.
pub(super) fn findings(job: &Job) -> Vec<usize> {
    steps(job, |action| matches!(action, Action::Finding { .. }))
}

/// What was damaged at which step, money unit: the log is run again for it.
pub(super) fn damages(job: &Job) -> Vec<(usize, f64)> {
    if job.ledger().damage <= 0.0 {
        return Vec::new();
    }
    let Ok(mut again) = Job::new(Arc::clone(job.scenario()), job.seed()) else {
        return Vec::new();
    };
    let mut found = Vec::new();
    for (at, entry) in job.log().iter().enumerate() {
        again.advance_to(entry.tick);
        let before = again.ledger().damage;
        again.act(entry.action.clone());
        let more = again.ledger().damage - before;
        if more > 0.0 {
            found.push((at + 1, more));
        }
    }
    found
}

/// Money that went, as shares of a part of which `lost` is gone.
pub(super) fn by_money(costs: Vec<(Option<usize>, f64, Why)>, lost: f64) -> Vec<Lost> {
    let all: f64 = costs.iter().map(|(_, cost, _)| cost).sum();
    if all <= 0.0 || lost <= 0.0 {
        return Vec::new();
    }
    costs
        .into_iter()
        .filter(|(_, cost, _)| *cost > 0.0)
        .map(|(step, cost, why)| Lost::at(step, lost * cost / all, why))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_is_laid_at_the_steps_in_proportion_and_adds_up() {
        let costs = vec![
            (Some(3), 30.0, Why::Avoidable(30.0)),
            (Some(5), 0.0, Why::Avoidable(0.0)),
            (None, 10.0, Why::Callback(10.0)),
        ];
        let lost = by_money(costs, 0.8);
        let shares: Vec<(Option<usize>, f64)> = lost.iter().map(|l| (l.step, l.share)).collect();
        assert_eq!(shares.len(), 2, "what cost nothing is no reason");
        assert!((shares[0].1 - 0.6).abs() < 1e-12 && (shares[1].1 - 0.2).abs() < 1e-12);
        assert!(by_money(vec![(None, 0.0, Why::Hint)], 0.5).is_empty());
    }
}
