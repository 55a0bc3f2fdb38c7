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
