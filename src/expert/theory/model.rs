//! A problem to solve: causes with what tests show of them, what repairs make of them, and the
//! places (configurations) acts need.
//!
//! Costs of a test or repair are those at its place; getting there costs the cheapest way over the
//! places, and when the machine works the way back to the end place is paid too. A repair's cost
//! holds the trial that tells whether the machine works. Source of the form: published (Breese and
//! Heckerman 1996, configuration changes; Heckerman, Breese and Rommelse 1995).

use thiserror::Error;

/// Most repairs a problem may have: sets of repairs are kept as bits.
pub const MOST_REPAIRS: usize = 128;

/// Something that can be repaired, replaced, adjusted, or done to end the job.
#[derive(Clone, Debug, PartialEq)]
pub struct Repair {
    /// Cost with the trial after it.
    pub cost: f64,
    /// Cost on top when the machine still fails, as a callback after closing the job.
    pub cost_if_not: f64,
    /// Place it is done at; none when it can be done anywhere.
    pub place: Option<usize>,
    /// What is left of each cause: none where the machine works then, else a cause.
    pub after: Vec<Option<usize>>,
}

/// Something that can be measured or observed.
#[derive(Clone, Debug, PartialEq)]
pub struct Test {
    /// Cost.
    pub cost: f64,
    /// Place it is done at; none when it can be done anywhere.
    pub place: Option<usize>,
    /// How many outcomes it has.
    pub n_outcomes: usize,
    /// Probability of each outcome under each cause: cause after cause, outcomes of one together.
    pub likelihood: Vec<f64>,
}

impl Test {
    /// Probabilities of the outcomes under a cause.
    pub fn row(&self, cause: usize) -> &[f64] {
        &self.likelihood[cause * self.n_outcomes..(cause + 1) * self.n_outcomes]
    }
}

/// Places and what the cheapest way between them costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Places {
    n: usize,
    cost: Vec<f64>,
    /// Where the machine must be at the end.
    pub end: usize,
}

impl Places {
    /// One place: nothing has to be opened.
    pub fn one() -> Self {
        Self {
            n: 1,
            cost: vec![0.0],
            end: 0,
        }
    }

    /// From the cost of each direct move, row by row; infinite where there is none. The way may
    /// lead over other places.
    pub fn new(direct: &[Vec<f64>], end: usize) -> Self {
        let n = direct.len();
        let mut cost = vec![f64::INFINITY; n * n];
        for (from, row) in direct.iter().enumerate() {
            for (to, c) in row.iter().enumerate().take(n) {
                cost[from * n + to] = if from == to { 0.0 } else { *c };
            }
        }
        for over in 0..n {
            for from in 0..n {
                for to in 0..n {
                    let way = cost[from * n + over] + cost[over * n + to];
                    if way < cost[from * n + to] {
                        cost[from * n + to] = way;
                    }
                }
            }
        }
        Self { n, cost, end }
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.n
    }

    /// There is none; never so in a checked problem.
    pub fn is_empty(&self) -> bool {
        self.n == 0
    }

    /// Cost of the cheapest way.
    pub fn way(&self, from: usize, to: usize) -> f64 {
        self.cost[from * self.n + to]
    }

    /// Cost of the cheapest way to where an act is done, and where one stands then.
    pub fn go(&self, from: usize, place: Option<usize>) -> (f64, usize) {
        match place {
            Some(to) => (self.way(from, to), to),
            None => (0.0, from),
        }
    }
}

/// Why a problem cannot be solved.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum ModelError {
    /// A list is not as long as there are causes.
    #[error("{what}: {found} entries; needed: one for each of {causes} causes")]
    Length {
        /// Which list.
        what: String,
        /// How long it is.
        found: usize,
        /// How many causes there are.
        causes: usize,
    },
    /// A number that cannot be.
    #[error("{what}: {value}; needed: {needed}")]
    Number {
        /// Which number.
        what: String,
        /// What stands there.
        value: f64,
        /// What would be right.
        needed: &'static str,
    },
    /// A place or cause that does not exist.
    #[error("{what}: number {index} does not exist; there are {count}")]
    Missing {
        /// What refers to it.
        what: String,
        /// The number.
        index: usize,
        /// How many there are.
        count: usize,
    },
    /// More repairs than can be handled.
    #[error(
        "{0} repairs; at most {MOST_REPAIRS} are possible: leave out those that mend nothing likely"
    )]
    TooMany(usize),
    /// A cause no repair mends.
    #[error("cause {0} is left by all repairs together; add one that mends it")]
    Unmendable(usize),
    /// The order of two repairs matters.
    #[error(
        "repairs {0} and {1} leave different causes in different order; state what each leaves so that the order does not matter"
    )]
    OrderMatters(usize, usize),
}

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
        check(&prior, &repairs, &tests, &places, start)?;
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
        let is_plain = ends == changes && places.n == 1 && n_ended.iter().all(|&n| n <= 1);
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
        free.places.cost.fill(0.0);
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
        sets * seen * self.places.n as f64
    }
}

fn by_outcome(test: &Test, n_causes: usize) -> Vec<f64> {
    let each = (0..test.n_outcomes).flat_map(|o| (0..n_causes).map(move |h| (h, o)));
    each.map(|(h, o)| test.row(h)[o]).collect()
}

fn check(
    prior: &[f64],
    repairs: &[Repair],
    tests: &[Test],
    places: &Places,
    start: usize,
) -> Result<(), ModelError> {
    let n = prior.len();
    for (h, p) in prior.iter().enumerate() {
        number(format!("prior of cause {h}"), *p)?;
    }
    if prior.iter().sum::<f64>() <= 0.0 {
        let what = "sum of the prior".to_owned();
        let needed = "above 0: at least one cause must be possible";
        return Err(ModelError::Number {
            what,
            value: 0.0,
            needed,
        });
    }
    place("start".to_owned(), Some(start), places)?;
    place("end".to_owned(), Some(places.end), places)?;
    for (k, cost) in places.cost.iter().enumerate() {
        number(
            format!("way from place {} to {}", k / places.n, k % places.n),
            *cost,
        )?;
    }
    if repairs.len() > MOST_REPAIRS {
        return Err(ModelError::TooMany(repairs.len()));
    }
    for (i, repair) in repairs.iter().enumerate() {
        number(format!("cost of repair {i}"), repair.cost)?;
        number(
            format!("cost of repair {i} if it is not it"),
            repair.cost_if_not,
        )?;
        place(format!("place of repair {i}"), repair.place, places)?;
        length(format!("what repair {i} leaves"), repair.after.len(), n)?;
        if let Some(&h) = repair.after.iter().flatten().find(|h| **h >= n) {
            let what = format!("what repair {i} leaves");
            return Err(ModelError::Missing {
                what,
                index: h,
                count: n,
            });
        }
    }
    for (t, test) in tests.iter().enumerate() {
        number(format!("cost of test {t}"), test.cost)?;
        place(format!("place of test {t}"), test.place, places)?;
        length(
            format!("outcomes of test {t}"),
            test.likelihood.len(),
            n * test.n_outcomes,
        )?;
        for h in 0..n {
            let row = test.row(h);
            let sum: f64 = row.iter().sum();
            if !row.iter().all(|l| *l >= 0.0) || (sum - 1.0).abs() > 1e-6 {
                let what = format!("outcomes of test {t} under cause {h}, their sum");
                let needed = "probabilities that sum to 1";
                return Err(ModelError::Number {
                    what,
                    value: sum,
                    needed,
                });
            }
        }
    }
    repairs_commute(n, repairs)
}

fn repairs_commute(n: usize, repairs: &[Repair]) -> Result<(), ModelError> {
    for h in 0..n {
        let left = repairs
            .iter()
            .fold(Some(h), |left, r| left.and_then(|h| r.after[h]));
        if left.is_some() {
            return Err(ModelError::Unmendable(h));
        }
    }
    for (i, a) in repairs.iter().enumerate() {
        for (j, b) in repairs.iter().enumerate().skip(i) {
            let same = (0..n).all(|h| {
                let first = a.after[h].and_then(|h| b.after[h]);
                first == b.after[h].and_then(|h| a.after[h]) && (i != j || first == a.after[h])
            });
            if !same {
                return Err(ModelError::OrderMatters(i, j));
            }
        }
    }
    Ok(())
}

fn number(what: String, value: f64) -> Result<(), ModelError> {
    if value >= 0.0 && value.is_finite() {
        Ok(())
    } else {
        let needed = "a finite number, 0 or more";
        Err(ModelError::Number {
            what,
            value,
            needed,
        })
    }
}

fn place(what: String, index: Option<usize>, places: &Places) -> Result<(), ModelError> {
    match index {
        Some(index) if index >= places.n => {
            let count = places.n;
            Err(ModelError::Missing { what, index, count })
        }
        _ => Ok(()),
    }
}

fn length(what: String, found: usize, causes: usize) -> Result<(), ModelError> {
    if found == causes {
        Ok(())
    } else {
        Err(ModelError::Length {
            what,
            found,
            causes,
        })
    }
}
