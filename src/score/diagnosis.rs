//! Diagnosis: is what was stated what is wrong? By the formula of [`formula::diagnosis`].
//!
//! A fault counts as met when the stated one has the same remedy: both touch the same part, or
//! share what a repair makes good. Half goes to the first statement, half to the last.

use std::borrow::Cow;
use std::collections::BTreeMap;

use crate::bench::job::Job;
use crate::bench::scenario::DECLINED_ABOVE_RATIO;
use crate::bench::scenario::Scenario;
use crate::bench::state::Finding;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::expert::remedy::is_for_others;
use crate::expert::remedy::remedies;
use crate::expert::remedy::same_remedy;
use crate::language::worded;
use crate::machine::FaultDef;
use crate::say;
use crate::score::formula;
use crate::score::formula::Stated;
use crate::score::lost;
use crate::score::lost::Lost;
use crate::score::lost::Why;
use crate::score::visit;

/// What is wrong lies in the wiring of the house and is for others to put right: all that can be
/// done about it is to tell somebody.
pub(super) fn needs_others(scenario: &Scenario) -> bool {
    truth(scenario)
        .into_iter()
        .any(|fault| is_for_others(scenario, fault))
}

/// Mending costs more than a customer pays: the cheapest remedies, with parts and standard times,
/// come to more than the share of a new machine above which the customer declines.
pub(super) fn not_worth_mending(scenario: &Scenario) -> bool {
    let cheapest = |fault: &FaultDef| {
        remedies(scenario, fault)
            .into_iter()
            .min_by(|a, b| price(scenario, a).total_cmp(&price(scenario, b)))
    };
    let works: BTreeMap<&str, &Work> = truth(scenario)
        .into_iter()
        .filter_map(cheapest)
        .map(|work| (work.id.as_str(), work))
        .collect();
    let needs: Vec<String> = works.values().flat_map(|w| w.needs.clone()).collect();
    let access_s: f64 = scenario
        .workshop
        .closure(&needs)
        .iter()
        .map(|step| step.off_s + step.on_s)
        .sum();
    let works_price: f64 = works.values().map(|work| price(scenario, work)).sum();
    let labour = scenario.money.labour_per_min * access_s / 60.0;
    works_price + labour > DECLINED_ABOVE_RATIO * scenario.money.new_machine
}

/// Part, material and working time of a work, money unit.
fn price(scenario: &Scenario, work: &Work) -> f64 {
    let part = scenario
        .workshop
        .part(&work.part)
        .filter(|_| work.kind == WorkKind::Replace)
        .map_or(0.0, |part| part.price);
    part + work.material_price + scenario.money.labour_per_min * work.work_s / 60.0
}

fn truth(scenario: &Scenario) -> Vec<&FaultDef> {
    scenario
        .faults
        .iter()
        .filter_map(|f| scenario.machine.fault(&f.id))
        .collect()
}

fn f1(scenario: &Scenario, finding: &Finding) -> f64 {
    let truth = truth(scenario);
    let stated = faults(scenario, finding);
    let is_met = |is: &&&FaultDef| stated.iter().any(|s| same_remedy(scenario, s, is));
    let n_met = truth.iter().filter(is_met).count();
    formula::f1(n_met, stated.len(), truth.len())
}

fn faults<'a>(scenario: &'a Scenario, finding: &Finding) -> Vec<&'a FaultDef> {
    let causes = finding.causes.iter();
    causes.filter_map(|c| scenario.machine.fault(c)).collect()
}

/// What is wrong and was not named at last; nothing where the place was left for danger.
pub(super) fn unnamed(job: &Job) -> Vec<&FaultDef> {
    if visit::was_left_for_danger(job) {
        return Vec::new();
    }
    let scenario = job.scenario();
    let last = job.bench().findings.last();
    let stated = last.map_or_else(Vec::new, |finding| faults(scenario, finding));
    let mut missed = truth(scenario);
    missed.retain(|fault| !stated.iter().any(|s| same_remedy(scenario, s, fault)));
    missed
}

/// Diagnosis as far as it was right.
pub(super) struct Diagnosis {
    pub share: f64,
    pub reasons: Vec<String>,
    /// Before evidence is counted.
    pub lost: Vec<Lost>,
}

/// What was stated, and why that is so much. `first_repair` is the first repair with its
/// justification, where decisions were judged.
pub(super) fn mark(job: &Job, is_put_right: bool, first_repair: Option<(&str, f64)>) -> Diagnosis {
    if visit::was_left_for_danger(job) {
        let why = say!("the place was not safe: nothing was looked for");
        return Diagnosis {
            share: 1.0,
            reasons: vec![why.to_owned()],
            lost: Vec::new(),
        };
    }
    let findings = &job.bench().findings;
    let (Some(first), Some(last)) = (findings.first(), findings.last()) else {
        return Diagnosis {
            share: 0.0,
            reasons: vec![say!("no cause was stated").to_owned()],
            lost: Lost::all(lost::ended(job), Why::NothingStated),
        };
    };
    let scenario = job.scenario();
    // It counts for the first statement when exactly the fault was stated that the repair is for.
    let is_for = |work: &str| match faults(scenario, first).as_slice() {
        [one] => remedies(scenario, one).iter().any(|w| w.id == work),
        _ => false,
    };
    let stated = Stated {
        first_f1: f1(scenario, first),
        first_justification: first_repair
            .filter(|(work, _)| is_for(work))
            .map(|(_, j)| j),
        last_f1: f1(scenario, last),
    };
    let mut reasons = vec![say!(
        "stated: {causes}",
        causes = words(scenario, &last.causes)
    )];
    if !is_put_right {
        reasons.push(say!("the machine still fails at hand-over").to_owned());
    }
    Diagnosis {
        share: formula::diagnosis(stated, is_put_right),
        reasons,
        lost: if is_put_right {
            by_statement(job, stated)
        } else {
            Lost::all(lost::ended(job), Why::NotPutRight)
        },
    }
}

/// What the first and the last statement lack, each of its half; one alone is both.
fn by_statement(job: &Job, stated: Stated) -> Vec<Lost> {
    let steps = lost::findings(job);
    let first = stated
        .first_f1
        .max(stated.first_justification.unwrap_or(0.0));
    let (first, last) = (0.5 * (1.0 - first), 0.5 * (1.0 - stated.last_f1));
    let all = match steps[..] {
        [only] => vec![Lost::at(Some(only), first + last, Why::Stated)],
        _ => vec![
            Lost::at(steps.first().copied(), first, Why::StatedFirst),
            Lost::at(steps.last().copied(), last, Why::StatedLast),
        ],
    };
    all.into_iter().filter(|lost| lost.share > 0.0).collect()
}

fn words(scenario: &Scenario, causes: &[String]) -> String {
    let words: Vec<Cow<'_, str>> = causes
        .iter()
        .filter_map(|c| scenario.machine.fault(c))
        .map(|f| worded(&f.what))
        .collect();
    if words.is_empty() {
        say!("no fault").to_owned()
    } else {
        words.join("; ")
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::scenario::job;

    #[test]
    fn a_machine_is_not_worth_more_than_half_a_new_one() {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        // A run capacitor for 8, 5 min of work, 3 min to take the back cover off and 3 to put it on,
        // pulling the machine out and pushing it back, at 2 a minute.
        let way = &scenario.workshop.closure(&["pull_out".to_owned()]);
        let pulled_out_min: f64 = way.iter().map(|step| step.off_s + step.on_s).sum::<f64>() / 60.0;
        let mending = 8.0 + 2.0 * (5.0 + 3.0 + 3.0 + pulled_out_min);
        scenario.money.labour_per_min = 2.0;
        scenario.money.new_machine = 2.0 * mending + 0.01;
        assert!(!not_worth_mending(&scenario));
        scenario.money.new_machine = 2.0 * mending - 0.01;
        assert!(not_worth_mending(&scenario));
    }

    #[test]
    fn material_is_paid_with_every_work_and_a_part_only_where_one_is_fitted() {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        scenario.money.labour_per_min = 2.0;
        let work = scenario.workshop.work("replace_run_capacitor");
        let mut work = work.expect("listed").clone();
        work.material_price = 7.0;
        work.work_s = 90.0;
        let part = scenario.workshop.part(&work.part).expect("listed").price;
        assert!((price(&scenario, &work) - (part + 7.0 + 3.0)).abs() < 1e-9);
        work.kind = WorkKind::Clean;
        assert!((price(&scenario, &work) - 10.0).abs() < 1e-9);
    }

    #[test]
    fn a_first_repair_that_was_justified_makes_up_for_a_first_statement_of_the_wrong_cause() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let fault = scenario.machine.fault("belt_off").expect("listed");
        let belt = remedies(&scenario, fault)[0].id.clone();
        let mut job = Job::new(Arc::clone(&scenario), 1).expect("starts");
        for cause in ["belt_off", "capacitor_open"] {
            job.act(Action::Finding {
                causes: vec![cause.to_owned()],
                evidence: Vec::new(),
            });
        }
        let share = |first| mark(&job, true, first).share;
        assert!((share(None) - 0.5).abs() < 1e-9);
        assert!((share(Some((&belt, 0.8))) - 0.9).abs() < 1e-9);
        // A repair of something else does not speak for what was stated.
        assert!((share(Some(("replace_run_capacitor", 0.8))) - 0.5).abs() < 1e-9);
    }
}
