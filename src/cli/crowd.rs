//! `crowd`: how simulated apprentices fare with a job, on all cores.

use std::io::Write;

use rayon::prelude::*;
use serde_json::json;

use crate::cli::Verdict;
use crate::cli::args::jobs::CrowdArgs;
use crate::cli::expert::failed;
use crate::cli::failure::Failure;
use crate::cli::library;
use crate::expert::crowd::Kind;
use crate::score::Crowd;
use crate::score::Fared;
use crate::score::Run;
use crate::score::fared;

/// Does `crowd`. As JSON: `job`, `runs`, and `kinds`, a list with one entry a kind: `kind`, `runs`,
/// `success_ratio` with half the width of its 95 % interval `success_margin`, means `cost`,
/// `material` (money units), `minutes`, `safety_findings`, the ninth decile `minutes_p90`, and
/// `unsafe_ratio`, `risky_ratio`, `careless_ratio`, the shares that broke a critical, a major, a minor
/// rule.
pub fn run(args: &CrowdArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let scenario = library::job(&args.job, args.machine.as_deref())?;
    let fails = |error| failed(&args.job, error);
    let crowd = Crowd::new(&scenario, &mut |_, _| ()).map_err(fails)?;
    let kinds = if args.kind.is_empty() {
        Kind::ALL.to_vec()
    } else {
        args.kind.iter().map(|k| (*k).into()).collect()
    };
    let mut all: Vec<Fared> = Vec::new();
    for kind in kinds {
        let seeds = args.seed..args.seed.saturating_add(args.runs.into());
        let runs: Result<Vec<Run>, _> = seeds
            .into_par_iter()
            .map(|seed| crowd.run(kind, seed))
            .collect();
        all.push(fared(kind, &runs.map_err(fails)?));
    }
    if args.json {
        let answer = json!({ "job": scenario.id, "runs": args.runs, "kinds": all });
        serde_json::to_writer_pretty(&mut *out, &answer)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    writeln!(
        out,
        "{:<13} {:>8} {:>8} {:>8} {:>8} {:>9} {:>8}",
        "kind", "right", "cost", "parts", "minutes", "findings", "unsafe"
    )?;
    for one in all {
        let kind = format!("{:?}", one.kind);
        writeln!(
            out,
            "{kind:<13} {:>6.0} % {:>8.0} {:>8.0} {:>8.0} {:>9.2} {:>6.0} %",
            100.0 * one.success_ratio,
            one.cost,
            one.material,
            one.minutes,
            one.safety_findings,
            100.0 * one.unsafe_ratio
        )?;
    }
    Ok(Verdict::Passed)
}
