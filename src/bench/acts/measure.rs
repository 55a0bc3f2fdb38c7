//! The hand instruments: placing leads, reading, writing down.
//!
//! The instrument is part of the network, so a reading is whatever the machine and the instrument
//! give together. What the tester has shown is kept for the proof of dead.

use crate::bench::accuracy;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::acts::way::missing;
use crate::bench::display;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::job::WHOLE_CORD;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::notebook::Seen;
use crate::bench::recorder::Channel;
use crate::bench::state::MeterSetting;
use crate::bench::visit::HandInstrument;
use crate::language::decimals;
use crate::machine::Probe;
use crate::plant::harness::Instrument;
use crate::plant::harness::instrument::AMPS_OHM;
use crate::say;
use crate::text;

/// Share of the nominal supply that counts as "shows a live source".
const LIVE_RATIO: f64 = 0.5;
/// Inner resistance of the earth bond tester, Ω. From memory.
const BOND_TESTER_OHM: f64 = 1.0;
/// Fuse of the current range and of the bond tester, A; its melting integral, A²s. From memory of
/// fast high-breaking fuses.
const FUSE_A: f64 = 10.0;
const FUSE_A2_S: f64 = 100.0;
/// Charge that an instrument does not take quietly, V. Published: IEC 60335-1 (from memory: 34 V).
const CHARGE_NOTICED_V: f64 = 34.0;
/// Alternating voltage to earth from which a contactless tester lights, V. Common practice.
const PEN_V: f64 = 50.0;
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
            why: text!("this instrument is not in the bag on this job").to_owned(),
        });
    }
    if mode == MeterMode::Leakage {
        // It comes with its own lead for line and neutral together.
        return None;
    }
    if mode.is_clamp() {
        let element = red?;
        return cannot_clamp(job, element);
    }
    red.and_then(|node| cannot_touch(job, node))
        .or_else(|| black.and_then(|n| cannot_touch(job, n)))
}

pub(super) fn cannot_touch(job: &Job, node: &str) -> Option<Refusal> {
    let workshop = &job.scenario().workshop;
    let Some(point) = workshop.test_point(node) else {
        return Some(Refusal::Unknown {
            name: node.to_owned(),
        });
    };
    let steps = missing(workshop, &job.bench, &point.needs);
    (!steps.is_empty()).then_some(Refusal::InTheWay { steps })
}

/// The splitter lead goes between plug and socket, with the plug out.
pub(super) fn cannot_split(job: &Job, fitted: bool) -> Option<Refusal> {
    if job.bench.splitter == fitted {
        return Some(Refusal::AlreadySo);
    }
    job.machine.plugged().then(|| Refusal::NotNow {
        why: text!("the plug is in the socket: pull it first").to_owned(),
    })
}

fn cannot_clamp(job: &Job, element: &str) -> Option<Refusal> {
    if element == WHOLE_CORD {
        return None;
    }
    let Some((from, to)) = job.machine.element_ends(element) else {
        return Some(Refusal::Unknown {
            name: element.to_owned(),
        });
    };
    // Outside, the cord's conductors lie in one sheath: jaws go round one of them on the splitter
    // lead, or inside the machine where they part.
    let pins = &job.machine.model().roles.plug_pins;
    let is_sheathed = |node: &String| !job.bench.splitter && pins.contains(node);
    let reach = |node: &String| match is_sheathed(node) {
        true => Some(Refusal::NotNow {
            why: text!("the cord's conductors lie in one sheath: put the splitter lead in")
                .to_owned(),
        }),
        false => cannot_touch(job, node),
    };
    // Either end of a wire will do for the jaws.
    match (reach(&from), reach(&to)) {
        (None, _) | (_, None) => None,
        (Some(Refusal::NotNow { why }), _) | (_, Some(Refusal::NotNow { why })) => {
            Some(Refusal::NotNow { why })
        }
        (first, _) => first,
    }
}

pub(super) fn cannot_note(job: &Job) -> Option<Refusal> {
    let is_connected = |meter: &MeterSetting| {
        meter.red.is_some() && (meter.black.is_some() || meter.mode.is_clamp())
    };
    let setting = job.bench.meter.as_ref();
    (!setting.is_some_and(is_connected)).then(|| Refusal::NotNow {
        why: text!("the meter is connected to nothing").to_owned(),
    })
}

pub(super) fn place(
    job: &mut Job,
    mode: MeterMode,
    red: Option<String>,
    black: Option<String>,
) -> Vec<Event> {
    let events = overload(job, mode, red.as_deref(), black.as_deref());
    job.bench.meter = Some(MeterSetting { mode, red, black });
    show_tester(job);
    events
}

/// New fuses in all instruments.
pub(super) fn renew_fuses(job: &mut Job) {
    job.bench.blown.clear();
}

/// What a live or charged circuit does to an instrument that is nearly a short circuit, or that
/// expects a dead one.
fn overload(job: &mut Job, mode: MeterMode, red: Option<&str>, black: Option<&str>) -> Vec<Event> {
    let mut events = Vec::new();
    let (Some(red), Some(black)) = (red, black) else {
        return events;
    };
    let inner_ohm = match mode {
        MeterMode::Amps => AMPS_OHM,
        MeterMode::EarthBond => BOND_TESTER_OHM,
        _ => f64::INFINITY,
    };
    let current_a = if inner_ohm.is_finite() {
        job.machine.current_through(red, black, inner_ohm)
    } else {
        0.0
    };
    if current_a > FUSE_A && job.bench.blown.insert(mode) {
        let time_ms = 1e3 * FUSE_A2_S / (current_a * current_a);
        events.push(Event::MeterFuse {
            why: say!(
                "{current} A through the instrument until its 10 A fuse opened, {time} ms",
                current = format!("{current_a:.0}"),
                time = decimals(format!("{time_ms:.1}"))
            ),
        });
    }
    let lugs = &job.machine.model().roles.run_capacitor;
    let on_lugs = [red, black]
        .iter()
        .all(|node| **node == lugs.0 || **node == lugs.1);
    if !(mode.needs_dead_circuit() && on_lugs) {
        return events;
    }
    let stored = job.machine.run_capacitor_charge();
    if stored.voltage_v > CHARGE_NOTICED_V {
        job.machine.discharge_run_capacitor();
        events.push(Event::Discharge {
            from_v: stored.voltage_v,
            energy_j: stored.energy_j,
            through: say!("the instrument").to_owned(),
        });
    }
    events
}

/// Keeps what a voltage tester shows for the proof of dead.
fn show_tester(job: &mut Job) {
    let Some(setting) = &job.bench.meter else {
        return;
    };
    let tick = job.tick();
    let lugs = &job.machine.model().roles.run_capacitor;
    let on_lugs = [&setting.red, &setting.black]
        .iter()
        .all(|n| n.as_ref().is_some_and(|n| *n == lugs.0 || *n == lugs.1));
    if setting.mode == MeterMode::DcVolts && on_lugs {
        job.bench.isolation.capacitor_measured = Some(tick);
    }
    let pins = &job.machine.model().roles.plug_pins;
    let at_pins = [&setting.red, &setting.black]
        .iter()
        .all(|n| n.as_ref().is_some_and(|n| pins.contains(n)));
    if matches!(setting.mode, MeterMode::Ohms | MeterMode::Continuity) && at_pins {
        job.bench.isolation.ohms_at_pins = true;
    }
    if !matches!(setting.mode, MeterMode::AcVolts | MeterMode::LowAcVolts) {
        return;
    }
    let Some(reading) = job.reading() else { return };
    let (Some(red), Some(black), Some(value)) = (reading.red, reading.black, reading.value) else {
        return;
    };
    let nominal_v = job.machine.nominal_supply_v();
    socket_earth(job, &red, &black, value);
    if value > LIVE_RATIO * nominal_v {
        job.bench.isolation.tester_shows_live(tick);
    } else if value < DEAD_V {
        job.bench.isolation.tester_shows_dead(&red, &black);
    }
}

/// Holds a contactless tester to a point: it lights where the voltage to earth is alternating and
/// high, whatever feeds it, and stays dark behind earthed metal and for a stored charge.
pub(super) fn hold_pen(job: &mut Job, point: &str) {
    let node = point.to_owned();
    let sources = job.machine.touch_sources(std::slice::from_ref(&node));
    let lights = sources.iter().any(|(_, seen)| seen.open_v > PEN_V);
    let dark = &mut job.bench.isolation.pen_dark;
    dark.retain(|other| *other != node);
    if !lights {
        dark.push(node);
    }
    let workshop = &job.scenario().workshop;
    let at = workshop.test_point(point);
    let (name, place) = at.map_or((point, ""), |t| (t.name.as_str(), t.place.as_str()));
    let (key, text) = if lights {
        (
            "pen_lights",
            format!("{name}: the contactless tester lights"),
        )
    } else {
        (
            "pen_dark",
            format!("{name}: the contactless tester stays dark"),
        )
    };
    let place = place.to_owned();
    job.write(NoteEntry::Observation {
        sense: Sense::Look,
        place,
        seen: vec![Seen {
            key: key.to_owned(),
            amount: None,
            text,
        }],
    });
}

pub(super) fn look_over(job: &mut Job) {
    job.bench.around.instrument_checked = true;
    let seen = job.bench.around.instrument.look_over();
    job.write(NoteEntry::Observation {
        sense: Sense::Look,
        place: text!("instrument").to_owned(),
        seen,
    });
}

pub(super) fn change(job: &mut Job) {
    job.bench.around.instrument = HandInstrument::SOUND;
    job.bench.around.instruments_changed += 1;
    job.bench.around.instrument_checked = false;
    job.bench.isolation.tester_proved = None;
    job.bench.isolation.shown_dead.clear();
    job.bench.isolation.shown_unproved.clear();
    job.bench.isolation.socket_live = [None; 3];
    job.bench.meter = None;
    job.write(NoteEntry::Act {
        text: text!("The spare instrument is in hand").to_owned(),
    });
}

/// What the socket tells of its earth. Nothing between line and earth tells only beside a live line:
/// a dead socket reads nothing to earth as well. And where the wires are exchanged, what is marked
/// neutral is live to earth.
fn socket_earth(job: &mut Job, red: &str, black: &str, value_v: f64) {
    let [line, neutral, earth] = &job.machine.model().roles.socket;
    let is = |a: &String, b: &String| (red == a && black == b) || (red == b && black == a);
    let pair = [(line, neutral), (line, earth), (neutral, earth)]
        .iter()
        .position(|(a, b)| is(a, b));
    let Some(pair) = pair else { return };
    let live_v = LIVE_RATIO * job.machine.nominal_supply_v();
    let is_fed = job.machine.supplied_between(line, neutral) > live_v;
    let isolation = &mut job.bench.isolation;
    if !is_fed {
        // Whatever was seen before belongs to a socket that was fed.
        isolation.socket_live = [None; 3];
        return;
    }
    isolation.socket_live[pair] = Some(value_v > live_v);
    isolation.earth_seen_missing = match isolation.socket_live {
        [Some(true), Some(false), neutral_to_earth] => neutral_to_earth != Some(true),
        [_, Some(true), _] | [_, _, Some(true)] => false,
        _ => isolation.earth_seen_missing,
    };
}

pub(super) fn note(job: &mut Job) {
    if let Some(reading) = job.reading() {
        job.write(NoteEntry::Reading(reading));
    }
}

impl Job {
    /// What the meter shows now; none when it is connected to nothing.
    pub fn reading(&self) -> Option<Reading> {
        self.reading_of(self.bench.meter.as_ref()?)
    }

    /// What a pen of the recorder follows, at this moment, SI; none where it cannot be reached.
    pub fn sample(&self, channel: &Channel) -> Option<f64> {
        match channel {
            Channel::Gauge { gauge, place } => super::gauge::instant(self, *gauge, place),
            Channel::Meter { mode, red, black } => {
                if cannot_place(self, *mode, Some(red), black.as_deref()).is_some() {
                    return None;
                }
                self.reading_of(&MeterSetting {
                    mode: *mode,
                    red: Some(red.clone()),
                    black: black.clone(),
                })?
                .value
            }
        }
    }

    fn reading_of(&self, setting: &MeterSetting) -> Option<Reading> {
        let red = setting.red.as_deref()?;
        let black = setting.black.as_deref();
        if black.is_none() && !setting.mode.is_clamp() {
            return None;
        }
        let probe = probe(setting.mode, red, black)?;
        let mut measured = self.machine.measure(probe).ok()?;
        if self.bench.blown.contains(&setting.mode) {
            // Without its fuse no current gets in: the ammeter shows nothing, the tester an open.
            measured.value_si = (setting.mode == MeterMode::Amps).then_some(0.0);
        }
        let around = &self.bench.around;
        let instrument = &around.instrument;
        measured = accuracy::with_leads(setting.mode, measured);
        if !self.is_nominal {
            let nth = around.instruments_changed;
            measured = accuracy::within_class(setting.mode, measured, self.seed(), nth);
        }
        let mut reading = display::reading(setting, instrument.lies(setting.mode, measured));
        reading.warning = reading.warning.or_else(|| instrument.warning());
        Some(reading)
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
        MeterMode::Frequency => Some(Probe::Frequency(red, black?)),
        MeterMode::Diode => between(Instrument::Diode),
        MeterMode::TouchCurrent => between(Instrument::TouchCurrent),
        MeterMode::Amps => between(Instrument::Amps),
        MeterMode::Clamp if red == WHOLE_CORD => Some(Probe::Cord),
        MeterMode::Clamp => Some(Probe::Clamp(red)),
        MeterMode::Leakage => Some(Probe::Leakage),
    }
}
