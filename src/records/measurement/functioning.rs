//! Does a job treat two groups of equal ability alike?
//!
//! ```text
//! OR = sum(a d / N) / sum(b c / N)        over strata of equal raw score
//! delta = -2.35 ln OR                      chi² with continuity correction, 1 degree of freedom
//! ```
//! Mantel and Haenszel (1959); Holland and Thayer (1988). A flag sends people to look, nothing more.

use crate::records::measurement::special::chi_square_tail;

/// Points of difficulty per logarithm of odds. Holland and Thayer.
const DELTA_PER_LOG: f64 = -2.35;
/// From here on a difference is large. Common practice in testing.
const LARGE: f64 = 1.5;
/// And sure enough.
const SURE: f64 = 0.05;

/// People of one raw score: `[[reference passed, failed], [focal passed, failed]]`.
pub type Stratum = [[f64; 2]; 2];

/// How differently a job treats the groups.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Functioning {
    /// Odds of passing, reference over focal.
    pub odds_ratio: f64,
    /// On the scale of difficulty points; below 0 harder for the focal group.
    pub delta: f64,
    /// Statistic.
    pub chi_square: f64,
    /// Chance of such a statistic or a larger one if both are treated alike.
    pub p: f64,
    /// Large and sure: people should look at the job.
    pub is_flagged: bool,
}

/// Compares; `None` when the strata say nothing (a group or an outcome missing everywhere).
pub fn functioning(strata: &[Stratum]) -> Option<Functioning> {
    let mut with = 0.0;
    let mut against = 0.0;
    let mut away = 0.0;
    let mut variance = 0.0;
    for [[a, b], [c, d]] in strata {
        let n = a + b + c + d;
        if n < 2.0 {
            continue;
        }
        with += a * d / n;
        against += b * c / n;
        away += a - (a + b) * (a + c) / n;
        variance += (a + b) * (c + d) * (a + c) * (b + d) / (n * n * (n - 1.0));
    }
    if !(with > 0.0 && against > 0.0 && variance > 0.0) {
        return None;
    }
    let odds_ratio = with / against;
    let delta = DELTA_PER_LOG * libm::log(odds_ratio);
    let corrected = (away.abs() - 0.5).max(0.0);
    let chi_square = corrected * corrected / variance;
    let p = chi_square_tail(chi_square, 1.0);
    Some(Functioning {
        odds_ratio,
        delta,
        chi_square,
        p,
        is_flagged: delta.abs() >= LARGE && p < SURE,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_odds_are_no_difference() {
        let fair = [[[20.0, 10.0], [40.0, 20.0]], [[9.0, 3.0], [3.0, 1.0]]];
        let found = functioning(&fair).expect("both groups");
        assert!((found.odds_ratio - 1.0).abs() < 1e-12 && !found.is_flagged);
        assert!(functioning(&[[[5.0, 0.0], [4.0, 0.0]]]).is_none());
    }
}
