//! Is a job fair? Whether its faults can be seen or read with what is allowed, what looks like
//! them and which reading separates the two, whether its customer would notice anything, whether
//! the bars can be reached. Every warning says what would help.
//!
//! Readings are those of [`Matrix`]; looking, listening and turning by hand tell more than it
//! holds, so a fault that no reading shows is a warning and no verdict.

use serde::Serialize;

use crate::bench::action::MeterMode;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::machine::ActiveFault;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::score::behaviour::Behaviour;
use crate::score::behaviour::behaviour;
use crate::score::matrix::Matrix;
use crate::score::matrix::Row;

/// Look-alikes told at most for each fault.
const MOST_ALIKE: usize = 4;

/// One sentence about a job.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FairnessLine {
    /// Plain words, with the remedy where there is something to mend.
    pub words: String,
    /// Nothing to mend.
    pub fair: bool,
}

/// A job being judged, one other fault at a time.
#[derive(Debug)]
pub struct Fairness {
    matrix: Matrix,
    behaviour: Behaviour,
    faults: Vec<(FaultDef, Row)>,
    others: Vec<Row>,
}

impl Fairness {
    /// Runs the job's machine and reads each of its faults; the other causes follow by
    /// [`Fairness::compare_next`].
    ///
    /// # Errors
    /// When the machine cannot be set up or solved.
    pub fn new(scenario: &Scenario) -> Result<Self, MachineError> {
        let matrix = Matrix::new(&scenario.machine, &scenario.workshop)?;
        let read = |active: &ActiveFault| {
            let def = scenario
                .machine
                .faults
                .iter()
                .find(|def| def.id == active.id)?;
            let row = matrix.row_at(def, active.severity_ratio);
            Some(row.map(|row| (def.clone(), row)))
        };
        let faults = scenario
            .faults
            .iter()
            .filter_map(read)
            .collect::<Result<_, _>>()?;
        Ok(Self {
            behaviour: behaviour(scenario, 1)?,
            faults,
            others: Vec::new(),
            matrix,
        })
    }

    /// Reads one more of the causes a technician would have to tell apart; false once all are.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn compare_next(&mut self) -> Result<bool, MachineError> {
        let Some(fault) = self.matrix.faults().get(self.others.len()) else {
            return Ok(false);
        };
        let row = self.matrix.row(fault)?;
        self.others.push(row);
        Ok(true)
    }

    /// Causes compared, and how many there are.
    pub fn progress(&self) -> (usize, usize) {
        (self.others.len(), self.matrix.faults().len())
    }

    /// What can be said so far.
    pub fn lines(&self, scenario: &Scenario) -> Vec<FairnessLine> {
        let mut lines = vec![self.noticed(scenario)];
        for (def, row) in &self.faults {
            lines.push(self.observable(scenario, def, row));
            lines.extend(self.alike(scenario, def, row));
            lines.extend(in_van(scenario, def));
        }
        lines.extend(bars(scenario));
        lines
    }

    fn noticed(&self, scenario: &Scenario) -> FairnessLine {
        let outside = self
            .faults
            .iter()
            .all(|(def, _)| def.class == FaultClass::Site);
        match (
            self.behaviour.complaint.is_empty(),
            scenario.faults.is_empty(),
        ) {
            (true, true) => fair(
                "The machine is sound: the right answer is to say so and to show the customer.",
            ),
            (true, false) if outside => fair(
                "The cause lies outside the machine and shows in no program: the complaint must come from what the customer knows.",
            ),
            (true, false) => unfair(
                "Over a whole program the customer would notice nothing: raise the severity, let the fault come on more often, or let the complaint say when it happens.",
            ),
            (false, _) => fair(&format!(
                "The customer would notice: {}",
                self.behaviour.complaint
            )),
        }
    }

    fn observable(&self, scenario: &Scenario, def: &FaultDef, row: &Row) -> FairnessLine {
        let columns = || {
            self.matrix
                .columns()
                .iter()
                .zip(&row.cells)
                .filter(|(_, cell)| cell.differs)
        };
        let seen: Vec<String> = columns()
            .filter(|(column, _)| is_allowed(scenario, column.mode()))
            .map(|(column, cell)| format!("{} ({}) {}", column.what, column.how, cell.shown))
            .collect();
        if let Some(first) = seen.first() {
            let more = match seen.len() {
                1 => String::new(),
                n => format!(", and {} more", n - 1),
            };
            return fair(&format!("“{}” shows: {first}{more}.", def.what));
        }
        match columns().find_map(|(column, _)| column.mode()) {
            Some(mode) => unfair(&format!(
                "No instrument in the bag shows “{}”: put in {}.",
                def.what,
                words::mode_name(mode)
            )),
            None => unfair(&format!(
                "No reading shows “{}”; only looking, listening or turning by hand can. If that is not meant, raise its severity.",
                def.what
            )),
        }
    }

    fn alike(&self, scenario: &Scenario, def: &FaultDef, row: &Row) -> Vec<FairnessLine> {
        let mut lines = Vec::new();
        for other in self.others.iter().filter(|other| other.fault != def.id) {
            let apart = self.matrix.separating(row, other);
            let mut allowed = apart
                .iter()
                .map(|index| &self.matrix.columns()[*index])
                .filter(|column| is_allowed(scenario, column.mode()));
            let line = match (allowed.next(), allowed.next()) {
                (Some(only), None) => fair(&format!(
                    "Looks like “{}” until {} ({}) is read.",
                    other.what, only.what, only.how
                )),
                (None, _) if apart.is_empty() => unfair(&format!(
                    "Reads the same as “{}” everywhere: only a look, a turn by hand or the repair itself tells. Let something else in the job point to it.",
                    other.what
                )),
                (None, _) => unfair(&format!(
                    "Reads the same as “{}” with the instruments allowed: put {} in the bag.",
                    other.what,
                    apart
                        .iter()
                        .find_map(|i| self.matrix.columns()[*i].mode())
                        .map_or("one more", words::mode_name)
                )),
                (Some(_), Some(_)) => continue,
            };
            lines.push(line);
        }
        lines.sort_by_key(|line| line.fair);
        lines.truncate(MOST_ALIKE);
        lines
    }
}

fn is_allowed(scenario: &Scenario, mode: Option<MeterMode>) -> bool {
    mode.is_none_or(|mode| scenario.rules.has(mode))
}

/// A part that must be fetched costs a second visit.
fn in_van(scenario: &Scenario, def: &FaultDef) -> Option<FairnessLine> {
    let is_part = def.class == FaultClass::Part && !def.part.is_empty();
    let missing = is_part && !scenario.van.contains(&def.part);
    let part = scenario.workshop.part(&def.part)?;
    missing.then(|| {
        fair(&format!(
            "The {} is not in the van: if it must be replaced, that is a second visit for {:.0}.",
            part.name, scenario.money.second_visit
        ))
    })
}

/// Bars against what a skilled technician's way costs.
fn bars(scenario: &Scenario) -> Vec<FairnessLine> {
    let (rules, target) = (&scenario.rules, scenario.reference);
    if target.cost <= 0.0 {
        let barred = rules.budget_price.is_some() || rules.time_s.is_some();
        let words = "The target is not known yet: work the job yourself and enter what it took.";
        return vec![if barred { unfair(words) } else { fair(words) }];
    }
    let below = |what: &str, bar: Option<f64>, needs: f64| {
        bar.filter(|bar| *bar < needs).map(|bar| {
            unfair(&format!(
                "The {what} of {bar:.0} is below the {needs:.0} that a skilled technician needs: raise it to {:.0} or more.",
                1.2 * needs
            ))
        })
    };
    let lines = [
        below("budget", rules.budget_price, target.cost),
        below(
            "time allowed in minutes",
            rules.time_s.map(|s| s / 60.0),
            target.minutes,
        ),
    ];
    let mut lines: Vec<FairnessLine> = lines.into_iter().flatten().collect();
    lines.push(fair(&format!(
        "Target: {:.0}, in {:.0} minutes.",
        target.cost, target.minutes
    )));
    lines
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
    use crate::scenario::job;

    fn of(id: &str, change: fn(&mut Scenario)) -> Vec<FairnessLine> {
        let mut scenario = (*job(id).expect("sound").expect("ships")).clone();
        change(&mut scenario);
        let judged = Fairness::new(&scenario).expect("runs");
        judged.lines(&scenario)
    }

    fn warns(lines: &[FairnessLine], word: &str) -> bool {
        lines
            .iter()
            .any(|line| !line.fair && line.words.contains(word))
    }

    #[test]
    fn a_fault_at_no_severity_is_told_to_be_raised() {
        let lines = of("hums_and_stands", |scenario| {
            scenario.faults[0].severity_ratio = 0.0
        });
        assert!(warns(&lines, "raise"), "{lines:?}");
    }

    #[test]
    fn a_bar_below_the_target_is_told_with_what_would_do() {
        let lines = of("hums_and_stands", |scenario| {
            scenario.rules.budget_price = Some(1.0)
        });
        assert!(warns(&lines, "budget"), "{lines:?}");
    }
}
