//! In which order to repair when nothing is tested.
//!
//! ```text
//! ECR(σ) = Σ_k c_σk (1 - Σ_{j<k} p_σj)
//! ```
//! One fault only; each repair mends its own fault and is tested at a cost within its own. Then
//! descending p/c is best (swapping neighbours i, j changes the cost by p_j c_i - p_i c_j).
//! Looking first and repairing only what is bad: sort by p over the cost of looking. A shared cover
//! opened once breaks the rule; the best order is then found over all sets of repairs already done.
//! Source: published (Kadane and Simon 1977; Heckerman, Breese and Rommelse 1995).

/// A repair as far as its place in an order goes.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// Probability that this one is it.
    pub p: f64,
    /// Cost of trying: the repair itself, or looking whether it is needed.
    pub cost: f64,
    /// Cost on top when this one is it, as when looking comes before repairing.
    pub cost_if_it: f64,
    /// Shared cover that must be open for it, by number.
    pub cover: Option<usize>,
}

/// Repairs to be put in order, and what opening each shared cover costs once.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidates {
    /// The repairs.
    pub repairs: Vec<Candidate>,
    /// Cost of opening each cover.
    pub covers: Vec<f64>,
}

/// Most repairs for which the best order is searched: the sets of them are all visited.
pub const MOST_EXACT: usize = 20;

impl Candidates {
    /// Repairs without covers.
    pub fn plain(p: &[f64], cost: &[f64]) -> Self {
        Self::looked_at(p, cost, &vec![0.0; p.len()])
    }

    /// Repairs that are looked at first (`look_cost`) and done only where needed (`repair_cost`).
    pub fn looked_at(p: &[f64], look_cost: &[f64], repair_cost: &[f64]) -> Self {
        let each = p.iter().zip(look_cost).zip(repair_cost);
        let repairs = each.map(|((&p, &cost), &cost_if_it)| Candidate {
            p,
            cost,
            cost_if_it,
            cover: None,
        });
        Self {
            repairs: repairs.collect(),
            covers: Vec::new(),
        }
    }

    /// Expected cost of an order.
    pub fn expected_cost(&self, order: &[usize]) -> f64 {
        let mut left = 1.0;
        let mut open = vec![false; self.covers.len()];
        let mut sum = 0.0;
        for repair in order.iter().filter_map(|&i| self.repairs.get(i)) {
            let mut cost = repair.cost;
            if let Some(cover) = repair.cover
                && !core::mem::replace(&mut open[cover], true)
            {
                cost += self.covers[cover];
            }
            sum += left * cost + repair.p * repair.cost_if_it;
            left -= repair.p;
        }
        sum
    }

    /// Order by a key, highest first; equal ones keep their order.
    pub fn by(&self, key: impl Fn(&Candidate) -> f64) -> Vec<usize> {
        let mut order: Vec<usize> = (0..self.repairs.len()).collect();
        order.sort_by(|&a, &b| key(&self.repairs[b]).total_cmp(&key(&self.repairs[a])));
        order
    }

    /// Order by probability over cost, covers left out of account.
    pub fn by_p_over_cost(&self) -> Vec<usize> {
        self.by(|r| r.p / r.cost)
    }

    /// Order by probability over cost with the cover's cost added to each repair behind it.
    pub fn by_p_over_cost_and_cover(&self) -> Vec<usize> {
        self.by(|r| r.p / (r.cost + r.cover.map_or(0.0, |c| self.covers[c])))
    }

    /// The cheapest order; none beyond [`MOST_EXACT`] repairs.
    pub fn best(&self) -> Option<Vec<usize>> {
        self.extreme(|a, b| a < b - 1e-12)
    }

    /// The dearest order; none beyond [`MOST_EXACT`] repairs.
    pub fn worst(&self) -> Option<Vec<usize>> {
        self.extreme(|a, b| a > b + 1e-12)
    }

    /// Costs to go over sets of repairs done: what is left to pay depends on the set alone.
    fn extreme(&self, better: impl Fn(f64, f64) -> bool) -> Option<Vec<usize>> {
        let n = self.repairs.len();
        if n > MOST_EXACT {
            return None;
        }
        let full = (1_usize << n) - 1;
        let mut to_go = vec![0.0; full + 1];
        let mut first = vec![usize::MAX; full + 1];
        for done in (0..full).rev() {
            let members = (0..n).filter(|i| done >> i & 1 == 1);
            let left: f64 = 1.0 - members.map(|i| self.repairs[i].p).sum::<f64>();
            for i in (0..n).filter(|i| done >> i & 1 == 0) {
                let sum = self.cost_after(done, i, left) + to_go[done | 1 << i];
                if first[done] == usize::MAX || better(sum, to_go[done]) {
                    to_go[done] = sum;
                    first[done] = i;
                }
            }
        }
        let mut done = 0;
        let mut order = Vec::with_capacity(n);
        while done != full {
            order.push(first[done]);
            done |= 1 << first[done];
        }
        Some(order)
    }

    fn cost_after(&self, done: usize, i: usize, left: f64) -> f64 {
        let repair = &self.repairs[i];
        let is_open = |cover: usize| {
            let others = self.repairs.iter().enumerate();
            others
                .into_iter()
                .any(|(j, r)| done >> j & 1 == 1 && r.cover == Some(cover))
        };
        let opening = match repair.cover {
            Some(cover) if !is_open(cover) => self.covers[cover],
            _ => 0.0,
        };
        left * (repair.cost + opening) + repair.p * repair.cost_if_it
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_covers_the_best_order_is_by_p_over_cost() {
        let c = Candidates::plain(
            &[0.4, 0.25, 0.2, 0.1, 0.05],
            &[120.0, 30.0, 60.0, 15.0, 45.0],
        );
        let best = c.best().expect("few");
        let by_rule = c.expected_cost(&c.by_p_over_cost());
        assert!((c.expected_cost(&best) - by_rule).abs() < 1e-12);
        assert!(c.expected_cost(&c.worst().expect("few")) > by_rule);
    }

    #[test]
    fn too_many_are_refused() {
        let many = vec![0.01; MOST_EXACT + 1];
        assert_eq!(Candidates::plain(&many, &many).best(), None);
    }

    /// All orders of as many repairs.
    fn orders(n: usize) -> Vec<Vec<usize>> {
        if n == 0 {
            return vec![Vec::new()];
        }
        let shorter = orders(n - 1).into_iter();
        let longer = shorter.flat_map(|order| {
            (0..n).map(move |at| {
                let mut order = order.clone();
                order.insert(at, n - 1);
                order
            })
        });
        longer.collect()
    }

    #[test]
    fn behind_shared_covers_the_best_and_the_worst_order_are_those_of_all_that_are_tried() {
        let mut c = Candidates::looked_at(
            &[0.35, 0.25, 0.2, 0.15, 0.05],
            &[20.0, 8.0, 30.0, 4.0, 12.0],
            &[15.0, 40.0, 0.0, 25.0, 5.0],
        );
        c.covers = vec![25.0, 12.0];
        for (repair, cover) in c
            .repairs
            .iter_mut()
            .zip([Some(0), Some(1), Some(0), None, Some(1)])
        {
            repair.cover = cover;
        }
        let costs = orders(5).into_iter().map(|order| c.expected_cost(&order));
        let (low, high) = costs.fold((f64::INFINITY, 0.0_f64), |(low, high), cost| {
            (low.min(cost), high.max(cost))
        });
        let best = c.expected_cost(&c.best().expect("few"));
        let worst = c.expected_cost(&c.worst().expect("few"));
        assert!((best - low).abs() < 1e-9, "{best} {low}");
        assert!((worst - high).abs() < 1e-9, "{worst} {high}");
        // Both behind one cover, the second finds it open.
        let pair = c.expected_cost(&[0, 2]);
        let by_hand = 20.0 + 25.0 + 0.35 * 15.0 + 0.65 * 30.0;
        assert!((pair - by_hand).abs() < 1e-9, "{pair} {by_hand}");
    }
}
