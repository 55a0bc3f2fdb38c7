//! A machine file: everything about one type of machine, so that a further machine needs no Rust.
//!
//! ```text
//! {"format": "tubwright-machine-1", "id", "name", "description", "rating_plate",
//!  "wiring": {…}, "roles": {…}, "plant": {"belt": {"tension_n": 65}, …},
//!  "control": {"electronic": {…}} or {"cam_timer": {…}}, "workshop": {…}}
//! ```
//! Units stand at the end of each name. Reading is strict; see [`crate::scenario::read`].

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::scenario::control_file::ControlFile;
use crate::scenario::roles_file::RolesFile;
use crate::scenario::wiring_file::WiringFile;
use crate::scenario::workshop_file::WorkshopFile;

/// The format this version reads and writes.
pub const MACHINE_FORMAT: &str = "tubwright-machine-1";

/// One type of machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct MachineFile {
    /// `tubwright-machine-1`.
    pub format: String,
    /// Short name, as in job files and the fault catalogue.
    pub id: String,
    /// Name on screens.
    pub name: String,
    /// What kind of machine it is, a few sentences.
    pub description: String,
    /// What the rating plate says.
    pub rating_plate: RatingPlateFile,
    /// Harness, motor and supply.
    pub wiring: WiringFile,
    /// Who is who in the wiring.
    pub roles: RolesFile,
    /// Plant parameters that differ from the typical machine: component, field, value.
    pub plant: BTreeMap<String, BTreeMap<String, f64>>,
    /// The control.
    pub control: ControlFile,
    /// What a technician can know and do about it.
    pub workshop: WorkshopFile,
}

/// What the rating plate says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RatingPlateFile {
    /// Nominal supply, V rms.
    pub supply_v: f64,
    /// Supply frequency, Hz.
    pub supply_hz: f64,
    /// Rated input, W.
    pub input_w: f64,
    /// Rated dry load, kg.
    pub load_kg: f64,
    /// Mass with basket, kg.
    pub mass_kg: f64,
    /// Lowest supply water pressure, MPa.
    pub water_low_mpa: f64,
    /// Highest supply water pressure, MPa.
    pub water_high_mpa: f64,
    /// Protection class, such as `I`.
    pub class: String,
    /// Run capacitor fitted, µF.
    pub run_capacitor_uf: f64,
    /// Fuse fitted, plain words.
    pub fuse: String,
}

/// The rating plate as a plain type, SI inside.
#[derive(Clone, Debug, PartialEq)]
pub struct MachinePlate {
    /// Nominal supply, V rms.
    pub supply_v: f64,
    /// Supply frequency, Hz.
    pub supply_hz: f64,
    /// Rated input, W.
    pub input_w: f64,
    /// Rated dry load, kg.
    pub load_kg: f64,
    /// Mass with basket, kg.
    pub mass_kg: f64,
    /// Lowest and highest supply water pressure, Pa.
    pub water_pa: [f64; 2],
    /// Protection class.
    pub class: String,
    /// Run capacitor fitted, F.
    pub run_capacitor_f: f64,
    /// Fuse fitted.
    pub fuse: String,
}

impl RatingPlateFile {
    /// The same in SI.
    pub fn to_plain(&self) -> MachinePlate {
        MachinePlate {
            supply_v: self.supply_v,
            supply_hz: self.supply_hz,
            input_w: self.input_w,
            load_kg: self.load_kg,
            mass_kg: self.mass_kg,
            water_pa: [self.water_low_mpa * 1.0e6, self.water_high_mpa * 1.0e6],
            class: self.class.clone(),
            run_capacitor_f: self.run_capacitor_uf / 1.0e6,
            fuse: self.fuse.clone(),
        }
    }
}
