//! `verify`: records checked whole, on all cores; for each that is not accepted, the first difference.

use std::collections::BTreeMap;
use std::io::Write;

use serde::Serialize;

use crate::cli::Verdict;
use crate::cli::args::results::VerifyArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::records;
use crate::cli::records::Found;
use crate::records::chain;
use crate::records::check;
use crate::records::check::SealState;
use crate::records::library::Library;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::records::seal::AssessmentKey;
use crate::records::seal::Hash;
use crate::records::sitting::Assessment;
use crate::scenario;

/// What came of one file.
#[derive(Serialize)]
struct Verified {
    file: String,
    accepted: bool,
    candidate: Option<String>,
    job: Option<String>,
    seal: Option<SealState>,
    marks: Option<f64>,
    safe: Option<bool>,
    /// What is not as it says; none when accepted.
    difference: Option<String>,
    /// In an assessment: what the candidate's first record stands on, the link before, its own.
    #[serde(skip)]
    links: Option<[Hash; 3]>,
}

/// Does it.
pub fn run(args: &VerifyArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let key = records::key(args.key.as_deref())?;
    let library = library(&args.job)?;
    let assessment = match &args.assessment {
        Some(file) => Some(Assessment::read(file, &files::text(file)?, &library)?),
        None => None,
    };
    let against = Against {
        library,
        assessment,
        key,
        without_key: args.without_key,
    };
    let names = records::names(&args.files)?;
    let mut verified = records::each(&names, |found| verify(found, &against));
    hold_in_rows(&mut verified);
    let n_accepted = verified.iter().filter(|v| v.accepted).count();
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &verified)?;
        writeln!(out)?;
    } else {
        for record in &verified {
            let said = match (&record.difference, record.seal) {
                (Some(difference), _) => difference.as_str(),
                (None, Some(SealState::NotChecked)) => "accepted; its seal was not looked at",
                (None, Some(SealState::Practice)) => "accepted; practice, not sealed",
                (None, _) => "accepted",
            };
            writeln!(out, "{}: {said}", record.file)?;
        }
        writeln!(out, "{n_accepted} of {} accepted", verified.len())?;
    }
    Ok(if n_accepted == verified.len() {
        Verdict::Passed
    } else {
        Verdict::Failed
    })
}

/// What records are held against.
struct Against {
    library: Library,
    assessment: Option<Assessment>,
    key: Option<AssessmentKey>,
    without_key: bool,
}

impl Against {
    /// How the seal stands, or the first difference.
    fn check(&self, record: &Record) -> Result<SealState, String> {
        let key = self.key.as_ref();
        let state = match (&self.assessment, &record.body.sitting) {
            (Some(assessment), _) => assessment
                .check(record, &self.library, key)
                .map_err(|error| error.to_string())?,
            (None, None) => check::check(record, &self.library, key)
                .map_err(|difference| difference.to_string())?,
            (None, Some(_)) => {
                return Err("it is of an assessment: give its file with --assessment".to_owned());
            }
        };
        if state == SealState::NotChecked && !self.without_key {
            return Err(
                "its log holds, its seal was not looked at: give --key, or --without-key"
                    .to_owned(),
            );
        }
        Ok(state)
    }
}

/// A candidate's records of one assessment are one unbroken row; where one was dropped or added, none
/// of them is accepted.
fn hold_in_rows(verified: &mut [Verified]) {
    let mut rows: BTreeMap<Hash, Vec<usize>> = BTreeMap::new();
    for (at, one) in verified.iter().enumerate() {
        if let Some([root, _, _]) = one.links {
            rows.entry(root).or_default().push(at);
        }
    }
    for (root, mut row) in rows {
        // The same record in two files is one.
        row.sort_by_key(|at| (verified[*at].links, *at));
        row.dedup_by_key(|at| verified[*at].links);
        let links = row.iter().filter_map(|at| verified[*at].links);
        let links: Vec<(Hash, Hash)> = links.map(|[_, previous, own]| (previous, own)).collect();
        let Err(broken) = chain::order(root, &links) else {
            continue;
        };
        for one in verified.iter_mut() {
            let is_of_row = one.links.is_some_and(|[own, _, _]| own == root);
            if is_of_row && one.difference.is_none() {
                one.accepted = false;
                one.difference = Some(broken.to_string());
            }
        }
    }
}

fn verify(found: Found, against: &Against) -> Verified {
    let record = found.record.as_ref().ok();
    let checked = match &found.record {
        Ok(record) => against.check(record),
        Err(error) => Err(error.clone()),
    };
    Verified {
        accepted: checked.is_ok(),
        candidate: record.map(|record| record.body.candidate.clone()),
        job: record.map(|record| record.body.job.clone()),
        seal: checked.as_ref().ok().copied(),
        marks: record.map(|record| record.body.counted().total),
        safe: record.map(|record| record.body.result.safe),
        links: record.filter(|r| r.body.sitting.is_some()).map(|record| {
            let body = &record.body;
            let root = Body::root(&body.candidate, body.sitting.as_ref());
            [root, body.previous, record.link]
        }),
        difference: checked.err(),
        file: found.file,
    }
}

/// The jobs that ship and those given as files.
pub fn library(job_files: &[String]) -> Result<Library, Failure> {
    let mut library = Library::shipped()?;
    for file in job_files {
        let text = files::text(file)?;
        let read = scenario::read_job(
            file,
            &text,
            scenario::machine_files()?,
            scenario::catalogue()?,
        )?;
        let id = std::path::Path::new(file).file_stem();
        let id = id.map_or_else(|| file.clone(), |stem| stem.to_string_lossy().into_owned());
        library.add(&id, &read)?;
    }
    Ok(library)
}
