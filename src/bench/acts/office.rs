//! Before the visit: the phone, and what goes in the van.

use crate::bench::action::Action;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::store;
use crate::bench::visit::Ready;
use crate::bench::visit::VAN_SLOTS;
use crate::language::worded;
use crate::say;
use crate::text;

/// Labour of one question on the phone and of loading the van, s. Common practice.
const PHONE_S: f64 = 30.0;
const LOAD_S: f64 = 120.0;

/// The act belongs before the drive.
pub fn is_office(action: &Action) -> bool {
    matches!(action, Action::Phone { .. } | Action::LoadVan { .. })
}

impl Job {
    /// Nobody has driven there yet: the phone and the van can still be used.
    pub fn is_before_visit(&self) -> bool {
        self.log.iter().all(|entry| is_office(&entry.action))
    }
}

pub(super) fn cannot(job: &Job, action: &Action) -> Option<Refusal> {
    if !job.is_before_visit() {
        return super::way::not_now(text!("you are at the customer's already"));
    }
    match action {
        Action::Phone { question } => {
            let known = PHONE_QUESTIONS.iter().any(|q| q.id == question);
            (!known).then(|| super::way::unknown(question))
        }
        Action::LoadVan { parts } => cannot_load(job, parts),
        _ => None,
    }
}

fn cannot_load(job: &Job, parts: &[String]) -> Option<Refusal> {
    if parts.len() > VAN_SLOTS {
        return super::way::not_now(text!("the van has eight slots for parts"));
    }
    let scenario = job.scenario();
    let mut seen: Vec<&str> = Vec::new();
    for name in parts {
        let Some(item) = store::item(&scenario.workshop, name) else {
            return Some(super::way::unknown(name));
        };
        if store::ready(scenario, &item) != Ready::Today {
            return super::way::not_now(&say!(
                "the store has no {part} today",
                part = worded(item.name())
            ));
        }
        if seen.contains(&name.as_str()) {
            return super::way::not_now(&say!("one {part} is enough", part = worded(item.name())));
        }
        seen.push(name);
    }
    None
}

pub(super) fn perform(job: &mut Job, action: &Action) {
    match action {
        Action::Phone { question } => {
            job.ledger.office_s += PHONE_S;
            job.bench.around.phoned += 1;
            let text = answer(job, question);
            job.write(NoteEntry::Answer {
                question: question.clone(),
                text,
            });
        }
        Action::LoadVan { parts } => {
            if !job.bench.around.van_is_chosen {
                job.ledger.office_s += LOAD_S;
            }
            job.bench.around.van = parts.clone();
            job.bench.around.van_is_chosen = true;
        }
        _ => {}
    }
}

/// What is said on the phone: the file's own answer, else what would be said at the door.
fn answer(job: &Job, question: &str) -> String {
    let scenario = job.scenario();
    if let Some(text) = scenario.visit.phone.get(question) {
        return text.clone();
    }
    let at_the_door = |id: &str| {
        let answers = scenario.customer.answers.get(id);
        answers.and_then(|list| list.first()).cloned()
    };
    let said = match question {
        "phone_machine" => Some(format!(
            "{}. It says so on the front.",
            scenario.machine.name
        )),
        "phone_stage" => at_the_door("when"),
        "phone_since" => at_the_door("since"),
        "phone_shown" => at_the_door("shown"),
        _ => Some(scenario.site.notes.clone()).filter(|notes| !notes.is_empty()),
    };
    said.unwrap_or_else(|| super::finishing::DO_NOT_KNOW.to_owned())
}
