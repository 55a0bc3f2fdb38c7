//! How the bench around the machine stands: everything acts change besides the machine itself.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::bench::action::MeterMode;
use crate::bench::around::Around;
use crate::bench::gauge::Gauge;
use crate::bench::gauge::GaugeReading;
use crate::bench::isolation::Isolation;
use crate::bench::notebook::Tick;
use crate::bench::visit::Advice;
use crate::bench::workshop::Effect;
use crate::machine::Target;

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

/// Something that went back with a piece too few.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Short {
    /// Pieces that should have gone back.
    pub of: u32,
    /// The piece lies in the machine; else on the cloth.
    pub is_inside: bool,
}

/// A sealant on its way.
#[derive(Clone, Debug, PartialEq)]
pub struct Sealing {
    /// When it holds.
    pub sets: Tick,
    /// Water that had been let in when it was put on, kg.
    pub supplied_kg: f64,
    /// What comes of water before its time.
    pub effects: Vec<Effect>,
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
    pub advice: BTreeSet<Advice>,
    /// How it ended.
    pub ending: Option<Ending>,
}
