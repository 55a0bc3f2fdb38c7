//! What following a policy costs: in expectation, and for each cause if that is the one.
//!
//! Every branch that can come is followed; states are remembered by what was done and shown.

use std::collections::BTreeMap;

use crate::expert::theory::known::Act;
use crate::expert::theory::known::Key;
use crate::expert::theory::known::Known;
use crate::expert::theory::known::cost_now;
use crate::expert::theory::leaf::Leaf;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::Policy;
use crate::expert::theory::policy::ToGo;

/// A policy with what is known of its costs.
pub struct Evaluator<'m, P> {
    model: &'m Model,
    policy: P,
    least_chance: f64,
    seen: BTreeMap<Key, Vec<f64>>,
    leaf: Leaf,
}

impl<'m, P: Policy> Evaluator<'m, P> {
    /// Follows every branch.
    pub fn new(model: &'m Model, policy: P) -> Self {
        Self::within(model, policy, 0.0)
    }

    /// Follows branches down to a chance of `least_chance`; beyond it the plain order of repairs is
    /// paid, so the cost is rather too high than too low.
    pub fn within(model: &'m Model, policy: P, least_chance: f64) -> Self {
        Self {
            model,
            policy,
            least_chance,
            seen: BTreeMap::new(),
            leaf: Leaf::new(model),
        }
    }

    /// The policy itself.
    pub fn policy(&mut self) -> &mut P {
        &mut self.policy
    }

    /// Expected cost under each cause, from what is known now. A cause held impossible costs nothing.
    pub fn by_cause(&mut self, known: &Known) -> Vec<f64> {
        self.from(known, 1.0)
    }

    fn from(&mut self, known: &Known, chance: f64) -> Vec<f64> {
        if let Some(costs) = self.seen.get(known.key()) {
            return costs.clone();
        }
        let model = self.model;
        let act = if chance < self.least_chance {
            None
        } else {
            self.policy.choose(known)
        };
        let costs = match act {
            Some(Act::Repair(i)) => self.repair(known, chance, i),
            Some(Act::Test(t)) => self.test(known, chance, t),
            None => {
                let cost = self.leaf.cost(model, known.p(), known.place());
                vec![cost; model.n_causes()]
            }
        };
        self.seen.insert(known.key().clone(), costs.clone());
        costs
    }

    fn repair(&mut self, known: &Known, chance: f64, i: usize) -> Vec<f64> {
        let model = self.model;
        let repair = &model.repairs()[i];
        let now = cost_now(model, known, Act::Repair(i));
        let (_, place) = model.places().go(known.place(), repair.place);
        let closing = model.places().way(place, model.places().end);
        let (works, still) = known.after_repair(model, i);
        let on = still.map(|k| self.from(&k, chance * (1.0 - works)));
        let each = repair.after.iter().zip(known.p());
        each.map(|(left, p)| match (left, &on) {
            _ if *p <= 0.0 => 0.0,
            (None, _) => now + closing,
            (Some(h), Some(on)) => now + repair.cost_if_not + on[*h],
            (Some(_), None) => now,
        })
        .collect()
    }

    fn test(&mut self, known: &Known, chance: f64, t: usize) -> Vec<f64> {
        let model = self.model;
        let now = cost_now(model, known, Act::Test(t));
        let mut costs: Vec<f64> = known
            .p()
            .iter()
            .map(|p| if *p > 0.0 { now } else { 0.0 })
            .collect();
        for (o, z, next) in known.after_test(model, t) {
            let on = self.from(&next, chance * z);
            for ((cost, on), l) in costs.iter_mut().zip(&on).zip(model.column(t, o)) {
                *cost += l * on;
            }
        }
        costs
    }
}

impl<P: Policy> ToGo for Evaluator<'_, P> {
    fn to_go(&mut self, known: &Known) -> f64 {
        let costs = self.from(known, 1.0);
        costs.iter().zip(known.p()).map(|(c, p)| c * p).sum()
    }
}
