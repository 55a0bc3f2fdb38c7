//! What an act of a machine file's `workshop` section changes besides its purpose: damage in the
//! wrong order, what an unchecked refit leaves wrong, a sealant that had no time.

use serde::Deserialize;
use serde::Serialize;

/// Which way something moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum WayFile {
    /// Taken off, pulled apart.
    Off,
    /// Put back, pushed together.
    On,
}

/// Damage that an act does in the wrong order.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HarmFile {
    /// Taking off or putting back; left out: either.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub way: Option<WayFile>,
    /// Steps that must be in place for the act to be harmless.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub on: Vec<String>,
    /// The machine must be without voltage for the act to be harmless.
    #[serde(default, skip_serializing_if = "is_false")]
    pub dead: bool,
    /// The tub must be empty for the act to be harmless.
    #[serde(default, skip_serializing_if = "is_false")]
    pub dry: bool,
    /// What is damaged, plain words.
    pub what: String,
    /// The physical difference.
    pub effects: Vec<EffectFile>,
}

/// What a refit without its check can leave wrong.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct MistakeFile {
    /// Plain words.
    pub what: String,
    /// Chance when the check is left out, 0..1.
    pub chance: f64,
    /// The physical difference.
    pub effects: Vec<EffectFile>,
}

/// A sealant and what comes of water before its time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SealantFile {
    /// Time until it holds, min.
    pub sets_min: f64,
    /// The physical difference when water came first.
    pub effects: Vec<EffectFile>,
}

/// One physical difference.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum EffectFile {
    /// The named element of the wiring is an open circuit.
    Open(String),
    /// The named element of the wiring has another value.
    Value {
        /// Name of the element.
        element: String,
        /// Its value, in the element's own unit.
        value: f64,
    },
    /// A plant parameter has another value.
    Param {
        /// Dotted name, such as `belt.tension_n`.
        name: String,
        /// Its value, in the unit the name ends with.
        value: f64,
    },
}

fn is_false(value: &bool) -> bool {
    !value
}
