//! The acts of a problem: repairs and tests, with what they cost, where they are done and what they
//! tell or leave.

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
