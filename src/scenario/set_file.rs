//! A training set's file: jobs in the order they are to be worked, the next one opening when the
//! one before is mastered.
//!
//! ```text
//! {"format": "tubwright-set-1", "title", "about", "mastered_at_marks": 80,
//!  "jobs": ["no_water", …], "files": {"our_own_job": {…a whole job file…}},
//!  "sealed": {"another": "…its letters, as in a link…"}}
//! ```
//! A job is one that ships or one that travels in the set, so that a set can be handed to a class as
//! a single file: open in `files`, or in `sealed` as letters that do not show the answer.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::scenario::job_file::JobFile;

/// The format this version reads and writes.
pub const SET_FORMAT: &str = "tubwright-set-1";

/// An ordered list of jobs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SetFile {
    /// `tubwright-set-1`.
    pub format: String,
    /// Short title.
    pub title: String,
    /// What it is for, a sentence or two.
    pub about: String,
    /// Marks of 100 from which a job counts as mastered.
    pub mastered_at_marks: f64,
    /// Names of jobs, in order.
    pub jobs: Vec<String>,
    /// Jobs that travel with the set, by name.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub files: BTreeMap<String, JobFile>,
    /// Jobs that travel with the set as letters, by name.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub sealed: BTreeMap<String, String>,
}

impl SetFile {
    /// How many jobs are open, counted from the first: all up to the first that is not mastered.
    /// `marks_of` gives the best marks so far, none where a job was never finished safely.
    pub fn n_open(&self, marks_of: impl Fn(&str) -> Option<f64>) -> usize {
        let is_mastered =
            |job: &&String| marks_of(job).is_some_and(|marks| marks >= self.mastered_at_marks);
        let n_mastered = self.jobs.iter().take_while(is_mastered).count();
        (n_mastered + 1).min(self.jobs.len())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_next_job_opens_when_the_last_is_mastered() {
        let set = SetFile {
            format: SET_FORMAT.to_owned(),
            title: "Three".to_owned(),
            about: String::new(),
            mastered_at_marks: 80.0,
            jobs: ["a", "b", "c"].map(str::to_owned).to_vec(),
            files: BTreeMap::new(),
            sealed: BTreeMap::new(),
        };
        assert_eq!(set.n_open(|_| None), 1);
        assert_eq!(set.n_open(|job| (job == "a").then_some(79.9)), 1);
        assert_eq!(set.n_open(|job| (job == "a").then_some(80.0)), 2);
        assert_eq!(set.n_open(|job| (job != "a").then_some(100.0)), 1);
        assert_eq!(set.n_open(|_| Some(100.0)), 3);
    }
}
