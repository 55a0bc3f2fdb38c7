//! Saving what the review shows: tables for a spreadsheet, everything for another program, rulings to
//! go on with.

use crate::app::cohort::decision;
use crate::app::cohort::erasing;
use crate::app::cohort::looks::Looks;
use crate::app::hand_over;
use crate::language::in_english;
use crate::language::said;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::tables;
use crate::say;
use crate::text;

/// What is said when no file is saved.
const REFUSED: &str = text!("The browser did not let the page save a file.");

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
        "people" => ("people.csv", "text/csv", tables::people(cohort)),
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
