//! Plain words for acts and notebook lines.

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::MeterMode;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::acts;
use crate::bench::gauge::GaugeReading;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::scenario::QUESTIONS;
use crate::bench::visit::EmptyBy;
use crate::bench::visit::OfferOption;
use crate::bench::visit::PHONE_QUESTIONS;
use crate::bench::visit::Payer;
use crate::bench::workshop::Workshop;

/// What an act is, plain words.
pub fn act(action: &Action, workshop: &Workshop) -> String {
    let step = |id: &str| workshop.step(id).map_or(id.to_owned(), |s| s.name.clone());
    let place = |id: &str| workshop.place(id).map_or(id.to_owned(), |p| p.name.clone());
    let connector = |id: &str| {
        workshop
            .connector(id)
            .map_or(id.to_owned(), |c| c.name.clone())
    };
    match action {
        Action::Ask { question, .. } => ask(question),
        Action::Key { key } if workshop.part("timer").is_some() => knob_act(*key).to_owned(),
        Action::Key { key } => format!("press {}", key_name(*key)),
        Action::Lid { open: true } => "open the lid".to_owned(),
        Action::Lid { open: false } => "shut the lid".to_owned(),
        Action::Plug { inserted: true } => "put the plug in".to_owned(),
        Action::Plug { inserted: false } => "pull the plug".to_owned(),
        Action::Breaker => "set the breaker again".to_owned(),
        Action::HouseSwitch { on: true } => "switch the socket's circuit on".to_owned(),
        Action::HouseSwitch { on: false } => {
            "switch the socket's circuit off at the board".to_owned()
        }
        Action::ProveTester => "prove the tester on its known source".to_owned(),
        Action::NewMeterFuse => "put new fuses into the instruments".to_owned(),
        Action::Splitter { fitted: true } => "put the splitter lead in".to_owned(),
        Action::Splitter { fitted: false } => "take the splitter lead away".to_owned(),
        Action::Gauge { gauge, place: id } => format!("{}: {}", gauge.about().name, place(id)),
        Action::Secure => "keep the plug in sight".to_owned(),
        Action::Tap { open: true } => "open the tap".to_owned(),
        Action::Tap { open: false } => "shut the tap".to_owned(),
        Action::VoltagePen { point } => {
            let name = workshop
                .test_point(point)
                .map_or(point.as_str(), |t| &t.name);
            format!("contactless tester: {name}")
        }
        Action::Remark { .. } => "write a remark".to_owned(),
        Action::DryOut => "dry what got wet inside".to_owned(),
        Action::BleedHose => "bleed the supply hose into a bucket".to_owned(),
        Action::SupplyHose { attached: true } => "screw the supply hose on".to_owned(),
        Action::SupplyHose { attached: false } => "take the supply hose off".to_owned(),
        Action::Discharge { what, tool } => discharge(*what, *tool),
        Action::BridgeLid { fitted: true } => "bridge the lid switch".to_owned(),
        Action::BridgeLid { fitted: false } => "take the bridge off the lid switch".to_owned(),
        Action::Sense { sense, place: id } => format!("{}: {}", sense_name(*sense), place(id)),
        Action::Turn { what } => format!("{} by hand", turnable_name(*what)),
        Action::TakeOff { step: id, .. } => {
            let verb = workshop.step(id).map_or("take off", |s| s.verb.as_str());
            format!("{}: {verb}", step(id))
        }
        Action::Refit { step: id, check } => {
            let verb = workshop.step(id).map_or("refit", |s| s.refit_verb.as_str());
            format!(
                "{}: {verb}{}",
                step(id),
                if *check { ", with check" } else { "" }
            )
        }
        Action::PullApart { connector: id } => format!("{}: pull apart", connector(id)),
        Action::PushTogether { connector: id } => format!("{}: push home", connector(id)),
        Action::Meter { mode, red, black } => {
            meter(*mode, red.as_deref(), black.as_deref(), workshop)
        }
        Action::Note => "note the reading".to_owned(),
        Action::Work { work, check } => {
            let name = workshop.work(work).map_or(work.clone(), |w| w.name.clone());
            format!("{name}{}", if *check { ", with check" } else { "" })
        }
        Action::Empty {
            how: EmptyBy::Bucket,
        } => "bail the water out with a bucket".to_owned(),
        Action::Empty {
            how: EmptyBy::DrainWire,
        } => "let the water out by the drain wire".to_owned(),
        Action::Quote { price } => format!("name the price: {price:.0}"),
        Action::Phone { question } => format!("ask on the phone: {}", ask(question)),
        Action::LoadVan { parts } => format!("load the van with {} parts", parts.len()),
        Action::Offer { options, .. } => offer(options),
        Action::AskPayer => "telephone the landlord".to_owned(),
        Action::TakeFee => "take the fee for finding the fault".to_owned(),
        Action::CheckPapers => "read receipt and rating plate".to_owned(),
        Action::Warranty { payer } => match payer {
            Payer::Maker => "decide: the maker pays".to_owned(),
            Payer::Customer => "decide: the customer pays".to_owned(),
        },
        Action::CheckInstrument => "look the instrument over, probes together".to_owned(),
        Action::SpareInstrument => "take the spare instrument".to_owned(),
        Action::PutOldBack { part } => {
            let name = workshop
                .part(part)
                .map_or(part.as_str(), |p| p.name.as_str());
            format!("put the old {name} back")
        }
        Action::ProtectFloor => "lay a blanket on the floor".to_owned(),
        Action::Gloves { on: true } => "put gloves on".to_owned(),
        Action::Gloves { on: false } => "take the gloves off".to_owned(),
        Action::MopFloor => "mop the floor".to_owned(),
        Action::KeepClear => "ask for the room to be kept free".to_owned(),
        Action::CoolWater => "pour a bucket of cold water in".to_owned(),
        Action::MendHouse => "work on the wiring of the house".to_owned(),
        Action::TakePicture { .. } => "take a picture for the report".to_owned(),
        Action::Sign => "have the report signed".to_owned(),
        Action::Hint => "ask for a hint".to_owned(),
        Action::LeaveUntil { label, .. } => format!(
            "leave until the second visit{}",
            if *label {
                ", labelled"
            } else {
                ", without a label"
            }
        ),
        Action::Finding { .. } => "state the fault found".to_owned(),
        Action::Advise { .. } => "advise the customer".to_owned(),
        Action::MakeSafeAndLeave => "make safe and leave".to_owned(),
        Action::Close => "hand over".to_owned(),
    }
}

/// What a notebook line says, plain words.
pub fn note(note: &Note, workshop: &Workshop) -> String {
    match &note.entry {
        NoteEntry::Reading(reading) => self::reading(reading, workshop),
        NoteEntry::Gauge(reading) => gauge(reading, workshop),
        NoteEntry::Observation { place, seen, .. } => {
            let name = workshop
                .place(place)
                .map_or(place.as_str(), |p| p.name.as_str());
            let seen: Vec<&str> = seen.iter().map(|s| s.text.as_str()).collect();
            format!("{name}: {}", seen.join("; "))
        }
        NoteEntry::Answer { question, text } => format!("{} “{text}”", ask(question)),
        NoteEntry::Act { text } => text.clone(),
    }
}

/// A reading, plain words.
pub fn reading(reading: &Reading, workshop: &Workshop) -> String {
    let what = meter(
        reading.mode,
        reading.red.as_deref(),
        reading.black.as_deref(),
        workshop,
    );
    format!("{what}: {}", reading.display)
}

/// A reading of an instrument that needs no circuit, plain words.
pub fn gauge(reading: &GaugeReading, workshop: &Workshop) -> String {
    let place = workshop
        .place(&reading.place)
        .map_or(reading.place.as_str(), |p| p.name.as_str());
    let name = reading.gauge.about().name;
    format!("{name}, {place}: {}", reading.display)
}

/// Name of a meter mode on screens.
pub fn mode_name(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => "AC volts",
        MeterMode::LowAcVolts => "AC volts, low impedance",
        MeterMode::DcVolts => "DC volts",
        MeterMode::Ohms => "ohms",
        MeterMode::Continuity => "continuity",
        MeterMode::Capacitance => "capacitance",
        MeterMode::Frequency => "frequency",
        MeterMode::Diode => "diode test",
        MeterMode::Amps => "AC amperes through the leads",
        MeterMode::Clamp => "clamp",
        MeterMode::Insulation => "insulation",
        MeterMode::EarthBond => "earth bond",
        MeterMode::Leakage => "leakage clamp",
        MeterMode::TouchCurrent => "touch current",
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
    meter(mode, red, black, workshop)
}

fn meter(mode: MeterMode, red: Option<&str>, black: Option<&str>, workshop: &Workshop) -> String {
    let point = |node: Option<&str>| {
        node.map_or("free".to_owned(), |n| {
            workshop
                .test_point(n)
                .map_or(n.to_owned(), |t| t.name.clone())
        })
    };
    if mode.is_clamp() {
        let named = workshop
            .conductors
            .iter()
            .find(|(id, _)| red == Some(id.as_str()));
        let conductor = named.map_or(red.unwrap_or("nothing"), |(_, name)| name.as_str());
        return format!("{} round {conductor}", mode_name(mode));
    }
    format!("{}, {} to {}", mode_name(mode), point(red), point(black))
}

fn offer(options: &[OfferOption]) -> String {
    let ways: Vec<String> = options
        .iter()
        .map(|o| format!("{} for {:.0}", acts::offer_words(o.what), o.price))
        .collect();
    format!("name the price: {}", ways.join(", or "))
}

fn ask(question: &str) -> String {
    QUESTIONS
        .iter()
        .chain(&PHONE_QUESTIONS)
        .find(|q| q.id == question)
        .map_or(question.to_owned(), |q| q.text.to_owned())
}

fn key_name(key: PanelKey) -> &'static str {
    match key {
        PanelKey::Power => "the on/off switch",
        PanelKey::Start => "start",
        PanelKey::Program => "program",
        PanelKey::Level => "water level",
        PanelKey::Service => "the service key",
    }
}

/// The same on a machine without keys, with a timer's dial and knobs.
fn knob_act(key: PanelKey) -> &'static str {
    match key {
        PanelKey::Power => "pull or push the timer knob",
        PanelKey::Start => "turn the dial to the start",
        PanelKey::Program => "turn the dial one step on",
        PanelKey::Level => "turn the water level knob",
        PanelKey::Service => "press the service key",
    }
}

fn sense_name(sense: Sense) -> &'static str {
    match sense {
        Sense::Look => "look",
        Sense::Listen => "listen",
        Sense::Feel => "feel",
        Sense::Smell => "smell",
    }
}

/// What is done with a thing that moves, plain words.
pub fn turnable_name(what: Turnable) -> &'static str {
    match what {
        Turnable::Pulsator => "turn the pulsator",
        Turnable::Basket => "turn the basket",
        Turnable::MotorPulley => "turn the motor pulley",
        Turnable::Belt => "press the belt",
        Turnable::DrainWire => "pull the drain wire",
        Turnable::ClutchLever => "move the clutch lever",
        Turnable::Tub => "push the tub",
        Turnable::BalanceLever => "push the out-of-balance lever",
    }
}

fn discharge(what: Charged, tool: DischargeTool) -> String {
    let what = match what {
        Charged::PlugPins => "plug pins",
        Charged::RunCapacitor => "run capacitor",
    };
    let tool = match tool {
        DischargeTool::BleedResistor => "bleed resistor",
        DischargeTool::Screwdriver => "screwdriver",
    };
    format!("discharge the {what} with the {tool}")
}
