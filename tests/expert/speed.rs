//! The expert answers while somebody waits: budgets of a release build on one core.

use std::sync::Arc;
use std::time::Instant;

use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::Belief;
use tubwright::expert::Reckoning;
use tubwright::expert::Seen;
use tubwright::expert::advise;
use tubwright::expert::par;
use tubwright::scenario::job;

use crate::belief::log_of;

/// Jobs on each machine with logs of half an hour and more.
const TIMED: [&str; 4] = [
    "hums_and_stands",
    "washes_will_not_spin",
    "dial_stands_still",
    "drips_and_slips",
];
/// Belief over all causes of a finished job, native, s; the promise for a browser is three times that.
const BELIEF_S: f64 = 0.5;
/// A whole job reckoned up, s.
const RECKONING_S: f64 = 3.0;
/// The best next step with what is believed at hand, s.
const NEXT_S: f64 = 0.25;

fn timed<T>(what: &str, work: impl FnOnce() -> T) -> (f64, T) {
    let began = Instant::now();
    let done = work();
    let took_s = began.elapsed().as_secs_f64();
    println!("{what:<40} {took_s:8.3} s");
    (took_s, done)
}

#[test]
#[ignore = "times mean something in a release build on a quiet machine"]
fn the_expert_answers_in_time() {
    let only = std::env::var("TUBWRIGHT_JOB").ok();
    for id in TIMED {
        if only.as_ref().is_some_and(|only| only != id) {
            continue;
        }
        let scenario: Arc<Scenario> = job(id).expect("sound").expect("ships");
        let log = log_of(&scenario).expect("a log");
        let (job, _) = Job::replay(Arc::clone(&scenario), 1, &log).expect("starts");
        let minutes = job.tick() as f64 / 600.0;
        let seen = Seen::of(&job).expect("replays");
        println!("{id}: {minutes:.0} min, {} acts", log.len());
        let (belief_s, belief) = timed("belief", || Belief::of(&seen).expect("runs"));
        let (next_s, _) = timed("next step at the end", || advise(&belief, &seen.scenario));
        let at_door = Belief::new(&seen.scenario).expect("runs");
        timed("next step at the door", || advise(&at_door, &seen.scenario));
        let (reckoning_s, _) = timed("reckoning", || Reckoning::of(&seen).expect("runs"));
        timed("target", || par(&scenario, 1).expect("plays"));
        assert!(belief_s < BELIEF_S, "{id}: belief {belief_s} s");
        assert!(next_s < NEXT_S, "{id}: next step {next_s} s");
        assert!(reckoning_s < RECKONING_S, "{id}: reckoning {reckoning_s} s");
    }
}
