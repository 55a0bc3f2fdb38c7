//! What works, handing over and trials are judged to be worth at a plain moment.

use super::*;
use crate::bench::action::MeterMode;
use crate::bench::notebook::Reading;
use crate::expert::drill::drills;
use crate::machine::MachineModel;
use crate::scenario::job;

const COIL: &str = "valve_coil_open";
const FILTER: &str = "inlet_filter_blocked";

/// At the door of a machine that can have some faults only.
struct Door {
    scenario: Arc<Scenario>,
    belief: Belief,
    moment: Moment,
}

fn door(ids: &[&str], complaint: &str) -> Door {
    let mut scenario = Scenario::clone(&job("no_water").expect("sound").expect("ships"));
    let mut model = MachineModel::clone(&scenario.machine);
    model.faults.retain(|f| ids.contains(&f.id.as_str()));
    scenario.machine = Arc::new(model);
    scenario.faults.clear();
    scenario.customer.complaint = complaint.to_owned();
    scenario.money.labour_per_min = 2.0;
    let scenario = Arc::new(scenario);
    let belief = Belief::new(&scenario).expect("starts");
    let drills = drills(belief.sound());
    let moment = Moment::of(&belief, &scenario, &drills, &BTreeSet::new()).expect("a problem");
    Door {
        scenario,
        belief,
        moment,
    }
}

impl Door {
    fn p(&self, ids: &[&str]) -> f64 {
        let at = self.belief.causes().iter().position(|c| c.0 == ids);
        self.belief.probabilities()[at.expect("a cause")]
    }
}

#[test]
fn a_work_is_as_likely_to_help_as_the_causes_it_mends() {
    let door = door(&[COIL, FILTER], "");
    for (work, id) in [
        ("replace_inlet_valve", COIL),
        ("clean_inlet_filter", FILTER),
    ] {
        let judged = door.moment.work(work, &Stand::Ready, 3);
        let p = judged.p.expect("known");
        assert!((p - door.p(&[id])).abs() < 1e-12, "{work} {p}");
        let remedy = Remedy::Work(work.to_owned());
        assert_eq!(
            door.moment.chances.of_remedy(&remedy),
            (p, 0.0),
            "all is planned with"
        );
        assert_eq!(
            (judged.step, judged.decided),
            (3, Decided::Work(work.to_owned()))
        );
    }
    let as_it_is = door.moment.hand_over(&Stand::Ready, 9);
    assert!((as_it_is.p.expect("known") - door.p(&[])).abs() < 1e-12);
    assert_eq!((as_it_is.step, as_it_is.decided), (9, Decided::HandOver));
}

#[test]
fn a_work_that_mends_nothing_likely_is_all_for_nothing() {
    let door = door(&[COIL, FILTER], "");
    let judged = door.moment.work("replace_motor", &Stand::Ready, 1);
    let work = door
        .scenario
        .workshop
        .work("replace_motor")
        .expect("listed");
    // The work, a minute to note it and a run; making safe, taking off, and all of it back.
    let closure = door.scenario.workshop.closure(&work.needs);
    let there = Stand::Open(closure.iter().map(|s| s.id.clone()).collect());
    let ways = way_min(&door.scenario, &Stand::Ready, &there)
        + way_min(&door.scenario, &there, &Stand::Ready);
    let minutes = work.work_s / 60.0 + 10.0 + ways;
    let cost = door.scenario.money.labour_per_min * minutes + price(&door.scenario, work);
    assert!((judged.cost - cost).abs() < 1e-9, "{} {cost}", judged.cost);
    assert!((judged.avoidable - cost).abs() < 1e-9, "{judged:?}");
    assert_eq!((judged.p, judged.justification), (Some(0.0), Some(0.0)));
    assert_eq!(judged.better, door.moment.best());
    // From outside there is no way to it.
    let outside = door.scenario.workshop.work("advise_lid").expect("listed");
    let judged = door.moment.work("advise_lid", &Stand::Ready, 1);
    let minutes = outside.work_s / 60.0 + 10.0;
    let cost = door.scenario.money.labour_per_min * minutes + price(&door.scenario, outside);
    assert!((judged.cost - cost).abs() < 1e-9, "{} {cost}", judged.cost);
}

#[test]
fn the_best_next_step_has_nothing_to_avoid_and_handing_over_a_broken_machine_risks_a_callback() {
    let door = door(&[COIL], "No water comes in.");
    let best = door.moment.best();
    assert_eq!(
        best,
        Some(Next::Do(Remedy::Work("replace_inlet_valve".to_owned())))
    );
    let judged = door.moment.work("replace_inlet_valve", &Stand::Ready, 1);
    assert!(
        judged.avoidable.abs() < 1e-9 && judged.better.is_none(),
        "{judged:?}"
    );
    assert_eq!(judged.justification, Some(1.0));
    let over = door.moment.hand_over(&Stand::Ready, 1);
    assert!((over.cost - door.scenario.money.callback).abs() < 1e-9);
    assert!(over.avoidable > 0.5 * over.cost, "{over:?}");
    assert_eq!((over.justification, over.better), (Some(0.0), best));
    // Repairing at once is the best there is, so tests save nothing.
    let (value, plain) = (door.moment.value(), door.moment.without_tests());
    assert!(
        value > judged.cost && value <= plain + 1e-9,
        "{value} {plain}"
    );
}

#[test]
fn a_trial_that_all_causes_answer_alike_costs_itself_and_its_way() {
    let door = door(&[COIL, FILTER], "");
    let before = door.belief.probabilities();
    let done = BTreeSet::new();
    let tried = |foreseen: Option<&Foreseen>, way: f64| {
        let tried = Tried {
            before: &before,
            from: &Stand::Ready,
            to: &Stand::Ready,
            foreseen,
            cost: 4.0,
            way,
            done: &done,
        };
        door.moment.tried(&tried, 2)
    };
    let nothing = tried(None, 1.5);
    assert!((nothing.avoidable - 5.5).abs() < 1e-9, "{nothing:?}");
    assert!(nothing.promised_bits.abs() < 1e-12 && nothing.better.is_some());
    let n = before.len();
    // An outcome for each cause: it tells all.
    let sure = Foreseen {
        n_outcomes: n,
        likelihood: (0..n * n).map(|i| f64::from(i / n == i % n)).collect(),
    };
    let judged = tried(Some(&sure), 1.5);
    let entropy = information::entropy(&before);
    assert!(
        (judged.promised_bits - entropy).abs() < 1e-9,
        "{judged:?} {entropy}"
    );
    assert!(judged.avoidable < nothing.avoidable - 2.0, "{judged:?}");
    // Even odds for every cause tell nothing.
    let alike = Foreseen {
        n_outcomes: 2,
        likelihood: vec![0.5; 2 * n],
    };
    let judged = tried(Some(&alike), 1.5);
    assert!((judged.avoidable - 5.5).abs() < 1e-9 && judged.promised_bits.abs() < 1e-12);
}

#[test]
fn what_the_plan_leaves_out_is_the_rest() {
    let door = door(&[COIL, FILTER], "");
    let p = door.belief.probabilities();
    let known: f64 = door.moment.plan.causes.iter().map(|c| p[*c]).sum();
    assert!((door.moment.rest(&p) - (1.0 - known)).abs() < 1e-12);
    let halved: Vec<f64> = p.iter().map(|p| 0.5 * p).collect();
    assert!((door.moment.rest(&halved) - (1.0 - 0.5 * known)).abs() < 1e-12);
}

#[test]
fn lines_are_outcomes_of_the_trials_that_write_them() {
    let note = |entry| Note {
        number: 1,
        tick: 0,
        state: String::new(),
        entry,
    };
    let look = |sense| NoteEntry::Observation {
        sense,
        place: "belt".to_owned(),
        seen: Vec::new(),
    };
    assert_eq!(
        name_of(&note(look(Sense::Look))).as_deref(),
        Some("look belt")
    );
    assert_eq!(name_of(&note(look(Sense::Smell))), None);
    let reading = Reading {
        mode: MeterMode::Ohms,
        red: Some("MA".to_owned()),
        black: Some("MB".to_owned()),
        value: None,
        display: String::new(),
        warning: None,
    };
    let reading = name_of(&note(NoteEntry::Reading(reading)));
    assert_eq!(reading.as_deref(), Some("ohms MA MB"));
}

/// At the door of a machine that may have any fault of the catalogue.
fn door_of_all() -> Door {
    let shipped = job("no_water").expect("sound").expect("ships");
    let faults = shipped.machine.faults.iter();
    let ids: Vec<&str> = faults.map(|fault| fault.id.as_str()).collect();
    door(&ids, "")
}

#[test]
fn a_remedy_outside_the_plan_is_as_likely_to_help_as_all_causes_it_mends() {
    let door = door_of_all();
    let p = door.belief.probabilities();
    let mut n_outside = 0;
    for work in &door.scenario.workshop.works {
        let (mut all, mut outside) = (0.0, 0.0);
        for (h, cause) in door.belief.causes().iter().enumerate() {
            let [id] = cause.0.as_slice() else { continue };
            let def = door.scenario.machine.fault(id).expect("listed");
            // A fault that changes nothing counts as made good from the start.
            if remedies(&door.scenario, def)
                .iter()
                .any(|w| w.id == work.id)
                && id != "buzzer_silent"
            {
                all += p[h];
                outside += if door.moment.plan.causes.contains(&h) {
                    0.0
                } else {
                    p[h]
                };
            }
        }
        let (is, beyond) = door
            .moment
            .chances
            .of_remedy(&Remedy::Work(work.id.clone()));
        assert!(
            (is - all).abs() < 1e-9 && (beyond - outside).abs() < 1e-9,
            "{}",
            work.id
        );
        n_outside += usize::from(outside > 0.0);
    }
    assert!(n_outside > 10, "{n_outside}");
    assert!(door.moment.rest(&p) > 0.1);
}

#[test]
fn what_costs_hardly_more_than_the_best_is_as_good() {
    let door = door(&[COIL], "");
    let better = |avoidable| door.moment.better(Act::Repair(0), avoidable, 100.0);
    assert_eq!(better(1.9), None);
    assert_eq!(better(2.1), Some(door.moment.plan.next(Act::Repair(0))));
}

#[test]
fn a_stand_is_its_own_place_and_what_is_tried_has_its_name() {
    let door = door(&[COIL, FILTER], "");
    for (place, stand) in door.moment.plan.stands.iter().enumerate() {
        assert_eq!(door.moment.nearest(stand), place, "{stand:?}");
    }
    assert!(door.moment.plan.stands.len() > 2);
    for trial in &door.moment.plan.trials {
        assert_eq!(door.moment.trial(&trial.name), Some(trial));
    }
}

#[test]
fn what_a_work_mends_outside_the_plan_saves_looking_further_for_it() {
    let door = door_of_all();
    let (moment, plan) = (&door.moment, &door.moment.plan);
    let judged = |id: &str| moment.work(id, &Stand::Ready, 1);
    // A work that the plan does not know saves the best cost to go as often as it helps.
    let mut saved = Vec::new();
    for work in &door.scenario.workshop.works {
        let is_planned = plan.remedies.contains(&Remedy::Work(work.id.clone()));
        let judged = judged(&work.id);
        if let Some(p) = judged.p.filter(|p| !is_planned && *p > 1e-4) {
            saved.push((judged.cost - judged.avoidable) / p);
        }
    }
    let v = saved[0];
    assert!(
        saved.len() > 3 && saved.iter().all(|s| (s - v).abs() < 1e-6),
        "{saved:?}"
    );
    assert!(
        v > 20.0 && v <= moment.value() + 1e-9,
        "{v} {}",
        moment.value()
    );
    let at = plan.remedies.iter().position(|r| *r == Remedy::LookFurther);
    let further = plan.model.repairs()[at.expect("offered")].cost;
    let mut n_beyond = 0;
    for (act, cost) in LookAhead::new(&plan.model, AHEAD).costs(&plan.known) {
        let Next::Do(Remedy::Work(id)) = plan.next(act) else {
            continue;
        };
        let (_, outside) = moment.chances.of_remedy(&Remedy::Work(id.clone()));
        let avoidable = cost - outside * further - v;
        assert!((judged(&id).avoidable - avoidable).abs() < 1e-6, "{id}");
        n_beyond += usize::from(outside > 1e-4);
    }
    assert!(n_beyond > 0);
}
