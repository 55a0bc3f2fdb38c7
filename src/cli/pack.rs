//! `pack`: a folder of job files becomes one training set that can be handed to a class.

use std::collections::BTreeMap;
use std::fs;
use std::io::Write;
use std::path::Path;
use std::path::PathBuf;

use crate::cli::Verdict;
use crate::cli::args::PackArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::scenario;
use crate::scenario::set_file::SET_FORMAT;
use crate::scenario::set_file::SetFile;
use crate::scenario::share;

/// Does it. Jobs stand in order of level, then of name; every wrong file is told.
pub fn run(args: &PackArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let mut wrong = Vec::new();
    let mut jobs = BTreeMap::new();
    for path in job_files(&args.dir)? {
        let file = path.display().to_string();
        let id = path
            .file_stem()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        let text = files::text(&file)?;
        match scenario::job_file_from_text(&file, &text) {
            Ok(job) => {
                jobs.insert(id, job);
            }
            Err(error) => wrong.extend(error.problems),
        }
    }
    if !wrong.is_empty() {
        wrong.iter().for_each(|problem| super::tell(problem));
        return Ok(Verdict::Failed);
    }
    let mut order: Vec<(u8, String)> = jobs.iter().map(|(id, j)| (j.level, id.clone())).collect();
    order.sort();
    let set = SetFile {
        format: SET_FORMAT.to_owned(),
        title: args.title.clone().unwrap_or_else(|| args.dir.clone()),
        about: args.about.clone(),
        mastered_at_marks: args.mastered_at,
        jobs: order.into_iter().map(|(_, id)| id).collect(),
        files: jobs,
        sealed: BTreeMap::new(),
    };
    let set = if args.sealed {
        share::covered(&set)
    } else {
        set
    };
    let text = serde_json::to_string_pretty(&set)? + "\n";
    scenario::set_from_text(&args.dir, &text)?;
    match &args.out {
        Some(file) => files::write(file, &text)?,
        None => out.write_all(text.as_bytes())?,
    }
    Ok(Verdict::Passed)
}

fn job_files(dir: &str) -> Result<Vec<PathBuf>, Failure> {
    let failed = |error| Failure::File {
        file: dir.to_owned(),
        error,
        remedy: "name a folder of job files",
    };
    let mut found = Vec::new();
    for entry in fs::read_dir(Path::new(dir)).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        if path.extension().is_some_and(|ending| ending == "json") {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}
