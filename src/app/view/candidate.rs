//! A candidate act at a thing, and the verb it becomes where the job allows it now.

use crate::app::format;
use crate::app::view::Order;
use crate::app::view::VerbView;
use crate::bench::action::Action;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::ledger::ticks_of;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;

/// Shorter acts are not worth a figure on their key, ticks: half a minute.
const WORTH_SAYING: Tick = 30 * TICKS_PER_S;

/// A candidate: words, hint, act, and how often the hand does it in one go.
pub struct Candidate {
    word: String,
    hint: String,
    act: Action,
    times: usize,
}

pub(super) fn candidate(
    word: impl Into<String>,
    hint: impl Into<String>,
    act: Action,
) -> Candidate {
    Candidate {
        word: word.into(),
        hint: hint.into(),
        act,
        times: 1,
    }
}

impl Candidate {
    /// The same, several times in one go.
    pub(super) fn times(self, times: usize) -> Candidate {
        Candidate { times, ..self }
    }
}

/// The verb, with what it takes; none where it makes no sense now.
pub(super) fn verb(job: &Job, candidate: Candidate) -> Option<VerbView> {
    let is_work = matches!(candidate.act, Action::Work { .. } | Action::TakeOff { .. });
    let blocked = match job.refusal(&candidate.act) {
        None => false,
        Some(Refusal::AlreadySo | Refusal::Unknown { .. } | Refusal::JobOver) => return None,
        Some(Refusal::InTheWay { .. }) if !is_work => return None,
        Some(_) => true,
    };
    let ticks = ticks_of(
        &candidate.act,
        &job.scenario().workshop,
        job.machine().water_kg(),
    );
    Some(VerbView {
        word: candidate.word,
        takes: if ticks < WORTH_SAYING {
            String::new()
        } else {
            format::duration(ticks)
        },
        hint: candidate.hint,
        blocked,
        order: Order::Do(vec![candidate.act; candidate.times]),
    })
}
