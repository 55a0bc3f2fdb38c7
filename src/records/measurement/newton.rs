//! The M step: one Newton step for all parameters, given the expected counts.
//!
//! In the cuts c_s = a b_s and the slope a the model is an exponential family with statistics
//! -1[x >= s] and t x, so the negative Hessian is their covariance and never negative:
//!
//! ```text
//! g_s = -sum_q (R_s - n T_s)            H_st = sum_q n (T_max(s,t) - T_s T_t)
//! g_a =  sum_q t (sum_k k n_k - n E)    H_sa = -sum_q n t Cov(1[x >= s], x)    H_aa = sum_q n t² V
//! ```

use crate::records::measurement::counts::Counts;
use crate::records::measurement::counts::Tables;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::linear::Cholesky;
use crate::records::measurement::parameters::Parameters;
use crate::records::measurement::parameters::SlopeRule;
use crate::records::measurement::priors::Priors;

/// A parameter moves this far at most in a step, so that a bad start cannot throw it away.
const LONGEST_STEP: f64 = 1.0;
/// Slopes stay in here. Design choice: outside, an item says nothing or is a switch.
const SLOPES: (f64, f64) = (0.2, 4.0);

/// Gradient and negative Hessian of one item: its cuts, then its slope.
pub(super) struct Block {
    pub gradient: Vec<f64>,
    pub hessian: Vec<f64>,
}

/// The likelihood's part of an item's block.
pub(super) fn block(people: &[Vec<f64>], p: &[Vec<f64>], nodes: &[f64]) -> Block {
    let k = p.len() - 1;
    let n = k + 1;
    let mut gradient = vec![0.0; n];
    let mut hessian = vec![0.0; n * n];
    // Tails from s up: of people, of probability, of probability times score; index 0 is all.
    let mut tails = vec![[0.0; 3]; n];
    for (q, node) in nodes.iter().enumerate() {
        let mut sums = [0.0; 3];
        let mut scored = 0.0;
        let mut square = 0.0;
        for s in (0..n).rev() {
            let score = s as f64;
            sums[0] += people[s][q];
            sums[1] += p[s][q];
            sums[2] += score * p[s][q];
            tails[s] = sums;
            scored += score * people[s][q];
            square += score * score * p[s][q];
        }
        let [all, _, mean] = sums;
        for s in 1..n {
            let [people_above, above, scored_above] = tails[s];
            gradient[s - 1] -= people_above - all * above;
            for t in 1..=s {
                let both = all * above * (1.0 - tails[t][1]);
                hessian[(s - 1) * n + t - 1] += both;
            }
            let with_score = scored_above - above * mean;
            hessian[k * n + s - 1] -= all * node * with_score;
        }
        gradient[k] += node * (scored - all * mean);
        hessian[k * n + k] += all * node * node * (square - mean * mean);
    }
    for i in 0..n {
        for j in i + 1..n {
            hessian[i * n + j] = hessian[j * n + i];
        }
    }
    Block { gradient, hessian }
}

/// Takes the step; returns how far the parameter that moved most has moved.
pub(super) fn step(
    parameters: &mut Parameters,
    counts: &Counts,
    tables: &Tables,
    nodes: &[f64],
    rule: SlopeRule,
    priors: &Priors,
) -> Result<f64, MeasurementError> {
    let mut furthest: f64 = 0.0;
    let mut corner = 0.0;
    let mut corner_gradient = 0.0;
    let mut ways = Vec::with_capacity(parameters.cuts.len());
    for (item, people) in counts.people.iter().enumerate() {
        let mut own = block(people, &tables.p[item], nodes);
        let slope = parameters.slopes[item];
        priors.add_difficulty(
            item,
            &parameters.cuts[item],
            slope,
            false,
            &mut own.gradient,
            &mut own.hessian,
        );
        let k = parameters.cuts[item].len();
        let n = k + 1;
        if rule == SlopeRule::Free {
            let (g, h) = priors.slope_terms(slope, false);
            own.gradient[k] += g;
            own.hessian[k * n + k] += h;
            let way = solver(&own.hessian, n)?.solve(&own.gradient);
            furthest = furthest.max(move_slope(&mut parameters.slopes[item], way[k]));
            furthest = furthest.max(move_all(&mut parameters.cuts[item], &way));
            continue;
        }
        let cuts_only: Vec<f64> = (0..k * k)
            .map(|at| own.hessian[at / k * n + at % k])
            .collect();
        let border: Vec<f64> = (0..k).map(|s| own.hessian[s * n + k]).collect();
        let factor = solver(&cuts_only, k)?;
        let straight = factor.solve(&own.gradient[..k]);
        let aside = factor.solve(&border);
        corner += own.hessian[k * n + k] - dot(&border, &aside);
        corner_gradient += own.gradient[k] - dot(&border, &straight);
        ways.push((straight, aside));
    }
    let mut turn = 0.0;
    if rule == SlopeRule::Common {
        let first = parameters.slopes.first().copied().unwrap_or(1.0);
        let (g, h) = priors.slope_terms(first, false);
        turn = (corner_gradient + g) / (corner + h);
        for slope in &mut parameters.slopes {
            furthest = furthest.max(move_slope(slope, turn));
        }
    }
    for (cuts, (straight, aside)) in parameters.cuts.iter_mut().zip(ways) {
        let way: Vec<f64> = straight
            .iter()
            .zip(&aside)
            .map(|(s, a)| s - a * turn)
            .collect();
        furthest = furthest.max(move_all(cuts, &way));
    }
    if furthest.is_finite() {
        Ok(furthest)
    } else {
        Err(MeasurementError::NotIdentified("the estimates run away"))
    }
}

fn solver(hessian: &[f64], n: usize) -> Result<Cholesky, MeasurementError> {
    Cholesky::new(hessian, n).ok_or(MeasurementError::NotIdentified(
        "a job has no scores, or all of them are the same",
    ))
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn move_all(cuts: &mut [f64], way: &[f64]) -> f64 {
    let mut furthest: f64 = 0.0;
    for (cut, by) in cuts.iter_mut().zip(way) {
        let by = by.clamp(-LONGEST_STEP, LONGEST_STEP);
        *cut += by;
        furthest = if by.is_nan() {
            f64::NAN
        } else {
            furthest.max(by.abs())
        };
    }
    furthest
}

fn move_slope(slope: &mut f64, by: f64) -> f64 {
    let new = (*slope + by.clamp(-LONGEST_STEP, LONGEST_STEP)).clamp(SLOPES.0, SLOPES.1);
    let moved = (new - *slope).abs();
    *slope = new;
    moved
}
