//! Strict reading of a file into its twin type: an unknown field, a missing field or a wrong type
//! is a problem that names the field and what would be right.
//!
//! The reader behind a derived type stops at the first problem. To report all of them, the list
//! entry (or unknown field) that was refused is taken out of a copy and the rest is read again,
//! until it reads or the problem lies in no list.

use std::collections::BTreeMap;

use serde::de::DeserializeOwned;
use serde_json::Value;

use crate::say;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::tree::Refused;
use crate::scenario::tree::Step;
use crate::scenario::tree::from_value;

/// Structural problems reported at most; more than that is not this kind of file.
const MOST_PROBLEMS: usize = 100;
/// Text longer than this is refused, bytes: the largest shipped file is a tenth of it.
const MOST_BYTES: usize = 4_000_000;

/// Reads `text` as a `T`; `file` is the name errors use.
pub fn read<T: DeserializeOwned>(file: &str, text: &str) -> Result<T, FileError> {
    let mut problems = Problems::new(file);
    if text.len() > MOST_BYTES {
        problems.add(
            "",
            say!("{n} bytes", n = text.len()),
            say!("at most {most} are read", most = MOST_BYTES),
        );
    }
    let whole: Value = match serde_json::from_str(text) {
        Ok(value) => value,
        Err(error) => {
            problems.add(
                "",
                say!("line {n}", n = error.line()),
                say!("not JSON: {error}", error),
            );
            Value::Null
        }
    };
    let () = problems.into_result(())?;
    read_value(file, &whole)
}

/// Reads `text` as a `T`, or not at all: for what the program itself has written. It goes the way that
/// files go, so that each type needs one reader only.
pub fn read_back<T: DeserializeOwned>(text: &str) -> Option<T> {
    let whole: Value = serde_json::from_str(text).ok()?;
    from_value(&whole).ok()
}

/// Reads a value that is JSON already as a `T`.
pub fn read_value<T: DeserializeOwned>(file: &str, whole: &Value) -> Result<T, FileError> {
    let mut reading = Reading {
        problems: Problems::new(file),
        rest: whole.clone(),
        taken_out: TakenOut::default(),
    };
    for _ in 0..MOST_PROBLEMS {
        match from_value(&reading.rest) {
            Ok(value) => return reading.problems.into_result(value),
            Err(refused) if reading.goes_on_without(&refused) => {}
            Err(_) => break,
        }
    }
    // Nothing was read, so there is a problem: the loop only goes round or ends by one.
    Err(match reading.problems.into_result(()) {
        Err(error) => error,
        Ok(()) => FileError {
            problems: Vec::new(),
        },
    })
}

/// A file half read: what was wrong so far, and what is left to read.
struct Reading<'f> {
    problems: Problems<'f>,
    rest: Value,
    taken_out: TakenOut,
}

impl Reading<'_> {
    /// Notes what was refused and takes it out; false when that is as much as the whole file.
    fn goes_on_without(&mut self, refused: &Refused) -> bool {
        let steps = refused.path();
        let found = look_up(&self.rest, &steps).map(brief).unwrap_or_default();
        let place = self.taken_out.original(&steps);
        self.problems.add(&place, found, &refused.message);
        take_out(
            &mut self.rest,
            &steps,
            &refused.message,
            &mut self.taken_out,
        )
    }
}

fn look_up<'v>(value: &'v Value, steps: &[Step]) -> Option<&'v Value> {
    steps.iter().try_fold(value, |at, step| match step {
        Step::Field(name) => at.get(name),
        Step::Index(index) => at.get(index),
    })
}

fn look_up_mut<'v>(value: &'v mut Value, steps: &[Step]) -> Option<&'v mut Value> {
    steps.iter().try_fold(value, |at, step| match step {
        Step::Field(name) => at.get_mut(name),
        Step::Index(index) => at.get_mut(*index),
    })
}

/// What stands in the file, short enough for one line.
fn brief(value: &Value) -> String {
    match value {
        Value::Array(list) => say!("a list of {n}", n = list.len()),
        Value::Object(fields) => say!("an object of {n} fields", n = fields.len()),
        other => other.to_string(),
    }
}

/// Which entries of which lists are gone from the copy, by the list's path in the file.
#[derive(Default)]
struct TakenOut(BTreeMap<String, Vec<usize>>);

impl TakenOut {
    /// The path in the file as it was given.
    fn original(&self, steps: &[Step]) -> String {
        let mut path = String::new();
        for step in steps {
            match step {
                Step::Field(name) if path.is_empty() => path.push_str(name),
                Step::Field(name) => path = format!("{path}.{name}"),
                Step::Index(index) => path = format!("{path}[{}]", self.index(&path, *index)),
            }
        }
        path
    }

    fn index(&self, list: &str, index: usize) -> usize {
        let gone = self.0.get(list).map_or(&[][..], Vec::as_slice);
        let mut original = index;
        for taken in gone {
            if *taken <= original {
                original += 1;
            }
        }
        original
    }

    fn note(&mut self, list: String, index: usize) {
        let gone = self.0.entry(list).or_default();
        gone.push(index);
        gone.sort_unstable();
    }
}

/// Takes the refused piece out; false when nothing smaller than the file can be taken out.
fn take_out(rest: &mut Value, steps: &[Step], message: &str, taken_out: &mut TakenOut) -> bool {
    if let Some((Step::Field(name), holder)) = steps.split_last()
        && message.starts_with("unknown field")
        && let Some(Value::Object(fields)) = look_up_mut(rest, holder)
    {
        return fields.remove(name).is_some();
    }
    let Some(last) = steps
        .iter()
        .rposition(|step| matches!(step, Step::Index(_)))
    else {
        return false;
    };
    let list_path = taken_out.original(&steps[..last]);
    let Step::Index(index) = steps[last] else {
        return false;
    };
    let original = taken_out.index(&list_path, index);
    match look_up_mut(rest, &steps[..last]) {
        Some(Value::Array(list)) if index < list.len() => {
            list.remove(index);
            taken_out.note(list_path, original);
            true
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use serde::Deserialize;

    use super::*;

    #[derive(Debug, Deserialize, PartialEq)]
    #[serde(deny_unknown_fields)]
    struct Shelf {
        name: String,
        boxes: Vec<Carton>,
    }

    #[derive(Debug, Deserialize, PartialEq)]
    #[serde(deny_unknown_fields)]
    struct Carton {
        id: String,
        size_m: f64,
    }

    fn problems_of(text: &str) -> Vec<String> {
        let error = read::<Shelf>("shelf.json", text).expect_err("wrong file");
        error.problems.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn a_good_file_is_read() {
        let text = r#"{"name": "left", "boxes": [{"id": "a", "size_m": 1}]}"#;
        let shelf = read::<Shelf>("shelf.json", text).expect("good");
        assert_eq!(shelf.boxes[0].id, "a");
    }

    #[test]
    fn every_wrong_entry_is_reported_at_its_place() {
        let text = r#"{"name": "left", "colour": "red", "boxes": [
            {"id": "a", "size_m": "big"}, {"id": "b", "size_m": 1}, {"id": "c"}, {"id": 4, "size_m": 1}]}"#;
        let told = problems_of(text);
        assert_eq!(told.len(), 4, "{told:?}");
        assert!(
            told.iter()
                .any(|t| t.contains("colour") && t.contains("unknown field"))
        );
        assert!(
            told.iter().any(|t| t.contains("boxes[0].size_m: \"big\"")),
            "{told:?}"
        );
        assert!(
            told.iter()
                .any(|t| t.contains("boxes[2]") && t.contains("size_m")),
            "{told:?}"
        );
        assert!(
            told.iter().any(|t| t.contains("boxes[3].id: 4")),
            "{told:?}"
        );
    }

    #[test]
    fn text_that_is_no_json_says_where() {
        let told = problems_of("{\n \"name\": }");
        assert!(told[0].contains("line 2"), "{told:?}");
    }

    #[test]
    fn a_missing_field_is_named() {
        let told = problems_of("{\"name\": \"left\"}");
        assert!(told[0].contains("missing field `boxes`"), "{told:?}");
    }
}
