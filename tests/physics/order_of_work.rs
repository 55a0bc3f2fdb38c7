//! Facts of the trade, common practice: the order of work that the access graph and the refit checks
//! ask for, on every machine that ships.

use std::sync::Arc;

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::job::Job;
use tubwright::bench::workshop::WorkKind;
use tubwright::bench::workshop::Workshop;
use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::scenario::job;
use tubwright::scenario::machines;

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
fn a_way_to_live_parts_begins_at_the_back_cover_and_the_plug_is_out_by_then() {
    // Nothing is refused that hands can do: the rule names what should have come first.
    for (id, workshop) in workshops() {
        let opening: Vec<&str> = workshop
            .steps
            .iter()
            .filter(|step| step.opens_live_parts)
            .map(|step| step.id.as_str())
            .collect();
        assert!(opening.contains(&"back_cover"), "{id}: {opening:?}");
    }
}

#[test]
fn the_tap_is_shut_before_the_hose_comes_off() {
    let scenario = job("hums_and_stands").expect("sound files").expect("ships");
    let mut job = Job::new(scenario, 1).expect("starts");
    job.act(Action::SupplyHose { attached: false });
    let broken: Vec<&str> = job.safety().iter().map(|f| f.rule).collect();
    assert!(!broken.is_empty(), "an open tap floods the room");
    assert!(job.machine().plant().readings().puddle_kg > 0.1);
}

#[test]
fn function_is_checked_after_every_replacement() {
    for (id, workshop) in workshops() {
        for work in workshop
            .works
            .iter()
            .filter(|w| w.kind == WorkKind::Replace)
        {
            assert!(!work.check.is_empty(), "{id}: {} has no check", work.id);
        }
    }
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
        let mistake = lever.mistakes.first().expect("it can be left out");
        assert!(!mistake.effects.is_empty(), "{id}");
        let fault = ActiveFault::constant("clutch_lever_out_of_link");
        let model = &machines().expect("shipped files are sound")[id].model;
        let mut machine = Machine::new(model, Setup::of_faults(&[fault], 7)).expect("known");
        machine.stand_ready();
        let figures = machine.trial().expect("the wiring can be solved");
        assert!(figures.spin_rpm() < 1.0, "{id}");
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
fn the_capacitor_is_discharged_across_the_plug_pins_earth_to_line_and_earth_to_neutral() {
    // With the plug out and an insulated tool nothing is refused and no rule is broken; afterwards
    // every pair of pins is dead, earth to line and earth to neutral too.
    for tool in [DischargeTool::BleedResistor, DischargeTool::Screwdriver] {
        let scenario = job("hums_and_stands").expect("sound files").expect("ships");
        let mut job = Job::new(scenario, 1).expect("starts");
        job.act(Action::Plug { inserted: false });
        let outcome = job.act(Action::Discharge {
            what: Charged::PlugPins,
            tool,
        });
        assert_eq!(outcome.refusal, None);
        for pins in [["PL", "PE"], ["PN", "PE"], ["PL", "PN"]] {
            let left = job.machine().stored_between(pins[0], pins[1]);
            assert!(left.voltage_v.abs() < 1.0, "{tool:?} {pins:?}: {left:?}");
        }
        assert!(job.safety().is_empty(), "{tool:?}: {:?}", job.safety());
    }
}

#[test]
fn pins_just_pulled_hold_a_charge_until_it_is_led_off() {
    let model = &machines().expect("shipped files are sound")["T"].model;
    let mut machine = Machine::new(model, Setup::default()).expect("sound");
    machine.stand_ready();
    machine.set_plugged(false);
    machine.advance(10);
    assert!(
        machine.plug_pin_charge().voltage_v > 100.0,
        "no bleed resistor"
    );
    machine.discharge_plug_pins();
    assert!(machine.plug_pin_charge().voltage_v < 1.0);
}
