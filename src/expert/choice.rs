//! Which trials a plan reckons with: by bits for their cost, and by the pairs of causes that nothing
//! else tells apart.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::ledger::ticks_of;
use crate::bench::scenario::Scenario;
use crate::expert::drill::Drills;
use crate::expert::likely::Likely;
use crate::expert::theory::acts::Test;
use crate::expert::theory::information;
use crate::expert::trial;
use crate::expert::trial::Ground;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::expert::ways::way_min;

const MOST_TRIALS: usize = 16;
/// A trial that promises less is left out, bits.
const LEAST_BITS: f64 = 0.005;

/// The trials worth planning with, as tests; the rest shows nothing new or costs more for less.
pub(super) fn choose(
    likely: &[Likely<'_>],
    prior: &[f64],
    scenario: &Scenario,
    drills: &Drills,
    done: &BTreeSet<String>,
    here: &Stand,
) -> Vec<(Trial, Test)> {
    let rate = scenario.money.labour_per_min;
    let mut all: Vec<(f64, Trial, Test)> = Vec::new();
    let is_on = likely[0].job.machine().switched_on();
    let mut grounds: Vec<_> = likely.iter().map(|l| Ground::of(l.job)).collect();
    for trial in trial::trials(scenario, drills, is_on) {
        if done.contains(&trial.name) {
            continue;
        }
        let lines: Vec<_> = grounds.iter_mut().map(|g| g.shown(&trial)).collect();
        let Some((n_outcomes, mut likelihood)) = trial::outcomes(&lines.iter().collect::<Vec<_>>())
        else {
            continue;
        };
        likelihood.extend(std::iter::repeat_n(1.0 / n_outcomes as f64, n_outcomes));
        let acts = trial.beats.iter();
        let ticks: u64 = acts
            .map(|b| b.wait + ticks_of(&b.action, &scenario.workshop, 0.0))
            .sum();
        let pulls = 2
            * trial.apart.len() as u64
            * ticks_of(
                &Action::PullApart {
                    connector: String::new(),
                },
                &scenario.workshop,
                0.0,
            );
        let test = Test {
            cost: rate * (ticks + pulls) as f64 / 600.0,
            place: None,
            n_outcomes,
            likelihood,
        };
        let bits = information::expected_gain(prior, &test);
        if bits > LEAST_BITS {
            let way = match &trial.stand {
                Stand::Any => 0.0,
                stand => rate * way_min(scenario, here, stand),
            };
            all.push((bits / (test.cost + way).max(0.1), trial, test));
        }
    }
    all.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut kept: Vec<(Trial, Test)> = Vec::new();
    let mut rest = Vec::new();
    for (_, trial, test) in all {
        if kept.len() < MOST_TRIALS {
            kept.push((trial, test));
        } else {
            rest.push((trial, test));
        }
    }
    keep_for_pairs(likely.len(), &mut kept, rest);
    kept
}

/// Adds the best trial for each pair of causes that none of the kept tells apart.
fn keep_for_pairs(n: usize, kept: &mut Vec<(Trial, Test)>, rest: Vec<(Trial, Test)>) {
    let apart = |test: &Test, a: usize, b: usize| -> f64 {
        let each = test.row(a).iter().zip(test.row(b));
        0.5 * each.map(|(x, y)| (x - y).abs()).sum::<f64>()
    };
    for (trial, test) in rest {
        let pairs = (0..n).flat_map(|a| (0..a).map(move |b| (a, b)));
        let is_needed = pairs.into_iter().any(|(a, b)| {
            apart(&test, a, b) > 0.9 && kept.iter().all(|(_, t)| apart(t, a, b) < 0.9)
        });
        if is_needed && kept.len() < 2 * MOST_TRIALS {
            kept.push((trial, test));
        }
    }
}
