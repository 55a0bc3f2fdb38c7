//! The tests after a repair in their order: what is measured, its limit, where the limit comes
//! from, and what has been shown since the machine was last changed.
//!
//! Order: look, protective conductor, insulation, currents with the plug in, functions. Order and
//! limits: published, EN 50678 and EN 50699 (from memory; the current editions win).

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::notebook::Tick;
use crate::machine::UNPLUGGED;
use crate::text;

/// Protective conductor, cord up to 5 m, Ω.
pub const BOND_LIMIT_OHM: f64 = 0.3;
/// Insulation, class I, Ω.
pub const INSULATION_LIMIT_OHM: f64 = 1e6;
/// Protective-conductor current, A.
pub const LEAKAGE_LIMIT_A: f64 = 3.5e-3;
/// Touch current, A.
pub const TOUCH_LIMIT_A: f64 = 0.5e-3;

/// How far a test has got.
#[derive(Clone, Debug, PartialEq)]
pub enum Shown {
    /// Not done since the last change.
    NotYet,
    /// Done: the value as displayed, and whether it keeps the limit.
    Value {
        /// Digits and unit.
        display: String,
        /// Within the limit.
        passed: bool,
    },
    /// Seen to be right.
    Seen,
}

/// Where the leads go for a test.
#[derive(Clone, Debug, PartialEq)]
pub struct Leads {
    /// Mode of the instrument.
    pub mode: MeterMode,
    /// Red lead or jaws.
    pub red: String,
    /// Black lead.
    pub black: Option<String>,
}

/// One test.
#[derive(Clone, Debug, PartialEq)]
pub struct Test {
    /// What is tested.
    pub what: &'static str,
    /// How, in one sentence.
    pub how: &'static str,
    /// The limit, plain words.
    pub limit: &'static str,
    /// Where it comes from.
    pub source: &'static str,
    /// Where the leads go; none for a look or a run.
    pub leads: Option<Leads>,
    /// How far it has got.
    pub shown: Shown,
}

const FAMILY: &str = text!("EN 50678 / EN 50699 (from memory)");
const PRACTICE: &str = text!("common practice");

/// All tests in their order.
pub fn tests(job: &Job) -> Vec<Test> {
    let since = job.last_change();
    let roles = &job.machine().model().roles;
    let [line_pin, _, earth_pin] = roles.plug_pins.clone();
    let [_, _, house_earth] = roles.socket.clone();
    let cabinet = roles.cabinet.clone();
    let seen = job.machine().milestones();
    let done = |is_so: bool| if is_so { Shown::Seen } else { Shown::NotYet };
    let measured = |mode, red: &str, black: Option<&str>, keeps: fn(Option<f64>) -> bool| {
        let leads = Leads {
            mode,
            red: red.to_owned(),
            black: black.map(str::to_owned),
        };
        (Some(leads), last(job, mode, keeps))
    };
    let (bond_at, bond) = measured(MeterMode::EarthBond, &earth_pin, Some(&cabinet), |ohm| {
        ohm.is_some_and(|ohm| ohm <= BOND_LIMIT_OHM)
    });
    let (insulation_at, insulation) =
        measured(MeterMode::Insulation, &line_pin, Some(&earth_pin), |ohm| {
            // Over range is better than any limit.
            ohm.is_none_or(|ohm| ohm >= INSULATION_LIMIT_OHM)
        });
    let line_conductor = line_conductor(job);
    let (leakage_at, leakage) = measured(MeterMode::Leakage, &line_conductor, None, |a| {
        a.is_some_and(|a| a <= LEAKAGE_LIMIT_A)
    });
    let (touch_at, touch) = measured(MeterMode::TouchCurrent, &cabinet, Some(&house_earth), |a| {
        a.is_some_and(|a| a <= TOUCH_LIMIT_A)
    });
    vec![
        Test {
            what: text!("look"),
            how: text!("plug, cord, covers and screws; nothing left off, no wire under an edge"),
            limit: text!("nothing damaged or missing"),
            source: FAMILY,
            leads: None,
            shown: done(looked(job, since, "plug") && job.bench().off.is_empty()),
        },
        Test {
            what: text!("protective conductor"),
            how: text!("plug out: earth pin to the cabinet"),
            limit: text!("0.3 Ω at most"),
            source: FAMILY,
            leads: bond_at,
            shown: bond,
        },
        Test {
            what: text!("insulation"),
            how: insulation_how(job),
            limit: text!("1 MΩ at least"),
            source: FAMILY,
            leads: insulation_at,
            shown: insulation,
        },
        Test {
            what: text!("protective-conductor current"),
            how: text!(
                "plug in, running shows most: the leakage clamp round line and neutral together"
            ),
            limit: text!("3.5 mA at most"),
            source: FAMILY,
            leads: leakage_at,
            shown: leakage,
        },
        Test {
            what: text!("touch current"),
            how: text!(
                "plug in, running shows most: metal that a hand reaches, through 2 kΩ to earth"
            ),
            limit: text!("0.5 mA at most"),
            source: FAMILY,
            leads: touch_at,
            shown: touch,
        },
        Test {
            what: text!("functions"),
            how: text!("fill, wash both ways, drain, spin"),
            limit: text!("each of them seen"),
            source: PRACTICE,
            leads: None,
            shown: done(seen.all()),
        },
        Test {
            what: text!("lid"),
            how: text!("opened at full spin: the basket stands within 7 s"),
            limit: text!("7 s at most"),
            source: text!("from memory"),
            leads: None,
            shown: done(seen.lid_stopped),
        },
        Test {
            what: text!("leaks"),
            how: text!("after filling and draining, look under the machine"),
            limit: text!("dry"),
            source: PRACTICE,
            leads: None,
            shown: done(looked_for_leaks(job)),
        },
    ]
}

/// What lies behind a mains switch is tested too, so it is closed; a board without one has no such.
fn insulation_how(job: &Job) -> &'static str {
    let workshop = &job.scenario().workshop;
    if workshop.part("timer").is_some() {
        text!("plug out, timer knob pulled out: line and neutral together to the earth pin, 500 V")
    } else if workshop.part("on_off_switch").is_some() {
        text!("plug out, switch pressed in: line and neutral together to the earth pin, 500 V")
    } else {
        text!("plug out: line and neutral together to the earth pin, 500 V")
    }
}

/// The conductor that the leakage clamp's lead leads apart with neutral.
fn line_conductor(job: &Job) -> String {
    let wiring = &job.machine().model().wiring;
    let line = wiring.supply.line_conductor;
    wiring
        .elements
        .get(line.index())
        .map_or_else(String::new, |e| e.name.clone())
}

/// Readings of a test since the machine was last changed, the latest first: of this mode, the leads
/// where the test wants them, the plug out for the dead tests and in for the currents.
pub fn readings(job: &Job, mode: MeterMode) -> impl Iterator<Item = &Reading> {
    let since = job.last_change();
    let notes = job.notebook().iter().rev();
    notes
        .filter(move |note| note.tick >= since)
        .filter_map(move |note| match &note.entry {
            NoteEntry::Reading(reading) if reading.mode == mode => {
                is_of_the_test(job, reading, note.state == UNPLUGGED).then_some(reading)
            }
            _ => None,
        })
}

fn is_of_the_test(job: &Job, reading: &Reading, is_unplugged: bool) -> bool {
    let roles = &job.machine().model().roles;
    let [line_pin, neutral_pin, earth_pin] = &roles.plug_pins;
    let [_, _, house_earth] = &roles.socket;
    let is_between = |a: &String, b: &String| {
        let leads = (reading.red.as_ref(), reading.black.as_ref());
        leads == (Some(a), Some(b)) || leads == (Some(b), Some(a))
    };
    match reading.mode {
        MeterMode::EarthBond => is_unplugged && is_between(earth_pin, &roles.cabinet),
        MeterMode::Insulation => {
            is_unplugged && (is_between(line_pin, earth_pin) || is_between(neutral_pin, earth_pin))
        }
        MeterMode::TouchCurrent => !is_unplugged && is_between(&roles.cabinet, house_earth),
        MeterMode::Leakage => !is_unplugged,
        _ => false,
    }
}

/// The last reading of a test.
fn last(job: &Job, mode: MeterMode, keeps: fn(Option<f64>) -> bool) -> Shown {
    readings(job, mode)
        .next()
        .map_or(Shown::NotYet, |reading| Shown::Value {
            display: reading.display.clone(),
            passed: keeps(reading.value),
        })
}

/// Somebody looked under the machine once it had been set going and had filled, since the last change.
pub fn looked_for_leaks(job: &Job) -> bool {
    let since = job.last_change();
    let mut later = job.log().iter().filter(|entry| entry.tick >= since);
    let going = later.find(|entry| matches!(entry.action, Action::Key { .. }));
    job.machine().milestones().filled
        && going.is_some_and(|entry| looked(job, entry.tick, "under_machine"))
}

fn looked(job: &Job, since: Tick, at: &str) -> bool {
    job.notebook().iter().any(|note| {
        note.tick >= since
            && matches!(&note.entry, NoteEntry::Observation { sense: Sense::Look, place, .. } if place == at)
    })
}
