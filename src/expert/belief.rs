//! Belief: the probability of each cause, after each step of a job.
//!
//! ```text
//! ln p(cause) = ln prior + ln P(words) + Σ_new lines ln P(line | machine with the cause)
//! ```
//! The job's log runs beside on one machine a cause. A line that was read or seen before in the same
//! state says nothing new, since what a part deviates by it deviates by again. For a fault that comes
//! and goes by chance see [`Period`].
//!
//! Of a machine that runs, lines are held against what it shows now and a little earlier or later:
//! part tolerances and degrees between those reckoned with move a program by seconds; all lines of a
//! start together weigh only so much (`run`). Degrees of likely faults are found more closely (`finer`).
//! Where the tap is first seen shut, all machines are begun anew with a shut tap.
//!
//! Limits: while a fault that comes and goes is away, its machine is taken to be in the sound one's
//! state or to stand idle. A machine far behind all others (25 in the logarithm) is no longer run; its
//! probability keeps standing.

use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Scenario;
use crate::expert::cause::Cause;
use crate::expert::cause::Variant;
use crate::expert::cause::causes;
use crate::expert::cause::variants;
use crate::expert::degrees;
use crate::expert::foreseen::Foreseen;
use crate::expert::foreseen::foreseen;
use crate::expert::fresh;
use crate::expert::fresh::Fresh;
use crate::expert::line::Earlier;
use crate::expert::line::Heard;
use crate::expert::line::Line;
use crate::expert::line::Past;
use crate::expert::line::begins_anew;
use crate::expert::line::is_start;
use crate::expert::line::runs;
use crate::expert::period::Away;
use crate::expert::run;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::expert::symptom::Symptoms;
use crate::expert::table;
use crate::expert::theory::information;
use crate::expert::told::Told;
use crate::expert::twin::Shown;
use crate::expert::twin::Twin;
use crate::expert::weigh;
use crate::machine::MachineError;

/// This far behind the likeliest a machine is no longer run.
const GIVEN_UP: f64 = 25.0;
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

/// Probabilities of the causes of one job.
#[derive(Clone, Debug)]
pub struct Belief {
    causes: Vec<Cause>,
    /// What machines are begun from.
    pub(super) fresh: Fresh,
    pub(super) lines: Vec<Line>,
    /// No more than this are run for degrees between those reckoned with at first.
    pub(super) most_lines: usize,
    told: Told,
    earlier: Vec<Earlier>,
    /// The scenario as every machine has it, and what was done in it so far.
    scenario: Arc<Scenario>,
    pub(super) steps: Vec<Step>,
    /// What each of these told.
    pub(super) past: Vec<Past>,
    /// The tap was looked at or moved.
    is_tap_known: bool,
    /// The sound machine that is never started: what a control does that has lost its supply.
    idle: Line,
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
        Self::begun(scenario, false)
    }

    /// The same where the customer has left the tap shut, whatever else is wrong.
    fn begun(scenario: &Arc<Scenario>, is_tap_shut: bool) -> Result<Self, MachineError> {
        let causes = causes(scenario);
        let fresh = Fresh::of(scenario, is_tap_shut)?;
        let shown = table::shown(&scenario.machine)?;
        let lines: Vec<Line> = variants(scenario, &causes)
            .into_iter()
            .map(|variant| {
                let ids = causes[variant.cause].0.iter();
                let shows = ids
                    .filter_map(|id| shown.get(id))
                    .fold(Symptoms::default(), |sum, s| sum.with(*s));
                fresh.line(variant, shows)
            })
            .collect::<Result<_, MachineError>>()?;
        let mut belief = Self {
            causes,
            fresh,
            idle: lines[0].clone(),
            most_lines: lines.len() + fresh::MOST,
            lines,
            told: Told::default(),
            earlier: Vec::new(),
            scenario: Arc::clone(scenario),
            steps: Vec::new(),
            past: Vec::new(),
            is_tap_known: is_tap_shut,
            starts: 1,
            history: Vec::new(),
        };
        let before = belief.probabilities();
        belief.told.hear(&scenario.customer.complaint);
        belief.start_run();
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
        if self.finds_tap_shut(step)
            && let Ok(mut again) = Self::begun(&self.scenario, true)
        {
            for step in &self.steps {
                again.take(step);
            }
            *self = again;
        }
        self.steps.push(step.clone());
        let before = self.probabilities();
        if begins_anew(&step.entry.action) {
            self.starts += 1;
            self.start_run();
        }
        let sound = self.lines[0].twin.job().machine();
        let is_running = sound.plugged() && sound.switched_on();
        let best = self.lines.iter().map(|l| self.log_weight(l));
        let best = best.fold(f64::NEG_INFINITY, f64::max);
        let told = self.told;
        let mut shown: Vec<Option<Shown>> = self
            .lines
            .iter_mut()
            .enumerate()
            .map(|(i, line)| {
                let is_alive = i == 0 || line.log_weight(told) > best - GIVEN_UP;
                is_alive.then(|| line.twin.follow(step))
            })
            .collect();
        degrees::widen(&self.lines, &mut shown, &step.notes);
        let mut unstarted = step.clone();
        if is_start(&step.entry.action) {
            unstarted.entry.action = Action::Note;
        }
        let idle = self.idle.twin.follow(&unstarted);
        let cause_of: Vec<usize> = self.lines.iter().map(|l| l.variant.cause).collect();
        let foreseen = foreseen(&shown, &self.variant_probabilities(), &cause_of);
        let mut past = Past::default();
        let mut is_unexplained = false;
        for (n, note) in step.notes.iter().enumerate() {
            if let NoteEntry::Answer { text, .. } = &note.entry {
                self.told.hear(text);
            }
            if weigh::is_weighed(note) {
                let (heard, is_strange) = self.weigh(n, note, &shown, (&idle, is_running));
                is_unexplained |= is_strange;
                past.heard.push(heard);
            }
        }
        let says = self.each(&shown, |line, shown| line.hands_and_device(step, shown));
        past.stretch = is_running.then(|| run::stretch(self.starts, runs(&mut self.lines), &says));
        // The sound machine is followed in any case: what it says counts where a fault is away.
        let idle_says = self.idle.hands_and_device(step, &idle);
        self.idle.run.joins(idle_says, past.stretch);
        past.away.idle = self.idle.run.counts(idle_says, past.stretch);
        for (i, (line, says)) in self.lines.iter_mut().zip(says).enumerate() {
            let Some(says) = says else { continue };
            let adds = line.feel(says, &past);
            if i == 0 {
                past.away.goes_on = adds;
            }
        }
        self.past.push(past);
        self.look_closer();
        self.record(self.history.len(), &before, (is_unexplained, foreseen));
    }

    /// A start begins: what is seen in it is weighed by what is believed now.
    fn start_run(&mut self) {
        let shares = self.variant_probabilities();
        for (line, share) in self.lines.iter_mut().zip(shares) {
            line.run.share = share;
        }
    }

    /// A first look at the tap shows it shut: all machines are begun anew with a shut tap.
    fn finds_tap_shut(&mut self, step: &Step) -> bool {
        if self.is_tap_known {
            return false;
        }
        let seen = step.notes.iter().filter_map(|note| match &note.entry {
            NoteEntry::Observation { place, seen, .. } if place == "tap" => Some(seen),
            _ => None,
        });
        let seen: Vec<_> = seen.flatten().map(|s| s.key.as_str()).collect();
        self.is_tap_known = !seen.is_empty() || matches!(step.entry.action, Action::Tap { .. });
        seen.contains(&"tap_shut")
    }

    /// Weighs one notebook line; true when no machine explains it.
    fn weigh(
        &mut self,
        n: usize,
        note: &Note,
        shown: &[Option<Shown>],
        (idle, is_running): (&Shown, bool),
    ) -> (Heard, bool) {
        let bench = self.lines[0].twin.bench_words();
        let is_same = |e: &&Earlier| e.bench == bench && weigh::repeats(note, &e.note);
        let same: Vec<(u64, Tick)> = self
            .earlier
            .iter()
            .filter(is_same)
            .map(|e| (e.start, e.note.tick))
            .collect();
        let is_repeat = !same.is_empty();
        let fit_away = Away {
            goes_on: shown[0].as_ref().map_or(0.0, |s| s.fit(n, note)),
            idle: idle.fit(n, note),
        };
        let mut heard = Heard {
            n,
            bench: bench.clone(),
            same,
            start: self.starts,
            fit_away,
            adds_away: Away::default(),
            stretch: None,
        };
        let told = self.told;
        let says = self.each(shown, |line, shown| line.says(&heard, note, shown));
        heard.stretch = is_running.then(|| run::stretch(self.starts, runs(&mut self.lines), &says));
        let idle_says = self.idle.says(&heard, note, idle);
        self.idle.run.joins(idle_says, heard.stretch);
        heard.adds_away.idle = self.idle.run.counts(idle_says, heard.stretch);
        let mut best = f64::NEG_INFINITY;
        for (i, (line, shown)) in self.lines.iter_mut().zip(shown).enumerate() {
            let (Some(shown), Some(says)) = (shown, says[i]) else {
                continue;
            };
            if line.log_weight(told).is_finite() {
                best = best.max(shown.fit(n, note));
            }
            let adds = line.hear(&heard, note, shown, says);
            if i == 0 {
                heard.adds_away.goes_on = adds;
            }
        }
        self.earlier.push(Earlier {
            bench,
            note: note.clone(),
            start: self.starts,
        });
        let is_strange = !is_repeat && best <= libm::log(1.5 * weigh::OUTLIER);
        (heard, is_strange)
    }

    /// Something of each machine that is still run.
    fn each(
        &mut self,
        shown: &[Option<Shown>],
        of: impl Fn(&mut Line, &Shown) -> f64,
    ) -> Vec<Option<f64>> {
        let pairs = self.lines.iter_mut().zip(shown);
        pairs
            .map(|(line, shown)| shown.as_ref().map(|shown| of(line, shown)))
            .collect()
    }

    fn record(&mut self, step: usize, before: &[f64], news: (bool, Option<Foreseen>)) {
        let after = self.probabilities();
        let gone =
            |(i, p): (usize, &f64)| (*p > RULED_OUT[0] && after[i] < RULED_OUT[1]).then_some(i);
        self.history.push(Evidence {
            step,
            bits: information::gain(before, &after),
            surprise_bits: surprise_bits(before, &after),
            ruled_out: before.iter().enumerate().filter_map(gone).collect(),
            is_unexplained: news.0,
            foreseen: news.1,
            after,
        });
    }

    pub(super) fn log_weight(&self, line: &Line) -> f64 {
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
        information::entropy(&self.probabilities())
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

fn surprise_bits(before: &[f64], after: &[f64]) -> f64 {
    let pairs = before.iter().zip(after).filter(|(_, b)| **b > 0.0);
    pairs
        .map(|(a, b)| b * libm::log2(b / a.max(f64::MIN_POSITIVE)))
        .sum()
}
