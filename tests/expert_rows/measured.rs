//! Rows of measurement that stand in the same file: worked out as the test of measurement does.

use std::fs;

use crate::cohort::Cohort;
use crate::instance as of_measurement;
use crate::rows::Answer;
use crate::rows::Case;

pub fn instance(case: &Case, quantity: &str) -> Result<Answer, String> {
    told(of_measurement::answer(case.value, quantity), quantity)
}

/// A file of scores beside the rows, or in the folder of measurement next to theirs.
pub fn scores(case: &Case, quantity: &str) -> Result<Answer, String> {
    let file = case.value["file"].as_str().ok_or("no file")?;
    let places = ["", "../measurement", "measurement", "../expert"];
    let texts = places
        .iter()
        .map(|place| case.folder.join(place).join(file));
    let text = texts
        .filter_map(|path| fs::read_to_string(path).ok())
        .next()
        .ok_or(format!("{file} is not beside the rows"))?;
    told(Cohort::read(&text).answer(quantity), quantity)
}

fn told(answer: Option<f64>, quantity: &str) -> Result<Answer, String> {
    answer
        .map(Answer::Number)
        .ok_or(format!("quantity '{quantity}' is not known"))
}
