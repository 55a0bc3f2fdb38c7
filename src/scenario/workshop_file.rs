//! The `workshop` section of a machine file, and what each field of it means.
//!
//! Times are minutes in the file, because a person writes and reads them; seconds inside.
//! Fields that are usual are left out of the file: their defaults stand at the type.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::visit::Advice;
use crate::scenario::effect_file::EffectFile;
use crate::scenario::effect_file::HarmFile;
use crate::scenario::effect_file::MistakeFile;
use crate::scenario::effect_file::SealantFile;

/// What a technician can know and do about this type of machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WorkshopFile {
    /// What is screwed, clipped or hung in the way.
    pub steps: Vec<StepFile>,
    /// What can be ordered and fitted.
    pub parts: Vec<PartFile>,
    /// What can be done to put something right.
    pub works: Vec<WorkFile>,
    /// What can be pulled apart by hand.
    pub connectors: Vec<ConnectorFile>,
    /// Where a probe or clamp can reach.
    pub test_points: Vec<TestPointFile>,
    /// Where eyes, ears, hands and nose can go.
    pub places: Vec<PlaceFile>,
    /// What a good machine reads.
    pub data_sheet: Vec<DataSheetLineFile>,
    /// Steps of the service test: plain words for each, in the control's order.
    pub service_steps: Vec<String>,
    /// Programs the customer can choose.
    pub programs: Vec<String>,
}

/// One thing to take off and later put back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StepFile {
    /// Stable name in files and logs.
    pub id: String,
    /// Plain name on screens.
    pub name: String,
    /// What is done to it, such as "take off".
    pub verb: String,
    /// What puts it back, such as "refit".
    pub refit_verb: String,
    /// Steps that come first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<String>,
    /// Tools used, plain words.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tools: Vec<String>,
    /// What holds it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub fasteners: String,
    /// Loose pieces that come off with it, and must go back.
    #[serde(default, skip_serializing_if = "is_none")]
    pub n_fasteners: u32,
    /// Working time to take it off, min.
    pub off_min: f64,
    /// Working time to put it back, min.
    pub on_min: f64,
    /// What can hurt or break.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub caution: String,
    /// What must be verified when it goes back.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub refit_check: String,
    /// What is physically different while it is off.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub while_off: Vec<EffectFile>,
    /// What goes wrong when it goes back without the check.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub mistakes: Vec<MistakeFile>,
    /// Bare mains parts can be touched once it is off.
    #[serde(default, skip_serializing_if = "is_false")]
    pub opens_live_parts: bool,
    /// The machine itself is moved or tilted.
    #[serde(default, skip_serializing_if = "is_false")]
    pub moves_machine: bool,
    /// The machine lies down by it: no water should be in the tub.
    #[serde(default, skip_serializing_if = "is_false")]
    pub lays_down: bool,
    /// Water runs out where it comes apart.
    #[serde(default, skip_serializing_if = "is_false")]
    pub lets_water_out: bool,
    /// It cannot be got at under water.
    #[serde(default, skip_serializing_if = "is_false")]
    pub needs_dry_tub: bool,
    /// Heavy or awkward: help or a strap is needed.
    #[serde(default, skip_serializing_if = "is_false")]
    pub needs_help: bool,
    /// It stands over the hands once it is open: it must be propped or tied.
    #[serde(default, skip_serializing_if = "is_false")]
    pub needs_support: bool,
    /// What it damages in the wrong order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub harms: Vec<HarmFile>,
}

/// Something that can be ordered and replaced.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PartFile {
    /// Stable name in files and logs.
    pub id: String,
    /// Plain name on screens.
    pub name: String,
    /// Letter code by IEC 81346 with a number.
    pub designation: String,
    /// Price in the money unit.
    pub price: f64,
    /// What it does, one plain sentence.
    pub does: String,
    /// How it fails, one plain sentence.
    pub fails: String,
    /// Elements of the wiring that come new with it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub elements: Vec<String>,
    /// Plant and control parameters that come new with it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub params: Vec<String>,
    /// Once fitted it cannot go back to the shelf.
    #[serde(default, skip_serializing_if = "is_false")]
    pub sold_once_fitted: bool,
    /// Voltage the original is made for, V.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_v: Option<f64>,
    /// Current the original is made for, A.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_a: Option<f64>,
    /// Elements that burn out above this current, A.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub burns_above_a: BTreeMap<String, f64>,
    /// Parts of another make that fit in its place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub variants: Vec<VariantFile>,
}

/// A part of another make.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct VariantFile {
    /// Stable name within its part.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Price in the money unit.
    pub price: f64,
    /// Elements of the part with their value once it is fitted: Ω, F or H.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub values: BTreeMap<String, f64>,
    /// Parameters of the part with their value once it is fitted.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub params: BTreeMap<String, f64>,
    /// Voltage it is made for, V.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_v: Option<f64>,
    /// Current it is made for, A.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_a: Option<f64>,
}

/// Kind of work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum WorkKindFile {
    /// Fit a new part.
    Replace,
    /// Remove dirt, lint, a coin.
    Clean,
    /// Set tension, play, height, level.
    Adjust,
    /// Push home, hook in, seat.
    Reseat,
    /// Seal a joint.
    Reseal,
    /// Show or tell the customer.
    Instruct,
}

/// Something that can be done to put things right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WorkFile {
    /// Stable name.
    pub id: String,
    /// Plain words.
    pub name: String,
    /// Kind of work.
    pub kind: WorkKindFile,
    /// The part it is done to; left out for what is outside the machine.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub part: String,
    /// Steps that come first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<String>,
    /// Tools used, plain words.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tools: Vec<String>,
    /// What holds the part, such as "2 screws, plug".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub fasteners: String,
    /// Loose pieces that come off with it, and must go back.
    #[serde(default, skip_serializing_if = "is_none")]
    pub n_fasteners: u32,
    /// Working time, min; for a replacement old part out and new part in.
    pub work_min: f64,
    /// Price of material on top of the part's price.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub material_price: f64,
    /// What can hurt or break.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub caution: String,
    /// What must be verified afterwards.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub check: String,
    /// Elements this work makes good again.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub elements: Vec<String>,
    /// Parameters this work makes good again.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub params: Vec<String>,
    /// What is left wrong when the check is left out.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub mistakes: Vec<MistakeFile>,
    /// What seals the joint needs time before water.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sealant: Option<SealantFile>,
    /// What a customer is told so that it does not come back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub teach: Option<Advice>,
}

/// A connector or terminal that can be pulled apart by hand.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ConnectorFile {
    /// Stable name.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Elements that are open circuits while it is apart.
    pub elements: Vec<String>,
    /// Steps that come first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<String>,
    /// The place where it is.
    pub place: String,
    /// What pulling or pushing it damages in the wrong order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub harms: Vec<HarmFile>,
}

/// Where a probe can touch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct TestPointFile {
    /// Name of the node in the wiring.
    pub node: String,
    /// Plain name.
    pub name: String,
    /// Steps that come first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<String>,
    /// The place where it is.
    pub place: String,
}

/// Somewhere to look, listen, feel or smell.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PlaceFile {
    /// Stable name.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Steps that come first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<String>,
    /// The part that is there, if any.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub part: String,
}

/// One line of the data sheet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DataSheetLineFile {
    /// What the line is about, plain words.
    pub what: String,
    /// Meter mode as in the log.
    pub mode: String,
    /// Red test point, or the element in a clamp's jaws.
    pub red: String,
    /// Black test point; left out for a clamp.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub black: String,
    /// What the machine must be doing.
    pub state: String,
    /// Connectors that must be apart.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub apart: Vec<String>,
    /// Lowest good value, in the mode's SI unit.
    pub low: f64,
    /// Highest good value, in the mode's SI unit; left out where there is no upper limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub high: Option<f64>,
}

fn is_none(n: &u32) -> bool {
    *n == 0
}

fn is_false(value: &bool) -> bool {
    !value
}

fn is_zero(value: &f64) -> bool {
    value.abs() < f64::MIN_POSITIVE
}
