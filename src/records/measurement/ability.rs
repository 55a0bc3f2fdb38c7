//! A person's ability from their scores, with its standard error.
//!
//! ```text
//! EAP  mean and standard deviation of the posterior        finite for any scores
//! MAP  its mode; 1/sqrt(1/sd² + I)                          finite for any scores
//! ML   sum a (x - E) = 0; 1/sqrt(I)                         not for all or nothing
//! WLE  maximum of log L + ln(I)/2 (Warm 1989); 1/sqrt(I)    no prior, finite for any scores
//! ```

use crate::records::measurement::grid::Grid;
use crate::records::measurement::grid::Normal;
use crate::records::measurement::item::Item;
use crate::records::measurement::responses::raw_score;

/// Abilities are looked for this far outside the items' steps, logits.
const REACH: f64 = 12.0;
/// Halvings of an interval: down to the last bit.
const HALVINGS: usize = 70;
/// Points at which the objective of WLE, which may have two humps, is looked at first.
const N_LOOKS: usize = 400;
/// Intervals on each side of a cut score; even, for Simpson's rule.
const N_SIDE: usize = 240;

/// A number and how sure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// The number, logits for an ability.
    pub value: f64,
    /// Its standard error (posterior standard deviation for EAP).
    pub se: f64,
}

/// What scores say about ability on top of a prior.
#[derive(Clone, Debug, PartialEq)]
pub struct Posterior {
    /// Abilities, logits.
    pub nodes: Vec<f64>,
    /// Weights, sum 1.
    pub weights: Vec<f64>,
    /// Probability of just these scores.
    pub marginal: f64,
}

impl Posterior {
    /// Of scores, gaps left out.
    pub fn new(items: &[Item], scores: &[Option<u8>], prior: &Normal) -> Self {
        let grid = Grid::under(prior);
        let logs: Vec<f64> = grid
            .nodes
            .iter()
            .map(|node| log_likelihood(items, scores, *node))
            .collect();
        Self::from_logs(grid, &logs)
    }

    /// From log likelihoods at the nodes of a grid.
    pub(super) fn from_logs(grid: Grid, logs: &[f64]) -> Self {
        let top = logs.iter().fold(f64::NEG_INFINITY, |m, x| m.max(*x));
        let mut weights: Vec<f64> = grid
            .weights
            .iter()
            .zip(logs)
            .map(|(w, l)| w * libm::exp(l - top))
            .collect();
        let total: f64 = weights.iter().sum();
        for weight in &mut weights {
            *weight /= total;
        }
        Self {
            nodes: grid.nodes,
            weights,
            marginal: total * libm::exp(top),
        }
    }

    /// Mean and standard deviation.
    pub fn estimate(&self) -> Estimate {
        let value: f64 = self
            .nodes
            .iter()
            .zip(&self.weights)
            .map(|(t, w)| t * w)
            .sum();
        let variance: f64 = self
            .nodes
            .iter()
            .zip(&self.weights)
            .map(|(t, w)| w * (t - value) * (t - value))
            .sum();
        Estimate {
            value,
            se: variance.sqrt(),
        }
    }
}

/// Logarithm of the probability of scores at an ability.
pub fn log_likelihood(items: &[Item], scores: &[Option<u8>], ability: f64) -> f64 {
    given(items, scores)
        .map(|(item, score)| item.log_probability(ability, score))
        .sum()
}

/// Posterior mean with posterior standard deviation.
pub fn eap(items: &[Item], scores: &[Option<u8>], prior: &Normal) -> Estimate {
    Posterior::new(items, scores, prior).estimate()
}

/// Posterior chance that ability is at or above a cut, integrated on each side of it.
pub fn chance_above(items: &[Item], scores: &[Option<u8>], prior: &Normal, cut: f64) -> f64 {
    let low = prior.mean - REACH * prior.sd / 2.0;
    let high = prior.mean + REACH * prior.sd / 2.0;
    let cut = cut.clamp(low, high);
    let top = log_likelihood(items, scores, eap(items, scores, prior).value);
    let density = |t: f64| libm::exp(log_likelihood(items, scores, t) - top + prior.log_kernel(t));
    let below = simpson(low, cut, density);
    let above = simpson(cut, high, density);
    above / (below + above)
}

/// Posterior mode.
pub fn map(items: &[Item], scores: &[Option<u8>], prior: &Normal) -> Estimate {
    let precision = 1.0 / (prior.sd * prior.sd);
    let (low, high) = range(items);
    let value = falling_root(low.min(prior.mean), high.max(prior.mean), |t| {
        slope_of_likelihood(items, scores, t) - (t - prior.mean) * precision
    });
    let information = information_of(items, scores, value) + precision;
    Estimate {
        value,
        se: 1.0 / information.sqrt(),
    }
}

/// Maximum likelihood; `None` when everything or nothing was scored.
pub fn maximum_likelihood(items: &[Item], scores: &[Option<u8>]) -> Option<Estimate> {
    let raw = raw_score(scores);
    let most: usize = given(items, scores).map(|(item, _)| item.highest()).sum();
    if raw == 0 || raw == most {
        return None;
    }
    let (low, high) = range(items);
    let value = falling_root(low, high, |t| slope_of_likelihood(items, scores, t));
    Some(Estimate {
        value,
        se: 1.0 / information_of(items, scores, value).sqrt(),
    })
}

/// Warm's weighted likelihood; `None` without a single score.
pub fn weighted_likelihood(items: &[Item], scores: &[Option<u8>]) -> Option<Estimate> {
    given(items, scores).next()?;
    let (low, high) = range(items);
    let objective = |t: f64| {
        log_likelihood(items, scores, t) + 0.5 * libm::log(information_of(items, scores, t))
    };
    let step = (high - low) / N_LOOKS as f64;
    let best = (0..=N_LOOKS)
        .map(|i| low + i as f64 * step)
        .max_by(|a, b| objective(*a).total_cmp(&objective(*b)))?;
    let slope = |t: f64| {
        let mut information = 0.0;
        let mut bend = 0.0;
        for (item, _) in given(items, scores) {
            let moments = item.moments(t);
            let a2 = item.slope * item.slope;
            information += a2 * moments.variance;
            bend += a2 * item.slope * moments.third;
        }
        slope_of_likelihood(items, scores, t) + bend / (2.0 * information)
    };
    let value = falling_root(best - step, best + step, slope);
    Some(Estimate {
        value,
        se: 1.0 / information_of(items, scores, value).sqrt(),
    })
}

/// How well a set of estimates tells people apart: variance of the means over that plus the mean
/// squared error, divisor n - 1. `None` for fewer than two people.
pub fn reliability(estimates: &[Estimate]) -> Option<f64> {
    let n = estimates.len() as f64;
    if estimates.len() < 2 {
        return None;
    }
    let mean = estimates.iter().map(|e| e.value).sum::<f64>() / n;
    let spread = estimates
        .iter()
        .map(|e| (e.value - mean) * (e.value - mean))
        .sum::<f64>()
        / (n - 1.0);
    let error = estimates.iter().map(|e| e.se * e.se).sum::<f64>() / n;
    Some(spread / (spread + error))
}

/// The items that were given, with what was scored; a score above an item's highest counts as it.
pub(super) fn given<'a>(
    items: &'a [Item],
    scores: &'a [Option<u8>],
) -> impl Iterator<Item = (&'a Item, usize)> {
    items.iter().zip(scores).filter_map(|(item, score)| {
        score.map(|score| (item, usize::from(score).min(item.highest())))
    })
}

fn information_of(items: &[Item], scores: &[Option<u8>], ability: f64) -> f64 {
    given(items, scores)
        .map(|(item, _)| item.information(ability))
        .sum()
}

fn slope_of_likelihood(items: &[Item], scores: &[Option<u8>], ability: f64) -> f64 {
    given(items, scores)
        .map(|(item, score)| item.slope * (score as f64 - item.moments(ability).mean))
        .sum()
}

fn range(items: &[Item]) -> (f64, f64) {
    let steps = || items.iter().flat_map(|item| item.steps.iter());
    (
        steps().fold(0.0, |m: f64, b| m.min(*b)) - REACH,
        steps().fold(0.0, |m: f64, b| m.max(*b)) + REACH,
    )
}

/// Where a function that falls from above 0 to below crosses it.
fn falling_root(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (low, high);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if f(middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

fn simpson(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
    let step = (high - low) / N_SIDE as f64;
    let mut sum = f(low) + f(high);
    for i in 1..N_SIDE {
        let weight = if i % 2 == 1 { 4.0 } else { 2.0 };
        sum += weight * f(low + i as f64 * step);
    }
    sum * step / 3.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn items() -> Vec<Item> {
        vec![
            Item::rasch(-1.0),
            Item::two_parameter(1.4, 0.2),
            Item {
                slope: 0.9,
                steps: vec![-0.5, 0.4, 1.1],
            },
        ]
    }

    #[test]
    fn a_better_score_never_lowers_an_estimate() {
        let items = items();
        let prior = Normal::STANDARD;
        let mut last = [f64::NEG_INFINITY; 3];
        for third in 0..=3 {
            let scores = [Some(1), Some(0), Some(third)];
            let now = [
                eap(&items, &scores, &prior).value,
                map(&items, &scores, &prior).value,
                weighted_likelihood(&items, &scores).expect("scored").value,
            ];
            assert!(
                now.iter().zip(&last).all(|(n, l)| n > l),
                "{now:?} {last:?}"
            );
            last = now;
        }
    }

    #[test]
    fn without_scores_the_prior_stands() {
        let prior = Normal { mean: 0.7, sd: 1.3 };
        let none = [None, None, None];
        let estimate = eap(&items(), &none, &prior);
        assert!((estimate.value - 0.7).abs() < 1e-12 && (estimate.se - 1.3).abs() < 1e-6);
        assert!((chance_above(&items(), &none, &prior, 0.7) - 0.5).abs() < 1e-9);
        assert!(maximum_likelihood(&items(), &none).is_none());
        assert!(weighted_likelihood(&items(), &none).is_none());
    }

    #[test]
    fn all_or_nothing_has_no_maximum_and_yet_an_estimate() {
        let all = [Some(1), Some(1), Some(3)];
        assert!(maximum_likelihood(&items(), &all).is_none());
        assert!(
            weighted_likelihood(&items(), &all)
                .expect("scored")
                .value
                .is_finite()
        );
        assert!(map(&items(), &all, &Normal::STANDARD).value > 0.0);
    }
}
