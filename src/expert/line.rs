//! One cause's machine as the belief keeps it: what it shows, and how well all lines so far fit it.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::expert::cause::LOOSE_RATIO;
use crate::expert::cause::Variant;
use crate::expert::period::Period;
use crate::expert::period::either;
use crate::expert::seen::Step;
use crate::expert::symptom::Symptoms;
use crate::expert::told::Told;
use crate::expert::twin::Shown;
use crate::expert::twin::Twin;
use crate::expert::weigh;

/// A protective device that opened, or did not, against what the machine would have made of it.
const TRIP_SLIP: f64 = 0.01;
/// One machine that runs beside.
#[derive(Clone, Debug)]
pub(super) struct Line {
    pub variant: Variant,
    pub twin: Twin,
    pub shows: Symptoms,
    /// Of all lines if the fault is always there.
    pub log_likelihood: f64,
    /// The same if it comes and goes.
    pub period: Option<Period>,
    pub was_seen: BTreeSet<String>,
    pub is_tripped_wrongly: bool,
}

/// A line of the notebook, how the bench stood then, and the start it was written in.
#[derive(Clone, Debug)]
pub(super) struct Earlier {
    pub bench: String,
    pub note: Note,
    pub start: u64,
}

impl Line {
    /// Log of prior, words and lines together.
    pub fn log_weight(&self, told: Told) -> f64 {
        let seen = match (self.period, self.variant.chance, self.variant.loose) {
            (Some(period), Some(chance), _) => period.log_likelihood(chance),
            (Some(period), None, Some(loose)) => {
                let if_loose = period.log_likelihood(loose);
                either(LOOSE_RATIO, if_loose, self.log_likelihood)
            }
            _ => self.log_likelihood,
        };
        libm::log(self.variant.prior) + told.fits(self.shows) + seen
    }

    /// What a line adds on this machine: a reading when it is no repeat; something seen when this
    /// machine has not been held against it yet; the words for the machine's state likewise.
    pub fn news(
        &mut self,
        bench: &str,
        (n, is): (usize, &Note),
        shown: &Shown,
        is_repeat: bool,
        fit: f64,
    ) -> f64 {
        let expected = shown.notes.get(n);
        let other = expected.map_or("", |note| note.state.as_str());
        let mut sum = 0.0;
        if self
            .was_seen
            .insert(format!("{bench} {} {other}", is.state))
        {
            sum += shown.state_fit(n, is);
        }
        let is_new = match &is.entry {
            NoteEntry::Observation { place, .. } => {
                let (is, other) = (keys(Some(is)), keys(expected));
                self.was_seen
                    .insert(format!("{bench} {place} {is} {other}"))
            }
            _ => !is_repeat,
        };
        sum + if is_new { fit } else { 0.0 }
    }

    /// What it says that hands could do it, and that the house's protective device is open or not.
    pub fn hands_and_device(&mut self, step: &Step, shown: &Shown) -> f64 {
        // A tap can always be turned; one that is open already says nothing.
        let is_tap = matches!(step.entry.action, Action::Tap { .. });
        let mut sum = if shown.was_possible || is_tap {
            0.0
        } else {
            libm::log(weigh::OUTLIER)
        };
        let is_wrong = shown.is_tripped != step.is_tripped;
        if is_wrong && !self.is_tripped_wrongly {
            sum += libm::log(TRIP_SLIP);
        }
        self.is_tripped_wrongly = is_wrong;
        sum
    }
}

fn keys(note: Option<&Note>) -> String {
    match note.map(|n| &n.entry) {
        Some(NoteEntry::Observation { seen, .. }) => {
            let keys: Vec<&str> = seen.iter().map(|s| s.key.as_str()).collect();
            keys.join("+")
        }
        _ => String::new(),
    }
}

/// The program is started.
pub(super) fn is_start(action: &Action) -> bool {
    let key = PanelKey::Start;
    *action == Action::Key { key }
}

/// What may make a fault that comes by chance come or go.
pub(super) fn begins_anew(action: &Action) -> bool {
    matches!(
        action,
        Action::Plug { .. }
            | Action::Work { .. }
            | Action::Key {
                key: PanelKey::Start | PanelKey::Power
            }
    )
}
