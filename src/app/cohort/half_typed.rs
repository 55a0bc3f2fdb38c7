//! Rulings that are typed by half: kept while the page is there and over a reload of it, so that nothing
//! is typed twice.

use std::cell::RefCell;

use serde::Deserialize;
use serde::Serialize;
use web_sys::Storage;

use crate::records::rulings::About;
use crate::scenario::read::read_back;

/// The key in the tab's own storage, which ends with the tab: what is typed names people.
const KEY: &str = "tubwright/half-typed-rulings";

thread_local! {
    static ALL: RefCell<Option<Vec<HalfTyped>>> = const { RefCell::new(None) };
}

/// A form as far as it is filled in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HalfTyped {
    /// About what.
    pub about: About,
    /// Of which assessment, where there is a choice and one is chosen; empty for practice.
    #[serde(default)]
    pub assessment: Option<String>,
    /// What is to hold.
    pub holds: String,
    /// Who rules.
    pub by: String,
    /// Why.
    pub why: String,
}

impl HalfTyped {
    /// A form in which nothing stands.
    pub fn blank(about: About) -> Self {
        Self {
            about,
            assessment: None,
            holds: String::new(),
            by: String::new(),
            why: String::new(),
        }
    }

    /// Somebody has typed or chosen something in it.
    fn is_begun(&self) -> bool {
        [&self.by, &self.why].iter().any(|text| !text.is_empty())
            || (matches!(self.about, About::Candidate(_)) && !self.holds.is_empty())
    }
}

/// What was typed about something.
pub fn of(about: &About) -> Option<HalfTyped> {
    all().into_iter().find(|one| one.about == *about)
}

/// A ruling on a person is typed by half.
pub fn is_begun(candidate: &str) -> bool {
    of(&About::Candidate(candidate.to_owned())).is_some()
}

/// Everything that is typed by half.
pub fn all() -> Vec<HalfTyped> {
    ALL.with_borrow_mut(|all| all.get_or_insert_with(read).clone())
}

/// Keeps a form as it is.
pub fn keep(one: HalfTyped) {
    set(with(all(), one));
}

/// Forgets a form.
pub fn forget(about: &About) {
    keep(HalfTyped::blank(about.clone()));
}

/// The list with one form as it is now; one in which nothing stands is not on it.
fn with(mut all: Vec<HalfTyped>, one: HalfTyped) -> Vec<HalfTyped> {
    all.retain(|other| other.about != one.about);
    if one.is_begun() {
        all.push(one);
    }
    all
}

fn set(all: Vec<HalfTyped>) {
    if let Some(storage) = storage() {
        // What the browser refuses is there until the page is closed; the form says so.
        let _ = match serde_json::to_string(&all) {
            Ok(text) if !all.is_empty() => storage.set_item(KEY, &text),
            _ => storage.remove_item(KEY),
        };
    }
    ALL.set(Some(all));
}

fn read() -> Vec<HalfTyped> {
    let text = storage().and_then(|storage| storage.get_item(KEY).ok().flatten());
    text.and_then(|text| read_back(&text)).unwrap_or_default()
}

/// The tab's own storage; none where the browser refuses it, and none natively, as in tests.
fn storage() -> Option<Storage> {
    if cfg!(target_arch = "wasm32") {
        gloo::utils::window().session_storage().ok().flatten()
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn person() -> About {
        About::Candidate("c-1".to_owned())
    }

    #[test]
    fn a_form_is_found_again_as_it_was_left_beside_the_others() {
        let typed = HalfTyped {
            why: "heard on".to_owned(),
            ..HalfTyped::blank(person())
        };
        let job = HalfTyped {
            by: "N. Judge".to_owned(),
            holds: "void".to_owned(),
            ..HalfTyped::blank(About::Job("c-1".to_owned()))
        };
        keep(typed.clone());
        keep(job.clone());
        assert_eq!(of(&person()), Some(typed.clone()));
        let more = HalfTyped {
            why: "heard on appeal".to_owned(),
            ..typed
        };
        keep(more.clone());
        assert_eq!(all(), [job.clone(), more.clone()]);
        let text = serde_json::to_string(&all()).expect("writes");
        assert_eq!(
            read_back::<Vec<HalfTyped>>(&text),
            Some(vec![job.clone(), more])
        );
        forget(&person());
        assert_eq!(all(), [job]);
    }

    #[test]
    fn a_form_in_which_nothing_was_typed_is_not_kept() {
        let preset = HalfTyped {
            holds: "void".to_owned(),
            ..HalfTyped::blank(About::Job("j1".to_owned()))
        };
        assert!(with(Vec::new(), preset).is_empty());
        assert!(with(Vec::new(), HalfTyped::blank(person())).is_empty());
    }
}
