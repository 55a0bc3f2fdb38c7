//! Guards and targets of the state table, evaluated for a running control.

use crate::control::alarms::Alarm;
use crate::control::alarms::Warning;
use crate::control::controller::Controller;
use crate::control::controller::Interrupted;
use crate::control::io::Key;
use crate::control::io::ticks;
use crate::control::programs::Program;
use crate::control::programs::Step;
use crate::control::programs::StepKind;
use crate::control::service_run::ServiceRun;
use crate::control::states::Exit;
use crate::control::states::Group;
use crate::control::states::Guard;
use crate::control::states::Next;
use crate::control::states::Outlet;
use crate::control::states::State;

/// Most exits taken in one tick; steps of zero length pass at once, loops do not.
const MOST_EXITS_A_TICK: u32 = 4;

impl Controller {
    /// Takes exits until none is open. A key press serves one exit only.
    pub(crate) fn walk(&mut self) {
        for _ in 0..MOST_EXITS_A_TICK {
            let row = self.state.row();
            let [powered, group] = row.group.exits();
            let open = powered
                .iter()
                .chain(group)
                .chain(row.exits)
                .find(|Exit(guard, _)| self.holds(*guard));
            let Some(&Exit(_, next)) = open else {
                break;
            };
            self.follow(next);
            self.pressed = None;
        }
        if self.state == State::ServiceTest {
            self.walk_service();
        }
    }

    fn holds(&self, guard: Guard) -> bool {
        let times = &self.model.times;
        let pressed = |key: Key| self.pressed == Some(key);
        let lasted = |time_s: f64| self.in_state_ticks >= ticks(time_s);
        match guard {
            Guard::WakeKey => {
                pressed(Key::Power) || self.model.wakes_when_powered && self.pressed.is_some()
            }
            Guard::PowerKey => pressed(Key::Power),
            Guard::StartKey => pressed(Key::Start),
            Guard::ChoiceKey => pressed(Key::Program) || pressed(Key::Delay),
            Guard::ServiceKey => pressed(Key::Service),
            Guard::AlarmAnswered => pressed(Key::Start) && self.is_cause_gone(),
            Guard::SelfCheckPassed => lasted(times.self_check_s) && self.is_level_plausible(),
            Guard::Lasted(time) => lasted(time(times)),
            Guard::StepTimeOver => self.program_step().is_none_or(|step| lasted(step.time_s)),
            Guard::DelayOver => self.in_state_ticks >= self.settings.delay_min.saturating_mul(600),
            Guard::LevelHeld | Guard::LowLevelHeld => self.hold_ticks >= ticks(times.level_hold_s),
            Guard::Emptied => self.hold_ticks >= ticks(times.drain_after_empty_s),
            Guard::Overflow => self.overflow_ticks > ticks(times.overflow_after_s),
            Guard::NoPulses => self.no_pulse_ticks > ticks(times.no_pulses_after_s),
            Guard::SupplyBad => self.supply_bad_ticks >= ticks(times.supply_after_s),
            Guard::SupplyGood => self.supply_good_ticks >= ticks(times.supply_after_s),
            Guard::LidOpen => self.has_own_lever_input && !self.lid.is_closed,
            Guard::WashLidOpen => self.model.lid_guards_wash && !self.lid.is_closed,
            Guard::LeverTripped => self.has_own_lever_input && !self.lever.is_closed,
            Guard::SharedInputOpened => !self.has_own_lever_input && !self.lid.is_closed,
            Guard::OpenLongerThanKnock => self.lid.open_ticks > ticks(times.knock_max_s),
            Guard::LidClosed => self.lid.is_closed,
        }
    }

    fn is_level_plausible(&self) -> bool {
        let level = &self.model.level;
        self.level_hz
            .is_some_and(|hz| hz >= level.plausible_low_hz && hz <= level.plausible_high_hz)
    }

    fn is_cause_gone(&self) -> bool {
        match self.alarm {
            Some(Alarm::LidIsOpen) => self.lid.is_closed,
            Some(Alarm::LevelNotPlausible) => self.is_level_plausible(),
            Some(Alarm::OverflowDanger) => self.overflow_ticks == 0,
            // Whether these are gone shows only by trying again.
            Some(Alarm::FillsTooSlowly | Alarm::DrainsTooSlowly | Alarm::BasketKeepsSwinging)
            | None => true,
        }
    }

    fn follow(&mut self, next: Next) {
        match next {
            Next::Go(state) => self.go(state),
            Next::Begin if self.settings.delay_min > 0 => self.enter(State::DelayedStart),
            Next::Begin => self.begin(),
            Next::BeginNow => {
                self.settings.delay_min = 0;
                self.begin();
            }
            Next::NextStep => {
                if self.state == State::Brake {
                    self.n_corrections = 0;
                }
                self.enter_step(self.step + 1);
            }
            Next::SpinBlock => self.enter_step(self.block_spin_step()),
            Next::Correct => self.correct(),
            Next::Pause(state) => self.pause(state),
            Next::Resume => self.resume(),
            Next::Restart => {
                if let Some(kept) = &mut self.interrupted {
                    kept.in_state_ticks = 0;
                    kept.hold_ticks = 0;
                }
                self.resume();
            }
            Next::Raise(alarm) => self.raise(alarm),
        }
    }

    /// Leaves for a state that forgets the program.
    fn go(&mut self, state: State) {
        if state.row().group != Group::Run {
            self.interrupted = None;
            self.warning = None;
        }
        if self.state == State::DelayedStart && state == State::Ready {
            self.settings.delay_min = 0;
        }
        if state == State::ServiceTest {
            self.service = ServiceRun::default();
        }
        self.enter(state);
    }

    /// Enters a state with fresh counters.
    pub(crate) fn enter(&mut self, state: State) {
        self.state = state;
        self.in_state_ticks = 0;
        self.hold_ticks = 0;
        self.pattern_ticks = 0;
        self.is_topping_up = false;
    }

    fn begin(&mut self) {
        self.n_corrections = 0;
        self.n_top_ups = 0;
        self.warning = None;
        self.interrupted = None;
        self.enter_step(0);
    }

    /// Enters a step of the program, or the end when there is none.
    fn enter_step(&mut self, step: usize) {
        self.step = step;
        let state = match self.program_step().map(|step| step.kind) {
            Some(StepKind::Fill) => State::Fill,
            Some(StepKind::Agitate) => State::Agitate,
            Some(StepKind::Soak) => State::Soak,
            Some(StepKind::Drain) => State::Drain,
            Some(StepKind::SpinStep) => State::SpinStep,
            Some(StepKind::SpinFull) => State::SpinFull,
            Some(StepKind::Brake) => State::Brake,
            None => State::End,
        };
        self.left_after_ticks = self.usual_ticks_after(step);
        self.enter(state);
    }

    /// The chosen program, if the model has it.
    pub(crate) fn program(&self) -> Option<&Program> {
        self.model.programs.get(self.settings.program)
    }

    /// The present step of the program.
    pub(crate) fn program_step(&self) -> Option<&Step> {
        self.program()?.steps.get(self.step)
    }

    /// Usual time of a step, in ticks.
    pub(crate) fn usual_ticks(&self, step: &Step) -> u32 {
        match step.kind {
            StepKind::Fill => ticks(self.model.times.fill_usual_s),
            StepKind::Drain => ticks(self.model.times.drain_usual_s),
            _ => ticks(step.time_s),
        }
    }

    fn usual_ticks_after(&self, step: usize) -> u32 {
        let later = self
            .program()
            .and_then(|program| program.steps.get(step + 1..));
        later
            .unwrap_or_default()
            .iter()
            .map(|step| self.usual_ticks(step))
            .fold(0, u32::saturating_add)
    }

    /// The step spin that began the present spin block.
    fn block_spin_step(&self) -> usize {
        let steps = self.program().map_or(&[][..], |program| &program.steps);
        let up_to_now = steps.get(..=self.step).unwrap_or(steps);
        up_to_now
            .iter()
            .rposition(|step| step.kind == StepKind::SpinStep)
            .unwrap_or(self.step)
    }

    /// A knock of the tub: spread the load again, or give up after too many.
    fn correct(&mut self) {
        self.step = self.block_spin_step();
        self.left_after_ticks = self.usual_ticks_after(self.step);
        self.n_corrections += 1;
        if self.n_corrections > self.model.max_corrections {
            self.n_corrections = 0;
            self.interrupted = Some(Interrupted {
                state: State::SpinStep,
                in_state_ticks: 0,
                hold_ticks: 0,
            });
            self.alarm = Some(Alarm::BasketKeepsSwinging);
            self.enter(State::Alarm);
        } else {
            self.interrupted = None;
            self.enter(State::UnbalanceBrake);
        }
    }

    /// Remembers a state that is not itself a pause.
    fn remember(&mut self) {
        if self.state.row().group != Group::Pause {
            self.interrupted = Some(Interrupted {
                state: self.state,
                in_state_ticks: self.in_state_ticks,
                hold_ticks: self.hold_ticks,
            });
        }
    }

    pub(crate) fn pause(&mut self, state: State) {
        self.remember();
        if state == State::PauseSupply {
            self.warning = Some(Warning::SupplyOutOfRange);
        }
        self.enter(state);
    }

    fn raise(&mut self, alarm: Alarm) {
        self.remember();
        self.alarm = Some(alarm);
        self.enter(State::Alarm);
    }

    fn resume(&mut self) {
        let Some(kept) = self.interrupted.take() else {
            self.enter(State::Ready);
            return;
        };
        if self.warning == Some(Warning::SupplyOutOfRange) {
            self.warning = None;
        }
        self.enter(kept.state);
        self.in_state_ticks = kept.in_state_ticks;
        self.hold_ticks = kept.hold_ticks;
    }

    /// A spin whose clutch actuator has not yet had its time: its clock waits.
    pub(crate) fn is_waiting_for_clutch(&self) -> bool {
        self.state.row().outlet == Outlet::Spin
            && self.model.spin_loads.actuator
            && self.actuator_ticks < ticks(self.model.times.clutch_lead_s)
    }
}
