//! The wash cycle as a table: for each state what runs, and which exits lead where.
//!
//! ```text
//! Off
//! powered: SelfCheck  Ready  DelayedStart  Alarm  End  ServiceTest
//!   run:   Fill  Agitate  Soak  Drain  SpinStep  SpinFull  Brake
//!          Unbalance: Brake > Fill > Agitate > Drain > back to SpinStep of the block
//!          SpinHeld (shared input open: knock or lid?)
//!   pause: Lid  Key  Supply  Power, each with history: back to the interrupted state
//! ```
//! Exits are tried in order: those of powered states, of the group, of the state itself.
//! Structure: common practice; numbers: the model. Limits: no speed sensor, so the
//! brake state ends by time alone.

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

/// One row of the table.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    /// The state described.
    pub state: State,
    /// Its parent.
    pub group: Group,
    /// Inlet valves.
    pub water: Water,
    /// Drain side.
    pub outlet: Outlet,
    /// Motor.
    pub motor: Motor,
    /// Buzzer.
    pub buzzer: Buzzer,
    /// Exits, tried in order.
    pub exits: &'static [Exit],
}

use Guard::*;
use Next::*;

/// Exits shared by everything that is awake.
const POWERED: &[Exit] = &[Exit(PowerKey, Go(State::Off))];

/// Exits of running states.
const RUN: &[Exit] = &[
    Exit(Overflow, Raise(Alarm::OverflowDanger)),
    Exit(NoPulses, Raise(Alarm::LevelNotPlausible)),
    Exit(SupplyBad, Pause(State::PauseSupply)),
    Exit(StartKey, Pause(State::PauseKey)),
];

/// Exits of paused states.
const PAUSE: &[Exit] = &[
    Exit(Overflow, Raise(Alarm::OverflowDanger)),
    Exit(ServiceKey, Go(State::ServiceTest)),
    Exit(ChoiceKey, Go(State::Ready)),
];

impl Group {
    /// Exits every state of the group inherits, in order.
    pub const fn exits(self) -> [&'static [Exit]; 2] {
        match self {
            Group::Off => [&[], &[]],
            Group::Idle => [POWERED, &[]],
            Group::Run => [POWERED, RUN],
            Group::Pause => [POWERED, PAUSE],
        }
    }
}

const fn row(
    state: State,
    group: Group,
    loads: (Water, Outlet, Motor, Buzzer),
    exits: &'static [Exit],
) -> Row {
    let (water, outlet, motor, buzzer) = loads;
    Row {
        state,
        group,
        water,
        outlet,
        motor,
        buzzer,
        exits,
    }
}

/// Everything off.
const REST: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Rest, Motor::Off, Buzzer::Silent);
const FILL: (Water, Outlet, Motor, Buzzer) =
    (Water::Fill, Outlet::Rest, Motor::Off, Buzzer::Silent);
const WASH: (Water, Outlet, Motor, Buzzer) =
    (Water::TopUp, Outlet::Rest, Motor::Pattern, Buzzer::Silent);
const SPREAD: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Rest, Motor::Pattern, Buzzer::Silent);
const DRAIN: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Drain, Motor::Off, Buzzer::Silent);
const STEP_SPIN: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Spin, Motor::StepSpin, Buzzer::Silent);
const SPIN: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Spin, Motor::Spin, Buzzer::Silent);
const CALL: (Water, Outlet, Motor, Buzzer) = (
    Water::Shut,
    Outlet::OverflowDrain,
    Motor::Off,
    Buzzer::Calling,
);
const DONE: (Water, Outlet, Motor, Buzzer) =
    (Water::Shut, Outlet::Rest, Motor::Off, Buzzer::Finished);

/// Exits of both spin states: knocks and lid first, then time.
const SPIN_EXITS: &[Exit] = &[
    Exit(SharedInputOpened, Pause(State::SpinHeld)),
    Exit(LidOpen, Pause(State::PauseLid)),
    Exit(LeverTripped, Correct),
    Exit(StepTimeOver, NextStep),
];

/// The table, one row a state, in the order of [`State`].
#[rustfmt::skip]
pub const TABLE: [Row; 23] = [
    row(State::Off, Group::Off, REST, &[Exit(WakeKey, Go(State::SelfCheck))]),
    row(State::SelfCheck, Group::Idle, REST, &[
        Exit(SelfCheckPassed, Go(State::Ready)),
        Exit(Lasted(|t| t.self_check_s), Raise(Alarm::LevelNotPlausible)),
    ]),
    row(State::Ready, Group::Idle, REST, &[
        Exit(Overflow, Raise(Alarm::OverflowDanger)),
        Exit(StartKey, Begin),
        Exit(ServiceKey, Go(State::ServiceTest)),
        Exit(Lasted(|t| t.ready_off_s), Go(State::Off)),
    ]),
    row(State::DelayedStart, Group::Idle, REST, &[
        Exit(Overflow, Raise(Alarm::OverflowDanger)),
        Exit(ChoiceKey, Go(State::Ready)),
        Exit(ServiceKey, Go(State::ServiceTest)),
        Exit(DelayOver, BeginNow),
    ]),
    row(State::Fill, Group::Run, FILL, &[
        Exit(LevelHeld, NextStep),
        Exit(Lasted(|t| t.fill_limit_s), Raise(Alarm::FillsTooSlowly)),
    ]),
    row(State::Agitate, Group::Run, WASH, &[
        Exit(WashLidOpen, Pause(State::PauseLid)),
        Exit(StepTimeOver, NextStep),
    ]),
    row(State::Soak, Group::Run, REST, &[Exit(StepTimeOver, NextStep)]),
    row(State::Drain, Group::Run, DRAIN, &[
        Exit(Emptied, NextStep),
        Exit(Lasted(|t| t.drain_limit_s), Raise(Alarm::DrainsTooSlowly)),
    ]),
    row(State::SpinStep, Group::Run, STEP_SPIN, SPIN_EXITS),
    row(State::SpinFull, Group::Run, SPIN, SPIN_EXITS),
    row(State::Brake, Group::Run, REST, &[Exit(StepTimeOver, NextStep)]),
    row(State::UnbalanceBrake, Group::Run, REST, &[
        Exit(Lasted(|t| t.correction_brake_s), Go(State::UnbalanceFill)),
    ]),
    row(State::UnbalanceFill, Group::Run, FILL, &[
        Exit(LowLevelHeld, Go(State::UnbalanceAgitate)),
        Exit(Lasted(|t| t.fill_limit_s), Raise(Alarm::FillsTooSlowly)),
    ]),
    row(State::UnbalanceAgitate, Group::Run, SPREAD, &[
        Exit(WashLidOpen, Pause(State::PauseLid)),
        Exit(Lasted(|t| t.correction_agitate_s), Go(State::UnbalanceDrain)),
    ]),
    row(State::UnbalanceDrain, Group::Run, DRAIN, &[
        Exit(Emptied, SpinBlock),
        Exit(Lasted(|t| t.drain_limit_s), Raise(Alarm::DrainsTooSlowly)),
    ]),
    row(State::SpinHeld, Group::Pause, REST, &[
        Exit(OpenLongerThanKnock, Pause(State::PauseLid)),
        Exit(LidClosed, Correct),
        Exit(Lasted(|t| t.chatter_limit_s), Pause(State::PauseLid)),
    ]),
    row(State::PauseLid, Group::Pause, REST, &[
        Exit(LidClosed, Resume),
        Exit(Lasted(|t| t.lid_limit_s), Raise(Alarm::LidIsOpen)),
    ]),
    row(State::PauseKey, Group::Pause, REST, &[
        Exit(StartKey, Resume),
        Exit(Lasted(|t| t.pause_limit_s), Go(State::Off)),
    ]),
    row(State::PauseSupply, Group::Pause, REST, &[Exit(SupplyGood, Resume)]),
    row(State::PausePower, Group::Pause, REST, &[
        Exit(StartKey, Resume),
        Exit(Lasted(|t| t.pause_limit_s), Go(State::Off)),
    ]),
    row(State::Alarm, Group::Idle, CALL, &[
        Exit(AlarmAnswered, Restart),
        Exit(ServiceKey, Go(State::ServiceTest)),
        Exit(ChoiceKey, Go(State::Ready)),
    ]),
    row(State::End, Group::Idle, DONE, &[
        Exit(ChoiceKey, Go(State::Ready)),
        Exit(ServiceKey, Go(State::ServiceTest)),
        Exit(Lasted(|t| t.ready_off_s), Go(State::Off)),
    ]),
    row(State::ServiceTest, Group::Idle, REST, &[
        Exit(Overflow, Raise(Alarm::OverflowDanger)),
        Exit(ServiceKey, Go(State::Ready)),
    ]),
];

impl State {
    /// The state's row.
    pub const fn row(self) -> &'static Row {
        &TABLE[self as usize]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_stands_at_its_state() {
        for (index, row) in TABLE.iter().enumerate() {
            assert_eq!(row.state as usize, index);
        }
    }

    #[test]
    fn no_row_opens_inlet_and_outlet_together() {
        for row in &TABLE {
            assert!(
                row.water == Water::Shut || row.outlet == Outlet::Rest,
                "{:?}",
                row.state
            );
        }
    }

    #[test]
    fn every_spin_guards_the_lid() {
        for row in TABLE.iter().filter(|row| row.outlet == Outlet::Spin) {
            let guarded = |wanted: Next| row.exits.iter().any(|exit| exit.1 == wanted);
            assert!(guarded(Pause(State::PauseLid)) && guarded(Pause(State::SpinHeld)));
        }
    }
}
