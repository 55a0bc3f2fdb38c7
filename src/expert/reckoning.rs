//! A job reckoned up: each decision of the log beside the best one at that moment, judged by what the
//! technician could know then and by what things cost.
//!
//! ```text
//! avoidable A = max(0, Q - V) + what was paid beyond the cheapest way
//! justified J = max(0, 1 - 2A/c)
//! ```
//! The log is cut into decisions that end at a reading, an observation, a work or the hand-over. Q is
//! the decision's cost with the cheapest way to it and the reference policy after it, V the reference
//! policy's, both from where the machine stood when the stretch began. What was taken off and put
//! back within one stretch is paid beyond the way. Talking, making safe, price and consent, and the
//! tests after the last repair are part of every job and never avoidable. The reference policy looks
//! two steps ahead on at most 15 causes and the rest; it is no claim of the best there is.

use std::collections::BTreeSet;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::hint;
use crate::bench::hint::Rung;
use crate::bench::job::Entry;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::WorkKind;
use crate::expert::belief::Belief;
use crate::expert::belief::Evidence;
use crate::expert::cause::Cause;
use crate::expert::cut::Cut;
use crate::expert::drill::Drills;
use crate::expert::drill::drills;
use crate::expert::judged::Decided;
use crate::expert::judged::Judged;
use crate::expert::moment::Moment;
use crate::expert::moment::Tried;
use crate::expert::moment::name_of;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::expert::trial::Stand;
use crate::expert::ways::stand_of;
use crate::expert::ways::way_min;
use crate::machine::MachineError;
use crate::machine::UNPLUGGED;

/// A step that moved what is known by less told nothing, bits.
const LEAST_BITS: f64 = 0.01;
/// The model is made anew once it knows more than this share only as the rest.
const MOST_REST: f64 = 0.1;

/// What a step told.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StepTold {
    /// Number of the step in the log, from 1; 0 for the complaint.
    pub step: usize,
    /// Uncertainty taken away, bits; negative where it has grown.
    pub bits: f64,
    /// Causes it ruled out.
    pub ruled_out: Vec<Cause>,
}

/// A job reckoned up.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Reckoning {
    /// Cost to go of the reference policy at the door, money unit.
    pub start: f64,
    /// Cost to go of repairing without any test, money unit.
    pub without_tests: f64,
    /// The decisions in order.
    pub decisions: Vec<Judged>,
    /// What each step told; steps that told nothing are left out.
    pub told: Vec<StepTold>,
}

impl Reckoning {
    /// Reckons up what was seen.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(seen: &Seen) -> Result<Self, MachineError> {
        Start::new(seen)?.reckon(seen, &mut |_| ()).map(|(r, _)| r)
    }

    /// Cost that other decisions would have avoided.
    pub fn avoidable(&self) -> f64 {
        self.decisions.iter().map(|d| d.avoidable).sum()
    }
}

fn told(belief: &Belief) -> Vec<StepTold> {
    let telling = |e: &&Evidence| e.surprise_bits >= LEAST_BITS;
    let each = belief.history().iter().filter(telling);
    each.map(|evidence| StepTold {
        step: evidence.step,
        bits: evidence.bits,
        ruled_out: evidence
            .ruled_out
            .iter()
            .map(|&i| belief.causes()[i].clone())
            .collect(),
    })
    .collect()
}

/// A job's beginning, the same for all who work it: what is likely at the door, the runs of its
/// machine, and the first moment. Made once, it reckons up any number of logs.
#[derive(Clone)]
pub struct Start {
    belief: Belief,
    drills: Drills,
    first: Option<Moment>,
}

impl Start {
    /// Of a job as it is seen.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn new(seen: &Seen) -> Result<Self, MachineError> {
        let belief = Belief::new(&seen.scenario)?;
        let drills = drills(belief.sound());
        let first = Moment::of(&belief, &seen.scenario, &drills, &BTreeSet::new());
        Ok(Self {
            belief,
            drills,
            first,
        })
    }

    /// Reckons up a log of this job; `told` hears the number of each step. Returns the belief as far
    /// as decisions go: what follows the last repair proves it and is not judged.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn reckon(
        &self,
        seen: &Seen,
        told: &mut dyn FnMut(usize),
    ) -> Result<(Reckoning, Belief), MachineError> {
        let mut walk = Walk {
            seen,
            door: self,
            belief: self.belief.clone(),
            moment: self.first.clone(),
            cut: Cut::default(),
            from: stand_of(self.belief.sound().job()),
            done: BTreeSet::new(),
            decisions: Vec::new(),
            settled: last_repair(&seen.steps).unwrap_or(usize::MAX),
        };
        let judged = last_work(&seen.steps).map_or(seen.steps.len(), |last| last + 1);
        for (index, step) in seen.steps.iter().take(judged).enumerate() {
            told(index);
            walk.take(index + 1, step);
        }
        let reckoning = Reckoning {
            start: self.first.as_ref().map_or(0.0, Moment::value),
            without_tests: self.first.as_ref().map_or(0.0, Moment::without_tests),
            decisions: walk.decisions,
            told: self::told(&walk.belief),
        };
        Ok((reckoning, walk.belief))
    }
}

/// A log being reckoned up.
struct Walk<'a> {
    seen: &'a Seen,
    door: &'a Start,
    belief: Belief,
    /// None when something was changed since.
    moment: Option<Moment>,
    cut: Cut,
    /// How the machine stood when the present stretch began.
    from: Stand,
    /// Trials that would show nothing new.
    done: BTreeSet<String>,
    decisions: Vec<Judged>,
    /// Place of the step after which nothing is looked for any more.
    settled: usize,
}

impl Walk<'_> {
    fn take(&mut self, number: usize, step: &Step) {
        let scenario = &self.seen.scenario;
        self.cut.take(step, scenario);
        match &step.entry.action {
            Action::Work { work, .. } if is_repair(scenario, work) => {
                let moment = self.now();
                self.decisions
                    .extend(moment.map(|m| m.work(work, &self.from, number)));
                self.belief.take(step);
                self.done.clear();
                self.begin();
            }
            Action::Close if !self.has_works() => {
                let moment = self.now();
                self.decisions
                    .extend(moment.map(|m| m.hand_over(&self.from, number)));
                self.belief.take(step);
            }
            Action::Hint => self.hint(number, step),
            _ if is_telling(step) && number <= self.settled => self.tried(number, step),
            _ => self.belief.take(step),
        }
    }

    fn tried(&mut self, number: usize, step: &Step) {
        let scenario = &self.seen.scenario;
        let before = self.belief.probabilities();
        if self
            .moment
            .as_ref()
            .is_none_or(|m| m.rest(&before) > MOST_REST)
        {
            self.moment = self.now();
        }
        let to = stand_of(self.belief.sound().job());
        self.belief.take(step);
        let rate = scenario.money.labour_per_min;
        if let Some(moment) = &self.moment {
            let foreseen = self.belief.history().last();
            let tried = Tried {
                before: &before,
                from: &self.from,
                to: &to,
                foreseen: foreseen.and_then(|e| e.foreseen.as_ref()),
                cost: rate * self.cut.own_ticks as f64 / (60 * TICKS_PER_S) as f64,
                way: rate * way_min(scenario, &self.from, &to),
                done: &self.done,
            };
            let mut judged = moment.tried(&tried, number);
            judged.avoidable += rate * self.cut.wasted_s / 60.0;
            self.decisions.push(judged);
        }
        self.done.extend(step.notes.iter().filter_map(name_of));
        self.begin_at(to);
    }

    /// A hint shows nothing of the machine: all it costs is avoidable.
    fn hint(&mut self, number: usize, step: &Step) {
        let log: Vec<Entry> = self.seen.steps[..number - 1]
            .iter()
            .map(|s| s.entry.clone())
            .collect();
        let ratio = hint::next(&log).map_or(0.0, Rung::cost_ratio);
        let start = self.door.first.as_ref().map_or(0.0, Moment::value);
        let judged = Judged::tried(number, ratio * start);
        self.decisions.push(Judged {
            decided: Decided::Hint,
            avoidable: judged.cost,
            better: self.now().as_ref().and_then(Moment::best),
            ..judged
        });
        self.belief.take(step);
    }

    /// The moment as it stands, made anew.
    fn now(&self) -> Option<Moment> {
        Moment::of(
            &self.belief,
            &self.seen.scenario,
            &self.door.drills,
            &self.done,
        )
    }

    fn begin(&mut self) {
        self.moment = None;
        self.begin_at(stand_of(self.belief.sound().job()));
    }

    fn begin_at(&mut self, from: Stand) {
        self.from = from;
        self.cut = self.cut.next();
    }

    fn has_works(&self) -> bool {
        let is_work = |d: &Judged| matches!(d.decided, Decided::Work(_));
        self.decisions.iter().any(is_work)
    }
}

/// The act shows something that could matter for the cause: no proof of being dead.
fn is_telling(step: &Step) -> bool {
    step.notes.iter().any(|note| match &note.entry {
        NoteEntry::Reading(reading) => {
            let is_proof = matches!(
                reading.mode,
                MeterMode::AcVolts | MeterMode::LowAcVolts | MeterMode::DcVolts
            ) && note.state == UNPLUGGED;
            !is_proof
        }
        NoteEntry::Gauge(_) | NoteEntry::Observation { .. } => true,
        _ => false,
    })
}

fn is_repair(scenario: &Scenario, work: &str) -> bool {
    scenario
        .workshop
        .work(work)
        .is_some_and(|w| w.kind != WorkKind::Instruct)
}

/// The last act that could have put the machine right, a work if there was one; what follows proves
/// it.
fn last_repair(steps: &[Step]) -> Option<usize> {
    let is_put_right = |step: &Step| {
        matches!(
            step.entry.action,
            Action::Tap { open: true } | Action::PushTogether { .. }
        )
    };
    last_work(steps).or_else(|| steps.iter().rposition(is_put_right))
}

fn last_work(steps: &[Step]) -> Option<usize> {
    let is_work = |step: &Step| matches!(step.entry.action, Action::Work { .. });
    steps.iter().rposition(is_work)
}
