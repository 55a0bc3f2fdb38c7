//! Voltage at the plug pins one second after unplugging.

use std::sync::Arc;

use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::discharge::Charge;
use tubwright::plant::harness::discharge::decayed;

use crate::TOLERANCE;
use crate::prepare::Library;
use crate::prepare::Row;
use crate::prepare::faulty;
use crate::prepare::rows;

/// Leaves the filter capacitor with what discharges it: every other capacitor shrinks and
/// every other leak above 1 Mohm grows out of sight.
fn filter_alone(wiring: &mut Wiring) {
    let model = Arc::clone(&wiring.model);
    for (index, e) in model.elements.iter().enumerate() {
        let id = ElementId(index as u32);
        match wiring.element(id).0 {
            ElementKind::Capacitor { farad } if e.name != "CX" => {
                wiring.set_value(id, farad * 1e-9);
            }
            ElementKind::Resistor { ohm } if ohm > 1e6 && !["RCX", "RBX"].contains(&&*e.name) => {
                wiring.set_value(id, ohm * 1e6);
            }
            _ => {}
        }
    }
}

fn volts_at_the_pins(library: &Library, row: &Row) -> f64 {
    let model = &library.models[row.machine()];
    let mut wiring = faulty(library, row, model);
    if row.quantity().contains("transformer pulled") {
        for name in ["P21", "P23"] {
            wiring.open_by_hand(model.element(name).expect("a pin"), true);
        }
    }
    filter_alone(&mut wiring);
    let closed = &model.state(row.get(1)).expect("known state").closed;
    let mut harness = Harness::new(&wiring, &[]).expect("solvable");
    let contacts = harness.contacts(closed);
    let ac = harness.solve_ac(contacts, 1.0, COLD_K).expect("solvable");
    let [a, b] = model.supply.plug_pins;
    let charge = Charge::at_peak(&harness, &ac, a, b);
    wiring.set_plugged(false);
    harness.rewire(&wiring).expect("solvable");
    let meter = row.quantity().contains("(10M meter)").then_some([a, b]);
    let after = decayed(&harness, contacts, &charge, 1.0, meter).expect("solvable");
    after.node_v[a.index()] - after.node_v[b.index()]
}

#[test]
fn every_row_of_voltage_at_the_plug_pins_is_met() {
    let library = Library::load();
    let rows = rows();
    for row in rows
        .iter()
        .filter(|r| r.quantity().starts_with("Vdc at plug pins 1.0 s"))
    {
        let (value, wanted) = (volts_at_the_pins(&library, row), row.value());
        // 2e-9 V is the rounding left of 325 V after a decay by eight powers of ten.
        let is_met = (value - wanted).abs() <= (TOLERANCE * wanted).max(2e-9);
        assert!(is_met, "line {}: {:?}: {value}", row.line, row.fields);
    }
}
