//! What could have come of a step: outcomes that the causes' machines would have shown, and how likely
//! each was under each cause. Judging a reading needs what it could have said, not only what it said.
//!
//! Machines whose lines explain each other share an outcome; see `weigh` for how lines are held
//! against each other.

use crate::expert::twin::Shown;
use crate::expert::weigh;

/// Most outcomes told apart.
const MOST_OUTCOMES: usize = 6;
/// Two machines show the same when each explains the other's lines this well, in logarithms.
const SAME: f64 = 2.0;

/// Outcomes of a step before it was done.
#[derive(Clone, Debug, PartialEq)]
pub struct Foreseen {
    /// How many outcomes there were.
    pub n_outcomes: usize,
    /// Probability of each under each cause: cause after cause.
    pub likelihood: Vec<f64>,
}

/// From what each variant's machine showed; `weights` by variant, `cause_of` the variant's cause. None
/// when the step wrote nothing that is weighed, or all would have shown the same.
pub(super) fn foreseen(
    shown: &[Option<Shown>],
    weights: &[f64],
    cause_of: &[usize],
) -> Option<Foreseen> {
    let mut order: Vec<usize> = (0..shown.len()).filter(|&v| shown[v].is_some()).collect();
    order.sort_by(|a, b| weights[*b].total_cmp(&weights[*a]));
    let mut kinds: Vec<&Shown> = Vec::new();
    for lines in order.iter().filter_map(|&v| shown[v].as_ref()) {
        let is_like = |kind: &&Shown| {
            let like = |a: &Shown, b: &Shown| fit(a, b) > fit(a, a) - SAME;
            like(lines, kind) && like(kind, lines)
        };
        if kinds.len() < MOST_OUTCOMES && !kinds.iter().any(is_like) {
            kinds.push(lines);
        }
    }
    if kinds.len() < 2 {
        return None;
    }
    let n_outcomes = kinds.len();
    let n_causes = cause_of.iter().max().map_or(0, |last| last + 1);
    let even = 1.0 / n_outcomes as f64;
    let mut likelihood = vec![0.0; n_causes * n_outcomes];
    let mut sums = vec![0.0; n_causes];
    for (v, lines) in shown.iter().enumerate() {
        let row = match lines {
            Some(lines) => shares(&kinds, lines),
            None => vec![even; n_outcomes],
        };
        // A cause that is out of the running still needs a row.
        let weight = weights[v].max(1e-12);
        let at = cause_of[v] * n_outcomes;
        row.iter()
            .enumerate()
            .for_each(|(o, share)| likelihood[at + o] += weight * share);
        sums[cause_of[v]] += weight;
    }
    for (cause, sum) in sums.iter().enumerate() {
        let row = &mut likelihood[cause * n_outcomes..(cause + 1) * n_outcomes];
        row.iter_mut()
            .for_each(|l| *l = if *sum > 0.0 { *l / sum } else { even });
    }
    Some(Foreseen {
        n_outcomes,
        likelihood,
    })
}

fn shares(kinds: &[&Shown], lines: &Shown) -> Vec<f64> {
    let logs: Vec<f64> = kinds.iter().map(|kind| fit(kind, lines)).collect();
    let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let shares: Vec<f64> = logs.iter().map(|l| libm::exp(l - best)).collect();
    let sum: f64 = shares.iter().sum();
    shares.iter().map(|s| s / sum).collect()
}

/// Log likelihood of lines on a machine that would show others.
fn fit(is: &Shown, expected: &Shown) -> f64 {
    let lines = is.notes.iter().enumerate();
    lines
        .filter(|(_, note)| weigh::is_weighed(note))
        .map(|(n, note)| expected.fit(n, note))
        .sum()
}
