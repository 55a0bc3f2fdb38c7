//! What the present state switches and shows.

use crate::control::alarms::Alarm;
use crate::control::controller::Controller;
use crate::control::display::Display;
use crate::control::display::Message;
use crate::control::io::Loads;
use crate::control::io::ticks;
use crate::control::model::DrainLoads;
use crate::control::programs::Pattern;
use crate::control::settings::WaterChoice;
use crate::control::states::Buzzer;
use crate::control::states::Group;
use crate::control::states::Motor;
use crate::control::states::Outlet;
use crate::control::states::State;
use crate::control::states::Water;

/// Length of one alarm call, and the time from call to call, ticks.
const CALL_TICKS: u32 = 100;
const CALL_EVERY_TICKS: u32 = 600;
/// Five signals of 1 s with 1 s between, ticks.
const FINISHED_TICKS: u32 = 100;

impl Controller {
    /// What the state wants switched, before the interlock.
    pub(crate) fn wanted_loads(&self) -> Loads {
        if self.state == State::ServiceTest {
            return self.service_loads();
        }
        let row = self.state.row();
        let outlet = match row.outlet {
            Outlet::Rest => None,
            Outlet::Drain => Some(self.model.drain_loads),
            Outlet::Spin => Some(self.model.spin_loads),
            Outlet::OverflowDrain => self.overflow_outlet(),
        };
        let (inlet_valve, hot_valve) = self.valves(row.water);
        let (motor_forward, motor_reverse) = self.motor(row.motor);
        Loads {
            motor_forward,
            motor_reverse,
            inlet_valve,
            hot_valve,
            drain_actuator: outlet.is_some_and(|loads| loads.actuator),
            drain_pump: outlet.is_some_and(|loads| loads.pump),
            buzzer: self.buzzer(row.buzzer),
        }
    }

    fn overflow_outlet(&self) -> Option<DrainLoads> {
        let is_overflow = self.alarm == Some(Alarm::OverflowDanger);
        let lasts = self.in_state_ticks < ticks(self.model.times.overflow_drain_s);
        (is_overflow && lasts).then_some(self.model.drain_loads)
    }

    fn valves(&self, water: Water) -> (bool, bool) {
        let is_open = match water {
            Water::Shut => false,
            Water::Fill => true,
            Water::TopUp => self.is_topping_up,
        };
        let may_be_warm = self.model.has_hot_valve
            && self.state == State::Fill
            && self.program_step().is_some_and(|step| step.may_be_warm);
        let choice = if may_be_warm {
            self.settings.water
        } else {
            WaterChoice::Cold
        };
        let cold = is_open && choice != WaterChoice::Hot;
        let hot = is_open && choice != WaterChoice::Cold;
        (cold, hot)
    }

    /// Forward and reverse.
    fn motor(&self, motor: Motor) -> (bool, bool) {
        match motor {
            Motor::Off => (false, false),
            Motor::Pattern => self.stroke(),
            Motor::Spin => (!self.is_waiting_for_clutch(), false),
            Motor::StepSpin => {
                let on = ticks(self.model.times.spin_step_on_s);
                let off = ticks(self.model.times.spin_step_off_s);
                let phase = self.in_state_ticks % (on + off).max(1);
                (phase < on && !self.is_waiting_for_clutch(), false)
            }
        }
    }

    fn stroke(&self) -> (bool, bool) {
        let Some(Pattern { on_s, off_s }) = self.pattern() else {
            return (false, false);
        };
        let (on, off) = (ticks(on_s), ticks(off_s));
        let phase = self.pattern_ticks % (2 * (on + off)).max(1);
        let is_reverse = phase >= on + off && phase < on + off + on;
        (phase < on, is_reverse)
    }

    fn pattern(&self) -> Option<Pattern> {
        // Spreading a load happens at the lowest level, in that level's strokes.
        let level = if self.state == State::UnbalanceAgitate {
            0
        } else {
            self.settings.level
        };
        let of_level = self.model.level.targets.get(level);
        let of_program = self.program().and_then(|program| program.pattern);
        of_program.or(of_level.map(|target| target.pattern))
    }

    fn buzzer(&self, buzzer: Buzzer) -> bool {
        let at = self.in_state_ticks;
        match buzzer {
            Buzzer::Silent => false,
            Buzzer::Finished => at < FINISHED_TICKS && (at / 10).is_multiple_of(2),
            Buzzer::Calling => {
                at < ticks(self.model.times.alarm_buzzer_s) && at % CALL_EVERY_TICKS < CALL_TICKS
            }
        }
    }

    /// What the panel shows.
    pub(crate) fn panel(&self) -> Display {
        let mut display = Display::of(self.message());
        if self.state == State::Off {
            return display;
        }
        display.warning = self.warning;
        display.program = self.settings.program;
        display.level = self.settings.level;
        display.keys_locked = self.settings.keys_locked;
        display.minutes_left = self.ticks_left().map(|left| left.div_ceil(600));
        if self.state == State::ServiceTest {
            self.show_service(&mut display);
        }
        display
    }

    /// Usual time to the end of the program, or to the delayed start.
    fn ticks_left(&self) -> Option<u32> {
        if self.state == State::DelayedStart {
            let delay = self.settings.delay_min.saturating_mul(600);
            return Some(delay.saturating_sub(self.in_state_ticks));
        }
        let group = self.state.row().group;
        if !matches!(group, Group::Run | Group::Pause) {
            return None;
        }
        let spent = match self.interrupted {
            Some(kept) => kept.in_state_ticks,
            None => self.in_state_ticks,
        };
        let step = self.program_step()?;
        let here = self.usual_ticks(step).saturating_sub(spent);
        Some(self.left_after_ticks.saturating_add(here))
    }

    fn message(&self) -> Message {
        match self.state {
            State::Off => Message::Dark,
            State::SelfCheck if self.in_state_ticks < 10 => Message::AllLamps,
            State::SelfCheck => Message::Dark,
            State::Ready => Message::Ready,
            State::DelayedStart => Message::StartsLater,
            State::Fill => Message::Filling,
            State::Agitate => Message::Washing,
            State::Soak => Message::Soaking,
            State::Drain => Message::Draining,
            State::SpinStep | State::SpinFull | State::SpinHeld => Message::Spinning,
            State::Brake => Message::Stopping,
            State::UnbalanceBrake
            | State::UnbalanceFill
            | State::UnbalanceAgitate
            | State::UnbalanceDrain => Message::SpreadingLoad,
            State::PauseLid => Message::CloseLid,
            State::PauseKey => Message::Paused,
            State::PauseSupply => Message::SupplyPause,
            State::PausePower => Message::PowerWasOff,
            State::Alarm => self.alarm.map_or(Message::Ready, Message::Alarm),
            State::End => Message::Finished,
            State::ServiceTest => self.service_message(),
        }
    }
}
