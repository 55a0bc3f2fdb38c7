//! What is wrong in a file, in words a person can act on: which file, which field, what stands
//! there, what would be right. All problems of a file are reported at once.

use std::fmt;

use thiserror::Error;

use crate::language::said;
use crate::say;

/// What is wrong, for a form that says it in words and units of its own.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// Nothing stands there.
    Blank,
    /// A number lies outside its range, ends included.
    Range {
        /// Lowest.
        low: f64,
        /// Highest.
        high: f64,
    },
    /// There is no such name.
    NoSuch {
        /// What it should be the name of, such as "part of this machine": shown by `said`.
        kind: &'static str,
        /// The name that is most like it.
        nearest: Option<String>,
    },
    /// As the remedy says.
    Said,
}

/// One thing wrong in a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The file, as named by whoever read it.
    pub file: String,
    /// The field, such as `workshop.steps[3].needs[0]`; empty for the whole file.
    pub path: String,
    /// What stands there, as text; empty where nothing does.
    pub found: String,
    /// What is wrong and what would be right. A field is named in backticks, by its path; a name of
    /// the file stands in quotes.
    pub remedy: String,
    /// The same for a form.
    pub wrong: Wrong,
}

impl Problem {
    /// One that says all in its remedy.
    pub fn new(file: &str, path: &str, found: impl fmt::Display, remedy: &str) -> Self {
        Self {
            file: file.to_owned(),
            path: path.to_owned(),
            found: found.to_string(),
            remedy: remedy.to_owned(),
            wrong: Wrong::Said,
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.file)?;
        for part in [&self.path, &self.found] {
            if !part.is_empty() {
                write!(f, ": {part}")?;
            }
        }
        write!(f, ": {}", self.remedy)
    }
}

/// Why a file could not be taken: everything that is wrong in it.
#[derive(Clone, Debug, PartialEq, Error)]
#[error("{}", joined(.problems))]
pub struct FileError {
    /// At least one problem, in the order of the file.
    pub problems: Vec<Problem>,
}

fn joined(problems: &[Problem]) -> String {
    let lines: Vec<String> = problems.iter().map(Problem::to_string).collect();
    lines.join("\n")
}

/// Collects the problems of one file.
#[derive(Debug)]
pub struct Problems<'a> {
    file: &'a str,
    list: Vec<Problem>,
}

impl<'a> Problems<'a> {
    /// None so far in this file.
    pub fn new(file: &'a str) -> Self {
        Self {
            file,
            list: Vec::new(),
        }
    }

    /// Adds one: the field, what stands there, what would be right.
    pub fn add(&mut self, path: &str, found: impl fmt::Display, remedy: impl Into<String>) {
        self.tell(path, found, &remedy.into(), Wrong::Said);
    }

    fn tell(&mut self, path: &str, found: impl fmt::Display, remedy: &str, wrong: Wrong) {
        let said = Problem::new(self.file, path, found, remedy);
        self.list.push(Problem { wrong, ..said });
    }

    /// Something is wrong with the field already.
    pub fn has(&self, path: &str) -> bool {
        self.list.iter().any(|problem| problem.path == path)
    }

    /// Takes over the problems another reader found in the same file.
    pub fn take(&mut self, error: FileError) {
        for problem in error.problems {
            let Problem {
                path,
                found,
                remedy,
                wrong,
                ..
            } = problem;
            self.tell(&path, found, &remedy, wrong);
        }
    }

    /// Demands that a number lies in a range, ends included.
    pub fn in_range(&mut self, path: &str, value: f64, low: f64, high: f64) {
        if !(value >= low && value <= high) {
            let remedy = say!("must lie between {low} and {high}", low, high);
            self.tell(path, value, &remedy, Wrong::Range { low, high });
        }
    }

    /// Demands that a text is not blank.
    pub fn not_blank(&mut self, path: &str, text: &str) {
        if text.trim().is_empty() {
            self.tell(path, "\"\"", say!("must not be blank"), Wrong::Blank);
        }
    }

    /// Tells that a name of this kind does not exist, and which one is most like it.
    pub fn no_such(&mut self, path: &str, found: &str, kind: &'static str, nearest: Option<&str>) {
        let called = said(kind);
        let remedy = match nearest {
            None => say!("there is no such {kind}", kind = called),
            Some(known) => say!(
                "there is no such {kind}; nearest is {known}",
                kind = called,
                known = quoted(known)
            ),
        };
        let nearest = nearest.map(str::to_owned);
        let found = quoted(found);
        self.tell(path, found, &remedy, Wrong::NoSuch { kind, nearest });
    }

    /// The value if nothing was wrong, else all problems.
    pub fn into_result<T>(self, value: T) -> Result<T, FileError> {
        if self.list.is_empty() {
            Ok(value)
        } else {
            Err(FileError {
                problems: self.list,
            })
        }
    }
}

/// The name as it stands in a file.
pub fn quoted(name: &str) -> String {
    format!("\"{name}\"")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_problems_are_told_one_a_line() {
        let mut problems = Problems::new("p.json");
        problems.in_range("parts[0].price", -1.0, 0.0, 10.0);
        problems.not_blank("name", " ");
        let error = problems.into_result(()).expect_err("two problems");
        assert_eq!(
            error.to_string(),
            "p.json: parts[0].price: -1: must lie between 0 and 10\n\
             p.json: name: \"\": must not be blank"
        );
    }

    #[test]
    fn a_missing_number_is_out_of_every_range() {
        let mut problems = Problems::new("p.json");
        problems.in_range("x", f64::NAN, 0.0, 1.0);
        assert!(problems.into_result(()).is_err());
    }
}
