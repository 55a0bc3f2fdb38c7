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

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::expert::seen::Seen;
    use crate::machine::MachineModel;
    use crate::scenario::job;

    const ONE: &str = "drain_wire_torn";
    const OTHER: &str = "coin_in_drain_valve";

    /// A job whose machine can have either of two faults, or both at once.
    fn two_faults() -> Arc<Scenario> {
        let shipped = job("pulls_and_nothing_opens")
            .expect("sound")
            .expect("ships");
        let mut scenario = Scenario::clone(&shipped);
        let mut model = MachineModel::clone(&scenario.machine);
        model
            .faults
            .retain(|f| [ONE, OTHER].contains(&f.id.as_str()));
        scenario.machine = Arc::new(model);
        scenario.faults.clear();
        scenario.customer.complaint.clear();
        scenario.double_faults = vec![[ONE.to_owned(), OTHER.to_owned()]];
        Arc::new(scenario)
    }

    fn place(belief: &Belief, all: &[Likely<'_>], ids: &[&str]) -> usize {
        let is = |l: &Likely| belief.causes()[l.cause].0 == ids;
        all.iter().position(is).expect("planned with")
    }

    #[test]
    fn half_a_repair_of_two_faults_leaves_the_other_one() {
        let scenario = two_faults();
        let belief = Belief::new(&scenario).expect("starts");
        let all = likely(&belief, &scenario);
        let [sound, one, other, both] =
            [&[][..], &[ONE], &[OTHER], &[ONE, OTHER]].map(|ids| place(&belief, &all, ids));
        let work = |of: usize| all[of].ways[0].works[0];
        assert_eq!(all[both].after(work(one), both, &all), Some(other));
        assert_eq!(all[both].after(work(other), both, &all), Some(one));
        assert_eq!(all[one].after(work(one), one, &all), None);
        assert_eq!(all[one].after(work(other), one, &all), Some(one));
        // There is nothing to mend on a sound machine.
        assert!(all[sound].is_mended && all[sound].ways.is_empty());
        assert_eq!(all[sound].after(work(one), sound, &all), Some(sound));
    }

    #[test]
    fn half_a_repair_leaves_the_other_fault_even_where_that_alone_was_ruled_out() {
        let scenario = two_faults();
        let mut belief = Belief::new(&scenario).expect("starts");
        let pair = belief
            .causes()
            .iter()
            .position(|c| c.0.len() == 2)
            .expect("a pair");
        for line in belief.lines.iter_mut().filter(|l| l.variant.cause == pair) {
            line.log_likelihood += 20.0;
        }
        let all = likely(&belief, &scenario);
        let [one, other, both] =
            [&[ONE][..], &[OTHER], &[ONE, OTHER]].map(|ids| place(&belief, &all, ids));
        assert_eq!(all.len(), 3, "each half once, and no sound machine");
        let work = |of: usize| all[of].ways[0].works[0];
        assert_eq!(all[both].after(work(one), both, &all), Some(other));
        assert_eq!(all[both].after(work(other), both, &all), Some(one));
    }

    #[test]
    fn a_fault_in_two_places_is_planned_with_whole_works_or_else_with_its_parts() {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let scenario = Seen::at_the_door(&shipped).scenario;
        let belief = Belief::new(&scenario).expect("starts");
        let works = |id: &str| -> Vec<&str> {
            let (p, variant, twin) = belief
                .ranked()
                .into_iter()
                .find(|(_, v, _)| belief.causes()[v.cause].0 == [id])
                .expect("a cause");
            let one = Likely::of(&belief, &scenario, variant.cause, p, twin);
            let works = one.ways[0].works.iter();
            works
                .map(|w| scenario.workshop.work(&w.id).expect("listed").id.as_str())
                .collect()
        };
        assert_eq!(
            works("wires_gnawed"),
            ["replace_harness", "mend_gnawed_wires"]
        );
        let parts = works("earth_open_and_winding_to_frame");
        assert_eq!(parts, ["replace_motor", "house_earth_by_electrician"]);
    }

    #[test]
    fn causes_planned_with_are_as_likely_as_all_their_degrees_together() {
        let shipped = job("no_water").expect("sound").expect("ships");
        let scenario = Seen::at_the_door(&shipped).scenario;
        let belief = Belief::new(&scenario).expect("starts");
        let all = likely(&belief, &scenario);
        let p = belief.probabilities();
        assert!(all.len() <= MOST_CAUSES, "{}", all.len());
        for one in &all {
            assert!(
                (one.p - p[one.cause]).abs() < 1e-12,
                "{:?}",
                belief.causes()[one.cause]
            );
        }
        let causes: BTreeSet<usize> = all.iter().map(|l| l.cause).collect();
        assert_eq!(causes.len(), all.len(), "each once");
        // Those left out are less likely than any that is planned with, degree by degree.
        let least = belief.ranked();
        let (first, _, _) = least
            .iter()
            .find(|(_, v, _)| !causes.contains(&v.cause))
            .expect("some");
        let leads = |l: &Likely| {
            least
                .iter()
                .any(|(p, v, _)| v.cause == l.cause && p >= first)
        };
        assert!(all.iter().all(leads));
    }

    #[test]
    fn few_causes_are_planned_with_where_they_cover_nearly_all() {
        let scenario = two_faults();
        let mut few = Scenario::clone(&scenario);
        let mut model = MachineModel::clone(&few.machine);
        // One in ten thousand calls is for the other.
        let rare = model
            .faults
            .iter_mut()
            .find(|f| f.id == OTHER)
            .expect("listed");
        rare.weight = 1e-5;
        few.machine = Arc::new(model);
        few.double_faults.clear();
        let few = Arc::new(few);
        let belief = Belief::new(&few).expect("starts");
        let all = likely(&belief, &few);
        let names: Vec<_> = all
            .iter()
            .map(|l| &belief.causes()[l.cause].0[..])
            .collect();
        assert!(names.contains(&&[ONE.to_owned()][..]), "{names:?}");
        assert!(!names.contains(&&[OTHER.to_owned()][..]), "{names:?}");
        // What is left over costs its own repair, with the way there and back.
        let def = few.machine.fault(OTHER).expect("listed");
        let rest = rest_cost(&belief, &few);
        assert!((rest - cheapest(&few, def)).abs() < 1e-9, "{rest}");
        let none = rest_cost(&Belief::new(&scenario).expect("starts"), &scenario);
        assert!(none.abs() < 1e-12, "nothing is left over: {none}");
    }

    #[test]
    fn the_cheapest_remedy_is_reckoned_with_making_safe_and_never_above_a_callback() {
        let scenario = job("no_water").expect("sound").expect("ships");
        let money = &scenario.money;
        let of = |id: &str| cheapest(&scenario, scenario.machine.fault(id).expect("listed"));
        let tap = scenario.workshop.work("open_tap").expect("listed");
        // Nothing to take off: five minutes to make safe, two and a half to bring it back.
        let by_hand = money.labour_per_min * (7.5 + tap.work_s / 60.0) + tap.material_price;
        assert!(
            (of("tap_closed") - by_hand).abs() < 1e-9,
            "{} {by_hand}",
            of("tap_closed")
        );
        let valve = scenario
            .workshop
            .work("replace_inlet_valve")
            .expect("listed");
        let least = price(&scenario, valve) + money.labour_per_min * valve.work_s / 60.0;
        assert!(of("valve_coil_open") > least.min(money.callback - 1.0));
        for def in &scenario.machine.faults {
            assert!(of(&def.id) <= money.callback, "{}", def.id);
        }
    }
}
