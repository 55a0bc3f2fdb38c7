//! What eyes, ears, hands and nose give at a place: computed from the machine's state and
//! parameters, never from the name of a fault.
//!
//! Each thing seen has a stable key (what the evidence compares) and plain words. Thresholds are
//! what a practised person notices, common practice.

mod feel;
mod hands;
mod listen;
mod look;
mod look_below;
mod surroundings;
mod wires;

pub use hands::place_of;
pub use surroundings::notice_by_asking;

use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Seen;
use crate::language::worded;
use crate::machine::Machine;
use crate::say;
use crate::text;

/// Copper winding temperature from which varnish can be smelt, K. From memory: about 110 °C.
const VARNISH_SMELL_K: f64 = 383.0;

/// Power lost in a slipping belt from which rubber can be smelt, W. From memory.
const SLIP_SMELL_W: f64 = 20.0;
/// Power lost in one joint that scorches its plastic, W. From memory.
const SCORCHING_W: f64 = 4.0;

fn seen(key: &str, text: impl Into<String>) -> Seen {
    Seen {
        key: key.to_owned(),
        amount: None,
        text: text.into(),
    }
}

fn seen_amount(key: &str, amount: f64, text: impl Into<String>) -> Seen {
    Seen {
        key: key.to_owned(),
        amount: Some(amount),
        text: text.into(),
    }
}

fn nothing_unusual() -> Seen {
    seen("nothing_unusual", text!("nothing unusual"))
}

/// Writes what a sense gives at a place.
pub fn note_sense(job: &mut Job, sense: Sense, place: &str) {
    let mut list = match sense {
        Sense::Look => {
            let mut list = look::at(&job.machine, place);
            list.extend(wires::at(job, place));
            list
        }
        Sense::Listen => listen::heard(&job.machine),
        Sense::Feel => feel::at(&job.machine, place),
        Sense::Smell => smell(&job.machine),
    };
    if sense == Sense::Look && place == "motor" && !job.bench.wet.is_empty() {
        list.push(seen(
            "wet_inside",
            text!("drops of water on motor and plugs"),
        ));
    }
    list.extend(surroundings::notice(job, sense, place));
    if list.is_empty() {
        list.push(nothing_unusual());
    }
    job.write(NoteEntry::Observation {
        sense,
        place: place.to_owned(),
        seen: list,
    });
}

/// Writes what moving something by hand gives.
pub fn note_turn(job: &mut Job, what: Turnable) {
    let list = hands::moved(&job.machine, what);
    let place = hands::place_of(what).to_owned();
    job.write(NoteEntry::Observation {
        sense: Sense::Feel,
        place,
        seen: list,
    });
}

/// One line under the drawing: what can be heard now.
pub fn caption(machine: &Machine) -> String {
    let heard: Vec<String> = listen::heard(machine)
        .into_iter()
        .map(|s| worded(&s.text).into_owned())
        .collect();
    if heard.is_empty() {
        say!("quiet").to_owned()
    } else {
        heard.join("; ")
    }
}

fn smell(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let mut list = Vec::new();
    if machine.hottest_winding_k() > VARNISH_SMELL_K {
        list.push(seen("smell_varnish", text!("hot varnish")));
    }
    if plant.readings().slip_w > SLIP_SMELL_W {
        list.push(seen("smell_rubber", text!("hot rubber")));
    }
    if machine.hottest_joint_w() > SCORCHING_W {
        list.push(seen("smell_scorched", text!("scorched plastic")));
    }
    list
}
