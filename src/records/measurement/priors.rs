//! What is held of difficulties and slopes before any data: keeps jobs that all passed or nobody
//! passed finite, and lets simulated candidates speak until people do.
//!
//! ```text
//! b ~ N(m, s²) for each step of an item      ln a ~ N(0, t²)
//! ```
//! Derivatives are taken with respect to the cuts c = a b and the slope a.

use crate::records::measurement::grid::Normal;

/// Spread of difficulties in a small cohort, logits. Design choice: wide, since all it must do is
/// keep extremes finite.
const SMALL_COHORT_SD: f64 = 2.0;

/// Priors of a calibration.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Priors {
    /// Of each item's steps; empty for none at all.
    pub difficulties: Vec<Normal>,
    /// Standard deviation of ln a around 0, where slopes are estimated.
    pub log_slope_sd: Option<f64>,
}

impl Priors {
    /// Nothing is held beforehand.
    pub fn none() -> Self {
        Self::default()
    }

    /// For a cohort of any size: b ~ N(0, 2²).
    pub fn small_cohort(n_items: usize) -> Self {
        let normal = Normal {
            mean: 0.0,
            sd: SMALL_COHORT_SD,
        };
        Self {
            difficulties: vec![normal; n_items],
            log_slope_sd: None,
        }
    }

    /// From simulated candidates: b ~ N(b_simulated, 1).
    pub fn pre_calibrated(difficulties: &[f64]) -> Self {
        Self {
            difficulties: difficulties
                .iter()
                .map(|&mean| Normal { mean, sd: 1.0 })
                .collect(),
            log_slope_sd: None,
        }
    }

    /// Adds to the gradient and negative Hessian of one item's block: cuts, then the slope.
    /// Without `exact` the Hessian is its positive part, for steps that never go astray.
    pub(super) fn add_difficulty(
        &self,
        item: usize,
        cuts: &[f64],
        slope: f64,
        exact: bool,
        gradient: &mut [f64],
        hessian: &mut [f64],
    ) {
        let Some(prior) = self.difficulties.get(item) else {
            return;
        };
        let k = cuts.len();
        let n = k + 1;
        let precision = 1.0 / (prior.sd * prior.sd);
        for (s, c) in cuts.iter().enumerate() {
            let b = c / slope;
            let pull = (b - prior.mean) * precision;
            gradient[s] -= pull / slope;
            gradient[k] += pull * b / slope;
            hessian[s * n + s] += precision / (slope * slope);
            let bend = if exact { pull } else { 0.0 };
            let mixed = -(precision * b + bend) / (slope * slope);
            hessian[s * n + k] += mixed;
            hessian[k * n + s] += mixed;
            hessian[k * n + k] += b * (precision * b + 2.0 * bend) / (slope * slope);
        }
    }

    /// Gradient and negative Hessian of the slope's own prior.
    pub(super) fn slope_terms(&self, slope: f64, exact: bool) -> (f64, f64) {
        let Some(sd) = self.log_slope_sd else {
            return (0.0, 0.0);
        };
        let (l, precision) = (libm::log(slope), 1.0 / (sd * sd));
        let bend = if exact { l } else { 0.0 };
        (
            -l * precision / slope,
            (1.0 - bend) * precision / (slope * slope),
        )
    }

    /// Logarithm of the priors' density, constants left out; `slopes` are those estimated.
    pub(super) fn log_density(
        &self,
        cuts: &[Vec<f64>],
        item_slopes: &[f64],
        slopes: &[f64],
    ) -> f64 {
        let mut sum = 0.0;
        for ((prior, cuts), a) in self.difficulties.iter().zip(cuts).zip(item_slopes) {
            sum += cuts.iter().map(|c| prior.log_kernel(c / a)).sum::<f64>();
        }
        if let Some(sd) = self.log_slope_sd {
            for a in slopes {
                let z = libm::log(*a) / sd;
                sum -= 0.5 * z * z;
            }
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn derivatives_agree_with_differences() {
        let priors = Priors {
            difficulties: vec![Normal { mean: 0.3, sd: 1.7 }],
            log_slope_sd: Some(0.3),
        };
        let at = |c: f64, a: f64| priors.log_density(&[vec![c]], &[a], &[a]);
        let terms = |c: f64, a: f64| {
            let (mut g, mut h) = ([0.0; 2], [0.0; 4]);
            priors.add_difficulty(0, &[c], a, true, &mut g, &mut h);
            let (ga, haa) = priors.slope_terms(a, true);
            ([g[0], g[1] + ga], [h[0], h[1], h[3] + haa])
        };
        let (c, a, e) = (-0.8, 1.4, 1e-5);
        let (g, h) = terms(c, a);
        assert!(((at(c + e, a) - at(c - e, a)) / (2.0 * e) - g[0]).abs() < 1e-8);
        assert!(((at(c, a + e) - at(c, a - e)) / (2.0 * e) - g[1]).abs() < 1e-8);
        let slope_of = |i: usize, up: [f64; 2], down: [f64; 2]| (up[i] - down[i]) / (2.0 * e);
        let along_c = (terms(c + e, a).0, terms(c - e, a).0);
        let along_a = (terms(c, a + e).0, terms(c, a - e).0);
        assert!((slope_of(0, along_c.0, along_c.1) + h[0]).abs() < 1e-8);
        assert!((slope_of(1, along_c.0, along_c.1) + h[1]).abs() < 1e-8);
        assert!((slope_of(1, along_a.0, along_a.1) + h[2]).abs() < 1e-8);
    }
}
