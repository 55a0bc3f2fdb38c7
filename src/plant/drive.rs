//! The mechanical drive's parts: rotor, V-belt, planet gear, pulsator, basket.
//!
//! ```text
//! wrap   th = pi − 2 asin((d2 − d1)/(2 c))      ratio R = exp(mu th/sin(groove/2))
//! belt   Tmax = d1 (F0 − m' v²)(R − 1)/(R + 1)  at the motor pulley (Euler-Eytelwein)
//! speeds wm/wd = d2/d1 = n; wash N = n gear; spin locked 1:1 behind the belt
//! bearing Tf = Tf0 + pull 2 F0
//! ```
//! Steps are in `wash.rs` and `spin.rs`. Sign: positive is the spin direction. Source:
//! Euler-Eytelwein published; values design choice or from memory. Limits: no creep below
//! the slip limit, no backlash in the motion (only in the sound).

use crate::plant::motor_table::MotorTable;
use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Motor's mechanical side.
    RotorParams {
        /// Rotor and small pulley. Design choice, electrical sheet of machine P.
        inertia_kg_m2 = 0.0025, 1.0e-5 => 1.0, text!("the rotor's inertia");
        /// Bearing friction with the belt off. Electrical sheet of machine P.
        friction_n_m = 0.05, 0.0 => 100.0, text!("the motor's bearing friction");
        /// Fan torque over speed squared: 3 W at synchronous speed. Electrical sheet of P.
        windage_n_m_s2 = 7.74e-7, 0.0 => 1.0e-3, text!("the motor fan's drag");
        /// Bearing friction per newton of shaft pull. Design choice.
        pull_friction_n_m_per_n = 6.0e-4, 0.0 => 0.1, text!("the friction from belt pull");
    }
}

component_params! {
    /// V-belt and pulleys.
    BeltParams {
        /// Pitch diameter of the motor pulley. Design choice.
        small_pulley_m = 0.060, 0.01 => 0.5, text!("the motor pulley's diameter");
        /// Pitch diameter of the mechanism pulley. Design choice.
        large_pulley_m = 0.112, 0.01 => 1.0, text!("the mechanism pulley's diameter");
        /// Centre distance. Design choice.
        centre_m = 0.190, 0.10 => 2.0, text!("the pulleys' distance");
        /// Friction of belt on pulley. From memory: 0.2 to 0.4; oily 0.08.
        friction_ratio = 0.30, 0.0 => 2.0, text!("the belt's friction");
        /// Groove angle, rad. Published: ISO 4183 class grooves, from memory: 36°.
        groove_rad = 36.0 * core::f64::consts::PI / 180.0, 0.1 => 3.0, text!("the groove's angle");
        /// Static strand tension. Design choice: 50 to 80 N; loose under 25, off at 0.
        tension_n = 65.0, 0.0 => 1000.0, text!("the belt's tension");
        /// Mass per length. From memory.
        mass_kg_per_m = 0.06, 0.0 => 1.0, text!("the belt's mass");
        /// Efficiency. From memory.
        efficiency_ratio = 0.95, 0.1 => 1.0, text!("the belt's efficiency");
        /// Torque the motor pulley's screw carries; 0.5 when loose. Design choice.
        pulley_grip_n_m = 40.0, 0.0 => 1000.0, text!("the grip of the motor pulley's screw");
        /// Large pulley and sun shaft. Design choice.
        inertia_kg_m2 = 0.004, 1.0e-5 => 1.0, text!("the large pulley's inertia");
        /// Cracks that thump once per belt pass, 0 to 1.
        cracked_ratio = 0.0, 0.0 => 1.0, text!("the belt's cracks");
        /// 1 with guard and protecting plate in place; nothing turns differently without them.
        guard_fitted_ratio = 1.0, 0.0 => 1.0, text!("the belt guard in place (0 or 1)");
        /// Water on the belt, which quietens its squeal, 0 to 1.
        wet_ratio = 0.0, 0.0 => 1.0, text!("the water on the belt");
    }
}

component_params! {
    /// Planet gear between sun shaft and pulsator, used in wash only.
    GearParams {
        /// Ratio 1 + 63/15. Design choice.
        ratio_ratio = 5.2, 1.0 => 100.0, text!("the gear's ratio");
        /// Efficiency; worn or dry 0.75. From memory.
        efficiency_ratio = 0.93, 0.1 => 1.0, text!("the gear's efficiency");
        /// Teeth of the ring. Design choice.
        teeth_ratio = 63.0, 1.0 => 1000.0, text!("the gear ring's teeth");
        /// Wear that is heard, 0 to 1.
        worn_ratio = 0.0, 0.0 => 1.0, text!("the gear's wear");
        /// Play of the mechanism in its bolts, rad at the pulsator.
        bolts_play_rad = 0.0, 0.0 => 0.5, text!("the play of the mechanism's bolts");
    }
}

component_params! {
    /// Pulsator.
    PulsatorParams {
        /// Pulsator and carrier. Design choice.
        inertia_kg_m2 = 0.012, 1.0e-5 => 1.0, text!("the pulsator's inertia");
        /// Torque the spline carries; worn 1 to 8. Design choice.
        spline_n_m = 40.0, 0.0 => 1000.0, text!("the pulsator spline's torque");
        /// Water drag when covered. Design choice.
        drag_n_m_s2 = 0.022, 0.0 => 10.0, text!("the pulsator's water drag");
        /// Level at which it is covered. Design choice.
        cover_m = 0.120, 0.001 => 1.0, text!("the level that covers the pulsator");
        /// Friction of a stone or coin underneath.
        scrape_n_m = 0.0, 0.0 => 200.0, text!("the scraping under the pulsator");
        /// Play on its shaft, rad; a loose screw 0.1 and more.
        play_rad = 0.02, 0.0 => 1.0, text!("the pulsator's play");
    }
}

component_params! {
    /// Spin basket and bearing.
    BasketParams {
        /// Inner radius. Design choice.
        radius_m = 0.215, 0.05 => 0.5, text!("the basket's radius");
        /// Basket, ring and pulsator, empty. Design choice.
        inertia_kg_m2 = 0.30, 0.001 => 10.0, text!("the basket's inertia");
        /// Bearings and shaft seal; bad 1 to 3. Design choice.
        bearing_n_m = 0.30, 0.0 => 200.0, text!("the basket bearing's friction");
        /// Windage. Design choice.
        windage_n_m_s2 = 1.7e-4, 0.0 => 1.0, text!("the basket's windage");
        /// Drag of water in the tub per metre of level. Design choice.
        water_drag_n_m_s2_per_m = 0.020, 0.0 => 10.0, text!("the basket's water drag");
        /// Drag at foam index 1. Design choice.
        foam_drag_n_m_s2 = 6.0e-4, 0.0 => 1.0, text!("the basket's foam drag");
        /// Drag of the swirling bath on the wall. Design choice.
        swirl_drag_n_m_s2 = 0.15, 0.0 => 10.0, text!("the swirl's drag");
        /// Share of the bath that swirls. Design choice.
        swirl_ratio = 0.60, 0.0 => 1.0, text!("the swirling share of the bath");
        /// Friction of a coin or wire between basket and tub.
        scrape_n_m = 0.0, 0.0 => 200.0, text!("the scraping at the basket");
        /// Unbalance that loose basket bolts add at 80 rad/s.
        loose_kg_m = 0.0, 0.0 => 2.0, text!("the unbalance of loose basket bolts");
    }
}

/// How the drive is coupled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DriveMode {
    /// Gear works, basket held.
    Wash,
    /// Basket coupled or still turning.
    Spin,
}

/// Which way a link slips: the driving side is slower, together, or faster.
pub(crate) type SlipSign = f64;

/// Speeds and angles. Positive is the spin direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DriveState {
    /// Motor.
    pub rotor_rad_per_s: f64,
    /// Pulsator.
    pub pulsator_rad_per_s: f64,
    /// Basket.
    pub basket_rad_per_s: f64,
    /// Bath.
    pub swirl_rad_per_s: f64,
    /// Angle of the basket, 0 to 2 pi.
    pub basket_rad: f64,
    /// Angle of the pulsator, 0 to 2 pi.
    pub pulsator_rad: f64,
    /// −1, 0, +1: sign of the torque a slipping link passes; 0 when nothing slips.
    pub slip_ratio: SlipSign,
    /// Coupling.
    pub mode: DriveMode,
}

/// How the motor is connected now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MotorInput<'a> {
    /// No torque, no current.
    Off,
    /// Live; the table counts speed in the direction it would turn.
    On {
        /// Torque, power and current against speed.
        table: &'a MotorTable,
        /// True for the direction that spins.
        is_forward: bool,
    },
}

impl MotorInput<'_> {
    /// Torque on the rotor at a signed speed, N·m, signed.
    pub(crate) fn torque_n_m(&self, rotor_rad_per_s: f64) -> f64 {
        match self {
            Self::Off => 0.0,
            Self::On {
                table,
                is_forward: true,
            } => table.torque_n_m(rotor_rad_per_s),
            Self::On {
                table,
                is_forward: false,
            } => -table.torque_n_m(-rotor_rad_per_s),
        }
    }

    pub(crate) fn is_on(&self) -> bool {
        matches!(self, Self::On { .. })
    }
}

/// Sums over one tick; powers times seconds.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct DriveSums {
    /// Electrical input, J.
    pub input_j: f64,
    /// Copper loss of winding 1 at the table's temperature, J.
    pub copper_1_j: f64,
    /// Copper loss of winding 2 at the table's temperature, J.
    pub copper_2_j: f64,
    /// Work on the rotor, J.
    pub shaft_j: f64,
    /// Magnitude of the load's torque times time, N·m·s.
    pub load_n_m_s: f64,
    /// Heat of a slipping link, J.
    pub slip_j: f64,
    /// Magnitude of the link's slip times time, rad at the motor.
    pub slip_rad: f64,
    /// Line current times time, A·s.
    pub line_a_s: f64,
}

impl DriveSums {
    /// Adds one step's motor; the mid-step speed keeps the energy second order.
    pub(crate) fn add_motor(&mut self, motor: &MotorInput<'_>, mid_rad_per_s: f64, dt_s: f64) {
        if let MotorInput::On { table, is_forward } = motor {
            let speed = if *is_forward {
                mid_rad_per_s
            } else {
                -mid_rad_per_s
            };
            let point = table.at(speed);
            self.input_j += dt_s * point.input_w;
            self.copper_1_j += dt_s * point.copper_1_w;
            self.copper_2_j += dt_s * point.copper_2_w;
            self.shaft_j += dt_s * point.torque_n_m * speed;
            self.line_a_s += dt_s * point.line_a;
        }
    }
}

/// What changes only with the parameters.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct DriveDerived {
    /// Belt limit per newton of strand tension, N·m/N.
    pub belt_n_m_per_n: f64,
    /// Motor turns per sun turn.
    pub belt_ratio: f64,
    /// Motor turns per pulsator turn.
    pub wash_ratio: f64,
    /// Motor friction without the fan.
    pub friction_n_m: f64,
    /// Extra share of an opposing load that belt and gear eat.
    pub wash_loss_ratio: f64,
    /// Extra share of an opposing load that the belt eats.
    pub spin_loss_ratio: f64,
    /// In wash the belt (or the pulley screw) slips before the spline.
    pub belt_slips_first: bool,
    /// Inertia of everything at the motor, wash.
    pub wash_kg_m2: f64,
    /// Inertia before the slipping link at the motor, wash.
    pub wash_before_kg_m2: f64,
    /// Inertia behind the slipping link at the pulsator, wash.
    pub wash_behind_kg_m2: f64,
    /// A link is so weak that the motor may run away within a tick.
    pub is_weak: bool,
}

/// Friction of the motor's bearings under the belt's pull, N·m.
pub fn bearing_n_m(rotor: &RotorParams, belt: &BeltParams) -> f64 {
    rotor.friction_n_m + rotor.pull_friction_n_m_per_n * 2.0 * belt.tension_n
}

/// Wrap of the belt on the small pulley, rad.
pub fn wrap_rad(p: &BeltParams) -> f64 {
    let offset = (p.large_pulley_m - p.small_pulley_m) / (2.0 * p.centre_m);
    core::f64::consts::PI - 2.0 * libm::asin(offset.clamp(-1.0, 1.0))
}

/// Largest ratio of tight to slack strand tension.
pub fn belt_tension_ratio(p: &BeltParams) -> f64 {
    libm::exp(p.friction_ratio * wrap_rad(p) / libm::sin(p.groove_rad / 2.0))
}

/// Pitch length of the belt, m.
pub fn belt_length_m(p: &BeltParams) -> f64 {
    let (small, large, centre) = (p.small_pulley_m, p.large_pulley_m, p.centre_m);
    let offset_rad = libm::asin(((large - small) / (2.0 * centre)).clamp(-1.0, 1.0));
    2.0 * centre * libm::cos(offset_rad)
        + core::f64::consts::PI * (small + large) / 2.0
        + offset_rad * (large - small)
}

/// Tone of a plucked strand, Hz; 0 for a belt without mass or length.
pub fn strand_tone_hz(p: &BeltParams) -> f64 {
    let half_difference_m = (p.large_pulley_m - p.small_pulley_m) / 2.0;
    let free_m = (p.centre_m * p.centre_m - half_difference_m * half_difference_m)
        .max(0.0)
        .sqrt();
    if free_m <= 0.0 || p.mass_kg_per_m <= 0.0 {
        return 0.0;
    }
    (p.tension_n / p.mass_kg_per_m).sqrt() / (2.0 * free_m)
}

/// Force at mid-span that deflects a strand by `deflection_m`, N.
pub fn strand_force_n(p: &BeltParams, deflection_m: f64) -> f64 {
    4.0 * p.tension_n * deflection_m / p.centre_m.max(1.0e-3)
}

/// Deflection at mid-span under a force, m: `d = F L / (4 T)`. Closed form of a taut string.
pub fn strand_deflection_m(p: &BeltParams, force_n: f64) -> f64 {
    force_n * p.centre_m / (4.0 * p.tension_n.max(1.0e-3))
}

/// Largest torque the belt passes at the motor, N·m.
pub fn belt_torque_n_m(p: &BeltParams, rotor_rad_per_s: f64) -> f64 {
    let grip = belt_tension_ratio(p);
    let speed_m_per_s = rotor_rad_per_s * p.small_pulley_m * 0.5;
    let tension_n = p.tension_n - p.mass_kg_per_m * speed_m_per_s * speed_m_per_s;
    tension_n.max(0.0) * p.small_pulley_m * (grip - 1.0) / (grip + 1.0)
}

/// Largest torque belt and pulley screw pass at the motor, N·m.
pub(crate) fn belt_limit_n_m(p: &BeltParams, d: &DriveDerived, rotor_rad_per_s: f64) -> f64 {
    let speed_m_per_s = rotor_rad_per_s * p.small_pulley_m * 0.5;
    let tension_n = (p.tension_n - p.mass_kg_per_m * speed_m_per_s * speed_m_per_s).max(0.0);
    (tension_n * d.belt_n_m_per_n).min(p.pulley_grip_n_m)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::params::PlantParams;

    #[test]
    fn the_belt_obeys_euler_and_eytelwein() {
        let p = PlantParams::typical();
        // Plant data sheet section 4: wrap 164.27°, ratio 16.17.
        assert!((wrap_rad(&p.belt) * 180.0 / core::f64::consts::PI - 164.2697).abs() < 1e-3);
        assert!((belt_tension_ratio(&p.belt) - 16.17372).abs() < 1e-4);
        assert!((belt_length_m(&p.belt) - 0.653_740_4).abs() < 1e-7);
    }

    #[test]
    fn a_slack_belt_carries_nothing() {
        let mut p = PlantParams::typical();
        p.belt.tension_n = 0.0;
        let d = DriveDerived::new(&p);
        assert!(belt_limit_n_m(&p.belt, &d, 0.0) <= 0.0 && d.is_weak);
    }
}
