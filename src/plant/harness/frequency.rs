//! What a frequency counter put across two places shows.
//!
//! ```text
//! mains        |V(a, b)| of the solved network
//! oscillator   V0 |Zt / Zpins|     Zt = (Z(p,b) + Z(q,a) - Z(p,a) - Z(q,b)) / 2
//! ```
//! The level oscillator holds V0 across its two pins p and q; how much of it reaches the probes
//! follows from impedances at its own frequency (transfer impedance of a reciprocal network from
//! its driving-point impedances, closed form). The stronger of the two is counted. Limits: the
//! counter does not load the oscillator; no harmonics.

use crate::network::Complex;
use crate::network::NodeId;
use crate::network::SolveError;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::steady_state::SteadyState;

/// Least voltage a counter counts, V. From memory of hand meters.
const LEAST_V: f64 = 0.5;
/// Voltage of the oscillator at its pins, V. Design choice: half the board's supply.
const OSCILLATOR_V: f64 = 2.5;

/// The frequency shown between two places, Hz; none where nothing is strong enough. `level_hz` is
/// the oscillator's frequency where it runs.
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn read(
    harness: &Harness,
    state: &SteadyState,
    level_hz: Option<f64>,
    a: NodeId,
    b: NodeId,
) -> Result<Option<f64>, SolveError> {
    let mains_v = state.ac.network.between_v(a, b).abs();
    let level_v = match level_hz {
        Some(hz) => OSCILLATOR_V * share(harness, state, hz, a, b)?,
        None => 0.0,
    };
    let model = &harness.wiring().model;
    Ok(match level_hz {
        _ if mains_v.max(level_v) < LEAST_V => None,
        Some(hz) if level_v > mains_v => Some(hz),
        _ => Some(model.frequency_hz),
    })
}

/// Share of the oscillator's voltage that reaches the probes.
fn share(
    harness: &Harness,
    state: &SteadyState,
    hz: f64,
    a: NodeId,
    b: NodeId,
) -> Result<f64, SolveError> {
    let Some(sensor) = &harness.wiring().model.level_sensor else {
        return Ok(0.0);
    };
    let [p, q] = sensor.pins;
    let s_rad_per_s = Complex::new(0.0, 2.0 * core::f64::consts::PI * hz);
    let point = harness.solve_at(state.contacts, s_rad_per_s)?;
    let ohm = |x: NodeId, y: NodeId| match x == y {
        true => Complex::default(),
        false => point.seen(x, y).ohm,
    };
    let transfer = ohm(p, b) + ohm(q, a) - ohm(p, a) - ohm(q, b);
    let across = ohm(p, q).abs();
    if across <= 0.0 {
        return Ok(0.0);
    }
    Ok(0.5 * transfer.abs() / across)
}
