//! Which way the drive is coupled in this tick, and its sub-steps.
//!
//! ```text
//! wash  basket held or creeping: 5 steps of 20 ms, 10 of 10 ms where a link slips
//! spin  clutch closed, or the basket still turns: 1 step of 100 ms, 10 of 10 ms where the
//!       motor runs alone (clutch open, link weak or slipping)
//! ```
//! What coasts below a hundredth of a radian per second stands, so that the plant can rest.

use crate::plant::actuator::Linkage;
use crate::plant::drive::{DriveMode, DriveSums, MotorInput};
use crate::plant::spin::SpinInputs;
use crate::plant::wash::WashInputs;
use crate::plant::{Plant, PlantInputs, spin, wash};

/// Speed below which a coasting part stands still, rad/s.
const STILL_RAD_PER_S: f64 = 0.01;
/// Swirl below which the bath stands still, rad/s.
const STILL_SWIRL_RAD_PER_S: f64 = 0.05;

impl Plant {
    /// Motor, belt, pulsator, basket and bath during one tick.
    pub(crate) fn drive(&mut self, u: &PlantInputs<'_>) -> DriveSums {
        let motor = if self.is_driven(u) {
            u.motor
        } else {
            MotorInput::Off
        };
        let link = self.linkage();
        let drive = &mut self.state.drive;
        let is_spinning = link.is_gripping
            || (drive.mode == DriveMode::Spin && drive.basket_rad_per_s.abs() > STILL_RAD_PER_S);
        let mode = if is_spinning {
            DriveMode::Spin
        } else {
            DriveMode::Wash
        };
        if drive.mode != mode {
            drive.mode = mode;
            drive.slip_ratio = 0.0;
            if mode == DriveMode::Wash {
                drive.pulsator_rad_per_s = drive.rotor_rad_per_s / self.derived.drive.wash_ratio;
                drive.basket_rad_per_s = 0.0;
            }
        }
        let mut sums = DriveSums::default();
        self.memory.load_n_m = match mode {
            DriveMode::Spin => self.spin_tick(motor, link, &mut sums),
            DriveMode::Wash => self.wash_tick(motor, link.brake_ratio, &mut sums),
        };
        let step_s = self.part_s();
        let drive = &mut self.state.drive;
        let turn = 2.0 * core::f64::consts::PI;
        drive.basket_rad = wrapped(drive.basket_rad + step_s * drive.basket_rad_per_s, turn);
        drive.pulsator_rad = wrapped(drive.pulsator_rad + step_s * drive.pulsator_rad_per_s, turn);
        sums
    }

    fn wash_tick(&mut self, motor: MotorInput<'_>, brake_ratio: f64, sums: &mut DriveSums) -> f64 {
        let step_s = self.part_s();
        let u = WashInputs {
            motor,
            level_m: self.level_m(),
            free_kg: self.state.tub.free_kg,
            textile_kg: self.state.tub.textile_kg,
            brake_ratio,
        };
        let drive = &mut self.state.drive;
        if !motor.is_on() && drive.rotor_rad_per_s.abs() < STILL_RAD_PER_S {
            // Only the bath may still turn; without it everything stands.
            if drive.swirl_rad_per_s.abs() < STILL_SWIRL_RAD_PER_S
                && drive.basket_rad_per_s.abs() <= 0.0
            {
                drive.rotor_rad_per_s = 0.0;
                drive.pulsator_rad_per_s = 0.0;
                drive.swirl_rad_per_s = 0.0;
                drive.slip_ratio = 0.0;
                return 0.0;
            }
        }
        let is_fine = drive.slip_ratio.abs() > 0.5
            || self.derived.drive.is_weak
            || wash::needs_fine_steps(&self.params, &self.derived.drive, &u);
        let n_steps = if is_fine { 10 } else { 5 };
        let dt_s = step_s / f64::from(n_steps);
        let frame = wash::Frame::new(&self.params, &self.derived.drive, u, dt_s);
        let mut load_n_m = 0.0;
        for _ in 0..n_steps {
            load_n_m = wash::step(&self.params, &frame, drive, sums);
        }
        load_n_m
    }

    fn spin_tick(&mut self, motor: MotorInput<'_>, link: Linkage, sums: &mut DriveSums) -> f64 {
        let step_s = self.part_s();
        let u = SpinInputs {
            motor,
            level_m: self.level_m(),
            textile_kg: self.state.tub.textile_kg,
            foam_ratio: self.state.foam.foam_ratio,
            brake_ratio: link.brake_ratio,
            is_gripping: link.is_gripping,
        };
        let drive = &mut self.state.drive;
        drive.swirl_rad_per_s = 0.0;
        let is_still = drive.rotor_rad_per_s.abs() < STILL_RAD_PER_S
            && drive.basket_rad_per_s.abs() < STILL_RAD_PER_S;
        if !motor.is_on() && is_still {
            drive.rotor_rad_per_s = 0.0;
            drive.basket_rad_per_s = 0.0;
            drive.pulsator_rad_per_s = 0.0;
            drive.slip_ratio = 0.0;
            return 0.0;
        }
        let is_alone =
            !link.is_gripping || drive.slip_ratio.abs() > 0.5 || self.derived.drive.is_weak;
        let n_steps = if is_alone { 10 } else { 1 };
        let dt_s = step_s / f64::from(n_steps);
        let mut load_n_m = 0.0;
        for _ in 0..n_steps {
            load_n_m = spin::step(&self.params, &self.derived.drive, drive, u, sums, dt_s);
        }
        load_n_m
    }
}

fn wrapped(angle: f64, turn: f64) -> f64 {
    if angle >= turn {
        angle - turn * libm::floor(angle / turn)
    } else if angle < 0.0 {
        angle + turn * libm::ceil(-angle / turn)
    } else {
        angle
    }
}
