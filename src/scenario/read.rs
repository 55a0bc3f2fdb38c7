//! Strict reading of a file into its twin type: an unknown field, a missing field or a wrong type
//! is a problem that names the field and what would be right.
//!
//! The reader behind a derived type stops at the first problem. To report all of them, the list
//! entry (or unknown field) that was refused is taken out of a copy and the rest is read again,
//! until it reads or the problem lies in no list.

use std::collections::BTreeMap;

use serde::de::DeserializeOwned;
use serde_json::Value;
use serde_path_to_error::Path;
use serde_path_to_error::Segment;

use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;

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
            format!("{} bytes", text.len()),
            format!("at most {MOST_BYTES} are read"),
        );
    }
    let whole: Value = match serde_json::from_str(text) {
        Ok(value) => value,
        Err(error) => {
            problems.add(
                "",
                format!("line {}", error.line()),
                format!("not JSON: {error}"),
            );
            Value::Null
        }
    };
    let () = problems.into_result(())?;
    read_value(file, &whole)
}

/// Reads a value that is JSON already as a `T`.
pub fn read_value<T: DeserializeOwned>(file: &str, whole: &Value) -> Result<T, FileError> {
    let mut problems = Problems::new(file);
    let mut rest = whole.clone();
    let mut taken_out = TakenOut::default();
    let mut good = None;
    for _ in 0..MOST_PROBLEMS {
        let error = match serde_path_to_error::deserialize::<_, T>(&rest) {
            Ok(value) => {
                good = Some(value);
                break;
            }
            Err(error) => error,
        };
        let steps = steps_of(error.path());
        let found = look_up(&rest, &steps).map(brief).unwrap_or_default();
        problems.add(
            &taken_out.original(&steps),
            found,
            error.inner().to_string(),
        );
        if !take_out(
            &mut rest,
            &steps,
            &error.inner().to_string(),
            &mut taken_out,
        ) {
            break;
        }
    }
    let () = problems.into_result(())?;
    // No problem and no value cannot be: the loop breaks on a value or adds a problem.
    good.ok_or_else(|| FileError {
        problems: Vec::new(),
    })
}

/// One step down into a JSON value.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Step {
    Field(String),
    Index(usize),
}

fn steps_of(path: &Path) -> Vec<Step> {
    path.iter()
        .filter_map(|segment| match segment {
            Segment::Seq { index } => Some(Step::Index(*index)),
            Segment::Map { key } => Some(Step::Field(key.clone())),
            Segment::Enum { variant } => Some(Step::Field(variant.clone())),
            Segment::Unknown => None,
        })
        .collect()
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
        Value::Array(list) => format!("a list of {}", list.len()),
        Value::Object(fields) => format!("an object of {} fields", fields.len()),
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
