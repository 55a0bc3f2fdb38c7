//! Does the machine do what it should at hand-over? Computed: the machine as it was left and a
//! sound one of the same type, on the same site with the same load, run the same program, and their
//! key figures are compared.
//!
//! Tolerances are common practice for "works as it should", not for "as new".

use serde::Serialize;

use crate::bench::job::Job;
use crate::language::decimals;
use crate::machine::CycleFigures;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Onset;
use crate::machine::Setup;
use crate::say;
use crate::text;

/// The unit of what is counted.
pub(in crate::score) const TIMES: &str = "times";

/// One figure of the comparison.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FunctionLine {
    /// Plain words, such as "spin speed"; English, for [`said`](crate::language::said).
    pub what: &'static str,
    /// The machine as it was left.
    pub value: f64,
    /// A sound one.
    pub sound: f64,
    /// Unit of both.
    pub unit: &'static str,
    /// Near enough.
    pub ok: bool,
}

/// A figure with its unit, such as `12.5` and `mm`, in the reader's language.
pub(in crate::score) fn figure(digits: String, unit: &str) -> String {
    match unit {
        TIMES => say!("{n} times", n = digits),
        _ => format!("{} {unit}", decimals(digits)),
    }
}

/// The machine at hand-over beside a sound one.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct FunctionCheck {
    /// All lines are near enough and nothing is left off or apart.
    pub passed: bool,
    /// What is still off or apart, names of steps and connectors.
    pub left_open: Vec<String>,
    /// What the control showed at the end, where it was an alarm.
    pub alarm: Option<String>,
    /// The figures.
    pub lines: Vec<FunctionLine>,
}

/// Runs both machines through a whole program.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn function_check(job: &Job) -> Result<FunctionCheck, MachineError> {
    let scenario = job.scenario();
    let left_open: Vec<String> = job
        .bench()
        .off
        .iter()
        .chain(job.bench().apart.iter())
        .cloned()
        .collect();
    // What of the site was put right counts as right for the sound one too.
    let sound = Setup {
        params: job.machine().setup().params.clone(),
        ..Setup::default()
    };
    let ready = |setup: Setup| -> Result<Machine, MachineError> {
        let mut machine = Machine::new(&scenario.machine, setup)?;
        machine.cool_down();
        machine.stand_ready();
        Ok(machine)
    };
    let (left, sound) = (ready(as_left(job))?, ready(sound)?);
    let (is, should) = (left.trial()?, sound.trial()?);
    let lines = compare(&is, &should);
    let passed = left_open.is_empty() && is.alarm.is_none() && lines.iter().all(|l| l.ok);
    Ok(FunctionCheck {
        passed,
        left_open,
        alarm: is.alarm,
        lines,
    })
}

/// The machine as it was left. A fault that comes and goes counts as there: a run in which it
/// happened to stay away proves nothing.
fn as_left(job: &Job) -> Setup {
    let mut setup = job.machine().setup().clone();
    for fault in &mut setup.faults {
        fault.onset = Some(Onset::Constant);
    }
    setup
}

/// Allowed distance from a sound machine: a share of its value, and a floor.
struct Allowed {
    below_ratio: f64,
    above_ratio: f64,
    floor: f64,
}

const fn within(below_ratio: f64, above_ratio: f64, floor: f64) -> Allowed {
    Allowed {
        below_ratio,
        above_ratio,
        floor,
    }
}

/// Figures of a run beside those of a sound machine, always the same lines in the same order.
pub(in crate::score) fn compare(is: &CycleFigures, should: &CycleFigures) -> Vec<FunctionLine> {
    let rpm = crate::units::rpm_from_rad_per_s;
    let line = |what, unit, value: f64, sound: f64, allowed: Allowed| {
        let low = sound - (sound.abs() * allowed.below_ratio).max(allowed.floor);
        let high = sound + (sound.abs() * allowed.above_ratio).max(allowed.floor);
        FunctionLine {
            what,
            value,
            sound,
            unit,
            ok: (low..=high).contains(&value),
        }
    };
    vec![
        line(
            text!("time to fill"),
            "s",
            is.fill_s,
            should.fill_s,
            within(1.0, 0.5, 10.0),
        ),
        line(
            text!("water level"),
            "mm",
            is.level_m * 1e3,
            should.level_m * 1e3,
            within(0.08, 0.08, 8.0),
        ),
        line(
            text!("pulsator one way"),
            "r/min",
            rpm(is.pulsator_forward_rad_per_s),
            rpm(should.pulsator_forward_rad_per_s),
            within(0.08, 0.15, 5.0),
        ),
        line(
            text!("pulsator the other way"),
            "r/min",
            rpm(is.pulsator_reverse_rad_per_s),
            rpm(should.pulsator_reverse_rad_per_s),
            within(0.08, 0.15, 5.0),
        ),
        line(
            text!("basket creep in the wash"),
            "r/min",
            rpm(is.creep_rad_per_s),
            rpm(should.creep_rad_per_s),
            within(1.0, 1.0, 4.0),
        ),
        line(
            text!("time to drain"),
            "s",
            is.drain_s,
            should.drain_s,
            within(1.0, 0.3, 15.0),
        ),
        line(
            text!("spin speed"),
            "r/min",
            rpm(is.spin_rad_per_s),
            rpm(should.spin_rad_per_s),
            within(0.03, 0.05, 5.0),
        ),
        line(
            text!("spins broken off to spread the load"),
            TIMES,
            f64::from(is.corrections),
            f64::from(should.corrections),
            within(1.0, 0.0, 0.0),
        ),
        line(
            text!("swing of the tub"),
            "mm",
            is.swing_m * 1e3,
            should.swing_m * 1e3,
            within(1.0, 1.0, 8.0),
        ),
        line(
            text!("moisture left"),
            "%",
            is.moisture_ratio * 1e2,
            should.moisture_ratio * 1e2,
            within(1.0, 0.05, 3.0),
        ),
        line(
            text!("water used"),
            "L",
            is.water_kg,
            should.water_kg,
            within(0.15, 0.08, 5.0),
        ),
        line(
            text!("water on the floor"),
            "L",
            is.puddle_kg,
            should.puddle_kg,
            within(1.0, 0.0, 0.05),
        ),
        line(
            text!("hottest winding"),
            "°C",
            is.winding_k - 273.15,
            should.winding_k - 273.15,
            within(1.0, 0.25, 15.0),
        ),
        line(
            text!("cabinet to earth"),
            "Ω",
            is.earth_path_ohm,
            should.earth_path_ohm,
            within(1.0, 0.0, 0.25),
        ),
        line(
            text!("leakage"),
            "mA",
            is.leakage_a * 1e3,
            should.leakage_a * 1e3,
            within(1.0, 0.0, 3.0),
        ),
        line(
            text!("stop after the lid is opened"),
            "s",
            is.stop_s,
            should.stop_s,
            within(1.0, 0.0, 4.0),
        ),
        line(
            text!("loudest fault sound over normal"),
            "dB",
            is.loudness_db,
            should.loudness_db,
            within(1.0, 0.0, 6.0),
        ),
    ]
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::scenario::job;

    #[test]
    fn a_machine_left_open_does_not_pass_although_it_runs_like_a_sound_one() {
        let mut scenario = (*job("no_water").expect("sound").expect("ships")).clone();
        scenario.faults.clear();
        let mut job = Job::new(Arc::new(scenario), 1).expect("starts");
        assert!(function_check(&job).expect("runs").passed);
        let step = "pull_out".to_owned();
        let helped = true;
        let outcome = job.act(Action::TakeOff { step, helped });
        assert_eq!(outcome.refusal, None);
        let check = function_check(&job).expect("runs");
        assert_eq!(check.left_open, ["pull_out"]);
        assert!(check.lines.iter().all(|line| line.ok), "{:?}", check.lines);
        assert!(!check.passed);
    }
}
