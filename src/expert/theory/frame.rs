//! One state of a search as plain rows of numbers, filled anew instead of allocated.
//!
//! Shares are not scaled to one: a state's cost is then its expected cost times the chance of
//! getting there, and sums over outcomes need no weights.

use crate::expert::theory::known::Known;
use crate::expert::theory::model::Model;

/// One state.
#[derive(Clone, Debug, Default)]
pub(super) struct Frame {
    /// Share of each cause.
    pub p: Vec<f64>,
    /// Tests used up.
    pub used: Vec<bool>,
    /// Where one stands.
    pub place: usize,
}

impl Frame {
    /// Room for a problem's state.
    pub fn room(model: &Model) -> Self {
        Self {
            p: vec![0.0; model.n_causes()],
            used: vec![false; model.tests().len()],
            place: model.start(),
        }
    }

    /// Takes over what is known.
    pub fn load(&mut self, model: &Model, known: &Known) {
        self.p.copy_from_slice(known.p());
        for (t, used) in self.used.iter_mut().enumerate() {
            *used = !known.can_test(model, t);
        }
        self.place = known.place();
    }

    /// Sum of the shares.
    pub fn mass(&self) -> f64 {
        self.p.iter().sum()
    }

    /// The repair can change something that is possible.
    pub fn can_repair(&self, model: &Model, repair: usize) -> bool {
        model.changed_by(repair).iter().any(|&h| self.p[h] > 0.0)
    }

    /// What is left after a repair goes into `next`; returns the share that works then.
    pub fn repair_into(&self, model: &Model, repair: usize, next: &mut Frame) -> f64 {
        next.p.copy_from_slice(&self.p);
        let of = &model.repairs()[repair];
        let mut works = 0.0;
        for &h in model.changed_by(repair) {
            let share = core::mem::replace(&mut next.p[h], 0.0);
            match of.after[h] {
                Some(left) => next.p[left] += share,
                None => works += share,
            }
        }
        if model.tests_renew() {
            next.used.fill(false);
        } else {
            next.used.copy_from_slice(&self.used);
        }
        next.place = model.places().go(self.place, of.place).1;
        works
    }

    /// What an outcome of a test leaves goes into `next`; returns its share.
    pub fn outcome_into(
        &self,
        model: &Model,
        test: usize,
        outcome: usize,
        next: &mut Frame,
    ) -> f64 {
        let mut mass = 0.0;
        for ((to, from), l) in next
            .p
            .iter_mut()
            .zip(&self.p)
            .zip(model.column(test, outcome))
        {
            *to = from * l;
            mass += *to;
        }
        mass
    }
}
