//! Is a job fair? Whether its customer would notice anything and complains of what the machine does;
//! whether its faults can be read, seen, heard or felt with what is allowed; what looks like them and
//! what tells the two apart; whether the bars can be reached, and whether the expert puts it right.
//! Every warning says what would help.
//!
//! Readings are those of [`Matrix`]; where they do not tell two causes apart, both machines are run,
//! looked at and moved by hand ([`crate::expert::Apart`]). Limits: one fault at a time, other causes as
//! listed in the catalogue; readings of instruments that need no circuit are not held against each
//! other.

mod alike; // what shows a fault, and what looks like it
mod bars; // van, budget, time, and the expert's own way
mod customer; // what would be noticed, and whether the complaint fits

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::scenario::Scenario;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::score::matrix::Matrix;
use crate::score::matrix::Row;

pub use bars::solved;

/// One sentence about a job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FairnessLine {
    /// Plain words, with the remedy where there is something to mend.
    pub words: String,
    /// Nothing to mend.
    pub fair: bool,
    /// Nothing shown to be right, either: something is not known yet.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub open: bool,
}

/// Judges jobs; keeps what it has read on each type of machine for the next job on it.
#[derive(Debug, Default)]
pub struct Judge {
    known: BTreeMap<String, Known>,
}

/// All that is read on a type of machine, fault by fault.
#[derive(Debug)]
struct Known {
    model: Arc<MachineModel>,
    matrix: Matrix,
    rows: Vec<Row>,
}

impl Judge {
    /// What can be said of a job; `told` hears how many of how many causes are compared.
    ///
    /// # Errors
    /// When the machine cannot be set up or solved.
    pub fn judge(
        &mut self,
        scenario: &Scenario,
        told: &mut dyn FnMut(usize, usize),
    ) -> Result<Vec<FairnessLine>, MachineError> {
        let known = self.known(scenario, told)?;
        let mut lines = customer::lines(scenario)?;
        lines.extend(alike::lines(scenario, &known.matrix, &known.rows)?);
        lines.extend(bars::lines(scenario));
        Ok(lines)
    }

    /// Takes in what was read on a scenario's machine elsewhere, a row for each of its faults in the
    /// order of the catalogue; rows of another machine are left alone, and read here when needed.
    ///
    /// # Errors
    /// When the machine cannot be set up or solved.
    pub fn take_in(&mut self, scenario: &Scenario, rows: Vec<Row>) -> Result<(), MachineError> {
        let model = &scenario.machine;
        let faults = model.faults.iter().map(|fault| &fault.id);
        if !faults.eq(rows.iter().map(|row| &row.fault)) || self.knows(scenario) {
            return Ok(());
        }
        let matrix = Matrix::new(model, &scenario.workshop)?;
        let is_whole = |row: &Row| row.cells.len() == matrix.columns().len();
        if rows.iter().all(is_whole) {
            self.keep(scenario, matrix, rows);
        }
        Ok(())
    }

    /// A machine of the same name may come from another file.
    fn knows(&self, scenario: &Scenario) -> bool {
        let known = self.known.get(&scenario.machine.id);
        known.is_some_and(|known| Arc::ptr_eq(&known.model, &scenario.machine))
    }

    fn keep(&mut self, scenario: &Scenario, matrix: Matrix, rows: Vec<Row>) {
        let known = Known {
            model: Arc::clone(&scenario.machine),
            matrix,
            rows,
        };
        self.known.insert(scenario.machine.id.clone(), known);
    }

    fn known(
        &mut self,
        scenario: &Scenario,
        told: &mut dyn FnMut(usize, usize),
    ) -> Result<&Known, MachineError> {
        let (model, id) = (&scenario.machine, &scenario.machine.id);
        if !self.knows(scenario) {
            let matrix = Matrix::new(model, &scenario.workshop)?;
            let of = matrix.faults().len();
            let read = |(done, fault)| {
                told(done, of);
                matrix.row(fault)
            };
            let rows = matrix.faults().iter().enumerate().map(read);
            let rows = rows.collect::<Result<_, _>>()?;
            self.keep(scenario, matrix, rows);
        }
        self.known.get(id).ok_or(MachineError::UnknownFault {
            machine: id.clone(),
            name: String::new(),
        })
    }
}

fn fair(words: impl Into<String>) -> FairnessLine {
    FairnessLine {
        words: words.into(),
        fair: true,
        open: false,
    }
}

fn open(words: impl Into<String>) -> FairnessLine {
    FairnessLine {
        open: true,
        ..fair(words)
    }
}

fn unfair(words: impl Into<String>) -> FairnessLine {
    FairnessLine {
        words: words.into(),
        fair: false,
        open: false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    fn of(judge: &mut Judge, change: fn(&mut Scenario)) -> Vec<FairnessLine> {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        change(&mut scenario);
        judge.judge(&scenario, &mut |_, _| ()).expect("runs")
    }

    fn says(lines: &[FairnessLine], fair: bool, word: &str) -> bool {
        let is_it = |line: &FairnessLine| line.fair == fair && line.words.contains(word);
        lines.iter().any(is_it)
    }

    #[test]
    fn each_unfairness_is_told_with_what_would_help() {
        let judge = &mut Judge::default();
        // A fault at no severity.
        let lines = of(judge, |scenario| scenario.faults[0].severity_ratio = 0.0);
        assert!(says(&lines, false, "raise"), "{lines:?}");
        // A bar below the target; what one work puts right need not be told apart.
        let lines = of(judge, |scenario| scenario.rules.budget_price = Some(1.0));
        assert!(says(&lines, false, "budget"), "{lines:?}");
        assert!(says(&lines, true, "the same work"), "{lines:?}");
        // An empty bag: nothing tells an open capacitor from an open winding.
        let lines = of(judge, |scenario| {
            scenario.rules.instruments = Some(Vec::new())
        });
        assert!(says(&lines, false, "in the bag"), "{lines:?}");
        // A complaint of what the machine does not do.
        let lines = of(judge, |scenario| {
            scenario.customer.complaint = "It tingles when I touch it.".to_owned()
        });
        assert!(says(&lines, false, "complaint"), "{lines:?}");
        // Rows that were read elsewhere are not read again, and say the same.
        let machine = judge.known.keys().next().cloned().expect("a machine");
        let rows = judge.known[&machine].rows.clone();
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let mut other = Judge::default();
        other
            .take_in(&scenario, rows[1..].to_vec())
            .expect("solves");
        assert!(!other.knows(&scenario), "a row is missing");
        other.take_in(&scenario, rows).expect("solves");
        let lines = other.judge(&scenario, &mut |_, _| panic!("reads again"));
        assert_eq!(lines.expect("runs"), of(judge, |_| ()));
    }
}
