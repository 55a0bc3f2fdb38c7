//! The job on the desk and every change of it.

use std::collections::BTreeMap;
use std::rc::Rc;

use serde_json::Value;
use serde_json::json;
use yew::prelude::*;

use crate::app::desk::form_table::holders;
use crate::app::desk::history::History;
use crate::scenario::FileError;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;

/// A change a person makes.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// A field, by its path, gets a value; nothing takes it out.
    Set(String, Value),
    /// What is typed in a field, by its path, means nothing there; its value stays.
    Unreadable(String, String),
    /// The field is left.
    Settle,
    /// Back by one step.
    Undo,
    /// Forward again.
    Redo,
}

/// What stands in fields without meaning anything there, by the fields' paths.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Unread(pub BTreeMap<String, String>);

/// A holder's path, and what it begins with.
type Beginning = (&'static str, fn() -> Value);

/// Holders that come whole: what they begin with when the first of their fields is set.
const BEGINNINGS: [Beginning; 2] = [
    ("reference", || json!({ "cost": 0.0, "minutes": 0.0 })),
    ("visit.person", || json!({ "manner": "honest" })),
];

/// The job on the desk.
#[derive(Clone, Debug, PartialEq)]
pub struct Desk {
    /// The job with its past.
    pub history: History,
    /// The field of a change that the job could not take.
    pub refused: Option<String>,
    /// What was typed and is no value yet.
    pub unread: Unread,
}

impl Desk {
    /// Puts a job on the desk.
    pub fn of(job: JobFile) -> Self {
        Self {
            history: History::of(job),
            refused: None,
            unread: Unread::default(),
        }
    }

    fn set(&mut self, path: &str, value: Value) {
        let takes_entry_out = path.ends_with(']') && value.is_null();
        match changed(self.history.now(), path, value) {
            Ok(job) => {
                self.refused = None;
                self.unread.0.remove(path);
                if let Some(list) = holders(path).nth(1).filter(|_| takes_entry_out) {
                    let unread = &mut self.unread.0;
                    unread.retain(|path, _| holders(path).all(|holder| holder != list));
                }
                self.step(|history| history.change(path, job));
            }
            Err(_) => self.refused = Some(path.to_owned()),
        }
    }

    /// Goes to another state of the job; what was typed over a value that is no more goes with it.
    fn step(&mut self, step: impl FnOnce(&mut History)) {
        if self.unread.0.is_empty() {
            return step(&mut self.history);
        }
        let before = edit::as_value(self.history.now());
        step(&mut self.history);
        let after = edit::as_value(self.history.now());
        self.unread.0.retain(|path, _| {
            let held = holders(path).nth(1).unwrap_or_default();
            let is_gone = edit::get(&before, held).is_some() && edit::get(&after, held).is_none();
            !is_gone && edit::get(&before, path) == edit::get(&after, path)
        });
    }
}

fn changed(job: &JobFile, path: &str, value: Value) -> Result<JobFile, FileError> {
    if path.starts_with("reference.") && value.is_null() {
        // Target cost and time come and go together.
        return edit::with(job, "reference", Value::Null);
    }
    let whole = edit::as_value(job);
    let begins = BEGINNINGS.iter().find(|(holder, _)| {
        holders(path).skip(1).any(|held| held == *holder)
            && edit::get(&whole, holder).is_none_or(Value::is_null)
    });
    match begins {
        Some((holder, begin)) => edit::with(&edit::with(job, holder, begin())?, path, value),
        None => edit::with(job, path, value),
    }
}

impl Reducible for Desk {
    type Action = Edit;

    fn reduce(self: Rc<Self>, change: Edit) -> Rc<Self> {
        let mut next = (*self).clone();
        match change {
            Edit::Set(path, value) => next.set(&path, value),
            Edit::Unreadable(path, text) => drop(next.unread.0.insert(path, text)),
            Edit::Settle => next.history.settle(),
            Edit::Undo => next.step(History::undo),
            Edit::Redo => next.step(History::redo),
        }
        next.into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::draft::blank;
    use crate::scenario::visit_file::MannerFile;

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
    fn a_customer_who_pays_through_a_landlord_answers_honestly_unless_said_otherwise() {
        let desk = after([set("visit.person.tenant", json!(true))]);
        assert_eq!(desk.refused, None);
        let visit = desk.history.now().visit.clone().expect("a visit");
        let person = visit.person.expect("a person");
        assert!(person.tenant && person.manner == MannerFile::Honest);
    }

    #[test]
    fn what_means_nothing_is_kept_beside_the_last_value_until_it_is_mended() {
        let unread = |path: &str, text: &str| Edit::Unreadable(path.to_owned(), text.to_owned());
        let desk = after([
            set("site.load_kg", json!(4.0)),
            unread("site.load_kg", "four"),
            unread("site.room_degc", "-"),
        ]);
        assert!((desk.history.now().site.load_kg - 4.0).abs() < 1e-12);
        assert_eq!(desk.unread.0["site.load_kg"], "four");
        // Another field's change leaves it; its own value, however it comes, takes it away.
        let other = desk.reduce(set("site.water_l", json!(2.0)));
        assert_eq!(other.unread.0.len(), 2);
        let mended = other.reduce(set("site.load_kg", json!(5.0)));
        assert_eq!(
            mended.unread.0.keys().collect::<Vec<_>>(),
            ["site.room_degc"]
        );
        let again = mended.reduce(unread("site.load_kg", "5 kg"));
        let undone = again.reduce(Edit::Undo);
        assert!(!undone.unread.0.contains_key("site.load_kg"));
    }

    #[test]
    fn what_was_typed_goes_with_the_entry_it_was_typed_in() {
        let fault = |id: &str| json!({ "id": id, "severity": 1.0 });
        let path = "faults[0].severity".to_owned();
        let desk = after([
            set("faults[0]", fault("capacitor_low")),
            set("faults[1]", fault("belt_off")),
            Edit::Unreadable(path, "much".to_owned()),
            set("faults[0]", Value::Null),
        ]);
        assert!(desk.unread.0.is_empty() && desk.history.now().faults.len() == 1);
    }

    #[test]
    fn what_a_job_cannot_hold_is_told_and_changes_nothing() {
        let desk = after([set("site.load_kg", json!("much"))]);
        assert_eq!(desk.history.now(), &blank());
        assert_eq!(desk.refused.as_deref(), Some("site.load_kg"));
    }
}
