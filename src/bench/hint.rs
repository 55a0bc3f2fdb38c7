//! Hints in practice: a ladder of four that begins anew with every other act. Each is dearer than the
//! one before it, and all of them count as cost that could have been avoided.
//!
//! The log keeps that a hint was asked for; what it says follows from the log and is kept nowhere.

use crate::bench::action::Action;
use crate::bench::event::Refusal;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::say;
use crate::text;

/// A rung of the ladder.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rung {
    /// A question back.
    Question,
    /// Where to look.
    Where,
    /// Which reading, look or work.
    Which,
    /// What it would mean.
    Meaning,
}

impl Rung {
    /// From the first to the last.
    pub const ALL: [Self; 4] = [Self::Question, Self::Where, Self::Which, Self::Meaning];

    /// What it costs, share of what the job should cost. Design choice.
    pub fn cost_ratio(self) -> f64 {
        match self {
            Self::Question => 0.05,
            Self::Where => 0.10,
            Self::Which => 0.15,
            Self::Meaning => 0.40,
        }
    }

    /// What it gives, plain words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Question => say!("a question back"),
            Self::Where => say!("where to look"),
            Self::Which => say!("which step"),
            Self::Meaning => say!("what it would mean"),
        }
    }
}

/// The rung that the next hint after this log stands on; none once all are used up.
pub fn next(log: &[Entry]) -> Option<Rung> {
    let is_hint = |entry: &&Entry| entry.action == Action::Hint;
    let n = log.iter().rev().take_while(is_hint).count();
    Rung::ALL.get(n).copied()
}

/// Every hint of a log: its step, from 1, and its rung.
pub fn of(log: &[Entry]) -> Vec<(usize, Rung)> {
    let hints = log.iter().enumerate();
    hints
        .filter(|(_, entry)| entry.action == Action::Hint)
        .filter_map(|(at, _)| Some((at + 1, next(&log[..at])?)))
        .collect()
}

/// Why there is no hint now.
pub(in crate::bench) fn cannot(job: &Job) -> Option<Refusal> {
    let why = if job.scenario().rules.hints == Some(false) {
        text!("this job gives no hints")
    } else if next(job.log()).is_none() {
        text!("there is no further hint until something else is done")
    } else {
        return None;
    };
    Some(Refusal::NotNow {
        why: why.to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn log(acts: &[Action]) -> Vec<Entry> {
        let entry = |action: &Action| Entry {
            tick: 0,
            action: action.clone(),
        };
        acts.iter().map(entry).collect()
    }

    #[test]
    fn the_ladder_ends_and_begins_anew_with_another_act() {
        let hint = Action::Hint;
        let lid = Action::Lid { open: true };
        let four = vec![hint.clone(); 4];
        assert_eq!(next(&log(&four)), None);
        assert_eq!(next(&log(&four[..3])), Some(Rung::Meaning));
        let again = [&four[..], &[lid, hint]].concat();
        assert_eq!(next(&log(&again)), Some(Rung::Where));
        let last = of(&log(&again)).last().copied();
        assert_eq!(last, Some((6, Rung::Question)));
    }

    #[test]
    fn each_hint_is_dearer_than_the_one_before() {
        let costs = Rung::ALL.map(Rung::cost_ratio);
        assert!(costs.is_sorted_by(|a, b| a < b));
    }
}
