//! Saving what the review shows: tables for a spreadsheet, everything for another program, rulings to
//! go on with.

use crate::app::cohort::decision;
use crate::app::cohort::erasing;
use crate::app::cohort::looks::Looks;
use crate::app::cohort::rows::Row;
use crate::app::hand_over;
use crate::language::in_english;
use crate::language::said;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::tables;
use crate::records::rulings::of_candidate;
use crate::records::table::Cell;
use crate::say;
use crate::text;

/// What is said when no file is saved.
const REFUSED: &str = text!("The browser did not let the page save a file.");
/// What is known of people besides their numbers: the decision by the rules, the ruling in its place,
/// and the marks over all jobs asked, those never opened as 0.
const DECIDED: [&str; 9] = [
    "name",
    "decision",
    "ruling",
    "ruled_by",
    "ruled_on",
    "ruled_why",
    "marks_of_all",
    "jobs_opened",
    "jobs_asked",
];

/// Saves a table or everything; says how it went.
pub fn save(looks: &Looks<'_>, what: &str) -> String {
    // Rulings are there even where every job is voided and nothing counts.
    if what == "rulings" {
        let text = serde_json::to_string(&**looks.rulings).unwrap_or_default();
        return written("rulings.json", "application/json", &text);
    }
    if what == "left" {
        return left(&looks.left);
    }
    let Some(cohort) = looks.cohort else {
        return say!("There is nothing to save yet.").to_owned();
    };
    let (name, media, text) = match what {
        "people" => {
            let all = in_english(|| people(looks, cohort));
            ("people.csv", "text/csv", all)
        }
        "jobs" => ("jobs.csv", "text/csv", tables::jobs(cohort)),
        "safety" => ("safety.csv", "text/csv", tables::safety(cohort)),
        "confused" => ("confused.csv", "text/csv", tables::confused(cohort)),
        _ => {
            let all = in_english(|| everything(looks, cohort));
            ("cohort.json", "application/json", all)
        }
    };
    written(name, media, &text)
}

fn people(looks: &Looks<'_>, cohort: &Cohort) -> String {
    let (rows, rulings) = (looks.rows, &**looks.rulings);
    let first = rows.first(rulings);
    let cells = |candidate: &str| {
        let is_theirs = |row: &&Row| row.attempt().is_some_and(|a| a.candidate == candidate);
        let own: Vec<&Row> = rows.all().filter(is_theirs).collect();
        let is_sat = |row: &&&Row| row.is.place > 0 && row.is.difference.is_none();
        let sat = own.iter().find(is_sat);
        let assessment = sat.map_or("", |row| row.is.assessment.as_str());
        let file = looks.files.iter().find(|file| file.id == assessment);
        let asked = sat
            .zip(file)
            .map(|(row, file)| decision::asked(row, rulings, file));
        let decided = decision::of(candidate, rows, rulings, looks.files);
        let ruling = of_candidate(rulings, candidate, assessment);
        let opened = first.iter().filter(|(_, a)| a.candidate == candidate);
        let text = |text: Option<&str>| Cell::from(text.unwrap_or_default());
        vec![
            text(own.iter().find_map(|row| row.is.name.as_deref())),
            text(decided.as_ref().map(|d| decision::word(d.decision))),
            text(ruling.map(|ruling| ruling.holds.as_str())),
            text(ruling.map(|ruling| ruling.by.as_str())),
            text(ruling.map(|ruling| ruling.day.as_str())),
            text(ruling.map(|ruling| ruling.why.as_str())),
            Cell::Number(decided.as_ref().map(|d| d.marks), 1),
            Cell::Count(opened.count()),
            asked.map_or(Cell::from(""), Cell::Count),
        ]
    };
    let more = tables::More {
        names: &DECIDED,
        cells: &cells,
        others: &rows.voided(rulings),
    };
    tables::people_and(cohort, &more)
}

fn everything(looks: &Looks<'_>, cohort: &Cohort) -> String {
    let (rows, rulings) = (looks.rows, &**looks.rulings);
    let decisions = decision::all(cohort, rows, rulings, looks.files);
    let refused = rows.refused().into_iter();
    let refused: Vec<[String; 2]> = refused.map(|one| [one.who, one.why]).collect();
    let parts = [
        ("cohort", serde_json::to_string(cohort)),
        ("decisions", serde_json::to_string(&decisions)),
        ("rulings", serde_json::to_string(rulings)),
        ("refused", serde_json::to_string(&refused)),
        ("broken_rows", serde_json::to_string(&rows.broken())),
    ];
    let parts = parts.map(|(name, text)| format!("\"{name}\":{}", text.unwrap_or_default()));
    format!("{{{}}}\n", parts.join(","))
}

/// What is left after erasing: one file, or all of them in an archive.
fn left(files: &[(&str, &str)]) -> String {
    const NAME: &str = "left_after_erasing.zip";
    match files {
        [] => say!("Nothing was erased, so there is nothing to save.").to_owned(),
        [(name, text)] => written(
            name.rsplit('/').next().unwrap_or(name),
            "application/json",
            text,
        ),
        files => match erasing::packed(files.iter().copied()) {
            Err(error) => say!(
                "Not saved: {why}. Erase and save fewer at a time.",
                why = error
            ),
            Ok(bytes) => match hand_over::save_bytes(NAME, "application/zip", &bytes) {
                Ok(()) => say!("{file} is saved.", file = NAME),
                Err(_) => said(REFUSED).to_owned(),
            },
        },
    }
}

fn written(name: &str, media: &str, text: &str) -> String {
    match hand_over::save(name, media, text) {
        Ok(()) => say!("{file} is saved.", file = name),
        Err(_) => said(REFUSED).to_owned(),
    }
}
