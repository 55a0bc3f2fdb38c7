//! Every reference row of the decision theory and the score, worked out and compared.
//!
//! A row names a case, a quantity, its value and how near one must come; the case is an instance of
//! some kind in `instances.json`, and quantities are read as words with names of that instance in
//! them, so that other instances of the same kinds run too. Folder: `TUBWRIGHT_ROWS`, by default
//! `tests/fixtures/rows`. Each row names its outside source in its last column: enumeration, a linear
//! program, general Bayesian-network libraries, quadrature.

#[path = "expert_rows/attacks.rs"]
mod attacks;
#[allow(dead_code, reason = "the test of measurement uses the rest")]
#[path = "measurement_rows/cohort.rs"]
mod cohort;
#[path = "expert_rows/decision.rs"]
mod decision;
#[allow(dead_code, reason = "the test of measurement uses the rest")]
#[path = "measurement_rows/files.rs"]
mod files;
#[allow(dead_code, reason = "the test of measurement uses the rest")]
#[path = "measurement_rows/instance.rs"]
mod instance;
#[path = "expert_rows/measured.rs"]
mod measured;
#[path = "expert_rows/orders.rs"]
mod orders;
#[allow(dead_code, reason = "the test of measurement uses the rest")]
#[path = "measurement_rows/quantity.rs"]
mod quantity;
#[path = "expert_rows/readings.rs"]
mod readings;
#[path = "expert_rows/rows.rs"]
mod rows;
#[path = "expert_rows/runs.rs"]
mod runs;
#[path = "validation/mod.rs"]
mod validation;

use rows::Answer;
use rows::Case;
use rows::Row;
use validation::Check;

/// The answer to a row; an error says what is not understood.
fn answer(case: &Case, row: &Row) -> Result<Answer, String> {
    let q = row.quantity.as_str();
    match case.kind() {
        "pc" | "obs" | "cluster" => orders::answer(case, q, &row.value),
        "oneshot" => orders::one_shot(case, q),
        "dp" | "config_dp" | "double_dp" => decision::answer(case, q),
        "meter" => readings::meter(case, q),
        "intermittent" => readings::intermittent(case, q),
        "multi" => readings::several(case, q),
        "ambig" => readings::ambiguity(case, q),
        "score_runs" => runs::answer(case, q),
        "cohort" | "pcm" => measured::scores(case, q),
        "bkt" | "eap" | "equate" | "mh" | "fsrs6" => measured::instance(case, q),
        other => Err(format!("kind '{other}' is not known")),
    }
}

/// A row that is a number, for the validation page.
fn check(row: &Row, got: &Answer) -> Option<Check> {
    let Answer::Number(computed) = got else {
        return None;
    };
    Some(Check {
        domain: "diagnosis and score".to_owned(),
        source: row.source.clone(),
        condition: format!("{}, {}", row.case, row.quantity),
        expected: row.value.parse().ok()?,
        computed: *computed,
        unit: String::new(),
        allowed: row.tolerance?,
    })
}

#[test]
fn every_expert_row_is_met() {
    let (mut wrong, mut checks) = (Vec::new(), Vec::new());
    let mut n_rows = 0;
    for set in rows::sets() {
        for row in &set.rows {
            n_rows += 1;
            let got = set.case(&row.case).and_then(|case| answer(&case, row));
            checks.extend(got.as_ref().ok().and_then(|got| check(row, got)));
            match got {
                Ok(got) if row.is_met_by(&got) => {}
                Ok(got) => wrong.push(format!("{row:?}: got {got:?}")),
                Err(why) => wrong.push(format!("{row:?}: {why}")),
            }
        }
    }
    validation::leave("expert", &checks);
    println!("{n_rows} rows");
    assert!(n_rows > 0);
    assert!(
        wrong.is_empty(),
        "{} of {n_rows}:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

#[test]
fn a_value_off_by_more_than_its_tolerance_is_missed() {
    let row = Row {
        case: "P1".to_owned(),
        quantity: "best_ECR".to_owned(),
        value: "136.500000".to_owned(),
        tolerance: Some(1e-6),
        source: "enumeration".to_owned(),
    };
    assert!(row.is_met_by(&Answer::Number(136.5)));
    assert!(!row.is_met_by(&Answer::Number(136.500_002)));
    assert!(!row.is_met_by(&Answer::Number(f64::NAN)));
}
