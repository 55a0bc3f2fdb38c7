//! What each act does: whether hands can do it, what it changes, what comes of it.
//!
//! An act has three moments: `refusal` looks before, `perform` changes the world when the act
//! begins, `finish` writes down what its time has brought. Nothing here forbids; it only knows
//! what is physically in the way.

mod access;
mod agree;
mod arrive;
mod finishing;
mod gauge;
mod handle;
mod isolate;
mod leave;
mod measure;
mod office;
mod order;
mod parts;
mod report;
mod setup;
mod touch;
mod way;

pub use agree::what as offer_words;
pub use arrive::arrive;
pub use handle::surface_k;
pub use setup::setup_of;
pub use setup::supply_values;
pub use touch::touched_nodes;
use way::not_now;

use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::hint;
use crate::bench::job::Job;
use crate::bench::ledger;
use crate::bench::notebook::Tick;
use crate::bench::observe;
use crate::bench::rules;
use crate::bench::visit::EmptyBy;
use crate::say;

/// Water on the floor that nobody overlooks, kg. Common practice.
const FLOOD_KG: f64 = 2.0;

/// Why hands cannot do this now; `None` when they can.
pub fn refusal(job: &Job, action: &Action) -> Option<Refusal> {
    if job.is_over() {
        return Some(Refusal::JobOver);
    }
    if job.is_late() && !ends_visit(action) {
        return not_now(say!(
            "a day has passed since you rang the bell: say what you found, and hand over or make it safe and leave"
        ));
    }
    match action {
        Action::TakeOff { step, .. } => access::cannot_take_off(job, step),
        Action::Refit { step, .. } => access::cannot_refit(job, step),
        Action::PullApart { connector } => access::cannot_pull_apart(job, connector),
        Action::PushTogether { connector } => access::cannot_push_together(job, connector),
        Action::Work { work, .. } => access::cannot_work(job, work),
        Action::Meter { mode, red, black } => {
            measure::cannot_place(job, *mode, red.as_deref(), black.as_deref())
        }
        Action::Gauge { gauge, place } => gauge::cannot(job, *gauge, place),
        Action::Splitter { fitted } => measure::cannot_split(job, *fitted),
        Action::VoltagePen { point } => measure::cannot_touch(job, point),
        Action::DryOut if job.bench.wet.is_empty() => Some(Refusal::AlreadySo),
        Action::DryOut => access::cannot_reach_place(job, "motor"),
        Action::HouseSwitch { .. } => isolate::already_so(job, action),
        Action::Note => measure::cannot_note(job),
        Action::Sense { place, .. } => access::cannot_reach_place(job, place),
        Action::Turn { what } => access::cannot_turn(job, *what),
        Action::Empty {
            how: EmptyBy::DrainWire,
        } => access::cannot_pull_wire(job),
        Action::Empty {
            how: EmptyBy::Bucket,
        } => access::cannot_bail(job),
        Action::Plug { .. } | Action::Tap { .. } | Action::Lid { .. } => {
            isolate::already_so(job, action)
        }
        Action::SupplyHose { attached } => isolate::cannot_move_hose(job, *attached),
        Action::Discharge { what, .. } => isolate::cannot_discharge(job, *what),
        Action::BridgeLid { .. } => access::cannot_reach_place(job, isolate::LID_SWITCH)
            .or_else(|| isolate::already_so(job, action)),
        Action::Phone { .. } | Action::LoadVan { .. } => office::cannot(job, action),
        Action::Offer { causes, options } => agree::cannot_offer(job, causes, options),
        Action::AskPayer => agree::cannot_ask_payer(job),
        Action::TakeFee => agree::cannot_take_fee(job),
        Action::LeaveUntil { parts, .. } => leave::cannot_leave(job, parts),
        Action::PutOldBack { part } => parts::cannot_put_back(job, part),
        Action::Sign => report::cannot_sign(job),
        Action::Hint => hint::cannot(job),
        Action::ProtectFloor
        | Action::Gloves { .. }
        | Action::MopFloor
        | Action::KeepClear
        | Action::CoolWater => handle::cannot(job, action),
        Action::Ask { question, .. } => finishing::cannot_ask(question),
        Action::Remark { text } => finishing::cannot_remark(text),
        Action::Finding { causes, evidence } => finishing::cannot_state(job, causes, evidence),
        Action::Breaker => isolate::cannot_reset(job),
        Action::Secure
        | Action::Key { .. }
        | Action::BleedHose
        | Action::ProveTester
        | Action::NewMeterFuse
        | Action::Quote { .. }
        | Action::CheckPapers
        | Action::Warranty { .. }
        | Action::CheckInstrument
        | Action::SpareInstrument
        | Action::MendHouse
        | Action::TakePicture { .. }
        | Action::Advise { .. }
        | Action::MakeSafeAndLeave
        | Action::Close => None,
    }
}

/// What can be done however late it is.
fn ends_visit(action: &Action) -> bool {
    matches!(
        action,
        Action::Finding { .. } | Action::Remark { .. } | Action::MakeSafeAndLeave | Action::Close
    )
}

/// Time an act takes from now.
pub fn ticks(job: &Job, action: &Action) -> Tick {
    match action {
        Action::Gauge { gauge, place } => gauge::ticks(job, *gauge, place),
        _ => ledger::ticks_of(action, &job.scenario().workshop, job.machine.water_kg()),
    }
}

/// Begins an act: changes the bench and the machine, and says what happened at once.
pub fn perform(job: &mut Job, action: &Action) -> Vec<Event> {
    let mut events = rules::before(job, action);
    events.extend(change(job, action));
    events
}

/// What an act changes and does to people, without holding the rules against it.
pub fn change(job: &mut Job, action: &Action) -> Vec<Event> {
    let mut events = touch::hazards(job, action);
    events.extend(handle::consequences(job, action));
    events.extend(order::cover_falls(job, action));
    events.extend(order::harm(job, action));
    order::support(job, action);
    match action {
        Action::TakeOff { step, helped } => events.extend(access::take_off(job, step, *helped)),
        Action::VoltagePen { point } => measure::hold_pen(job, point),
        Action::DryOut => handle::dry_out(job),
        Action::Refit { step, check } => access::refit(job, step, *check),
        Action::PullApart { connector } => access::pull_apart(job, connector),
        Action::PushTogether { connector } => access::push_together(job, connector),
        Action::Work { work, check } => access::work(job, work, *check),
        Action::Meter { mode, red, black } => {
            events.extend(measure::place(job, *mode, red.clone(), black.clone()));
        }
        Action::Gauge { gauge, place } => events.extend(gauge::apply(job, *gauge, place)),
        Action::Splitter { fitted } => job.bench.splitter = *fitted,
        Action::NewMeterFuse => measure::renew_fuses(job),
        Action::Plug { .. }
        | Action::HouseSwitch { .. }
        | Action::ProveTester
        | Action::Secure
        | Action::Tap { .. }
        | Action::BleedHose
        | Action::SupplyHose { .. }
        | Action::Discharge { .. }
        | Action::BridgeLid { .. }
        | Action::Lid { .. }
        | Action::Breaker
        | Action::Key { .. } => events.extend(isolate::perform(job, action)),
        Action::Empty { .. } => job.machine.empty_tub(),
        Action::Phone { .. } | Action::LoadVan { .. } => office::perform(job, action),
        _ => {}
    }
    for event in &events {
        if let Event::Spill { water_kg, .. } = event {
            job.machine.spill(*water_kg);
            job.bench.floor_told_kg += water_kg;
        }
    }
    events
}

/// Ends an act: notes what it gave, and says what has run onto the floor meanwhile.
pub fn finish(job: &mut Job, action: &Action) -> Vec<Event> {
    let mut events = finish_act(job, action);
    let floor_kg = job.machine.plant().readings().puddle_kg;
    let more_kg = floor_kg - job.bench.floor_told_kg;
    if more_kg > FLOOD_KG {
        job.bench.floor_told_kg = floor_kg;
        events.push(Event::Spill {
            water_kg: more_kg,
            why: say!("water has run onto the floor").to_owned(),
        });
    }
    events
}

fn finish_act(job: &mut Job, action: &Action) -> Vec<Event> {
    match action {
        Action::Sense { sense, place } => observe::note_sense(job, *sense, place),
        Action::Turn { what } => observe::note_turn(job, *what),
        Action::Note => measure::note(job),
        Action::Gauge { .. } => gauge::note(job),
        Action::Ask { question, again } => finishing::answer(job, question, *again),
        Action::Quote { price } => return finishing::quote(job, *price),
        Action::Offer { causes, options } => return agree::offer(job, causes, options),
        Action::AskPayer => agree::ask_payer(job),
        Action::TakeFee => agree::take_fee(job),
        Action::CheckPapers => agree::check_papers(job),
        Action::Warranty { payer } => agree::warranty(job, *payer),
        Action::CheckInstrument => measure::look_over(job),
        Action::SpareInstrument => measure::change(job),
        Action::PutOldBack { part } => parts::put_back(job, part),
        Action::ProtectFloor
        | Action::Gloves { .. }
        | Action::MopFloor
        | Action::KeepClear
        | Action::CoolWater
        | Action::MendHouse => handle::perform(job, action),
        Action::TakePicture { of } => report::take_picture(job, *of),
        Action::Sign => report::sign(job),
        Action::LeaveUntil { parts, label } => return leave::leave_until(job, parts, *label),
        Action::Finding { causes, evidence } => finishing::state(job, causes, evidence),
        Action::Remark { text } => finishing::remark(job, text),
        Action::Advise { advice } => finishing::advise(job, *advice),
        Action::MakeSafeAndLeave => return leave::make_safe(job),
        Action::Close => return leave::close(job),
        Action::TakeOff { .. }
        | Action::Refit { .. }
        | Action::PullApart { .. }
        | Action::PushTogether { .. }
        | Action::Work { .. } => access::note(job, action),
        _ => {}
    }
    Vec::new()
}

/// New parts through which more flows than they stand burn out.
pub fn burn(job: &mut Job) -> Vec<Event> {
    parts::burn(job)
}
