//! What follows from the parameters alone, worked out once when they change.

use crate::plant::drain::DrainDerived;
use crate::plant::drive::DriveDerived;
use crate::plant::drive::bearing_n_m;
use crate::plant::drive::belt_tension_ratio;
use crate::plant::inlet::InletDerived;
use crate::plant::params::PlantParams;
use crate::plant::swing::SuspensionDerived;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

/// Constants of all components.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Derived {
    pub inlet: InletDerived,
    pub drain: DrainDerived,
    pub drive: DriveDerived,
    pub suspension: SuspensionDerived,
    /// Shares of first-order lags over 1 to 10 steps.
    pub lags: [Lags; 10],
}

/// `1 − exp(−dt/tau)` of every first-order lag for one length of step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Lags {
    pub sensor_share: f64,
    pub protector_share: f64,
    pub foam_rise_share: f64,
    pub foam_fall_share: f64,
    pub swing_share: f64,
    pub rock_share: f64,
}

/// The swing settles at least this fast, 1/s: dry friction helps where damping is weak.
const SLOWEST_SWING_PER_S: f64 = 0.3;

impl Derived {
    pub(crate) fn new(p: &PlantParams, step_s: f64) -> Self {
        let suspension = SuspensionDerived::new(p);
        let natural = (STANDARD_GRAVITY_M_PER_S2 / p.suspension.rod_m).sqrt();
        let swing_per_s = (p.suspension.damping_ratio * natural).max(SLOWEST_SWING_PER_S);
        let rock_per_s = p.suspension.damping_ratio * suspension.rock_rad_per_s;
        let lags = core::array::from_fn(|i| {
            let dt_s = step_s * (i + 1) as f64;
            let share = |tau_s: f64| {
                if tau_s > 0.0 {
                    -libm::expm1(-dt_s / tau_s)
                } else {
                    1.0
                }
            };
            Lags {
                sensor_share: share(p.trap.lag_s),
                protector_share: share(p.heat.protector_lag_s),
                foam_rise_share: share(p.foam.rise_s),
                foam_fall_share: share(p.foam.fall_s),
                swing_share: share(1.0 / swing_per_s),
                rock_share: share(1.0 / rock_per_s),
            }
        });
        Self {
            inlet: InletDerived::new(&p.inlet, step_s),
            drain: DrainDerived::new(&p.drain),
            drive: DriveDerived::new(p),
            suspension,
            lags,
        }
    }
}

/// Torque below which a link may let the motor run alone, N·m. Above any pull-out torque here.
const WEAK_N_M: f64 = 3.0;

impl DriveDerived {
    pub(crate) fn new(p: &PlantParams) -> Self {
        let (belt, rotor) = (&p.belt, &p.rotor);
        let belt_ratio = belt.large_pulley_m / belt.small_pulley_m;
        let wash_ratio = belt_ratio * p.gear.ratio_ratio;
        let grip = belt_tension_ratio(belt);
        let belt_n_m_per_n = belt.small_pulley_m * (grip - 1.0) / (grip + 1.0);
        let belt_limit = (belt_n_m_per_n * belt.tension_n).min(belt.pulley_grip_n_m);
        let belt_slips_first = belt_limit <= p.pulsator.spline_n_m / wash_ratio;
        let sun_at_motor = belt.inertia_kg_m2 / (belt_ratio * belt_ratio);
        let pulsator_at_motor = p.pulsator.inertia_kg_m2 / (wash_ratio * wash_ratio);
        let sun_at_pulsator = belt.inertia_kg_m2 * p.gear.ratio_ratio * p.gear.ratio_ratio;
        Self {
            belt_n_m_per_n,
            belt_ratio,
            wash_ratio,
            friction_n_m: bearing_n_m(rotor, belt),
            wash_loss_ratio: 1.0 / (belt.efficiency_ratio * p.gear.efficiency_ratio) - 1.0,
            spin_loss_ratio: 1.0 / belt.efficiency_ratio - 1.0,
            belt_slips_first,
            wash_kg_m2: rotor.inertia_kg_m2 + sun_at_motor + pulsator_at_motor,
            wash_before_kg_m2: rotor.inertia_kg_m2
                + if belt_slips_first { 0.0 } else { sun_at_motor },
            wash_behind_kg_m2: p.pulsator.inertia_kg_m2
                + if belt_slips_first {
                    sun_at_pulsator
                } else {
                    0.0
                },
            is_weak: belt_limit < WEAK_N_M
                || p.clutch.torque_n_m / belt_ratio < WEAK_N_M
                || p.pulsator.spline_n_m / wash_ratio < WEAK_N_M,
        }
    }
}
