//! `play`: a log played on a job; what it read, broke, cost and earned, and the state it ended in.

pub mod log; // the log as a file
mod told; // what was played, as text

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::job::Outcome;
use crate::bench::notebook::Tick;
use crate::bench::safety;
use crate::cli::Verdict;
use crate::cli::args::jobs::PlayArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::library;
use crate::machine::MachineError;
use crate::records::check;
use crate::records::library::Library;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::score;
use crate::score::Debrief;
use crate::score::Report;

/// One act of the log and what came of it.
struct Step {
    /// When it began: its tick, or later where the act before was still being done.
    began: Tick,
    entry: Entry,
    outcome: Outcome,
}

/// A log that was played.
struct Played {
    job: Job,
    steps: Vec<Step>,
    report: Report,
    debrief: Debrief,
}

/// Does it.
pub fn run(args: &PlayArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let scenario = library::job(&args.job, args.machine.as_deref())?;
    let log = log::read(&args.log, &files::text(&args.log)?)?;
    let failed = |error: MachineError| Failure::Machine {
        what: format!("job {}", args.job),
        error,
    };
    let (job, outcomes) = Job::replay(scenario, args.seed, &log).map_err(failed)?;
    if let Some(trouble) = job.machine().trouble() {
        return Err(failed(trouble.clone()));
    }
    let played = Played {
        steps: steps(&job, log, outcomes),
        report: score::assess(&job).map_err(failed)?,
        debrief: score::debrief(&job).map_err(failed)?,
        job,
    };
    if let (Some(file), Some(candidate)) = (&args.record, &args.candidate) {
        record(&played, file, candidate)?;
    }
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &as_json(&played))?;
        writeln!(out)?;
    } else {
        told::write(&played, out)?;
    }
    Ok(Verdict::Passed)
}

/// Writes a practice record: it can be checked by replay, and carries no seal.
fn record(played: &Played, file: &str, candidate: &str) -> Result<(), Failure> {
    let job = &played.job;
    let task = Library::shipped()?.task(&job.scenario().id).cloned();
    let remedy = "a record is of a job that ships: others have no place in a library yet";
    let task = task.ok_or_else(|| Failure::usage("JOB", &job.scenario().id, remedy))?;
    let root = Body::root(candidate, None);
    let body = check::body_of(job, &task, candidate, root).map_err(|error| Failure::Machine {
        what: format!("job {}", job.scenario().id),
        error,
    })?;
    files::write(file, &Record::close(body, None, None)?.write()?)
}

/// The job's own log has the ticks at which acts began, refused ones left out.
fn steps(job: &Job, log: Vec<Entry>, outcomes: Vec<Outcome>) -> Vec<Step> {
    let mut done = job.log().iter();
    let mut now = 0;
    log.into_iter()
        .zip(outcomes)
        .map(|(entry, outcome)| {
            let began = match &outcome.refusal {
                Some(_) => entry.tick.max(now),
                None => done.next().map_or(entry.tick, |logged| logged.tick),
            };
            now = began + outcome.ticks;
            Step {
                began,
                entry,
                outcome,
            }
        })
        .collect()
}

fn as_json(played: &Played) -> Value {
    let job = &played.job;
    let steps: Vec<Value> = played
        .steps
        .iter()
        .map(|step| {
            json!({
                "act": step.entry,
                "began_tick": step.began,
                "ticks": step.outcome.ticks,
                "refusal": step.outcome.refusal,
                "events": step.outcome.events,
                "notes": step.outcome.notes,
            })
        })
        .collect();
    let findings: Vec<Value> = job
        .safety()
        .iter()
        .map(|finding| {
            json!({
                "rule": finding.rule,
                "severity": format!("{:?}", finding.severity).to_lowercase(),
                "title": safety::rule(finding.rule).map(|rule| rule.title),
                "step": finding.step,
                "tick": finding.tick,
            })
        })
        .collect();
    json!({
        "job": job.scenario().id,
        "seed": job.seed(),
        "steps": steps,
        "notebook": job.notebook(),
        "safety": findings,
        "cost": job.cost(),
        "minutes": job.tick() as f64 / 600.0,
        "report": played.report,
        "debrief": played.debrief,
        "state_hash": job.machine().state_hash().to_string(),
    })
}
