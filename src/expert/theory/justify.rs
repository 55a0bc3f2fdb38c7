//! Was a replacement justified by the evidence when it was made? What was known and what things
//! cost, never whether it was right.
//!
//! ```text
//! J = max(0, 1 - 2A/c)        A avoidable cost of the replacement, c its cost
//! p* = 1 - k/c                replace from here on, where a sure test of cost k is to be had
//! ```
//! Source of the form: design choice.

/// Justification, 0..1.
pub fn justification(avoidable: f64, cost: f64) -> f64 {
    if cost > 0.0 {
        (1.0 - 2.0 * avoidable.max(0.0) / cost).clamp(0.0, 1.0)
    } else if avoidable > 0.0 {
        0.0
    } else {
        1.0
    }
}

/// Plain standing of a justification.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// Not justified.
    Unjustified,
    /// Defensible.
    Defensible,
    /// Justified.
    Justified,
}

impl Standing {
    /// Of a justification.
    pub fn of(justification: f64) -> Self {
        if justification >= 0.8 {
            Self::Justified
        } else if justification >= 0.5 {
            Self::Defensible
        } else {
            Self::Unjustified
        }
    }
}

/// Probability from which on replacing at once is right, if a sure test of cost `test_cost` is to be
/// had.
pub fn break_even(test_cost: f64, repair_cost: f64) -> f64 {
    if repair_cost > 0.0 {
        (1.0 - test_cost / repair_cost).clamp(0.0, 1.0)
    } else {
        0.0
    }
}

/// Probability from which on an act is as good as the best one, by bisection: `excess` tells how much
/// dearer than the best the act is at a probability, and falls as that rises.
pub fn break_even_of(mut excess: impl FnMut(f64) -> f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if excess(middle) > 1e-9 {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn standing_follows_the_avoidable_cost() {
        assert_eq!(Standing::of(justification(0.0, 75.0)), Standing::Justified);
        assert_eq!(
            Standing::of(justification(15.0, 75.0)),
            Standing::Defensible
        );
        assert_eq!(
            Standing::of(justification(45.957, 75.0)),
            Standing::Unjustified
        );
        assert!((justification(28.513, 75.0) - 0.239_653).abs() < 1e-6);
    }

    #[test]
    fn a_sure_test_sets_the_break_even() {
        assert!((break_even(10.0, 75.0) - 0.866_667).abs() < 1e-6);
        assert!((break_even_of(|p| 0.4 - p) - 0.4).abs() < 1e-8);
    }
}
