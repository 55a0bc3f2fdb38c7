//! What a control can see and what it can switch, in one tick of 0.1 s.
//!
//! A control knows contacts, one frequency and its keys; it has no speed sensor and no
//! sight of the water. What a short or broken wire does to these signals is computed
//! elsewhere and arrives here as a plain level.

use crate::control::display::Display;

/// Ticks in one second; every time in a control is a whole number of ticks.
pub const TICKS_PER_S: f64 = 10.0;

/// Whole ticks of a time in seconds; negative or undefined times are zero ticks.
pub fn ticks(time_s: f64) -> u32 {
    // The cast saturates and turns a missing number into zero.
    (time_s * TICKS_PER_S + 0.5) as u32
}

/// A key of an electronic panel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// On and standby; machines with a mechanical switch have none.
    Power,
    /// Start, and pause while a program runs.
    Start,
    /// Chooses the program, gives up a paused one.
    Program,
    /// Chooses the water level; in the service test repeats a step.
    Level,
    /// Chooses cold, warm or hot on machines with two valves.
    Temperature,
    /// Adds an hour of delayed start; clears a running delay.
    Delay,
    /// Locks and unlocks the keys when held.
    Lock,
    /// The labelled service key behind the panel.
    Service,
}

/// The keys whose contacts are closed during a tick; a stuck key is always in the set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Keys(u8);

impl Keys {
    /// No key is touched.
    pub const NONE: Keys = Keys(0);

    /// Only this key is down.
    pub const fn only(key: Key) -> Keys {
        Keys(1 << key as u8)
    }

    /// These keys and one more.
    pub const fn with(self, key: Key) -> Keys {
        Keys(self.0 | 1 << key as u8)
    }

    /// Whether the key is down.
    pub const fn has(self, key: Key) -> bool {
        self.0 & (1 << key as u8) != 0
    }

    /// The one key that is down; `None` for none or several (the panel cannot tell several apart).
    pub fn single(self) -> Option<Key> {
        const ALL: [Key; 8] = [
            Key::Power,
            Key::Start,
            Key::Program,
            Key::Level,
            Key::Temperature,
            Key::Delay,
            Key::Lock,
            Key::Service,
        ];
        ALL.into_iter().find(|&key| Keys::only(key) == self)
    }

    /// The set as a number, for hashing.
    pub const fn bits(self) -> u8 {
        self.0
    }
}

/// What a control sees during one tick.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inputs {
    /// The logic supply is good (electronic controls).
    pub powered: bool,
    /// Mean frequency of the level oscillator over the tick; `None` = no pulses.
    pub level_hz: Option<f64>,
    /// The lid input is at its closed level; on a shared input lid and lever in series.
    /// An opening anywhere inside the tick counts as open for the tick.
    pub lid_input_closed: bool,
    /// The lever input, where it has its own; `None` = in series with the lid.
    pub unbalance_input_closed: Option<bool>,
    /// Supply as the control measures it, V rms; `None` = it cannot.
    pub supply_v: Option<f64>,
    /// Keys held during the tick.
    pub keys: Keys,
    /// The cam timer's motor has enough voltage to turn (timer controls).
    pub timer_motor_running: bool,
}

impl Inputs {
    /// A powered machine at rest: lid shut, no key, the given level frequency in Hz.
    pub fn at_rest(level_hz: f64) -> Inputs {
        Inputs {
            powered: true,
            level_hz: Some(level_hz),
            lid_input_closed: true,
            unbalance_input_closed: None,
            supply_v: None,
            keys: Keys::NONE,
            timer_motor_running: false,
        }
    }
}

/// Loads an electronic control switches; the machine file maps each to contacts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Loads {
    /// Motor in the spin direction.
    pub motor_forward: bool,
    /// Motor in the other direction.
    pub motor_reverse: bool,
    /// Inlet valve, cold.
    pub inlet_valve: bool,
    /// Inlet valve, hot.
    pub hot_valve: bool,
    /// The geared actuator: drain valve, brake and clutch, or brake and clutch alone.
    pub drain_actuator: bool,
    /// Drain pump.
    pub drain_pump: bool,
    /// Buzzer on the board.
    pub buzzer: bool,
}

impl Loads {
    /// All off.
    pub const NONE: Loads = Loads {
        motor_forward: false,
        motor_reverse: false,
        inlet_valve: false,
        hot_valve: false,
        drain_actuator: false,
        drain_pump: false,
        buzzer: false,
    };
}

/// What a control does during one tick.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outputs {
    /// Loads of an electronic control; all off for a timer, except its buzzer.
    pub loads: Loads,
    /// Closed contacts of a cam timer, bit n = contact n of its model; 0 for electronics.
    pub contacts: u32,
    /// What the panel shows.
    pub display: Display,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_keys_at_once_are_no_key() {
        let both = Keys::only(Key::Start).with(Key::Level);
        assert!(both.has(Key::Start) && both.has(Key::Level));
        assert_eq!(both.single(), None);
        assert_eq!(Keys::only(Key::Service).single(), Some(Key::Service));
        assert_eq!(Keys::NONE.single(), None);
    }

    #[test]
    fn times_become_the_nearest_whole_tick() {
        assert_eq!(ticks(1.4), 14);
        assert_eq!(ticks(0.05), 1);
        assert_eq!(ticks(-3.0), 0);
        assert_eq!(ticks(f64::NAN), 0);
    }
}
