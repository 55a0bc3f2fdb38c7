//! A job's difficulty from simulated candidates of known ability, before any human tried it.
//!
//! ```text
//! P(pass) = 1 / (1 + exp(-a (t - b)))      logistic regression of pass on t, Newton's method
//! ```
//! Human errors are not the simulated ones: use it as a prior and to order jobs, never as a fact.

use crate::records::measurement::ability::Estimate;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::linear::Cholesky;

const SETTLED: f64 = 1e-10;
const MOST_ROUNDS: usize = 100;
const LONGEST_STEP: f64 = 1.0;

/// A logistic curve fitted to runs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PreCalibration {
    /// Slope, per logit.
    pub slope: Estimate,
    /// Ability at which half pass, logits.
    pub difficulty: Estimate,
    /// Runs it rests on.
    pub n_runs: usize,
}

impl PreCalibration {
    /// On a scale where the simulated candidates have mean 0 and standard deviation 1.
    pub fn standardised(&self, mean: f64, sd: f64) -> Self {
        let by = |e: Estimate, factor: f64| Estimate {
            value: e.value * factor,
            se: e.se * factor.abs(),
        };
        let centred = Estimate {
            value: self.difficulty.value - mean,
            ..self.difficulty
        };
        Self {
            slope: by(self.slope, sd),
            difficulty: by(centred, 1.0 / sd),
            n_runs: self.n_runs,
        }
    }
}

/// Fits runs of `(ability, passed)`.
///
/// # Errors
/// When all passed, all failed, or ability alone tells who passed, so that no curve is the best.
pub fn pre_calibrate(runs: &[(f64, bool)]) -> Result<PreCalibration, MeasurementError> {
    let nothing = MeasurementError::NotIdentified(
        "all candidates passed or failed, or ability alone tells who did",
    );
    let passed = runs.iter().filter(|(_, passed)| *passed).count();
    if passed == 0 || passed == runs.len() || is_split(runs) {
        return Err(nothing);
    }
    let n = runs.len() as f64;
    let mean = runs.iter().map(|(t, _)| t).sum::<f64>() / n;
    let share = passed as f64 / n;
    // Intercept at the mean ability, then slope.
    let mut at = [libm::log(share / (1.0 - share)), 0.0];
    let mut covariance = Vec::new();
    for _ in 0..MOST_ROUNDS {
        let mut g = [0.0; 2];
        let mut h = [0.0; 4];
        for (t, passed) in runs {
            let t = t - mean;
            let p = 1.0 / (1.0 + libm::exp(-(at[0] + at[1] * t)));
            let e = f64::from(u8::from(*passed)) - p;
            let v = p * (1.0 - p);
            g[0] += e;
            g[1] += e * t;
            h[0] += v;
            h[2] += v * t;
            h[3] += v * t * t;
        }
        let factor = Cholesky::new(&h, 2).ok_or_else(|| nothing.clone())?;
        covariance = factor.inverse();
        let way = factor.solve(&g);
        at[0] += way[0].clamp(-LONGEST_STEP, LONGEST_STEP);
        at[1] += way[1].clamp(-LONGEST_STEP, LONGEST_STEP);
        if way[0].abs().max(way[1].abs()) < SETTLED {
            break;
        }
    }
    let [intercept, slope] = at;
    let b = -intercept / slope;
    let variance_b =
        (covariance[0] + 2.0 * b * covariance[1] + b * b * covariance[3]) / (slope * slope);
    Ok(PreCalibration {
        slope: Estimate {
            value: slope,
            se: covariance[3].sqrt(),
        },
        difficulty: Estimate {
            value: mean + b,
            se: variance_b.sqrt(),
        },
        n_runs: runs.len(),
    })
}

/// Everybody above some ability passed and everybody below failed, or the other way round.
fn is_split(runs: &[(f64, bool)]) -> bool {
    let bounds = |which: bool| {
        runs.iter()
            .filter(|(_, passed)| *passed == which)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), (t, _)| {
                (low.min(*t), high.max(*t))
            })
    };
    let (pass, fail) = (bounds(true), bounds(false));
    pass.0 >= fail.1 || fail.0 >= pass.1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_abilities_give_their_own_logits() {
        // The saturated case has a closed form: logit(30/40) at -1, logit(36/40) at 2.
        let mut runs = Vec::new();
        for i in 0..40 {
            runs.push((-1.0, i < 30));
            runs.push((2.0, i < 36));
        }
        let fit = pre_calibrate(&runs).expect("mixed");
        let (low, high) = (f64::ln(3.0), f64::ln(9.0));
        let slope = (high - low) / 3.0;
        assert!((fit.slope.value - slope).abs() < 1e-9);
        assert!((fit.difficulty.value - (-1.0 - low / slope)).abs() < 1e-9);
        // Variance of a logit is 1/(n p q).
        let se = (1.0 / 7.5 + 1.0 / 3.6_f64).sqrt() / 3.0;
        assert!((fit.slope.se - se).abs() < 1e-9);
    }

    #[test]
    fn what_settles_nothing_is_refused() {
        assert!(pre_calibrate(&[]).is_err());
        assert!(pre_calibrate(&[(0.0, true), (1.0, true)]).is_err());
        assert!(pre_calibrate(&[(0.0, false), (1.0, true)]).is_err());
    }
}
