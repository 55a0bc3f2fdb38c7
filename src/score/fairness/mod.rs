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

    fn known(
        &mut self,
        scenario: &Scenario,
        told: &mut dyn FnMut(usize, usize),
    ) -> Result<&Known, MachineError> {
        let (model, id) = (&scenario.machine, &scenario.machine.id);
        // A machine of the same name may come from another file.
        let is_known = |known: &Known| Arc::ptr_eq(&known.model, model);
        if !self.known.get(id).is_some_and(is_known) {
            let matrix = Matrix::new(model, &scenario.workshop)?;
            let of = matrix.faults().len();
            let read = |(done, fault)| {
                told(done, of);
                matrix.row(fault)
            };
            let rows = matrix.faults().iter().enumerate().map(read);
            let rows = rows.collect::<Result<_, _>>()?;
            let known = Known {
                model: Arc::clone(model),
                matrix,
                rows,
            };
            self.known.insert(id.clone(), known);
        }
        self.known.get(id).ok_or(MachineError::UnknownFault {
            machine: id.clone(),
            name: String::new(),
        })
    }
}

fn fair(words: &str) -> FairnessLine {
    FairnessLine {
        words: words.to_owned(),
        fair: true,
    }
}

fn unfair(words: &str) -> FairnessLine {
    FairnessLine {
        words: words.to_owned(),
        fair: false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::MeterMode;
    use crate::scenario::job;

    fn of(id: &str, change: fn(&mut Scenario)) -> Vec<FairnessLine> {
        let mut scenario = (*job(id).expect("sound").expect("ships")).clone();
        change(&mut scenario);
        Judge::default()
            .judge(&scenario, &mut |_, _| ())
            .expect("runs")
    }

    fn warns(lines: &[FairnessLine], word: &str) -> bool {
        lines
            .iter()
            .any(|line| !line.fair && line.words.contains(word))
    }

    #[test]
    fn each_unfairness_is_told_with_what_would_help() {
        // A fault at no severity.
        let lines = of("hums_and_stands", |scenario| {
            scenario.faults[0].severity_ratio = 0.0
        });
        assert!(warns(&lines, "raise"), "{lines:?}");
        // A bar below the target.
        let lines = of("hums_and_stands", |scenario| {
            scenario.rules.budget_price = Some(1.0)
        });
        assert!(warns(&lines, "budget"), "{lines:?}");
        // A complaint of what the machine does not do.
        let lines = of("hums_and_stands", |scenario| {
            scenario.customer.complaint = "There is a puddle under it.".to_owned()
        });
        assert!(warns(&lines, "complaint"), "{lines:?}");
        // A bag that lacks what tells the cause.
        let lines = of("hums_and_stands", |scenario| {
            scenario.rules.instruments = Some(vec![MeterMode::AcVolts])
        });
        assert!(warns(&lines, "bag"), "{lines:?}");
    }
}
