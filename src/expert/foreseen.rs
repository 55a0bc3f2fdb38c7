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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::Sense;
    use crate::bench::notebook::Note;
    use crate::bench::notebook::NoteEntry;
    use crate::bench::notebook::Seen;

    fn showing(key: &str) -> Option<Shown> {
        let seen = vec![Seen {
            key: key.to_owned(),
            amount: None,
            text: String::new(),
        }];
        let note = Note {
            number: 1,
            tick: 0,
            state: String::new(),
            entry: NoteEntry::Observation {
                sense: Sense::Look,
                place: "belt".to_owned(),
                seen,
            },
        };
        Some(Shown {
            notes: vec![note],
            ..Shown::default()
        })
    }

    #[test]
    fn machines_that_show_the_same_share_an_outcome_and_the_likeliest_comes_first() {
        let shown = ["slack", "off", "slack", "off"].map(showing);
        let found = foreseen(&shown, &[0.1, 0.5, 0.3, 0.1], &[0, 1, 2, 3]).expect("they differ");
        assert_eq!(found.n_outcomes, 2);
        for (cause, first) in [(0, false), (1, true), (2, false), (3, true)] {
            let row = &found.likelihood[2 * cause..2 * cause + 2];
            assert!((row.iter().sum::<f64>() - 1.0).abs() < 1e-12, "{row:?}");
            assert_eq!(row[0] > 0.9, first, "{row:?}");
            assert_eq!(row[1] > 0.9, !first, "{row:?}");
        }
    }

    #[test]
    fn degrees_of_a_cause_count_by_how_likely_they_are_and_one_no_longer_run_tells_nothing() {
        let shown = [showing("slack"), showing("off"), showing("off"), None];
        let found = foreseen(&shown, &[0.3, 0.1, 0.6, 0.0], &[0, 0, 1, 2]).expect("they differ");
        // Off is the likelier thing to see; of the first cause three in four machines are slack.
        let row = |cause: usize| &found.likelihood[2 * cause..2 * cause + 2];
        assert!((row(0)[1] - 0.75).abs() < 0.02, "{:?}", row(0));
        assert!(row(1)[0] > 0.9, "{:?}", row(1));
        assert!((row(2)[0] - 0.5).abs() < 1e-9, "{:?}", row(2));
    }

    #[test]
    fn nothing_could_come_of_what_all_machines_show_alike_or_nobody_weighs() {
        let alike = ["slack", "slack"].map(showing);
        assert_eq!(foreseen(&alike, &[0.5, 0.5], &[0, 1]), None);
        let silent = [Some(Shown::default()), Some(Shown::default())];
        assert_eq!(foreseen(&silent, &[0.5, 0.5], &[0, 1]), None);
    }

    #[test]
    fn no_more_than_six_outcomes_are_told_apart() {
        let shown: Vec<_> = (0..9).map(|n| showing(&format!("thing {n}"))).collect();
        let causes: Vec<usize> = (0..9).collect();
        let found = foreseen(&shown, &[1.0 / 9.0; 9], &causes).expect("they differ");
        assert_eq!((found.n_outcomes, found.likelihood.len()), (6, 54));
        // What fits none of the six may come as any of them.
        let last = &found.likelihood[48..];
        assert!(
            last.iter().all(|p| (p - 1.0 / 6.0).abs() < 1e-9),
            "{last:?}"
        );
    }
}
