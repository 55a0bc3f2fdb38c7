//! The electrical part of a machine file, as written.
//!
//! Places and elements are named as on the wiring diagram; place `0` is earth. Values are in
//! SI (ohm, farad, henry, volt) except the level sensor's column in millimetres.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

/// A place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct NodeFile {
    /// Plain name.
    pub label: String,
    /// Can a probe reach it (once access allows)?
    pub accessible: bool,
}

/// What every element says of itself.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ElementFile {
    /// resistor, capacitor, inductor, contact, source or coupling.
    pub kind: ElementWord,
    /// From and to; not for couplings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub nodes: Option<[String; 2]>,
    /// The coupled inductors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub inductors: Option<[String; 2]>,
    /// Ohm, farad, henry, or coupling factor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub value: Option<f64>,
    /// A contact's resistance closed, ohm.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub closed_ohm: Option<f64>,
    /// A contact's resistance open, ohm.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open_ohm: Option<f64>,
    /// A source's AC voltage, V rms.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ac_v: Option<f64>,
    /// A source's DC voltage, V.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dc_v: Option<f64>,
    /// What it is, in words.
    pub what: String,
    /// How far a good one may differ (0.05 = 5 %).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance: Option<f64>,
    /// True if the value is a lower bound (insulation).
    #[serde(default, skip_serializing_if = "core::ops::Not::not")]
    pub at_least: bool,
}

/// Kinds of elements.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ElementWord {
    /// A resistor.
    #[default]
    Resistor,
    /// A capacitor.
    Capacitor,
    /// An inductor.
    Inductor,
    /// A contact.
    Contact,
    /// An ideal source.
    Source,
    /// Two inductors sharing flux.
    Coupling,
}

/// The wash motor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(
    missing_docs,
    reason = "the fields are those of MotorParams and WiredMotor"
)]
pub struct MotorFile {
    pub name: String,
    pub lead_a: String,
    pub lead_b: String,
    pub common: String,
    pub frame: String,
    pub poles: u32,
    pub rated_frequency_hz: f64,
    pub winding_1_ohm: f64,
    pub winding_2_ohm: f64,
    pub winding_1_leakage_ohm: f64,
    pub winding_2_leakage_ohm: f64,
    pub turns_ratio: f64,
    pub magnetising_ohm: f64,
    pub rotor_ohm: f64,
    pub rotor_leakage_ohm: f64,
    pub iron_loss_ohm: f64,
    pub friction_n_m: f64,
    pub windage_w: f64,
    pub common_leakage_ratio: f64,
}

/// Supply and plug.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(missing_docs, reason = "the fields are those of WiredSupply")]
pub struct SupplyFile {
    pub source: String,
    pub line_plug: String,
    pub neutral_plug: String,
    pub earth_plug: String,
    pub line_conductor: String,
    pub earth_conductor: String,
    pub plug_line: String,
    pub plug_neutral: String,
}

/// Low-voltage supply of a board.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(missing_docs, reason = "the fields are those of LowVoltage")]
pub struct LowVoltageFile {
    pub secondary: [String; 2],
    pub source: String,
    pub regulator: String,
    pub loads: Vec<String>,
    pub load_unpowered_ohm: f64,
    pub peak_ratio: f64,
    pub diode_drop_v: f64,
    pub regulated_v: f64,
    pub raw_needed_v: f64,
    pub dropout_v: f64,
    pub runs_from_v: f64,
}

/// Electrical water level sensor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(missing_docs, reason = "the fields are those of LevelSensor")]
pub struct LevelSensorFile {
    pub coil: String,
    pub capacitors: [String; 2],
    pub pins: [String; 2],
    pub column_doubling_mm: f64,
}

/// Shaft loads, N m.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(missing_docs, reason = "the fields are those of ShaftLoads")]
pub struct LoadsFile {
    pub agitating_n_m: f64,
    pub spinning_n_m: f64,
    pub break_away_n_m: f64,
}

/// Direction the control calls for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum DirectionWord {
    /// Line on lead A.
    A,
    /// Line on lead B.
    B,
}

/// A named state of contacts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StateFile {
    /// Closed contacts.
    pub closed: Vec<String>,
    /// Is the plug in?
    pub plugged: bool,
    /// Direction the control calls for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub direction: Option<DirectionWord>,
    /// Load at the motor shaft, N m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load_n_m: Option<f64>,
}

/// The electrical part of a machine file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WiringFile {
    /// Supply frequency, Hz.
    pub frequency_hz: f64,
    /// Places by name; `0` is earth.
    pub nodes: BTreeMap<String, NodeFile>,
    /// Elements by name.
    pub elements: BTreeMap<String, ElementFile>,
    /// The wash motor.
    pub motor: MotorFile,
    /// Supply and plug.
    pub supply: SupplyFile,
    /// Contact that follows the lid.
    pub lid_contact: String,
    /// Shaft loads.
    pub loads: LoadsFile,
    /// Contacts that need a running board.
    pub outputs_needing_5_v: Vec<String>,
    /// Low-voltage supply, if there is a board.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub low_voltage: Option<LowVoltageFile>,
    /// Level sensor, if it is electrical.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level_sensor: Option<LevelSensorFile>,
    /// Named states.
    pub states: BTreeMap<String, StateFile>,
}
