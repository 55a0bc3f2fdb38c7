//! Whether what is asked of a job can be reached: faults that can be so together, parts at hand, budget and time against the target,
//! and whether the expert, who knows no more at the door than anybody, puts it right.

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::language::worded;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::say;
use crate::score::diagnosis::unnamed;
use crate::score::fairness::FairnessLine;
use crate::score::fairness::fair;
use crate::score::fairness::open;
use crate::score::fairness::unfair;
use crate::score::report::assess;

/// A bar should leave this much room over what a skilled technician needs. Design choice.
const ROOM_RATIO: f64 = 1.2;

/// Van and bars.
pub(super) fn lines(scenario: &Scenario) -> Vec<FairnessLine> {
    let defs = scenario.faults.iter();
    let defs = defs.filter_map(|fault| scenario.machine.fault(&fault.id));
    let defs: Vec<&FaultDef> = defs.collect();
    let mut lines: Vec<FairnessLine> = at_odds(scenario, &defs);
    lines.extend(defs.iter().filter_map(|def| in_van(scenario, def)));
    lines.extend(bars(scenario));
    lines
}

/// Two faults that set the same thing cannot both be so.
fn at_odds(scenario: &Scenario, defs: &[&FaultDef]) -> Vec<FairnessLine> {
    let wiring = &scenario.machine.wiring;
    let mut lines = Vec::new();
    for (nth, one) in defs.iter().enumerate() {
        let targets = one.targets(wiring);
        for other in &defs[nth + 1..] {
            if other.targets(wiring).iter().any(|t| targets.contains(t)) {
                lines.push(unfair(say!(
                    "“{one}” and “{other}” change the same thing: keep one of them.",
                    one = worded(&one.what),
                    other = worded(&other.what),
                )));
            }
        }
    }
    lines
}

/// A part that must be fetched costs a second visit.
fn in_van(scenario: &Scenario, def: &FaultDef) -> Option<FairnessLine> {
    let is_part = def.class == FaultClass::Part && !def.part.is_empty();
    let missing = is_part && !scenario.van.contains(&def.part);
    let part = scenario.workshop.part(&def.part)?;
    missing.then(|| {
        fair(say!(
            "The {part} is not in the van: if it must be replaced, that is a second visit for {price}.",
            part = worded(&part.name),
            price = whole(scenario.money.second_visit),
        ))
    })
}

/// Bars against what a skilled technician's way costs.
fn bars(scenario: &Scenario) -> Vec<FairnessLine> {
    let (rules, target) = (&scenario.rules, scenario.reference);
    if target.cost <= 0.0 {
        let barred = rules.budget_price.is_some() || rules.time_s.is_some();
        let words = say!(
            "The target is not known yet: take over what the expert needs, or work the job yourself and enter what it took."
        );
        return vec![if barred { unfair(words) } else { open(words) }];
    }
    // The bar, what is needed, what would leave room.
    let below = |bar: Option<f64>, needs: f64| {
        let bar = bar.filter(|bar| *bar < needs)?;
        Some([bar, needs, ROOM_RATIO * needs].map(whole))
    };
    let lines = [
        below(rules.budget_price, target.cost).map(|[bar, needs, room]| {
            unfair(say!(
                "The budget of {bar} is below the {needs} that a skilled technician needs: raise it to {room} or more.",
                bar,
                needs,
                room,
            ))
        }),
        below(rules.time_s.map(|s| s / 60.0), target.minutes).map(|[bar, needs, room]| {
            unfair(say!(
                "The time allowed, {bar} minutes, is below the {needs} that a skilled technician needs: raise it to {room} or more.",
                bar,
                needs,
                room,
            ))
        }),
    ];
    let mut lines: Vec<FairnessLine> = lines.into_iter().flatten().collect();
    lines.push(fair(say!(
        "Target: {cost}, in {minutes} minutes.",
        cost = whole(target.cost),
        minutes = whole(target.minutes),
    )));
    lines
}

fn whole(amount: f64) -> String {
    format!("{amount:.0}")
}

/// What a job says of itself that the expert has worked. The expert may fail where a person with a
/// good idea does not: where a target is stored, somebody has put it right.
///
/// # Errors
/// When the machine cannot be set up.
pub fn solved(worked: &Job) -> Result<FairnessLine, MachineError> {
    let (scenario, report) = (worked.scenario(), assess(worked)?);
    let minutes = worked.tick() as f64 / 600.0;
    let rules = &scenario.rules;
    let is_above = |is: f64, most: Option<f64>| most.is_some_and(|most| is > most);
    let is_dear = is_above(worked.cost(), rules.budget_price);
    if report.fixed && (is_dear || is_above(60.0 * minutes, rules.time_s)) {
        return Ok(unfair(say!(
            "The expert gets it right, but in {minutes} minutes for {price}: that is more than the job allows.",
            minutes = whole(minutes),
            price = whole(worked.cost()),
        )));
    }
    if report.fixed
        && let Some(missed) = unnamed(worked).first()
    {
        return Ok(unfair(say!(
            "The expert leaves with the machine at work and does not name “{fault}”: let something point to it, or take it out.",
            fault = worded(&missed.what),
        )));
    }
    if report.fixed {
        return Ok(fair(say!(
            "The expert, who knows no more at the door than the apprentice, gets it right in {minutes} minutes for {price}: it can be solved with what is allowed.",
            minutes = whole(minutes),
            price = whole(worked.cost()),
        )));
    }
    let held = worked.bench().findings.last().and_then(|finding| {
        let names = finding.causes.iter();
        let names = names.filter_map(|id| scenario.machine.fault(id));
        let names = names.map(|def| worded(&def.what).into_owned());
        names.reduce(|one, next| say!("{one} and {next}", one, next))
    });
    Ok(match (held, scenario.reference.cost > 0.0) {
        (Some(causes), true) => fair(say!(
            "The expert does not get it right: it ended with “{causes}” for the cause. That the job can be done rests on the stored target, which comes from a person's work; expect it to be hard.",
            causes,
        )),
        (None, true) => fair(say!(
            "The expert does not get it right: it ended without a cause. That the job can be done rests on the stored target, which comes from a person's work; expect it to be hard."
        )),
        (Some(causes), false) => unfair(say!(
            "The expert does not get it right with what is allowed: it ended with “{causes}” for the cause. Let more point to the cause, allow more instruments, or work it yourself and enter what it took.",
            causes,
        )),
        (None, false) => unfair(say!(
            "The expert does not get it right with what is allowed: it ended without a cause. Let more point to the cause, allow more instruments, or work it yourself and enter what it took."
        )),
    })
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::bench::job::Entry;
    use crate::machine::ActiveFault;
    use crate::scenario::job;

    /// What is said of the bars of a job whose target is 100 in 40 minutes.
    fn said(change: fn(&mut Scenario)) -> Vec<(bool, String)> {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        scenario.reference.cost = 100.0;
        scenario.reference.minutes = 40.0;
        change(&mut scenario);
        let lines = lines(&scenario).into_iter();
        lines.map(|line| (line.fair, line.words)).collect()
    }

    const TARGET: &str = "Target: 100, in 40 minutes.";

    #[test]
    fn a_bar_is_held_against_the_target_and_room_for_more() {
        assert_eq!(said(|_| ()), [(true, TARGET.to_owned())]);
        let tight = said(|s| {
            s.rules.budget_price = Some(90.0);
            s.rules.time_s = Some(1_800.0);
        });
        let wanted = [
            "The budget of 90 is below the 100 that a skilled technician needs: raise it to 120 or more.",
            "The time allowed, 30 minutes, is below the 40 that a skilled technician needs: raise it to 48 or more.",
        ];
        assert_eq!(tight[..2], wanted.map(|words| (false, words.to_owned())));
        let wide = said(|s| {
            s.rules.budget_price = Some(100.0);
            s.rules.time_s = Some(2_400.0);
        });
        assert_eq!(wide, [(true, TARGET.to_owned())]);
    }

    #[test]
    fn a_bar_without_a_target_is_not_fair() {
        let is_fair = |change| said(change).iter().all(|(fair, _)| *fair);
        assert!(is_fair(|s| s.reference.cost = 0.0));
        for change in [
            (|s| {
                s.reference.cost = 0.0;
                s.rules.budget_price = Some(90.0);
            }) as fn(&mut Scenario),
            |s| {
                s.reference.cost = 0.0;
                s.rules.time_s = Some(90.0);
            },
        ] {
            assert!(!is_fair(change));
        }
    }

    #[test]
    fn a_part_that_must_be_fetched_is_told_with_its_price() {
        let told = said(|s| {
            s.van.retain(|part| part != "run_capacitor");
            s.money.second_visit = 45.0;
        });
        assert_eq!(
            told[0],
            (
                true,
                "The run capacitor is not in the van: if it must be replaced, that is a second visit for 45."
                    .to_owned()
            )
        );
        // What is no part of the machine need not be in any van.
        let of_house = said(|s| s.faults[0].id = "tap_closed".to_owned());
        assert_eq!(of_house, [(true, TARGET.to_owned())]);
    }

    #[test]
    fn the_experts_way_is_told_with_its_price_and_a_failure_by_what_the_target_rests_on() {
        let text = include_str!("../../../tests/jobs/no_water.json");
        let log: Vec<Entry> = serde_json::from_str(text).expect("a log");
        let mut scenario = (*job("no_water").expect("sound").expect("ships")).clone();
        let replayed = |scenario: &Scenario, log: &[Entry]| {
            let replayed = Job::replay(Arc::new(scenario.clone()), 1, log);
            let job = replayed.expect("starts").0;
            let line = solved(&job).expect("runs");
            (job, line.fair, line.words)
        };
        let (worked, is_fair, words) = replayed(&scenario, &log);
        assert!(is_fair);
        let took = format!(
            "gets it right in {:.0} minutes for {:.0}",
            worked.tick() as f64 / 600.0,
            worked.cost()
        );
        assert!(words.contains(&took), "{words}");
        let wrong = Entry {
            tick: 0,
            action: Action::Finding {
                causes: vec!["belt_off".to_owned()],
                evidence: Vec::new(),
            },
        };
        let (_, is_fair, words) = replayed(&scenario, &[]);
        assert!(is_fair && words.contains("without a cause"), "{words}");
        let (_, is_fair, words) = replayed(&scenario, std::slice::from_ref(&wrong));
        assert!(is_fair && words.contains("for the cause"), "{words}");
        scenario.reference.cost = 0.0;
        let (_, is_fair, words) = replayed(&scenario, &[]);
        assert!(!is_fair && words.contains("without a cause"), "{words}");
        let (_, is_fair, words) = replayed(&scenario, &[wrong]);
        assert!(!is_fair && words.contains("for the cause"), "{words}");
    }

    #[test]
    fn faults_that_set_the_same_thing_are_at_odds_and_others_are_not() {
        let with = |ids: [&str; 2]| {
            let mut scenario = (*job("hums_and_stands").expect("sound").expect("ships")).clone();
            scenario.faults = ids.map(ActiveFault::constant).to_vec();
            let lines = lines(&scenario);
            lines.iter().filter(|line| !line.fair).count()
        };
        assert_eq!(with(["belt_too_tight", "belt_off"]), 1);
        assert_eq!(with(["belt_off", "tap_closed"]), 0);
    }

    #[test]
    fn an_expert_who_needs_more_than_is_allowed_or_names_too_little_is_told() {
        let text = include_str!("../../../tests/jobs/no_water.json");
        let log: Vec<Entry> = serde_json::from_str(text).expect("a log");
        let shipped = (*job("no_water").expect("sound").expect("ships")).clone();
        let said = |change: fn(&mut Scenario)| {
            let mut scenario = shipped.clone();
            change(&mut scenario);
            let replayed = Job::replay(Arc::new(scenario), 1, &log).expect("starts");
            let line = solved(&replayed.0).expect("runs");
            (line.fair, line.words)
        };
        assert!(said(|_| ()).0);
        let (is_fair, words) = said(|s| s.rules.time_s = Some(60.0));
        assert!(
            !is_fair && words.contains("more than the job allows"),
            "{words}"
        );
        let (is_fair, words) = said(|s| s.rules.budget_price = Some(1.0));
        assert!(
            !is_fair && words.contains("more than the job allows"),
            "{words}"
        );
        // The machine washes with a silent buzzer; nobody has named it.
        let (is_fair, words) = said(|s| s.faults.push(ActiveFault::constant("buzzer_silent")));
        assert!(!is_fair && words.contains("does not name “"), "{words}");
    }
}
