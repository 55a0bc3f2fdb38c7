//! Last stage before the loads: what must never happen, whatever the states say.
//!
//! Never both motor directions; a pause between them; never reverse with the clutch
//! actuator on (it would spin the basket the wrong way). Numbers: the model's dead time.

use crate::control::io::Loads;

/// Memory of the motor's last direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Interlock {
    /// Ticks since the motor last ran forward.
    pub since_forward_ticks: u32,
    /// Ticks since the motor last ran in reverse.
    pub since_reverse_ticks: u32,
}

impl Interlock {
    /// A motor that has long been at rest.
    pub const AT_REST: Interlock = Interlock {
        since_forward_ticks: u32::MAX,
        since_reverse_ticks: u32::MAX,
    };

    /// So many ticks with nothing wanted.
    pub fn rest(&mut self, ticks: u32) {
        self.since_forward_ticks = self.since_forward_ticks.saturating_add(ticks);
        self.since_reverse_ticks = self.since_reverse_ticks.saturating_add(ticks);
    }

    /// Takes what the states want and returns what may be switched in this tick.
    pub fn apply(&mut self, wanted: Loads, dead_ticks: u32) -> Loads {
        let mut loads = wanted;
        if loads.motor_forward && self.since_reverse_ticks < dead_ticks {
            loads.motor_forward = false;
        }
        if loads.motor_reverse
            && (wanted.motor_forward
                || loads.drain_actuator
                || self.since_forward_ticks < dead_ticks)
        {
            loads.motor_reverse = false;
        }
        self.since_forward_ticks = next(self.since_forward_ticks, loads.motor_forward);
        self.since_reverse_ticks = next(self.since_reverse_ticks, loads.motor_reverse);
        loads
    }
}

fn next(since_ticks: u32, runs: bool) -> u32 {
    if runs {
        0
    } else {
        since_ticks.saturating_add(1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FORWARD: Loads = Loads {
        motor_forward: true,
        motor_reverse: false,
        inlet_valve: false,
        hot_valve: false,
        drain_actuator: false,
        drain_pump: false,
        buzzer: false,
    };
    const REVERSE: Loads = Loads {
        motor_forward: false,
        motor_reverse: true,
        ..FORWARD
    };

    #[test]
    fn a_reversal_rests_for_the_dead_time() {
        let mut interlock = Interlock::AT_REST;
        assert!(interlock.apply(FORWARD, 3).motor_forward);
        let rested = (0..10)
            .take_while(|_| !interlock.apply(REVERSE, 3).motor_reverse)
            .count();
        assert_eq!(rested, 3);
    }

    #[test]
    fn both_directions_wanted_is_forward_only() {
        let both = Loads {
            motor_reverse: true,
            ..FORWARD
        };
        let mut interlock = Interlock::AT_REST;
        let loads = interlock.apply(both, 3);
        assert!(loads.motor_forward && !loads.motor_reverse);
    }

    #[test]
    fn the_clutch_actuator_forbids_reverse() {
        let clutched = Loads {
            drain_actuator: true,
            ..REVERSE
        };
        let mut interlock = Interlock::AT_REST;
        assert!(!interlock.apply(clutched, 3).motor_reverse);
    }
}
