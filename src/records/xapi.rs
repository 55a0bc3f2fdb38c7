//! A record as statements of the Experience API (IEEE 9274.1.1), for any store of learning records.
//!
//! ```text
//! initialized ─ interacted … (readings, parts) ─ breached … ─ scored ─ completed ─ terminated
//! ```
//! Only a number names the person (an account, no name, no mail). Ids are made from the attempt and
//! the statement's place, so that sending twice is sending once. Scores stand in `scored` alone;
//! `completed` never carries one. No null anywhere, no `version`, `stored` or `authority`.

use serde_json::Map;
use serde_json::Value;
use serde_json::json;
use uuid::Uuid;

use crate::assess::date;
use crate::bench::action::Action;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::bench::safety;
use crate::bench::words;
use crate::bench::workshop::WorkKind;
use crate::records::library::Task;
use crate::records::record::Body;
use crate::records::record::Record;

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

/// A statement before it has its frame.
struct Part {
    verb: (&'static str, &'static str),
    tick: Tick,
    object: Value,
    result: Option<Value>,
    extensions: Vec<(&'static str, Value)>,
}

/// All statements of one record, oldest first.
pub fn statements(record: &Record, task: &Task, place: &Deployment) -> Vec<Value> {
    let body = &record.body;
    let last = (body.result.minutes * 600.0).round() as Tick;
    let whole = simulation(body, task, place);
    let plain = |verb: &'static str, tick: Tick, result: Option<Value>| Part {
        verb: (ADL_VERBS, verb),
        tick,
        object: whole.clone(),
        result,
        extensions: Vec::new(),
    };
    let mut between = readings(body, task, place);
    between.extend(parts(body, task, place));
    between.extend(breaches(body, place));
    between.sort_by_key(|part| part.tick);
    let mut all = vec![plain("initialized", 0, None)];
    all.extend(between);
    all.push(plain("scored", last, Some(score(body))));
    let done = json!({"completion": true, "duration": duration(last)});
    all.push(plain("completed", last, Some(done)));
    let end = json!({"duration": duration(last)});
    all.push(plain("terminated", last, Some(end)));
    let registration = registration(body);
    all.into_iter()
        .enumerate()
        .map(|(at, part)| framed(part, at, body, place, registration))
        .collect()
}

/// One attempt: all jobs of one sitting of one candidate.
pub fn registration(body: &Body) -> Uuid {
    let root = Body::root(&body.candidate, body.sitting.as_ref());
    Uuid::new_v5(&Uuid::NAMESPACE_URL, format!("{OWN}{root}").as_bytes())
}

fn framed(part: Part, at: usize, body: &Body, place: &Deployment, registration: Uuid) -> Value {
    let (base, verb) = part.verb;
    let job_place = body.sitting.as_ref().map_or(0, |sitting| sitting.place);
    let id = Uuid::new_v5(
        &registration,
        // Practised twice, the same job and seed are two attempts: when it began tells them apart.
        format!(
            "{}/{job_place}/{}/{}/{at}",
            body.job, body.seed, body.started
        )
        .as_bytes(),
    );
    let own_extensions = [
        ("sequence", json!({"number": at})),
        ("engine", json!({"version": body.engine})),
    ];
    let extensions: Map<String, Value> = own_extensions
        .into_iter()
        .chain(part.extensions)
        .map(|(key, value)| (format!("{OWN}extensions/{key}"), value))
        .collect();
    let mut activities = Map::new();
    let profile = activity(&format!("{OWN}profile/v1"), ADL_TYPES, "profile", None);
    activities.insert("category".to_owned(), json!([profile]));
    if let Some(sitting) = &body.sitting {
        let iri = format!("{}assessment/{}", place.base, segment(&sitting.assessment));
        let grouping = activity(&iri, ADL_TYPES, "assessment", None);
        activities.insert("grouping".to_owned(), json!([grouping]));
    }
    let job = job_iri(body, place);
    if part.object["id"] != json!(job) {
        let parent = activity(&job, ADL_TYPES, "simulation", None);
        activities.insert("parent".to_owned(), json!([parent]));
    }
    let mut statement = json!({
        "id": id.to_string(),
        "actor": {
            "objectType": "Agent",
            "account": {"homePage": place.home_page, "name": body.candidate},
        },
        "verb": {"id": format!("{base}{verb}"), "display": {"en": verb}},
        "object": part.object,
        "context": {
            "registration": registration.to_string(),
            "contextActivities": activities,
            "platform": "Tubwright",
            "language": place.language,
            "extensions": extensions,
        },
    });
    if let Some(result) = part.result {
        statement["result"] = result;
    }
    // A start nobody wrote down leaves the time to the store.
    if let Some(start) = date::moment_ms(&body.started) {
        statement["timestamp"] = json!(date::moment(start + part.tick as i64 * 100));
    }
    statement
}

fn job_iri(body: &Body, place: &Deployment) -> String {
    format!("{}job/{}", place.base, segment(&body.job))
}

fn simulation(body: &Body, task: &Task, place: &Deployment) -> Value {
    let name = Some((place.language.as_str(), task.scenario.title.as_str()));
    activity(&job_iri(body, place), ADL_TYPES, "simulation", name)
}

fn readings(body: &Body, task: &Task, place: &Deployment) -> Vec<Part> {
    let reading = |note: &crate::bench::notebook::Note| {
        let NoteEntry::Reading(reading) = &note.entry else {
            return None;
        };
        let points = [reading.red.as_deref(), reading.black.as_deref()];
        let points: Vec<String> = points.into_iter().flatten().map(segment).collect();
        let iri = format!("{}/reading/{}", job_iri(body, place), points.join("-"));
        let mut object = activity(
            iri.trim_end_matches('/'),
            ADL_TYPES,
            "cmi.interaction",
            Some((place.language.as_str(), words::mode_name(reading.mode))),
        );
        object["definition"]["interactionType"] = json!("other");
        let mut value = json!({"shown": reading.display, "line": note.number});
        if let Some(si) = reading.value {
            value["si"] = json!(si);
            value["unit"] = json!(words::si_unit(reading.mode));
        }
        Some(Part {
            verb: (ADL_VERBS, "interacted"),
            tick: note.tick,
            object,
            result: Some(json!({
                "response": words::reading(reading, &task.scenario.workshop),
                "extensions": {(format!("{OWN}extensions/reading")): value},
            })),
            extensions: Vec::new(),
        })
    };
    body.notebook.iter().filter_map(reading).collect()
}

fn parts(body: &Body, task: &Task, place: &Deployment) -> Vec<Part> {
    let workshop = &task.scenario.workshop;
    let part = |(index, entry): (usize, &crate::bench::job::Entry)| {
        let Action::Work { work, .. } = &entry.action else {
            return None;
        };
        let work = workshop
            .work(work)
            .filter(|w| w.kind == WorkKind::Replace)?;
        let iri = format!("{}/part/{}", job_iri(body, place), segment(&work.part));
        let name = Some((place.language.as_str(), work.name.as_str()));
        Some(Part {
            verb: (ADL_VERBS, "interacted"),
            tick: entry.tick,
            object: activity(&iri, OWN, "activity-types/part", name),
            result: None,
            extensions: vec![(
                "part-replaced",
                json!({"part": work.part, "step": index + 1}),
            )],
        })
    };
    body.log.iter().enumerate().filter_map(part).collect()
}

fn breaches(body: &Body, place: &Deployment) -> Vec<Part> {
    let breach = |broken: &crate::records::result::SafetyResult| {
        let iri = format!("{}safety-rule/{}", place.base, segment(&broken.rule));
        let title = safety::rule(&broken.rule).map_or(broken.rule.as_str(), |rule| rule.title);
        let at = body.log.get(broken.step.saturating_sub(1));
        Part {
            verb: (OWN, "verbs/breached"),
            tick: at.map_or(0, |entry| entry.tick),
            object: activity(
                &iri,
                OWN,
                "activity-types/safety-rule",
                Some((place.language.as_str(), title)),
            ),
            result: Some(json!({"success": false})),
            extensions: vec![(
                "severity",
                json!({"severity": broken.severity, "step": broken.step}),
            )],
        }
    };
    body.result.safety.iter().map(breach).collect()
}

fn score(body: &Body) -> Value {
    let result = body.counted();
    let parts: Map<String, Value> = result
        .parts
        .iter()
        .map(|part| (part.name.replace('.', "-"), json!(part.points)))
        .collect();
    json!({
        "score": {
            "scaled": (result.total / 100.0).clamp(0.0, 1.0),
            "raw": result.total.clamp(0.0, 100.0).round() as u64,
            "min": 0,
            "max": 100,
        },
        "extensions": {(format!("{OWN}extensions/score-parts")): parts},
    })
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
}
