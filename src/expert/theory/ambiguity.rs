//! Causes that no test tells apart.
//!
//! ```text
//! TV = ½ ∫|f - g|        BC = ∫ sqrt(f g)
//! ```
//! A pair is told apart when one test errs at most 5 % at even odds (TV ≥ 0.90), or all tests
//! together do (½ Π BC ≤ 0.05). Groups are what hangs together by pairs not told apart; a group with
//! more than one remedy does harm. Source: published distances; limits design choice.

use core::f64::consts::SQRT_2;

use crate::expert::theory::normal;

/// What a test shows under a cause.
#[derive(Clone, Debug, PartialEq)]
pub enum Shows {
    /// A value, normally scattered.
    Value {
        /// Mean.
        mean: f64,
        /// Standard deviation.
        sd: f64,
    },
    /// One of some categories, with their probabilities.
    Category(Vec<f64>),
}

/// Largest error that counts as told apart: of one test at even odds, and of all together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Least total variation of a test that tells a pair apart.
    pub least_variation: f64,
    /// Largest ½ Π BC over all tests that tells a pair apart.
    pub most_overlap: f64,
}

/// 5 % errors. Design choice.
pub const LIMITS: Limits = Limits {
    least_variation: 0.90,
    most_overlap: 0.05,
};

/// How well a pair of causes is told apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pair {
    /// First cause.
    pub a: usize,
    /// Second cause.
    pub b: usize,
    /// Test that tells them apart best; none without tests.
    pub best_test: Option<usize>,
    /// Total variation of that test.
    pub variation: f64,
    /// ½ Π BC over all tests.
    pub overlap: f64,
    /// The pair is told apart.
    pub is_separable: bool,
}

/// Causes that hang together.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// Its causes in ascending order.
    pub causes: Vec<usize>,
    /// More than one remedy: guessing between them costs parts.
    pub is_harmful: bool,
}

/// Total variation between what two causes show in a test, 0..1.
pub fn total_variation(f: &Shows, g: &Shows) -> f64 {
    match (f, g) {
        (Shows::Category(f), Shows::Category(g)) => {
            0.5 * f.iter().zip(g).map(|(f, g)| (f - g).abs()).sum::<f64>()
        }
        (Shows::Value { mean: m1, sd: s1 }, Shows::Value { mean: m2, sd: s2 }) => {
            normal_variation(*m1, *s1, *m2, *s2)
        }
        // A value is never a category.
        _ => 1.0,
    }
}

/// Bhattacharyya coefficient between what two causes show in a test, 0..1.
pub fn overlap(f: &Shows, g: &Shows) -> f64 {
    match (f, g) {
        (Shows::Category(f), Shows::Category(g)) => {
            f.iter().zip(g).map(|(f, g)| (f * g).sqrt()).sum()
        }
        (Shows::Value { mean: m1, sd: s1 }, Shows::Value { mean: m2, sd: s2 }) => {
            let square = s1 * s1 + s2 * s2;
            if square <= 0.0 {
                return f64::from((m1 - m2).abs() <= 0.0);
            }
            let apart = (m1 - m2) * (m1 - m2) / (4.0 * square);
            (2.0 * s1 * s2 / square).sqrt() * libm::exp(-apart)
        }
        _ => 0.0,
    }
}

/// Every pair of causes; `shows` by cause, then by test.
pub fn pairs(shows: &[Vec<Shows>], limits: Limits) -> Vec<Pair> {
    let mut pairs = Vec::new();
    for a in 0..shows.len() {
        for b in a + 1..shows.len() {
            pairs.push(pair(shows, a, b, limits));
        }
    }
    pairs
}

/// One pair of causes.
pub fn pair(shows: &[Vec<Shows>], a: usize, b: usize, limits: Limits) -> Pair {
    let mut best_test = None;
    let mut variation = 0.0;
    let mut product = 0.5;
    for (t, (f, g)) in shows[a].iter().zip(&shows[b]).enumerate() {
        let tv = total_variation(f, g);
        if best_test.is_none() || tv > variation {
            (best_test, variation) = (Some(t), tv);
        }
        product *= overlap(f, g);
    }
    let is_separable = variation >= limits.least_variation || product <= limits.most_overlap;
    Pair {
        a,
        b,
        best_test,
        variation,
        overlap: product,
        is_separable,
    }
}

/// Groups of causes that hang together, in the order of their first cause; `remedy` numbers what
/// mends each cause.
pub fn groups(n_causes: usize, pairs: &[Pair], remedy: &[usize]) -> Vec<Group> {
    let mut first: Vec<usize> = (0..n_causes).collect();
    for pair in pairs.iter().filter(|p| !p.is_separable) {
        let (low, high) = (
            first[pair.a].min(first[pair.b]),
            first[pair.a].max(first[pair.b]),
        );
        first
            .iter_mut()
            .filter(|f| **f == high)
            .for_each(|f| *f = low);
    }
    let members = |of: usize| -> Vec<usize> { (0..n_causes).filter(|&h| first[h] == of).collect() };
    let each = (0..n_causes).filter(|&h| first[h] == h).map(members);
    each.map(|causes| Group {
        is_harmful: causes.iter().any(|&h| remedy[h] != remedy[causes[0]]),
        causes,
    })
    .collect()
}

/// Normal densities cross at most twice; between crossings one lies above the other.
fn normal_variation(m1: f64, s1: f64, m2: f64, s2: f64) -> f64 {
    if s1 <= 0.0 || s2 <= 0.0 {
        return f64::from((m1 - m2).abs() > 0.0 || (s1 - s2).abs() > 0.0);
    }
    if (s1 - s2).abs() <= 1e-12 * s1.max(s2) {
        return libm::erf((m1 - m2).abs() / (2.0 * SQRT_2 * s1));
    }
    // (x-m1)²/s1² - (x-m2)²/s2² + 2 ln(s1/s2) = 0
    let (w1, w2) = (1.0 / (s1 * s1), 1.0 / (s2 * s2));
    let a = w1 - w2;
    let half_b = m2 * w2 - m1 * w1;
    let c = m1 * m1 * w1 - m2 * m2 * w2 + 2.0 * libm::log(s1 / s2);
    let root = (half_b * half_b - a * c).max(0.0).sqrt();
    let far = if half_b > 0.0 {
        -half_b - root
    } else {
        -half_b + root
    };
    let near = if far.abs() > 0.0 { c / far } else { 0.0 };
    let (x1, x2) = (far / a, near);
    let (low, high) = (x1.min(x2), x1.max(x2));
    let inside = |m: f64, s: f64| normal::between((low - m) / s, (high - m) / s);
    (inside(m1, s1) - inside(m2, s2)).abs()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn value(mean: f64, sd: f64) -> Shows {
        Shows::Value { mean, sd }
    }

    /// Against a trapezoid over 40,001 nodes.
    #[test]
    fn unequal_scatter_agrees_with_integration() {
        for (m1, s1, m2, s2) in [
            (5.0, 0.5, 5.1, 0.8),
            (0.0, 1.0, 3.0, 0.2),
            (1.0, 2.0, 1.0, 0.5),
        ] {
            let (low, pace) = (-20.0, 40.0 / 40_000.0);
            let mut tv = 0.0;
            let mut bc = 0.0;
            for k in 0..=40_000 {
                let x = low + f64::from(k) * pace;
                let (f, g) = (normal::density(x, m1, s1), normal::density(x, m2, s2));
                tv += 0.5 * (f - g).abs() * pace;
                bc += (f * g).sqrt() * pace;
            }
            assert!((total_variation(&value(m1, s1), &value(m2, s2)) - tv).abs() < 1e-6);
            assert!((overlap(&value(m1, s1), &value(m2, s2)) - bc).abs() < 1e-6);
        }
    }

    #[test]
    fn groups_hang_together_over_a_third() {
        let near = |x: f64| vec![value(x, 1.0)];
        let shows = [near(0.0), near(1.0), near(2.0), near(20.0)];
        let found = groups(4, &pairs(&shows, LIMITS), &[0, 0, 1, 2]);
        assert_eq!(found.len(), 2);
        assert_eq!(found[0].causes, [0, 1, 2]);
        assert!(found[0].is_harmful && !found[1].is_harmful);
    }

    #[test]
    fn values_of_one_scatter_overlap_as_bells_do() {
        // Bells of one width cross half way: TV = 2 Φ(d/2σ) - 1.
        for (d, tv) in [
            (0.0, 0.0),
            (1.0, 0.382_925),
            (2.0, 0.682_689),
            (4.0, 0.954_500),
        ] {
            let (one, other) = (value(3.0, 2.0), value(3.0 + 2.0 * d, 2.0));
            assert!((total_variation(&one, &other) - tv).abs() < 1e-6, "{d}");
            assert!((total_variation(&other, &one) - tv).abs() < 1e-6, "{d}");
        }
    }

    #[test]
    fn values_without_scatter_are_the_same_or_never() {
        let sure = value(3.0, 0.0);
        for (other, is_other) in [
            (value(3.0, 0.0), 0.0),
            (value(3.1, 0.0), 1.0),
            (value(3.0, 0.5), 1.0),
        ] {
            assert!(
                (total_variation(&sure, &other) - is_other).abs() < 1e-12,
                "{other:?}"
            );
            assert!(
                (total_variation(&other, &sure) - is_other).abs() < 1e-12,
                "{other:?}"
            );
            assert!(
                (overlap(&sure, &other) - (1.0 - is_other)).abs() < 1e-12,
                "{other:?}"
            );
        }
    }

    #[test]
    fn a_scatter_hardly_wider_is_hardly_another() {
        let one = value(10.0, 1.0);
        let near = value(10.0, 1.0 + 1e-9);
        assert!(total_variation(&one, &near) < 1e-8);
        let far = value(12.0, 1.0 + 1e-9);
        let alike = value(12.0, 1.0);
        let by = total_variation(&one, &far) - total_variation(&one, &alike);
        assert!(by.abs() < 1e-6, "{by}");
    }

    #[test]
    fn a_value_is_never_a_category_and_categories_overlap_by_their_shares() {
        let (yes, often) = (vec![1.0, 0.0], vec![0.64, 0.36]);
        let (yes, often) = (Shows::Category(yes), Shows::Category(often));
        assert!((total_variation(&yes, &often) - 0.36).abs() < 1e-12);
        assert!((overlap(&yes, &often) - 0.8).abs() < 1e-12);
        assert!((total_variation(&yes, &value(1.0, 1.0)) - 1.0).abs() < 1e-12);
        assert!(overlap(&value(1.0, 1.0), &yes).abs() < 1e-12);
    }

    fn share(p: f64) -> Shows {
        Shows::Category(vec![p, 1.0 - p])
    }

    #[test]
    fn a_pair_is_told_apart_by_one_sure_test_or_by_many_unsure_ones() {
        let of = |a: &[f64], b: &[f64]| {
            let shows = [a, b].map(|ps| ps.iter().map(|p| share(*p)).collect::<Vec<_>>());
            pair(&shows, 0, 1, LIMITS)
        };
        // At even odds a test that shows 95 against 5 errs just once in twenty.
        assert!(of(&[0.96], &[0.05]).is_separable);
        assert!(!of(&[0.94], &[0.05]).is_separable);
        let many = of(&[0.8; 12], &[0.2; 12]);
        assert!(many.is_separable && many.variation < 0.9, "{many:?}");
        assert!(!of(&[0.8; 3], &[0.2; 3]).is_separable);
        // The best test is the one that differs most, the first of two alike.
        let best = of(&[0.5, 0.9, 0.9], &[0.5, 0.2, 0.2]);
        assert_eq!(best.best_test, Some(1));
        assert!((best.variation - 0.7).abs() < 1e-12);
        let growing = of(&[0.6, 0.9], &[0.5, 0.2]);
        assert_eq!(growing.best_test, Some(1));
        assert_eq!(of(&[0.5], &[0.5]).best_test, Some(0));
        let none = of(&[], &[]);
        assert_eq!((none.best_test, none.is_separable), (None, false));
        assert!((none.overlap - 0.5).abs() < 1e-12);
    }

    #[test]
    fn causes_that_hang_together_only_over_others_are_one_group() {
        let alike = |a: usize, b: usize| Pair {
            a,
            b,
            best_test: None,
            variation: 0.0,
            overlap: 0.5,
            is_separable: false,
        };
        let pairs = [alike(0, 3), alike(1, 2), alike(2, 3)];
        let found = groups(5, &pairs, &[7, 7, 7, 7, 1]);
        let causes: Vec<_> = found.iter().map(|g| g.causes.clone()).collect();
        assert_eq!(causes, [vec![0, 1, 2, 3], vec![4]]);
        assert!(!found[0].is_harmful, "one remedy mends all of them");
    }
}
