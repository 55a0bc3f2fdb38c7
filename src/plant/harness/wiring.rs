//! A machine's wiring as it is now: nominal values, faults, and what hands have opened.
//!
//! Faults move values (see `change.rs`); unmated connectors and pulled terminals open links;
//! hands may add links (a body, a bridge). All become one netlist with the motor's coils as
//! a group at its end.
//! Limits: a coil is split at one tap; shorted turns and an earth path in the same winding
//! share it.

use std::sync::Arc;

use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::Netlist;
use crate::network::NodeId;
use crate::plant::harness::change::ACTS_ABOVE;
use crate::plant::harness::change::WiringChange;
use crate::plant::harness::change::between;
use crate::plant::harness::change::between_ohm;
use crate::plant::harness::coils::Coils;
use crate::plant::harness::model::WiringModel;
use crate::plant::harness::motor::EarthPath;
use crate::plant::harness::motor::MotorFaults;
use crate::plant::harness::motor::OPEN_OHM;
use crate::plant::harness::motor::TurnShort;

/// A resistor that is not part of the machine's diagram.
#[derive(Clone, Debug, PartialEq)]
pub struct ExtraLink {
    /// Name.
    pub name: String,
    /// Places.
    pub nodes: [NodeId; 2],
    /// Resistance, ohm.
    pub ohm: f64,
}

/// The wiring now.
#[derive(Clone, Debug, PartialEq)]
pub struct Wiring {
    /// What it was built as.
    pub model: Arc<WiringModel>,
    /// Values with faults, without what hands opened.
    kinds: Vec<ElementKind>,
    /// Places of the elements, with faults.
    nodes: Vec<[NodeId; 2]>,
    /// True for elements opened by hand.
    is_opened: Vec<bool>,
    /// Resistors from faults, then from hands.
    extra: Vec<ExtraLink>,
    /// The motor's inner faults.
    pub motor_faults: MotorFaults,
    /// Is the rotor stuck?
    pub is_seized: bool,
    /// Factor on load and break-away torque.
    pub load_ratio: f64,
    /// Is the 5 V regulator dead?
    pub is_regulator_dead: bool,
    /// Is the plug in?
    is_plugged: bool,
}

impl Wiring {
    /// A healthy machine, plugged in.
    pub fn healthy(model: &Arc<WiringModel>) -> Wiring {
        Wiring {
            kinds: model.elements.iter().map(|e| e.kind).collect(),
            nodes: model.elements.iter().map(|e| e.nodes).collect(),
            is_opened: vec![false; model.elements.len()],
            extra: Vec::new(),
            motor_faults: MotorFaults::default(),
            is_seized: false,
            load_ratio: 1.0,
            is_regulator_dead: false,
            is_plugged: true,
            model: Arc::clone(model),
        }
    }

    /// The same wiring of the same machine.
    pub fn is_same(&self, other: &Wiring) -> bool {
        // The model compares by its address: it is large and shared.
        Arc::ptr_eq(&self.model, &other.model)
            && self.is_plugged == other.is_plugged
            && self.is_opened == other.is_opened
            && self.extra == other.extra
            && self.motor_faults == other.motor_faults
            && self.is_seized == other.is_seized
            && self.load_ratio.to_bits() == other.load_ratio.to_bits()
            && self.is_regulator_dead == other.is_regulator_dead
            && self.nodes == other.nodes
            && self.kinds == other.kinds
    }

    /// Applies one change of a fault with a severity from 0 to 1.
    pub fn apply(&mut self, change: &WiringChange, severity: f64) {
        let acts = severity > ACTS_ABOVE;
        match change {
            WiringChange::Set { element, value } => self.set(*element, *value, severity),
            WiringChange::Open { element } => {
                // A broken capacitor is none at all; anything else is 1e11 ohm.
                let is_capacitor =
                    matches!(self.kinds[element.index()], ElementKind::Capacitor { .. });
                self.set(
                    *element,
                    if is_capacitor { 0.0 } else { OPEN_OHM },
                    severity,
                );
            }
            WiringChange::ClosedResistance { contact, ohm } => {
                if let ElementKind::Contact { closed_ohm, .. } = self.kind_mut(*contact) {
                    *closed_ohm = between_ohm(*closed_ohm, *ohm, severity);
                }
            }
            WiringChange::Scale { element, factor } => {
                let factor = between(1.0, *factor, severity);
                self.scale(*element, factor);
            }
            WiringChange::AddResistor { name, nodes, ohm } => {
                if severity > 0.0 {
                    self.add_link(name, *nodes, between_ohm(OPEN_OHM, *ohm, severity));
                }
            }
            WiringChange::SupplyVoltage { v } => {
                let source = self.model.supply.source;
                if let ElementKind::Source { ac_v, .. } = self.kind_mut(source) {
                    *ac_v = between(*ac_v, *v, severity);
                }
            }
            WiringChange::ExchangeLineAndNeutral if acts => {
                let [line, neutral, _] = self.model.supply.plug_contacts;
                self.exchange(line, neutral);
            }
            WiringChange::ExchangeFarEnds { elements: [x, y] } if acts => self.exchange(*x, *y),
            WiringChange::ExchangeLineAndNeutral | WiringChange::ExchangeFarEnds { .. } => {}
            WiringChange::Seized => self.is_seized |= acts,
            WiringChange::No5V => self.is_regulator_dead |= acts,
            WiringChange::LoadFactor { factor } => {
                self.load_ratio *= between(1.0, *factor, severity)
            }
            _ => self.apply_to_motor(change, severity),
        }
    }

    fn apply_to_motor(&mut self, change: &WiringChange, severity: f64) {
        match *change {
            WiringChange::OpenWindings { is_open } => {
                for (winding, _) in is_open.iter().enumerate().filter(|(_, open)| **open) {
                    let copper_ohm = self.model.motor.params.winding_ohm[winding];
                    let total_ohm = between_ohm(copper_ohm, OPEN_OHM + copper_ohm, severity);
                    self.motor_faults.series_ohm[winding] = total_ohm - copper_ohm;
                }
            }
            WiringChange::ShortedTurns {
                winding,
                share_ratio,
                short_ohm,
            } if severity > 0.0 => {
                let share_ratio = between(0.0, share_ratio, severity);
                self.motor_faults.short = Some(TurnShort {
                    winding,
                    share_ratio,
                    short_ohm,
                });
            }
            WiringChange::WindingToFrame {
                winding,
                share_ratio,
                path_ohm,
            } if severity > 0.0 => {
                let path_ohm = between_ohm(OPEN_OHM, path_ohm, severity);
                self.motor_faults.earth = Some(EarthPath {
                    winding,
                    share_ratio,
                    path_ohm,
                });
            }
            _ => {}
        }
    }

    fn kind_mut(&mut self, id: ElementId) -> &mut ElementKind {
        &mut self.kinds[id.index()]
    }

    fn set(&mut self, id: ElementId, value: f64, severity: f64) {
        match self.kind_mut(id) {
            ElementKind::Resistor { ohm } => *ohm = between_ohm(*ohm, value, severity),
            ElementKind::Capacitor { farad } => *farad = between(*farad, value, severity),
            ElementKind::Inductor { henry } => *henry = between(*henry, value, severity),
            ElementKind::Contact {
                closed_ohm,
                open_ohm,
                open_farad,
                ..
            } => {
                *closed_ohm = between_ohm(*closed_ohm, value, severity);
                *open_ohm = between_ohm(*open_ohm, value, severity);
                *open_farad = between(*open_farad, 0.0, severity);
            }
            ElementKind::Source { ac_v, .. } => *ac_v = between(*ac_v, value, severity),
        }
    }

    fn scale(&mut self, id: ElementId, factor: f64) {
        match self.kind_mut(id) {
            ElementKind::Resistor { ohm } => *ohm *= factor,
            ElementKind::Capacitor { farad } => *farad *= factor,
            ElementKind::Inductor { henry } => *henry *= factor,
            ElementKind::Contact { closed_ohm, .. } => *closed_ohm *= factor,
            ElementKind::Source { ac_v, .. } => *ac_v *= factor,
        }
    }

    fn exchange(&mut self, x: ElementId, y: ElementId) {
        let (a, b) = (self.nodes[x.index()][1], self.nodes[y.index()][1]);
        self.nodes[x.index()][1] = b;
        self.nodes[y.index()][1] = a;
    }

    /// Opens (or closes again) a link by hand: a pulled terminal, an unmated pin.
    pub fn open_by_hand(&mut self, id: ElementId, is_open: bool) {
        self.is_opened[id.index()] = is_open;
    }

    /// Adds a resistor that is not part of the diagram (a body, a bridge).
    pub fn add_link(&mut self, name: &str, nodes: [NodeId; 2], ohm: f64) {
        self.extra.push(ExtraLink {
            name: name.to_owned(),
            nodes,
            ohm,
        });
    }

    /// Takes links of a name away again.
    pub fn remove_link(&mut self, name: &str) {
        self.extra.retain(|link| link.name != name);
    }

    /// Puts the plug in or pulls it.
    pub fn set_plugged(&mut self, is_plugged: bool) {
        self.is_plugged = is_plugged;
    }

    /// Is the plug in?
    pub fn is_plugged(&self) -> bool {
        self.is_plugged
    }

    /// Changes one element's value on top of faults (a part drawn within its tolerance, a
    /// contact burnt by use).
    pub fn set_value(&mut self, id: ElementId, value: f64) {
        self.set(id, value, 1.0);
    }

    /// Values and places of an element now, with what hands opened.
    pub fn element(&self, id: ElementId) -> (ElementKind, [NodeId; 2]) {
        let pulled = !self.is_plugged && self.model.supply.plug_contacts.contains(&id);
        let kind = self.kinds[id.index()];
        let kind = if pulled {
            // Pins in the air touch nothing at all.
            ElementKind::Resistor { ohm: f64::INFINITY }
        } else if self.is_opened[id.index()] {
            opened(kind)
        } else {
            kind
        };
        (kind, self.nodes[id.index()])
    }

    /// The position extra links start at in the netlist's elements.
    pub fn first_extra(&self) -> usize {
        self.model.elements.len()
    }

    /// Resistors that are not part of the diagram, in the netlist's order.
    pub fn extra_links(&self) -> &[ExtraLink] {
        &self.extra
    }

    /// The netlist: the model's elements in order, extra links, the motor's fault paths,
    /// and its coils.
    pub fn netlist(&self) -> Netlist {
        let mut netlist = Netlist::new();
        for node in &self.model.nodes[1..] {
            netlist.add_node(&node.name);
        }
        for (index, e) in self.model.elements.iter().enumerate() {
            let (kind, [from, to]) = self.element(ElementId(index as u32));
            netlist.add(&e.name, from, to, kind);
        }
        for link in &self.extra {
            netlist.resistor(&link.name, link.nodes[0], link.nodes[1], link.ohm);
        }
        for c in &self.model.couplings {
            netlist.couple(&c.name, c.inductors[0], c.inductors[1], c.factor);
        }
        self.add_motor(&mut netlist);
        netlist
    }

    fn add_motor(&self, netlist: &mut Netlist) {
        let motor = &self.model.motor;
        let coils = self.coils();
        let mut taps = [None; 2];
        for k in 0..coils.count {
            let winding = coils.winding[k];
            let lead = if winding == 0 {
                motor.lead_a
            } else {
                motor.lead_b
            };
            let name = format!("{} winding {}", motor.name, winding + 1);
            if !coils.is_first[k] {
                continue;
            }
            match self.motor_faults.split_ratio(winding) {
                None => netlist.add_coil(&name, lead, motor.common),
                Some(_) => {
                    let tap = netlist.add_node(&format!("{name} tap"));
                    netlist.add_coil(&name, lead, tap);
                    netlist.add_coil(&name, tap, motor.common);
                    taps[winding] = Some(tap);
                }
            }
        }
        if let Some(short) = self.motor_faults.short
            && let Some(tap) = taps[short.winding]
        {
            netlist.resistor("shorted turns", tap, motor.common, short.short_ohm);
        }
        if let Some(earth) = self.motor_faults.earth
            && let Some(tap) = taps[earth.winding]
        {
            netlist.resistor("winding to frame", tap, motor.frame, earth.path_ohm);
        }
    }

    /// The motor's coils with its faults.
    pub fn coils(&self) -> Coils {
        Coils::of(&self.model.motor.params, &self.motor_faults)
    }
}

/// An element whose connection is broken.
fn opened(kind: ElementKind) -> ElementKind {
    match kind {
        ElementKind::Resistor { .. } => ElementKind::Resistor { ohm: OPEN_OHM },
        ElementKind::Contact { bit, .. } => {
            let open_ohm = OPEN_OHM;
            ElementKind::Contact {
                closed_ohm: open_ohm,
                open_ohm,
                open_farad: 0.0,
                bit,
            }
        }
        ElementKind::Capacitor { .. } => ElementKind::Capacitor { farad: 0.0 },
        other => other,
    }
}
