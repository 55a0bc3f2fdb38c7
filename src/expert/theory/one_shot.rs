//! One decision, such as which part to bring, with or without a test before it.
//!
//! ```text
//! without: min_d Σ_h p_h C[d][h]        with: Σ_o min_d Σ_h p_h L[h][o] C[d][h]
//! ```
//! Source: published (Howard 1966).

/// A decision: cost of each choice under each cause.
#[derive(Clone, Debug, PartialEq)]
pub struct Decision {
    /// Probability of each cause.
    pub p: Vec<f64>,
    /// Cost by choice, then by cause.
    pub cost: Vec<Vec<f64>>,
}

impl Decision {
    /// Least expected cost on what is known, and the choice.
    pub fn best(&self) -> (usize, f64) {
        self.best_at(&self.p)
    }

    /// Expected cost with a free test first; its likelihood by cause, then by outcome.
    pub fn with_test(&self, likelihood: &[Vec<f64>]) -> f64 {
        let n_outcomes = likelihood.first().map_or(0, Vec::len);
        let given = |o: usize| -> Vec<f64> {
            self.p
                .iter()
                .zip(likelihood)
                .map(|(p, row)| p * row[o])
                .collect()
        };
        (0..n_outcomes).map(|o| self.best_at(&given(o)).1).sum()
    }

    /// Worth of a free test.
    pub fn worth_of_test(&self, likelihood: &[Vec<f64>]) -> f64 {
        self.best().1 - self.with_test(likelihood)
    }

    /// Worth of knowing the cause for sure.
    pub fn worth_of_knowing(&self) -> f64 {
        let cheapest = |h: usize| self.cost.iter().map(|c| c[h]).fold(f64::INFINITY, f64::min);
        let sure: f64 = self
            .p
            .iter()
            .enumerate()
            .map(|(h, p)| p * cheapest(h))
            .sum();
        self.best().1 - sure
    }

    fn best_at(&self, p: &[f64]) -> (usize, f64) {
        let expected = |c: &Vec<f64>| c.iter().zip(p).map(|(c, p)| c * p).sum::<f64>();
        let each = self.cost.iter().map(expected).enumerate();
        each.fold((0, f64::INFINITY), |best, (d, cost)| {
            if cost < best.1 { (d, cost) } else { best }
        })
    }
}
