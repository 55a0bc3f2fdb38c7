//! What can happen to the desk.

use web_sys::File;

use crate::app::assessments::given::Given;
use crate::app::cohort::aside::Aside;
use crate::app::cohort::erasing;
use crate::app::cohort::erasing::Whose;
use crate::app::cohort::hands::Task;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::source::Source;
use crate::app::lost_points::Marked;
use crate::app::worker::Answer;
use crate::records::rulings::About;

/// What happens to the desk.
pub enum Msg {
    /// Assessments made in this browser.
    Given(Vec<Given>),
    /// Files were chosen.
    Files(Vec<File>),
    /// They were opened.
    Sources(Vec<Source>, Vec<String>),
    /// A thread gets a text, or what it is instead, in English.
    Text(usize, Task, Result<String, String>),
    /// A thread answers.
    Answer(usize, Answer),
    /// The cohort is worked out.
    Worked(Answer),
    /// A tab.
    Show(usize),
    /// A person, a skill, a job, or back to all.
    Open(Option<Opened>),
    /// A record's work, step by step.
    Replay(usize, usize),
    /// A record as it was written.
    Read(usize, usize),
    /// It is there, or why it is not.
    Aside(Result<Aside, String>),
    /// Back from it.
    Back,
    /// What explains a person's marks.
    Marked(String, Vec<Marked>),
    /// A job is to be voided, or not after all.
    Void(Option<String>),
    /// Something about the rulings.
    Rule(Change),
    /// Another tab says something about them.
    Heard(String),
    /// What is typed about something is thrown away.
    Forget(About),
    /// Results are to be erased.
    Erase(Whose),
    /// They were erased in these texts; what could not be is told.
    Erased(Vec<erasing::Text>, Vec<String>),
    /// The running again is stopped.
    Stop,
    /// A file is to be saved.
    Save(&'static str),
}
