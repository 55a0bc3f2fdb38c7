//! What follows from the parameters alone, worked out once when they change.

use crate::plant::drain::DrainDerived;
use crate::plant::drive::DriveDerived;
use crate::plant::inlet::InletDerived;
use crate::plant::params::PlantParams;
use crate::plant::suspension::SuspensionDerived;
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
