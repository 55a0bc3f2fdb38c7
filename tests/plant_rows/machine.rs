//! The machine the rows were made with, and how to run it to an event.

use tubwright::plant::air_trap::COLUMN_PA_PER_M;
use tubwright::plant::drive::MotorInput;
use tubwright::plant::motor_table::MotorTable;
use tubwright::plant::params::PlantParams;
use tubwright::plant::{Plant, PlantInputs, TICK_S};
use tubwright::units::CELSIUS_ZERO_K;

/// Machine P's body with the rows' own rotor, sensor and heat.
pub fn reference() -> PlantParams {
    let mut p = PlantParams::typical();
    let column_m = 2624.8 / (COLUMN_PA_PER_M * (26.0 * 26.0 / (22.0 * 22.0) - 1.0));
    for (name, value) in [
        ("rotor.inertia_kg_m2", 0.0016),
        ("rotor.friction_n_m", 0.02),
        ("rotor.windage_n_m_s2", 0.0),
        // 26 kHz on 11 nF: two capacitors of 22 nF in series.
        ("sensor.coil_h", 3.406_441e-3),
        ("sensor.capacitor_f", 22e-9),
        ("sensor.column_m", column_m),
        // Their load stays spread once it was.
        ("load.tangling_s", 1e9),
        // One winding of 360 J/K and 8 W/K is two halves of it.
        ("heat.winding_j_per_k", 180.0),
        ("heat.winding_core_w_per_k", 4.0),
        ("heat.core_j_per_k", 1900.0),
        ("heat.core_air_w_per_k", 2.5),
        ("heat.fan_w_per_k", 3.0),
        ("heat.protector_lag_s", 12.0),
        ("heat.trip_k", CELSIUS_ZERO_K + 130.0),
        ("heat.reset_k", CELSIUS_ZERO_K + 85.0),
    ] {
        p.set(name, value).expect(name);
    }
    p
}

/// Reference machine whose valve and hose have no lag, as the closed forms assume.
pub fn without_lags() -> PlantParams {
    let mut p = reference();
    p.inlet.opening_s = 1e-3;
    p.trap.lag_s = 0.01;
    p
}

pub fn forward(table: &MotorTable) -> MotorInput<'_> {
    MotorInput::On {
        table,
        is_forward: true,
    }
}

/// Wire pulled by hand at once, motor as given.
pub fn pulled(motor: MotorInput<'_>) -> PlantInputs<'_> {
    PlantInputs {
        motor,
        hand_stroke_m: 0.017,
        ..PlantInputs::IDLE
    }
}

/// Time until `value` passes `target` from either side, s, interpolated inside the tick.
pub fn time_until(
    plant: &mut Plant,
    u: &PlantInputs<'_>,
    value: impl Fn(&Plant) -> f64,
    target: f64,
    limit_s: f64,
) -> f64 {
    let mut last = (0.0, value(plant));
    let rises = last.1 < target;
    let mut n = 0;
    while f64::from(n) * TICK_S < limit_s {
        // Whole seconds while resting, where values change at the second only.
        let ticks = if plant.is_resting(u) { 10 } else { 1 };
        (0..ticks).for_each(|_| plant.tick(u));
        n += ticks;
        let now = (f64::from(n) * TICK_S, value(plant));
        if (now.1 >= target) == rises {
            return last.0 + (now.0 - last.0) * (target - last.1) / (now.1 - last.1);
        }
        last = now;
    }
    f64::INFINITY
}
