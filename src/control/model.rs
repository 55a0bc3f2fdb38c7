//! What an electronic control knows by construction: thresholds, times, programs.
//!
//! This is what a machine file holds; a fault of the control edits an entry here and
//! nothing else. Level thresholds are frequencies, because a frequency is all the control
//! sees. The oscillator gets slower as the water rises:
//!
//! ```text
//! f(p) = f_empty / sqrt(1 + p · k)        p gauge pressure in the air hose
//! ```

use crate::control::io::Loads;
use crate::control::programs::Pattern;
use crate::control::programs::Program;

/// A whole electronic control as data.
#[derive(Clone, Debug, PartialEq)]
pub struct ControlModel {
    /// Supply the machine is made for, V rms.
    pub nominal_supply_v: f64,
    /// Lowest supply the control works with, as a part of nominal.
    pub supply_low_ratio: f64,
    /// Highest supply the control works with, as a part of nominal.
    pub supply_high_ratio: f64,
    /// True where a mechanical switch feeds the board: power on means awake.
    pub wakes_when_powered: bool,
    /// True: a program interrupted by a power failure goes on by itself;
    /// false: it waits for the start key.
    pub resumes_after_power_loss: bool,
    /// True: the lid is guarded during the wash too; false: only during spin.
    pub lid_guards_wash: bool,
    /// True where a hot valve is fitted and warm water can be chosen.
    pub has_hot_valve: bool,
    /// What lets the water out.
    pub drain_loads: DrainLoads,
    /// What runs with the motor in every spin.
    pub spin_loads: DrainLoads,
    /// Level thresholds.
    pub level: LevelThresholds,
    /// Times.
    pub times: Times,
    /// Corrections allowed in one spin block before the alarm.
    pub max_corrections: u32,
    /// Refills allowed in one program before the warning.
    pub max_top_ups: u32,
    /// The programs, in the order of the program key.
    pub programs: Vec<Program>,
    /// The service test.
    pub service_steps: Vec<ServiceStep>,
}

/// Loads that belong to draining or to spinning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DrainLoads {
    /// The geared actuator runs.
    pub actuator: bool,
    /// The drain pump runs.
    pub pump: bool,
}

/// One water level a person can choose.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelTarget {
    /// Name on the panel.
    pub name: String,
    /// Filled when the frequency is at or below this, Hz.
    pub full_hz: f64,
    /// Refilled during the wash when the frequency is above this, Hz.
    pub top_up_hz: f64,
    /// Wash pattern at this level.
    pub pattern: Pattern,
}

/// Level thresholds as frequencies, Hz.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelThresholds {
    /// Levels a person can choose, lowest first; the first is also used to spread a load.
    pub targets: Vec<LevelTarget>,
    /// Empty at or above this, Hz.
    pub empty_hz: f64,
    /// About to overflow below this, Hz.
    pub overflow_hz: f64,
    /// Lowest believable reading at self check, Hz.
    pub plausible_low_hz: f64,
    /// Highest believable reading at self check, Hz.
    pub plausible_high_hz: f64,
}

/// Times of an electronic control, s.
#[derive(Clone, Debug, PartialEq)]
pub struct Times {
    /// Self check after switching on.
    pub self_check_s: f64,
    /// Without a key for so long, a waiting or finished panel goes dark.
    pub ready_off_s: f64,
    /// The level must hold so long before a fill ends.
    pub level_hold_s: f64,
    /// Longest fill.
    pub fill_limit_s: f64,
    /// Usual fill, for the minutes shown.
    pub fill_usual_s: f64,
    /// No refill in the first part of a wash.
    pub top_up_after_s: f64,
    /// Empty for so long in sum, then the drain ends.
    pub drain_after_empty_s: f64,
    /// Longest drain.
    pub drain_limit_s: f64,
    /// Usual drain, for the minutes shown.
    pub drain_usual_s: f64,
    /// Motor on in the step spin.
    pub spin_step_on_s: f64,
    /// Motor off in the step spin.
    pub spin_step_off_s: f64,
    /// The clutch actuator runs so long before the motor may spin.
    pub clutch_lead_s: f64,
    /// Waiting for the basket before a correction.
    pub correction_brake_s: f64,
    /// Washing motion that spreads the load.
    pub correction_agitate_s: f64,
    /// The motor rests so long between directions.
    pub dead_time_s: f64,
    /// The lid input must be open so long to count as open.
    pub lid_open_debounce_s: f64,
    /// The lid input must be closed so long to count as closed.
    pub lid_closed_debounce_s: f64,
    /// On a shared input: an opening no longer than this is a knock of the tub.
    pub knock_max_s: f64,
    /// On a shared input: neither open nor closed for so long counts as an open lid.
    pub chatter_limit_s: f64,
    /// Open lid for so long, then the alarm.
    pub lid_limit_s: f64,
    /// Paused by key for so long, then the program ends without a signal.
    pub pause_limit_s: f64,
    /// Reading past the overflow threshold for so long, then the alarm.
    pub overflow_after_s: f64,
    /// The overflow alarm lets water out for so long.
    pub overflow_drain_s: f64,
    /// No level pulses for so long while a program runs, then the alarm.
    pub no_pulses_after_s: f64,
    /// Supply out of range (or back in range) for so long, then pause (or go on).
    pub supply_after_s: f64,
    /// A power failure up to this long is bridged.
    pub power_memory_s: f64,
    /// The alarm buzzer sounds at intervals for so long.
    pub alarm_buzzer_s: f64,
    /// The lock key must be held so long.
    pub lock_hold_s: f64,
}

/// When a phase of a service step is over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PhaseEnd {
    /// After a time, s.
    Time {
        /// Length of the phase, s.
        time_s: f64,
    },
    /// When the chosen level is reached.
    Full {
        /// Index of the level target.
        level: usize,
    },
    /// When the tub reads empty.
    Empty,
    /// Only by the start key.
    Key,
}

/// Part of a service step: what runs, and until when.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ServicePhase {
    /// What runs.
    pub loads: Loads,
    /// Until when.
    pub until: PhaseEnd,
}

/// What the panel shows during a service step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ServiceShow {
    /// All lamps.
    Lamps,
    /// Level frequency.
    Frequency,
    /// Lid and lever inputs.
    Switches,
    /// Time of the running phase.
    Seconds,
    /// The step number only.
    Nothing,
}

/// One step of the service test.
#[derive(Clone, Debug, PartialEq)]
pub struct ServiceStep {
    /// What it tries, for the label inside the panel.
    pub title: String,
    /// What runs, in order; after the last phase all is off.
    pub phases: Vec<ServicePhase>,
    /// What the panel shows.
    pub shows: ServiceShow,
    /// The step refuses to run with water in the tub.
    pub needs_empty: bool,
}

impl LevelThresholds {
    /// Thresholds for an oscillator that reads `empty_hz` with an empty tub and slows by
    /// `per_pa` (1/Pa, see the header). The pressures are a design choice: levels
    /// 1370, 1990, 2625 Pa, refill 250 Pa below, empty 129 Pa, overflow 3526 Pa;
    /// believable is 600 Hz above empty down to 4000 Pa.
    pub fn for_sensor(empty_hz: f64, per_pa: f64) -> LevelThresholds {
        let at = |pressure_pa: f64| empty_hz / (1.0 + pressure_pa * per_pa).sqrt();
        let target = |name: &str, full_pa: f64, on_s: f64, off_s: f64| LevelTarget {
            name: name.to_owned(),
            full_hz: at(full_pa),
            top_up_hz: at(full_pa - 250.0),
            pattern: Pattern { on_s, off_s },
        };
        LevelThresholds {
            targets: vec![
                target("Low", 1370.0, 0.8, 0.8),
                target("Medium", 1990.0, 1.1, 0.7),
                target("High", 2625.0, 1.4, 0.7),
            ],
            empty_hz: at(129.0),
            overflow_hz: at(3526.0),
            plausible_low_hz: at(4000.0),
            plausible_high_hz: empty_hz + 600.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thresholds_follow_the_oscillator() {
        // The oscillator of 26.0 kHz empty and 22.0 kHz at 2625 Pa gives the thresholds
        // 23.67, 22.80, 22.00, empty 25.75 and overflow 21.0 kHz. Source: design sheet.
        let per_pa = ((26.0_f64 / 22.0) * (26.0 / 22.0) - 1.0) / 2625.0;
        let level = LevelThresholds::for_sensor(26_000.0, per_pa);
        for (target, expected_hz) in level.targets.iter().zip([23_670.0, 22_800.0, 22_000.0]) {
            assert!((target.full_hz - expected_hz).abs() < 10.0, "{target:?}");
            assert!(target.top_up_hz > target.full_hz);
        }
        assert!((level.empty_hz - 25_750.0).abs() < 5.0);
        assert!((level.overflow_hz - 21_000.0).abs() < 5.0);
        assert!((level.plausible_low_hz - 20_500.0).abs() < 60.0);
    }
}
