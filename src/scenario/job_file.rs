//! A job file: one customer's call. Who calls and what they say, which machine, where it stands,
//! what is wrong, what is in the van, and what things cost.
//!
//! ```text
//! {"format": "tubwright-job-1", "title", "level", "skills", "machine": "P",
//!  "customer": {…}, "site": {…}, "faults": [{"id", "severity"}], "van": […], "money": {…}}
//! ```
//! The file's name without its ending is the job's id. What is wrong with the house (no earth,
//! low supply, exchanged conductors) stands among the faults like everything else that is wrong.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;
use serde::Serializer;

use crate::bench::action::MeterMode;
use crate::bench::gauge::Gauge;
use crate::bench::questions::QUESTIONS;
use crate::scenario::fault_file::OnsetFile;
use crate::scenario::visit_file::VisitFile;

/// The format this version reads and writes.
pub const JOB_FORMAT: &str = "tubwright-job-1";

/// One customer's call.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct JobFile {
    /// `tubwright-job-1`.
    pub format: String,
    /// Short title that does not give the cause away.
    pub title: String,
    /// 1 (opening job) to 5.
    pub level: u8,
    /// Skills practised, plain words.
    pub skills: Vec<String>,
    /// Short name of the machine.
    pub machine: String,
    /// Who calls.
    pub customer: CustomerFile,
    /// Where the machine stands.
    pub site: SiteFile,
    /// What is wrong; an empty list is a sound machine.
    pub faults: Vec<JobFaultFile>,
    /// Pairs of faults, by name, that may come together; the expert reckons with them beside all
    /// single ones.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub double_faults: Vec<[String; 2]>,
    /// Parts on board, at most eight.
    pub van: Vec<String>,
    /// Prices and rates.
    pub money: RatesFile,
    /// What the technician may use and must reach; left out: everything, and no bar.
    #[serde(default, skip_serializing_if = "RulesFile::is_open")]
    pub rules: RulesFile,
    /// What surrounds the repair; left out: a bench exercise.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub visit: Option<VisitFile>,
    /// What a skilled technician's way costs; filled in once it is computed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<ReferenceFile>,
}

/// The person who called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CustomerFile {
    /// Name.
    pub name: String,
    /// Where they live, a few words.
    pub home: String,
    /// How they meet the technician, a few words.
    pub attitude: String,
    /// The complaint in their own words.
    pub complaint: String,
    /// Answers by question; a second one comes when the question is asked differently.
    #[serde(serialize_with = "in_order_of_the_talk")]
    pub answers: BTreeMap<String, Vec<String>>,
}

/// Answers are written in the order in which the questions are asked; others follow.
fn in_order_of_the_talk<S: Serializer>(
    answers: &BTreeMap<String, Vec<String>>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let place = |id: &str| QUESTIONS.iter().position(|question| question.id == id);
    let mut list: Vec<_> = answers.iter().collect();
    list.sort_by_key(|(id, _)| place(id).unwrap_or(QUESTIONS.len()));
    serializer.collect_map(list)
}

/// Where the machine stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SiteFile {
    /// Dry load in the basket, kg.
    pub load_kg: f64,
    /// How much of it lies on one side, kg.
    pub unbalance_kg: f64,
    /// Water left in the tub, L.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub water_l: f64,
    /// The tap is open when the technician arrives.
    pub tap_open: bool,
    /// Rated residual current of the protective device, mA; `null` where the house has none.
    pub rcd_ma: Option<f64>,
    /// Room temperature, °C.
    pub room_degc: f64,
    /// Water pressure, MPa.
    pub water_mpa: f64,
    /// Slope of the floor, degrees.
    pub floor_tilt_deg: f64,
    /// What anyone sees of the place.
    pub notes: String,
}

fn is_zero(value: &f64) -> bool {
    *value == 0.0
}

/// A fault in the machine or the house.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct JobFaultFile {
    /// Name in the catalogue.
    pub id: String,
    /// 0 (not there) to 1 (as listed).
    pub severity: f64,
    /// When it is there; left out: as the catalogue says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub onset: Option<OnsetFile>,
}

/// Prices and rates in the job's money unit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RatesFile {
    /// Labour, unit per minute.
    pub labour_per_min: f64,
    /// Call-out with travel, unit.
    pub call_out: f64,
    /// A second visit, unit.
    pub second_visit: f64,
    /// A callback because the machine still fails, unit.
    pub callback: f64,
    /// A new machine, unit.
    pub new_machine: f64,
}

/// What the technician may use and must reach.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RulesFile {
    /// Modes of the instruments in the bag; left out: all of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instruments: Option<Vec<MeterMode>>,
    /// Instruments that need no circuit in the bag; left out: all of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gauges: Option<Vec<Gauge>>,
    /// Hints are given; left out: in opening jobs only.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hints: Option<bool>,
    /// What the job may cost, money unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub budget: Option<f64>,
    /// Time on site it may take, min.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<f64>,
    /// Marks of 100 it must reach.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pass_marks: Option<f64>,
}

impl RulesFile {
    /// Nothing is ruled.
    pub fn is_open(&self) -> bool {
        *self == Self::default()
    }
}

/// What a skilled technician needs.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ReferenceFile {
    /// Cost, unit.
    pub cost: f64,
    /// Time on site, min.
    pub minutes: f64,
}
