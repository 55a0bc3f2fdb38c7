//! What the browser keeps of one cmi5 session, for as long as its tab lives: the key that is given once,
//! the launch data, and what was said that is said once a session. A page that is loaded anew goes on in
//! the same session by it.

use std::cell::RefCell;

use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;
use web_sys::Storage;

use crate::scenario::read::read_back;

/// A session so far.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Visit {
    /// What lets it in.
    pub token: String,
    /// The launch data, once they were read.
    pub data: Option<Value>,
    /// Moment of the first statement, once it was made, ms since 1970.
    pub first_ms: Option<f64>,
    /// The store has taken it.
    pub has_begun: bool,
    /// Passed or failed was taken: once a session.
    pub has_judged: bool,
    /// Start of the assessment of which all was told, ms since 1970.
    pub told_ms: Option<f64>,
    /// The last statement was made: nothing more is said.
    pub is_over: bool,
}

impl Visit {
    /// From the first statement until now, in ticks of 0.1 s; none before it is taken. A clock that was set back
    /// counts as no time.
    pub fn ticks(&self, now_ms: f64) -> Option<u64> {
        let first_ms = self.first_ms.filter(|_| self.has_begun)?;
        Some(((now_ms - first_ms) / 100.0).max(0.0) as u64)
    }
}

/// A session with the place where it is kept.
pub struct Kept {
    slot: String,
    visit: RefCell<Visit>,
}

impl Kept {
    /// The session of a launch, if this tab knows it.
    pub fn find(slot: String) -> Option<Self> {
        let text = session()?.get_item(&slot).ok().flatten()?;
        let visit: Visit = read_back(&text)?;
        Some(Self {
            slot,
            visit: RefCell::new(visit),
        })
    }

    /// One that begins with its key.
    pub fn begin(slot: String, token: String) -> Self {
        let kept = Self {
            slot,
            visit: RefCell::default(),
        };
        kept.change(|visit| visit.token = token);
        kept
    }

    /// As it stands.
    pub fn now(&self) -> Visit {
        self.visit.borrow().clone()
    }

    /// Changes it and keeps the change.
    pub fn change(&self, change: impl FnOnce(&mut Visit)) {
        change(&mut self.visit.borrow_mut());
        let text = serde_json::to_string(&*self.visit.borrow());
        if let (Some(session), Ok(text)) = (session(), text) {
            // A browser that keeps nothing has only this page: loaded anew it has no key.
            let _ = session.set_item(&self.slot, &text);
        }
    }
}

fn session() -> Option<Storage> {
    gloo::utils::window().session_storage().ok().flatten()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_session_lasts_from_its_first_statement_however_often_the_page_is_loaded() {
        let mut visit = Visit {
            token: "t".to_owned(),
            ..Visit::default()
        };
        visit.first_ms = Some(1_000_000.0);
        assert_eq!(visit.ticks(1_005_000.0), None);
        visit.has_begun = true;
        let text = serde_json::to_string(&visit).expect("writes");
        let again: Visit = read_back(&text).expect("reads");
        assert_eq!(again, visit);
        assert_eq!(again.ticks(1_090_500.0), Some(905));
        assert_eq!(again.ticks(900_000.0), Some(0));
    }
}
