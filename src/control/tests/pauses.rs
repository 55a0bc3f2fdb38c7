//! Lid, lever, keys, supply and power failure.

use crate::control::display::Message;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::control::io::Loads;
use crate::control::states::State;
use crate::control::tests::stub::Rig;

fn loads(rig: &Rig) -> Loads {
    rig.last.map_or(Loads::default(), |last| last.loads)
}

#[test]
fn on_a_shared_input_a_short_opening_is_a_knock_and_a_long_one_a_lid() {
    let mut knocked = Rig::ready().spinning();
    knocked.open_lid_for(0.9);
    knocked.run(1.0);
    assert_eq!(knocked.state(), State::UnbalanceBrake);

    let mut opened = Rig::ready().spinning();
    opened.open_lid_for(1.2);
    assert_eq!(opened.state(), State::PauseLid);
    opened.run(0.6);
    assert_eq!(opened.state(), State::SpinFull);
}

#[test]
fn an_opening_in_spin_stops_the_motor_in_the_same_tick() {
    let mut rig = Rig::ready().spinning();
    rig.inputs.lid_input_closed = false;
    assert_eq!(rig.tick().loads, Loads::default());
}

#[test]
fn a_lever_stuck_open_on_a_shared_input_looks_like_an_open_lid() {
    let mut rig = Rig::ready();
    rig.inputs.lid_input_closed = false;
    rig.press(Key::Start);
    rig.run_until(State::PauseLid, 2000.0);
    assert_eq!(
        rig.last.map(|last| last.display.message),
        Some(Message::CloseLid)
    );
}

#[test]
fn a_contact_that_chatters_for_long_counts_as_an_open_lid() {
    let mut rig = Rig::ready().spinning();
    for tick in 0..60 {
        rig.inputs.lid_input_closed = tick % 3 == 0;
        rig.tick();
    }
    assert_eq!(rig.state(), State::PauseLid);
}

#[test]
fn with_a_lever_input_of_its_own_a_trip_is_a_knock_however_long() {
    let mut rig = Rig::pump_ready().spinning();
    rig.inputs.unbalance_input_closed = Some(false);
    rig.run(5.0);
    assert_eq!(rig.state(), State::UnbalanceBrake);
    let mut lid = Rig::pump_ready().spinning();
    lid.open_lid_for(0.3);
    assert_eq!(lid.state(), State::PauseLid);
}

#[test]
fn only_machines_that_guard_it_stop_the_wash_for_the_lid() {
    for (mut rig, expected) in [
        (Rig::ready(), State::Agitate),
        (Rig::pump_ready(), State::PauseLid),
    ] {
        rig.press(Key::Start);
        rig.run_until(State::Agitate, 300.0);
        rig.run(10.0);
        rig.inputs.lid_input_closed = false;
        rig.run(5.0);
        assert_eq!(rig.state(), expected);
    }
}

#[test]
fn a_lid_pause_keeps_the_time_and_restarts_the_stroke() {
    let mut rig = Rig::pump_ready();
    rig.press(Key::Start);
    rig.run_until(State::Agitate, 300.0);
    rig.run(100.0);
    let before_s = rig.control.in_state_s();
    rig.open_lid_for(60.0);
    rig.run_until(State::Agitate, 2.0);
    assert!((rig.control.in_state_s() - before_s).abs() < 0.25);
    assert!(loads(&rig).motor_forward, "the pattern begins anew");
}

#[test]
fn after_a_pause_the_spin_waits_for_the_clutch() {
    let mut rig = Rig::ready().spinning();
    rig.open_lid_for(10.0);
    rig.run_until(State::SpinFull, 2.0);
    assert!(loads(&rig).drain_actuator && !loads(&rig).motor_forward);
    rig.run(6.0);
    assert!(loads(&rig).motor_forward);
}

#[test]
fn the_start_key_pauses_and_goes_on() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run(50.0);
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::PauseKey);
    assert_eq!(loads(&rig), Loads::default());
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::Fill);
    rig.press(Key::Start);
    rig.press(Key::Program);
    assert_eq!(rig.state(), State::Ready);
}

#[test]
fn a_key_stuck_down_makes_the_others_dead() {
    let mut rig = Rig::ready();
    rig.inputs.keys = Keys::only(Key::Level);
    rig.tick();
    rig.inputs.keys = Keys::only(Key::Level).with(Key::Start);
    rig.tick();
    rig.inputs.keys = Keys::only(Key::Level);
    rig.run(1.0);
    assert_eq!(rig.state(), State::Ready);
}

#[test]
fn a_short_power_failure_waits_for_the_start_key_or_goes_on_by_itself() {
    for (mut rig, back) in [
        (Rig::ready(), State::PausePower),
        (Rig::pump_ready(), State::Agitate),
    ] {
        rig.press(Key::Start);
        rig.run_until(State::Agitate, 300.0);
        rig.run(100.0);
        let before_s = rig.control.in_state_s();
        rig.inputs.powered = false;
        rig.run(1790.0);
        assert_eq!(loads(&rig), Loads::default());
        rig.inputs.powered = true;
        rig.tick();
        assert_eq!(rig.state(), back);
        if back == State::PausePower {
            rig.press(Key::Start);
        }
        assert_eq!(rig.state(), State::Agitate);
        assert!((rig.control.in_state_s() - before_s).abs() < 0.35);
    }
}

#[test]
fn a_long_power_failure_forgets_the_program() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run(100.0);
    rig.inputs.powered = false;
    rig.run(1801.0);
    rig.inputs.powered = true;
    rig.tick();
    assert_eq!(rig.state(), State::SelfCheck);
}

#[test]
fn a_supply_out_of_range_pauses_with_a_remark_and_goes_on_by_itself() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run(20.0);
    rig.inputs.supply_v = Some(160.0);
    rig.run(4.8);
    assert_eq!(rig.state(), State::Fill);
    rig.run(0.3);
    assert_eq!(rig.state(), State::PauseSupply);
    let warning = rig.last.and_then(|last| last.display.warning);
    assert_eq!(
        warning.map(|warning| warning.words()),
        Some("Supply voltage out of range")
    );
    rig.inputs.supply_v = Some(230.0);
    rig.run(5.1);
    assert_eq!(rig.state(), State::Fill);
    assert_eq!(rig.last.and_then(|last| last.display.warning), None);
}

#[test]
fn a_panel_without_a_power_key_wakes_by_any_key() {
    let mut rig = Rig::ready();
    rig.run(601.0);
    assert_eq!(rig.state(), State::Off);
    assert_eq!(
        rig.last.map(|last| last.display.message),
        Some(Message::Dark)
    );
    rig.press(Key::Level);
    assert_eq!(rig.state(), State::SelfCheck);
}
