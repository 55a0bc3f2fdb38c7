//! Marks stand: what jobs worked well and badly come to, to the last digit shown. A sealed record is
//! marked anew whenever it is checked, so a change here is a change for people who have been marked.
//! Whoever means it runs `make marks` and reads what has changed.

mod stored;

use std::fmt::Write;
use std::sync::Arc;

use rayon::prelude::*;
use tubwright::bench::action::Action;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::scenario;
use tubwright::score::Report;
use tubwright::score::assess;
use tubwright::score::debrief;

use crate::stored::assert_stands;

const SEED: u64 = 1;

/// Jobs that between them use every way to be marked: a part, a wire, a tap, two causes, none; the house,
/// a danger, a machine not worth mending, an offer declined, a second visit.
const JOBS: [&str; 12] = [
    "no_water",
    "washes_will_not_spin",
    "hums_and_stands",
    "goes_quiet_in_the_middle",
    "takes_its_time_stopping",
    "bites_bare_feet",
    "not_the_wash_that_smells",
    "rust_and_rumble",
    "trips_and_old",
    "weak_in_the_new_place",
    "third_valve_still_slow",
    "no_spin_since_cousin",
];

/// A way to work a job: the careful log, changed.
struct Way(&'static str, fn(&Scenario, &mut Vec<Entry>));

const WAYS: [Way; 11] = [
    Way("careful", |_, _| ()),
    Way("says something else first", |scenario, log| {
        let wrong = scenario.machine.faults.iter().find(|fault| {
            let is_truth = scenario.faults.iter().any(|f| f.id == fault.id);
            !is_truth && !scenario.faults.is_empty()
        });
        let causes = wrong.map(|fault| fault.id.clone()).into_iter().collect();
        let evidence = vec![1];
        insert_before(log, is_finding, Action::Finding { causes, evidence });
    }),
    Way("says something else", |scenario, log| {
        let wrong = scenario.machine.faults.last().map(|f| f.id.clone());
        for entry in log {
            if let Action::Finding { causes, .. } = &mut entry.action {
                *causes = wrong.clone().into_iter().collect();
            }
        }
    }),
    Way("says nothing", |_, log| {
        log.retain(|entry| !is_finding(&entry.action));
    }),
    Way("offers the first two lines", |_, log| {
        for entry in log {
            if let Action::Finding { evidence, .. } = &mut entry.action {
                *evidence = vec![1, 2];
            }
        }
    }),
    Way("asks for hints", |_, log| {
        insert_before(log, is_finding, Action::Hint);
        insert_before(log, is_finding, Action::Hint);
    }),
    Way("mends nothing", |_, log| {
        log.retain(|entry| {
            let action = &entry.action;
            !matches!(action, Action::Work { .. } | Action::PushTogether { .. })
        });
    }),
    Way("does all other work it can reach", |scenario, log| {
        let fitted: Vec<String> = works(log).cloned().collect();
        for work in &scenario.workshop.works {
            if !fitted.contains(&work.id) {
                let work = work.id.clone();
                let action = Action::Work { work, check: false };
                insert_before(log, |a| matches!(a, Action::Work { .. }), action);
            }
        }
    }),
    Way("measures nothing", |_, log| {
        log.retain(|entry| {
            let action = &entry.action;
            !matches!(
                action,
                Action::Meter { .. } | Action::Note | Action::Gauge { .. }
            )
        });
    }),
    Way("leaves it plugged in", |_, log| {
        log.retain(|entry| {
            let action = &entry.action;
            let is_isolating = matches!(
                action,
                Action::Plug { .. }
                    | Action::Secure
                    | Action::Discharge { .. }
                    | Action::Tap { .. }
            );
            !is_isolating
        });
    }),
    Way("leaves as soon as it has said", |_, log| {
        let said = log.iter().position(|entry| is_finding(&entry.action));
        let end = log.pop();
        log.truncate(said.map_or(1, |at| at + 1));
        log.extend(end);
    }),
];

fn is_finding(action: &Action) -> bool {
    matches!(action, Action::Finding { .. })
}

fn works(log: &[Entry]) -> impl Iterator<Item = &String> {
    log.iter().filter_map(|entry| match &entry.action {
        Action::Work { work, .. } => Some(work),
        _ => None,
    })
}

/// Puts an act in front of the first such one, at the same moment.
fn insert_before(log: &mut Vec<Entry>, is_it: fn(&Action) -> bool, action: Action) {
    if let Some(at) = log.iter().position(|entry| is_it(&entry.action)) {
        let tick = log[at].tick;
        log.insert(at, Entry { tick, action });
    }
}

/// A job worked in such a way; what is refused was not done.
fn worked(scenario: &Arc<Scenario>, way: &Way) -> Job {
    let path = format!(
        "{}/tests/jobs/{}.json",
        env!("CARGO_MANIFEST_DIR"),
        scenario.id
    );
    let text = std::fs::read_to_string(path).expect("each shipped job has a log");
    let mut log: Vec<Entry> = serde_json::from_str(&text).expect("a log");
    way.1(scenario, &mut log);
    let (job, _) = Job::replay(Arc::clone(scenario), SEED, &log).expect("starts");
    job
}

fn written(report: &Report, hindsight: &[String]) -> String {
    let mut text = String::new();
    let is = |is: bool, word: &'static str| if is { word } else { "-" };
    let _ = writeln!(
        text,
        "  {:.3} {:?} {} {} {}, cost {:.3} of {:.3}, {:.2} min",
        report.total,
        report.verdict,
        is(report.fixed, "fixed"),
        is(report.safe, "safe"),
        is(report.rightly_left, "rightly left"),
        report.cost,
        report.target_cost,
        report.minutes,
    );
    for part in &report.parts {
        let _ = writeln!(text, "  {} {:.3} of {}", part.name, part.points, part.of);
        for lost in &part.lost {
            let step = lost.step.map_or("-".to_owned(), |step| step.to_string());
            let _ = writeln!(text, "    {step} {:.3} {:?}", lost.points, lost.why);
        }
        for reason in &part.reasons {
            let _ = writeln!(text, "    \"{reason}\"");
        }
    }
    for sentence in hindsight {
        let _ = writeln!(text, "  afterwards: \"{sentence}\"");
    }
    text
}

#[test]
fn marks_of_known_jobs_stand() {
    let runs: Vec<(&str, &Way)> = JOBS
        .iter()
        .flat_map(|job| WAYS.iter().map(move |way| (*job, way)))
        .collect();
    let texts: Vec<String> = runs
        .par_iter()
        .map(|(id, way)| {
            let scenario = scenario::job(id).expect("shipped files are sound");
            let job = worked(&scenario.expect("it ships"), way);
            let report = assess(&job).expect("can be marked");
            for part in &report.parts {
                let lost: f64 = part.lost.iter().map(|lost| lost.points).sum();
                assert!(
                    (part.of - part.points - lost).abs() < 1e-9,
                    "{id}, {}: {} is missing of {}, and {lost} is explained",
                    way.0,
                    part.of - part.points,
                    part.name,
                );
            }
            let told = debrief(&job).expect("can be explained");
            let text = written(&report, &told.hindsight);
            format!("{id}, {}:\n{text}", way.0)
        })
        .collect();
    assert_stands("marks", &texts.concat());
}
