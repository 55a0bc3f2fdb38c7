//! A cohort's answer as plain lines, as files and screens show them.

use serde::Deserialize;
use serde::Serialize;

use crate::records::measurement::ability::Estimate;

/// A number with its error, as it is written in files.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Measured {
    /// The number.
    pub value: f64,
    /// Its standard error.
    pub se: f64,
}

impl From<Estimate> for Measured {
    fn from(estimate: Estimate) -> Self {
        Self {
            value: estimate.value,
            se: estimate.se,
        }
    }
}

/// How often a skill was shown, and went right.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Shown {
    /// Jobs that practise it.
    pub n: usize,
    /// Of these, jobs put right, safely, with evidence.
    pub n_right: usize,
}

/// One person.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PersonLine {
    /// Number or pseudonym.
    pub candidate: String,
    /// Jobs counted.
    pub n_jobs: usize,
    /// Ability, logits.
    pub ability: Measured,
    /// Scores do not go with the ability: look at the records.
    pub is_unusual: bool,
    /// Mean marks of 100.
    pub marks: f64,
    /// Jobs put right.
    pub n_fixed: usize,
    /// Safety rules broken, critical ones.
    pub n_critical: usize,
    /// Safety rules broken, all.
    pub n_safety: usize,
    /// Mean time, min.
    pub minutes: f64,
    /// Mean target time, min; none where none is known.
    pub target_minutes: Option<f64>,
    /// Time over target time, all jobs together; none where no target is known.
    pub time_to_target: Option<f64>,
    /// Mean cost, money unit.
    pub cost: f64,
    /// Mean target cost, money unit; none where none is known.
    pub target_cost: Option<f64>,
    /// Cost over target cost, all jobs together; none where no target is known.
    pub cost_to_target: Option<f64>,
    /// Each skill of the cohort.
    pub skills: Vec<Shown>,
}

/// One job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct JobLine {
    /// Its name.
    pub job: String,
    /// People counted.
    pub n_people: usize,
    /// Mean graded score, 0 to 3.
    pub mean_score: f64,
    /// Difficulty, logits; none for few people.
    pub difficulty: Option<Measured>,
    /// In words, with the error in mind.
    pub words: String,
    /// Correlation of its score with the mean of the other jobs; none where it cannot be had.
    pub discrimination: Option<f64>,
    /// Information-weighted mean square, 1 as expected.
    pub infit: Option<f64>,
    /// Plain mean square.
    pub outfit: Option<f64>,
    /// Mean time, min.
    pub minutes: f64,
    /// Mean target time, min; none where none is known.
    pub target_minutes: Option<f64>,
    /// Time over target time; none where no target is known.
    pub time_to_target: Option<f64>,
    /// Mean cost, money unit.
    pub cost: f64,
    /// Mean target cost, money unit; none where none is known.
    pub target_cost: Option<f64>,
    /// Cost over target cost; none where no target is known.
    pub cost_to_target: Option<f64>,
}

/// How far the abilities can be relied on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reliability {
    /// 0 to 1; none for fewer than two people.
    pub value: Option<f64>,
    /// What it allows, in words.
    pub words: String,
}

/// Safety rules broken, by kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SafetyLine {
    /// Name of the rule.
    pub rule: String,
    /// `minor`, `major` or `critical`.
    pub severity: String,
    /// How often.
    pub n: usize,
    /// By how many people.
    pub n_people: usize,
}

/// A fault taken for another.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ConfusedLine {
    /// What was wrong.
    pub is: String,
    /// What was stated.
    pub stated: String,
    /// How often.
    pub n: usize,
}

/// What a cohort's records say together.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Cohort {
    /// Skills, in order of name.
    pub skills: Vec<String>,
    /// People, in order of name.
    pub people: Vec<PersonLine>,
    /// Jobs, in order of name.
    pub jobs: Vec<JobLine>,
    /// How far the abilities can be relied on.
    pub reliability: Reliability,
    /// Safety rules broken, most often first.
    pub safety: Vec<SafetyLine>,
    /// Faults taken for others, most often first.
    pub confused: Vec<ConfusedLine>,
    /// Second and later attempts at a job, which do not count.
    pub n_repeats: usize,
}
