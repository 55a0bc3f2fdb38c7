//! `check --fair`: jobs judged for fairness, with everything they could be mistaken for.

use crate::cli::failure::Failure;
use crate::machine::MachineError;
use crate::scenario;
use crate::score::Fairness;
use crate::score::FairnessLine;

/// What can be said of a job file; nothing of a file of another kind.
pub fn judged(file: &str, text: &str) -> Result<Vec<FairnessLine>, Failure> {
    let Ok(scenario) = scenario::job_from_text(file, file, text) else {
        return Ok(Vec::new());
    };
    let failed = |error: MachineError| Failure::Machine {
        what: file.to_owned(),
        error,
    };
    let mut judged = Fairness::new(&scenario).map_err(failed)?;
    while judged.compare_next().map_err(failed)? {}
    Ok(judged.lines(&scenario))
}
