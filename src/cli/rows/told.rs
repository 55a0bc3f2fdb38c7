//! `probe --rows`: every row of a file beside its own reading, one a line or as JSON.

use std::io::Write;

use serde::Serialize;

use crate::cli::Verdict;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::rows::Answer;
use crate::cli::rows::Machines;
use crate::cli::rows::Row;
use crate::cli::rows::read;
use crate::scenario::FileError;

/// A row and its answer as JSON.
#[derive(Serialize)]
struct Told<'a> {
    line: usize,
    machine: &'a str,
    state: &'a str,
    fault: &'a str,
    quantity: &'a str,
    unit: &'a str,
    wanted: f64,
    value: f64,
    over_range: bool,
    difference: f64,
    met: bool,
}

/// Reads every row of a file and says how near it is.
pub fn run(file: &str, as_json: bool, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let rows = read(file, &files::text(file)?)?;
    let answers = answers(file, &rows)?;
    let n_missed = answers.iter().filter(|answer| !answer.is_met).count();
    let pairs = rows.iter().zip(&answers);
    if as_json {
        let list: Vec<Told<'_>> = pairs.map(|(row, answer)| told(row, answer)).collect();
        serde_json::to_writer_pretty(&mut *out, &list)?;
        writeln!(out)?;
    } else {
        for (row, answer) in pairs {
            write_line(row, answer, out)?;
        }
        writeln!(
            out,
            "{} passed, {n_missed} failed",
            answers.len() - n_missed
        )?;
    }
    Ok(if n_missed == 0 {
        Verdict::Passed
    } else {
        Verdict::Failed
    })
}

/// All answers, or everything that is wrong in any row.
fn answers(file: &str, rows: &[Row]) -> Result<Vec<Answer>, Failure> {
    let machines = Machines::shipped()?;
    let (mut answers, mut problems) = (Vec::new(), Vec::new());
    for row in rows {
        let answer = machines
            .hold(file, row)
            .and_then(|hold| Answer::of(file, row, &hold));
        match answer {
            Ok(answer) => answers.push(answer),
            Err(Failure::Input(error)) => problems.extend(error.problems),
            Err(other) => return Err(other),
        }
    }
    if problems.is_empty() {
        Ok(answers)
    } else {
        Err(Failure::Input(FileError { problems }))
    }
}

fn told<'a>(row: &'a Row, answer: &Answer) -> Told<'a> {
    Told {
        line: row.line,
        machine: &row.machine,
        state: &row.state,
        fault: &row.fault,
        quantity: &row.asked,
        unit: &row.unit,
        wanted: row.value,
        value: answer.value,
        over_range: answer.is_over_range,
        difference: answer.difference_ratio,
        met: answer.is_met,
    }
}

fn write_line(row: &Row, answer: &Answer, out: &mut dyn Write) -> Result<(), Failure> {
    let over = |is_over| if is_over { " OL" } else { "" };
    writeln!(
        out,
        "{} line {}: {} {} {} {}: {:.9e} {}{}, wanted {:.9e}{}, difference {:+.2e}",
        if answer.is_met { "met" } else { "MISSED" },
        row.line,
        row.machine,
        row.state,
        row.fault,
        row.asked,
        answer.value,
        row.unit,
        over(answer.is_over_range),
        row.value,
        over(row.is_over_range),
        answer.difference_ratio,
    )?;
    Ok(())
}
