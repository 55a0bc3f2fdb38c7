//! Instruments that need no circuit: whether one can be put there now, what it finds, writing it
//! down.
//!
//! A reading is a property of the plant as it runs on while the instrument is there: a mean over
//! the time the jug fills, the highest speed the tachometer holds, the time until what is watched
//! ends. The machine that is looked at is a copy; the job's own goes the same way.

use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::gauge::Gauge;
use crate::bench::gauge::GaugeReading;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::machine::Machine;
use crate::machine::draw_ratio;
use crate::plant::drive;
use crate::plant::inlet;
use crate::say;
use crate::text;

/// Purposes of the two draws that make a reading's scatter.
const SCATTER_PURPOSES: [u64; 2] = [0x6761_7567, 0x6761_7568];
/// Standard deviation of the sum of two even draws from 0 to 1. Closed form: 1/sqrt(6).
const TRIANGLE_DEVIATION: f64 = 0.408_248_290_463_863;
/// Longest that somebody stands with a watch, ticks: half an hour. Design choice.
const PATIENCE: Tick = 30 * 60 * TICKS_PER_S;
/// Force of the spring balance at the middle of a strand, N. Common practice: about 7 N.
const BALANCE_N: f64 = 7.0;
/// A belt with less tension than this is off or hangs, N.
const NO_BELT_N: f64 = 3.0;
/// A stream thinner than this is a drip, m³/s. From memory.
const DRIP_M3_PER_S: f64 = 1.0e-6;
/// A basket slower than this stands, rad/s.
const STANDS_RAD_PER_S: f64 = 0.1;
/// Height of the tub's floor over the room's, m. Design choice.
const TUB_FLOOR_M: f64 = 0.30;
/// Water left when the tee goes into a hose that was shut but not bled, kg; with the tap open, kg.
const TEE_SPILL_KG: [f64; 2] = [0.3, 5.0];

pub(super) fn cannot(job: &Job, gauge: Gauge, place: &str) -> Option<Refusal> {
    if !job.scenario().rules.has_gauge(gauge) {
        return Some(Refusal::NotNow {
            why: text!("this instrument is not in the bag on this job").to_owned(),
        });
    }
    if !gauge.about().places.contains(&place) {
        let name = format!("{} at {place}", gauge.about().id);
        return Some(Refusal::Unknown { name });
    }
    if let Some(refusal) = super::access::cannot_reach_place(job, place) {
        return Some(refusal);
    }
    why_not(job, gauge, place).map(|why| Refusal::NotNow {
        why: why.to_owned(),
    })
}

fn why_not(job: &Job, gauge: Gauge, place: &str) -> Option<&'static str> {
    let machine = &job.machine;
    let lid_open = machine.lid_open();
    let flows = machine.plant().readings().flows;
    match (gauge, place) {
        (Gauge::JugAndWatch | Gauge::Thermometer, "tub") if !lid_open => {
            Some(text!("the lid is shut"))
        }
        (Gauge::JugAndWatch, "supply_hose") if job.bench.hose_attached => Some(text!(
            "the hose is on the machine: shut the tap and take it off first"
        )),
        (Gauge::PressureGauge, _) if !job.bench.hose_attached => Some(text!("the hose is off")),
        (Gauge::Watch, "basket") if machine.basket_rad_per_s().abs() < STANDS_RAD_PER_S => {
            Some(text!("the basket stands: there is nothing to time"))
        }
        (Gauge::Watch, "tub") if flows.inlet_m3_per_s < DRIP_M3_PER_S => {
            Some(text!("no water runs in: there is nothing to time"))
        }
        (Gauge::Watch, "drain_hose") if flows.drain_m3_per_s < DRIP_M3_PER_S => {
            Some(text!("no water runs out: there is nothing to time"))
        }
        (Gauge::Watch, "drain_motor") if !machine.plant().readings().is_actuator_energised => {
            Some(text!("the drain motor rests: there is nothing to time"))
        }
        (Gauge::SpringBalance | Gauge::BeltGauge, _) if is_turning(machine) => {
            Some(text!("the belt runs"))
        }
        (Gauge::SpringBalance | Gauge::BeltGauge, _)
            if machine.plant().params().belt.tension_n < NO_BELT_N =>
        {
            Some(text!("there is no belt to gauge: it hangs or is off"))
        }
        (Gauge::Rule, "clutch_lever") if machine.plant().params().lever.seated_ratio < 0.5 => Some(
            text!("the lever's end lies beside its link: there is no play to measure"),
        ),
        _ => None,
    }
}

fn is_turning(machine: &Machine) -> bool {
    machine.plant().readings().rotor_rad_per_s.abs() > STANDS_RAD_PER_S
}

/// Time the act takes from now.
pub(super) fn ticks(job: &Job, gauge: Gauge, place: &str) -> Tick {
    if gauge == Gauge::Watch {
        return watched(&job.machine, place);
    }
    let about = gauge.about();
    let fitting_s = if job.bench.fitted.contains(&gauge) {
        0.0
    } else {
        about.fitting_s
    };
    ((about.seconds + fitting_s) * TICKS_PER_S as f64) as Tick
}

/// Ticks until what is watched ends.
fn watched(machine: &Machine, place: &str) -> Tick {
    let mut copy = machine.clone();
    let mut ticks = 0;
    while ticks < PATIENCE && !has_ended(&copy, place) {
        copy.advance(1);
        ticks += 1;
    }
    ticks
}

fn has_ended(machine: &Machine, place: &str) -> bool {
    let readings = machine.plant().readings();
    match place {
        "basket" => readings.basket_rad_per_s.abs() < STANDS_RAD_PER_S,
        "tub" => readings.flows.inlet_m3_per_s < DRIP_M3_PER_S,
        "drain_hose" => readings.flows.drain_m3_per_s < DRIP_M3_PER_S,
        _ => readings.stroke_m_per_s.abs() < 1e-6 && readings.stroke_m > 1e-6,
    }
}

/// Puts it there: what it will have found when its time is over.
pub(super) fn apply(job: &mut Job, gauge: Gauge, place: &str) -> Vec<Event> {
    let mut events = Vec::new();
    let ticks = ticks(job, gauge, place);
    if gauge.is_fitted() && job.bench.fitted.insert(gauge) && gauge == Gauge::PressureGauge {
        events.extend(spill(job));
    }
    let value_si = found(job, gauge, place, ticks);
    let index = job.log().len() as u64;
    let draws = SCATTER_PURPOSES.map(|purpose| draw_ratio(job.seed(), purpose, index));
    let scatter = (draws[0] + draws[1] - 1.0) / TRIANGLE_DEVIATION;
    let mut seen_si = value_si + scatter * gauge.scatter_si(value_si);
    if gauge.about().zero_si == 0.0 {
        // None of these scales goes below nothing.
        seen_si = seen_si.max(0.0);
    }
    let (value_si, display) = gauge.shown(seen_si);
    job.bench.gauge = Some(GaugeReading {
        gauge,
        place: place.to_owned(),
        value_si,
        display,
    });
    events
}

fn spill(job: &Job) -> Option<Event> {
    let isolation = &job.bench.isolation;
    if isolation.tap_shut && isolation.hose_bled {
        return None;
    }
    Some(Event::Spill {
        water_kg: TEE_SPILL_KG[usize::from(!isolation.tap_shut)],
        why: say!("the supply line was opened under pressure").to_owned(),
    })
}

/// What the instrument finds, SI.
fn found(job: &Job, gauge: Gauge, place: &str, ticks: Tick) -> f64 {
    let machine = &job.machine;
    let params = machine.plant().params();
    match (gauge, place) {
        (Gauge::JugAndWatch, "supply_hose") => open_hose_m3_per_s(job),
        (Gauge::JugAndWatch, "tub") => mean(machine, ticks, |m| {
            m.plant().readings().flows.inlet_m3_per_s
        }),
        (Gauge::JugAndWatch, _) => mean(machine, ticks, |m| {
            m.plant().readings().flows.drain_m3_per_s
        }),
        (Gauge::Watch, _) => ticks as f64 / TICKS_PER_S as f64,
        (Gauge::PressureGauge, _) => line_pa(job, ticks),
        (Gauge::UTube, _) => after(machine, ticks).plant().readings().sensor_pa,
        (Gauge::Tachometer, "pulsator") => {
            highest(machine, ticks, |m| m.plant().readings().pulsator_rad_per_s)
        }
        (Gauge::Tachometer, "basket") => {
            highest(machine, ticks, |m| m.plant().readings().basket_rad_per_s)
        }
        (Gauge::Tachometer, _) => highest(machine, ticks, |m| m.plant().readings().rotor_rad_per_s),
        (Gauge::SpiritLevel, "floor") => floor_rad(job),
        (Gauge::SpiritLevel, _) => params.site.floor_tilt_rad,
        (Gauge::SpringBalance, _) => drive::strand_deflection_m(&params.belt, BALANCE_N),
        (Gauge::BeltGauge, _) => params.belt.tension_n,
        (Gauge::Thermometer, "motor") => after(machine, ticks).hottest_winding_k(),
        (Gauge::Thermometer, "tub") => machine.plant().readings().bath_k,
        (Gauge::Thermometer, _) => params.site.air_k,
        (Gauge::Rule, "drain_motor") => highest(machine, ticks, |m| m.plant().readings().stroke_m),
        (Gauge::Rule, "drain_hose") => TUB_FLOOR_M + params.drain.outlet_m,
        (Gauge::Rule, "balance_switch") => {
            (params.suspension.lever_gap_m - machine.plant().rim_reach_m()).max(0.0)
        }
        (Gauge::Rule, _) => params.lever.play_m,
    }
}

/// The room's own floor: the machine's feet do not change it.
fn floor_rad(job: &Job) -> f64 {
    let room = &job.scenario().site.params;
    let given = room.iter().find(|(name, _)| name == "site.floor_tilt_rad");
    given.map_or(0.0, |(_, tilt_rad)| *tilt_rad)
}

/// The hose's end in a bucket, the tap opened as far as it was found.
fn open_hose_m3_per_s(job: &Job) -> f64 {
    let mut machine = job.machine.clone();
    machine.set_hose(true);
    machine.set_tap(true);
    inlet::open_hose_m3_per_s(&machine.plant().params().inlet)
}

/// At the tee: the supply less what the flow costs on its way; what was shut in stays until it is
/// let down.
fn line_pa(job: &Job, ticks: Tick) -> f64 {
    let end = after(&job.machine, ticks);
    let inlet = &end.plant().params().inlet;
    if end.tap_open() {
        inlet::line_pa(inlet, end.plant().readings().flows.inlet_m3_per_s)
    } else if job.bench.isolation.hose_bled {
        0.0
    } else {
        inlet.supply_pa
    }
}

fn after(machine: &Machine, ticks: Tick) -> Machine {
    let mut copy = machine.clone();
    copy.advance(ticks);
    copy
}

/// Mean over the ticks in which there is something.
fn mean(machine: &Machine, ticks: Tick, of: impl Fn(&Machine) -> f64) -> f64 {
    let mut copy = machine.clone();
    let (mut sum, mut n) = (0.0, 0.0);
    for _ in 0..ticks {
        copy.advance(1);
        let value = of(&copy);
        if value > DRIP_M3_PER_S {
            sum += value;
            n += 1.0;
        }
    }
    if n > 0.0 { sum / n } else { 0.0 }
}

/// Highest magnitude over the ticks.
fn highest(machine: &Machine, ticks: Tick, of: impl Fn(&Machine) -> f64) -> f64 {
    let mut copy = machine.clone();
    let mut top = of(&copy).abs();
    for _ in 0..ticks {
        copy.advance(1);
        top = top.max(of(&copy).abs());
    }
    top
}

/// What it shows at this very moment, SI, where it is one that stays; none where it cannot be put
/// or is not fitted.
pub(super) fn instant(job: &Job, gauge: Gauge, place: &str) -> Option<f64> {
    let is_there = !gauge.is_fitted() || job.bench.fitted.contains(&gauge);
    if !gauge.is_continuous() || !is_there || cannot(job, gauge, place).is_some() {
        return None;
    }
    gauge.shown(found(job, gauge, place, 0)).0
}

/// Writes down what it has found.
pub(super) fn note(job: &mut Job) {
    if let Some(reading) = job.bench.gauge.clone() {
        job.write(NoteEntry::Gauge(reading));
    }
}
