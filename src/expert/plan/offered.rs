//! What a plan offers at the door, what it costs, and what it leaves.

use std::sync::Arc;

use super::*;
use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::job::Entry;
use crate::bench::ledger::ticks_of;
use crate::expert::seen::Step;
use crate::expert::trial::trials;
use crate::machine::MachineModel;
use crate::scenario::job;

/// A moment at the door of a machine that can have these faults only.
fn plan(ids: &[&str]) -> (Arc<Scenario>, Belief, Plan) {
    let mut scenario = Scenario::clone(&job("no_water").expect("sound").expect("ships"));
    let mut model = MachineModel::clone(&scenario.machine);
    model.faults.retain(|f| ids.contains(&f.id.as_str()));
    scenario.machine = Arc::new(model);
    scenario.faults.clear();
    scenario.customer.complaint.clear();
    scenario.money.labour_per_min = 2.0;
    let scenario = Arc::new(scenario);
    let belief = Belief::new(&scenario).expect("starts");
    let plan = Plan::at(&belief, &scenario).expect("sound");
    (scenario, belief, plan)
}

fn repair<'a>(plan: &'a Plan, remedy: &Remedy) -> &'a Repair {
    let at = plan.remedies.iter().position(|r| r == remedy);
    &plan.model.repairs()[at.expect("offered")]
}

#[test]
fn each_remedy_ends_what_it_mends_and_leaves_the_rest() {
    let (scenario, belief, plan) = plan(&["valve_coil_open", "inlet_filter_blocked"]);
    let place = |ids: &[&str]| {
        let cause = belief.causes().iter().position(|c| c.0 == ids);
        plan.causes
            .iter()
            .position(|c| Some(*c) == cause)
            .expect("planned with")
    };
    let (sound, coil) = (place(&[]), place(&["valve_coil_open"]));
    let rest = plan.causes.len();
    let ended = |remedy: &Remedy| -> Vec<usize> {
        let after = &repair(&plan, remedy).after;
        assert_eq!(after.len(), rest + 1);
        (0..=rest).filter(|h| after[*h].is_none()).collect()
    };
    assert_eq!(
        ended(&Remedy::Work("replace_inlet_valve".to_owned())),
        [coil]
    );
    assert_eq!(ended(&Remedy::HandOver), [sound]);
    assert_eq!(ended(&Remedy::LookFurther), [rest]);
    assert_eq!(ended(&Remedy::Help).len(), rest + 1);
    let money = &scenario.money;
    let hand_over = repair(&plan, &Remedy::HandOver);
    assert!((hand_over.cost - 5.0 * money.labour_per_min).abs() < 1e-9);
    assert!((hand_over.cost_if_not - money.callback).abs() < 1e-9);
    let help = repair(&plan, &Remedy::Help).cost;
    let all = money.callback + money.second_visit + 60.0 * money.labour_per_min;
    assert!((help - all).abs() < 1e-9, "{help} {all}");
    // A run after it, and a minute to write it down.
    let valve = scenario
        .workshop
        .work("replace_inlet_valve")
        .expect("listed");
    let minutes = valve.work_s / 60.0 + 10.0;
    let cost = money.labour_per_min * minutes + price(&scenario, valve);
    let work = repair(&plan, &Remedy::Work("replace_inlet_valve".to_owned()));
    assert!((work.cost - cost).abs() < 1e-9, "{} {cost}", work.cost);
    let further = repair(&plan, &Remedy::LookFurther).cost;
    assert!(
        (further - 25.0 * money.labour_per_min).abs() < 1e-9,
        "{further}"
    );
    let kinds: BTreeSet<&Remedy> = plan.remedies.iter().collect();
    assert_eq!(kinds.len(), plan.remedies.len(), "each once");
}

#[test]
fn a_work_is_done_where_it_can_be_reached_and_one_from_outside_anywhere() {
    let (scenario, _, plan) = plan(&["valve_coil_open", "tap_closed"]);
    let place = |id: &str| repair(&plan, &Remedy::Work(id.to_owned())).place;
    let valve = scenario.workshop.work("replace_inlet_valve");
    let closure = scenario.workshop.closure(&valve.expect("listed").needs);
    let open = Stand::Open(closure.iter().map(|s| s.id.clone()).collect());
    let stand = place("replace_inlet_valve").map(|p| &plan.stands[p]);
    assert_eq!(stand, Some(&open));
    assert_eq!(place("open_tap"), None);
    // Five minutes to make safe, two and a half to bring it back, and the covers.
    let there = plan
        .stands
        .iter()
        .position(|s| *s == open)
        .expect("a place");
    let both = plan.model.places().way(0, there) + plan.model.places().way(there, 0);
    assert!(both > 7.5 * scenario.money.labour_per_min, "{both}");
}

#[test]
fn handing_over_is_offered_only_where_the_machine_may_be_sound() {
    let (scenario, mut belief, may_be) = plan(&["valve_coil_open"]);
    assert!(may_be.remedies.contains(&Remedy::HandOver));
    let sound = belief
        .lines
        .iter_mut()
        .find(|l| l.variant.faults.is_empty());
    sound.expect("comes first").log_likelihood -= 20.0;
    let surely_not = Plan::at(&belief, &scenario).expect("sound");
    assert!(!surely_not.remedies.contains(&Remedy::HandOver));
}

#[test]
fn a_machine_that_stands_open_is_planned_with_as_it_stands() {
    let (scenario, mut belief, at_the_door) = plan(&["valve_coil_open"]);
    assert_eq!(at_the_door.model.start(), 0);
    belief.take(&Step {
        entry: Entry {
            tick: 10,
            action: Action::Plug { inserted: false },
        },
        ticks: 20,
        notes: Vec::new(),
        is_tripped: false,
    });
    let plan = Plan::at(&belief, &scenario).expect("sound");
    let here = &plan.stands[plan.model.start()];
    assert_eq!(*here, Stand::Open(BTreeSet::new()));
}

#[test]
fn candidates_stand_cheapest_first_and_only_what_is_tried_promises_bits() {
    let (_, _, plan) = plan(&["valve_coil_open", "inlet_filter_blocked", "belt_off"]);
    let all = plan.candidates();
    assert!(all.len() > 4 && all.is_sorted_by(|a, b| a.cost <= b.cost));
    for one in &all {
        let is_try = matches!(one.next, Next::Try(_));
        assert_eq!(one.bits > 0.0, is_try, "{one:?}");
    }
    let name = all.iter().find_map(|c| match &c.next {
        Next::Try(name) => Some(name),
        Next::Do(_) => None,
    });
    let name = name.expect("something to try");
    assert_eq!(plan.trial(name).map(|t| &t.name), Some(name));
    assert!(plan.trial("look nowhere").is_none());
}

#[test]
fn a_small_problem_is_searched_whole_and_agrees_with_the_best_two_steps_ahead_or_betters_it() {
    let (scenario, belief, many) = plan(&["valve_coil_open", "inlet_filter_blocked"]);
    let drills = drills(belief.sound());
    // All but three things were tried before.
    let all = trials(&scenario, &drills, false)
        .into_iter()
        .map(|t| t.name);
    let left: Vec<&String> = many.trials.iter().take(3).map(|t| &t.name).collect();
    let done = all.filter(|name| !left.contains(&name)).collect();
    let plan = Plan::new(&belief, &scenario, &drills, &done).expect("sound");
    assert_eq!(plan.trials.len(), 3);
    assert!(
        plan.model.n_states() <= MOST_EXACT_STATES && many.model.n_states() > MOST_EXACT_STATES
    );
    let near = LookAhead::new(&plan.model, 2).costs(&plan.known);
    for (act, cost) in plan.costs() {
        let ahead = near
            .iter()
            .find(|(a, _)| *a == act)
            .expect("the same acts")
            .1;
        assert!(cost <= ahead + 1e-9, "{act:?} {cost} {ahead}");
    }
}

#[test]
fn every_place_of_a_plan_is_one_stand_and_the_customers_comes_first() {
    let shipped = job("no_water").expect("sound").expect("ships");
    let all = shipped.machine.faults.iter().map(|f| f.id.as_str());
    for ids in [vec!["valve_coil_open", "belt_off"], all.collect()] {
        let (scenario, _, plan) = plan(&ids);
        assert_eq!(plan.stands[0], Stand::Ready);
        let kinds: BTreeSet<_> = plan.stands.iter().collect();
        assert_eq!(kinds.len(), plan.stands.len());
        assert!(plan.stands.len() <= MOST_PLACES && !kinds.contains(&Stand::Any));
        let rate = scenario.money.labour_per_min;
        for (a, from) in plan.stands.iter().enumerate() {
            for (b, to) in plan.stands.iter().enumerate() {
                let way = plan.model.places().way(a, b);
                assert!(
                    way <= rate * way_min(&scenario, from, to) + 1e-9,
                    "{from:?} {to:?}"
                );
            }
        }
        for (trial, test) in plan.trials.iter().zip(plan.model.tests()) {
            let stand = test.place.map(|p| &plan.stands[p]);
            assert_eq!(stand.unwrap_or(&Stand::Any), &trial.stand, "{}", trial.name);
        }
        assert!(plan.trials.len() <= 32, "{}", plan.trials.len());
    }
}

#[test]
fn a_trial_costs_the_time_it_takes() {
    let (scenario, _, plan) = plan(&["belt_off", "valve_coil_open"]);
    let at = plan.trials.iter().position(|t| t.name == "look belt");
    let test = &plan.model.tests()[at.expect("the belt tells")];
    let look = Action::Sense {
        sense: Sense::Look,
        place: "belt".to_owned(),
    };
    let minutes = ticks_of(&look, &scenario.workshop, 0.0) as f64 / 600.0;
    let cost = scenario.money.labour_per_min * minutes;
    assert!((test.cost - cost).abs() < 1e-9, "{} {cost}", test.cost);
}
