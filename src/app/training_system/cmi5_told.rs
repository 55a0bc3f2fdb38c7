//! What a cmi5 unit has told within one registration, over all its visits: passed and completed are
//! said once, failed never after passed, and one assessment is judged once.

use std::collections::BTreeSet;

use serde::Deserialize;
use serde::Serialize;

/// What was told. It stands beside the work in the state of the training system's store.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Told {
    /// Verbs that the store has taken.
    verbs: BTreeSet<String>,
    /// Start of the assessment that was judged last, ms since 1970.
    judged_ms: Option<f64>,
    /// Start of the assessment of which nothing is left to be told, ms since 1970.
    whole_ms: Option<f64>,
}

impl Told {
    /// The verb is still to be said of the assessment that began then.
    pub fn lacks(&self, verb: &str, began_ms: f64) -> bool {
        let said = |verb: &str| self.verbs.contains(verb);
        match verb {
            "passed" | "failed" => !said("passed") && self.judged_ms != Some(began_ms),
            verb => !said(verb),
        }
    }

    /// The store has taken it.
    pub fn take(&mut self, verb: &str, began_ms: f64) {
        self.verbs.insert(verb.to_owned());
        if matches!(verb, "passed" | "failed") {
            self.judged_ms = Some(began_ms);
        }
    }

    /// All there is to say of an assessment is said.
    pub fn close(&mut self, began_ms: f64) {
        self.whole_ms = Some(began_ms);
    }

    /// Whether it is.
    pub fn is_whole(&self, began_ms: f64) -> bool {
        self.whole_ms == Some(began_ms)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::read::read_back;

    #[test]
    fn once_failed_one_may_pass_later_and_once_passed_nothing_takes_it_back() {
        let mut told = Told::default();
        assert!(told.lacks("failed", 1.0) && told.lacks("completed", 1.0));
        told.take("failed", 1.0);
        told.take("completed", 1.0);
        told.close(1.0);
        assert!(told.is_whole(1.0) && !told.is_whole(2.0));
        // The result is looked at once more: nothing is said twice.
        assert!(!told.lacks("failed", 1.0) && !told.lacks("completed", 1.0));
        // Sat anew within the same registration.
        assert!(told.lacks("passed", 2.0) && !told.lacks("completed", 2.0));
        told.take("passed", 2.0);
        for verb in ["passed", "failed", "completed"] {
            assert!(!told.lacks(verb, 3.0), "{verb}");
        }
    }

    #[test]
    fn it_comes_back_from_the_store_as_it_went() {
        let mut told = Told::default();
        told.take("passed", 1_930_000_000_000.25);
        let text = serde_json::to_string(&told).expect("writes");
        assert_eq!(read_back::<Told>(&text), Some(told));
        assert_eq!(read_back::<Told>("{}"), Some(Told::default()));
    }
}
