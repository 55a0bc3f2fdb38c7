//! `check`: files read strictly and checked whole; a job is also put on its machine.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::job::Job;
use crate::cli::Verdict;
use crate::cli::args::CheckArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::scenario;
use crate::scenario::FileError;

/// Does it.
pub fn run(args: &CheckArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let mut verdict = Verdict::Passed;
    let mut answers = Vec::new();
    for file in &args.files {
        let text = files::text(file)?;
        let problems = match check(file, &text) {
            Ok(()) => Vec::new(),
            Err(Failure::Input(error)) => error
                .problems
                .iter()
                .map(std::string::ToString::to_string)
                .collect(),
            Err(other) => vec![other.to_string()],
        };
        if !problems.is_empty() {
            verdict = Verdict::Failed;
        }
        if !args.json {
            for problem in &problems {
                super::tell(problem);
            }
            let word = if problems.is_empty() {
                "sound"
            } else {
                "not sound"
            };
            writeln!(out, "{file}: {word}")?;
        }
        answers.push(json!({ "file": file, "problems": problems }));
    }
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &answers)?;
        writeln!(out)?;
    }
    Ok(verdict)
}

/// What kind of file it is stands in its `format` field.
fn check(file: &str, text: &str) -> Result<(), Failure> {
    let format = serde_json::from_str::<Value>(text)
        .ok()
        .and_then(|value| value["format"].as_str().map(str::to_owned))
        .unwrap_or_default();
    if format.starts_with("tubwright-machine") {
        scenario::machine_from_text(file, text)?;
    } else if format.starts_with("tubwright-faults") {
        faults(file, text)?;
    } else {
        // A job, or a file whose errors the job's reader tells best.
        let id = std::path::Path::new(file)
            .file_stem()
            .unwrap_or_default()
            .to_string_lossy();
        let scenario = scenario::job_from_text(file, &id, text)?;
        let job = Job::new(std::sync::Arc::new(scenario), 1).map_err(|error| Failure::Machine {
            what: file.to_owned(),
            error,
        })?;
        if let Some(trouble) = job.machine().trouble() {
            return Err(Failure::Machine {
                what: file.to_owned(),
                error: trouble.clone(),
            });
        }
    }
    Ok(())
}

fn faults(file: &str, text: &str) -> Result<(), FileError> {
    let catalogue = scenario::read_catalogue(file, text)?;
    for machine in scenario::machine_files()? {
        scenario::check_catalogue_for(file, &catalogue, machine)?;
    }
    Ok(())
}
