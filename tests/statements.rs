//! Statements for stores of learning records: whom they name, what stands above what, which attempt is
//! which, and that the handbook's page on sizes says what is sent.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use serde_json::Value;
use tubwright::assess::decide::Decided;
use tubwright::assess::decide::Decision;
use tubwright::assess::decide::Reason;
use tubwright::bench::action::Action;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::records::check::body_of;
use tubwright::records::library::Library;
use tubwright::records::record::Body;
use tubwright::records::record::Record;
use tubwright::records::seal::AssessmentKey;
use tubwright::records::sitting::Assessment;
use tubwright::records::xapi;
use tubwright::records::xapi::Deployment;
use tubwright::records::xapi::Whole;
use tubwright::scenario::job_file::JobFile;

const FILE: &str = "scenarios/assessments/first_visits.json";
const RELEASE: &str = "monday, room 3";

static LIBRARY: LazyLock<Library> = LazyLock::new(|| Library::shipped().expect("ships"));
static ASSESSMENT: LazyLock<Assessment> = LazyLock::new(|| {
    let text = std::fs::read_to_string(FILE).expect("ships");
    Assessment::read(FILE, &text, &LIBRARY).unwrap_or_else(|error| panic!("{error}"))
});

/// A candidate who gives the place-th job back untouched.
fn record(candidate: &str, place: usize) -> Record {
    let drawn = ASSESSMENT.draw(&LIBRARY, candidate, RELEASE);
    let own = &drawn[place - 1];
    let task = LIBRARY.prepare(&own.job, &own.file).expect("a job");
    let mut job = Job::new(task.scenario.clone(), own.seed).expect("starts");
    job.act(Action::Tap { open: false });
    job.advance(100);
    job.act(Action::Close);
    let mut body = body_of(&job, &task, candidate, Body::root(candidate, None)).expect("marks");
    body.job.clone_from(&own.job);
    body.sitting = Some(ASSESSMENT.sitting(RELEASE, place as u32));
    body.started = "2031-03-04T09:00:00+02:00".to_owned();
    let code = AssessmentKey::new([9; 32]).start_code("first_visits", candidate);
    Record::close(body, None, Some(&code)).expect("finite")
}

#[test]
fn statements_name_nobody_and_are_the_same_when_sent_twice() {
    let record = record("c-1", 2);
    let task = LIBRARY.task(&record.body.job).expect("ships");
    let place = school();
    let all = xapi::statements(&record, task, &place);
    assert_eq!(all, xapi::statements(&record, task, &place));
    let verbs: Vec<&str> = all
        .iter()
        .filter_map(|s| s["verb"]["display"]["en"].as_str())
        .collect();
    assert_eq!(verbs.first(), Some(&"initialized"));
    assert!(
        verbs.ends_with(&["scored", "completed", "terminated"]),
        "{verbs:?}"
    );
    let ids: BTreeSet<String> = all.iter().map(|s| s["id"].to_string()).collect();
    assert_eq!(ids.len(), all.len());
    for statement in &all {
        let text = statement.to_string();
        assert!(!text.contains("null") && !text.contains("mbox"), "{text}");
        assert_eq!(statement["actor"]["account"]["name"], "c-1");
    }
    let completed = &all[all.len() - 2]["result"];
    assert!(completed.get("score").is_none() && completed["completion"] == true);
    assert_eq!(all[0]["timestamp"], "2031-03-04T07:00:00.000Z");
    let score = &all[all.len() - 3]["result"]["score"];
    assert!(score["raw"].is_u64() && score["max"] == 100, "{score}");

    // The same job practised once more is another attempt: no statement takes the other's place.
    let mut later = record;
    later.body.started = "2031-03-05T07:00:00.000Z".to_owned();
    for statement in xapi::statements(&later, task, &place) {
        assert!(!ids.contains(&statement["id"].to_string()), "{statement}");
    }
}

/// Registrations of a record's statements.
fn registrations(record: &Record) -> BTreeSet<String> {
    let task = LIBRARY.task(&record.body.job).expect("ships");
    xapi::statements(record, task, &school())
        .iter()
        .map(|statement| statement["context"]["registration"].to_string())
        .collect()
}

fn school() -> Deployment {
    Deployment {
        base: "https://school.example/".to_owned(),
        home_page: "https://school.example".to_owned(),
        language: "en".to_owned(),
    }
}

#[test]
fn a_sitting_is_one_attempt_and_each_job_of_practice_another() {
    let sat = [
        registrations(&record("c-1", 1)),
        registrations(&record("c-1", 2)),
    ];
    assert_eq!((sat[0].len(), &sat[0]), (1, &sat[1]));
    let mut practised = record("c-1", 1);
    practised.body.sitting = None;
    let mut again = practised.clone();
    again.body.started = "2031-03-04T10:00:00+02:00".to_owned();
    let mut other = record("c-1", 2);
    other.body.sitting = None;
    let mut all: BTreeSet<String> = sat[0].clone();
    for one in [&practised, &again, &other] {
        let own = registrations(one);
        assert_eq!((own.len(), &own), (1, &registrations(one)));
        all.extend(own);
    }
    assert_eq!(all.len(), 4, "{all:?}");
}

#[test]
fn jobs_stand_under_their_assessment_and_readings_under_their_job() {
    let sat = record("c-1", 2);
    let task = LIBRARY.task(&sat.body.job).expect("ships");
    let assessment = "https://school.example/assessment/first_visits";
    let job = format!("https://school.example/job/{}", sat.body.job);
    let id = |statement: &serde_json::Value, kind: &str| {
        let above = &statement["context"]["contextActivities"][kind][0]["id"];
        above.as_str().map(str::to_owned)
    };
    let mut n_below = 0;
    for statement in xapi::statements(&sat, task, &school()) {
        if statement["object"]["id"] == job.as_str() {
            assert_eq!(id(&statement, "parent").as_deref(), Some(assessment));
            assert_eq!(id(&statement, "grouping"), None);
        } else {
            n_below += 1;
            assert_eq!(id(&statement, "parent"), Some(job.clone()));
            assert_eq!(id(&statement, "grouping").as_deref(), Some(assessment));
        }
        // Nothing lies in the future of somebody who works an hour on site in ten minutes.
        let at = statement["timestamp"].as_str().expect("a moment");
        assert!(at.starts_with("2031-03-04T07:00:00."), "{at}");
    }
    let broken = sat.body.result.safety.len();
    assert!(n_below >= broken, "{n_below} below, {broken} rules broken");
    let mut practised = sat;
    practised.body.sitting = None;
    for statement in xapi::statements(&practised, task, &school()) {
        assert_eq!(id(&statement, "grouping"), None);
    }
}

/// Statements of a sitting as a whole.
fn whole() -> Vec<Value> {
    let decided = Decided {
        decision: Decision::NotYet,
        marks: 61.25,
        cut: 65.0,
        cut_se: 0.0,
        reasons: vec![Reason::Below {
            marks: 61.25,
            cut: 65.0,
        }],
    };
    let one = Whole {
        id: "first_visits",
        title: "First visits alone",
        candidate: "c-0042",
        registration: xapi::registration(&record("c-0042", 1).body),
        is_sealed: true,
        started_ms: Some(1_930_000_000_000),
        ended_ms: Some(1_930_003_600_000),
        took: 36_000,
        n_jobs: (4, 4),
        decided: &decided,
    };
    xapi::whole(&one, &school())
}

#[test]
fn the_whole_is_of_the_same_attempt_as_its_jobs() {
    let own = registrations(&record("c-0042", 2));
    for statement in whole() {
        assert!(own.contains(&statement["context"]["registration"].to_string()));
        assert_eq!(
            statement["object"]["id"],
            "https://school.example/assessment/first_visits"
        );
    }
}

/// How long a list of statements is on its way.
fn bytes(statements: &[Value]) -> usize {
    serde_json::to_string(statements).expect("finite").len()
}

/// The number that stands before some words on the handbook's page.
fn on_the_page(page: &str, words: &str) -> f64 {
    let at = page
        .find(words)
        .unwrap_or_else(|| panic!("handbook/sizing.md does not say “{words}”"));
    let before = page[..at].trim_end();
    let number: String = before
        .chars()
        .rev()
        .take_while(|c| c.is_ascii_digit() || matches!(c, '.' | ','))
        .collect();
    let number: String = number.chars().rev().filter(|c| *c != ',').collect();
    number
        .parse()
        .unwrap_or_else(|_| panic!("no number before “{words}”"))
}

/// A worked job: bytes of its record, its statements, their bytes, its acts.
fn size((id, file): &(&String, &JobFile)) -> [f64; 4] {
    let task = LIBRARY.prepare(id, file).expect("ships");
    let text = std::fs::read_to_string(format!("tests/jobs/{id}.json")).expect("a log");
    let log: Vec<Entry> = serde_json::from_str(&text).expect("a log");
    let (job, _) = Job::replay(task.scenario.clone(), 1, &log).expect("starts");
    let mut body = body_of(&job, &task, "c-0042", Body::root("c-0042", None)).expect("marks");
    body.sitting = Some(ASSESSMENT.sitting(RELEASE, 1));
    body.started = "2031-03-04T07:00:00.000Z".to_owned();
    let code = AssessmentKey::new([9; 32]).start_code("first_visits", "c-0042");
    let record = Record::close(body, None, Some(&code)).expect("finite");
    let all = xapi::statements(&record, &task, &school());
    [
        record.write().expect("finite").len() as f64,
        all.len() as f64,
        bytes(&all) as f64,
        log.len() as f64,
    ]
}

/// Measures what is sent: `cargo test --test statements sizes -- --nocapture` shows it.
#[test]
fn the_sizes_in_the_handbook_are_those_of_what_is_sent() {
    let page = std::fs::read_to_string("handbook/sizing.md").expect("ships");
    let files: Vec<(&String, &JobFile)> = LIBRARY.files().iter().collect();
    let cores = std::thread::available_parallelism().map_or(2, usize::from);
    let jobs: Vec<[f64; 4]> = std::thread::scope(|scope| {
        let shares: Vec<_> = files
            .chunks(files.len().div_ceil(cores))
            .map(|share| scope.spawn(move || share.iter().map(size).collect::<Vec<_>>()))
            .collect();
        let done = shares.into_iter();
        done.flat_map(|share| share.join().expect("measured"))
            .collect()
    });
    let n = jobs.len() as f64;
    let mean = |at: usize| jobs.iter().map(|job| job[at]).sum::<f64>() / n;
    let (record_kb, each, job_kb) = (mean(0) / 1e3, mean(1), mean(2) / 1e3);
    let (n_whole, whole_kb) = (whole().len() as f64, bytes(&whole()) as f64 / 1e3);
    // A million candidates, four jobs each.
    let statements_m = 4.0 * each + n_whole;
    let travel_gb = 4.0 * job_kb + whole_kb;
    // In the hour in which a tenth hands in, of each a request a job, one for the whole, one for the version.
    let per_s = 1e5 / 3600.0;
    let measured = [
        (n, "worked jobs of this library"),
        (mean(3), "acts"),
        (record_kb, "kB on average"),
        (each, "statements a job"),
        (job_kb / each, "kB each"),
        (n_whole, "more for the assessment"),
        (4.0 * record_kb, "GB as files"),
        (statements_m, "million statements"),
        (travel_gb, "GB as they travel"),
        (5.0, "million requests"),
        (6.0 * per_s, "requests a second for that hour"),
        (statements_m * per_s, "statements a second for that hour"),
        (travel_gb * per_s / 1e3, "MB a second for that hour"),
    ];
    for (value, words) in measured {
        println!("{value:10.2} {words}");
    }
    for (value, words) in measured {
        let said = on_the_page(&page, words);
        assert!(
            (said - value).abs() <= 0.06 * value,
            "handbook/sizing.md says {said} {words}, measured are {value:.2}"
        );
    }
}
