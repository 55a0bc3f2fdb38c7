//! Why a command did not do its work. Each kind says what was given and what would be right.

use std::io;

use thiserror::Error;

use crate::machine::MachineError;
use crate::network::SolveError;
use crate::scenario::FileError;
use crate::scenario::problem::Problems;

/// What errors call the words the program was started with.
pub const COMMAND_LINE: &str = "command line";

/// Why a command stopped.
#[derive(Debug, Error)]
pub enum Failure {
    /// A file or the command line is wrong; every problem is told.
    #[error(transparent)]
    Input(#[from] FileError),
    /// A file cannot be read or written.
    #[error("{file}: {error}; {remedy}")]
    File {
        /// Its name as given.
        file: String,
        /// What the system says.
        error: io::Error,
        /// What would be right.
        remedy: &'static str,
    },
    /// A machine cannot be put together or run.
    #[error("{what}: {error}")]
    Machine {
        /// Which, such as `machine P`.
        what: String,
        /// Why.
        error: MachineError,
    },
    /// A network cannot be solved.
    #[error("{what}: {error}")]
    Solve {
        /// Which, such as `machine P, spinning`.
        what: String,
        /// Why.
        error: SolveError,
    },
    /// The answer cannot be written.
    #[error("standard output: {0}")]
    Output(io::Error),
    /// Whoever read the answer has gone.
    #[error("standard output was closed")]
    ReaderGone,
}

impl From<io::Error> for Failure {
    /// Errors of writing the answer; files have their own kind.
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::BrokenPipe => Failure::ReaderGone,
            _ => Failure::Output(error),
        }
    }
}

impl From<serde_json::Error> for Failure {
    /// Errors of writing the answer as JSON.
    fn from(error: serde_json::Error) -> Self {
        Failure::from(io::Error::from(error))
    }
}

impl Failure {
    /// One problem of the command line: which word, what stands there, what would be right.
    pub fn usage(word: &str, found: &str, remedy: impl Into<String>) -> Self {
        let mut problems = Problems::new(COMMAND_LINE);
        problems.add(word, found, remedy);
        Failure::from_problems(problems)
    }

    /// Problems that were found.
    pub fn from_problems(problems: Problems<'_>) -> Self {
        match problems.into_result(()) {
            Err(error) => Failure::Input(error),
            Ok(()) => Failure::Input(FileError {
                problems: Vec::new(),
            }),
        }
    }
}
