//! The cheapest way, by trying every act in every state that can come.
//!
//! ```text
//! V(b) = min( c_i + (1-b_i) V(b|not i),  k_t + Σ_o z_o V(b|o) )
//! ```
//! States are remembered by what was done and shown, not by the order of it. For small problems:
//! [`Model::n_states`] bounds their number. Source: published (expectimax by dynamic programming).

use std::collections::BTreeMap;

use crate::expert::theory::known::Act;
use crate::expert::theory::known::Key;
use crate::expert::theory::known::Known;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::Policy;
use crate::expert::theory::policy::ToGo;
use crate::expert::theory::policy::cheapest;

/// States above which a problem is not for this search: some seconds in a browser.
pub const MOST_STATES: f64 = 2e5;

/// The search with the states it remembers.
pub struct Exact<'m> {
    model: &'m Model,
    seen: BTreeMap<Key, (Option<Act>, f64)>,
}

impl<'m> Exact<'m> {
    /// For a problem.
    pub fn new(model: &'m Model) -> Self {
        let seen = BTreeMap::new();
        Self { model, seen }
    }

    /// The cheapest act and the cost to go.
    pub fn best(&mut self, known: &Known) -> (Option<Act>, f64) {
        if let Some(best) = self.seen.get(known.key()) {
            return *best;
        }
        let model = self.model;
        let best = match cheapest(model, known, self) {
            Some((act, cost)) => (Some(act), cost),
            None => (None, 0.0),
        };
        self.seen.insert(known.key().clone(), best);
        best
    }

    /// States visited so far.
    pub fn n_seen(&self) -> usize {
        self.seen.len()
    }
}

impl Policy for Exact<'_> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        self.best(known).0
    }
}

impl ToGo for Exact<'_> {
    fn to_go(&mut self, known: &Known) -> f64 {
        self.best(known).1
    }
}
