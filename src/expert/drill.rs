//! Runs of the machine that show most in the least time: which keys bring it to washing, and which
//! to draining and spinning. Found by trying the keys on a sound machine of the same type whose panel
//! stands as this one's does, so that any panel or dial will do.

use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::expert::twin::Twin;
use crate::machine::Milestones;

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

/// The runs of this type of machine on this site, from how the panel stands now.
pub fn drills(sound: &Twin) -> Drills {
    let ready = ready(sound.job());
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
            let washed = |seen: &Milestones| seen.filled && seen.forward && seen.reverse;
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
        let spun = |seen: &Milestones| seen.drained && seen.spun;
        if let Some((ticks, _)) = until(washed, &keys, limit, spun) {
            best = Some((ticks, keys));
        }
    }
    let Some((ticks, mut beats)) = best else {
        return Vec::new();
    };
    beats.push(sense(80, Sense::Listen, "drain_hose"));
    beats.push(sense(0, Sense::Look, "drain_hose"));
    // The basket is looked at as it reaches its speed, and the lid opened soon after: some machines
    // spin for a minute only.
    let spent = 630;
    beats.push(sense(ticks.saturating_sub(spent), Sense::Look, "display"));
    beats.push(sense(0, Sense::Look, "basket"));
    beats.push(sense(0, Sense::Listen, "basket"));
    let lid = |wait, open| Beat {
        wait,
        action: Action::Lid { open },
    };
    beats.push(lid(0, true));
    beats.push(sense(60, Sense::Look, "basket"));
    // Whoever tries the stop waits until the basket stands, and sees whether it goes on standing.
    beats.push(sense(0, Sense::Look, "basket"));
    beats.push(lid(0, false));
    beats.push(sense(0, Sense::Look, "floor"));
    beats
}

fn pressed(which: PanelKey, times: usize, first_wait: Tick) -> impl Iterator<Item = Beat> {
    (0..times).map(move |i| key(if i == 0 { first_wait } else { 0 }, which))
}

/// The machine switched off, closed, plugged in and with its water, as it is before a run.
fn ready(job: &Job) -> Job {
    let mut ready = job.clone();
    let bench = job.bench();
    let mut acts = Vec::new();
    if job.machine().switched_on() {
        acts.push(key(0, PanelKey::Power).action);
    }
    let together = |connector: &String| Action::PushTogether {
        connector: connector.clone(),
    };
    let refit = |step: &String| Action::Refit {
        step: step.clone(),
        check: true,
    };
    acts.extend(bench.apart.iter().map(together));
    acts.extend(bench.off.iter().rev().map(refit));
    acts.extend([
        Action::SupplyHose { attached: true },
        Action::Lid { open: false },
        Action::Tap { open: true },
        Action::Plug { inserted: true },
    ]);
    for action in acts {
        let tick = ready.tick();
        ready.follow(&Entry { tick, action }, 10);
    }
    ready
}

/// Ticks after the keys until it is so, and the job then; none when it takes `limit`.
fn until(
    from: &Job,
    keys: &[Beat],
    limit: Tick,
    is_so: impl Fn(&Milestones) -> bool,
) -> Option<(Tick, Job)> {
    let mut job = from.clone();
    run(&mut job, keys);
    let start = job.tick();
    let mut seen = Milestones::default();
    while job.tick() < start + limit {
        job.advance(10);
        let plant = job.machine().plant();
        let now = plant.readings();
        seen.see(
            plant.level_m(),
            now.pulsator_rad_per_s,
            now.basket_rad_per_s,
        );
        if is_so(&seen) {
            return Some((job.tick() - start, job));
        }
    }
    None
}
