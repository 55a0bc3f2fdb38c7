//! Handling: floor, gloves, water on the floor, people about; and what carelessness does.
//!
//! Consequences are drawn by the job's seed and the place of the act in the log. Chances: design
//! choice, of the order a workshop would call "one day it goes wrong".

use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::visit::Condition;
use crate::bench::workshop::Step;
use crate::machine::FaultClass;
use crate::machine::Target;
use crate::machine::draw_ratio;
use crate::say;
use crate::text;

/// Purposes of the draws.
const SLIP_PURPOSE: u64 = 0x736c_6970;
const CUT_PURPOSE: u64 = 0x6375_7473;
/// Chances.
const SLIP_CHANCE_RATIO: f64 = 0.4;
const CUT_CHANCE_RATIO: f64 = 0.5;
/// Prices of damage and of the time to dress a hand, money unit.
const FLOOR_PRICE: f64 = 40.0;
const DRESS_PRICE: f64 = 5.0;
/// Water that scalds, K (50 °C). Common practice. Metal that burns, K (60 °C): ISO 13732-1, from
/// memory.
const SCALDING_K: f64 = 323.15;
const BURNING_K: f64 = 333.15;
/// A bucket of cold water, kg.
const BUCKET_KG: f64 = 10.0;

pub(super) fn cannot(job: &Job, action: &Action) -> Option<Refusal> {
    let around = &job.bench.around;
    let same = match action {
        Action::ProtectFloor => around.floor_protected,
        Action::Gloves { on } => around.gloves_on == *on,
        Action::KeepClear => around.kept_clear,
        Action::MopFloor => job.machine.plant().readings().puddle_kg <= 0.0,
        Action::CoolWater if !job.machine.lid_open() => {
            return super::way::not_now(text!("the lid is shut"));
        }
        _ => false,
    };
    same.then_some(Refusal::AlreadySo)
}

pub(super) fn perform(job: &mut Job, action: &Action) {
    let text = match action {
        Action::ProtectFloor => {
            job.bench.around.floor_protected = true;
            text!("Blanket laid where the machine will lie")
        }
        Action::Gloves { on } => {
            job.bench.around.gloves_on = *on;
            return;
        }
        Action::KeepClear => {
            job.bench.around.kept_clear = true;
            text!("Asked for the room to be kept free")
        }
        Action::MopFloor => {
            job.machine.mop();
            text!("Floor mopped dry")
        }
        Action::CoolWater => {
            let cold_k = job.machine.plant().params().inlet.water_k;
            job.machine.pour(BUCKET_KG, cold_k);
            text!("A bucket of cold water poured in")
        }
        Action::MendHouse => {
            mend_house(job);
            text!("Wiring of the house worked on")
        }
        _ => return,
    };
    job.write(NoteEntry::Act {
        text: text.to_owned(),
    });
}

/// Cloth and warm air: what was wet is as it was.
pub(super) fn dry_out(job: &mut Job) {
    for key in std::mem::take(&mut job.bench.wet) {
        job.bench.left_wrong.remove(&key);
    }
    job.refit_machine();
    job.write(NoteEntry::Act {
        text: text!("Dried inside, with cloth and warm air").to_owned(),
    });
}

/// What an electrician would put right, done by the wrong hands.
fn mend_house(job: &mut Job) {
    let scenario = job.scenario().clone();
    let faults = scenario
        .faults
        .iter()
        .filter_map(|f| scenario.machine.fault(&f.id));
    let targets: Vec<Target> = faults
        .filter(|f| f.class == FaultClass::Site && !f.wiring.is_empty())
        .flat_map(|f| f.targets(&scenario.machine.wiring))
        .collect();
    job.bench.healed.extend(targets);
    job.refit_machine();
}

/// What an act does to the person and the things around, beyond electricity.
pub(super) fn consequences(job: &mut Job, action: &Action) -> Vec<Event> {
    let workshop = job.scenario().workshop.clone();
    match action {
        Action::TakeOff { step, .. } => workshop
            .step(step)
            .map(|step| moved(job, step))
            .unwrap_or_default(),
        Action::Empty { .. } => scalded(job).into_iter().collect(),
        Action::Work { work, .. } => workshop
            .work(work)
            .filter(|work| !work.needs.is_empty())
            .and_then(|work| hurt_inside(job, &work.part))
            .into_iter()
            .collect(),
        Action::Sense {
            sense: Sense::Feel,
            place,
        } => burnt(job, place).into_iter().collect(),
        _ => Vec::new(),
    }
}

fn draw(job: &Job, purpose: u64) -> f64 {
    draw_ratio(job.seed(), purpose, job.log().len() as u64)
}

fn moved(job: &mut Job, step: &Step) -> Vec<Event> {
    let mut events = Vec::new();
    if step.lays_down {
        let marks = job.scenario().visit.has(Condition::DelicateFloor);
        if marks && !job.bench.around.floor_protected {
            events.push(damage(
                job,
                say!("the cabinet has marked the floor"),
                FLOOR_PRICE,
            ));
        }
    } else if !step.moves_machine
        && let Some(event) = cut(job)
    {
        events.push(event);
    }
    if step.moves_machine && job.machine.plant().readings().puddle_kg > 0.5 {
        let slips = draw(job, SLIP_PURPOSE) < SLIP_CHANCE_RATIO;
        if slips {
            events.push(hurt(job, say!("you slipped on the wet floor")));
        }
    }
    events
}

fn hurt_inside(job: &mut Job, part: &str) -> Option<Event> {
    burnt(job, part).or_else(|| cut(job))
}

fn cut(job: &mut Job) -> Option<Event> {
    let bare = job.scenario().visit.has(Condition::BareEdges) && !job.bench.around.gloves_on;
    let cuts = bare && draw(job, CUT_PURPOSE) < CUT_CHANCE_RATIO;
    cuts.then(|| hurt(job, say!("the sheet edge cut your hand")))
}

fn scalded(job: &mut Job) -> Option<Event> {
    let hot = job.machine.plant().state().tub.bath_k > SCALDING_K && job.machine.water_kg() > 2.0;
    hot.then(|| hurt(job, say!("hot water ran over your hand")))
}

fn burnt(job: &mut Job, place: &str) -> Option<Event> {
    let hot = surface_k(job, place) > BURNING_K;
    hot.then(|| hurt(job, say!("the part is too hot to touch")))
}

/// Temperature of what a hand finds at a place, K: the motor's housing lags its windings, at about
/// two thirds of their rise. From memory.
pub fn surface_k(job: &Job, place: &str) -> f64 {
    let air_k = job.scenario().site.room_k;
    if place == "motor" {
        air_k + 0.66 * (job.machine.hottest_winding_k() - air_k).max(0.0)
    } else {
        air_k
    }
}

fn damage(job: &mut Job, what: &str, price: f64) -> Event {
    job.ledger.damage += price;
    Event::Damage {
        what: what.to_owned(),
        price,
    }
}

fn hurt(job: &mut Job, what: &str) -> Event {
    job.ledger.damage += DRESS_PRICE;
    Event::Hurt {
        what: what.to_owned(),
    }
}
