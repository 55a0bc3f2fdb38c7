//! One job, worked well and worked badly. What a good and a poor visit come to: common practice.

use std::sync::Arc;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::safety::Severity;
use tubwright::scenario;
use tubwright::score::assess;
use tubwright::score::debrief;

const GOOD: &str = include_str!("../jobs/no_spin_since_cousin.json");
const POOR: &str = include_str!("poor.json");

fn played(log: &str) -> Job {
    let job = scenario::job("no_spin_since_cousin");
    let scenario = job.expect("shipped files are sound").expect("it ships");
    let log: Vec<Entry> = serde_json::from_str(log).expect("a log is JSON");
    let (job, outcomes) = Job::replay(Arc::clone(&scenario), 1, &log).expect("starts");
    for (entry, outcome) in log.iter().zip(&outcomes) {
        assert_eq!(outcome.refusal, None, "{:?}", entry.action);
    }
    assert_eq!(job.log(), log, "the log is what was done");
    job
}

fn minutes(job: &Job) -> f64 {
    job.tick() as f64 / 600.0
}

fn points(job: &Job, part: &str) -> f64 {
    let report = assess(job).expect("can be marked");
    let found = report.parts.iter().find(|p| p.name == part);
    found.map(|p| p.points).expect("a part of the mark sheet")
}

#[test]
fn the_good_visit_takes_about_an_hour_no_part_and_breaks_no_rule() {
    let job = played(GOOD);
    assert!((60.0..72.0).contains(&minutes(&job)), "{}", minutes(&job));
    assert!(job.ledger().fitted.is_empty());
    assert!(job.safety().is_empty(), "{:?}", job.safety());
    let report = assess(&job).expect("can be marked");
    assert!(report.fixed && report.safe);
    assert!((points(&job, "safety") - 20.0).abs() < 1e-9);
    assert!((points(&job, "procedure") - 15.0).abs() < 1e-9);
    assert!(report.total > 97.0, "{} {:?}", report.total, report.parts);
}

#[test]
fn the_good_visit_knows_the_clutch_from_the_current_alone() {
    // 0.7 A with a free motor, 2.85 A with a held one. Common practice for the reasoning.
    let job = played(GOOD);
    let shown: Vec<String> = debrief(&job).expect("can be explained").shown_by;
    let first_number = |line: &String| -> Option<f64> {
        let (_, after) = line.split_once("clamp round mains cord conductor line: ")?;
        after.split_once(" A")?.0.parse().ok()
    };
    let clamp_a = shown.iter().find_map(first_number).unwrap_or_default();
    assert!((clamp_a - 0.651).abs() < 0.01, "{shown:?}");
    let hindsight = debrief(&job).expect("can be explained").hindsight;
    assert!(hindsight.is_empty(), "{hindsight:?}");
}

#[test]
fn the_poor_visit_takes_two_and_a_half_hours_and_three_parts() {
    let job = played(POOR);
    assert!((135.0..165.0).contains(&minutes(&job)), "{}", minutes(&job));
    assert_eq!(
        job.ledger().fitted,
        ["lid_switch", "control_board", "drain_motor"]
    );
    let critical: Vec<&str> = job
        .safety()
        .iter()
        .filter(|f| f.severity == Severity::Critical)
        .map(|f| f.rule)
        .collect();
    assert_eq!(critical, ["run_open_with_bridge", "left_with_bridge"]);
    let broken: Vec<&str> = job.safety().iter().map(|f| f.rule).collect();
    for rule in [
        "lid_bridged",
        "inlet_hose_tap_open",
        "tilted_alone",
        "floor_unprotected",
        "no_earth_test",
        "no_insulation_test",
        "no_functional_run",
        "not_proved_dead",
        "left_floor_wet",
    ] {
        assert!(broken.contains(&rule), "{rule} of {broken:?}");
    }
    // A marked floor and a slip, paid for.
    assert!(job.ledger().damage >= 45.0, "{}", job.ledger().damage);
}

#[test]
fn the_poor_visit_is_told_what_it_knew_what_a_look_would_have_cost_and_what_was_accident() {
    let told = debrief(&played(POOR)).expect("can be explained").hindsight;
    for part in ["lid switch", "control board", "drain motor"] {
        let known = told
            .iter()
            .any(|line| line.starts_with(part) && line.contains("already known"));
        let look = told
            .iter()
            .any(|line| line.contains("A look at the place") && line.contains(part));
        assert!(known && look, "{part}: {told:#?}");
    }
    assert!(
        told.iter()
            .any(|line| line.starts_with("Right by accident")),
        "{told:#?}"
    );
}

#[test]
fn the_marks_tell_the_two_apart_in_every_part_but_luck() {
    let (good, poor) = (played(GOOD), played(POOR));
    let total = |job: &Job| assess(job).expect("can be marked").total;
    assert!(total(&poor) < 39.0 && total(&good) > total(&poor) + 50.0);
    for part in ["safety", "diagnosis", "economy", "procedure", "evidence"] {
        assert!(points(&good, part) > points(&poor, part), "{part}");
    }
    assert!(
        assess(&poor).expect("can be marked").fixed,
        "it works, by accident"
    );
    assert!(poor.cost() > 3.0 * good.cost());
}
