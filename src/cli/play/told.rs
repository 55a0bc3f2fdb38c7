//! A played log as text: each act with what came of it, then cost, safety, marks and hand-over.

use std::io;
use std::io::Write;

use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::words;
use crate::bench::working::Outcome;
use crate::bench::workshop::Workshop;
use crate::cli::play::Played;
use crate::expert::Reckoning;
use crate::expert::next_words;
use crate::score::FunctionCheck;
use crate::score::Report;

/// Decisions that are told.
const TO_PRACTISE: usize = 3;
/// What hangs under an act.
const INDENT: &str = "            ";

/// Writes everything.
pub fn write(played: &Played, out: &mut dyn Write) -> io::Result<()> {
    let job = &played.job;
    let workshop = &job.scenario().workshop;
    for step in &played.steps {
        let minutes = step.began as f64 / 600.0;
        let act = words::act(&step.entry.action, workshop);
        writeln!(out, "{minutes:6.1} min  {act}")?;
        write_outcome(job, &step.outcome, out)?;
    }
    for finding in job.safety() {
        let title = safety::rule(finding.rule).map_or("", |rule| rule.title);
        let severity = format!("{:?}", finding.severity).to_lowercase();
        writeln!(
            out,
            "safety: {severity}: {} (step {}): {title}",
            finding.rule, finding.step
        )?;
    }
    let judged = played.judged.as_ref();
    write_report(judged.map_or(&played.report, |j| &j.report), out)?;
    if let Some(judged) = judged {
        write_decisions(job, &judged.reckoning, out)?;
    }
    writeln!(out, "state {}", job.machine().state_hash())
}

fn write_outcome(job: &Job, outcome: &Outcome, out: &mut dyn Write) -> io::Result<()> {
    let workshop = &job.scenario().workshop;
    if let Some(refusal) = &outcome.refusal {
        writeln!(out, "{INDENT}refused: {}", refused(refusal, workshop))?;
    }
    for number in &outcome.notes {
        if let Some(note) = job.notebook().iter().find(|n| n.number == *number) {
            writeln!(out, "{INDENT}{number}: {}", words::note(note, workshop))?;
        }
    }
    for event in &outcome.events {
        writeln!(out, "{INDENT}{}", happened(event))?;
    }
    Ok(())
}

fn write_report(report: &Report, out: &mut dyn Write) -> io::Result<()> {
    write_function(&report.function, out)?;
    for part in &report.parts {
        writeln!(
            out,
            "{:10} {:5.1} of {:.0}",
            part.name, part.points, part.of
        )?;
        for reason in &part.reasons {
            writeln!(out, "{INDENT}{reason}")?;
        }
    }
    let repaired = if report.fixed {
        "repaired"
    } else {
        "not repaired"
    };
    writeln!(
        out,
        "total {:.1}, {repaired}, cost {:.1} (target {:.1}), {:.1} min",
        report.total, report.cost, report.target_cost, report.minutes
    )?;
    match (report.avoidable, report.chance()) {
        (Some(avoidable), Some(chance)) => {
            writeln!(out, "of it avoidable {avoidable:.1}, chance {chance:+.1}")
        }
        _ => Ok(()),
    }
}

/// What could have been better, dearest first.
fn write_decisions(job: &Job, reckoning: &Reckoning, out: &mut dyn Write) -> io::Result<()> {
    let mut dear: Vec<_> = reckoning.decisions.iter().collect();
    dear.sort_by(|a, b| b.avoidable.total_cmp(&a.avoidable));
    for decided in dear.iter().take(TO_PRACTISE).filter(|d| d.better.is_some()) {
        let better = decided.better.as_ref();
        let better = better.map_or(String::new(), |next| next_words(next, job.scenario()));
        writeln!(
            out,
            "step {}: {:.1} avoidable; better: {better}",
            decided.step, decided.avoidable
        )?;
    }
    Ok(())
}

fn write_function(check: &FunctionCheck, out: &mut dyn Write) -> io::Result<()> {
    let word = if check.passed { "passed" } else { "failed" };
    writeln!(out, "function check at hand-over: {word}")?;
    if !check.left_open.is_empty() {
        writeln!(out, "{INDENT}left open: {}", check.left_open.join(", "))?;
    }
    if let Some(alarm) = &check.alarm {
        writeln!(out, "{INDENT}alarm: {alarm}")?;
    }
    for line in check.lines.iter().filter(|line| !line.ok) {
        writeln!(
            out,
            "{INDENT}{}: {:.1} {}, a sound machine {:.1}",
            line.what, line.value, line.unit, line.sound
        )?;
    }
    Ok(())
}

/// Why hands could not do it.
fn refused(refusal: &Refusal, workshop: &Workshop) -> String {
    let names = |steps: &[String]| {
        let name = |id: &String| workshop.step(id).map_or(id.clone(), |s| s.name.clone());
        steps.iter().map(name).collect::<Vec<_>>().join(", ")
    };
    match refusal {
        Refusal::InTheWay { steps } => format!("in the way: {}", names(steps)),
        Refusal::Underneath { steps } => format!("first goes back: {}", names(steps)),
        Refusal::AlreadySo => "it is so already".to_owned(),
        Refusal::Unknown { name } => format!("this machine has no \"{name}\""),
        Refusal::NotOnBoard { part } => format!("not in the van: {part}"),
        Refusal::JobOver => "the job is over".to_owned(),
        Refusal::NotNow { why } => why.clone(),
    }
}

/// What happened to people and things.
fn happened(event: &Event) -> String {
    match event {
        Event::Shock {
            touch_v,
            body_a,
            duration_s,
            opened_by,
            zone,
        } => format!(
            "SHOCK: {touch_v:.0} V, {:.1} mA for {duration_s:.2} s, zone {zone}; {opened_by}",
            body_a * 1e3
        ),
        Event::Discharge {
            from_v,
            energy_j,
            through,
        } => format!("discharge from {from_v:.0} V, {energy_j:.3} J: {through}"),
        Event::SupplyTripped { opened_by } => format!("the supply went off: {opened_by}"),
        Event::MeterFuse { why } => format!("the meter's fuse blew: {why}"),
        Event::Spill { water_kg, why } => format!("{water_kg:.1} kg of water: {why}"),
        Event::Dropped { energy_j, what } => format!("fell with {energy_j:.0} J: {what}"),
        Event::Caught {
            speed_rad_per_s,
            energy_j,
        } => format!("CAUGHT by a moving part: {speed_rad_per_s:.0} rad/s, {energy_j:.0} J"),
        Event::Damage { what, price } => format!("{what}: {price:.0} to pay"),
        Event::Hurt { what } => what.clone(),
        Event::BurntOut { what } => format!("the new {what} has burnt out"),
        Event::Rule { rule } => format!("safety rule broken: {rule}"),
        Event::Consent { agreed: true } => "the customer agrees".to_owned(),
        Event::Consent { agreed: false } => "the customer declines".to_owned(),
    }
}
