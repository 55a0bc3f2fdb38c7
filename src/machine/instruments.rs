//! Instruments put to the machine: what they read, what a touch draws.
//!
//! An instrument is part of the network, so every reading is a solve. Charge left in a capacitor
//! after the plug came out adds its voltage where the probes are on it.

use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Stored;
use crate::machine::charge::ChargeHistory;
use crate::network::Complex;
use crate::network::ElementId;
use crate::network::NodeId;
use crate::plant::harness::Instrument;
use crate::plant::harness::SteadyState;
use crate::plant::harness::frequency;
use crate::plant::harness::instrument;

/// Test current of an earth-bond tester, A, and its largest indication, Ω. Common practice.
const BOND_LIMIT_OHM: f64 = 60.0;

/// Stored charge below this is none, V.
const NOTHING_V: f64 = 1e-3;

/// Windings at room temperature, K.
const COLD_K: f64 = 293.15;

/// What is put where.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Probe<'a> {
    /// A two-lead instrument between two nodes.
    Between(Instrument, &'a str, &'a str),
    /// An earth-bond tester between two nodes.
    Bond(&'a str, &'a str),
    /// A clamp round the conductor of one element.
    Clamp(&'a str),
    /// A clamp round line and neutral of the cord together.
    Leakage,
    /// A clamp round the whole cord.
    Cord,
    /// A frequency counter between two nodes.
    Frequency(&'a str, &'a str),
}

/// What an instrument finds, before its display rounds it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// Value in SI; none when over range.
    pub value_si: Option<f64>,
    /// Voltage that a dead test met on the circuit, V.
    pub foreign_v: f64,
}

/// A conductor as a hand finds it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TouchSource {
    /// Voltage before the touch, V rms.
    pub open_v: f64,
    /// Resistance behind it, Ω.
    pub resistance_ohm: f64,
    /// Reactance behind it, Ω.
    pub reactance_ohm: f64,
}

fn plain(value_si: f64) -> Measured {
    Measured {
        value_si: Some(value_si),
        foreign_v: 0.0,
    }
}

impl Machine {
    /// Puts an instrument to the machine as it stands.
    ///
    /// # Errors
    /// When a name is unknown or the network cannot be solved.
    pub fn measure(&self, probe: Probe<'_>) -> Result<Measured, MachineError> {
        let harness = self.electrics.harness();
        let state = self.steady(harness)?;
        match probe {
            Probe::Between(instrument, a, b) => {
                let (a, b) = (self.node(a)?, self.node(b)?);
                let reading = instrument::read(harness, &state, instrument, a, b)?;
                let foreign_v = self.foreign_v(reading.is_live, &state, a, b);
                Ok(self.with_charge(instrument, reading, foreign_v, [a, b]))
            }
            Probe::Bond(a, b) => {
                let (a, b) = (self.node(a)?, self.node(b)?);
                let reading = instrument::read(harness, &state, Instrument::Ohms, a, b)?;
                let fits = !reading.is_over_range && reading.value < BOND_LIMIT_OHM;
                Ok(Measured {
                    value_si: fits.then_some(reading.value),
                    foreign_v: self.foreign_v(reading.is_live, &state, a, b),
                })
            }
            Probe::Clamp(element) => {
                let id = self.element(element)?;
                Ok(plain(state.ac.network.current_a(id).abs()))
            }
            Probe::Cord => {
                let network = &state.ac.network;
                // What goes out comes back in the same cord, but for what leaks another way.
                let sum = self
                    .shared
                    .supply
                    .plug_contacts
                    .map(|contact| network.current_a(contact))
                    .into_iter()
                    .fold(Complex::default(), |sum, current| sum + current);
                Ok(plain(sum.abs()))
            }
            Probe::Frequency(a, b) => {
                let (a, b) = (self.node(a)?, self.node(b)?);
                let hz = frequency::read(harness, &state, self.level_hz(), a, b)?;
                Ok(Measured {
                    value_si: hz,
                    foreign_v: 0.0,
                })
            }
            Probe::Leakage => {
                let supply = &self.shared.supply;
                let [line, neutral, _] = supply.plug_contacts;
                let network = &state.ac.network;
                // Both conductors run the same way through the jaws; what is missing went to earth.
                let sum = network.current_a(line) + network.current_a(neutral);
                Ok(plain(sum.abs()))
            }
        }
    }

    /// The network as a hand standing on earth finds it at each node that the machine has.
    pub fn touch_sources(&self, nodes: &[String]) -> Vec<(String, TouchSource)> {
        if nodes.is_empty() {
            return Vec::new();
        }
        let harness = self.electrics.harness();
        let Ok(state) = self.steady(harness) else {
            return Vec::new();
        };
        let seen = |name: &String| {
            let seen = state
                .ac
                .network
                .seen(self.shared.node(name)?, NodeId::EARTH);
            let source = TouchSource {
                open_v: seen.open_v.abs(),
                resistance_ohm: seen.ohm.re.max(0.0),
                reactance_ohm: seen.ohm.im,
            };
            Some((name.clone(), source))
        };
        nodes.iter().filter_map(seen).collect()
    }

    /// Voltage between two nodes now, supply or charge, V; 0 when a name is unknown.
    pub fn voltage_between(&self, a: &str, b: &str) -> f64 {
        let (Ok(a), Ok(b)) = (self.node(a), self.node(b)) else {
            return 0.0;
        };
        let harness = self.electrics.harness();
        let Ok(state) = self.steady(harness) else {
            return 0.0;
        };
        state
            .ac
            .network
            .between_v(a, b)
            .abs()
            .max(self.stored_v([a, b]).abs())
    }

    /// Voltage that the supply drives between two nodes now, V; 0 when a name is unknown.
    pub fn supplied_between(&self, a: &str, b: &str) -> f64 {
        let (Ok(a), Ok(b)) = (self.node(a), self.node(b)) else {
            return 0.0;
        };
        let state = self.steady(self.electrics.harness());
        state.map_or(0.0, |state| state.ac.network.between_v(a, b).abs())
    }

    /// Current that a resistance put between two nodes would draw now, A; 0 when a name is unknown.
    pub fn current_through(&self, a: &str, b: &str, ohm: f64) -> f64 {
        let (Ok(a), Ok(b)) = (self.node(a), self.node(b)) else {
            return 0.0;
        };
        let harness = self.electrics.harness();
        let Ok(state) = self.steady(harness) else {
            return 0.0;
        };
        let load = Complex::real(1.0 / ohm);
        state.ac.network.seen(a, b).loaded_v(load).abs() / ohm
    }

    /// The element bonds metal to the cabinet.
    pub fn is_earth_link(&self, element: &str) -> bool {
        let cabinet = &self.model.roles.cabinet;
        self.element_ends(element)
            .is_some_and(|(a, b)| a == *cabinet || b == *cabinet)
    }

    pub(super) fn steady(
        &self,
        harness: &crate::plant::harness::Harness,
    ) -> Result<SteadyState, MachineError> {
        let speed = self.plant.state().drive.rotor_rad_per_s;
        let slip = self
            .shared
            .motor
            .params
            .slip_ratio(speed, self.shared.frequency_hz);
        let windings_k = self.plant.state().heat.winding_k;
        let ac = harness.solve_ac(self.contacts, slip, windings_k)?;
        Ok(SteadyState {
            contacts: self.contacts,
            regulated_v: self.live.regulated_v,
            ac,
        })
    }

    fn with_charge(
        &self,
        instrument: Instrument,
        reading: instrument::Reading,
        foreign_v: f64,
        nodes: [NodeId; 2],
    ) -> Measured {
        let is_ac = matches!(
            instrument,
            Instrument::AcVolts
                | Instrument::AcVoltsLowImpedance
                | Instrument::Amps
                | Instrument::TouchCurrent
        );
        if is_ac {
            return Measured {
                value_si: (!reading.is_over_range).then_some(reading.value),
                foreign_v: 0.0,
            };
        }
        let charge_v = self.stored_v(nodes);
        if instrument == Instrument::DcVolts {
            return plain(reading.value + charge_v);
        }
        let live_v = if !reading.is_live {
            0.0
        } else if self.live.supply_v > 0.0 {
            self.live.supply_v
        } else {
            // The plug is out, but the socket is live.
            foreign_v
        };
        Measured {
            value_si: (!reading.is_over_range).then_some(reading.value),
            foreign_v: live_v.max(charge_v.abs()),
        }
    }

    fn foreign_v(&self, is_live: bool, state: &SteadyState, a: NodeId, b: NodeId) -> f64 {
        if is_live {
            state.ac.network.between_v(a, b).abs().max(1.0)
        } else {
            0.0
        }
    }

    /// Voltage that stored charge puts between two places, V.
    fn stored_v(&self, nodes: [NodeId; 2]) -> f64 {
        if self.charge.is_forgotten(self.slowest_s, self.tick) {
            return 0.0;
        }
        let found = self.charge.voltage_v(&self.circuit(), self.tick, nodes);
        found.unwrap_or_default()
    }

    fn stored(&self, nodes: [NodeId; 2]) -> Stored {
        let voltage_v = self.stored_v(nodes).abs();
        if voltage_v < NOTHING_V {
            return Stored::default();
        }
        let found = self.charge.energy_j(&self.circuit(), self.tick, nodes);
        Stored {
            voltage_v,
            energy_j: found.unwrap_or_default(),
        }
    }

    /// Charge stored between two nodes, of either sign; nothing when a name is unknown.
    pub fn stored_between(&self, a: &str, b: &str) -> Stored {
        match (self.node(a), self.node(b)) {
            (Ok(a), Ok(b)) => self.stored([a, b]),
            _ => Stored::default(),
        }
    }

    fn pin_nodes(&self) -> [NodeId; 2] {
        let [line, neutral, _] = self.roles.plug_pins;
        [line, neutral]
    }

    /// Charge at the plug pins, of either sign.
    pub fn plug_pin_charge(&self) -> Stored {
        if self.hands.plugged {
            return Stored::default();
        }
        self.stored(self.pin_nodes())
    }
    /// Charge of the run capacitor, of either sign.
    pub fn run_capacitor_charge(&self) -> Stored {
        if self.live.motor_on {
            return Stored::default();
        }
        self.stored(self.roles.run_capacitor)
    }
    /// Leads the charge at the plug pins off.
    pub fn discharge_plug_pins(&mut self) {
        self.lead_off(self.pin_nodes());
    }
    /// Leads the charge of the run capacitor off.
    pub fn discharge_run_capacitor(&mut self) {
        self.lead_off(self.roles.run_capacitor);
    }

    /// Nothing is stored anywhere any more.
    pub fn lead_charge_off(&mut self) {
        self.charge = ChargeHistory::begun(self.switching());
    }

    fn lead_off(&mut self, nodes: [NodeId; 2]) {
        if !self.charge.is_forgotten(self.slowest_s, self.tick) {
            let (circuit, now) = (self.circuit(), self.switching());
            let result = self.charge.lead_off(&circuit, now, nodes);
            self.keep(result);
        }
    }

    /// Cabinet to the earth of the house with the plug in, Ω.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn earth_path_ohm(&self) -> Result<f64, MachineError> {
        let harness = self.electrics.harness();
        let point = harness.solve_dc(self.contacts, 0.0, [COLD_K; 2])?;
        Ok(point.seen(self.roles.cabinet, NodeId::EARTH).ohm)
    }

    pub(super) fn node(&self, name: &str) -> Result<NodeId, MachineError> {
        self.shared
            .node(name)
            .ok_or_else(|| MachineError::UnknownNode {
                name: name.to_owned(),
            })
    }

    pub(super) fn element(&self, name: &str) -> Result<ElementId, MachineError> {
        self.shared
            .element(name)
            .ok_or_else(|| MachineError::UnknownElement {
                name: name.to_owned(),
            })
    }
}
