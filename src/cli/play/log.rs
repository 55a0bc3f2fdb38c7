//! A log as a file: a JSON list of acts in order of time, each told apart when it is wrong.

use serde_json::Value;

use crate::bench::job::Entry;
use crate::bench::job::LATEST_TICK;
use crate::bench::notebook::Tick;
use crate::scenario::FileError;
use crate::scenario::problem::Problems;

/// What every act has.
const SHAPE: &str =
    "write a list of acts such as [{\"tick\": 0, \"do\": \"ask\", \"question\": \"when\"}]";

/// Reads a log; `file` is the name errors use.
///
/// # Errors
/// Every act that is none, with its place in the list.
pub fn read(file: &str, text: &str) -> Result<Vec<Entry>, FileError> {
    let mut problems = Problems::new(file);
    let acts = match serde_json::from_str(text) {
        Ok(Value::Array(acts)) => acts,
        Ok(other) => {
            problems.add("", brief(&other), SHAPE);
            Vec::new()
        }
        Err(error) => {
            problems.add(
                "",
                format!("line {}", error.line()),
                format!("not JSON: {error}"),
            );
            Vec::new()
        }
    };
    let mut log: Vec<Entry> = Vec::new();
    for (index, act) in acts.into_iter().enumerate() {
        let at = format!("[{index}]");
        let found = brief(&act);
        match serde_json::from_value::<Entry>(act) {
            Ok(entry) => {
                let last = log.last().map_or(0, |entry| entry.tick);
                check_tick(&at, entry.tick, last, &mut problems);
                log.push(entry);
            }
            Err(error) => problems.add(&at, found, error.to_string()),
        }
    }
    problems.into_result(log)
}

fn check_tick(at: &str, tick: Tick, last: Tick, problems: &mut Problems<'_>) {
    let path = format!("{at}.tick");
    if tick > LATEST_TICK {
        let remedy = format!("a tick is 0.1 s since the bell, at most {LATEST_TICK}");
        problems.add(&path, tick, remedy);
    } else if tick < last {
        let remedy = format!("acts stand in order of time; the one before is at {last}");
        problems.add(&path, tick, remedy);
    }
}

/// What stands there, in one line: an act by what it does.
fn brief(value: &Value) -> String {
    match value {
        Value::Object(fields) => match fields.get("do") {
            Some(act) => format!("\"do\": {act}"),
            None => "no \"do\"".to_owned(),
        },
        Value::Array(list) => format!("a list of {}", list.len()),
        Value::String(_) => "a text".to_owned(),
        other => other.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::Action;

    fn told(text: &str) -> String {
        read("log.json", text).expect_err("wrong").to_string()
    }

    #[test]
    fn acts_are_read_with_their_ticks() {
        let log = read("log.json", r#"[{"tick": 3, "do": "note"}]"#).expect("good");
        assert_eq!((log[0].tick, &log[0].action), (3, &Action::Note));
    }

    #[test]
    fn every_wrong_act_is_told_at_its_place() {
        let told = told(
            r#"[{"tick": 0, "do": "notes"}, {"do": "note"}, 7, {"tick": 9, "do": "lid", "open": 1}]"#,
        );
        for part in [
            "log.json: [0]: \"do\": \"notes\": unknown variant `notes`",
            "log.json: [1]: \"do\": \"note\": missing field `tick`",
            "log.json: [2]: 7",
            "log.json: [3]: \"do\": \"lid\"",
        ] {
            assert!(told.contains(part), "{told}");
        }
    }

    #[test]
    fn time_neither_runs_back_nor_for_ever() {
        let back = r#"[{"tick": 9, "do": "note"}, {"tick": 8, "do": "note"}]"#;
        assert!(told(back).contains("[1].tick: 8: acts stand in order of time"));
        let ages = r#"[{"tick": 18446744073709551615, "do": "note"}]"#;
        assert!(told(ages).contains("[0].tick"));
    }

    #[test]
    fn what_is_no_list_says_what_a_log_is() {
        assert!(told(r#"{"tick": 0}"#).contains("write a list of acts"));
        assert!(told("[").contains("line 1: not JSON"));
    }
}
