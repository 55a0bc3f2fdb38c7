//! Detergent foam: an index from 0 (none) to 1 (the tub is full of suds).
//!
//! ```text
//! f' = (fdet − f)/60 s while the motor turns, else −f/600 s
//! ```
//! Source: design choice. Limits: no rinsing away with the water.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Detergent given by the customer.
    FoamParams {
        /// Index that agitation tends to; 0.6 to 1 after an overdose.
        detergent_ratio = 0.0, 0.0 => 1.0, text!("the foam after detergent");
        /// Time constant of rising. Design choice.
        rise_s = 60.0, 1.0 => 10_000.0, text!("the foam's rise time");
        /// Time constant of collapsing. Design choice.
        fall_s = 600.0, 1.0 => 100_000.0, text!("the foam's fall time");
    }
}

/// Motor speed above which foam is beaten up, rad/s.
const BEATING_RAD_PER_S: f64 = 10.0;

/// The suds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FoamState {
    /// 0 none, 1 full of suds.
    pub foam_ratio: f64,
}

/// Advances the foam; the shares are `1 − exp(−dt/tau)` for rising and falling.
pub(crate) fn step(
    p: &FoamParams,
    s: &mut FoamState,
    motor_rad_per_s: f64,
    rise_share: f64,
    fall_share: f64,
) {
    if motor_rad_per_s.abs() > BEATING_RAD_PER_S {
        s.foam_ratio += (p.detergent_ratio - s.foam_ratio) * rise_share;
    } else {
        s.foam_ratio -= s.foam_ratio * fall_share;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn foam_rises_towards_the_detergent_and_collapses_at_rest() {
        let mut p = FoamParams::typical();
        p.detergent_ratio = 0.8;
        let mut s = FoamState { foam_ratio: 0.0 };
        (0..10_000).for_each(|_| step(&p, &mut s, 150.0, 0.01, 0.001));
        assert!((s.foam_ratio - 0.8).abs() < 1e-9);
        step(&p, &mut s, 0.0, 0.01, 0.001);
        assert!(s.foam_ratio < 0.8);
    }
}
