//! Bare hands on conductors: which an act touches, what flows, what opens.
//!
//! The hand closes a circuit to earth through an ordinary body; the source is the network as seen
//! from the conductor. Currents, times and zones by IEC 60479-1 (from memory).

use crate::bench::action::Action;
use crate::bench::action::Turnable;
use crate::bench::body::Body;
use crate::bench::body::Skin;
use crate::bench::event::Event;
use crate::bench::job::Job;
use crate::bench::protection::Breaker;
use crate::bench::protection::Protection;
use crate::bench::protection::ResidualCurrentDevice;
use crate::bench::shock;
use crate::bench::shock::Source;
use crate::bench::workshop::WorkKind;
use crate::language::said;
use crate::say;

/// Current that is felt, A. Published: IEC 60479-1, from memory.
const FELT_A: f64 = 0.0005;
/// Breaker of the house circuit, A. Common practice.
const BREAKER_A: f64 = 16.0;
/// Basket speed from which a hand is caught, rad/s. Common practice.
const CATCHES_RAD_PER_S: f64 = 3.0;
/// Water on the floor that wets the shoes, kg.
const WET_FLOOR_KG: f64 = 0.5;
/// Wet shoes on a wet floor, Ω. From memory, less sure.
const WET_SHOES_OHM: f64 = 200.0;
/// Charge that is felt when it goes through a hand, V.
const CHARGE_FELT_V: f64 = 34.0;

/// Nodes of bare conductors that the act puts a hand on.
pub fn touched_nodes(job: &Job, action: &Action) -> Vec<String> {
    let workshop = &job.scenario().workshop;
    let elements: Vec<&String> = match action {
        Action::PullApart { connector } | Action::PushTogether { connector } => workshop
            .connector(connector)
            .iter()
            .flat_map(|c| &c.elements)
            .collect(),
        Action::Work { work, .. } => match workshop.work(work) {
            Some(work) if !work.needs.is_empty() => {
                let part = workshop
                    .part(&work.part)
                    .filter(|_| work.kind == WorkKind::Replace);
                work.elements
                    .iter()
                    .chain(part.iter().flat_map(|p| &p.elements))
                    .collect()
            }
            _ => Vec::new(),
        },
        Action::BridgeLid { .. } => vec![&job.machine.model().roles.lid_switch],
        _ => Vec::new(),
    };
    let mut nodes: Vec<String> = elements
        .into_iter()
        .filter_map(|element| job.machine.element_ends(element))
        .flat_map(|(a, b)| [a, b])
        .filter(|node| workshop.test_point(node).is_some())
        .collect();
    nodes.sort();
    nodes.dedup();
    nodes
}

/// What the act does to the person who does it.
pub(super) fn hazards(job: &mut Job, action: &Action) -> Vec<Event> {
    let mut events = Vec::new();
    events.extend(caught(job, action));
    let nodes = touched_nodes(job, action);
    if !nodes.is_empty() {
        events.extend(shocked(job, &nodes));
        events.extend(charged(job, &nodes));
    }
    events
}

fn shocked(job: &mut Job, nodes: &[String]) -> Option<Event> {
    let sources = job.machine.touch_sources(nodes);
    let (_, worst) = sources
        .into_iter()
        .max_by(|(_, a), (_, b)| a.open_v.total_cmp(&b.open_v))?;
    let protection = Protection {
        residual: job.scenario().site.rcd_a.map(|rated_a| match rated_a {
            a if a < 0.01 => ResidualCurrentDevice::SIX_MA,
            _ => ResidualCurrentDevice::GENERAL_30_MA,
        }),
        breaker: Some(Breaker { rated_a: BREAKER_A }),
        fuse: None,
    };
    let source = Source {
        open_v: worst.open_v,
        resistance_ohm: worst.resistance_ohm,
        reactance_ohm: worst.reactance_ohm,
    };
    let line_a = job.machine.live().line_a;
    let shock = shock::shock(&body(job), source, &protection, line_a, true);
    if shock.current_a < FELT_A {
        return None;
    }
    if shock.opening.is_some() {
        job.machine.trip_supply();
    }
    Some(Event::Shock {
        touch_v: shock.touch_v,
        body_a: shock.current_a,
        duration_s: shock.time_s,
        opened_by: shock
            .opening
            .map_or(say!("nothing" as "it opened the circuit"), |o| {
                said(o.device.words())
            })
            .to_owned(),
        zone: say!(
            "{zone} ({effect})",
            zone = shock.zone.name(),
            effect = said(shock.zone.words())
        ),
    })
}

/// Whoever stands on a wet floor has little left between them and earth.
fn body(job: &Job) -> Body {
    if job.machine.plant().readings().puddle_kg > WET_FLOOR_KG {
        return Body {
            skin: Skin::Wet,
            series_ohm: WET_SHOES_OHM,
            ..Body::ORDINARY
        };
    }
    Body::ORDINARY
}

fn charged(job: &mut Job, nodes: &[String]) -> Option<Event> {
    let (a, b) = &job.machine.model().roles.run_capacitor;
    if !nodes.iter().any(|n| n == a || n == b) {
        return None;
    }
    let stored = job.machine.run_capacitor_charge();
    if stored.voltage_v < CHARGE_FELT_V {
        return None;
    }
    job.machine.discharge_run_capacitor();
    let through = say!("the hand").to_owned();
    Some(Event::Discharge {
        from_v: stored.voltage_v,
        energy_j: stored.energy_j,
        through,
    })
}

fn caught(job: &Job, action: &Action) -> Option<Event> {
    let Action::Turn { what } = action else {
        return None;
    };
    let params = job.machine.plant().params();
    let (speed, inertia) = match what {
        Turnable::MotorPulley | Turnable::Belt => (
            job.machine.plant().readings().rotor_rad_per_s.abs(),
            params.rotor.inertia_kg_m2,
        ),
        _ => {
            let load_kg = params.load.dry_kg + job.machine.plant().state().tub.textile_kg;
            let gyration = params.load.gyration_m * params.load.gyration_m;
            (
                job.machine.basket_rad_per_s().abs(),
                params.basket.inertia_kg_m2 + load_kg * gyration,
            )
        }
    };
    (speed >= CATCHES_RAD_PER_S).then_some(Event::Caught {
        speed_rad_per_s: speed,
        energy_j: 0.5 * inertia * speed * speed,
    })
}
