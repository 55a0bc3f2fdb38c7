//! Drain motor and what its wire pulls: drain valve, clutch lever, brake, spin clutch.
//!
//! ```text
//! stroke' = +pull energised, −return by the spring       valve = clamp((s − sv0)/(sv1 − sv0))
//! lever  = seated max(0, s − play) + bent                 brake = 1 − clamp((l − sb0)/(sb1 − sb0))
//! clutch grips when lever >= sgrip
//! ```
//! Source: speeds and stroke from memory, travels design choice. Limits: the pull does not
//! slow under load; a coil that lets go returns at the spring's speed.

use crate::plant::drain::DrainParams;
use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Geared drain motor with its wire.
    ActuatorParams {
        /// Speed of the wire. From memory: 2.5 to 4 mm/s.
        pull_m_per_s = 0.0032, 0.0 => 1.0, text!("the drain motor's pulling speed");
        /// Speed of the spring's return. From memory.
        return_m_per_s = 0.040, 1.0e-4 => 1.0, text!("the drain motor's return speed");
        /// Full stroke. From memory: 16 to 19 mm.
        stroke_m = 0.017, 0.0 => 0.05, text!("the drain motor's stroke");
    }
}

component_params! {
    /// Clutch lever.
    LeverParams {
        /// Free play between link and lever. From memory: 1 to 3 mm.
        play_m = 0.002, 0.0 => 0.05, text!("the clutch lever's play");
        /// 1 in its link, 0 left out of it.
        seated_ratio = 1.0, 0.0 => 1.0, text!("the clutch lever in its link (0 or 1)");
        /// Travel the lever keeps when nobody pulls: bent or rusted.
        bent_m = 0.0, 0.0 => 0.05, text!("the clutch lever's travel at rest");
    }
}

component_params! {
    /// Band brake of the basket.
    BrakeParams {
        /// Lever travel where it starts to release. Design choice.
        releases_m = 0.002, 0.0 => 0.05, text!("the travel that starts to release the brake");
        /// Lever travel where it is free. Design choice; longer when it drags.
        free_m = 0.006, 1.0e-4 => 0.1, text!("the travel that frees the brake");
        /// Torque on a basket turning in spin direction. Design choice.
        stop_n_m = 14.0, 0.0 => 200.0, text!("the brake's stopping torque");
        /// Hold of the basket while washing, against the band. Design choice.
        hold_n_m = 22.0, 0.0 => 200.0, text!("the brake's holding torque");
    }
}

component_params! {
    /// Spin clutch spring and one-way bearing.
    ClutchParams {
        /// Lever travel where the spring grips. Design choice.
        grips_m = 0.010, 0.0 => 0.05, text!("the travel that closes the clutch");
        /// Torque the spring carries; worn 0.3 to 3. Design choice.
        torque_n_m = 40.0, 0.0 => 200.0, text!("the clutch spring's torque");
        /// Hold of the one-way bearing while washing; worn 0.5. Design choice.
        one_way_n_m = 60.0, 0.0 => 200.0, text!("the one-way bearing's hold");
    }
}

/// The wire.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ActuatorState {
    /// Wire pulled, m.
    pub stroke_m: f64,
}

/// What the stroke does to valve, brake and clutch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Linkage {
    /// Drain valve, 0 shut to 1 open.
    pub valve_ratio: f64,
    /// Travel of the clutch lever, m.
    pub lever_m: f64,
    /// Brake, 1 fully on to 0 free.
    pub brake_ratio: f64,
    /// The spin clutch holds gear case and basket together.
    pub is_gripping: bool,
}

/// Advances the wire. `hand_m` is how far a hand pulls it; 0 when nobody does.
pub(crate) fn step(
    p: &ActuatorParams,
    s: &mut ActuatorState,
    is_energised: bool,
    hand_m: f64,
    dt_s: f64,
) {
    let moved = if is_energised {
        (s.stroke_m + p.pull_m_per_s * dt_s)
            .min(p.stroke_m.max(s.stroke_m - p.return_m_per_s * dt_s))
    } else {
        s.stroke_m - p.return_m_per_s * dt_s
    };
    s.stroke_m = moved.max(hand_m).max(0.0);
}

/// The wire does not move any more with this input.
pub(crate) fn is_settled(s: &ActuatorState, is_energised: bool, hand_m: f64) -> bool {
    !is_energised && hand_m <= 0.0 && s.stroke_m <= 0.0
}

/// Valve, lever, brake and clutch at a stroke.
pub fn linkage(
    drain: &DrainParams,
    lever: &LeverParams,
    brake: &BrakeParams,
    clutch: &ClutchParams,
    stroke_m: f64,
) -> Linkage {
    let lever_m = lever.seated_ratio * (stroke_m - lever.play_m).max(0.0) + lever.bent_m;
    Linkage {
        valve_ratio: ramp(stroke_m, drain.valve_opens_m, drain.valve_open_m),
        lever_m,
        brake_ratio: 1.0 - ramp(lever_m, brake.releases_m, brake.free_m),
        is_gripping: lever_m >= clutch.grips_m,
    }
}

fn ramp(x: f64, from: f64, to: f64) -> f64 {
    ((x - from) / (to - from).max(1.0e-6)).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::params::PlantParams;

    fn at(p: &PlantParams, stroke_m: f64) -> Linkage {
        linkage(&p.drain, &p.lever, &p.brake, &p.clutch, stroke_m)
    }

    fn first_tick(p: &PlantParams, reached: impl Fn(Linkage) -> bool) -> f64 {
        let mut s = ActuatorState { stroke_m: 0.0 };
        for tick in 1..200 {
            step(&p.actuator, &mut s, true, 0.0, 0.01);
            if reached(at(p, s.stroke_m)) {
                return f64::from(tick) * 0.01;
            }
        }
        f64::INFINITY
    }

    #[test]
    fn brake_frees_before_the_clutch_grips_and_the_valve_opens_between() {
        // Plant data sheet section 3: 1.25 s, 1.56 s, 2.50 s, 3.75 s after energising.
        let mut p = PlantParams::typical();
        p.actuator.pull_m_per_s *= 2.0; // two centiseconds a step keep the loop short
        let releases = first_tick(&p, |l| l.brake_ratio < 1.0) * 2.0;
        let opens = first_tick(&p, |l| l.valve_ratio > 0.0) * 2.0;
        let frees = first_tick(&p, |l| l.brake_ratio <= 0.0) * 2.0;
        assert!((releases - 1.25).abs() < 0.03 && (opens - 1.56).abs() < 0.03);
        assert!((frees - 2.50).abs() < 0.03);
    }

    #[test]
    fn a_lever_out_of_its_link_leaves_brake_on_and_clutch_open() {
        let mut p = PlantParams::typical();
        p.lever.seated_ratio = 0.0;
        let l = at(&p, p.actuator.stroke_m);
        assert!(l.valve_ratio >= 1.0 && l.brake_ratio >= 1.0 && !l.is_gripping);
    }

    #[test]
    fn a_short_stroke_drains_but_never_grips() {
        let p = PlantParams::typical();
        let l = at(&p, 0.010);
        assert!(l.valve_ratio > 0.0 && !l.is_gripping);
    }

    #[test]
    fn a_hand_holds_the_wire_and_the_spring_takes_it_back() {
        let p = PlantParams::typical();
        let mut s = ActuatorState { stroke_m: 0.0 };
        step(&p.actuator, &mut s, false, 0.017, 0.1);
        assert!((s.stroke_m - 0.017).abs() < 1e-15);
        (0..5).for_each(|_| step(&p.actuator, &mut s, false, 0.0, 0.1));
        assert!(s.stroke_m <= 0.0 && is_settled(&s, false, 0.0));
    }
}
