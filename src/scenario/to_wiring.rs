//! From the electrical part of a machine file to a wiring model, naming every bad field.

use std::fmt::Display;
use std::sync::Arc;

use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::plant::harness::model::LevelSensor;
use crate::plant::harness::model::LowVoltage;
use crate::plant::harness::model::ShaftLoads;
use crate::plant::harness::model::WireCoupling;
use crate::plant::harness::model::WireElement;
use crate::plant::harness::model::WireNode;
use crate::plant::harness::model::WiredMotor;
use crate::plant::harness::model::WiredSupply;
use crate::plant::harness::model::WiringModel;
use crate::plant::harness::model::WiringState;
use crate::plant::harness::motor::MotorParams;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::wiring_file::DirectionWord;
use crate::scenario::wiring_file::ElementFile;
use crate::scenario::wiring_file::ElementWord;
use crate::scenario::wiring_file::MotorFile;
use crate::scenario::wiring_file::WiringFile;

/// Most contacts a wiring may have: one bit each.
const MOST_CONTACTS: u32 = 64;

/// Turns the electrical part of a machine file into a wiring model.
///
/// # Errors
/// Every problem found, each naming file, field, value and remedy.
pub fn wiring_model(file: &str, wiring: &WiringFile) -> Result<Arc<WiringModel>, FileError> {
    let mut names = Names::new(file, wiring);
    let model = names.model(wiring);
    names.problems.into_result(Arc::new(model))
}

/// Looks names up and collects what is wrong.
struct Names<'a> {
    nodes: Vec<&'a str>,
    elements: Vec<&'a str>,
    problems: Problems<'a>,
}

impl<'a> Names<'a> {
    fn new(file: &'a str, wiring: &'a WiringFile) -> Names<'a> {
        let mut nodes = vec!["0"];
        nodes.extend(
            wiring
                .nodes
                .keys()
                .map(String::as_str)
                .filter(|n| *n != "0"),
        );
        let plain = wiring
            .elements
            .iter()
            .filter(|(_, e)| e.kind != ElementWord::Coupling);
        let elements = plain.map(|(name, _)| name.as_str()).collect();
        Names {
            nodes,
            elements,
            problems: Problems::new(file),
        }
    }

    fn problem(&mut self, field: &str, value: impl Display, remedy: &str) {
        self.problems.add(&format!("wiring.{field}"), value, remedy);
    }

    fn node(&mut self, field: &str, name: &str) -> NodeId {
        match self.nodes.iter().position(|n| *n == name) {
            Some(index) => NodeId(index as u32),
            None => {
                self.problem(field, name, "it must be one of wiring.nodes");
                NodeId::EARTH
            }
        }
    }

    fn element(&mut self, field: &str, name: &str) -> ElementId {
        match self.elements.iter().position(|n| *n == name) {
            Some(index) => ElementId(index as u32),
            None => {
                self.problem(
                    field,
                    name,
                    "it must be one of wiring.elements (not a coupling)",
                );
                ElementId(0)
            }
        }
    }

    fn elements(&mut self, field: &str, names: &[String]) -> Vec<ElementId> {
        names.iter().map(|n| self.element(field, n)).collect()
    }

    fn model(&mut self, w: &WiringFile) -> WiringModel {
        if !(w.frequency_hz > 0.0 && w.frequency_hz < 1000.0) {
            self.problem(
                "frequency_hz",
                w.frequency_hz,
                "it must be above 0 and below 1000",
            );
        }
        WiringModel {
            frequency_hz: w.frequency_hz,
            nodes: self.wire_nodes(w),
            elements: self.wire_elements(w),
            couplings: self.couplings(w),
            motor: self.motor(&w.motor),
            supply: self.supply(w),
            lid_contact: self.element("lid_contact", &w.lid_contact),
            loads: ShaftLoads {
                agitating_n_m: self.not_negative("loads.agitating_n_m", w.loads.agitating_n_m),
                spinning_n_m: self.not_negative("loads.spinning_n_m", w.loads.spinning_n_m),
                break_away_n_m: self.not_negative("loads.break_away_n_m", w.loads.break_away_n_m),
            },
            outputs_needing_5v: self.elements("outputs_needing_5_v", &w.outputs_needing_5_v),
            low_voltage: self.low_voltage(w),
            level_sensor: self.level_sensor(w),
            states: self.states(w),
        }
    }

    fn wire_nodes(&mut self, w: &WiringFile) -> Vec<WireNode> {
        if !w.nodes.contains_key("0") {
            self.problem("nodes", "without `0`", "place `0` (earth) must be there");
        }
        let nodes = self.nodes.clone();
        let known = nodes
            .iter()
            .filter_map(|name| w.nodes.get(*name).map(|n| (*name, n)));
        known
            .map(|(name, n)| WireNode {
                name: name.to_owned(),
                label: n.label.clone(),
                is_accessible: n.accessible,
            })
            .collect()
    }

    fn wire_elements(&mut self, w: &WiringFile) -> Vec<WireElement> {
        let mut contacts = 0;
        let mut list = Vec::new();
        for (name, e) in w
            .elements
            .iter()
            .filter(|(_, e)| e.kind != ElementWord::Coupling)
        {
            let field = format!("elements.{name}");
            let kind = self.kind(&field, e, &mut contacts);
            let nodes = match &e.nodes {
                Some([a, b]) => [self.node(&field, a), self.node(&field, b)],
                None => {
                    self.problem(&field, "without nodes", "nodes must be two places");
                    [NodeId::EARTH; 2]
                }
            };
            list.push(WireElement {
                name: name.clone(),
                nodes,
                kind,
                what: e.what.clone(),
                tolerance_ratio: e.tolerance,
                is_lower_bound: e.at_least,
            });
        }
        if contacts > MOST_CONTACTS {
            self.problem("elements", contacts, "at most 64 of them may be contacts");
        }
        list
    }

    fn kind(&mut self, field: &str, e: &ElementFile, contacts: &mut u32) -> ElementKind {
        match e.kind {
            ElementWord::Resistor | ElementWord::Coupling => ElementKind::Resistor {
                ohm: self.value(field, "value", e.value),
            },
            ElementWord::Capacitor => ElementKind::Capacitor {
                farad: self.value(field, "value", e.value),
            },
            ElementWord::Inductor => {
                let henry = self.value(field, "value", e.value);
                if henry <= 0.0 {
                    self.problem(field, henry, "value must be above 0 henry");
                }
                ElementKind::Inductor { henry }
            }
            ElementWord::Contact => {
                let bit = *contacts;
                *contacts += 1;
                let closed_ohm = self.value(field, "closed_ohm", e.closed_ohm);
                let open_ohm = self.value(field, "open_ohm", e.open_ohm);
                if closed_ohm <= 0.0 {
                    self.problem(field, closed_ohm, "closed_ohm must be above 0");
                }
                ElementKind::Contact {
                    closed_ohm,
                    open_ohm,
                    open_farad: 0.0,
                    bit,
                }
            }
            ElementWord::Source => {
                let ac_v = self.value(field, "ac_v", e.ac_v);
                ElementKind::Source {
                    ac_v,
                    dc_v: self.value(field, "dc_v", e.dc_v),
                }
            }
        }
    }

    /// A number that must be there and not negative.
    fn value(&mut self, field: &str, part: &str, value: Option<f64>) -> f64 {
        match value {
            Some(v) => self.not_negative(&format!("{field}.{part}"), v),
            None => {
                self.problem(&format!("{field}.{part}"), "missing", "it must be a number");
                1.0
            }
        }
    }

    fn not_negative(&mut self, field: &str, value: f64) -> f64 {
        if !(value >= 0.0 && value.is_finite()) {
            self.problem(field, value, "it must be 0 or more");
        }
        value
    }

    fn couplings(&mut self, w: &WiringFile) -> Vec<WireCoupling> {
        let mut list = Vec::new();
        for (name, e) in w
            .elements
            .iter()
            .filter(|(_, e)| e.kind == ElementWord::Coupling)
        {
            let field = format!("elements.{name}");
            let factor = self.value(&field, "value", e.value);
            if factor >= 1.0 {
                self.problem(&field, factor, "value must be below 1");
            }
            match &e.inductors {
                Some([a, b]) => {
                    let inductors = [self.element(&field, a), self.element(&field, b)];
                    list.push(WireCoupling {
                        name: name.clone(),
                        inductors,
                        factor,
                    });
                }
                None => self.problem(
                    &field,
                    "without inductors",
                    "inductors must be two elements",
                ),
            }
        }
        list
    }

    fn supply(&mut self, w: &WiringFile) -> WiredSupply {
        let s = &w.supply;
        WiredSupply {
            source: self.element("supply.source", &s.source),
            plug_contacts: [
                self.element("supply.line_plug", &s.line_plug),
                self.element("supply.neutral_plug", &s.neutral_plug),
                self.element("supply.earth_plug", &s.earth_plug),
            ],
            plug_pins: [
                self.node("supply.plug_line", &s.plug_line),
                self.node("supply.plug_neutral", &s.plug_neutral),
            ],
            line_conductor: self.element("supply.line_conductor", &s.line_conductor),
            earth_conductor: self.element("supply.earth_conductor", &s.earth_conductor),
        }
    }

    fn motor(&mut self, m: &MotorFile) -> WiredMotor {
        let positive = [
            ("rated_frequency_hz", m.rated_frequency_hz),
            ("winding_1_ohm", m.winding_1_ohm),
            ("winding_2_ohm", m.winding_2_ohm),
            ("winding_1_leakage_ohm", m.winding_1_leakage_ohm),
            ("winding_2_leakage_ohm", m.winding_2_leakage_ohm),
            ("turns_ratio", m.turns_ratio),
            ("magnetising_ohm", m.magnetising_ohm),
            ("rotor_ohm", m.rotor_ohm),
            ("iron_loss_ohm", m.iron_loss_ohm),
            ("poles", f64::from(m.poles)),
        ];
        for (field, value) in positive {
            if !(value > 0.0 && value.is_finite()) {
                self.problem(&format!("motor.{field}"), value, "it must be above 0");
            }
        }
        if !(0.0..1.0).contains(&m.common_leakage_ratio) {
            let remedy = "it must be 0 or more and below 1";
            self.problem("motor.common_leakage_ratio", m.common_leakage_ratio, remedy);
        }
        WiredMotor {
            name: m.name.clone(),
            lead_a: self.node("motor.lead_a", &m.lead_a),
            lead_b: self.node("motor.lead_b", &m.lead_b),
            common: self.node("motor.common", &m.common),
            frame: self.node("motor.frame", &m.frame),
            params: MotorParams {
                poles: m.poles,
                rated_frequency_hz: m.rated_frequency_hz,
                winding_ohm: [m.winding_1_ohm, m.winding_2_ohm],
                leakage_ohm: [m.winding_1_leakage_ohm, m.winding_2_leakage_ohm],
                turns_ratio: m.turns_ratio,
                magnetising_ohm: m.magnetising_ohm,
                rotor_ohm: m.rotor_ohm,
                rotor_leakage_ohm: self
                    .not_negative("motor.rotor_leakage_ohm", m.rotor_leakage_ohm),
                iron_loss_ohm: m.iron_loss_ohm,
                friction_n_m: self.not_negative("motor.friction_n_m", m.friction_n_m),
                windage_w: self.not_negative("motor.windage_w", m.windage_w),
                common_leakage_ratio: m.common_leakage_ratio,
            },
        }
    }

    fn low_voltage(&mut self, w: &WiringFile) -> Option<LowVoltage> {
        let low = w.low_voltage.as_ref()?;
        Some(LowVoltage {
            secondary: [
                self.node("low_voltage.secondary", &low.secondary[0]),
                self.node("low_voltage.secondary", &low.secondary[1]),
            ],
            source: self.element("low_voltage.source", &low.source),
            regulator: self.element("low_voltage.regulator", &low.regulator),
            loads: self.elements("low_voltage.loads", &low.loads),
            load_unpowered_ohm: self
                .not_negative("low_voltage.load_unpowered_ohm", low.load_unpowered_ohm),
            peak_ratio: self.not_negative("low_voltage.peak_ratio", low.peak_ratio),
            diode_drop_v: self.not_negative("low_voltage.diode_drop_v", low.diode_drop_v),
            regulated_v: self.not_negative("low_voltage.regulated_v", low.regulated_v),
            raw_needed_v: self.not_negative("low_voltage.raw_needed_v", low.raw_needed_v),
            dropout_v: self.not_negative("low_voltage.dropout_v", low.dropout_v),
            runs_from_v: self.not_negative("low_voltage.runs_from_v", low.runs_from_v),
        })
    }

    fn level_sensor(&mut self, w: &WiringFile) -> Option<LevelSensor> {
        let s = w.level_sensor.as_ref()?;
        let doubling_mm =
            self.not_negative("level_sensor.column_doubling_mm", s.column_doubling_mm);
        let [c1, c2] = &s.capacitors;
        let [p1, p2] = &s.pins;
        Some(LevelSensor {
            coil: self.element("level_sensor.coil", &s.coil),
            capacitors: [
                self.element("level_sensor.capacitors", c1),
                self.element("level_sensor.capacitors", c2),
            ],
            pins: [
                self.node("level_sensor.pins", p1),
                self.node("level_sensor.pins", p2),
            ],
            column_doubling_m: doubling_mm / 1000.0,
        })
    }

    fn states(&mut self, w: &WiringFile) -> Vec<WiringState> {
        let mut list = Vec::new();
        for (name, s) in &w.states {
            let field = format!("states.{name}.closed");
            list.push(WiringState {
                name: name.clone(),
                closed: self.elements(&field, &s.closed),
                is_plugged: s.plugged,
                is_direction_a: s.direction.map(|d| d == DirectionWord::A),
                load_n_m: s.load_n_m,
            });
        }
        list
    }
}
