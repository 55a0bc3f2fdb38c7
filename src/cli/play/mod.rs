//! `play`: a log played on a job; what it read, broke, cost and earned, and the state it ended in.

pub mod log; // the log as a file
mod told; // what was played, as text

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::safety;
use crate::bench::working::Outcome;
use crate::cli::Verdict;
use crate::cli::args::jobs::PlayArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::library;
use crate::expert;
use crate::expert::Belief;
use crate::expert::Reckoning;
use crate::expert::Seen;
use crate::machine::MachineError;
use crate::records::check;
use crate::records::library::Library;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::records::result::JudgedResult;
use crate::score;
use crate::score::Debrief;
use crate::score::Report;

/// A cause less likely than this is not named.
const WORTH_NAMING: f64 = 0.001;

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
    /// None when it was to be quick.
    judged: Option<Judged>,
}

/// What each decision was worth, and what was likely meanwhile.
struct Judged {
    report: Report,
    reckoning: Reckoning,
    belief: Belief,
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
    let report = score::assess(&job).map_err(failed)?;
    let judged = if args.quick {
        None
    } else {
        Some(judged(&job, &report).map_err(failed)?)
    };
    let played = Played {
        steps: steps(&job, log, outcomes),
        report,
        judged,
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

fn judged(job: &Job, report: &Report) -> Result<Judged, MachineError> {
    let seen = Seen::of(job)?;
    let reckoning = Reckoning::of(&seen)?;
    Ok(Judged {
        report: report.judged(job, &reckoning),
        belief: Belief::of(&seen)?,
        reckoning,
    })
}

/// Writes a practice record: it can be checked by replay, and carries no seal.
fn record(played: &Played, file: &str, candidate: &str) -> Result<(), Failure> {
    let job = &played.job;
    let task = Library::shipped()?.task(&job.scenario().id).cloned();
    let remedy = "a record is of a job that ships: others have no place in a library yet";
    let task = task.ok_or_else(|| Failure::usage("JOB", &job.scenario().id, remedy))?;
    let root = Body::root(candidate, None);
    let body = check::body_of(job, &task, candidate, root);
    let mut body = body.map_err(|error| Failure::Machine {
        what: format!("job {}", job.scenario().id),
        error,
    })?;
    body.judged = played
        .judged
        .as_ref()
        .map(|judged| JudgedResult::of(job, &played.report, &judged.reckoning));
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
        "report": played.judged.as_ref().map_or(&played.report, |judged| &judged.report),
        "decisions": played.judged.as_ref().map(|judged| decisions(job, judged)),
        "likely": played.judged.as_ref().map(|judged| likely(&judged.belief)),
        "debrief": played.debrief,
        "state_hash": job.machine().state_hash().to_string(),
    })
}

/// The decisions with their words; what was avoidable in all, and what chance did.
fn decisions(job: &Job, judged: &Judged) -> Value {
    let words = |next: &expert::Next| expert::next_words(next, job.scenario());
    let each: Vec<Value> = judged
        .reckoning
        .decisions
        .iter()
        .map(|decided| {
            json!({
                "step": decided.step,
                "decided": decided.decided,
                "cost": decided.cost,
                "avoidable": decided.avoidable,
                "justification": decided.justification,
                "standing": decided.justification.map(score::standing),
                "p": decided.p,
                "promised_bits": decided.promised_bits,
                "better": decided.better.as_ref().map(words),
            })
        })
        .collect();
    json!({
        "expected_at_the_door": judged.reckoning.start,
        "expected_without_tests": judged.reckoning.without_tests,
        "avoidable": judged.report.avoidable,
        "chance": judged.report.chance(),
        "each": each,
    })
}

/// The likely causes after the complaint and after each step.
fn likely(belief: &Belief) -> Vec<Value> {
    let causes = |after: &[f64]| -> Vec<Value> {
        let pairs = belief.causes().iter().zip(after);
        let worth = pairs.filter(|(_, p)| **p >= WORTH_NAMING);
        let mut worth: Vec<_> = worth.collect();
        worth.sort_by(|a, b| b.1.total_cmp(a.1));
        let told = |(cause, p)| json!({ "cause": cause, "p": p });
        worth.into_iter().map(told).collect()
    };
    let steps = belief.history().iter();
    steps
        .map(|e| json!({ "step": e.step, "bits": e.bits, "causes": causes(&e.after) }))
        .collect()
}
