//! The job on the desk and every change of it.

use std::rc::Rc;

use serde_json::Value;
use serde_json::json;
use yew::prelude::*;

use crate::app::desk::history::History;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;

/// A change a person makes.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// A field, by its path, gets a value; nothing takes it out.
    Set(String, Value),
    /// The field is left.
    Settle,
    /// Back by one step.
    Undo,
    /// Forward again.
    Redo,
}

/// The job on the desk.
#[derive(Clone, Debug, PartialEq)]
pub struct Desk {
    /// The job with its past.
    pub history: History,
    /// The field of a change that the job could not take.
    pub refused: Option<String>,
}

impl Desk {
    /// Puts a job on the desk.
    pub fn of(job: JobFile) -> Self {
        Self {
            history: History::of(job),
            refused: None,
        }
    }

    fn set(&mut self, path: &str, value: Value) {
        let job = self.history.now();
        let changed = match path.strip_prefix("reference.") {
            // Target cost and time come and go together.
            Some(_) if value.is_null() => edit::with(job, "reference", Value::Null),
            Some(_) if job.reference.is_none() => {
                let both = json!({ "cost": 0.0, "minutes": 0.0 });
                edit::with(job, "reference", both).and_then(|job| edit::with(&job, path, value))
            }
            _ => edit::with(job, path, value),
        };
        match changed {
            Ok(job) => {
                self.refused = None;
                self.history.change(path, job);
            }
            Err(_) => self.refused = Some(path.to_owned()),
        }
    }
}

impl Reducible for Desk {
    type Action = Edit;

    fn reduce(self: Rc<Self>, change: Edit) -> Rc<Self> {
        let mut next = (*self).clone();
        match change {
            Edit::Set(path, value) => next.set(&path, value),
            Edit::Settle => next.history.settle(),
            Edit::Undo => next.history.undo(),
            Edit::Redo => next.history.redo(),
        }
        next.into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::draft::blank;

    fn after(changes: impl IntoIterator<Item = Edit>) -> Rc<Desk> {
        let desk = Rc::new(Desk::of(blank()));
        changes
            .into_iter()
            .fold(desk, |desk, change| desk.reduce(change))
    }

    fn set(path: &str, value: Value) -> Edit {
        Edit::Set(path.to_owned(), value)
    }

    #[test]
    fn a_target_comes_and_goes_whole() {
        let there = after([set("reference.cost", json!(60.0))]);
        assert_eq!(there.history.now().reference.map(|r| r.cost), Some(60.0));
        let gone = there.reduce(set("reference.minutes", Value::Null));
        assert_eq!(gone.history.now().reference, None);
    }

    #[test]
    fn what_a_job_cannot_hold_is_told_and_changes_nothing() {
        let desk = after([set("site.load_kg", json!("much"))]);
        assert_eq!(desk.history.now(), &blank());
        assert_eq!(desk.refused.as_deref(), Some("site.load_kg"));
    }
}
