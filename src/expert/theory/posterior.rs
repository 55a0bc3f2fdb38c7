//! Causes weighed by evidence. Weights are kept as logarithms, so that no amount of evidence
//! underflows, and nothing is pruned here.
//!
//! ```text
//! lp[h] += ln L(e|h)      p[h] = exp(lp[h] - max lp) / Σ
//! ```
//! Source: Bayes' theorem.

/// Causes with their weights.
#[derive(Clone, Debug, PartialEq)]
pub struct Posterior {
    log_weights: Vec<f64>,
}

impl Posterior {
    /// From weights before any evidence; they need not sum to one. Weights that are not positive
    /// numbers count as impossible.
    pub fn new(prior: &[f64]) -> Self {
        let log = |w: &f64| {
            if *w > 0.0 {
                libm::log(*w)
            } else {
                f64::NEG_INFINITY
            }
        };
        Self {
            log_weights: prior.iter().map(log).collect(),
        }
    }

    /// Takes in one piece of evidence: its likelihood under each cause, in their order.
    pub fn observe(&mut self, likelihood: &[f64]) {
        for (lp, l) in self.log_weights.iter_mut().zip(likelihood) {
            *lp += if *l > 0.0 {
                libm::log(*l)
            } else {
                f64::NEG_INFINITY
            };
        }
    }

    /// Something was repaired and the machine still fails: `after` tells for each cause what is left
    /// of it, none where it would be gone.
    pub fn still_failing(&mut self, after: &[Option<usize>]) {
        let mut weights = vec![f64::NEG_INFINITY; self.log_weights.len()];
        for (lp, left) in self.log_weights.iter().zip(after) {
            if let Some(h) = *left {
                weights[h] = log_sum(weights[h], *lp);
            }
        }
        self.log_weights = weights;
    }

    /// Raw weights, natural logarithms.
    pub fn log_weights(&self) -> &[f64] {
        &self.log_weights
    }

    /// Probabilities; all zero when every cause has become impossible.
    pub fn probabilities(&self) -> Vec<f64> {
        let top = self
            .log_weights
            .iter()
            .copied()
            .fold(f64::NEG_INFINITY, f64::max);
        if top == f64::NEG_INFINITY {
            return vec![0.0; self.log_weights.len()];
        }
        let mut p: Vec<f64> = self
            .log_weights
            .iter()
            .map(|lp| libm::exp(lp - top))
            .collect();
        let sum: f64 = p.iter().sum();
        p.iter_mut().for_each(|p| *p /= sum);
        p
    }
}

fn log_sum(a: f64, b: f64) -> f64 {
    let (high, low) = if a > b { (a, b) } else { (b, a) };
    if low == f64::NEG_INFINITY {
        high
    } else {
        high + libm::log1p(libm::exp(low - high))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn much_evidence_does_not_underflow() {
        let mut posterior = Posterior::new(&[0.5, 0.5]);
        for _ in 0..10_000 {
            posterior.observe(&[1e-6, 0.9e-6]);
        }
        let p = posterior.probabilities();
        assert!((p[0] - 1.0).abs() < 1e-12 && p.iter().sum::<f64>() - 1.0 < 1e-12);
    }

    #[test]
    fn a_pair_with_one_part_renewed_is_the_other_part() {
        // Causes: a, b, both.
        let mut posterior = Posterior::new(&[0.5, 0.3, 0.2]);
        posterior.still_failing(&[None, Some(1), Some(1)]);
        let p = posterior.probabilities();
        assert!((p[1] - 1.0).abs() < 1e-12, "{p:?}");
    }
}
