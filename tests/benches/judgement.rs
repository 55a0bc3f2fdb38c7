//! Cases of the expert: belief for a finished job, the best next step, what a job should cost,
//! simulated apprentices.

use std::sync::Arc;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::Belief;
use tubwright::expert::Seen;
use tubwright::expert::advise;
use tubwright::expert::crowd::Kind;
use tubwright::expert::par;
use tubwright::scenario::job;
use tubwright::score::Crowd;

use crate::measure::Case;

fn scenario() -> Arc<Scenario> {
    job("hums_and_stands").expect("sound").expect("ships")
}

fn seen() -> Seen {
    let log = include_str!("../jobs/hums_and_stands.json");
    let log: Vec<Entry> = serde_json::from_str(log).expect("a log");
    let (job, _) = Job::replay(scenario(), 1, &log).expect("starts");
    Seen::of(&job).expect("replays")
}

/// All causes of the machine weighed against a whole log; the promise is for a browser.
pub fn belief() -> Case {
    let seen = seen();
    let name = "expert: belief over all causes, a job of 46 minutes";
    Case::new(name, Some((1.5, 1.5)), move || {
        Belief::of(&seen).expect("machines").history().len() as f64
    })
}

/// The best next step at the door, when everything is still possible.
pub fn next_step() -> Case {
    let mut kept = None;
    let name = "expert: best next step at the door";
    Case::new(name, Some((0.016, 0.016)), move || {
        let (belief, scenario) = kept.get_or_insert_with(|| {
            let seen = Seen::at_the_door(&scenario());
            (
                Belief::new(&seen.scenario).expect("machines"),
                seen.scenario,
            )
        });
        advise(belief, scenario).len() as f64
    })
}

/// A whole job worked by the expert; the budget of a library is one of these a job.
pub fn target() -> Case {
    Case::new("expert: the target cost of a job", None, move || {
        par(&scenario(), 1).expect("starts").cost
    })
}

/// Ten apprentices on one job; what can be known before they come is worked out once.
pub fn crowd() -> Case {
    let mut kept = None;
    let mut seed = 0;
    Case::new(
        "expert: ten simulated apprentices on a job",
        None,
        move || {
            let crowd = kept.get_or_insert_with(|| {
                Crowd::new(&scenario(), &mut |_, _| ()).expect("can be prepared")
            });
            let runs = (0..10).map(|_| {
                seed += 1;
                crowd.run(Kind::Novice, seed).expect("runs").cost
            });
            runs.sum()
        },
    )
}
