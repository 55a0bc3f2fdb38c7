//! The service test, step by step.

use crate::control::display::Message;
use crate::control::io::Key;
use crate::control::io::Loads;
use crate::control::states::State;
use crate::control::tests::stub::Rig;

fn in_service() -> Rig {
    let mut rig = Rig::ready();
    rig.press(Key::Service);
    assert_eq!(rig.state(), State::ServiceTest);
    rig
}

/// Goes to a step, numbered from 1, without running the ones before.
fn at_step(number: u32) -> Rig {
    let mut rig = in_service();
    for _ in 1..number {
        rig.press(Key::Start);
    }
    assert_eq!(
        rig.last.and_then(|last| last.display.service_step),
        Some(number)
    );
    rig
}

/// How many ticks a load stays on from the start of the step.
fn on_ticks(rig: &mut Rig, load: impl Fn(Loads) -> bool) -> usize {
    rig.press(Key::Level); // begins the step anew; two ticks have passed
    2 + (0..3000).take_while(|_| load(rig.tick().loads)).count()
}

#[test]
fn each_load_runs_its_time_and_stops_by_itself() {
    let mut valve = at_step(4);
    assert_eq!(on_ticks(&mut valve, |loads| loads.inlet_valve), 100);
    let mut forward = at_step(5);
    assert_eq!(on_ticks(&mut forward, |loads| loads.motor_forward), 50);
    let mut reverse = at_step(6);
    assert_eq!(on_ticks(&mut reverse, |loads| loads.motor_reverse), 50);
    let mut outlet = at_step(7);
    assert_eq!(on_ticks(&mut outlet, |loads| loads.drain_actuator), 100);
}

#[test]
fn the_spin_step_moves_the_clutch_before_the_motor() {
    let mut rig = at_step(8);
    let clutch_only = on_ticks(&mut rig, |loads| {
        loads.drain_actuator && !loads.motor_forward
    });
    assert_eq!(clutch_only, 60);
    let with_motor = 1
        + (0..3000)
            .take_while(|_| rig.tick().loads.motor_forward)
            .count();
    assert_eq!(with_motor, 200);
}

#[test]
fn the_spin_step_refuses_a_tub_with_water() {
    let mut rig = at_step(7);
    rig.pressure_pa = 2000.0;
    rig.press(Key::Start);
    assert_eq!(
        rig.last.map(|last| last.display.message),
        Some(Message::DrainFirst)
    );
    assert_eq!(rig.tick().loads, Loads::default());
}

#[test]
fn the_readings_of_the_service_test_are_the_inputs() {
    let mut rig = at_step(2);
    rig.pressure_pa = 2625.0;
    let level_hz = rig.tick().display.level_hz.unwrap_or(0.0);
    assert!((level_hz - 22_000.0).abs() < 5.0, "{level_hz}");
    rig.pressure_pa = 0.0;
    rig.press(Key::Start);
    rig.inputs.lid_input_closed = false;
    let switches = rig.tick().display.switches;
    assert!(switches.is_some_and(|view| !view.lid_input_closed));
    assert!(switches.is_some_and(|view| view.unbalance_input_closed.is_none()));
}

#[test]
fn an_open_lid_ends_any_step_with_a_load() {
    let mut rig = at_step(5);
    rig.run(1.0);
    rig.inputs.lid_input_closed = false;
    assert_eq!(rig.tick().loads, Loads::default());
    rig.inputs.lid_input_closed = true;
    rig.run(2.0);
    assert_eq!(rig.last.map(|last| last.loads), Some(Loads::default()));
}

#[test]
fn the_last_step_fills_and_drains_and_shows_the_time() {
    let mut rig = at_step(10);
    rig.run(200.0);
    assert!(rig.pressure_pa < 129.0);
    // From 1370 Pa at the stub's (2625 - 129) / 85 Pa/s to 129 Pa: 42 s.
    let seconds = rig.last.and_then(|last| last.display.seconds);
    assert!(
        seconds.is_some_and(|shown| (41..=43).contains(&shown)),
        "{seconds:?}"
    );
}

#[test]
fn the_service_key_leaves_again() {
    let mut rig = in_service();
    rig.press(Key::Service);
    assert_eq!(rig.state(), State::Ready);
}

#[test]
fn a_running_program_does_not_hear_the_service_key() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.press(Key::Service);
    assert_eq!(rig.state(), State::Fill);
}
