//! The E step: how many people of each ability scored what, given the present parameters.
//!
//! ```text
//! L[q] = w_q prod_j P_j(x_j | t_q)      posterior = L / sum L      n_j,k[q] = sum of posteriors
//! ```
//! Bock and Aitkin (1981). Sums of logarithms, the largest taken off before exponentials.

use crate::records::measurement::grid::Grid;
use crate::records::measurement::item::Item;
use crate::records::measurement::responses::Responses;

/// Probabilities at the nodes: `[item][score][node]`.
pub(super) struct Tables {
    pub p: Vec<Vec<Vec<f64>>>,
    log_p: Vec<Vec<Vec<f64>>>,
    log_weights: Vec<f64>,
}

impl Tables {
    pub fn new(items: &[Item], grid: &Grid) -> Self {
        let mut p = Vec::with_capacity(items.len());
        let mut log_p = Vec::with_capacity(items.len());
        let mut at_node = Vec::new();
        for item in items {
            let mut own = vec![vec![0.0; grid.nodes.len()]; item.highest() + 1];
            for (q, node) in grid.nodes.iter().enumerate() {
                item.probabilities_into(*node, &mut at_node);
                for (row, value) in own.iter_mut().zip(&at_node) {
                    row[q] = *value;
                }
            }
            let log_own = own
                .iter()
                .map(|row| {
                    row.iter()
                        // A probability that has vanished stays finite in sums.
                        .map(|p| libm::log(p.max(f64::MIN_POSITIVE)))
                        .collect()
                })
                .collect();
            log_p.push(log_own);
            p.push(own);
        }
        Self {
            p,
            log_p,
            log_weights: grid.weights.iter().map(|w| libm::log(*w)).collect(),
        }
    }

    /// Posterior over the nodes, written over `out`; returns the logarithm of the pattern's
    /// probability.
    pub fn posterior_into(&self, scores: &[Option<u8>], out: &mut Vec<f64>) -> f64 {
        out.clear();
        out.extend_from_slice(&self.log_weights);
        for (item, score) in self.log_p.iter().zip(scores) {
            if let Some(score) = score {
                for (sum, log_p) in out.iter_mut().zip(&item[usize::from(*score)]) {
                    *sum += log_p;
                }
            }
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
        top + libm::log(total)
    }
}

/// Expected people: `[item][score][node]`, and how likely the data are.
pub(super) struct Counts {
    pub people: Vec<Vec<Vec<f64>>>,
    pub log_likelihood: f64,
}

impl Counts {
    pub fn new(responses: &Responses, tables: &Tables, n_nodes: usize) -> Self {
        let mut people: Vec<Vec<Vec<f64>>> = responses
            .highest()
            .iter()
            .map(|most| vec![vec![0.0; n_nodes]; usize::from(*most) + 1])
            .collect();
        let mut log_likelihood = 0.0;
        let mut posterior = Vec::with_capacity(n_nodes);
        for pattern in responses.patterns() {
            log_likelihood +=
                pattern.count * tables.posterior_into(&pattern.scores, &mut posterior);
            for weight in &mut posterior {
                *weight *= pattern.count;
            }
            for (item, score) in people.iter_mut().zip(&pattern.scores) {
                if let Some(score) = score {
                    for (sum, weight) in item[usize::from(*score)].iter_mut().zip(&posterior) {
                        *sum += weight;
                    }
                }
            }
        }
        Self {
            people,
            log_likelihood,
        }
    }
}
