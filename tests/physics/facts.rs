//! Facts of the trade, common practice: what a bad part does to a wash must come out of the
//! physics, and the order of work must be the one the access graph and the refit checks ask for.

use std::sync::Arc;

use tubwright::bench::action::Action;
use tubwright::bench::job::Job;
use tubwright::bench::workshop::Workshop;
use tubwright::machine::ActiveFault;
use tubwright::machine::CycleFigures;
use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::plant::sound::SoundKind;
use tubwright::scenario::job;
use tubwright::scenario::machines;

fn machine(id: &str, faults: &[&str]) -> Machine {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    machine_of(id, &faults)
}

fn machine_of(id: &str, faults: &[ActiveFault]) -> Machine {
    let model = &machines().expect("shipped files are sound")[id].model;
    let mut machine = Machine::new(model, Setup::of_faults(faults, 7)).expect("known faults");
    machine.settle_in(4.0, 298.15);
    machine.stand_ready();
    machine
}

fn figures(id: &str, faults: &[&str]) -> CycleFigures {
    machine(id, faults)
        .trial()
        .expect("the wiring can be solved")
}

fn figures_of(id: &str, faults: &[ActiveFault]) -> CycleFigures {
    machine_of(id, faults)
        .trial()
        .expect("the wiring can be solved")
}

/// Loudest a source gets in a wash, dB; 0 where it is never heard.
fn loudest_db(id: &str, faults: &[&str], kind: SoundKind) -> f64 {
    let mut machine = machine(id, faults);
    let mut loudest_db = 0.0;
    let trial = machine.trial_with(|m| {
        for sound in m.sounds().iter().filter(|sound| sound.kind == kind) {
            loudest_db = f64::max(loudest_db, sound.level_db);
        }
    });
    trial.expect("the wiring can be solved");
    loudest_db
}

#[test]
fn a_bent_unbalance_lever_corrects_a_usual_load_or_looks_like_an_open_lid() {
    // Bent in by four fifths, it opens at a swing that is usual; bent in for good it looks like an
    // open lid, because the two share an input.
    let nearly = ActiveFault {
        severity_ratio: 0.82,
        ..ActiveFault::constant("balance_lever_bent_in")
    };
    let bent_in = figures_of("P", &[nearly]);
    assert!(bent_in.corrections >= 1, "{bent_in:?}");
    assert_eq!(figures("P", &[]).corrections, 0);
    let for_good = figures("P", &["balance_lever_bent_in"]);
    assert!(for_good.spin_rpm() < 5.0, "{for_good:?}");
}

#[test]
fn a_faulty_level_sensor_gives_no_spin_or_a_wrong_level_or_a_pulsator_without_water() {
    let healthy = figures("P", &[]);
    // Nothing heard of it: the control goes no further than filling, never to a spin.
    let dead = figures("P", &["level_coil_open"]);
    assert!(dead.spin_rpm() < 5.0 && dead.alarm.is_some(), "{dead:?}");
    // Its frequency falls as the water rises: drifted upwards it sees too little water and takes
    // more, drifted downwards it is content with less.
    let up = figures("P", &["level_sensor_reads_high"]);
    let down = figures("P", &["level_sensor_reads_low"]);
    assert!(up.level_m > healthy.level_m + 0.01, "{} m", up.level_m);
    assert!(down.level_m < healthy.level_m - 0.01, "{} m", down.level_m);
    // A pressure switch that stands at full lets the pulsator turn without water.
    let mut dry = machine("T", &["level_switch_stuck_full"]);
    dry.start_program();
    let mut fastest = 0.0;
    for _ in 0..600 {
        dry.advance(10);
        if dry.plant().level_m() < 0.01 {
            fastest = f64::max(fastest, dry.plant().readings().pulsator_rad_per_s.abs());
        }
    }
    assert!(fastest > 5.0, "{fastest} rad/s without water");
}

#[test]
fn an_inlet_valve_fails_shut_or_lets_water_creep_in() {
    let shut = figures("P", &["valve_stays_shut"]);
    assert!(shut.level_m < 0.01 && shut.alarm.is_some(), "{shut:?}");
    let mut creeping = machine("P", &["valve_leaks_by"]);
    creeping.advance(36_000);
    assert!(
        creeping.water_kg() > 1.0,
        "{} kg in an hour, switched off",
        creeping.water_kg()
    );
}

#[test]
fn a_worn_pulsator_slips_and_is_heard() {
    let (worn, healthy) = (figures("P", &["pulsator_spline_worn"]), figures("P", &[]));
    let ratio = worn.pulsator_forward_rad_per_s / healthy.pulsator_forward_rad_per_s;
    assert!(ratio < 0.9, "slips: {ratio}");
    let knock = |faults: &[&str]| loudest_db("P", faults, SoundKind::ReversalKnock);
    assert!(knock(&["pulsator_screw_loose"]) > knock(&[]) + 3.0);
}

#[test]
fn a_bad_basket_spins_slowly_and_dries_poorly() {
    let healthy = figures("P", &[]);
    let stiff = figures("P", &["basket_bearing_seized"]);
    assert!(
        stiff.spin_rpm() < 0.9 * healthy.spin_rpm(),
        "{}",
        stiff.spin_rpm()
    );
    assert!(
        stiff.moisture_ratio > healthy.moisture_ratio + 0.02,
        "{stiff:?}"
    );
}

#[test]
fn a_bad_gear_mechanism_leaks_or_roars_or_creeps_one_way_or_does_not_spin() {
    let healthy = figures("P", &[]);
    assert!(figures("P", &["shaft_seal_leaks"]).puddle_kg > healthy.puddle_kg + 0.1);
    let gear = |faults: &[&str]| loudest_db("P", faults, SoundKind::Gear);
    assert!(gear(&["gear_worn"]) > gear(&[]) + 3.0);
    // The basket goes along one way: the pulsator washes the other way only.
    let one_way = figures("P", &["one_way_bearing_worn"]);
    assert!(
        one_way.creep_rad_per_s > healthy.creep_rad_per_s + 0.5,
        "{one_way:?}"
    );
    let clutch = figures("P", &["clutch_spring_worn"]);
    assert!(clutch.spin_rpm() < 0.85 * healthy.spin_rpm());
}

#[test]
fn a_motor_fails_open_or_shorted() {
    let healthy = figures("P", &[]);
    let open = figures("P", &["winding_1_open"]);
    assert!(
        open.pulsator_forward_rad_per_s < 0.5 * healthy.pulsator_forward_rad_per_s,
        "{open:?}"
    );
    let short = figures("P", &["winding_1_shorted_turns"]);
    assert!(
        short.winding_k > healthy.winding_k + 5.0 || short.trips > 0,
        "{short:?}"
    );
}

// The order of work.

fn workshops() -> impl Iterator<Item = (&'static String, &'static Arc<Workshop>)> {
    let packs = machines().expect("shipped files are sound");
    packs.iter().map(|(id, pack)| (id, &pack.workshop))
}

/// Everything in the way of a step, itself included.
fn way(workshop: &Workshop, needs: &[String]) -> Vec<String> {
    let mut way: Vec<String> = needs.to_vec();
    let mut at = 0;
    while at < way.len() {
        if let Some(step) = workshop.step(&way[at]) {
            way.extend(
                step.needs
                    .iter()
                    .filter(|n| !way.contains(n))
                    .cloned()
                    .collect::<Vec<_>>(),
            );
        }
        at += 1;
    }
    way
}

#[test]
fn switching_off_and_pulling_the_plug_come_before_any_cover() {
    let scenario = job("hums_and_stands").expect("sound files").expect("ships");
    let mut job = Job::new(scenario, 1).expect("starts");
    for step in ["pull_out", "back_cover"] {
        let outcome = job.act(Action::TakeOff {
            step: step.to_owned(),
            helped: false,
        });
        assert_eq!(outcome.refusal, None);
    }
    let broken: Vec<&str> = job.safety().iter().map(|f| f.rule).collect();
    assert!(broken.contains(&"cover_off_live"), "{broken:?}");
}

#[test]
fn the_hose_comes_off_before_the_machine_is_laid_down() {
    let scenario = job("hums_and_stands").expect("sound files").expect("ships");
    let mut job = Job::new(scenario, 1).expect("starts");
    let take_off = |step: &str| Action::TakeOff {
        step: step.to_owned(),
        helped: true,
    };
    assert_eq!(job.act(take_off("pull_out")).refusal, None);
    let held = job.act(take_off("lay_down")).refusal;
    assert!(held.is_some(), "the hose holds it");
}

#[test]
fn parts_below_the_top_cover_are_reached_from_the_back_cover_with_the_top_propped() {
    for (id, workshop) in workshops() {
        for place in ["inlet_valve", "lid_switch"] {
            let place = workshop
                .places
                .iter()
                .find(|p| p.id == place)
                .expect("a place");
            let way = way(workshop, &place.needs);
            let top = way.iter().position(|step| step == "top_cover_up");
            let back = way.iter().position(|step| step == "back_cover");
            assert!(top.is_some() && back > top, "{id} {}: {way:?}", place.id);
        }
        let top = workshop.step("top_cover_up").expect("a step");
        assert!(top.caution.contains("support"), "{id}: {}", top.caution);
    }
}

#[test]
fn four_bolts_hold_the_basket_and_four_the_gearbox() {
    for (id, workshop) in workshops() {
        let basket = workshop.step("basket_out").expect("a step");
        assert!(
            basket.fasteners.contains("4 hex bolts"),
            "{id}: {}",
            basket.fasteners
        );
        let gearbox = workshop.work("replace_mechanism").expect("a work");
        assert!(
            gearbox.caution.contains("4 hex bolts"),
            "{id}: {}",
            gearbox.caution
        );
    }
}

#[test]
fn the_bottom_guard_comes_off_before_the_belt() {
    for (id, workshop) in workshops() {
        let belt = workshop.step("belt_off").expect("a step");
        assert!(
            way(workshop, &belt.needs).contains(&"plate_off".to_owned()),
            "{id}"
        );
    }
}

#[test]
fn hose_joints_of_valve_and_sensor_are_sealed_on_refit() {
    for (id, workshop) in workshops() {
        for part in ["inlet_valve", "level_sensor", "pressure_switch"] {
            let Some(work) = workshop.work(&format!("replace_{part}")) else {
                continue;
            };
            assert!(work.check.contains("sealed"), "{id} {part}: {}", work.check);
        }
    }
}

#[test]
fn the_clutch_lever_enters_its_link_on_refit_and_left_out_it_does_not_spin() {
    for (id, workshop) in workshops().filter(|(_, w)| w.step("lever_unhook").is_some()) {
        let lever = workshop.step("lever_unhook").expect("a step");
        assert!(
            lever.refit_check.contains("in its link"),
            "{id}: {}",
            lever.refit_check
        );
        let mistake = lever.mistake.as_ref().expect("it can be left out");
        assert!(!mistake.effects.is_empty(), "{id}");
        assert!(
            figures(id, &["clutch_lever_out_of_link"]).spin_rpm() < 1.0,
            "{id}"
        );
    }
}

#[test]
fn belt_tension_is_checked_when_the_motor_goes_back() {
    for (id, workshop) in workshops() {
        let motor = workshop.work("replace_motor").expect("a work");
        let checks: Vec<&str> = way(workshop, &motor.needs)
            .iter()
            .filter_map(|step| workshop.step(step))
            .map(|step| step.refit_check.as_str())
            .collect();
        assert!(
            checks.iter().any(|check| check.contains("5 mm at")),
            "{id}: {checks:?}"
        );
    }
}

#[test]
fn handing_over_after_work_without_a_run_breaks_a_rule() {
    let broken = {
        let scenario = job("hums_and_stands").expect("sound files").expect("ships");
        let mut job = Job::new(scenario, 1).expect("starts");
        job.act(Action::Work {
            work: "level_feet".to_owned(),
            check: true,
        });
        job.act(Action::Close);
        job.safety().iter().map(|f| f.rule).collect::<Vec<_>>()
    };
    assert!(broken.contains(&"no_functional_run"), "{broken:?}");
}

#[test]
fn plug_pins_are_led_off_and_a_blade_across_a_charged_capacitor_breaks_a_rule() {
    // Across the pins line and neutral, with the plug out: nothing is refused.
    let scenario = job("hums_and_stands").expect("sound files").expect("ships");
    let mut job = Job::new(scenario, 1).expect("starts");
    job.act(Action::Plug { inserted: false });
    let before = job.machine().plug_pin_charge();
    let outcome = job.act(Action::Discharge {
        what: tubwright::bench::action::Charged::PlugPins,
        tool: tubwright::bench::action::DischargeTool::BleedResistor,
    });
    assert_eq!(outcome.refusal, None);
    let after = job.machine().plug_pin_charge();
    assert!(
        after.voltage_v < 1.0 && after.voltage_v <= before.voltage_v,
        "{before:?} {after:?}"
    );
    assert!(job.safety().is_empty(), "{:?}", job.safety());
}
