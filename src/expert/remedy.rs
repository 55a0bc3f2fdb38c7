//! What puts a fault right: works that make good all that it changes.

use std::collections::BTreeSet;

use crate::bench::scenario::Scenario;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::Target;

/// Works that make good all the fault changes, in the workshop's order. A fault without changes (a
/// silent buzzer) is made good by a new part only.
pub fn remedies<'a>(scenario: &'a Scenario, fault: &FaultDef) -> Vec<&'a Work> {
    let targets = fault.targets(&scenario.machine.wiring);
    let heals = |work: &&Work| {
        if targets.is_empty() {
            return work.kind == WorkKind::Replace && work.part == fault.part;
        }
        targets.iter().all(|target| heals(scenario, work, target))
    };
    scenario.workshop.works.iter().filter(heals).collect()
}

/// Works that make good some of what the fault changes and is not good yet: of a fault in two places
/// that no work puts right alone.
pub(super) fn part_remedies<'a>(
    scenario: &'a Scenario,
    fault: &FaultDef,
    healed: &BTreeSet<Target>,
) -> Vec<&'a Work> {
    let targets = fault.targets(&scenario.machine.wiring);
    let heals = |work: &&Work| {
        let left = targets.iter().filter(|target| !healed.contains(target));
        left.into_iter().any(|target| heals(scenario, work, target))
    };
    scenario.workshop.works.iter().filter(heals).collect()
}

fn heals(scenario: &Scenario, work: &Work, target: &Target) -> bool {
    let part = scenario.workshop.part(&work.part);
    let part = part.filter(|_| work.kind == WorkKind::Replace);
    work.restores(target) || part.is_some_and(|p| p.comes_with(target))
}

/// One work puts both right.
pub fn same_remedy(scenario: &Scenario, one: &FaultDef, other: &FaultDef) -> bool {
    let ids = |fault| -> BTreeSet<&str> {
        remedies(scenario, fault)
            .into_iter()
            .map(|work| work.id.as_str())
            .collect()
    };
    one.id == other.id || !ids(one).is_disjoint(&ids(other))
}

/// It lies in the wiring of the house and is for others to put right: all that can be done about it
/// is to tell somebody.
pub fn is_for_others(scenario: &Scenario, fault: &FaultDef) -> bool {
    let works = remedies(scenario, fault);
    fault.class == FaultClass::Site
        && !fault.wiring.is_empty()
        && works.iter().all(|work| work.kind == WorkKind::Instruct)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    fn of<'a>(scenario: &'a Scenario, id: &str) -> &'a FaultDef {
        scenario.machine.fault(id).expect("in the catalogue")
    }

    fn ids(works: Vec<&Work>) -> Vec<&str> {
        works.into_iter().map(|work| work.id.as_str()).collect()
    }

    #[test]
    fn a_silent_buzzer_is_made_good_by_a_new_one_only() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let works = remedies(&scenario, of(&scenario, "buzzer_silent"));
        assert_eq!(ids(works), ["replace_buzzer"]);
    }

    #[test]
    fn a_belt_that_is_off_is_set_or_replaced_and_cleaning_it_does_not_help() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let works = ids(remedies(&scenario, of(&scenario, "belt_off")));
        assert_eq!(works, ["replace_belt", "set_belt_tension"]);
    }

    #[test]
    fn of_a_fault_in_two_places_each_part_remedy_mends_what_is_left() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let fault = of(&scenario, "earth_open_and_winding_to_frame");
        assert!(remedies(&scenario, fault).is_empty());
        let works = |healed: &BTreeSet<Target>| ids(part_remedies(&scenario, fault, healed));
        assert_eq!(
            works(&BTreeSet::new()),
            ["replace_motor", "house_earth_by_electrician"]
        );
        let motor = Target::Element("FMF".to_owned());
        assert_eq!(
            works(&BTreeSet::from([motor])),
            ["house_earth_by_electrician"]
        );
        let targets = fault.targets(&scenario.machine.wiring);
        assert!(works(&targets.into_iter().collect()).is_empty());
    }

    #[test]
    fn two_faults_have_one_remedy_where_one_work_mends_both() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let same = |one, other| same_remedy(&scenario, of(&scenario, one), of(&scenario, other));
        assert!(same("capacitor_open", "capacitor_short"));
        assert!(same("belt_off", "belt_off"));
        assert!(!same("capacitor_open", "winding_1_open"));
        // It is itself, even where no single work mends it.
        let two = "earth_open_and_winding_to_frame";
        assert!(same(two, two) && !same(two, "winding_1_open"));
    }

    #[test]
    fn only_the_wiring_of_the_house_is_for_others() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        for (id, is) in [
            ("socket_earth_open", true),
            ("supply_low", true),
            ("tap_closed", false),
            ("water_pressure_low", false),
            ("cord_earth_broken", false),
            ("capacitor_open", false),
        ] {
            assert_eq!(is_for_others(&scenario, of(&scenario, id)), is, "{id}");
        }
    }
}
