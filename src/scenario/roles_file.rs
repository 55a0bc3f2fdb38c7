//! The `roles` section of a machine file: which element or node of the wiring plays which part in
//! the machine, so that plant, control and bench find them without knowing any name.

use serde::Deserialize;
use serde::Serialize;

/// Who is who in the wiring. What a machine does not have is left out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RolesFile {
    /// The mechanical on/off switch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub power_switch: Option<String>,
    /// Contact of the lid switch.
    pub lid_switch: String,
    /// Contact of the out-of-balance switch.
    pub lever_switch: String,
    /// Thermal protector in the motor's common lead.
    pub protector: String,
    /// Contacts each output closes.
    pub outputs: OutputsFile,
    /// Contacts of a pressure switch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level_switch: Option<LevelSwitchFile>,
    /// Elements whose current drives something.
    pub coils: CoilsFile,
    /// Logic supply: plus node, minus node.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub logic_rail: Option<[String; 2]>,
    /// How the control senses the lid.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lid_sense: Option<SenseFile>,
    /// How the control senses the out-of-balance switch where it has an input of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lever_sense: Option<SenseFile>,
    /// Board pins of the level sensor's oscillator.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level_pins: Option<[String; 2]>,
    /// Links between socket and plug.
    pub plug: Vec<String>,
    /// Plug pins: line, neutral, earth.
    pub plug_pins: [String; 3],
    /// Socket: line, neutral, earth.
    pub socket: [String; 3],
    /// Cabinet metal.
    pub cabinet: String,
    /// Run capacitor terminals.
    pub run_capacitor: [String; 2],
}

/// Contacts each output closes.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct OutputsFile {
    /// Motor in the spin direction.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub motor_forward: Vec<String>,
    /// Motor in the other direction.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub motor_reverse: Vec<String>,
    /// Inlet valve, cold.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub inlet_valve: Vec<String>,
    /// Inlet valve, hot.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub hot_valve: Vec<String>,
    /// Drain motor, or clutch motor where a pump drains.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub drain_motor: Vec<String>,
    /// Drain pump.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub drain_pump: Vec<String>,
    /// Contacts of a cam timer, in the order of its `contacts`.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub timer: Vec<String>,
}

/// A pressure switch: its changeovers, and the knob that chooses between them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LevelSwitchFile {
    /// Changeovers, each with the level at which it moves.
    pub sections: Vec<LevelSectionFile>,
    /// Positions of the level knob, in its order; left out where there is no knob.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub knob: Vec<LevelPositionFile>,
    /// Where the knob usually stands, by index.
    #[serde(default, skip_serializing_if = "is_first")]
    pub usual: u32,
}

/// One changeover of a pressure switch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LevelSectionFile {
    /// Which set pressure of the plant's `level_switch` moves it.
    pub level: LevelWord,
    /// Closed below it.
    pub empty: Vec<String>,
    /// Closed above it.
    pub full: Vec<String>,
}

/// A set pressure of a pressure switch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum LevelWord {
    /// `level_switch.low_pa`.
    Low,
    /// `level_switch.medium_pa`.
    Medium,
    /// `level_switch.high_pa`.
    High,
}

/// One position of the level knob.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LevelPositionFile {
    /// Name on the panel.
    pub name: String,
    /// Contacts it closes.
    pub closed: Vec<String>,
}

fn is_first(index: &u32) -> bool {
    *index == 0
}

/// Elements whose current drives something mechanical.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CoilsFile {
    /// Inlet valve, cold.
    pub inlet_valve: String,
    /// Inlet valve, hot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hot_valve: Option<String>,
    /// Drain motor, or clutch motor where a pump drains.
    pub drain_motor: String,
    /// Drain pump.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drain_pump: Option<String>,
    /// Timer motor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub timer_motor: Option<String>,
}

/// A sense input of the control: closed above one voltage, open below another.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SenseFile {
    /// Node measured.
    pub node: String,
    /// Against this node.
    pub against: String,
    /// Mains-frequency input; else DC.
    pub is_ac: bool,
    /// Closed above this, V.
    pub closed_above_v: f64,
    /// Open below this, V.
    pub open_below_v: f64,
}
