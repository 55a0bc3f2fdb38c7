//! The table of discrimination of a type of machine: every fault against every reading of its data
//! sheet and every figure of a whole program, all computed, so that one sees what a reading can
//! tell apart and what it cannot.
//!
//! Limits: faults as listed, always there, one at a time; windings cold; nominal supply.

use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Workshop;
use crate::machine::ActiveFault;
use crate::machine::CycleFigures;
use crate::machine::FaultDef;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Setup;
use crate::plant::harness::COLD_K;
use crate::plant::harness::Harness;
use crate::plant::harness::Instrument;
use crate::plant::harness::SteadyState;
use crate::plant::harness::Wiring;
use crate::plant::harness::instrument;
use crate::plant::harness::steady_state::steady_state;
use crate::score::functional::FunctionLine;
use crate::score::functional::compare;
use crate::score::functional::figure;
use crate::score::matrix_columns::Column;
use crate::score::matrix_columns::Source;
use crate::score::matrix_columns::columns;
use crate::text;

/// Two readings this near to each other tell nothing apart, as a share of the larger. Common
/// practice: twice the accuracy of a hand meter.
const SAME_RATIO: f64 = 0.03;

/// One reading of one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Cell {
    /// As shown, with its unit, in English; `OL` for over-range.
    pub shown: String,
    /// In the column's unit; none when over range.
    pub value: Option<f64>,
    /// A technician would see that it is not as on a sound machine.
    pub differs: bool,
}

impl Cell {
    /// [`Cell::shown`] in the reader's language.
    pub fn said(&self) -> String {
        match self.shown.rsplit_once(' ') {
            Some((digits, unit)) => figure(digits.to_owned(), unit),
            None => self.shown.clone(),
        }
    }
}

/// A fault with all its readings.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Row {
    /// Name in the catalogue; empty for the sound machine.
    pub fault: String,
    /// What is wrong, plain words; English, for [`worded`](crate::language::worded).
    pub what: String,
    /// One for each column.
    pub cells: Vec<Cell>,
}

/// A machine held in one state with its connectors apart.
struct Held<'s> {
    state: &'s str,
    apart: &'s [String],
    harness: Harness,
    solved: SteadyState,
}

/// A type of machine with all that is read on it.
#[derive(Debug)]
pub struct Matrix {
    model: Arc<MachineModel>,
    workshop: Arc<Workshop>,
    columns: Vec<Column>,
    sound: Row,
    should: CycleFigures,
}

impl Matrix {
    /// Reads the sound machine; faults follow by [`Matrix::row`].
    ///
    /// # Errors
    /// When the machine cannot be set up or solved.
    pub fn new(model: &Arc<MachineModel>, workshop: &Arc<Workshop>) -> Result<Self, MachineError> {
        let should = run(model, &[])?;
        let mut matrix = Self {
            model: Arc::clone(model),
            workshop: Arc::clone(workshop),
            columns: columns(model, workshop, &should),
            sound: Row {
                fault: String::new(),
                what: text!("sound").to_owned(),
                cells: Vec::new(),
            },
            should,
        };
        matrix.sound.cells = matrix.cells(None, &matrix.should)?;
        Ok(matrix)
    }

    /// What is read, in the order of the data sheet, then of a program.
    pub fn columns(&self) -> &[Column] {
        &self.columns
    }

    /// The columns anew, in the present language.
    pub(super) fn read_columns(&self) -> Vec<Column> {
        columns(&self.model, &self.workshop, &self.should)
    }

    /// The sound machine.
    pub fn sound(&self) -> &Row {
        &self.sound
    }

    /// The faults this machine can have, as the catalogue orders them.
    pub fn faults(&self) -> &[FaultDef] {
        &self.model.faults
    }

    /// All readings of the machine with a fault.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn row(&self, fault: &FaultDef) -> Result<Row, MachineError> {
        self.row_at(fault, 1.0)
    }

    /// As [`Matrix::row`], the fault at a severity from 0 to 1.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn row_at(&self, fault: &FaultDef, severity_ratio: f64) -> Result<Row, MachineError> {
        let active = ActiveFault {
            severity_ratio,
            ..ActiveFault::constant(&fault.id)
        };
        let figures = run(&self.model, &[active])?;
        Ok(Row {
            fault: fault.id.clone(),
            what: fault.what.clone(),
            cells: self.cells(Some((fault, severity_ratio)), &figures)?,
        })
    }

    /// Columns whose readings tell two faults apart.
    pub fn separating(&self, one: &Row, other: &Row) -> Vec<usize> {
        let pairs = self.columns.iter().zip(one.cells.iter().zip(&other.cells));
        let apart = |(column, (a, b)): (&Column, (&Cell, &Cell))| {
            a.differs != b.differs || !is_same(column.floor, a.value, b.value)
        };
        pairs
            .enumerate()
            .filter_map(|(index, pair)| apart(pair).then_some(index))
            .collect()
    }

    fn cells(
        &self,
        fault: Option<(&FaultDef, f64)>,
        figures: &CycleFigures,
    ) -> Result<Vec<Cell>, MachineError> {
        let lines = compare(figures, &self.should);
        // What changes no wiring reads as a sound machine does, wherever one is held still.
        let reads_as_sound = fault.is_some_and(|(fault, _)| fault.wiring.is_empty());
        let mut held = Vec::new();
        let mut cells = Vec::new();
        for (index, column) in self.columns.iter().enumerate() {
            match &column.source {
                Source::Run(line) => cells.extend(lines.get(*line).map(figure_cell)),
                Source::Meter(..) if reads_as_sound => {
                    cells.extend(self.sound.cells.get(index).cloned());
                }
                Source::Meter(line, mode) => {
                    cells.push(self.metered(&mut held, fault, index, (line, *mode))?);
                }
            }
        }
        Ok(cells)
    }

    /// One reading of a machine held still; each way of holding it is solved once.
    fn metered<'s>(
        &'s self,
        held: &mut Vec<Held<'s>>,
        fault: Option<(&FaultDef, f64)>,
        index: usize,
        (line, mode): (&'s DataSheetLine, MeterMode),
    ) -> Result<Cell, MachineError> {
        let known = held
            .iter()
            .position(|held| held.state == line.state && held.apart == line.apart);
        let at = match known {
            Some(at) => at,
            None => {
                let (harness, solved) = self.hold(fault, line)?;
                held.push(Held {
                    state: &line.state,
                    apart: &line.apart,
                    harness,
                    solved,
                });
                held.len() - 1
            }
        };
        let Held {
            harness, solved, ..
        } = &held[at];
        let value = self.read(harness, solved, mode, line)?;
        let (value, shown) = display::digits(mode, value);
        let floor = self.columns[index].floor;
        let sound = self.sound.cells.get(index);
        let moved = sound.is_some_and(|sound| !is_same(floor, sound.value, value));
        Ok(Cell {
            shown,
            value,
            differs: moved && !value.is_some_and(|v| (line.low..=line.high).contains(&v)),
        })
    }

    /// The wiring held in the line's state with its connectors apart.
    fn hold(
        &self,
        fault: Option<(&FaultDef, f64)>,
        line: &DataSheetLine,
    ) -> Result<(Harness, SteadyState), MachineError> {
        let model = &self.model.wiring;
        let mut wiring = Wiring::healthy(&Arc::new(model.clone()));
        if let Some((fault, severity_ratio)) = fault {
            for change in &fault.wiring {
                wiring.apply(change, severity_ratio);
            }
        }
        let apart = line
            .apart
            .iter()
            .filter_map(|id| self.workshop.connector(id));
        for id in apart
            .flat_map(|c| &c.elements)
            .filter_map(|name| model.element(name))
        {
            wiring.open_by_hand(id, true);
        }
        let state = model.state(&line.state);
        if let Some(state) = state {
            wiring.set_plugged(state.is_plugged);
        }
        let closed = state.map(|s| s.closed.clone()).unwrap_or_default();
        let harness = Harness::new(&wiring, &[])?;
        let solved = steady_state(&harness, &closed, state.and_then(|s| s.load_n_m), COLD_K)?;
        Ok((harness, solved))
    }

    fn read(
        &self,
        harness: &Harness,
        state: &SteadyState,
        mode: MeterMode,
        line: &DataSheetLine,
    ) -> Result<Option<f64>, MachineError> {
        let model = &self.model.wiring;
        if mode == MeterMode::Clamp {
            let id = model.element(&line.red);
            return Ok(id.map(|id| state.ac.network.current_a(id).abs()));
        }
        let (Some(red), Some(black)) = (model.node(&line.red), model.node(&line.black)) else {
            return Ok(None);
        };
        let with = match mode {
            MeterMode::LowAcVolts => Instrument::AcVoltsLowImpedance,
            MeterMode::DcVolts => Instrument::DcVolts,
            MeterMode::Capacitance => Instrument::Capacitance,
            MeterMode::Insulation => Instrument::Insulation,
            MeterMode::Ohms | MeterMode::Continuity | MeterMode::EarthBond => Instrument::Ohms,
            MeterMode::Diode => Instrument::Diode,
            MeterMode::Amps => Instrument::Amps,
            MeterMode::TouchCurrent => Instrument::TouchCurrent,
            _ => Instrument::AcVolts,
        };
        let reading = instrument::read(harness, state, with, red, black)?;
        Ok((!reading.is_over_range).then_some(reading.value))
    }
}

fn run(model: &Arc<MachineModel>, faults: &[ActiveFault]) -> Result<CycleFigures, MachineError> {
    let mut machine = Machine::new(model, Setup::of_faults(faults, 1))?;
    machine.stand_ready();
    machine.trial()
}

fn figure_cell(line: &FunctionLine) -> Cell {
    Cell {
        shown: format!("{:.1} {}", line.value, line.unit),
        value: Some(line.value),
        differs: !line.ok,
    }
}

fn is_same(floor: f64, one: Option<f64>, other: Option<f64>) -> bool {
    match (one, other) {
        (Some(a), Some(b)) => (a - b).abs() <= floor.max(SAME_RATIO * a.abs().max(b.abs())),
        (None, None) => true,
        _ => false,
    }
}

#[cfg(test)]
mod readings;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language;
    use crate::scenario::machines;

    #[test]
    fn an_open_winding_shows_in_its_own_resistance_and_nowhere_in_the_supply() {
        let pack = &machines().expect("sound")["P"];
        let matrix = Matrix::new(&pack.model, &pack.workshop).expect("solves");
        assert!(matrix.sound().cells.iter().all(|cell| !cell.differs));
        assert_eq!(matrix.sound().cells.len(), matrix.columns().len());
        let fault = |id: &str| {
            let def = matrix.faults().iter().find(|f| f.id == id).expect("listed");
            matrix.row(def).expect("solves")
        };
        let (belt, low) = (fault("belt_off"), fault("capacitor_low"));
        let named = |row: &Row, word: &str| {
            let found = matrix
                .columns()
                .iter()
                .position(|c| c.how.starts_with(word));
            row.cells[found.expect("a column")].clone()
        };
        // A belt is nothing to an ohmmeter; a weak capacitor shows on the capacitance range.
        assert!(!named(&belt, "capacitance").differs);
        assert!(named(&low, "capacitance").differs);
        // A fault that changes no wiring is not read again: it would read as a sound machine.
        let def = matrix.faults().iter().find(|f| f.id == "belt_off");
        let fault = def.map(|def| (def, 1.0));
        let mut held = Vec::new();
        for (index, column) in matrix.columns().iter().enumerate() {
            if let Source::Meter(line, mode) = &column.source {
                let read = matrix.metered(&mut held, fault, index, (line, *mode));
                assert_eq!(read.expect("solves"), belt.cells[index], "{}", column.what);
            }
        }
        // What is saved does not depend on who reads the screen.
        let saved = matrix.csv([&low]);
        language::speak(Some(language::Catalogue::pseudo()));
        let marked = Matrix::new(&pack.model, &pack.workshop).expect("solves");
        assert!(marked.columns().iter().all(|c| c.what.starts_with('⟦')));
        let saved_again = marked.csv([&low]);
        language::speak(None);
        assert_eq!(saved_again, saved);
        // Readings come back from a thread as they went.
        let text = serde_json::to_string(&low).expect("finite");
        assert_eq!(serde_json::from_str::<Row>(&text).expect("a row"), low);
        assert!(!matrix.separating(&belt, &low).is_empty());
        assert!(matrix.separating(&low, &low).is_empty());
    }

    #[test]
    fn a_cell_is_said_with_its_unit_and_over_range_as_the_meter_does() {
        let cell = |shown: &str| Cell {
            shown: shown.to_owned(),
            value: None,
            differs: false,
        };
        assert_eq!(cell("12.3 kOhm").said(), "12.3 kOhm");
        assert_eq!(cell("OL").said(), "OL");
    }
}
