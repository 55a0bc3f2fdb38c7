//! Readers of foreign bytes that only the screens have: what a training system hands over, what a browser
//! keeps, files that are given, addresses. They are tried here with changed files, as the others are in
//! `tests/foreign_bytes.rs`, and named here for runs that are guided by coverage.

#[cfg(test)]
#[path = "../../tests/foreign_bytes/change.rs"]
mod change;
#[path = "../../tests/foreign_bytes/reader.rs"]
pub mod reader;
#[cfg(test)]
#[path = "../../tests/foreign_bytes/trial.rs"]
mod trial;

use std::collections::BTreeMap;

use serde_json::Value;
use serde_json::json;

use crate::app::assessments::given::Given;
use crate::app::file_kind;
use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::me::everything;
use crate::app::route::Route;
use crate::app::sitting::state::Sitting;
use crate::app::store::SavedJob;
use crate::app::training_system::cmi5_last::Last;
use crate::app::training_system::cmi5_launch;
use crate::app::training_system::cmi5_statement;
use crate::app::training_system::cmi5_statement::Launch;
use crate::app::training_system::cmi5_visit::Visit;
use crate::app::training_system::fields::Model;
use crate::app::training_system::suspend;
use crate::assess::letters;
use crate::records::seal::Hash;
use crate::scenario::job_files;
use crate::scenario::read::read_back;
use crate::scenario::write;
use reader::Reader;
use reader::Said;
use reader::text;

/// Every kind of file that a screen takes.
const KINDS: [Kind; 7] = [
    Kind::Job,
    Kind::Copy,
    Kind::Set,
    Kind::Assessment,
    Kind::Result,
    Kind::Everything,
    Kind::Machine,
];

/// All of them.
pub fn all() -> Vec<Reader> {
    let mut all = of_a_training_system();
    all.extend(kept());
    all.extend(given());
    all
}

fn of_a_training_system() -> Vec<Reader> {
    vec![
        Reader {
            name: "mark that passes",
            slowness: 1,
            seeds: vec![b"65".to_vec(), b"0.55".to_vec()],
            read: |bytes| {
                for model in [Model::Scorm12, Model::Scorm2004] {
                    let _ = model.pass_marks(&text(bytes));
                }
                Ok(())
            },
            takes: |bytes| Model::Scorm12.pass_marks(&text(bytes)).is_some(),
        },
        Reader {
            name: "launch data",
            slowness: 5,
            seeds: vec![launch_data()],
            read: |bytes| {
                drop(launched(bytes));
                Ok(())
            },
            takes: |bytes| launched(bytes).is_some(),
        },
        Reader {
            name: "session that was kept",
            slowness: 2,
            seeds: vec![
                br#"{"token": "t", "data": {}, "first_ms": 1.0, "has_begun": true, "has_judged": false, "told_ms": null, "is_over": false}"#
                    .to_vec(),
                br#"{"host": {"endpoint": "e/", "token": "t", "agent": "{}", "activity": "a", "registration": "r"}, "statement": {"id": "i", "timestamp": "2031-03-04T09:00:00.000Z"}}"#
                    .to_vec(),
            ],
            read: |bytes| {
                let text = text(bytes);
                let _ = read_back::<Visit>(&text).map(|visit| visit.ticks(2.0e12));
                let _ = read_back::<Last>(&text).map(|last| last.is_too_old(2.0e12));
                Ok(())
            },
            takes: |bytes| {
                let text = text(bytes);
                read_back::<Visit>(&text).is_some() || read_back::<Last>(&text).is_some()
            },
        },
        Reader {
            name: "suspended work",
            slowness: 10,
            seeds: vec![letters::to_letters(&suspended()).into_bytes()],
            read: |bytes| {
                drop(suspend::read(&text(bytes)));
                Ok(())
            },
            takes: |bytes| suspend::read(&text(bytes)).is_some(),
        },
    ]
}

fn kept() -> Vec<Reader> {
    vec![
        Reader {
            name: "job that was kept",
            slowness: 5,
            seeds: vec![saved_job()],
            read: |bytes| {
                drop(SavedJob::read(&text(bytes)));
                Ok(())
            },
            takes: |bytes| SavedJob::read(&text(bytes)).is_ok(),
        },
        Reader {
            name: "sitting that was kept",
            slowness: 5,
            seeds: vec![serde_json::to_vec(&sitting()).expect("finite")],
            read: |bytes| {
                if let Some(mut sitting) = Sitting::read(&text(bytes)) {
                    let _ = (sitting.left_s(60.0), sitting.away_of(1));
                    sitting.back(1_000_000.0, 1_060_000.0, true);
                }
                Ok(())
            },
            takes: |bytes| Sitting::read(&text(bytes)).is_some(),
        },
        Reader {
            name: "entry that was kept",
            slowness: 10,
            seeds: entries()
                .iter()
                .map(|(key, text)| format!("{key}\n{text}").into_bytes())
                .collect(),
            read: |bytes| {
                is_readable_entry(bytes);
                Ok(())
            },
            takes: is_readable_entry,
        },
        Reader {
            name: "everything that somebody keeps",
            slowness: 20,
            seeds: vec![everything_text()],
            read: |bytes| {
                let here = BTreeMap::from([("job/j1".to_owned(), text(&saved_job()))]);
                match everything::merge("f.json", &text(bytes), &here) {
                    Ok(merged) => merged.refused.iter().try_for_each(|why| begins(why)),
                    Err(why) => begins(&why),
                }
            },
            takes: |bytes| everything::merge("f.json", &text(bytes), &BTreeMap::new()).is_ok(),
        },
    ]
}

fn given() -> Vec<Reader> {
    vec![
        Reader {
            name: "address",
            slowness: 1,
            seeds: [
                "#/bench/j1",
                "#/handbook/faults/P/capacitor_low",
                "#/sit/AbC-_",
                "#/jobs?from=mail",
            ]
            .map(|address| address.as_bytes().to_vec())
            .to_vec(),
            read: |bytes| {
                let route = Route::parse(&text(bytes));
                let again = Route::parse(&route.href());
                let is_same = again == route || route == Route::Unknown;
                is_same
                    .then_some(())
                    .ok_or_else(|| format!("{route:?} leads to {again:?}"))
            },
            takes: |bytes| Route::parse(&text(bytes)) != Route::Unknown,
        },
        Reader {
            name: "candidates and their minutes",
            slowness: 5,
            seeds: vec![b"c-1\n\n c-2 , 30\nc-3,0\n".to_vec()],
            read: |bytes| slips(bytes).map_or_else(reader::told, |()| Ok(())),
            takes: |bytes| slips(bytes).is_ok(),
        },
        Reader {
            name: "file that is given",
            slowness: 5,
            seeds: given_files(),
            read: |bytes| {
                let file = opened(bytes);
                for kind in KINDS {
                    if let Err(untaken) = file_kind::taken(&file, &[kind]) {
                        begins(&untaken.words())?;
                    }
                }
                Ok(())
            },
            takes: |bytes| file_kind::taken(&opened(bytes), &KINDS).is_ok(),
        },
    ]
}

/// What is refused begins with the file's name.
fn begins(why: &str) -> Said {
    let is_told = why
        .strip_prefix("f.json")
        .is_some_and(|rest| rest.len() > 2);
    is_told
        .then_some(())
        .ok_or_else(|| format!("refused without name or reason: {why}"))
}

fn launch_data() -> Vec<u8> {
    let data = json!({
        "contextTemplate": {"contextActivities": {"grouping": [{"id": "https://school.example/course"}]}, "extensions": {"https://school.example/x": 1}},
        "launchMode": "Normal", "masteryScore": 0.65,
        "launchParameters": "{\"start\": \"autumn\"}",
        "returnURL": "https://school.example/",
    });
    data.to_string().into_bytes()
}

/// What begins with launch data: the name of what is started, and two statements.
fn launched(bytes: &[u8]) -> Option<String> {
    let data: Value = serde_json::from_slice(bytes).ok()?;
    let launch = Launch::of(json!({}), "r", "a", &data);
    let own = json!({"context": {"extensions": {"https://school.example/y": 1}}, "timestamp": "x"});
    drop(cmi5_statement::defined(&launch, "passed", None, "i", "x"));
    drop(cmi5_statement::allowed(&launch, own, [0, 1]));
    cmi5_launch::start(&data)
}

fn saved_job() -> Vec<u8> {
    let log = include_str!("../../tests/jobs/not_the_wash_that_smells.json");
    let mut job = SavedJob::fresh("j1", 7);
    job.log = serde_json::from_str(log).expect("a log");
    job.write().expect("finite").into_bytes()
}

fn sitting() -> Sitting {
    let mut own = Sitting::new("{}".to_owned(), "c-1".to_owned(), "0.1.0", 1_000_000.0);
    own.opened_ms = vec![(1, 1_000_000.0), (2, 1_100_000.0)];
    own.away_ms = vec![[30_000.0, 50_000.0]];
    own
}

fn suspended() -> String {
    json!({"sitting": sitting(), "jobs": {"job/j1": text(&saved_job())}}).to_string()
}

/// One of each kind, by its key.
fn entries() -> Vec<(&'static str, String)> {
    let job = &job_files().expect("ships")[0].file;
    let own = json!({"letters": crate::scenario::share::to_letters(job), "listed": true});
    let set = include_str!("../../scenarios/sets/first_month.json");
    let draft = json!({"id": "d1", "job": job, "saved_ms": 1.0});
    let set_draft = json!({"title": "T", "about": "A", "mastered_at_marks": 80.0, "jobs": [{"id": "no_water", "is_draft": false}]});
    let waiting = json!({"statements": [{"id": "i"}], "tries": 1, "why": "no network"});
    let place = json!({"address": "https://school.example/xapi", "user": "u", "password": "p", "version": "2.0.0"});
    let ruling = json!({"about": {"job": "no_water"}, "holds": "void", "by": "N. Judge", "day": "2031-03-04", "why": "w"});
    let settings = json!({"volume": 0.2, "theme": "dark"});
    vec![
        ("job/j1", text(&saved_job())),
        ("own/j2", own.to_string()),
        ("set/first_month", set.to_owned()),
        ("draft/d1", draft.to_string()),
        ("set-draft", set_draft.to_string()),
        ("outbox/1", waiting.to_string()),
        ("parked/1", waiting.to_string()),
        ("lrs", place.to_string()),
        ("ruling/1", ruling.to_string()),
        (
            "given/autumn",
            serde_json::to_string(&Given::new(Hash([5; 32]))).expect("finite"),
        ),
        (
            "sitting",
            serde_json::to_string(&sitting()).expect("finite"),
        ),
        ("settings", settings.to_string()),
    ]
}

/// The first line is the key.
fn is_readable_entry(bytes: &[u8]) -> bool {
    let text = text(bytes);
    let (key, text) = text.split_once('\n').unwrap_or((&text, ""));
    everything::is_readable(key, text)
}

fn everything_text() -> Vec<u8> {
    let entries: BTreeMap<&str, String> = entries().into_iter().collect();
    let file = json!({"format": everything::EVERYTHING_FORMAT, "entries": entries});
    file.to_string().into_bytes()
}

fn slips(bytes: &[u8]) -> Result<(), String> {
    let mut given = Given::new(Hash([5; 32]));
    given.candidates = text(bytes);
    given.slips().map(drop)
}

fn given_files() -> Vec<Vec<u8>> {
    let job = &job_files().expect("ships")[0].file;
    vec![
        write::write(job).expect("writes").into_bytes(),
        everything_text(),
        b"{\"format\": \"tubwright-record-1\"}\n{\"format\": \"tubwright-record-1\"}\n".to_vec(),
        include_bytes!("../../scenarios/sets/first_month.json").to_vec(),
    ]
}

fn opened(bytes: &[u8]) -> OpenedFile {
    OpenedFile {
        name: "f.json".to_owned(),
        text: file_kind::text(bytes.to_vec()),
    }
}

#[cfg(test)]
mod tests {
    use super::trial::SHORT;
    use super::*;

    #[test]
    fn sound_files_are_taken() {
        for reader in all() {
            for seed in &reader.seeds {
                let name = reader.name;
                assert!((reader.takes)(seed), "{name} refuses {}", text(seed));
            }
        }
    }

    #[test]
    fn changed_files_never_panic_and_are_refused_by_name() {
        trial::run_all(all(), |reader| SHORT / reader.slowness, 0);
    }
}
