//! Assessments: each candidate gets jobs of their own, the same ones every time, of equal kind; and
//! a record counts for the candidate and job it was drawn for alone.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::sync::LazyLock;

use tubwright::assess::draw::Drawn;
use tubwright::bench::action::Action;
use tubwright::bench::job::Job;
use tubwright::records::chain::erase_lines;
use tubwright::records::chain::order;
use tubwright::records::check::ENGINE;
use tubwright::records::check::SealState;
use tubwright::records::check::body_of;
use tubwright::records::cohort::Attempt;
use tubwright::records::cohort::cohort;
use tubwright::records::library::Library;
use tubwright::records::record::Body;
use tubwright::records::record::Record;
use tubwright::records::result::JobResult;
use tubwright::records::result::PartResult;
use tubwright::records::result::SafetyResult;
use tubwright::records::seal::AssessmentKey;
use tubwright::records::sift::Against;
use tubwright::records::sift::Sifted;
use tubwright::records::sitting::Assessment;
use tubwright::records::sitting::NotDrawn;
use tubwright::records::slip;

const FILE: &str = "scenarios/assessments/first_visits.json";
const RELEASE: &str = "monday, room 3";

static LIBRARY: LazyLock<Library> = LazyLock::new(|| Library::shipped().expect("ships"));
static ASSESSMENT: LazyLock<Assessment> = LazyLock::new(|| {
    Assessment::read(FILE, &text(), &LIBRARY).unwrap_or_else(|error| panic!("{error}"))
});

fn text() -> String {
    std::fs::read_to_string(FILE).expect("ships")
}

fn drawn(candidate: &str) -> Vec<Drawn> {
    ASSESSMENT.draw(&LIBRARY, candidate, RELEASE)
}

#[test]
fn a_candidate_always_gets_the_same_and_others_get_others() {
    assert_eq!(drawn("c-1"), drawn("c-1"));
    let all: BTreeSet<String> = (0..50)
        .map(|n| format!("{:?}", drawn(&format!("c-{n}"))))
        .collect();
    assert_eq!(all.len(), 50, "no two candidates have the same jobs");
    assert_ne!(drawn("c-1"), ASSESSMENT.draw(&LIBRARY, "c-1", "tuesday"));
}

#[test]
fn every_candidate_gets_jobs_of_the_kinds_asked_that_can_be_worked() {
    let mut jobs = BTreeSet::new();
    let mut faults = BTreeSet::new();
    for n in 0..60 {
        let own = drawn(&format!("c-{n}"));
        let levels: Vec<u8> = own.iter().map(|one| one.file.level).collect();
        assert_eq!(levels, [1, 2, 2, 3]);
        let names: BTreeSet<&str> = own.iter().map(|one| one.job.as_str()).collect();
        assert_eq!(names.len(), 4, "no job twice");
        for one in &own {
            let task = LIBRARY.prepare(&one.job, &one.file);
            let task = task.unwrap_or_else(|error| panic!("{error}"));
            assert_eq!(one.file.rules.hints, Some(false));
            assert!((0.15..=0.45).contains(&one.file.site.water_mpa));
            Job::new(task.scenario, one.seed).expect("starts");
            jobs.insert(one.job.clone());
            faults.extend(
                one.file
                    .faults
                    .iter()
                    .map(|f| (one.job.clone(), f.id.clone())),
            );
        }
    }
    assert!(jobs.len() >= 8, "the library is used: {jobs:?}");
    let hums: Vec<_> = faults.iter().filter(|f| f.0 == "hums_and_stands").collect();
    assert_eq!(hums.len(), 2, "both equal faults are drawn: {hums:?}");
}

#[test]
fn what_is_wrong_in_an_assessment_is_told_with_its_place() {
    let wrong = text()
        .replace("\"level\": 1, \"n\": 1", "\"level\": 1, \"n\": 40")
        .replace("\"difficulty\": 0.2", "\"difficulty\": 0.9")
        .replace("\"safety\": 0.7", "\"elegance\": 0.7")
        .replace("[0.15, 0.45]", "[0.5, 0.45]")
        .replacen(
            "\"id\":",
            "\"erase_after_months\": 0, \"room_pause\": \"abcd\", \"id\":",
            1,
        );
    let told = Assessment::read("a.json", &wrong, &LIBRARY).expect_err("wrong");
    let told = told.to_string();
    for part in [
        "a.json: jobs[0].n: 40",
        "a.json: variants.equal_faults[0][1].difficulty: 0.9",
        "a.json: pass.parts.elegance",
        "a.json: variants.water_mpa[1]: 0.45",
        "a.json: erase_after_months: 0",
        "a.json: room_pause: abcd",
    ] {
        assert!(told.contains(part), "{part} in {told}");
    }
}

fn key() -> AssessmentKey {
    AssessmentKey::new([9; 32])
}

/// A candidate who gives the place-th job back untouched.
fn record(candidate: &str, place: usize) -> Record {
    let own = &drawn(candidate)[place - 1];
    let task = LIBRARY.prepare(&own.job, &own.file).expect("a job");
    let mut job = Job::new(task.scenario.clone(), own.seed).expect("starts");
    job.act(Action::Tap { open: false });
    job.advance(100);
    job.act(Action::Close);
    let mut body = body_of(&job, &task, candidate, Body::root(candidate, None)).expect("marks");
    body.job.clone_from(&own.job);
    body.sitting = Some(ASSESSMENT.sitting(RELEASE, place as u32));
    body.started = "2031-03-04T09:00:00+02:00".to_owned();
    let code = key().start_code("first_visits", candidate);
    Record::close(body, None, Some(&code)).expect("finite")
}

#[test]
fn a_record_counts_for_the_job_its_candidate_drew() {
    let good = record("c-1", 2);
    assert_eq!(
        ASSESSMENT.check(&good, &LIBRARY, Some(&key())),
        Ok(SealState::Good)
    );
    // The same candidate, with the right code, on somebody else's jobs.
    let mut other = record("c-2", 2).body;
    other.candidate = "c-1".to_owned();
    let code = key().start_code("first_visits", "c-1");
    let other = Record::close(other, None, Some(&code)).expect("finite");
    assert!(matches!(
        ASSESSMENT.check(&other, &LIBRARY, Some(&key())),
        Err(NotDrawn::OtherJob { place: 2, .. })
    ));
}

/// A result with a graded score, made up.
fn result(graded: u8, minutes: f64, broken: &[&str]) -> JobResult {
    let part = |name: &str, share: f64| PartResult {
        name: name.to_owned(),
        of: 20.0,
        points: 20.0 * share,
    };
    let shown = |from: u8| if graded >= from { 1.0 } else { 0.0 };
    JobResult {
        ending: "closed".to_owned(),
        fixed: graded > 0,
        safe: true,
        total: 25.0 * f64::from(graded),
        parts: vec![part("evidence", shown(2)), part("economy", shown(3))],
        cost: 2.0 * minutes,
        target_cost: minutes,
        minutes,
        target_minutes: Some(0.8 * minutes),
        safety: broken
            .iter()
            .map(|rule| SafetyResult {
                rule: (*rule).to_owned(),
                severity: "major".to_owned(),
                step: 1,
            })
            .collect(),
        stated: vec!["capacitor_open".to_owned()],
    }
}

#[test]
fn a_cohort_is_ordered_by_what_was_shown() {
    let mut attempts = Vec::new();
    for person in 0..24_u8 {
        for job in 0..6_u8 {
            // Able people score high, later jobs are harder.
            let level =
                i16::from(person) / 4 - i16::from(job) + 2 + i16::from((person * 7 + job * 5) % 3)
                    - 1;
            attempts.push(Attempt {
                candidate: format!("c-{person:02}"),
                job: format!("j{job}"),
                result: result(
                    level.clamp(0, 3) as u8,
                    40.0,
                    if job == 0 { &["r1"] } else { &[] },
                ),
                truth: vec!["winding_1_open".to_owned()],
                skills: vec!["belt".to_owned()],
            });
        }
    }
    attempts.push(attempts[0].clone());
    let found = cohort(&attempts).expect("scores");
    assert_eq!(
        (found.people.len(), found.jobs.len(), found.n_repeats),
        (24, 6, 1)
    );
    let (low, high) = (&found.people[0].ability, &found.people[23].ability);
    assert!(high.value - low.value > 1.0 && high.se > 0.0);
    let difficulties: Vec<f64> = found
        .jobs
        .iter()
        .map(|job| job.difficulty.expect("enough people").value)
        .collect();
    assert!(difficulties.is_sorted(), "{difficulties:?}");
    assert!(
        found
            .jobs
            .iter()
            .all(|job| job.discrimination.is_some_and(|d| d > 0.3))
    );
    let reliability = found.reliability.value.expect("many people");
    assert!((0.5..1.0).contains(&reliability), "{reliability}");
    assert_eq!((found.safety[0].n, found.safety[0].n_people), (24, 24));
    assert_eq!(found.confused[0].is, "winding_1_open");
    assert_eq!(found.jobs[0].cost_to_target, Some(2.0));
    let near = |is: Option<f64>, wanted: f64| is.is_some_and(|is| (is - wanted).abs() < 1e-9);
    let line = &found.jobs[0];
    assert!(near(line.time_to_target, 1.25) && near(line.target_minutes, 32.0));
    assert!(near(found.people[0].time_to_target, 1.25) && near(line.target_cost, 40.0));
    assert_eq!(found.skills, ["belt"]);
    assert!(found.people[0].skills[0].n_right < found.people[23].skills[0].n_right);
}

#[test]
fn a_small_cohort_gets_no_numbers_for_jobs() {
    let attempts: Vec<Attempt> = (0..4)
        .map(|n| Attempt {
            candidate: format!("c{n}"),
            job: "j".to_owned(),
            result: result(3, 10.0, &[]),
            truth: Vec::new(),
            skills: Vec::new(),
        })
        .collect();
    let found = cohort(&attempts).expect("scores");
    assert_eq!(found.jobs[0].difficulty, None);
    assert_eq!(found.jobs[0].words, "too few people to say");
    assert!(found.people[0].ability.value.is_finite());
    let by_name: BTreeMap<&str, usize> = found
        .people
        .iter()
        .map(|p| (p.candidate.as_str(), p.n_jobs))
        .collect();
    assert_eq!(by_name["c3"], 1);
    assert!(cohort(&[]).is_err());
}

/// What the candidate's browser hands over, one record a line, in a row.
fn handed_over(candidate: &str) -> Vec<Record> {
    let mut previous = None;
    (1..=3)
        .map(|place| {
            let mut body = record(candidate, place).body;
            body.previous =
                previous.unwrap_or_else(|| Body::root(candidate, body.sitting.as_ref()));
            let code = key().start_code("first_visits", candidate);
            let record = Record::close(body, None, Some(&code)).expect("finite");
            previous = Some(record.link);
            record
        })
        .collect()
}

fn against(replays: bool) -> Against<'static> {
    Against {
        library: &LIBRARY,
        assessments: vec![(ASSESSMENT.clone(), Some(key()))],
        replays,
    }
}

#[test]
fn a_file_of_records_is_sifted_with_its_truth_its_skills_and_its_seals() {
    let records = handed_over("c-1");
    let text: String = records.iter().map(|r| r.write().expect("finite")).collect();
    let sifted = against(true).file("c-1.jsonl", &text);
    assert_eq!(sifted.len(), 3);
    for (one, drawn) in sifted.iter().zip(drawn("c-1")) {
        assert_eq!(
            (one.difference.clone(), one.seal),
            (None, Some(SealState::Good))
        );
        let attempt = one.attempt.as_ref().expect("read");
        assert_eq!(attempt.skills, drawn.file.skills);
        let truth: Vec<String> = drawn.file.faults.iter().map(|f| f.id.clone()).collect();
        assert_eq!(attempt.truth, truth, "of the variant, not of the library");
        let names: Vec<String> = self::drawn("c-1").into_iter().map(|d| d.job).collect();
        assert_eq!(one.drawn, names, "opened or not");
        assert_eq!(one.engine, ENGINE);
        assert!(attempt.result.target_minutes.is_some_and(|m| m > 0.0));
    }
    let links: Vec<_> = sifted
        .iter()
        .rev()
        .map(|one| (one.links[1], one.links[2]))
        .collect();
    assert_eq!(order(sifted[0].links[0], &links), Ok(vec![2, 1, 0]));
    // Without the log run again a changed mark is found by its link alone.
    let edited = text.replacen("\"total\":", "\"total\":9", 1);
    assert!(
        against(false).file("c-1.jsonl", &edited)[0]
            .difference
            .is_some()
    );
    let unknown = Against {
        assessments: Vec::new(),
        ..against(true)
    };
    let told = unknown.file("c-1.jsonl", &text)[0].difference.clone();
    assert!(told.is_some_and(|why| why.contains("open its file too")));
}

#[test]
fn one_record_is_erased_from_a_file_and_the_row_of_the_others_is_whole() {
    let records = handed_over("c-1");
    let text: String = records.iter().map(|r| r.write().expect("finite")).collect();
    let (left, erased) = erase_lines("c-1.jsonl", &text, &BTreeSet::from([1])).expect("a record");
    assert_eq!(erased.len(), 1);
    let lines: Vec<&str> = left.lines().collect();
    assert_eq!(lines.len(), 3);
    assert!(lines[1].len() < 400 && !lines[1].contains("c-1"));
    let before: Vec<&str> = text.lines().collect();
    assert_eq!((lines[0], lines[2]), (before[0], before[2]), "to the byte");
    let sifted = against(true).file("c-1.jsonl", &left);
    assert_eq!(sifted[1], Sifted::erased(&erased[0].1));
    assert!(sifted[1].attempt.is_none());
    let links: Vec<_> = sifted
        .iter()
        .map(|one| (one.links[1], one.links[2]))
        .collect();
    assert_eq!(order(sifted[0].links[0], &links), Ok(vec![0, 1, 2]));
    for at in [0, 2] {
        assert_eq!(sifted[at].difference, None);
        assert_eq!(sifted[at].seal, Some(SealState::Good));
    }
    // What is no record is not passed over in silence.
    let edited = text.replacen("\"total\":", "\"total\" :", 1);
    assert_eq!(erase_lines("x", &edited, &BTreeSet::from([0])), Err(1));
}

#[test]
fn a_record_comes_whole_out_of_its_short_form_and_a_changed_one_does_not() {
    let own = &handed_over("c-1")[1];
    let letters = slip::to_letters(own).expect("finite");
    assert!(letters.len() < 2900, "fits a QR code: {}", letters.len());
    let (task, _) = ASSESSMENT.task(own, &LIBRARY).expect("drawn");
    let short = slip::read(&letters).expect("whole");
    assert_eq!(slip::whole(short.clone(), &task).as_ref(), Some(own));
    let mut other = short.clone();
    other.body.log.pop();
    assert_eq!(slip::whole(other, &task), None);
    assert_eq!(slip::read(&letters[1..]), None);
    // Run, it would never end.
    let mut endless = short;
    endless.body.log[0].tick = u64::MAX;
    let letters = slip::to_letters(&endless).expect("finite");
    assert_eq!(slip::read(&letters), None);
}
