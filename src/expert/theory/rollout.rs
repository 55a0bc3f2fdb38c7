//! A plain policy made better: each act is tried, the plain policy follows, the cheapest is taken.
//!
//! The improved policy never costs more than the plain one. Source: published (Bertsekas, Tsitsiklis
//! and Wu 1997).

use crate::expert::theory::evaluate::Evaluator;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::known::cost_of;
use crate::expert::theory::look_ahead::LookAhead;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::Policy;
use crate::expert::theory::policy::ToGo;
use crate::expert::theory::policy::cheapest;

/// The improved policy.
pub struct Rollout<'m, P> {
    model: &'m Model,
    base: Evaluator<'m, P>,
}

impl<'m> Rollout<'m, LookAhead<'m>> {
    /// Over the policy that looks one step ahead.
    pub fn of_one_step(model: &'m Model) -> Self {
        Self::new(model, Evaluator::new(model, LookAhead::new(model, 1)))
    }
}

impl<'m, P: Policy> Rollout<'m, P> {
    /// Over a policy with its costs.
    pub fn new(model: &'m Model, base: Evaluator<'m, P>) -> Self {
        Self { model, base }
    }

    /// The best act and its expected cost when the plain policy follows.
    pub fn best(&mut self, known: &Known) -> Option<(Act, f64)> {
        cheapest(self.model, known, &mut self.base)
    }

    /// Expected cost of an act when the plain policy follows.
    pub fn cost_of(&mut self, known: &Known, act: Act) -> f64 {
        cost_of(self.model, known, act, &mut |k| self.base.to_go(k))
    }
}

impl<P: Policy> Policy for Rollout<'_, P> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        self.best(known).map(|(act, _)| act)
    }
}

impl<P: Policy> ToGo for Rollout<'_, P> {
    fn to_go(&mut self, known: &Known) -> f64 {
        self.best(known).map_or(0.0, |(_, cost)| cost)
    }
}
