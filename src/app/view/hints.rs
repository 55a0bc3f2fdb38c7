//! Hints: in the opening jobs one at a time, gone once it is done; in all practice those asked for.
//!
//! The first follow the order of a job and what the log holds; nothing here knows what is wrong.

use crate::app::asking::worked;
use crate::app::view::HelpView;
use crate::app::worker::Worked;
use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::hint as rungs;
use crate::bench::hint::Rung;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::records::measurement::tracing::MASTERED;

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

/// Hints that can be asked for.
pub fn help(job: &Job) -> HelpView {
    let log = job.log();
    let is_hint = |entry: &&Entry| entry.action == Action::Hint;
    let used = log.iter().rev().take_while(is_hint).count();
    HelpView {
        allowed: !job.is_over() && job.scenario().rules.hints != Some(false),
        next: rungs::next(log),
        used,
        skills: job.scenario().skills.clone(),
        worked: Worked {
            log: log[..log.len() - used].to_vec(),
            ..worked(job)
        },
    }
}

/// Rungs of the ladder that are there for someone who knows the job's skills so well, 0 to 1: who knows
/// them needs a question at most. Design choice.
pub fn rungs_for(known: f64) -> usize {
    match known {
        k if k >= MASTERED => 1,
        k if k >= 0.8 => 2,
        k if k >= 0.6 => 3,
        _ => Rung::ALL.len(),
    }
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
    fn hints_fade_as_the_skills_become_known() {
        let rungs = [0.3, 0.7, 0.9, 0.97].map(rungs_for);
        assert_eq!(rungs, [4, 3, 2, 1]);
    }

    #[test]
    fn a_hint_is_asked_about_the_job_without_the_hints_before_it() {
        let mut job = Job::new(library::find("no_water").expect("ships"), 7).expect("sound");
        job.act(Action::Lid { open: true });
        job.act(Action::Hint);
        let help = help(&job);
        assert_eq!((help.used, help.worked.log.len()), (1, 1));
        assert_eq!(help.next, Some(Rung::Where));
    }

    #[test]
    fn only_the_opening_jobs_give_hints() {
        assert_eq!(after("hums_and_stands", &[]), None);
        assert_eq!(after("no_water", &[Action::Close]), None);
    }
}
