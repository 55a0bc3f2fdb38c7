//! One job's statements: begun, what was measured, replaced and broken, its marks, its end.

use serde_json::Map;
use serde_json::Value;
use serde_json::json;

use crate::assess::date;
use crate::bench::action::Action;
use crate::bench::notebook::Tick;
use crate::bench::safety;
use crate::bench::workshop::WorkKind;
use crate::language::in_english;
use crate::records::library::Task;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::records::xapi::ADL_TYPES;
use crate::records::xapi::ADL_VERBS;
use crate::records::xapi::Deployment;
use crate::records::xapi::Event;
use crate::records::xapi::Frame;
use crate::records::xapi::Mode;
use crate::records::xapi::OWN;
use crate::records::xapi::Part;
use crate::records::xapi::activity;
use crate::records::xapi::assessment_iri;
use crate::records::xapi::duration;
use crate::records::xapi::extension;
use crate::records::xapi::job_time;
use crate::records::xapi::reading::reading;
use crate::records::xapi::registration;
use crate::records::xapi::score;
use crate::records::xapi::segment;

/// All statements of one record, oldest first, under the assessment that the record names.
pub fn statements(record: &Record, task: &Task, place: &Deployment) -> Vec<Value> {
    let sitting = record.body.sitting.as_ref();
    let above = sitting.map(|sitting| assessment_iri(place, &sitting.assessment));
    statements_under(record, task, place, above.as_deref())
}

/// The same under the activity of another address, such as the unit of a course, or under none.
pub fn statements_under(
    record: &Record,
    task: &Task,
    place: &Deployment,
    above: Option<&str>,
) -> Vec<Value> {
    in_english(|| all(record, task, place, above))
}

fn all(record: &Record, task: &Task, place: &Deployment, above: Option<&str>) -> Vec<Value> {
    let body = &record.body;
    let frame = Frame {
        place,
        candidate: &body.candidate,
        registration: registration(body),
        mode: match body.sitting {
            Some(_) => Mode::Assessment,
            None => Mode::Practice,
        },
        start_ms: date::moment_ms(&body.started),
    };
    let job = job_iri(body, place);
    let name = Some((place.language.as_str(), task.scenario.title.as_str()));
    let whole = activity(&job, ADL_TYPES, "simulation", name);
    let job_place = body.sitting.as_ref().map_or(0, |sitting| sitting.place);
    let framed = |(at, event): (usize, Event)| {
        let is_job = event.object["id"] == job.as_str();
        let mut extensions = vec![
            ("engine", json!({"version": body.engine})),
            job_time(event.tick),
        ];
        extensions.extend(event.extensions);
        let part = Part {
            verb: event.verb,
            object: event.object,
            result: event.result,
            parent: if is_job { above } else { Some(job.as_str()) },
            grouping: above.filter(|_| !is_job),
            extensions,
        };
        // Done twice, the same job and seed are two attempts: when it began tells them apart.
        let (seed, started) = (body.seed, &body.started);
        let name = format!("{}/{job_place}/{seed}/{started}/{at}", body.job);
        frame.statement(part, at, &name)
    };
    events(body, task, place, &whole)
        .into_iter()
        .enumerate()
        .map(framed)
        .collect()
}

fn events(body: &Body, task: &Task, place: &Deployment, whole: &Value) -> Vec<Event> {
    let last = (body.result.minutes * 600.0).round() as Tick;
    let plain = |verb: &'static str, tick: Tick, result: Option<Value>| Event {
        verb: (ADL_VERBS, verb),
        tick,
        object: whole.clone(),
        result,
        extensions: Vec::new(),
    };
    let job = job_iri(body, place);
    let mut between: Vec<Event> = body
        .notebook
        .iter()
        .filter_map(|note| reading(note, &job, &task.scenario.workshop, place))
        .collect();
    between.extend(parts(body, task, place));
    between.extend(breaches(body, place));
    between.sort_by_key(|event| event.tick);
    let mut all = vec![plain("initialized", 0, None)];
    all.extend(between);
    all.push(plain("scored", last, Some(marks(body))));
    let done = json!({"completion": true, "duration": duration(last)});
    all.push(plain("completed", last, Some(done)));
    let end = json!({"duration": duration(last)});
    all.push(plain("terminated", last, Some(end)));
    all
}

fn job_iri(body: &Body, place: &Deployment) -> String {
    format!("{}job/{}", place.base, segment(&body.job))
}

fn parts(body: &Body, task: &Task, place: &Deployment) -> Vec<Event> {
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
        let replaced = json!({"part": work.part, "step": index + 1});
        Some(Event {
            verb: (ADL_VERBS, "interacted"),
            tick: entry.tick,
            object: activity(&iri, OWN, "activity-types/part", name),
            result: Some(json!({"extensions": {(extension("part-replaced")): replaced}})),
            extensions: Vec::new(),
        })
    };
    body.log.iter().enumerate().filter_map(part).collect()
}

fn breaches(body: &Body, place: &Deployment) -> Vec<Event> {
    let breach = |broken: &crate::records::result::SafetyResult| {
        let iri = format!("{}safety-rule/{}", place.base, segment(&broken.rule));
        let title = safety::rule(&broken.rule).map_or(broken.rule.as_str(), |rule| rule.title);
        let at = body.log.get(broken.step.saturating_sub(1));
        let name = Some((place.language.as_str(), title));
        Event {
            verb: (OWN, "verbs/breached"),
            tick: at.map_or(0, |entry| entry.tick),
            object: activity(&iri, OWN, "activity-types/safety-rule", name),
            result: Some(json!({"success": false})),
            extensions: vec![(
                "severity",
                json!({"severity": broken.severity, "step": broken.step}),
            )],
        }
    };
    body.result.safety.iter().map(breach).collect()
}

fn marks(body: &Body) -> Value {
    let result = body.counted();
    let parts: Map<String, Value> = result
        .parts
        .iter()
        .map(|part| (part.name.replace('.', "-"), json!(part.points)))
        .collect();
    json!({
        "score": score(result.total, result.total.clamp(0.0, 100.0).round() as u64),
        "extensions": {(extension("score-parts")): parts},
    })
}
