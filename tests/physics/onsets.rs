//! The five ways a fault comes on, each seen to show and to vanish, alone and together, and as a
//! job's file gives them.

use std::sync::Arc;

use serde_json::Value;
use serde_json::json;

use tubwright::bench::job::Job;
use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::MachineModel;
use tubwright::machine::Onset;
use tubwright::machine::Setup;
use tubwright::scenario;
use tubwright::scenario::machines;

const JOB: &str = include_str!("../../scenarios/jobs/hums_and_stands.json");

fn model() -> Arc<MachineModel> {
    Arc::clone(&machines().expect("shipped files are sound")["P"].model)
}

fn fault(id: &str, onset: Onset) -> ActiveFault {
    ActiveFault {
        id: id.to_owned(),
        severity_ratio: 1.0,
        onset: Some(onset),
    }
}

fn machine_with(faults: &[ActiveFault], seed: u64) -> Machine {
    let mut machine = Machine::new(&model(), Setup::of_faults(faults, seed)).expect("known");
    machine.settle_in(2.0, 293.15);
    machine.stand_ready();
    machine
}

fn machine(onset: Onset, seed: u64) -> Machine {
    machine_with(&[fault("capacitor_low", onset)], seed)
}

/// Whether the run capacitor has lost most of its value now.
fn is_there(machine: &Machine) -> bool {
    machine.run_capacitor_ratio() < 0.5
}

#[test]
fn a_constant_fault_is_there_from_the_start_and_stays() {
    let mut machine = machine(Onset::Constant, 1);
    for _ in 0..20 {
        assert!(is_there(&machine));
        machine.advance(600);
    }
}

#[test]
fn a_fault_from_a_time_begins_then_and_stays() {
    let mut machine = machine(Onset::From { start_s: 90.0 }, 1);
    let start = machine.tick();
    machine.advance(890 - start);
    assert!(!is_there(&machine), "a second before");
    machine.advance(20);
    assert!(is_there(&machine), "a second after");
    machine.advance(36_000);
    assert!(is_there(&machine), "an hour later");
}

fn pattern(seed: u64) -> Vec<bool> {
    let onset = Onset::Intermittent {
        period_s: 20.0,
        chance_ratio: 0.4,
    };
    let mut machine = machine(onset, seed);
    (0..60)
        .map(|_| {
            machine.advance(200);
            is_there(&machine)
        })
        .collect()
}

#[test]
fn an_intermittent_fault_comes_and_goes_by_its_seed() {
    let pattern_1 = pattern(1);
    let there = pattern_1.iter().filter(|there| **there).count();
    assert!(
        (12..=36).contains(&there),
        "{there} of 60 at a chance of 0.4"
    );
    let changes = pattern_1.windows(2).filter(|w| w[0] != w[1]).count();
    assert!(changes > 10, "it comes and goes: {changes} changes");
    assert_eq!(pattern_1, pattern(1), "the same seed, the same pattern");
    assert_ne!(pattern_1, pattern(2), "another seed, another pattern");
}

#[test]
fn a_fault_of_heat_shows_once_the_motor_is_warm_and_goes_as_it_cools() {
    let mut machine = machine(Onset::Hot { above_k: 303.15 }, 1);
    assert!(!is_there(&machine), "cold");
    machine.start_program();
    for _ in 0..60 {
        machine.advance(600);
        if is_there(&machine) {
            break;
        }
    }
    assert!(is_there(&machine), "{} K", machine.hottest_winding_k());
    machine.set_plugged(false);
    machine.advance(4 * 36_000);
    assert!(
        !is_there(&machine),
        "cool again: {} K",
        machine.hottest_winding_k()
    );
}

#[test]
fn a_fault_of_vibration_shows_while_the_basket_spins_only() {
    let mut machine = machine(
        Onset::Vibration {
            above_rad_per_s: 40.0,
        },
        1,
    );
    machine.start_program();
    let (mut slow, mut fast) = (0, 0);
    while !machine.is_done() {
        machine.advance(10);
        // Onsets are looked at once a second.
        machine.advance((10 - machine.tick() % 10) % 10 + 1);
        let speed = machine.basket_rad_per_s().abs();
        if speed > 45.0 {
            assert!(is_there(&machine), "{speed} rad/s");
            fast += 1;
        } else if speed < 30.0 {
            assert!(!is_there(&machine), "{speed} rad/s");
            slow += 1;
        }
    }
    assert!(fast > 60 && slow > 600, "{fast} s of spin, {slow} s slow");
}

#[test]
fn any_number_of_faults_each_come_on_in_their_own_way() {
    let faults = [
        fault("capacitor_low", Onset::From { start_s: 60.0 }),
        fault("supply_low", Onset::Constant),
        fault("inlet_filter_dirty", Onset::From { start_s: 120.0 }),
        fault("motor_bearings_dry", Onset::Hot { above_k: 400.0 }),
        fault(
            "lid_switch_open",
            Onset::Intermittent {
                period_s: 10.0,
                chance_ratio: 0.5,
            },
        ),
        fault(
            "belt_very_loose",
            Onset::Vibration {
                above_rad_per_s: 1.0,
            },
        ),
    ];
    let mut machine = machine_with(&faults, 3);
    let blocked = |m: &Machine| m.plant().params().inlet.strainer_blocked_ratio > 0.5;
    let (mut open, mut closed) = (0, 0);
    machine.press_power();
    while machine.tick() < 3000 {
        machine.advance(10);
        let t_s = machine.tick() / 10;
        if t_s % 60 > 2 {
            assert_eq!(is_there(&machine), t_s > 60, "{t_s} s");
            assert_eq!(blocked(&machine), t_s > 120, "{t_s} s");
        }
        assert!(machine.live().supply_v < 215.0, "{t_s} s");
        assert!(
            machine.plant().params().rotor.friction_n_m < 0.1,
            "never hot enough"
        );
        assert!(
            machine.plant().params().belt.tension_n > 50.0,
            "the basket stands"
        );
        if machine.live().lid_closed {
            closed += 1;
        } else {
            open += 1;
        }
    }
    assert!(open > 50 && closed > 50, "{open} s open, {closed} s closed");
    assert_eq!(machine.trouble(), None);
}

#[test]
fn a_job_file_gives_every_onset_and_a_wrong_one_is_told() {
    let onsets = [
        (json!("constant"), Onset::Constant),
        (
            json!({"from": {"start_min": 2.0}}),
            Onset::From { start_s: 120.0 },
        ),
        (
            json!({"intermittent": {"period_s": 20.0, "chance": 0.4}}),
            Onset::Intermittent {
                period_s: 20.0,
                chance_ratio: 0.4,
            },
        ),
        (
            json!({"hot": {"above_degc": 60.0}}),
            Onset::Hot { above_k: 333.15 },
        ),
        (
            json!({"vibration": {"above_rpm": 300.0}}),
            Onset::Vibration {
                above_rad_per_s: 10.0 * std::f64::consts::PI,
            },
        ),
    ];
    let mut file: Value = serde_json::from_str(JOB).expect("JSON");
    let faults = [
        "capacitor_low",
        "supply_low",
        "belt_very_loose",
        "lid_switch_open",
        "motor_bearings_dry",
    ];
    file["faults"] = faults
        .iter()
        .zip(&onsets)
        .map(|(id, (onset, _))| json!({"id": id, "severity": 1.0, "onset": onset}))
        .collect();
    let job = scenario::job_from_text("five.json", "five", &file.to_string());
    let job = Job::new(Arc::new(job.expect("a sound job")), 1).expect("starts");
    let got: Vec<Onset> = job
        .machine()
        .setup()
        .faults
        .iter()
        .filter_map(|f| f.onset)
        .collect();
    for ((_, want), got) in onsets.iter().zip(got) {
        assert!(
            format!("{got:?}")[..6] == format!("{want:?}")[..6],
            "{got:?} for {want:?}"
        );
    }
    file["faults"][2]["onset"] = json!({"intermittent": {"period_s": -1.0, "chance": 0.4}});
    let told = scenario::job_from_text("five.json", "five", &file.to_string()).expect_err("wrong");
    assert!(told.to_string().contains("faults[2].onset"), "{told}");
}
