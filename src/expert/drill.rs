//! Runs of the machine that show most in the least time: which keys bring it to washing, and which
//! to draining and spinning. Found by trying the keys on a sound machine of the same type, so that
//! any panel or dial will do.

use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::expert::twin::Twin;

/// Something done after a wait.
#[derive(Clone, Debug, PartialEq)]
pub struct Beat {
    /// Wait before it, ticks.
    pub wait: Tick,
    /// The act.
    pub action: Action,
}

/// The two runs.
#[derive(Clone, Debug, PartialEq)]
pub struct Drills {
    /// Fill and wash both ways.
    pub wash: Vec<Beat>,
    /// Drain and spin; begins where the first ended.
    pub spin: Vec<Beat>,
}

/// Longest a run is watched, ticks.
const PATIENCE: Tick = 600 * TICKS_PER_S;
/// Self check of a board after switching on, ticks.
const WAKES: Tick = 50;
/// Most presses of a key that are tried.
const MOST_PRESSES: usize = 24;

fn key(wait: Tick, key: PanelKey) -> Beat {
    let action = Action::Key { key };
    Beat { wait, action }
}

/// Looks or listens at a place.
pub fn sense(wait: Tick, sense: Sense, place: &str) -> Beat {
    let action = Action::Sense {
        sense,
        place: place.to_owned(),
    };
    Beat { wait, action }
}

/// Does beats on a copy, refused ones left out.
pub fn run(job: &mut Job, beats: &[Beat]) {
    for beat in beats {
        job.advance(beat.wait);
        job.act(beat.action.clone());
    }
}

/// The runs of this type of machine on this site.
pub fn drills(sound: &Twin) -> Drills {
    let mut ready = sound.job().clone();
    let first = off(&ready);
    run(&mut ready, &first);
    let is_dial = ready.machine().model().roles.coils.timer_motor.is_some();
    let presses = if is_dial { 0 } else { 5 };
    let mut best: Option<(Tick, Vec<Beat>, Job)> = None;
    for program in 0..=presses {
        for level in 0..=presses.min(3) {
            let mut keys = vec![key(0, PanelKey::Power)];
            keys.extend(pressed(PanelKey::Program, program, WAKES));
            keys.extend(pressed(PanelKey::Level, level, 0));
            keys.push(key(
                if program == 0 && !is_dial { WAKES } else { 0 },
                PanelKey::Start,
            ));
            let limit = best.as_ref().map_or(PATIENCE, |b| b.0);
            let washed = |job: &Job| {
                let seen = job.machine().milestones();
                seen.filled && seen.forward && seen.reverse
            };
            if let Some((ticks, job)) = until(&ready, &keys, limit, washed) {
                best = Some((ticks, keys, job));
            }
        }
    }
    let Some((ticks, mut wash, washed)) = best else {
        return Drills {
            wash: Vec::new(),
            spin: Vec::new(),
        };
    };
    let spin = spin(&washed, is_dial);
    let early = 40;
    wash.push(sense(early, Sense::Listen, "pulsator"));
    wash.push(sense(0, Sense::Look, "display"));
    let spent = early + 350;
    wash.push(sense(ticks.saturating_sub(spent), Sense::Look, "pulsator"));
    for (wait, how, place) in [
        (20, Sense::Look, "pulsator"),
        (0, Sense::Listen, "pulsator"),
        (0, Sense::Look, "basket"),
        (0, Sense::Look, "display"),
        (0, Sense::Look, "drain_hose"),
        (0, Sense::Look, "under_machine"),
    ] {
        wash.push(sense(wait, how, place));
    }
    Drills { wash, spin }
}

fn spin(washed: &Job, is_dial: bool) -> Vec<Beat> {
    let mut best: Option<(Tick, Vec<Beat>)> = None;
    for program in 0..=MOST_PRESSES {
        let mut keys = Vec::new();
        if !is_dial {
            if program > 5 {
                break;
            }
            keys.extend([key(0, PanelKey::Power), key(20, PanelKey::Power)]);
        }
        keys.extend(pressed(
            PanelKey::Program,
            program,
            if is_dial { 0 } else { WAKES },
        ));
        if !is_dial {
            keys.push(key(if program == 0 { WAKES } else { 0 }, PanelKey::Start));
        }
        let limit = best.as_ref().map_or(PATIENCE, |b| b.0);
        let spun = |job: &Job| {
            let seen = job.machine().milestones();
            seen.drained && seen.spun
        };
        if let Some((ticks, _)) = until(washed, &keys, limit, spun) {
            best = Some((ticks, keys));
        }
    }
    let Some((ticks, mut beats)) = best else {
        return Vec::new();
    };
    beats.push(sense(80, Sense::Listen, "drain_hose"));
    beats.push(sense(0, Sense::Look, "drain_hose"));
    let spent = 430;
    beats.push(sense(ticks.saturating_sub(spent), Sense::Look, "basket"));
    beats.push(sense(0, Sense::Listen, "basket"));
    beats.push(sense(0, Sense::Look, "floor"));
    beats.push(sense(0, Sense::Look, "display"));
    let lid = |wait, open| Beat {
        wait,
        action: Action::Lid { open },
    };
    beats.push(lid(0, true));
    beats.push(sense(60, Sense::Look, "basket"));
    beats.push(lid(0, false));
    beats
}

fn pressed(which: PanelKey, times: usize, first_wait: Tick) -> impl Iterator<Item = Beat> {
    (0..times).map(move |i| key(if i == 0 { first_wait } else { 0 }, which))
}

/// Beats that switch off what is on.
fn off(job: &Job) -> Vec<Beat> {
    let is_on = job.machine().switched_on();
    if is_on {
        vec![key(0, PanelKey::Power)]
    } else {
        Vec::new()
    }
}

/// Ticks after the keys until it is so, and the job then; none when it takes `limit`.
fn until(
    from: &Job,
    keys: &[Beat],
    limit: Tick,
    is_so: impl Fn(&Job) -> bool,
) -> Option<(Tick, Job)> {
    let mut job = from.clone();
    run(&mut job, keys);
    let start = job.tick();
    while job.tick() < start + limit {
        job.advance(10);
        if is_so(&job) {
            return Some((job.tick() - start, job));
        }
    }
    None
}
