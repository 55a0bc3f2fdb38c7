//! Every alarm is reachable, calls, and ends by the start key once its cause is gone.

use crate::control::alarms::Alarm;
use crate::control::display::Message;
use crate::control::io::Key;
use crate::control::states::State;
use crate::control::tests::stub::FRESH;
use crate::control::tests::stub::Rig;
use crate::control::tests::stub::gravity_model;

fn assert_alarm(rig: &Rig, alarm: Alarm) {
    assert_eq!(rig.control.alarm(), Some(alarm), "{:?}", rig.state());
    let message = rig.last.map(|last| last.display.message);
    assert_eq!(message, Some(Message::Alarm(alarm)));
}

#[test]
fn a_shut_tap_is_called_after_twenty_minutes() {
    let mut rig = Rig::ready();
    rig.fill_pa_per_s = 0.0;
    rig.press(Key::Start);
    rig.run(1199.0);
    assert_eq!(rig.state(), State::Fill);
    rig.run(2.0);
    assert_alarm(&rig, Alarm::FillsTooSlowly);
    assert!(rig.last.is_some_and(|last| !last.loads.inlet_valve));
    rig.fill_pa_per_s = 20.0;
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::Fill);
    rig.run_until(State::Agitate, 200.0);
}

#[test]
fn a_blocked_drain_is_called_after_ten_minutes() {
    let mut rig = Rig::ready();
    rig.pressure_pa = 2000.0;
    rig.drain_pa_per_s = 0.0;
    while rig.control.settings().program != 4 {
        rig.press(Key::Program);
    }
    rig.press(Key::Start);
    rig.run(598.0);
    assert_eq!(rig.state(), State::Drain);
    rig.run(3.0);
    assert_alarm(&rig, Alarm::DrainsTooSlowly);
}

#[test]
fn the_fourth_knock_in_a_block_is_called() {
    let mut rig = Rig::ready().spinning();
    for _ in 0..3 {
        rig.open_lid_for(0.3);
        rig.run(1.0);
        assert_eq!(rig.state(), State::UnbalanceBrake);
        rig.run_until(State::UnbalanceFill, 11.0);
        rig.run_until(State::UnbalanceAgitate, 200.0);
        rig.run_until(State::UnbalanceDrain, 61.0);
        rig.run_until(State::SpinStep, 200.0);
        rig.run(10.0);
    }
    rig.open_lid_for(0.3);
    rig.run(1.0);
    assert_alarm(&rig, Alarm::BasketKeepsSwinging);
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::SpinStep);
}

#[test]
fn a_finished_block_forgets_its_knocks() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    for _ in 0..2 {
        for _ in 0..3 {
            rig.run_until(State::SpinStep, 3000.0);
            rig.run(10.0);
            rig.open_lid_for(0.3);
            rig.run(1.0);
            assert_eq!(rig.state(), State::UnbalanceBrake);
        }
        rig.run_until(State::Brake, 3000.0);
        rig.run(10.0);
    }
    assert_eq!(rig.control.alarm(), None);
}

#[test]
fn a_lid_left_open_in_spin_is_called_after_ten_minutes() {
    let mut rig = Rig::ready().spinning();
    rig.inputs.lid_input_closed = false;
    rig.run(598.0);
    assert_eq!(rig.state(), State::PauseLid);
    rig.run(5.0);
    assert_alarm(&rig, Alarm::LidIsOpen);
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::Alarm, "the lid is still open");
    rig.inputs.lid_input_closed = true;
    rig.run(1.0);
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::SpinFull);
}

#[test]
fn a_silent_sensor_is_called_at_the_self_check() {
    let mut rig = Rig::new(gravity_model(), FRESH);
    rig.has_pulses = false;
    rig.run(3.1);
    assert_alarm(&rig, Alarm::LevelNotPlausible);
    rig.has_pulses = true;
    rig.tick();
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::SelfCheck);
    rig.run_until(State::Ready, 4.0);
}

#[test]
fn a_sensor_lost_in_the_wash_is_called() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run(100.0);
    rig.has_pulses = false;
    rig.run(6.0);
    assert_alarm(&rig, Alarm::LevelNotPlausible);
}

#[test]
fn an_overflow_is_drained_for_two_minutes() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run(10.0);
    rig.pressure_pa = 3600.0;
    rig.drain_pa_per_s = 0.0;
    rig.run(2.0);
    assert_alarm(&rig, Alarm::OverflowDanger);
    let is_draining = |rig: &Rig| rig.last.is_some_and(|last| last.loads.drain_actuator);
    assert!(is_draining(&rig));
    rig.run(118.0);
    assert!(is_draining(&rig));
    rig.run(2.0);
    assert!(!is_draining(&rig));
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::Alarm, "the water still stands too high");
}

#[test]
fn the_call_sounds_ten_seconds_a_minute_for_ten_minutes() {
    let mut rig = Rig::ready();
    rig.fill_pa_per_s = 0.0;
    rig.press(Key::Start);
    rig.run_until(State::Alarm, 1300.0);
    let n_ticks = 1 + (0..7999).filter(|_| rig.tick().loads.buzzer).count();
    assert_eq!(n_ticks, 10 * 100);
}
