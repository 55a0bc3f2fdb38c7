//! Whole machines in motion: what a wash comes to, what faults make of it, and that the same log
//! always gives the same bits.

use std::sync::Arc;

use tubwright::machine::ActiveFault;
use tubwright::machine::CycleFigures;
use tubwright::machine::Machine;
use tubwright::machine::MachineModel;
use tubwright::machine::Setup;
use tubwright::scenario::machines;
use tubwright::units::rpm_from_rad_per_s;

fn model(id: &str) -> Arc<MachineModel> {
    Arc::clone(&machines().expect("shipped files are sound")[id].model)
}

fn machine(id: &str, faults: &[&str]) -> Machine {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    let mut machine = Machine::new(&model(id), Setup::of_faults(&faults, 7)).expect("known faults");
    machine.settle_in(4.0, 298.15);
    machine.stand_ready();
    machine
}

fn figures(id: &str, faults: &[&str]) -> CycleFigures {
    machine(id, faults)
        .trial()
        .expect("the wiring can be solved")
}

fn assert_within(what: &str, value: f64, low: f64, high: f64) {
    assert!(
        (low..=high).contains(&value),
        "{what}: {value} is not within {low} to {high}"
    );
}

/// Figures of a normal wash of 4 kg at 0.3 MPa: scipy, with the electrical sheet's motor where the
/// motor decides (spin about 750 r/min, common practice for this drive).
#[test]
fn a_healthy_wash_takes_its_time_and_ends_dry() {
    let f = figures("P", &[]);
    assert_eq!(f.alarm, None);
    assert_within("fill, s", f.fill_s, 240.0, 256.0);
    assert_within("level, m", f.level_m, 0.288, 0.294);
    assert_within(
        "pulsator, r/min",
        rpm_from_rad_per_s(f.pulsator_forward_rad_per_s),
        140.0,
        155.0,
    );
    assert_within("spin, r/min", f.spin_rpm(), 740.0, 760.0);
    assert_within("moisture", f.moisture_ratio, 0.76, 0.80);
    assert_within("water, kg", f.water_kg, 132.0, 144.0);
    assert_within("length, s", f.length_s, 2950.0, 3150.0);
    assert_within("stop, s", f.stop_s, 2.0, 4.0);
    assert_eq!(f.trips, 0, "a healthy motor's protector stays closed");
    assert_within("cabinet to earth, ohm", f.earth_path_ohm, 0.29, 0.32);
}

#[test]
fn all_three_machines_wash_to_the_end() {
    for id in ["P", "T", "N"] {
        let f = figures(id, &[]);
        assert_eq!(f.alarm, None, "{id}");
        assert_eq!(f.trips, 0, "{id}: the protector stays closed");
        assert_within(&format!("{id}: moisture"), f.moisture_ratio, 0.6, 0.95);
        assert_within(
            &format!("{id}: water on the floor"),
            f.puddle_kg,
            0.0,
            0.001,
        );
        assert!(
            f.pulsator_reverse_rad_per_s > 10.0,
            "{id}: washes both ways"
        );
    }
}

#[test]
fn advancing_in_parts_is_advancing_at_once() {
    let mut whole = machine("P", &["capacitor_low"]);
    whole.start_program();
    let mut parts = whole.clone();
    whole.advance(4321);
    for ticks in [1, 7, 10, 13, 290, 1000, 3000] {
        parts.advance(ticks);
    }
    assert_eq!(whole.tick(), parts.tick());
    assert_eq!(whole.state_hash(), parts.state_hash());
}

#[test]
fn the_state_hash_tells_a_charged_machine_from_a_discharged_one() {
    let mut charged = machine("P", &[]);
    charged.set_plugged(false);
    let mut safe = charged.clone();
    assert_eq!(charged.state_hash(), safe.state_hash());
    safe.discharge_plug_pins();
    assert_ne!(charged.state_hash(), safe.state_hash());
}

#[test]
fn no_fault_of_the_catalogue_stops_the_arithmetic() {
    for id in ["P", "T", "N"] {
        for fault in &model(id).faults {
            let mut machine = machine(id, &[&fault.id]);
            machine.start_program();
            machine.advance(3000);
            assert_eq!(machine.trouble(), None, "{id} {}", fault.id);
            assert!(machine.plant().state().is_finite(), "{id} {}", fault.id);
        }
    }
}

/// What is fitted stands when the plug has been out for two minutes, whatever rubs in it. Fact of the trade,
/// common practice.
#[test]
fn a_machine_unplugged_comes_to_rest_whatever_its_fault_and_in_any_degree() {
    const MOMENTS: usize = 40;
    let at_rest = |unplugged: &Machine| {
        let mut machine = unplugged.clone();
        machine.set_plugged(false);
        machine.advance(1200);
        let drive = &machine.plant().state().drive;
        drive.rotor_rad_per_s.abs() < 0.01 && drive.pulsator_rad_per_s.abs() < 0.01
    };
    let mut restless = Vec::new();
    for id in ["P", "T", "N"] {
        for fault in model(id).faults.iter().filter(|f| f.is_graded) {
            for tenths in [4, 7, 10] {
                let active = ActiveFault {
                    severity_ratio: 0.1 * f64::from(tenths) - 0.017,
                    ..ActiveFault::constant(&fault.id)
                };
                let mut machine =
                    Machine::new(&model(id), Setup::of_faults(&[active], 7)).expect("known faults");
                machine.settle_in(4.0, 298.15);
                machine.stand_ready();
                machine.start_program();
                machine.advance(2700);
                for moment in 0..MOMENTS {
                    machine.advance(737);
                    if !at_rest(&machine) {
                        restless.push(format!("{id} {} {tenths} {moment}", fault.id));
                    }
                }
            }
        }
    }
    assert!(restless.is_empty(), "{restless:#?}");
}

// Facts of the trade, common practice: each must come out of the physics.

#[test]
fn a_failed_switch_or_transformer_leaves_the_control_dark() {
    for fault in ["E11", "E17"] {
        let mut machine = machine("P", &[fault]);
        machine.press_power();
        machine.advance(50);
        assert_eq!(machine.display_words(), "", "{fault}");
    }
}

#[test]
fn a_lid_switch_that_does_not_close_gives_no_spin() {
    let f = figures("P", &["E31"]);
    assert!(f.spin_rpm() < 5.0, "{}", f.spin_rpm());
    assert!(f.pulsator_forward_rad_per_s > 10.0, "the wash itself runs");
}

#[test]
fn a_welded_lid_switch_does_not_stop_the_basket() {
    assert!(figures("P", &["E32"]).stop_s > 20.0);
}

#[test]
fn a_bridge_stands_in_for_the_lid_switch_and_guards_nothing() {
    let mut bridged = machine("P", &["E31"]);
    bridged.bridge_lid(true);
    let f = bridged.clone().trial().expect("the wiring can be solved");
    assert_within("spin, r/min", f.spin_rpm(), 740.0, 760.0);
    assert!(f.stop_s > 20.0, "the lid no longer stops it: {}", f.stop_s);
    bridged.bridge_lid(false);
    let f = bridged.trial().expect("the wiring can be solved");
    assert!(f.spin_rpm() < 5.0, "{}", f.spin_rpm());
}

#[test]
fn a_dead_inlet_valve_lets_no_water_in_and_a_leaking_one_creeps() {
    let dead = figures("P", &["E54"]);
    assert!(dead.level_m < 0.01 && dead.alarm.is_some());
    let mut leaking = machine("P", &["M08"]);
    leaking.advance(10 * 3600);
    assert!(leaking.water_kg() > 5.0, "{}", leaking.water_kg());
}

#[test]
fn a_low_capacitor_draws_more_and_starts_less() {
    let (low, good) = (figures("P", &["E51"]), figures("P", &[]));
    assert!(low.winding_k > good.winding_k);
    assert!(low.pulsator_forward_rad_per_s < good.pulsator_forward_rad_per_s);
}

#[test]
fn a_lever_out_of_its_link_drains_but_does_not_spin() {
    let f = figures("P", &["M43"]);
    assert!(f.spin_rpm() < 1.0);
    assert_within("drain, s", f.drain_s, 70.0, 130.0);
    assert!(f.moisture_ratio > 2.0);
}

#[test]
fn one_dead_board_output_washes_one_way_only() {
    let f = figures("P", &["E24"]);
    assert!(f.pulsator_forward_rad_per_s > 10.0);
    assert!(f.pulsator_reverse_rad_per_s < 3.0);
}

#[test]
fn a_shorted_motor_lead_trips_the_house() {
    let mut machine = machine("P", &["E79"]);
    machine.set_residual_limit(0.0225);
    machine.start_program();
    machine.advance(4000);
    assert!(machine.supply_tripped());
    assert_eq!(machine.display_words(), "");
}
