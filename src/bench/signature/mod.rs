//! What a fault makes different: readings and the run of a whole wash, sound and faulty beside each
//! other, the most different first.
//!
//! Nothing is written by hand: a sound machine and a faulty one are held in each state of the
//! machine's file, and every line of the data sheet is read on both, and the voltage of every test
//! point against the neutral of the plug; then both wash. How different two readings are:
//!
//! ```text
//! d = |ln((|b| + s)/(|a| + s))|        s: what a hand meter and a used machine scatter by
//! ```
//! Over range counts as the largest value the display shows. Source of the measure: design choice.
//! Limits: one fault alone, at full severity, windings cold; a fault that comes and goes is shown
//! while it is there.

pub mod grouped; // equal ones together
pub mod values; // what a fault changes, in words
pub mod wash; // a whole wash, sound and faulty

use std::collections::BTreeSet;
use std::sync::Arc;

use serde_json::Value;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::network::NodeId;
use crate::plant::harness::COLD_K;
use crate::plant::harness::Harness;
use crate::plant::harness::Instrument;
use crate::plant::harness::SteadyState;
use crate::plant::harness::Wiring;
use crate::plant::harness::WiringModel;
use crate::plant::harness::instrument;
use crate::plant::harness::steady_state::steady_state;
use crate::say;

/// Readings less different than this are the same: a tenth, as meter and part tolerance together.
const SAME: f64 = 0.1;
/// Largest resistance an earth-bond tester shows, Ω. Common practice.
const BOND_LIMIT_OHM: f64 = 60.0;
/// A value beyond every range, for what reads over range.
const OVER_RANGE: f64 = 1e12;

/// A reading that differs.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// State of the machine's file, such as `spinning`.
    pub state: String,
    /// What the reading is about, plain words.
    pub what: String,
    /// Mode of the instrument.
    pub mode: MeterMode,
    /// Red lead, or the element in the jaws.
    pub red: String,
    /// Black lead; empty for a clamp.
    pub black: String,
    /// Connectors that must be apart.
    pub apart: Vec<String>,
    /// What a sound machine shows.
    pub sound: String,
    /// What the faulty one shows.
    pub faulty: String,
    /// How different, 0 and up.
    pub size: f64,
}

/// Readings that a fault changes, the most different first.
///
/// # Errors
/// When a wiring cannot be solved.
pub fn differences(
    model: &MachineModel,
    workshop: &Workshop,
    fault: &FaultDef,
) -> Result<Vec<Difference>, MachineError> {
    if fault.wiring.is_empty() {
        return Ok(Vec::new());
    }
    let wiring = Arc::new(model.wiring.clone());
    let mut found = Vec::new();
    let mut told = BTreeSet::new();
    for state in &wiring.states {
        let lines = lines_of(workshop, &wiring, &state.name);
        // Most lines need nothing apart; the others are few, each with its own way of being apart.
        let ways: BTreeSet<Vec<String>> = lines.iter().map(|line| line.apart.clone()).collect();
        for apart in ways {
            let mut sound = Held::of(workshop, &wiring, &state.name, &apart, None)?;
            let mut faulty = Held::of(workshop, &wiring, &state.name, &apart, Some(fault))?;
            for line in lines.iter().filter(|line| line.apart == apart) {
                let pair = (sound.read(line)?, faulty.read(line)?);
                let (Some(a), Some(b)) = pair else { continue };
                let size = how_different(a.0, a.1, b.1);
                if size > SAME
                    && told.insert((
                        line.mode.clone(),
                        line.red.clone(),
                        line.black.clone(),
                        state.name.clone(),
                        apart.clone(),
                    ))
                {
                    found.push(Difference {
                        state: state.name.clone(),
                        what: worded(&line.what).into_owned(),
                        mode: a.0,
                        red: line.red.clone(),
                        black: line.black.clone(),
                        apart: apart.clone(),
                        sound: display::digits(a.0, a.1).1,
                        faulty: display::digits(b.0, b.1).1,
                        size,
                    });
                }
            }
        }
    }
    found.sort_by(|a, b| b.size.total_cmp(&a.size));
    Ok(found)
}

/// The data sheet's lines of a state, then every test point against the neutral of the plug.
fn lines_of(workshop: &Workshop, wiring: &WiringModel, state: &str) -> Vec<DataSheetLine> {
    let mut lines: Vec<DataSheetLine> = workshop
        .data_sheet
        .iter()
        .filter(|line| line.state == state)
        .cloned()
        .collect();
    let neutral = &wiring.nodes[wiring.supply.plug_pins[1].index()].name;
    let is_plugged = wiring.state(state).is_some_and(|s| s.is_plugged);
    let points = workshop.test_points.iter().filter(|_| is_plugged);
    lines.extend(
        points
            .filter(|point| point.node != *neutral)
            .map(|point| DataSheetLine {
                mode: "low_ac_volts".to_owned(),
                red: point.node.clone(),
                black: neutral.clone(),
                state: state.to_owned(),
                apart: Vec::new(),
                low: 0.0,
                high: 0.0,
                what: say!("{point} to neutral", point = worded(&point.name)),
            }),
    );
    lines
}

/// How different two readings of a mode are; none is over range.
pub fn how_different(mode: MeterMode, sound_si: Option<f64>, faulty_si: Option<f64>) -> f64 {
    let scatter = display::scatter_si(mode);
    let size = |value: Option<f64>| value.map_or(OVER_RANGE, f64::abs) + scatter;
    let same_side = sound_si.unwrap_or(0.0) * faulty_si.unwrap_or(0.0) >= 0.0;
    let ratio = libm::log(size(faulty_si) / size(sound_si)).abs();
    if same_side {
        ratio
    } else {
        // A DC reading that changed its sign differs by both its values.
        let both = [sound_si, faulty_si].map(|v| libm::log(size(v) / scatter));
        both[0] + both[1]
    }
}

/// A machine held in one state.
struct Held {
    harness: Harness,
    state: SteadyState,
}

impl Held {
    fn of(
        workshop: &Workshop,
        model: &Arc<WiringModel>,
        state: &str,
        apart: &[String],
        fault: Option<&FaultDef>,
    ) -> Result<Self, MachineError> {
        let unknown = || MachineError::UnknownState {
            name: state.to_owned(),
        };
        let state = model.state(state).ok_or_else(unknown)?;
        let mut wiring = Wiring::healthy(model);
        for change in fault.iter().flat_map(|fault| &fault.wiring) {
            wiring.apply(change, 1.0);
        }
        let connectors = apart.iter().filter_map(|id| workshop.connector(id));
        for element in connectors.flat_map(|connector| &connector.elements) {
            if let Some(id) = model.element(element) {
                wiring.open_by_hand(id, true);
            }
        }
        wiring.set_plugged(state.is_plugged);
        let harness = Harness::new(&wiring, &[])?;
        let state = steady_state(&harness, &state.closed, state.load_n_m, COLD_K)?;
        Ok(Self { harness, state })
    }

    /// Mode and value of a line; no value is over range. None where the line names nothing here.
    fn read(
        &mut self,
        line: &DataSheetLine,
    ) -> Result<Option<(MeterMode, Option<f64>)>, MachineError> {
        let named = serde_json::from_value(Value::from(line.mode.as_str()));
        let Ok(mode) = named else { return Ok(None) };
        let model = Arc::clone(&self.harness.wiring().model);
        if mode == MeterMode::Leakage {
            let [line, neutral, _] = model.supply.plug_contacts;
            let network = &self.state.ac.network;
            let sum = network.current_a(line) + network.current_a(neutral);
            return Ok(Some((mode, Some(sum.abs()))));
        }
        if mode == MeterMode::Clamp {
            let element = model.element(&line.red);
            let current_a = element.map(|id| self.state.ac.network.current_a(id).abs());
            return Ok(current_a.map(|value| (mode, Some(value))));
        }
        let (Some(red), Some(black)) = (model.node(&line.red), model.node(&line.black)) else {
            return Ok(None);
        };
        match instrument_of(mode) {
            Some(instrument) => {
                let value = self.between(mode, instrument, red, black)?;
                Ok(Some((mode, value)))
            }
            None => Ok(None),
        }
    }

    fn between(
        &mut self,
        mode: MeterMode,
        instrument: Instrument,
        red: NodeId,
        black: NodeId,
    ) -> Result<Option<f64>, MachineError> {
        let reading = instrument::read(&self.harness, &self.state, instrument, red, black)?;
        let is_over = reading.is_over_range
            || (mode == MeterMode::EarthBond && reading.value >= BOND_LIMIT_OHM);
        Ok((!is_over).then_some(reading.value))
    }
}

/// The two-lead instrument of a mode; none where a reading needs more than a machine held still.
fn instrument_of(mode: MeterMode) -> Option<Instrument> {
    Some(match mode {
        MeterMode::AcVolts => Instrument::AcVolts,
        MeterMode::LowAcVolts => Instrument::AcVoltsLowImpedance,
        MeterMode::DcVolts => Instrument::DcVolts,
        MeterMode::Capacitance => Instrument::Capacitance,
        MeterMode::Insulation => Instrument::Insulation,
        MeterMode::Ohms | MeterMode::Continuity | MeterMode::EarthBond => Instrument::Ohms,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn over_range_differs_more_than_any_resistance() {
        let (ohms, shown) = (MeterMode::Ohms, Some(20.0));
        assert!(how_different(ohms, shown, None) > how_different(ohms, shown, Some(5e7)));
        assert!(how_different(ohms, None, None) < 1e-12);
    }

    #[test]
    fn noise_near_nothing_is_no_difference() {
        assert!(how_different(MeterMode::AcVolts, Some(1e-3), Some(2e-2)) < SAME);
    }

    #[test]
    fn a_turned_sign_is_a_difference() {
        assert!(how_different(MeterMode::DcVolts, Some(5.0), Some(-5.0)) > 4.0);
    }
}
