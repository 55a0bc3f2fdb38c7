//! Every row of the electrical reference, solved: within 0.1 %, or a stated absolute floor.
//!
//! Rows name machine, state, fault, quantity, set-up and value. They were computed with
//! ngspice (an independent solver with a different motor model). Rows are looked for in the
//! folder `TUBWRIGHT_ROWS` names, by default `tests/fixtures/rows`. They are read and judged by
//! the same code as `tubwright probe --rows`; tolerance and floors stand there.

#[path = "network/kirchhoff.rs"]
mod kirchhoff;
#[path = "validation/mod.rs"]
mod validation;

use std::fs;
use std::path::PathBuf;

use tubwright::cli::rows;
use tubwright::cli::rows::Answer;
use tubwright::cli::rows::Machines;
use tubwright::cli::rows::Row;
use tubwright::cli::rows::TOLERANCE_RATIO;
use validation::Check;

/// All rows there are, each with its file.
pub fn all_rows() -> Vec<(String, Row)> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let folder = std::env::var_os("TUBWRIGHT_ROWS")
        .map_or_else(|| root.join("tests/fixtures/rows"), PathBuf::from);
    let names = [
        "refs.csv",
        "network/refs.csv",
        "refs_network.csv",
        "network_refs.csv",
    ];
    let mut all = Vec::new();
    for path in names.iter().map(|n| folder.join(n)).filter(|p| p.exists()) {
        let file = path.display().to_string();
        let text = fs::read_to_string(&path).expect("rows can be read");
        let read = rows::read(&file, &text).unwrap_or_else(|error| panic!("{error}"));
        all.extend(read.into_iter().map(|row| (file.clone(), row)));
    }
    assert!(!all.is_empty(), "no network rows in {}", folder.display());
    all
}

#[test]
fn every_network_row_is_met() {
    let machines = Machines::shipped().expect("sound files");
    let (mut failures, mut checks) = (Vec::new(), Vec::new());
    let all = all_rows();
    for (file, row) in &all {
        let hold = machines
            .hold(file, row)
            .unwrap_or_else(|error| panic!("{error}"));
        let answer = Answer::of(file, row, &hold).unwrap_or_else(|error| panic!("{error}"));
        if !answer.is_met {
            failures.push(format!("{file} line {}: {row:?}: {answer:?}", row.line));
        }
        if !row.is_over_range {
            checks.push(check(row, &answer));
        }
    }
    validation::leave("network", &checks);
    println!("{} rows, {} failing", all.len(), failures.len());
    assert!(
        failures.is_empty(),
        "{} of {} rows fail:\n{}",
        failures.len(),
        all.len(),
        failures.join("\n")
    );
}

fn check(row: &Row, answer: &Answer) -> Check {
    let floor = row.quantity.floor();
    Check {
        domain: "electric network".to_owned(),
        source: "ngspice, with a two-axis motor model of its own".to_owned(),
        condition: format!(
            "{}, {}, fault {}: {}",
            row.machine, row.state, row.fault, row.asked
        ),
        expected: row.value,
        computed: answer.value,
        unit: row.unit.clone(),
        allowed: (TOLERANCE_RATIO * row.value.abs()).max(floor),
    }
}

#[test]
fn a_value_one_percent_off_is_missed() {
    let machines = Machines::shipped().expect("sound files");
    let (file, mut row) = all_rows().swap_remove(0);
    let hold = machines
        .hold(&file, &row)
        .unwrap_or_else(|error| panic!("{error}"));
    row.value *= 1.01;
    let answer = Answer::of(&file, &row, &hold).unwrap_or_else(|error| panic!("{error}"));
    assert!(!answer.is_met, "{answer:?}");
}
