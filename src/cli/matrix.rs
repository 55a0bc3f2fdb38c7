//! `matrix`: the table of discrimination of a machine, faults against readings.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::cli::Verdict;
use crate::cli::args::MatrixArgs;
use crate::cli::failure::Failure;
use crate::cli::library;
use crate::machine::MachineError;
use crate::score::Matrix;
use crate::score::Row;

/// Does it.
pub fn run(args: &MatrixArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    let failed = |error: MachineError| Failure::Machine {
        what: format!("machine {}", pack.model.id),
        error,
    };
    let matrix = Matrix::new(&pack.model, &pack.workshop).map_err(failed)?;
    let rows = matrix.faults().iter().map(|fault| matrix.row(fault));
    let rows: Vec<Row> = rows.collect::<Result<_, _>>().map_err(failed)?;
    if args.csv {
        write!(out, "{}", matrix.csv(&rows))?;
    } else if args.json {
        serde_json::to_writer_pretty(&mut *out, &as_json(&matrix, &rows))?;
        writeln!(out)?;
    } else {
        tell(&matrix, &rows, out)?;
    }
    Ok(Verdict::Passed)
}

/// For each fault what would be noticed, and which other faults nothing tells it from.
fn tell(matrix: &Matrix, rows: &[Row], out: &mut dyn Write) -> Result<(), Failure> {
    for row in rows {
        writeln!(out, "{}: {}", row.fault, row.what)?;
        let seen = matrix.columns().iter().zip(&row.cells);
        for (column, cell) in seen.filter(|(_, cell)| cell.differs) {
            writeln!(out, "  {} ({}): {}", column.what, column.how, cell.shown)?;
        }
        let alike = alike(matrix, row, rows);
        if !alike.is_empty() {
            writeln!(out, "  reads the same as: {}", alike.join(", "))?;
        }
    }
    Ok(())
}

fn alike<'r>(matrix: &Matrix, row: &Row, rows: &'r [Row]) -> Vec<&'r str> {
    rows.iter()
        .filter(|other| other.fault != row.fault && matrix.separating(row, other).is_empty())
        .map(|other| other.fault.as_str())
        .collect()
}

fn as_json(matrix: &Matrix, rows: &[Row]) -> Value {
    let columns = matrix
        .columns()
        .iter()
        .map(|c| json!({ "what": c.what, "how": c.how }));
    let line = |row: &Row| {
        let cells = row.cells.iter();
        let cells =
            cells.map(|c| json!({ "shown": c.shown, "value": c.value, "differs": c.differs }));
        json!({
            "fault": row.fault,
            "what": row.what,
            "cells": cells.collect::<Vec<_>>(),
            "reads_the_same_as": alike(matrix, row, rows),
        })
    };
    json!({
        "columns": columns.collect::<Vec<_>>(),
        "sound": line(matrix.sound()),
        "faults": rows.iter().map(line).collect::<Vec<_>>(),
    })
}
