//! Outer tub: its shape, its water and the level that this gives.
//!
//! ```text
//! V = wf/rho + s (wt/rho + m/rhofibre)      s = min(1, (wf/rho)/(submerging m))
//! h = V/A1                                  below the step, else hstep + (V − A1 hstep)/A2
//! ```
//! What comes and goes is reckoned in `water_balance.rs`. Source: design choice. Limits: the water
//! surface stays flat.

use crate::plant::drain::DrainParams;
use crate::plant::load::LoadParams;
use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// The vessel.
    TubParams {
        /// Free area below the step (pulsator hub, basket base). Design choice.
        area_low_m2 = 0.160, 0.01 => 1.0, text!("the tub's lower area");
        /// Free area above the step. Design choice.
        area_high_m2 = 0.183, 0.01 => 1.0, text!("the tub's upper area");
        /// Height of the area's step above the tub floor. Design choice.
        step_m = 0.050, 0.0 => 0.3, text!("the height of the tub's step");
        /// Overflow edge above the tub floor. Design choice.
        overflow_m = 0.400, 0.05 => 5.0, text!("the overflow edge");
        /// Overflow per metre above the edge. Design choice.
        overflow_kg_per_s_m = 200.0, 0.0 => 10_000.0, text!("the overflow's width");
        /// Most the overflow passes. Design choice.
        overflow_limit_kg_per_s = 0.5, 0.0 => 10.0, text!("the overflow's limit");
        /// Share of the overflow that ends on the floor rather than in the drain.
        overflow_to_floor_ratio = 1.0, 0.0 => 1.0, text!("the overflow's share on the floor");
        /// Density for volumes. Published: IAPWS at 20 °C.
        water_kg_per_m3 = 998.2, 900.0 => 1100.0, text!("the water's density");
        /// Drip of the mechanism's shaft seal at 0.29 m of water.
        seal_leak_m3_per_s = 0.0, 0.0 => 0.001, text!("the leak of the shaft seal");
        /// Heat loss of the bath. From memory.
        heat_loss_w_per_k = 6.0, 0.0 => 1000.0, text!("the tub's heat loss");
    }
}

/// The water, and where all of it went since the start.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TubState {
    /// Water free to flow, kg.
    pub free_kg: f64,
    /// Water in the textile, kg.
    pub textile_kg: f64,
    /// Bath temperature, K.
    pub bath_k: f64,
    /// Everything that came in so far, joint drip and what was poured by hand included, kg.
    pub supplied_kg: f64,
    /// Everything that left by the drain hose or was bailed out, kg.
    pub drained_kg: f64,
    /// Water on the floor under the machine, kg.
    pub puddle_kg: f64,
}

/// Flows of one step, for sound, sight and tests.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct TubFlows {
    /// Inlet valve into the tub, m³/s.
    pub inlet_m3_per_s: f64,
    /// Out of the drain hose, m³/s.
    pub drain_m3_per_s: f64,
    /// Onto the floor from all leaks, m³/s.
    pub floor_m3_per_s: f64,
    /// Over the edge, m³/s.
    pub overflow_m3_per_s: f64,
}

/// Level above the tub floor, m.
pub fn level_m(tub: &TubParams, load: &LoadParams, free_kg: f64, textile_kg: f64) -> f64 {
    let mut volume_m3 = free_kg / tub.water_kg_per_m3;
    if load.dry_kg > 0.0 {
        let submerged = (volume_m3 / (load.submerging_m3_per_kg * load.dry_kg)).min(1.0);
        volume_m3 +=
            submerged * (textile_kg / tub.water_kg_per_m3 + load.dry_kg / load.fibre_kg_per_m3);
    }
    let low_m3 = tub.area_low_m2 * tub.step_m;
    if volume_m3 < low_m3 {
        volume_m3 / tub.area_low_m2
    } else {
        tub.step_m + (volume_m3 - low_m3) / tub.area_high_m2
    }
}

/// Volume of free water at a level without load, m³: the inverse of [`level_m`].
pub fn volume_m3(tub: &TubParams, level_m: f64) -> f64 {
    if level_m < tub.step_m {
        level_m * tub.area_low_m2
    } else {
        tub.area_low_m2 * tub.step_m + (level_m - tub.step_m) * tub.area_high_m2
    }
}

/// Level left when the drain hose's end stands above the tub floor, m.
pub fn residual_level_m(drain: &DrainParams) -> f64 {
    drain.outlet_m.max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::params::PlantParams;

    #[test]
    fn level_and_volume_are_inverse_without_load() {
        let p = PlantParams::typical();
        let mut load = p.load.clone();
        load.dry_kg = 0.0;
        for litres in [0.0, 3.0, 8.0, 28.0, 52.0] {
            let h = level_m(&p.tub, &load, litres * 0.9982, 0.0);
            assert!((volume_m3(&p.tub, h) - litres * 1e-3).abs() < 1e-12);
        }
    }
}
