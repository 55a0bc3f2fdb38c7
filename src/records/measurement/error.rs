//! Why something cannot be estimated from the scores at hand, and what would help.

use thiserror::Error;

/// Why an estimate cannot be had. Items and people are counted from 1, as in the file.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum MeasurementError {
    /// There is nothing to estimate from.
    #[error("no scores: give at least one person with at least one scored job")]
    Empty,
    /// A row is shorter or longer than the others.
    #[error(
        "person {person}: {found} scores, the first person has {expected}: give one a job, empty where none"
    )]
    Ragged {
        /// Which row.
        person: usize,
        /// Scores in it.
        found: usize,
        /// Scores in the first row.
        expected: usize,
    },
    /// A category nobody scored.
    #[error("job {item}: nobody scored {category}: merge it with a neighbour, or state a prior")]
    EmptyCategory {
        /// Which item.
        item: usize,
        /// Which score.
        category: u8,
    },
    /// A score above what its item gives at most.
    #[error("job {item}: score {score} is above its highest, {highest}")]
    ScoreTooHigh {
        /// Which item.
        item: usize,
        /// The score.
        score: u8,
        /// What it gives at most.
        highest: u8,
    },
    /// Parameters that do not follow from the data.
    #[error("the jobs' difficulties do not follow from these scores: {0}")]
    NotIdentified(&'static str),
    /// A method for pass or fail met graded scores.
    #[error("job {item}: graded scores; {method} is for pass or fail")]
    Graded {
        /// Which item.
        item: usize,
        /// Which method.
        method: &'static str,
    },
    /// Lists that belong together differ in length.
    #[error("{what}: {found} given, {expected} needed")]
    Mismatch {
        /// What is counted.
        what: &'static str,
        /// How many there are.
        found: usize,
        /// How many there must be.
        expected: usize,
    },
}
