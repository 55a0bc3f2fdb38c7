//! The job card, the notebook and the list of causes, from a job.

use crate::app::format;
use crate::app::view::AskedView;
use crate::app::view::CardView;
use crate::app::view::CauseView;
use crate::app::view::NoteKind;
use crate::app::view::NoteView;
use crate::app::view::QuestionView;
use crate::app::view::names::name_of;
use crate::app::view::sheet;
use crate::app::view::verbs::repairs_outside;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::scenario::QUESTIONS;
use crate::bench::scenario::Rules;
use crate::bench::scenario::Scenario;
use crate::bench::store;
use crate::bench::visit::PHONE_QUESTIONS;
use crate::bench::words;

/// The job card.
pub fn card(job: &Job) -> CardView {
    let scenario = job.scenario();
    let asked = asked(job);
    let open = |id: &str| !asked.iter().any(|a| a.id == id);
    CardView {
        title: scenario.title.clone(),
        customer: scenario.customer.name.clone(),
        who: format!("{}, {}", scenario.customer.name, scenario.customer.home),
        complaint: scenario.customer.complaint.clone(),
        facts: facts(job),
        questions: QUESTIONS
            .iter()
            .filter(|q| open(q.id))
            .map(|q| QuestionView {
                id: q.id.to_owned(),
                text: q.text.to_owned(),
            })
            .collect(),
        asked,
        outside: repairs_outside(job),
    }
}

fn facts(job: &Job) -> Vec<(String, String)> {
    let scenario = job.scenario();
    let workshop = &scenario.workshop;
    let van: Vec<String> = job
        .bench()
        .around
        .van
        .iter()
        .map(|name| {
            let item = store::item(workshop, name);
            item.map_or_else(|| name_of(workshop, name), |item| item.name().to_owned())
        })
        .collect();
    let mut facts = vec![("Machine".to_owned(), scenario.machine.name.clone())];
    let mut fact = |name: &str, text: String| {
        if !text.is_empty() {
            facts.push((name.to_owned(), text));
        }
    };
    fact("Place", scenario.site.notes.clone());
    fact("In the van", format::listed(&van));
    let money = &scenario.money;
    fact(
        "Rates",
        format!(
            "call-out {}, labour {} an hour, new machine {}",
            format::money(money.call_out),
            format::money(money.labour_per_min * 60.0),
            format::money(money.new_machine)
        ),
    );
    let rules = &scenario.rules;
    let bars = [
        rules
            .budget_price
            .map(|most| format!("costs at most {}", format::money(most))),
        rules
            .time_s
            .map(|most_s| format!("at most {:.0} minutes on site", most_s / 60.0)),
        rules
            .pass_ratio
            .map(|least| format!("at least {:.0} of 100 marks", 100.0 * least)),
    ];
    fact(
        "To reach",
        format::listed(&bars.into_iter().flatten().collect::<Vec<_>>()),
    );
    if rules.instruments.is_some() || rules.gauges.is_some() {
        fact("In the bag", format::listed(&bag(rules)));
    }
    facts
}

/// Names of the instruments in the bag.
fn bag(rules: &Rules) -> Vec<String> {
    let modes = MeterMode::ALL.into_iter().filter(|mode| rules.has(*mode));
    let gauges = Gauge::ALL.into_iter().filter(|g| rules.has_gauge(*g));
    modes
        .map(words::mode_name)
        .chain(gauges.map(|gauge| gauge.about().name))
        .map(str::to_owned)
        .collect()
}

fn asked(job: &Job) -> Vec<AskedView> {
    let mut asked: Vec<AskedView> = Vec::new();
    for note in job.notebook() {
        let NoteEntry::Answer { question, text } = &note.entry else {
            continue;
        };
        let words = QUESTIONS
            .iter()
            .chain(&PHONE_QUESTIONS)
            .find(|q| q.id == question)
            .map_or(question.as_str(), |q| q.text);
        // What was asked on the telephone is not asked again.
        let again =
            asked.iter().all(|a| a.id != *question) && QUESTIONS.iter().any(|q| q.id == question);
        for earlier in asked.iter_mut().filter(|a| a.id == *question) {
            earlier.again = false;
        }
        asked.push(AskedView {
            id: question.clone(),
            question: words.to_owned(),
            answer: text.clone(),
            again,
        });
    }
    asked
}

/// The notebook.
pub fn notes(job: &Job) -> Vec<NoteView> {
    job.notebook().iter().map(|note| line(job, note)).collect()
}

fn line(job: &Job, note: &Note) -> NoteView {
    let workshop = &job.scenario().workshop;
    let mut view = NoteView {
        number: note.number,
        time: format::clock(note.tick),
        kind: kind(&note.entry),
        text: words::note(note, workshop),
        state: note.state.replace('_', " "),
        ..NoteView::default()
    };
    if let NoteEntry::Reading(reading) = &note.entry {
        view.text = what_was_measured(job, reading);
        view.value = Some(reading.display.clone());
        view.warning = reading.warning.clone();
        let (red, black) = (reading.red.as_deref(), reading.black.as_deref());
        view.sheet = sheet::range(workshop, reading.mode, red, black, &note.state);
    }
    if let NoteEntry::Gauge(reading) = &note.entry {
        let whole = words::gauge(reading, workshop);
        let ending = format!(": {}", reading.display);
        view.text = whole.strip_suffix(&ending).unwrap_or(&whole).to_owned();
        view.value = Some(reading.display.clone());
        view.sheet = sheet::gauge_range(workshop, reading.gauge, &reading.place, &note.state);
    }
    view
}

fn what_was_measured(job: &Job, reading: &Reading) -> String {
    let whole = words::reading(reading, &job.scenario().workshop);
    let ending = format!(": {}", reading.display);
    whole.strip_suffix(&ending).unwrap_or(&whole).to_owned()
}

fn kind(entry: &NoteEntry) -> NoteKind {
    match entry {
        NoteEntry::Reading(_) | NoteEntry::Gauge(_) => NoteKind::Reading,
        NoteEntry::Observation {
            sense: Sense::Listen,
            ..
        } => NoteKind::Sound,
        NoteEntry::Observation { .. } => NoteKind::Look,
        NoteEntry::Answer { .. } => NoteKind::Customer,
        NoteEntry::Act { .. } => NoteKind::Act,
    }
}

/// Every cause the machine can have, by part, in the catalogue's order: it says nothing about
/// this job.
pub fn causes(scenario: &Scenario) -> Vec<CauseView> {
    let workshop = &scenario.workshop;
    scenario
        .machine
        .faults
        .iter()
        .map(|fault| CauseView {
            id: fault.id.clone(),
            part: match workshop.part(&fault.part) {
                Some(part) => part.name.clone(),
                None if fault.part.is_empty() => {
                    "outside the machine, or left by an earlier repair".to_owned()
                }
                None => name_of(workshop, &fault.part),
            },
            what: fault.what.clone(),
        })
        .collect()
}
