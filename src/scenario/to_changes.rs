//! From the fault catalogue's changes to those of the wiring, the plant and the control.

use std::fmt::Display;

use crate::network::ElementId;
use crate::network::NodeId;
use crate::plant::faults::ChangeTo;
use crate::plant::faults::PlantChange;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::scenario::fault_file::ChangeFile;
use crate::scenario::fault_file::FaultFile;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;

impl FaultFile {
    /// Changes of the wiring this fault makes on one machine; none if it does not occur there.
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

    /// Changes of plant parameters this fault makes on one machine.
    pub fn plant_changes(&self, machine: &str) -> Vec<PlantChange> {
        let changes = self.machines.get(machine).map_or(&[][..], Vec::as_slice);
        let plant_change = |change: &ChangeFile| match change {
            ChangeFile::Param { name, value } => Some(PlantChange {
                param: name.clone(),
                to: ChangeTo::Set(*value),
            }),
            ChangeFile::ScaleParam { name, factor } => Some(PlantChange {
                param: name.clone(),
                to: ChangeTo::Scale(*factor),
            }),
            _ => None,
        };
        changes.iter().filter_map(plant_change).collect()
    }

    /// Changes of control parameters this fault makes on one machine: name and value.
    pub fn control_changes(&self, machine: &str) -> Vec<(String, f64)> {
        let changes = self.machines.get(machine).map_or(&[][..], Vec::as_slice);
        let control_change = |change: &ChangeFile| match change {
            ChangeFile::Control { name, value } => Some((name.clone(), *value)),
            _ => None,
        };
        changes.iter().filter_map(control_change).collect()
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
            // What changes in plant and control is not the wiring's.
            ChangeFile::Param { .. }
            | ChangeFile::ScaleParam { .. }
            | ChangeFile::Control { .. } => return,
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
