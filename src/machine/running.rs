//! A machine in motion. One tick of 0.1 s: the control looks and switches, contacts follow, the
//! network says which coils pull and what the motor can give, the plant moves.
//!
//! Solving again is needed only when a contact changed, once a second while the motor is live (its
//! speed and heat have moved on), or when the wiring itself changed. A machine at rest costs next
//! to nothing.

use std::sync::Arc;

use crate::control::Control;
use crate::control::io::Inputs;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::control::io::Outputs;
use crate::machine::Hands;
use crate::machine::Live;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Milestones;
use crate::machine::Setup;
use crate::machine::StateHash;
use crate::machine::StateHasher;
use crate::machine::build::PanelFaults;
use crate::machine::charge::ChargeHistory;
use crate::machine::charge::Circuit;
use crate::machine::charge::Switching;
use crate::machine::contacts::Masks;
use crate::machine::electrics::Electrics;
use crate::machine::oscillator::Oscillator;
use crate::machine::roles::Coil;
use crate::machine::roles::RoleIds;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::plant::Plant;
use crate::plant::PlantInputs;
use crate::plant::drive::MotorInput;
use crate::plant::harness::WiringModel;
use crate::plant::motor_table::MotorTable;

/// Ticks a pressed key is held.
const KEY_TICKS: u32 = 3;
/// Lowest logic supply the control runs with, V.
const LOGIC_RUNS_V: f64 = 4.5;
/// Ticks after which a live motor is solved again: its speed and heat have moved on.
pub(super) const SOLVE_TICKS: u64 = 10;
/// Ticks that a machine at rest goes on at once.
const REST_TICKS: u64 = 10;
/// Line current that opens the house's breaker at once, A: 5 times 16 A. Published: IEC 60898-1
/// (from memory).
const BREAKER_OPENS_A: f64 = 80.0;

/// One machine.
#[derive(Clone, Debug)]
pub struct Machine {
    pub(super) model: Arc<MachineModel>,
    pub(super) shared: Arc<WiringModel>,
    pub(super) roles: Arc<RoleIds>,
    pub(super) masks: Masks,
    pub(super) setup: Setup,
    pub(super) is_on: Vec<bool>,
    /// A fault can come or go by itself.
    pub(super) is_varying: bool,
    pub(super) tick: u64,
    pub(super) hands: Hands,
    pub(super) key_ticks: u32,
    pub(super) plant: Plant,
    pub(super) control: Control,
    pub(super) panel: PanelFaults,
    pub(super) electrics: Electrics,
    pub(super) oscillator: Oscillator,
    pub(super) outputs: Outputs,
    pub(super) contacts: Contacts,
    pub(super) live: Live,
    pub(super) table: Option<Arc<MotorTable>>,
    pub(super) is_stale: bool,
    pub(super) is_protector_open: bool,
    pub(super) hand_stroke_m: f64,
    pub(super) milestones: Milestones,
    pub(super) lid_open_ticks: u64,
    pub(super) residual_limit_a: f64,
    pub(super) is_tripped: bool,
    pub(super) charge: ChargeHistory,
    pub(super) slowest_s: f64,
    /// What flowed through each contact when the supply last opened, A.
    pub(super) surge_a: Vec<(ElementId, f64)>,
    pub(super) solve_ticks: u64,
    pub(super) trouble: Option<MachineError>,
}

impl Machine {
    /// Goes on for so many ticks of 0.1 s; a machine at rest in whole seconds, with the same bits.
    pub fn advance(&mut self, ticks: u64) {
        let end = self.tick + ticks;
        while self.tick < end {
            let is_whole = self.tick.is_multiple_of(REST_TICKS) && end - self.tick >= REST_TICKS;
            if !(is_whole && self.rest_a_second()) {
                self.step();
            }
        }
    }

    /// A whole second at once; false when something could happen in it.
    fn rest_a_second(&mut self) -> bool {
        let is_live = self.live.motor_on || self.table.is_some();
        if self.is_varying || self.is_stale || is_live || self.key_ticks > 0 {
            return false;
        }
        let outputs = self.control.at_rest(&self.control_inputs());
        if outputs != Some(self.outputs)
            || self.masks.closed(&self.hands, &self.outputs, &self.plant) != self.contacts
            || !self.plant.is_resting(&self.plant_inputs(MotorInput::Off))
        {
            return false;
        }
        self.control.rest(REST_TICKS as u32);
        self.see_milestones();
        let inputs = self.plant_inputs(MotorInput::Off);
        self.plant.advance(REST_TICKS, &inputs);
        self.tick += REST_TICKS;
        self.see(REST_TICKS);
        true
    }

    /// Cuts every step of time into `n_parts` equal ones; the control keeps its own tick, which is
    /// part of what it is. Shows how far figures depend on the step.
    pub fn refine(&mut self, n_parts: u32) {
        self.plant.refine(n_parts);
        self.solve_ticks = (SOLVE_TICKS / u64::from(n_parts.max(1))).max(1);
    }

    fn step(&mut self) {
        if self.is_varying && self.tick.is_multiple_of(10) {
            let result = self.review_onsets();
            self.keep(result);
        }
        let inputs = self.control_inputs();
        self.outputs = self.control.tick(&inputs);
        self.release_keys();
        let contacts = self.masks.closed(&self.hands, &self.outputs, &self.plant);
        let is_due = self.tick.is_multiple_of(self.solve_ticks)
            && (self.live.motor_on || self.table.is_some());
        if contacts != self.contacts || self.is_stale || is_due {
            if contacts != self.contacts {
                let result = self.leave_circuit();
                self.keep(result);
            }
            self.contacts = contacts;
            let result = self.solve();
            self.keep(result);
        }
        self.move_plant();
        self.tick += 1;
    }

    /// Frequency of the level oscillator, Hz; none when it does not run or there is none.
    pub fn level_hz(&self) -> Option<f64> {
        let is_fed = self.live.regulated_v >= LOGIC_RUNS_V;
        self.oscillator
            .hz(self.plant.sensor_hz())
            .filter(|_| is_fed)
    }

    fn control_inputs(&self) -> Inputs {
        let level_hz = self.oscillator.hz(self.plant.sensor_hz());
        Inputs {
            powered: self.live.regulated_v >= LOGIC_RUNS_V,
            level_hz,
            lid_input_closed: self.live.lid_closed,
            unbalance_input_closed: self
                .roles
                .lever_sense
                .as_ref()
                .map(|_| self.live.lever_closed),
            supply_v: None,
            keys: if self.panel.key_stuck {
                self.hands.keys.with(Key::Start)
            } else {
                self.hands.keys
            },
            timer_motor_running: self.live.pulls[Coil::TimerMotor as usize],
        }
    }

    fn release_keys(&mut self) {
        if self.key_ticks > 0 {
            self.key_ticks -= 1;
            if self.key_ticks == 0 {
                self.hands.keys = Keys::NONE;
            }
        }
    }

    fn solve(&mut self) -> Result<(), MachineError> {
        self.is_stale = false;
        let windings_k = self.plant.state().heat.winding_k;
        let speed = self.plant.state().drive.rotor_rad_per_s;
        self.live = self
            .electrics
            .live(self.contacts, speed, windings_k, &self.live)?;
        self.table = self.electrics.table(self.contacts, windings_k)?;
        let overload = self.live.line_a > BREAKER_OPENS_A;
        if overload || self.live.earth_a > self.residual_limit_a {
            self.surge_a = self.contact_currents_a();
            self.trip_supply();
            return Ok(());
        }
        self.slowest_s = self.electrics.slowest_s(self.contacts)?;
        Ok(())
    }

    /// The wiring as it is run now.
    pub(super) fn circuit(&self) -> Circuit {
        self.electrics.circuit(self.contacts)
    }

    /// This moment, should something be switched.
    pub(super) fn switching(&self) -> Switching {
        let state = self.plant.state();
        let motor = &self.shared.motor.params;
        let speed = state.drive.rotor_rad_per_s;
        Switching {
            tick: self.tick,
            slip_ratio: motor.slip_ratio(speed, self.shared.frequency_hz),
            windings_k: state.heat.winding_k,
        }
    }

    /// Something is about to be switched: what the present circuit leaves in the capacitors counts.
    pub(super) fn leave_circuit(&mut self) -> Result<(), MachineError> {
        let (circuit, now) = (self.circuit(), self.switching());
        self.charge.switched(circuit, self.slowest_s, now)
    }

    fn plant_inputs<'a>(&self, motor: MotorInput<'a>) -> PlantInputs<'a> {
        let pulls = &self.live.pulls;
        PlantInputs {
            motor,
            is_valve_energised: pulls[Coil::InletValve as usize] || pulls[Coil::HotValve as usize],
            is_actuator_energised: pulls[Coil::DrainMotor as usize],
            is_pump_energised: pulls[Coil::DrainPump as usize],
            hand_stroke_m: self.hand_stroke_m,
        }
    }

    fn move_plant(&mut self) {
        let table = self.table.clone();
        let motor = match &table {
            Some(table) if !self.is_protector_open => MotorInput::On {
                table,
                is_forward: true,
            },
            _ => MotorInput::Off,
        };
        let inputs = self.plant_inputs(motor);
        self.plant.tick(&inputs);
        self.see(1);
    }

    fn see_milestones(&mut self) {
        let drive = &self.plant.state().drive;
        let (pulsator, basket) = (drive.pulsator_rad_per_s, drive.basket_rad_per_s);
        self.milestones.see(self.plant.level_m(), pulsator, basket);
    }

    /// Takes what the last ticks have brought.
    fn see(&mut self, ticks: u64) {
        self.see_milestones();
        self.lid_open_ticks = if self.hands.lid_open {
            self.lid_open_ticks + ticks
        } else {
            0
        };
        let state = self.plant.state();
        let (basket, is_open) = (state.drive.basket_rad_per_s, state.heat.is_open);
        self.milestones
            .see_lid(self.lid_open_ticks, basket, self.live.motor_on);
        if is_open != self.is_protector_open {
            self.is_protector_open = is_open;
            let result = self.rebuild();
            self.keep(result);
        }
    }

    /// Trouble stops the electric side; the first one is kept.
    pub(super) fn keep(&mut self, result: Result<(), MachineError>) {
        if let Err(error) = result {
            self.live = Live::default();
            self.table = None;
            self.trouble.get_or_insert(error);
        }
    }

    /// The house's protective device opens: the socket is dead.
    pub fn trip_supply(&mut self) {
        self.is_tripped = true;
        self.is_stale = true;
        let result = self.rebuild();
        self.keep(result);
        self.live = Live::default();
        self.table = None;
    }

    /// What flowed when the supply last opened no longer matters: a new part is in.
    pub fn forget_surge(&mut self) {
        self.surge_a.clear();
    }

    /// Sets the protective device again.
    pub fn reset_supply(&mut self) {
        self.is_tripped = false;
        let result = self.rebuild();
        self.keep(result);
    }

    /// The house has a residual current device that opens from here, A.
    pub fn set_residual_limit(&mut self, limit_a: f64) {
        self.residual_limit_a = limit_a;
    }

    pub(super) fn rewire(&mut self) {
        let result = self.rebuild();
        self.keep(result);
    }

    pub(super) fn hold_key(&mut self, keys: Keys) {
        self.hands.keys = keys;
        self.key_ticks = KEY_TICKS;
    }

    /// Pulls the drain motor's wire by hand to this stroke, m; 0 lets go.
    pub fn pull_wire(&mut self, stroke_m: f64) {
        self.hand_stroke_m = stroke_m;
    }

    /// Lets the motor take the room's temperature.
    pub fn cool_down(&mut self) {
        self.plant.cool_down();
    }

    /// Ticks since the start.
    pub fn tick(&self) -> u64 {
        self.tick
    }
    /// The first trouble met in solving, if any.
    pub fn trouble(&self) -> Option<&MachineError> {
        self.trouble.as_ref()
    }
    /// How it is put together.
    pub fn setup(&self) -> &Setup {
        &self.setup
    }

    /// Hash of everything that decides the future.
    pub fn state_hash(&self) -> StateHash {
        let mut hasher = StateHasher::default();
        hasher.word(self.tick);
        self.hands.hash_into(&mut hasher);
        self.plant.hash_into(&mut |word| hasher.word(word));
        self.control.hash_into(&mut |word| hasher.word(word));
        hasher.word(self.contacts.0);
        hasher.word(self.milestones.bits() << 1 | u64::from(self.is_tripped));
        self.live.hash_into(&mut hasher);
        self.charge.hash_into(&mut hasher);
        for (_, surge_a) in &self.surge_a {
            hasher.number(*surge_a);
        }
        hasher.number(self.hand_stroke_m);
        hasher.word(u64::from(self.key_ticks));
        hasher.word(self.lid_open_ticks);
        hasher.finish()
    }
}
