//! Faults as what they are: named changes of physical parameters, with severity and onset.
//!
//! Nothing else in the program knows a fault. What it shows, sounds like and reads follows from
//! solving the changed machine.

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;

use crate::plant::faults::PlantChange;
use crate::plant::harness::WiringChange;

/// One entry of the fault catalogue.
#[derive(Clone, Debug, PartialEq)]
pub struct FaultDef {
    /// Stable name, such as `capacitor_low`.
    pub id: String,
    /// Number in the reference list, such as `E51`; the command line takes either.
    pub reference: String,
    /// Name of the part it belongs to; empty for what is nobody's part.
    pub part: String,
    /// What is wrong, plain words.
    pub what: String,
    /// What kind of cause it is.
    pub class: FaultClass,
    /// Relative prior frequency.
    pub weight: f64,
    /// Where the weight comes from.
    pub weight_source: String,
    /// How a customer would say it.
    pub complaint: String,
    /// It comes in degrees: a severity below one means something.
    pub is_graded: bool,
    /// How it usually comes on.
    pub onset: Onset,
    /// Changes of the wiring.
    pub wiring: Vec<WiringChange>,
    /// Changes of plant parameters.
    pub plant: Vec<PlantChange>,
    /// Changes of the control: name and value at full severity.
    pub control: Vec<(String, f64)>,
}

/// Kinds of cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FaultClass {
    /// A part has failed.
    Part,
    /// Wires, pins, terminals.
    Harness,
    /// Outside the machine: tap, socket, hose, floor, load.
    Site,
    /// Left by an earlier repair.
    Refit,
}

/// When a fault is there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Onset {
    /// Always.
    Constant,
    /// From so many seconds after the technician's arrival.
    From {
        /// Start, s.
        start_s: f64,
    },
    /// On and off by chance: drawn anew each period from the job's seed.
    Intermittent {
        /// Length of a draw, s.
        period_s: f64,
        /// Chance that it is there in a period, 0..1.
        chance_ratio: f64,
    },
    /// Only while the hotter winding is above this.
    Hot {
        /// Threshold, K.
        above_k: f64,
    },
    /// Only while the basket turns faster than this.
    Vibration {
        /// Threshold, rad/s.
        above_rad_per_s: f64,
    },
}

/// A fault in a machine.
#[derive(Clone, Debug, PartialEq)]
pub struct ActiveFault {
    /// Name or reference number in the catalogue.
    pub id: String,
    /// 0 (not there) to 1 (as listed in the catalogue).
    pub severity_ratio: f64,
    /// When it is there; the catalogue's usual one when none is given.
    pub onset: Option<Onset>,
}

impl ActiveFault {
    /// A fault as listed in the catalogue, always there.
    pub fn constant(id: &str) -> Self {
        Self {
            id: id.to_owned(),
            severity_ratio: 1.0,
            onset: Some(Onset::Constant),
        }
    }
}

/// What an onset depends on at a moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Seconds since the technician's arrival.
    pub time_s: f64,
    /// Temperature of the hotter winding, K.
    pub winding_k: f64,
    /// Speed of the basket, rad/s.
    pub basket_rad_per_s: f64,
}

impl Onset {
    /// Whether the fault is there now. `stream` tells this fault's draws from those of others.
    pub fn is_on(self, now: Moment, seed: u64, stream: u64) -> bool {
        match self {
            Onset::Constant => true,
            Onset::From { start_s } => now.time_s >= start_s,
            Onset::Hot { above_k } => now.winding_k > above_k,
            Onset::Vibration { above_rad_per_s } => now.basket_rad_per_s.abs() > above_rad_per_s,
            Onset::Intermittent {
                period_s,
                chance_ratio,
            } => {
                let index = (now.time_s / period_s.max(0.1)) as u64;
                draw_ratio(seed, stream, index) < chance_ratio
            }
        }
    }

    /// It can come and go while the machine runs.
    pub fn varies(self) -> bool {
        self != Onset::Constant
    }
}

/// A number in 0..1 that depends on seed, purpose and index alone, so that no draw shifts another.
pub fn draw_ratio(seed: u64, purpose: u64, index: u64) -> f64 {
    let mut key = [0_u8; 32];
    key[..8].copy_from_slice(&seed.to_le_bytes());
    key[8..16].copy_from_slice(&purpose.to_le_bytes());
    key[16..24].copy_from_slice(&index.to_le_bytes());
    let bits = ChaCha8Rng::from_seed(key).next_u64() >> 11;
    bits as f64 / (1_u64 << 53) as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOW: Moment = Moment {
        time_s: 100.0,
        winding_k: 320.0,
        basket_rad_per_s: 0.0,
    };

    #[test]
    fn draws_depend_on_each_of_seed_purpose_and_index() {
        let base = draw_ratio(1, 2, 3);
        assert_eq!(base.to_bits(), draw_ratio(1, 2, 3).to_bits());
        for other in [
            draw_ratio(2, 2, 3),
            draw_ratio(1, 3, 3),
            draw_ratio(1, 2, 4),
        ] {
            assert_ne!(base.to_bits(), other.to_bits());
        }
    }

    #[test]
    fn intermittent_faults_are_there_about_as_often_as_said() {
        let onset = Onset::Intermittent {
            period_s: 10.0,
            chance_ratio: 0.3,
        };
        let there = (0..2000)
            .filter(|i| {
                onset.is_on(
                    Moment {
                        time_s: 10.0 * f64::from(*i),
                        ..NOW
                    },
                    7,
                    1,
                )
            })
            .count();
        assert!((500..700).contains(&there), "{there} of 2000");
    }

    #[test]
    fn heat_and_vibration_bring_a_fault_on() {
        assert!(!Onset::Hot { above_k: 350.0 }.is_on(NOW, 0, 0));
        assert!(Onset::Hot { above_k: 310.0 }.is_on(NOW, 0, 0));
        let spinning = Moment {
            basket_rad_per_s: -60.0,
            ..NOW
        };
        assert!(
            Onset::Vibration {
                above_rad_per_s: 30.0
            }
            .is_on(spinning, 0, 0)
        );
        assert!(!Onset::From { start_s: 101.0 }.is_on(NOW, 0, 0));
    }
}
