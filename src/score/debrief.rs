//! The debrief as data: every step of the log with what it cost, what it showed, and what a sound
//! machine would have shown.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::event::Event;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::job::Outcome;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::language::worded;
use crate::machine::MachineError;
use crate::say;
use crate::score::hindsight;

/// A reading further than this from the sound machine's counts as different. Meter and part
/// tolerance together, common practice.
const DIFFERENT_RATIO: f64 = 0.10;
/// The same for a frequency, which a hand meter reads to a few parts in ten thousand.
const DIFFERENT_HZ_RATIO: f64 = 0.005;

/// The same log on a sound machine of the same type on a sound site.
pub struct Twin {
    /// Lines of the twin by the number of the job's own line.
    lines: BTreeMap<u32, Note>,
}

impl Twin {
    /// Runs the job's log on a sound machine. Acts that are impossible there write nothing, so lines
    /// are paired act by act.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(job: &Job) -> Result<Self, MachineError> {
        let mut sound: Scenario = (**job.scenario()).clone();
        sound.faults.clear();
        sound.site.tap_open = true;
        let mut again = Job::new(Arc::clone(job.scenario()), job.seed())?;
        let mut twin = Job::new(Arc::new(sound), job.seed())?;
        let mut lines = BTreeMap::new();
        for entry in job.log() {
            again.advance_to(entry.tick);
            twin.advance_to(entry.tick);
            let is = again.act(entry.action.clone());
            let would = twin.act(entry.action.clone());
            let pairs = is.notes.iter().zip(&would.notes);
            lines.extend(pairs.filter_map(|(number, other)| {
                Some((*number, twin.notebook().get(*other as usize - 1)?.clone()))
            }));
        }
        Ok(Self { lines })
    }

    /// The line a sound machine would have given.
    pub fn line(&self, number: u32) -> Option<&Note> {
        self.lines.get(&number)
    }

    /// A sound machine would have given something else.
    pub fn differs(&self, note: &Note) -> bool {
        match (&note.entry, self.line(note.number).map(|n| &n.entry)) {
            (NoteEntry::Reading(is), Some(NoteEntry::Reading(sound))) => {
                !near(is.mode, is.value, sound.value)
            }
            (NoteEntry::Gauge(is), Some(NoteEntry::Gauge(sound))) => {
                !near_on_scale(is.gauge, is.value_si, sound.value_si)
            }
            (
                NoteEntry::Observation { seen: is, .. },
                Some(NoteEntry::Observation { seen, .. }),
            ) => {
                let keys = |list: &[crate::bench::notebook::Seen]| {
                    list.iter().map(|s| s.key.clone()).collect::<Vec<_>>()
                };
                keys(is) != keys(seen)
            }
            _ => false,
        }
    }
}

fn near(mode: MeterMode, is: Option<f64>, sound: Option<f64>) -> bool {
    match (is, sound) {
        (Some(a), Some(b)) => {
            let ratio = match mode {
                MeterMode::Frequency => DIFFERENT_HZ_RATIO,
                _ => DIFFERENT_RATIO,
            };
            let allowed = (ratio * a.abs().max(b.abs())).max(display::scatter_si(mode));
            (a - b).abs() <= allowed
        }
        (None, None) => true,
        _ => false,
    }
}

/// Both readings could be of the same thing: four standard deviations, or the usual share.
fn near_on_scale(gauge: Gauge, is: Option<f64>, sound: Option<f64>) -> bool {
    match (is, sound) {
        (Some(a), Some(b)) => {
            let zero = gauge.about().zero_si;
            let most = (a - zero).abs().max((b - zero).abs());
            let scatter = 4.0 * gauge.scatter_si(a).max(gauge.scatter_si(b));
            (a - b).abs() <= scatter.max(DIFFERENT_RATIO * most)
        }
        (None, None) => true,
        _ => false,
    }
}

/// One step of the timeline.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepView {
    /// Number, from 1: the place in the log.
    pub number: usize,
    /// When it began.
    pub tick: Tick,
    /// What was done, plain words.
    pub words: String,
    /// Cost so far when it was done, money unit.
    pub cost: f64,
    /// Notebook lines it wrote.
    pub notes: Vec<NoteView>,
    /// What happened to people and things.
    pub events: Vec<Event>,
}

/// A notebook line beside what a sound machine would have given.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NoteView {
    /// Number of the line.
    pub number: u32,
    /// What it says.
    pub is: String,
    /// What a sound machine would have given, when that is different.
    pub sound: Option<String>,
}

/// The explained replay.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Debrief {
    /// What was wrong, plain words, with the part's name.
    pub causes: Vec<String>,
    /// The timeline.
    pub steps: Vec<StepView>,
    /// Sentences: how the readings showed it.
    pub shown_by: Vec<String>,
    /// Sentences: what was already known, what a look would have cost, what came right by accident.
    pub hindsight: Vec<String>,
}

/// Explains a job, step by step.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn debrief(job: &Job) -> Result<Debrief, MachineError> {
    let twin = Twin::of(job)?;
    let mut steps = Vec::new();
    let mut shown_by = Vec::new();
    let mut again = Job::new(job.scenario().clone(), job.seed())?;
    for (index, entry) in job.log().iter().enumerate() {
        again.advance_to(entry.tick);
        let outcome = again.act(entry.action.clone());
        steps.push(step(&again, &twin, index, entry.tick, &outcome));
    }
    for note in job.notebook().iter().filter(|n| twin.differs(n)) {
        let sound = twin
            .line(note.number)
            .map(|n| words::note(n, &job.scenario().workshop));
        shown_by.push(say!(
            "Line {n}: {is}; a sound machine: {sound}",
            n = note.number,
            is = words::note(note, &job.scenario().workshop),
            sound = sound.unwrap_or_default(),
        ));
    }
    Ok(Debrief {
        causes: causes(job),
        hindsight: hindsight::sentences(job, &twin),
        steps,
        shown_by,
    })
}

fn step(again: &Job, twin: &Twin, index: usize, tick: Tick, outcome: &Outcome) -> StepView {
    let workshop = &again.scenario().workshop;
    let notes = outcome
        .notes
        .iter()
        .filter_map(|n| again.notebook().get(*n as usize - 1))
        .map(|note| NoteView {
            number: note.number,
            is: words::note(note, workshop),
            sound: twin
                .differs(note)
                .then(|| twin.line(note.number).map(|n| words::note(n, workshop)))
                .flatten(),
        })
        .collect();
    StepView {
        number: index + 1,
        tick,
        words: words::act(&again.log()[index].action, workshop),
        cost: again.cost(),
        notes,
        events: outcome.events.clone(),
    }
}

fn causes(job: &Job) -> Vec<String> {
    let scenario = job.scenario();
    scenario
        .faults
        .iter()
        .filter_map(|f| scenario.machine.fault(&f.id))
        .map(|fault| match scenario.workshop.part(&fault.part) {
            Some(part) => say!(
                "{label}: {value}",
                label = worded(&part.name),
                value = worded(&fault.what),
            ),
            None => worded(&fault.what).into_owned(),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_weak_capacitor_reads_differently_from_a_sound_one() {
        let near = |is, sound| near(MeterMode::Capacitance, Some(is), Some(sound));
        assert!(!near(4.0e-6, 10.0e-6) && !near(0.0, 10.0e-6));
        assert!(near(9.6e-6, 10.0e-6), "within tolerance");
    }

    #[test]
    fn a_gauge_is_read_by_its_scatter_and_the_usual_share() {
        let near = |is, sound| near_on_scale(Gauge::JugAndWatch, is, sound);
        assert!(near(None, None) && !near(Some(1e-4), None));
        assert!(near(Some(1.0e-4), Some(1.05e-4)));
        assert!(!near(Some(0.2e-4), Some(1.0e-4)));
        assert!(!near(Some(2.0e-4), Some(1.0e-4)));
    }

    #[test]
    fn the_scatter_of_meter_and_leads_is_no_difference() {
        assert!(near(MeterMode::Ohms, Some(0.1), Some(0.3)));
        assert!(near(MeterMode::AcVolts, Some(0.01), Some(0.4)));
        assert!(!near(MeterMode::Leakage, Some(0.9e-3), Some(0.18e-3)));
        assert!(
            !near(MeterMode::Ohms, None, Some(21.0)),
            "over range against a winding"
        );
    }
}
