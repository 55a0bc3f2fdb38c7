//! A further machine needs no Rust: a small invented one is two files of data, and everything that
//! works for the machines that ship works for it. Expectations are closed forms of its own data
//! or common practice, named where they stand.

use std::process::Command;
use std::process::Output;
use std::sync::Arc;

use serde_json::Value;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::machine::ActiveFault;
use tubwright::machine::CycleFigures;
use tubwright::machine::Machine;
use tubwright::machine::Probe;
use tubwright::machine::Setup;
use tubwright::plant::harness::Instrument;
use tubwright::scenario;
use tubwright::scenario::MachinePack;
use tubwright::score;

const MACHINE: &str = "tests/fixtures/machines/k.json";
const FAULTS: &str = "tests/fixtures/machines/k.faults.json";
const JOB: &str = "tests/fixtures/machines/k_hums.json";
const LOG: &str = "tests/fixtures/machines/k_hums.log.json";

fn text(file: &str) -> String {
    std::fs::read_to_string(file).unwrap_or_else(|error| panic!("{file}: {error}"))
}

fn pack() -> MachinePack {
    scenario::machine_with_faults((MACHINE, &text(MACHINE)), (FAULTS, &text(FAULTS)))
        .expect("sound files")
}

fn machine(faults: &[&str]) -> Machine {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    let mut machine = Machine::new(&pack().model, Setup::of_faults(&faults, 1)).expect("known");
    machine.settle_in(1.5, 293.15);
    machine.stand_ready();
    machine
}

fn figures(faults: &[&str]) -> CycleFigures {
    machine(faults).trial().expect("the wiring can be solved")
}

fn run(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tubwright"))
        .args(words)
        .output()
        .expect("the program starts")
}

fn json(words: &[&str]) -> Value {
    let output = run(words);
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(0), "{words:?}: {said}");
    serde_json::from_slice(&output.stdout).expect("JSON")
}

#[test]
fn a_machine_of_pure_data_washes_to_the_end() {
    let f = figures(&[]);
    assert_eq!((f.alarm.as_deref(), f.trips), (None, 0));
    // The pressure switch sets at 1900 Pa: by its definition the water then stands
    // 1900/(998.2 · 9.80665) m above the dome's mouth at 20 mm, and a little more for the air
    // pressed into the dome.
    let column_m = 1900.0 / (998.2 * 9.80665) + 0.020;
    assert!((f.level_m - column_m).abs() < 0.004, "{} m", f.level_m);
    // Twelve litres a minute fill the tub's 0.1 m² and 0.115 m² to there, and what the load takes.
    assert!((90.0..150.0).contains(&f.fill_s), "{} s", f.fill_s);
    // Induction motor at a few percent of slip below 1800 r/min, pulleys 112 to 50 mm.
    let most_rpm = 1800.0 * 50.0 / 112.0;
    assert!((0.85 * most_rpm..most_rpm).contains(&f.spin_rpm()), "{f:?}");
    assert!(f.moisture_ratio < 1.2, "{f:?}");
    // The clutch motor hangs behind the lid switch, so the brake grips: common practice, seconds.
    assert!(f.stop_s < 5.0, "{f:?}");
    assert!(f.pulsator_forward_rad_per_s > 5.0 && f.pulsator_reverse_rad_per_s > 5.0);
}

#[test]
fn its_dial_of_sixteen_steps_takes_fifteen_minutes_and_its_fills() {
    // Fifteen steps of 60 s are timed; the timer waits while the tub fills, twice.
    let f = figures(&[]);
    let timed_s = 15.0 * 60.0;
    assert!(
        f.length_s > timed_s + f.fill_s && f.length_s < timed_s + 3.0 * f.fill_s,
        "{f:?}"
    );
}

#[test]
fn instruments_read_it_as_its_data_say() {
    let mut machine = machine(&[]);
    machine.set_plugged(false);
    let read = |instrument, red: &str, black: &str| {
        let measured = machine.measure(Probe::Between(instrument, red, black));
        measured.expect("solvable").value_si
    };
    // Through the whole harness: 4.2 and 4.4 ohm of copper, 0.05 of protector, 0.03 of each lead.
    let ohm = read(Instrument::Ohms, "MA", "MC").expect("in range");
    assert!((ohm - 4.25).abs() < 0.01, "{ohm}");
    let ohm = read(Instrument::Ohms, "PE", "CAB").expect("in range");
    assert!((ohm - 0.03).abs() < 1e-6, "{ohm}");
    // Terminals on: the capacitor stands in parallel with both windings.
    let ohm = read(Instrument::Ohms, "C1", "C2").expect("in range");
    assert!((ohm - 8.62).abs() < 0.01, "{ohm}");
}

#[test]
fn its_own_faults_change_its_wash() {
    let sound = figures(&[]);
    assert!(figures(&["valve_coil_open"]).level_m < 0.01);
    assert!(figures(&["K06"]).level_m < 0.01, "by reference number");
    let hums = figures(&["capacitor_open"]);
    assert!(
        hums.pulsator_forward_rad_per_s < 1.0 && hums.trips > 0,
        "{hums:?}"
    );
    assert!(figures(&["lid_switch_open"]).spin_rpm() < 1.0);
    assert!(figures(&["belt_slack"]).spin_rpm() < 0.9 * sound.spin_rpm());
    let full = figures(&["pump_jammed"]);
    assert!(full.moisture_ratio > sound.moisture_ratio + 0.5, "{full:?}");
}

fn job() -> Job {
    let scenario = scenario::job_with_machine(
        "k_hums",
        (JOB, &text(JOB)),
        (MACHINE, &text(MACHINE)),
        (FAULTS, &text(FAULTS)),
    );
    let log: Vec<Entry> = serde_json::from_str(&text(LOG)).expect("a log");
    let (job, outcomes) =
        Job::replay(Arc::new(scenario.expect("sound files")), 1, &log).expect("starts");
    for (entry, outcome) in log.iter().zip(outcomes) {
        assert_eq!(outcome.refusal, None, "{entry:?}");
    }
    job
}

#[test]
fn a_short_job_on_it_is_worked_safely_and_puts_it_right() {
    let job = job();
    assert!(job.safety().is_empty(), "{:?}", job.safety());
    let report = score::assess(&job).expect("it can be judged");
    assert!(report.total > 80.0, "{report:?}");
    // The reading that proves the cause: an open capacitor holds nothing.
    assert_eq!(job.machine().trouble(), None);
    assert!(
        job.machine().run_capacitor_ratio() > 0.99,
        "a new one is fitted"
    );
}

#[test]
fn the_command_line_takes_it_by_file() {
    let ohms = json(&[
        "probe",
        "--machine",
        MACHINE,
        "--state",
        "unplugged",
        "--open",
        "PC1",
        "--fault",
        "K01",
        "--json",
        "ohms",
        "MA",
        "MC",
        "capacitance",
        "C1",
        "C2",
    ]);
    assert!((ohms[0]["value"].as_f64().expect("a number") - 4.25).abs() < 0.01);
    assert!(ohms[1]["value"].as_f64().expect("a number").abs() < 1e-9);
    let wash = json(&[
        "simulate",
        "--machine",
        MACHINE,
        "--fault",
        "belt_slack=0.9",
        "--json",
    ]);
    assert!(wash["alarm"].is_null());
    let faults = json(&["faults", "--machine", MACHINE, "--json"]);
    assert_eq!(faults.as_array().map(Vec::len), Some(6));
    let steps = json(&["access", "--machine", MACHINE, "--json"]);
    assert_eq!(steps.as_array().map(Vec::len), Some(4));
    let played = json(&["play", JOB, LOG, "--machine", MACHINE, "--json"]);
    assert_eq!(played["safety"].as_array().map(Vec::len), Some(0));
    assert_eq!(
        played["state_hash"].as_str().map(str::to_owned),
        Some(job().machine().state_hash().to_string())
    );
    assert_eq!(run(&["check", MACHINE]).status.code(), Some(0));
    let page = json(&["faults", "--machine", MACHINE, "--id", "K01", "--json"]);
    assert!(page.is_object(), "{page}");
    let picture = run(&["draw", "--machine", MACHINE, "--view", "wiring"]);
    assert!(picture.stdout.starts_with(b"<svg"));
}

#[test]
fn without_its_faults_beside_it_the_remedy_is_told() {
    let alone = std::env::temp_dir().join(format!("tubwright-k-{}", std::process::id()));
    std::fs::create_dir_all(&alone).expect("a folder");
    let file = alone.join("k.json");
    std::fs::copy(MACHINE, &file).expect("a copy");
    let file = file.to_string_lossy();
    let output = run(&["play", JOB, LOG, "--machine", &file]);
    let said = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.contains(".faults.json"), "{said}");
    let output = run(&["play", "hums_and_stands", LOG, "--machine", MACHINE]);
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(
        output.status.code() == Some(2) && said.contains("job file"),
        "{said}"
    );
}
