//! The electronic control: reads its inputs, walks the state table, switches its loads.
//!
//! One call of [`Controller::tick`] is 0.1 s. Order inside a tick: power, inputs, at most a
//! few exits of the table, loads, interlock, display, counters. Guards and targets of the
//! exits are in `exits.rs`, loads and panel in `loads.rs`, the service test in `service.rs`.

use std::sync::Arc;

use crate::control::alarms::Alarm;
use crate::control::alarms::Warning;
use crate::control::contact::Contact;
use crate::control::contact::KeyReader;
use crate::control::display::Display;
use crate::control::display::Message;
use crate::control::interlock::Interlock;
use crate::control::io::Inputs;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::control::io::Loads;
use crate::control::io::Outputs;
use crate::control::io::ticks;
use crate::control::model::ControlModel;
use crate::control::service_run::ServiceRun;
use crate::control::settings::Settings;
use crate::control::states::Group;
use crate::control::states::State;

/// What a control without power gives.
const DARK: Outputs = Outputs {
    loads: Loads::NONE,
    contacts: 0,
    display: Display::of(Message::Dark),
};

/// A state left by a pause or an alarm, to come back to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Interrupted {
    /// The state.
    pub state: State,
    /// Ticks already spent in it.
    pub in_state_ticks: u32,
    /// Ticks its level guard had already counted.
    pub hold_ticks: u32,
}

/// An electronic control at work. Cheap to copy: the model is shared.
#[derive(Clone, Debug, PartialEq)]
pub struct Controller {
    pub(crate) model: Arc<ControlModel>,
    pub(crate) settings: Settings,
    pub(crate) state: State,
    pub(crate) in_state_ticks: u32,
    /// Index into the program's steps.
    pub(crate) step: usize,
    /// Usual time of the steps after this one.
    pub(crate) left_after_ticks: u32,
    pub(crate) interrupted: Option<Interrupted>,
    pub(crate) alarm: Option<Alarm>,
    pub(crate) warning: Option<Warning>,
    /// Ticks the level guard of the state has counted.
    pub(crate) hold_ticks: u32,
    pub(crate) pattern_ticks: u32,
    pub(crate) is_topping_up: bool,
    pub(crate) n_top_ups: u32,
    pub(crate) n_corrections: u32,
    /// Ticks the clutch actuator has been on.
    pub(crate) actuator_ticks: u32,
    pub(crate) overflow_ticks: u32,
    pub(crate) no_pulse_ticks: u32,
    pub(crate) supply_bad_ticks: u32,
    pub(crate) supply_good_ticks: u32,
    pub(crate) unpowered_ticks: u32,
    pub(crate) lid: Contact,
    pub(crate) lever: Contact,
    pub(crate) has_own_lever_input: bool,
    pub(crate) level_hz: Option<f64>,
    pub(crate) keys: KeyReader,
    pub(crate) pressed: Option<Key>,
    pub(crate) interlock: Interlock,
    pub(crate) service: ServiceRun,
}

impl Controller {
    /// A control that has been without power for long, with these settings.
    pub fn new(model: Arc<ControlModel>, settings: Settings) -> Controller {
        Controller {
            model,
            settings,
            state: State::Off,
            in_state_ticks: 0,
            step: 0,
            left_after_ticks: 0,
            interrupted: None,
            alarm: None,
            warning: None,
            hold_ticks: 0,
            pattern_ticks: 0,
            is_topping_up: false,
            n_top_ups: 0,
            n_corrections: 0,
            actuator_ticks: 0,
            overflow_ticks: 0,
            no_pulse_ticks: 0,
            supply_bad_ticks: 0,
            supply_good_ticks: 0,
            unpowered_ticks: u32::MAX,
            lid: Contact::CLOSED,
            lever: Contact::CLOSED,
            has_own_lever_input: false,
            level_hz: None,
            keys: KeyReader::default(),
            pressed: None,
            interlock: Interlock::AT_REST,
            service: ServiceRun::default(),
        }
    }

    /// The state the control is in.
    pub fn state(&self) -> State {
        self.state
    }

    /// Time spent in the state, s.
    pub fn in_state_s(&self) -> f64 {
        f64::from(self.in_state_ticks) / 10.0
    }

    /// The settings of the panel.
    pub fn settings(&self) -> Settings {
        self.settings
    }

    /// The alarm shown, if any.
    pub fn alarm(&self) -> Option<Alarm> {
        if self.state == State::Alarm {
            self.alarm
        } else {
            None
        }
    }

    /// The model in force.
    pub fn model(&self) -> &Arc<ControlModel> {
        &self.model
    }

    /// Exchanges the table of thresholds, times and programs; the running state stays.
    /// A fault of the control, or a new board, arrives this way.
    pub fn set_model(&mut self, model: Arc<ControlModel>) {
        self.model = model;
    }

    /// Advances by one tick of 0.1 s.
    pub fn tick(&mut self, inputs: &Inputs) -> Outputs {
        if !inputs.powered {
            return self.stay_without_power();
        }
        if self.unpowered_ticks > 0 {
            self.wake();
        }
        self.read(inputs);
        self.walk();
        let wanted = self.wanted_loads();
        let dead_ticks = ticks(self.model.times.dead_time_s);
        let loads = self.interlock.apply(wanted, dead_ticks);
        let display = self.panel();
        self.count(loads);
        Outputs {
            loads,
            contacts: 0,
            display,
        }
    }

    fn stay_without_power(&mut self) -> Outputs {
        self.rest(1);
        DARK
    }

    /// See [`crate::control::Control::at_rest`]: without power it does nothing.
    pub fn at_rest(inputs: &Inputs) -> Option<Outputs> {
        (!inputs.powered).then_some(DARK)
    }

    /// So many ticks without power.
    pub fn rest(&mut self, ticks: u32) {
        self.unpowered_ticks = self.unpowered_ticks.saturating_add(ticks);
        self.keys = KeyReader::default();
        self.actuator_ticks = 0;
        self.interlock.rest(ticks);
    }

    /// Power is back: go on with a short-interrupted program, otherwise start afresh.
    fn wake(&mut self) {
        let memory_ticks = ticks(self.model.times.power_memory_s);
        let is_remembered = self.unpowered_ticks <= memory_ticks;
        self.unpowered_ticks = 0;
        self.lid = Contact::CLOSED;
        self.lever = Contact::CLOSED;
        self.overflow_ticks = 0;
        self.no_pulse_ticks = 0;
        self.supply_bad_ticks = 0;
        let group = self.state.row().group;
        let has_program = matches!(group, Group::Run | Group::Pause);
        if is_remembered && (has_program || self.state == State::DelayedStart) {
            if group == Group::Run && self.model.resumes_after_power_loss {
                self.pattern_ticks = 0;
            } else if has_program {
                self.pause(State::PausePower);
            }
            return;
        }
        self.interrupted = None;
        self.warning = None;
        self.enter(if self.model.wakes_when_powered {
            State::SelfCheck
        } else {
            State::Off
        });
    }

    /// Debounces inputs and keys and lets the watching counters run.
    fn read(&mut self, inputs: &Inputs) {
        let times = &self.model.times;
        let open_after = ticks(times.lid_open_debounce_s);
        let closed_after = ticks(times.lid_closed_debounce_s);
        self.lid
            .read(inputs.lid_input_closed, open_after, closed_after);
        self.has_own_lever_input = inputs.unbalance_input_closed.is_some();
        self.lever
            .read(inputs.unbalance_input_closed.unwrap_or(true), 1, 1);
        self.level_hz = inputs.level_hz.filter(|hz| hz.is_finite());
        let overflow_hz = self.model.level.overflow_hz;
        let is_overflowing = self.level_hz.is_some_and(|hz| hz < overflow_hz);
        self.overflow_ticks = run_length(self.overflow_ticks, is_overflowing);
        self.no_pulse_ticks = run_length(self.no_pulse_ticks, self.level_hz.is_none());
        let is_supply_good = inputs.supply_v.is_none_or(|supply_v| {
            let ratio = supply_v / self.model.nominal_supply_v;
            ratio >= self.model.supply_low_ratio && ratio <= self.model.supply_high_ratio
        });
        self.supply_good_ticks = run_length(self.supply_good_ticks, is_supply_good);
        self.supply_bad_ticks = run_length(self.supply_bad_ticks, !is_supply_good);
        self.read_keys(inputs.keys);
        self.watch_level();
    }

    fn read_keys(&mut self, keys: Keys) {
        let pressed = self.keys.pressed(keys);
        let is_lock_held = self.keys.last == Keys::only(Key::Lock)
            && self.keys.held_ticks == ticks(self.model.times.lock_hold_s);
        if is_lock_held && self.state != State::Off {
            self.settings.keys_locked = !self.settings.keys_locked;
        }
        // The lock holds off what children reach; the service key sits behind the panel.
        let is_free = |key: Key| {
            !self.settings.keys_locked || matches!(key, Key::Power | Key::Service | Key::Lock)
        };
        self.pressed = pressed.filter(|&key| is_free(key));
        if self.state == State::Ready
            && let Some(key) = self.pressed
        {
            self.in_state_ticks = 0;
            self.settings.choose(key, &self.model);
        }
    }

    /// Runs the counters behind the level guards of the present state.
    fn watch_level(&mut self) {
        let Some(level_hz) = self.level_hz else {
            return;
        };
        let level = &self.model.level;
        match self.state {
            State::Fill | State::UnbalanceFill => {
                let index = if self.state == State::Fill {
                    self.settings.level
                } else {
                    0
                };
                let is_full = level
                    .targets
                    .get(index)
                    .is_some_and(|target| level_hz <= target.full_hz);
                self.hold_ticks = run_length(self.hold_ticks, is_full);
            }
            State::Drain | State::UnbalanceDrain => {
                // Summed, not in a row: a slosh does not start the wait again.
                self.hold_ticks += u32::from(level_hz >= level.empty_hz);
            }
            State::Agitate => self.watch_top_up(level_hz),
            _ => {}
        }
    }

    fn watch_top_up(&mut self, level_hz: f64) {
        let Some(target) = self.model.level.targets.get(self.settings.level) else {
            return;
        };
        if self.is_topping_up {
            self.is_topping_up = level_hz > target.full_hz;
        } else if level_hz > target.top_up_hz
            && self.in_state_ticks > ticks(self.model.times.top_up_after_s)
        {
            self.is_topping_up = true;
            self.n_top_ups += 1;
            if self.n_top_ups > self.model.max_top_ups {
                self.warning = Some(Warning::WaterKeepsLeaving);
            }
        }
    }

    /// Counts what this tick has done.
    fn count(&mut self, loads: Loads) {
        self.actuator_ticks = run_length(self.actuator_ticks, loads.drain_actuator);
        if !self.is_waiting_for_clutch() {
            self.in_state_ticks = self.in_state_ticks.saturating_add(1);
        }
        self.pattern_ticks = self.pattern_ticks.saturating_add(1);
    }

    /// Hands every bit of state to `sink`, in a fixed order; the model is not state.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        self.settings.hash_into(sink);
        sink(self.state as u64);
        sink(self.step as u64);
        match self.interrupted {
            None => sink(u64::MAX),
            Some(kept) => {
                sink(kept.state as u64);
                sink(u64::from(kept.in_state_ticks));
                sink(u64::from(kept.hold_ticks));
            }
        }
        sink(self.alarm.map_or(0, |alarm| alarm as u64 + 1));
        sink(self.warning.map_or(0, |warning| warning as u64 + 1));
        for count in [
            self.in_state_ticks,
            self.left_after_ticks,
            self.hold_ticks,
            self.pattern_ticks,
            u32::from(self.is_topping_up),
            self.n_top_ups,
            self.n_corrections,
            self.actuator_ticks,
            self.overflow_ticks,
            self.no_pulse_ticks,
            self.supply_bad_ticks,
            self.supply_good_ticks,
            self.unpowered_ticks,
            self.lid.open_ticks,
            self.lid.closed_ticks,
            u32::from(self.lid.is_closed),
            u32::from(self.lever.is_closed),
            u32::from(self.keys.last.bits()),
            self.keys.held_ticks,
            self.interlock.since_forward_ticks,
            self.interlock.since_reverse_ticks,
        ] {
            sink(u64::from(count));
        }
        self.service.hash_into(sink);
    }
}

/// Length of a run: one more while it lasts, zero when it breaks.
fn run_length(before_ticks: u32, lasts: bool) -> u32 {
    if lasts {
        before_ticks.saturating_add(1)
    } else {
        0
    }
}
