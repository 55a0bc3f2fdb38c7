//! Ways of choosing the next act, and what a state is worth under them.

use crate::expert::theory::information;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::known::cost_of;
use crate::expert::theory::leaf::Leaf;
use crate::expert::theory::model::Model;

/// Costs nearer than this count as equal; the act that comes first is taken then.
pub const TIE: f64 = 1e-12;

/// A way of choosing the next act.
pub trait Policy {
    /// The next act; none when nothing is left to be done.
    fn choose(&mut self, known: &Known) -> Option<Act>;
}

/// What a state costs from here on, by some policy.
pub trait ToGo {
    /// Expected cost to go.
    fn to_go(&mut self, known: &Known) -> f64;
}

/// The act with the least expected cost, and that cost.
pub fn cheapest(model: &Model, known: &Known, to_go: &mut impl ToGo) -> Option<(Act, f64)> {
    let mut best: Option<(Act, f64)> = None;
    for act in known.acts(model) {
        let cost = cost_of(model, known, act, &mut |k| to_go.to_go(k));
        if best.is_none_or(|(_, lowest)| cost < lowest - TIE) {
            best = Some((act, cost));
        }
    }
    best
}

/// Repairs in the plain order and never tests.
pub struct RepairOnly<'m> {
    model: &'m Model,
    leaf: Leaf,
}

impl<'m> RepairOnly<'m> {
    /// For a problem.
    pub fn new(model: &'m Model) -> Self {
        let leaf = Leaf::new(model);
        Self { model, leaf }
    }
}

impl Policy for RepairOnly<'_> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        let order = self.leaf.order(self.model, known.p(), known.place());
        order.first().map(|&i| Act::Repair(i))
    }
}

impl ToGo for RepairOnly<'_> {
    fn to_go(&mut self, known: &Known) -> f64 {
        self.leaf.cost(self.model, known.p(), known.place())
    }
}

/// The test with the most bits for its cost until one cause is sure enough, then the plain order.
pub struct Greedy<'m> {
    repairs: RepairOnly<'m>,
    sure_ratio: f64,
}

impl<'m> Greedy<'m> {
    /// For a problem; tests stop when a cause reaches `sure_ratio`.
    pub fn new(model: &'m Model, sure_ratio: f64) -> Self {
        let repairs = RepairOnly::new(model);
        Self {
            repairs,
            sure_ratio,
        }
    }
}

impl Policy for Greedy<'_> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        let model = self.repairs.model;
        if known.p().iter().all(|p| *p < self.sure_ratio) {
            let mut best: Option<(usize, f64)> = None;
            for t in (0..model.tests().len()).filter(|&t| known.can_test(model, t)) {
                let test = &model.tests()[t];
                let cost = test.cost + model.places().go(known.place(), test.place).0;
                let worth = information::expected_gain(known.p(), test) / cost.max(TIE);
                if best.is_none_or(|(_, most)| worth > most + TIE) {
                    best = Some((t, worth));
                }
            }
            if let Some((t, worth)) = best
                && worth > 0.0
            {
                return Some(Act::Test(t));
            }
        }
        self.repairs.choose(known)
    }
}
