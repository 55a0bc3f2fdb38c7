//! `access`: what is in the way of what, with tools, minutes and refit checks.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::workshop::Harm;
use crate::bench::workshop::Step;
use crate::bench::workshop::Way;
use crate::cli::Verdict;
use crate::cli::args::MachineArgs;
use crate::cli::failure::Failure;
use crate::cli::library;

/// Does it.
pub fn run(args: &MachineArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    let steps = &pack.workshop.steps;
    if args.json {
        let list: Vec<Value> = steps.iter().map(as_json).collect();
        serde_json::to_writer_pretty(&mut *out, &list)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    for step in steps {
        write_step(step, out)?;
    }
    Ok(Verdict::Passed)
}

fn as_json(step: &Step) -> Value {
    json!({
        "id": step.id,
        "name": step.name,
        "verb": step.verb,
        "refit_verb": step.refit_verb,
        "needs": step.needs,
        "tools": step.tools,
        "fasteners": step.fasteners,
        "n_fasteners": step.n_fasteners,
        "minutes_off": step.off_s / 60.0,
        "minutes_on": step.on_s / 60.0,
        "caution": step.caution,
        "refit_check": step.refit_check,
        "left_wrong": step.mistakes.iter().map(|mistake| &mistake.what).collect::<Vec<_>>(),
        "needs_help": step.needs_help,
        "needs_support": step.needs_support,
        "lets_water_out": step.lets_water_out,
        "needs_dry_tub": step.needs_dry_tub,
        "harms": step.harms.iter().map(harm).collect::<Vec<_>>(),
        "opens_live_parts": step.opens_live_parts,
    })
}

fn harm(harm: &Harm) -> Value {
    json!({
        "way": harm.way.map(|way| match way {
            Way::Off => "off",
            Way::On => "on",
        }),
        "on": harm.on,
        "dead": harm.dead,
        "dry": harm.dry,
        "what": harm.what,
    })
}

fn write_step(step: &Step, out: &mut dyn Write) -> Result<(), Failure> {
    writeln!(
        out,
        "{}: {} {}, {:.1} min; {} {:.1} min",
        step.id,
        step.verb,
        step.name,
        step.off_s / 60.0,
        step.refit_verb,
        step.on_s / 60.0,
    )?;
    let lines = [
        ("after", step.needs.join(", ")),
        ("tools", step.tools.join(", ")),
        ("held by", step.fasteners.clone()),
        ("caution", step.caution.clone()),
        ("check", step.refit_check.clone()),
    ];
    for (what, text) in lines.iter().filter(|(_, text)| !text.is_empty()) {
        writeln!(out, "  {what}: {text}")?;
    }
    Ok(())
}
