//! Causes that come and go, and how many clean runs prove a repair.
//!
//! A cause is active or not for a whole epoch (a cycle, a start, a wiggle); all readings of the epoch
//! share that.
//! ```text
//! L(epoch) = q Π P(r|active) + (1-q) Π P(r|healthy)
//! P(not repaired | k clean) = (1-s)(1-q)^k / ((1-s)(1-q)^k + s)
//! k for risk α: ceil( ln(α s / ((1-α)(1-s))) / ln(1-q) )
//! ```
//! q share of epochs in which the cause is active, s chance that the repair was right. Source of the
//! form: published (mixture over a latent state).

/// Likelihood of one epoch from the likelihoods of its readings with the cause active and not.
pub fn likelihood(active_ratio: f64, if_active: f64, if_healthy: f64) -> f64 {
    active_ratio * if_active + (1.0 - active_ratio) * if_healthy
}

/// Chance that an intermittent cause is still there after `n_clean` clean runs.
pub fn not_repaired(active_ratio: f64, repaired_ratio: f64, n_clean: u32) -> f64 {
    let left = (1.0 - repaired_ratio) * libm::pow(1.0 - active_ratio, f64::from(n_clean));
    if left + repaired_ratio > 0.0 {
        left / (left + repaired_ratio)
    } else {
        1.0
    }
}

/// Clean runs needed until the chance that the cause is still there is at most `risk_ratio`; none
/// when no number of runs will do.
pub fn clean_runs(active_ratio: f64, repaired_ratio: f64, risk_ratio: f64) -> Option<u32> {
    if not_repaired(active_ratio, repaired_ratio, 0) <= risk_ratio {
        return Some(0);
    }
    if active_ratio <= 0.0 || repaired_ratio <= 0.0 || risk_ratio <= 0.0 {
        return None;
    }
    if active_ratio >= 1.0 {
        return Some(1);
    }
    let odds = risk_ratio * repaired_ratio / ((1.0 - risk_ratio) * (1.0 - repaired_ratio));
    let runs = libm::ceil(libm::log(odds) / libm::log1p(-active_ratio) - 1e-9);
    Some(runs as u32)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_formula_is_the_first_count_that_is_enough() {
        for q in [0.05, 0.2, 0.3, 0.7] {
            for s in [0.5, 0.8, 0.94] {
                let k = clean_runs(q, s, 0.05).expect("possible");
                let first = (0..2000).find(|k| not_repaired(q, s, *k) <= 0.05);
                assert_eq!(Some(k), first, "q {q}, s {s}");
            }
        }
    }

    #[test]
    fn a_cause_that_never_shows_cannot_be_proved_gone() {
        assert_eq!(clean_runs(0.0, 0.8, 0.05), None);
        assert_eq!(clean_runs(0.3, 0.99, 0.05), Some(0));
    }

    #[test]
    fn an_epoch_is_as_likely_as_its_readings_with_the_cause_there_or_not() {
        assert!((likelihood(0.3, 0.9, 0.2) - (0.27 + 0.14)).abs() < 1e-12);
        assert!((likelihood(1.0, 0.9, 0.2) - 0.9).abs() < 1e-12);
        assert!((likelihood(0.0, 0.9, 0.2) - 0.2).abs() < 1e-12);
    }

    #[test]
    fn what_was_never_repaired_stays_and_what_surely_was_is_gone() {
        assert!((not_repaired(0.5, 0.0, 3) - 1.0).abs() < 1e-12);
        assert!(not_repaired(0.5, 1.0, 3).abs() < 1e-12);
        // Even chances, and three clean runs where every second one would have failed: 1 in 9.
        assert!((not_repaired(0.5, 0.5, 3) - 1.0 / 9.0).abs() < 1e-12);
        assert_eq!(clean_runs(0.5, 0.5, 0.0), None);
        assert_eq!(clean_runs(1.0, 0.5, 0.05), Some(1));
    }
}
