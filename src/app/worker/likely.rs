//! Questions about what a log shows: the likely causes after each step, what decisions were worth,
//! and what a hint says.

use std::sync::Arc;

use crate::app::worker::messages::Answer;
use crate::app::worker::messages::Likely;
use crate::app::worker::messages::Worked;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::Belief;
use crate::expert::Reckoning;
use crate::expert::Seen;
use crate::expert::Start;
use crate::expert::hints;
use crate::machine::MachineError;

/// Causes told by name; the others are told together.
pub(super) const NAMED: usize = 7;

fn seen(scenario: &Arc<Scenario>, worked: &Worked) -> Result<Seen, MachineError> {
    let (job, _) = Job::replay(Arc::clone(scenario), worked.seed, &worked.log)?;
    Seen::of(&job)
}

pub(super) fn likely(
    scenario: &Arc<Scenario>,
    worked: &Worked,
    told: &mut dyn FnMut(Answer),
) -> Result<Answer, MachineError> {
    let seen = seen(scenario, worked)?;
    let mut belief = Belief::new(&seen.scenario)?;
    let of = seen.steps.len();
    for (done, step) in seen.steps.iter().enumerate() {
        told(Answer::Progress { done, of });
        belief.take(step);
    }
    told(Answer::Likely(summary(&belief)));
    Reckoning::of(&seen).map(Answer::Reckoned)
}

pub(super) fn reckoned(
    scenario: &Arc<Scenario>,
    worked: &Worked,
    told: &mut dyn FnMut(Answer),
) -> Result<Answer, MachineError> {
    let seen = seen(scenario, worked)?;
    let of = seen.steps.len();
    let (reckoning, _) = Start::new(&seen)?.reckon(&seen, &mut |done| {
        told(Answer::Progress { done, of });
    })?;
    Ok(Answer::Reckoned(reckoning))
}

pub(super) fn hint(
    scenario: &Arc<Scenario>,
    worked: &Worked,
    told: &mut dyn FnMut(Answer),
) -> Result<Answer, MachineError> {
    let seen = seen(scenario, worked)?;
    let hints = hints(&seen, &mut |done, of| told(Answer::Progress { done, of }))?;
    Ok(Answer::Hint {
        told: hints.to_vec(),
    })
}

/// The causes that were ever the likeliest few, the likeliest at the end first.
fn summary(belief: &Belief) -> Likely {
    let history = belief.history();
    let at_end = belief.probabilities();
    let height = |place: usize| {
        let highest = history.iter().map(|e| e.after[place]).fold(0.0, f64::max);
        at_end[place] + 0.01 * highest
    };
    let mut places: Vec<usize> = (0..at_end.len()).collect();
    places.sort_by(|a, b| height(*b).total_cmp(&height(*a)));
    places.truncate(NAMED);
    Likely {
        causes: places
            .iter()
            .map(|p| belief.causes()[*p].0.clone())
            .collect(),
        after: history
            .iter()
            .map(|e| places.iter().map(|p| e.after[*p]).collect())
            .collect(),
        bits: history.iter().map(|e| e.bits).collect(),
        ruled_out: history.iter().map(|e| e.ruled_out.len()).collect(),
    }
}
