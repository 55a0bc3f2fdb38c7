//! What a job keeps in English, whoever works on it (lines of the notebook, what the panel shows, what
//! the machine is doing), said in the reader's language.
//!
//! A sentence with values stands here as a pattern of what the act or the look writes; a text without
//! values is found by itself.

use crate::language::retold;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::text;

/// What is observed.
const SEEN: &[&[&str]] = &[
    &[text!("it gives {n} mm under a finger")],
    &[text!("the wire travels {n} mm")],
    &[text!("pushed, it settles after {n} swings")],
    &[text!("about {n} L/min at the hose end")],
    &[text!("water about {n} mm deep")],
    &[text!("the basket turns, about {n} r/min")],
    &[text!("the tub swings about {n} mm")],
    &[text!("the pulsator turns one way, about {n} r/min")],
    &[text!("the pulsator turns the other way, about {n} r/min")],
    &[text!("the machine leans, about {n}° to one side")],
    &[text!("about {n} mm of play")],
    &[text!("pulled about {n} mm")],
    &[text!("the wire is pulled {n} mm")],
    &[text!("the label says {n} µF")],
    &[text!("about {n} mm between lever and tub")],
    &[text!("probes together on {instrument}: {value}")],
    &[text!("battery at {n} % of its voltage")],
    &[text!("calibrated {n} months ago")],
    &[text!("category {category} printed on it")],
    &[text!("the {connector} is apart")],
    &[text!("{wire}: it does not sit home")],
    &[text!("{wire}: brown and rough")],
    &[text!("{point}: the contactless tester lights")],
    &[text!("{point}: the contactless tester stays dark")],
];

/// What is done; the most general last.
const DONE: &[&[&str]] = &[
    &[text!("Remark: {own}")],
    &[
        text!("Price named: {offers}; {answer}"),
        text!("customer agreed: {what}"),
        text!("customer asks: could you do it for {price}?"),
        text!("{offer}, or {other}"),
        text!("{what} for {price}"),
    ],
    &[text!(
        "Landlord on the phone: agrees to a repair up to {price}"
    )],
    &[text!("Fee for finding the fault: {price}")],
    &[
        text!("Papers: {bought}; {covered}; {plate}; {misuse}"),
        text!("bought {n} months ago by the receipt"),
        text!("the maker pays for {n} months"),
    ],
    &[text!("Fault found: {causes}"), text!("{cause}; {other}")],
    &[text!("{part}: old one put back, new one back in the van")],
    &[text!("{connector}: pulled apart")],
    &[text!("{connector}: pushed home")],
    &[text!("{name}: {verb}; 1 of {n} is left over on the cloth")],
    &[text!("{name}: {verb}, checked")],
    &[text!("{work}; 1 of {n} is left over on the cloth")],
    &[text!("{work}, checked")],
    &[text!("{name}: {verb}")],
];

/// What a customer says by itself, beside the file's answers.
const SAID: &[&[&str]] = &[&[text!("{machine}. It says so on the front.")]];

/// Warnings of an instrument.
const WARNED: &[&[&str]] = &[&[text!("voltage on the circuit: about {n} V")]];

/// What an instrument shows.
const READ: &[&[&str]] = &[&[text!("{n} mm water")]];

/// What the panel shows, piece by piece.
const SHOWN: &[&[&str]] = &[
    &[text!("dial at {n}")],
    &[
        text!("level {name}"),
        text!("low"),
        text!("medium"),
        text!("high"),
    ],
    &[text!("Service test {n}")],
    &[text!("{n} min")],
    &[text!("lid closed")],
    &[text!("lid open")],
];

/// What the machine is doing: states, and the panel's messages and alarms as a note writes them.
const DOING: &[&str] = &[
    text!("unplugged"),
    text!("off"),
    text!("running"),
    text!("on"),
    text!("on, display dark"),
    text!("ready"),
    text!("starts later"),
    text!("filling"),
    text!("washing"),
    text!("soaking"),
    text!("draining"),
    text!("spinning"),
    text!("stopping"),
    text!("spreading the load"),
    text!("close the lid"),
    text!("paused"),
    text!("waiting for the supply"),
    text!("power was off: press start to go on"),
    text!("finished"),
    text!("service test"),
    text!("drain the tub first"),
    text!("fills too slowly"),
    text!("drains too slowly"),
    text!("basket keeps swinging"),
    text!("lid is open"),
    text!("water level reading not plausible"),
    text!("overflow danger"),
];

/// Something observed.
pub fn seen(text: &str) -> String {
    let display = text
        .strip_prefix("the display reads “")
        .and_then(|rest| rest.strip_suffix('”'));
    match display {
        Some(words) => say!("the display reads “{shown}”", shown = panel(words)),
        None => retold(text, SEEN).into_owned(),
    }
}

/// Something done.
pub fn done(text: &str) -> String {
    retold(text, DONE).into_owned()
}

/// What a customer said.
pub fn answer(text: &str) -> String {
    retold(text, SAID).into_owned()
}

/// An instrument's own warning.
pub fn warning(text: &str) -> String {
    retold(text, WARNED).into_owned()
}

/// What an instrument shows: its digits as they are, its words said.
pub fn display(text: &str) -> String {
    retold(text, READ).into_owned()
}

/// What the panel shows.
pub fn panel(words: &str) -> String {
    let pieces: Vec<String> = words
        .split(" · ")
        .map(|piece| retold(piece, SHOWN).into_owned())
        .collect();
    pieces.join(" · ")
}

/// What the machine was doing, as a note keeps it.
pub fn doing(state: &str) -> String {
    let words = state.replace('_', " ");
    match DOING.iter().find(|known| **known == words) {
        Some(known) => said(known).to_owned(),
        None => worded(&words).into_owned(),
    }
}
