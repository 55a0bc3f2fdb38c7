//! What a customer can notice, and what a machine with a fault would show of it: computed by
//! letting the machine run a whole program and comparing with a sound one.
//!
//! Thresholds are what a customer notices, not what a technician measures: common practice.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::scenario::Scenario;
use crate::machine::ActiveFault;
use crate::machine::CycleFigures;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Onset;
use crate::machine::Setup;
use crate::plant::sound::SoundKind;

/// One thing a customer can notice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Symptom {
    /// Nothing lights, nothing moves.
    Dead,
    /// The house's protective device opens.
    Trips,
    /// A tingle or a shock.
    Bites,
    /// Water runs in while it is off or before it is started.
    RunsByItself,
    /// No water comes in.
    NoFill,
    /// Water comes slowly.
    SlowFill,
    /// Too much water, or never full.
    Overfills,
    /// Too little water.
    LittleWater,
    /// Nothing turns in the wash.
    NoWash,
    /// It turns one way only.
    OneWay,
    /// It washes weakly.
    WeakWash,
    /// The basket goes round in the wash.
    Creeps,
    /// The water stays in.
    NoDrain,
    /// The water leaves slowly.
    SlowDrain,
    /// Water leaves while it should stay.
    LosesWater,
    /// It does not spin.
    NoSpin,
    /// It spins slowly, the washing comes out wet.
    WeakSpin,
    /// It breaks the spin off and spreads the load.
    Spreads,
    /// It shakes, bangs or walks.
    Shakes,
    /// It goes on turning long after the lid is opened.
    RunsOn,
    /// Water on the floor.
    Leaks,
    /// An unusual noise.
    Noise,
    /// A hum with nothing moving.
    Hums,
    /// A smell of heat, or parts too hot.
    Hot,
    /// It stops with an alarm.
    Alarm,
    /// It stops and goes on by itself.
    Pauses,
    /// The program takes much longer.
    Long,
}

impl Symptom {
    /// All, in the order of the bits.
    pub const ALL: [Symptom; 27] = [
        Symptom::Dead,
        Symptom::Trips,
        Symptom::Bites,
        Symptom::RunsByItself,
        Symptom::NoFill,
        Symptom::SlowFill,
        Symptom::Overfills,
        Symptom::LittleWater,
        Symptom::NoWash,
        Symptom::OneWay,
        Symptom::WeakWash,
        Symptom::Creeps,
        Symptom::NoDrain,
        Symptom::SlowDrain,
        Symptom::LosesWater,
        Symptom::NoSpin,
        Symptom::WeakSpin,
        Symptom::Spreads,
        Symptom::Shakes,
        Symptom::RunsOn,
        Symptom::Leaks,
        Symptom::Noise,
        Symptom::Hums,
        Symptom::Hot,
        Symptom::Alarm,
        Symptom::Pauses,
        Symptom::Long,
    ];
}

/// A set of symptoms.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "Vec<Symptom>", into = "Vec<Symptom>")]
pub struct Symptoms(pub u32);

impl Symptoms {
    /// Adds one if it is so.
    pub fn put(&mut self, symptom: Symptom, is_so: bool) {
        if is_so {
            self.0 |= 1 << symptom as u32;
        }
    }
    /// It is among them.
    pub fn has(self, symptom: Symptom) -> bool {
        self.0 & (1 << symptom as u32) != 0
    }
    /// All of both.
    pub fn with(self, other: Symptoms) -> Symptoms {
        Symptoms(self.0 | other.0)
    }
    /// Those of both.
    pub fn and(self, other: Symptoms) -> Symptoms {
        Symptoms(self.0 & other.0)
    }
    /// Those that the other lacks.
    pub fn without(self, other: Symptoms) -> Symptoms {
        Symptoms(self.0 & !other.0)
    }
    /// Those that are there.
    pub fn list(self) -> Vec<Symptom> {
        let there = |s: &Symptom| self.has(*s);
        Symptom::ALL.into_iter().filter(there).collect()
    }
}

impl From<Vec<Symptom>> for Symptoms {
    fn from(list: Vec<Symptom>) -> Self {
        let mut set = Self::default();
        for symptom in list {
            set.put(symptom, true);
        }
        set
    }
}

impl From<Symptoms> for Vec<Symptom> {
    fn from(set: Symptoms) -> Self {
        set.list()
    }
}

/// Body and shoes of a person on a damp floor, Ω, and the current that is felt, A. IEC 60479-1, from
/// memory.
const BODY_OHM: f64 = 2000.0;
const FELT_A: f64 = 0.0005;
/// Residual current at which a house's device opens, A.
const RESIDUAL_A: f64 = 0.0225;
/// Winding that can be smelt, K; slip of a belt that can be smelt, W; joint, W. From memory.
const SMELLS_K: f64 = 393.0;
const SMELLS_SLIP_W: f64 = 20.0;
const SMELLS_JOINT_W: f64 = 4.0;

/// A sound that a customer notices, dB. From memory.
const NOTICED_DB: f64 = 45.0;

/// A run of a machine: its figures and what else was noticed.
struct Run {
    figures: CycleFigures,
    noticed: Symptoms,
    highest_m: f64,
    last_m: f64,
    hum_s: u32,
    heard: Vec<(SoundKind, f64)>,
}

/// What faults of a machine would show of a whole program, by their names.
///
/// # Errors
/// When the machine has no such fault or cannot be solved.
pub fn shown_by_each<'a>(
    model: &Arc<MachineModel>,
    faults: impl Iterator<Item = &'a str>,
) -> Result<BTreeMap<String, Symptoms>, MachineError> {
    let sound = run(model, &[])?;
    let of = |id: &str| {
        let fault = ActiveFault::constant(id);
        Ok((id.to_owned(), shown_beside(model, &[fault], &sound)?))
    };
    faults.map(of).collect()
}

/// What a job's machine with these faults would show of a whole program where it stands, beside a
/// sound one in a usual home.
///
/// # Errors
/// When the machine cannot be set up or solved.
pub fn shown_by(scenario: &Scenario, faults: &[ActiveFault]) -> Result<Symptoms, MachineError> {
    let (model, site) = (&scenario.machine, &scenario.site);
    let is = run_at(model, faults, &site.params, site.water_kg)?;
    Ok(beside(&is, &run(model, &[])?))
}

fn shown_beside(
    model: &Arc<MachineModel>,
    faults: &[ActiveFault],
    sound: &Run,
) -> Result<Symptoms, MachineError> {
    Ok(beside(&run(model, faults)?, sound))
}

fn beside(is: &Run, sound: &Run) -> Symptoms {
    let mut set = is.noticed;
    let (f, s) = (&is.figures, &sound.figures);
    let filled = is.highest_m > 0.5 * s.level_m;
    set.put(Symptom::NoFill, !filled);
    set.put(Symptom::SlowFill, f.fill_s > 1.5 * s.fill_s);
    let too_high = is.highest_m > sound.highest_m + 0.03;
    set.put(
        Symptom::Overfills,
        too_high || f.water_kg > 1.25 * s.water_kg,
    );
    set.put(Symptom::LittleWater, filled && f.level_m < s.level_m - 0.03);
    let forward = f.pulsator_forward_rad_per_s / s.pulsator_forward_rad_per_s;
    let reverse = f.pulsator_reverse_rad_per_s / s.pulsator_reverse_rad_per_s;
    set.put(Symptom::NoWash, forward < 0.2 && reverse < 0.2);
    set.put(Symptom::OneWay, (forward < 0.2) != (reverse < 0.2));
    set.put(Symptom::WeakWash, forward.min(reverse) < 0.85);
    set.put(Symptom::Creeps, f.creep_rad_per_s > s.creep_rad_per_s + 1.0);
    set.put(
        Symptom::NoDrain,
        filled && (is.last_m > 0.05 || f.drain_s > 3.0 * s.drain_s),
    );
    set.put(Symptom::SlowDrain, f.drain_s > 1.3 * s.drain_s);
    let spin = f.spin_rad_per_s / s.spin_rad_per_s;
    set.put(Symptom::NoSpin, spin < 0.25);
    let wet = f.moisture_ratio > s.moisture_ratio + 0.1;
    set.put(Symptom::WeakSpin, (0.25..0.95).contains(&spin) || wet);
    set.put(Symptom::Spreads, f.corrections > s.corrections);
    set.put(Symptom::Shakes, f.swing_m > 1.4 * s.swing_m + 0.004);
    set.put(Symptom::RunsOn, f.stop_s > s.stop_s + 3.0);
    set.put(Symptom::Leaks, f.puddle_kg > 0.02);
    let usual = |kind| sound.heard.iter().find(|(k, _)| *k == kind);
    let is_new = |(kind, level_db): &(SoundKind, f64)| {
        *level_db > usual(*kind).map_or(NOTICED_DB, |(_, db)| (db + 5.0).max(NOTICED_DB))
    };
    set.put(Symptom::Noise, is.heard.iter().any(is_new));
    set.put(Symptom::Hums, is.hum_s > sound.hum_s + 10);
    set.put(
        Symptom::Hot,
        f.winding_k > (s.winding_k + 20.0).max(SMELLS_K),
    );
    set.put(Symptom::Alarm, f.alarm.is_some());
    set.put(Symptom::Pauses, f.trips > 0);
    set.put(Symptom::Long, f.length_s > 1.2 * s.length_s);
    set
}

fn run(model: &Arc<MachineModel>, faults: &[ActiveFault]) -> Result<Run, MachineError> {
    run_at(model, faults, &[], 0.0)
}

fn run_at(
    model: &Arc<MachineModel>,
    faults: &[ActiveFault],
    params: &[(String, f64)],
    water_kg: f64,
) -> Result<Run, MachineError> {
    // What comes by chance or with heat is complained about when it is there.
    let faults: Vec<ActiveFault> = faults.iter().map(|f| listed(model, f)).collect();
    let setup = Setup {
        params: params.to_vec(),
        ..Setup::of_faults(&faults, 0)
    };
    let mut machine = Machine::new(model, setup)?;
    machine.cool_down();
    machine.leave_water(water_kg);
    machine.set_residual_limit(RESIDUAL_A);
    let mut noticed = Symptoms::default();
    machine.advance(600);
    let cabinet = [model.roles.cabinet.clone()];
    noticed.put(Symptom::Bites, bites(&machine, &cabinet));
    noticed.put(Symptom::RunsByItself, machine.water_supplied_kg() > 0.3);
    machine.press_power();
    machine.advance(300);
    noticed.put(Symptom::RunsByItself, machine.water_supplied_kg() > 0.3);
    noticed.put(Symptom::RunsByItself, machine.motor_energised());
    let is_board = model.roles.coils.timer_motor.is_none();
    let mut is_dark = is_board && machine.display_words().is_empty();
    machine.press_power();
    machine.advance(50);
    let mut run = Watch::default();
    let figures = machine.trial_with(|m| run.see(m, &cabinet))?;
    is_dark |= !is_board && run.largest_a < 0.01;
    noticed.put(Symptom::Dead, is_dark || machine.supply_tripped());
    noticed.put(Symptom::Trips, machine.supply_tripped());
    noticed.put(Symptom::LosesWater, run.lost_s > 20);
    Ok(Run {
        figures,
        noticed: noticed.with(run.noticed),
        highest_m: run.highest_m,
        last_m: machine.plant().level_m(),
        hum_s: run.hum_s,
        heard: run.heard,
    })
}

fn listed(model: &MachineModel, fault: &ActiveFault) -> ActiveFault {
    let onset = fault
        .onset
        .or_else(|| model.fault(&fault.id).map(|def| def.onset));
    let onset = match onset {
        Some(Onset::Intermittent { .. } | Onset::From { .. }) => Some(Onset::Constant),
        other => other,
    };
    ActiveFault {
        onset,
        ..fault.clone()
    }
}

fn bites(machine: &Machine, cabinet: &[String]) -> bool {
    machine.touch_sources(cabinet).iter().any(|(_, source)| {
        let ohm = libm::hypot(source.resistance_ohm + BODY_OHM, source.reactance_ohm);
        source.open_v / ohm > FELT_A
    })
}

/// What is noticed second by second.
#[derive(Default)]
struct Watch {
    seconds: u64,
    noticed: Symptoms,
    highest_m: f64,
    largest_a: f64,
    hum_s: u32,
    lost_s: u32,
    heard: Vec<(SoundKind, f64)>,
}

impl Watch {
    fn see(&mut self, machine: &Machine, cabinet: &[String]) {
        self.seconds += 1;
        let now = machine.plant().readings();
        self.highest_m = self.highest_m.max(now.level_m);
        self.largest_a = self.largest_a.max(machine.live().line_a);
        let turns = now.pulsator_rad_per_s.abs() + now.basket_rad_per_s.abs() > 0.5;
        self.hum_s += u32::from(machine.motor_energised() && !turns);
        let holds = !machine.draining() && now.level_m > 0.05;
        self.lost_s += u32::from(holds && now.flows.drain_m3_per_s > 3e-6);
        for source in machine.sounds() {
            match self.heard.iter_mut().find(|(kind, _)| *kind == source.kind) {
                Some((_, level_db)) => *level_db = level_db.max(source.level_db),
                None => self.heard.push((source.kind, source.level_db)),
            }
        }
        if self.seconds.is_multiple_of(20) {
            self.noticed.put(Symptom::Bites, bites(machine, cabinet));
            let joint_w = machine.hottest_joint_w();
            self.noticed.put(Symptom::Hot, joint_w > SMELLS_JOINT_W);
        }
        self.noticed.put(Symptom::Hot, now.slip_w > SMELLS_SLIP_W);
    }
}
