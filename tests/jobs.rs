//! Every shipped job, worked by a careful technician's log in `tests/jobs`: nothing refused, no
//! safety rule broken, the machine put right, the stored target met.

use std::path::Path;
use std::sync::Arc;

use tubwright::bench::action::Action;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::scenario::jobs;
use tubwright::score::assess;
use tubwright::score::debrief;

const SEED: u64 = 1;

fn log_of(scenario: &Scenario) -> Vec<Entry> {
    let path =
        Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("tests/jobs/{}.json", scenario.id));
    let text = std::fs::read_to_string(&path)
        .unwrap_or_else(|e| panic!("{}: {e}: each job needs a log", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

fn shipped() -> Vec<Arc<Scenario>> {
    jobs().expect("shipped files are sound")
}

fn worked(scenario: &Arc<Scenario>) -> Job {
    let log = log_of(scenario);
    let (job, outcomes) = Job::replay(Arc::clone(scenario), SEED, &log).expect("starts");
    for (entry, outcome) in log.iter().zip(&outcomes) {
        assert_eq!(outcome.refusal, None, "{}: {:?}", scenario.id, entry.action);
    }
    assert_eq!(job.log(), log, "{}: the log is what was done", scenario.id);
    job
}

#[test]
fn every_job_can_be_put_right_safely() {
    for scenario in shipped() {
        let job = worked(&scenario);
        let broken: Vec<&str> = job.safety().iter().map(|f| f.rule).collect();
        assert!(broken.is_empty(), "{}: {broken:?}", scenario.id);
        let report = assess(&job).expect("can be marked");
        let lines: Vec<_> = report.function.lines.iter().filter(|l| !l.ok).collect();
        assert!(
            report.fixed,
            "{}: {lines:?} {:?}",
            scenario.id, report.function
        );
        assert!(
            report.total >= 90.0,
            "{}: {} {:?}",
            scenario.id,
            report.total,
            report.parts
        );
    }
}

#[test]
fn a_lid_switch_left_bridged_is_no_repair() {
    let jobs = shipped();
    let scenario = jobs
        .iter()
        .find(|s| s.id == "stops_and_beeps_before_spin")
        .expect("shipped");
    let mut log = log_of(scenario);
    for entry in &mut log {
        if matches!(entry.action, Action::Work { .. }) {
            entry.action = Action::BridgeLid { fitted: true };
        }
    }
    let (job, outcomes) = Job::replay(Arc::clone(scenario), SEED, &log).expect("starts");
    assert!(outcomes.iter().all(|o| o.refusal.is_none()));
    let broken: Vec<&str> = job.safety().iter().map(|f| f.rule).collect();
    assert!(broken.contains(&"lid_bridged"), "{broken:?}");
    assert!(broken.contains(&"left_with_bridge"), "{broken:?}");
    assert!(!assess(&job).expect("can be marked").fixed);
}

#[test]
fn no_job_is_right_before_anyone_has_touched_it() {
    for scenario in shipped() {
        let job = Job::new(Arc::clone(&scenario), SEED).expect("starts");
        let report = assess(&job).expect("can be marked");
        assert!(!report.fixed, "{} needs no repair", scenario.id);
        assert!(
            report.total < 30.0,
            "{}: nothing done gives {}",
            scenario.id,
            report.total
        );
    }
}

#[test]
fn stored_targets_are_what_the_log_costs() {
    for scenario in shipped() {
        let job = worked(&scenario);
        let minutes = job.tick() as f64 / 600.0;
        let stored = scenario.reference;
        let near = |a: f64, b: f64| (a - b).abs() <= 0.01 * b.max(1.0);
        assert!(
            near(stored.cost, job.cost()) && near(stored.minutes, minutes),
            "{}: stored {stored:?}, the log comes to {:.1} and {minutes:.1} min",
            scenario.id,
            job.cost(),
        );
    }
}

#[test]
fn replaying_a_log_gives_the_same_state_and_the_same_notebook() {
    for scenario in shipped().into_iter().take(6) {
        let (first, second) = (worked(&scenario), worked(&scenario));
        assert_eq!(
            first.machine().state_hash(),
            second.machine().state_hash(),
            "{}",
            scenario.id
        );
        assert_eq!(first.notebook(), second.notebook(), "{}", scenario.id);
    }
}

#[test]
fn the_debrief_names_the_cause_and_the_lines_that_showed_it() {
    for scenario in shipped() {
        let explained = debrief(&worked(&scenario)).expect("can be explained");
        assert_eq!(
            explained.causes.len(),
            scenario.faults.len(),
            "{}",
            scenario.id
        );
        assert!(
            !explained.shown_by.is_empty(),
            "{}: nothing showed it",
            scenario.id
        );
        assert_eq!(
            explained.steps.len(),
            log_of(&scenario).len(),
            "{}",
            scenario.id
        );
    }
}
