//! Distributions of the raw score.
//!
//! ```text
//! f_j(s) = sum_k f_{j-1}(s - k) P_j(k)
//! ```
//! Lord and Wingersky (1984) for pass or fail, Thissen et al. (1995) for graded scores.

use crate::records::measurement::ability::Estimate;
use crate::records::measurement::ability::Posterior;
use crate::records::measurement::grid::Grid;
use crate::records::measurement::grid::Normal;
use crate::records::measurement::item::Item;

/// Chance of each raw score at an ability.
pub fn score_distribution(items: &[Item], ability: f64) -> Vec<f64> {
    let mut chances = vec![1.0];
    let mut p = Vec::new();
    for item in items {
        item.probabilities_into(ability, &mut p);
        chances = added(&chances, &p);
    }
    chances
}

/// The distribution with one more item.
pub(super) fn added(chances: &[f64], p: &[f64]) -> Vec<f64> {
    let mut next = vec![0.0; chances.len() + p.len() - 1];
    for (s, chance) in chances.iter().enumerate() {
        for (k, p) in p.iter().enumerate() {
            next[s + k] += chance * p;
        }
    }
    next
}

/// Chance of at least a raw score at an ability.
pub fn chance_of_at_least(items: &[Item], ability: f64, score: usize) -> f64 {
    score_distribution(items, ability).iter().skip(score).sum()
}

/// For each raw score, posterior mean and standard deviation of ability.
pub fn sum_score_eap(items: &[Item], prior: &Normal) -> Vec<Estimate> {
    let grid = Grid::under(prior);
    let at_nodes: Vec<Vec<f64>> = grid
        .nodes
        .iter()
        .map(|node| score_distribution(items, *node))
        .collect();
    let n_scores = at_nodes.first().map_or(0, Vec::len);
    (0..n_scores)
        .map(|score| {
            let logs: Vec<f64> = at_nodes
                .iter()
                .map(|chances| libm::log(chances[score].max(f64::MIN_POSITIVE)))
                .collect();
            Posterior::from_logs(grid.clone(), &logs).estimate()
        })
        .collect()
}

/// How well an assessment will tell people of a population apart: 1 less the mean posterior variance
/// over the population's. Exact for equal slopes, where the raw score says all there is.
pub fn expected_reliability(items: &[Item], population: &Normal) -> f64 {
    let grid = Grid::under(population);
    let mut chances = vec![0.0; items.iter().map(Item::highest).sum::<usize>() + 1];
    for (node, weight) in grid.nodes.iter().zip(&grid.weights) {
        for (sum, chance) in chances.iter_mut().zip(score_distribution(items, *node)) {
            *sum += weight * chance;
        }
    }
    let error: f64 = sum_score_eap(items, population)
        .iter()
        .zip(&chances)
        .map(|(estimate, chance)| chance * estimate.se * estimate.se)
        .sum();
    1.0 - error / (population.sd * population.sd)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_items_give_the_binomial() {
        let items = vec![Item::rasch(0.0); 4];
        let got = score_distribution(&items, 0.0);
        for (got, want) in got.iter().zip([1.0, 4.0, 6.0, 4.0, 1.0]) {
            assert!((got - want / 16.0).abs() < 1e-15);
        }
        assert!((chance_of_at_least(&items, 0.0, 3) - 5.0 / 16.0).abs() < 1e-15);
    }

    #[test]
    fn with_equal_slopes_the_raw_score_says_all_there_is() {
        use crate::records::measurement::ability::eap;
        let items = [Item::rasch(-0.4), Item::rasch(0.9), Item::rasch(0.1)];
        let by_sum = sum_score_eap(&items, &Normal::STANDARD);
        let by_pattern = eap(&items, &[Some(0), Some(1), Some(1)], &Normal::STANDARD);
        assert!((by_sum[2].value - by_pattern.value).abs() < 1e-12);
        assert!((by_sum[2].se - by_pattern.se).abs() < 1e-12);
    }

    #[test]
    fn longer_assessments_are_as_reliable_as_computed_elsewhere() {
        // Rasch, difficulties evenly from -1.5 to 1.5, ability N(0, 1): a separate program's table.
        for (n, reliability) in [(4, 0.41), (8, 0.59), (12, 0.68), (20, 0.78), (40, 0.88)] {
            let items: Vec<Item> = (0..n)
                .map(|i| Item::rasch(3.0 * f64::from(i) / f64::from(n - 1) - 1.5))
                .collect();
            let got = expected_reliability(&items, &Normal::STANDARD);
            assert!((got - reliability).abs() < 0.011, "{n}: {got}");
        }
    }
}
