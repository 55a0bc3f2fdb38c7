//! The folder of rows: files of rows, files of scores, instances.

use std::collections::BTreeMap;
use std::path::Path;
use std::path::PathBuf;

/// One row.
#[derive(Debug)]
pub struct Row {
    pub case: String,
    pub quantity: String,
    pub value: f64,
    pub tolerance: f64,
    pub source: String,
    pub published: Option<f64>,
}

const HEADER: &str = "case,quantity,value,tolerance,source";

fn folder() -> PathBuf {
    let named = std::env::var("TUBWRIGHT_ROWS");
    PathBuf::from(named.unwrap_or_else(|_| "tests/fixtures/rows".to_owned()))
}

fn all_files(at: &Path, found: &mut Vec<PathBuf>) {
    let entries = std::fs::read_dir(at).unwrap_or_else(|e| panic!("{}: {e}", at.display()));
    let mut paths: Vec<PathBuf> = entries.map(|e| e.expect("readable").path()).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() {
            all_files(&path, found);
        } else {
            found.push(path);
        }
    }
}

fn texts(is_wanted: impl Fn(&str) -> bool) -> Vec<String> {
    let mut paths = Vec::new();
    all_files(&folder(), &mut paths);
    paths
        .iter()
        .filter(|p| is_wanted(&p.file_name().unwrap_or_default().to_string_lossy()))
        .map(|p| std::fs::read_to_string(p).unwrap_or_else(|e| panic!("{}: {e}", p.display())))
        .collect()
}

/// All rows whose value is a number; words are for the expert's test.
pub fn rows() -> Vec<Row> {
    texts(|name| name.ends_with(".csv"))
        .iter()
        .filter(|text| text.starts_with(HEADER))
        .flat_map(|text| text.lines().skip(1).filter_map(row).collect::<Vec<Row>>())
        .collect()
}

fn row(line: &str) -> Option<Row> {
    let fields = fields(line);
    let [case, quantity, value, tolerance, source, rest @ ..] = &fields[..] else {
        return None;
    };
    Some(Row {
        case: case.clone(),
        quantity: quantity.clone(),
        value: value.parse().ok()?,
        tolerance: tolerance.parse().ok()?,
        source: source.clone(),
        published: rest.first().and_then(|p| p.parse().ok()),
    })
}

/// Fields of a line; quotes round one that holds commas.
pub fn fields(line: &str) -> Vec<String> {
    let mut fields = vec![String::new()];
    let mut is_quoted = false;
    for c in line.trim_end().chars() {
        match c {
            '"' => is_quoted = !is_quoted,
            ',' if !is_quoted => fields.push(String::new()),
            _ => fields.last_mut().expect("never empty").push(c),
        }
    }
    fields
}

/// The text of a case's file of scores.
pub fn scores(case: &str) -> Option<String> {
    texts(|name| name == format!("{case}.csv")).pop()
}

/// All instances by name.
pub fn instances() -> BTreeMap<String, serde_json::Value> {
    texts(|name| name.starts_with("instances") && name.ends_with(".json"))
        .iter()
        .flat_map(|text| {
            serde_json::from_str::<BTreeMap<String, serde_json::Value>>(text).expect("an object")
        })
        .collect()
}
