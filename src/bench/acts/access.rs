//! Taking off and putting back along the access graph, pulling connectors, and doing repairs.
//!
//! A step that is off rests on nothing; it comes off only after what it needs, and goes back only
//! before what stands on it. What is different while it is off, and what an unchecked refit leaves
//! wrong, is physical and in the machine's file.

use crate::bench::action::Action;
use crate::bench::action::Turnable;
use crate::bench::acts::parts;
use crate::bench::acts::way::in_the_way;
use crate::bench::acts::way::not_now;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::observe;
use crate::bench::workshop::Connector;
use crate::bench::workshop::Effect;
use crate::bench::workshop::Mistake;
use crate::bench::workshop::WorkKind;
use crate::machine::Target;
use crate::machine::draw_ratio;
use crate::say;
use crate::text;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

/// Purpose of the draw that decides whether an unchecked refit leaves something wrong.
const MISTAKE_PURPOSE: u64 = 0x6d69_7374;
/// Purpose of the draw that decides whether a machine laid down alone falls, and how often it does.
/// Common practice, less sure: one in four.
const DROP_PURPOSE: u64 = 0x6472_6f70;
const DROP_RATIO: f64 = 0.25;
/// How far its centre of mass falls, m. Design choice.
const FALL_M: f64 = 0.25;
/// Share of the weight on firm feet with one bent. Design choice.
const BENT_FOOT_RATIO: f64 = 0.5;
/// What it costs, money units. Design choice.
const DROP_DAMAGE: f64 = 20.0;
/// Water that stays below the pulsator and under the drain, kg.
pub(super) const RESIDUE_KG: f64 = 2.0;
/// What runs out of an opened joint of an empty tub: sump and hose, kg. Common practice.
const SUMP_KG: f64 = 1.0;

fn unknown(name: &str) -> Option<Refusal> {
    Some(super::way::unknown(name))
}

pub(super) fn cannot_take_off(job: &Job, id: &str) -> Option<Refusal> {
    let workshop = &job.scenario().workshop;
    let Some(step) = workshop.step(id) else {
        return unknown(id);
    };
    if job.bench.off.iter().any(|s| s == id) {
        return Some(Refusal::AlreadySo);
    }
    if job.machine.basket_rad_per_s().abs() > 1.0 {
        return not_now(text!("the basket is still turning"));
    }
    if step.needs_dry_tub && job.machine.water_kg() > RESIDUE_KG {
        return not_now(text!("it stands under water: take the water out first"));
    }
    if step.moves_machine && job.bench.hose_attached && step.lays_down {
        return not_now(text!("the supply hose still holds it"));
    }
    in_the_way(job, &step.needs)
}

pub(super) fn cannot_refit(job: &Job, id: &str) -> Option<Refusal> {
    let workshop = &job.scenario().workshop;
    if workshop.step(id).is_none() {
        return unknown(id);
    }
    if !job.bench.off.iter().any(|s| s == id) {
        return Some(Refusal::AlreadySo);
    }
    let steps: Vec<String> = job
        .bench
        .off
        .iter()
        .filter(|other| {
            workshop
                .step(other)
                .is_some_and(|s| s.needs.iter().any(|need| need == id))
        })
        .cloned()
        .collect();
    (!steps.is_empty()).then_some(Refusal::Underneath { steps })
}

pub(super) fn cannot_pull_apart(job: &Job, id: &str) -> Option<Refusal> {
    let Some(connector) = job.scenario().workshop.connector(id) else {
        return unknown(id);
    };
    if job.bench.apart.contains(id) {
        return Some(Refusal::AlreadySo);
    }
    in_the_way(job, &connector.needs)
}

pub(super) fn cannot_push_together(job: &Job, id: &str) -> Option<Refusal> {
    let Some(connector) = job.scenario().workshop.connector(id) else {
        return unknown(id);
    };
    if !job.bench.apart.contains(id) {
        return Some(Refusal::AlreadySo);
    }
    in_the_way(job, &connector.needs)
}

pub(super) fn cannot_work(job: &Job, id: &str) -> Option<Refusal> {
    let scenario = job.scenario();
    let Some(work) = scenario.workshop.work(id) else {
        return unknown(id);
    };
    let make = make_of(id);
    if make.is_some() && work.kind != WorkKind::Replace {
        return unknown(id);
    }
    if work.kind == WorkKind::Replace && parts::in_van(job, &work.part, make).is_none() {
        return Some(Refusal::NotOnBoard {
            part: work.part.clone(),
        });
    }
    in_the_way(job, &work.needs)
}

pub(super) fn cannot_reach_place(job: &Job, id: &str) -> Option<Refusal> {
    let Some(place) = job.scenario().workshop.place(id) else {
        return unknown(id);
    };
    in_the_way(job, &place.needs)
}

pub(super) fn cannot_turn(job: &Job, what: Turnable) -> Option<Refusal> {
    let place = observe::place_of(what);
    let from_above = matches!(what, Turnable::Pulsator | Turnable::Basket | Turnable::Tub);
    if from_above && !job.machine.lid_open() {
        return not_now(text!("the lid is shut"));
    }
    cannot_reach_place(job, place)
}

pub(super) fn cannot_pull_wire(job: &Job) -> Option<Refusal> {
    cannot_reach_place(job, "drain_motor")
}

pub(super) fn cannot_bail(job: &Job) -> Option<Refusal> {
    if job.machine.lid_open() {
        None
    } else {
        not_now(text!("the lid is shut"))
    }
}

pub(super) fn take_off(job: &mut Job, id: &str, helped: bool) -> Vec<Event> {
    let step = job.scenario().workshop.step(id);
    let lays_down = step.is_some_and(|s| s.lays_down);
    let lets_out = step.is_some_and(|s| s.lets_water_out);
    let mut events = Vec::new();
    if lays_down {
        job.bench.propped = helped;
        events.extend(spilt(job));
        events.extend(if helped { None } else { dropped(job) });
    } else if lets_out && !helped {
        events.push(Event::Spill {
            water_kg: SUMP_KG,
            why: say!("water ran out of the joint, with nothing under it").to_owned(),
        });
    }
    job.bench.off.push(id.to_owned());
    job.bench.left_wrong.remove(id);
    job.bench.checked.remove(id);
    job.refit_machine();
    events
}

/// Laid down with water in the tub it runs out over everything.
fn spilt(job: &mut Job) -> Option<Event> {
    let water_kg = job.machine.water_kg();
    (water_kg > RESIDUE_KG).then(|| {
        job.machine.empty_tub();
        Event::Spill {
            water_kg,
            why: say!("the tub was not empty: its water ran out over motor and floor").to_owned(),
        }
    })
}

/// Laid down by one person without a strap it may fall: a foot bends, the floor is chipped.
fn dropped(job: &mut Job) -> Option<Event> {
    let index = job.log().len() as u64;
    if draw_ratio(job.seed(), DROP_PURPOSE, index) >= DROP_RATIO {
        return None;
    }
    let params = &job.machine.plant().params().suspension;
    let mass_kg = params.cabinet_kg + params.mass_kg;
    let effect = Effect::Param("site.foot_firm_ratio".to_owned(), BENT_FOOT_RATIO);
    job.bench
        .left_wrong
        .insert("dropped".to_owned(), vec![effect]);
    job.ledger.damage += DROP_DAMAGE;
    Some(Event::Dropped {
        energy_j: mass_kg * STANDARD_GRAVITY_M_PER_S2 * FALL_M,
        what: say!("the machine slipped from the hands: a foot is bent, the floor is chipped")
            .to_owned(),
    })
}

pub(super) fn refit(job: &mut Job, id: &str, check: bool) {
    job.bench.off.retain(|s| s != id);
    let step = job.scenario().workshop.step(id).cloned();
    if let Some(step) = &step {
        // What was taken apart goes together as it should be, whatever was wrong there before.
        let targets = step.while_off.iter().map(Effect::target);
        job.bench.healed.extend(targets);
    }
    if let Some(step) = step {
        job.count_pieces(id, step.n_fasteners, check);
        settle(job, id, &step.mistakes, check);
    }
    job.refit_machine();
}

pub(super) fn pull_apart(job: &mut Job, id: &str) {
    job.bench.apart.insert(id.to_owned());
    job.refit_machine();
}

pub(super) fn push_together(job: &mut Job, id: &str) {
    job.bench.apart.remove(id);
    job.refit_machine();
}

/// The make that `work:variant` names.
fn make_of(name: &str) -> Option<&str> {
    name.split_once(':').map(|(_, make)| make)
}

pub(super) fn work(job: &mut Job, name: &str, check: bool) {
    let scenario = job.scenario().clone();
    let Some(work) = scenario.workshop.work(name) else {
        return;
    };
    let id = work.id.as_str();
    if work.kind == WorkKind::Replace
        && let Some(part) = scenario.workshop.part(&work.part)
    {
        parts::fit(job, part, make_of(name));
    }
    job.ledger.material += work.material_price;
    let elements = work.elements.iter().cloned().map(Target::Element);
    let params = work.params.iter().cloned().map(Target::Param);
    job.bench.healed.extend(elements.chain(params));
    // What this work makes good is good, whatever was left wrong there before.
    let part = scenario
        .workshop
        .part(&work.part)
        .filter(|_| work.kind == WorkKind::Replace);
    let mends = |effect: &Effect| {
        let target = effect.target();
        work.restores(&target) || part.is_some_and(|p| p.comes_with(&target))
    };
    for effects in job.bench.left_wrong.values_mut() {
        effects.retain(|effect| !mends(effect));
    }
    // A connector that the work seats again is together, where there is no doubt which it is.
    let is_seated = |c: &&Connector| {
        !c.elements.is_empty() && c.elements.iter().all(|e| work.elements.contains(e))
    };
    let mut seated = scenario.workshop.connectors.iter().filter(is_seated);
    if let (WorkKind::Reseat, Some(only), None) = (work.kind, seated.next(), seated.next()) {
        job.bench.apart.remove(&only.id);
    }
    let tick = job.tick();
    job.bench.works.push((tick, id.to_owned()));
    job.count_pieces(id, work.n_fasteners, check);
    settle(job, id, &work.mistakes, check);
    job.refit_machine();
}

/// Without the check chance decides whether something is left wrong.
fn settle(job: &mut Job, id: &str, mistakes: &[Mistake], check: bool) {
    job.bench.left_wrong.remove(id);
    if check {
        job.bench.checked.insert(id.to_owned());
        return;
    }
    job.bench.checked.remove(id);
    let index = job.log().len() as u64;
    let is_made = |(nth, mistake): &(usize, &Mistake)| {
        let purpose = MISTAKE_PURPOSE + (*nth as u64);
        draw_ratio(job.seed(), purpose, index) < mistake.chance_ratio
    };
    let made = mistakes.iter().enumerate().filter(is_made);
    let effects: Vec<Effect> = made.flat_map(|(_, m)| m.effects.clone()).collect();
    if !effects.is_empty() {
        job.bench.left_wrong.insert(id.to_owned(), effects);
    }
}

pub(super) fn note(job: &mut Job, action: &Action) {
    if let Action::Work { work, .. } = action {
        job.put_sealant(work);
    }
    let workshop = &job.scenario().workshop;
    let id = match action {
        Action::Refit { step, .. } => step.as_str(),
        Action::Work { work, .. } => workshop.work(work).map_or("", |w| w.id.as_str()),
        _ => "",
    };
    // What lies on the cloth can be seen; what fell into the machine is found by counting alone.
    let left = job.bench.short.get(id).filter(|short| !short.is_inside);
    let with_check = |text: String, check: bool| match left {
        Some(short) => format!("{text}; 1 of {} is left over on the cloth", short.of),
        None if check => format!("{text}, checked"),
        None => text,
    };
    let text = match action {
        Action::TakeOff { step, .. } => workshop
            .step(step)
            .map(|s| format!("{}: {}", s.name, s.verb)),
        Action::Refit { step, check } => workshop
            .step(step)
            .map(|s| with_check(format!("{}: {}", s.name, s.refit_verb), *check)),
        Action::PullApart { connector } => workshop
            .connector(connector)
            .map(|c| format!("{}: pulled apart", c.name)),
        Action::PushTogether { connector } => workshop
            .connector(connector)
            .map(|c| format!("{}: pushed home", c.name)),
        Action::Work { work, check } => workshop
            .work(work)
            .map(|w| with_check(w.name.clone(), *check)),
        _ => None,
    };
    if let Some(text) = text {
        job.write(NoteEntry::Act { text });
    }
}
