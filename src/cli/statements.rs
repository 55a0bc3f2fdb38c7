//! `statements`: a record as statements for a store of learning records.

use std::io::Write;

use crate::cli::Verdict;
use crate::cli::args::results::StatementsArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::verify::library;
use crate::records::check;
use crate::records::record::Record;
use crate::records::xapi;
use crate::records::xapi::Deployment;

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
    let record = Record::read(&args.record, &files::text(&args.record)?)?;
    check::check_seal(&record, None)
        .map_err(|difference| Failure::usage("RECORD", &args.record, difference.to_string()))?;
    let task = library.task(&record.body.job).ok_or_else(|| {
        Failure::usage("RECORD", &record.body.job, "give the job's file with --job")
    })?;
    let place = Deployment {
        base: format!("{}/", args.base.trim_end_matches('/')),
        home_page: args.home_page.clone(),
        language: args.language.clone(),
    };
    let statements = xapi::statements(&record, task, &place);
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
