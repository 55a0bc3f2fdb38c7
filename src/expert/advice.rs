//! What to do next, and what a job should cost.

use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::ledger::ticks_of;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::scenario::Scenario;
use crate::bench::visit::Advice;
use crate::expert::belief::Belief;
use crate::expert::plan::Candidate;
use crate::expert::plan::Plan;
use crate::expert::play::play;
use crate::expert::seen::Seen;
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
    /// Cost to be expected from the complaint alone, whatever is wrong: see [`target`].
    pub expected_cost: f64,
    /// It could be handed over as working.
    pub is_handed_over: bool,
}

/// What a job should cost before anything of it is known, money unit: the call-out, the talk that
/// belongs to every job, and the reference policy's expected cost to go.
///
/// ```text
/// par = call-out + labour (two questions, price, statement, advice) + V at the door
/// ```
pub fn target(scenario: &Scenario, to_go: f64) -> f64 {
    let question = Action::Ask {
        question: String::new(),
        again: false,
    };
    let finding = Action::Finding {
        causes: Vec::new(),
        evidence: Vec::new(),
    };
    let advice = Action::Advise {
        advice: Advice::WhatWasDone,
    };
    let price = Action::Quote { price: 0.0 };
    let talk = [&question, &question, &price, &finding, &advice];
    let ticks = talk.map(|act| ticks_of(act, &scenario.workshop, 0.0));
    let minutes = ticks.iter().sum::<u64>() as f64 / (60 * TICKS_PER_S) as f64;
    scenario.money.call_out + scenario.money.labour_per_min * minutes + to_go
}

/// Every next step with its expected cost, cheapest first.
pub fn advise(belief: &Belief, scenario: &Scenario) -> Vec<Candidate> {
    Plan::at(belief, scenario)
        .map(|plan| plan.candidates())
        .unwrap_or_default()
}

/// What a job should cost before anything of it is known, money unit.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn expected_cost(scenario: &Scenario) -> Result<f64, MachineError> {
    let seen = Seen::at_the_door(scenario);
    let belief = Belief::new(&seen.scenario)?;
    let ahead = advise(&belief, &seen.scenario);
    Ok(target(scenario, ahead.first().map_or(0.0, |c| c.cost)))
}

/// Works a fresh job and tells what it took.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn par(scenario: &Arc<Scenario>, seed: u64) -> Result<Par, MachineError> {
    let mut job = Job::new(Arc::clone(scenario), seed)?;
    let expected_cost = expected_cost(scenario)?;
    let played = play(&mut job)?;
    Ok(Par {
        cost: job.cost(),
        minutes: job.tick() as f64 / 600.0,
        steps: job.log().len(),
        expected_cost,
        is_handed_over: played.is_handed_over,
    })
}
