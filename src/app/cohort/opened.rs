//! What is opened from the tables: a person, what is behind a skill, or a job.

use crate::say;

/// Which page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Opened {
    /// A person, by number or pseudonym.
    Person(String),
    /// A person and a skill.
    Skill(String, String),
    /// A job, by name.
    Job(String),
}

impl Opened {
    /// Words of the way back to it from a replay.
    pub fn back(&self) -> &'static str {
        match self {
            Self::Person(_) => say!("Back to the person"),
            Self::Skill(..) => say!("Back to the skill"),
            Self::Job(_) => say!("Back to the job"),
        }
    }
}
