//! One field of a job read and written by its path, the same path that a problem names: what a
//! form shows beside `site.load_kg` and what the check says of `site.load_kg` meet without a list
//! of fields in between.

use serde_json::Map;
use serde_json::Value;

use crate::scenario::job_file::JobFile;
use crate::scenario::problem::FileError;
use crate::scenario::read::read_value;

/// Entries a list may grow to by writing behind its end; no list of a job is longer.
const MOST_ENTRIES: usize = 1000;

/// A job as JSON, to look fields up in.
pub fn as_value(job: &JobFile) -> Value {
    // A job has text keys and finite numbers only, which JSON can hold. By way of its text, since
    // the page carries that writer anyway.
    let text = serde_json::to_string(job).unwrap_or_default();
    serde_json::from_str(&text).unwrap_or_default()
}

/// The value at a path such as `customer.answers.when[0]`; none when nothing stands there.
pub fn get<'v>(value: &'v Value, path: &str) -> Option<&'v Value> {
    steps(path).try_fold(value, |at, step| match step {
        Step::Field(name) => at.get(name),
        Step::Entry(index) => at.get(index),
    })
}

/// The job with one field changed; `Value::Null` takes an optional field or a list's entry out.
///
/// # Errors
/// When the field does not exist or cannot hold the value.
pub fn with(job: &JobFile, path: &str, new: Value) -> Result<JobFile, FileError> {
    let mut whole = as_value(job);
    put(&mut whole, path, new);
    read_value(path, &whole)
}

fn put(whole: &mut Value, path: &str, new: Value) {
    let steps: Vec<Step> = steps(path).collect();
    let Some((last, holders)) = steps.split_last() else {
        return;
    };
    let mut at = whole;
    for step in holders {
        at = inside(at, *step);
    }
    match (last, new) {
        (Step::Entry(index), Value::Null) => {
            if let Value::Array(list) = at
                && *index < list.len()
            {
                list.remove(*index);
            }
        }
        (step, new) => *inside(at, *step) = new,
    }
}

/// The place a step leads to, made where it is not there yet.
fn inside<'v>(at: &'v mut Value, step: Step<'_>) -> &'v mut Value {
    match step {
        Step::Field(name) => {
            if !at.is_object() {
                *at = Value::Object(Map::new());
            }
            &mut at[name]
        }
        Step::Entry(index) => {
            if !at.is_array() {
                *at = Value::Array(Vec::new());
            }
            let index = index.min(MOST_ENTRIES);
            if let Value::Array(list) = at
                && list.len() <= index
            {
                list.resize(index + 1, Value::Null);
            }
            &mut at[index]
        }
    }
}

#[derive(Clone, Copy)]
enum Step<'p> {
    Field(&'p str),
    Entry(usize),
}

fn steps(path: &str) -> impl Iterator<Item = Step<'_>> {
    path.split('.').flat_map(|word| {
        let mut parts = word.split('[');
        let field = parts.next().filter(|name| !name.is_empty());
        let entries = parts.filter_map(|part| part.strip_suffix(']')?.parse().ok());
        field
            .map(Step::Field)
            .into_iter()
            .chain(entries.map(Step::Entry))
    })
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::scenario::job_files;

    fn job() -> JobFile {
        job_files().expect("sound")[0].file.clone()
    }

    #[test]
    fn a_field_is_read_and_written_by_its_path() {
        let job = with(&job(), "customer.answers.since[1]", json!("Yes.")).expect("fits");
        assert_eq!(job.customer.answers["since"][1], "Yes.");
        let value = as_value(&job);
        assert_eq!(
            get(&value, "customer.answers.since[1]"),
            Some(&json!("Yes."))
        );
        assert_eq!(get(&value, "customer.answers.since[7]"), None);
    }

    #[test]
    fn nothing_takes_an_entry_or_an_optional_value_out() {
        let job = with(&job(), "faults[0]", Value::Null).expect("fits");
        assert!(job.faults.is_empty());
        assert_eq!(
            with(&job, "site.rcd_ma", Value::Null)
                .expect("fits")
                .site
                .rcd_ma,
            None
        );
    }

    #[test]
    fn what_does_not_fit_is_refused_by_name() {
        for (path, value) in [("site.load_kg", json!("much")), ("site.colour", json!(1))] {
            let error = with(&job(), path, value).expect_err("does not fit");
            assert!(
                error.to_string().contains(path.trim_start_matches("site.")),
                "{error}"
            );
        }
    }
}
