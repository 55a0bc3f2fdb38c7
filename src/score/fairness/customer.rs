//! What the customer would notice of the machine, and whether the complaint speaks of that.

use crate::bench::scenario::Scenario;
use crate::bench::visit::Manner;
use crate::expert::Symptom;
use crate::expert::Symptoms;
use crate::expert::Told;
use crate::expert::shown_by;
use crate::machine::ActiveFault;
use crate::machine::FaultClass;
use crate::machine::MachineError;
use crate::machine::Onset;
use crate::say;
use crate::score::behaviour::behaviour;
use crate::score::fairness::FairnessLine;
use crate::score::fairness::fair;
use crate::score::fairness::unfair;

/// Symptoms named at most in one sentence.
const MOST_NAMED: usize = 5;
/// What goes on in one stage of a wash: a customer who says one of these may mean another. Design
/// choice.
const STAGES: [&[Symptom]; 5] = [
    &[
        Symptom::NoFill,
        Symptom::SlowFill,
        Symptom::LittleWater,
        Symptom::Overfills,
        Symptom::LosesWater,
        Symptom::RunsByItself,
    ],
    &[
        Symptom::NoWash,
        Symptom::OneWay,
        Symptom::WeakWash,
        Symptom::Creeps,
        Symptom::Hums,
    ],
    &[
        Symptom::NoDrain,
        Symptom::SlowDrain,
        Symptom::LosesWater,
        Symptom::Overfills,
        Symptom::Leaks,
    ],
    &[
        Symptom::NoSpin,
        Symptom::WeakSpin,
        Symptom::Spreads,
        Symptom::Shakes,
        Symptom::RunsOn,
    ],
    &[Symptom::Dead, Symptom::Trips, Symptom::Bites],
];
/// Too little of something and too much of it: nobody means the one by the other.
const OPPOSED: [[&[Symptom]; 2]; 1] = [[
    &[Symptom::NoFill, Symptom::SlowFill, Symptom::LittleWater],
    &[Symptom::Overfills, Symptom::RunsByItself, Symptom::Leaks],
]];
/// What is said of almost anything.
const LOOSE: [Symptom; 5] = [
    Symptom::Noise,
    Symptom::Hot,
    Symptom::Alarm,
    Symptom::Pauses,
    Symptom::Long,
];

/// Both.
pub(super) fn lines(scenario: &Scenario) -> Result<Vec<FairnessLine>, MachineError> {
    let suggested = behaviour(scenario, 1)?;
    let mut shown = shown_by(scenario, &scenario.faults)?;
    if scenario.faults.iter().any(|fault| waits(scenario, fault)) {
        // A customer has seen it come on; one program may not.
        let mut there = scenario.clone();
        for fault in &mut there.faults {
            fault.onset = Some(Onset::Constant);
        }
        shown = shown.with(shown_by(&there, &there.faults)?);
    }
    let mut said = Told::default();
    said.hear(&suggested.complaint);
    let shown = shown.with(said.wrong);
    let mut lines = vec![noticed(scenario, &suggested.complaint_said, shown)];
    lines.extend(consistent(scenario, shown));
    Ok(lines)
}

/// It is not there all the time.
fn waits(scenario: &Scenario, fault: &ActiveFault) -> bool {
    let usual = || scenario.machine.fault(&fault.id).map(|def| def.onset);
    fault.onset.or_else(usual).is_some_and(Onset::varies)
}

/// What of the words stands for something that is shown: the same, or its neighbour in a stage.
fn meant(told: Symptoms, shown: Symptoms) -> Symptoms {
    let mut fits = told.and(shown);
    for stage in STAGES {
        for told in stage.iter().filter(|symptom| told.has(**symptom)) {
            let mut near = stage.iter().filter(|near| shown.has(**near));
            if near.any(|near| !are_opposed(*told, *near)) {
                fits.put(*told, true);
            }
        }
    }
    fits
}

fn are_opposed(one: Symptom, other: Symptom) -> bool {
    OPPOSED.iter().any(|[little, much]| {
        (little.contains(&one) && much.contains(&other))
            || (much.contains(&one) && little.contains(&other))
    })
}

fn noticed(scenario: &Scenario, suggested: &str, shown: Symptoms) -> FairnessLine {
    if !suggested.is_empty() {
        return fair(say!("The customer would notice: {suggested}", suggested));
    }
    if shown != Symptoms::default() {
        return fair(say!(
            "While it is there the customer would notice: {symptoms}.",
            symptoms = named(shown),
        ));
    }
    if scenario.faults.is_empty() {
        return fair(say!(
            "The machine is sound: the right answer is to say so and to show the customer."
        ));
    }
    let class = |id: &str| scenario.machine.fault(id).map(|def| def.class);
    let is_outside = |id: &str| class(id) == Some(FaultClass::Site);
    if scenario.faults.iter().all(|fault| is_outside(&fault.id)) {
        return fair(say!(
            "The cause lies outside the machine and shows in no program: the complaint must come from what the customer knows."
        ));
    }
    unfair(say!(
        "Over a whole program the customer would notice nothing: raise the severity, let the fault come on more often, or let the complaint say when it happens."
    ))
}

/// Words are heard as the expert hears them; words it does not know say nothing.
fn consistent(scenario: &Scenario, shown: Symptoms) -> Option<FairnessLine> {
    let mut told = Told::default();
    told.hear(&scenario.customer.complaint);
    let fits = meant(told.wrong, shown);
    let other = told.wrong.without(fits);
    let is_loose = told.wrong.list().iter().all(|s| LOOSE.contains(s));
    if is_loose && fits == Symptoms::default() {
        let is_said = !scenario.faults.is_empty();
        return is_said.then(|| {
            fair(say!(
                "The complaint names nothing that could be held against the machine: whether it fits is yours to judge."
            ))
        });
    }
    if fits != Symptoms::default() {
        let fits = named(fits);
        return Some(fair(if other == Symptoms::default() {
            say!("The complaint fits what the machine does: {fits}.", fits)
        } else {
            say!(
                "The complaint fits what the machine does: {fits}. It also speaks of what the machine does not do over a program: {other}.",
                fits,
                other = named(other),
            )
        }));
    }
    let other = named(other);
    let is_meant = scenario.faults.is_empty() || scenario.visit.person.manner == Manner::Mistaken;
    if is_meant {
        return Some(fair(say!(
            "The machine does not do what the complaint speaks of ({other}): finding that out is part of this job.",
            other,
        )));
    }
    if shown == Symptoms::default() {
        // The line above has said what there is to say.
        return None;
    }
    Some(unfair(say!(
        "The complaint speaks of what the machine does not do over a program ({other}), and of nothing that it does ({shown}): take the complaint that the machine's behaviour suggests, or let the customer be mistaken.",
        other,
        shown = named(shown),
    )))
}

fn named(symptoms: Symptoms) -> String {
    let words = symptoms.list().into_iter().map(words);
    words.take(MOST_NAMED).collect::<Vec<_>>().join(", ")
}

/// As the form and the panel say it.
fn words(symptom: Symptom) -> &'static str {
    match symptom {
        Symptom::Dead => say!("it is dead"),
        Symptom::Trips => say!("the house's device trips"),
        Symptom::Bites => say!("it tingles to the touch"),
        Symptom::RunsByItself => say!("it runs without being started"),
        Symptom::NoFill => say!("no water comes"),
        Symptom::SlowFill => say!("it fills slowly"),
        Symptom::Overfills => say!("too much water"),
        Symptom::LittleWater => say!("too little water"),
        Symptom::NoWash => say!("it does not wash"),
        Symptom::OneWay => say!("it turns one way only"),
        Symptom::WeakWash => say!("it washes weakly"),
        Symptom::Creeps => say!("the basket goes round in the wash"),
        Symptom::NoDrain => say!("the water stays in"),
        Symptom::SlowDrain => say!("it empties slowly"),
        Symptom::LosesWater => say!("water leaves in the wash"),
        Symptom::NoSpin => say!("it does not spin"),
        Symptom::WeakSpin => say!("it spins weakly or leaves the washing wet"),
        Symptom::Spreads => say!("it breaks the spin off and fills again"),
        Symptom::Shakes => say!("it shakes"),
        Symptom::RunsOn => say!("it runs on after the lid is opened"),
        Symptom::Leaks => say!("water on the floor"),
        Symptom::Noise => say!("a new noise"),
        Symptom::Hums => say!("it hums and nothing moves"),
        Symptom::Hot => say!("a smell of heat"),
        Symptom::Alarm => say!("it stops with an alarm"),
        Symptom::Pauses => say!("it stops and goes on later"),
        Symptom::Long => say!("the program takes much longer"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    fn changed(change: fn(&mut Scenario)) -> Scenario {
        let mut scenario = (*job("hums_and_stands").expect("sound").expect("ships")).clone();
        change(&mut scenario);
        scenario
    }

    fn one(symptom: Symptom) -> Symptoms {
        let mut symptoms = Symptoms::default();
        symptoms.put(symptom, true);
        symptoms
    }

    #[test]
    fn what_would_be_noticed_is_told_and_that_nothing_would_be_has_its_reason() {
        let said = |suggested, shown, change: fn(&mut Scenario)| {
            let line = noticed(&changed(change), suggested, shown);
            (line.fair, line.words)
        };
        let nothing = Symptoms::default();
        let as_it_is: fn(&mut Scenario) = |_| ();
        let (is_fair, words) = said("It hums.", nothing, as_it_is);
        assert!(is_fair && words == "The customer would notice: It hums.");
        let (is_fair, words) = said("", one(Symptom::Leaks), as_it_is);
        assert!(
            is_fair && words.ends_with("would notice: water on the floor."),
            "{words}"
        );
        let (is_fair, words) = said("", nothing, |s| s.faults.clear());
        assert!(
            is_fair && words.starts_with("The machine is sound"),
            "{words}"
        );
        let tap: fn(&mut Scenario) = |s| s.faults = vec![ActiveFault::constant("tap_closed")];
        let (is_fair, words) = said("", nothing, tap);
        assert!(is_fair && words.contains("outside the machine"), "{words}");
        let (is_fair, words) = said("", nothing, as_it_is);
        assert!(!is_fair && words.contains("notice nothing"), "{words}");
    }

    #[test]
    fn a_complaint_is_held_against_what_the_machine_does() {
        let said = |complaint: &str, shown, change: fn(&mut Scenario)| {
            let mut scenario = changed(change);
            scenario.customer.complaint = complaint.to_owned();
            consistent(&scenario, shown).map(|line| (line.fair, line.words))
        };
        let as_it_is: fn(&mut Scenario) = |_| ();
        let tingles = "It tingles when I touch it.";
        let (bites, leaks) = (one(Symptom::Bites), one(Symptom::Leaks));
        let (is_fair, words) = said(tingles, bites, as_it_is).expect("a line");
        assert!(
            is_fair && words.ends_with("does: it tingles to the touch."),
            "{words}"
        );
        let both = format!("{tingles} It washes and empties, but it does not spin.");
        let (is_fair, words) = said(&both, bites, as_it_is).expect("a line");
        assert!(
            is_fair && words.ends_with("over a program: it does not spin."),
            "{words}"
        );
        let (is_fair, words) = said(tingles, leaks, as_it_is).expect("a line");
        assert!(
            !is_fair && words.contains("(it tingles to the touch)"),
            "{words}"
        );
        assert!(words.contains("(water on the floor)"), "{words}");
        // Where there is nothing wrong, or the customer is mistaken, that is the job.
        let meant: [fn(&mut Scenario); 2] = [
            |s| s.faults.clear(),
            |s| s.visit.person.manner = Manner::Mistaken,
        ];
        for change in meant {
            let (is_fair, words) = said(tingles, leaks, change).expect("a line");
            assert!(is_fair && words.contains("part of this job"), "{words}");
        }
        assert_eq!(said(tingles, Symptoms::default(), as_it_is), None);
        let (is_fair, words) = said("Good morning.", leaks, as_it_is).expect("a line");
        assert!(is_fair && words.contains("yours to judge"), "{words}");
        assert_eq!(said("Good morning.", leaks, |s| s.faults.clear()), None);
    }

    #[test]
    fn a_neighbour_in_the_wash_may_be_meant_but_never_its_opposite() {
        let fits = |told, shown| meant(one(told), one(shown)) == one(told);
        assert!(fits(Symptom::SlowFill, Symptom::NoFill));
        assert!(fits(Symptom::Overfills, Symptom::LosesWater));
        assert!(!fits(Symptom::Overfills, Symptom::NoFill));
        assert!(!fits(Symptom::LittleWater, Symptom::Overfills));
        assert!(!fits(Symptom::NoSpin, Symptom::NoFill), "another stage");
    }

    #[test]
    fn a_fault_that_comes_and_goes_waits_and_one_that_is_always_there_does_not() {
        let scenario = changed(|_| ());
        let mut fault = scenario.faults[0].clone();
        assert!(!waits(&scenario, &fault));
        let (period_s, chance_ratio) = (10.0, 0.5);
        fault.onset = Some(Onset::Intermittent {
            period_s,
            chance_ratio,
        });
        assert!(waits(&scenario, &fault));
    }
}
