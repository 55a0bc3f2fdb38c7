//! Rows, the instances they belong to, and where both are found.

use std::fs;
use std::path::Path;
use std::path::PathBuf;

use serde_json::Value;

/// One row of the file.
#[derive(Clone, Debug)]
pub struct Row {
    pub case: String,
    pub quantity: String,
    pub value: String,
    /// Largest distance; none where the text must be the same.
    pub tolerance: Option<f64>,
    /// The program the value came from.
    pub source: String,
}

/// What was worked out for a row.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    Number(f64),
    Text(String),
}

impl Row {
    pub fn is_met_by(&self, answer: &Answer) -> bool {
        match (answer, self.tolerance) {
            (Answer::Number(got), Some(tolerance)) => {
                let value: f64 = self.value.parse().unwrap_or(f64::NAN);
                (got - value).abs() <= tolerance + 1e-9
            }
            (Answer::Text(got), None) => *got == self.value,
            _ => false,
        }
    }
}

/// Rows with their instances.
pub struct Set {
    pub rows: Vec<Row>,
    instances: Value,
    folder: PathBuf,
}

/// One instance with its name, and all the others it may refer to.
pub struct Case<'a> {
    pub name: &'a str,
    pub value: &'a Value,
    pub all: &'a Value,
    /// Folder of the rows; data files are beside them or in `measurement` next to it.
    pub folder: &'a Path,
}

impl Set {
    /// The instance of a row: by its name, or `RUN_x` as run `x` of the runs.
    pub fn case<'a>(&'a self, name: &'a str) -> Result<Case<'a>, String> {
        let found = self.instances.get(name).map(|value| (name, value));
        let of_runs = || {
            let (runs, run) = name.split_once('_')?;
            self.instances.get(runs).map(|value| (run, value))
        };
        let (name, value) = found.or_else(of_runs).ok_or("no such instance")?;
        Ok(Case {
            name,
            value,
            all: &self.instances,
            folder: &self.folder,
        })
    }
}

impl<'a> Case<'a> {
    pub fn kind(&self) -> &'a str {
        self.value["kind"].as_str().unwrap_or("")
    }

    pub fn numbers(&self, field: &str) -> Vec<f64> {
        numbers(&self.value[field])
    }

    pub fn names(&self, field: &str) -> Vec<String> {
        names(&self.value[field])
    }
}

pub fn number(value: &Value) -> f64 {
    value
        .as_f64()
        .unwrap_or_else(|| panic!("{value} is no number"))
}

pub fn numbers(value: &Value) -> Vec<f64> {
    let list = value
        .as_array()
        .unwrap_or_else(|| panic!("{value} is no list"));
    list.iter().map(number).collect()
}

pub fn names(value: &Value) -> Vec<String> {
    let list = value
        .as_array()
        .unwrap_or_else(|| panic!("{value} is no list"));
    list.iter()
        .filter_map(Value::as_str)
        .map(str::to_owned)
        .collect()
}

pub fn index_of(names: &[String], name: &str) -> Result<usize, String> {
    names
        .iter()
        .position(|n| n == name)
        .ok_or_else(|| format!("no '{name}' among {names:?}"))
}

/// All sets of rows in the folder: rows as `refs_expert.csv` or `refs.csv`, instances beside them.
pub fn sets() -> Vec<Set> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let folder = std::env::var_os("TUBWRIGHT_ROWS")
        .map_or_else(|| root.join("tests/fixtures/rows"), PathBuf::from);
    let folders = [folder.clone(), folder.join("expert")];
    let mut sets = Vec::new();
    for folder in folders {
        let Ok(text) = fs::read_to_string(folder.join("instances.json")) else {
            continue;
        };
        let instances = serde_json::from_str(&text).expect("instances are JSON");
        let rows: Vec<Row> = ["refs_expert.csv", "expert_refs.csv", "refs.csv"]
            .iter()
            .filter_map(|name| fs::read_to_string(folder.join(name)).ok())
            .flat_map(|text| read(&text))
            .collect();
        sets.push(Set {
            rows,
            instances,
            folder,
        });
    }
    assert!(
        !sets.is_empty(),
        "no instances.json in {}",
        folder.display()
    );
    sets
}

fn read(text: &str) -> Vec<Row> {
    let lines = text.lines().skip(1).filter(|l| !l.trim().is_empty());
    lines
        .map(|line| {
            let fields = fields(line);
            Row {
                case: fields[0].clone(),
                quantity: fields[1].clone(),
                value: fields[2].clone(),
                tolerance: fields[3].parse().ok(),
                source: fields.get(4).cloned().unwrap_or_default(),
            }
        })
        .collect()
}

fn fields(line: &str) -> Vec<String> {
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

/// `name(inside)`: the inside.
pub fn inside<'a>(quantity: &'a str, name: &str) -> Option<&'a str> {
    quantity
        .strip_prefix(name)?
        .strip_prefix('(')?
        .strip_suffix(')')
}
