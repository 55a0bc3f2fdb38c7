//! The fault catalogue: its twin, and how its changes become those of a wiring.
//!
//! A fault lists for each machine the changes that make it; weights are relative and come
//! from common practice.

use std::collections::BTreeMap;
use std::fmt::Display;

use serde::Deserialize;
use serde::Serialize;

use crate::network::ElementId;
use crate::network::NodeId;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;

/// Where a fault comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FaultClass {
    /// A part failed.
    Part,
    /// Wires, connectors and terminals.
    Harness,
    /// House supply.
    Supply,
    /// Comes and goes.
    Intermittent,
    /// Mechanical, looks electrical.
    Mech,
    /// Made by an earlier repair.
    Repair,
}

/// One fault of the catalogue.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct FaultFile {
    /// Plain name, lower snake, never renamed.
    pub id: String,
    /// Row it is checked by.
    pub reference: String,
    /// The part.
    pub part: String,
    /// What changed, in words.
    pub change: String,
    /// Where it comes from.
    pub class: FaultClass,
    /// Relative frequency.
    pub weight: f64,
    /// Where the weight comes from.
    pub weight_source: String,
    /// What a customer would say.
    pub complaint: String,
    /// The changes, by machine.
    pub machines: BTreeMap<String, Vec<ChangeFile>>,
}

/// One change, in the fault language.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum ChangeFile {
    /// The element has this value.
    Set {
        /// Its name.
        element: String,
        /// Ohm, farad or henry.
        value: f64,
    },
    /// The element is broken.
    Open {
        /// Its name.
        element: String,
    },
    /// A contact closes with this resistance.
    ClosedResistance {
        /// Its name.
        contact: String,
        /// Ohm.
        ohm: f64,
    },
    /// The value is multiplied.
    Scale {
        /// Its name.
        element: String,
        /// Factor.
        factor: f64,
    },
    /// A resistor appears.
    AddResistor {
        /// Its name.
        name: String,
        /// Its places.
        nodes: [String; 2],
        /// Ohm.
        ohm: f64,
    },
    /// The supply has another voltage.
    SupplyVoltage {
        /// V rms.
        v: f64,
    },
    /// Line and neutral exchanged at the socket.
    ExchangeLineAndNeutral,
    /// Far ends of two wires exchanged.
    ExchangeFarEnds {
        /// The wires.
        elements: [String; 2],
    },
    /// Inside the motor: open windings (1, 2), shorted turns, or a path to the frame.
    Motor {
        /// Open windings.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        open_windings: Vec<u8>,
        /// Share of turns shorted.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        shorted_share: Option<f64>,
        /// Resistance across them, ohm.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        short_ohm: Option<f64>,
        /// The winding concerned (1 if absent).
        #[serde(default, skip_serializing_if = "Option::is_none")]
        winding: Option<u8>,
        /// Share of turns between the tap and the common end.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tap_share: Option<f64>,
        /// Resistance from the tap to the frame, ohm.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tap_to_frame_ohm: Option<f64>,
    },
    /// Mechanical: electrically visible only through the load.
    Mechanical {
        /// The rotor is stuck.
        #[serde(default, skip_serializing_if = "core::ops::Not::not")]
        seized: bool,
        /// Factor on load and break-away torque.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        load_factor: Option<f64>,
    },
    /// The 5 V regulator is dead.
    #[serde(rename = "no_5_v")]
    No5V,
}

impl FaultFile {
    /// The changes this fault makes on one machine; none if it does not occur there.
    ///
    /// # Errors
    /// Every problem found.
    pub fn changes(
        &self,
        file: &str,
        machine: &str,
        model: &WiringModel,
    ) -> Result<Vec<WiringChange>, FileError> {
        let field = format!("{}.machines.{machine}", self.id);
        let mut look = Look {
            field: &field,
            model,
            problems: Problems::new(file),
        };
        let mut list = Vec::new();
        for change in self.machines.get(machine).map_or(&[][..], Vec::as_slice) {
            look.change(change, &mut list);
        }
        look.problems.into_result(list)
    }
}

/// Looks names up and collects what is wrong.
struct Look<'a> {
    field: &'a str,
    model: &'a WiringModel,
    problems: Problems<'a>,
}

impl Look<'_> {
    fn problem(&mut self, value: impl Display, remedy: &str) {
        self.problems.add(self.field, value, remedy);
    }

    fn element(&mut self, name: &str) -> ElementId {
        self.model.element(name).unwrap_or_else(|| {
            self.problem(name, "it must be an element of the machine's wiring");
            ElementId(0)
        })
    }

    fn node(&mut self, name: &str) -> NodeId {
        self.model.node(name).unwrap_or_else(|| {
            self.problem(name, "it must be a place of the machine's wiring");
            NodeId::EARTH
        })
    }

    fn number(&mut self, value: f64) -> f64 {
        if !(value >= 0.0 && value.is_finite()) {
            self.problem(value, "it must be 0 or more");
        }
        value
    }

    fn share(&mut self, value: f64) -> f64 {
        if !(value > 0.0 && value < 1.0) {
            self.problem(value, "a share must be above 0 and below 1");
        }
        value
    }

    fn winding(&mut self, number: u8) -> usize {
        if !(1..=2).contains(&number) {
            self.problem(number, "a winding is 1 or 2");
        }
        usize::from(number == 2)
    }

    fn change(&mut self, change: &ChangeFile, list: &mut Vec<WiringChange>) {
        list.push(match change {
            ChangeFile::Set { element, value } => WiringChange::Set {
                element: self.element(element),
                value: self.number(*value),
            },
            ChangeFile::Open { element } => WiringChange::Open {
                element: self.element(element),
            },
            ChangeFile::ClosedResistance { contact, ohm } => WiringChange::ClosedResistance {
                contact: self.element(contact),
                ohm: self.number(*ohm),
            },
            ChangeFile::Scale { element, factor } => WiringChange::Scale {
                element: self.element(element),
                factor: self.number(*factor),
            },
            ChangeFile::AddResistor {
                name,
                nodes: [a, b],
                ohm,
            } => WiringChange::AddResistor {
                name: name.clone(),
                nodes: [self.node(a), self.node(b)],
                ohm: self.number(*ohm),
            },
            ChangeFile::SupplyVoltage { v } => WiringChange::SupplyVoltage { v: self.number(*v) },
            ChangeFile::ExchangeLineAndNeutral => WiringChange::ExchangeLineAndNeutral,
            ChangeFile::ExchangeFarEnds { elements: [x, y] } => WiringChange::ExchangeFarEnds {
                elements: [self.element(x), self.element(y)],
            },
            ChangeFile::No5V => WiringChange::No5V,
            ChangeFile::Motor { .. } => return self.motor(change, list),
            ChangeFile::Mechanical {
                seized,
                load_factor,
            } => {
                if *seized {
                    list.push(WiringChange::Seized);
                }
                if let Some(factor) = load_factor {
                    list.push(WiringChange::LoadFactor {
                        factor: self.number(*factor),
                    });
                }
                return;
            }
        });
    }

    fn motor(&mut self, change: &ChangeFile, list: &mut Vec<WiringChange>) {
        let ChangeFile::Motor {
            open_windings,
            shorted_share,
            short_ohm,
            winding,
            tap_share,
            tap_to_frame_ohm,
        } = change
        else {
            return;
        };
        let winding = self.winding(winding.unwrap_or(1));
        if !open_windings.is_empty() {
            let mut is_open = [false; 2];
            for number in open_windings {
                is_open[self.winding(*number)] = true;
            }
            list.push(WiringChange::OpenWindings { is_open });
        }
        match (*shorted_share, *short_ohm) {
            (Some(share), Some(ohm)) => list.push(WiringChange::ShortedTurns {
                winding,
                share_ratio: self.share(share),
                short_ohm: self.number(ohm),
            }),
            (None, None) => {}
            _ => self.problem("half given", "shorted_share and short_ohm belong together"),
        }
        match (*tap_share, *tap_to_frame_ohm) {
            (Some(share), Some(ohm)) => list.push(WiringChange::WindingToFrame {
                winding,
                share_ratio: self.share(share),
                path_ohm: self.number(ohm),
            }),
            (None, None) => {}
            _ => self.problem(
                "half given",
                "tap_share and tap_to_frame_ohm belong together",
            ),
        }
    }
}
