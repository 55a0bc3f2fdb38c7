//! A few steps ahead over all acts, repairing in the plain order after them.
//!
//! One step is the usual value of a test: do the best test if it pays for itself, else the first
//! repair of the plain order. Two steps see pairs of tests that pay only together. Nothing is
//! allocated while searching. Source: published (Heckerman, Breese and Rommelse 1995).

use crate::expert::theory::frame::Frame;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::leaf::Leaf;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::Policy;
use crate::expert::theory::policy::TIE;
use crate::expert::theory::policy::ToGo;

/// The search with its room.
pub struct LookAhead<'m> {
    model: &'m Model,
    n_steps: usize,
    frames: Vec<Frame>,
    leaf: Leaf,
}

impl<'m> LookAhead<'m> {
    /// For a problem, `n_steps` ahead.
    pub fn new(model: &'m Model, n_steps: usize) -> Self {
        Self {
            model,
            n_steps,
            frames: vec![Frame::room(model); n_steps + 1],
            leaf: Leaf::new(model),
        }
    }

    /// The best act and its expected cost.
    pub fn best(&mut self, known: &Known) -> Option<(Act, f64)> {
        let mut best = None;
        self.each(known, |act, cost| {
            if best.is_none_or(|(_, lowest): (Act, f64)| cost < lowest - TIE) {
                best = Some((act, cost));
            }
        });
        best
    }

    /// Expected cost of each act, repairs first.
    pub fn costs(&mut self, known: &Known) -> Vec<(Act, f64)> {
        let mut costs = Vec::new();
        self.each(known, |act, cost| costs.push((act, cost)));
        costs
    }

    fn each(&mut self, known: &Known, mut take: impl FnMut(Act, f64)) {
        let model = self.model;
        let mut frames = core::mem::take(&mut self.frames);
        if let Some((first, rest)) = frames.split_first_mut() {
            first.load(model, known);
            let mass = first.mass();
            for i in 0..model.repairs().len() {
                if first.can_repair(model, i) {
                    take(Act::Repair(i), self.repair(first, mass, i, rest));
                }
            }
            for t in 0..model.tests().len() {
                if !first.used[t] {
                    take(Act::Test(t), self.test(first, mass, t, rest, f64::INFINITY));
                }
            }
        }
        self.frames = frames;
    }

    /// Cost to go of a state, times its mass.
    fn value(&mut self, state: &Frame, rest: &mut [Frame]) -> f64 {
        let model = self.model;
        let mass = state.mass();
        if mass <= 0.0 {
            return 0.0;
        }
        // A policy that stops testing: what the search must beat.
        let mut best = self.leaf.cost(model, &state.p, state.place);
        if rest.is_empty() {
            return best;
        }
        // With one place the leaf is the best of all repairs first, with the next repair as good.
        if !(rest.len() == 1 && model.is_plain()) {
            for i in 0..model.repairs().len() {
                if state.can_repair(model, i) {
                    best = best.min(self.repair(state, mass, i, rest));
                }
            }
        }
        for t in 0..model.tests().len() {
            if !state.used[t] {
                best = best.min(self.test(state, mass, t, rest, best));
            }
        }
        best
    }

    fn repair(&mut self, state: &Frame, mass: f64, i: usize, rest: &mut [Frame]) -> f64 {
        let model = self.model;
        let repair = &model.repairs()[i];
        let (way, place) = model.places().go(state.place, repair.place);
        let now = mass * (way + repair.cost);
        let Some((next, rest)) = rest.split_first_mut() else {
            return now;
        };
        let works = state.repair_into(model, i, next);
        let left = next.mass();
        let closing = works * model.places().way(place, model.places().end);
        now + closing + left * repair.cost_if_not + self.value(next, rest)
    }

    /// Cost of a test and all after it; gives up once it exceeds `enough`.
    fn test(&mut self, state: &Frame, mass: f64, t: usize, rest: &mut [Frame], enough: f64) -> f64 {
        let model = self.model;
        let test = &model.tests()[t];
        let (way, place) = model.places().go(state.place, test.place);
        let mut sum = mass * (way + test.cost);
        let Some((next, rest)) = rest.split_first_mut() else {
            return sum;
        };
        next.used.copy_from_slice(&state.used);
        next.used[t] = true;
        next.place = place;
        for outcome in 0..test.n_outcomes {
            if sum >= enough {
                return sum;
            }
            if state.outcome_into(model, t, outcome, next) > 0.0 {
                sum += self.value(next, rest);
            }
        }
        sum
    }
}

impl Policy for LookAhead<'_> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        self.best(known).map(|(act, _)| act)
    }
}

impl ToGo for LookAhead<'_> {
    fn to_go(&mut self, known: &Known) -> f64 {
        if self.n_steps == 0 {
            return self.leaf.cost(self.model, known.p(), known.place());
        }
        self.best(known).map_or(0.0, |(_, cost)| cost)
    }
}
