//! What hands can do to a machine and what can be seen, heard and read of it.

use crate::control::Control;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::machine::Coil;
use crate::machine::Live;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Milestones;
use crate::machine::Pose;
use crate::network::ElementKind;
use crate::plant::Plant;
use crate::plant::drive::DriveMode;
use crate::plant::sound;
use crate::plant::sound::SoundSource;

/// Longest a basket is waited for to stop, s.
const LONGEST_STOP_S: u64 = 60;

impl Machine {
    /// The type of machine.
    pub fn model(&self) -> &MachineModel {
        &self.model
    }
    /// Its body.
    pub fn plant(&self) -> &Plant {
        &self.plant
    }
    /// What the electric side gives now.
    pub fn live(&self) -> &Live {
        &self.live
    }
    /// What it was seen doing since it was last changed.
    pub fn milestones(&self) -> Milestones {
        self.milestones
    }
    /// Positions that hands set.
    pub fn hands(&self) -> &crate::machine::Hands {
        &self.hands
    }

    /// Puts the plug in or pulls it.
    pub fn set_plugged(&mut self, plugged: bool) {
        if self.hands.plugged != plugged {
            self.hands.plugged = plugged;
            self.rewire();
        }
    }
    /// Switches the socket's circuit at the house's board.
    pub fn switch_house(&mut self, on: bool) {
        if self.hands.house_off == on {
            self.hands.house_off = !on;
            self.rewire();
        }
    }
    /// Opens or shuts the lid.
    pub fn set_lid(&mut self, open: bool) {
        self.hands.lid_open = open;
    }
    /// Puts a wire bridge across the lid switch or takes it off. What the machine was seen to do
    /// before then no longer holds.
    pub fn bridge_lid(&mut self, fitted: bool) {
        if self.hands.lid_bridged != fitted {
            self.hands.lid_bridged = fitted;
            self.milestones = Milestones::default();
            self.rewire();
        }
    }
    /// A wire bridge sits across the lid switch.
    pub fn lid_bridged(&self) -> bool {
        self.hands.lid_bridged
    }
    /// Opens or shuts the tap.
    pub fn set_tap(&mut self, open: bool) {
        if self.hands.tap_open != open {
            self.hands.tap_open = open;
            self.rewire();
        }
    }
    /// Screws the supply hose on or takes it off.
    pub fn set_hose(&mut self, attached: bool) {
        if self.hands.hose_attached != attached {
            self.hands.hose_attached = attached;
            self.rewire();
        }
    }

    /// Presses the on/off switch: a switch in the supply, a knob, or a key of the board.
    pub fn press_power(&mut self) {
        self.hands.switched_on = !self.hands.switched_on;
        match &mut self.control {
            Control::Timer(timer) => timer.set_knob(self.hands.switched_on),
            Control::Electronic(_) if self.roles.power_switch.is_none() => {
                self.hold_key(Keys::only(Key::Power));
            }
            Control::Electronic(_) => {}
        }
    }
    /// Presses a key of the board, or turns a knob of a machine without one: start to the timer's
    /// first step, program one step on, level to the next position of the level knob.
    pub fn press_key(&mut self, key: Key) {
        match &mut self.control {
            Control::Timer(timer) => match key {
                Key::Start => timer.turn_to(1),
                Key::Program => timer.turn_to(timer.step() + 1),
                Key::Level => {
                    let n_positions = self.masks.n_level_positions().max(1);
                    self.hands.level_position = (self.hands.level_position + 1) % n_positions;
                }
                _ => {}
            },
            Control::Electronic(_) => self.hold_key(Keys::only(key)),
        }
    }

    /// Switches on, waits for the self check and starts the program the panel stands at.
    pub fn start_program(&mut self) {
        if !self.switched_on() {
            self.press_power();
        }
        self.advance(50);
        self.press_key(Key::Start);
        self.advance(10);
    }

    /// Everything as for a wash: plug, tap, hose, lid shut, off.
    pub fn stand_ready(&mut self) {
        self.set_plugged(true);
        self.set_tap(true);
        self.set_hose(true);
        self.set_lid(false);
        if self.switched_on() {
            self.press_power();
        }
        self.advance(20);
    }

    /// Sets load and room before anyone arrives.
    pub fn settle_in(&mut self, load_kg: f64, room_k: f64) {
        self.set_load(vec![
            ("load.dry_kg".to_owned(), load_kg),
            ("site.air_k".to_owned(), room_k),
        ]);
    }

    /// Leaves an interrupted wash in the tub: free water, and the load as wet as it gets, kg.
    pub fn leave_water(&mut self, water_kg: f64) {
        if water_kg > 0.0 {
            let load = &self.plant.params().load;
            let soaked_kg = load.dry_kg * load.drained_ratio;
            self.plant.wet_load_kg(soaked_kg);
            self.plant.pour_kg(water_kg);
        }
    }

    /// Takes the free water out, kg; some is left on the tub's floor.
    pub fn empty_tub(&mut self) {
        let water_kg = self.plant.state().tub.free_kg;
        self.plant.pour_kg(-(water_kg - 0.5).max(0.0));
    }

    /// Water runs onto the floor from outside the tub, kg.
    pub fn spill(&mut self, water_kg: f64) {
        self.plant.spill(water_kg);
    }

    /// The house's protective device has opened.
    pub fn supply_tripped(&self) -> bool {
        self.is_tripped
    }
    /// Switch or knob on.
    pub fn switched_on(&self) -> bool {
        self.hands.switched_on
    }
    /// Plug in its socket.
    pub fn plugged(&self) -> bool {
        self.hands.plugged
    }
    /// Lid open.
    pub fn lid_open(&self) -> bool {
        self.hands.lid_open
    }
    /// Tap open.
    pub fn tap_open(&self) -> bool {
        self.hands.tap_open
    }
    /// Free water in the tub, kg.
    pub fn water_kg(&self) -> f64 {
        self.plant.state().tub.free_kg
    }
    /// Water supplied since the start, kg.
    pub fn water_supplied_kg(&self) -> f64 {
        self.plant.state().tub.supplied_kg
    }
    /// Basket, rad/s.
    pub fn basket_rad_per_s(&self) -> f64 {
        self.plant.state().drive.basket_rad_per_s
    }
    /// The motor is live.
    pub fn motor_energised(&self) -> bool {
        self.live.motor_on
    }
    /// An inlet valve pulls.
    pub fn valve_energised(&self) -> bool {
        self.live.pulls[Coil::InletValve as usize] || self.live.pulls[Coil::HotValve as usize]
    }
    /// Drain motor or pump is driven.
    pub fn draining(&self) -> bool {
        self.live.pulls[Coil::DrainMotor as usize] || self.live.pulls[Coil::DrainPump as usize]
    }
    /// Hotter winding, K.
    pub fn hottest_winding_k(&self) -> f64 {
        let [a, b] = self.plant.state().heat.winding_k;
        a.max(b)
    }
    /// Times the protector opened.
    pub fn protector_trips(&self) -> u32 {
        self.plant.state().heat.n_trips
    }
    /// Current in the protective conductor, A.
    pub fn leakage_a(&self) -> f64 {
        self.live.earth_a
    }
    /// Nominal supply, V.
    pub fn nominal_supply_v(&self) -> f64 {
        match self.shared.elements[self.shared.supply.source.index()].kind {
            ElementKind::Source { ac_v, .. } => ac_v,
            _ => 0.0,
        }
    }
    /// The rotor cannot turn.
    pub fn rotor_seized(&self) -> bool {
        self.electrics.harness().wiring().is_seized
    }
    /// The run capacitor's value over its rating.
    pub fn run_capacitor_ratio(&self) -> f64 {
        let farad = match self
            .electrics
            .harness()
            .wiring()
            .element(self.roles.capacitor)
            .0
        {
            ElementKind::Capacitor { farad } => farad,
            _ => 0.0,
        };
        farad / self.run_capacitor_nominal_f()
    }
    /// The run capacitor's rating, F.
    pub fn run_capacitor_nominal_f(&self) -> f64 {
        match self.shared.elements[self.roles.capacitor.index()].kind {
            ElementKind::Capacitor { farad } => farad,
            _ => 1.0,
        }
    }

    /// Sources of sound now.
    pub fn sounds(&self) -> Vec<SoundSource> {
        sound::sources(
            self.plant.params(),
            &self.plant.readings(),
            self.shared.frequency_hz,
        )
    }

    /// Time from now until the basket stands after the lid is opened, s; 60 when it does not.
    pub fn stop_time_s(&self) -> f64 {
        let mut opened = self.clone();
        opened.set_lid(true);
        for tenth in 0..LONGEST_STOP_S * 10 {
            opened.advance(1);
            if opened.basket_rad_per_s().abs() < 0.1 {
                return tenth as f64 / 10.0;
            }
        }
        LONGEST_STOP_S as f64
    }

    /// How far a timer's dial has come round from the start of its program, rad; 0 without a timer.
    fn dial_rad(&self) -> f64 {
        match &self.control {
            Control::Timer(timer) => {
                let model = timer.model();
                let steps = f64::from(timer.step()) + timer.in_step_s() / model.step_s;
                core::f64::consts::TAU * steps / f64::from(model.n_steps)
            }
            _ => 0.0,
        }
    }

    /// The visible state.
    pub fn pose(&self) -> Pose {
        let (readings, params) = (self.plant.readings(), self.plant.params());
        let ratio = params.belt.large_pulley_m / params.belt.small_pulley_m;
        let geared = match readings.mode {
            DriveMode::Wash => ratio * params.gear.ratio_ratio,
            DriveMode::Spin => ratio,
        };
        Pose {
            pulsator_rad: readings.pulsator_rad,
            basket_rad: readings.basket_rad,
            motor_rad: readings.pulsator_rad * geared,
            pulsator_rad_per_s: readings.pulsator_rad_per_s,
            basket_rad_per_s: readings.basket_rad_per_s,
            motor_rad_per_s: readings.rotor_rad_per_s,
            level_m: readings.level_m,
            rim_m: params.tub.overflow_m,
            foam_ratio: readings.foam_ratio,
            inflow_m3_per_s: readings.flows.inlet_m3_per_s,
            outflow_m3_per_s: readings.flows.drain_m3_per_s,
            swing_m: readings.rim_m,
            lean_m: params.suspension.lean_m,
            stroke_m: readings.stroke_m,
            full_stroke_m: params.actuator.stroke_m,
            lever_in_link: params.lever.seated_ratio > 0.5,
            belt_tension_n: params.belt.tension_n,
            slipping: readings.slip_rad_per_s > 0.5,
            load_kg: params.load.dry_kg,
            puddle_kg: readings.puddle_kg,
            lid_open: self.hands.lid_open,
            plugged: self.hands.plugged,
            switched_on: self.switched_on(),
            dial_rad: self.dial_rad(),
            tap_open: self.hands.tap_open,
            hose_attached: self.hands.hose_attached,
            laid_down: false,
            tilt_rad: params.site.floor_tilt_rad,
            outlet_m: params.drain.outlet_m,
            display_lit: self.live.regulated_v >= 4.5 && self.switched_on(),
        }
    }

    /// Checks that the machine has these parameters and takes these values.
    ///
    /// # Errors
    /// Names the first that it does not.
    pub fn check_params(&self, params: &[(String, f64)]) -> Result<(), MachineError> {
        let mut trial = self.plant.params().clone();
        for (name, value) in params {
            trial.set(name, *value)?;
        }
        Ok(())
    }
}
