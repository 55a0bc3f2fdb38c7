//! Every number of the plant, each under one stable dotted name such as `belt.tension_n`.
//!
//! The names come from the components' tables, so a machine file or a fault can set whatever
//! the equations read, and nothing else.

use thiserror::Error;

use crate::plant::actuator::{ActuatorParams, BrakeParams, ClutchParams, LeverParams};
use crate::plant::air_trap::{SensorParams, TrapParams};
use crate::plant::drain::DrainParams;
use crate::plant::drive::{BasketParams, BeltParams, GearParams, PulsatorParams, RotorParams};
use crate::plant::drying::DryingParams;
use crate::plant::foam::FoamParams;
use crate::plant::heat::HeatParams;
use crate::plant::inlet::InletParams;
use crate::plant::load::LoadParams;
use crate::plant::param_table::ParamAbout;
use crate::plant::param_table::ParamTable;
use crate::plant::pressure_switch::LevelSwitchParams;
use crate::plant::site::SiteParams;
use crate::plant::suspension::{RingParams, SuspensionParams};
use crate::plant::tub::TubParams;

/// Why a parameter could not be read or set.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum ParamError {
    /// No parameter has this name.
    #[error("there is no plant parameter \"{name}\"; near it are {}", near.join(", "))]
    Unknown {
        /// The name asked for.
        name: String,
        /// Up to three names that resemble it, best first.
        near: Vec<String>,
    },
    /// The value lies outside what the equations accept, or is not a number.
    #[error("{words} ({name}) cannot be {value}; {min} to {max} is possible")]
    OutOfRange {
        /// Dotted name.
        name: String,
        /// What a person calls it.
        words: &'static str,
        /// The refused value.
        value: f64,
        /// Smallest possible value.
        min: f64,
        /// Largest possible value.
        max: f64,
    },
}

/// States the list of components once: field, type, and thereby the dotted prefix.
macro_rules! plant_params {
    ($( $(#[$doc:meta])* $part:ident: $kind:ty, )*) => {
        /// All parameters of one machine's plant and its site.
        #[derive(Debug, Clone, PartialEq)]
        pub struct PlantParams {
            $( $(#[$doc])* pub $part: $kind, )*
        }
        impl PlantParams {
            /// The sound machine P on a good site with an ordinary load.
            pub fn typical() -> Self {
                Self { $( $part: <$kind>::typical(), )* }
            }
            /// Every parameter in a fixed order: component, then what is known of the field.
            pub fn entries() -> impl Iterator<Item = (&'static str, &'static ParamAbout)> {
                [$( (stringify!($part), <$kind as ParamTable>::ABOUT), )*]
                    .into_iter()
                    .flat_map(|(part, table)| table.iter().map(move |about| (part, about)))
            }
            fn value(&self, part: &str, field: &str) -> Option<f64> {
                match part {
                    $( stringify!($part) => self.$part.value(field), )*
                    _ => None,
                }
            }
            fn slot(&mut self, part: &str, field: &str) -> Option<&mut f64> {
                match part {
                    $( stringify!($part) => self.$part.slot(field), )*
                    _ => None,
                }
            }
        }
    };
}

plant_params! {
    /// Room, floor and feet.
    site: SiteParams,
    /// Tap, supply hose, strainer and inlet valve.
    inlet: InletParams,
    /// Outer tub.
    tub: TubParams,
    /// What lies in the basket.
    load: LoadParams,
    /// Air chamber and air hose.
    trap: TrapParams,
    /// Oscillator-type level sensor.
    sensor: SensorParams,
    /// Mechanical level switch.
    level_switch: LevelSwitchParams,
    /// Drain valve or pump, drain hose.
    drain: DrainParams,
    /// Drain motor.
    actuator: ActuatorParams,
    /// Clutch lever and its link.
    lever: LeverParams,
    /// Band brake.
    brake: BrakeParams,
    /// Spin clutch and one-way bearing.
    clutch: ClutchParams,
    /// Motor's mechanical side.
    rotor: RotorParams,
    /// Belt and pulleys.
    belt: BeltParams,
    /// Planet gear.
    gear: GearParams,
    /// Pulsator.
    pulsator: PulsatorParams,
    /// Spin basket and its bearing.
    basket: BasketParams,
    /// Extraction of water by spinning.
    drying: DryingParams,
    /// Rods, springs, dampers, lever switch and cabinet.
    suspension: SuspensionParams,
    /// Balance ring.
    ring: RingParams,
    /// Motor heat and protector.
    heat: HeatParams,
    /// Detergent foam.
    foam: FoamParams,
}

impl PlantParams {
    /// Value of a parameter by its dotted name.
    pub fn get(&self, name: &str) -> Result<f64, ParamError> {
        split(name)
            .and_then(|(part, field)| self.value(part, field))
            .ok_or_else(|| unknown(name))
    }

    /// Sets a parameter by its dotted name, or says why not and changes nothing.
    pub fn set(&mut self, name: &str, value: f64) -> Result<(), ParamError> {
        let about = Self::about(name)?;
        if !(value >= about.min && value <= about.max) {
            return Err(ParamError::OutOfRange {
                name: name.to_owned(),
                words: about.words,
                value,
                min: about.min,
                max: about.max,
            });
        }
        let slot = split(name).and_then(|(part, field)| self.slot(part, field));
        *slot.ok_or_else(|| unknown(name))? = value;
        Ok(())
    }

    /// What is known of a parameter by its dotted name.
    pub fn about(name: &str) -> Result<&'static ParamAbout, ParamError> {
        let (part, field) = split(name).ok_or_else(|| unknown(name))?;
        Self::entries()
            .find(|(owner, about)| *owner == part && about.field == field)
            .map(|(_, about)| about)
            .ok_or_else(|| unknown(name))
    }
}

fn split(name: &str) -> Option<(&str, &str)> {
    name.split_once('.')
}

fn unknown(name: &str) -> ParamError {
    let mut ranked: Vec<(usize, String)> = PlantParams::entries()
        .map(|(part, about)| format!("{part}.{}", about.field))
        .map(|known| (edit_distance(name, &known), known))
        .collect();
    ranked.sort();
    ParamError::Unknown {
        name: name.to_owned(),
        near: ranked.into_iter().take(3).map(|(_, known)| known).collect(),
    }
}

/// Letters to insert, delete or exchange to turn `a` into `b` (Levenshtein; published 1966).
fn edit_distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, to) in b.iter().enumerate() {
            let exchanged = diagonal + usize::from(from != *to);
            diagonal = row[j + 1];
            row[j + 1] = exchanged.min(row[j] + 1).min(diagonal + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_can_be_read_and_set_to_what_it_is() {
        let mut params = PlantParams::typical();
        for (part, about) in PlantParams::entries() {
            let name = format!("{part}.{}", about.field);
            let value = params.get(&name).expect("listed name");
            assert_eq!(value.to_bits(), about.typical.to_bits(), "{name}");
            params
                .set(&name, value)
                .expect("typical value lies in its range");
        }
        assert_eq!(params, PlantParams::typical());
    }

    #[test]
    fn a_misspelt_name_lists_the_right_one_first() {
        let error = PlantParams::typical()
            .get("belt.tenson_n")
            .expect_err("misspelt");
        let ParamError::Unknown { near, .. } = &error else {
            panic!("{error}");
        };
        assert_eq!(near[0], "belt.tension_n");
        assert!(error.to_string().contains("belt.tension_n"));
    }

    #[test]
    fn a_value_out_of_range_is_refused_in_words_and_changes_nothing() {
        let mut params = PlantParams::typical();
        for value in [-1.0, f64::NAN, f64::INFINITY] {
            let error = params.set("belt.tension_n", value).expect_err("impossible");
            assert!(error.to_string().contains("belt"), "{error}");
        }
        assert_eq!(params, PlantParams::typical());
    }

    #[test]
    fn every_field_says_its_unit() {
        const UNITS: &[&str] = &[
            "_n",
            "_m",
            "_m2",
            "_m3",
            "_kg",
            "_s",
            "_hz",
            "_pa",
            "_k",
            "_rad",
            "_ratio",
            "_h",
            "_f",
            "_n_m",
            "_n_per_m",
            "_kg_m2",
            "_kg_m",
            "_j_per_k",
            "_w_per_k",
            "_m3_per_s",
            "_m3_per_s_sqrt_pa",
            "_m3_per_s_pa",
            "_m3_per_kg",
            "_kg_per_m3",
            "_kg_per_m",
            "_m_per_s",
            "_n_m_s2",
            "_n_m_s2_per_m",
            "_n_m_per_kg",
            "_s2_per_m5",
            "_rad_per_s",
            "_kg_per_s",
            "_kg_per_s_m",
            "_per_k",
            "_n_m_per_n",
        ];
        for (part, about) in PlantParams::entries() {
            assert!(
                UNITS.iter().any(|unit| about.field.ends_with(unit)),
                "{part}.{}",
                about.field
            );
        }
    }
}
