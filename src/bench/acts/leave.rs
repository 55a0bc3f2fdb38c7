//! Going away: for good, until a second visit, or because it is not safe.

use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::state::Ending;
use crate::bench::store;
use crate::bench::visit::Ready;
use crate::bench::visit::VAN_SLOTS;
use crate::language::worded;
use crate::machine::draw_ratio;
use crate::say;
use crate::text;

/// Purpose of the draw that decides whether somebody tries an unlabelled machine.
const TRIED_PURPOSE: u64 = 0x7472_6965;
/// How often an unlabelled machine is tried before the second visit. Design choice.
const TRIED_CHANCE_RATIO: f64 = 0.5;

pub(super) fn cannot_leave(job: &Job, parts: &[String]) -> Option<Refusal> {
    if parts.len() > VAN_SLOTS {
        return super::way::not_now(text!("the van has eight slots for parts"));
    }
    let scenario = job.scenario();
    for name in parts {
        let Some(item) = store::item(&scenario.workshop, name) else {
            return Some(super::way::unknown(name));
        };
        if store::ready(scenario, &item) == Ready::Never {
            return super::way::not_now(&say!(
                "{part} is no longer made",
                part = worded(item.name())
            ));
        }
    }
    (job.machine.basket_rad_per_s().abs() > 1.0).then(|| Refusal::NotNow {
        why: text!("the basket is still turning").to_owned(),
    })
}

pub(super) fn leave_until(job: &mut Job, parts: &[String], label: bool) -> Vec<Event> {
    let words = if label {
        text!("Left until the second visit, labelled “do not use”")
    } else {
        text!("Left until the second visit, without a label")
    };
    job.write(NoteEntry::Act {
        text: words.to_owned(),
    });
    let index = job.log().len() as u64;
    let tried = !label && draw_ratio(job.seed(), TRIED_PURPOSE, index) < TRIED_CHANCE_RATIO;
    come_back(job, parts);
    if tried {
        job.machine.set_plugged(true);
        job.bench.isolation.energise();
        job.machine.set_tap(true);
        job.bench.isolation.tap_shut = false;
    }
    let found = if tried {
        text!("Second visit: somebody has tried it; plug in, tap open")
    } else {
        text!("Second visit: as it was left")
    };
    job.write(NoteEntry::Act {
        text: found.to_owned(),
    });
    Vec::new()
}

/// Another day: everything is cold, nothing is proved any longer, the parts are there.
fn come_back(job: &mut Job, parts: &[String]) {
    job.machine.cool_down();
    job.ledger.second_visits += 1;
    let isolation = &mut job.bench.isolation;
    isolation.secured = false;
    isolation.tester_proved = None;
    isolation.capacitor_measured = None;
    isolation.forget_shown();
    job.bench.meter = None;
    let around = &mut job.bench.around;
    around.n_returns += 1;
    around.gloves_on = false;
    around.floor_protected = false;
    around.kept_clear = false;
    around.instrument_checked = false;
    for part in parts {
        if !around.van.contains(part) {
            around.van.push(part.clone());
        }
    }
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
        text: text!("Left isolated and labelled; customer informed").to_owned(),
    });
    Vec::new()
}

pub(super) fn close(job: &mut Job) -> Vec<Event> {
    job.bench.ending = Some(Ending::Closed);
    job.write(NoteEntry::Act {
        text: text!("Handed over").to_owned(),
    });
    Vec::new()
}
