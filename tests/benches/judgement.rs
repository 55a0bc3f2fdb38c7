//! Cases of the expert: belief for a finished job, the best next step, what a job should cost,
//! simulated apprentices.

use std::sync::Arc;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::Belief;
use tubwright::expert::Plan;
use tubwright::expert::Seen;
use tubwright::expert::advise;
use tubwright::expert::crowd::Kind;
use tubwright::expert::par;
use tubwright::expert::theory::acts::Repair;
use tubwright::expert::theory::acts::Test;
use tubwright::expert::theory::known::Known;
use tubwright::expert::theory::look_ahead::LookAhead;
use tubwright::expert::theory::model::Model;
use tubwright::scenario::job;
use tubwright::score::Crowd;

use crate::measure::Case;

pub fn scenario() -> Arc<Scenario> {
    job("hums_and_stands").expect("sound").expect("ships")
}

pub fn seen() -> Seen {
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

/// The best next step of a large problem whose outcomes are known: every one of 300 tests, one step
/// ahead, over 120 causes. Drawn from a fixed seed, one repair a cause, four outcomes a test.
pub fn large_step() -> Case {
    let (n_causes, n_tests, n_outcomes) = (120, 300, 4);
    let mut rng = ChaCha8Rng::seed_from_u64(1);
    let mut drawn =
        |low: f64, high: f64| low + (high - low) * f64::from(rng.next_u32()) / f64::from(u32::MAX);
    let shares = |weights: Vec<f64>| {
        let sum: f64 = weights.iter().sum();
        weights.into_iter().map(move |weight| weight / sum)
    };
    let prior = shares((0..n_causes).map(|_| drawn(0.01, 1.0)).collect()).collect();
    let repairs = (0..n_causes)
        .map(|cause| Repair {
            cost: drawn(10.0, 150.0),
            cost_if_not: 0.0,
            place: None,
            after: (0..n_causes).map(|h| (h != cause).then_some(h)).collect(),
        })
        .collect();
    let tests = (0..n_tests)
        .map(|_| Test {
            cost: drawn(1.0, 10.0),
            place: None,
            n_outcomes,
            likelihood: (0..n_causes)
                .flat_map(|_| shares((0..n_outcomes).map(|_| drawn(0.001, 1.0).powi(4)).collect()))
                .collect(),
        })
        .collect();
    let model = Model::new(prior, repairs, tests).expect("a problem");
    let known = Known::at_start(&model);
    let name = "expert: best next step, 120 causes x 300 tests";
    Case::new(name, Some((0.016, 0.016)), move || {
        let best = LookAhead::new(&model, 1).best(&known);
        best.map_or(0.0, |(_, cost)| cost)
    })
}

/// The best next step at the door, when everything is still possible and what the likely machines
/// would show is known.
pub fn next_step() -> Case {
    let mut kept = None;
    let name = "expert: best next step at the door, outcomes known";
    Case::new(name, Some((0.016, 0.016)), move || {
        let plan = kept.get_or_insert_with(|| {
            let seen = Seen::at_the_door(&scenario());
            let belief = Belief::new(&seen.scenario).expect("machines");
            Plan::at(&belief, &seen.scenario).expect("a plan")
        });
        plan.candidates().len() as f64
    })
}

/// The same with every trial done first on every likely machine, its runs too.
pub fn next_step_from_nothing() -> Case {
    let mut kept = None;
    let name = "expert: best next step at the door, from nothing";
    Case::new(name, None, move || {
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
