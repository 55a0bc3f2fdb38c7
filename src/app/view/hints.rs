//! Hints in the opening jobs: one at a time, gone once it is done.
//!
//! They follow the order of a job and what the log holds; nothing here knows what is wrong.

use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::job::Job;

/// Jobs up to this level give hints.
const HINTED_LEVEL: u8 = 1;

/// What to do next, in a job that teaches how a job goes.
pub fn hint(job: &Job) -> Option<&'static str> {
    let scenario = job.scenario();
    let wanted = scenario
        .rules
        .hints
        .unwrap_or(scenario.level <= HINTED_LEVEL);
    if !wanted || job.is_over() {
        return None;
    }
    let did = |is: fn(&Action) -> bool| job.log().iter().any(|entry| is(&entry.action));
    let put_right = |action: &Action| {
        matches!(
            action,
            Action::Work { .. } | Action::Tap { .. } | Action::PushTogether { .. }
        )
    };
    let last_right = job.log().iter().rposition(|entry| put_right(&entry.action));

    Some(if !did(|a| matches!(a, Action::Ask { .. })) {
        "Ask first: the questions are on the job card."
    } else if !did(|a| matches!(a, Action::Key { .. })) {
        "Let it do what the customer described: touch the on/off switch, wait until it is ready, touch start, and listen."
    } else if !did(|a| {
        matches!(
            a,
            Action::Sense {
                sense: Sense::Look,
                ..
            }
        )
    }) {
        "Look before you open anything: touch something in the picture, then choose “look”. What you see goes into the notebook."
    } else if last_right.is_none() {
        "Put right what you have found: take it in hand and choose what to do. Measuring and opening come only when looking does not settle it."
    } else if !job.machine().milestones().all() {
        "Prove it: let it wash, drain and spin. “Wait until” and the faster clock let time pass."
    } else {
        "Once it does what it should, choose Finish: say what was wrong, tick the lines that show it, tell the customer."
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;

    fn after(id: &str, acts: &[Action]) -> Option<&'static str> {
        let mut job = Job::new(library::find(id).expect("ships"), 7).expect("sound");
        for act in acts {
            job.act(act.clone());
        }
        hint(&job)
    }

    #[test]
    fn a_hint_is_gone_once_it_is_done() {
        let ask = Action::Ask {
            question: "when".to_owned(),
            again: false,
        };
        let first = after("no_water", &[]);
        assert!(first.is_some_and(|h| h.starts_with("Ask first")));
        assert_ne!(after("no_water", &[ask]), first);
    }

    #[test]
    fn only_the_opening_jobs_give_hints() {
        assert_eq!(after("hums_and_stands", &[]), None);
        assert_eq!(after("no_water", &[Action::Close]), None);
    }
}
