//! Which capacitors can be felt, and how long they would take to empty.

use std::sync::Arc;

use crate::machine::MachineError;
use crate::machine::charge::ROOM_K;
use crate::machine::charge::STANDING_SLIP;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::plant::harness::Harness;

/// Charge that is felt, C. Published: IEC 60479-2 (from memory, less sure).
const FELT_COULOMB: f64 = 0.5e-6;
/// Below this nothing is felt, V. Published: IEC 60335-1 clause 22.5 (from memory).
const HARMLESS_V: f64 = 34.0;

/// Capacitors of a sound machine whose charge can be felt: in some state it can be held in they
/// stand at a voltage that is not harmless and hold 0.5 µC.
///
/// # Errors
/// When the wiring cannot be solved.
pub fn felt_capacitors(harness: &Harness) -> Result<Vec<ElementId>, MachineError> {
    let model = Arc::clone(&harness.wiring().model);
    let mut felt = vec![false; model.elements.len()];
    for state in model.states.iter().filter(|state| state.is_plugged) {
        let contacts = harness.contacts(&state.closed);
        let point = harness.solve_ac(contacts, STANDING_SLIP, ROOM_K)?;
        for (is_felt, e) in felt.iter_mut().zip(harness.netlist().elements()) {
            if let ElementKind::Capacitor { farad } = e.kind {
                let peak_v =
                    core::f64::consts::SQRT_2 * point.network.between_v(e.from, e.to).abs();
                *is_felt |= peak_v >= HARMLESS_V && farad * peak_v >= FELT_COULOMB;
            }
        }
    }
    let ids = felt.iter().enumerate().filter(|(_, is_felt)| **is_felt);
    Ok(ids.map(|(k, _)| ElementId(k as u32)).collect())
}

/// Slowest decay of these capacitors, s: each one's capacitance through the resistance it sees at
/// DC.
///
/// # Errors
/// When the wiring cannot be solved at DC.
pub fn slowest_s(
    harness: &Harness,
    contacts: Contacts,
    capacitors: &[ElementId],
) -> Result<f64, MachineError> {
    let point = harness.solve_dc(contacts, 0.0, ROOM_K)?;
    let decay_s = |id: &ElementId| {
        let e = &harness.netlist().elements()[id.index()];
        match e.kind {
            ElementKind::Capacitor { farad } => farad * point.seen(e.from, e.to).ohm,
            _ => 0.0,
        }
    };
    Ok(capacitors.iter().map(decay_s).fold(0.0, f64::max))
}
