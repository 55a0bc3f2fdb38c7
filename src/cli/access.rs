//! `access`: what is in the way of what, with tools, minutes and refit checks.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::cli::Verdict;
use crate::cli::args::MachineArgs;
use crate::cli::failure::Failure;
use crate::cli::library;
use crate::cli::list;

/// Does it.
pub fn run(args: &MachineArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    let steps: Vec<Value> = pack
        .workshop
        .steps
        .iter()
        .map(|step| {
            json!({
                "id": step.id,
                "name": step.name,
                "needs": step.needs,
                "tools": step.tools,
                "fasteners": step.fasteners,
                "minutes_off": step.off_s / 60.0,
                "minutes_on": step.on_s / 60.0,
                "caution": step.caution,
                "refit_check": step.refit_check,
            })
        })
        .collect();
    list::write(
        &steps,
        &["id", "name", "fasteners", "refit_check"],
        args.json,
        out,
    )
}
