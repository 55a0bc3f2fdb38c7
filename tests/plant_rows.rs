//! Every reference row of the plant, worked out by the plant and compared.
//!
//! Rows are prose made with another motor and sensor than machine P's, so they run on a test
//! machine with those constants. The conditions are read as numbers with units, so that rows
//! of the same kind under other conditions run too. Folder: `TUBWRIGHT_ROWS`, by default
//! `tests/fixtures/rows`. Each row names its outside source in its last column.

#[path = "plant_rows/controller.rs"]
mod controller;
#[path = "plant_rows/cycle.rs"]
mod cycle;
#[path = "plant_rows/drive.rs"]
mod drive;
#[path = "plant_rows/heat.rs"]
mod heat;
#[path = "plant_rows/machine.rs"]
mod machine;
#[path = "plant_rows/motor.rs"]
mod motor;
#[path = "plant_rows/prose.rs"]
mod prose;
#[path = "plant_rows/signatures.rs"]
mod signatures;
#[path = "plant_rows/sound.rs"]
mod sound;
#[path = "plant_rows/swing.rs"]
mod swing;
#[path = "validation/mod.rs"]
mod validation;
#[path = "plant_rows/water.rs"]
mod water;

use prose::Prose;
use validation::Check;

/// One row of the file.
#[derive(Debug, Clone)]
struct Row {
    quantity: String,
    conditions: String,
    value: f64,
    unit: String,
    source: String,
}

fn rows() -> Vec<Row> {
    let folder =
        std::env::var("TUBWRIGHT_ROWS").unwrap_or_else(|_| "tests/fixtures/rows".to_owned());
    let path = std::path::Path::new(&folder).join("refs_plant.csv");
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    text.lines()
        .skip(1)
        .filter(|line| !line.trim().is_empty())
        .map(row)
        .collect()
}

fn row(line: &str) -> Row {
    let mut fields = vec![String::new()];
    let mut is_quoted = false;
    for c in line.chars() {
        match c {
            '"' => is_quoted = !is_quoted,
            ',' if !is_quoted => fields.push(String::new()),
            _ => fields.last_mut().expect("never empty").push(c),
        }
    }
    let [quantity, conditions, value, unit, source] = fields.try_into().expect("five fields");
    Row {
        quantity,
        conditions,
        value: value.parse().expect("a number"),
        unit,
        source,
    }
}

/// Relative tolerance of a kind of row, with its reason.
fn tolerance(quantity: &str, source: &str) -> f64 {
    match quantity {
        // 20 ms steps on a reversing load: plant data sheet, section 9.
        "pulsator speed" | "swirl speed" | "pulsator load torque" => 1e-2,
        // A whole cycle with its own tick order against event location.
        "cycle time" | "water used" | "moisture" => 4e-3,
        // The trip falls on a whole tick of 0.1 s and the heat is stepped by Euler.
        q if q.starts_with("time to") => 3e-3,
        // A published fit of a property against IF97: see each formula.
        "sound speed in water" | "water viscosity" => 1e-3,
        q if q.starts_with("peak rim") || q == "speed at that peak" => 5e-3,
        "amplitude with dry friction" => 5e-3,
        _ if source.starts_with("solve_ivp") || source.starts_with("quadrature") => 5e-3,
        _ => 1e-3,
    }
}

/// The answer, and the part of the plant that gave it.
fn answer(row: &Row, conditions: &str) -> Option<(&'static str, f64)> {
    let c = Prose::new(conditions);
    let whole = Prose::new(&format!("{}, {}", row.quantity, conditions));
    let q = row.quantity.as_str();
    let of = |part, found: Option<f64>| found.map(|value| (part, value));
    of("water and air", water::answer(q, &c))
        .or_else(|| of("drive and motor", drive::answer(q, &c)))
        .or_else(|| of("suspension", swing::answer(q, &c)))
        .or_else(|| of("heat", heat::answer(q, &c)))
        .or_else(|| of("sound", sound::answer(q, &c, &whole)))
        .or_else(|| of("whole cycle", cycle::answer(q, &c)))
}

#[test]
fn the_plant_answers_every_reference_row() {
    let (mut wrong, mut checks) = (Vec::new(), Vec::new());
    let mut said = String::new();
    let mut n_rows = 0;
    for row in rows() {
        // "same" continues the row before.
        let conditions = if row.conditions.contains("same") || row.conditions.is_empty() {
            format!("{said}, {}", row.conditions)
        } else {
            row.conditions.clone()
        };
        said.clone_from(&conditions);
        n_rows += 1;
        let allowed = tolerance(&row.quantity, &row.source) * row.value.abs() + 1e-6;
        let found = answer(&row, &conditions);
        checks.extend(found.map(|(domain, computed)| Check {
            domain: domain.to_owned(),
            source: row.source.clone(),
            condition: format!("{}: {}", row.quantity, row.conditions),
            expected: row.value,
            computed,
            unit: row.unit.clone(),
            allowed,
        }));
        match found.map(|(_, computed)| computed) {
            Some(got) if (got - row.value).abs() <= allowed => {}
            Some(got) => wrong.push(format!(
                "{} [{}]: {got} instead of {} {} ({})",
                row.quantity, row.conditions, row.value, row.unit, row.source
            )),
            None => wrong.push(format!(
                "{} [{}]: not understood",
                row.quantity, row.conditions
            )),
        }
    }
    validation::leave("plant", &checks);
    assert!(n_rows > 0);
    assert!(
        wrong.is_empty(),
        "{} of {n_rows}:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}
