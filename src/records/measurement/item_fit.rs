//! Jobs that do not behave as modelled: mean squares for any job, S-X² for pass or fail.
//!
//! ```text
//! S-X²_j = sum_k N_k (O - E)² / (E (1 - E))     over raw scores k = 1 .. J-1
//! E = integral of P_j f_without_j(k-1) / integral of f(k)
//! ```
//! Orlando and Thissen (2000). Mean squares: Wright and Masters (1982).

use crate::records::measurement::calibration::Calibration;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::grid::Grid;
use crate::records::measurement::item::Item;
use crate::records::measurement::parameters::SlopeRule;
use crate::records::measurement::responses::Responses;
use crate::records::measurement::responses::raw_score;
use crate::records::measurement::special::chi_square_tail;
use crate::records::measurement::sum_score::added;

/// Groups are merged until this many are expected in either cell.
const FEWEST_EXPECTED: f64 = 1.0;

/// Mean squares of one job; 1 as expected, above 1 noisier.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MeanSquares {
    /// Information-weighted.
    pub infit: f64,
    /// Plain.
    pub outfit: f64,
    /// People it rests on.
    pub n_people: usize,
}

/// Mean squares of every job; `abilities` by person, `None` leaves the person out.
pub fn mean_squares(
    items: &[Item],
    responses: &Responses,
    abilities: &[Option<f64>],
) -> Vec<MeanSquares> {
    let mut sums = vec![[0.0; 3]; items.len()];
    let mut n_people = vec![0_usize; items.len()];
    for (person, ability) in abilities.iter().enumerate().take(responses.n_people()) {
        let Some(ability) = ability else { continue };
        for (item, score) in responses.person(person).iter().enumerate() {
            let Some(score) = score else { continue };
            let moments = items[item].moments(*ability);
            let away = f64::from(*score) - moments.mean;
            sums[item][0] += away * away;
            sums[item][1] += moments.variance;
            sums[item][2] += away * away / moments.variance;
            n_people[item] += 1;
        }
    }
    sums.iter()
        .zip(n_people)
        .map(|([squares, variance, standard], n_people)| MeanSquares {
            infit: squares / variance,
            outfit: standard / n_people as f64,
            n_people,
        })
        .collect()
}

/// Observed and expected passes of one job among people with one raw score.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// Lowest raw score in it.
    pub from: usize,
    /// Highest raw score in it.
    pub to: usize,
    /// People.
    pub n: f64,
    /// How many of them passed the job.
    pub passed: f64,
    /// How many were to be expected.
    pub expected: f64,
}

/// A job's S-X².
#[derive(Clone, Debug, PartialEq)]
pub struct ScoreFit {
    /// The statistic.
    pub chi_square: f64,
    /// Degrees of freedom: groups less the job's parameters, at least 0.
    pub df: usize,
    /// Chance of such a statistic or a larger one if all is as modelled.
    pub p: f64,
    /// What it is the sum of.
    pub groups: Vec<Group>,
}

/// S-X² of every job, from people who did all jobs. With `merge`, neighbouring groups are put
/// together until each cell expects at least one person.
///
/// # Errors
/// For graded scores.
pub fn score_fit(
    calibration: &Calibration,
    responses: &Responses,
    merge: bool,
) -> Result<Vec<ScoreFit>, MeasurementError> {
    responses.demand_pass_or_fail("S-X²")?;
    let items = &calibration.items;
    let grid = Grid::standard();
    let own_parameters = if calibration.rule == SlopeRule::Free {
        2
    } else {
        1
    };
    Ok((0..items.len())
        .map(|item| {
            let mut groups = observed(responses, item);
            let shares = expected_shares(items, item, &grid);
            for group in &mut groups {
                group.expected = group.n * shares[group.from];
            }
            groups.retain(|group| group.n > 0.0);
            if merge {
                groups = merged(groups);
            }
            let chi_square = groups.iter().map(Group::chi_square).sum();
            let df = groups.len().saturating_sub(own_parameters);
            ScoreFit {
                chi_square,
                df,
                p: chi_square_tail(chi_square, df as f64),
                groups,
            }
        })
        .collect())
}

impl Group {
    fn chi_square(&self) -> f64 {
        let away = self.passed - self.expected;
        away * away * self.n / (self.expected * (self.n - self.expected))
    }

    fn is_thin(&self) -> bool {
        self.expected < FEWEST_EXPECTED || self.n - self.expected < FEWEST_EXPECTED
    }

    fn with(self, other: Self) -> Self {
        Self {
            from: self.from.min(other.from),
            to: self.to.max(other.to),
            n: self.n + other.n,
            passed: self.passed + other.passed,
            expected: self.expected + other.expected,
        }
    }
}

/// One group a raw score, all and nothing left out.
fn observed(responses: &Responses, item: usize) -> Vec<Group> {
    let mut groups: Vec<Group> = (1..responses.n_items())
        .map(|score| Group {
            from: score,
            to: score,
            n: 0.0,
            passed: 0.0,
            expected: 0.0,
        })
        .collect();
    for pattern in responses.patterns() {
        let is_whole = pattern.scores.iter().all(Option::is_some);
        let score = raw_score(&pattern.scores);
        if is_whole && score > 0 && score < responses.n_items() {
            groups[score - 1].n += pattern.count;
            groups[score - 1].passed +=
                pattern.count * f64::from(pattern.scores[item].unwrap_or(0));
        }
    }
    groups
}

/// Chance that people with each raw score passed the job.
fn expected_shares(items: &[Item], item: usize, grid: &Grid) -> Vec<f64> {
    let n = items.len() + 1;
    let mut passed = vec![0.0; n];
    let mut all = vec![0.0; n];
    for (node, weight) in grid.nodes.iter().zip(&grid.weights) {
        let mut others = vec![1.0];
        for (at, other) in items.iter().enumerate() {
            if at != item {
                others = added(&others, &other.probabilities(*node));
            }
        }
        let p = items[item].probabilities(*node);
        for (score, chance) in others.iter().enumerate() {
            passed[score + 1] += weight * p[1] * chance;
            all[score + 1] += weight * p[1] * chance;
            all[score] += weight * p[0] * chance;
        }
    }
    passed.iter().zip(&all).map(|(p, a)| p / a).collect()
}

/// Thin groups join their inner neighbour, from both ends towards the middle.
fn merged(groups: Vec<Group>) -> Vec<Group> {
    let mut out: Vec<Group> = Vec::new();
    for group in groups {
        match out.last_mut() {
            Some(last) if last.is_thin() => *last = last.with(group),
            _ => out.push(group),
        }
    }
    while out.len() > 1 && out.last().is_some_and(Group::is_thin) {
        if let Some(last) = out.pop()
            && let Some(before) = out.last_mut()
        {
            *before = before.with(last);
        }
    }
    out
}
