//! The way from one stand of the machine to another, in standard minutes, and what a work's material
//! costs. Minutes: common practice.

use std::collections::BTreeSet;

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::expert::trial::Stand;

/// Making safe and proving it.
const ISOLATE_MIN: f64 = 5.0;
/// Tests and plug afterwards.
const BRING_BACK_MIN: f64 = 2.5;
/// Bailing out and laying down safely.
const BAIL_MIN: f64 = 6.0;

/// How the machine stands now.
pub(super) fn stand_of(job: &Job) -> Stand {
    if job.machine().plugged() {
        Stand::Ready
    } else {
        Stand::Open(job.bench().off.iter().cloned().collect())
    }
}

/// Minutes from one stand to another.
pub(super) fn way_min(scenario: &Scenario, from: &Stand, to: &Stand) -> f64 {
    let none = BTreeSet::new();
    let steps = |stand: &'_ Stand| -> BTreeSet<String> {
        match stand {
            Stand::Open(steps) => steps.clone(),
            _ => none.clone(),
        }
    };
    let (a, b) = (steps(from), steps(to));
    let step = |id: &String| scenario.workshop.step(id);
    let off: f64 = b
        .difference(&a)
        .filter_map(step)
        .map(|s| s.off_s / 60.0 + if s.lays_down { BAIL_MIN } else { 0.0 })
        .sum();
    let on: f64 = a
        .difference(&b)
        .filter_map(step)
        .map(|s| s.on_s / 60.0 + 0.5)
        .sum();
    let turn = match (from, to) {
        (Stand::Ready, Stand::Open(_)) => ISOLATE_MIN,
        (Stand::Open(_), Stand::Ready) => BRING_BACK_MIN,
        _ => 0.0,
    };
    off + on + turn
}

/// Material and part of a work, and the second visit where the part is not in the van.
pub(super) fn price(scenario: &Scenario, work: &Work) -> f64 {
    let part = scenario
        .workshop
        .part(&work.part)
        .filter(|_| work.kind == WorkKind::Replace);
    let is_away = part.is_some_and(|p| !scenario.van.contains(&p.id));
    let visit = if is_away {
        scenario.money.second_visit
    } else {
        0.0
    };
    work.material_price + part.map_or(0.0, |p| p.price) + visit
}
