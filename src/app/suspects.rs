//! The technician's list of suspects: plain changes to a plain list.

use crate::app::view::SuspectOrder;
use serde::Deserialize;
use serde::Serialize;

/// A suspect on the job card.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SavedSuspect {
    /// Name of the cause.
    pub cause: String,
    /// How sure, 1 to 3.
    pub confidence: u8,
    /// Struck out.
    pub struck: bool,
}

/// Applies a change; one that names a cause not on the list changes nothing.
pub fn change(list: &mut Vec<SavedSuspect>, order: SuspectOrder) {
    match order {
        SuspectOrder::Add(cause) => {
            if place(list, &cause).is_none() {
                list.push(SavedSuspect {
                    cause,
                    confidence: 1,
                    struck: false,
                });
            }
        }
        SuspectOrder::Strike(cause) => {
            if let Some(at) = place(list, &cause) {
                list[at].struck = !list[at].struck;
            }
        }
        SuspectOrder::Sure(cause, confidence) => {
            if let Some(at) = place(list, &cause) {
                list[at].confidence = confidence.clamp(1, 3);
            }
        }
        SuspectOrder::Up(cause) => {
            if let Some(at) = place(list, &cause)
                && at > 0
            {
                list.swap(at, at - 1);
            }
        }
    }
}

fn place(list: &[SavedSuspect], cause: &str) -> Option<usize> {
    list.iter().position(|suspect| suspect.cause == cause)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_suspect_is_added_once_moved_up_struck_out_and_brought_back() {
        let mut list = Vec::new();
        for cause in ["a", "b", "a"] {
            change(&mut list, SuspectOrder::Add(cause.to_owned()));
        }
        change(&mut list, SuspectOrder::Up("b".to_owned()));
        change(&mut list, SuspectOrder::Strike("b".to_owned()));
        change(&mut list, SuspectOrder::Sure("a".to_owned(), 9));
        let said: Vec<(&str, u8, bool)> = list
            .iter()
            .map(|s| (s.cause.as_str(), s.confidence, s.struck))
            .collect();
        assert_eq!(said, [("b", 1, true), ("a", 3, false)]);
        change(&mut list, SuspectOrder::Strike("b".to_owned()));
        change(&mut list, SuspectOrder::Up("nobody".to_owned()));
        assert!(!list[0].struck);
    }
}
