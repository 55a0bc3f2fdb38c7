//! The threads that check: who does what, which text is next, and when a round is over.

use crate::app::worker::Question;
use crate::app::worker::Thread;

/// What a thread does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// It starts.
    Starting,
    /// Nothing.
    Resting,
    /// Its next text is being read.
    Reading(Task),
    /// It works on one.
    Working(Task),
}

/// A text to be looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Task {
    /// Which text.
    pub source: usize,
    /// Logs are run again.
    pub replays: bool,
}

/// What a thread is asked first, to learn that it has started.
pub fn hello() -> Question {
    Question::Sift {
        file: String::new(),
        text: String::new(),
        assessments: Vec::new(),
        replays: false,
    }
}

/// Which text is next: first every one is looked at, then those with records are run again.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rounds {
    next: [usize; 2],
    /// No log is run again any more.
    pub stopped: bool,
}

impl Rounds {
    /// From the beginning.
    pub fn restart(&mut self) {
        self.next = [0, 0];
    }

    /// The next text of `n`; `has` says which hold records.
    pub fn next(&mut self, n: usize, has: impl Fn(usize) -> bool) -> Option<Task> {
        if self.next[0] < n {
            self.next[0] += 1;
            return Some(Task {
                source: self.next[0] - 1,
                replays: false,
            });
        }
        if self.stopped {
            return None;
        }
        let source = (self.next[1]..n).find(|at| has(*at));
        self.next[1] = source.map_or(n, |at| at + 1);
        source.map(|source| Task {
            source,
            replays: true,
        })
    }

    /// How far the first round and the second are, as texts of `n`.
    pub fn done(&self, n: usize) -> [usize; 2] {
        self.next.map(|next| next.min(n))
    }
}

/// A thread.
pub struct Hand {
    /// It.
    pub thread: Thread,
    /// What it does.
    pub doing: Doing,
}

/// Some thread still looks at a text for the first time.
pub fn looks(hands: &[Hand]) -> bool {
    hands.iter().any(
        |hand| matches!(hand.doing, Doing::Reading(task) | Doing::Working(task) if !task.replays),
    )
}

/// Some thread does something.
pub fn works(hands: &[Hand]) -> bool {
    hands
        .iter()
        .any(|hand| !matches!(hand.doing, Doing::Resting))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_text_is_looked_at_and_those_with_records_are_run_again() {
        let mut rounds = Rounds::default();
        let mut seen = Vec::new();
        while let Some(task) = rounds.next(4, |at| at % 2 == 1) {
            seen.push((task.source, task.replays));
        }
        assert_eq!(
            seen,
            [
                (0, false),
                (1, false),
                (2, false),
                (3, false),
                (1, true),
                (3, true)
            ]
        );
        assert_eq!(
            rounds.next(5, |_| true),
            Some(Task {
                source: 4,
                replays: false
            })
        );
        rounds.stopped = true;
        assert_eq!(rounds.next(5, |_| true), None);
    }
}
