//! Talking, quoting, stating the cause, handing over.

use crate::bench::action::Advice;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Ending;
use crate::bench::job::Finding;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::DECLINED_ABOVE_RATIO;
use crate::bench::scenario::QUESTIONS;

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
        name: format!("notebook line {missing}"),
    })
}

pub(super) fn answer(job: &mut Job, question: &str, again: bool) {
    let answers = job.scenario().customer.answers.get(question);
    let text = answers
        .and_then(|list| if again { list.last() } else { list.first() })
        .cloned()
        .unwrap_or_else(|| "I could not say.".to_owned());
    job.write(NoteEntry::Answer {
        question: question.to_owned(),
        text,
    });
}

pub(super) fn quote(job: &mut Job, price: f64) -> Vec<Event> {
    let tick = job.tick();
    job.bench.quotes.push((tick, price));
    let agreed = price <= DECLINED_ABOVE_RATIO * job.scenario().money.new_machine;
    let answer = if agreed { "agreed" } else { "declined" };
    job.write(NoteEntry::Act {
        text: format!("Price named: {price:.0}; customer {answer}"),
    });
    vec![Event::Consent { agreed }]
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
        "no fault in the machine".to_owned()
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
        Advice::WhatWasDone => "Told and shown: what was wrong and what was done",
        Advice::Load => "Told: how much to load and how to spread it",
        Advice::Detergent => "Told: how much detergent",
        Advice::Filters => "Told: clean the filters now and then",
        Advice::HouseWiring => "Told: have the house wiring seen to by an electrician",
        Advice::NewMachine => "Told: a new machine is the better buy",
    };
    job.write(NoteEntry::Act {
        text: text.to_owned(),
    });
}

pub(super) fn make_safe(job: &mut Job) -> Vec<Event> {
    if job.machine.plugged() {
        job.machine.set_plugged(false);
        job.bench.isolation.unplugged = true;
    }
    job.machine.set_tap(false);
    job.bench.isolation.tap_shut = true;
    job.bench.ending = Some(Ending::MadeSafe);
    job.write(NoteEntry::Act {
        text: "Left isolated and labelled; customer informed".to_owned(),
    });
    Vec::new()
}

pub(super) fn close(job: &mut Job) -> Vec<Event> {
    job.bench.ending = Some(Ending::Closed);
    job.write(NoteEntry::Act {
        text: "Handed over".to_owned(),
    });
    Vec::new()
}
