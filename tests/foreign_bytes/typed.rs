//! Readers of what people type, of tables, of languages, and of what is kept of finished jobs.

use std::fs;
use std::sync::Arc;
use std::sync::LazyLock;

use serde_json::Value;
use tubwright::assess::assessment_file::RefreshFile;
use tubwright::assess::date;
use tubwright::assess::letters;
use tubwright::assess::pause_code;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::cli::hold::Link;
use tubwright::cli::play::log;
use tubwright::cli::rows;
use tubwright::language::Catalogue;
use tubwright::language::Key;
use tubwright::language::id;
use tubwright::records::practice;
use tubwright::records::practice::Practice;
use tubwright::records::result::JobResult;
use tubwright::records::rulings::About;
use tubwright::records::rulings::Ruling;
use tubwright::records::sitting::Assessment;
use tubwright::scenario::FileError;
use tubwright::scenario::edit;
use tubwright::scenario::job_file::JobFile;
use tubwright::scenario::read::read_back;

use super::reader::Reader;
use super::reader::text;
use super::reader::told;
use super::readers::LIBRARY;
use super::readers::RECORD;
use super::readers::named;

/// Rows of a table that are held and solved; the others are only read.
const SOLVED: usize = 2;
/// Latest act of a log that is run: five minutes after the bell.
const LATEST: u64 = 3_000;
/// Acts of a log that are run.
const MOST_ACTS: usize = 20;
/// Texts of the program that a language's message is looked up for.
const ENGLISH: [&str; 3] = ["Making safe", "{n} jobs", "{file}: {why}"];

static MACHINES: LazyLock<rows::Machines> =
    LazyLock::new(|| rows::Machines::shipped().expect("ships"));
static JOB: LazyLock<JobFile> = LazyLock::new(|| LIBRARY.files()["no_water"].clone());

/// All of them, the quickest first.
pub fn all() -> Vec<Reader> {
    let mut all = short_words();
    all.extend(kept());
    all.extend(files());
    all
}

fn short_words() -> Vec<Reader> {
    vec![
        Reader {
            name: "pause code",
            slowness: 1,
            seeds: vec![b"K7QF-2M9D".to_vec(), b" o0il 2m9d".to_vec()],
            read: |bytes| match pause_code::read(&text(bytes)) {
                Some(code) if !pause_code::is_code(&code) => Err("no code was read".to_owned()),
                _ => Ok(()),
            },
            takes: |bytes| pause_code::read(&text(bytes)).is_some(),
        },
        Reader {
            name: "moment",
            slowness: 1,
            seeds: vec![
                b"2031-03-04T09:00:00.000Z".to_vec(),
                b"1996-12-19T16:39:57-08:00".to_vec(),
            ],
            read: |bytes| match date::moment_ms(&text(bytes)) {
                // A year of four digits comes back.
                Some(ms) if (-62_000_000_000_000..253_000_000_000_000).contains(&ms) => {
                    let again = date::moment_ms(&date::moment(ms));
                    (again == Some(ms))
                        .then_some(())
                        .ok_or("another moment".to_owned())
                }
                _ => Ok(()),
            },
            takes: |bytes| date::moment_ms(&text(bytes)).is_some(),
        },
        Reader {
            name: "resistance put in by hand",
            slowness: 1,
            seeds: vec![b"2000:CAB-0".to_vec(), b"1e3:MA-MC".to_vec()],
            read: |bytes| {
                drop(Link::typed(&text(bytes)));
                Ok(())
            },
            takes: |bytes| Link::typed(&text(bytes)).is_some(),
        },
    ]
}

fn kept() -> Vec<Reader> {
    vec![
        Reader {
            name: "ruling",
            slowness: 2,
            seeds: vec![ruling()],
            read: |bytes| {
                drop(read_back::<Ruling>(&text(bytes)));
                Ok(())
            },
            takes: |bytes| read_back::<Ruling>(&text(bytes)).is_some(),
        },
        Reader {
            name: "finished job of practice",
            slowness: 10,
            seeds: vec![practice_text()],
            read: |bytes| {
                if let Some(one) = Practice::read(&text(bytes)) {
                    practice::standings(&[one], 20_000.0, &RefreshFile::default());
                }
                Ok(())
            },
            takes: |bytes| Practice::read(&text(bytes)).is_some(),
        },
        Reader {
            name: "field of a job",
            slowness: 20,
            seeds: vec![
                b"site.load_kg\n4.5".to_vec(),
                b"customer.answers.since[1]\n\"Yes.\"".to_vec(),
                b"faults[0]\nnull".to_vec(),
            ],
            read: |bytes| match edited(bytes) {
                // The path stands for the file's name.
                Err(error) if error.problems.is_empty() => Err("refused without a word".to_owned()),
                _ => Ok(()),
            },
            takes: |bytes| edited(bytes).is_ok(),
        },
    ]
}

fn files() -> Vec<Reader> {
    vec![
        Reader {
            name: "log to be played",
            slowness: 10,
            seeds: logs(),
            read: |bytes| named(log::read("f.json", &text(bytes))),
            takes: |bytes| log::read("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "assessment in a link",
            slowness: 10,
            seeds: vec![letters::to_letters(&assessment_text()).into_bytes()],
            read: |bytes| match letters::from_letters(&text(bytes)) {
                Some(text) => named(drawn(&text)),
                None => Ok(()),
            },
            takes: |bytes| letters::from_letters(&text(bytes)).is_some_and(|t| drawn(&t).is_ok()),
        },
        Reader {
            name: "assessment that is drawn from",
            slowness: 20,
            seeds: vec![assessment_text().into_bytes()],
            read: |bytes| named(drawn(&text(bytes))),
            takes: |bytes| drawn(&text(bytes)).is_ok(),
        },
        Reader {
            name: "language",
            slowness: 20,
            seeds: vec![messages(), spanish()],
            read: |bytes| match Catalogue::read("es", &text(bytes), ',') {
                Ok(catalogue) => {
                    say(&catalogue);
                    Ok(())
                }
                Err(error) => told(error.to_string()),
            },
            takes: |bytes| Catalogue::read("es", &text(bytes), ',').is_ok(),
        },
        Reader {
            name: "reference rows",
            slowness: 50,
            seeds: vec![table(0, 12), table(40, 12), table(120, 12), table(200, 12)],
            read: |bytes| {
                let read = rows::read("f.json", &text(bytes));
                for row in read.iter().flatten().take(SOLVED) {
                    if let Ok(hold) = MACHINES.hold("f.json", row) {
                        drop(rows::Answer::of("f.json", row, &hold));
                    }
                }
                named(read)
            },
            takes: |bytes| rows::read("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "log that is run",
            slowness: 1000,
            seeds: logs(),
            read: |bytes| {
                run(bytes);
                Ok(())
            },
            takes: |bytes| run(bytes).is_some(),
        },
    ]
}

/// A candidate's jobs by an assessment.
fn drawn(text: &str) -> Result<(), FileError> {
    let read = Assessment::read("f.json", text, &LIBRARY)?;
    read.draw(&LIBRARY, "c-1", "autumn");
    Ok(())
}

/// The first line is the path, the rest the value.
fn edited(bytes: &[u8]) -> Result<JobFile, FileError> {
    let text = text(bytes);
    let (path, value) = text.split_once('\n').unwrap_or((&text, "null"));
    let value: Value = serde_json::from_str(value).unwrap_or_default();
    let whole = edit::as_value(&JOB);
    let _ = edit::get(&whole, path);
    edit::with(&JOB, path, value)
}

fn say(catalogue: &Catalogue) {
    for english in ENGLISH {
        drop(catalogue.plain(Key::of(english), english));
        let values: [(&str, &dyn std::fmt::Display); 3] =
            [("n", &4), ("file", &"f.json"), ("why", &"it is empty")];
        drop(catalogue.filled(english, &values));
    }
}

/// The start of a log run on a job; none when it is no log.
fn run(bytes: &[u8]) -> Option<()> {
    let log: Vec<Entry> = serde_json::from_slice(bytes).ok()?;
    let is_early = |entry: &&Entry| entry.tick <= LATEST;
    let log: Vec<Entry> = log
        .iter()
        .take_while(is_early)
        .take(MOST_ACTS)
        .cloned()
        .collect();
    let task = LIBRARY.task("no_water")?;
    let (job, _) = Job::replay(Arc::clone(&task.scenario), 5, &log).ok()?;
    drop(JobResult::of(&job));
    Some(())
}

fn ruling() -> Vec<u8> {
    let job = About::Job("no_water".to_owned());
    let ruling = Ruling::new(job, "void", "N. Judge", "2031-03-04", "The tap was shut.");
    serde_json::to_vec(&ruling.expect("says all").within("autumn")).expect("writes")
}

fn practice_text() -> Vec<u8> {
    let practice = Practice {
        format: practice::PRACTICE_FORMAT.to_owned(),
        engine: "0.1.0".to_owned(),
        job: "no_water".to_owned(),
        title: JOB.title.clone(),
        skills: JOB.skills.clone(),
        seed: 5,
        ended_ms: 1_700_000_000_000.0,
        log: RECORD.body.log.clone(),
        result: RECORD.body.result.clone(),
    };
    serde_json::to_vec(&practice).expect("finite")
}

fn assessment_text() -> String {
    fs::read_to_string("scenarios/assessments/first_visits.json").expect("ships")
}

/// Short logs.
fn logs() -> Vec<Vec<u8>> {
    [
        "no_water",
        "not_the_wash_that_smells",
        "says_later",
        "keys_do_nothing",
    ]
    .iter()
    .map(|job| fs::read(format!("tests/jobs/{job}.json")).expect("ships"))
    .collect()
}

fn messages() -> Vec<u8> {
    let said = [
        "Dejar sin peligro",
        "{ $n ->\n    [one] un trabajo\n   *[other] { $n } trabajos\n }",
        "{ $file }: { $why }",
    ];
    let lines = ENGLISH.iter().zip(said);
    let lines =
        lines.map(|(english, said)| format!("{} = {said}\n", id(english, Key::of(english))));
    lines.collect::<String>().into_bytes()
}

/// The start of a language that ships.
fn spanish() -> Vec<u8> {
    let text = fs::read_to_string("locales/es/records.ftl").expect("ships");
    let lines: Vec<&str> = text.lines().take(20).collect();
    lines.join("\n").into_bytes()
}

/// Some rows under the first line.
fn table(from: usize, n: usize) -> Vec<u8> {
    let text = fs::read_to_string("tests/fixtures/rows/refs_network.csv").expect("ships");
    let (first, rows) = text.split_once('\n').expect("has rows");
    let rows: Vec<&str> = rows.lines().skip(from).take(n).collect();
    format!("{first}\n{}\n", rows.join("\n")).into_bytes()
}
