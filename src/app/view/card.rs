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
use crate::app::view::shown;
use crate::app::view::verbs::repairs_outside;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::gauge::Gauge;
use crate::bench::gauge::GaugeReading;
use crate::bench::job::Job;
use crate::bench::kept;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::questions::QUESTIONS;
use crate::bench::scenario::Rules;
use crate::bench::scenario::Scenario;
use crate::bench::store;
use crate::bench::words;
use crate::bench::workshop::Workshop;
use crate::language::said;
use crate::language::worded;
use crate::say;

/// The job card.
pub fn card(job: &Job) -> CardView {
    let scenario = job.scenario();
    let asked = asked(job);
    let open = |id: &str| !asked.iter().any(|a| a.id == id);
    CardView {
        title: worded(&scenario.title).into_owned(),
        customer: worded(&scenario.customer.name).into_owned(),
        who: who(scenario),
        complaint: worded(&scenario.customer.complaint).into_owned(),
        facts: facts(job),
        questions: QUESTIONS
            .iter()
            .filter(|q| open(q.id))
            .map(|q| QuestionView {
                id: q.id.to_owned(),
                text: said(q.text).to_owned(),
            })
            .collect(),
        asked,
        outside: repairs_outside(job),
    }
}

/// The customer and where they live.
pub fn who(scenario: &Scenario) -> String {
    let customer = &scenario.customer;
    format!("{}, {}", worded(&customer.name), worded(&customer.home))
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
            item.map_or_else(
                || name_of(workshop, name),
                |item| worded(item.name()).into_owned(),
            )
        })
        .collect();
    let machine = worded(&scenario.machine.name).into_owned();
    let mut facts = vec![(say!("Machine").to_owned(), machine)];
    let mut fact = |name: &str, text: String| {
        if !text.is_empty() {
            facts.push((name.to_owned(), text));
        }
    };
    fact(say!("Place"), worded(&scenario.site.notes).into_owned());
    fact(say!("In the van"), format::listed(&van));
    let money = &scenario.money;
    fact(
        say!("Rates"),
        say!(
            "call-out {call_out}, labour {hour} an hour, new machine {new}",
            call_out = format::money(money.call_out),
            hour = format::money(money.labour_per_min * 60.0),
            new = format::money(money.new_machine),
        ),
    );
    let rules = &scenario.rules;
    let bars = [
        rules
            .budget_price
            .map(|most| say!("costs at most {most}", most = format::money(most))),
        rules
            .time_s
            .map(|most_s| format!("{:.0}", most_s / 60.0))
            .map(|minutes| say!("at most {minutes} minutes on site", minutes)),
        rules
            .pass_ratio
            .map(|least| format!("{:.0}", 100.0 * least))
            .map(|least| say!("at least {least} of 100 marks", least)),
    ];
    fact(
        say!("To reach"),
        format::listed(&bars.into_iter().flatten().collect::<Vec<_>>()),
    );
    if rules.instruments.is_some() || rules.gauges.is_some() {
        fact(say!("In the bag"), format::listed(&bag(rules)));
    }
    facts
}

/// Names of the instruments in the bag.
fn bag(rules: &Rules) -> Vec<String> {
    let modes = MeterMode::ALL.into_iter().filter(|mode| rules.has(*mode));
    let gauges = Gauge::ALL.into_iter().filter(|g| rules.has_gauge(*g));
    modes
        .map(words::mode_name)
        .chain(gauges.map(|gauge| said(gauge.about().name)))
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
            .map_or(question.as_str(), |q| said(q.text));
        // What was asked on the telephone is not asked again.
        let again =
            asked.iter().all(|a| a.id != *question) && QUESTIONS.iter().any(|q| q.id == question);
        for earlier in asked.iter_mut().filter(|a| a.id == *question) {
            earlier.again = false;
        }
        asked.push(AskedView {
            id: question.clone(),
            question: words.to_owned(),
            answer: kept::answer(text),
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
        state: kept::doing(&note.state),
        ..NoteView::default()
    };
    // The notebook is kept in English.
    view.is_price =
        matches!(&note.entry, NoteEntry::Act { text } if text.starts_with("Price named"));
    if let NoteEntry::Reading(reading) = &note.entry {
        let (red, black) = (reading.red.as_deref(), reading.black.as_deref());
        view.text = words::placed(reading.mode, red, black, workshop);
        view.value = Some(shown::reading(&reading.display));
        view.warning = reading.warning.as_deref().map(kept::warning);
        view.sheet = sheet::range(workshop, reading.mode, red, black, &note.state);
    }
    if let NoteEntry::Gauge(reading) = &note.entry {
        view.text = gauged(reading, workshop);
        view.value = Some(shown::reading(&reading.display));
        view.sheet = sheet::gauge_range(workshop, reading.gauge, &reading.place, &note.state);
    }
    view
}

/// An instrument that needs no circuit and where it was put.
fn gauged(reading: &GaugeReading, workshop: &Workshop) -> String {
    let place = workshop.place(&reading.place);
    say!(
        "{instrument}, {place}",
        instrument = said(reading.gauge.about().name),
        place = worded(place.map_or(&reading.place, |place| &place.name)),
    )
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
                Some(part) => worded(&part.name).into_owned(),
                None if fault.part.is_empty() => {
                    say!("outside the machine, or left by an earlier repair").to_owned()
                }
                None => name_of(workshop, &fault.part),
            },
            what: worded(&fault.what).into_owned(),
        })
        .collect()
}
