//! The fault catalogue: every known fault as a change of physical values, for each machine that
//! can have it.
//!
//! ```text
//! {"format": "tubwright-faults-1", "faults": [
//!   {"id": "capacitor_low", "reference": "E51", "part": "run_capacitor", "name": "…",
//!    "machines": {"P": [{"do": "scale", "element": "CRUN", "factor": 0.4}], …}}, …]}
//! ```
//! A change says what the value becomes at full severity and nothing about what anyone would
//! see: readings, sounds and alarms follow from solving the changed machine.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

/// The format this version reads and writes.
pub const FAULT_FORMAT: &str = "tubwright-faults-1";

/// The whole catalogue.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CatalogueFile {
    /// `tubwright-faults-1`.
    pub format: String,
    /// All faults.
    pub faults: Vec<FaultFile>,
}

/// One fault.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct FaultFile {
    /// Stable name.
    pub id: String,
    /// Number in the reference list, such as `E51`.
    pub reference: String,
    /// The part it belongs to; left out for what is nobody's part.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub part: String,
    /// Plain words, such as "run capacitor has lost most of its value".
    pub name: String,
    /// What changes in the machine at full severity, in numbers.
    pub change: String,
    /// Kind of cause.
    pub class: FaultClassFile,
    /// Relative prior frequency, 10 very common, 1 rare.
    pub weight: f64,
    /// Where the weight comes from.
    pub weight_source: String,
    /// How a customer would say it.
    pub complaint: String,
    /// What a severity below one means, where it means anything.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub severity: String,
    /// How it usually comes on; left out: always there.
    #[serde(default, skip_serializing_if = "OnsetFile::is_constant")]
    pub onset: OnsetFile,
    /// Changes at full severity, by machine.
    pub machines: BTreeMap<String, Vec<ChangeFile>>,
}

/// Kinds of cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FaultClassFile {
    /// A part has failed.
    Part,
    /// Wires, pins, terminals.
    Harness,
    /// Outside the machine: tap, socket, hose, floor, load.
    Site,
    /// Left by an earlier repair.
    Refit,
}

/// When a fault is there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum OnsetFile {
    /// Always.
    #[default]
    Constant,
    /// From so many minutes after the technician's arrival.
    From {
        /// Start, min.
        start_min: f64,
    },
    /// On and off by chance, drawn anew each period.
    Intermittent {
        /// Length of a draw, s.
        period_s: f64,
        /// Chance that it is there in a period, 0..1.
        chance: f64,
    },
    /// Only while the hotter winding is above this.
    Hot {
        /// Threshold, °C.
        above_degc: f64,
    },
    /// Only while the basket turns faster than this.
    Vibration {
        /// Threshold, r/min.
        above_rpm: f64,
    },
}

impl OnsetFile {
    /// It is always there.
    pub fn is_constant(&self) -> bool {
        *self == OnsetFile::Constant
    }
}

/// One change at full severity.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum ChangeFile {
    /// The element is an open circuit whatever the control does.
    Open {
        /// Element of the wiring.
        element: String,
    },
    /// The element has this value whatever the control does.
    Set {
        /// Element of the wiring.
        element: String,
        /// Ohm, farad or henry.
        value: f64,
    },
    /// The element's value is multiplied.
    Scale {
        /// Element of the wiring.
        element: String,
        /// The factor.
        factor: f64,
    },
    /// A contact closes with this resistance.
    ClosedResistance {
        /// Contact of the wiring.
        contact: String,
        /// Ohm.
        ohm: f64,
    },
    /// A resistor appears between two nodes.
    AddResistor {
        /// Its name, by which a work makes it good.
        name: String,
        /// Nodes of the wiring.
        nodes: [String; 2],
        /// Ohm.
        ohm: f64,
    },
    /// The supply has another voltage.
    SupplyVoltage {
        /// V rms.
        v: f64,
    },
    /// Line and neutral are exchanged at the socket.
    ExchangeLineAndNeutral,
    /// The far ends of two wires are exchanged.
    ExchangeFarEnds {
        /// The two wires.
        elements: [String; 2],
    },
    /// The 5 V regulator is dead.
    #[serde(rename = "no_5_v")]
    No5V,
    /// Windings are open, shorted, or have a path to the frame.
    Motor {
        /// Open windings, 1 or 2.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        open_windings: Vec<u8>,
        /// The winding with shorted turns or a path, 1 or 2.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        winding: Option<u8>,
        /// Share of its turns that is shorted, 0..1.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        shorted_share: Option<f64>,
        /// Resistance across the shorted turns, ohm.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        short_ohm: Option<f64>,
        /// Share of turns between the tap and the common end, 0..1.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tap_share: Option<f64>,
        /// Path from the tap to the frame, ohm.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tap_to_frame_ohm: Option<f64>,
    },
    /// What the shaft meets, for readings in a fixed state of the wiring alone.
    Mechanical {
        /// The rotor is stuck.
        #[serde(default, skip_serializing_if = "core::ops::Not::not")]
        seized: bool,
        /// Load and break-away torque are multiplied.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        load_factor: Option<f64>,
    },
    /// A plant parameter becomes this.
    Param {
        /// Dotted name.
        name: String,
        /// In the unit the name ends with.
        value: f64,
    },
    /// A plant parameter is multiplied.
    ScaleParam {
        /// Dotted name.
        name: String,
        /// The factor.
        factor: f64,
    },
    /// A parameter of the control becomes this.
    Control {
        /// Dotted name, beginning with `control.`.
        name: String,
        /// In the unit the name ends with.
        value: f64,
    },
}

/// What a change touches, by the names that parts and works use.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Touched {
    /// An element of the wiring.
    Element(String),
    /// A plant or control parameter.
    Param(String),
}

/// Names that stand for what is no element of its own.
pub mod stands_for {
    /// The supply source.
    pub const SUPPLY: &str = "V1";
    /// The exchanged contacts of the socket.
    pub const SOCKET_CONTACT: &str = "RPL";
    /// The 5 V regulator.
    pub const REGULATOR: &str = "R5";
    /// The windings.
    pub const MOTOR: &str = "M1";
}

impl ChangeFile {
    /// What must be made good to undo it.
    pub fn touches(&self) -> Vec<Touched> {
        let element = |name: &str| Touched::Element(name.to_owned());
        let param = |name: &str| Touched::Param(name.to_owned());
        match self {
            ChangeFile::Open { element: name }
            | ChangeFile::Set { element: name, .. }
            | ChangeFile::Scale { element: name, .. }
            | ChangeFile::ClosedResistance { contact: name, .. }
            | ChangeFile::AddResistor { name, .. } => vec![element(name)],
            ChangeFile::SupplyVoltage { .. } => vec![element(stands_for::SUPPLY)],
            ChangeFile::ExchangeLineAndNeutral => vec![element(stands_for::SOCKET_CONTACT)],
            ChangeFile::ExchangeFarEnds {
                elements: [first, _],
            } => vec![element(first)],
            ChangeFile::No5V => vec![element(stands_for::REGULATOR)],
            ChangeFile::Mechanical {
                seized: false,
                load_factor: None,
            } => Vec::new(),
            ChangeFile::Motor { .. } | ChangeFile::Mechanical { .. } => {
                vec![element(stands_for::MOTOR)]
            }
            ChangeFile::Param { name, .. }
            | ChangeFile::ScaleParam { name, .. }
            | ChangeFile::Control { name, .. } => vec![param(name)],
        }
    }
}
