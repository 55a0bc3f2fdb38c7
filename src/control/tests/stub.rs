//! A stub tub: water rises while an inlet is open and falls while an outlet runs.

use std::sync::Arc;

use crate::control::controller::Controller;
use crate::control::io::Inputs;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::control::io::Outputs;
use crate::control::model::ControlModel;
use crate::control::model::LevelThresholds;
use crate::control::settings::Settings;
use crate::control::settings::WaterChoice;
use crate::control::states::State;
use crate::control::typical;

/// Oscillator: 26.0 kHz empty, 22.0 kHz at 2625 Pa. Source: design sheet.
pub const EMPTY_HZ: f64 = 26_000.0;
pub const PER_PA: f64 = 1.511_315e-4;

pub fn gravity_model() -> ControlModel {
    typical::gravity_drain(230.0, LevelThresholds::for_sensor(EMPTY_HZ, PER_PA))
}

pub fn pump_model() -> ControlModel {
    typical::pump_drain(120.0, LevelThresholds::for_sensor(EMPTY_HZ, PER_PA))
}

pub const FRESH: Settings = Settings {
    program: 0,
    level: 2,
    water: WaterChoice::Cold,
    delay_min: 0,
    keys_locked: false,
};

/// A control and its stub tub.
pub struct Rig {
    pub control: Controller,
    pub inputs: Inputs,
    pub pressure_pa: f64,
    pub fill_pa_per_s: f64,
    pub drain_pa_per_s: f64,
    /// False: the sensor gives no pulses.
    pub has_pulses: bool,
    pub last: Option<Outputs>,
    pub n_ticks: u64,
}

impl Rig {
    pub fn new(model: ControlModel, settings: Settings) -> Rig {
        Rig {
            control: Controller::new(Arc::new(model), settings),
            inputs: Inputs::at_rest(EMPTY_HZ),
            pressure_pa: 0.0,
            fill_pa_per_s: 2625.0 / 247.0,
            drain_pa_per_s: (2625.0 - 129.0) / 85.0,
            has_pulses: true,
            last: None,
            n_ticks: 0,
        }
    }

    /// A machine with a gravity drain, awake and ready.
    pub fn ready() -> Rig {
        let mut rig = Rig::new(gravity_model(), FRESH);
        rig.run_until(State::Ready, 10.0);
        rig
    }

    /// A pump machine with separate inputs, awake and ready.
    pub fn pump_ready() -> Rig {
        let mut rig = Rig::new(pump_model(), FRESH);
        rig.inputs.unbalance_input_closed = Some(true);
        rig.tick();
        rig.press(Key::Power);
        rig.run_until(State::Ready, 10.0);
        rig
    }

    pub fn tick(&mut self) -> Outputs {
        let hz = EMPTY_HZ / (1.0 + PER_PA * self.pressure_pa).sqrt();
        self.inputs.level_hz = self.has_pulses.then_some(hz);
        let outputs = self.control.tick(&self.inputs);
        let loads = outputs.loads;
        if loads.inlet_valve || loads.hot_valve {
            self.pressure_pa += self.fill_pa_per_s / 10.0;
        }
        if loads.drain_actuator || loads.drain_pump {
            self.pressure_pa = (self.pressure_pa - self.drain_pa_per_s / 10.0).max(0.0);
        }
        self.last = Some(outputs);
        self.n_ticks += 1;
        outputs
    }

    pub fn run(&mut self, time_s: f64) {
        for _ in 0..(time_s * 10.0).round() as u64 {
            self.tick();
        }
    }

    /// Presses and releases a key; returns the outputs of the press.
    pub fn press(&mut self, key: Key) -> Outputs {
        self.inputs.keys = Keys::only(key);
        let outputs = self.tick();
        self.inputs.keys = Keys::NONE;
        self.tick();
        outputs
    }

    pub fn state(&self) -> State {
        self.control.state()
    }

    /// Runs until a state, at most so long; panics with the state reached instead.
    pub fn run_until(&mut self, state: State, limit_s: f64) {
        for _ in 0..(limit_s * 10.0) as u64 {
            if self.state() == state {
                return;
            }
            self.tick();
        }
        assert_eq!(self.state(), state, "not reached in {limit_s} s");
    }

    /// The start of drain and spin, run to the steady spin.
    pub fn spinning(mut self) -> Rig {
        while self.control.settings().program != 4 {
            self.press(Key::Program);
        }
        self.press(Key::Start);
        self.run_until(State::SpinFull, 200.0);
        self.run(20.0);
        assert!(self.last.is_some_and(|last| last.loads.motor_forward));
        self
    }

    /// Opens the lid input for a time and closes it again.
    pub fn open_lid_for(&mut self, time_s: f64) {
        self.inputs.lid_input_closed = false;
        self.run(time_s);
        self.inputs.lid_input_closed = true;
    }

    pub fn hash(&self) -> u64 {
        // FNV-1a over the words, enough to compare two states.
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        self.control
            .hash_into(&mut |word| hash = (hash ^ word).wrapping_mul(0x0100_0000_01b3));
        hash
    }
}
