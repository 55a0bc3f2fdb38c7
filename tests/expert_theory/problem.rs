//! Random small problems with a plain exhaustive search, and the worked example.

use proptest::prelude::*;
use tubwright::expert::theory::acts::Repair;
use tubwright::expert::theory::acts::Test;
use tubwright::expert::theory::model::Model;
use tubwright::expert::theory::places::Places;

/// A problem as plain rows, so that the brute-force search needs nothing of ours.
#[derive(Clone, Debug)]
pub struct Plain {
    pub prior: Vec<f64>,
    pub repair: Vec<(f64, usize)>,
    pub test: Vec<(f64, usize, Vec<Vec<f64>>)>,
    pub ways: Vec<Vec<f64>>,
}

pub fn row(n: usize) -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(0.02..1.0_f64, n).prop_map(|row| {
        let sum: f64 = row.iter().sum();
        row.iter().map(|x| x / sum).collect()
    })
}

fn test(n_causes: usize, n_places: usize) -> impl Strategy<Value = (f64, usize, Vec<Vec<f64>>)> {
    (2..4_usize).prop_flat_map(move |k| {
        (
            0.5..20.0_f64,
            0..n_places,
            prop::collection::vec(row(k), n_causes),
        )
    })
}

pub fn problem(n_places: usize) -> impl Strategy<Value = Plain> {
    (2..5_usize, 0..4_usize).prop_flat_map(move |(n, n_tests)| {
        (
            row(n),
            prop::collection::vec((5.0..150.0_f64, 0..n_places), n),
            prop::collection::vec(test(n, n_places), n_tests),
            prop::collection::vec(prop::collection::vec(1.0..30.0_f64, n_places), n_places),
        )
            .prop_map(|(prior, repair, test, ways)| Plain {
                prior,
                repair,
                test,
                ways,
            })
    })
}

impl Plain {
    pub fn model(&self) -> Model {
        let n = self.prior.len();
        let repairs = self
            .repair
            .iter()
            .enumerate()
            .map(|(i, (cost, place))| Repair {
                cost: *cost,
                cost_if_not: 0.0,
                place: Some(*place),
                after: (0..n).map(|h| (h != i).then_some(h)).collect(),
            });
        let tests = self.test.iter().map(|(cost, place, rows)| Test {
            cost: *cost,
            place: Some(*place),
            n_outcomes: rows[0].len(),
            likelihood: rows.concat(),
        });
        let places = Places::new(&self.ways, 0);
        Model::with_places(
            self.prior.clone(),
            repairs.collect(),
            tests.collect(),
            places,
            0,
        )
        .expect("a sound problem")
    }

    fn way(&self, from: usize, to: usize) -> f64 {
        let n = self.ways.len();
        let mut best = vec![f64::INFINITY; n];
        best[from] = 0.0;
        for _ in 0..n {
            for a in 0..n {
                for b in 0..n {
                    best[b] = best[b].min(best[a] + self.ways[a][b]);
                }
            }
        }
        best[to]
    }

    /// Exhaustive search, nothing remembered: weights over causes, tests left, place.
    pub fn cheapest(&self, weights: &[f64], left: &[usize], place: usize) -> f64 {
        let mass: f64 = weights.iter().sum();
        if mass <= 0.0 {
            return 0.0;
        }
        let mut best = f64::INFINITY;
        for (i, (cost, at)) in self
            .repair
            .iter()
            .enumerate()
            .filter(|(i, _)| weights[*i] > 0.0)
        {
            let mut next = weights.to_vec();
            next[i] = 0.0;
            let now = mass * (cost + self.way(place, *at)) + weights[i] * self.way(*at, 0);
            best = best.min(now + self.cheapest(&next, left, *at));
        }
        for &t in left {
            let (cost, at, rows) = &self.test[t];
            let rest: Vec<usize> = left.iter().copied().filter(|other| *other != t).collect();
            let mut sum = mass * (cost + self.way(place, *at));
            for o in 0..rows[0].len() {
                let next: Vec<f64> = weights
                    .iter()
                    .zip(rows)
                    .map(|(w, row)| w * row[o])
                    .collect();
                sum += self.cheapest(&next, &rest, *at);
            }
            best = best.min(sum);
        }
        best
    }
}

/// The worked example: a pump that does not drain.
pub fn pump() -> Model {
    let cost = [75.0, 30.0, 17.0, 35.0, 150.0];
    let repairs = (0..5).map(|i| Repair {
        cost: cost[i],
        cost_if_not: 0.0,
        place: None,
        after: (0..5).map(|h| (h != i).then_some(h)).collect(),
    });
    let test = |cost, n_outcomes, likelihood: &[f64]| Test {
        cost,
        place: None,
        n_outcomes,
        likelihood: likelihood.to_vec(),
    };
    let two = |cost, first: [f64; 5]| {
        let rows: Vec<f64> = first.iter().flat_map(|p| [*p, 1.0 - p]).collect();
        test(cost, 2, &rows)
    };
    let listen = [
        0.97, 0.02, 0.01, 0.06, 0.92, 0.02, 0.01, 0.04, 0.95, 0.98, 0.01, 0.01, 0.97, 0.02, 0.01,
    ];
    let tests = vec![
        test(3.0, 3, &listen),
        two(12.0, [0.98, 0.98, 0.98, 0.05, 0.02]),
        two(10.0, [0.985, 0.03, 0.01, 0.01, 0.01]),
        two(14.0, [0.01, 0.01, 0.01, 0.96, 0.01]),
    ];
    Model::new(vec![0.28, 0.27, 0.15, 0.12, 0.18], repairs.collect(), tests).expect("sound")
}
