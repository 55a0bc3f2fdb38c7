//! One job: a scenario, a seed and a log. The state is the fold of the log and nothing else, so
//! resuming, replaying, explaining and checking a job are all "run the log again".
//!
//! Time is in ticks of 0.1 s. Acts happen at the present tick and take their standard time, during
//! which the machine goes on by itself; between acts time passes while the technician watches.

use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::ledger::Ledger;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::safety::SafetyFinding;
use crate::bench::scenario::Scenario;
use crate::bench::state::Bench;
use crate::machine::Machine;

/// When a job's clock stands, whatever is done: a day after the bell. A log with a later act is no job's.
pub const LATEST_TICK: Tick = 24 * 3600 * TICKS_PER_S;

/// One entry of a job's log.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
pub struct Entry {
    /// When the act began.
    pub tick: Tick,
    /// The act.
    #[serde(flatten)]
    pub action: Action,
}

/// No act of a log is later than any job's.
pub fn ends_some_day(log: &[Entry]) -> bool {
    log.iter().all(|entry| entry.tick <= LATEST_TICK)
}

/// What a clamp's jaws are said to hold when they go round the cord as it is.
pub const WHOLE_CORD: &str = "cord";

/// One customer's call being worked on.
#[derive(Clone, Debug)]
pub struct Job {
    pub(in crate::bench) scenario: Arc<Scenario>,
    pub(in crate::bench) seed: u64,
    /// The instruments read without any error of their own.
    pub(in crate::bench) is_nominal: bool,
    pub(in crate::bench) log: Vec<Entry>,
    pub(in crate::bench) machine: Machine,
    pub(in crate::bench) bench: Bench,
    pub(in crate::bench) notebook: Vec<Note>,
    pub(in crate::bench) ledger: Ledger,
    pub(in crate::bench) safety: Vec<SafetyFinding>,
}

impl Job {
    /// Everything stored in the machine is led off, as careful hands do before they go on.
    pub fn lead_charge_off(&mut self) {
        self.machine.lead_charge_off();
    }

    /// Writes a line in the notebook.
    pub(in crate::bench) fn write(&mut self, entry: NoteEntry) {
        let note = Note {
            number: self.notebook.len() as u32 + 1,
            tick: self.tick(),
            state: self.machine.state_words(),
            entry,
        };
        self.notebook.push(note);
    }

    /// The scenario, truth included: for score and debrief only.
    pub fn scenario(&self) -> &Arc<Scenario> {
        &self.scenario
    }
    /// The seed that makes this job its own.
    pub fn seed(&self) -> u64 {
        self.seed
    }
    /// The log so far.
    pub fn log(&self) -> &[Entry] {
        &self.log
    }
    /// Ticks since the bell.
    pub fn tick(&self) -> Tick {
        self.machine.tick()
    }
    /// The machine, for its drawing, its sounds and its display.
    pub fn machine(&self) -> &Machine {
        &self.machine
    }
    /// The bench around it.
    pub fn bench(&self) -> &Bench {
        &self.bench
    }
    /// The notebook.
    pub fn notebook(&self) -> &[Note] {
        &self.notebook
    }
    /// Safety findings so far.
    pub fn safety(&self) -> &[SafetyFinding] {
        &self.safety
    }
    /// Material, damage and visits so far.
    pub fn ledger(&self) -> &Ledger {
        &self.ledger
    }
    /// Cost so far in the job's money unit.
    pub fn cost(&self) -> f64 {
        self.ledger.cost(&self.scenario.money, self.tick())
    }
    /// A day has passed since the bell: the clock stands, and all that is left is to end the visit.
    pub fn is_late(&self) -> bool {
        self.tick() >= LATEST_TICK
    }

    /// The job is over.
    pub fn is_over(&self) -> bool {
        self.bench.ending.is_some()
    }
}
