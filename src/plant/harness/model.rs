//! What a machine's wiring is: nodes, elements, motor, board supply, named states.
//!
//! Plain types a machine file is turned into; a fault changes a copy of the values, never
//! this. Nodes and elements keep the short names of the wiring diagram, which people type.

use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::plant::harness::motor::MotorParams;

/// A place in the wiring.
#[derive(Clone, Debug, PartialEq)]
pub struct WireNode {
    /// Short name, as typed.
    pub name: String,
    /// Plain name.
    pub label: String,
    /// True if a probe can reach it once access allows.
    pub is_accessible: bool,
}

/// A wire, contact, coil or part value between two places.
#[derive(Clone, Debug, PartialEq)]
pub struct WireElement {
    /// Short name.
    pub name: String,
    /// Where positive current enters and leaves.
    pub nodes: [NodeId; 2],
    /// Nominal values. A contact's `bit` is its position among the contacts.
    pub kind: ElementKind,
    /// What it is, in words.
    pub what: String,
    /// How far a good one may differ from nominal (0.05 = 5 %), if known.
    pub tolerance_ratio: Option<f64>,
    /// True if nominal is a lower bound (insulation).
    pub is_lower_bound: bool,
}

/// Two inductors sharing flux.
#[derive(Clone, Debug, PartialEq)]
pub struct WireCoupling {
    /// Name.
    pub name: String,
    /// The inductors.
    pub inductors: [ElementId; 2],
    /// Coupling factor.
    pub factor: f64,
}

/// Where the motor stands.
#[derive(Clone, Debug, PartialEq)]
pub struct WiredMotor {
    /// Name.
    pub name: String,
    /// Lead of winding 1.
    pub lead_a: NodeId,
    /// Lead of winding 2.
    pub lead_b: NodeId,
    /// Star point, before the protector.
    pub common: NodeId,
    /// Frame.
    pub frame: NodeId,
    /// Its parameters.
    pub params: MotorParams,
}

/// Supply and plug.
#[derive(Clone, Debug, PartialEq)]
pub struct WiredSupply {
    /// Mains source.
    pub source: ElementId,
    /// Plug contacts line, neutral, earth.
    pub plug_contacts: [ElementId; 3],
    /// Plug pins line and neutral.
    pub plug_pins: [NodeId; 2],
    /// Cord conductor whose current is the line current.
    pub line_conductor: ElementId,
    /// Element whose current is the protective-conductor current.
    pub earth_conductor: ElementId,
}

/// The low-voltage supply of an electronic control.
#[derive(Clone, Debug, PartialEq)]
pub struct LowVoltage {
    /// Transformer secondary at the board.
    pub secondary: [NodeId; 2],
    /// Regulator output: an ideal source.
    pub source: ElementId,
    /// Regulator output resistance; absent while the board does not run.
    pub regulator: ElementId,
    /// Rectifier loads as seen in AC.
    pub loads: Vec<ElementId>,
    /// What each load reads at DC when the board does not run, ohm.
    pub load_unpowered_ohm: f64,
    /// Raw voltage is `peak_ratio * secondary - diode_drop`.
    pub peak_ratio: f64,
    /// Drop of the rectifier, V.
    pub diode_drop_v: f64,
    /// Regulated voltage, V.
    pub regulated_v: f64,
    /// Raw voltage from which the regulator holds, V.
    pub raw_needed_v: f64,
    /// Below it, output is raw less this, V.
    pub dropout_v: f64,
    /// Voltage from which the board runs, V.
    pub runs_from_v: f64,
}

impl LowVoltage {
    /// Regulator output from the secondary's AC voltage, V.
    pub fn regulated_v(&self, secondary_v: f64) -> f64 {
        let raw_v = self.peak_ratio * secondary_v - self.diode_drop_v;
        if raw_v >= self.raw_needed_v {
            self.regulated_v
        } else {
            (raw_v - self.dropout_v).max(0.0)
        }
    }
}

/// Water level sensor: an oscillator whose coil grows with the water column.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelSensor {
    /// The coil.
    pub coil: ElementId,
    /// The two capacitors.
    pub capacitors: [ElementId; 2],
    /// Board pins the oscillator sees it through.
    pub pins: [NodeId; 2],
    /// Water column that doubles the inductance, m.
    pub column_doubling_m: f64,
}

/// A named state of contacts.
#[derive(Clone, Debug, PartialEq)]
pub struct WiringState {
    /// Name.
    pub name: String,
    /// Closed contacts.
    pub closed: Vec<ElementId>,
    /// Is the plug in?
    pub is_plugged: bool,
    /// Direction the control calls for: true is A.
    pub is_direction_a: Option<bool>,
    /// Load at the motor shaft, N m, if the motor is meant to run.
    pub load_n_m: Option<f64>,
}

/// Loads at the motor shaft, N m.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShaftLoads {
    /// While agitating.
    pub agitating_n_m: f64,
    /// While spinning steadily.
    pub spinning_n_m: f64,
    /// From rest.
    pub break_away_n_m: f64,
}

/// A machine's wiring.
#[derive(Clone, Debug, PartialEq)]
pub struct WiringModel {
    /// Supply frequency, Hz.
    pub frequency_hz: f64,
    /// Places; the first is earth.
    pub nodes: Vec<WireNode>,
    /// Elements.
    pub elements: Vec<WireElement>,
    /// Couplings of inductors.
    pub couplings: Vec<WireCoupling>,
    /// The wash motor.
    pub motor: WiredMotor,
    /// Supply and plug.
    pub supply: WiredSupply,
    /// Contact that follows the lid.
    pub lid_contact: ElementId,
    /// Shaft loads.
    pub loads: ShaftLoads,
    /// Contacts that need a running board to stay closed.
    pub outputs_needing_5v: Vec<ElementId>,
    /// Low-voltage supply, if there is a board.
    pub low_voltage: Option<LowVoltage>,
    /// Level sensor, if it is electrical.
    pub level_sensor: Option<LevelSensor>,
    /// Named states.
    pub states: Vec<WiringState>,
}

impl WiringModel {
    /// The node of a name.
    pub fn node(&self, name: &str) -> Option<NodeId> {
        self.nodes
            .iter()
            .position(|n| n.name == name)
            .map(|i| NodeId(i as u32))
    }

    /// The element of a name.
    pub fn element(&self, name: &str) -> Option<ElementId> {
        self.elements
            .iter()
            .position(|e| e.name == name)
            .map(|i| ElementId(i as u32))
    }

    /// The state of a name.
    pub fn state(&self, name: &str) -> Option<&WiringState> {
        self.states.iter().find(|s| s.name == name)
    }
}
