//! Belief: the probability of each cause, after each step of a job.
//!
//! ```text
//! ln p(cause) = ln prior + ln P(words) + Σ_new lines ln P(line | machine with the cause)
//! ```
//! The job's log runs beside on one machine a cause. A line that was read or seen before in the same
//! state says nothing new, since what a part deviates by it deviates by again. For a fault that comes
//! and goes by chance see [`Period`].
//!
//! Limits: while such a fault is away its machine is taken to be in the sound one's state. A machine
//! far behind all others (25 in the logarithm) is no longer run; its probability keeps standing.

use std::collections::BTreeSet;
use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::Scenario;
use crate::expert::cause::Cause;
use crate::expert::cause::LOOSE_RATIO;
use crate::expert::cause::Variant;
use crate::expert::cause::causes;
use crate::expert::cause::variants;
use crate::expert::foreseen::Foreseen;
use crate::expert::foreseen::foreseen;
use crate::expert::period::Period;
use crate::expert::period::either;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::expert::symptom::Symptoms;
use crate::expert::table;
use crate::expert::told::Told;
use crate::expert::twin::Shown;
use crate::expert::twin::Twin;
use crate::expert::weigh;
use crate::machine::MachineError;

/// This far behind the likeliest a machine is no longer run.
const GIVEN_UP: f64 = 25.0;
/// A protective device that opened, or did not, against what the machine would have made of it.
const TRIP_SLIP: f64 = 0.01;
/// A cause counts as ruled out by a step that brings it from above the first to below the second.
const RULED_OUT: [f64; 2] = [0.01, 0.002];

/// What one step did to the belief.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Evidence {
    /// Number of the step in the log, from 1; 0 for the complaint.
    pub step: usize,
    /// Probability of each cause afterwards, in the order of `Belief::causes`.
    pub after: Vec<f64>,
    /// Uncertainty taken away, bits; negative where it has grown.
    pub bits: f64,
    /// How far the belief moved, bits (Kullback-Leibler).
    pub surprise_bits: f64,
    /// Places of the causes it ruled out.
    pub ruled_out: Vec<usize>,
    /// It wrote a line that no cause explains: repeat it.
    pub is_unexplained: bool,
    /// What could have come of it; none when all causes would have shown the same.
    #[serde(skip)]
    pub foreseen: Option<Foreseen>,
}

/// One machine that runs beside.
#[derive(Clone, Debug)]
struct Line {
    variant: Variant,
    twin: Twin,
    shows: Symptoms,
    /// Of all lines if the fault is always there.
    log_likelihood: f64,
    /// The same if it comes and goes.
    period: Option<Period>,
    was_seen: BTreeSet<String>,
    is_tripped_wrongly: bool,
}

/// Probabilities of the causes of one job.
#[derive(Clone, Debug)]
pub struct Belief {
    causes: Vec<Cause>,
    lines: Vec<Line>,
    told: Told,
    earlier: Vec<(String, Note)>,
    /// How often the machine was started, stopped or plugged in or out, from 1.
    starts: u64,
    history: Vec<Evidence>,
}

impl Belief {
    /// Before anything was done: priors and complaint.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn new(scenario: &Arc<Scenario>) -> Result<Self, MachineError> {
        let causes = causes(scenario);
        let sound = Twin::sound(scenario)?;
        let shown = table::shown(&scenario.machine)?;
        let lines = variants(scenario, &causes)
            .into_iter()
            .map(|variant| {
                let ids = causes[variant.cause].0.iter();
                let shows = ids
                    .filter_map(|id| shown.get(id))
                    .fold(Symptoms::default(), |sum, s| sum.with(*s));
                Ok(Line {
                    twin: sound.with(&variant)?,
                    period: variant.chance.or(variant.loose).map(|_| Period::default()),
                    variant,
                    shows,
                    log_likelihood: 0.0,
                    was_seen: BTreeSet::new(),
                    is_tripped_wrongly: false,
                })
            })
            .collect::<Result<_, MachineError>>()?;
        let mut belief = Self {
            causes,
            lines,
            told: Told::default(),
            earlier: Vec::new(),
            starts: 1,
            history: Vec::new(),
        };
        let before = belief.probabilities();
        belief.told.hear(&scenario.customer.complaint);
        belief.record(0, &before, (false, None));
        Ok(belief)
    }

    /// The belief after all that was seen so far.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(seen: &Seen) -> Result<Self, MachineError> {
        let mut belief = Self::new(&seen.scenario)?;
        for step in &seen.steps {
            belief.take(step);
        }
        Ok(belief)
    }

    /// Takes the next step of the job.
    pub fn take(&mut self, step: &Step) {
        let before = self.probabilities();
        self.starts += u64::from(begins_anew(&step.entry.action));
        let best = self.lines.iter().map(|l| self.log_weight(l));
        let best = best.fold(f64::NEG_INFINITY, f64::max);
        let told = self.told;
        let shown: Vec<Option<Shown>> = self
            .lines
            .iter_mut()
            .enumerate()
            .map(|(i, line)| {
                let is_alive = i == 0 || line.log_weight(told) > best - GIVEN_UP;
                is_alive.then(|| line.twin.follow(step))
            })
            .collect();
        let cause_of: Vec<usize> = self.lines.iter().map(|l| l.variant.cause).collect();
        let foreseen = foreseen(&shown, &self.variant_probabilities(), &cause_of);
        let mut is_unexplained = false;
        for (n, note) in step.notes.iter().enumerate() {
            if let NoteEntry::Answer { text, .. } = &note.entry {
                self.told.hear(text);
            }
            is_unexplained |= self.weigh(n, note, &shown);
        }
        // The sound machine is followed in any case: what it says counts where a fault is away.
        let mut away = 0.0;
        for (i, (line, shown)) in self.lines.iter_mut().zip(&shown).enumerate() {
            let Some(shown) = shown else { continue };
            let there = line.hands_and_device(step, shown);
            if i == 0 {
                away = there;
            }
            line.log_likelihood += there;
            if let Some(period) = &mut line.period {
                period.see(there, away);
            }
        }
        self.record(self.history.len(), &before, (is_unexplained, foreseen));
    }

    /// Weighs one notebook line; true when no machine explains it.
    fn weigh(&mut self, n: usize, note: &Note, shown: &[Option<Shown>]) -> bool {
        if !matches!(
            note.entry,
            NoteEntry::Reading(_) | NoteEntry::Observation { .. }
        ) {
            return false;
        }
        let bench = self.lines[0].twin.bench_words();
        let is_repeat = self
            .earlier
            .iter()
            .any(|(words, earlier)| *words == bench && weigh::repeats(note, earlier));
        let fits = |shown: &Shown| {
            let spread_si = shown.spreads_si.get(n).copied().unwrap_or_default();
            weigh::note(note, shown.notes.get(n), spread_si)
        };
        let sound = shown[0].as_ref().map_or(0.0, fits);
        let mut best = f64::NEG_INFINITY;
        let (told, starts, mut sound_counts) = (self.told, self.starts, 0.0);
        for (i, (line, shown)) in self.lines.iter_mut().zip(shown).enumerate() {
            let Some(shown) = shown else { continue };
            let fit = fits(shown);
            if line.log_weight(told).is_finite() {
                best = best.max(fit);
            }
            let mut counts = line.news(&bench, note, shown.notes.get(n), is_repeat, fit);
            if i == 0 {
                sound_counts = counts;
            }
            line.log_likelihood += counts;
            let chance = line.variant.chance.or(line.variant.loose);
            if let (Some(chance), Some(period)) = (chance, &mut line.period) {
                if period.enter(starts, note.tick, chance) && is_repeat {
                    counts = fit - sound;
                }
                period.see(counts, sound_counts);
            }
        }
        self.earlier.push((bench, note.clone()));
        !is_repeat && best <= libm::log(1.5 * weigh::OUTLIER)
    }

    fn record(&mut self, step: usize, before: &[f64], news: (bool, Option<Foreseen>)) {
        let after = self.probabilities();
        let gone =
            |(i, p): (usize, &f64)| (*p > RULED_OUT[0] && after[i] < RULED_OUT[1]).then_some(i);
        self.history.push(Evidence {
            step,
            bits: entropy_bits(before) - entropy_bits(&after),
            surprise_bits: surprise_bits(before, &after),
            ruled_out: before.iter().enumerate().filter_map(gone).collect(),
            is_unexplained: news.0,
            foreseen: news.1,
            after,
        });
    }

    fn log_weight(&self, line: &Line) -> f64 {
        line.log_weight(self.told)
    }

    /// Probability of each variant, in their order.
    pub(super) fn variant_probabilities(&self) -> Vec<f64> {
        let weights: Vec<f64> = self.lines.iter().map(|l| self.log_weight(l)).collect();
        let best = weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut shares: Vec<f64> = weights.iter().map(|w| libm::exp(w - best)).collect();
        let sum: f64 = shares.iter().sum();
        for share in &mut shares {
            *share /= sum;
        }
        shares
    }

    /// Probability of each cause now, in the order of `causes`.
    pub fn probabilities(&self) -> Vec<f64> {
        let mut sums = vec![0.0; self.causes.len()];
        for (line, p) in self.lines.iter().zip(self.variant_probabilities()) {
            sums[line.variant.cause] += p;
        }
        sums
    }

    /// The causes reckoned with, the sound machine first.
    pub fn causes(&self) -> &[Cause] {
        &self.causes
    }
    /// What each step did: first the complaint, then the steps of the log.
    pub fn history(&self) -> &[Evidence] {
        &self.history
    }
    /// Uncertainty now, bits.
    pub fn entropy_bits(&self) -> f64 {
        entropy_bits(&self.probabilities())
    }
    /// The sound machine's twin.
    pub(super) fn sound(&self) -> &Twin {
        &self.lines[0].twin
    }
    /// The variants' machines with their probabilities, likeliest first.
    pub(super) fn ranked(&self) -> Vec<(f64, &Variant, &Twin)> {
        let shares = self.variant_probabilities();
        let mut all: Vec<_> = self
            .lines
            .iter()
            .zip(shares)
            .map(|(line, p)| (p, &line.variant, &line.twin))
            .collect();
        all.sort_by(|a, b| b.0.total_cmp(&a.0));
        all
    }
}

impl Line {
    fn log_weight(&self, told: Told) -> f64 {
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
    fn news(
        &mut self,
        bench: &str,
        is: &Note,
        expected: Option<&Note>,
        is_repeat: bool,
        fit: f64,
    ) -> f64 {
        let other = expected.map_or("", |note| note.state.as_str());
        let mut sum = 0.0;
        if self
            .was_seen
            .insert(format!("{bench} {} {other}", is.state))
        {
            sum += weigh::state(is, expected);
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
    fn hands_and_device(&mut self, step: &Step, shown: &Shown) -> f64 {
        let mut sum = if shown.was_possible {
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

/// What may make a fault that comes by chance come or go.
fn begins_anew(action: &Action) -> bool {
    matches!(
        action,
        Action::Plug { .. }
            | Action::Work { .. }
            | Action::Key {
                key: PanelKey::Start | PanelKey::Power
            }
    )
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

fn entropy_bits(p: &[f64]) -> f64 {
    -p.iter()
        .filter(|p| **p > 0.0)
        .map(|p| p * libm::log2(*p))
        .sum::<f64>()
}

fn surprise_bits(before: &[f64], after: &[f64]) -> f64 {
    let pairs = before.iter().zip(after).filter(|(_, b)| **b > 0.0);
    pairs
        .map(|(a, b)| b * libm::log2(b / a.max(f64::MIN_POSITIVE)))
        .sum()
}
