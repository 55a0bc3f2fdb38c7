//! Rows of an electrical reference: the format, and each row's own reading.
//!
//! ```text
//! variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display
//! ```
//! A row is met within 0.1 %, or within an absolute floor below which a row only says "nothing":
//! 2 µV, 2 µA, 1e-6 N·m, 1 pF, and 2 nV for what is left of a charge. The slip is found from the
//! torque balance, not taken from the row. Plug-pin rows take the mains filter with what discharges
//! it and nothing else, as the reference does.

use std::io::Write;
use std::sync::Arc;

use crate::cli::Verdict;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::hold::Hold;
use crate::cli::hold::Link;
use crate::cli::library;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::plant::harness::COLD_K;
use crate::plant::harness::Harness;
use crate::plant::harness::Instrument;
use crate::plant::harness::Wiring;
use crate::plant::harness::discharge::Charge;
use crate::plant::harness::discharge::decayed;
use crate::plant::harness::level::level_frequency_hz;

/// Share by which a row may differ.
const TOLERANCE_RATIO: f64 = 1e-3;
/// Time after the plug came out at which plug-pin rows are read, s.
const PLUG_PIN_S: f64 = 1.0;

/// One row of a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Line in the file, from 1.
    pub line: usize,
    fields: Vec<String>,
}

impl Row {
    fn get(&self, index: usize) -> &str {
        self.fields.get(index).map_or("", |field| field.trim())
    }
    /// What is read.
    pub fn quantity(&self) -> &str {
        self.get(3)
    }
}

/// A row beside what this program reads.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// In the row's unit.
    pub value: f64,
    /// The row's own value.
    pub wanted: f64,
    /// Distance over the row's value.
    pub relative: f64,
    /// Near enough, and over range as the row says.
    pub is_met: bool,
}

/// The rows of a file's text; the first line names the columns.
pub fn rows(text: &str) -> Vec<Row> {
    let lines = text
        .lines()
        .enumerate()
        .skip(1)
        .filter(|(_, line)| !line.trim().is_empty());
    lines
        .map(|(index, line)| Row {
            line: index + 1,
            fields: split(line),
        })
        .collect()
}

fn split(line: &str) -> Vec<String> {
    let (mut fields, mut field, mut is_quoted) = (Vec::new(), String::new(), false);
    for c in line.trim_end_matches('\r').chars() {
        match c {
            '"' => is_quoted = !is_quoted,
            ',' if !is_quoted => fields.push(std::mem::take(&mut field)),
            other => field.push(other),
        }
    }
    fields.push(field);
    fields
}

/// Reads every row of a file and says how near it is.
pub fn run(file: &str, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let rows = rows(&files::text(file)?);
    let (mut passed, mut failed) = (0_u32, 0_u32);
    for row in &rows {
        let answer = answer(file, row)?;
        let word = if answer.is_met { "met" } else { "MISSED" };
        let names = [row.get(0), row.get(1), row.get(2), row.quantity()].join(" ");
        writeln!(
            out,
            "{word} line {}: {names}: {} against {}, {:.2e} apart",
            row.line, answer.value, answer.wanted, answer.relative
        )?;
        if answer.is_met {
            passed += 1
        } else {
            failed += 1
        }
    }
    writeln!(out, "{passed} passed, {failed} failed")?;
    Ok(if failed == 0 {
        Verdict::Passed
    } else {
        Verdict::Failed
    })
}

/// What this program reads for a row.
///
/// # Errors
/// When the row names what a machine does not have, or asks for an unknown quantity.
pub fn answer(file: &str, row: &Row) -> Result<Answer, Failure> {
    let wrong = |column: &str, found: &str, remedy: &str| {
        Failure::usage(
            &format!("{file} line {}, {column}", row.line),
            found,
            remedy,
        )
    };
    let wanted: f64 = row
        .get(4)
        .parse()
        .map_err(|_| wrong("value", row.get(4), "write a number"))?;
    let pack = library::machine(row.get(0))?;
    let hold = hold(row, &pack, &wrong)?;
    if row.quantity().starts_with("Vdc at plug pins") {
        let value = volts_at_the_pins(&hold, row.quantity())?;
        return Ok(judged(value, wanted, 2e-9, true));
    }
    let (value, floor, is_over) = reading(&hold, row, &pack.model.id, &wrong)?;
    let shows_as_said = is_over == (row.get(9) == "OL");
    Ok(judged(value, wanted, floor, shows_as_said))
}

fn judged(value: f64, wanted: f64, floor: f64, shows_as_said: bool) -> Answer {
    let apart = (value - wanted).abs();
    let is_near = apart <= (TOLERANCE_RATIO * wanted.abs()).max(floor);
    let relative = if wanted.abs() > 0.0 {
        apart / wanted.abs()
    } else {
        apart
    };
    Answer {
        value,
        wanted,
        relative,
        is_met: is_near && shows_as_said,
    }
}

fn hold(
    row: &Row,
    pack: &crate::scenario::MachinePack,
    wrong: &dyn Fn(&str, &str, &str) -> Failure,
) -> Result<Hold, Failure> {
    let model = Arc::new(pack.model.wiring.clone());
    let mut hold = Hold::sound(&model, row.get(1));
    if model.state(row.get(1)).is_none() {
        return Err(wrong("state", row.get(1), "name a state of this machine"));
    }
    hold.is_lid_open = row.get(6) == "open";
    if !matches!(row.get(2), "none" | "") {
        let active = library::fault(pack, row.get(2))?;
        let changes = pack
            .model
            .fault(&active.id)
            .map(|d| d.wiring.clone())
            .unwrap_or_default();
        hold.faults.push((changes, active.severity_ratio));
    }
    let mut words = row.get(7).split_whitespace();
    let help = "write `open ELEMENT` or `NAME OHM ohm A-B`";
    while let Some(word) = words.next() {
        let next = words
            .next()
            .ok_or_else(|| wrong("setup", row.get(7), help))?;
        if word == "open" {
            model
                .element(next)
                .ok_or_else(|| wrong("setup", next, "name an element"))?;
            hold.open.push(next.to_owned());
            continue;
        }
        let ohm: f64 = next.parse().map_err(|_| wrong("setup", next, help))?;
        let ends = match (
            words.next(),
            words.next().and_then(|ends| ends.split_once('-')),
        ) {
            (Some("ohm"), Some((a, b))) if model.node(a).is_some() && model.node(b).is_some() => {
                [a.to_owned(), b.to_owned()]
            }
            _ => return Err(wrong("setup", row.get(7), help)),
        };
        hold.links.push(Link {
            name: word.to_owned(),
            ohm,
            ends,
        });
    }
    Ok(hold)
}

/// Value in the row's unit, its floor, and whether the instrument shows over-range.
fn reading(
    hold: &Hold,
    row: &Row,
    machine: &str,
    wrong: &dyn Fn(&str, &str, &str) -> Failure,
) -> Result<(f64, f64, bool), Failure> {
    let mut held = hold.solve_as(machine)?;
    let quantity = row.quantity();
    let solve = |error| Failure::Solve {
        what: format!("{machine} line {}", row.line),
        error,
    };
    if let Some(name) = quantity.strip_prefix("A through ") {
        let current_a = held
            .current_a(name)
            .ok_or_else(|| wrong("quantity", name, "name an element"))?;
        return Ok((current_a, 2e-6, false));
    }
    if quantity == "torque avg" {
        return Ok((held.state.ac.flow.torque_n_m, 1e-6, false));
    }
    let words: Vec<&str> = quantity.split_whitespace().collect();
    if quantity.starts_with("level sensor frequency at") {
        let mm = words.get(4).and_then(|w| w.parse::<f64>().ok());
        let mm = mm.ok_or_else(|| wrong("quantity", quantity, "say the water column in mm"))?;
        let closed = held.closed;
        let hz = level_frequency_hz(&mut held.harness, closed, mm / 1000.0).map_err(solve)?;
        return Ok((hz, 0.0, false));
    }
    let (instrument, floor, scale) = match words.first().copied().unwrap_or_default() {
        "Vac(10M||100p)" => (Instrument::AcVolts, 2e-6, 1.0),
        "Vac(loZ" => (Instrument::AcVoltsLowImpedance, 2e-6, 1.0),
        "Vdc(10M)" => (Instrument::DcVolts, 2e-6, 1.0),
        "ohm" if quantity.contains("at 500 Vdc") => (Instrument::Insulation, 0.0, 1.0),
        "ohm" => (Instrument::Ohms, 0.0, 1.0),
        "uF" => (Instrument::Capacitance, 1e-6, 1e6),
        _ => {
            return Err(wrong(
                "quantity",
                quantity,
                "use a quantity of the shipped rows",
            ));
        }
    };
    let ends = words.last().and_then(|ends| ends.split_once('-'));
    let pair = ends.and_then(|(a, b)| held.pair(a, b));
    let pair = pair.ok_or_else(|| wrong("quantity", quantity, "end with two nodes as A-B"))?;
    let found = held.read(instrument, pair).map_err(solve)?;
    Ok((found.value_si * scale, floor, found.is_over_range))
}

/// The filter capacitor with what discharges it: every other capacitor shrinks and every other leak
/// above 1 MΩ grows out of sight.
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

fn volts_at_the_pins(hold: &Hold, quantity: &str) -> Result<f64, Failure> {
    let solve = |error| Failure::Solve {
        what: "plug pins".to_owned(),
        error,
    };
    let mut wiring = hold.wiring();
    wiring.set_plugged(true);
    if quantity.contains("transformer pulled") {
        for id in ["P21", "P23"]
            .iter()
            .filter_map(|name| hold.model.element(name))
        {
            wiring.open_by_hand(id, true);
        }
    }
    filter_alone(&mut wiring);
    let mut harness = Harness::new(&wiring, &[]).map_err(solve)?;
    let contacts = harness.contacts(&hold.closed());
    let ac = harness.solve_ac(contacts, 1.0, COLD_K).map_err(solve)?;
    let [a, b] = hold.model.supply.plug_pins;
    let charge = Charge::at_peak(&harness, &ac, a, b);
    wiring.set_plugged(false);
    harness.rewire(&wiring).map_err(solve)?;
    let meter = quantity.contains("(10M meter)").then_some([a, b]);
    let after = decayed(&harness, contacts, &charge, PLUG_PIN_S, meter).map_err(solve)?;
    Ok(after.node_v[a.index()] - after.node_v[b.index()])
}
