//! Every reader of bytes that come from outside, with sound files for each: files and letters in links.

use std::fs;
use std::io::Write;
use std::path::Path;
use std::sync::LazyLock;

use tubwright::assess::assessment_file::read_assessment;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::records::as_written::AsWritten;
use tubwright::records::check::body_of;
use tubwright::records::library::Library;
use tubwright::records::record::Body;
use tubwright::records::record::Record;
use tubwright::records::seal::AssessmentKey;
use tubwright::records::seal::StartCode;
use tubwright::records::sift::Against;
use tubwright::records::slip;
use tubwright::records::unzip;
use tubwright::scenario;
use tubwright::scenario::FileError;
use tubwright::scenario::share;

use super::reader::Reader;
use super::reader::Said;
use super::reader::files;
use super::reader::text;
use super::reader::told;
use super::typed;

pub static LIBRARY: LazyLock<Library> = LazyLock::new(|| Library::shipped().expect("ships"));

pub static RECORD: LazyLock<Record> = LazyLock::new(record);

/// A refusal names the file and tells a remedy for every problem.
pub fn named<T>(read: Result<T, FileError>) -> Said {
    let Err(error) = read else { return Ok(()) };
    let problems = &error.problems;
    let is_told = |p: &scenario::Problem| p.file == "f.json" && !p.remedy.trim().is_empty();
    if !problems.is_empty() && problems.iter().all(is_told) {
        Ok(())
    } else {
        Err(format!("refused without file or remedy: {error}"))
    }
}

fn shipped_jobs() -> Vec<scenario::job_file::JobFile> {
    let jobs = scenario::job_files().expect("ships");
    jobs.iter().step_by(7).map(|job| job.file.clone()).collect()
}

fn record() -> Record {
    let log = fs::read_to_string("tests/jobs/no_water.json").expect("ships");
    let log: Vec<Entry> = serde_json::from_str(&log).expect("a log");
    let task = LIBRARY.task("no_water").expect("ships");
    let (job, _) = Job::replay(task.scenario.clone(), 5, &log).expect("starts");
    let body = body_of(&job, task, "c-1", Body::root("c-1", None)).expect("marks");
    Record::close(body, None, None).expect("finite")
}

fn record_text() -> Vec<u8> {
    RECORD.write().expect("finite").into_bytes()
}

fn archive() -> Vec<u8> {
    let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    for name in ["a/b.json", "c.json"] {
        zip.start_file(name, zip::write::SimpleFileOptions::default())
            .expect("starts");
        zip.write_all(&record_text()).expect("writes");
    }
    zip.finish().expect("closes").into_inner()
}

fn against() -> Against<'static> {
    Against {
        library: &LIBRARY,
        assessments: Vec::new(),
        replays: false,
    }
}

/// All of them.
pub fn all() -> Vec<Reader> {
    files_and_letters()
        .into_iter()
        .chain(typed::all())
        .collect()
}

/// The quickest first.
fn files_and_letters() -> Vec<Reader> {
    vec![
        Reader {
            name: "start code",
            slowness: 1,
            seeds: vec![code().into_bytes()],
            read: |bytes| StartCode::read(&text(bytes)).map(drop).or_else(told),
            takes: |bytes| StartCode::read(&text(bytes)).is_ok(),
        },
        Reader {
            name: "key of an assessment",
            slowness: 1,
            seeds: vec![b"2a".repeat(32)],
            read: |bytes| AssessmentKey::read(&text(bytes)).map(drop).or_else(told),
            takes: |bytes| AssessmentKey::read(&text(bytes)).is_ok(),
        },
        Reader {
            name: "job in a link",
            slowness: 2,
            seeds: shipped_jobs()
                .iter()
                .map(|job| share::to_letters(job).into_bytes())
                .collect(),
            read: |bytes| named(share::from_letters("f.json", &text(bytes))),
            takes: |bytes| share::from_letters("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "result in a QR code",
            slowness: 2,
            seeds: vec![slip::to_letters(&RECORD).expect("finite").into_bytes()],
            read: |bytes| {
                slip::read(&text(bytes));
                Ok(())
            },
            takes: |bytes| slip::read(&text(bytes)).is_some(),
        },
        Reader {
            name: "archive of records",
            slowness: 4,
            seeds: vec![archive()],
            read: |bytes| {
                for entry in unzip::entries(bytes).unwrap_or_default().iter().take(50) {
                    unzip::unpacked(bytes, entry);
                }
                Ok(())
            },
            takes: |bytes| unzip::entries(bytes).is_some_and(|all| all.len() == 2),
        },
        Reader {
            name: "job, or a trainee's copy",
            slowness: 10,
            seeds: shipped_jobs()
                .iter()
                .map(|job| scenario::write::write(job).expect("writes").into_bytes())
                .chain(
                    shipped_jobs()
                        .iter()
                        .map(|job| serde_json::to_vec(&share::sealed(job)).expect("writes")),
                )
                .collect(),
            read: |bytes| named(share::read_shared("f.json", &text(bytes))),
            takes: |bytes| share::read_shared("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "training set",
            slowness: 10,
            seeds: files(Path::new("scenarios/sets")),
            read: |bytes| named(scenario::set_from_text("f.json", &text(bytes))),
            takes: |bytes| scenario::set_from_text("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "assessment",
            slowness: 10,
            seeds: files(Path::new("scenarios/assessments")),
            read: |bytes| named(assessment(bytes)),
            takes: |bytes| assessment(bytes).is_ok(),
        },
        Reader {
            name: "record",
            slowness: 20,
            seeds: vec![record_text()],
            read: |bytes| named(Record::read("f.json", &text(bytes))),
            takes: |bytes| Record::read("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "record of any engine, to be read",
            slowness: 20,
            seeds: vec![record_text()],
            read: |bytes| named(AsWritten::read("f.json", &text(bytes), &LIBRARY)),
            takes: |bytes| AsWritten::read("f.json", &text(bytes), &LIBRARY).is_ok(),
        },
        Reader {
            name: "records one a line",
            slowness: 20,
            seeds: vec![[record_text(), record_text()].concat()],
            read: |bytes| {
                for sifted in against().file("f.json", &text(bytes)) {
                    if sifted.attempt.is_none() && sifted.difference.is_none() {
                        return Err("neither taken nor refused".to_owned());
                    }
                }
                Ok(())
            },
            takes: |bytes| against().file("f.json", &text(bytes)).len() == 2,
        },
        Reader {
            name: "log of a job",
            slowness: 4,
            seeds: files(Path::new("tests/jobs")),
            read: |bytes| {
                // What a log asks for is tried in the bench's own tests; here it is only read.
                drop(serde_json::from_slice::<Vec<Entry>>(bytes));
                Ok(())
            },
            takes: |bytes| serde_json::from_slice::<Vec<Entry>>(bytes).is_ok(),
        },
        Reader {
            name: "catalogue of faults",
            slowness: 500,
            seeds: vec![fs::read("scenarios/faults.json").expect("ships")],
            read: |bytes| named(scenario::read_catalogue("f.json", &text(bytes))),
            takes: |bytes| scenario::read_catalogue("f.json", &text(bytes)).is_ok(),
        },
        Reader {
            name: "machine",
            slowness: 500,
            seeds: files(Path::new("scenarios/machines")),
            read: |bytes| named(scenario::machine_from_text("f.json", &text(bytes)).map(drop)),
            takes: |bytes| scenario::machine_from_text("f.json", &text(bytes)).is_ok(),
        },
    ]
}

fn assessment(bytes: &[u8]) -> Result<(), FileError> {
    let catalogue = scenario::catalogue()?;
    read_assessment("f.json", &text(bytes), LIBRARY.files(), catalogue).map(drop)
}

fn code() -> String {
    let key = AssessmentKey::new([7; 32]);
    key.start_code("autumn", "c-1").to_string()
}
