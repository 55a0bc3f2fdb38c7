//! Economy and evidence by what each decision was worth: the marks that need the job reckoned up.
//!
//! ```text
//! R = Σ A + hints + damage + a callback where a machine that fails was handed over
//! ```
//! Each sum names the steps it comes from. For the formulas see [`formula`].

use std::borrow::Cow;

use crate::bench::job::Job;
use crate::bench::state::Ending;
use crate::bench::workshop::Workshop;
use crate::expert::Decided;
use crate::expert::Judged;
use crate::expert::Reckoning;
use crate::expert::theory::justify::Standing;
use crate::language::worded;
use crate::say;
use crate::score::economy::hints_words;
use crate::score::formula;
use crate::score::formula::Replaced;
use crate::score::lost;
use crate::score::lost::Lost;
use crate::score::lost::Why;

/// An avoidable cost below this is not told, money unit.
const WORTH_TELLING: f64 = 0.5;

/// What the decisions of a job come to.
pub(super) struct Decisions {
    /// Cost that could have been avoided, money unit.
    pub avoidable: f64,
    pub economy: f64,
    pub economy_reasons: Vec<String>,
    pub economy_lost: Vec<Lost>,
    /// None when nothing was decided that evidence could justify.
    pub evidence: Option<f64>,
    pub evidence_reasons: Vec<String>,
    pub evidence_lost: Vec<Lost>,
    /// The first repair with its justification.
    pub first_repair: Option<(String, f64)>,
}

pub(super) fn mark(job: &Job, reckoning: &Reckoning, is_put_right: bool) -> Decisions {
    let workshop = &job.scenario().workshop;
    let mut reasons: Vec<String> = reckoning
        .decisions
        .iter()
        .filter(|d| d.avoidable >= WORTH_TELLING && d.decided != Decided::Hint)
        .map(|d| {
            let cost = format!("{:.0}", d.avoidable);
            say!("step {step}: {cost} avoidable", step = d.step, cost)
        })
        .collect();
    let mut avoidable = reckoning.avoidable();
    let hints: Vec<&Judged> = reckoning
        .decisions
        .iter()
        .filter(|d| d.decided == Decided::Hint)
        .collect();
    if !hints.is_empty() && reckoning.start > 0.0 {
        let sum: f64 = hints.iter().map(|d| d.avoidable).sum();
        reasons.push(hints_words(hints.len(), sum / reckoning.start));
    }
    let mut costs: Vec<(Option<usize>, f64, Why)> = reckoning
        .decisions
        .iter()
        .map(|d| (Some(d.step), d.avoidable, of_decision(d)))
        .collect();
    let mut add = |cost: f64, words: fn(String) -> String| {
        if cost > 0.0 {
            avoidable += cost;
            reasons.push(words(format!("{cost:.0}")));
        }
    };
    add(job.ledger().damage, |cost| say!("damage: {cost}", cost));
    costs.extend(
        lost::damages(job)
            .into_iter()
            .map(|(step, price)| (Some(step), price, Why::Damage(price))),
    );
    let judged_at_the_end = reckoning
        .decisions
        .iter()
        .any(|d| d.decided == Decided::HandOver);
    if !is_put_right && job.bench().ending == Some(Ending::Closed) && !judged_at_the_end {
        let callback = job.scenario().money.callback;
        add(callback, |cost| say!("callback: {cost}", cost));
        costs.push((lost::ended(job), callback, Why::Callback(callback)));
    }
    if reasons.is_empty() {
        reasons.push(say!("no decision cost more than it had to").to_owned());
    }
    let yardstick = formula::yardstick(reckoning.without_tests, reckoning.start);
    let repairs = || {
        let of = reckoning.decisions.iter();
        of.filter_map(|d| match (&d.decided, d.justification) {
            (Decided::Work(work), Some(j)) => Some((work, j, d)),
            _ => None,
        })
    };
    let replaced: Vec<Replaced> = repairs()
        .map(|(_, justification, d)| Replaced {
            cost: d.cost,
            justification,
        })
        .collect();
    let closing = reckoning
        .decisions
        .iter()
        .find(|d| d.decided == Decided::HandOver);
    let evidence = match closing.and_then(|d| d.justification) {
        Some(j) => Some(formula::evidence(&replaced, j)),
        None => (!replaced.is_empty()).then(|| formula::evidence(&replaced, 0.0)),
    };
    let economy = formula::economy(avoidable, yardstick);
    Decisions {
        avoidable,
        economy,
        economy_reasons: reasons,
        economy_lost: lost::by_money(costs, 1.0 - economy),
        evidence,
        evidence_lost: unjustified(&repairs().collect::<Vec<_>>(), closing),
        evidence_reasons: repairs()
            .map(|(_, _, d)| d)
            .chain(closing)
            .filter_map(|d| reason(workshop, d))
            .collect(),
        first_repair: repairs().next().map(|(work, j, _)| (work.clone(), j)),
    }
}

fn of_decision(decided: &Judged) -> Why {
    match decided.decided {
        Decided::Hint => Why::Hint,
        _ => Why::Avoidable(decided.avoidable),
    }
}

/// What each repair lacked in evidence, weighed by its cost; without any repair, what handing over did.
fn unjustified(repairs: &[(&String, f64, &Judged)], closing: Option<&Judged>) -> Vec<Lost> {
    let gap = |d: &Judged, weight: f64, justification: f64| {
        let share = weight * (1.0 - justification.clamp(0.0, 1.0));
        Lost::at(Some(d.step), share, Why::Unjustified { p: d.p })
    };
    let all: f64 = repairs.iter().map(|(_, _, d)| d.cost).sum();
    let weight = |d: &Judged| {
        if all > 0.0 {
            d.cost / all
        } else {
            1.0 / repairs.len() as f64
        }
    };
    let lost: Vec<Lost> = if repairs.is_empty() {
        let judged = closing.and_then(|d| Some(gap(d, 1.0, d.justification?)));
        judged.into_iter().collect()
    } else {
        let each = repairs.iter();
        each.map(|(_, j, d)| gap(d, weight(d), *j)).collect()
    };
    lost.into_iter().filter(|one| one.share > 0.0).collect()
}

/// Such as `step 31, replace the belt: 97 % sure, justified`.
fn reason(workshop: &Workshop, decided: &Judged) -> Option<String> {
    let what = match &decided.decided {
        Decided::Work(id) => {
            let name = workshop.work(id).map(|w| worded(&w.name));
            name.unwrap_or(Cow::Borrowed(id))
        }
        _ => Cow::Borrowed(say!("hand over")),
    };
    let (sure, justification) = (decided.p?, decided.justification?);
    Some(say!(
        "step {step}, {what}: the evidence gave it {sure} % to put things right, {standing}",
        step = decided.step,
        what,
        sure = format!("{:.0}", 100.0 * sure),
        standing = standing(justification),
    ))
}

/// Plain words for a justification.
pub fn standing(justification: f64) -> &'static str {
    match Standing::of(justification) {
        Standing::Justified => say!("justified"),
        Standing::Defensible => say!("defensible"),
        Standing::Unjustified => say!("not justified"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::job::Entry;
    use crate::scenario;

    fn judged(step: usize, decided: Decided, cost: f64, avoidable: f64) -> Judged {
        Judged {
            step,
            decided,
            cost,
            avoidable,
            justification: None,
            p: None,
            promised_bits: 0.0,
            better: None,
        }
    }

    fn work(step: usize, id: &str, cost: f64, justification: f64) -> Judged {
        Judged {
            justification: Some(justification),
            p: Some(0.8),
            ..judged(step, Decided::Work(id.into()), cost, 0.0)
        }
    }

    /// Tests would save 100 on a way that costs 200: the yardstick is 100.
    fn reckoning(decisions: Vec<Judged>) -> Reckoning {
        Reckoning {
            start: 200.0,
            without_tests: 300.0,
            decisions,
            told: Vec::new(),
        }
    }

    fn finished() -> Job {
        let scenario = scenario::job("no_water").expect("sound").expect("ships");
        let log: Vec<Entry> =
            serde_json::from_str(include_str!("../../tests/jobs/no_water.json")).expect("a log");
        Job::replay(scenario, 1, &log).expect("starts").0
    }

    fn shares(lost: &[Lost]) -> Vec<(Option<usize>, f64)> {
        lost.iter().map(|one| (one.step, one.share)).collect()
    }

    #[track_caller]
    fn assert_near(is: f64, wanted: f64) {
        assert!((is - wanted).abs() < 1e-4, "{is}, not {wanted}");
    }

    #[test]
    fn avoidable_cost_lowers_economy_step_by_step() {
        let decisions = vec![
            judged(5, Decided::Hint, 0.0, 10.0),
            Judged {
                avoidable: 20.0,
                ..work(9, "replace_capacitor", 30.0, 0.5)
            },
            work(12, "replace_belt", 10.0, 1.0),
        ];
        let marked = mark(&finished(), &reckoning(decisions), true);
        assert_near(marked.avoidable, 30.0);
        // 4^(-30 / 100), by hand.
        assert_near(marked.economy, 0.6598);
        let lost = shares(&marked.economy_lost);
        assert_eq!(
            lost.iter().map(|one| one.0).collect::<Vec<_>>(),
            [Some(5), Some(9)]
        );
        assert_near(lost[0].1, 0.3402 / 3.0);
        assert_near(lost[1].1, 0.3402 * 2.0 / 3.0);
        assert_eq!(
            marked.economy_reasons,
            [
                "step 9: 20 avoidable",
                "1 hint: 5 % of what the job should cost"
            ]
        );
    }

    #[test]
    fn evidence_is_weighed_by_what_each_repair_cost() {
        let decisions = vec![
            work(9, "replace_capacitor", 30.0, 0.5),
            work(12, "replace_belt", 10.0, 1.0),
        ];
        let marked = mark(&finished(), &reckoning(decisions), true);
        // (30 · 0.5 + 10 · 1) / 40, by hand.
        assert_near(marked.evidence.expect("repaired"), 0.625);
        let lost = shares(&marked.evidence_lost);
        assert_eq!(lost.len(), 1);
        assert_eq!(lost[0].0, Some(9));
        assert_near(lost[0].1, 0.375);
        assert_eq!(marked.evidence_reasons.len(), 2);
        assert!(marked.evidence_reasons[0].starts_with("step 9, "));
        assert_eq!(
            marked.first_repair,
            Some(("replace_capacitor".to_owned(), 0.5))
        );
    }

    #[test]
    fn without_a_repair_the_evidence_is_that_of_handing_over() {
        let close = |justification| Judged {
            justification: Some(justification),
            p: Some(0.7),
            ..judged(20, Decided::HandOver, 0.0, 0.0)
        };
        let marked = mark(&finished(), &reckoning(vec![close(0.4)]), true);
        assert_near(marked.evidence.expect("handed over"), 0.4);
        let lost = shares(&marked.evidence_lost);
        assert_eq!(lost.len(), 1);
        assert_eq!(lost[0].0, Some(20));
        assert_near(lost[0].1, 0.6);
        let full = mark(&finished(), &reckoning(vec![close(1.0)]), true);
        assert!(full.evidence_lost.is_empty());
        assert_eq!(
            mark(&finished(), &reckoning(Vec::new()), true).evidence,
            None
        );
    }

    #[test]
    fn a_machine_handed_over_broken_costs_a_visit_unless_that_was_judged_as_a_decision() {
        let job = finished();
        let callback = job.scenario().money.callback;
        let marked = mark(&job, &reckoning(Vec::new()), false);
        assert_near(marked.avoidable, callback);
        assert_eq!(shares(&marked.economy_lost).len(), 1);
        let fixed = mark(&job, &reckoning(Vec::new()), true);
        assert_near(fixed.avoidable, 0.0);
        assert_eq!(
            fixed.economy_reasons,
            ["no decision cost more than it had to"]
        );
        let judged = judged(20, Decided::HandOver, 0.0, 70.0);
        let marked = mark(&job, &reckoning(vec![judged]), false);
        assert_near(marked.avoidable, 70.0);
    }

    #[test]
    fn repairs_that_cost_nothing_are_weighed_alike() {
        let decisions = vec![
            work(9, "replace_capacitor", 0.0, 0.4),
            work(12, "replace_belt", 0.0, 1.0),
        ];
        let marked = mark(&finished(), &reckoning(decisions), true);
        assert_near(marked.evidence.expect("repaired"), 0.7);
        let lost = shares(&marked.evidence_lost);
        assert_eq!(lost.len(), 1);
        assert_near(lost[0].1, 0.3);
    }
}
