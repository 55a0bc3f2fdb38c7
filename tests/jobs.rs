//! Every shipped job, worked by a careful technician's log in `tests/jobs`: nothing refused, no
//! safety rule broken, the machine put right, the stored target met.

use std::collections::BTreeSet;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::AtomicUsize;
use std::sync::atomic::Ordering;

use tubwright::bench::action::Action;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::machine::FaultClass;
use tubwright::machine::Onset;
use tubwright::scenario::jobs;
use tubwright::scenario::machine_files;
use tubwright::scenario::set_files;
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

/// Does the same with every job, on all cores; a failure names its job.
fn with_each_job(check: impl Fn(&Arc<Scenario>) + Sync) {
    let jobs = shipped();
    let next = AtomicUsize::new(0);
    let cores = std::thread::available_parallelism().map_or(2, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..cores {
            scope.spawn(|| {
                while let Some(scenario) = jobs.get(next.fetch_add(1, Ordering::Relaxed)) {
                    check(scenario);
                }
            });
        }
    });
}

#[test]
fn every_job_can_be_put_right_safely() {
    with_each_job(|scenario| {
        let job = worked(scenario);
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
    });
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
    with_each_job(|scenario| {
        let job = Job::new(Arc::clone(scenario), SEED).expect("starts");
        let report = assess(&job).expect("can be marked");
        let is_sound = scenario.faults.is_empty();
        assert_eq!(report.fixed, is_sound, "{} needs no repair", scenario.id);
        assert!(
            report.total < 30.0,
            "{}: nothing done gives {}",
            scenario.id,
            report.total
        );
    });
}

#[test]
fn stored_targets_are_what_the_log_costs() {
    with_each_job(|scenario| {
        let job = worked(scenario);
        let minutes = job.tick() as f64 / 600.0;
        let stored = scenario.reference;
        let near = |a: f64, b: f64| (a - b).abs() <= 0.01 * b.max(1.0);
        assert!(
            near(stored.cost, job.cost()) && near(stored.minutes, minutes),
            "{}: stored {stored:?}, the log comes to {:.1} and {minutes:.1} min",
            scenario.id,
            job.cost(),
        );
    });
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
    with_each_job(|scenario| {
        let explained = debrief(&worked(scenario)).expect("can be explained");
        assert_eq!(
            explained.causes.len(),
            scenario.faults.len(),
            "{}",
            scenario.id
        );
        assert_eq!(
            explained.shown_by.is_empty(),
            scenario.faults.is_empty(),
            "{}: what showed it",
            scenario.id
        );
        assert_eq!(
            explained.steps.len(),
            log_of(scenario).len(),
            "{}",
            scenario.id
        );
    });
}

/// A fault's cause in the file's words: part, wiring, house, or an earlier visit.
fn classes(scenario: &Scenario) -> Vec<FaultClass> {
    let known = |id: &str| scenario.machine.fault(id).expect("known").class;
    scenario.faults.iter().map(|f| known(&f.id)).collect()
}

#[test]
fn the_library_is_as_broad_as_the_trade() {
    let jobs = shipped();
    let count = |holds: &dyn Fn(&Scenario) -> bool| jobs.iter().filter(|s| holds(s)).count();
    let least = |what: &str, least: usize, holds: &dyn Fn(&Scenario) -> bool| {
        let n = count(holds);
        assert!(n >= least, "{what}: {n}, wanted {least}");
    };
    least("jobs", 60, &|_| true);
    for machine in machine_files().expect("sound") {
        least(&machine.id, 16, &|s| s.machine.id == machine.id);
    }
    for level in 1..=5 {
        least(&format!("level {level}"), 4, &|s| s.level == level);
    }
    least("two causes", 12, &|s| s.faults.len() > 1);
    least("outside the machine only", 8, &|s| {
        !s.faults.is_empty() && classes(s).iter().all(|c| *c == FaultClass::Site)
    });
    least("left wrong by an earlier visit", 8, &|s| {
        classes(s).contains(&FaultClass::Refit)
    });
    least("comes and goes", 6, &|s| {
        s.faults.iter().any(|f| {
            let listed = s.machine.fault(&f.id).expect("known").onset;
            f.onset.unwrap_or(listed) != Onset::Constant
        })
    });
    least("no fault", 4, &|s| {
        s.skills.iter().any(|skill| skill == "no part needed")
    });
    least("not worth mending", 3, &|s| {
        s.skills.iter().any(|skill| skill == "worth of a repair")
    });
}

#[test]
fn every_part_is_practised_somewhere() {
    let jobs = shipped();
    let practised: BTreeSet<&str> = jobs
        .iter()
        .flat_map(|s| s.faults.iter().filter_map(|f| s.machine.fault(&f.id)))
        .map(|fault| fault.part.as_str())
        .collect();
    for scenario in &jobs {
        for part in &scenario.workshop.parts {
            assert!(practised.contains(part.id.as_str()), "{}: no job", part.id);
        }
    }
}

#[test]
fn a_first_month_leads_from_the_opening_job_to_the_hardest() {
    let jobs = shipped();
    for set in set_files().expect("sound") {
        let level = |id: &String| jobs.iter().find(|s| s.id == *id).expect("ships").level;
        let levels: Vec<u8> = set.jobs.iter().map(level).collect();
        assert!(levels.is_sorted(), "{}: {levels:?}", set.title);
        assert_eq!(levels.last(), Some(&5), "{}", set.title);
    }
}

#[test]
fn the_six_jobs_that_fool_people_are_among_them() {
    let jobs = shipped();
    for cause in [
        "motor_lead_a_pin_open",
        "socket_earth_open",
        "air_hose_pinched",
        "air_hose_pinhole",
        "one_way_bearing_worn",
        "water_pressure_too_low",
    ] {
        let has = |s: &&Arc<Scenario>| s.faults.iter().any(|f| f.id == cause);
        assert!(jobs.iter().any(|s| has(&s)), "no job with {cause}");
    }
}
