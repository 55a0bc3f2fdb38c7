//! What passes between the page and its thread: text on both sides.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::job::Entry;
use crate::expert::crowd::Kind;
use crate::score::Fared;

/// What the page asks.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "ask", rename_all = "snake_case")]
pub enum Question {
    /// Which causes were likely after each step of a job.
    Likely {
        /// Name of a job that ships.
        job: String,
        /// The job's seed.
        seed: u64,
        /// What was done.
        log: Vec<Entry>,
    },
    /// How simulated apprentices fare with a job.
    Crowd {
        /// Name of a job that ships.
        job: String,
        /// Kinds of apprentices.
        kinds: Vec<Kind>,
        /// How many of each kind.
        runs: u32,
        /// Seed of the first; each has the next one.
        seed: u64,
    },
}

/// What the thread answers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "answer", rename_all = "snake_case")]
pub enum Answer {
    /// The thread has started and takes questions.
    Ready,
    /// So many of so many parts are done.
    Progress {
        /// Parts done.
        done: usize,
        /// Parts in all.
        of: usize,
    },
    /// Which causes were likely.
    Likely(Likely),
    /// How each kind fared.
    Crowd {
        /// In the order asked.
        fared: Vec<Fared>,
    },
    /// The question cannot be answered, plain words.
    Failed {
        /// Why.
        why: String,
    },
}

/// Likely causes through a job.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Likely {
    /// Names of the faults of each cause; none for a sound machine. The likeliest at the end first.
    pub causes: Vec<Vec<String>>,
    /// Probability of each cause after the complaint, then after each step: a row a step.
    pub after: Vec<Vec<f64>>,
    /// Uncertainty taken away by each of them, bits.
    pub bits: Vec<f64>,
    /// How many causes each of them ruled out.
    pub ruled_out: Vec<usize>,
}
