//! Belief against Bayes' rule by brute force: each cause's machine run alone from the beginning, all
//! likelihoods multiplied, and divided by their sum.

use std::collections::BTreeMap;
use std::sync::Arc;

use proptest::prelude::*;

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Seen as Thing;
use crate::bench::scenario::Scenario;
use crate::expert::belief::Belief;
use crate::expert::cause;
use crate::expert::degrees;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::expert::table;
use crate::expert::told::Told;
use crate::expert::weigh;
use crate::machine::ActiveFault;
use crate::machine::MachineModel;
use crate::machine::Onset;
use crate::scenario::job;

/// Until nothing in an unplugged machine moves or drips any more, ticks.
const SETTLES: u64 = 1200;

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
    let coming = if picks[0].is_multiple_of(2) {
        " Not always."
    } else {
        ""
    };
    scenario.customer.complaint = format!("{}{coming}", first.complaint);
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
    let mut act = |job: &mut Job, action: Action| {
        let outcome = job.act(action);
        seen.see(job, &outcome);
    };
    act(&mut job, Action::Plug { inserted: false });
    // With water running a look earlier is not a look later.
    act(&mut job, Action::Tap { open: false });
    job.advance(SETTLES);
    for action in acts {
        act(&mut job, action.clone());
        if matches!(action, Action::Meter { .. }) {
            act(&mut job, Action::Note);
        }
    }
    seen
}

/// What one machine makes of each act: probabilities of its lines multiplied, the words for the
/// machine's state once for each pair of words; of an act that hands could not have done there; and of
/// a protective device that is open here and not there or the other way round, once.
fn products(
    seen: &Seen,
    faults: &[ActiveFault],
    beside: [Option<&[ActiveFault]>; 2],
) -> Vec<(f64, bool)> {
    let with = |faults: &[ActiveFault]| {
        let mut faulty = Scenario::clone(&seen.scenario);
        faulty.faults = faults.to_vec();
        Job::nominal(Arc::new(faulty)).expect("starts")
    };
    let mut job = with(faults);
    let mut beside = beside.map(|faults| faults.map(with));
    let mut words: Vec<(String, String)> = Vec::new();
    let mut was_wrong = false;
    let mut products = Vec::new();
    for step in &seen.steps {
        let before = job.notebook().len();
        let could = job.follow(&step.entry, step.ticks);
        let lines_beside = beside.each_mut().map(|side| {
            let side = side.as_mut()?;
            let before_it = side.notebook().len();
            side.follow(&step.entry, step.ticks);
            Some(side.notebook()[before_it..].to_vec())
        });
        let sides = lines_beside.each_ref().map(|lines| match lines {
            Some(lines) => degrees::halves(&job.notebook()[before..], lines),
            None => Vec::new(),
        });
        let mut product = 1.0;
        for (n, note) in step.notes.iter().enumerate() {
            let Some(other) = job.notebook().get(before + n) else {
                product *= weigh::OUTLIER;
                continue;
            };
            let spread_si = match &other.entry {
                NoteEntry::Reading(r) => job.spread_si(r).unwrap_or_default(),
                _ => 0.0,
            };
            let with = |sd_si| libm::exp(weigh::note(note, Some(other), sd_si));
            let [below, above] = sides
                .each_ref()
                .map(|side| side.get(n).copied().unwrap_or_default());
            let between_si = degrees::flat_sd(below, above);
            let mut seen_between = Vec::new();
            for beside in lines_beside.iter().flatten() {
                if let Some(fit) = fit_between(note, other, beside.get(n)) {
                    seen_between.push(fit);
                }
            }
            product *= if !seen_between.is_empty() {
                let mean = seen_between.iter().sum::<f64>() / seen_between.len() as f64;
                0.5 * with(spread_si) + 0.5 * mean
            } else if between_si > 0.0 {
                0.5 * with(spread_si) + 0.5 * with(libm::hypot(spread_si, between_si))
            } else {
                with(spread_si)
            };
            let pair = (note.state.clone(), other.state.clone());
            if weigh::is_weighed(note) && !words.contains(&pair) {
                product *= libm::exp(weigh::state(note, Some(other)));
                words.push(pair);
            }
        }
        let is_wrong = job.machine().supply_tripped() != step.is_tripped;
        if is_wrong && !was_wrong {
            product *= 0.01;
        }
        was_wrong = is_wrong;
        products.push((product, could));
    }
    products
}

/// Likelihood of what was seen on a machine between two; none of what is no observation.
fn fit_between(note: &Note, at: &Note, beside: Option<&Note>) -> Option<f64> {
    let NoteEntry::Observation { sense, seen, .. } = &note.entry else {
        return None;
    };
    Some(match (&at.entry, beside.map(|line| &line.entry)) {
        (
            NoteEntry::Observation { seen: at, .. },
            Some(NoteEntry::Observation { seen: beside, .. }),
        ) => libm::exp(weigh::between(*sense, seen, [at, beside])),
        _ => weigh::OUTLIER,
    })
}

/// Always there, or one in 25 times there half of the time: for the whole start, or minute by minute.
fn likelihood(seen: &Seen, there: &[(f64, bool)], away: &[(f64, bool)], is_loose: bool) -> f64 {
    let with_hands = |(p, could): &(f64, bool)| if *could { *p } else { p * weigh::OUTLIER };
    // "Now and then" stands in some complaints of the catalogue.
    let complaint = seen.scenario.customer.complaint.to_lowercase();
    let is_said = complaint.contains("not always") || complaint.contains("now and then");
    let says = |share: f64| if is_said { share } else { 1.0 - share };
    let always = says(0.03) * there.iter().map(with_hands).product::<f64>();
    if !is_loose {
        return always;
    }
    // The first act pulls the plug and writes nothing: it ends the start before.
    let before = 0.5 * (with_hands(&there[0]) + with_hands(&away[0]));
    let (there, away, steps) = (&there[1..], &away[1..], &seen.steps[1..]);
    let held = 0.5 * there.iter().map(with_hands).product::<f64>()
        + 0.5 * away.iter().map(with_hands).product::<f64>();
    let mut draws: BTreeMap<u64, (f64, f64)> = BTreeMap::new();
    let mut draw = 0;
    for ((step, t), a) in steps.iter().zip(there).zip(away) {
        if let Some(note) = step.notes.first() {
            draw = note.tick / 600 + 1;
        }
        let of = draws.entry(draw).or_insert((1.0, 1.0));
        of.0 *= with_hands(t);
        of.1 *= with_hands(a);
    }
    let loose: f64 = draws.values().map(|(t, a)| 0.5 * t + 0.5 * a).product();
    let comes_and_goes = says(0.3) * before * (0.5 * held + 0.5 * loose);
    (1.0 - cause::LOOSE_RATIO) * always + cause::LOOSE_RATIO * comes_and_goes
}

/// The belief with the degrees reckoned with at first and none between.
fn coarse(seen: &Seen) -> Vec<f64> {
    let mut belief = Belief::new(&seen.scenario).expect("starts");
    belief.most_lines = 0;
    for step in &seen.steps {
        belief.take(step);
    }
    belief.probabilities()
}

fn brute(seen: &Seen) -> Vec<f64> {
    let scenario = &seen.scenario;
    let causes = cause::causes(scenario);
    let shown = table::shown(&scenario.machine).expect("runs");
    let mut told = Told::default();
    told.hear(&scenario.customer.complaint);
    let mut weights = vec![0.0; causes.len()];
    let sound = products(seen, &[], [None, None]);
    let variants = cause::variants(scenario, &causes);
    for (v, variant) in variants.iter().enumerate() {
        let ids = causes[variant.cause].0.iter();
        let signs = ids.fold(crate::expert::Symptoms::default(), |sum, id| {
            sum.with(shown[id])
        });
        let degree = |at: Option<usize>| {
            let other = at.and_then(|at| variants.get(at))?;
            (other.cause == variant.cause).then_some(&other.faults[..])
        };
        let beside = [degree(v.checked_sub(1)), degree(Some(v + 1))];
        let there = products(seen, &variant.faults, beside);
        weights[variant.cause] += variant.prior
            * libm::exp(told.fits(signs))
            * likelihood(seen, &there, &sound, variant.loose.is_some());
    }
    let sum: f64 = weights.iter().sum();
    weights.iter().map(|w| w / sum).collect()
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 24,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
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
        let believed = coarse(&seen);
        let by_hand = brute(&seen);
        acts.reverse();
        let turned = coarse(&worked(&scenario, &acts));
        // A contact that comes and goes may do so between two lines: then their order tells something.
        let causes = cause::causes(&scenario);
        let is_loose = cause::variants(&scenario, &causes).iter().any(|v| v.loose.is_some());
        let near = if is_loose { 0.02 } else { 1e-9 };
        for ((a, b), c) in believed.iter().zip(&by_hand).zip(&turned) {
            prop_assert!((a - b).abs() < 1e-9, "{believed:?} {by_hand:?}");
            prop_assert!((a - c).abs() < near, "{believed:?} {turned:?}");
        }
    }
}

/// Bits by which a belief moved, and bits that its uncertainty lost, by hand.
#[test]
fn each_step_tells_how_far_it_moved_the_belief_and_how_much_surer_it_made_it() {
    let scenario = wet_or_sound(Vec::new());
    let seen = worked(&scenario, &independent(&scenario));
    let belief = Belief::of(&seen).expect("runs");
    let history = belief.history();
    assert_eq!(history.len(), seen.steps.len() + 1);
    let entropy = |p: &[f64]| -> f64 {
        let there = p.iter().filter(|p| **p > 0.0);
        there.map(|p| -p * libm::log2(*p)).sum()
    };
    let mut largest = 0.0_f64;
    for (before, after) in history.iter().zip(&history[1..]) {
        let pairs = before
            .after
            .iter()
            .zip(&after.after)
            .filter(|(_, b)| **b > 0.0);
        let moved: f64 = pairs.map(|(a, b)| b * libm::log2(b / a)).sum();
        assert!((after.surprise_bits - moved).abs() < 1e-9, "{after:?}");
        let bits = entropy(&before.after) - entropy(&after.after);
        assert!((after.bits - bits).abs() < 1e-9, "{after:?}");
        largest = largest.max(moved);
    }
    assert!(largest > 0.5, "something was told: {largest}");
}

/// A look at the tap.
fn tap_seen(key: &str) -> Step {
    let seen = vec![Thing {
        key: key.to_owned(),
        amount: None,
        text: String::new(),
    }];
    let note = Note {
        number: 1,
        tick: 100,
        state: "off".to_owned(),
        entry: NoteEntry::Observation {
            sense: Sense::Look,
            place: "tap".to_owned(),
            seen,
        },
    };
    let (sense, place) = (Sense::Look, "tap".to_owned());
    let action = Action::Sense { sense, place };
    Step {
        entry: Entry { tick: 100, action },
        ticks: 20,
        notes: vec![note],
        is_tripped: false,
    }
}

#[test]
fn a_tap_that_is_first_seen_shut_was_shut_on_every_machine_and_one_seen_open_before_was_not() {
    let scenario = Seen::at_the_door(&small(&[3, 8])).scenario;
    let is_open = |steps: &[Step]| {
        let mut belief = Belief::new(&scenario).expect("starts");
        steps.iter().for_each(|step| belief.take(step));
        assert_eq!(belief.steps.len(), steps.len());
        belief.sound().job().machine().tap_open()
    };
    assert!(!is_open(&[tap_seen("tap_shut")]));
    assert!(is_open(&[tap_seen("tap_open")]));
    // Who has seen it open finds it shut by somebody's hand.
    assert!(is_open(&["tap_open", "tap_shut"].map(tap_seen)));
}

/// A job whose machine can have a wet winding and nothing else, and has what is given.
fn wet_or_sound(faults: Vec<ActiveFault>) -> Arc<Scenario> {
    let mut scenario = Scenario::clone(&job("no_water").expect("sound").expect("ships"));
    let mut model = MachineModel::clone(&scenario.machine);
    model.faults.retain(|f| f.id == "winding_wet_to_frame");
    scenario.faults = faults;
    scenario.machine = Arc::new(model);
    Arc::new(scenario)
}

#[test]
fn a_degree_between_those_reckoned_with_is_found() {
    let truth = 0.66;
    let scenario = wet_or_sound(vec![ActiveFault {
        severity_ratio: truth,
        ..ActiveFault::constant("winding_wet_to_frame")
    }]);
    let seen = worked(&scenario, &independent(&scenario));
    let belief = Belief::of(&seen).expect("runs");
    let (_, best, _) = belief.ranked()[0];
    let found = best.faults.first().map(|f| f.severity_ratio);
    assert!(
        found.is_some_and(|found| (found - truth).abs() < 0.04),
        "{found:?}"
    );
}
