//! Records: what a browser hands over can be checked, and nothing that was changed is accepted.

#[path = "records/as_written.rs"]
mod as_written;

use std::sync::LazyLock;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use rayon::prelude::*;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::notebook::NoteEntry;
use tubwright::expert::Reckoning;
use tubwright::expert::Seen;
use tubwright::records::chain::Broken;
use tubwright::records::chain::Member;
use tubwright::records::chain::in_a_row;
use tubwright::records::check::Difference;
use tubwright::records::check::SealState;
use tubwright::records::check::body_of;
use tubwright::records::check::check;
use tubwright::records::library::Library;
use tubwright::records::record::Body;
use tubwright::records::record::Person;
use tubwright::records::record::Record;
use tubwright::records::record::Sitting;
use tubwright::records::result::JudgedResult;
use tubwright::records::seal::AssessmentKey;
use tubwright::records::seal::Hash;
use tubwright::score::assess;

const CANDIDATE: &str = "c-017";

static LIBRARY: LazyLock<Library> = LazyLock::new(|| Library::shipped().expect("ships"));
static RECORD: LazyLock<Record> = LazyLock::new(|| {
    sealed(
        "no_water",
        CANDIDATE,
        Body::root(CANDIDATE, Some(&sitting(1))),
        1,
    )
});

fn key() -> AssessmentKey {
    AssessmentKey::new([42; 32])
}

fn sitting(place: u32) -> Sitting {
    Sitting {
        assessment: "autumn".to_owned(),
        file: Hash::of("test", &[b"autumn"]),
        release: "room 3".to_owned(),
        place,
    }
}

fn body(job: &str, candidate: &str, previous: Hash) -> Body {
    let text = std::fs::read_to_string(format!("tests/jobs/{job}.json")).expect("ships");
    let log: Vec<Entry> = serde_json::from_str(&text).expect("a log");
    let task = LIBRARY.task(job).expect("ships");
    let (job, _) = Job::replay(task.scenario.clone(), 5, &log).expect("starts");
    body_of(&job, task, candidate, previous).expect("marks")
}

fn sealed(job: &str, candidate: &str, previous: Hash, place: u32) -> Record {
    let mut body = body(job, candidate, previous);
    body.sitting = Some(sitting(place));
    body.started = "2031-03-04T09:00:00Z".to_owned();
    close(body, candidate)
}

fn close(body: Body, candidate: &str) -> Record {
    let person = Person {
        name: "Ana \u{202e}\"=1+1\" <b>\u{645}".to_owned(),
        salt: Hash::of("test salt", &[candidate.as_bytes()]),
    };
    let code = key().start_code("autumn", candidate);
    Record::close(body, Some(person), Some(&code)).expect("finite")
}

fn accepted(text: &str) -> Result<SealState, String> {
    let record = Record::read("r.json", text).map_err(|error| error.to_string())?;
    check(&record, &LIBRARY, Some(&key())).map_err(|difference| difference.to_string())
}

#[test]
fn a_record_is_accepted_as_it_was_written() {
    let text = RECORD.write().expect("finite");
    assert_eq!(accepted(&text), Ok(SealState::Good));
    assert_eq!(
        check(&RECORD, &LIBRARY, None),
        Ok(SealState::NotChecked),
        "without the key its seal stays open"
    );
    let practice = Record::close(body("no_water", "me", Body::root("me", None)), None, None);
    let text = practice.expect("finite").write().expect("finite");
    assert_eq!(accepted(&text), Ok(SealState::Practice));
}

#[test]
fn a_record_from_before_the_target_time_was_kept_is_accepted_as_it_is() {
    let mut body = RECORD.body.clone();
    assert!(
        body.result
            .target_minutes
            .is_some_and(|minutes| minutes > 0.0)
    );
    body.result.target_minutes = None;
    let text = close(body, CANDIDATE).write().expect("finite");
    assert!(!text.contains("target_minutes"));
    assert_eq!(accepted(&text), Ok(SealState::Good));
    // One that is there has to be right.
    let mut body = RECORD.body.clone();
    body.result.target_minutes = Some(1.0);
    assert!(accepted(&close(body, CANDIDATE).write().expect("finite")).is_err());
}

#[test]
fn a_name_can_be_struck_out_and_not_changed() {
    let without = RECORD.clone().without_name().write().expect("finite");
    assert_eq!(accepted(&without), Ok(SealState::Good));
    let mut other = RECORD.clone();
    if let Some(person) = &mut other.person {
        person.name = "Somebody Else".to_owned();
    }
    assert_eq!(check(&other, &LIBRARY, Some(&key())), Err(Difference::Name));
}

/// A thousand records changed in every way there is: bytes of the file by anyone; contents with the
/// links made good by somebody without the code; moved to other candidates with their own codes;
/// contents by the candidate, who knows the code and seals anew.
#[test]
fn of_a_thousand_changed_records_none_is_accepted() {
    let text = RECORD.write().expect("finite");
    let taken: Vec<String> = (0..1000_u64)
        .into_par_iter()
        .filter_map(|n| {
            let mut rng = ChaCha8Rng::seed_from_u64(n);
            let changed = match n % 10 {
                0..=3 => bytes_changed(&text, &mut rng),
                4 | 5 => {
                    let mut record = changed(&RECORD.body, &mut rng);
                    record.seal = RECORD.seal;
                    record.write().expect("finite")
                }
                6 => moved(n).write().expect("finite"),
                _ => changed(&RECORD.body, &mut rng).write().expect("finite"),
            };
            assert_ne!(changed, text, "{n} changed nothing");
            accepted(&changed)
                .is_ok()
                .then(|| format!("{n}: {changed:.80}"))
        })
        .collect();
    assert!(taken.is_empty(), "{} accepted: {taken:?}", taken.len());
}

fn pick(rng: &mut ChaCha8Rng, n: usize) -> usize {
    (rng.next_u64() % n as u64) as usize
}

fn bytes_changed(text: &str, rng: &mut ChaCha8Rng) -> String {
    loop {
        let mut bytes = text.as_bytes().to_vec();
        let at = pick(rng, bytes.len());
        match pick(rng, 4) {
            0 => bytes[at] ^= 1 << pick(rng, 7),
            1 => {
                bytes.remove(at);
            }
            2 => bytes.insert(at, b" 0,\"}x\n"[pick(rng, 7)]),
            _ => bytes.truncate(at),
        }
        // What is no text any more is refused before it is read.
        if let Ok(changed) = String::from_utf8(bytes)
            && changed != text
        {
            return changed;
        }
    }
}

fn moved(n: u64) -> Record {
    let other = format!("c-{}", 100 + n);
    let mut body = RECORD.body.clone();
    body.candidate.clone_from(&other);
    // With the old seal, or sealed by the taker of the record under another assessment's key.
    let mut record = close(body, &other);
    record.seal = if n % 20 < 10 {
        RECORD.seal
    } else {
        let code = AssessmentKey::new([1; 32]).start_code("autumn", &other);
        Some(code.seal(&record.link))
    };
    record
}

/// Contents changed, linked and sealed anew with the candidate's own code.
fn changed(body: &Body, rng: &mut ChaCha8Rng) -> Record {
    let mut body = body.clone();
    match pick(rng, 12) {
        0 => body.result.total = 100.0 - pick(rng, 50) as f64 / 7.0,
        1 => body.result.safe = !body.result.safe,
        2 => body.result.cost -= 1.0,
        3 => body.result.minutes *= 0.5,
        4 => {
            let at = pick(rng, body.log.len());
            body.log.remove(at);
        }
        5 => {
            let at = pick(rng, body.log.len());
            body.log[at].tick += 1 + pick(rng, 50) as u64;
        }
        6 => {
            let at = pick(rng, body.log.len());
            let again = body.log[at].clone();
            body.log.insert(at, again);
        }
        7 => body.state.0[pick(rng, 32)] ^= 1,
        8 => body.scenario.0[pick(rng, 32)] ^= 1,
        9 => {
            let at = pick(rng, body.notebook.len());
            match &mut body.notebook[at].entry {
                NoteEntry::Reading(reading) => reading.display.push('1'),
                NoteEntry::Gauge(gauge) => gauge.display.push('1'),
                NoteEntry::Observation { place, .. } => place.push('x'),
                NoteEntry::Answer { text, .. } | NoteEntry::Act { text } => text.push('x'),
            }
        }
        10 => {
            let at = pick(rng, body.result.parts.len());
            body.result.parts[at].points += 0.1;
        }
        _ => body.log[0].tick = u64::MAX - pick(rng, 1000) as u64,
    }
    close(body, CANDIDATE)
}

#[test]
fn the_first_difference_is_named() {
    let mut body = RECORD.body.clone();
    let at = body
        .notebook
        .iter()
        .position(|note| matches!(note.entry, NoteEntry::Answer { .. }))
        .expect("somebody was asked");
    if let NoteEntry::Answer { text, .. } = &mut body.notebook[at].entry {
        *text = "It was the tap all along.".to_owned();
    }
    let found = check(&close(body, CANDIDATE), &LIBRARY, Some(&key()));
    let Err(Difference::Line { line, said, .. }) = found else {
        panic!("{found:?}");
    };
    assert_eq!(line, at + 1);
    assert!(said.contains("It was the tap all along."));

    let mut body = RECORD.body.clone();
    body.engine = "0.0.0".to_owned();
    let found = check(&close(body, CANDIDATE), &LIBRARY, Some(&key()));
    assert_eq!(found, Err(Difference::Engine("0.0.0".to_owned())));
}

#[test]
fn decisions_in_a_record_are_worked_out_again() {
    let mut body = RECORD.body.clone();
    let task = LIBRARY.task("no_water").expect("ships");
    let (job, _) = Job::replay(task.scenario.clone(), body.seed, &body.log).expect("starts");
    let seen = Seen::of(&job).expect("can be seen");
    let reckoning = Reckoning::of(&seen).expect("can be reckoned up");
    let report = assess(&job).expect("marks");
    body.judged = Some(JudgedResult::of(&job, &report, &reckoning));
    let counted = body.counted();
    assert!((counted.total - body.result.total).abs() > 1e-6);
    assert!(counted.total > 65.0, "a careful job: {counted:?}");
    let record = close(body.clone(), CANDIDATE);
    let read = Record::read("r.json", &record.write().expect("finite")).expect("reads");
    assert_eq!(check(&read, &LIBRARY, Some(&key())), Ok(SealState::Good));

    // The candidate makes the decisions look better and seals anew.
    let judged = body.judged.as_mut().expect("there");
    judged.avoidable = 0.0;
    let found = check(&close(body, CANDIDATE), &LIBRARY, Some(&key()));
    assert!(matches!(found, Err(Difference::Result { .. })), "{found:?}");
}

fn row() -> (Hash, Vec<Record>) {
    let root = Body::root(CANDIDATE, Some(&sitting(1)));
    let mut at = root;
    let records = (1..=4)
        .map(|place| {
            let mut body = RECORD.body.clone();
            body.sitting = Some(sitting(place));
            body.previous = at;
            let record = close(body, CANDIDATE);
            at = record.link;
            record
        })
        .collect();
    (root, records)
}

#[test]
fn a_chain_survives_erasure_and_nothing_else() {
    let (root, records) = row();
    let whole = |record: &Record| Member::Whole(Box::new(record.clone()));
    let mut members: Vec<Member> = records.iter().rev().map(whole).collect();
    members[1] = Member::Erased(records[2].erased().expect("finite"));
    let found = in_a_row(root, members.clone()).expect("unbroken");
    assert_eq!(found.len(), 4);
    assert!(matches!(found[2], Member::Erased(_)));

    let mut dropped = members.clone();
    dropped.remove(1);
    assert_eq!(in_a_row(root, dropped), Err(Broken::Gap(3)));
    let mut added = members.clone();
    added.push(added[0].clone());
    assert_eq!(in_a_row(root, added), Err(Broken::Fork(4)));
    if let Member::Erased(erased) = &mut members[1] {
        erased.body.0[0] ^= 1;
    }
    assert_eq!(in_a_row(root, members), Err(Broken::Link(3)));
    // Another candidate's row has another root.
    let others = records.iter().map(whole).collect();
    assert_eq!(
        in_a_row(Body::root("c-018", Some(&sitting(1))), others),
        Err(Broken::Gap(1))
    );
}
