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
