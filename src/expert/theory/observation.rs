//! What is seen, heard or smelt: one of a few categories, noted wrongly now and then.
//!
//! ```text
//! P(o|cause) = 1-η where o is what the cause would give, else η/(K-1)
//! ```
//! K categories, η share of wrong notes. Where parts differ so that the category does, its share of
//! the draws takes the place of 0 and 1. Source of the form: design choice.

/// Probability of the category that was noted; `share` is how much of the cause's parts give it.
pub fn probability(share: f64, n_categories: usize, wrong_ratio: f64) -> f64 {
    if n_categories < 2 {
        return 1.0;
    }
    let other = wrong_ratio / (n_categories - 1) as f64;
    share * (1.0 - wrong_ratio) + (1.0 - share) * other
}

/// Probabilities of all categories for a cause that gives `category`.
pub fn row(category: usize, n_categories: usize, wrong_ratio: f64) -> Vec<f64> {
    (0..n_categories)
        .map(|o| probability(f64::from(o == category), n_categories, wrong_ratio))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn categories_sum_to_one() {
        let share = [0.5, 0.3, 0.2];
        let sum: f64 = share.iter().map(|s| probability(*s, 3, 0.15)).sum();
        assert!((sum - 1.0).abs() < 1e-15);
        assert!((row(1, 4, 0.03).iter().sum::<f64>() - 1.0).abs() < 1e-15);
    }

    #[test]
    fn the_only_category_says_nothing() {
        assert!((probability(1.0, 1, 0.15) - 1.0).abs() < 1e-15);
    }
}
