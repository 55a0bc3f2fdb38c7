//! What can be done with a thing: candidate acts by what it is, each asked of the job whether
//! hands can do it now.

use crate::app::format;
use crate::app::view::Order;
use crate::app::view::Thing;
use crate::app::view::VerbView;
use crate::app::view::names::place_of;
use crate::app::view::names::resolve;
use crate::app::view::names::step_of;
use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::EmptyBy;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::ledger::ticks_of;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::words::turnable_name;
use crate::bench::workshop::Step;
use crate::bench::workshop::Work;
use crate::bench::workshop::Workshop;

/// Shorter acts are not worth a figure on their key, ticks: half a minute.
const WORTH_SAYING: Tick = 30 * TICKS_PER_S;

/// A candidate: words, hint, act.
pub struct Candidate {
    word: String,
    hint: String,
    act: Action,
}

fn candidate(word: impl Into<String>, hint: impl Into<String>, act: Action) -> Candidate {
    Candidate {
        word: word.into(),
        hint: hint.into(),
        act,
    }
}

/// All verbs for a thing that make sense now. What something is in the way of is left out: the
/// way is cleared first.
pub fn verbs(job: &Job, thing: &Thing) -> Vec<VerbView> {
    candidates(&job.scenario().workshop, thing)
        .into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

fn verb(job: &Job, candidate: Candidate) -> Option<VerbView> {
    let blocked = match job.refusal(&candidate.act) {
        None => false,
        Some(
            Refusal::InTheWay { .. }
            | Refusal::AlreadySo
            | Refusal::Unknown { .. }
            | Refusal::JobOver,
        ) => {
            return None;
        }
        Some(_) => true,
    };
    let ticks = ticks_of(
        &candidate.act,
        &job.scenario().workshop,
        job.machine().water_kg(),
    );
    Some(VerbView {
        word: candidate.word,
        takes: if ticks < WORTH_SAYING {
            String::new()
        } else {
            format::duration(ticks)
        },
        hint: candidate.hint,
        blocked,
        order: Order::Do(vec![candidate.act]),
    })
}

fn candidates(workshop: &Workshop, thing: &Thing) -> Vec<Candidate> {
    let id = resolve(workshop, thing.id());
    let mut list = Vec::new();
    match thing {
        Thing::Key(_) => {
            list.extend(key(id).map(|key| candidate("press", "", Action::Key { key })))
        }
        Thing::Connector(_) => connector(id, "", &mut list),
        Thing::Point(_) | Thing::Element(_) => {}
        Thing::Step(_) | Thing::Place(_) => {
            around(id, &mut list);
            for step in steps(workshop, id) {
                self::step(step, &mut list);
            }
            senses(workshop, id, &mut list);
            hands(id, &mut list);
            let place = place_of(workshop, id).map_or(id, |place| place.id.as_str());
            for found in workshop
                .connectors
                .iter()
                .filter(|c| c.place == place || c.place == id)
            {
                connector(&found.id, &found.name, &mut list);
            }
        }
    }
    list
}

/// What puts something right at a thing, each asked of the job whether it can be done now.
pub fn repairs(job: &Job, thing: &Thing) -> Vec<VerbView> {
    let workshop = &job.scenario().workshop;
    let mut list = Vec::new();
    for found in works_at(workshop, resolve(workshop, thing.id())) {
        work(found, &mut list);
    }
    list.into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

/// What puts something right outside the machine: tap, socket, load, and how it is used.
pub fn repairs_outside(job: &Job) -> Vec<VerbView> {
    let mut list = Vec::new();
    for found in job
        .scenario()
        .workshop
        .works
        .iter()
        .filter(|w| w.part.is_empty())
    {
        work(found, &mut list);
    }
    list.into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

/// Works on the part at a place. At one place of a part that is everywhere, such as the harness,
/// those that name the place.
fn works_at<'a>(workshop: &'a Workshop, id: &str) -> Vec<&'a Work> {
    let part = workshop
        .place(id)
        .map_or(id, |p| if p.part.is_empty() { id } else { &p.part });
    let all: Vec<&Work> = workshop
        .works
        .iter()
        .filter(|w| w.part == part || w.part == id)
        .collect();
    let named: Vec<&Work> = all.iter().copied().filter(|w| w.id.contains(id)).collect();
    if part != id && part == "harness" && !named.is_empty() {
        named
    } else {
        all
    }
}

/// Steps that move a thing: its own, or those that move the whole machine.
fn steps<'a>(workshop: &'a Workshop, id: &str) -> Vec<&'a Step> {
    if matches!(id, "cabinet" | "under_machine" | "floor") {
        return workshop
            .steps
            .iter()
            .filter(|s| s.moves_machine || s.lays_down)
            .collect();
    }
    step_of(workshop, id).into_iter().collect()
}

fn senses(workshop: &Workshop, id: &str, list: &mut Vec<Candidate>) {
    let Some(place) = place_of(workshop, id) else {
        return;
    };
    let words = [
        ("look", Sense::Look),
        ("feel", Sense::Feel),
        ("listen", Sense::Listen),
        ("smell", Sense::Smell),
    ];
    for (word, sense) in words {
        list.push(candidate(
            word,
            "",
            Action::Sense {
                sense,
                place: place.id.clone(),
            },
        ));
    }
}

fn connector(id: &str, name: &str, list: &mut Vec<Candidate>) {
    let said = |verb: &str| {
        if name.is_empty() {
            verb.to_owned()
        } else {
            format!("{name}: {verb}")
        }
    };
    list.push(candidate(
        said("pull apart"),
        "",
        Action::PullApart {
            connector: id.to_owned(),
        },
    ));
    list.push(candidate(
        said("push home"),
        "",
        Action::PushTogether {
            connector: id.to_owned(),
        },
    ));
}

fn step(step: &Step, list: &mut Vec<Candidate>) {
    let off = |helped| Action::TakeOff {
        step: step.id.clone(),
        helped,
    };
    let on = |check| Action::Refit {
        step: step.id.clone(),
        check,
    };
    if step.needs_help {
        list.push(candidate(
            format!("{}, with help or a strap", step.verb),
            &step.caution,
            off(true),
        ));
        list.push(candidate(
            format!("{}, alone", step.verb),
            &step.caution,
            off(false),
        ));
    } else {
        list.push(candidate(&step.verb, &step.caution, off(false)));
    }
    if step.refit_check.is_empty() {
        list.push(candidate(&step.refit_verb, "", on(false)));
    } else {
        list.push(candidate(
            format!("{} and check: {}", step.refit_verb, step.refit_check),
            "",
            on(true),
        ));
        list.push(candidate(
            format!("{}, no check", step.refit_verb),
            "",
            on(false),
        ));
    }
}

fn work(work: &Work, list: &mut Vec<Candidate>) {
    let act = |check| Action::Work {
        work: work.id.clone(),
        check,
    };
    if work.check.is_empty() {
        list.push(candidate(&work.name, &work.caution, act(false)));
    } else {
        list.push(candidate(
            format!("{} and check: {}", work.name, work.check),
            &work.caution,
            act(true),
        ));
        list.push(candidate(
            format!("{}, no check", work.name),
            &work.caution,
            act(false),
        ));
    }
}

/// What hands do to plug, tap, hose, lid, charge and water.
fn around(id: &str, list: &mut Vec<Candidate>) {
    let mut add = |word: &str, act: Action| list.push(candidate(word, "", act));
    match id {
        "plug" | "socket" | "mains_cord" => {
            add("pull the plug", Action::Plug { inserted: false });
            add("put the plug in", Action::Plug { inserted: true });
            add("keep it in sight", Action::Secure);
            discharge("plug pins", Charged::PlugPins, &mut add);
        }
        "tap" => {
            add("shut the tap", Action::Tap { open: false });
            add("open the tap", Action::Tap { open: true });
            add("bleed the hose into a bucket", Action::BleedHose);
        }
        "supply_hose" | "inlet_filter" => {
            add("bleed it into a bucket", Action::BleedHose);
            add("take the hose off", Action::SupplyHose { attached: false });
            add("screw the hose on", Action::SupplyHose { attached: true });
        }
        "lid" => {
            add("open", Action::Lid { open: true });
            add("shut", Action::Lid { open: false });
        }
        "lid_switch" => {
            add("bridge it", Action::BridgeLid { fitted: true });
            add("take the bridge off", Action::BridgeLid { fitted: false });
        }
        "on_off_switch" => add(
            "press",
            Action::Key {
                key: PanelKey::Power,
            },
        ),
        "run_capacitor" => discharge("it", Charged::RunCapacitor, &mut add),
        "outer_tub" | "tub" | "basket" => add(
            "bail the water out",
            Action::Empty {
                how: EmptyBy::Bucket,
            },
        ),
        "drain_motor" | "drain_valve" => {
            add(
                "let the water out by the wire",
                Action::Empty {
                    how: EmptyBy::DrainWire,
                },
            );
        }
        _ => {}
    }
}

fn discharge(what: &str, charged: Charged, add: &mut impl FnMut(&str, Action)) {
    add(
        &format!("discharge {what} with the resistor"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::BleedResistor,
        },
    );
    add(
        &format!("short {what} with a screwdriver"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::Screwdriver,
        },
    );
}

/// What turns or moves by hand.
fn hands(id: &str, list: &mut Vec<Candidate>) {
    let whats: &[Turnable] = match id {
        "pulsator" => &[Turnable::Pulsator],
        "basket" => &[Turnable::Basket],
        "motor_pulley" | "wash_motor" => &[Turnable::MotorPulley],
        "belt" => &[Turnable::Belt],
        "drain_motor" => &[Turnable::DrainWire],
        "clutch_lever" => &[Turnable::ClutchLever],
        "outer_tub" | "tub" | "suspension_rods" => &[Turnable::Tub],
        "out_of_balance_switch" | "balance_switch" => &[Turnable::BalanceLever],
        _ => &[],
    };
    for what in whats {
        list.push(candidate(
            turnable_name(*what),
            "",
            Action::Turn { what: *what },
        ));
    }
}

/// The panel key a drawn key or knob stands for.
pub fn key(id: &str) -> Option<PanelKey> {
    Some(match id {
        "on_off" => PanelKey::Power,
        "start_pause" => PanelKey::Start,
        "program" | "timer_knob" => PanelKey::Program,
        "water_level" | "level_knob" => PanelKey::Level,
        "service" => PanelKey::Service,
        _ => return None,
    })
}
