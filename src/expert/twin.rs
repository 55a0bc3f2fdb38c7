//! One cause's machine, running beside the job: the same acts at the same ticks.

use std::sync::Arc;

use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::Scenario;
use crate::expert::cause::Variant;
use crate::expert::seen::Step;
use crate::expert::weigh;
use crate::machine::MachineError;

/// A machine with a cause, at the bench.
#[derive(Clone, Debug)]
pub struct Twin {
    job: Job,
}

/// What an act showed on a twin.
#[derive(Clone, Debug, Default)]
pub struct Shown {
    /// Hands could do it.
    pub was_possible: bool,
    /// Notebook lines it wrote there.
    pub notes: Vec<Note>,
    /// Standard deviation from part tolerances of each line that is a reading, in its SI unit.
    pub spreads_si: Vec<f64>,
    /// The house's protective device is open afterwards.
    pub is_tripped: bool,
}

impl Shown {
    /// Log likelihood of a line of the notebook, the `n`th of its step, on this machine.
    pub fn fit(&self, n: usize, note: &Note) -> f64 {
        let spread_si = self.spreads_si.get(n).copied().unwrap_or_default();
        weigh::note(note, self.notes.get(n), spread_si)
    }
}

impl Twin {
    /// A sound machine at the door.
    ///
    /// # Errors
    /// When the scenario cannot be started.
    pub fn sound(scenario: &Arc<Scenario>) -> Result<Self, MachineError> {
        Job::new(Arc::clone(scenario), 0).map(|job| Self { job })
    }

    /// The same with a cause, before anything was done.
    ///
    /// # Errors
    /// When the machine has no such fault.
    pub fn with(&self, variant: &Variant) -> Result<Self, MachineError> {
        let mut scenario = Scenario::clone(self.job.scenario());
        scenario.faults = variant.faults.clone();
        self.job
            .fresh_with(Arc::new(scenario))
            .map(|job| Self { job })
    }

    /// Does a step too.
    pub fn follow(&mut self, step: &Step) -> Shown {
        let before = self.job.notebook().len();
        let was_possible = self.job.follow(&step.checked(), step.ticks);
        let notes = self.job.notebook()[before..].to_vec();
        let spreads_si = notes
            .iter()
            .map(|note| match &note.entry {
                NoteEntry::Reading(reading) => self.job.spread_si(reading).unwrap_or_default(),
                _ => 0.0,
            })
            .collect();
        Shown {
            was_possible,
            notes,
            spreads_si,
            is_tripped: self.job.machine().supply_tripped(),
        }
    }

    /// How the bench stands, as far as hands decide it: what was done before in the same words
    /// would show the same again.
    pub fn bench_words(&self) -> String {
        let (bench, machine) = (self.job.bench(), self.job.machine());
        format!(
            "{} {:?} {} {} {}",
            bench.works.len(),
            bench.apart,
            machine.lid_open(),
            machine.plugged(),
            machine.tap_open()
        )
    }

    /// Everything its faults changed has been made good.
    pub fn is_mended(&self) -> bool {
        let scenario = self.job.scenario();
        let faults = scenario.faults.iter();
        let mut defs = faults.filter_map(|f| scenario.machine.fault(&f.id));
        defs.all(|def| {
            let targets = def.targets(&scenario.machine.wiring);
            let healed = &self.job.bench().healed;
            targets.iter().all(|target| healed.contains(target))
        })
    }

    /// The job on this machine.
    pub fn job(&self) -> &Job {
        &self.job
    }
}
