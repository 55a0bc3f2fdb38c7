//! The targets stored with the jobs that ship are what the expert needs.

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

use rayon::prelude::*;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::StoredPar;
use tubwright::expert::expected_cost;
use tubwright::expert::stored_par;
use tubwright::scenario::jobs;

use crate::play::Worked;

/// One job on each machine.
const SAMPLE: [&str; 3] = [
    "washes_will_not_spin",
    "dial_stands_still",
    "silent_and_dry",
];
/// Seed of the jobs as worked for their targets.
const SEED: u64 = 1;

fn needed(scenario: &Arc<Scenario>) -> StoredPar {
    let worked = Worked::of(scenario, SEED);
    let expected = expected_cost(scenario).expect("runs");
    let rounded = |x: f64| (x * 100.0).round() / 100.0;
    StoredPar {
        cost: rounded(worked.report.cost),
        expected: rounded(expected),
        minutes: rounded(worked.report.minutes),
        steps: worked.job.log().len(),
        is_right: worked.is_right(),
    }
}

fn compare(all: &[Arc<Scenario>]) {
    let other: Vec<String> = all
        .par_iter()
        .filter_map(|scenario| {
            let (is, stored) = (needed(scenario), stored_par(&scenario.id));
            let id = &scenario.id;
            (stored != Some(is)).then(|| format!("{id}: {is:?} is stored as {stored:?}"))
        })
        .collect();
    assert!(other.is_empty(), "run `make pars`: {other:#?}");
}

#[test]
fn stored_targets_are_what_the_expert_needs() {
    let all = jobs().expect("sound");
    if std::env::var_os("TUBWRIGHT_WRITE").is_none() {
        let sample = |job: &&Arc<Scenario>| SAMPLE.contains(&job.id.as_str());
        let sample: Vec<_> = all.iter().filter(sample).cloned().collect();
        assert_eq!(sample.len(), SAMPLE.len());
        return compare(&sample);
    }
    let table: BTreeMap<String, StoredPar> = all
        .par_iter()
        .map(|scenario| (scenario.id.clone(), needed(scenario)))
        .collect();
    let text = serde_json::to_string(&table).expect("writes");
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/pars.json");
    std::fs::write(path, text.replace("},", "},\n") + "\n").expect("can be written");
}

#[test]
#[ignore = "minutes: every shipped job"]
fn all_stored_targets_are_what_the_expert_needs() {
    compare(&jobs().expect("sound"));
}

#[test]
fn of_the_stored_jobs_the_expert_puts_nine_in_ten_right_safely() {
    let all = jobs().expect("sound");
    let right = all
        .iter()
        .filter(|job| stored_par(&job.id).is_some_and(|par| par.is_right))
        .count();
    assert!(right * 10 >= all.len() * 9, "{right} of {}", all.len());
}
