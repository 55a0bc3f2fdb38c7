//! Belief against Bayes' rule by brute force: each cause's machine run alone from the beginning, all
//! likelihoods multiplied, and divided by their sum.

use std::sync::Arc;

use proptest::prelude::*;

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::belief::Belief;
use crate::expert::cause;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::expert::table;
use crate::expert::told::Told;
use crate::expert::weigh;
use crate::machine::ActiveFault;
use crate::machine::MachineModel;
use crate::machine::Onset;
use crate::scenario::job;

/// A job on a machine that can have only some faults, the first of which it has.
fn small(picks: &[usize]) -> Arc<Scenario> {
    let mut scenario = Scenario::clone(&job("no_water").expect("sound").expect("ships"));
    let mut model = MachineModel::clone(&scenario.machine);
    let steady: Vec<_> = model
        .faults
        .iter()
        .filter(|f| f.onset == Onset::Constant)
        .cloned()
        .collect();
    let mut faults = Vec::new();
    for pick in picks {
        let def = &steady[pick % steady.len()];
        if !faults.contains(def) {
            faults.push(def.clone());
        }
    }
    model.faults = faults;
    let first = &model.faults[0];
    scenario.faults = vec![ActiveFault::constant(&first.id)];
    scenario.customer.complaint = first.complaint.clone();
    scenario.site.tap_open = true;
    scenario.machine = Arc::new(model);
    Arc::new(scenario)
}

/// Looks and readings of a machine that is unplugged and stands: none changes what another shows.
fn independent(scenario: &Scenario) -> Vec<Action> {
    let workshop = &scenario.workshop;
    let looks = workshop
        .places
        .iter()
        .filter(|p| p.needs.is_empty())
        .map(|p| Action::Sense {
            sense: Sense::Look,
            place: p.id.clone(),
        });
    let [line, neutral, earth] = &scenario.machine.roles.plug_pins;
    let read = |mode, red: &str, black: &str| Action::Meter {
        mode,
        red: Some(red.to_owned()),
        black: Some(black.to_owned()),
    };
    looks
        .chain([
            read(MeterMode::Ohms, line, neutral),
            read(MeterMode::EarthBond, earth, &scenario.machine.roles.cabinet),
            read(MeterMode::Insulation, line, earth),
        ])
        .collect()
}

fn worked(scenario: &Arc<Scenario>, acts: &[Action]) -> Seen {
    let mut job = Job::new(Arc::clone(scenario), 1).expect("starts");
    let mut seen = Seen::at_the_door(scenario);
    let mut act = |action: Action| {
        let outcome = job.act(action);
        seen.see(&job, &outcome);
    };
    act(Action::Plug { inserted: false });
    for action in acts {
        act(action.clone());
        if matches!(action, Action::Meter { .. }) {
            act(Action::Note);
        }
    }
    seen
}

/// Likelihood of a line, words for the machine's state counted once for each pair of words.
fn brute(seen: &Seen) -> Vec<f64> {
    let scenario = &seen.scenario;
    let causes = cause::causes(scenario);
    let shown = table::shown(&scenario.machine).expect("runs");
    let mut told = Told::default();
    told.hear(&scenario.customer.complaint);
    let mut weights = vec![0.0; causes.len()];
    for variant in cause::variants(scenario, &causes) {
        let mut faulty = Scenario::clone(scenario);
        faulty.faults = variant.faults.clone();
        let mut job = Job::new(Arc::new(faulty), 0).expect("starts");
        let ids = &causes[variant.cause].0;
        let signs = ids
            .iter()
            .fold(Default::default(), |sum: crate::expert::Symptoms, id| {
                sum.with(shown[id])
            });
        let mut product = variant.prior * libm::exp(told.fits(signs));
        let mut words: Vec<(String, String, usize)> = Vec::new();
        for Step {
            entry,
            ticks,
            notes,
            ..
        } in &seen.steps
        {
            let before = job.notebook().len();
            job.follow(entry, *ticks);
            for (n, note) in notes.iter().enumerate() {
                use crate::bench::notebook::NoteEntry;
                let spread_si = match job.notebook().get(before + n).map(|n| &n.entry) {
                    Some(NoteEntry::Reading(r)) => job.spread_si(r).unwrap_or_default(),
                    Some(NoteEntry::Observation { .. }) => 0.0,
                    _ => continue,
                };
                let other = job.notebook().get(before + n);
                product *= libm::exp(weigh::note(note, other, spread_si));
                let state = other.map(|n| n.state.clone()).unwrap_or_default();
                let pair = (note.state.clone(), state, job.bench().works.len());
                if !words.contains(&pair) {
                    product *= libm::exp(weigh::state(note, other));
                    words.push(pair);
                }
            }
        }
        weights[variant.cause] += product;
    }
    let sum: f64 = weights.iter().sum();
    weights.iter().map(|w| w / sum).collect()
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 12,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    #[ignore = "does not hold for every draw yet: some lines count once by one and twice by the other"]
    fn belief_is_bayes_rule_in_whatever_order_independent_lines_come(
        picks in proptest::collection::vec(0_usize..500, 2..6),
        keys in proptest::collection::vec(0.0_f64..1.0, 40),
        n in 1_usize..14,
    ) {
        let scenario = small(&picks);
        let mut acts: Vec<(f64, Action)> = keys.into_iter().zip(independent(&scenario)).collect();
        acts.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut acts: Vec<Action> = acts.into_iter().take(n).map(|(_, a)| a).collect();
        let seen = worked(&scenario, &acts);
        let believed = Belief::of(&seen).expect("runs").probabilities();
        let by_hand = brute(&seen);
        acts.reverse();
        let turned = Belief::of(&worked(&scenario, &acts)).expect("runs").probabilities();
        for ((a, b), c) in believed.iter().zip(&by_hand).zip(&turned) {
            prop_assert!((a - b).abs() < 1e-9, "{believed:?} {by_hand:?}");
            prop_assert!((a - c).abs() < 1e-6, "{believed:?} {turned:?}");
        }
    }
}
