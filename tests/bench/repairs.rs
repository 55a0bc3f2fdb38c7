//! What can be wrong can be put right: each fault of each machine has a work that makes good all it
//! touches, and those outside the machine and from earlier repairs are cured on a job.

use tubwright::bench::action::Action;
use tubwright::bench::workshop::Work;
use tubwright::bench::workshop::WorkKind;
use tubwright::bench::workshop::Workshop;
use tubwright::machine::FaultClass;
use tubwright::machine::FaultDef;
use tubwright::machine::MachineModel;
use tubwright::machine::Target;

use crate::scene::does;
use crate::scene::job;
use crate::scene::make_safe;
use crate::scene::scenario;

fn makes_good(workshop: &Workshop, work: &str, target: &Target) -> bool {
    let Some(work) = workshop.work(work) else {
        return false;
    };
    let by_part = work.kind == WorkKind::Replace
        && workshop
            .part(&work.part)
            .is_some_and(|part| part.comes_with(target));
    by_part || work.restores(target)
}

/// Works that together make good all that a fault touches, cheapest first; none when some of it
/// stays.
fn cure(model: &MachineModel, workshop: &Workshop, fault: &FaultDef) -> Option<Vec<String>> {
    let mut left = fault.targets(&model.wiring);
    let price = |w: &Work| {
        let part = workshop
            .part(&w.part)
            .filter(|_| w.kind == WorkKind::Replace);
        w.work_s / 60.0 + part.map_or(0.0, |p| p.price)
    };
    let mut works: Vec<&Work> = workshop.works.iter().collect();
    works.sort_by(|a, b| price(a).total_cmp(&price(b)));
    let mut chosen = Vec::new();
    while !left.is_empty() {
        let good = |work: &Work| {
            left.iter()
                .filter(|t| makes_good(workshop, &work.id, t))
                .count()
        };
        let best = works
            .iter()
            .map(|work| good(work))
            .max()
            .filter(|n| *n > 0)?;
        let work = works.iter().find(|work| good(work) == best)?;
        chosen.push(work.id.clone());
        left.retain(|t| !makes_good(workshop, &work.id, t));
    }
    Some(chosen)
}

#[test]
fn every_fault_of_every_machine_has_a_work_that_makes_it_good() {
    for id in ["P", "T", "N"] {
        let scenario = scenario(id, &[]);
        let without: Vec<&str> = scenario
            .machine
            .faults
            .iter()
            // A reconnected plug is no work: hands push it home.
            .filter(|fault| !fault.targets(&scenario.machine.wiring).is_empty())
            .filter(|fault| cure(&scenario.machine, &scenario.workshop, fault).is_none())
            .map(|fault| fault.id.as_str())
            .collect();
        assert!(without.is_empty(), "{id}: {without:?}");
    }
}

#[test]
fn what_is_outside_or_left_by_an_earlier_repair_is_cured_by_its_work_on_a_job() {
    for id in ["P", "T", "N"] {
        let all = scenario(id, &[]);
        let of_class =
            |fault: &&FaultDef| matches!(fault.class, FaultClass::Site | FaultClass::Refit);
        for fault in all.machine.faults.iter().filter(of_class) {
            if fault.targets(&all.machine.wiring).is_empty() {
                continue;
            }
            let cure = cure(&all.machine, &all.workshop, fault).expect("checked above");
            let mut job = job(id, &[&fault.id]);
            make_safe(&mut job);
            does(&mut job, Action::SupplyHose { attached: false });
            for work in &cure {
                let needs = all.workshop.work(work).expect("found").needs.clone();
                for step in all.workshop.closure(&needs) {
                    does(&mut job, crate::scene::off(&step.id));
                }
                does(
                    &mut job,
                    Action::Work {
                        work: work.clone(),
                        check: true,
                    },
                );
            }
            let left: Vec<_> = fault
                .targets(&all.machine.wiring)
                .into_iter()
                .filter(|target| !job.bench().healed.contains(target))
                .collect();
            assert!(left.is_empty(), "{id} {}: {left:?}", fault.id);
            assert!(job.bench().left_wrong.is_empty(), "{id} {}", fault.id);
        }
    }
}
