//! One job: a scenario, a seed and a log. The state is the fold of the log and nothing else, so
//! resuming, replaying, explaining and checking a job are all "run the log again".
//!
//! Time is in ticks of 0.1 s. Acts happen at the present tick and take their standard time, during
//! which the machine goes on by itself; between acts time passes while the technician watches.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::acts;
use crate::bench::around::Around;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::gauge::Gauge;
use crate::bench::gauge::GaugeReading;
use crate::bench::isolation::Isolation;
use crate::bench::ledger::Ledger;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::refitting::Sealing;
use crate::bench::refitting::Short;
use crate::bench::rules::SafetyFinding;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Effect;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Setup;
use crate::machine::Target;

/// Latest tick of an act in a log that comes from outside: a day after the bell. A later one is no job, and
/// takes for ever to run.
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

/// What a clamp's jaws are said to hold when they go round the cord as it is.
pub const WHOLE_CORD: &str = "cord";

/// The meter as it is set now.
#[derive(Clone, Debug, PartialEq)]
pub struct MeterSetting {
    /// Mode.
    pub mode: MeterMode,
    /// Node under the red lead, or the element in the jaws.
    pub red: Option<String>,
    /// Node under the black lead.
    pub black: Option<String>,
}

/// How a job ended.
#[derive(Clone, Debug, PartialEq)]
pub enum Ending {
    /// Handed over.
    Closed,
    /// Left isolated and labelled, customer informed.
    MadeSafe,
}

/// What the technician has stated as the cause.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Finding {
    /// When.
    pub tick: Tick,
    /// Names of the faults held to be the cause; empty for "no fault".
    pub causes: Vec<String>,
    /// Numbers of the notebook lines offered as evidence.
    pub evidence: Vec<u32>,
}

/// The bench around the machine: everything acts change besides the machine itself.
#[derive(Clone, Debug, Default)]
pub struct Bench {
    /// Steps that are off, in the order they came off.
    pub off: Vec<String>,
    /// Connectors that are apart.
    pub apart: BTreeSet<String>,
    /// What was left wrong by an unchecked refit or repair, by step or work.
    pub left_wrong: BTreeMap<String, Vec<Effect>>,
    /// Steps and works whose check was done since they were last touched.
    pub checked: BTreeSet<String>,
    /// What repairs have made good.
    pub healed: BTreeSet<Target>,
    /// Works done, in order.
    pub works: Vec<(Tick, String)>,
    /// Steps that stand open over the hands with nothing to hold them.
    pub unsupported: BTreeSet<String>,
    /// Steps and works that went back with a piece too few.
    pub short: BTreeMap<String, Short>,
    /// Sealants that have not had their time, by work.
    pub sealing: BTreeMap<String, Sealing>,
    /// What got wet inside, by what is left wrong.
    pub wet: BTreeSet<String>,
    /// The machine lies propped, by help, strap or stand.
    pub propped: bool,
    /// How often the plug was moved.
    pub exposure: u32,
    /// The supply hose is on the machine.
    pub hose_attached: bool,
    /// The meter.
    pub meter: Option<MeterSetting>,
    /// The splitter lead is between plug and socket.
    pub splitter: bool,
    /// Modes whose fuse has gone.
    pub blown: BTreeSet<MeterMode>,
    /// Water on the floor that was told of, kg.
    pub floor_told_kg: f64,
    /// Instruments fitted into a line, where they stay.
    pub fitted: BTreeSet<Gauge>,
    /// What such an instrument showed last.
    pub gauge: Option<GaugeReading>,
    /// Isolation: done and proved.
    pub isolation: Isolation,
    /// What surrounds the repair: van, consent, papers, handling, report.
    pub around: Around,
    /// Findings stated, the last one counts.
    pub findings: Vec<Finding>,
    /// Advice given.
    pub advice: BTreeSet<crate::bench::visit::Advice>,
    /// How it ended.
    pub ending: Option<Ending>,
}

/// One customer's call being worked on.
#[derive(Clone, Debug)]
pub struct Job {
    scenario: Arc<Scenario>,
    seed: u64,
    /// The instruments read without any error of their own.
    pub(in crate::bench) is_nominal: bool,
    log: Vec<Entry>,
    pub(in crate::bench) machine: Machine,
    pub(in crate::bench) bench: Bench,
    pub(in crate::bench) notebook: Vec<Note>,
    pub(in crate::bench) ledger: Ledger,
    pub(in crate::bench) safety: Vec<SafetyFinding>,
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

    /// Lets time pass while the technician watches.
    pub fn advance(&mut self, ticks: Tick) {
        let end = self.tick() + ticks;
        while let Some(sets) = self.next_setting(end) {
            self.machine.advance(sets.saturating_sub(self.tick()));
            self.set_sealants();
        }
        self.machine.advance(end.saturating_sub(self.tick()));
    }

    /// Lets time pass up to `tick`; nothing happens when it is past already.
    pub fn advance_to(&mut self, tick: Tick) {
        self.advance(tick.saturating_sub(self.tick()));
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

    /// Everything stored in the machine is led off, as careful hands do before they go on.
    pub fn lead_charge_off(&mut self) {
        self.machine.lead_charge_off();
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

    /// Applies what is off, apart, left wrong and made good to the machine.
    pub(in crate::bench) fn refit_machine(&mut self) {
        let setup = acts::setup_of(self);
        self.machine.refit(setup);
    }

    /// The scenario, truth included: for score and debrief only.
    pub fn scenario(&self) -> &Arc<Scenario> {
        &self.scenario
    }
    /// Why hands cannot do this now; `None` when they can. Changes nothing.
    pub fn refusal(&self, action: &Action) -> Option<Refusal> {
        acts::refusal(self, action)
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
    /// Nobody has driven there yet: the phone and the van can still be used.
    pub fn is_before_visit(&self) -> bool {
        acts::is_before_visit(&self.log)
    }

    /// The job is over.
    pub fn is_over(&self) -> bool {
        self.bench.ending.is_some()
    }
}
