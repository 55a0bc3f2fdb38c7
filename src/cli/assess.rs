//! `assess`: one candidate's jobs in an assessment, with the start code for the slip.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::cli::Verdict;
use crate::cli::args::results::AssessArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::records;
use crate::cli::verify::library;
use crate::records::sitting::Assessment;

/// Does it.
pub fn run(args: &AssessArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let library = library(&args.job)?;
    let text = files::text(&args.assessment)?;
    let assessment = Assessment::read(&args.assessment, &text, &library)?;
    let key = records::key(args.key.as_deref())?;
    let drawn = assessment.draw(&library, &args.candidate, &args.release);
    let code = key.map(|key| {
        key.start_code(&assessment.file.id, &args.candidate)
            .to_string()
    });
    if args.json {
        let jobs: Vec<Value> = drawn
            .iter()
            .map(|one| json!({"job": one.job, "seed": one.seed, "file": one.file}))
            .collect();
        let all = json!({
            "assessment": assessment.file.id,
            "hash": assessment.hash,
            "candidate": args.candidate,
            "release": args.release,
            "start_code": code,
            "jobs": jobs,
        });
        serde_json::to_writer_pretty(&mut *out, &all)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    writeln!(
        out,
        "{}: {} jobs for {}, {} minutes",
        assessment.file.title,
        drawn.len(),
        args.candidate,
        assessment.file.time_limit_min
    )?;
    if let Some(code) = code {
        writeln!(out, "start code {code}")?;
    }
    for (index, one) in drawn.iter().enumerate() {
        let machine = &one.file.machine;
        writeln!(
            out,
            "{}. {} (machine {machine}, level {}, seed {})",
            index + 1,
            one.job,
            one.file.level,
            one.seed
        )?;
    }
    Ok(Verdict::Passed)
}
