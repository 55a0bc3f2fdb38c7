//! What the notes pointed at, in plain words, from the thread's answer.

use std::collections::BTreeSet;

use crate::app::format;
use crate::app::worker::Likely;
use crate::bench::job::Job;
use crate::language::worded;
use crate::say;

/// A cause less likely than this is not named beside the machine.
const WORTH_NAMING: f64 = 0.02;
/// Causes named beside the machine.
const NAMED: usize = 4;

/// A cause through the job.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LikelyRow {
    /// Part and fault in plain words.
    pub name: String,
    /// How likely after each step, 0 to 1.
    pub shares: Vec<f64>,
    /// It is what was wrong.
    pub is_true: bool,
}

/// Rows of the chart.
pub fn rows(job: &Job, likely: &Likely) -> Vec<LikelyRow> {
    let truth: BTreeSet<&str> = job
        .scenario()
        .faults
        .iter()
        .map(|f| f.id.as_str())
        .collect();
    likely
        .causes
        .iter()
        .enumerate()
        .map(|(place, ids)| LikelyRow {
            name: name(job, ids),
            // The first row is the complaint, before any step.
            shares: likely.after.iter().skip(1).map(|row| row[place]).collect(),
            is_true: ids.iter().map(String::as_str).collect::<BTreeSet<_>>() == truth,
        })
        .collect()
}

/// The likeliest causes after a step, likeliest first; `step` from 0.
pub fn now(rows: &[LikelyRow], step: usize) -> Vec<(String, f64)> {
    let share = |row: &LikelyRow| row.shares.get(step).copied().unwrap_or_default();
    let mut likely: Vec<(String, f64)> = rows
        .iter()
        .map(|row| (row.name.clone(), share(row)))
        .filter(|(_, share)| *share >= WORTH_NAMING)
        .collect();
    likely.sort_by(|a, b| b.1.total_cmp(&a.1));
    likely.truncate(NAMED);
    likely
}

/// What a step was worth, in a sentence; `step` from 0.
pub fn worth(likely: &Likely, step: usize) -> Option<String> {
    let bits = *likely.bits.get(step + 1)?;
    let gone = likely.ruled_out.get(step + 1).copied().unwrap_or_default();
    let told = match bits {
        b if b < -0.05 => say!("It made the picture less clear, and rightly so."),
        b if b < 0.05 => say!("It told nothing new about the cause."),
        b if b < 0.5 => say!("It told a little about the cause."),
        b if b < 1.5 => say!("It told something about the cause."),
        _ => say!("It told a great deal about the cause."),
    };
    Some(match gone {
        0 => told.to_owned(),
        1 => format!("{told} {}", say!("It ruled out one.")),
        n => format!("{told} {}", say!("It ruled out {n}.", n)),
    })
}

/// A cause in plain words.
pub(super) fn name(job: &Job, ids: &[String]) -> String {
    let machine = &job.scenario().machine;
    if ids.is_empty() {
        return say!("Nothing wrong").to_owned();
    }
    let words = ids
        .iter()
        .map(|id| machine.fault(id).map_or(id.as_str(), |f| f.what.as_str()))
        .map(|what| worded(what).into_owned())
        .reduce(|one, next| say!("{one}, and {next}", one, next));
    format::sentence(&words.unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn beside_the_machine_stand_the_likeliest_causes_of_that_step() {
        let row = |name: &str, shares: &[f64]| LikelyRow {
            name: name.to_owned(),
            shares: shares.to_vec(),
            is_true: false,
        };
        let rows = [row("belt", &[0.2, 0.9]), row("valve", &[0.6, 0.01])];
        let names = |step| -> Vec<String> { now(&rows, step).into_iter().map(|n| n.0).collect() };
        assert_eq!(names(0), ["valve", "belt"]);
        assert_eq!(names(1), ["belt"]);
        assert!(names(2).is_empty());
    }

    #[test]
    fn a_step_is_worth_what_it_took_away_in_uncertainty() {
        let likely = Likely {
            bits: vec![0.4, 0.0, 2.0, -0.3],
            ruled_out: vec![0, 0, 12, 0],
            ..Likely::default()
        };
        assert_eq!(
            worth(&likely, 0).as_deref(),
            Some("It told nothing new about the cause.")
        );
        assert_eq!(
            worth(&likely, 1).as_deref(),
            Some("It told a great deal about the cause. It ruled out 12.")
        );
        assert!(worth(&likely, 2).is_some_and(|words| words.contains("less clear")));
        assert_eq!(worth(&likely, 3), None);
    }
}
