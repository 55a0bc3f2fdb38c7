//! One cause's machine as the belief keeps it: what it shows, and how well all lines so far fit it.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::expert::cause::LOOSE_RATIO;
use crate::expert::cause::Variant;
use crate::expert::period;
use crate::expert::period::Away;
use crate::expert::period::Period;
use crate::expert::period::either;
use crate::expert::run::Run;
use crate::expert::run::Stretch;
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
    /// Log of how often such a machine is met as it was begun.
    pub begins: f64,
    /// Of all lines if the fault is always there.
    pub log_likelihood: f64,
    /// The same if it comes and goes.
    pub period: Option<Period>,
    pub was_seen: BTreeSet<String>,
    pub is_tripped_wrongly: bool,
    /// What the machine said while it was running.
    pub run: Run,
}

/// A line of the notebook, how the bench stood then, and the start it was written in.
#[derive(Clone, Debug)]
pub(super) struct Earlier {
    pub bench: String,
    pub note: Note,
    pub start: u64,
}

/// A notebook line as it is to every machine alike.
#[derive(Clone, Debug)]
pub(super) struct Heard {
    /// Its place in its step.
    pub n: usize,
    pub bench: String,
    /// Start and tick of the lines that said the same before.
    pub same: Vec<(u64, Tick)>,
    pub start: u64,
    /// How well it fits where a fault is away, and what it adds there.
    pub fit_away: Away,
    pub adds_away: Away,
    /// The stretch it belongs to, where the machine was running.
    pub stretch: Option<Stretch>,
}

/// What a step told, as far as it is the same for all machines: enough to hold another against it later.
#[derive(Clone, Debug, Default)]
pub(super) struct Past {
    pub heard: Vec<Heard>,
    /// What hands and protective device said where a fault is away.
    pub away: Away,
    /// The stretch that belongs to.
    pub stretch: Option<Stretch>,
}

impl Line {
    /// A machine before anything was done.
    pub fn fresh(variant: Variant, twin: Twin, shows: Symptoms, begins: f64) -> Self {
        Self {
            twin,
            period: variant.chance.or(variant.loose).map(|_| Period::default()),
            variant,
            shows,
            begins,
            log_likelihood: 0.0,
            was_seen: BTreeSet::new(),
            is_tripped_wrongly: false,
            run: Run::default(),
        }
    }

    /// Log of prior, words and lines together.
    pub fn log_weight(&self, told: Told) -> f64 {
        let if_steady = told.fits_onset(false) + self.log_likelihood;
        let if_loose =
            |period: Period, chance| told.fits_onset(true) + period.log_likelihood(chance);
        let seen = match (self.period, self.variant.chance, self.variant.loose) {
            (Some(period), Some(chance), _) => if_loose(period, chance),
            (Some(period), None, Some(loose)) => {
                either(LOOSE_RATIO, if_loose(period, loose), if_steady)
            }
            _ => if_steady,
        };
        libm::log(self.variant.prior) + self.begins + told.fits(self.shows) + seen
    }

    /// What a notebook line of a step says at which this machine has shown `shown`.
    pub fn says(&mut self, heard: &Heard, note: &Note, shown: &Shown) -> f64 {
        let is_repeat = !heard.same.is_empty();
        let fit = shown.fit(heard.n, note);
        self.news(&heard.bench, (heard.n, note), shown, is_repeat, fit)
    }

    /// Takes what a notebook line said; what it adds.
    pub fn hear(&mut self, heard: &Heard, note: &Note, shown: &Shown, says: f64) -> f64 {
        let adds = self.run.counts(says, heard.stretch);
        self.log_likelihood += adds;
        let chance = self.variant.chance.or(self.variant.loose);
        if let (Some(chance), Some(period)) = (chance, &mut self.period) {
            period.enter(heard.start, note.tick, chance);
            let draw = (heard.start, period::draw(note.tick, chance));
            let is_old =
                |(start, tick): &(u64, Tick)| (*start, period::draw(*tick, chance)) == draw;
            let (mut there, mut away) = (adds, heard.adds_away);
            if !heard.same.is_empty() && !heard.same.iter().any(is_old) {
                // Known lines, drawn anew: they tell only whether it was there again.
                let (fit, without) = (shown.fit(heard.n, note), heard.fit_away);
                let most = fit.max(without.goes_on).max(without.idle);
                there = fit - most;
                away.goes_on = without.goes_on - most;
                away.idle = without.idle - most;
            }
            period.see(there, away);
        }
        adds
    }

    /// Takes what hands and the protective device say of a step; what it adds.
    pub fn feel(&mut self, says: f64, past: &Past) -> f64 {
        let adds = self.run.counts(says, past.stretch);
        self.log_likelihood += adds;
        if let Some(period) = &mut self.period {
            period.see(adds, past.away);
        }
        adds
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

/// What each said while it was running.
pub(super) fn runs(lines: &mut [Line]) -> impl Iterator<Item = &mut Run> {
    lines.iter_mut().map(|line| &mut line.run)
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

#[cfg(test)]
mod counted;
