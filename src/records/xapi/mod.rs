//! Results as statements of the Experience API (IEEE 9274.1.1), for any store of learning records.
//!
//! ```text
//! assessment   initialized ───────────────────────────── passed | failed | scored ─ completed ─ terminated
//!   └ job        initialized ─ interacted …, breached … ─ scored ─ completed ─ terminated
//!       └ reading, part, safety rule
//! ```
//! Each names the one above as its parent; what lies further up is its grouping. Only a number names
//! the person (an account, no name, no mail). One attempt is one registration: a sitting with all its
//! jobs, and each job of practice by itself. Ids are made from the attempt and the statement's place,
//! so that sending twice is sending once. Scores stand in `scored`, `passed` and `failed` alone;
//! `completed` never carries one. No null anywhere, no `version`, `stored` or `authority`.
//!
//! A job's clock runs ahead of the day's: an hour on site may be worked in ten minutes. A statement
//! must not lie in the future, so each has the moment the job was opened, a millisecond apart, and says
//! in `job-time` when on the job's own clock it was.

mod job;
mod reading;
mod whole;

use serde_json::Map;
use serde_json::Value;
use serde_json::json;
use uuid::Uuid;

use crate::assess::date;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::records::record::Body;
use crate::records::record::Sitting;
use crate::records::seal::Hash;

pub use job::statements;
pub use job::statements_under;
pub use whole::Whole;
pub use whole::practice_run;
pub use whole::whole;

/// Verbs and types that everybody uses.
const ADL_VERBS: &str = "http://adlnet.gov/expapi/verbs/";
const ADL_TYPES: &str = "http://adlnet.gov/expapi/activities/";
/// Our own verbs, types and extension keys: fixed for ever, whoever hosts the contents.
const OWN: &str = "https://tubwright.example/xapi/";

/// Where and in which language contents are offered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Deployment {
    /// IRI base of jobs and assessments, ending in a slash.
    pub base: String,
    /// Whose numbers the candidates have: home page of the accounts.
    pub home_page: String,
    /// Language of names, such as `en`.
    pub language: String,
}

/// Something that happened in a job.
struct Event {
    pub verb: (&'static str, &'static str),
    pub tick: Tick,
    pub object: Value,
    pub result: Option<Value>,
    pub extensions: Vec<(&'static str, Value)>,
}

/// One attempt: all jobs of one sitting of one candidate, or one job of practice.
pub fn registration(body: &Body) -> Uuid {
    match &body.sitting {
        Some(sitting) => sitting_registration(&body.candidate, sitting),
        None => {
            let parts = [
                body.candidate.as_bytes(),
                body.job.as_bytes(),
                &body.seed.to_le_bytes(),
                body.started.as_bytes(),
                // Where no start was written down, what was done tells attempts apart.
                &body.state.0,
            ];
            attempt(Hash::of("tubwright practice attempt 1", &parts))
        }
    }
}

/// The attempt that a sitting is, whichever of its jobs.
pub fn sitting_registration(candidate: &str, sitting: &Sitting) -> Uuid {
    attempt(Body::root(candidate, Some(sitting)))
}

fn attempt(of: Hash) -> Uuid {
    Uuid::new_v5(&Uuid::NAMESPACE_URL, format!("{OWN}{of}").as_bytes())
}

/// Address of an assessment.
pub fn assessment_iri(place: &Deployment, id: &str) -> String {
    format!("{}assessment/{}", place.base, segment(id))
}

/// What all statements of one attempt have.
struct Frame<'a> {
    place: &'a Deployment,
    candidate: &'a str,
    registration: Uuid,
    mode: Mode,
    /// First moment, ms since 1970, if anybody wrote it down.
    start_ms: Option<i64>,
}

/// What the attempt is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Mode {
    Assessment,
    Practice,
}

/// A statement before it has its frame.
struct Part<'a> {
    verb: (&'static str, &'static str),
    object: Value,
    result: Option<Value>,
    /// What it is directly part of, and what lies further up, by their addresses.
    parent: Option<&'a str>,
    grouping: Option<&'a str>,
    extensions: Vec<(&'static str, Value)>,
}

impl Frame<'_> {
    /// The statement at a place of the attempt's row; `name` tells it from all others of the attempt.
    fn statement(&self, part: Part<'_>, at: usize, name: &str) -> Value {
        let (base, verb) = part.verb;
        let word = verb.rsplit('/').next().unwrap_or(verb);
        let id = Uuid::new_v5(&self.registration, name.as_bytes());
        let mode = match self.mode {
            Mode::Assessment => "assessment",
            Mode::Practice => "practice",
        };
        let extensions: Map<String, Value> = [
            ("sequence", json!({"number": at})),
            ("mode", json!({"kind": mode})),
        ]
        .into_iter()
        .chain(part.extensions)
        .map(|(key, value)| (extension(key), value))
        .collect();
        let mut activities = Map::new();
        let profile = activity(&format!("{OWN}profile/v1"), ADL_TYPES, "profile", None);
        activities.insert("category".to_owned(), json!([profile]));
        for (kind, above) in [("parent", part.parent), ("grouping", part.grouping)] {
            if let Some(above) = above {
                let above = json!({"objectType": "Activity", "id": above});
                activities.insert(kind.to_owned(), json!([above]));
            }
        }
        let mut statement = json!({
            "id": id.to_string(),
            "actor": {
                "objectType": "Agent",
                "account": {"homePage": self.place.home_page, "name": self.candidate},
            },
            "verb": {"id": format!("{base}{verb}"), "display": {"en": word}},
            "object": part.object,
            "context": {
                "registration": self.registration.to_string(),
                "contextActivities": activities,
                "platform": "Tubwright",
                "language": self.place.language,
                "extensions": extensions,
            },
        });
        if let Some(result) = part.result {
            statement["result"] = result;
        }
        // A start nobody wrote down leaves the time to the store.
        if let Some(start_ms) = self.start_ms {
            statement["timestamp"] = json!(date::moment(start_ms + at as i64));
        }
        statement
    }
}

/// Key of an extension of our own.
fn extension(key: &str) -> String {
    format!("{OWN}extensions/{key}")
}

/// When on the job's own clock, as an extension.
fn job_time(tick: Tick) -> (&'static str, Value) {
    let seconds = tick as f64 / TICKS_PER_S as f64;
    ("job-time", json!({"seconds": seconds}))
}

/// Marks of 100 as a score, beside the whole marks.
fn score(marks: f64, raw: u64) -> Value {
    let scaled = (marks / 100.0).clamp(0.0, 1.0);
    json!({"scaled": scaled, "raw": raw, "min": 0, "max": 100})
}

/// Whole marks of 100, rounded down: no fail shows the marks that pass.
pub fn whole_marks(marks: f64) -> u64 {
    marks.clamp(0.0, 100.0).floor() as u64
}

fn activity(iri: &str, type_base: &str, kind: &str, name: Option<(&str, &str)>) -> Value {
    let mut definition = Map::new();
    definition.insert("type".to_owned(), json!(format!("{type_base}{kind}")));
    if let Some((language, name)) = name {
        let mut names = Map::new();
        names.insert(language.to_owned(), json!(name));
        definition.insert("name".to_owned(), Value::Object(names));
    }
    json!({"objectType": "Activity", "id": iri, "definition": definition})
}

/// Hundredths of a second at most, no years or months: what every store takes.
pub fn duration(ticks: Tick) -> String {
    let (minutes, rest) = (ticks / 600, ticks % 600);
    if rest.is_multiple_of(10) {
        format!("PT{minutes}M{}S", rest / 10)
    } else {
        format!("PT{minutes}M{}.{}0S", rest / 10, rest % 10)
    }
}

/// A name as one part of a path: everything but letters, digits and a few marks as percent codes.
pub fn segment(name: &str) -> String {
    let mut out = String::new();
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_' | b'~') {
            out.push(char::from(byte));
        } else {
            out.push_str(&format!("%{byte:02X}"));
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn durations_are_as_stores_take_them() {
        assert_eq!(duration(7500), "PT12M30S");
        assert_eq!(duration(85), "PT0M8.50S");
    }

    #[test]
    fn no_name_breaks_out_of_its_place() {
        assert_eq!(segment("a/../b?c#d é"), "a%2F%2E%2E%2Fb%3Fc%23d%20%C3%A9");
    }

    #[test]
    fn whole_marks_never_reach_a_pass_that_was_missed() {
        for (marks, whole) in [(64.99, 64), (65.0, 65), (-3.0, 0), (100.4, 100)] {
            assert_eq!(whole_marks(marks), whole, "{marks}");
        }
        assert!((score(64.99, 64)["scaled"].as_f64().expect("a number") - 0.6499).abs() < 1e-12);
    }
}
