//! The level sensor's frequency from its coil, its capacitors and the water column.
//!
//! ```text
//! f = 1 / (2 pi sqrt(L C))    L = L0 (1 + h / h0)    1/C = 1/C1 + 1/C2
//! ```
//! The oscillator runs while the resistance of the loop, measured through the wiring at DC,
//! stays below `sqrt(L/C)` (quality above 1; design choice). Limits: no drift with heat.

use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::SolveError;
use crate::plant::harness::motor::COLD_K;
use crate::plant::harness::solving::Harness;

/// Frequency of the level oscillator, Hz; 0 if it does not run or there is none.
///
/// # Errors
/// [`SolveError`] if the wiring cannot be solved at DC.
pub fn level_frequency_hz(
    harness: &Harness,
    contacts: Contacts,
    column_m: f64,
) -> Result<f64, SolveError> {
    let Some(sensor) = harness.wiring().model.level_sensor.clone() else {
        return Ok(0.0);
    };
    let value = |id: ElementId| match harness.wiring().element(id).0 {
        ElementKind::Inductor { henry } => henry,
        ElementKind::Capacitor { farad } => farad,
        _ => 0.0,
    };
    let henry = value(sensor.coil) * (1.0 + column_m / sensor.column_doubling_m);
    let [c1, c2] = sensor.capacitors.map(value);
    let farad = c1 * c2 / (c1 + c2);
    let loop_ohm = harness
        .solve_dc(contacts, 0.0, COLD_K)?
        .seen(sensor.pins[0], sensor.pins[1])
        .ohm;
    if !(farad > 0.0 && henry > 0.0) || loop_ohm >= (henry / farad).sqrt() {
        return Ok(0.0);
    }
    Ok(1.0 / (2.0 * core::f64::consts::PI * (henry * farad).sqrt()))
}
