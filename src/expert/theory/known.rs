//! What is known at a moment: probabilities, what has been done and shown, where one stands; and
//! what each act makes of it.

use crate::expert::theory::model::Model;

/// An act.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Act {
    /// Do a repair.
    Repair(usize),
    /// Do a test.
    Test(usize),
}

/// A test's outcome, and which repairs had been done by then where that matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Shown {
    test: usize,
    done: u128,
    outcome: usize,
}

/// What tells states of one problem apart: which repairs were done, what was shown, where one
/// stands, and from which probabilities it all began.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Key {
    origin: u64,
    place: usize,
    done: u128,
    shown: Vec<Shown>,
}

/// What is known at a moment.
#[derive(Clone, Debug, PartialEq)]
pub struct Known {
    p: Vec<f64>,
    key: Key,
}

impl Known {
    /// Before any act.
    pub fn at_start(model: &Model) -> Self {
        Self::new(model.prior().to_vec(), model.start())
    }

    /// With probabilities that come from elsewhere, one for each cause of the model.
    pub fn new(mut p: Vec<f64>, place: usize) -> Self {
        normalise(&mut p);
        let key = Key {
            origin: fingerprint(&p),
            place,
            done: 0,
            shown: Vec::new(),
        };
        Self { p, key }
    }

    /// The same, but the test has been used up and will show nothing new.
    #[must_use]
    pub fn with_used(mut self, test: usize) -> Self {
        self.show(Shown {
            test,
            done: 0,
            outcome: usize::MAX,
        });
        self
    }

    /// Probabilities of the causes.
    pub fn p(&self) -> &[f64] {
        &self.p
    }

    /// Where one stands.
    pub fn place(&self) -> usize {
        self.key.place
    }

    /// What tells this state from others of the same problem.
    pub fn key(&self) -> &Key {
        &self.key
    }

    /// Repairs done, as bits.
    pub fn done(&self) -> u128 {
        self.key.done
    }

    /// The same causes, the share of one set to `p` and the others in proportion.
    #[must_use]
    pub fn with_share(&self, cause: usize, p: f64) -> Self {
        let others: f64 = 1.0 - self.p[cause];
        let scale = if others > 0.0 {
            (1.0 - p) / others
        } else {
            0.0
        };
        let mut other = self.clone();
        other.p.iter_mut().for_each(|x| *x *= scale);
        other.p[cause] = p;
        normalise(&mut other.p);
        other.key.origin = fingerprint(&other.p);
        other
    }

    /// The repair can change something that is possible.
    pub fn can_repair(&self, model: &Model, repair: usize) -> bool {
        self.key.done >> repair & 1 == 0
            && model.changed_by(repair).iter().any(|&h| self.p[h] > 0.0)
    }

    /// The test has not been used up.
    pub fn can_test(&self, model: &Model, test: usize) -> bool {
        let done = if model.tests_renew() {
            self.key.done
        } else {
            0
        };
        !self
            .key
            .shown
            .iter()
            .any(|s| s.test == test && (s.done == done || s.outcome == usize::MAX))
    }

    /// All acts open to one, repairs first.
    pub fn acts<'a>(&'a self, model: &'a Model) -> impl Iterator<Item = Act> + 'a {
        let repairs = (0..model.repairs().len()).filter(|&i| self.can_repair(model, i));
        let tests = (0..model.tests().len()).filter(|&t| self.can_test(model, t));
        repairs.map(Act::Repair).chain(tests.map(Act::Test))
    }

    /// A repair: the chance that the machine works then, and what is known if it does not; none if it
    /// surely works.
    pub fn after_repair(&self, model: &Model, repair: usize) -> (f64, Option<Known>) {
        let works: f64 = model.ended_by(repair).iter().map(|&h| self.p[h]).sum();
        let mut p = self.p.clone();
        let after = &model.repairs()[repair].after;
        for &h in model.changed_by(repair) {
            let share = core::mem::replace(&mut p[h], 0.0);
            if let Some(left) = after[h] {
                p[left] += share;
            }
        }
        if normalise(&mut p) <= 0.0 {
            return (1.0, None);
        }
        let (_, place) = model
            .places()
            .go(self.key.place, model.repairs()[repair].place);
        let mut key = self.key.clone();
        key.done |= 1 << repair;
        key.place = place;
        (works, Some(Known { p, key }))
    }

    /// A test: each outcome that can come with its probability and what is known then.
    pub fn after_test<'a>(
        &'a self,
        model: &'a Model,
        test: usize,
    ) -> impl Iterator<Item = (usize, f64, Known)> + 'a {
        let n_outcomes = model.tests()[test].n_outcomes;
        (0..n_outcomes).filter_map(move |o| {
            let (z, known) = self.after_outcome(model, test, o)?;
            Some((o, z, known))
        })
    }

    /// A test with a given outcome: its probability and what is known then; none if it cannot come.
    pub fn after_outcome(
        &self,
        model: &Model,
        test: usize,
        outcome: usize,
    ) -> Option<(f64, Known)> {
        let of = &model.tests()[test];
        let column = model.column(test, outcome);
        let mut p: Vec<f64> = self.p.iter().zip(column).map(|(p, l)| p * l).collect();
        let z = normalise(&mut p);
        if z <= 0.0 {
            return None;
        }
        let (_, place) = model.places().go(self.key.place, of.place);
        let mut known = Known {
            p,
            key: self.key.clone(),
        };
        known.key.place = place;
        let done = if model.tests_renew() {
            self.key.done
        } else {
            0
        };
        known.show(Shown {
            test,
            done,
            outcome,
        });
        Some((z, known))
    }

    fn show(&mut self, shown: Shown) {
        let at = self.key.shown.partition_point(|s| *s < shown);
        self.key.shown.insert(at, shown);
    }
}

/// Cost of an act here and now, the way there included.
pub fn cost_now(model: &Model, known: &Known, act: Act) -> f64 {
    let (cost, place) = match act {
        Act::Repair(i) => (model.repairs()[i].cost, model.repairs()[i].place),
        Act::Test(t) => (model.tests()[t].cost, model.tests()[t].place),
    };
    cost + model.places().go(known.place(), place).0
}

/// Expected cost of an act and all that follows, given what each later state is worth.
pub fn cost_of(
    model: &Model,
    known: &Known,
    act: Act,
    to_go: &mut impl FnMut(&Known) -> f64,
) -> f64 {
    let now = cost_now(model, known, act);
    match act {
        Act::Repair(i) => {
            let (works, still) = known.after_repair(model, i);
            let repair = &model.repairs()[i];
            let (_, place) = model.places().go(known.place(), repair.place);
            let closing = works * model.places().way(place, model.places().end);
            let on = still.map_or(0.0, |k| (1.0 - works) * (repair.cost_if_not + to_go(&k)));
            now + closing + on
        }
        Act::Test(t) => {
            let outcomes = known.after_test(model, t);
            now + outcomes.map(|(_, z, k)| z * to_go(&k)).sum::<f64>()
        }
    }
}

/// Scales to a sum of one and returns the sum before.
fn normalise(p: &mut [f64]) -> f64 {
    let sum: f64 = p.iter().sum();
    if sum > 0.0 {
        p.iter_mut().for_each(|p| *p /= sum);
    }
    sum
}

/// FNV-1a over the bits, so that states that began with other probabilities are told apart.
fn fingerprint(p: &[f64]) -> u64 {
    let bytes = p.iter().flat_map(|p| p.to_bits().to_le_bytes());
    bytes.fold(0xcbf2_9ce4_8422_2325, |hash: u64, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    })
}
