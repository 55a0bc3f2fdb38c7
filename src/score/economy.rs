//! Economy by the bill: what the job cost beside a skilled technician's way. It stands in for what the
//! decisions show where those are not judged; the form is that of [`formula::economy`].

use crate::bench::hint;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::say;
use crate::score::evidence::bore_fault;
use crate::score::formula;
use crate::score::lost;
use crate::score::lost::Lost;
use crate::score::lost::Why;

/// A quarter of the target above it brings economy to a quarter. Design choice.
const SPAN_RATIO: f64 = 0.25;

/// Economy as far as the bill shows it.
pub(super) struct Economy {
    pub share: f64,
    pub reasons: Vec<String>,
    pub lost: Vec<Lost>,
}

/// Share, and why; `cost` is with the visit to come where the machine was not put right.
pub(super) fn mark(job: &Job, cost: f64) -> Economy {
    let target = job.scenario().reference.cost;
    let hints = hint::of(job.log());
    let asked: f64 = hints.iter().map(|(_, rung)| rung.cost_ratio()).sum();
    let above = (cost - target).max(0.0) + asked * target;
    let share = if target > 0.0 {
        formula::economy(above, SPAN_RATIO * target)
    } else {
        0.0
    };
    let mut reasons = vec![cost_words(cost, cost > job.cost(), target)];
    if job.ledger().fitted.len() > 1 {
        let n = job.ledger().fitted.len();
        reasons.push(say!("parts fitted: {n}", n));
    }
    if !hints.is_empty() {
        reasons.push(hints_words(hints.len(), asked));
    }
    let lost = if target > 0.0 {
        let mut costs = above_target(job, cost, target);
        let asked = hints.iter().map(|(step, rung)| {
            let cost = rung.cost_ratio() * target;
            (Some(*step), cost, Why::Hint)
        });
        costs.extend(asked);
        lost::by_money(costs, 1.0 - share)
    } else {
        Lost::all(None, Why::NoTarget)
    };
    Economy {
        share,
        reasons,
        lost,
    }
}

/// What the job cost above its target: parts fitted for nothing, damage and the visit to come as far
/// as they explain it, the rest at no single step.
fn above_target(job: &Job, cost: f64, target: f64) -> Vec<(Option<usize>, f64, Why)> {
    let above = (cost - target).max(0.0);
    let workshop = &job.scenario().workshop;
    let works = lost::works(job);
    let step_at = |tick: Tick| {
        let nth = job.bench().works.iter().position(|(at, _)| *at == tick)?;
        works.get(nth).copied()
    };
    let needless = |part: &str| {
        let part = workshop.part(part.split(':').next().unwrap_or(part));
        part.is_some_and(|part| !bore_fault(job, part))
    };
    let fitted = job.bench().around.fitted.iter();
    let mut costs: Vec<(Option<usize>, f64, Why)> = fitted
        .filter(|fitted| needless(&fitted.item))
        .map(|fitted| {
            let why = Why::NeedlessPart(fitted.price);
            (step_at(fitted.tick), fitted.price, why)
        })
        .collect();
    let damages = lost::damages(job);
    costs.extend(damages.into_iter().map(|(step, price)| {
        let why = Why::Damage(price);
        (Some(step), price, why)
    }));
    let again = (cost - job.cost()).max(0.0);
    if again > 0.0 {
        costs.push((lost::ended(job), again, Why::Callback(again)));
    }
    let known: f64 = costs.iter().map(|(_, cost, _)| cost).sum();
    if known > above {
        for (_, cost, _) in &mut costs {
            *cost *= above / known;
        }
    } else {
        costs.push((None, above - known, Why::AboveTarget { cost, target }));
    }
    costs
}

/// Such as `2 hints: 15 % of what the job should cost`.
pub(super) fn hints_words(n: usize, ratio: f64) -> String {
    let percent = format!("{:.0}", 100.0 * ratio);
    if n == 1 {
        say!(
            "{n} hint: {percent} % of what the job should cost",
            n,
            percent
        )
    } else {
        say!(
            "{n} hints: {percent} % of what the job should cost",
            n,
            percent
        )
    }
}

fn cost_words(cost: f64, comes_again: bool, target: f64) -> String {
    let [cost, target] = [cost, target].map(|price| format!("{price:.0}"));
    if comes_again {
        say!(
            "cost {cost} with the visit to come, target {target}",
            cost,
            target
        )
    } else {
        say!("cost {cost}, target {target}", cost, target)
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::scenario::job;
    #[track_caller]
    fn assert_near(is: f64, wanted: f64) {
        assert!((is - wanted).abs() < 1e-9, "{is}, not {wanted}");
    }

    /// A job just begun, with such a target.
    fn begun(target: f64) -> Job {
        let shipped = job("no_water").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        scenario.reference.cost = target;
        Job::new(Arc::new(scenario), 1).expect("starts")
    }

    #[test]
    fn without_a_target_there_is_no_economy() {
        let job = begun(0.0);
        let marked = mark(&job, job.cost());
        assert_near(marked.share, 0.0);
        assert_eq!(marked.lost, Lost::all(None, Why::NoTarget));
    }

    #[test]
    fn what_is_above_the_target_is_laid_at_the_visit_to_come_and_the_rest_at_no_step() {
        let job = begun(20.0);
        assert_near(job.cost(), 30.0);
        // 15 above the target, 5 of it for somebody to come again; a quarter of the target is 5.
        let marked = mark(&job, 35.0);
        assert_near(marked.share, 1.0 / 64.0);
        let lost = &marked.lost;
        assert_eq!(lost.len(), 2, "{lost:?}");
        assert_near(lost[0].share, 63.0 / 64.0 / 3.0);
        assert_near(lost[1].share, 63.0 / 64.0 * 2.0 / 3.0);
        assert_eq!(lost[0].why, Why::Callback(5.0));
        assert!(matches!(lost[1].why, Why::AboveTarget { .. }));
        assert!(marked.reasons[0].contains("visit to come"));
    }

    #[test]
    fn a_visit_to_come_counts_no_more_beside_a_hint_than_the_job_is_above_its_target() {
        let mut job = begun(50.0);
        assert_eq!(job.act(Action::Hint).refusal, None);
        // 20 above the target although coming again is dearer, and a hint for a twentieth of it.
        let marked = mark(&job, 70.0);
        let lost = &marked.lost;
        assert_eq!(lost.len(), 2, "{lost:?}");
        assert!(matches!(lost[0].why, Why::Callback(again) if again > 20.0));
        assert_eq!((lost[1].step, &lost[1].why), (Some(1), &Why::Hint));
        assert_near(lost[0].share / lost[1].share, 20.0 / 2.5);
        assert_near(lost[0].share + lost[1].share, 1.0 - marked.share);
    }
}
