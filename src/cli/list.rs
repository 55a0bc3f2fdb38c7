//! `faults`, `rules`, `instruments`: what there is.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::action::MeterMode;
use crate::bench::gauge::Gauge;
use crate::bench::safety;
use crate::bench::words;
use crate::cli::Verdict;
use crate::cli::args::FaultsArgs;
use crate::cli::args::ListArgs;
use crate::cli::failure::Failure;
use crate::cli::fault_page;
use crate::cli::library;
use crate::cli::mode;

/// Faults of a machine, or one of them in full.
pub fn faults(args: &FaultsArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    if let Some(id) = &args.id {
        let page = fault_page::of(&pack, id)?;
        return fault_page::write(&page, args.json, out);
    }
    let list: Vec<Value> = pack
        .model
        .faults
        .iter()
        .map(|f| {
            json!({
                "id": f.id,
                "reference": f.reference,
                "part": f.part,
                "what": f.what,
                "class": format!("{:?}", f.class).to_lowercase(),
                "weight": f.weight,
                "weight_source": f.weight_source,
                "complaint": f.complaint,
            })
        })
        .collect();
    write(&list, &["reference", "id", "what"], args.json, out)
}

/// Safety rules.
pub fn rules(args: &ListArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let list: Vec<Value> = safety::rules()
        .map(|rule| {
            json!({
                "id": rule.id,
                "severity": format!("{:?}", rule.severity).to_lowercase(),
                "text": rule.title,
                "why": rule.why,
                "source": rule.source,
                "right_way": rule.right_way,
            })
        })
        .collect();
    write(&list, &["severity", "id", "text"], args.json, out)
}

/// Instruments of the bench.
pub fn instruments(args: &ListArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let in_circuit = MeterMode::ALL.iter().map(|mode| {
        json!({
            "mode": mode::id(*mode),
            "act": "meter",
            "name": words::mode_name(*mode),
            "unit": words::si_unit(*mode),
            "clamp": mode.is_clamp(),
            "needs_dead_circuit": mode.needs_dead_circuit(),
        })
    });
    let at_places = Gauge::ALL.iter().map(|gauge| {
        let about = gauge.about();
        json!({
            "mode": about.id,
            "act": "gauge",
            "name": about.name,
            "unit": about.quantity.unit(),
            "quantity": about.quantity.id(),
            "scale": about.unit,
            "resolution": about.resolution * about.unit_si,
            "scatter": about.scatter * about.unit_si,
            "scatter_share": about.scatter_ratio,
            "seconds": about.seconds,
            "fitting_seconds": about.fitting_s,
            "places": about.places,
            "caution": about.caution,
            "clamp": false,
            "needs_dead_circuit": false,
        })
    });
    let pen = json!({
        "mode": "voltage_pen",
        "act": "voltage_pen",
        "name": "contactless tester",
        "unit": "",
        "clamp": false,
        "needs_dead_circuit": false,
        "caution": "dark is no proof of dead: blind behind earthed metal and to direct voltage",
    });
    let list: Vec<Value> = in_circuit.chain([pen]).chain(at_places).collect();
    write(&list, &["mode", "unit", "name"], args.json, out)
}

/// The whole list as JSON, or the named fields of each entry on a line.
pub fn write(
    list: &[Value],
    fields: &[&str],
    as_json: bool,
    out: &mut dyn Write,
) -> Result<Verdict, Failure> {
    if as_json {
        serde_json::to_writer_pretty(&mut *out, list)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    for entry in list {
        let words: Vec<&str> = fields
            .iter()
            .map(|field| entry[*field].as_str().unwrap_or_default())
            .collect();
        writeln!(out, "{}", words.join("  "))?;
    }
    Ok(Verdict::Passed)
}
