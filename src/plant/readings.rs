//! What can be seen, heard, felt or sensed of the plant after a tick.
//!
//! Everything here follows from parameters, state and the last tick's flows; nothing is
//! remembered for its own sake. Electrical parts read their inputs from here (level sensor
//! inductance, lever and level switch, protector), instruments and drawing the rest.

use crate::plant::actuator::{self, Linkage};
use crate::plant::drive::DriveMode;
use crate::plant::swing::{self, Body};
use crate::plant::tub::{self, TubFlows};
use crate::plant::{Plant, TICK_S, air_trap, inlet};

/// The plant as its surroundings find it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlantReadings {
    /// Water level above the tub floor, m.
    pub level_m: f64,
    /// Free water, kg.
    pub free_kg: f64,
    /// Water in the load per dry mass, kg/kg; 0 without load.
    pub moisture_ratio: f64,
    /// Water on the floor, kg.
    pub puddle_kg: f64,
    /// Flows of the last tick.
    pub flows: TubFlows,
    /// Inlet valve, 0 shut to 1 open.
    pub valve_opening_ratio: f64,
    /// Pressure surge of a valve that closed in the last tick, Pa.
    pub hammer_pa: f64,
    /// Pressure at the level sensor, Pa.
    pub sensor_pa: f64,
    /// Inductance of the level sensor's coil, H.
    pub sensor_coil_h: f64,
    /// Frequency a sound oscillator makes of it, Hz.
    pub sensor_hz: f64,
    /// Mechanical level switch: low, medium, high on full.
    pub is_level_full: [bool; 3],
    /// Wire stroke of the drain motor, m.
    pub stroke_m: f64,
    /// The stroke changed in the last tick: positive pulled, negative let go, m/s.
    pub stroke_m_per_s: f64,
    /// Drain valve, lever, brake, clutch.
    pub linkage: Linkage,
    /// Motor speed, rad/s.
    pub rotor_rad_per_s: f64,
    /// Pulsator speed, rad/s.
    pub pulsator_rad_per_s: f64,
    /// Basket speed, rad/s.
    pub basket_rad_per_s: f64,
    /// Bath speed, rad/s.
    pub swirl_rad_per_s: f64,
    /// Angle of the basket, rad.
    pub basket_rad: f64,
    /// Angle of the pulsator, rad.
    pub pulsator_rad: f64,
    /// Gear at work or basket coupled.
    pub mode: DriveMode,
    /// The pulsator changed direction in the last tick.
    pub is_reversal: bool,
    /// Load torque on pulsator or basket, mean magnitude, N·m.
    pub load_n_m: f64,
    /// Power lost in a slipping belt, spline or clutch, W.
    pub slip_w: f64,
    /// Speed difference across the slipping link, at the motor, rad/s.
    pub slip_rad_per_s: f64,
    /// The harness holds the motor live.
    pub is_motor_live: bool,
    /// Coil of the inlet valve live.
    pub is_valve_energised: bool,
    /// Drain motor live.
    pub is_actuator_energised: bool,
    /// Drain pump live.
    pub is_pump_energised: bool,
    /// Mean line current of the motor, A.
    pub line_a: f64,
    /// Mean electrical input of the motor, W.
    pub input_w: f64,
    /// Winding 1 and 2, K.
    pub winding_k: [f64; 2],
    /// Core, K.
    pub core_k: f64,
    /// The motor's protector has opened.
    pub is_protector_open: bool,
    /// Openings since the start.
    pub n_trips: u32,
    /// Swing of the rim, m.
    pub rim_m: f64,
    /// Swing plus static offset, which lever and cabinet feel, m.
    pub rim_reach_m: f64,
    /// The out-of-balance switch is open.
    pub is_lever_open: bool,
    /// The tub knocks the cabinet.
    pub is_touching: bool,
    /// Force of the swing on the cabinet, N.
    pub foot_force_n: f64,
    /// Force the feet hold, N.
    pub foot_limit_n: f64,
    /// Foam, 0 to 1.
    pub foam_ratio: f64,
    /// Bath, K.
    pub bath_k: f64,
}

impl Plant {
    /// Level above the tub floor, m.
    pub fn level_m(&self) -> f64 {
        let tub = &self.state.tub;
        tub::level_m(
            &self.params.tub,
            &self.params.load,
            tub.free_kg,
            tub.textile_kg,
        )
    }

    /// Drain valve, lever, brake and clutch at the present stroke.
    pub fn linkage(&self) -> Linkage {
        let p = &self.params;
        actuator::linkage(
            &p.drain,
            &p.lever,
            &p.brake,
            &p.clutch,
            self.state.actuator.stroke_m,
        )
    }

    /// Masses and stiffnesses of the hung body now.
    pub fn body(&self) -> Body {
        swing::body(
            &self.params,
            self.state.tub.free_kg,
            self.state.tub.textile_kg,
        )
    }

    /// Unbalance left after the ring at the present speed, kg·m.
    pub fn unbalance_kg_m(&self) -> f64 {
        let lump_kg = self.state.suspension.unbalance_ratio * self.params.load.unbalance_kg;
        let speed = self.state.drive.basket_rad_per_s.abs();
        swing::unbalance_kg_m(&self.params, &self.derived.suspension, lump_kg, speed)
    }

    /// Reach of the tub's rim: swing plus static offset, m.
    pub fn rim_reach_m(&self) -> f64 {
        self.state.suspension.rim_m + self.derived.suspension.static_rim_m
    }

    /// The out-of-balance switch is open.
    pub fn is_lever_open(&self) -> bool {
        self.rim_reach_m() > self.params.suspension.lever_gap_m
    }

    /// Frequency a sound oscillator makes of the level, Hz.
    pub fn sensor_hz(&self) -> f64 {
        let sensor = &self.params.sensor;
        air_trap::oscillator_hz(sensor, air_trap::coil_h(sensor, self.state.trap.sensor_pa))
    }

    /// Everything at once.
    pub fn readings(&self) -> PlantReadings {
        let (p, s, m) = (&self.params, &self.state, &self.memory);
        let (tub, drive, body) = (&s.tub, &s.drive, self.body());
        let reach = self.rim_reach_m();
        PlantReadings {
            level_m: self.level_m(),
            free_kg: tub.free_kg,
            moisture_ratio: if p.load.dry_kg > 0.0 {
                tub.textile_kg / p.load.dry_kg
            } else {
                0.0
            },
            puddle_kg: tub.puddle_kg,
            flows: m.flows,
            valve_opening_ratio: s.inlet.opening_ratio,
            hammer_pa: self.hammer_pa(),
            sensor_pa: s.trap.sensor_pa,
            sensor_coil_h: air_trap::coil_h(&p.sensor, s.trap.sensor_pa),
            sensor_hz: self.sensor_hz(),
            is_level_full: s.level_switch.is_full,
            stroke_m: s.actuator.stroke_m,
            stroke_m_per_s: (s.actuator.stroke_m - m.before.stroke_m) / TICK_S,
            linkage: self.linkage(),
            rotor_rad_per_s: drive.rotor_rad_per_s,
            pulsator_rad_per_s: drive.pulsator_rad_per_s,
            basket_rad_per_s: drive.basket_rad_per_s,
            swirl_rad_per_s: drive.swirl_rad_per_s,
            basket_rad: drive.basket_rad,
            pulsator_rad: drive.pulsator_rad,
            mode: drive.mode,
            is_reversal: drive.pulsator_rad_per_s * m.before.pulsator_rad_per_s < 0.0,
            load_n_m: m.after.load_mean_n_m,
            slip_w: m.after.slip_w,
            slip_rad_per_s: m.after.slip_rad_per_s,
            is_motor_live: m.after.is_motor_live,
            is_valve_energised: m.after.is_valve_energised,
            is_actuator_energised: m.after.is_actuator_energised,
            is_pump_energised: m.after.is_pump_energised,
            line_a: m.after.line_a,
            input_w: m.after.input_w,
            winding_k: s.heat.winding_k,
            core_k: s.heat.core_k,
            is_protector_open: s.heat.is_open,
            n_trips: s.heat.n_trips,
            rim_m: s.suspension.rim_m,
            rim_reach_m: reach,
            is_lever_open: self.is_lever_open(),
            is_touching: reach > p.suspension.cabinet_gap_m,
            foot_force_n: swing::foot_force_n(&body, s.suspension.swing_m),
            foot_limit_n: swing::foot_limit_n(p, &body),
            foam_ratio: s.foam.foam_ratio,
            bath_k: tub.bath_k,
        }
    }

    /// Surge of an inlet valve that finished closing in the last tick, Pa.
    fn hammer_pa(&self) -> f64 {
        let p = &self.params.inlet;
        if self.state.inlet.opening_ratio > 0.0 || self.memory.before.opening_ratio <= 0.0 {
            return 0.0;
        }
        let speed = inlet::pipe_speed_m_per_s(p, inlet::valve_flow_m3_per_s(p, 1.0));
        inlet::water_hammer_pa(p, speed, self.params.tub.water_kg_per_m3, p.closing_s)
    }
}
