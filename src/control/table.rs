//! The wash cycle as a table: for each state what runs, and which exits lead where.
//!
//! Exits are tried in order: those of powered states, of the group, of the state itself.
//! Numbers come from the model. Limits: no speed sensor, so the brake state ends by time
//! alone; nobody notices a motor that does not turn.

use crate::control::alarms::Alarm;
use crate::control::states::Buzzer;
use crate::control::states::Exit;
use crate::control::states::Group;
use crate::control::states::Guard;
use crate::control::states::Motor;
use crate::control::states::Next;
use crate::control::states::Outlet;
use crate::control::states::State;
use crate::control::states::Water;

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
