//! Working on a job: how it begins, one act after the other, and its log run again.

use std::sync::Arc;

use crate::bench::action::Action;
use crate::bench::acts;
use crate::bench::around::Around;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::isolation::Isolation;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::ledger::Ledger;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Scenario;
use crate::bench::state::Bench;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Setup;

/// What came of an act.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outcome {
    /// Time it took, ticks.
    pub ticks: Tick,
    /// Why it could not be done, if it could not. Nothing was logged then.
    pub refusal: Option<Refusal>,
    /// What happened to people and things.
    pub events: Vec<Event>,
    /// Numbers of the notebook lines written.
    pub notes: Vec<u32>,
}

impl Job {
    /// Starts a job: the technician has just rung the bell.
    ///
    /// # Errors
    /// When the scenario names a fault or parameter that the machine does not have.
    pub fn new(scenario: Arc<Scenario>, seed: u64) -> Result<Self, MachineError> {
        let setup = Setup {
            params: scenario.site.params.clone(),
            values: acts::supply_values(&scenario),
            ..Setup::of_faults(&scenario.faults, seed)
        };
        let mut machine = Machine::new(&scenario.machine, setup)?;
        acts::arrive(&mut machine, &scenario)?;
        let bench = Bench {
            around: Around::new(scenario.van.clone(), scenario.visit.instrument),
            hose_attached: true,
            isolation: Isolation {
                switched_off: true,
                tap_shut: !scenario.site.tap_open,
                ..Isolation::default()
            },
            ..Bench::default()
        };
        Ok(Self {
            scenario,
            seed,
            is_nominal: false,
            log: Vec::new(),
            machine,
            bench,
            notebook: Vec::new(),
            ledger: Ledger::default(),
            safety: Vec::new(),
        })
    }

    /// Runs a log from the beginning. Entries that cannot be done on this machine are kept in the
    /// outcome list with their refusal; they take no time.
    ///
    /// # Errors
    /// When the scenario itself cannot be started.
    pub fn replay(
        scenario: Arc<Scenario>,
        seed: u64,
        log: &[Entry],
    ) -> Result<(Self, Vec<Outcome>), MachineError> {
        let mut job = Self::new(scenario, seed)?;
        let outcomes = log
            .iter()
            .map(|entry| {
                job.advance_to(entry.tick);
                job.act(entry.action.clone())
            })
            .collect();
        Ok((job, outcomes))
    }

    /// Why hands cannot do this now; `None` when they can. Changes nothing.
    pub fn refusal(&self, action: &Action) -> Option<Refusal> {
        acts::refusal(self, action)
    }

    /// Does one act now. A refused act changes nothing and is not logged.
    pub fn act(&mut self, action: Action) -> Outcome {
        if let Some(refusal) = acts::refusal(self, &action) {
            return Outcome {
                refusal: Some(refusal),
                ..Outcome::default()
            };
        }
        let start = self.tick();
        let first_note = self.notebook.len();
        self.log.push(Entry {
            tick: start,
            action: action.clone(),
        });
        let ticks = acts::ticks(self, &action);
        let mut events = acts::burn(self);
        events.extend(acts::perform(self, &action));
        self.advance(ticks);
        events.extend(acts::burn(self));
        events.extend(acts::finish(self, &action));
        let notes = self.notebook[first_note..]
            .iter()
            .map(|n| n.number)
            .collect();
        Outcome {
            ticks,
            refusal: None,
            events,
            notes,
        }
    }

    /// Does what was done on another machine, in the time it took there, whether or not hands could
    /// have done it on this one; says whether they could. No rules are held against it.
    pub fn follow(&mut self, entry: &Entry, ticks: Tick) -> bool {
        self.advance_to(entry.tick);
        let can = match acts::refusal(self, &entry.action) {
            None => true,
            Some(Refusal::JobOver | Refusal::Unknown { .. }) => return false,
            Some(_) => false,
        };
        self.log.push(entry.clone());
        acts::change(self, &entry.action);
        self.advance_to(entry.tick + ticks);
        acts::finish(self, &entry.action);
        can
    }

    /// The same fresh job on a machine with other faults.
    ///
    /// # Errors
    /// When the scenario names a fault that the machine does not have.
    pub fn fresh_with(&self, scenario: Arc<Scenario>) -> Result<Self, MachineError> {
        let mut job = self.clone();
        job.scenario = scenario;
        let setup = acts::setup_of(&job);
        for fault in &setup.faults {
            if job.machine.model().fault(&fault.id).is_none() {
                return Err(MachineError::UnknownFault {
                    machine: job.machine.model().id.clone(),
                    name: fault.id.clone(),
                });
            }
        }
        job.machine.refit(setup);
        Ok(job)
    }
}
