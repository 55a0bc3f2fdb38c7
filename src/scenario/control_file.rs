//! The `control` section of a machine file: an electronic control with thresholds, times, programs
//! and service test, or a cam timer.
//!
//! Names follow the control's own data; every time is in seconds and every threshold in hertz,
//! because that is what a control counts.

use serde::Deserialize;
use serde::Serialize;

/// The control of a machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum ControlFile {
    /// A board with a program.
    Electronic(Box<ElectronicFile>),
    /// A dial, a knob, contacts on cams.
    CamTimer(CamTimerFile),
}

/// An electronic control as data.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ElectronicFile {
    /// Supply the machine is made for, V rms.
    pub nominal_supply_v: f64,
    /// Lowest supply the control works with, as a part of nominal.
    pub supply_low_ratio: f64,
    /// Highest supply the control works with, as a part of nominal.
    pub supply_high_ratio: f64,
    /// A mechanical switch feeds the board: power on means awake.
    pub wakes_when_powered: bool,
    /// A program interrupted by a power failure goes on by itself.
    pub resumes_after_power_loss: bool,
    /// The lid is guarded during the wash too.
    pub lid_guards_wash: bool,
    /// A hot valve is fitted.
    pub has_hot_valve: bool,
    /// What lets the water out.
    pub drain_loads: DrainLoadsFile,
    /// What runs with the motor in every spin.
    pub spin_loads: DrainLoadsFile,
    /// Level thresholds.
    pub level: LevelFile,
    /// Times, s.
    pub times: TimesFile,
    /// Corrections allowed in one spin block before the alarm.
    pub max_corrections: u32,
    /// Refills allowed in one program before the warning.
    pub max_top_ups: u32,
    /// Programs, in the order of the program key.
    pub programs: Vec<ProgramFile>,
    /// The service test.
    pub service_steps: Vec<ServiceStepFile>,
}

/// Loads that belong to draining or to spinning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DrainLoadsFile {
    /// The geared drain or clutch motor runs.
    pub actuator: bool,
    /// The drain pump runs.
    pub pump: bool,
}

/// Reversing pattern of the wash.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PatternFile {
    /// Motor on in one direction, s.
    pub on_s: f64,
    /// Pause between directions, s.
    pub off_s: f64,
}

/// Level thresholds as frequencies, Hz.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LevelFile {
    /// Levels a person can choose, lowest first.
    pub targets: Vec<LevelTargetFile>,
    /// Empty at or above this, Hz.
    pub empty_hz: f64,
    /// About to overflow below this, Hz.
    pub overflow_hz: f64,
    /// Lowest believable reading, Hz.
    pub plausible_low_hz: f64,
    /// Highest believable reading, Hz.
    pub plausible_high_hz: f64,
}

/// One water level a person can choose.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LevelTargetFile {
    /// Name on the panel.
    pub name: String,
    /// Filled at or below this, Hz.
    pub full_hz: f64,
    /// Refilled above this, Hz.
    pub top_up_hz: f64,
    /// Wash pattern at this level.
    pub pattern: PatternFile,
}

/// Times of an electronic control, s.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct TimesFile {
    /// Self check after switching on.
    pub self_check_s: f64,
    /// A waiting panel goes dark after this.
    pub ready_off_s: f64,
    /// The level must hold so long.
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
    /// The clutch is pulled so long before the motor may spin.
    pub clutch_lead_s: f64,
    /// Waiting for the basket before a correction.
    pub correction_brake_s: f64,
    /// Washing motion that spreads the load.
    pub correction_agitate_s: f64,
    /// Rest between motor directions.
    pub dead_time_s: f64,
    /// The lid input must be open so long to count.
    pub lid_open_debounce_s: f64,
    /// The lid input must be closed so long to count.
    pub lid_closed_debounce_s: f64,
    /// A shorter opening of a shared input is a knock of the tub.
    pub knock_max_s: f64,
    /// Chatter of a shared input for so long counts as an open lid.
    pub chatter_limit_s: f64,
    /// Open lid for so long, then the alarm.
    pub lid_limit_s: f64,
    /// Paused by key for so long, then the program ends.
    pub pause_limit_s: f64,
    /// Past the overflow threshold for so long, then the alarm.
    pub overflow_after_s: f64,
    /// The overflow alarm lets water out for so long.
    pub overflow_drain_s: f64,
    /// No level pulses for so long, then the alarm.
    pub no_pulses_after_s: f64,
    /// Supply out of range for so long, then pause.
    pub supply_after_s: f64,
    /// A power failure up to this long is bridged.
    pub power_memory_s: f64,
    /// The alarm buzzer sounds at intervals for so long.
    pub alarm_buzzer_s: f64,
    /// The lock key must be held so long.
    pub lock_hold_s: f64,
}

/// A wash program.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProgramFile {
    /// Name on the panel.
    pub name: String,
    /// A pattern of its own; otherwise the level's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pattern: Option<PatternFile>,
    /// Steps in order.
    pub steps: Vec<ProgramStepFile>,
}

/// One step of a program.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum ProgramStepFile {
    /// Water in, cold.
    Fill,
    /// Water in, at the chosen temperature.
    WashFill,
    /// Reversing motion for so long, s.
    Agitate(f64),
    /// Standing in water for so long, s.
    Soak(f64),
    /// Water out.
    Drain,
    /// Motor on and off for so long, s.
    SpinStep(f64),
    /// Steady spin for so long, s.
    SpinFull(f64),
    /// All off for so long and until the basket stands, s.
    Brake(f64),
}

/// One step of the service test.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ServiceStepFile {
    /// What it tries, for the label inside the panel.
    pub title: String,
    /// What the panel shows.
    pub shows: ServiceShowFile,
    /// Refuses to run with water in the tub.
    pub needs_empty: bool,
    /// What runs, in order.
    pub phases: Vec<ServicePhaseFile>,
}

/// What the panel shows during a service step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ServiceShowFile {
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

/// Part of a service step.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ServicePhaseFile {
    /// What runs.
    pub on: Vec<LoadFile>,
    /// Until when.
    pub until: PhaseEndFile,
}

/// A load an electronic control switches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum LoadFile {
    /// Motor in the spin direction.
    MotorForward,
    /// Motor in the other direction.
    MotorReverse,
    /// Inlet valve, cold.
    InletValve,
    /// Inlet valve, hot.
    HotValve,
    /// Geared drain or clutch motor.
    DrainActuator,
    /// Drain pump.
    DrainPump,
    /// Buzzer.
    Buzzer,
}

/// When a phase of a service step is over.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum PhaseEndFile {
    /// After so long, s.
    TimeS(f64),
    /// When the level target with this index is reached.
    Full(usize),
    /// When the tub reads empty.
    Empty,
    /// Only by the start key.
    Key,
}

/// A cam timer as data.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CamTimerFile {
    /// Time of one dial step with a running timer motor, s.
    pub step_s: f64,
    /// Steps of the dial, step 0 = off included.
    pub n_steps: u32,
    /// Cams on fast shafts.
    pub fast_cams: Vec<FastCamFile>,
    /// Contacts, at most 32.
    pub contacts: Vec<CamContactFile>,
    /// Steps during which the bell sounds.
    pub bell: Vec<StepSpanFile>,
}

/// A cam on a fast shaft.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct FastCamFile {
    /// One turn, s.
    pub period_s: f64,
    /// Closed from here, s into the turn.
    pub closed_from_s: f64,
    /// Open again here, s into the turn.
    pub closed_to_s: f64,
}

/// One contact of the timer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CamContactFile {
    /// Its element in the wiring.
    pub name: String,
    /// Also needs the knob pulled.
    pub needs_knob: bool,
    /// When it is closed.
    pub spans: Vec<StepSpanFile>,
}

/// Dial steps during which a cam holds its contact.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StepSpanFile {
    /// First step.
    pub first: u32,
    /// Last step, included.
    pub last: u32,
    /// Follow the fast cam with this index.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fast_cam: Option<usize>,
}
