//! The hand instruments: placing leads, reading, writing down.
//!
//! The instrument is part of the network, so a reading is whatever the machine and the instrument
//! give together. What the tester has shown is kept for the proof of dead.

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::job::MeterSetting;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::machine::Probe;
use crate::plant::harness::Instrument;

/// Share of the nominal supply that counts as "shows a live source".
const LIVE_RATIO: f64 = 0.5;
/// Below this a tester shows dead, V. Common practice.
const DEAD_V: f64 = 5.0;

pub(super) fn cannot_place(
    job: &Job,
    mode: MeterMode,
    red: Option<&str>,
    black: Option<&str>,
) -> Option<Refusal> {
    if !job.scenario().rules.has(mode) {
        return Some(Refusal::NotNow {
            why: "this instrument is not in the bag on this job".to_owned(),
        });
    }
    if mode.is_clamp() {
        let element = red?;
        return cannot_clamp(job, element);
    }
    red.and_then(|node| cannot_touch(job, node))
        .or_else(|| black.and_then(|n| cannot_touch(job, n)))
}

fn cannot_touch(job: &Job, node: &str) -> Option<Refusal> {
    let workshop = &job.scenario().workshop;
    let Some(point) = workshop.test_point(node) else {
        return Some(Refusal::Unknown {
            name: node.to_owned(),
        });
    };
    let steps = super::access::missing(workshop, &job.bench, &point.needs);
    (!steps.is_empty()).then_some(Refusal::InTheWay { steps })
}

fn cannot_clamp(job: &Job, element: &str) -> Option<Refusal> {
    let Some((from, to)) = job.machine.element_ends(element) else {
        return Some(Refusal::Unknown {
            name: element.to_owned(),
        });
    };
    // Either end of a wire will do for the jaws.
    cannot_touch(job, &from).and_then(|_| cannot_touch(job, &to))
}

pub(super) fn cannot_note(job: &Job) -> Option<Refusal> {
    job.reading().is_none().then(|| Refusal::NotNow {
        why: "the meter is connected to nothing".to_owned(),
    })
}

pub(super) fn place(
    job: &mut Job,
    mode: MeterMode,
    red: Option<String>,
    black: Option<String>,
) -> Vec<Event> {
    job.bench.meter = Some(MeterSetting { mode, red, black });
    show_tester(job);
    Vec::new()
}

/// Keeps what a voltage tester shows for the proof of dead.
fn show_tester(job: &mut Job) {
    let Some(reading) = job.reading() else { return };
    let tick = job.tick();
    let lugs = &job.machine.model().roles.run_capacitor;
    let on_lugs = [&reading.red, &reading.black]
        .iter()
        .all(|n| n.as_ref().is_some_and(|n| *n == lugs.0 || *n == lugs.1));
    if reading.mode == MeterMode::DcVolts && on_lugs {
        job.bench.isolation.capacitor_measured = Some(tick);
    }
    if !matches!(reading.mode, MeterMode::AcVolts | MeterMode::LowAcVolts) {
        return;
    }
    let (Some(red), Some(black), Some(value)) = (reading.red, reading.black, reading.value) else {
        return;
    };
    let nominal_v = job.machine.nominal_supply_v();
    let [line, _, earth] = &job.machine.model().roles.socket;
    let at_earth = [&red, &black].iter().all(|n| *n == line || *n == earth);
    // A dead line reads nothing to earth as well: only a live one tells.
    let is_supplied = job.bench.isolation.tester_proved.is_some() && !job.machine.supply_tripped();
    if at_earth && value < LIVE_RATIO * nominal_v && is_supplied {
        job.bench.isolation.earth_seen_missing = true;
    }
    if value > LIVE_RATIO * nominal_v {
        job.bench.isolation.tester_shows_live(tick);
    } else if value < DEAD_V {
        job.bench.isolation.tester_shows_dead(&red, &black);
    }
}

pub(super) fn note(job: &mut Job) {
    if let Some(reading) = job.reading() {
        job.write(NoteEntry::Reading(reading));
    }
}

impl Job {
    /// What the meter shows now; none when it is connected to nothing.
    pub fn reading(&self) -> Option<Reading> {
        let setting = self.bench.meter.as_ref()?;
        let red = setting.red.as_deref()?;
        let black = setting.black.as_deref();
        if black.is_none() && !setting.mode.is_clamp() {
            return None;
        }
        let probe = probe(setting.mode, red, black)?;
        let measured = self.machine.measure(probe).ok()?;
        Some(display::reading(setting, measured))
    }

    /// Standard deviation of a reading from the tolerances of this machine's parts, in the mode's SI
    /// unit; none where there is nothing to read.
    pub fn spread_si(&self, reading: &Reading) -> Option<f64> {
        let red = reading.red.as_deref()?;
        let probe = probe(reading.mode, red, reading.black.as_deref())?;
        self.machine.spread_si(probe, reading.value?).ok()
    }
}

fn probe<'a>(mode: MeterMode, red: &'a str, black: Option<&'a str>) -> Option<Probe<'a>> {
    let between = |instrument| Some(Probe::Between(instrument, red, black?));
    match mode {
        MeterMode::AcVolts => between(Instrument::AcVolts),
        MeterMode::LowAcVolts => between(Instrument::AcVoltsLowImpedance),
        MeterMode::DcVolts => between(Instrument::DcVolts),
        MeterMode::Ohms | MeterMode::Continuity => between(Instrument::Ohms),
        MeterMode::Capacitance => between(Instrument::Capacitance),
        MeterMode::Insulation => between(Instrument::Insulation),
        MeterMode::EarthBond => Some(Probe::Bond(red, black?)),
        MeterMode::Clamp => Some(Probe::Clamp(red)),
        MeterMode::Leakage => Some(Probe::Leakage),
    }
}
