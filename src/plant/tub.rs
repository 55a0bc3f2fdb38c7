//! Outer tub: level, overflow, seal leak, and the bookkeeping of every kilogram of water.
//!
//! ```text
//! V = wf/rho + s (wt/rho + m/rhofibre)      s = min(1, (wf/rho)/(submerging m))
//! h = V/A1                                  below the step, else hstep + (V − A1 hstep)/A2
//! overflow = min(200 (h − hov), 0.5)        kg/s
//! seal     = leak sqrt(h/0.29 m)
//! ```
//! Free water and textile water advance by the midpoint rule. Outflows are cut so that no
//! more leaves than there is: supplied = drained + floor + free + textile, to rounding.
//! Source: design choice. Limits: the water surface stays flat.

use crate::plant::drain::{self, DrainDerived, DrainInputs, DrainParams};
use crate::plant::drying;
use crate::plant::inlet::InletFlows;
use crate::plant::load::{self, LoadParams};
use crate::plant::numerics::bounded;
use crate::plant::params::{PlantParams, component_params};
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

/// Level at which seal and drain leaks are stated, m.
pub(crate) const FULL_LEVEL_M: f64 = 0.29;
/// Specific heat of water, J/(kg·K). Published: 20 °C.
const WATER_J_PER_KG_K: f64 = 4186.0;

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

/// Rates of the water at one instant, kg/s.
struct Rates {
    drain_kg_per_s: f64,
    floor_kg_per_s: f64,
    overflow_kg_per_s: f64,
    uptake_kg_per_s: f64,
}

fn rates(
    p: &PlantParams,
    d: &DrainDerived,
    u: &WaterInputs,
    free_kg: f64,
    textile_kg: f64,
) -> Rates {
    let rho = p.tub.water_kg_per_m3;
    let h = level_m(&p.tub, &p.load, free_kg, textile_kg);
    let drained = drain::flow_m3_per_s(&p.drain, d, u.drain, h) * rho;
    let joint = drained * p.drain.joint_leak_ratio;
    let overflow = ((h - p.tub.overflow_m) * p.tub.overflow_kg_per_s_m)
        .clamp(0.0, p.tub.overflow_limit_kg_per_s);
    let to_floor = overflow * p.tub.overflow_to_floor_ratio;
    let seal = if p.tub.seal_leak_m3_per_s > 0.0 {
        p.tub.seal_leak_m3_per_s * (h / FULL_LEVEL_M).sqrt() * rho
    } else {
        0.0
    };
    let spinning = drying::rate_kg_per_s(
        &p.drying,
        &p.load,
        p.basket.radius_m,
        textile_kg,
        u.spin_rad_per_s,
    );
    Rates {
        drain_kg_per_s: drained - joint + overflow - to_floor,
        floor_kg_per_s: joint + to_floor + seal,
        overflow_kg_per_s: overflow,
        uptake_kg_per_s: spinning
            .unwrap_or_else(|| load::uptake_kg_per_s(&p.load, free_kg, textile_kg)),
    }
}

/// What the neighbours impose during one step.
#[derive(Debug, Clone, Copy)]
pub(crate) struct WaterInputs {
    pub inlet: InletFlows,
    pub drain: DrainInputs,
    /// Basket speed while the drive is locked for spinning, else 0.
    pub spin_rad_per_s: f64,
}

/// Advances all water by `dt_s`.
pub(crate) fn step(
    p: &PlantParams,
    d: &DrainDerived,
    s: &mut TubState,
    u: &WaterInputs,
    dt_s: f64,
) -> TubFlows {
    let rho = p.tub.water_kg_per_m3;
    let inflow = u.inlet.tub_m3_per_s * rho;
    let first = rates(p, d, u, s.free_kg, s.textile_kg);
    let half_net = inflow - first.drain_kg_per_s - first.floor_kg_per_s - first.uptake_kg_per_s;
    let free_half = (s.free_kg + 0.5 * dt_s * half_net).max(0.0);
    let textile_half = (s.textile_kg + 0.5 * dt_s * first.uptake_kg_per_s).max(0.0);
    let mid = rates(p, d, u, free_half, textile_half);

    let uptake_kg = bounded(
        dt_s * mid.uptake_kg_per_s,
        -s.textile_kg,
        s.free_kg + dt_s * inflow,
    );
    let available_kg = s.free_kg + dt_s * inflow - uptake_kg;
    let wanted_kg = dt_s * (mid.drain_kg_per_s + mid.floor_kg_per_s);
    let share = if wanted_kg > available_kg {
        available_kg / wanted_kg
    } else {
        1.0
    };
    let (drained_kg, floor_kg) = (
        dt_s * mid.drain_kg_per_s * share,
        dt_s * mid.floor_kg_per_s * share,
    );

    warm(p, s, inflow, dt_s);
    s.textile_kg += uptake_kg;
    s.free_kg = (available_kg - drained_kg - floor_kg).max(0.0);
    let drip_kg = dt_s * u.inlet.floor_m3_per_s * rho;
    s.supplied_kg += dt_s * inflow + drip_kg;
    s.drained_kg += drained_kg;
    s.puddle_kg += floor_kg + drip_kg;
    TubFlows {
        inlet_m3_per_s: u.inlet.tub_m3_per_s,
        drain_m3_per_s: mid.drain_kg_per_s * share / rho,
        floor_m3_per_s: mid.floor_kg_per_s * share / rho + u.inlet.floor_m3_per_s,
        overflow_m3_per_s: mid.overflow_kg_per_s * share / rho,
    }
}

/// Mixes the inflow into the bath and cools it towards the room.
fn warm(p: &PlantParams, s: &mut TubState, inflow_kg_per_s: f64, dt_s: f64) {
    let mass_kg = (s.free_kg + s.textile_kg).max(1.0);
    let mixed = (dt_s * inflow_kg_per_s / mass_kg).min(1.0);
    s.bath_k += mixed * (p.inlet.water_k - s.bath_k);
    let lost = (dt_s * p.tub.heat_loss_w_per_k / (WATER_J_PER_KG_K * mass_kg)).min(1.0);
    s.bath_k += lost * (p.site.air_k - s.bath_k);
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

    fn inputs() -> WaterInputs {
        WaterInputs {
            inlet: InletFlows::default(),
            drain: DrainInputs {
                valve_ratio: 0.0,
                is_pumping: false,
            },
            spin_rad_per_s: 0.0,
        }
    }

    fn full() -> TubState {
        TubState {
            free_kg: 40.0,
            textile_kg: 3.0,
            bath_k: 293.15,
            supplied_kg: 43.0,
            drained_kg: 0.0,
            puddle_kg: 0.0,
        }
    }

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

    #[test]
    fn no_water_is_made_or_lost_with_every_leak_at_once() {
        let mut p = PlantParams::typical();
        p.tub.seal_leak_m3_per_s = 2e-5;
        p.drain.joint_leak_ratio = 0.3;
        p.tub.overflow_to_floor_ratio = 0.5;
        p.tub.overflow_m = 0.1;
        let d = DrainDerived::new(&p.drain);
        let mut s = full();
        for tick in 0..6000 {
            let mut u = inputs();
            u.inlet = InletFlows {
                tub_m3_per_s: 2e-4,
                floor_m3_per_s: 1e-6,
            };
            u.drain.valve_ratio = if tick % 600 > 300 { 1.0 } else { 0.0 };
            u.spin_rad_per_s = if tick % 600 > 450 { 78.0 } else { 0.0 };
            step(&p, &d, &mut s, &u, 0.1);
            let held = s.free_kg + s.textile_kg + s.drained_kg + s.puddle_kg;
            assert!((held - s.supplied_kg).abs() < 1e-9, "tick {tick}");
        }
        assert!(s.puddle_kg > 0.1);
    }

    #[test]
    fn a_bath_tends_to_the_room() {
        let p = PlantParams::typical();
        let d = DrainDerived::new(&p.drain);
        let mut s = full();
        (0..500_000).for_each(|_| {
            step(&p, &d, &mut s, &inputs(), 1.0);
        });
        assert!((s.bath_k - p.site.air_k).abs() < 1e-3);
    }

    #[test]
    fn a_worn_shaft_seal_wets_the_floor_only_while_water_stands() {
        let mut p = PlantParams::typical();
        p.tub.seal_leak_m3_per_s = 1e-5;
        let d = DrainDerived::new(&p.drain);
        let mut s = full();
        assert!(step(&p, &d, &mut s, &inputs(), 0.1).floor_m3_per_s > 0.0);
        s.free_kg = 0.0;
        s.textile_kg = 0.0;
        assert!(step(&p, &d, &mut s, &inputs(), 0.1).floor_m3_per_s <= 0.0);
    }
}
