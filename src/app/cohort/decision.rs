//! What is decided about a person: by the assessment's rules on what counts, or by a ruling.

use std::collections::BTreeMap;

use crate::app::cohort::rows::Row;
use crate::app::cohort::rows::Rows;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::assess::decide::Taken;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::records::rulings::About;
use crate::records::rulings::Ruling;
use crate::records::rulings::of_candidate;

/// The assessment's decision about a candidate; none where its records are of no assessment here.
pub fn of(
    candidate: &str,
    rows: &Rows,
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Option<Decided> {
    let own: Vec<_> = rows
        .counting(rulings)
        .filter(|(_, a)| a.candidate == candidate)
        .collect();
    of_own(&own, rulings, files)
}

/// The assessment that is decided on for a candidate; empty for practice.
pub fn sat_by(candidate: &str, rows: &Rows, rulings: &[Ruling]) -> String {
    let own: Vec<_> = rows
        .counting(rulings)
        .filter(|(_, a)| a.candidate == candidate)
        .collect();
    match sat(&own) {
        // Where all of it is voided, it is the same assessment still.
        "" => {
            let theirs = |row: &&Row| {
                row.is.place > 0 && row.attempt().is_some_and(|a| a.candidate == candidate)
            };
            let any = rows.all().find(theirs);
            any.map_or_else(String::new, |row| row.is.assessment.clone())
        }
        own => own.to_owned(),
    }
}

fn sat<'a>(own: &[(&'a Row, &Attempt)]) -> &'a str {
    let first = own.iter().find(|(row, _)| row.is.place > 0);
    first.map_or("", |(row, _)| row.is.assessment.as_str())
}

/// A job that was voided is asked of nobody.
fn of_own(
    own: &[(&Row, &Attempt)],
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Option<Decided> {
    let file = files.iter().find(|file| file.id == sat(own))?;
    let counted = || own.iter().filter(|(row, _)| row.is.assessment == file.id);
    let taken: Vec<Taken> = counted()
        .map(|(_, attempt)| Taken::from(&attempt.result))
        .collect();
    let asked = file.n_jobs();
    // Which jobs were drawn but never opened is not known; a voided one is taken off once at most.
    let last = counted()
        .map(|(row, _)| row.is.place as usize)
        .max()
        .unwrap_or(0);
    let n_void = rulings
        .iter()
        .filter(|ruling| matches!(ruling.about, About::Job(_)) && ruling.holds_in(&file.id))
        .count();
    let missing = last.saturating_sub(taken.len()).min(n_void);
    Some(decide::decide(
        &file.pass,
        &taken,
        asked.saturating_sub(missing),
    ))
}

/// What holds about each person of a cohort, in its order; empty where nothing is decided.
pub fn all(
    cohort: &Cohort,
    rows: &Rows,
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Vec<String> {
    let mut by_person: BTreeMap<&str, Vec<(&Row, &Attempt)>> = BTreeMap::new();
    for (row, attempt) in rows.counting(rulings) {
        by_person
            .entry(&attempt.candidate)
            .or_default()
            .push((row, attempt));
    }
    let said = |candidate: &str| {
        let own = by_person.get(candidate).map_or(&[][..], Vec::as_slice);
        let by_rules = of_own(own, rulings, files).map(|d| word(d.decision).to_owned());
        match of_candidate(rulings, candidate, sat(own)) {
            Some(ruling) => format!("{}, by {}", ruling.holds, ruling.by),
            None => by_rules.unwrap_or_default(),
        }
    };
    cohort
        .people
        .iter()
        .map(|line| said(&line.candidate))
        .collect()
}

/// Such as `passed`.
pub fn word(decision: Decision) -> &'static str {
    match decision {
        Decision::Passed => "passed",
        Decision::Border => "border: more jobs",
        Decision::NotYet => "not yet",
    }
}

/// What a ruling may set in its place.
pub const WORDS: [&str; 3] = ["passed", "border: more jobs", "not yet"];
