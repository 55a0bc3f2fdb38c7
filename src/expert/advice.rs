//! What to do next, and what a job should cost.

use std::collections::BTreeSet;
use std::sync::Arc;

use serde::Serialize;

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::belief::Belief;
use crate::expert::drill::drills;
use crate::expert::plan::Candidate;
use crate::expert::plan::Plan;
use crate::expert::play::play;
use crate::machine::MachineError;

/// What the expert needs for a job.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Par {
    /// Cost of the job as the expert works it, money unit.
    pub cost: f64,
    /// Time on site, min.
    pub minutes: f64,
    /// Acts.
    pub steps: usize,
    /// Cost to be expected from the complaint alone, whatever is wrong, with the call-out.
    pub expected_cost: f64,
    /// It could be handed over as working.
    pub is_handed_over: bool,
}

/// Every next step with its expected cost, cheapest first.
pub fn advise(belief: &Belief, scenario: &Scenario) -> Vec<Candidate> {
    let drills = drills(belief.sound());
    Plan::new(belief, scenario, &drills, &BTreeSet::new())
        .map(|plan| plan.candidates())
        .unwrap_or_default()
}

/// Works a fresh job and tells what it took.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn par(scenario: &Arc<Scenario>, seed: u64) -> Result<Par, MachineError> {
    let mut job = Job::new(Arc::clone(scenario), seed)?;
    let seen = crate::expert::seen::Seen::at_the_door(scenario);
    let first = Belief::new(&seen.scenario)?;
    let ahead = advise(&first, &seen.scenario);
    let played = play(&mut job)?;
    Ok(Par {
        cost: job.cost(),
        minutes: job.tick() as f64 / 600.0,
        steps: job.log().len(),
        expected_cost: scenario.money.call_out + ahead.first().map_or(0.0, |c| c.cost),
        is_handed_over: played.is_handed_over,
    })
}
