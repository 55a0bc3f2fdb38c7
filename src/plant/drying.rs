//! Extraction: how spinning takes water out of the textile.
//!
//! ```text
//! G  = w² R/g                      Xe = min(Xdrained, Xg (G/Gref)^-n)
//! x' = −(x − Xe)/(tau sqrt(140/G)) while x > Xe and w > 5 rad/s
//! ```
//! Source: form and values from memory, fitted to cotton spin figures. Limits: one textile,
//! no effect of temperature; the water goes into the tub and must leave by the drain.

use crate::plant::load::LoadParams;
use crate::plant::param_table::component_params;
use crate::text;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

component_params! {
    /// How willingly the textile gives up water.
    DryingParams {
        /// Moisture at rest at the reference acceleration. From memory.
        equilibrium_ratio = 0.72, 0.0 => 5.0, text!("the load's moisture after long spinning");
        /// Reference acceleration over gravity. From memory.
        reference_ratio = 172.0, 1.0 => 10_000.0, text!("the reference acceleration");
        /// Exponent. From memory.
        exponent_ratio = 0.356, 0.0 => 3.0, text!("the extraction's exponent");
        /// Time constant at G = 140. From memory.
        time_s = 60.0, 0.1 => 100_000.0, text!("the extraction's time");
    }
}

/// Slowest basket that extracts, rad/s.
const SLOWEST_RAD_PER_S: f64 = 5.0;
/// Acceleration at which the time constant is stated.
const TIME_REFERENCE_RATIO: f64 = 140.0;

/// Acceleration at the basket wall over gravity.
pub fn g_ratio(speed_rad_per_s: f64, radius_m: f64) -> f64 {
    speed_rad_per_s * speed_rad_per_s * radius_m / STANDARD_GRAVITY_M_PER_S2
}

/// Moisture that spinning tends to, kg water per kg dry load.
pub fn equilibrium_ratio(p: &DryingParams, drained_ratio: f64, g_ratio: f64) -> f64 {
    let x = p.equilibrium_ratio * libm::pow(g_ratio / p.reference_ratio, -p.exponent_ratio);
    x.min(drained_ratio)
}

/// Change of the textile's water, kg/s (never positive); `None` when the basket is too slow.
pub fn rate_kg_per_s(
    p: &DryingParams,
    load: &LoadParams,
    radius_m: f64,
    textile_kg: f64,
    speed_rad_per_s: f64,
) -> Option<f64> {
    let g = g_ratio(speed_rad_per_s, radius_m);
    if load.dry_kg <= 0.0 || speed_rad_per_s <= SLOWEST_RAD_PER_S || g <= 2.0 {
        return None;
    }
    let moisture = textile_kg / load.dry_kg;
    let excess = (moisture - equilibrium_ratio(p, load.drained_ratio, g)).max(0.0);
    Some(-load.dry_kg * excess / (p.time_s * (TIME_REFERENCE_RATIO / g).sqrt()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn faster_spinning_leaves_less_water() {
        let p = DryingParams::typical();
        let at = |rpm: f64| {
            equilibrium_ratio(&p, 2.2, g_ratio(rpm * core::f64::consts::PI / 30.0, 0.215))
        };
        assert!(at(800.0) < at(600.0));
        // Plant data sheet section 5: 0.777 at 760 r/min.
        assert!((at(760.0) - 0.777).abs() < 5e-4);
    }

    #[test]
    fn a_standing_basket_extracts_nothing() {
        let load = LoadParams::typical();
        assert_eq!(
            rate_kg_per_s(&DryingParams::typical(), &load, 0.215, 8.0, 0.0),
            None
        );
    }
}
