//! A whole program run at once, and the figures that tell how it went.
//!
//! Used where a machine is judged, not where a person works: at hand-over, in the catalogue of
//! complaints, on the command line.

use crate::machine::Machine;
use crate::machine::MachineError;
use crate::plant::drive::DriveMode;
use crate::units;

/// Longest a program is waited for, s. Twice a normal wash with corrections.
const PATIENCE_S: u64 = 2 * 3600;
/// Speed from which the stop after the lid is opened is tried, rad/s: about 600 r/min.
const STOP_FROM_RAD_PER_S: f64 = 63.0;

/// Figures of one run.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CycleFigures {
    /// First fill, s.
    pub fill_s: f64,
    /// Level after it, m.
    pub level_m: f64,
    /// Fastest pulsator in the wash, spin direction, rad/s.
    pub pulsator_forward_rad_per_s: f64,
    /// Fastest pulsator in the wash, other direction, rad/s.
    pub pulsator_reverse_rad_per_s: f64,
    /// Fastest the basket creeps in the wash, rad/s.
    pub creep_rad_per_s: f64,
    /// First drain until empty, s.
    pub drain_s: f64,
    /// Fastest spin, rad/s.
    pub spin_rad_per_s: f64,
    /// Times the control stopped a spin to spread the load.
    pub corrections: u32,
    /// Widest swing of the tub rim, m.
    pub swing_m: f64,
    /// Water left in the load per dry mass at the end.
    pub moisture_ratio: f64,
    /// Water used, kg.
    pub water_kg: f64,
    /// Water on the floor, kg.
    pub puddle_kg: f64,
    /// Hottest winding, K.
    pub winding_k: f64,
    /// Times the motor's protector opened.
    pub trips: u32,
    /// Cabinet to the earth of the house, Ω.
    pub earth_path_ohm: f64,
    /// Largest protective-conductor current, A.
    pub leakage_a: f64,
    /// Basket from full speed to rest after the lid is opened, s.
    pub stop_s: f64,
    /// Loudest moment of the wash, dB.
    pub loudness_db: f64,
    /// The alarm it ended with.
    pub alarm: Option<String>,
    /// Length of the program, s.
    pub length_s: f64,
}

impl Machine {
    /// Runs the program the panel starts with and gives its figures. The machine is used up by it.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn trial(mut self) -> Result<CycleFigures, MachineError> {
        self.trial_with(|_| {})
    }

    /// As `trial`, showing the machine to `watch` once a second.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn trial_with(
        &mut self,
        mut watch: impl FnMut(&Machine),
    ) -> Result<CycleFigures, MachineError> {
        let mut figures = CycleFigures {
            earth_path_ohm: self.earth_path_ohm()?,
            ..Default::default()
        };
        let start = self.tick();
        let (water_before_kg, floor_before_kg) =
            (self.water_supplied_kg(), self.plant().readings().puddle_kg);
        self.start_program();
        let mut run = Run::default();
        while self.tick() < start + PATIENCE_S * 10 {
            self.advance(10);
            run.see(self, &mut figures);
            watch(self);
            if self.is_done() {
                break;
            }
        }
        figures.length_s = (self.tick() - start) as f64 / 10.0;
        figures.moisture_ratio = self.plant().readings().moisture_ratio;
        figures.water_kg = self.water_supplied_kg() - water_before_kg;
        figures.puddle_kg = self.plant().readings().puddle_kg - floor_before_kg;
        figures.trips = self.protector_trips();
        figures.alarm = self.alarm_words();
        Ok(figures)
    }
}

/// What the run has passed through.
#[derive(Default)]
struct Run {
    seconds: u32,
    filled_at_s: Option<u32>,
    drain_from_s: Option<u32>,
    drained: bool,
    stopped: bool,
    was_spreading: bool,
}

impl Run {
    fn see(&mut self, machine: &Machine, figures: &mut CycleFigures) {
        self.seconds += 1;
        let plant = machine.plant();
        self.see_water(machine, figures);
        let now = plant.readings();
        let (pulsator, basket) = (now.pulsator_rad_per_s, now.basket_rad_per_s);
        if now.mode == DriveMode::Spin {
            figures.spin_rad_per_s = figures.spin_rad_per_s.max(basket);
            if !self.stopped && basket > STOP_FROM_RAD_PER_S {
                self.stopped = true;
                figures.stop_s = machine.stop_time_s();
            }
        } else {
            figures.pulsator_forward_rad_per_s = figures.pulsator_forward_rad_per_s.max(pulsator);
            figures.pulsator_reverse_rad_per_s = figures.pulsator_reverse_rad_per_s.max(-pulsator);
            if machine.motor_energised() {
                figures.creep_rad_per_s = figures.creep_rad_per_s.max(basket.abs());
            }
        }
        let spreads = machine.is_spreading_load();
        figures.corrections += u32::from(spreads && !self.was_spreading);
        self.was_spreading = spreads;
        figures.swing_m = figures.swing_m.max(now.rim_reach_m);
        figures.winding_k = figures.winding_k.max(machine.hottest_winding_k());
        figures.leakage_a = figures.leakage_a.max(machine.leakage_a());
        let loudest = machine
            .sounds()
            .iter()
            .map(|s| s.level_db)
            .fold(0.0, f64::max);
        figures.loudness_db = figures.loudness_db.max(loudest);
    }

    fn see_water(&mut self, machine: &Machine, figures: &mut CycleFigures) {
        let plant = machine.plant();
        let filling = machine.valve_energised();
        if self.filled_at_s.is_none() && !filling && plant.level_m() > 0.05 {
            self.filled_at_s = Some(self.seconds);
            figures.fill_s = f64::from(self.seconds);
            figures.level_m = plant.level_m();
        }
        if self.filled_at_s.is_some() && self.drain_from_s.is_none() && machine.draining() {
            self.drain_from_s = Some(self.seconds);
        }
        if let Some(from) = self.drain_from_s
            && !self.drained
        {
            figures.drain_s = f64::from(self.seconds - from);
            self.drained = plant.level_m() < 0.033;
        }
    }
}

impl CycleFigures {
    /// Fastest spin, r/min.
    pub fn spin_rpm(&self) -> f64 {
        units::rpm_from_rad_per_s(self.spin_rad_per_s)
    }
}
