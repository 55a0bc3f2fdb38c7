//! Every row of the electrical reference, solved: within 0.1 %, or a stated absolute floor.
//!
//! Rows name machine, state, fault, quantity, set-up and value. They were computed with
//! ngspice (an independent solver with a different motor model). Rows are looked for in the
//! folder `TUBWRIGHT_ROWS` names, by default `tests/fixtures/rows`.
//!
//! Floors below which a row only says "nothing": 2 uV and 2 uA (the rows' own solver stops
//! there), 1e-6 N m (torque of a standstill by symmetry), 1 pF.
//! Plug-pin rows take the filter capacitor with what discharges it and nothing else, so the
//! test does too (`filter_alone`); the whole network decays in `network_decay.rs`.

#[path = "network/kirchhoff.rs"]
mod kirchhoff;
#[path = "network/pins.rs"]
mod pins;
#[path = "network/prepare.rs"]
mod prepare;

use std::sync::Arc;

use tubwright::plant::harness::Instrument;
use tubwright::plant::harness::Reading;
use tubwright::plant::harness::instrument::read;
use tubwright::plant::harness::level::level_frequency_hz;

use crate::prepare::Library;
use crate::prepare::Row;
use crate::prepare::pair;
use crate::prepare::prepare;
use crate::prepare::rows;

/// Share by which a row may differ.
const TOLERANCE: f64 = 1e-3;

/// The row's quantity in its unit, and the floor below which it only says "nothing".
fn compute(library: &Library, row: &Row) -> (Reading, f64) {
    let mut bench = prepare(library, row);
    let model = Arc::clone(&bench.harness.wiring().model);
    let plain = |value| Reading {
        mode: Instrument::AcVolts,
        value,
        is_over_range: false,
        is_live: false,
    };
    let quantity = row.quantity();
    let words: Vec<&str> = quantity.split_whitespace().collect();
    if let Some(name) = quantity.strip_prefix("A through ") {
        let element = if ["BODY", "LINK"].contains(&name) {
            bench.body.expect("an added link")
        } else {
            model.element(name).expect("known element")
        };
        return (plain(bench.state.ac.network.current_a(element).abs()), 2e-6);
    }
    if quantity == "torque avg" {
        return (plain(bench.state.ac.flow.torque_n_m), 1e-6);
    }
    if quantity.starts_with("level sensor frequency at") {
        let column_m = words[4].parse::<f64>().expect("millimetres") / 1000.0;
        let f = level_frequency_hz(&mut bench.harness, bench.closed, column_m).expect("solvable");
        return (plain(f), 0.0);
    }
    let (instrument, floor, scale) = match words[0] {
        "Vac(10M||100p)" => (Instrument::AcVolts, 2e-6, 1.0),
        "Vac(loZ" => (Instrument::AcVoltsLowImpedance, 2e-6, 1.0),
        "Vdc(10M)" => (Instrument::DcVolts, 2e-6, 1.0),
        "ohm" if quantity.contains("at 500 Vdc") => (Instrument::Insulation, 0.0, 1.0),
        "ohm" => (Instrument::Ohms, 0.0, 1.0),
        "uF" => (Instrument::Capacitance, 1e-6, 1e6),
        other => panic!("unknown quantity {other}"),
    };
    let [a, b] = pair(&model, words[words.len() - 1]);
    let reading = read(&mut bench.harness, &bench.state, instrument, a, b).expect("solvable");
    (
        Reading {
            value: reading.value * scale,
            ..reading
        },
        floor,
    )
}

#[test]
fn every_network_row_is_met() {
    let library = Library::load();
    let mut failures = Vec::new();
    let mut count = 0;
    let rows = rows();
    for row in rows
        .iter()
        .filter(|r| !r.quantity().starts_with("Vdc at plug pins"))
    {
        count += 1;
        let (reading, floor) = compute(&library, row);
        let (value, wanted) = (reading.value, row.value());
        let is_met = (value - wanted).abs() <= (TOLERANCE * wanted.abs()).max(floor);
        let shows = if reading.is_over_range { "OL" } else { "" };
        if !is_met || shows != row.display() {
            failures.push(format!(
                "line {}: {:?}: {value} {shows}",
                row.line, row.fields
            ));
        }
    }
    println!("{count} rows, {} failing", failures.len());
    assert!(
        failures.is_empty(),
        "{} of {count} rows fail:\n{}",
        failures.len(),
        failures.join("\n")
    );
}
