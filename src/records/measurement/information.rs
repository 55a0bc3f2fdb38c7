//! Exact standard errors of a calibration: the observed information by Louis (1982).
//!
//! ```text
//! I = sum_p n_p ( E[complete information] - Var[complete score] )      over the posterior of p
//! ```
//! The first term alone, which EM leaves behind, would make the errors too small. No numerical
//! differences are taken. A prior's own curvature is added.

use crate::records::measurement::counts::Counts;
use crate::records::measurement::counts::Tables;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::grid::Grid;
use crate::records::measurement::linear::Cholesky;
use crate::records::measurement::newton;
use crate::records::measurement::parameters::Parameters;
use crate::records::measurement::parameters::SlopeRule;
use crate::records::measurement::priors::Priors;
use crate::records::measurement::responses::Responses;

/// Where each item's parameters stand in the whole list.
struct Places {
    cuts: Vec<usize>,
    slopes: Vec<Option<usize>>,
    n: usize,
}

impl Places {
    fn new(parameters: &Parameters, rule: SlopeRule) -> Self {
        let mut n = 0;
        let mut cuts = Vec::new();
        let mut slopes = Vec::new();
        for own in &parameters.cuts {
            cuts.push(n);
            n += own.len();
            slopes.push((rule == SlopeRule::Free).then_some(n));
            n += usize::from(rule == SlopeRule::Free);
        }
        if rule == SlopeRule::Common {
            slopes = vec![Some(n); parameters.cuts.len()];
            n += 1;
        }
        Self { cuts, slopes, n }
    }

    /// Place of a parameter of an item's block; cuts first, then the slope.
    fn of(&self, item: usize, n_cuts: usize, index: usize) -> Option<usize> {
        if index < n_cuts {
            Some(self.cuts[item] + index)
        } else {
            self.slopes[item]
        }
    }
}

/// Covariance of all parameters, row by row.
pub(super) fn covariance(
    responses: &Responses,
    parameters: &Parameters,
    counts: &Counts,
    tables: &Tables,
    grid: &Grid,
    rule: SlopeRule,
    priors: &Priors,
) -> Result<Vec<f64>, MeasurementError> {
    let places = Places::new(parameters, rule);
    let n = places.n;
    let mut information = vec![0.0; n * n];
    for (item, cuts) in parameters.cuts.iter().enumerate() {
        let mut own = newton::block(&counts.people[item], &tables.p[item], &grid.nodes);
        let slope = parameters.slopes[item];
        priors.add_difficulty(item, cuts, slope, true, &mut own.gradient, &mut own.hessian);
        let k = cuts.len();
        let is_first_of_common = rule == SlopeRule::Common && item == 0;
        if rule == SlopeRule::Free || is_first_of_common {
            own.hessian[(k + 1) * (k + 1) - 1] += priors.slope_terms(slope, true).1;
        }
        for i in 0..=k {
            for j in 0..=k {
                if let (Some(row), Some(column)) = (places.of(item, k, i), places.of(item, k, j)) {
                    information[row * n + column] += own.hessian[i * (k + 1) + j];
                }
            }
        }
    }
    take_off_spread(
        &mut information,
        responses,
        parameters,
        tables,
        grid,
        &places,
    );
    let factor = Cholesky::new(&information, n).ok_or(MeasurementError::NotIdentified(
        "some parameters trade off against each other",
    ))?;
    Ok(factor.inverse())
}

/// Subtracts each pattern's variance of the complete score over its posterior; lower triangle.
fn take_off_spread(
    information: &mut [f64],
    responses: &Responses,
    parameters: &Parameters,
    tables: &Tables,
    grid: &Grid,
    places: &Places,
) {
    let n = places.n;
    let expected = expectations(tables);
    let mut posterior = Vec::new();
    let mut score = vec![0.0; n];
    for pattern in responses.patterns() {
        tables.posterior_into(&pattern.scores, &mut posterior);
        let mut mean = vec![0.0; n];
        for (q, weight) in posterior.iter().enumerate() {
            // Below this nothing is added that a double could hold.
            if *weight < 1e-20 {
                continue;
            }
            score.fill(0.0);
            for (item, x) in pattern.scores.iter().enumerate() {
                let Some(x) = x else { continue };
                let x = usize::from(*x);
                let k = parameters.cuts[item].len();
                let tails = &expected[item][q];
                for s in 1..=k {
                    let reached = f64::from(u8::from(x >= s));
                    score[places.cuts[item] + s - 1] = tails[s] - reached;
                }
                if let Some(at) = places.slopes[item] {
                    score[at] += grid.nodes[q] * (x as f64 - tails[0]);
                }
            }
            for i in 0..n {
                let scaled = pattern.count * weight * score[i];
                let row = &mut information[i * n..i * n + i + 1];
                for (sum, other) in row.iter_mut().zip(&score) {
                    *sum -= scaled * other;
                }
                mean[i] += weight * score[i];
            }
        }
        for i in 0..n {
            let scaled = pattern.count * mean[i];
            let row = &mut information[i * n..i * n + i + 1];
            for (sum, other) in row.iter_mut().zip(&mean) {
                *sum += scaled * other;
            }
        }
    }
}

/// `[item][node]`: the expected score, then the chances of reaching 1, 2, ….
fn expectations(tables: &Tables) -> Vec<Vec<Vec<f64>>> {
    tables
        .p
        .iter()
        .map(|p| {
            (0..p[0].len())
                .map(|q| {
                    let mut out = vec![0.0; p.len()];
                    let mut tail = 0.0;
                    for s in (1..p.len()).rev() {
                        tail += p[s][q];
                        out[s] = tail;
                        out[0] += s as f64 * p[s][q];
                    }
                    out
                })
                .collect()
        })
        .collect()
}
