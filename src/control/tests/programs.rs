//! Whole programs.

use proptest::prelude::*;

use crate::control::display::Message;
use crate::control::io::Key;
use crate::control::io::Keys;
use crate::control::io::Loads;
use crate::control::settings::Settings;
use crate::control::states::State;
use crate::control::tests::stub::FRESH;
use crate::control::tests::stub::Rig;
use crate::control::tests::stub::gravity_model;

/// States and start times, in s from switching on, of a run to the end.
fn starts(rig: &mut Rig) -> Vec<(State, f64)> {
    let mut starts = vec![(State::SelfCheck, 0.0)];
    for _ in 0..60_000 {
        let at_s = rig.n_ticks as f64 / 10.0;
        if rig.state() == State::Ready {
            rig.inputs.keys = Keys::only(Key::Start);
        }
        rig.tick();
        rig.inputs.keys = Keys::NONE;
        let state = rig.state();
        // Absorption makes the first fill longer than the rinses.
        rig.fill_pa_per_s = 2625.0 / if at_s < 1000.0 { 247.0 } else { 227.0 };
        if starts.last().is_some_and(|last| last.0 != state) {
            starts.push((state, at_s));
        }
        if state == State::End {
            break;
        }
    }
    starts
}

#[test]
fn the_normal_program_keeps_its_timetable() {
    // Source: the design sheet's computed timetable for 4 kg at the high level.
    use State::*;
    let expected = [
        (SelfCheck, 0.0),
        (Ready, 3.0),
        (Fill, 3.1),
        (Agitate, 251.0),
        (Soak, 491.0),
        (Agitate, 731.0),
        (Drain, 1212.0),
        (SpinStep, 1327.0),
        (SpinFull, 1387.0),
        (Brake, 1477.0),
        (Fill, 1487.0),
        (Agitate, 1715.0),
        (Drain, 1895.0),
        (SpinStep, 2010.0),
        (SpinFull, 2070.0),
        (Brake, 2161.0),
        (Fill, 2171.0),
        (Agitate, 2399.0),
        (Drain, 2579.0),
        (SpinStep, 2694.0),
        (SpinFull, 2754.0),
        (Brake, 3054.0),
        (End, 3064.0),
    ];
    let mut rig = Rig::new(gravity_model(), FRESH);
    let starts = starts(&mut rig);
    assert_eq!(starts.len(), expected.len(), "{starts:?}");
    for (got, want) in starts.iter().zip(expected) {
        assert_eq!(got.0, want.0);
        assert!((got.1 - want.1).abs() <= 2.0, "{got:?} against {want:?}");
    }
}

#[test]
fn every_program_ends_by_itself_and_empty() {
    for program in 0..5 {
        let mut rig = Rig::new(gravity_model(), Settings { program, ..FRESH });
        let starts = starts(&mut rig);
        assert_eq!(
            starts.last().map(|last| last.0),
            Some(State::End),
            "{program}"
        );
        assert!(rig.pressure_pa < 129.0);
        assert_eq!(rig.control.alarm(), None);
    }
}

#[test]
fn the_wash_strokes_follow_the_level() {
    for (level, on_ticks, off_ticks) in [(0, 8, 8), (1, 11, 7), (2, 14, 7)] {
        let mut rig = Rig::new(gravity_model(), Settings { level, ..FRESH });
        rig.run_until(State::Ready, 10.0);
        rig.press(Key::Start);
        rig.run_until(State::Agitate, 300.0);
        let mut stroke = vec![rig.last.map_or(Loads::default(), |last| last.loads)];
        stroke.extend((0..2 * (on_ticks + off_ticks) - 1).map(|_| rig.tick().loads));
        let n_forward = stroke.iter().filter(|loads| loads.motor_forward).count();
        let n_reverse = stroke.iter().filter(|loads| loads.motor_reverse).count();
        assert_eq!((n_forward, n_reverse), (on_ticks, on_ticks));
        assert!(stroke[..on_ticks].iter().all(|loads| loads.motor_forward));
    }
}

#[test]
fn a_leaking_tub_is_refilled_and_in_the_end_remarked() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    rig.run_until(State::Agitate, 300.0);
    let mut n_refills = 0;
    let mut was_open = false;
    for _ in 0..2300 {
        rig.pressure_pa -= 3.0;
        rig.fill_pa_per_s = 120.0;
        let is_open = rig.tick().loads.inlet_valve;
        n_refills += u32::from(is_open && !was_open);
        was_open = is_open;
    }
    assert!(n_refills > 5, "{n_refills}");
    let warning = rig.last.and_then(|last| last.display.warning);
    assert_eq!(
        warning.map(|warning| warning.words()),
        Some("Water keeps leaving")
    );
    assert_eq!(rig.state(), State::Agitate);
}

#[test]
fn the_pump_machine_gives_the_clutch_its_time_before_the_motor() {
    let mut rig = Rig::pump_ready();
    while rig.control.settings().program != 4 {
        rig.press(Key::Program);
    }
    rig.press(Key::Start);
    rig.run_until(State::SpinStep, 300.0);
    let first = rig.last.map_or(Loads::default(), |last| last.loads);
    assert!(first.drain_actuator && first.drain_pump && !first.motor_forward);
    let n_waiting = (0..200)
        .take_while(|_| !rig.tick().loads.motor_forward)
        .count();
    assert_eq!(n_waiting, 59);
}

#[test]
fn warm_water_opens_both_valves_in_the_wash_only() {
    let mut rig = Rig::pump_ready();
    rig.press(Key::Temperature);
    rig.press(Key::Start);
    rig.run(5.0);
    let loads = rig.last.map_or(Loads::default(), |last| last.loads);
    assert!(loads.inlet_valve && loads.hot_valve);
    rig.run_until(State::Brake, 3000.0);
    rig.run_until(State::Fill, 20.0);
    rig.run(5.0);
    let loads = rig.last.map_or(Loads::default(), |last| last.loads);
    assert!(loads.inlet_valve && !loads.hot_valve);
}

#[test]
fn a_delay_left_on_only_waits() {
    let mut rig = Rig::new(
        gravity_model(),
        Settings {
            delay_min: 120,
            ..FRESH
        },
    );
    rig.run_until(State::Ready, 10.0);
    let display = rig.press(Key::Start).display;
    assert_eq!(display.message, Message::StartsLater);
    assert_eq!(display.minutes_left, Some(120));
    rig.run(3600.0);
    assert_eq!(rig.state(), State::DelayedStart);
    rig.run(3600.0);
    assert_eq!(rig.state(), State::Fill);
}

#[test]
fn locked_keys_do_nothing_until_the_lock_is_held() {
    let mut rig = Rig::new(
        gravity_model(),
        Settings {
            keys_locked: true,
            ..FRESH
        },
    );
    rig.run_until(State::Ready, 10.0);
    assert!(rig.press(Key::Start).display.keys_locked);
    assert_eq!(rig.state(), State::Ready);
    rig.inputs.keys = Keys::only(Key::Lock);
    rig.run(3.0);
    rig.inputs.keys = Keys::NONE;
    rig.tick();
    rig.press(Key::Start);
    assert_eq!(rig.state(), State::Fill);
}

#[test]
fn a_faulty_table_entry_changes_what_is_done() {
    let mut model = gravity_model();
    model.times.fill_limit_s = 60.0;
    let mut rig = Rig::new(model, FRESH);
    rig.run_until(State::Ready, 10.0);
    rig.press(Key::Start);
    rig.run_until(State::Alarm, 70.0);
}

#[test]
fn the_minutes_shown_fall_to_the_end() {
    let mut rig = Rig::ready();
    rig.press(Key::Start);
    let first = rig.last.and_then(|last| last.display.minutes_left);
    assert_eq!(first, Some(52)); // 3075 s of usual step times, rounded up
    rig.run(251.0 + 240.0);
    let later = rig.last.and_then(|last| last.display.minutes_left);
    assert_eq!(later, Some(44)); // 2595 s at the start of the soak
}

fn any_key() -> impl Strategy<Value = Keys> {
    prop_oneof![
        30 => Just(Keys::NONE),
        3 => Just(Keys::only(Key::Start)),
        1 => Just(Keys::only(Key::Program)),
        1 => Just(Keys::only(Key::Service)),
        1 => Just(Keys::only(Key::Power)),
        1 => Just(Keys::only(Key::Start).with(Key::Level)),
    ]
}

/// Minutes of random treatment: length in ticks, keys, lid, lever, power, level pressure.
fn treatments() -> impl Strategy<Value = Vec<(u16, Keys, bool, bool, bool, f64)>> {
    let one = (
        1_u16..400,
        any_key(),
        prop::bool::weighted(0.9),
        prop::bool::weighted(0.95),
        prop::bool::weighted(0.97),
        0.0..3600.0,
    );
    prop::collection::vec(one, 1..60)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn prop_no_treatment_switches_what_must_not_be_switched(
        treatments in treatments(), is_pump in any::<bool>(),
    ) {
        let mut rig = if is_pump { Rig::pump_ready() } else { Rig::ready() };
        let mut since_forward = u32::MAX;
        let mut since_reverse = u32::MAX;
        for (n_ticks, keys, lid, lever, powered, pressure_pa) in treatments {
            rig.pressure_pa = pressure_pa;
            rig.inputs.lid_input_closed = lid;
            rig.inputs.powered = powered;
            if is_pump {
                rig.inputs.unbalance_input_closed = Some(lever);
            }
            for tick in 0..n_ticks {
                rig.inputs.keys = if tick == 0 { keys } else { Keys::NONE };
                let loads = rig.tick().loads;
                prop_assert!(!(loads.motor_forward && loads.motor_reverse));
                prop_assert!(!(loads.motor_reverse && loads.drain_actuator));
                prop_assert!(!(loads.motor_forward && since_reverse < 3));
                prop_assert!(!(loads.motor_reverse && since_forward < 3));
                let inlet = loads.inlet_valve || loads.hot_valve;
                prop_assert!(!(inlet && (loads.drain_actuator || loads.drain_pump)));
                prop_assert!(powered || loads == Loads::default());
                let spins = loads.motor_forward && loads.drain_actuator;
                prop_assert!(lid || !spins, "spins with an open lid input");
                since_forward = if loads.motor_forward { 0 } else { since_forward.saturating_add(1) };
                since_reverse = if loads.motor_reverse { 0 } else { since_reverse.saturating_add(1) };
            }
        }
    }

    #[test]
    fn prop_the_same_treatment_gives_the_same_state(treatments in treatments()) {
        let mut rigs = [Rig::ready(), Rig::ready()];
        for (n_ticks, keys, lid, _, powered, _) in treatments {
            for rig in &mut rigs {
                rig.inputs.keys = keys;
                rig.inputs.lid_input_closed = lid;
                rig.inputs.powered = powered;
                rig.run(f64::from(n_ticks) / 10.0);
            }
            prop_assert_eq!(rigs[0].hash(), rigs[1].hash());
            prop_assert_eq!(&rigs[0].control, &rigs[1].control);
        }
    }
}
