//! What is decided about a person: by the assessment's rules on what counts, or by a ruling.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::app::cohort::rows::Row;
use crate::app::cohort::rows::Rows;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::assess::decide::Taken;
use crate::language::worded;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::records::rulings::Ruling;
use crate::records::rulings::is_void;
use crate::records::rulings::of_candidate;
use crate::say;
use crate::text;

/// The assessment's decision about a candidate; none where its records are of no assessment here.
pub fn of(
    candidate: &str,
    rows: &Rows,
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Option<Decided> {
    let own: Vec<_> = accepted(rows)
        .filter(|(_, a)| a.candidate == candidate)
        .collect();
    of_own(&own, rulings, files)
}

/// The assessment that is decided on for a candidate; empty for practice.
pub fn sat_by(candidate: &str, rows: &Rows) -> String {
    let own: Vec<_> = accepted(rows)
        .filter(|(_, a)| a.candidate == candidate)
        .collect();
    sat(&own).to_owned()
}

fn sat<'a>(own: &[(&'a Row, &Attempt)]) -> &'a str {
    let first = own.iter().find(|(row, _)| row.is.place > 0);
    first.map_or("", |(row, _)| row.is.assessment.as_str())
}

/// Records that are accepted, of voided jobs too: they show which assessment was sat.
fn accepted(rows: &Rows) -> impl Iterator<Item = (&Row, &Attempt)> {
    let all = rows.all().filter(|row| row.is.difference.is_none());
    all.filter_map(|row| Some((row, row.attempt()?)))
}

/// A job that was voided is asked of nobody; where all are, nothing is decided. Of several records of one
/// job the first counts, so that a file that came twice adds nothing.
fn of_own(
    own: &[(&Row, &Attempt)],
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Option<Decided> {
    let (first, _) = own.iter().find(|(row, _)| row.is.place > 0)?;
    let file = files.iter().find(|file| file.id == first.is.assessment)?;
    let n_asked = asked(first, rulings, file);
    let mut seen = BTreeSet::new();
    let counted = own
        .iter()
        .filter(|(row, a)| row.is.assessment == file.id && !is_void(rulings, &a.job, &file.id));
    let taken: Vec<Taken> = counted
        .filter(|(_, attempt)| seen.insert(attempt.job.as_str()))
        .map(|(_, attempt)| Taken::from(&attempt.result))
        .collect();
    (n_asked > 0).then(|| decide::decide(&file.pass, &taken, n_asked))
}

/// How many jobs are asked of a record's candidate: those that were drawn for them and are not voided,
/// opened or not.
pub fn asked(row: &Row, rulings: &[Ruling], file: &AssessmentFile) -> usize {
    let drawn = &row.is.drawn;
    let n_void = drawn
        .iter()
        .filter(|job| is_void(rulings, job, &file.id))
        .count();
    file.n_jobs().saturating_sub(n_void)
}

/// What holds about each person of a cohort, in its order; empty where nothing is decided.
pub fn all(
    cohort: &Cohort,
    rows: &Rows,
    rulings: &[Ruling],
    files: &[AssessmentFile],
) -> Vec<String> {
    let mut by_person: BTreeMap<&str, Vec<(&Row, &Attempt)>> = BTreeMap::new();
    for (row, attempt) in accepted(rows) {
        by_person
            .entry(&attempt.candidate)
            .or_default()
            .push((row, attempt));
    }
    let said = |candidate: &str| {
        let own = by_person.get(candidate).map_or(&[][..], Vec::as_slice);
        let by_rules = of_own(own, rulings, files).map(|d| word(d.decision).to_owned());
        match of_candidate(rulings, candidate, sat(own)) {
            Some(ruling) => say!(
                "{decision}, by {who}",
                decision = worded(&ruling.holds),
                who = ruling.by
            ),
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
        Decision::Passed => say!("passed"),
        Decision::Border => say!("border: more jobs"),
        Decision::NotYet => say!("not yet"),
    }
}

/// What a ruling may set in its place, as it is kept.
pub const WORDS: [&str; 3] = [
    text!("passed"),
    text!("border: more jobs"),
    text!("not yet"),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::sitting;
    use crate::records::result::JobResult;
    use crate::records::rulings::About;
    use crate::records::seal::Hash;
    use crate::records::sift::Sifted;

    const DRAWN: [&str; 4] = ["j1", "j2", "j3", "j4"];

    fn file() -> AssessmentFile {
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let read = sitting::assessment("assessment", text);
        read.expect("ships").file
    }

    /// A record of a job put right with full marks.
    fn record(candidate: &str, place: u32) -> Sifted {
        let job = DRAWN[place as usize - 1];
        Sifted {
            attempt: Some(Attempt {
                candidate: candidate.to_owned(),
                job: job.to_owned(),
                skills: Vec::new(),
                result: JobResult {
                    fixed: true,
                    safe: true,
                    total: 100.0,
                    ..JobResult::nothing()
                },
                truth: Vec::new(),
            }),
            name: None,
            assessment: file().id,
            release: "r".to_owned(),
            place,
            drawn: DRAWN.map(str::to_owned).to_vec(),
            engine: String::new(),
            started: String::new(),
            n_away: 0,
            pauses: Vec::new(),
            difference: None,
            told: None,
            seal: None,
            links: [Hash([0; 32]); 3],
        }
    }

    fn void(job: &str) -> Ruling {
        let about = About::Job(job.to_owned());
        Ruling::new(about, "void", "N. Judge", "2031-03-04", "wrong tap").expect("stands")
    }

    fn marks(candidate: &str, rows: &Rows, rulings: &[Ruling]) -> Option<f64> {
        let mut file = file();
        // Only the marks matter here.
        file.pass.parts.clear();
        of(candidate, rows, rulings, &[file]).map(|decided| decided.marks)
    }

    #[test]
    fn a_voided_job_is_asked_of_nobody_whether_it_was_opened_or_not() {
        let mut rows = Rows::default();
        // One opened all four, one never opened the second, one opened the second alone.
        rows.put(0, (1..=4).map(|place| record("c-1", place)).collect(), true);
        rows.put(
            1,
            [1, 3, 4].map(|place| record("c-2", place)).to_vec(),
            true,
        );
        rows.put(2, vec![record("c-3", 2)], true);
        let near = |is: Option<f64>, wanted: f64| is.is_some_and(|is| (is - wanted).abs() < 1e-9);
        assert!(near(marks("c-1", &rows, &[]), 100.0));
        assert!(near(marks("c-2", &rows, &[]), 75.0));
        assert!(near(marks("c-3", &rows, &[]), 25.0));
        let voided = [void("j2")];
        assert!(near(marks("c-1", &rows, &voided), 100.0));
        assert!(near(marks("c-2", &rows, &voided), 100.0), "never opened it");
        assert!(near(marks("c-3", &rows, &voided), 0.0), "of three others");
        let row = rows.all().next().expect("there");
        assert_eq!(asked(row, &voided, &file()), 3);
        // A job that was not drawn for them changes nothing; with all voided nothing is decided.
        assert!(near(marks("c-2", &rows, &[void("j9")]), 75.0));
        assert_eq!(marks("c-1", &rows, &DRAWN.map(void)), None);
    }

    #[test]
    fn a_job_counts_once_however_often_its_record_comes() {
        let mut rows = Rows::default();
        for source in 0..3 {
            rows.put(source, vec![record("c-1", 1)], true);
        }
        let quarter = marks("c-1", &rows, &[]).expect("decided");
        assert!((quarter - 25.0).abs() < 1e-9, "{quarter}");
    }

    #[test]
    fn the_rules_of_the_pass_ask_for_a_share_of_the_jobs_that_are_left() {
        let mut rows = Rows::default();
        rows.put(
            0,
            [1, 3, 4].map(|place| record("c-2", place)).to_vec(),
            true,
        );
        let mut file = file();
        file.pass.parts.clear();
        file.pass.fixed_share = 0.9;
        let decided = |rulings: &[Ruling]| {
            let found = of("c-2", &rows, rulings, std::slice::from_ref(&file));
            found.expect("decided").decision
        };
        assert_eq!(decided(&[]), Decision::NotYet);
        assert_eq!(decided(&[void("j2")]), Decision::Passed);
    }
}
