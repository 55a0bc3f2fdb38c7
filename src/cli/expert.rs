//! `belief`, `advise`, `par`: what the expert makes of a job.

use std::io::Write;
use std::sync::Arc;

use serde_json::Value;
use serde_json::json;

use crate::bench::job::Job;
use crate::bench::words;
use crate::cli::Verdict;
use crate::cli::args::jobs::ParArgs;
use crate::cli::args::jobs::PlayArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::library;
use crate::cli::play::log;
use crate::expert;
use crate::expert::Belief;
use crate::expert::Evidence;
use crate::expert::Seen;
use crate::machine::MachineError;

/// Causes named after a step: the likeliest, as long as they are worth naming.
const NAMED: usize = 8;
const WORTH_NAMING: f64 = 0.001;

/// Does `belief`.
pub fn belief(args: &PlayArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let seen = seen(args)?;
    let belief = Belief::of(&seen).map_err(|error| failed(&args.job, error))?;
    if args.json {
        let steps: Vec<Value> = belief
            .history()
            .iter()
            .map(|evidence| as_json(&belief, &seen, evidence))
            .collect();
        let answer = json!({ "job": seen.scenario.id, "steps": steps });
        serde_json::to_writer_pretty(&mut *out, &answer)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    for evidence in belief.history() {
        if evidence.step > 0 && evidence.surprise_bits < 0.01 {
            continue;
        }
        writeln!(out, "{}", what(&seen, evidence.step))?;
        let told = likeliest(&belief, &evidence.after)
            .into_iter()
            .map(|(name, p)| format!("{name} {:.1} %", 100.0 * p))
            .collect::<Vec<_>>();
        writeln!(out, "    {:+.2} bits  {}", evidence.bits, told.join(", "))?;
    }
    Ok(Verdict::Passed)
}

/// What was seen in a played log.
pub(super) fn seen(args: &PlayArgs) -> Result<Seen, Failure> {
    let scenario = library::job(&args.job, args.machine.as_deref())?;
    let log = log::read(&args.log, &files::text(&args.log)?)?;
    let job = Job::replay(Arc::clone(&scenario), args.seed, &log);
    let (job, _) = job.map_err(|error| failed(&args.job, error))?;
    Seen::of(&job).map_err(|error| failed(&args.job, error))
}

pub(super) fn failed(job: &str, error: MachineError) -> Failure {
    Failure::Machine {
        what: format!("job {job}"),
        error,
    }
}

fn what(seen: &Seen, step: usize) -> String {
    let workshop = &seen.scenario.workshop;
    match step.checked_sub(1).and_then(|i| seen.steps.get(i)) {
        None => "the complaint".to_owned(),
        Some(step) => {
            let act = words::act(&step.entry.action, workshop);
            let notes = step.notes.iter().map(|note| words::note(note, workshop));
            notes.fold(act, |all, note| format!("{all} | {note}"))
        }
    }
}

fn name(belief: &Belief, cause: usize) -> String {
    let ids = &belief.causes()[cause].0;
    if ids.is_empty() {
        "no fault".to_owned()
    } else {
        ids.join(" + ")
    }
}

fn likeliest(belief: &Belief, p: &[f64]) -> Vec<(String, f64)> {
    let mut order: Vec<usize> = (0..p.len()).filter(|i| p[*i] >= WORTH_NAMING).collect();
    order.sort_by(|a, b| p[*b].total_cmp(&p[*a]));
    order.truncate(NAMED);
    order.into_iter().map(|i| (name(belief, i), p[i])).collect()
}

fn as_json(belief: &Belief, seen: &Seen, evidence: &Evidence) -> Value {
    let entry = evidence
        .step
        .checked_sub(1)
        .and_then(|i| seen.steps.get(i))
        .map(|step| &step.entry);
    let causes: Vec<Value> = belief
        .causes()
        .iter()
        .zip(&evidence.after)
        .map(|(cause, p)| json!({ "cause": cause, "p": p }))
        .collect();
    let ruled_out: Vec<_> = evidence
        .ruled_out
        .iter()
        .map(|i| &belief.causes()[*i])
        .collect();
    json!({
        "step": evidence.step,
        "act": entry,
        "words": what(seen, evidence.step),
        "bits": evidence.bits,
        "surprise_bits": evidence.surprise_bits,
        "ruled_out": ruled_out,
        "unexplained": evidence.is_unexplained,
        "causes": causes,
    })
}

/// Does `advise`.
pub fn advise(args: &PlayArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let seen = seen(args)?;
    let belief = Belief::of(&seen).map_err(|error| failed(&args.job, error))?;
    let candidates = expert::advise(&belief, &seen.scenario);
    if args.json {
        let answer = json!({ "job": seen.scenario.id, "candidates": candidates });
        serde_json::to_writer_pretty(&mut *out, &answer)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    }
    writeln!(out, "{:>8} {:>6}  next step", "cost", "bits")?;
    for candidate in candidates {
        let next = expert::next_words(&candidate.next, &seen.scenario);
        writeln!(
            out,
            "{:>8.1} {:>6.2}  {next}",
            candidate.cost, candidate.bits
        )?;
    }
    Ok(Verdict::Passed)
}

/// Does `par`.
pub fn par(args: &ParArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let scenario = library::job(&args.job, args.machine.as_deref())?;
    let par = expert::par(&scenario, args.seed).map_err(|error| failed(&args.job, error))?;
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &par)?;
        writeln!(out)?;
    } else {
        writeln!(
            out,
            "cost {:.1}, {:.1} min, {} acts; expected from the complaint {:.1}",
            par.cost, par.minutes, par.steps, par.expected_cost
        )?;
        if let Some(stored) = expert::stored_par(&scenario.id) {
            writeln!(
                out,
                "stored with the job: cost {:.1}, {:.1} min, {} acts",
                stored.cost, stored.minutes, stored.steps
            )?;
        }
    }
    Ok(Verdict::Passed)
}
