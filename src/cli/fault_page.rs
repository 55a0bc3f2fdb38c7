//! `faults --id`: one fault in full, with what it makes different computed on the spot.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::signature;
use crate::bench::signature::values;
use crate::bench::signature::wash;
use crate::cli::Verdict;
use crate::cli::failure::Failure;
use crate::cli::mode;
use crate::scenario::MachinePack;

/// Lines of a list that are told in plain text; JSON has them all.
const TOLD: usize = 12;

/// Everything about one fault.
///
/// # Errors
/// When the machine has no such fault, or cannot be solved with it.
pub fn of(pack: &MachinePack, id: &str) -> Result<Value, Failure> {
    let model = &pack.model;
    let fault = model.fault(id).ok_or_else(|| {
        let remedy = format!(
            "machine {0} has no such fault; `tubwright faults --machine {0}` lists them",
            model.id
        );
        Failure::usage("--id", id, remedy)
    })?;
    let failed = |error| Failure::Machine {
        what: format!("machine {} with {}", model.id, fault.id),
        error,
    };
    let readings = signature::differences(model, &pack.workshop, fault).map_err(failed)?;
    let sound = wash::sound_wash(model).map_err(failed)?;
    let changed = wash::changed_wash(model, fault, &sound).map_err(failed)?;
    let part = pack.workshop.part(&fault.part);
    Ok(json!({
        "id": fault.id,
        "reference": fault.reference,
        "what": fault.what,
        "part": part.map(|part| &part.name),
        "complaint": fault.complaint,
        "weight": fault.weight,
        "weight_source": fault.weight_source,
        "changes": values::changed_values(model, fault),
        "readings": readings.iter().map(|d| json!({
            "state": d.state,
            "what": d.what,
            "mode": mode::id(d.mode),
            "red": d.red,
            "black": d.black,
            "apart": d.apart,
            "sound": d.sound,
            "faulty": d.faulty,
        })).collect::<Vec<_>>(),
        "wash": changed.iter().map(|c| json!({
            "what": c.what,
            "sound": c.sound,
            "faulty": c.faulty,
        })).collect::<Vec<_>>(),
    }))
}

/// As JSON, or as lines to read.
///
/// # Errors
/// When the output cannot be written.
pub fn write(page: &Value, as_json: bool, out: &mut dyn Write) -> Result<Verdict, Failure> {
    if as_json {
        serde_json::to_writer_pretty(&mut *out, page)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    writeln!(out, "{} {}", text(&page["reference"]), text(&page["what"]))?;
    writeln!(out, "“{}”", text(&page["complaint"]))?;
    for change in page["changes"].as_array().into_iter().flatten() {
        writeln!(out, "  {}", text(change))?;
    }
    let list = |key: &str| page[key].as_array().cloned().unwrap_or_default();
    for line in list("readings").iter().take(TOLD) {
        let (sound, faulty) = (text(&line["sound"]), text(&line["faulty"]));
        let (state, what) = (text(&line["state"]), text(&line["what"]));
        writeln!(out, "{sound:>10} -> {faulty:<10}  {state}: {what}")?;
    }
    for line in list("wash").iter().take(TOLD) {
        let (sound, faulty) = (text(&line["sound"]), text(&line["faulty"]));
        writeln!(
            out,
            "{sound:>10} -> {faulty:<10}  a wash: {}",
            text(&line["what"])
        )?;
    }
    Ok(Verdict::Passed)
}
