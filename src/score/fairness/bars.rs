//! Whether what is asked of a job can be reached: parts at hand, budget and time against the target,
//! and whether the expert, who knows no more at the door than anybody, puts it right.

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::score::fairness::FairnessLine;
use crate::score::fairness::fair;
use crate::score::fairness::unfair;
use crate::score::report::assess;

/// A bar should leave this much room over what a skilled technician needs. Design choice.
const ROOM_RATIO: f64 = 1.2;

/// Van and bars.
pub(super) fn lines(scenario: &Scenario) -> Vec<FairnessLine> {
    let defs = scenario.faults.iter();
    let defs = defs.filter_map(|fault| scenario.machine.fault(&fault.id));
    let mut lines: Vec<FairnessLine> = defs.filter_map(|def| in_van(scenario, def)).collect();
    lines.extend(bars(scenario));
    lines
}

/// A part that must be fetched costs a second visit.
fn in_van(scenario: &Scenario, def: &FaultDef) -> Option<FairnessLine> {
    let is_part = def.class == FaultClass::Part && !def.part.is_empty();
    let missing = is_part && !scenario.van.contains(&def.part);
    let part = scenario.workshop.part(&def.part)?;
    missing.then(|| {
        fair(&format!(
            "The {} is not in the van: if it must be replaced, that is a second visit for {:.0}.",
            part.name, scenario.money.second_visit
        ))
    })
}

/// Bars against what a skilled technician's way costs.
fn bars(scenario: &Scenario) -> Vec<FairnessLine> {
    let (rules, target) = (&scenario.rules, scenario.reference);
    if target.cost <= 0.0 {
        let barred = rules.budget_price.is_some() || rules.time_s.is_some();
        let words = "The target is not known yet: take over what the expert needs, or work the job yourself and enter what it took.";
        return vec![if barred { unfair(words) } else { fair(words) }];
    }
    let below = |what: &str, bar: Option<f64>, needs: f64| {
        bar.filter(|bar| *bar < needs).map(|bar| {
            unfair(&format!(
                "The {what} of {bar:.0} is below the {needs:.0} that a skilled technician needs: raise it to {:.0} or more.",
                ROOM_RATIO * needs
            ))
        })
    };
    let lines = [
        below("budget", rules.budget_price, target.cost),
        below(
            "time allowed in minutes",
            rules.time_s.map(|s| s / 60.0),
            target.minutes,
        ),
    ];
    let mut lines: Vec<FairnessLine> = lines.into_iter().flatten().collect();
    lines.push(fair(&format!(
        "Target: {:.0}, in {:.0} minutes.",
        target.cost, target.minutes
    )));
    lines
}

/// What a job says of itself that the expert has worked. The expert may fail where a person with a
/// good idea does not: where a target is stored, somebody has put it right.
///
/// # Errors
/// When the machine cannot be set up.
pub fn solved(worked: &Job) -> Result<FairnessLine, MachineError> {
    let (scenario, report) = (worked.scenario(), assess(worked)?);
    let minutes = worked.tick() as f64 / 600.0;
    if report.fixed {
        return Ok(fair(&format!(
            "The expert, who knows no more at the door than the apprentice, gets it right in {minutes:.0} minutes for {:.0}: it can be solved with what is allowed.",
            worked.cost()
        )));
    }
    let held = worked.bench().findings.last().map(|finding| {
        let names = finding.causes.iter();
        let names = names.filter_map(|id| scenario.machine.fault(id));
        let names: Vec<&str> = names.map(|def| def.what.as_str()).collect();
        names.join(" and ")
    });
    let held = match held.filter(|names| !names.is_empty()) {
        Some(names) => format!("it ended with “{names}” for the cause"),
        None => "it ended without a cause".to_owned(),
    };
    Ok(if scenario.reference.cost > 0.0 {
        fair(&format!(
            "The expert does not get it right: {held}. That the job can be done rests on the stored target, which comes from a person's work; expect it to be hard."
        ))
    } else {
        unfair(&format!(
            "The expert does not get it right with what is allowed: {held}. Let more point to the cause, allow more instruments, or work it yourself and enter what it took."
        ))
    })
}
