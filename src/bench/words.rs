//! Plain words for acts and notebook lines.

use std::borrow::Cow;

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::MeterMode;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::acts;
use crate::bench::gauge::GaugeReading;
use crate::bench::kept;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::questions::QUESTIONS;
use crate::bench::visit::EmptyBy;
use crate::bench::visit::OfferOption;
use crate::bench::visit::Payer;
use crate::bench::workshop::Workshop;
use crate::language::said;
use crate::language::worded;
use crate::say;

/// What an act is, plain words.
pub fn act(action: &Action, workshop: &Workshop) -> String {
    let plain = match action {
        Action::Ask { question, .. } => return ask(question),
        Action::Phone { question } => {
            return say!("ask on the phone: {question}", question = ask(question));
        }
        Action::Key { key } if workshop.part("timer").is_some() => knob_act(*key),
        Action::Key { key } => key_act(*key),
        Action::Gauge { gauge, place: id } => {
            let what = said(gauge.about().name);
            return say!("{what}: {place}", what, place = place(id, workshop));
        }
        Action::Sense { sense, place: id } => {
            let what = sense_name(*sense);
            return say!("{what}: {place}", what, place = place(id, workshop));
        }
        Action::Meter { mode, red, black } => {
            return placed(*mode, red.as_deref(), black.as_deref(), workshop);
        }
        Action::VoltagePen { point } => {
            return say!(
                "contactless tester: {point}",
                point = test_point(point, workshop)
            );
        }
        Action::Turn { what } => return say!("{what} by hand", what = turnable_name(*what)),
        Action::TakeOff { .. }
        | Action::Refit { .. }
        | Action::PullApart { .. }
        | Action::PushTogether { .. }
        | Action::Work { .. }
        | Action::PutOldBack { .. } => return hands(action, workshop),
        Action::Quote { price } => {
            return say!("name the price: {price}", price = format!("{price:.0}"));
        }
        Action::Offer { options, .. } => return offer(options),
        Action::LoadVan { parts } => return say!("load the van with {n} parts", n = parts.len()),
        Action::Discharge { what, tool } => discharge(*what, *tool),
        Action::Lid { open: true } => say!("open the lid"),
        Action::Lid { open: false } => say!("shut the lid"),
        Action::Plug { inserted: true } => say!("put the plug in"),
        Action::Plug { inserted: false } => say!("pull the plug"),
        Action::Breaker => say!("set the breaker again"),
        Action::HouseSwitch { on: true } => say!("switch the socket's circuit on"),
        Action::HouseSwitch { on: false } => say!("switch the socket's circuit off at the board"),
        Action::ProveTester => say!("prove the tester on its known source"),
        Action::NewMeterFuse => say!("put new fuses into the instruments"),
        Action::Splitter { fitted: true } => say!("put the splitter lead in"),
        Action::Splitter { fitted: false } => say!("take the splitter lead away"),
        Action::Secure => say!("keep the plug in sight"),
        Action::Tap { open: true } => say!("open the tap"),
        Action::Tap { open: false } => say!("shut the tap"),
        Action::Remark { .. } => say!("write a remark"),
        Action::DryOut => say!("dry what got wet inside"),
        Action::BleedHose => say!("bleed the supply hose into a bucket"),
        Action::SupplyHose { attached: true } => say!("screw the supply hose on"),
        Action::SupplyHose { attached: false } => say!("take the supply hose off"),
        Action::BridgeLid { fitted: true } => say!("bridge the lid switch"),
        Action::BridgeLid { fitted: false } => say!("take the bridge off the lid switch"),
        Action::Note => say!("note the reading"),
        Action::Empty {
            how: EmptyBy::Bucket,
        } => say!("bail the water out with a bucket"),
        Action::Empty {
            how: EmptyBy::DrainWire,
        } => say!("let the water out by the drain wire"),
        Action::AskPayer => say!("telephone the landlord"),
        Action::TakeFee => say!("take the fee for finding the fault"),
        Action::CheckPapers => say!("read receipt and rating plate"),
        Action::Warranty {
            payer: Payer::Maker,
        } => say!("decide: the maker pays"),
        Action::Warranty {
            payer: Payer::Customer,
        } => say!("decide: the customer pays"),
        Action::CheckInstrument => say!("look the instrument over, probes together"),
        Action::SpareInstrument => say!("take the spare instrument"),
        Action::ProtectFloor => say!("lay a blanket on the floor"),
        Action::Gloves { on: true } => say!("put gloves on"),
        Action::Gloves { on: false } => say!("take the gloves off"),
        Action::MopFloor => say!("mop the floor"),
        Action::KeepClear => say!("ask for the room to be kept free"),
        Action::CoolWater => say!("pour a bucket of cold water in"),
        Action::MendHouse => say!("work on the wiring of the house"),
        Action::TakePicture { .. } => say!("take a picture for the report"),
        Action::Sign => say!("have the report signed"),
        Action::Hint => say!("ask for a hint"),
        Action::LeaveUntil { label: true, .. } => say!("leave until the second visit, labelled"),
        Action::LeaveUntil { label: false, .. } => {
            say!("leave until the second visit, without a label")
        }
        Action::Finding { .. } => say!("state the fault found"),
        Action::Advise { .. } => say!("advise the customer"),
        Action::MakeSafeAndLeave => say!("make safe and leave"),
        Action::Close => say!("hand over"),
    };
    plain.to_owned()
}

/// Acts on pieces of the machine.
fn hands(action: &Action, workshop: &Workshop) -> String {
    let step = |id: &String| {
        let known = workshop.step(id);
        let verbs = known.map(|s| (worded(&s.verb), worded(&s.refit_verb)));
        (worded(known.map_or(id, |s| &s.name)).into_owned(), verbs)
    };
    let connector = |id: &String| {
        let known = workshop.connector(id);
        worded(known.map_or(id, |c| &c.name)).into_owned()
    };
    match action {
        Action::TakeOff { step: id, .. } => {
            let (name, verbs) = step(id);
            let verb = verbs.map_or(Cow::Borrowed(say!("take off")), |(off, _)| off);
            say!("{name}: {verb}", name, verb)
        }
        Action::Refit { step: id, check } => {
            let (name, verbs) = step(id);
            let verb = verbs.map_or(Cow::Borrowed(say!("refit")), |(_, on)| on);
            match check {
                true => say!("{name}: {verb}, with check", name, verb),
                false => say!("{name}: {verb}", name, verb),
            }
        }
        Action::PullApart { connector: id } => {
            say!("{connector}: pull apart", connector = connector(id))
        }
        Action::PushTogether { connector: id } => {
            say!("{connector}: push home", connector = connector(id))
        }
        Action::Work { work: id, check } => {
            let work = worded(workshop.work(id).map_or(id, |w| &w.name));
            match check {
                true => say!("{work}, with check", work),
                false => work.into_owned(),
            }
        }
        Action::PutOldBack { part: id } => {
            let part = worded(workshop.part(id).map_or(id, |p| &p.name));
            say!("put the old {part} back", part)
        }
        _ => String::new(),
    }
}

/// What a notebook line says, plain words.
pub fn note(note: &Note, workshop: &Workshop) -> String {
    match &note.entry {
        NoteEntry::Reading(reading) => self::reading(reading, workshop),
        NoteEntry::Gauge(reading) => gauge(reading, workshop),
        NoteEntry::Observation {
            place: id, seen, ..
        } => {
            let seen: Vec<String> = seen.iter().map(|s| kept::seen(&s.text)).collect();
            let place = place(id, workshop);
            say!("{place}: {seen}", place, seen = seen.join("; "))
        }
        NoteEntry::Answer { question, text } => say!(
            "{question} “{answer}”",
            question = ask(question),
            answer = kept::answer(text)
        ),
        NoteEntry::Act { text } => kept::done(text),
    }
}

/// A reading, plain words.
pub fn reading(reading: &Reading, workshop: &Workshop) -> String {
    let (red, black) = (reading.red.as_deref(), reading.black.as_deref());
    let what = placed(reading.mode, red, black, workshop);
    say!("{what}: {value}", what, value = reading.display)
}

/// A reading of an instrument that needs no circuit, plain words.
pub fn gauge(reading: &GaugeReading, workshop: &Workshop) -> String {
    let what = gauged(reading, workshop);
    say!(
        "{what}: {value}",
        what,
        value = kept::display(&reading.display)
    )
}

/// What an instrument that needs no circuit was put to, plain words.
pub fn gauged(reading: &GaugeReading, workshop: &Workshop) -> String {
    let instrument = said(reading.gauge.about().name);
    say!(
        "{instrument}, {place}",
        instrument,
        place = place(&reading.place, workshop)
    )
}

/// Name of a meter mode on screens.
pub fn mode_name(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => say!("AC volts"),
        MeterMode::LowAcVolts => say!("AC volts, low impedance"),
        MeterMode::DcVolts => say!("DC volts"),
        MeterMode::Ohms => say!("ohms"),
        MeterMode::Continuity => say!("continuity"),
        MeterMode::Capacitance => say!("capacitance"),
        MeterMode::Frequency => say!("frequency"),
        MeterMode::Diode => say!("diode test"),
        MeterMode::Amps => say!("AC amperes through the leads"),
        MeterMode::Clamp => say!("clamp"),
        MeterMode::Insulation => say!("insulation"),
        MeterMode::EarthBond => say!("earth bond"),
        MeterMode::Leakage => say!("leakage clamp"),
        MeterMode::TouchCurrent => say!("touch current"),
    }
}

/// SI unit of a mode's value.
pub fn si_unit(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts | MeterMode::DcVolts => "V",
        MeterMode::Ohms | MeterMode::Continuity | MeterMode::Insulation | MeterMode::EarthBond => {
            "ohm"
        }
        MeterMode::Capacitance => "F",
        MeterMode::Frequency => "Hz",
        MeterMode::Diode => "V",
        MeterMode::Amps | MeterMode::Clamp | MeterMode::Leakage | MeterMode::TouchCurrent => "A",
    }
}

/// Where an instrument's leads are, plain words.
pub fn placed(
    mode: MeterMode,
    red: Option<&str>,
    black: Option<&str>,
    workshop: &Workshop,
) -> String {
    if mode == MeterMode::Leakage {
        return say!("leakage clamp round line and neutral together").to_owned();
    }
    if mode.is_clamp() {
        let named = workshop
            .conductors
            .iter()
            .find(|(id, _)| red == Some(id.as_str()));
        let conductor = match (named, red) {
            (Some((_, name)), _) => worded(name),
            (None, Some(id)) => worded(id),
            (None, None) => Cow::Borrowed(say!("nothing" as "in the jaws of a clamp")),
        };
        return say!(
            "{mode} round {conductor}",
            mode = mode_name(mode),
            conductor
        );
    }
    let point = |node: Option<&str>| match node {
        Some(node) => test_point(node, workshop).into_owned(),
        None => say!("free" as "of a test lead").to_owned(),
    };
    say!(
        "{mode}, {red} to {black}",
        mode = mode_name(mode),
        red = point(red),
        black = point(black)
    )
}

/// Name of a place.
fn place<'a>(id: &'a str, workshop: &'a Workshop) -> Cow<'a, str> {
    worded(workshop.place(id).map_or(id, |p| &p.name))
}

/// Name of a test point.
fn test_point<'a>(node: &'a str, workshop: &'a Workshop) -> Cow<'a, str> {
    worded(workshop.test_point(node).map_or(node, |t| &t.name))
}

fn offer(options: &[OfferOption]) -> String {
    let way = |o: &OfferOption| {
        say!(
            "{what} for {price}",
            what = said(acts::offer_words(o.what)),
            price = format!("{:.0}", o.price)
        )
    };
    let ways = options.iter().map(way);
    let offers = ways.reduce(|offer, other| say!("{offer}, or {other}", offer, other));
    say!(
        "name the price: {price}",
        price = offers.unwrap_or_default()
    )
}

fn ask(question: &str) -> String {
    let mut known = QUESTIONS.iter().chain(&PHONE_QUESTIONS);
    let asked = known.find(|q| q.id == question);
    asked.map_or(question, |q| said(q.text)).to_owned()
}

fn key_act(key: PanelKey) -> &'static str {
    match key {
        PanelKey::Power => say!("press the on/off switch"),
        PanelKey::Start => say!("press start"),
        PanelKey::Program => say!("press program"),
        PanelKey::Level => say!("press water level"),
        PanelKey::Service => say!("press the service key"),
    }
}

/// The same on a machine without keys, with a timer's dial and knobs.
fn knob_act(key: PanelKey) -> &'static str {
    match key {
        PanelKey::Power => say!("pull or push the timer knob"),
        PanelKey::Start => say!("turn the dial to the start"),
        PanelKey::Program => say!("turn the dial one step on"),
        PanelKey::Level => say!("turn the water level knob"),
        PanelKey::Service => say!("press the service key"),
    }
}

fn sense_name(sense: Sense) -> &'static str {
    match sense {
        Sense::Look => say!("look" as "verb"),
        Sense::Listen => say!("listen" as "verb"),
        Sense::Feel => say!("feel" as "verb"),
        Sense::Smell => say!("smell" as "verb"),
    }
}

/// What is done with a thing that moves, plain words.
pub fn turnable_name(what: Turnable) -> &'static str {
    match what {
        Turnable::Pulsator => say!("turn the pulsator"),
        Turnable::Basket => say!("turn the basket"),
        Turnable::MotorPulley => say!("turn the motor pulley"),
        Turnable::Belt => say!("press the belt"),
        Turnable::DrainWire => say!("pull the drain wire"),
        Turnable::ClutchLever => say!("move the clutch lever"),
        Turnable::Tub => say!("push the tub"),
        Turnable::BalanceLever => say!("push the out-of-balance lever"),
    }
}

fn discharge(what: Charged, tool: DischargeTool) -> &'static str {
    match (what, tool) {
        (Charged::PlugPins, DischargeTool::BleedResistor) => {
            say!("discharge the plug pins with the bleed resistor")
        }
        (Charged::PlugPins, DischargeTool::Screwdriver) => {
            say!("discharge the plug pins with the screwdriver")
        }
        (Charged::RunCapacitor, DischargeTool::BleedResistor) => {
            say!("discharge the run capacitor with the bleed resistor")
        }
        (Charged::RunCapacitor, DischargeTool::Screwdriver) => {
            say!("discharge the run capacitor with the screwdriver")
        }
    }
}
