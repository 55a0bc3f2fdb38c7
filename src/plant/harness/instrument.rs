//! What instruments put across two places read; each is an element of the network.
//!
//! ```text
//! volts          open_v / (1 + Y ohm)           Y of the meter's input
//! ohms           V / I of a source behind its resistance
//! capacitance    Im(I / V) / (2 pi 100 Hz)
//! touch          |V| / 2 kohm, the 2 kohm across the probes
//! diode          the part of 3 V behind 3 kohm that is left across the probes
//! frequency      of the stronger of mains and level oscillator, each where it reaches the probes
//! ```
//! Inputs and test voltages: common practice (values in the data sheet of the machine set).
//! An ohmmeter on a live circuit shows what the physics gives, flagged as live.

use crate::network::Complex;
use crate::network::NodeId;
use crate::network::SolveError;
use crate::plant::harness::motor::COLD_K;
use crate::plant::harness::point::Seen;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::steady_state::SteadyState;

/// Input of a high-impedance voltmeter, ohm.
pub const METER_OHM: f64 = 10e6;
/// Capacitance in parallel with it, F.
pub const METER_FARAD: f64 = 100e-12;
/// Input in the low-impedance mode, ohm.
pub const LOW_IMPEDANCE_OHM: f64 = 4e3;
/// Test voltage and inner resistance of the ohmmeter.
pub const OHMS_SOURCE: (f64, f64) = (1.0, 1e3);
/// Resistance above which the ohmmeter shows over-range, ohm.
pub const OHMS_LIMIT_OHM: f64 = 50e6;
/// Test voltage and inner resistance of the insulation tester.
pub const INSULATION_SOURCE: (f64, f64) = (500.0, 100e3);
/// Resistance above which the insulation tester shows over-range, ohm.
pub const INSULATION_LIMIT_OHM: f64 = 4e9;
/// Test voltage and inner resistance of the diode test: about 1 mA.
pub const DIODE_SOURCE: (f64, f64) = (3.0, 3e3);
/// Drop above which the diode test shows over-range, V.
pub const DIODE_LIMIT_V: f64 = 2.0;
/// Shunt of the current range with its leads and fuse, ohm. From memory.
pub const AMPS_OHM: f64 = 0.05;
/// Largest current it shows, A.
pub const AMPS_LIMIT_A: f64 = 10.0;
/// A person in a touch current tester, ohm. Published: EN 50699 (from memory).
pub const TOUCH_OHM: f64 = 2e3;
/// Frequency of the capacitance meter, Hz.
pub const CAPACITANCE_HZ: f64 = 100.0;
/// Voltage above which a circuit counts as live for the dead tests, V. Design choice.
pub const LIVE_V: f64 = 0.05;

/// An instrument put across two places.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Instrument {
    /// AC volts, 10 Mohm parallel 100 pF.
    AcVolts,
    /// AC volts, 4 kohm.
    AcVoltsLowImpedance,
    /// DC volts, 10 Mohm.
    DcVolts,
    /// Ohms, 1 V behind 1 kohm.
    Ohms,
    /// Insulation, 500 V behind 100 kohm.
    Insulation,
    /// Capacitance at 100 Hz.
    Capacitance,
    /// Diode test, 3 V behind 3 kohm: the voltage left across the probes.
    Diode,
    /// Touch current, A through 2 kohm.
    TouchCurrent,
    /// AC amperes, 0.05 ohm.
    Amps,
}

/// What an instrument shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The instrument, which says the unit.
    pub mode: Instrument,
    /// The value in SI: V, ohm or F.
    pub value: f64,
    /// True if the instrument shows over-range.
    pub is_over_range: bool,
    /// True if a dead test was made on a live circuit.
    pub is_live: bool,
}

impl Reading {
    fn plain(mode: Instrument, value: f64) -> Reading {
        Reading {
            mode,
            value,
            is_over_range: false,
            is_live: false,
        }
    }
}

/// The admittance an AC voltmeter puts across the probes, S.
pub fn meter_siemens(instrument: Instrument, frequency_hz: f64) -> Complex {
    match instrument {
        Instrument::AcVoltsLowImpedance => Complex::real(1.0 / LOW_IMPEDANCE_OHM),
        _ => {
            let reactive = 2.0 * core::f64::consts::PI * frequency_hz * METER_FARAD;
            Complex::new(1.0 / METER_OHM, reactive)
        }
    }
}

/// Reads an instrument put between `a` (red) and `b` (black).
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn read(
    harness: &Harness,
    state: &SteadyState,
    instrument: Instrument,
    a: NodeId,
    b: NodeId,
) -> Result<Reading, SolveError> {
    let frequency_hz = harness.wiring().model.frequency_hz;
    match instrument {
        Instrument::AcVolts | Instrument::AcVoltsLowImpedance => {
            let load = meter_siemens(instrument, frequency_hz);
            Ok(Reading::plain(
                instrument,
                state.ac.network.seen(a, b).loaded_v(load).abs(),
            ))
        }
        Instrument::Amps => {
            let shunt = Complex::real(1.0 / AMPS_OHM);
            let value = state.ac.network.seen(a, b).loaded_v(shunt).abs() / AMPS_OHM;
            Ok(Reading {
                is_over_range: value.is_nan() || value > AMPS_LIMIT_A,
                ..Reading::plain(instrument, value)
            })
        }
        Instrument::TouchCurrent => {
            let across = state
                .ac
                .network
                .seen(a, b)
                .loaded_v(Complex::real(1.0 / TOUCH_OHM));
            Ok(Reading::plain(instrument, across.abs() / TOUCH_OHM))
        }
        Instrument::DcVolts => {
            let point = harness.solve_dc(state.contacts, state.regulated_v, COLD_K)?;
            Ok(Reading::plain(
                instrument,
                point.seen(a, b).loaded_v(1.0 / METER_OHM),
            ))
        }
        Instrument::Ohms | Instrument::Insulation => {
            let (source, limit_ohm) = if instrument == Instrument::Ohms {
                (OHMS_SOURCE, OHMS_LIMIT_OHM)
            } else {
                (INSULATION_SOURCE, INSULATION_LIMIT_OHM)
            };
            let point = harness.solve_dc(state.contacts, state.regulated_v, COLD_K)?;
            let seen = point.seen(a, b);
            let value = shown_ohm(&seen, source);
            let is_live = is_live(state, a, b) || seen.open_v.abs() > LIVE_V;
            let is_over_range = value.is_nan() || value.abs() > limit_ohm;
            Ok(Reading {
                mode: instrument,
                value,
                is_over_range,
                is_live,
            })
        }
        Instrument::Diode => {
            let point = harness.solve_dc(state.contacts, state.regulated_v, COLD_K)?;
            let seen = point.seen(a, b);
            let (source_v, source_ohm) = DIODE_SOURCE;
            let value = seen.open_v + (source_v - seen.open_v) * seen.ohm / (source_ohm + seen.ohm);
            Ok(Reading {
                mode: instrument,
                value,
                is_over_range: value.is_nan() || value.abs() > DIODE_LIMIT_V,
                is_live: is_live(state, a, b) || seen.open_v.abs() > LIVE_V,
            })
        }
        Instrument::Capacitance => {
            let w_rad_per_s = 2.0 * core::f64::consts::PI * CAPACITANCE_HZ;
            let point = harness.solve_at(state.contacts, Complex::new(0.0, w_rad_per_s))?;
            let value = point.seen(a, b).ohm.inverse().im / w_rad_per_s;
            Ok(Reading {
                mode: instrument,
                value,
                is_over_range: false,
                is_live: is_live(state, a, b),
            })
        }
    }
}

/// V / I at the terminals of a source behind a resistance.
fn shown_ohm(seen: &Seen<f64>, (source_v, source_ohm): (f64, f64)) -> f64 {
    if seen.open_v.abs() <= 0.0 {
        // Dead: the network's own resistance, without rounding through V and I.
        return seen.ohm;
    }
    let current_a = (source_v - seen.open_v) / (source_ohm + seen.ohm);
    (seen.open_v + current_a * seen.ohm) / current_a
}

/// True if the mains drives a voltage between two places.
fn is_live(state: &SteadyState, a: NodeId, b: NodeId) -> bool {
    state.ac.network.between_v(a, b).abs() > LIVE_V
}
