//! The questions themselves: known to no browser, so that they are tested without one.

use std::sync::Arc;

use crate::app::library;
use crate::app::worker::messages::Answer;
use crate::app::worker::messages::Likely;
use crate::app::worker::messages::Question;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::Belief;
use crate::expert::Seen;
use crate::expert::crowd::Kind;
use crate::machine::MachineError;
use crate::score::Crowd;
use crate::score::Fared;
use crate::score::fared;

/// Causes told by name; the others are told together.
const NAMED: usize = 7;

/// Answers a question; `told` hears how far it is.
pub fn answer(question: Question, told: &mut dyn FnMut(Answer)) -> Answer {
    let (Question::Likely { job, .. } | Question::Crowd { job, .. }) = &question;
    let Some(scenario) = library::find(job) else {
        return Answer::Failed {
            why: format!("There is no job named “{job}”."),
        };
    };
    let answer = match question {
        Question::Likely { seed, log, .. } => {
            likely(&scenario, seed, &log, told).map(Answer::Likely)
        }
        Question::Crowd {
            kinds, runs, seed, ..
        } => crowd(&scenario, &kinds, runs, seed, told).map(|fared| Answer::Crowd { fared }),
    };
    answer.unwrap_or_else(|error| Answer::Failed {
        why: format!("The machine of this job cannot be set up: {error}"),
    })
}

fn crowd(
    scenario: &Arc<Scenario>,
    kinds: &[Kind],
    runs: u32,
    seed: u64,
    told: &mut dyn FnMut(Answer),
) -> Result<Vec<Fared>, MachineError> {
    let mut of_all = 0;
    let each = runs as usize * kinds.len();
    let crowd = Crowd::new(scenario, &mut |done, of| {
        of_all = of;
        let of = of + each;
        told(Answer::Progress { done, of });
    })?;
    let mut all = Vec::new();
    for (k, kind) in kinds.iter().enumerate() {
        let mut some = Vec::new();
        for n in 0..runs {
            let done = of_all + k * runs as usize + n as usize;
            told(Answer::Progress {
                done,
                of: of_all + each,
            });
            some.push(crowd.run(*kind, seed.wrapping_add(n.into()))?);
        }
        all.push(fared(*kind, &some));
    }
    Ok(all)
}

fn likely(
    scenario: &Arc<Scenario>,
    seed: u64,
    log: &[Entry],
    told: &mut dyn FnMut(Answer),
) -> Result<Likely, MachineError> {
    let (job, _) = Job::replay(Arc::clone(scenario), seed, log)?;
    let seen = Seen::of(&job)?;
    let mut belief = Belief::new(&seen.scenario)?;
    let of = seen.steps.len();
    for (done, step) in seen.steps.iter().enumerate() {
        told(Answer::Progress { done, of });
        belief.take(step);
    }
    Ok(summary(&belief))
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_untouched_job_is_as_likely_as_its_complaint_makes_it() {
        let question = Question::Likely {
            job: "no_water".to_owned(),
            seed: 7,
            log: Vec::new(),
        };
        let mut steps = 0;
        let Answer::Likely(likely) = answer(question, &mut |_| steps += 1) else {
            panic!("an answer");
        };
        assert_eq!((steps, likely.after.len()), (0, 1));
        assert_eq!(likely.causes.len(), NAMED);
        let sum: f64 = likely.after[0].iter().sum();
        assert!(sum > 0.1 && sum <= 1.0 + 1e-9, "{sum}");
    }

    #[test]
    fn a_job_that_does_not_ship_is_told_by_name() {
        let question = Question::Likely {
            job: "none_such".to_owned(),
            seed: 7,
            log: Vec::new(),
        };
        let Answer::Failed { why } = answer(question, &mut |_| ()) else {
            panic!("a refusal");
        };
        assert!(why.contains("none_such"), "{why}");
    }
}
