//! Why something could not be kept or found again, in words for the person at the screen.

use thiserror::Error;

use crate::say;

/// A browser's refusal to keep or give something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum StorageError {
    /// No room is left.
    #[error(
        "{}",
        say!("This browser has no room left, so the last step is not saved. Free some space, or finish in this sitting.")
    )]
    Full,
    /// The browser does not allow it.
    #[error(
        "{}",
        say!("This browser does not let the page save. You can work on, but closing the page loses the job.")
    )]
    Refused,
    /// What was kept cannot be read.
    #[error("{}", say!("The saved job cannot be read and was left untouched. You can start it again."))]
    Damaged,
}

impl StorageError {
    /// From the name of the browser's exception.
    pub(super) fn of_name(name: &str) -> Self {
        if name == "QuotaExceededError" {
            Self::Full
        } else {
            Self::Refused
        }
    }
}
