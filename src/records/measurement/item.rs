//! One job as an item: how likely each score is at each ability.
//!
//! ```text
//! P(x = k | t)  proportional to  exp( sum_{s<=k} a (t - b_s) )        k = 0 .. K
//! ```
//! Masters' (1982) partial credit model with a slope (Muraki 1992). One step is the two-parameter
//! logistic model, and with a = 1 Rasch's. No scaling constant 1.7.

/// A job's parameters.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// Slope a, per logit, above 0.
    pub slope: f64,
    /// Steps b_1 .. b_K, logits: where scores k-1 and k are equally likely.
    pub steps: Vec<f64>,
}

/// What an item gives at one ability.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moments {
    /// Expected score.
    pub mean: f64,
    /// Variance of the score.
    pub variance: f64,
    /// Third central moment of the score.
    pub third: f64,
}

impl Item {
    /// Pass or fail with slope 1.
    pub fn rasch(difficulty: f64) -> Self {
        Self::two_parameter(1.0, difficulty)
    }

    /// Pass or fail.
    pub fn two_parameter(slope: f64, difficulty: f64) -> Self {
        Self {
            slope,
            steps: vec![difficulty],
        }
    }

    /// Highest score.
    pub fn highest(&self) -> usize {
        self.steps.len()
    }

    /// Mean of the steps, logits: the place of the job on the scale.
    pub fn difficulty(&self) -> f64 {
        self.steps.iter().sum::<f64>() / self.steps.len() as f64
    }

    /// Probability of each score, written over `out`, which takes `highest() + 1` numbers.
    pub fn probabilities_into(&self, ability: f64, out: &mut Vec<f64>) {
        out.clear();
        out.push(0.0);
        let mut sum = 0.0;
        for step in &self.steps {
            sum += self.slope * (ability - step);
            out.push(sum);
        }
        let top = out.iter().fold(f64::NEG_INFINITY, |m, x| m.max(*x));
        let mut total = 0.0;
        for x in out.iter_mut() {
            *x = libm::exp(*x - top);
            total += *x;
        }
        for x in out.iter_mut() {
            *x /= total;
        }
    }

    /// Probability of each score.
    pub fn probabilities(&self, ability: f64) -> Vec<f64> {
        let mut out = Vec::with_capacity(self.steps.len() + 1);
        self.probabilities_into(ability, &mut out);
        out
    }

    /// Logarithm of the probability of a score, exact where the probability itself is nearly 0.
    pub fn log_probability(&self, ability: f64, score: usize) -> f64 {
        let mut at = 0.0;
        let mut own = 0.0;
        let mut exponents = vec![0.0];
        for (s, step) in self.steps.iter().enumerate() {
            at += self.slope * (ability - step);
            exponents.push(at);
            if s + 1 == score {
                own = at;
            }
        }
        let top = exponents.iter().fold(f64::NEG_INFINITY, |m, x| m.max(*x));
        let sum: f64 = exponents.iter().map(|x| libm::exp(x - top)).sum();
        own - top - libm::log(sum)
    }

    /// Mean, variance and third central moment of the score.
    pub fn moments(&self, ability: f64) -> Moments {
        let p = self.probabilities(ability);
        let mean: f64 = p.iter().enumerate().map(|(k, p)| k as f64 * p).sum();
        let mut variance = 0.0;
        let mut third = 0.0;
        for (k, p) in p.iter().enumerate() {
            let away = k as f64 - mean;
            variance += p * away * away;
            third += p * away * away * away;
        }
        Moments {
            mean,
            variance,
            third,
        }
    }

    /// Fisher information about ability: a² times the variance of the score.
    pub fn information(&self, ability: f64) -> f64 {
        self.slope * self.slope * self.moments(ability).variance
    }
}

/// Sum of the items' information at an ability.
pub fn information(items: &[Item], ability: f64) -> f64 {
    items.iter().map(|item| item.information(ability)).sum()
}

/// Expected raw score at an ability: the test characteristic curve.
pub fn expected_score(items: &[Item], ability: f64) -> f64 {
    items.iter().map(|item| item.moments(ability).mean).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_step_is_the_logistic_curve() {
        let item = Item::two_parameter(1.3, 0.4);
        for ability in [-3.0, 0.0, 0.4, 2.5] {
            let p = 1.0 / (1.0 + f64::exp(-1.3 * (ability - 0.4)));
            assert!((item.probabilities(ability)[1] - p).abs() < 1e-15);
            assert!((item.information(ability) - 1.69 * p * (1.0 - p)).abs() < 1e-15);
            assert!((item.log_probability(ability, 0) - (1.0 - p).ln()).abs() < 1e-14);
        }
    }

    #[test]
    fn neighbouring_scores_are_equally_likely_at_their_step() {
        let item = Item {
            slope: 0.8,
            steps: vec![-1.0, 0.3, 0.2],
        };
        for (k, step) in item.steps.iter().enumerate() {
            let p = item.probabilities(*step);
            assert!((p[k] - p[k + 1]).abs() < 1e-15);
        }
    }

    #[test]
    fn far_abilities_neither_overflow_nor_vanish() {
        let item = Item::two_parameter(4.0, 0.0);
        assert!((item.log_probability(-300.0, 1) + 1200.0).abs() < 1e-9);
        assert!(item.probabilities(1e6).iter().all(|p| p.is_finite()));
    }
}
