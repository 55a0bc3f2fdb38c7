//! What it costs to repair in the plain order, with no further test: the likeliest for its cost
//! first. A policy of its own, so its cost bounds the cheapest from above.
//!
//! With one place and one repair for each cause the order is the best there is without tests.
//! Otherwise the next repair is chosen each time by probability over cost with the way to it.

use crate::expert::theory::model::Model;

/// Room for the reckoning, kept so that nothing is allocated while searching.
#[derive(Clone, Debug, Default)]
pub struct Leaf {
    ratios: Vec<(f64, usize)>,
    shares: Vec<f64>,
    left: Vec<f64>,
}

impl Leaf {
    /// Room for a problem.
    pub fn new(model: &Model) -> Self {
        Self {
            ratios: Vec::with_capacity(model.repairs().len()),
            shares: vec![0.0; model.repairs().len()],
            left: vec![0.0; model.n_causes()],
        }
    }

    /// Expected cost from probabilities (or any multiple of them: the cost is multiplied too).
    pub fn cost(&mut self, model: &Model, p: &[f64], place: usize) -> f64 {
        if model.is_plain() {
            self.plain(model, p)
        } else {
            self.greedy(model, p, place, &mut |_| {})
        }
    }

    /// The repairs in the order taken.
    pub fn order(&mut self, model: &Model, p: &[f64], place: usize) -> Vec<usize> {
        let mut order = Vec::new();
        self.greedy(model, p, place, &mut |i| order.push(i));
        order
    }

    fn plain(&mut self, model: &Model, p: &[f64]) -> f64 {
        self.ratios.clear();
        for (i, repair) in model.repairs().iter().enumerate() {
            let share: f64 = model.ended_by(i).iter().map(|&h| p[h]).sum();
            self.shares[i] = share;
            if share > 0.0 {
                self.ratios
                    .push((share / (repair.cost + repair.cost_if_not), i));
            }
        }
        self.ratios
            .sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        // Summed from the last: what is left keeps its digits.
        let mut left = 0.0;
        let mut sum = 0.0;
        for &(_, i) in self.ratios.iter().rev() {
            sum += left * model.repairs()[i].cost_if_not;
            left += self.shares[i];
            sum += left * model.repairs()[i].cost;
        }
        sum
    }

    fn greedy(
        &mut self,
        model: &Model,
        p: &[f64],
        mut place: usize,
        taken: &mut impl FnMut(usize),
    ) -> f64 {
        self.left.copy_from_slice(p);
        let places = model.places();
        let mut mass: f64 = self.left.iter().sum();
        let mut sum = 0.0;
        loop {
            let mut best: Option<(f64, usize)> = None;
            let mut stepping_stone: Option<(f64, usize)> = None;
            for (i, repair) in model.repairs().iter().enumerate() {
                let share: f64 = model.ended_by(i).iter().map(|&h| self.left[h]).sum();
                let cost = repair.cost + repair.cost_if_not + places.go(place, repair.place).0;
                if share > 0.0 {
                    keep_higher(&mut best, share / cost, i);
                } else if best.is_none() {
                    let changed: f64 = model.changed_by(i).iter().map(|&h| self.left[h]).sum();
                    if changed > 0.0 {
                        keep_higher(&mut stepping_stone, changed / cost, i);
                    }
                }
            }
            let Some((_, i)) = best.or(stepping_stone) else {
                return sum;
            };
            taken(i);
            let repair = &model.repairs()[i];
            let (way, there) = places.go(place, repair.place);
            sum += mass * (way + repair.cost);
            let mut ended = 0.0;
            for &h in model.changed_by(i) {
                let share = core::mem::replace(&mut self.left[h], 0.0);
                match repair.after[h] {
                    Some(other) => self.left[other] += share,
                    None => ended += share,
                }
            }
            sum += ended * places.way(there, places.end);
            mass = self.left.iter().sum();
            sum += mass * repair.cost_if_not;
            place = there;
        }
    }
}

fn keep_higher(best: &mut Option<(f64, usize)>, ratio: f64, i: usize) {
    if best.is_none_or(|(highest, _)| ratio > highest) {
        *best = Some((ratio, i));
    }
}
