//! `simulate`: a whole program run at once; its figures, or its trace with one line a second.

use std::io;
use std::io::Write;

use serde_json::json;

use crate::cli::Verdict;
use crate::cli::args::SimulateArgs;
use crate::cli::failure::Failure;
use crate::cli::library;
use crate::control::io::Key;
use crate::machine::ActiveFault;
use crate::machine::CycleFigures;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Onset;
use crate::machine::Setup;
use crate::scenario::MachinePack;
use crate::units;

const COLUMNS: &str = "time_s,state,level_m,sensor_hz,inlet_l_per_min,drain_l_per_min,motor_rpm,\
pulsator_rpm,basket_rpm,line_a,winding_1_degc,winding_2_degc,moisture_ratio,rim_mm,stroke_mm,\
puddle_kg";

/// Does it.
pub fn run(args: &SimulateArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    let mut machine = machine(args, &pack)?;
    machine.stand_ready();
    choose(&mut machine, args, &pack)?;
    let failed = |error| Failure::Machine {
        what: format!("machine {}", pack.model.id),
        error,
    };
    if !args.csv {
        let figures = machine.trial_with(|_| {}).map_err(failed)?;
        sound(&machine).map_err(failed)?;
        write_figures(&figures, args.json, out)?;
        return Ok(Verdict::Passed);
    }
    writeln!(out, "{COLUMNS}")?;
    let mut written = Ok(());
    let start = machine.tick();
    let figures = machine
        .trial_with(|m| {
            if written.is_ok() {
                written = write_line(m, start, out);
            }
        })
        .map_err(failed)?;
    written?;
    sound(&machine).map_err(failed)?;
    let mut told = Vec::new();
    write_figures(&figures, args.json, &mut told)?;
    let _ = io::stderr().write_all(&told);
    Ok(Verdict::Passed)
}

/// Trouble in solving stops the electric side of a machine; its figures mean nothing then.
fn sound(machine: &Machine) -> Result<(), MachineError> {
    machine.trouble().map_or(Ok(()), |error| Err(error.clone()))
}

fn machine(args: &SimulateArgs, pack: &MachinePack) -> Result<Machine, Failure> {
    let faults = args
        .fault
        .iter()
        .map(|word| {
            let fault = library::fault(pack, word)?;
            Ok(ActiveFault {
                // None: as the catalogue says.
                onset: (!args.as_listed).then_some(Onset::Constant),
                ..fault
            })
        })
        .collect::<Result<Vec<_>, Failure>>()?;
    let mut setup = Setup::of_faults(&faults, args.seed);
    if let Some(load_kg) = args.load {
        setup.params.push(("load.dry_kg".to_owned(), load_kg));
    }
    for word in &args.set {
        let wrong = || {
            Failure::usage(
                "--set",
                word,
                "write NAME=VALUE, such as inlet.supply_pa=30000",
            )
        };
        let (name, value) = word.split_once('=').ok_or_else(wrong)?;
        setup
            .params
            .push((name.to_owned(), value.parse().map_err(|_| wrong())?));
    }
    Machine::new(&pack.model, setup).map_err(|error| Failure::Machine {
        what: format!("machine {}", pack.model.id),
        error,
    })
}

/// Turns the panel to the program of this name.
fn choose(machine: &mut Machine, args: &SimulateArgs, pack: &MachinePack) -> Result<(), Failure> {
    let Some(name) = &args.program else {
        return Ok(());
    };
    let programs = &pack.workshop.programs;
    let wanted = programs
        .iter()
        .position(|p| p.eq_ignore_ascii_case(name))
        .ok_or_else(|| {
            Failure::usage(
                "--program",
                name,
                format!("name one of {}", programs.join(", ")),
            )
        })?;
    machine.press_power();
    machine.advance(50);
    for _ in 0..wanted {
        machine.press_key(Key::Program);
        machine.advance(10);
    }
    Ok(())
}

fn write_line(machine: &Machine, start: u64, out: &mut dyn Write) -> io::Result<()> {
    let r = machine.plant().readings();
    let rpm = units::rpm_from_rad_per_s;
    let degc = |k: f64| k - units::CELSIUS_ZERO_K;
    let lpm = units::l_per_min_from_m3_per_s;
    writeln!(
        out,
        "{:.1},{},{:.4},{:.1},{:.2},{:.2},{:.1},{:.1},{:.1},{:.3},{:.1},{:.1},{:.3},{:.2},{:.1},{:.3}",
        (machine.tick() - start) as f64 / 10.0,
        machine.state_words().replace(',', ";"),
        r.level_m,
        r.sensor_hz,
        lpm(r.flows.inlet_m3_per_s),
        lpm(r.flows.drain_m3_per_s),
        rpm(r.rotor_rad_per_s),
        rpm(r.pulsator_rad_per_s),
        rpm(r.basket_rad_per_s),
        machine.live().line_a,
        degc(r.winding_k[0]),
        degc(r.winding_k[1]),
        r.moisture_ratio,
        r.rim_reach_m * 1e3,
        r.stroke_m * 1e3,
        r.puddle_kg,
    )
}

fn write_figures(f: &CycleFigures, as_json: bool, out: &mut dyn Write) -> Result<(), Failure> {
    let rpm = units::rpm_from_rad_per_s;
    let figures = json!({
        "length_s": f.length_s,
        "alarm": f.alarm,
        "fill_s": f.fill_s,
        "level_m": f.level_m,
        "pulsator_forward_rpm": rpm(f.pulsator_forward_rad_per_s),
        "pulsator_reverse_rpm": rpm(f.pulsator_reverse_rad_per_s),
        "creep_rpm": rpm(f.creep_rad_per_s),
        "drain_s": f.drain_s,
        "spin_rpm": f.spin_rpm(),
        "corrections": f.corrections,
        "swing_mm": f.swing_m * 1e3,
        "moisture_ratio": f.moisture_ratio,
        "water_kg": f.water_kg,
        "puddle_kg": f.puddle_kg,
        "winding_degc": f.winding_k - units::CELSIUS_ZERO_K,
        "trips": f.trips,
        "earth_path_ohm": f.earth_path_ohm,
        "leakage_ma": f.leakage_a * 1e3,
        "stop_s": f.stop_s,
        "loudness_db": f.loudness_db,
    });
    if as_json {
        serde_json::to_writer_pretty(&mut *out, &figures)?;
        writeln!(out)?;
    } else if let Some(fields) = figures.as_object() {
        for (name, value) in fields {
            writeln!(out, "{name:24} {value}")?;
        }
    }
    Ok(())
}
