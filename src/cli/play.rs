//! `play`: a log played on a job; what it read, broke, cost and earned, and the state it ended in.

use std::io::Write;

use serde_json::Value;
use serde_json::json;

use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::job::Outcome;
use crate::bench::safety;
use crate::bench::words;
use crate::cli::Verdict;
use crate::cli::args::PlayArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::library;
use crate::machine::MachineError;
use crate::score;

/// Does it.
pub fn run(args: &PlayArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let scenario = library::job(&args.job)?;
    let text = files::text(&args.log)?;
    let log: Vec<Entry> = serde_json::from_str(&text).map_err(|error| {
        let remedy = "write a JSON list of acts, each {\"tick\": …, \"do\": …}";
        Failure::usage(&args.log, &error.to_string(), remedy)
    })?;
    let failed = |error| Failure::Machine {
        what: format!("job {}", args.job),
        error,
    };
    let (job, outcomes) = Job::replay(scenario, args.seed, &log).map_err(failed)?;
    let answer = answer(&job, &log, &outcomes).map_err(failed)?;
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &answer)?;
        writeln!(out)?;
    } else {
        tell(&job, &log, &outcomes, &answer, out)?;
    }
    Ok(Verdict::Passed)
}

fn answer(job: &Job, log: &[Entry], outcomes: &[Outcome]) -> Result<Value, MachineError> {
    let report = score::assess(job)?;
    let debrief = score::debrief(job)?;
    let steps: Vec<Value> = log
        .iter()
        .zip(outcomes)
        .map(|(entry, outcome)| {
            json!({
                "act": entry,
                "refusal": outcome.refusal,
                "events": outcome.events,
                "notes": outcome.notes,
            })
        })
        .collect();
    let findings: Vec<Value> = job
        .safety()
        .iter()
        .map(|f| {
            json!({
                "rule": f.rule,
                "severity": format!("{:?}", f.severity).to_lowercase(),
                "title": safety::rule(f.rule).map(|r| r.title),
                "step": f.step,
                "tick": f.tick,
            })
        })
        .collect();
    Ok(json!({
        "job": job.scenario().id,
        "seed": job.seed(),
        "steps": steps,
        "notebook": job.notebook(),
        "safety": findings,
        "cost": job.cost(),
        "minutes": job.tick() as f64 / 600.0,
        "report": report,
        "debrief": debrief,
        "state_hash": job.machine().state_hash().to_string(),
    }))
}

fn tell(
    job: &Job,
    log: &[Entry],
    outcomes: &[Outcome],
    answer: &Value,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let workshop = &job.scenario().workshop;
    for (entry, outcome) in log.iter().zip(outcomes) {
        let minutes = entry.tick as f64 / 600.0;
        writeln!(
            out,
            "{minutes:6.1} min  {}",
            words::act(&entry.action, workshop)
        )?;
        if let Some(refusal) = &outcome.refusal {
            writeln!(out, "            refused: {}", json!(refusal))?;
        }
        for note in outcome
            .notes
            .iter()
            .filter_map(|n| job.notebook().get(*n as usize - 1))
        {
            writeln!(
                out,
                "            {}: {}",
                note.number,
                words::note(note, workshop)
            )?;
        }
        for event in &outcome.events {
            writeln!(out, "            {}", json!(event))?;
        }
    }
    let report = &answer["report"];
    for part in report["parts"].as_array().into_iter().flatten() {
        writeln!(
            out,
            "{}: {:.1} of {}",
            part["name"],
            part["points"].as_f64().unwrap_or(0.0),
            part["of"]
        )?;
    }
    writeln!(
        out,
        "total {:.1}, cost {:.1}",
        report["total"].as_f64().unwrap_or(0.0),
        job.cost()
    )?;
    writeln!(out, "state {}", job.machine().state_hash())?;
    Ok(())
}
