//! What is read on every machine of a type: the lines of its data sheet, then the figures of a program.

use crate::bench::action::MeterMode;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Workshop;
use crate::language::said;
use crate::language::worded;
use crate::machine::CycleFigures;
use crate::machine::MachineModel;
use crate::say;
use crate::score::functional::compare;

const LEFT_OUT: [MeterMode; 2] = [MeterMode::Leakage, MeterMode::Frequency]; // not of a held state

/// What is read.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// Plain words, such as "winding A", in the reader's language.
    pub what: String,
    /// Instrument and state, such as `ohms, unplugged`; `whole program` for figures of a run; in the
    /// reader's language.
    pub how: String,
    /// Below this two readings are both nothing, SI of the column.
    pub(super) floor: f64,
    pub(super) source: Source,
}

impl Column {
    /// The instrument that reads it; none for what a run shows to eyes and ears.
    pub fn mode(&self) -> Option<MeterMode> {
        match &self.source {
            Source::Meter(_, mode) => Some(*mode),
            Source::Run(_) => None,
        }
    }
}

/// Where a reading comes from.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Source {
    /// A line of the data sheet, and the instrument's mode.
    Meter(Box<DataSheetLine>, MeterMode),
    /// A figure of a whole program, by its place.
    Run(usize),
}

/// All columns; `should` is what a sound machine does in a program.
pub(super) fn columns(
    model: &MachineModel,
    workshop: &Workshop,
    should: &CycleFigures,
) -> Vec<Column> {
    let read = workshop.data_sheet.iter().filter_map(|line| {
        let mode = mode_named(&line.mode).filter(|mode| !LEFT_OUT.contains(mode))?;
        // Lines about motion are covered by the figures of a run.
        let _ = model.wiring.state(&line.state)?;
        let (meter, state) = (mode_words(mode), state_words(&line.state));
        Some(Column {
            what: worded(&line.what).into_owned(),
            how: if line.apart.is_empty() {
                format!("{meter}, {state}")
            } else {
                say!("{meter}, {state}, pulled apart", meter, state)
            },
            floor: floor(mode),
            source: Source::Meter(Box::new(line.clone()), mode),
        })
    });
    let figures = compare(should, should).into_iter().enumerate();
    let figures = figures.map(|(index, line)| Column {
        what: said(line.what).to_owned(),
        how: say!("whole program").to_owned(),
        floor: 0.5,
        source: Source::Run(index),
    });
    read.chain(figures).collect()
}

/// A state of the wiring, plain words; one that no machine here has by its name.
fn state_words(state: &str) -> String {
    let words = match state {
        "agitA" => say!("washing one way"),
        "agitB" => say!("washing the other way"),
        "draining" => say!("draining"),
        "filling" => say!("filling"),
        "off" => say!("off" as "of a machine"),
        "spinning" => say!("spinning"),
        "standby" => say!("standby"),
        "unplugged" => say!("unplugged"),
        "unplugged_on" => say!("unplugged, switch on"),
        other => return other.replace('_', " "),
    };
    words.to_owned()
}

/// A mode, plain words.
fn mode_words(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => say!("ac volts"),
        MeterMode::LowAcVolts => say!("low ac volts"),
        MeterMode::DcVolts => say!("dc volts"),
        MeterMode::Ohms => say!("ohms"),
        MeterMode::Continuity => say!("continuity"),
        MeterMode::Capacitance => say!("capacitance"),
        MeterMode::Frequency => say!("frequency"),
        MeterMode::Diode => say!("diode"),
        MeterMode::Amps => say!("amps"),
        MeterMode::Clamp => say!("clamp"),
        MeterMode::Insulation => say!("insulation"),
        MeterMode::EarthBond => say!("earth bond"),
        MeterMode::Leakage => say!("leakage"),
        MeterMode::TouchCurrent => say!("touch current"),
    }
}

/// The mode of a data sheet's line; none for what no hand instrument reads.
fn mode_named(word: &str) -> Option<MeterMode> {
    serde_json::from_value(serde_json::Value::String(word.to_owned())).ok()
}

/// What a hand meter calls nothing, in the mode's SI unit. Common practice.
fn floor(mode: MeterMode) -> f64 {
    match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts => 2.0,
        MeterMode::DcVolts | MeterMode::Diode => 0.1,
        MeterMode::Frequency => 20.0,
        MeterMode::Capacitance => 0.1e-6,
        MeterMode::Clamp | MeterMode::Amps => 0.03,
        MeterMode::Leakage | MeterMode::TouchCurrent => 0.1e-3,
        MeterMode::Ohms | MeterMode::Continuity | MeterMode::EarthBond => 0.3,
        MeterMode::Insulation => 50e3,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn modes_and_states_are_called_as_files_call_them() {
        for (name, called) in [
            ("ac_volts", "ac volts"),
            ("low_ac_volts", "low ac volts"),
            ("ohms", "ohms"),
            ("earth_bond", "earth bond"),
            ("touch_current", "touch current"),
        ] {
            assert_eq!(mode_named(name).map(mode_words), Some(called));
        }
        assert_eq!(mode_named("weight"), None);
        assert_eq!(state_words("unplugged"), "unplugged");
        assert_eq!(state_words("of_another_machine"), "of another machine");
    }

    #[test]
    fn what_a_hand_meter_calls_nothing_is_below_what_a_fault_would_show() {
        // A ghost voltage or the leads' own ohm, and the least that would mean something in the same
        // place. Common practice.
        for (mode, nothing, something) in [
            (MeterMode::AcVolts, 1.5, 3.0),
            (MeterMode::LowAcVolts, 1.5, 3.0),
            (MeterMode::DcVolts, 0.05, 0.2),
            (MeterMode::Diode, 0.05, 0.2),
            (MeterMode::Ohms, 0.2, 0.5),
            (MeterMode::EarthBond, 0.2, 0.5),
            (MeterMode::Capacitance, 0.05e-6, 0.2e-6),
            (MeterMode::Clamp, 0.02, 0.1),
            (MeterMode::TouchCurrent, 0.05e-3, 0.25e-3),
            (MeterMode::Insulation, 20e3, 100e3),
        ] {
            assert!((nothing..something).contains(&floor(mode)), "{mode:?}");
        }
    }
}
