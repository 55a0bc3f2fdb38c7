//! `check --fair`: jobs judged for fairness, with everything they could be mistaken for, and worked by
//! the expert.

use std::sync::Arc;

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::cli::failure::Failure;
use crate::expert;
use crate::machine::MachineError;
use crate::scenario;
use crate::score::FairnessLine;
use crate::score::Judge;
use crate::score::solved;

/// Seed of the job as the expert works it.
const SEED: u64 = 1;

/// What can be said of a job file; nothing of a file of another kind.
pub fn judged(judge: &mut Judge, file: &str, text: &str) -> Result<Vec<FairnessLine>, Failure> {
    let Ok(scenario) = scenario::job_from_text(file, file, text) else {
        return Ok(Vec::new());
    };
    let failed = |error: MachineError| Failure::Machine {
        what: file.to_owned(),
        error,
    };
    let mut lines = judge.judge(&scenario, &mut |_, _| ()).map_err(failed)?;
    lines.push(by_expert(scenario).map_err(failed)?);
    Ok(lines)
}

fn by_expert(scenario: Scenario) -> Result<FairnessLine, MachineError> {
    let mut job = Job::new(Arc::new(scenario), SEED)?;
    expert::play(&mut job)?;
    solved(&job)
}
