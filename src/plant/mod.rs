//! The washing machine as a body: water, air, belts, heat, swing; the harness stands apart.
//!
//! `Plant` holds parameters, what follows from them, and the state; `tick` advances it by
//! exactly 0.1 s. The motor comes from outside as a table of torque, power and current.
//!
//! ```text
//! tick  = drive (Runge-Kutta, 20/100 ms, finer where a link slips) then slow parts (0.1 s)
//! rest  = slow parts only, in whole seconds cut at absolute multiples of 10 ticks
//! ```
//! While nothing turns, opens or pulls, ticks are only counted and applied together when the
//! second ends (or when something starts): skipping a whole second gives the same bits.

pub mod actuator;
pub mod air_trap;
mod coupling;
mod derived;
pub mod drain;
pub mod drive;
pub mod drying;
pub mod faults;
pub mod foam;
pub mod harness; // wiring, motor, faults of both, instruments
pub mod heat;
pub mod inlet;
pub mod load;
pub mod motor_table;
mod numerics;
pub mod param_table;
pub mod params;
pub mod pressure_switch;
pub mod readings;
pub mod site;
pub mod sound;
mod spin;
pub mod state;
pub mod suspension;
pub mod swing;
mod tick; // what acts during one, and what is kept of it
pub mod tub;
pub mod vibration;
mod wash;
mod water_balance; // every kilogram, in and out
pub mod water_properties;

use crate::plant::air_trap::TrapInputs;
use crate::plant::derived::Derived;
use crate::plant::drain::DrainInputs;
use crate::plant::drive::{DriveMode, DriveSums, MotorInput};
use crate::plant::heat::HeatInputs;
use crate::plant::inlet::InletFlows;
use crate::plant::params::{ParamError, PlantParams};
use crate::plant::state::PlantState;
use crate::plant::tick::TickMemory;
use crate::plant::water_balance::WaterInputs;

pub use tick::PlantInputs;

/// Length of one tick, s.
pub const TICK_S: f64 = 0.1;
/// Ticks after which resting time is applied at the latest, counted from the start.
pub const TICKS_PER_REST: u64 = 10;

/// One machine's plant.
#[derive(Debug, Clone, PartialEq)]
pub struct Plant {
    params: PlantParams,
    derived: Derived,
    state: PlantState,
    memory: TickMemory,
    n_parts: u32,
}

impl Plant {
    /// An empty machine at rest.
    pub fn new(params: PlantParams) -> Self {
        let state = PlantState::empty(&params);
        let derived = Derived::new(&params, TICK_S);
        Self {
            params,
            derived,
            state,
            memory: TickMemory::default(),
            n_parts: 1,
        }
    }

    /// The parameters now.
    pub fn params(&self) -> &PlantParams {
        &self.params
    }

    /// The state now; resting ticks not yet applied stand in `n_pending`.
    pub fn state(&self) -> &PlantState {
        &self.state
    }

    /// Changes one parameter by its dotted name, from the next tick on.
    pub fn set(&mut self, name: &str, value: f64) -> Result<(), ParamError> {
        let mut params = self.params.clone();
        params.set(name, value)?;
        self.set_params(params);
        Ok(())
    }

    /// Exchanges all parameters at once, from the next tick on.
    pub fn set_params(&mut self, params: PlantParams) {
        self.apply_pending();
        self.derived = Derived::new(&params, self.part_s());
        self.params = params;
    }

    /// Cuts every step of time into `n_parts` equal ones: how far figures depend on the step.
    pub fn refine(&mut self, n_parts: u32) {
        self.apply_pending();
        self.n_parts = n_parts.max(1);
        self.derived = Derived::new(&self.params, self.part_s());
    }

    /// Length of one step of the slow parts, s.
    fn part_s(&self) -> f64 {
        TICK_S / f64::from(self.n_parts)
    }

    /// Water spilt onto the floor from outside the tub, kg.
    pub fn spill(&mut self, water_kg: f64) {
        if water_kg.is_finite() && water_kg > 0.0 {
            self.apply_pending();
            self.state.tub.puddle_kg += water_kg;
            self.state.tub.supplied_kg += water_kg;
        }
    }

    /// Pours water into the tub, or bails it out when negative, kg; returns what really moved.
    pub fn pour_kg(&mut self, mass_kg: f64) -> f64 {
        if !mass_kg.is_finite() {
            return 0.0;
        }
        self.apply_pending();
        let moved = mass_kg.max(-self.state.tub.free_kg);
        self.state.tub.free_kg += moved;
        if moved > 0.0 {
            self.state.tub.supplied_kg += moved;
        } else {
            self.state.tub.drained_kg -= moved;
        }
        moved
    }

    /// Pours water of a temperature into the tub, kg and K; bath and water mix at once.
    pub fn pour_at(&mut self, mass_kg: f64, water_k: f64) {
        let before_kg = self.state.tub.free_kg;
        let moved_kg = self.pour_kg(mass_kg.max(0.0));
        let all_kg = before_kg + moved_kg;
        if all_kg > 0.0 && water_k.is_finite() {
            let bath_k = self.state.tub.bath_k;
            self.state.tub.bath_k = (before_kg * bath_k + moved_kg * water_k) / all_kg;
        }
    }

    /// The bath has this temperature, K.
    pub fn warm_bath(&mut self, bath_k: f64) {
        self.apply_pending();
        self.state.tub.bath_k = bath_k;
    }

    /// Takes the water off the floor.
    pub fn mop(&mut self) {
        self.apply_pending();
        let puddle_kg = core::mem::take(&mut self.state.tub.puddle_kg);
        self.state.tub.drained_kg += puddle_kg;
    }

    /// Wets the load before the start, as a customer's interrupted wash left it, kg.
    pub fn wet_load_kg(&mut self, mass_kg: f64) {
        if mass_kg.is_finite() && mass_kg > 0.0 {
            self.apply_pending();
            self.state.tub.textile_kg += mass_kg;
            self.state.tub.supplied_kg += mass_kg;
        }
    }

    /// Puts the motor's heat where a wait of unknown length left it: as warm as the room.
    pub fn cool_down(&mut self) {
        self.apply_pending();
        let n_trips = self.state.heat.n_trips;
        self.state.heat = heat::cold(self.params.site.air_k);
        self.state.heat.n_trips = n_trips;
    }

    /// Gives every bit of the state to `sink`.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        self.state.hash_into(sink);
    }

    /// Nothing turns, opens or pulls, and these inputs will not change that.
    pub fn is_resting(&self, u: &PlantInputs<'_>) -> bool {
        let (s, d) = (&self.state, &self.state.drive);
        !self.is_driven(u)
            && !u.is_valve_energised
            && !u.is_pump_energised
            && s.inlet.opening_ratio <= 0.0
            && actuator::is_settled(&s.actuator, u.is_actuator_energised, u.hand_stroke_m)
            && d.rotor_rad_per_s.abs() <= 0.0
            && d.pulsator_rad_per_s.abs() <= 0.0
            && d.basket_rad_per_s.abs() <= 0.0
            && d.swirl_rad_per_s.abs() <= 0.0
    }

    /// Advances exactly one tick of 0.1 s.
    pub fn tick(&mut self, u: &PlantInputs<'_>) {
        self.state.n_ticks += 1;
        if self.is_resting(u) {
            self.state.n_pending += 1;
            if self.state.n_ticks.is_multiple_of(TICKS_PER_REST) {
                self.apply_pending();
            }
            return;
        }
        self.apply_pending();
        self.memory = TickMemory::start(&self.state);
        for _ in 0..self.n_parts {
            let sums = self.drive(u);
            self.slow_parts(u, &sums, 1);
        }
    }

    /// Advances `n_ticks` ticks with the same inputs; the same bits as that many ticks.
    pub fn advance(&mut self, n_ticks: u64, u: &PlantInputs<'_>) {
        let mut left = n_ticks;
        while left > 0 {
            let is_whole =
                self.state.n_ticks.is_multiple_of(TICKS_PER_REST) && left >= TICKS_PER_REST;
            if is_whole && self.is_resting(u) {
                self.state.n_ticks += TICKS_PER_REST;
                self.state.n_pending = TICKS_PER_REST as u32;
                self.apply_pending();
                left -= TICKS_PER_REST;
            } else {
                self.tick(u);
                left -= 1;
            }
        }
    }

    /// Waits with everything off.
    pub fn rest(&mut self, n_ticks: u64) {
        self.advance(n_ticks, &PlantInputs::IDLE);
    }

    fn is_driven(&self, u: &PlantInputs<'_>) -> bool {
        u.motor.is_on() && !self.state.heat.is_open
    }

    /// Applies the resting ticks counted so far, together.
    fn apply_pending(&mut self) {
        let n = self.state.n_pending;
        if n > 0 {
            self.state.n_pending = 0;
            self.memory = TickMemory::start(&self.state);
            for _ in 0..self.n_parts {
                self.slow_parts(&PlantInputs::IDLE, &DriveSums::default(), n);
            }
        }
    }

    /// Water, air, heat, foam and swing during `n_ticks` (1 to 10) together, or a part of that.
    fn slow_parts(&mut self, u: &PlantInputs<'_>, sums: &DriveSums, n_ticks: u32) {
        let dt_s = self.part_s() * f64::from(n_ticks);
        let (p, d, s) = (&self.params, &self.derived, &mut self.state);
        let lags = &d.lags[n_ticks.clamp(1, TICKS_PER_REST as u32) as usize - 1];
        actuator::step(
            &p.actuator,
            &mut s.actuator,
            u.is_actuator_energised,
            u.hand_stroke_m,
            dt_s,
        );
        if n_ticks == 1 {
            inlet::step(&d.inlet, &mut s.inlet, u.is_valve_energised);
        }
        let link = actuator::linkage(&p.drain, &p.lever, &p.brake, &p.clutch, s.actuator.stroke_m);
        let inlet: InletFlows = inlet::flows(&p.inlet, &d.inlet, s.inlet);
        let spin_rad_per_s = if s.drive.mode == DriveMode::Spin {
            s.drive.basket_rad_per_s.abs()
        } else {
            0.0
        };
        let water = WaterInputs {
            inlet,
            drain: DrainInputs {
                valve_ratio: link.valve_ratio,
                is_pumping: u.is_pump_energised,
            },
            spin_rad_per_s,
        };
        self.memory.flows = water_balance::step(p, &d.drain, &mut s.tub, &water, dt_s);
        let level_m = tub::level_m(&p.tub, &p.load, s.tub.free_kg, s.tub.textile_kg);
        let air = TrapInputs {
            level_m,
            water_kg_per_m3: water_properties::density_kg_per_m3(s.tub.bath_k),
            air_pa: p.site.air_pa,
        };
        air_trap::step(&p.trap, &mut s.trap, air, dt_s, lags.sensor_share);
        pressure_switch::step(&p.level_switch, &mut s.level_switch, s.trap.sensor_pa);
        foam::step(
            &p.foam,
            &mut s.foam,
            s.drive.rotor_rad_per_s,
            lags.foam_rise_share,
            lags.foam_fall_share,
        );
        let heat = HeatInputs {
            copper_w: [sums.copper_1_j / dt_s, sums.copper_2_j / dt_s],
            copper_k: match u.motor {
                MotorInput::On { table, .. } => table.copper_k(),
                MotorInput::Off => p.site.air_k,
            },
            input_w: sums.input_j / dt_s,
            shaft_w: sums.shaft_j / dt_s,
            rotor_rad_per_s: s.drive.rotor_rad_per_s,
            air_k: p.site.air_k,
        };
        heat::step(&p.heat, &mut s.heat, &heat, dt_s, lags.protector_share);
        let body = swing::body(p, s.tub.free_kg, s.tub.textile_kg);
        swing::step(
            p,
            &d.suspension,
            &mut s.suspension,
            &body,
            spin_rad_per_s,
            [lags.swing_share, lags.rock_share],
        );
        swing::spread(
            p,
            &mut s.suspension,
            level_m,
            s.drive.pulsator_rad_per_s,
            dt_s,
        );
        s.flush_tiny();
        self.memory.finish(u, sums, dt_s);
    }
}
