//! What shows a job's faults with what is allowed, what looks like them, and what tells the two apart.

use std::collections::BTreeMap;

use crate::bench::action::MeterMode;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::expert::Apart;
use crate::expert::Shows;
use crate::expert::remedy::same_remedy;
use crate::language::worded;
use crate::machine::ActiveFault;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::say;
use crate::score::fairness::FairnessLine;
use crate::score::fairness::fair;
use crate::score::fairness::unfair;
use crate::score::matrix::Matrix;
use crate::score::matrix::Row;

/// Look-alikes told at most for each fault.
const MOST_ALIKE: usize = 4;

/// For each fault of the job; `others` is every cause of the machine as read.
pub(super) fn lines(
    scenario: &Scenario,
    matrix: &Matrix,
    others: &[Row],
) -> Result<Vec<FairnessLine>, MachineError> {
    let mut lines = Vec::new();
    let mut about = About {
        scenario,
        matrix,
        apart: Apart::new(scenario, &scenario.faults)?,
        shown: BTreeMap::new(),
    };
    for fault in &scenario.faults {
        let Some(def) = scenario.machine.fault(&fault.id) else {
            continue;
        };
        let row = matrix.row_at(def, fault.severity_ratio)?;
        let one = One { def, row, fault };
        let shown = about.observable(&one)?;
        let is_seen = shown.fair && !changes_nothing(def);
        lines.push(shown);
        // What nothing shows looks like everything else that nothing shows.
        if is_seen {
            lines.extend(about.alike(&one, others)?);
        }
    }
    Ok(lines)
}

/// One fault of the job.
struct One<'a> {
    def: &'a FaultDef,
    row: Row,
    fault: &'a ActiveFault,
}

/// It has no effect beyond itself, such as a buzzer that is silent.
fn changes_nothing(def: &FaultDef) -> bool {
    def.wiring.is_empty() && def.plant.is_empty() && def.control.is_empty()
}

struct About<'a> {
    scenario: &'a Scenario,
    matrix: &'a Matrix,
    apart: Apart,
    /// What machines show, by their faults; the sound one under an empty name.
    shown: BTreeMap<String, Shows>,
}

impl About<'_> {
    fn is_allowed(&self, mode: Option<MeterMode>) -> bool {
        mode.is_none_or(|mode| self.scenario.rules.has(mode))
    }

    /// What to try that tells a machine with this fault from one with another, or from a sound one;
    /// where nothing does, what tells it with the job's other faults there.
    fn told_by(
        &mut self,
        fault: &ActiveFault,
        other: Option<&str>,
    ) -> Result<Option<String>, MachineError> {
        let other: Vec<ActiveFault> = other.map(ActiveFault::constant).into_iter().collect();
        let alone = self.tells(vec![fault.clone()], other.clone())?;
        if alone.is_some() || self.scenario.faults.len() < 2 {
            return Ok(alone);
        }
        let rest = self.scenario.faults.iter().filter(|f| f.id != fault.id);
        let with = rest.cloned().chain(other).collect();
        self.tells(self.scenario.faults.clone(), with)
    }

    fn tells(
        &mut self,
        one: Vec<ActiveFault>,
        other: Vec<ActiveFault>,
    ) -> Result<Option<String>, MachineError> {
        let [one, other] = [self.name(one)?, self.name(other)?];
        let pair = self.shown.get(&one).zip(self.shown.get(&other));
        let words = pair.and_then(|(one, other)| self.apart.told_by(one, other));
        Ok(words.map(str::to_owned))
    }

    /// Lets a machine with these faults show everything, once; the name it is kept by.
    fn name(&mut self, faults: Vec<ActiveFault>) -> Result<String, MachineError> {
        let name = faults.iter().fold(String::new(), |name, fault| {
            format!("{name} {} {}", fault.id, fault.severity_ratio)
        });
        if !self.shown.contains_key(&name) {
            let shows = self.apart.shows(&faults)?;
            self.shown.insert(name.clone(), shows);
        }
        Ok(name)
    }

    fn observable(&mut self, one: &One<'_>) -> Result<FairnessLine, MachineError> {
        let One { def, row, fault } = one;
        let columns = self.matrix.columns().iter().zip(&row.cells);
        let differing: Vec<_> = columns.filter(|(_, cell)| cell.differs).collect();
        let seen: Vec<String> = differing
            .iter()
            .filter(|(column, _)| self.is_allowed(column.mode()))
            .map(|(column, cell)| format!("{} ({}) {}", column.what, column.how, cell.said()))
            .collect();
        let what = worded(&def.what);
        match seen.as_slice() {
            [] => {}
            [first] => return Ok(fair(say!("“{what}” shows: {first}.", what, first))),
            [first, more @ ..] => {
                return Ok(fair(say!(
                    "“{what}” shows: {first}, and {n} more.",
                    what,
                    first,
                    n = more.len(),
                )));
            }
        }
        if changes_nothing(def) {
            return Ok(fair(say!(
                "“{what}” shows in nothing that can be read, seen or heard on this bench: only the customer's words point to it, so let the complaint or an answer name it.",
                what,
            )));
        }
        if let Some(how) = self.told_by(fault, None)? {
            return Ok(fair(say!("“{what}” shows when you {how}.", what, how)));
        }
        let missing = differing.iter().find_map(|(column, _)| column.mode());
        Ok(match missing {
            Some(mode) => unfair(say!(
                "No instrument in the bag shows “{what}”: put in {instrument}.",
                what,
                instrument = words::mode_name(mode),
            )),
            None => unfair(say!(
                "Nothing shows “{what}”, neither a reading nor a look, a run or a turn by hand: raise its severity.",
                what,
            )),
        })
    }

    fn alike(&mut self, one: &One<'_>, others: &[Row]) -> Result<Vec<FairnessLine>, MachineError> {
        let mut lines = Vec::new();
        for other in others {
            // What is wrong with this machine as well is part of the answer.
            if self.scenario.faults.iter().any(|f| f.id == other.fault) {
                continue;
            }
            let apart = self.matrix.separating(&one.row, other);
            let columns = apart.iter().map(|index| &self.matrix.columns()[*index]);
            let mut allowed = columns.filter(|column| self.is_allowed(column.mode()));
            let line = match (allowed.next(), allowed.next()) {
                (Some(_), Some(_)) => continue,
                (Some(only), None) => fair(say!(
                    "Reads like “{what}” until {reading} ({how}) is read.",
                    what = worded(&other.what),
                    reading = only.what,
                    how = only.how,
                )),
                (None, _) => self.by_hand(one, other, &apart)?,
            };
            lines.push(line);
        }
        lines.sort_by_key(|line| line.fair);
        lines.truncate(MOST_ALIKE);
        Ok(lines)
    }

    /// No reading that is allowed tells the two apart: eyes, ears and hands may.
    fn by_hand(
        &mut self,
        one: &One<'_>,
        other: &Row,
        apart: &[usize],
    ) -> Result<FairnessLine, MachineError> {
        let what = worded(&other.what);
        if let Some(how) = self.told_by(one.fault, Some(&other.fault))? {
            return Ok(fair(say!(
                "Reads like “{what}” until you {how}.",
                what,
                how
            )));
        }
        let listed = self.scenario.machine.fault(&other.fault);
        if listed.is_some_and(|listed| same_remedy(self.scenario, one.def, listed)) {
            return Ok(fair(say!(
                "Nothing tells it from “{what}”, and nothing needs to: the same work puts both right.",
                what,
            )));
        }
        let mode = apart
            .iter()
            .find_map(|index| self.matrix.columns()[*index].mode());
        Ok(match mode {
            Some(mode) => unfair(say!(
                "Reads the same as “{what}” with the instruments allowed: put {instrument} in the bag.",
                what,
                instrument = words::mode_name(mode),
            )),
            None => unfair(say!(
                "Nothing tells it from “{what}”, neither a reading nor a look, a run or a turn by hand: let something else in the job point to it, or choose another fault.",
                what,
            )),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    /// What is said of a job with these faults alone, held against one other cause.
    fn said(faults: &[&str], other: &str) -> Vec<(bool, String)> {
        let mut scenario = (*job("hums_and_stands").expect("sound").expect("ships")).clone();
        scenario.faults = faults.iter().copied().map(ActiveFault::constant).collect();
        let matrix = Matrix::new(&scenario.machine, &scenario.workshop).expect("solves");
        let other = scenario.machine.fault(other).expect("listed");
        let others = [matrix.row(other).expect("solves")];
        let lines = lines(&scenario, &matrix, &others)
            .expect("runs")
            .into_iter();
        lines.map(|line| (line.fair, line.words)).collect()
    }

    #[test]
    fn what_nothing_shows_rests_on_the_customers_words_and_looks_like_nothing_else() {
        let said = said(&["buzzer_silent"], "capacitor_open");
        assert_eq!(said.len(), 1, "{said:?}");
        assert!(said[0].0 && said[0].1.contains("only the customer's words"));
    }

    #[test]
    fn what_no_reading_shows_is_fair_where_a_look_does_and_tells_it_from_another() {
        let said = said(&["feet_loose"], "balance_ring_empty");
        assert_eq!(said.len(), 2, "{said:?}");
        let shown = "“the foot lock nuts are loose” shows when you look: floor and feet.";
        assert_eq!(said[0], (true, shown.to_owned()));
        let alike = "Reads like “the balance ring has leaked” until you ";
        assert!(said[1].0 && said[1].1.starts_with(alike), "{said:?}");
    }

    #[test]
    fn with_two_faults_each_is_told_and_neither_is_held_against_the_other() {
        let said = said(&["capacitor_low", "feet_loose"], "feet_loose");
        assert_eq!(said.len(), 2, "{said:?}");
        assert!(said.iter().all(|(is_fair, _)| *is_fair), "{said:?}");
        assert!(
            said[0].1.starts_with("“the run capacitor has lost "),
            "{said:?}"
        );
        assert!(
            said[1]
                .1
                .starts_with("“the foot lock nuts are loose” shows "),
            "{said:?}"
        );
    }
}
