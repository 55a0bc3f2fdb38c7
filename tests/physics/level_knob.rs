//! The pressure switch of the timer machine: two changeovers, and a knob that chooses one of them.
//! Set pressures, contacts and jumpers: the data sheet.

use std::sync::Arc;

use tubwright::control::io::Key;
use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::scenario::machines;

/// The timer machine without laundry, its knob turned so many positions on.
fn machine(turns: u32, faults: &[&str]) -> Machine {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    let model = Arc::clone(&machines().expect("shipped files are sound")["T"].model);
    let mut machine = Machine::new(&model, Setup::of_faults(&faults, 1)).expect("known");
    machine.settle_in(0.0, 293.15);
    machine.stand_ready();
    (0..turns).for_each(|_| machine.press_key(Key::Level));
    machine.start_program();
    machine
}

/// Runs until the water stops or half an hour has gone by; level, m.
fn filled_m(machine: &mut Machine) -> f64 {
    for _ in 0..1800 {
        machine.advance(10);
        if !machine.valve_energised() && machine.plant().level_m() > 0.05 {
            break;
        }
    }
    machine.plant().level_m()
}

#[test]
fn the_knob_chooses_at_which_level_it_washes() {
    // Data sheet: without load 1350 Pa stands at 27.9 L and 2625 Pa at 51.9 L; areas 0.160 and
    // 0.183 m2 with the step at 50 mm give the levels.
    let level_m = |litres: f64| 0.05 + (litres / 1000.0 - 0.008) / 0.183;
    for (turns, name, litres) in [(0, "High", 51.9), (1, "Low", 27.9), (2, "High", 51.9)] {
        let mut machine = machine(turns, &[]);
        assert_eq!(machine.level_position_name(), Some(name));
        let (got, want) = (filled_m(&mut machine), level_m(litres));
        assert!((got - want).abs() < 0.004, "{name}: {got} m for {want} m");
        let washes = (0..60).any(|_| {
            machine.advance(1);
            machine.motor_energised()
        });
        assert!(washes, "{name}: it washes");
    }
}

#[test]
fn each_section_moves_at_its_own_pressure() {
    // Between the two levels the low section has changed over and the high one has not.
    let mut machine = machine(0, &[]);
    while machine.plant().level_m() < 0.2 {
        machine.advance(10);
    }
    assert_eq!(
        machine.plant().readings().is_level_full,
        [true, false, false]
    );
    assert!(machine.valve_energised(), "it goes on filling");
}

#[test]
fn a_dead_contact_stops_the_level_it_belongs_to_and_no_other() {
    // Common practice: a change of level tells which contact is dead.
    for (fault, level_that_fills, level_that_does_not) in [
        ("pressure_switch_open", 0, 1),
        ("pressure_switch_high_open", 1, 0),
    ] {
        assert!(
            filled_m(&mut machine(level_that_fills, &[fault])) > 0.1,
            "{fault}"
        );
        assert!(
            filled_m(&mut machine(level_that_does_not, &[fault])) < 0.01,
            "{fault}"
        );
    }
}

#[test]
fn a_switch_that_does_not_change_over_never_washes() {
    for turns in [0, 1] {
        let mut machine = machine(turns, &["E74"]);
        machine.advance(20 * 600);
        assert!(machine.valve_energised(), "it fills on");
        assert!(machine.plant().level_m() > 0.39, "up to the overflow");
        assert!(!machine.motor_energised());
    }
}
