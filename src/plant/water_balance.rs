//! The bookkeeping of every kilogram of water in the tub: in, out, into the load, onto the floor.
//!
//! ```text
//! overflow = min(200 (h − hov), 0.5)        kg/s
//! seal     = leak sqrt(h/0.29 m)
//! ```
//! Free water and textile water advance by the midpoint rule. Outflows are cut so that no
//! more leaves than there is: supplied = drained + floor + free + textile, to rounding.
//! Source: design choice.

use crate::plant::drain::FULL_LEVEL_M;
use crate::plant::drain::{self, DrainDerived, DrainInputs};
use crate::plant::drying;
use crate::plant::inlet::InletFlows;
use crate::plant::load;
use crate::plant::numerics::bounded;
use crate::plant::params::PlantParams;
use crate::plant::tub::{TubFlows, TubState, level_m};

/// Specific heat of water, J/(kg·K). Published: 20 °C.
const WATER_J_PER_KG_K: f64 = 4186.0;

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
