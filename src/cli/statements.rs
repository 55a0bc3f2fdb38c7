//! `statements`: records as statements for a store of learning records; with the assessment's file also
//! what the sitting came to as a whole.

use std::io::Write;

use serde_json::Value;

use crate::assess::date;
use crate::assess::decide;
use crate::assess::decide::Taken;
use crate::bench::notebook::Tick;
use crate::cli::Verdict;
use crate::cli::args::results::StatementsArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::verify::library;
use crate::records::check;
use crate::records::library::Library;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::sitting::Assessment;
use crate::records::xapi;
use crate::records::xapi::Deployment;
use crate::records::xapi::Whole;

/// The whole comes after what its last job says, ms: a statement a millisecond.
const AFTER_MS: i64 = 1000;

/// Does it.
pub fn run(args: &StatementsArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    for (word, iri) in [("--base", &args.base), ("--home-page", &args.home_page)] {
        let is_web = iri.starts_with("https://") || iri.starts_with("http://");
        let is_plain = !iri.contains(|c: char| c.is_whitespace() || c.is_control() || c == '"');
        if !is_web || !is_plain {
            return Err(Failure::usage(
                word,
                iri,
                "give an address such as https://…/",
            ));
        }
    }
    let library = library(&args.job)?;
    let assessment = match &args.assessment {
        Some(file) => Some(Assessment::read(file, &files::text(file)?, &library)?),
        None => None,
    };
    let records = records(&args.record)?;
    let place = Deployment {
        base: format!("{}/", args.base.trim_end_matches('/')),
        home_page: args.home_page.clone(),
        language: args.language.clone(),
    };
    let mut statements = Vec::new();
    for record in &records {
        let task = task(record, &library, assessment.as_ref())?;
        statements.extend(xapi::statements(record, &task, &place));
    }
    if let Some(assessment) = &assessment {
        statements.extend(whole(&records, assessment, &place)?);
    }
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &statements)?;
        writeln!(out)?;
    } else {
        for statement in &statements {
            let verb = statement["verb"]["display"]["en"].as_str().unwrap_or("");
            let at = statement["timestamp"].as_str().unwrap_or("no time");
            let what = statement["object"]["id"].as_str().unwrap_or("");
            writeln!(out, "{at} {verb} {what}")?;
        }
    }
    Ok(Verdict::Passed)
}

/// The records of a file, whose links must hold.
fn records(file: &str) -> Result<Vec<Record>, Failure> {
    let text = files::text(file)?;
    let mut records = Vec::new();
    for line in Record::lines(&text) {
        let record = Record::read(file, line)?;
        check::check_seal(&record, None)
            .map_err(|difference| Failure::usage("RECORD", file, difference.to_string()))?;
        records.push(record);
    }
    if records.is_empty() {
        let remedy = "it holds no record: give one as `play --record` or the page has saved it";
        return Err(Failure::usage("RECORD", file, remedy));
    }
    Ok(records)
}

/// The job of a record; in an assessment the variant that its candidate was given.
fn task(
    record: &Record,
    library: &Library,
    assessment: Option<&Assessment>,
) -> Result<Task, Failure> {
    let job = &record.body.job;
    match assessment {
        Some(assessment) => assessment
            .task(record, library)
            .map(|(task, _)| task)
            .map_err(|error| Failure::usage("RECORD", job, error.to_string())),
        None => library
            .task(job)
            .cloned()
            .ok_or_else(|| Failure::usage("RECORD", job, "give the job's file with --job")),
    }
}

/// What the sitting came to, from its records alone: time used is the time on site.
fn whole(
    records: &[Record],
    assessment: &Assessment,
    place: &Deployment,
) -> Result<Vec<Value>, Failure> {
    let Some(first) = records.first() else {
        return Ok(Vec::new());
    };
    let registration = xapi::registration(&first.body);
    if let Some(other) = records
        .iter()
        .find(|record| xapi::registration(&record.body) != registration)
    {
        let remedy = "with --assessment give the records of one candidate and one sitting";
        return Err(Failure::usage("RECORD", &other.body.candidate, remedy));
    }
    let file = &assessment.file;
    let taken: Vec<Taken> = records
        .iter()
        .map(|record| Taken::from(&record.body.counted()))
        .collect();
    let decided = decide::decide(&file.pass, &taken, file.n_jobs());
    let starts = || {
        records
            .iter()
            .filter_map(|record| date::moment_ms(&record.body.started))
    };
    let minutes: f64 = records.iter().map(|one| one.body.result.minutes).sum();
    let whole = Whole {
        id: &file.id,
        title: &file.title,
        candidate: &first.body.candidate,
        registration,
        is_sealed: first.seal.is_some(),
        started_ms: starts().min(),
        ended_ms: starts().max().map(|ms| ms + AFTER_MS),
        took: (minutes * 600.0).round() as Tick,
        n_jobs: (file.n_jobs(), records.len()),
        decided: &decided,
    };
    Ok(xapi::whole(&whole, place))
}
