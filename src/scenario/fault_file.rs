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
    pub const SOCKET_CONTACTS: [&str; 2] = ["RPL", "RPN"];
    /// The 5 V regulator.
    pub const REGULATOR: &str = "V5";
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
            ChangeFile::ExchangeLineAndNeutral => stands_for::SOCKET_CONTACTS.map(element).to_vec(),
            ChangeFile::ExchangeFarEnds { elements } => {
                elements.iter().map(|name| element(name)).collect()
            }
            ChangeFile::No5V => vec![element(stands_for::REGULATOR)],
            ChangeFile::Motor { .. } => vec![element(stands_for::MOTOR)],
            ChangeFile::Mechanical { .. } => Vec::new(),
            ChangeFile::Param { name, .. }
            | ChangeFile::ScaleParam { name, .. }
            | ChangeFile::Control { name, .. } => vec![param(name)],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::harness::COLD_K;
    use crate::plant::harness::Harness;
    use crate::plant::harness::Wiring;
    use crate::plant::harness::steady_state::steady_state;
    use crate::scenario::wiring_file::WiringFile;
    use crate::scenario::wiring_model;
    use std::sync::Arc;

    fn shipped_model(machine: &str) -> Arc<WiringModel> {
        let text = match machine {
            "P" => include_str!("../../scenarios/machines/p.json"),
            "T" => include_str!("../../scenarios/machines/t.json"),
            _ => include_str!("../../scenarios/machines/n.json"),
        };
        let mut whole: serde_json::Value = serde_json::from_str(text).expect("JSON");
        let wiring: WiringFile = serde_json::from_value(whole["wiring"].take()).expect("wiring");
        wiring_model(machine, &wiring).expect("a good machine")
    }

    fn shipped_faults() -> Vec<FaultFile> {
        serde_json::from_str(include_str!("../../scenarios/faults.json")).expect("a catalogue")
    }

    #[test]
    fn names_of_faults_are_unique() {
        let faults = shipped_faults();
        let ids: std::collections::BTreeSet<&str> = faults.iter().map(|f| f.id.as_str()).collect();
        assert_eq!(ids.len(), faults.len());
    }

    #[test]
    fn every_fault_at_every_severity_solves_in_every_state() {
        for machine in ["P", "T", "N"] {
            let model = shipped_model(machine);
            for fault in shipped_faults()
                .iter()
                .filter(|f| f.machines.contains_key(machine))
            {
                let changes = fault
                    .changes("faults.json", machine, &model)
                    .expect("good changes");
                for severity in [0.0, 0.01, 0.5, 0.99, 1.0] {
                    let mut wiring = Wiring::healthy(&model);
                    for change in &changes {
                        wiring.apply(change, severity);
                    }
                    if severity <= 0.0 {
                        assert_eq!(
                            wiring,
                            Wiring::healthy(&model),
                            "{} at severity 0",
                            fault.id
                        );
                    }
                    for state in &model.states {
                        wiring.set_plugged(state.is_plugged);
                        let mut harness = Harness::new(&wiring, &[]).expect("solvable");
                        let solved =
                            steady_state(&mut harness, &state.closed, state.load_n_m, COLD_K)
                                .expect("solvable");
                        let volts = &solved.ac.network.solution.node_v;
                        let is_sound = volts.iter().all(|v| v.re.is_finite() && v.im.is_finite());
                        assert!(is_sound, "{} {severity} {}", fault.id, state.name);
                        assert!(solved.ac.flow.torque_n_m.is_finite());
                    }
                }
            }
        }
    }

    #[test]
    fn a_change_of_an_unknown_element_is_told_with_its_place() {
        let text = r#"[{"id": "odd", "reference": "E00", "part": "x", "change": "x", "class": "part",
            "weight": 1, "weight_source": "x", "complaint": "x",
            "machines": {"P": [{"do": "open", "element": "NOWHERE"}]}}]"#;
        let faults: Vec<FaultFile> = serde_json::from_str(text).expect("the right shape");
        let error = faults[0]
            .changes("f.json", "P", &shipped_model("P"))
            .expect_err("unknown");
        let wanted =
            "f.json: odd.machines.P: NOWHERE: it must be an element of the machine's wiring";
        assert_eq!(error.to_string(), wanted);
    }

    #[test]
    fn an_unknown_field_of_a_change_is_refused() {
        let text = r#"{"do": "open", "element": "RSL", "ohms": 3}"#;
        assert!(serde_json::from_str::<ChangeFile>(text).is_err());
    }
}
