//! How far a good machine's reading may lie from the nominal one's, from the tolerances of its
//! parts.
//!
//! ```text
//! σ² = Σ_parts (dr/dp · tol · p)² / 3          rectangular tolerances: GUM, JCGM 100:2008
//! ```
//! One transposed solve gives all derivatives. Tolerances are common practice: coils, windings and
//! resistors 5 %, capacitors and inductances 10 %, the supply 3 %, contacts and joints half their
//! value, insulation by a factor.

use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Probe;
use crate::network::ElementKind;
use crate::plant::harness::Instrument;
use crate::plant::harness::sensitivity::sensitivities;

/// Below this a resistance is a contact or a joint, Ω.
const JOINT_OHM: f64 = 1.0;
/// Above this it is insulation, Ω.
const INSULATION_OHM: f64 = 5e6;
const PART_RATIO: f64 = 0.05;
const REACTIVE_RATIO: f64 = 0.10;
const SUPPLY_RATIO: f64 = 0.03;
const LOOSE_RATIO: f64 = 0.5;
/// A matched coil and capacitor, and the mains. Data sheet: 26.0 kHz within 0.1.
const FREQUENCY_RATIO: f64 = 0.002;

impl Machine {
    /// Standard deviation of a reading from part tolerances, in the reading's SI unit. `value_si` is
    /// the reading itself; currents and capacitances answer in proportion.
    ///
    /// # Errors
    /// When a name is unknown or the network cannot be solved.
    pub fn spread_si(&self, probe: Probe<'_>, value_si: f64) -> Result<f64, MachineError> {
        let in_proportion = REACTIVE_RATIO * value_si.abs() / 3.0_f64.sqrt();
        let (instrument, a, b) = match probe {
            Probe::Between(Instrument::Capacitance, ..)
            | Probe::Clamp(_)
            | Probe::Leakage
            | Probe::Cord => {
                return Ok(in_proportion);
            }
            Probe::Frequency(..) => return Ok(FREQUENCY_RATIO * value_si.abs()),
            Probe::Between(instrument, a, b) => (instrument, a, b),
            Probe::Bond(a, b) => (Instrument::Ohms, a, b),
        };
        let (a, b) = (self.node(a)?, self.node(b)?);
        let harness = self.electrics.harness();
        let state = self.steady(harness)?;
        let Some(found) = sensitivities(harness, &state, instrument, a, b)? else {
            return Ok(in_proportion);
        };
        let wiring = harness.wiring();
        let by_element = found.by_element.iter().enumerate().map(|(index, d)| {
            let id = crate::network::ElementId(index as u32);
            d * allowed(wiring.element(id).0)
        });
        let by_winding = found
            .by_winding_ohm
            .iter()
            .zip(self.shared.motor.params.winding_ohm);
        let variance = by_element
            .chain(by_winding.map(|(d, ohm)| d * ohm * PART_RATIO))
            .filter(|x| x.is_finite())
            .map(|x| x * x)
            .sum::<f64>()
            / 3.0;
        Ok(variance.sqrt())
    }
}

/// Largest distance of a part from its nominal value, in the value's own unit.
fn allowed(kind: ElementKind) -> f64 {
    match kind {
        ElementKind::Resistor { ohm } if !(JOINT_OHM..INSULATION_OHM).contains(&ohm) => {
            ohm * LOOSE_RATIO
        }
        ElementKind::Resistor { ohm } => ohm * PART_RATIO,
        ElementKind::Capacitor { farad } => farad * REACTIVE_RATIO,
        ElementKind::Inductor { henry } => henry * REACTIVE_RATIO,
        ElementKind::Contact { closed_ohm, .. } => closed_ohm * LOOSE_RATIO,
        ElementKind::Source { ac_v, .. } => ac_v * SUPPLY_RATIO,
    }
}
