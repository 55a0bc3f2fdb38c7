//! Checks the `visit` section of a job file.

use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::questions::QUESTIONS;
use crate::bench::store;
use crate::bench::visit::Condition;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::names::Names;
use crate::scenario::problem::Problems;
use crate::scenario::visit_file::InstrumentFile;
use crate::scenario::visit_file::MannerFile;
use crate::scenario::visit_file::VisitFile;
use crate::text;

/// What holds without knowing the machine.
pub fn check_visit(job: &JobFile, problems: &mut Problems) {
    let Some(visit) = &job.visit else { return };
    let questions = Names::known(
        text!("question on the phone"),
        PHONE_QUESTIONS.iter().map(|q| q.id),
    );
    for (question, answer) in &visit.phone {
        let at = format!("visit.phone.{question}");
        questions.expect(&at, question, problems);
        problems.not_blank(&at, answer);
    }
    if let Some(instrument) = &visit.instrument {
        check_instrument(instrument, problems);
    }
    if let Some(papers) = &visit.papers {
        let bought = papers.bought_months_ago.unwrap_or(0);
        let at = "visit.papers";
        problems.in_range(
            &format!("{at}.bought_months_ago"),
            f64::from(bought),
            0.0,
            600.0,
        );
        let covered = f64::from(papers.covered_months);
        problems.in_range(&format!("{at}.covered_months"), covered, 0.0, 240.0);
    }
    check_person(job, visit, problems);
    check_place(job, visit, problems);
}

fn check_instrument(file: &InstrumentFile, problems: &mut Problems) {
    let at = |field: &str| format!("visit.instrument.{field}");
    problems.in_range(&at("battery_percent"), file.battery_percent, 5.0, 100.0);
    problems.in_range(&at("gain"), file.gain, 0.5, 2.0);
    let months = f64::from(file.calibrated_months_ago);
    problems.in_range(&at("calibrated_months_ago"), months, 0.0, 240.0);
    problems.in_range(&at("category"), f64::from(file.category), 1.0, 4.0);
}

fn check_person(job: &JobFile, visit: &VisitFile, problems: &mut Problems) {
    let Some(person) = &visit.person else { return };
    let at = "visit.person";
    problems.in_range(
        &format!("{at}.haggles_percent"),
        person.haggles_percent,
        0.0,
        90.0,
    );
    if let Some(limit) = person.limit {
        problems.in_range(&format!("{at}.limit"), limit, 0.0, 1.0e6);
    }
    let has_two = QUESTIONS.iter().any(|q| {
        let answers = job.customer.answers.get(q.id);
        answers.is_some_and(|list| list.len() == 2)
    });
    if person.manner == MannerFile::Mistaken && !has_two {
        problems.add(
            &format!("{at}.manner"),
            "\"mistaken\"",
            say!("a mistaken customer needs a question with two answers, the wrong one first"),
        );
    }
}

fn check_place(job: &JobFile, visit: &VisitFile, problems: &mut Problems) {
    for (index, condition) in visit.place.iter().enumerate() {
        let at = format!("visit.place[{index}]");
        if visit.place[..index].contains(condition) {
            problems.add(&at, format!("{condition:?}"), say!("stands there already"));
        }
        if *condition == Condition::NoResidualDevice && job.site.rcd_ma.is_some() {
            let remedy = say!("a house without the device holds no number in `site.rcd_ma`");
            problems.add(&at, "\"no_residual_device\"", remedy);
        }
        if *condition == Condition::HotWater && job.site.water_l <= 0.0 {
            let remedy = say!("hot water needs water: say how much in `site.water_l`");
            problems.add(&at, "\"hot_water\"", remedy);
        }
    }
}

/// What must be known of the machine.
pub fn check_visit_against(job: &JobFile, machine: &MachineFile, problems: &mut Problems) {
    let Some(visit) = &job.visit else { return };
    let workshop = machine.workshop.to_plain();
    let items: Vec<String> = store::items(&workshop).map(|item| item.id()).collect();
    let known = Names::known(
        text!("part or variant in the store"),
        items.iter().map(String::as_str),
    );
    for (name, line) in &visit.store {
        let at = format!("visit.store.{name}");
        known.expect(&at, name, problems);
        if let Some(price) = line.price {
            problems.in_range(&format!("{at}.price"), price, 0.0, 100_000.0);
        }
    }
}
