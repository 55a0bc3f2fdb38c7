//! Everything the plant remembers between two ticks, and its hash.
//!
//! The hash runs over the bits of every number in a fixed order, so two engines that agree
//! on it agree on every reading to come. What follows from the state is not part of it.

use crate::plant::actuator::ActuatorState;
use crate::plant::air_trap::{self, TrapState};
use crate::plant::drive::{DriveMode, DriveState};
use crate::plant::foam::FoamState;
use crate::plant::heat::{self, HeatState};
use crate::plant::inlet::InletState;
use crate::plant::params::PlantParams;
use crate::plant::pressure_switch::LevelSwitchState;
use crate::plant::suspension::SuspensionState;
use crate::plant::tub::TubState;

/// State of the whole plant.
#[derive(Debug, Clone, PartialEq)]
pub struct PlantState {
    /// Ticks of 0.1 s since the start.
    pub n_ticks: u64,
    /// Resting ticks not yet applied, 0 to 9.
    pub n_pending: u32,
    /// Inlet valve.
    pub inlet: InletState,
    /// Water.
    pub tub: TubState,
    /// Trapped air and sensor pressure.
    pub trap: TrapState,
    /// Mechanical level switch.
    pub level_switch: LevelSwitchState,
    /// Drain motor.
    pub actuator: ActuatorState,
    /// Speeds and angles.
    pub drive: DriveState,
    /// Swing.
    pub suspension: SuspensionState,
    /// Motor temperatures and protector.
    pub heat: HeatState,
    /// Suds.
    pub foam: FoamState,
}

impl PlantState {
    /// Empty, dry, at rest, as warm as the room.
    pub fn empty(p: &PlantParams) -> Self {
        Self {
            n_ticks: 0,
            n_pending: 0,
            inlet: InletState { opening_ratio: 0.0 },
            tub: TubState {
                free_kg: 0.0,
                textile_kg: 0.0,
                bath_k: p.inlet.water_k,
                supplied_kg: 0.0,
                drained_kg: 0.0,
                puddle_kg: 0.0,
            },
            trap: air_trap::vented(&p.trap, p.site.air_pa),
            level_switch: LevelSwitchState {
                is_full: [false; 3],
            },
            actuator: ActuatorState { stroke_m: 0.0 },
            drive: DriveState {
                rotor_rad_per_s: 0.0,
                pulsator_rad_per_s: 0.0,
                basket_rad_per_s: 0.0,
                swirl_rad_per_s: 0.0,
                basket_rad: 0.0,
                pulsator_rad: 0.0,
                slip_ratio: 0.0,
                mode: DriveMode::Wash,
            },
            suspension: SuspensionState {
                swing_m: 0.0,
                rock_rad: 0.0,
                rim_m: 0.0,
                unbalance_ratio: 1.0,
                is_clumped: false,
                spreading_s: 0.0,
            },
            heat: heat::cold(p.site.air_k),
            foam: FoamState { foam_ratio: 0.0 },
        }
    }

    fn numbers(&self) -> [f64; 27] {
        let (t, d, s, h) = (&self.tub, &self.drive, &self.suspension, &self.heat);
        [
            self.inlet.opening_ratio,
            t.free_kg,
            t.textile_kg,
            t.bath_k,
            t.supplied_kg,
            t.drained_kg,
            t.puddle_kg,
            self.trap.air_j,
            self.trap.sensor_pa,
            self.actuator.stroke_m,
            d.rotor_rad_per_s,
            d.pulsator_rad_per_s,
            d.basket_rad_per_s,
            d.swirl_rad_per_s,
            d.basket_rad,
            d.pulsator_rad,
            d.slip_ratio,
            s.swing_m,
            s.rock_rad,
            s.rim_m,
            s.unbalance_ratio,
            s.spreading_s,
            h.winding_k[0],
            h.winding_k[1],
            h.core_k,
            h.protector_k,
            self.foam.foam_ratio,
        ]
    }

    /// No number has left the real line.
    pub fn is_finite(&self) -> bool {
        self.numbers().iter().all(|x| x.is_finite())
    }

    /// Gives every bit of the state to `sink`, in a fixed order.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        self.numbers().iter().for_each(|x| sink(x.to_bits()));
        sink(self.n_ticks);
        sink(u64::from(self.n_pending));
        sink(u64::from(self.heat.n_trips));
        let flags = [
            self.trap.is_vented,
            self.level_switch.is_full[0],
            self.level_switch.is_full[1],
            self.level_switch.is_full[2],
            self.drive.mode == DriveMode::Spin,
            self.suspension.is_clumped,
            self.heat.is_open,
        ];
        sink(
            flags
                .iter()
                .fold(0, |bits, flag| 2 * bits + u64::from(*flag)),
        );
    }

    /// Sets what is too small to matter to zero: denormal numbers are slow, and
    /// WebAssembly has no mode that flushes them.
    pub(crate) fn flush_tiny(&mut self) {
        let (t, d, s) = (&mut self.tub, &mut self.drive, &mut self.suspension);
        for x in [
            &mut t.free_kg,
            &mut t.textile_kg,
            &mut self.trap.sensor_pa,
            &mut d.rotor_rad_per_s,
            &mut d.pulsator_rad_per_s,
            &mut d.basket_rad_per_s,
            &mut d.swirl_rad_per_s,
            &mut s.swing_m,
            &mut s.rock_rad,
            &mut s.rim_m,
            &mut self.foam.foam_ratio,
        ] {
            if x.abs() < 1.0e-12 {
                *x = 0.0;
            }
        }
    }
}
