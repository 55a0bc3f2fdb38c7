//! A browser that dies at any moment of a job: opened anew from what was kept, the job goes on to the
//! very same end.

use std::sync::Arc;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use rayon::prelude::*;

use crate::app::session::Session;
use crate::app::store::SavedJob;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Scenario;
use crate::scenario;

/// Deaths in the quick tests; `TUBWRIGHT_RUNS` says how many instead.
const FEW: usize = 56;

macro_rules! logs {
    ($($id:literal)*) => { [$(($id, include_str!(concat!("../../../tests/jobs/", $id, ".json")))),*] };
}

/// Jobs on all machines, some with faults that come and go.
const LOGS: [(&str, &str); 7] = logs!(
    "no_water" "dial_stands_still" "silent_and_dry" "washes_will_not_spin"
    "no_heart_after_a_while" "rests_after_ten_minutes" "trips_and_old"
);

/// Everything a job came to.
#[derive(Debug, PartialEq)]
struct End {
    state: String,
    notebook: String,
    cost: f64,
}

impl End {
    fn of(job: &Job) -> Self {
        Self {
            state: job.machine().state_hash().to_string(),
            notebook: serde_json::to_string(job.notebook()).expect("notes are JSON"),
            cost: job.cost(),
        }
    }
}

/// The job as it is after the browser died: from the text that was kept, and nothing else.
fn opened_anew(scenario: &Arc<Scenario>, job: &Job) -> Job {
    let mut saved = SavedJob::fresh(&scenario.id, job.seed());
    saved.log = job.log().to_vec();
    saved.seen = job.tick();
    let text = saved.write().expect("finite");
    let kept = SavedJob::read(&text).expect("was just written");
    let (replayed, _) = Job::replay(Arc::clone(scenario), kept.seed, &kept.log).expect("starts");
    Session::new(replayed, kept.seen, kept.suspects)
        .live()
        .clone()
}

fn worked(scenario: &Arc<Scenario>, log: &[Entry], deaths: &[Tick]) -> End {
    let mut job = Job::new(Arc::clone(scenario), 1).expect("starts");
    let mut deaths = deaths.iter().copied().peekable();
    for entry in log {
        while let Some(tick) = deaths.next_if(|tick| *tick <= entry.tick) {
            job.advance_to(tick);
            job = opened_anew(scenario, &job);
        }
        job.advance_to(entry.tick);
        job.act(entry.action.clone());
    }
    End::of(&job)
}

#[test]
fn a_job_whose_browser_dies_at_random_moments_ends_in_the_very_same_state() {
    let runs = std::env::var("TUBWRIGHT_RUNS").ok();
    let runs = runs.and_then(|n| n.parse().ok()).unwrap_or(FEW);
    LOGS.par_iter().enumerate().for_each(|(at, (id, log))| {
        let scenario = scenario::job(id).expect("sound").expect("ships");
        let log: Vec<Entry> = serde_json::from_str(log).expect("a log is JSON");
        let last = log.last().map_or(1, |entry| entry.tick.max(1));
        let mut rng = ChaCha8Rng::seed_from_u64(at as u64);
        let mut deaths: Vec<Tick> = (0..runs.div_ceil(LOGS.len()))
            .map(|_| rng.next_u64() % last)
            .collect();
        deaths.sort_unstable();
        assert_eq!(
            worked(&scenario, &log, &deaths),
            worked(&scenario, &log, &[]),
            "{id}, deaths at {deaths:?}"
        );
    });
}
