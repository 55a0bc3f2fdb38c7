//! Instruments that lie, leaving, the place and the people in it, the report.

use super::bench::act;
use super::bench::ask;
use super::bench::broken;
use super::bench::job_with;
use super::bench::last_line;
use super::bench::leave;
use super::bench::open;
use super::bench::problems;
use super::bench::reading;
use super::bench::refused;
use super::bench::sense;
use super::bench::unplug;
use super::bench::visit;
use serde_json::json;
use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::event::Event;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::EmptyBy;
use tubwright::bench::visit::PictureOf;
use tubwright::score::assess;

/// A display within the class of an AC voltmeter: 1 % and three counts.
fn near(display: &str, volts: f64) {
    let shown: f64 = display.trim_end_matches(" V").parse().unwrap_or_default();
    assert!((shown - volts).abs() < 0.01 * volts + 0.3, "{display}");
}

#[test]
fn an_instrument_that_lies_is_found_out_by_looking_it_over_and_changed() {
    let lead = json!({"instrument": {"lead_broken": true, "category": 1}});
    let mut job = visit(lead);
    assert_eq!(reading(&mut job, MeterMode::AcVolts, "SL", "SN"), "0.000 V");
    act(&mut job, Action::CheckInstrument);
    assert!(last_line(&job).contains("OL"), "{}", last_line(&job));
    assert!(broken(&job).contains(&"category_too_low"));
    act(&mut job, Action::SpareInstrument);
    near(&reading(&mut job, MeterMode::AcVolts, "SL", "SN"), 230.0);
    // Nobody is told whether the one in hand is sound: the spare one can always be taken.
    assert_eq!(job.refusal(&Action::SpareInstrument), None);

    let mut flat = visit(json!({"instrument": {"battery_percent": 72.0}}));
    near(&reading(&mut flat, MeterMode::AcVolts, "SL", "SN"), 255.6);
    let mut cracked = visit(json!({"instrument": {"lead_cracked": true}}));
    reading(&mut cracked, MeterMode::AcVolts, "SL", "SN");
    assert!(broken(&cracked).contains(&"damaged_leads"));
    let mut fuse = visit(json!({"instrument": {"fuse_blown": true}}));
    act(&mut fuse, Action::Plug { inserted: false });
    assert_eq!(reading(&mut fuse, MeterMode::EarthBond, "PE", "CAB"), "OL");
    assert!(broken(&fuse).contains(&"instrument_not_checked"));
    let mut sound = visit(json!({}));
    act(&mut sound, Action::CheckInstrument);
    act(&mut sound, Action::Plug { inserted: false });
    reading(&mut sound, MeterMode::EarthBond, "PE", "CAB");
    assert!(broken(&sound).is_empty(), "{:?}", broken(&sound));
}

#[test]
fn the_second_visit_brings_the_part_and_proves_nothing_any_more() {
    let mut job = visit(json!({"store": {"mechanism": {"ready": "never"}}}));
    reading(&mut job, MeterMode::AcVolts, "SL", "SN");
    unplug(&mut job);
    assert!(refused(&job, &leave(&["mechanism"], true)).contains("no longer made"));
    let before = job.cost();
    let outcome = act(&mut job, leave(&["motor_pulley"], true));
    assert_eq!(outcome.ticks, 3000);
    assert!((job.cost() - before - 5.0 - 45.0).abs() < 1e-9);
    assert!(broken(&job).is_empty(), "{:?}", broken(&job));
    assert!(job.bench().around.van.contains(&"motor_pulley".to_owned()));
    assert_eq!(job.bench().isolation.tester_proved, None);
    assert!(!job.bench().isolation.secured);
    assert!(!job.machine().plugged() && !job.machine().tap_open());
    assert!(!job.is_over());
}

#[test]
fn leaving_it_open_plugged_wet_and_unlabelled_breaks_a_rule_each() {
    let mut job = visit(json!({}));
    act(&mut job, Action::SupplyHose { attached: false });
    act(
        &mut job,
        Action::TakeOff {
            step: "pull_out".to_owned(),
            helped: false,
        },
    );
    act(
        &mut job,
        Action::TakeOff {
            step: "back_cover".to_owned(),
            helped: false,
        },
    );
    act(&mut job, leave(&[], false));
    let broken = broken(&job);
    for rule in [
        "left_covers_off",
        "left_unfinished_plugged",
        "left_tap_open",
        "left_unlabelled",
        "left_floor_wet",
    ] {
        assert!(broken.contains(&rule), "{rule} of {broken:?}");
    }
}

#[test]
fn making_safe_where_it_smells_of_gas_earns_full_marks_and_going_on_fails() {
    let reference = json!({"cost": 50.0, "minutes": 6.0});
    let gas = json!({"visit": {"place": ["gas_smell"]}, "reference": reference});
    let mut job = job_with(&gas);
    act(&mut job, sense(Sense::Smell, "floor"));
    act(&mut job, Action::MakeSafeAndLeave);
    let report = assess(&job).expect("can be marked");
    assert!(
        report.rightly_left && report.total > 99.0,
        "{:?}",
        report.parts
    );

    let mut job = job_with(&gas);
    act(&mut job, sense(Sense::Smell, "floor"));
    act(
        &mut job,
        Action::Key {
            key: PanelKey::Power,
        },
    );
    assert!(broken(&job).contains(&"danger_ignored"));
}

#[test]
fn a_flooded_room_and_a_threat_are_noticed_and_are_reasons_to_leave() {
    for (condition, notice) in [
        ("flood", sense(Sense::Look, "floor")),
        ("threat", ask("when", false)),
    ] {
        let mut job = visit(json!({"place": [condition]}));
        act(&mut job, notice);
        act(&mut job, Action::MakeSafeAndLeave);
        assert!(
            assess(&job).expect("can be marked").rightly_left,
            "{condition}"
        );
    }
}

#[test]
fn the_house_is_told_of_and_written_down_and_never_mended() {
    let mut job = visit(json!({"place": ["extension_reel", "adaptor"]}));
    act(&mut job, sense(Sense::Look, "socket"));
    assert!(last_line(&job).contains("reel"), "{}", last_line(&job));
    act(
        &mut job,
        Action::Advise {
            advice: Advice::HouseWiring,
        },
    );
    act(&mut job, Action::MakeSafeAndLeave);
    assert!(broken(&job).is_empty(), "{:?}", broken(&job));

    let mut job = visit(json!({"place": ["extension_reel"]}));
    act(&mut job, sense(Sense::Look, "socket"));
    act(&mut job, Action::MendHouse);
    act(&mut job, Action::MakeSafeAndLeave);
    assert_eq!(
        broken(&job),
        ["house_wiring_worked_on", "house_defect_not_told"]
    );

    let mut job = visit(json!({"place": ["scorched_socket"]}));
    act(&mut job, sense(Sense::Look, "socket"));
    act(
        &mut job,
        Action::Key {
            key: PanelKey::Power,
        },
    );
    assert!(broken(&job).contains(&"scorched_socket_used"));
}

#[test]
fn an_extension_reel_is_more_resistance_in_the_line() {
    let volts = |place: serde_json::Value| {
        let mut job = visit(json!({ "place": place }));
        act(
            &mut job,
            Action::Key {
                key: PanelKey::Power,
            },
        );
        job.advance(50);
        act(
            &mut job,
            Action::Key {
                key: PanelKey::Start,
            },
        );
        job.advance(6000);
        job.machine().live().supply_v
    };
    let (without, with) = (volts(json!([])), volts(json!(["extension_reel"])));
    assert!(with < without && without - with < 5.0, "{with} {without}");
}

#[test]
fn carelessness_with_floor_edges_and_hot_water_has_its_price() {
    let lay = |protect: bool| {
        let mut job = visit(json!({"place": ["delicate_floor"]}));
        unplug(&mut job);
        if protect {
            act(&mut job, Action::ProtectFloor);
        }
        open(&mut job, &["lay_down"]);
        job
    };
    assert!(broken(&lay(false)).contains(&"floor_unprotected"));
    assert!((lay(false).ledger().damage - 40.0).abs() < 1e-9);
    assert!(broken(&lay(true)).is_empty() && lay(true).ledger().damage == 0.0);

    for gloves in [true, false] {
        let mut job = visit(json!({"place": ["bare_edges"]}));
        unplug(&mut job);
        if gloves {
            act(&mut job, Action::Gloves { on: true });
        }
        open(&mut job, &["plate_off"]);
        act(&mut job, sense(Sense::Feel, "belt"));
        assert_eq!(broken(&job).contains(&"cut_by_edges"), !gloves);
    }
}

#[test]
fn hot_water_scalds_until_it_is_thinned() {
    let site = |job: &mut tubwright::bench::job::Job| {
        act(job, Action::Lid { open: true });
    };
    let hot = || {
        let mut file: serde_json::Value =
            serde_json::from_str(&super::bench::text_with(&json!({}))).expect("JSON");
        file["site"]["water_l"] = json!(10.0);
        job_with(&json!({"site": file["site"], "visit": {"place": ["hot_water"]}}))
    };
    let bucket = Action::Empty {
        how: EmptyBy::Bucket,
    };
    let mut job = hot();
    assert_eq!(refused(&job, &Action::CoolWater), "the lid is shut");
    site(&mut job);
    let events = act(&mut job, bucket.clone()).events;
    assert!(
        events.iter().any(|e| matches!(e, Event::Hurt { .. })),
        "{events:?}"
    );
    assert!(broken(&job).contains(&"hot_water_let_out"));
    let mut job = hot();
    site(&mut job);
    act(&mut job, Action::CoolWater);
    act(&mut job, bucket);
    assert!(!broken(&job).contains(&"hot_water_let_out"));
}

#[test]
fn a_child_is_kept_away_from_the_open_machine() {
    for clear in [true, false] {
        let mut job = visit(json!({"place": ["child"]}));
        if clear {
            act(&mut job, Action::KeepClear);
        }
        act(&mut job, Action::Plug { inserted: false });
        open(&mut job, &["back_cover"]);
        act(&mut job, Action::Plug { inserted: true });
        assert_eq!(broken(&job).contains(&"bystander_near"), !clear);
    }
}

#[test]
fn a_mopped_floor_is_dry_again() {
    let mut job = visit(json!({}));
    assert!(refused(&job, &Action::MopFloor).contains("AlreadySo"));
    act(&mut job, Action::SupplyHose { attached: false });
    assert!(job.machine().plant().readings().puddle_kg > 4.0);
    act(&mut job, Action::MopFloor);
    assert!(job.machine().plant().readings().puddle_kg < 0.1);
}

#[test]
fn the_report_is_signed_once_there_is_something_to_sign_and_the_customer_was_told() {
    let mut job = visit(json!({}));
    let of = PictureOf::Outside;
    act(&mut job, Action::TakePicture { of });
    assert!(refused(&job, &Action::Sign).contains("no cause"));
    act(
        &mut job,
        Action::Finding {
            causes: Vec::new(),
            evidence: Vec::new(),
        },
    );
    assert!(refused(&job, &Action::Sign).contains("told first"));
    act(
        &mut job,
        Action::Advise {
            advice: Advice::WhatWasDone,
        },
    );
    act(&mut job, Action::Sign);
    assert!(job.bench().around.signed && job.bench().around.pictures.len() == 1);
}

#[test]
fn a_repair_beyond_its_worth_is_rightly_declined_and_the_fee_is_taken() {
    let file = json!({
        "faults": [{"id": "winding_1_open", "severity": 1.0}],
        "visit": {"person": {"manner": "honest", "limit": 60.0}},
    });
    let mut job = job_with(&file);
    act(&mut job, Action::Quote { price: 170.0 });
    act(&mut job, Action::TakeFee);
    act(&mut job, Action::Close);
    assert!(assess(&job).expect("can be marked").rightly_left);
}

#[test]
fn what_is_wrong_in_a_visit_section_is_told_with_field_value_and_remedy() {
    for (section, told) in [
        (
            json!({"phone": {"phone_sinse": "x"}}),
            "visit.phone.phone_sinse",
        ),
        (
            json!({"store": {"motr": {"ready": "today"}}}),
            "visit.store.motr",
        ),
        (
            json!({"store": {"motor": {"ready": "today", "price": -1.0}}}),
            "visit.store.motor.price: -1",
        ),
        (
            json!({"instrument": {"battery_percent": 140.0}}),
            "visit.instrument.battery_percent: 140: must lie between",
        ),
        (
            json!({"instrument": {"category": 9}}),
            "visit.instrument.category",
        ),
        (
            json!({"person": {"manner": "honest", "haggles_percent": 99.0}}),
            "visit.person.haggles_percent",
        ),
        (json!({"place": ["no_residual_device"]}), "rcd_ma"),
        (json!({"place": ["hot_water"]}), "site.water_l"),
        (json!({"place": ["dog", "dog"]}), "visit.place[1]"),
        (json!({"plaice": []}), "plaice"),
    ] {
        let problems = problems(section.clone());
        assert!(problems.contains(told), "{section}: {problems}");
    }
}
