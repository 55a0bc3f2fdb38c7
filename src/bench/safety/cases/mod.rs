//! For every rule one situation that breaks it and one, close by, that does not.

mod closing;
mod handling;
mod isolation;
mod measuring;
mod motion;
mod power;
mod water;

use std::collections::BTreeSet;

use crate::bench::safety::broken;
use crate::bench::safety::rules;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::Situation;

type Edit = fn(&mut Situation);

/// Rule, act, what breaks it, and what comes close and does not.
struct Case(&'static str, Act, Edit, Edit);

fn breaks(act: Act, edit: Edit, id: &str) -> bool {
    let mut situation = Situation::orderly(act);
    edit(&mut situation);
    broken(&situation).any(|rule| rule.id == id)
}

fn all_cases() -> impl Iterator<Item = &'static Case> {
    isolation::CASES
        .iter()
        .chain(measuring::CASES)
        .chain(power::CASES)
        .chain(motion::CASES)
        .chain(water::CASES)
        .chain(handling::CASES)
        .chain(closing::CASES)
}

#[test]
fn every_rule_is_broken_by_its_case_and_not_by_its_neighbour() {
    for Case(id, act, break_it, keep_it) in all_cases() {
        assert!(breaks(*act, *break_it, id), "{id} is not broken");
        assert!(
            !breaks(*act, *keep_it, id),
            "{id} is broken by its neighbour"
        );
    }
}

#[test]
fn no_facts_break_a_rule_when_nothing_is_done_that_a_rule_is_about() {
    for Case(id, act, break_it, _) in all_cases() {
        let mut situation = Situation::orderly(*act);
        break_it(&mut situation);
        situation.act = Act::Other;
        let ids: Vec<_> = broken(&situation).map(|rule| rule.id).collect();
        assert!(ids.is_empty(), "{id}: {ids:?}");
    }
}

#[test]
fn every_rule_has_a_case() {
    let with_case: BTreeSet<_> = all_cases().map(|case| case.0).collect();
    let missing: Vec<_> = rules()
        .map(|rule| rule.id)
        .filter(|id| !with_case.contains(id))
        .collect();
    assert!(missing.is_empty(), "{missing:?}");
    assert_eq!(with_case.len(), rules().count());
}

#[test]
fn acts_that_are_wrong_in_themselves_break_only_their_rule() {
    for (act, id) in [
        (Act::BridgeLid, "lid_bridged"),
        (Act::WorkOnHouseWiring, "house_wiring_worked_on"),
    ] {
        let situation = Situation::orderly(act);
        let ids: Vec<_> = broken(&situation).map(|rule| rule.id).collect();
        assert_eq!(ids, [id]);
        assert!(!breaks(Act::Other, |_| {}, id));
    }
}

#[test]
fn a_live_measurement_on_a_dry_floor_with_a_good_meter_breaks_nothing() {
    let mut situation = Situation::orderly(Act::Measure);
    situation.supply.is_plugged = true;
    situation.supply.is_switched_on = true;
    situation.supply.is_secured = false;
    situation.probe.voltage_v = 230.0;
    situation.machine.n_covers_off = 1;
    assert_eq!(broken(&situation).count(), 0);
}

#[test]
fn making_safe_and_leaving_breaks_nothing() {
    let mut situation = Situation::orderly(Act::HandOver);
    situation.tests.is_put_out_of_use = true;
    situation.tests.earth_bond_ohm = Some(5.0);
    situation.tests.function_was_run = false;
    situation.machine.has_weeping_joint = true;
    situation.site.earth_is_known_missing = true;
    situation.site.has_seen_house_defect = true;
    situation.site.house_defect_was_told = true;
    assert_eq!(broken(&situation).count(), 0);
}
