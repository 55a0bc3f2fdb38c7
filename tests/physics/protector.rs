//! How long a motor in trouble lasts before its protector opens, on every machine, and that it comes
//! back once it has cooled.
//!
//! Source of the times: an independent program in another language (lumped thermal network beside a
//! double revolving field motor on a stiff supply, room at 25 °C; table of the motor sheet). Here
//! the motor hangs on its machine's whole wiring, whose supply sags: it is raised until the stalled
//! motor takes the input that the same source gives (586, 710 and 903 W).

use std::sync::Arc;

use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::WiringChange;
use tubwright::plant::harness::motor::copper_ratio;
use tubwright::plant::harness::solving::Scratch;
use tubwright::plant::heat;
use tubwright::plant::heat::HeatInputs;
use tubwright::scenario::machines;

const ROOM_K: f64 = 298.15;
const STEP_S: f64 = 0.5;

/// Core to room with the fan, K/W, of the source; 1.6 times as much without. The shipped machines
/// cool better while they stand.
fn core_air_k_per_w(id: &str) -> f64 {
    match id {
        "P" => 0.45,
        "T" => 0.42,
        _ => 0.38,
    }
}

/// Supply at which the stalled motor takes the input it takes on a stiff one, V.
fn raised_v(id: &str, nominal_v: f64, stalled_w: f64) -> f64 {
    let pack = &machines().expect("shipped files are sound")[id];
    let wired = Arc::new(pack.model.wiring.clone());
    let harness = Harness::new(&Wiring::healthy(&wired), &[]).expect("solvable");
    let contacts = harness.contacts(&wired.state("agitA").expect("a state").closed);
    let reduced = harness.reduced(contacts).expect("solvable");
    let mut scratch = Scratch::default();
    let flow = harness
        .flow(&reduced, 1.0, COLD_K, &mut scratch)
        .expect("solvable");
    nominal_v * (stalled_w / flow.input_w).sqrt()
}

/// Seconds until the protector opens with the motor live in direction A at a slip; none within half
/// an hour.
fn trip_s(id: &str, changes: &[WiringChange], slip_ratio: f64) -> Option<f64> {
    let pack = &machines().expect("shipped files are sound")[id];
    let wired = Arc::new(pack.model.wiring.clone());
    let mut wiring = Wiring::healthy(&wired);
    changes.iter().for_each(|change| wiring.apply(change, 1.0));
    let harness = Harness::new(&wiring, &[]).expect("solvable");
    let closed = &wired.state("agitA").expect("a state").closed;
    let contacts = harness.contacts(closed);
    let reduced = harness.reduced(contacts).expect("solvable");
    let machine = Machine::new(&pack.model, Setup::default()).expect("sound");
    let mut p = machine.plant().params().heat.clone();
    let turning_w_per_k = 1.0 / core_air_k_per_w(id);
    p.core_air_w_per_k = turning_w_per_k / 1.6;
    p.fan_w_per_k = turning_w_per_k - p.core_air_w_per_k;
    let sync = wired.motor.params.synchronous_rad_per_s(wired.frequency_hz);
    let mut s = heat::cold(ROOM_K);
    let mut scratch = Scratch::default();
    let steps = (1800.0 / STEP_S) as u32;
    for step in 0..steps {
        let flow = harness
            .flow(&reduced, slip_ratio, s.winding_k, &mut scratch)
            .expect("solvable");
        let mean_k = 0.5 * (s.winding_k[0] + s.winding_k[1]);
        let rotor = (1.0 - slip_ratio) * sync;
        let inputs = HeatInputs {
            copper_w: flow.copper_20c_w.map(|w| w * copper_ratio(mean_k)),
            copper_k: mean_k,
            input_w: flow.input_w,
            shaft_w: flow.torque_n_m * rotor,
            rotor_rad_per_s: rotor,
            air_k: ROOM_K,
        };
        heat::step(&p, &mut s, &inputs, STEP_S, 1.0);
        if s.is_open {
            return Some(f64::from(step) * STEP_S);
        }
    }
    None
}

/// What a fault of the run capacitor changes.
fn capacitor(id: &str, fault: &str) -> Vec<WiringChange> {
    let pack = &machines().expect("shipped files are sound")[id];
    pack.model
        .fault(fault)
        .expect("in the catalogue")
        .wiring
        .clone()
}

#[test]
fn a_stalled_motor_trips_after_a_minute_or_so_on_every_machine() {
    // Seized; capacitor open; capacitor short; 75 % of the voltage and stalled.
    let table = [
        ("P", 230.0, 586.0, [70.0, 71.0, 62.0, 181.0]),
        ("T", 230.0, 710.0, [68.0, 68.0, 60.0, 168.0]),
        ("N", 120.0, 903.0, [64.0, 64.0, 56.0, 156.0]),
    ];
    for (id, nominal_v, stalled_w, expected) in table {
        let v = raised_v(id, nominal_v, stalled_w);
        let full = [WiringChange::SupplyVoltage { v }];
        let low = [WiringChange::SupplyVoltage { v: 0.75 * v }];
        let with = |fault| [full.as_slice(), &capacitor(id, fault)].concat();
        let found = [
            trip_s(id, &full, 1.0),
            trip_s(id, &with("capacitor_open"), 1.0),
            trip_s(id, &with("capacitor_short"), 1.0),
            trip_s(id, &low, 1.0),
        ];
        println!("{id}: {found:?} s against {expected:?} s");
        for (case, (found, expected)) in found.into_iter().zip(expected).enumerate() {
            let ratio = found.unwrap_or(f64::INFINITY) / expected;
            assert!(
                (ratio - 1.0).abs() < 0.10,
                "{id} case {case}: {found:?} s against {expected} s"
            );
        }
    }
}

#[test]
fn a_sound_motor_at_work_never_trips() {
    for (id, slip) in [("P", 0.0789), ("T", 0.0690), ("N", 0.0755)] {
        assert_eq!(trip_s(id, &[], slip), None, "{id}");
    }
}

#[test]
fn a_protector_opens_lets_the_motor_cool_and_closes_again() {
    for id in ["P", "T", "N"] {
        let model = Arc::clone(&machines().expect("shipped files are sound")[id].model);
        let setup = Setup::of_faults(&[ActiveFault::constant("motor_seized")], 1);
        let mut machine = Machine::new(&model, setup).expect("in the catalogue");
        machine.settle_in(3.0, ROOM_K);
        machine.stand_ready();
        machine.start_program();
        let trip_k = machine.plant().params().heat.trip_k;
        let reset_k = machine.plant().params().heat.reset_k;
        let (mut opened_at, mut closed_at) = (None, None);
        for second in 0..7200 {
            machine.advance(10);
            let heat = &machine.plant().state().heat;
            assert!(machine.hottest_winding_k() < trip_k + 8.0, "{id}");
            if heat.is_open && opened_at.is_none() {
                opened_at = Some(second);
                assert!(machine.hottest_winding_k() > trip_k - 2.0, "{id}");
            }
            if opened_at.is_some() && !heat.is_open && closed_at.is_none() {
                closed_at = Some(second);
                assert!(machine.hottest_winding_k() < reset_k + 2.0, "{id}");
            }
        }
        let (opened, closed) = (opened_at.expect("it trips"), closed_at.expect("it closes"));
        assert!(
            (60..1800).contains(&(closed - opened)),
            "{id}: {opened} {closed}"
        );
    }
}
