//! What a job keeps is the same whatever language it is worked on in, and is said in that language where
//! it is shown.

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::gauge::Gauge;
use tubwright::bench::job::Job;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::OfferKind;
use tubwright::bench::visit::OfferOption;
use tubwright::bench::visit::PictureOf;
use tubwright::bench::words;
use tubwright::language::Catalogue;
use tubwright::language::Key;
use tubwright::language::id;
use tubwright::language::speak;

use crate::scene::do_all;
use crate::scene::gauge;
use crate::scene::job;
use crate::scene::meter;
use crate::scene::off;

/// A job in which most of what can stand in a notebook is written.
fn worked() -> Job {
    let named = str::to_owned;
    let look = |place: &str| Action::Sense {
        sense: Sense::Look,
        place: named(place),
    };
    let turn = |what| Action::Turn { what };
    let refit = |step: &str, check| Action::Refit {
        step: named(step),
        check,
    };
    let price = |what, price| OfferOption { what, price };
    let mut job = job("P", &[]);
    do_all(
        &mut job,
        [
            Action::Ask {
                question: named("when"),
                again: false,
            },
            look("floor"),
            look("display"),
            Action::CheckInstrument,
            Action::VoltagePen { point: named("SL") },
            meter(MeterMode::AcVolts, "SL", "SN"),
            Action::Note,
            Action::Plug { inserted: false },
            gauge(Gauge::SpiritLevel, "floor"),
            Action::Lid { open: true },
            turn(Turnable::Tub),
            Action::Lid { open: false },
            off("pull_out"),
            off("back_cover"),
            look("run_capacitor"),
            Action::PullApart {
                connector: named("capacitor_terminal_1"),
            },
            Action::PushTogether {
                connector: named("capacitor_terminal_1"),
            },
            Action::Work {
                work: named("replace_run_capacitor"),
                check: true,
            },
            refit("back_cover", true),
            Action::Tap { open: false },
            Action::BleedHose,
            Action::SupplyHose { attached: false },
            off("lay_down"),
            turn(Turnable::DrainWire),
            off("plate_off"),
            turn(Turnable::Belt),
            refit("plate_off", true),
            refit("lay_down", true),
            Action::Offer {
                causes: Vec::new(),
                options: vec![
                    price(OfferKind::Repair, 80.0),
                    price(OfferKind::NewMachine, 400.0),
                ],
            },
            Action::CheckPapers,
            Action::Remark {
                text: named("smells of the sea"),
            },
            Action::TakePicture {
                of: PictureOf::Outside,
            },
            Action::Finding {
                causes: Vec::new(),
                evidence: Vec::new(),
            },
            Action::Advise {
                advice: Advice::WhatWasDone,
            },
            Action::Sign,
            Action::Close,
        ],
    );
    job
}

/// Every line of the notebook as it is shown.
fn shown(job: &Job) -> Vec<String> {
    let workshop = &job.scenario().workshop;
    let notes = job.notebook().iter();
    notes.map(|note| words::note(note, workshop)).collect()
}

#[test]
fn the_notebook_and_the_machine_do_not_depend_on_the_language() {
    let english = worked();
    speak(Some(Catalogue::pseudo()));
    let other = worked();
    let lines = shown(&other);
    speak(None);
    assert_eq!(english.notebook(), other.notebook());
    assert_eq!(english.machine().state_hash(), other.machine().state_hash());
    for line in lines {
        assert!(line.contains('⟦'), "{line}");
    }
}

#[test]
fn a_sentence_with_values_is_found_again_in_the_notebook() {
    let sentences = [
        "battery at {n} % of its voltage",
        "calibrated {n} months ago",
        "category {category} printed on it",
        "probes together on {instrument}: {value}",
        "{point}: the contactless tester lights",
        "pushed, it settles after {n} swings",
        "the label says {n} µF",
        "it gives {n} mm under a finger",
        "the wire travels {n} mm",
        "{connector}: pulled apart",
        "{connector}: pushed home",
        "{work}, checked",
        "{name}: {verb}",
        "{name}: {verb}, checked",
        "Price named: {offers}; {answer}",
        "{offer}, or {other}",
        "{what} for {price}",
        "Papers: {bought}; {covered}; {plate}; {misuse}",
        "Remark: {own}",
        "Fault found: {causes}",
    ];
    let job = worked();
    let english = shown(&job);
    // Each sentence begins with a number of its own, and is else as it is.
    let message = |(at, sentence): (usize, &&str)| {
        let pattern = sentence.replace('{', "{ $").replace('}', " }");
        format!("{} = #{at}#{pattern}\n", id(sentence, Key::of(sentence)))
    };
    let text: String = sentences.iter().enumerate().map(message).collect();
    speak(Some(Catalogue::read("es", &text, '.').expect("readable")));
    let marked = shown(&job);
    speak(None);
    for (at, sentence) in sentences.iter().enumerate() {
        let mark = format!("#{at}#");
        assert!(
            marked.iter().any(|line| line.contains(&mark)),
            "{sentence} is not found in {marked:#?}"
        );
    }
    let without = |line: &String| {
        let parts = line.split('#').step_by(2);
        parts.collect::<String>()
    };
    let again: Vec<String> = marked.iter().map(without).collect();
    assert_eq!(again, english);
}
