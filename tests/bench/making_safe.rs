//! Making safe: the order that proves, and what each shortcut is worth. Order by EN 50110-1 (from
//! memory).

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::event::Event;
use tubwright::bench::job::Job;

use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::meter;
use crate::scene::off;
use crate::scene::reads;

const V: MeterMode = MeterMode::AcVolts;

fn rules(job: &Job) -> Vec<&'static str> {
    job.safety().iter().map(|f| f.rule).collect()
}

/// Goes to the motor's wires.
fn reach_motor(job: &mut Job) {
    do_all(
        job,
        [
            off("pull_out"),
            off("back_cover"),
            Action::PullApart {
                connector: "motor_plug".to_owned(),
            },
        ],
    );
}

#[test]
fn the_whole_order_proves_and_breaks_no_rule() {
    let mut job = job("P", &[]);
    make_safe(&mut job);
    let isolation = &job.bench().isolation;
    assert!(isolation.is_proved_dead());
    assert_eq!(isolation.proved_dead.len(), 3);
    reach_motor(&mut job);
    assert!(rules(&job).is_empty(), "{:?}", rules(&job));
}

#[test]
fn dead_is_only_shown_until_the_tester_was_proved_again() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            meter(V, "SL", "SN"),
            Action::Plug { inserted: false },
            Action::Secure,
            meter(V, "PL", "PN"),
        ],
    );
    assert!(!job.bench().isolation.is_proved_dead());
    assert_eq!(job.bench().isolation.shown_dead.len(), 1);
    does(&mut job, meter(V, "SL", "SN"));
    assert!(job.bench().isolation.is_proved_dead());
}

#[test]
fn what_a_tester_never_proved_shows_is_no_proof() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            Action::Plug { inserted: false },
            meter(V, "PL", "PN"),
            meter(V, "SL", "SN"),
        ],
    );
    assert!(!job.bench().isolation.is_proved_dead());
    reach_motor(&mut job);
    assert!(
        rules(&job).contains(&"tester_not_proved_before"),
        "{:?}",
        rules(&job)
    );
    assert!(rules(&job).contains(&"not_secured"));
}

#[test]
fn the_mains_coming_back_ends_every_proof() {
    let mut job = job("P", &[]);
    make_safe(&mut job);
    does(&mut job, Action::Plug { inserted: true });
    assert!(!job.bench().isolation.is_proved_dead());
    assert!(!job.bench().isolation.secured);
}

#[test]
fn a_circuit_off_at_the_board_isolates_with_the_plug_in_and_is_proved_by_a_known_source() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            Action::ProveTester,
            Action::HouseSwitch { on: false },
            Action::Secure,
        ],
    );
    let socket = reads(&mut job, meter(V, "SL", "SN"));
    assert!(socket.value.expect("reads") < 1.0, "{}", socket.display);
    do_all(
        &mut job,
        [
            meter(V, "SL", "SE"),
            meter(V, "SN", "SE"),
            Action::ProveTester,
        ],
    );
    assert!(job.bench().isolation.is_proved_dead());
    reach_motor(&mut job);
    assert!(rules(&job).is_empty(), "{:?}", rules(&job));
    does(&mut job, Action::HouseSwitch { on: true });
    assert!(!job.bench().isolation.is_proved_dead());
    let again = reads(&mut job, meter(V, "SL", "SN"));
    assert!(again.value.expect("reads") > 200.0);
}

#[test]
fn a_live_wire_in_the_hand_is_computed_with_its_zone_and_what_opened() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [off("pull_out"), off("back_cover"), key(PanelKey::Power)],
    );
    let outcome = does(
        &mut job,
        Action::PullApart {
            connector: "cord_terminals".to_owned(),
        },
    );
    let shock = outcome.events.iter().find_map(|event| match event {
        Event::Shock {
            touch_v,
            body_a,
            duration_s,
            zone,
            opened_by,
        } => Some((
            *touch_v,
            *body_a,
            *duration_s,
            zone.clone(),
            opened_by.clone(),
        )),
        _ => None,
    });
    let (touch_v, body_a, duration_s, zone, opened_by) = shock.expect("a shock");
    assert!(touch_v > 100.0, "{touch_v}");
    // IEC 60479-1 (from memory): about 1 to 2 kohm hand to foot at 230 V.
    assert!((0.05..0.4).contains(&body_a), "{body_a}");
    // IEC 61008-1 (from memory): a 30 mA device opens within 0.3 s, within 0.04 s from 150 mA.
    assert!(duration_s <= 0.3, "{duration_s}");
    assert!(zone.starts_with("AC-"), "{zone}");
    assert!(!opened_by.is_empty());
    assert!(job.machine().supply_tripped());
    assert!(rules(&job).contains(&"touched_live"));
}

#[test]
fn a_turning_basket_is_in_the_way_of_everything() {
    let mut job = job("P", &[]);
    crate::scene::spins(&mut job);
    let outcome = job.act(off("pull_out"));
    assert!(outcome.refusal.is_some());
    assert_eq!(outcome.ticks, 0);
}

#[test]
fn an_ammeter_across_the_mains_loses_its_fuse_and_then_shows_nothing() {
    let mut job = job("P", &[]);
    let outcome = does(&mut job, meter(MeterMode::Amps, "SL", "SN"));
    let blown = outcome
        .events
        .iter()
        .any(|e| matches!(e, Event::MeterFuse { .. }));
    assert!(blown, "{:?}", outcome.events);
    assert!(
        rules(&job).contains(&"amperes_across_voltage"),
        "{:?}",
        rules(&job)
    );
    let after = job.reading().expect("connected");
    assert_eq!(after.value, Some(0.0), "{}", after.display);
    does(&mut job, Action::NewMeterFuse);
    assert!(job.bench().blown.is_empty());
}

#[test]
fn dead_shown_where_nobody_goes_is_no_proof_where_the_hands_go() {
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            meter(V, "SL", "SN"),
            Action::Plug { inserted: false },
            Action::Secure,
            off("pull_out"),
            off("back_cover"),
            meter(V, "DA1", "DA2"),
            meter(V, "SL", "SN"),
            Action::PullApart {
                connector: "motor_plug".to_owned(),
            },
        ],
    );
    assert!(
        rules(&job).contains(&"not_proved_dead"),
        "{:?}",
        rules(&job)
    );
}

#[test]
fn a_machine_laid_down_alone_falls_now_and_then_and_stands_badly_after() {
    let fell = (0..40).filter(|seed| {
        let scenario = std::sync::Arc::new(crate::scene::scenario("P", &[]));
        let mut job = Job::new(scenario, *seed).expect("starts");
        let alone = Action::TakeOff {
            step: "lay_down".to_owned(),
            helped: false,
        };
        do_all(
            &mut job,
            [
                Action::Tap { open: false },
                Action::BleedHose,
                Action::SupplyHose { attached: false },
                off("pull_out"),
            ],
        );
        let events = does(&mut job, alone).events;
        let fell = events
            .iter()
            .any(|e| matches!(e, Event::Dropped { energy_j, .. } if *energy_j > 50.0));
        assert!(!fell || job.ledger().damage > 0.0);
        fell
    });
    let n = fell.count();
    assert!((3..20).contains(&n), "{n} of 40");
}

#[test]
fn a_hose_pulled_with_the_tap_open_wets_the_floor_and_a_hand_on_it_stands_in_water() {
    let mut job = job("P", &[]);
    let outcome = does(&mut job, Action::SupplyHose { attached: false });
    assert!(
        outcome
            .events
            .iter()
            .any(|e| matches!(e, Event::Spill { .. }))
    );
    assert!(job.machine().plant().readings().puddle_kg > 1.0);
    let shock = |job: &mut Job| {
        do_all(job, [off("pull_out"), off("back_cover")]);
        let act = Action::PullApart {
            connector: "cord_terminals".to_owned(),
        };
        let events = does(job, act).events;
        events.into_iter().find_map(|event| match event {
            Event::Shock { body_a, .. } => Some(body_a),
            _ => None,
        })
    };
    let wet_a = shock(&mut job).expect("a shock");
    let dry_a = shock(&mut crate::scene::job("P", &[])).expect("a shock");
    assert!(wet_a > dry_a, "{wet_a} and {dry_a}");
}

/// The technician believes the socket's earth to be missing.
fn believes_no_earth(job: &Job) -> bool {
    job.bench().isolation.earth_seen_missing
}

#[test]
fn a_live_line_with_nothing_to_earth_is_a_missing_earth_in_either_order() {
    // Common practice: line to neutral live, line to earth dead, neutral to earth dead.
    let pairs = [("SL", "SN"), ("SL", "SE"), ("SN", "SE")];
    for order in [[0, 1, 2], [1, 2, 0], [2, 1, 0]] {
        let mut job = job("P", &["socket_earth_open"]);
        does(&mut job, Action::Plug { inserted: false });
        do_all(&mut job, order.map(|n| meter(V, pairs[n].0, pairs[n].1)));
        assert!(believes_no_earth(&job), "{order:?}");
    }
}

#[test]
fn a_socket_dead_for_another_reason_says_nothing_of_its_earth() {
    // Switched off at the board, with a tester proved elsewhere.
    let mut off_at_board = job("P", &[]);
    do_all(
        &mut off_at_board,
        [
            Action::ProveTester,
            Action::HouseSwitch { on: false },
            meter(V, "SL", "SN"),
            meter(V, "SL", "SE"),
            meter(V, "SN", "SE"),
        ],
    );
    assert!(!believes_no_earth(&off_at_board));
    // The line is broken in the house; no device has tripped.
    let mut no_line = job("P", &["socket_line_open"]);
    do_all(
        &mut no_line,
        [
            Action::ProveTester,
            meter(V, "SL", "SE"),
            meter(V, "SL", "SN"),
            meter(V, "SN", "SE"),
        ],
    );
    assert!(!no_line.machine().supply_tripped());
    assert!(!believes_no_earth(&no_line));
    assert!(!rules(&no_line).contains(&"left_on_missing_earth"));
}

#[test]
fn exchanged_wires_are_no_missing_earth() {
    // Common practice: with line and neutral exchanged, what is marked neutral is live to earth.
    let mut job = job("P", &["socket_line_neutral_exchanged"]);
    do_all(&mut job, [meter(V, "SL", "SN"), meter(V, "SL", "SE")]);
    does(&mut job, meter(V, "SN", "SE"));
    assert!(!believes_no_earth(&job));
}

#[test]
fn an_earth_put_right_is_no_longer_missing() {
    let mut job = job("P", &["socket_earth_open"]);
    does(&mut job, Action::Plug { inserted: false });
    do_all(&mut job, [meter(V, "SL", "SN"), meter(V, "SL", "SE")]);
    assert!(believes_no_earth(&job));
    does(
        &mut job,
        Action::Work {
            work: "house_earth_by_electrician".to_owned(),
            check: true,
        },
    );
    does(&mut job, meter(V, "SL", "SE"));
    assert!(!believes_no_earth(&job));
}
