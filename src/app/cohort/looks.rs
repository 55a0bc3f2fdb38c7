//! The desk as it stands, for what is shown of it.

use crate::app::cohort::opened::Opened;
use crate::app::cohort::rows::Rows;
use crate::app::lost_points::Marked;
use crate::app::shared::Shared;
use crate::assess::assessment_file::AssessmentFile;
use crate::records::cohort::lines::Cohort;
use crate::records::rulings::Ruling;

/// The desk as it stands.
pub struct Looks<'a> {
    /// All records.
    pub rows: &'a Rows,
    /// Assessments that are known.
    pub files: &'a [AssessmentFile],
    /// The cohort, once worked out.
    pub cohort: Option<&'a Shared<Cohort>>,
    /// What holds about each person.
    pub decisions: &'a Shared<Vec<String>>,
    /// What was ruled.
    pub rulings: &'a Shared<Vec<Ruling>>,
    /// What is to be said.
    pub told: &'a [String],
    /// Which tab.
    pub tab: usize,
    /// What is opened.
    pub opened: Option<&'a Opened>,
    /// What explains the marks of the person that is opened.
    pub marked: &'a [Marked],
    /// A job that may be voided.
    pub voiding: Option<&'a str>,
    /// Texts looked at, and texts run again.
    pub done: [usize; 2],
    /// Texts in all.
    pub n_sources: usize,
    /// Threads are at work.
    pub works: bool,
    /// The cohort is being worked out.
    pub reckons: bool,
    /// Running again was stopped.
    pub stopped: bool,
    /// Names and texts that stand in place of files in which something was erased.
    pub left: Vec<(&'a str, &'a str)>,
}
