//! The vocabulary of the state table: states and their tree, loads, guards, targets.
//!
//! ```text
//! Off
//! powered: SelfCheck  Ready  DelayedStart  Alarm  End  ServiceTest
//!   run:   Fill  Agitate  Soak  Drain  SpinStep  SpinFull  Brake
//!          Unbalance: Brake > Fill > Agitate > Drain > back to SpinStep of the block
//!          SpinHeld (shared input open: knock or lid?)
//!   pause: Lid  Key  Supply  Power, each with history: back to the interrupted state
//! ```
//! The table itself is in `table.rs`. Structure: common practice.

use crate::control::alarms::Alarm;
use crate::control::model::Times;

/// A state of the control.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub enum State {
    /// Dark.
    Off,
    /// Lamps on, inputs read.
    SelfCheck,
    /// Waiting for a choice.
    Ready,
    /// Waiting for the chosen hour.
    DelayedStart,
    /// Water in.
    Fill,
    /// Reversing motion.
    Agitate,
    /// Standing in water.
    Soak,
    /// Water out.
    Drain,
    /// Motor on and off.
    SpinStep,
    /// Steady spin.
    SpinFull,
    /// All off, the basket stops.
    Brake,
    /// Correction: waiting for the basket.
    UnbalanceBrake,
    /// Correction: water in.
    UnbalanceFill,
    /// Correction: motion that spreads the load.
    UnbalanceAgitate,
    /// Correction: water out.
    UnbalanceDrain,
    /// Spin stopped by a shared input that is neither closed nor long enough open.
    SpinHeld,
    /// Lid open.
    PauseLid,
    /// Paused by key.
    PauseKey,
    /// Supply out of range.
    PauseSupply,
    /// The power came back and waits for a key.
    PausePower,
    /// Stopped by an alarm.
    Alarm,
    /// Finished.
    End,
    /// Service test.
    ServiceTest,
}

/// Parent state.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// Off: nothing is watched but the wake key.
    Off,
    /// Awake, no program running.
    Idle,
    /// A program runs.
    Run,
    /// A program waits, with history.
    Pause,
}

/// Inlet valves of a state.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Water {
    /// Shut.
    Shut,
    /// Open.
    Fill,
    /// Open while refilling.
    TopUp,
}

/// What stands at the drain side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outlet {
    /// Nothing runs.
    Rest,
    /// The model's drain loads.
    Drain,
    /// The model's spin loads.
    Spin,
    /// The drain loads for a while, if the alarm is an overflow.
    OverflowDrain,
}

/// What the motor does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Motor {
    /// Off.
    Off,
    /// The wash pattern, both ways.
    Pattern,
    /// On and off in the spin direction.
    StepSpin,
    /// On in the spin direction.
    Spin,
}

/// What the buzzer does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Buzzer {
    /// Silent.
    Silent,
    /// Five signals of 1 s.
    Finished,
    /// 10 s every minute, for a while.
    Calling,
}

/// A time of the model, chosen by name.
pub type Time = fn(&Times) -> f64;

/// A condition that opens an exit.
#[derive(Clone, Copy, Debug)]
pub enum Guard {
    /// The power key, or any key where there is none.
    WakeKey,
    /// The power key.
    PowerKey,
    /// The start key.
    StartKey,
    /// The program or the delay key.
    ChoiceKey,
    /// The service key.
    ServiceKey,
    /// Start key, and what raised the alarm is gone.
    AlarmAnswered,
    /// The self-check time is over and the level reading is believable.
    SelfCheckPassed,
    /// The state has lasted this long.
    Lasted(Time),
    /// The program step's own time is over.
    StepTimeOver,
    /// The delay is over.
    DelayOver,
    /// The chosen level has held long enough.
    LevelHeld,
    /// The lowest level has held long enough.
    LowLevelHeld,
    /// Empty for long enough in sum.
    Emptied,
    /// The level reading says overflow for long enough.
    Overflow,
    /// No level pulses for long enough.
    NoPulses,
    /// The supply is out of range for long enough.
    SupplyBad,
    /// The supply is in range again for long enough.
    SupplyGood,
    /// An input of its own says that the lid is open.
    LidOpen,
    /// The same, on machines that guard the lid during the wash.
    WashLidOpen,
    /// An input of its own says that the lever has tripped.
    LeverTripped,
    /// The shared input has opened.
    SharedInputOpened,
    /// The shared input has stayed open longer than a knock.
    OpenLongerThanKnock,
    /// The lid input is closed again.
    LidClosed,
}

/// Where an exit leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Next {
    /// To a state.
    Go(State),
    /// To the first step of the program, or to the delay.
    Begin,
    /// To the first step, the delay being over.
    BeginNow,
    /// To the next step of the program, or to the end.
    NextStep,
    /// To the step spin of the same block.
    SpinBlock,
    /// To a correction, or to the alarm after too many.
    Correct,
    /// To a pause that remembers this state.
    Pause(State),
    /// Back to the remembered state, its remaining time kept.
    Resume,
    /// Back to the remembered state from its beginning.
    Restart,
    /// To the alarm.
    Raise(Alarm),
}

/// One exit: when, and where to.
#[derive(Clone, Copy, Debug)]
pub struct Exit(pub Guard, pub Next);
