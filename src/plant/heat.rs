//! Motor heat: two windings, one core, and the protector that feels the hotter winding.
//!
//! ```text
//! Cw dTi/dt = Pi (1 + a (Tm − 20 °C)) − Gwc (Ti − Tc)      i = 1, 2; Tm = (T1 + T2)/2
//! Cc dTc/dt = Pin − Pcu − Pshaft + Gwc (T1 + T2 − 2 Tc) − (G0 + Gfan |w|/157) (Tc − Tair)
//! protector: lag behind the hotter winding; opens at the trip, closes at the reset
//! ```
//! Losses come at the motor table's copper temperature and are restated to the windings' mean,
//! as the harness solves the motor with one copper temperature.
//! One lumped winding (2 Cw, 2 Gwc) is the special case of equal losses. Source: constants
//! of machine P design choice (electrical sheet); copper coefficient published, IEC 60028.
//! Limits: current follows the table, whose copper temperature the harness keeps near.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Heat capacities, paths and the protector.
    HeatParams {
        /// Each winding. Design choice.
        winding_j_per_k = 110.0, 1.0 => 1.0e5, text!("a winding's heat capacity");
        /// Each winding to the core. Design choice: 0.7 K/W.
        winding_core_w_per_k = 1.0 / 0.7, 0.0 => 1000.0, text!("the path from winding to core");
        /// Core and frame. Design choice.
        core_j_per_k = 1300.0, 1.0 => 1.0e6, text!("the core's heat capacity");
        /// Core to room, standing. Design choice: with less a sound motor trips in a long wash.
        core_air_w_per_k = 2.5, 0.0 => 1000.0, text!("the standing motor's cooling");
        /// What the fan adds at 157 rad/s. Design choice.
        fan_w_per_k = 3.0, 0.0 => 1000.0, text!("the fan's cooling");
        /// Lag of the protector behind the winding; 0 for one bonded to it.
        protector_lag_s = 0.0, 0.0 => 10_000.0, text!("the protector's lag");
        /// Protector opens. Design choice: 125 °C.
        trip_k = 398.15, 250.0 => 2000.0, text!("the protector's trip temperature");
        /// Protector closes. Design choice: 80 °C.
        reset_k = 353.15, 200.0 => 2000.0, text!("the protector's reset temperature");
        /// Copper's temperature coefficient at 20 °C. Published: IEC 60028.
        copper_per_k = 0.00393, 0.0 => 0.02, text!("copper's temperature coefficient");
    }
}

/// Speed at which the fan's share is stated, rad/s.
const FAN_REFERENCE_RAD_PER_S: f64 = 157.08;
/// Temperature at which copper is stated, K.
const COPPER_REFERENCE_K: f64 = 293.15;

/// Temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatState {
    /// Winding 1, winding 2, K.
    pub winding_k: [f64; 2],
    /// Core and frame, K.
    pub core_k: f64,
    /// The protector's own temperature, K.
    pub protector_k: f64,
    /// The protector has opened.
    pub is_open: bool,
    /// How often it has opened since the start.
    pub n_trips: u32,
}

/// Mean powers during one step.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HeatInputs {
    /// Copper loss of each winding at `copper_k`, W.
    pub copper_w: [f64; 2],
    /// Copper temperature the losses belong to, K; ignored when there is no loss.
    pub copper_k: f64,
    /// Electrical input, W.
    pub input_w: f64,
    /// Mechanical output in the air gap, W.
    pub shaft_w: f64,
    /// Motor speed, rad/s.
    pub rotor_rad_per_s: f64,
    /// Room, K.
    pub air_k: f64,
}

/// A motor that has stood long enough to be as warm as the room.
pub fn cold(air_k: f64) -> HeatState {
    HeatState {
        winding_k: [air_k; 2],
        core_k: air_k,
        protector_k: air_k,
        is_open: false,
        n_trips: 0,
    }
}

/// Resistance of copper over its resistance at 20 °C.
pub fn copper_ratio(p: &HeatParams, temperature_k: f64) -> f64 {
    1.0 + p.copper_per_k * (temperature_k - COPPER_REFERENCE_K)
}

/// Advances by `dt_s`; `lag_share` is `1 − exp(−dt/lag)`.
pub fn step(p: &HeatParams, s: &mut HeatState, u: &HeatInputs, dt_s: f64, lag_share: f64) {
    let cooling =
        p.core_air_w_per_k + p.fan_w_per_k * u.rotor_rad_per_s.abs() / FAN_REFERENCE_RAD_PER_S;
    let before_k = s.winding_k[0].max(s.winding_k[1]);
    let mean_k = 0.5 * (s.winding_k[0] + s.winding_k[1]);
    let restated = copper_ratio(p, mean_k) / copper_ratio(p, u.copper_k).max(0.1);
    let mut core_w =
        u.input_w - u.copper_w[0] - u.copper_w[1] - u.shaft_w - cooling * (s.core_k - u.air_k);
    for (winding_k, copper_w) in s.winding_k.iter_mut().zip(u.copper_w) {
        let to_core_w = p.winding_core_w_per_k * (*winding_k - s.core_k);
        *winding_k += dt_s * (copper_w * restated - to_core_w) / p.winding_j_per_k;
        core_w += to_core_w;
    }
    let after_k = s.winding_k[0].max(s.winding_k[1]);
    // Half way through the step, so that the lag keeps second order; no lag feels the end.
    let felt_k = if lag_share < 1.0 {
        0.5 * (before_k + after_k)
    } else {
        after_k
    };
    s.protector_k += (felt_k - s.protector_k) * lag_share;
    s.core_k += dt_s * core_w / p.core_j_per_k;
    if !s.is_open && s.protector_k > p.trip_k {
        s.is_open = true;
        s.n_trips += 1;
    } else if s.is_open && s.protector_k < p.reset_k {
        s.is_open = false;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn run(p: &HeatParams, s: &mut HeatState, u: &HeatInputs, seconds: f64) {
        (0..(seconds * 10.0) as usize).for_each(|_| step(p, s, u, 0.1, 1.0));
    }

    /// Machine P stalled: winding currents 3.17 A and 0.83 A in 21 ohm, 586 W in.
    fn stalled() -> HeatInputs {
        HeatInputs {
            copper_w: [3.17 * 3.17 * 21.0, 0.83 * 0.83 * 21.0],
            copper_k: 293.15,
            input_w: 586.0,
            shaft_w: 0.0,
            rotor_rad_per_s: 0.0,
            air_k: 298.15,
        }
    }

    #[test]
    fn a_seized_motor_trips_after_about_seventy_seconds() {
        // Electrical sheet, machine P: 70 s; there the current falls a little as copper warms.
        let p = HeatParams::typical();
        let mut s = cold(298.15);
        let mut u = stalled();
        let mut ticks = 0;
        while !s.is_open && ticks < 3000 {
            let warm = copper_ratio(&p, 0.5 * (s.winding_k[0] + s.winding_k[1]));
            // |Z| of the stalled winding: resistance 21 ohm of about 72.6 ohm in all.
            let fall = 1.0 / (1.0 + 0.7 * 21.0 / 72.6 * (warm - 1.0));
            u.copper_w[0] = stalled().copper_w[0] * fall * fall;
            step(&p, &mut s, &u, 0.1, 1.0);
            ticks += 1;
        }
        let trip_s = f64::from(ticks) * 0.1;
        assert!((trip_s - 70.0).abs() < 4.0, "{trip_s}");
        assert_eq!(s.n_trips, 1);
    }

    #[test]
    fn a_motor_at_rest_tends_to_the_room() {
        let p = HeatParams::typical();
        let mut s = cold(390.0);
        run(
            &p,
            &mut s,
            &HeatInputs {
                air_k: 298.15,
                copper_k: 293.15,
                ..HeatInputs::default()
            },
            20_000.0,
        );
        assert!((s.core_k - 298.15).abs() < 1e-3 && (s.winding_k[0] - s.core_k).abs() < 1e-3);
    }

    #[test]
    fn what_goes_in_is_stored_or_leaves() {
        let mut p = HeatParams::typical();
        p.copper_per_k = 0.0;
        p.core_air_w_per_k = 0.0;
        p.fan_w_per_k = 0.0;
        let mut s = cold(298.15);
        run(&p, &mut s, &stalled(), 30.0);
        let stored = p.winding_j_per_k * (s.winding_k[0] + s.winding_k[1] - 2.0 * 298.15)
            + p.core_j_per_k * (s.core_k - 298.15);
        assert!((stored / (586.0 * 30.0) - 1.0).abs() < 1e-9);
    }

    #[test]
    fn blocked_vents_make_it_hotter() {
        let peak = |share: f64| {
            let mut p = HeatParams::typical();
            p.trip_k = 2000.0;
            p.core_air_w_per_k *= share;
            let mut s = cold(298.15);
            run(&p, &mut s, &stalled(), 200.0);
            s.winding_k[0]
        };
        assert!(peak(0.3) > peak(1.0));
    }
}
