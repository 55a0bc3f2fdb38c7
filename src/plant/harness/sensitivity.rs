//! How a reading answers to every part of the machine, per unit of the part's value.
//!
//! Used for the spread of readings from part tolerances and for a true sentence about a
//! reading ("it hangs on the run capacitor: 35 V per microfarad"). Magnitudes of phasors:
//!
//! ```text
//! d|r|/dp = Re( conj(r) dr/dp ) / |r|
//! ```
//! Limits: contacts, slip and motor reactances are held; motor copper is included.

use crate::network::Complex;
use crate::network::Frequency;
use crate::network::NodeId;
use crate::network::SolveError;
use crate::network::sensitivity::Gradient;
use crate::network::sensitivity::Probe;
use crate::network::sensitivity::impedance_gradient;
use crate::network::sensitivity::voltage_gradient;
use crate::plant::harness::instrument::Instrument;
use crate::plant::harness::instrument::METER_OHM;
use crate::plant::harness::instrument::meter_siemens;
use crate::plant::harness::motor::COLD_K;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::steady_state::SteadyState;

/// Derivatives of a reading by the values of parts.
#[derive(Clone, Debug, PartialEq)]
pub struct Sensitivities {
    /// The instrument, which says the unit.
    pub mode: Instrument,
    /// The reading itself, V or ohm.
    pub value: f64,
    /// By element of the wiring model, in its order: per ohm, farad, henry or volt.
    pub by_element: Vec<f64>,
    /// By the copper of windings 1 and 2: per ohm at 20 °C.
    pub by_winding_ohm: [f64; 2],
}

/// Sensitivities of a voltage or resistance reading; none for the others.
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn sensitivities(
    harness: &Harness,
    state: &SteadyState,
    instrument: Instrument,
    a: NodeId,
    b: NodeId,
) -> Result<Option<Sensitivities>, SolveError> {
    let model_hz = harness.wiring().model.frequency_hz;
    match instrument {
        Instrument::AcVolts | Instrument::AcVoltsLowImpedance => {
            let load_siemens = meter_siemens(instrument, model_hz);
            let s = Frequency::steady(model_hz).s_rad_per_s;
            let point = &state.ac.network;
            let probe = Probe { a, b, load_siemens };
            let gradient = voltage_gradient(harness.netlist(), &point.solver(), s, probe);
            let r = point.seen(a, b).loaded_v(load_siemens);
            let size = r.abs().max(f64::MIN_POSITIVE);
            let along = |d: Complex| (r.re * d.re + r.im * d.im) / size;
            Ok(Some(gather(harness, instrument, r.abs(), &gradient, along)))
        }
        Instrument::DcVolts => {
            let point = harness.solve_dc(state.contacts, state.regulated_v, COLD_K)?;
            let load_siemens = 1.0 / METER_OHM;
            let probe = Probe { a, b, load_siemens };
            let gradient = voltage_gradient(harness.netlist(), &point.solver(), 0.0, probe);
            let value = point.seen(a, b).loaded_v(load_siemens);
            Ok(Some(gather(harness, instrument, value, &gradient, |d| d)))
        }
        Instrument::Ohms | Instrument::Insulation => {
            let point = harness.solve_dc(state.contacts, state.regulated_v, COLD_K)?;
            let gradient = impedance_gradient(harness.netlist(), &point.solver(), 0.0, a, b);
            let value = point.seen(a, b).ohm;
            Ok(Some(gather(harness, instrument, value, &gradient, |d| d)))
        }
        Instrument::Capacitance
        | Instrument::Diode
        | Instrument::TouchCurrent
        | Instrument::Amps => Ok(None),
    }
}

fn gather<N: Copy>(
    harness: &Harness,
    mode: Instrument,
    value: f64,
    gradient: &Gradient<N>,
    along: impl Fn(N) -> f64,
) -> Sensitivities {
    let count = harness.wiring().model.elements.len();
    let by_element = gradient.by_element[..count]
        .iter()
        .map(|d| along(*d))
        .collect();
    let mut by_winding_ohm = [0.0; 2];
    let coils = harness.coils();
    for (k, d) in gradient.by_coil_ohm.iter().enumerate() {
        by_winding_ohm[coils.winding[k]] += along(*d) * coils.share_ratio[k];
    }
    Sensitivities {
        mode,
        value,
        by_element,
        by_winding_ohm,
    }
}
