//! One tick: what acts on the plant during it, and what is kept of it for readings.

use crate::plant::drive::DriveSums;
use crate::plant::drive::MotorInput;
use crate::plant::state::PlantState;
use crate::plant::tub::TubFlows;

/// What harness and hands do to the plant during one tick.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlantInputs<'a> {
    /// Motor connection.
    pub motor: MotorInput<'a>,
    /// The inlet valve's coil pulls.
    pub is_valve_energised: bool,
    /// The drain motor pulls.
    pub is_actuator_energised: bool,
    /// The drain pump turns.
    pub is_pump_energised: bool,
    /// How far a hand pulls the drain motor's wire, m; 0 when nobody does.
    pub hand_stroke_m: f64,
}

impl PlantInputs<'_> {
    /// Everything off, nobody touching.
    pub const IDLE: PlantInputs<'static> = PlantInputs {
        motor: MotorInput::Off,
        is_valve_energised: false,
        is_actuator_energised: false,
        is_pump_energised: false,
        hand_stroke_m: 0.0,
    };
}

/// What the last tick did, kept for readings only.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct TickMemory {
    pub(crate) flows: TubFlows,
    pub(crate) load_n_m: f64,
    pub(crate) before: Before,
    pub(crate) after: After,
}

/// The state as the tick found it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Before {
    pub(crate) opening_ratio: f64,
    pub(crate) stroke_m: f64,
    pub(crate) pulsator_rad_per_s: f64,
}

/// Means over the tick.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct After {
    pub(crate) input_w: f64,
    pub(crate) line_a: f64,
    pub(crate) load_mean_n_m: f64,
    pub(crate) slip_w: f64,
    pub(crate) slip_rad_per_s: f64,
    pub(crate) is_motor_live: bool,
    pub(crate) is_valve_energised: bool,
    pub(crate) is_actuator_energised: bool,
    pub(crate) is_pump_energised: bool,
}

impl TickMemory {
    pub(crate) fn start(s: &PlantState) -> Self {
        Self {
            before: Before {
                opening_ratio: s.inlet.opening_ratio,
                stroke_m: s.actuator.stroke_m,
                pulsator_rad_per_s: s.drive.pulsator_rad_per_s,
            },
            ..Self::default()
        }
    }

    pub(crate) fn finish(&mut self, u: &PlantInputs<'_>, sums: &DriveSums, dt_s: f64) {
        self.after = After {
            input_w: sums.input_j / dt_s,
            line_a: sums.line_a_s / dt_s,
            load_mean_n_m: sums.load_n_m_s / dt_s,
            slip_w: sums.slip_j / dt_s,
            slip_rad_per_s: sums.slip_rad / dt_s,
            is_motor_live: !matches!(u.motor, MotorInput::Off),
            is_valve_energised: u.is_valve_energised,
            is_actuator_energised: u.is_actuator_energised,
            is_pump_energised: u.is_pump_energised,
        };
    }
}
