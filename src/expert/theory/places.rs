//! Places (configurations of what is opened, energised, tilted) and what the cheapest way between them
//! costs: all pairs, over others where that is cheaper. Source: published (Floyd and Warshall).

/// Places and what the cheapest way between them costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Places {
    n: usize,
    cost: Vec<f64>,
    /// Where the machine must be at the end.
    pub end: usize,
}

impl Places {
    /// One place: nothing has to be opened.
    pub fn one() -> Self {
        Self {
            n: 1,
            cost: vec![0.0],
            end: 0,
        }
    }

    /// From the cost of each direct move, row by row; infinite where there is none. The way may
    /// lead over other places.
    pub fn new(direct: &[Vec<f64>], end: usize) -> Self {
        let n = direct.len();
        let mut cost = vec![f64::INFINITY; n * n];
        for (from, row) in direct.iter().enumerate() {
            for (to, c) in row.iter().enumerate().take(n) {
                cost[from * n + to] = if from == to { 0.0 } else { *c };
            }
        }
        for over in 0..n {
            for from in 0..n {
                for to in 0..n {
                    let way = cost[from * n + over] + cost[over * n + to];
                    if way < cost[from * n + to] {
                        cost[from * n + to] = way;
                    }
                }
            }
        }
        Self { n, cost, end }
    }

    /// The same places with all ways free of cost.
    #[must_use]
    pub fn free(&self) -> Self {
        let cost = vec![0.0; self.cost.len()];
        Self { cost, ..*self }
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.n
    }

    /// There is none; never so in a checked problem.
    pub fn is_empty(&self) -> bool {
        self.n == 0
    }

    /// Cost of the cheapest way.
    pub fn way(&self, from: usize, to: usize) -> f64 {
        self.cost[from * self.n + to]
    }

    /// Costs of all ways, row by row.
    pub(super) fn ways(&self) -> impl Iterator<Item = f64> + '_ {
        self.cost.iter().copied()
    }

    /// Cost of the cheapest way to where an act is done, and where one stands then.
    pub fn go(&self, from: usize, place: Option<usize>) -> (f64, usize) {
        match place {
            Some(to) => (self.way(from, to), to),
            None => (0.0, from),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_way_leads_over_other_places_where_that_is_cheaper() {
        let far = f64::INFINITY;
        // A line of three, dearer one way than back, and a shorter way round.
        let direct = [
            vec![7.0, 2.0, 9.0],
            vec![1.0, 0.0, 3.0],
            vec![far, 4.0, 0.0],
        ];
        let places = Places::new(&direct, 0);
        let ways: Vec<f64> = places.ways().collect();
        let cheapest = [0.0, 2.0, 5.0, 1.0, 0.0, 3.0, 5.0, 4.0, 0.0];
        for (is, wanted) in ways.iter().zip(cheapest) {
            assert!((is - wanted).abs() < 1e-12, "{ways:?}");
        }
        let (cost, at) = places.go(2, Some(0));
        assert!((cost - 5.0).abs() < 1e-12 && at == 0);
        let (cost, at) = places.go(2, None);
        assert!(cost.abs() < 1e-12 && at == 2, "where one stands");
        assert!(places.free().ways().all(|way| way.abs() < 1e-12));
        assert_eq!((places.free().len(), places.free().end), (3, 0));
    }
}
