//! A problem to solve: causes with what tests show of them, what repairs make of them, and the
//! places (configurations) acts need.
//!
//! Costs of a test or repair are those at its place; getting there costs the cheapest way over the
//! places, and when the machine works the way back to the end place is paid too. A repair's cost
//! holds the trial that tells whether the machine works. Source of the form: published (Breese and
//! Heckerman 1996, configuration changes; Heckerman, Breese and Rommelse 1995).

use crate::expert::theory::acts::Repair;
use crate::expert::theory::acts::Test;
use crate::expert::theory::check;
use crate::expert::theory::check::ModelError;
use crate::expert::theory::places::Places;

/// The problem, checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Model {
    prior: Vec<f64>,
    repairs: Vec<Repair>,
    tests: Vec<Test>,
    places: Places,
    start: usize,
    tests_renew: bool,
    /// Causes each repair ends, and causes it changes at all.
    ends: Vec<Vec<usize>>,
    changes: Vec<Vec<usize>>,
    /// Likelihoods by test, outcome after outcome: searching goes along the causes.
    columns: Vec<Vec<f64>>,
    is_plain: bool,
}

impl Model {
    /// A problem with one place.
    ///
    /// # Errors
    /// See [`ModelError`].
    pub fn new(
        prior: Vec<f64>,
        repairs: Vec<Repair>,
        tests: Vec<Test>,
    ) -> Result<Self, ModelError> {
        Self::with_places(prior, repairs, tests, Places::one(), 0)
    }

    /// A problem with places, the technician standing at `start`. The prior need not sum to one.
    ///
    /// # Errors
    /// See [`ModelError`].
    pub fn with_places(
        prior: Vec<f64>,
        repairs: Vec<Repair>,
        tests: Vec<Test>,
        places: Places,
        start: usize,
    ) -> Result<Self, ModelError> {
        check::all(&prior, &repairs, &tests, &places, start)?;
        let sum: f64 = prior.iter().sum();
        let prior: Vec<f64> = prior.iter().map(|p| p / sum).collect();
        let causes = |of: &Repair, which: fn(usize, Option<usize>) -> bool| -> Vec<usize> {
            let each = of.after.iter().enumerate();
            each.filter(|(h, left)| which(*h, **left))
                .map(|(h, _)| h)
                .collect()
        };
        let ends: Vec<_> = repairs
            .iter()
            .map(|r| causes(r, |_, left| left.is_none()))
            .collect();
        let changes: Vec<_> = repairs
            .iter()
            .map(|r| causes(r, |h, left| left != Some(h)))
            .collect();
        let columns = tests.iter().map(|t| by_outcome(t, prior.len())).collect();
        let mut n_ended = vec![0; prior.len()];
        ends.iter().flatten().for_each(|&h| n_ended[h] += 1);
        let is_plain = ends == changes && places.len() == 1 && n_ended.iter().all(|&n| n <= 1);
        Ok(Self {
            prior,
            repairs,
            tests,
            places,
            start,
            tests_renew: false,
            ends,
            changes,
            columns,
            is_plain,
        })
    }

    /// Tests may be done again after each repair, since it may have changed what they show: so where
    /// a cause is a set of faults and a repair leaves the rest of the set.
    #[must_use]
    pub fn with_tests_renewed_by_repairs(mut self) -> Self {
        self.tests_renew = true;
        self
    }

    /// The same problem with nothing to be measured.
    #[must_use]
    pub fn without_tests(&self) -> Self {
        Self {
            tests: Vec::new(),
            columns: Vec::new(),
            ..self.clone()
        }
    }

    /// The same problem with all ways free of cost.
    #[must_use]
    pub fn without_ways(&self) -> Self {
        let mut free = self.clone();
        free.places = self.places.free();
        free
    }

    /// Number of causes.
    pub fn n_causes(&self) -> usize {
        self.prior.len()
    }

    /// Probabilities before any evidence.
    pub fn prior(&self) -> &[f64] {
        &self.prior
    }

    /// The repairs.
    pub fn repairs(&self) -> &[Repair] {
        &self.repairs
    }

    /// The tests.
    pub fn tests(&self) -> &[Test] {
        &self.tests
    }

    /// Probability of an outcome of a test under every cause.
    pub fn column(&self, test: usize, outcome: usize) -> &[f64] {
        let n = self.prior.len();
        &self.columns[test][outcome * n..(outcome + 1) * n]
    }

    /// The places.
    pub fn places(&self) -> &Places {
        &self.places
    }

    /// Where the technician stands at first.
    pub fn start(&self) -> usize {
        self.start
    }

    /// Tests may be done again after a repair.
    pub fn tests_renew(&self) -> bool {
        self.tests_renew
    }

    /// Causes a repair ends.
    pub fn ended_by(&self, repair: usize) -> &[usize] {
        &self.ends[repair]
    }

    /// Causes a repair ends or changes.
    pub fn changed_by(&self, repair: usize) -> &[usize] {
        &self.changes[repair]
    }

    /// One place, and each cause is ended by one repair at most and changed by no other: the plain
    /// order by probability over cost is exact.
    pub fn is_plain(&self) -> bool {
        self.is_plain
    }

    /// Upper bound on the states a full search visits.
    pub fn n_states(&self) -> f64 {
        let sets = libm::exp2(self.repairs.len() as f64);
        let seen: f64 = self
            .tests
            .iter()
            .map(|t| t.n_outcomes as f64 + 1.0)
            .product();
        sets * seen * self.places.len() as f64
    }
}

fn by_outcome(test: &Test, n_causes: usize) -> Vec<f64> {
    let each = (0..test.n_outcomes).flat_map(|o| (0..n_causes).map(move |h| (h, o)));
    each.map(|(h, o)| test.row(h)[o]).collect()
}
