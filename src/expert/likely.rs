//! The likeliest causes of a moment, what would make each good, and what half a repair leaves.

use std::collections::BTreeSet;

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Work;
use crate::expert::belief::Belief;
use crate::expert::remedy::part_remedies;
use crate::expert::remedy::remedies;
use crate::expert::trial::Stand;
use crate::expert::twin::Twin;
use crate::expert::ways::price;
use crate::expert::ways::way_min;
use crate::machine::FaultDef;

/// Causes planned with.
const MOST_CAUSES: usize = 15;
/// Causes are kept until this share is covered.
const COVERED: f64 = 0.995;

/// One cause as planned with.
pub(super) struct Likely<'a> {
    /// Place among the belief's causes.
    pub cause: usize,
    /// Probability.
    pub p: f64,
    /// Its faults that are not made good yet.
    pub ways: Vec<WayOut<'a>>,
    /// Nothing of it is left.
    pub is_mended: bool,
    /// The job on its machine.
    pub job: &'a Job,
}

/// A fault and the works that put it right.
pub(super) struct WayOut<'a> {
    fault: String,
    /// Works that make it good.
    pub works: Vec<&'a Work>,
}

pub(super) fn likely<'a>(belief: &'a Belief, scenario: &'a Scenario) -> Vec<Likely<'a>> {
    let mut all: Vec<Likely> = Vec::new();
    let mut covered = 0.0;
    let ranked = belief.ranked();
    for (p, variant, twin) in &ranked {
        if let Some(known) = all.iter_mut().find(|l| l.cause == variant.cause) {
            known.p += p;
        } else if all.len() < MOST_CAUSES && covered < COVERED {
            all.push(Likely::of(belief, scenario, variant.cause, *p, twin));
        }
        covered += p;
    }
    // What half a repair of two faults leaves behind is a cause of its own.
    let halves: BTreeSet<String> = all
        .iter()
        .filter(|l| l.ways.len() > 1)
        .flat_map(|l| l.ways.iter().map(|way| way.fault.clone()))
        .collect();
    for (p, variant, twin) in &ranked {
        let ids = &belief.causes()[variant.cause].0;
        let is_half = matches!(ids.as_slice(), [one] if halves.contains(one));
        if is_half && all.iter().all(|l| l.cause != variant.cause) {
            all.push(Likely::of(belief, scenario, variant.cause, *p, twin));
        }
    }
    all
}

impl<'a> Likely<'a> {
    fn of(belief: &Belief, scenario: &'a Scenario, cause: usize, p: f64, twin: &'a Twin) -> Self {
        let ids = belief.causes()[cause].0.iter();
        let defs = ids.filter_map(|id| scenario.machine.fault(id));
        let left = defs.filter(|def| !twin.is_healed(def));
        Self {
            cause,
            p,
            ways: left
                .map(|def| {
                    let mut works = remedies(scenario, def);
                    if works.is_empty() {
                        works = part_remedies(scenario, def, &twin.job().bench().healed);
                    }
                    WayOut {
                        fault: def.id.clone(),
                        works,
                    }
                })
                .collect(),
            is_mended: twin.is_mended(),
            job: twin.job(),
        }
    }

    /// What a work leaves of the cause: all of it, nothing, or one fault of two.
    pub fn after(&self, work: &Work, place: usize, all: &[Likely<'_>]) -> Option<usize> {
        let left: Vec<&WayOut> = self.ways.iter().filter(|way| !way.has(work)).collect();
        match left.as_slice() {
            [] if !self.is_mended => None,
            [one] if self.ways.len() > 1 => all
                .iter()
                .position(|l| l.ways.len() == 1 && l.ways[0].fault == one.fault)
                .or(Some(place)),
            _ => Some(place),
        }
    }
}

impl WayOut<'_> {
    fn has(&self, work: &Work) -> bool {
        self.works.iter().any(|w| w.id == work.id)
    }
}

/// What the cheapest remedy of each of the other causes costs, expected, with the way there and back.
pub(super) fn rest_cost(belief: &Belief, scenario: &Scenario) -> f64 {
    let known = likely(belief, scenario).len();
    let mut causes = BTreeSet::new();
    let (mut mass, mut sum) = (0.0, 0.0);
    for (p, variant, _) in belief.ranked() {
        causes.insert(variant.cause);
        if causes.len() <= known {
            continue;
        }
        let ids = &belief.causes()[variant.cause].0;
        let defs = ids.iter().filter_map(|id| scenario.machine.fault(id));
        let cost: f64 = defs.map(|def| cheapest(scenario, def)).sum();
        mass += p;
        sum += p * cost;
    }
    if mass > 0.0 { sum / mass } else { 0.0 }
}

fn cheapest(scenario: &Scenario, def: &FaultDef) -> f64 {
    let rate = scenario.money.labour_per_min;
    let each = remedies(scenario, def).into_iter().map(|work| {
        let steps = scenario.workshop.closure(&work.needs);
        let stand = Stand::Open(steps.iter().map(|s| s.id.clone()).collect());
        let ways =
            way_min(scenario, &Stand::Ready, &stand) + way_min(scenario, &stand, &Stand::Ready);
        rate * (ways + work.work_s / 60.0) + price(scenario, work)
    });
    each.fold(scenario.money.callback, f64::min)
}
