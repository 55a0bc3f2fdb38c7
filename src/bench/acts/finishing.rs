//! Talking, quoting, stating the cause, handing over.

use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::questions::QUESTIONS;
use crate::bench::state::Finding;
use crate::bench::visit::Advice;
use crate::bench::visit::Manner;
use crate::bench::visit::OfferKind;
use crate::bench::visit::OfferOption;
use crate::say;
use crate::text;

/// Longest remark, letters.
const REMARK_LETTERS: usize = 300;
/// What somebody says who does not know.
pub(super) const DO_NOT_KNOW: &str = text!("I could not say.");
/// What somebody says who would rather not go into it.
const VAGUE: &str = text!("Oh, it just does not work as it should.");

pub(super) fn cannot_ask(question: &str) -> Option<Refusal> {
    let known = QUESTIONS.iter().any(|q| q.id == question);
    (!known).then(|| Refusal::Unknown {
        name: question.to_owned(),
    })
}

pub(super) fn cannot_state(job: &Job, causes: &[String], evidence: &[u32]) -> Option<Refusal> {
    let model = &job.scenario().machine;
    if let Some(name) = causes.iter().find(|cause| model.fault(cause).is_none()) {
        return Some(Refusal::Unknown { name: name.clone() });
    }
    let lines = job.notebook().len() as u32;
    let missing = evidence.iter().find(|n| **n == 0 || **n > lines)?;
    Some(Refusal::Unknown {
        name: say!("notebook line {n}", n = missing),
    })
}

pub(super) fn cannot_remark(text: &str) -> Option<Refusal> {
    let n = text.chars().count();
    if text.trim().is_empty() {
        return super::way::not_now(text!("a remark needs words"));
    }
    (n > REMARK_LETTERS).then(|| Refusal::NotNow {
        why: say!(
            "a remark has at most {most} letters, this has {n}",
            most = REMARK_LETTERS,
            n
        ),
    })
}

pub(super) fn remark(job: &mut Job, text: &str) {
    job.write(NoteEntry::Act {
        text: format!("Remark: {}", text.trim()),
    });
}

pub(super) fn answer(job: &mut Job, question: &str, again: bool) {
    let text = said(job, question, again);
    crate::bench::observe::notice_by_asking(job, question);
    job.write(NoteEntry::Answer {
        question: question.to_owned(),
        text,
    });
}

/// The first answer, and the second when asked differently. A vague person with one answer keeps
/// it back the first time; of two answers a mistaken person gives the wrong one first.
fn said(job: &Job, question: &str, again: bool) -> String {
    let scenario = job.scenario();
    let answers = scenario.customer.answers.get(question);
    let list = answers.map(Vec::as_slice).unwrap_or_default();
    let keeps_back = scenario.visit.person.manner == Manner::Vague && list.len() == 1;
    let text = match (again, list) {
        (false, _) if keeps_back => return VAGUE.to_owned(),
        (false, list) => list.first(),
        (true, list) => list.last(),
    };
    text.cloned().unwrap_or_else(|| DO_NOT_KNOW.to_owned())
}

pub(super) fn quote(job: &mut Job, price: f64) -> Vec<Event> {
    let repair = OfferOption {
        what: OfferKind::Repair,
        price,
    };
    super::agree::offer(job, &[], &[repair])
}

pub(super) fn state(job: &mut Job, causes: &[String], evidence: &[u32]) {
    let finding = Finding {
        tick: job.tick(),
        causes: causes.to_vec(),
        evidence: evidence.to_vec(),
    };
    let model = job.scenario().machine.clone();
    let names: Vec<&str> = causes
        .iter()
        .filter_map(|c| model.fault(c))
        .map(|f| f.what.as_str())
        .collect();
    let said = if names.is_empty() {
        text!("no fault in the machine").to_owned()
    } else {
        names.join("; ")
    };
    job.bench.findings.push(finding);
    job.write(NoteEntry::Act {
        text: format!("Fault found: {said}"),
    });
}

pub(super) fn advise(job: &mut Job, advice: Advice) {
    job.bench.advice.insert(advice);
    let text = match advice {
        Advice::WhatWasDone => text!("Told and shown: what was wrong and what was done"),
        Advice::Load => text!("Told: how much to load and how to spread it"),
        Advice::Detergent => text!("Told: how much detergent"),
        Advice::Filters => text!("Told: clean the filters now and then"),
        Advice::HouseWiring => text!("Told: have the house wiring seen to by an electrician"),
        Advice::NewMachine => text!("Told: a new machine is the better buy"),
        Advice::Level => text!("Told: keep it level, and do not move it alone"),
        Advice::OldPart => text!("Shown: the old part beside the new one"),
    };
    job.write(NoteEntry::Act {
        text: text.to_owned(),
    });
}
