//! A charged capacitor discharged through a hand.
//!
//! ```text
//! E = C U² / 2     Q = C U     tau = C Z_body(U)
//! ```
//! Published: IEC 60479-2 for the effects, from memory.

use crate::bench::body::Body;

/// How a capacitor's discharge into a hand feels. Published: IEC 60479-2, from memory,
/// less sure: felt from about 0.5 µC, painful from about 50 µC; violent from 0.25 J and
/// dangerous from 10 J are common practice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DischargeEffect {
    /// Nothing.
    Unfelt,
    /// A prick.
    Felt,
    /// Pain and a start: what one does next is the danger.
    Painful,
    /// A blow.
    Violent,
    /// Danger for the heart.
    Dangerous,
}

/// A capacitor discharged through a hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HandDischarge {
    /// Energy set free, J.
    pub energy_j: f64,
    /// Charge that flowed, C.
    pub charge_c: f64,
    /// First current, A.
    pub peak_a: f64,
    /// Time constant of the decay, s.
    pub time_constant_s: f64,
    /// How it feels.
    pub effect: DischargeEffect,
}

/// Discharge of `capacitance_f` charged to `voltage_v` (sign does not matter) into a body.
pub fn hand_discharge(capacitance_f: f64, voltage_v: f64, body: &Body) -> HandDischarge {
    let size_v = voltage_v.abs();
    let energy_j = 0.5 * capacitance_f * size_v * size_v;
    let charge_c = capacitance_f * size_v;
    let effect = if energy_j >= 10.0 {
        DischargeEffect::Dangerous
    } else if energy_j >= 0.25 {
        DischargeEffect::Violent
    } else if charge_c >= 50.0e-6 {
        DischargeEffect::Painful
    } else if charge_c >= 0.5e-6 {
        DischargeEffect::Felt
    } else {
        DischargeEffect::Unfelt
    };
    HandDischarge {
        energy_j,
        charge_c,
        peak_a: body.current_a(size_v),
        time_constant_s: capacitance_f * body.impedance_ohm(size_v),
        effect,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::body::Path;
    use crate::bench::body::Percentile;
    use crate::bench::body::Skin;

    const BARE: Body = Body {
        percentile: Percentile::P50,
        skin: Skin::Dry,
        path: Path::HandToHand,
        series_ohm: 0.0,
    };

    #[test]
    fn stored_energies_are_those_of_the_sheet() {
        // Source: safety sheet, section 1: filter capacitors at the mains peak, run
        // capacitors at the running peak.
        let peak_v = core::f64::consts::SQRT_2;
        let rows = [
            (0.22e-6, 230.0 * peak_v, 11.6e-3, DischargeEffect::Painful),
            (0.1e-6, 230.0 * peak_v, 5.3e-3, DischargeEffect::Felt),
            (0.47e-6, 120.0 * peak_v, 6.8e-3, DischargeEffect::Painful),
            (10.0e-6, 369.0 * peak_v, 1.36, DischargeEffect::Violent),
            (12.0e-6, 372.0 * peak_v, 1.66, DischargeEffect::Violent),
            (45.0e-6, 186.0 * peak_v, 1.56, DischargeEffect::Violent),
        ];
        for (capacitance_f, voltage_v, energy_j, effect) in rows {
            let discharge = hand_discharge(capacitance_f, voltage_v, &BARE);
            assert!((discharge.energy_j / energy_j - 1.0).abs() < 0.01);
            assert!((discharge.charge_c - capacitance_f * voltage_v).abs() < 1e-12);
            assert_eq!(discharge.effect, effect, "{capacitance_f}");
        }
    }
}
