//! Instruments that need no circuit, frequency, and the clamp round a cord, against figures from
//! outside: closed forms, the data sheet's table of flows, facts of the trade.

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::event::Event;
use tubwright::bench::event::Refusal;
use tubwright::bench::gauge::Gauge;
use tubwright::bench::notebook::NoteEntry;
use tubwright::bench::recorder::Channel;
use tubwright::bench::recorder::Recorder;

use crate::scene::clamp;
use crate::scene::do_all;
use crate::scene::does;
use crate::scene::gauge;
use crate::scene::gauged;
use crate::scene::job;
use crate::scene::job_of;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::meter;
use crate::scene::off;
use crate::scene::reads;
use crate::scene::scenario;
use crate::scene::spins;
use crate::scene::starts;

const L_PER_MIN: f64 = 1.0 / 60_000.0;
const RPM: f64 = std::f64::consts::PI / 30.0;

fn near(is: f64, would: f64, within: f64, what: &str) {
    assert!(
        (is - would).abs() <= within,
        "{what}: {is}, expected {would} within {within}"
    );
}

/// Flows of the data sheet's table: supply pressure in Pa, L/min (computed outside by orifices in
/// series and a smooth minimum).
#[test]
fn the_jug_finds_the_flows_of_the_data_sheet() {
    for (supply_pa, l_per_min) in [(1.0e4, 2.11), (3.0e4, 7.29), (3.0e5, 11.99)] {
        let mut scenario = scenario("P", &[]);
        scenario
            .site
            .params
            .push(("inlet.supply_pa".to_owned(), supply_pa));
        let mut job = job_of(scenario);
        does(&mut job, Action::Lid { open: true });
        starts(&mut job);
        let flow = gauged(&mut job, Gauge::JugAndWatch, "tub");
        // Four standard deviations of a jug by the watch, and a tenth it cannot resolve.
        let within = 0.12 * l_per_min + 0.2;
        near(flow / L_PER_MIN, l_per_min, within, "stream into the tub");
    }
}

#[test]
fn the_hoses_open_end_runs_as_its_passage_lets_it() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            Action::Tap { open: false },
            Action::BleedHose,
            Action::SupplyHose { attached: false },
        ],
    );
    let flow = gauged(&mut job, Gauge::JugAndWatch, "supply_hose");
    // 110 L/min at 1 MPa through tap and hose, by the square root: 60.2 at 0.3 MPa, off the jug.
    let expected = 110.0 * 0.3_f64.sqrt();
    near(flow / L_PER_MIN, expected, 0.13 * expected, "open end");
    assert!(!job.machine().tap_open(), "the tap is as it was");
}

#[test]
fn pressure_stands_at_the_supplys_and_falls_by_what_the_flow_costs() {
    let mut job = job("P", &[]);
    do_all(&mut job, [Action::Tap { open: false }, Action::BleedHose]);
    let shut = gauged(&mut job, Gauge::PressureGauge, "supply_hose");
    near(shut, 0.0, 8e3, "shut and bled");
    does(&mut job, Action::Tap { open: true });
    let still = gauged(&mut job, Gauge::PressureGauge, "supply_hose");
    near(still, 3.0e5, 15e3, "no water running");
    starts(&mut job);
    let running = gauged(&mut job, Gauge::PressureGauge, "supply_hose");
    // Twelve litres a minute through a passage of 110 at 1 MPa cost (12/110)² MPa.
    let lost = (12.0_f64 / 110.0).powi(2) * 1e6;
    near(running, 3.0e5 - lost, 15e3, "running");
}

#[test]
fn a_tee_put_into_a_line_under_pressure_sprays_and_is_told() {
    let mut job = job("P", &[]);
    let outcome = does(&mut job, gauge(Gauge::PressureGauge, "supply_hose"));
    assert!(
        outcome
            .events
            .iter()
            .any(|e| matches!(e, Event::Spill { water_kg, .. } if *water_kg > 1.0)),
        "{:?}",
        outcome.events
    );
    assert!(job.safety().iter().any(|f| f.rule == "inlet_hose_tap_open"));
    // Fitted, it is read again without opening anything.
    let outcome = does(&mut job, gauge(Gauge::PressureGauge, "supply_hose"));
    assert!(outcome.events.is_empty(), "{:?}", outcome.events);
    assert!(outcome.ticks < 200, "{}", outcome.ticks);
}

#[test]
fn the_u_tube_shows_the_water_over_the_air_chambers_mouth() {
    let mut job = job("P", &[]);
    make_safe(&mut job);
    do_all(
        &mut job,
        [off("pull_out"), off("back_cover"), off("top_cover_up")],
    );
    let empty = gauged(&mut job, Gauge::UTube, "air_hose");
    near(empty, 0.0, 20.0, "empty tub");
    do_all(
        &mut job,
        [Action::Tap { open: true }, Action::Plug { inserted: true }],
    );
    starts(&mut job);
    for _ in 0..400 {
        job.advance(10);
        if job.machine().plant().level_m() > 0.15 {
            break;
        }
    }
    let level_m = job.machine().plant().level_m();
    let filled = gauged(&mut job, Gauge::UTube, "air_hose");
    // Closed form: the trapped air gives way a little, so the column stands below the water.
    let most = 998.2 * 9.80665 * (level_m + 0.05);
    assert!(filled > 0.5 * most && filled < most, "{filled} of {most}");
}

#[test]
fn the_tachometer_holds_what_the_drive_turns() {
    let mut job = job("P", &[]);
    assert!(gauged(&mut job, Gauge::Tachometer, "basket") < 3.0 * RPM);
    spins(&mut job);
    let basket = gauged(&mut job, Gauge::Tachometer, "basket") / RPM;
    // Fact of the trade: steady spin about 750 r/min.
    near(basket, 750.0, 40.0, "basket");
    let lid = does(&mut job, Action::Lid { open: true });
    assert!(lid.events.is_empty());
    let stops_s = gauged(&mut job, Gauge::Watch, "basket");
    // Common practice: within 7 s of opening the lid.
    // Two of them have gone with the lid.
    assert!((0.1..5.0).contains(&stops_s), "{stops_s}");
    let standing = job.act(gauge(Gauge::Watch, "basket"));
    assert!(matches!(standing.refusal, Some(Refusal::NotNow { .. })));
}

#[test]
fn belt_gauge_and_spring_balance_say_the_same_belt() {
    for (fault, tension_n) in [(None, 65.0), (Some("belt_very_loose"), 12.0)] {
        let faults: Vec<&str> = fault.into_iter().collect();
        let mut job = job("P", &faults);
        make_safe(&mut job);
        do_all(
            &mut job,
            [
                Action::SupplyHose { attached: false },
                off("pull_out"),
                off("lay_down"),
                off("plate_off"),
            ],
        );
        let tension = gauged(&mut job, Gauge::BeltGauge, "belt");
        near(tension, tension_n, 0.15 * tension_n + 4.0, "tension");
        let gives_m = gauged(&mut job, Gauge::SpringBalance, "belt");
        // A taut string: d = F L / (4 T), 7 N on 0.19 m.
        let closed = 7.0 * 0.19 / (4.0 * tension_n);
        near(gives_m, closed, 0.15 * closed + 0.0015, "deflection");
        does(&mut job, off("belt_off"));
        let without = job.act(gauge(Gauge::BeltGauge, "belt"));
        assert!(matches!(without.refusal, Some(Refusal::NotNow { .. })));
    }
}

#[test]
fn level_thermometer_and_rule_find_the_site_and_the_machine_as_they_are() {
    let mut job = job("P", &["floor_not_level"]);
    // 2 degrees are 34.9 mm on a metre.
    near(
        gauged(&mut job, Gauge::SpiritLevel, "cabinet"),
        0.0349,
        0.002,
        "machine",
    );
    near(
        gauged(&mut job, Gauge::Thermometer, "cabinet"),
        298.15,
        3.0,
        "room",
    );
    let end_m = gauged(&mut job, Gauge::Rule, "drain_hose");
    assert!((0.05..0.5).contains(&end_m), "{end_m}");
}

#[test]
fn the_oscillator_of_an_empty_tub_runs_at_26_khz_and_mains_at_its_own() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            off("pull_out"),
            off("back_cover"),
            off("top_cover_up"),
            off("panel_open"),
        ],
    );
    does(&mut job, key(PanelKey::Power));
    job.advance(30);
    let level = reads(&mut job, meter(MeterMode::Frequency, "OSA", "OSB"));
    near(level.value.expect("runs"), 26.0e3, 100.0, &level.display);
    let mains = reads(&mut job, meter(MeterMode::Frequency, "SL", "SN"));
    assert_eq!(mains.display, "50.00 Hz");
    does(
        &mut job,
        Action::PullApart {
            connector: "level_sensor_plug".to_owned(),
        },
    );
    job.advance(10);
    let apart = reads(&mut job, meter(MeterMode::Frequency, "OSA", "OSB"));
    assert_ne!(
        apart.value.map(|hz| hz > 1000.0),
        Some(true),
        "{}",
        apart.display
    );
}

#[test]
fn a_diode_test_shows_the_drop_of_its_milliampere() {
    let mut job = job("P", &[]);
    make_safe(&mut job);
    do_all(
        &mut job,
        [
            off("pull_out"),
            off("back_cover"),
            Action::PullApart {
                connector: "motor_plug".to_owned(),
            },
            Action::PullApart {
                connector: "capacitor_terminal_1".to_owned(),
            },
        ],
    );
    // 21 ohm in 3 V behind 3 kohm: 3·21/3021.
    let winding = reads(&mut job, meter(MeterMode::Diode, "MA", "MC"));
    near(
        winding.value.expect("conducts"),
        3.0 * 21.0 / 3021.0,
        0.003,
        &winding.display,
    );
    let open = reads(&mut job, meter(MeterMode::Diode, "MA", "WMA"));
    assert_eq!(open.display, "OL");
}

#[test]
fn a_clamp_round_the_whole_cord_reads_nothing_and_round_one_conductor_the_motors_current() {
    let mut job = job("P", &[]);
    let sheathed = job.act(clamp("RCL"));
    assert!(matches!(sheathed.refusal, Some(Refusal::NotNow { .. })));
    does(&mut job, Action::Plug { inserted: false });
    do_all(
        &mut job,
        [
            Action::Splitter { fitted: true },
            Action::Plug { inserted: true },
        ],
    );
    spins(&mut job);
    let whole = reads(&mut job, clamp("cord")).value.expect("reads");
    assert!(whole < 0.005, "{whole}");
    let single = reads(&mut job, clamp("RCL")).value.expect("reads");
    // Fact of the trade: about 0.91 A in the spin.
    near(single, 0.91, 0.15, "line conductor");
}

#[test]
fn touch_current_of_a_cabinet_without_earth_is_what_2_kohm_let_through() {
    let mut sound = job("P", &[]);
    let earthed = reads(&mut sound, meter(MeterMode::TouchCurrent, "CAB", "0"));
    assert!(
        earthed.value.expect("reads") < 0.5e-3,
        "{}",
        earthed.display
    );
    let mut job = job("P", &["socket_earth_open"]);
    let volts = reads(&mut job, meter(MeterMode::AcVolts, "CAB", "0"));
    let touch = reads(&mut job, meter(MeterMode::TouchCurrent, "CAB", "0"));
    let (volts, amps) = (volts.value.expect("reads"), touch.value.expect("reads"));
    // Stray capacitance drives it: far less than the open voltage over 2 kohm, more than nothing.
    assert!(volts > 30.0, "{volts}");
    assert!(amps > 0.0 && amps < volts / 2e3, "{amps}");
}

#[test]
fn the_same_act_gives_the_same_reading_and_another_act_its_own_scatter() {
    let read = || {
        let mut job = job("P", &[]);
        (0..6)
            .map(|_| gauged(&mut job, Gauge::Thermometer, "cabinet").to_bits())
            .collect::<Vec<_>>()
    };
    let first = read();
    assert_eq!(first, read());
    assert!(first.windows(2).any(|pair| pair[0] != pair[1]), "{first:?}");
}

#[test]
fn a_recorder_follows_four_things_and_leaves_a_gap_where_a_cover_is_in_the_way() {
    let mut job = job("P", &[]);
    let mut recorder = Recorder::default();
    let meter = |mode, red: &str, black: &str| Channel::Meter {
        mode,
        red: red.to_owned(),
        black: Some(black.to_owned()),
    };
    let tachometer = |place: &str| Channel::Gauge {
        gauge: Gauge::Tachometer,
        place: place.to_owned(),
    };
    assert!(recorder.follow(meter(MeterMode::AcVolts, "SL", "SN")));
    assert!(recorder.follow(tachometer("basket")));
    assert!(recorder.follow(tachometer("pulsator")));
    assert!(recorder.follow(meter(MeterMode::AcVolts, "C1", "C2")));
    spins(&mut job);
    for _ in 0..30 {
        job.advance(10);
        recorder.look(&job);
    }
    let last = recorder.samples().last().expect("sampled").values;
    near(last[0].expect("socket"), 230.0, 8.0, "socket");
    assert!(last[1].expect("basket") > 70.0);
    assert!(last[3].is_none(), "the capacitor is behind a cover");
    let lines = job.notebook().len();
    assert!(
        !job.notebook()
            .iter()
            .any(|n| matches!(n.entry, NoteEntry::Gauge(_))),
        "{lines}"
    );
}

#[test]
fn an_instrument_that_is_not_in_the_bag_cannot_be_used() {
    let mut short = scenario("P", &[]);
    short.rules.gauges = Some(vec![Gauge::SpiritLevel]);
    let mut job = job_of(short);
    for instrument in Gauge::ALL {
        for place in instrument.about().places {
            if job.scenario().workshop.place(place).is_none() {
                continue;
            }
            let refusal = job.refusal(&gauge(instrument, place));
            let is_absent =
                matches!(&refusal, Some(Refusal::NotNow { why }) if why.contains("bag"));
            assert_eq!(
                is_absent,
                instrument != Gauge::SpiritLevel,
                "{place}: {refusal:?}"
            );
        }
    }
    let pen = Channel::Gauge {
        gauge: Gauge::Thermometer,
        place: "room".to_owned(),
    };
    assert_eq!(job.sample(&pen), None, "no pen follows what is not there");
    let entries = job.log().len();
    assert!(job.act(gauge(Gauge::Thermometer, "room")).refusal.is_some());
    assert_eq!(job.log().len(), entries);
}
