//! Letting time pass until something is so.

use crate::app::view::NoticeView;
use crate::app::view::Until;
use crate::bench::job::Job;
use crate::bench::kept;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::observe;
use crate::say;

/// Longest wait for something to change, s of bench time. Design choice.
const PATIENCE_S: u64 = 20 * 60;

/// A wait, and how it was when it began.
#[derive(Clone, Debug, PartialEq)]
pub struct Wait {
    until: Until,
    from: Tick,
    state: String,
    seen: (String, String),
}

/// How a wait has ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct End {
    /// How long it took, s.
    pub passed_s: u64,
    /// Nothing came of it.
    pub is_in_vain: bool,
}

impl Wait {
    /// Begins now.
    pub fn new(until: Until, job: &Job) -> Self {
        Self {
            until,
            from: job.tick(),
            state: job.machine().state_words(),
            seen: seen(job),
        }
    }

    /// How it has ended; none while it goes on.
    pub fn end(&self, job: &Job) -> Option<End> {
        let passed_s = (job.tick() - self.from) / TICKS_PER_S;
        let is_so = match self.until {
            Until::Minute => passed_s >= 60,
            Until::StateEnds => job.machine().state_words() != self.state,
            Until::Change => seen(job) != self.seen,
        };
        (is_so || passed_s >= PATIENCE_S || job.is_late()).then_some(End {
            passed_s,
            is_in_vain: !is_so,
        })
    }
}

impl End {
    /// For the screen reader.
    pub fn said(self, job: &Job) -> String {
        if self.is_in_vain {
            return say!("Nothing has changed in {n} minutes.", n = self.minutes());
        }
        let words = job.machine().state_words();
        let (n, state) = (self.passed_s, kept::doing(&words));
        if n == 1 {
            say!("After {n} second: {state}", n, state)
        } else {
            say!("After {n} seconds: {state}", n, state)
        }
    }

    /// The card for a wait of which nothing came.
    pub fn notice(self) -> NoticeView {
        NoticeView {
            title: say!("Nothing has changed").to_owned(),
            text: vec![say!("You have waited {n} minutes.", n = self.minutes())],
            ..NoticeView::default()
        }
    }

    fn minutes(self) -> u64 {
        self.passed_s / 60
    }
}

/// What a person standing there would notice: sound and display.
fn seen(job: &Job) -> (String, String) {
    (
        observe::caption(job.machine()),
        job.machine().display_words(),
    )
}
