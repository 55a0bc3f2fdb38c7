//! Records from files and folders, read and checked on all cores.

use std::path::Path;

use rayon::prelude::*;

use crate::cli::failure::Failure;
use crate::cli::files;
use crate::records::record::Record;
use crate::records::seal::AssessmentKey;

/// A record's file and what is in it, or why it is none.
pub struct Found {
    /// Its name.
    pub file: String,
    /// What is in it.
    pub record: Result<Box<Record>, String>,
}

/// Names of all record files: as given, folders with what is below them ending in
/// `.json` or `.jsonl`.
///
/// # Errors
/// When a folder cannot be read.
pub fn names(given: &[String]) -> Result<Vec<String>, Failure> {
    let mut names = Vec::new();
    for name in given {
        if Path::new(name).is_dir() {
            let before = names.len();
            walk(Path::new(name), &mut names)?;
            names[before..].sort();
        } else {
            names.push(name.clone());
        }
    }
    if names.is_empty() {
        let remedy = "name a record or a folder with records ending in .json or .jsonl";
        return Err(Failure::usage("FILE", &given.join(" "), remedy));
    }
    Ok(names)
}

fn walk(folder: &Path, names: &mut Vec<String>) -> Result<(), Failure> {
    let failed = |error: std::io::Error| Failure::File {
        file: folder.display().to_string(),
        error,
        remedy: "name a folder that can be read",
    };
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        // A link to a folder may lead back here; only folders themselves are gone into.
        let is_folder = std::fs::symlink_metadata(&path).is_ok_and(|m| m.is_dir());
        if is_folder {
            walk(&path, names)?;
        } else if path
            .extension()
            .is_some_and(|ending| ending == "json" || ending == "jsonl")
        {
            names.push(path.display().to_string());
        }
    }
    Ok(())
}

/// Reads files and does something with each, on all cores, answers in the order of names.
pub fn each<T: Send>(names: &[String], f: impl Fn(Found) -> T + Sync) -> Vec<T> {
    names
        .par_iter()
        .flat_map_iter(|file| found(file).into_iter().map(&f))
        .collect()
}

/// The records of a file: one, or one a line.
fn found(file: &str) -> Vec<Found> {
    let one = |(name, line): (String, String)| {
        let record = Record::read(&name, &line).map_err(|error| error.to_string());
        Found {
            file: name,
            record: record.map(Box::new),
        }
    };
    match texts(file) {
        Ok(texts) => texts.into_iter().map(one).collect(),
        Err(error) => vec![Found {
            file: file.to_owned(),
            record: Err(error.to_string()),
        }],
    }
}

/// The texts of a file's records, one or one a line, each with the name that errors use.
///
/// # Errors
/// When the file cannot be read as text.
pub fn texts(file: &str) -> Result<Vec<(String, String)>, Failure> {
    let text = files::text(file)?;
    let mut lines: Vec<&str> = Record::lines(&text).collect();
    if lines.is_empty() {
        lines.push(&text);
    }
    let is_one = lines.len() == 1;
    let one = |(at, line): (usize, &&str)| {
        let name = if is_one {
            file.to_owned()
        } else {
            format!("{file}, line {}", at + 1)
        };
        (name, (*line).to_owned())
    };
    Ok(lines.iter().enumerate().map(one).collect())
}

/// The assessment's key from its file.
///
/// # Errors
/// When it is no key.
pub fn key(file: Option<&str>) -> Result<Option<AssessmentKey>, Failure> {
    let Some(file) = file else { return Ok(None) };
    let text = files::text(file)?;
    // What stands there is a secret or a slip with one: it is not repeated.
    let key = AssessmentKey::read(&text);
    key.map(Some)
        .map_err(|remedy| Failure::usage("--key", file, remedy))
}

/// A foreign text on a terminal: control characters are shown, not obeyed.
pub fn plain(text: &str) -> String {
    text.chars()
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .collect()
}
