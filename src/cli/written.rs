//! `verify --read`: records as they were written, told and not worked out again.

use std::io::Write;

use crate::bench::notebook::TICKS_PER_S;
use crate::bench::safety;
use crate::cli::Verdict;
use crate::cli::args::results::VerifyArgs;
use crate::cli::failure::Failure;
use crate::cli::records;
use crate::cli::verify::library;
use crate::records::as_written::ActWritten;
use crate::records::as_written::AsWritten;
use crate::records::result::JobResult;

/// What hangs under an act.
const INDENT: &str = "            ";

/// Does it.
pub fn run(args: &VerifyArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let library = library(&args.job)?;
    let (mut all, mut unread) = (Vec::new(), Vec::new());
    for file in records::names(&args.files)? {
        for (name, text) in records::texts(&file)? {
            match AsWritten::read(&name, &text, &library) {
                Ok(written) => all.push((name, written)),
                Err(error) => unread.push(error.to_string()),
            }
        }
    }
    if args.json {
        let records: Vec<&AsWritten> = all.iter().map(|(_, written)| written).collect();
        serde_json::to_writer_pretty(&mut *out, &records)?;
        writeln!(out)?;
    } else {
        for (name, written) in &all {
            tell(name, written, out)?;
        }
    }
    for why in &unread {
        super::tell(why);
    }
    Ok(if unread.is_empty() {
        Verdict::Passed
    } else {
        Verdict::Failed
    })
}

fn tell(name: &str, written: &AsWritten, out: &mut dyn Write) -> std::io::Result<()> {
    let plain = records::plain;
    writeln!(
        out,
        "{name}: as version {} wrote it",
        plain(&written.engine)
    )?;
    let who = match &written.name {
        Some(name) => format!("{}, {}", written.candidate, name),
        None => written.candidate.clone(),
    };
    writeln!(out, "candidate {}", plain(&who))?;
    let title = written.title.as_ref().map(|title| format!(": {title}"));
    writeln!(
        out,
        "job {}{}",
        plain(&written.job),
        title.unwrap_or_default()
    )?;
    match &written.sitting {
        Some(sitting) => writeln!(
            out,
            "assessment {}, job {}, word {}",
            plain(&sitting.assessment),
            sitting.place,
            plain(&sitting.release)
        )?,
        None => writeln!(out, "practice, of no assessment")?,
    }
    let began = match written.started.as_str() {
        "" => "at an unknown time".to_owned(),
        time => plain(time),
    };
    writeln!(
        out,
        "begun {began}, by the candidate's clock; page left {} times",
        written.n_away
    )?;
    for act in &written.acts {
        tell_act(act, written.result.as_ref(), out)?;
    }
    match &written.result {
        Some(result) => tell_result(result, out)?,
        None => {
            for (name, value) in &written.as_it_stands {
                writeln!(out, "result, {}: {}", plain(name), plain(value))?;
            }
        }
    }
    writeln!(out, "link {}", plain(&written.link))?;
    writeln!(out, "{}", plain(&written.caution()))
}

fn tell_act(
    act: &ActWritten,
    result: Option<&JobResult>,
    out: &mut dyn Write,
) -> std::io::Result<()> {
    let minutes = act.tick as f64 / (60 * TICKS_PER_S) as f64;
    writeln!(out, "{minutes:6.1} min  {}", records::plain(&act.words))?;
    for line in &act.lines {
        writeln!(out, "{INDENT}{}", records::plain(&line.words))?;
    }
    let broken = result.into_iter().flat_map(|result| &result.safety);
    for one in broken.filter(|one| one.step == act.step) {
        let title = safety::rule(&one.rule).map_or(one.rule.as_str(), |rule| rule.title);
        let (severity, title) = (records::plain(&one.severity), records::plain(title));
        writeln!(out, "{INDENT}safety rule broken, {severity}: {title}")?;
    }
    Ok(())
}

fn tell_result(result: &JobResult, out: &mut dyn Write) -> std::io::Result<()> {
    for part in &result.parts {
        let name = records::plain(&part.name);
        writeln!(out, "{name:10} {:5.1} of {:.0}", part.points, part.of)?;
    }
    let done = if result.fixed {
        "put right"
    } else {
        "not put right"
    };
    let minutes = result
        .target_minutes
        .map_or_else(String::new, |target| format!(" (target {target:.1})"));
    writeln!(
        out,
        "total {:.1}, {done}, cost {:.1} (target {:.1}), {:.1} min{minutes}",
        result.total, result.cost, result.target_cost, result.minutes
    )
}
