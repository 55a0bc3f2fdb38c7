//! A row's own reading, and how far it is from the row's value.
//!
//! Rows of plug pins take the mains-filter capacitor with what discharges it and nothing else:
//! the other program's closed form does so, so every other capacitor and leak is put out of
//! sight first. The decay of the whole network is tested elsewhere.

use std::sync::Arc;

use crate::cli::failure::Failure;
use crate::cli::hold::Held;
use crate::cli::hold::Hold;
use crate::cli::rows::Quantity;
use crate::cli::rows::Row;
use crate::cli::rows::TOLERANCE_RATIO;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::plant::harness::COLD_K;
use crate::plant::harness::Harness;
use crate::plant::harness::Wiring;
use crate::plant::harness::discharge::Across;
use crate::plant::harness::discharge::Charge;
use crate::plant::harness::discharge::decayed;
use crate::plant::harness::level::level_frequency_hz;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;

/// The filter capacitor and what discharges it.
const FILTER: [&str; 3] = ["CX", "RCX", "RBX"];
/// Pins of the transformer's connector.
const TRANSFORMER_PINS: [&str; 2] = ["P21", "P23"];
/// Leaks below this count as paths that discharge, Ω.
const LEAK_OHM: f64 = 1e6;

/// A row's own reading beside its value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Our value, in the row's unit.
    pub value: f64,
    /// Our instrument shows over-range.
    pub is_over_range: bool,
    /// `(ours - value) / |value|`; the difference itself where the value is 0.
    pub difference_ratio: f64,
    /// Within tolerance or floor, and over-range where the row says so.
    pub is_met: bool,
}

impl Answer {
    /// Reads what a row asks for on its machine, held as the row says.
    ///
    /// # Errors
    /// When the row names what the machine does not have, or the network cannot be solved.
    pub fn of(file: &str, row: &Row, hold: &Hold) -> Result<Self, Failure> {
        let (value, is_over_range) = reading(file, row, hold)?;
        let value = value * row.quantity.scale();
        let difference = value - row.value;
        let allowed = (TOLERANCE_RATIO * row.value.abs()).max(row.quantity.floor());
        let is_near = difference.abs() <= allowed;
        let size = row.value.abs();
        Ok(Self {
            value,
            is_over_range,
            difference_ratio: difference / if size > 0.0 { size } else { 1.0 },
            is_met: is_near && is_over_range == row.is_over_range,
        })
    }
}

/// The value in SI, and whether the instrument shows over-range.
fn reading(file: &str, row: &Row, hold: &Hold) -> Result<(f64, bool), Failure> {
    let failed = |error| Failure::Solve {
        what: format!("{file}: line {}", row.line),
        error,
    };
    if let Quantity::PlugPins {
        after_s,
        has_meter,
        is_transformer_pulled,
    } = row.quantity
    {
        let pins_v = plug_pins_v(hold, after_s, has_meter, is_transformer_pulled);
        return pins_v.map(|v| (v, false)).map_err(failed);
    }
    let mut held = hold.solve().map_err(failed)?;
    let found = of_held(&row.quantity, &mut held).map_err(failed)?;
    found.ok_or_else(|| {
        let mut problems = Problems::new(file);
        problems.add(
            &format!("line {}, quantity", row.line),
            quoted(&row.asked),
            format!(
                "machine {} has no node or element of this name",
                row.machine
            ),
        );
        Failure::from_problems(problems)
    })
}

/// None when the machine has no such node or element.
fn of_held(
    quantity: &Quantity,
    held: &mut Held,
) -> Result<Option<(f64, bool)>, crate::network::SolveError> {
    Ok(match quantity {
        Quantity::Current { through } => held.current_a(through).map(|a| (a, false)),
        Quantity::Torque => Some((held.state.ac.flow.torque_n_m, false)),
        Quantity::LevelFrequency { column_m } => {
            let hz = level_frequency_hz(&held.harness, held.closed, *column_m)?;
            Some((hz, false))
        }
        Quantity::Between {
            instrument,
            nodes: [red, black],
        } => match held.pair(red, black) {
            Some(pair) => {
                let found = held.read(*instrument, pair)?;
                Some((found.value_si, found.is_over_range))
            }
            None => None,
        },
        Quantity::PlugPins { .. } => None,
    })
}

/// Voltage between the plug pins some time after the plug came out at the peak, V.
fn plug_pins_v(
    hold: &Hold,
    after_s: f64,
    has_meter: bool,
    is_transformer_pulled: bool,
) -> Result<f64, crate::network::SolveError> {
    let model = &hold.model;
    let mut wiring = hold.wiring();
    wiring.set_plugged(true);
    if is_transformer_pulled {
        let pins = TRANSFORMER_PINS.iter().filter_map(|pin| model.element(pin));
        pins.for_each(|pin| wiring.open_by_hand(pin, true));
    }
    leave_filter_alone(&mut wiring);
    let mut harness = Harness::new(&wiring, &[])?;
    let contacts = harness.contacts(&hold.closed());
    let ac = harness.solve_ac(contacts, 1.0, COLD_K)?;
    let [a, b] = model.supply.plug_pins;
    let charge = Charge::at_peak(&harness, &ac, a, b);
    wiring.set_plugged(false);
    harness.rewire(&wiring)?;
    let meter = has_meter.then_some(Across::meter([a, b]));
    let after = decayed(&harness, contacts, &charge, after_s, meter)?;
    Ok(after.node_v[a.index()] - after.node_v[b.index()])
}

/// Every other capacitor shrinks and every other leak grows out of sight.
fn leave_filter_alone(wiring: &mut Wiring) {
    let model = Arc::clone(&wiring.model);
    for (index, element) in model.elements.iter().enumerate() {
        let id = ElementId(index as u32);
        if FILTER.contains(&element.name.as_str()) {
            continue;
        }
        match wiring.element(id).0 {
            ElementKind::Capacitor { farad } => wiring.set_value(id, farad * 1e-9),
            ElementKind::Resistor { ohm } if ohm > LEAK_OHM => wiring.set_value(id, ohm * 1e6),
            _ => {}
        }
    }
}
