//! What passes between the page and its thread: text on both sides.

use serde::Deserialize;
use serde::Serialize;

use crate::app::languages::Spoken;
use crate::bench::job::Entry;
use crate::expert::Reckoning;
use crate::expert::crowd::Kind;
use crate::score::FairnessLine;
use crate::score::Fared;
use crate::score::Row;

/// A job as far as its log goes.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Worked {
    /// Name of the job.
    pub job: String,
    /// The job in letters, where it does not ship.
    pub letters: Option<String>,
    /// The job's seed.
    pub seed: u64,
    /// What was done.
    pub log: Vec<Entry>,
}

/// What the page sends; `Q` is a question, borrowed on its way out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Sent<Q> {
    /// Answers are to be in this language from now on.
    Speak(Spoken),
    /// Something is asked.
    Ask(Q),
}

/// What the page asks.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "ask", rename_all = "snake_case")]
pub enum Question {
    /// Which causes were likely after each step of a job, and what its decisions were worth.
    Likely(Worked),
    /// What the decisions of a job were worth, and nothing else of it.
    Reckoned(Worked),
    /// How the expert works the same job from the bell, knowing as little.
    Expert(Worked),
    /// What a hint says now.
    Hint(Worked),
    /// What faults of a machine read like.
    Rows {
        /// Short name of the machine.
        machine: String,
        /// Names of the faults.
        faults: Vec<String>,
    },
    /// Whether a job is fair.
    Fair {
        /// The job.
        worked: Worked,
        /// What every fault of its machine reads like, where that is known; else it is read.
        rows: Vec<Row>,
    },
    /// How a simulated apprentice works the job from the bell.
    Apprentice {
        /// The job; its seed is the apprentice's.
        worked: Worked,
        /// Which kind.
        kind: Kind,
    },
    /// How simulated apprentices fare with a job.
    Crowd {
        /// The job; its seed is that of the first, each other one has the next.
        worked: Worked,
        /// Kinds of apprentices.
        kinds: Vec<Kind>,
        /// How many of each kind.
        runs: u32,
    },
    /// A file's records taken in.
    Sift {
        /// Name of the file.
        file: String,
        /// Its text.
        text: String,
        /// Texts of assessments, each with its key as digits, or nothing.
        assessments: Vec<(String, String)>,
        /// Logs are run again.
        replays: bool,
    },
    /// What attempts say together.
    Cohort {
        /// The attempts, as JSON: large types inside a message would need a reader of their own.
        attempts: String,
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
    /// What each decision was worth; comes after the likely causes, and is the last.
    Reckoned(Reckoning),
    /// How the expert or an apprentice worked the job.
    Expert {
        /// What it did.
        log: Vec<Entry>,
    },
    /// What each rung of the ladder of hints says.
    Hint {
        /// From the first to the last.
        told: Vec<String>,
    },
    /// What faults read like.
    Rows {
        /// In the order asked.
        rows: Vec<Row>,
    },
    /// What can be said of a job's fairness.
    Fair {
        /// Sentences.
        lines: Vec<FairnessLine>,
    },
    /// How each kind fared.
    Crowd {
        /// In the order asked.
        fared: Vec<Fared>,
    },
    /// A file's records, one after the other.
    Sifted {
        /// What is known of each, as JSON.
        list: String,
    },
    /// What attempts say together.
    Cohort {
        /// It, as JSON.
        cohort: String,
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
