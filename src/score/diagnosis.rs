//! Diagnosis: is what was stated what is wrong?
//!
//! ```text
//! F1 = 2 |stated ∩ true| / (|stated| + |true|)        1 when both are empty
//! ```
//! A fault counts as met when the stated one has the same remedy: both touch the same part, or
//! share what a repair makes good. Half the points go to the first statement, half to the last.
//! Source of the form: published (F-measure).

use std::collections::BTreeMap;

use crate::bench::job::Finding;
use crate::bench::job::Job;
use crate::bench::scenario::DECLINED_ABOVE_RATIO;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::expert::remedy::is_for_others;
use crate::expert::remedy::remedies;
use crate::expert::remedy::same_remedy;
use crate::machine::FaultDef;
use crate::score::report::Part;
use crate::score::visit;

const OF: f64 = 30.0;

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
    let stated: Vec<&FaultDef> = finding
        .causes
        .iter()
        .filter_map(|c| scenario.machine.fault(c))
        .collect();
    if truth.is_empty() && stated.is_empty() {
        return 1.0;
    }
    let met = truth
        .iter()
        .filter(|is| stated.iter().any(|s| same_remedy(scenario, s, is)))
        .count();
    2.0 * met as f64 / (stated.len() + truth.len()) as f64
}

pub(super) fn mark(job: &Job, fixed: bool) -> Part {
    if visit::was_left_for_danger(job) {
        return Part::whole(
            "diagnosis",
            OF,
            "the place was not safe: nothing was looked for",
        );
    }
    let findings = &job.bench().findings;
    let (Some(first), Some(last)) = (findings.first(), findings.last()) else {
        let reasons = vec!["no cause was stated".to_owned()];
        return Part {
            name: "diagnosis",
            of: OF,
            points: 0.0,
            reasons,
        };
    };
    let scenario = job.scenario();
    let share = 0.5 * f1(scenario, first) + 0.5 * f1(scenario, last);
    let mut reasons = vec![format!("stated: {}", words(scenario, &last.causes))];
    if !fixed {
        reasons.push("the machine still fails at hand-over".to_owned());
    }
    let points = if fixed { OF * share } else { 0.0 };
    Part {
        name: "diagnosis",
        of: OF,
        points,
        reasons,
    }
}

fn words(scenario: &Scenario, causes: &[String]) -> String {
    let words: Vec<&str> = causes
        .iter()
        .filter_map(|c| scenario.machine.fault(c))
        .map(|f| f.what.as_str())
        .collect();
    if words.is_empty() {
        "no fault".to_owned()
    } else {
        words.join("; ")
    }
}
