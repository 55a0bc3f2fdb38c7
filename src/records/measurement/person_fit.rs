//! People whose scores do not go with their ability: lucky on hard jobs, lost on easy ones.
//!
//! ```text
//! l_z = (l0 - E) / sqrt(V)        l0 = sum ln P(x), E and V its mean and variance
//! outfit = mean of (x - E)²/V     infit = sum (x - E)² / sum V
//! ```
//! Drasgow, Levine and Williams (1985); Wright and Masters (1982).

use crate::records::measurement::ability::given;
use crate::records::measurement::item::Item;

/// l_z below this is unusual for one person in forty.
const UNUSUAL: f64 = -1.96;
/// With fewer jobs l_z is too far from normal to say anything.
const FEWEST_JOBS: usize = 8;
/// Beyond this, logits, l_z says nothing either.
const FURTHEST: f64 = 3.0;

/// How well a person's scores fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PersonFit {
    /// Standardised log likelihood; 0 where nothing varies.
    pub l_z: f64,
    /// Information-weighted mean square, 1 as expected.
    pub infit: f64,
    /// Plain mean square, 1 as expected.
    pub outfit: f64,
    /// Jobs it rests on.
    pub n_jobs: usize,
    /// Worth a look by a person.
    pub is_unusual: bool,
}

/// Fit at an ability; `None` without a score.
pub fn person_fit(items: &[Item], scores: &[Option<u8>], ability: f64) -> Option<PersonFit> {
    let mut likely = 0.0;
    let mut expected = 0.0;
    let mut spread = 0.0;
    let mut squares = 0.0;
    let mut standard = 0.0;
    let mut variance = 0.0;
    let mut n_jobs = 0;
    for (item, score) in given(items, scores) {
        n_jobs += 1;
        let logs: Vec<f64> = (0..=item.highest())
            .map(|k| item.log_probability(ability, k))
            .collect();
        let mean: f64 = logs.iter().map(|l| libm::exp(*l) * l).sum();
        likely += logs[score];
        expected += mean;
        spread += logs
            .iter()
            .map(|l| libm::exp(*l) * (l - mean) * (l - mean))
            .sum::<f64>();
        let moments = item.moments(ability);
        let away = score as f64 - moments.mean;
        squares += away * away;
        standard += away * away / moments.variance;
        variance += moments.variance;
    }
    if n_jobs == 0 {
        return None;
    }
    let l_z = if spread > 0.0 {
        (likely - expected) / spread.sqrt()
    } else {
        0.0
    };
    Some(PersonFit {
        l_z,
        infit: squares / variance,
        outfit: standard / n_jobs as f64,
        n_jobs,
        is_unusual: l_z < UNUSUAL && n_jobs >= FEWEST_JOBS && ability.abs() < FURTHEST,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn failing_the_easy_and_passing_the_hard_is_unusual() {
        let items: Vec<Item> = (0..10)
            .map(|i| Item::rasch(f64::from(i) * 0.6 - 2.7))
            .collect();
        let usual: Vec<Option<u8>> = (0..10).map(|i| Some(u8::from(i < 5))).collect();
        let odd: Vec<Option<u8>> = (0..10).map(|i| Some(u8::from(i >= 5))).collect();
        let fit = |scores: &[Option<u8>]| person_fit(&items, scores, 0.0).expect("scored");
        assert!(!fit(&usual).is_unusual && fit(&usual).outfit < 1.0);
        assert!(fit(&odd).is_unusual && fit(&odd).outfit > 1.5);
        assert!(person_fit(&items, &[None; 10], 0.0).is_none());
    }
}
