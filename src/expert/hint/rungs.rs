//! What each rung says, for each kind of next step.

use std::sync::Arc;

use super::*;
use crate::expert::drill::sense;
use crate::machine::MachineModel;
use crate::scenario::job;

/// A job on a machine that can have these faults only, with nothing told.
fn with_faults(ids: &[&str]) -> Arc<Scenario> {
    let mut scenario = Scenario::clone(&job("no_water").expect("sound").expect("ships"));
    let mut model = MachineModel::clone(&scenario.machine);
    model.faults.retain(|f| ids.contains(&f.id.as_str()));
    assert_eq!(model.faults.len(), ids.len());
    scenario.machine = Arc::new(model);
    scenario.faults.clear();
    scenario.customer.complaint.clear();
    Arc::new(scenario)
}

fn belief(scenario: &Arc<Scenario>) -> Belief {
    Belief::new(scenario).expect("starts")
}

fn a_try(name: &str) -> Next {
    Next::Try(name.to_owned())
}

fn a_work(id: &str) -> Next {
    Next::Do(Remedy::Work(id.to_owned()))
}

fn trial(stand: Stand) -> Trial {
    Trial {
        name: "look belt".to_owned(),
        stand,
        apart: Vec::new(),
        beats: vec![sense(0, crate::bench::action::Sense::Look, "belt")],
    }
}

#[test]
fn the_question_says_how_many_causes_are_left() {
    let many = with_faults(&["tap_closed", "valve_coil_open", "belt_off"]);
    let mut one = Scenario::clone(&with_faults(&["valve_coil_open"]));
    one.customer.complaint = "No water comes in.".to_owned();
    let one = Arc::new(one);
    let asked = |scenario: &Arc<Scenario>| question(&Next::Do(Remedy::Help), &belief(scenario));
    let n = belief(&many).probabilities().into_iter();
    let n = n.filter(|p| *p > 0.02).count();
    assert!(n > 1 && asked(&many).starts_with(&format!("Your notes still fit {n} causes.")));
    assert!(
        asked(&one).starts_with("Your notes fit one cause far better"),
        "{}",
        asked(&one)
    );
}

#[test]
fn the_question_is_about_what_the_next_step_is() {
    let scenario = with_faults(&["valve_coil_open"]);
    let belief = belief(&scenario);
    let asked: BTreeSet<String> = [
        a_try("run wash"),
        a_try("look belt"),
        a_try("turn basket"),
        a_try("ohms MA MB"),
        a_work("replace_motor"),
        Next::Do(Remedy::HandOver),
        Next::Do(Remedy::Help),
    ]
    .iter()
    .map(|next| question(next, &belief))
    .collect();
    assert_eq!(asked.len(), 7, "{asked:#?}");
    for (next, word) in [
        ("run wash", "seen it do"),
        ("look belt", "eyes"),
        ("turn basket", "hands"),
        ("ohms MA MB", "meter"),
    ] {
        assert!(question(&a_try(next), &belief).contains(word), "{next}");
    }
}

#[test]
fn the_place_is_what_has_to_come_off_first() {
    let scenario = with_faults(&["valve_coil_open"]);
    let of = |next: &Next, trial: Option<&Trial>| place(next, trial, &scenario);
    let work = of(&a_work("replace_inlet_valve"), None);
    assert!(
        work.starts_with("Unplugged and proved dead, with these off: "),
        "{work}"
    );
    assert!(of(&a_work("tighten_feet"), None).starts_with("From outside"));
    let look = a_try("look belt");
    assert!(of(&look, Some(&trial(Stand::Ready))).starts_with("As the customer uses it"));
    assert!(of(&look, Some(&trial(Stand::Any))).starts_with("From outside"));
    let step = scenario.workshop.steps[0].clone();
    let open = trial(Stand::Open(BTreeSet::from([step.id])));
    assert!(of(&look, Some(&open)).contains(&*step.name));
    for remedy in [Remedy::HandOver, Remedy::LookFurther, Remedy::Help] {
        assert_eq!(
            of(&Next::Do(remedy), None),
            "In your notebook, line by line."
        );
    }
}

#[test]
fn what_a_trial_would_mean_is_told_by_what_it_would_show() {
    let scenario = with_faults(&["belt_off", "valve_coil_open"]);
    let belief = belief(&scenario);
    let told = outcomes(&trial(Stand::Open(BTreeSet::new())), &belief, &scenario);
    let words = |id: &str| worded(&scenario.machine.fault(id).expect("listed").what).into_owned();
    assert!(told.contains(&words("belt_off")), "{told}");
    assert_eq!(told.matches("would fit").count(), 2, "{told}");
    // Where no likely cause shows there, all look the same.
    let alike = with_faults(&["valve_coil_open", "valve_plunger_stuck"]);
    let told = outcomes(
        &trial(Stand::Open(BTreeSet::new())),
        &self::belief(&alike),
        &alike,
    );
    assert!(told.starts_with("It would look the same"), "{told}");
}

#[test]
fn at_most_four_causes_are_told_and_none_that_is_hardly_likely() {
    let belts = [
        "belt_off",
        "belt_oily",
        "belt_very_loose",
        "belt_too_tight",
        "belt_cracked",
    ];
    let scenario = with_faults(&belts);
    let look = trial(Stand::Open(BTreeSet::new()));
    let told = outcomes(&look, &belief(&scenario), &scenario);
    let n_told = told.matches("would fit").count() + told.matches("; or ").count();
    assert_eq!(n_told, 4, "{told}");
    let mut rare = Scenario::clone(&with_faults(&["belt_off", "valve_coil_open"]));
    let mut model = MachineModel::clone(&rare.machine);
    let off = model.faults.iter_mut().find(|f| f.id == "belt_off");
    off.expect("listed").weight = 1e-4;
    rare.machine = Arc::new(model);
    let rare = Arc::new(rare);
    let told = outcomes(&look, &belief(&rare), &rare);
    assert!(told.starts_with("It would look the same"), "{told}");
}

#[test]
fn the_reason_names_the_likeliest_cause_and_how_sure_the_notes_make_it() {
    let scenario = with_faults(&["valve_coil_open"]);
    let belief = belief(&scenario);
    let p = belief.probabilities();
    assert!(p[1] > p[0]);
    let told = reason(&a_work("replace_inlet_valve"), &belief, &scenario);
    let fault = scenario.machine.fault("valve_coil_open").expect("listed");
    assert!(
        told.contains(&format!("{:.0} % likely", 100.0 * p[1])),
        "{told}"
    );
    assert!(told.contains(&*worded(&fault.what)), "{told}");
    let over = reason(&Next::Do(Remedy::HandOver), &belief, &scenario);
    let help = reason(&Next::Do(Remedy::Help), &belief, &scenario);
    assert!(
        over.contains("prove it") && help.contains("may be wrong"),
        "{over} {help}"
    );
}
