//! What the machine has been seen doing since it was last changed: the ground of "it was run and it
//! works".

use crate::units;

/// Pulsator counts as turning from here, rad/s.
const PULSATOR_RAD_PER_S: f64 = 8.0;
/// Basket counts as spinning at full speed from here, r/min.
const SPIN_RPM: f64 = 600.0;
/// Water counts as filled from here, m.
const FILLED_M: f64 = 0.12;
/// Water counts as drained below here, m.
const DRAINED_M: f64 = 0.03;

/// Basket speed from which opening the lid tries the stop, rad/s.
const LID_TRIAL_RAD_PER_S: f64 = 20.0;

/// What was seen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Milestones {
    /// Filled to a washing level.
    pub filled: bool,
    /// Pulsator one way.
    pub forward: bool,
    /// Pulsator the other way.
    pub reverse: bool,
    /// Drained after a fill.
    pub drained: bool,
    /// Spun at full speed.
    pub spun: bool,
    /// The lid was opened while the basket spun.
    pub opened_spinning: bool,
    /// The basket stood after the lid was opened while it spun.
    pub lid_stopped: bool,
    /// The basket went on spinning with the lid open.
    pub spins_open: bool,
}

impl Milestones {
    /// Takes one moment.
    pub fn see(&mut self, level_m: f64, pulsator_rad_per_s: f64, basket_rad_per_s: f64) {
        self.filled |= level_m > FILLED_M;
        self.forward |= pulsator_rad_per_s > PULSATOR_RAD_PER_S && basket_rad_per_s.abs() < 2.0;
        self.reverse |= pulsator_rad_per_s < -PULSATOR_RAD_PER_S;
        self.drained |= self.filled && level_m < DRAINED_M;
        self.spun |= basket_rad_per_s > units::rad_per_s_from_rpm(SPIN_RPM);
    }

    /// Takes one moment of the lid: open for so many ticks, the motor live or not.
    pub fn see_lid(&mut self, open_ticks: u64, basket_rad_per_s: f64, motor_on: bool) {
        if open_ticks == 0 {
            return;
        }
        self.opened_spinning |= open_ticks == 1 && basket_rad_per_s > LID_TRIAL_RAD_PER_S;
        self.lid_stopped |= self.opened_spinning && basket_rad_per_s.abs() < 0.1;
        let long_open = open_ticks > 30;
        self.spins_open |= long_open && motor_on && basket_rad_per_s > LID_TRIAL_RAD_PER_S;
    }

    /// Everything a functional run shows.
    pub fn all(&self) -> bool {
        self.filled && self.forward && self.reverse && self.drained && self.spun
    }

    /// As a number, for hashing.
    pub fn bits(&self) -> u64 {
        [
            self.filled,
            self.forward,
            self.reverse,
            self.drained,
            self.spun,
        ]
        .iter()
        .fold(0, |bits, flag| bits << 1 | u64::from(*flag))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_tub_is_not_a_drained_one() {
        let mut seen = Milestones::default();
        seen.see(0.0, 0.0, 0.0);
        assert!(!seen.drained);
        seen.see(0.29, 15.0, 0.0);
        seen.see(0.29, -15.0, 0.0);
        seen.see(0.01, 0.0, 80.0);
        assert!(seen.all());
    }
}
