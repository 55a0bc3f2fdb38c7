//! All the expert is told of a job: its log, what each act showed, and the scenario without its
//! faults. This is the only place of the expert that touches a job that knows its faults.

use std::sync::Arc;

use crate::bench::action::Action;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Scenario;
use crate::bench::working::Outcome;
use crate::machine::MachineError;

/// One act and what it showed.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The act and when it began.
    pub entry: Entry,
    /// What it took, ticks.
    pub ticks: Tick,
    /// Notebook lines it wrote.
    pub notes: Vec<Note>,
    /// The house's protective device is open afterwards.
    pub is_tripped: bool,
}

/// A job as its technician sees it.
#[derive(Clone, Debug)]
pub struct Seen {
    /// The call, without what is wrong.
    pub scenario: Arc<Scenario>,
    /// What was done and seen so far.
    pub steps: Vec<Step>,
}

impl Seen {
    /// What can be seen of a scenario before anything is done.
    pub fn at_the_door(scenario: &Scenario) -> Self {
        let mut blind = scenario.clone();
        blind.faults.clear();
        // Whether it is open is found by looking.
        blind.site.tap_open = true;
        Self {
            scenario: Arc::new(blind),
            steps: Vec::new(),
        }
    }

    /// What was seen in a job so far: its log run again.
    ///
    /// # Errors
    /// When the scenario itself cannot be started.
    pub fn of(job: &Job) -> Result<Self, MachineError> {
        let mut seen = Self::at_the_door(job.scenario());
        let mut again = Job::new(Arc::clone(job.scenario()), job.seed())?;
        for entry in job.log() {
            again.advance_to(entry.tick);
            let outcome = again.act(entry.action.clone());
            seen.see(&again, &outcome);
        }
        Ok(seen)
    }

    /// Takes the act just done; a refused one showed nothing.
    pub fn see(&mut self, job: &Job, outcome: &Outcome) {
        if outcome.refusal.is_some() {
            return;
        }
        let Some(entry) = job.log().last() else {
            return;
        };
        let notes = outcome
            .notes
            .iter()
            .filter_map(|n| job.notebook().get(*n as usize - 1).cloned())
            .collect();
        self.steps.push(Step {
            entry: entry.clone(),
            ticks: outcome.ticks,
            notes,
            is_tripped: job.machine().supply_tripped(),
        });
    }
}

impl Step {
    /// The act as it is followed on another machine: with its checks, since what chance leaves wrong
    /// there is not what it left wrong here.
    pub(super) fn checked(&self) -> Entry {
        let mut entry = self.entry.clone();
        if let Action::Refit { check, .. } | Action::Work { check, .. } = &mut entry.action {
            *check = true;
        }
        entry
    }
}
