//! `package`: a build of the page as a course package for a training system, one zip file.

use std::fs::File;
use std::io;
use std::io::Write;
use std::path::Path;

use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use crate::assess::decide;
use crate::cli::Verdict;
use crate::cli::args::results::PackageArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::verify::library;
use crate::records::manifest;
use crate::records::manifest::Course;
use crate::records::sitting::Assessment;

/// Files in a build at most; more is not a build.
const MOST_FILES: usize = 10_000;
const READABLE: &str = "name a folder with a build of the page";

/// Does it.
pub fn run(args: &PackageArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let library = library(&args.job)?;
    let text = files::text(&args.assessment)?;
    let assessment = Assessment::read(&args.assessment, &text, &library)?;
    let mut build = Vec::new();
    list(Path::new(&args.dist), "", &mut build)?;
    build.sort();
    if !build.iter().any(|file| file == "index.html") {
        return Err(Failure::usage("--dist", &args.dist, READABLE));
    }
    let file = assessment.file;
    let own = format!("assessments/{}.json", plain(&file.id));
    build.push(own.clone());
    let n_jobs: usize = file.jobs.iter().map(|slot| slot.n).sum();
    let course = Course {
        base: format!("{}/", args.base.trim_end_matches('/')),
        fragment: format!("#/assessment/{}", plain(&file.id)),
        description: format!("{n_jobs} jobs, {} minutes.", file.time_limit_min),
        pass_marks: Some(decide::cut(&file.pass.cut).0),
        language: args.language.clone(),
        files: build.clone(),
        id: file.id,
        title: file.title,
    };
    let (name, manifest) = if args.scorm12 {
        ("imsmanifest.xml", manifest::scorm12(&course))
    } else if args.scorm2004 {
        ("imsmanifest.xml", manifest::scorm2004(&course))
    } else {
        ("cmi5.xml", manifest::cmi5(&course))
    };
    let failed = |error: io::Error| Failure::File {
        file: args.out.clone(),
        error,
        remedy: "name a file in a folder that can be written",
    };
    let mut zip = ZipWriter::new(File::create(&args.out).map_err(failed)?);
    add(&mut zip, name, manifest.as_bytes()).map_err(failed)?;
    for file in &build {
        if *file == own {
            add(&mut zip, file, text.as_bytes()).map_err(failed)?;
        } else {
            let from = Path::new(&args.dist).join(file);
            let bytes = std::fs::read(&from).map_err(|error| Failure::File {
                file: from.display().to_string(),
                error,
                remedy: READABLE,
            })?;
            add(&mut zip, file, &bytes).map_err(failed)?;
        }
    }
    zip.finish().map_err(|error| failed(error.into()))?;
    writeln!(out, "{}: {name} and {} files", args.out, build.len())?;
    Ok(Verdict::Passed)
}

/// One file into the package; the same build gives the same bytes, so no times are kept.
fn add(zip: &mut ZipWriter<File>, name: &str, bytes: &[u8]) -> io::Result<()> {
    let options = SimpleFileOptions::default().last_modified_time(zip::DateTime::default());
    zip.start_file(name, options)?;
    zip.write_all(bytes)
}

fn list(folder: &Path, under: &str, found: &mut Vec<String>) -> Result<(), Failure> {
    let failed = |error: io::Error| Failure::File {
        file: folder.display().to_string(),
        error,
        remedy: READABLE,
    };
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        let entry = entry.map_err(failed)?;
        let name = format!("{under}{}", entry.file_name().to_string_lossy());
        let kind = entry.file_type().map_err(failed)?;
        if kind.is_dir() {
            list(&entry.path(), &format!("{name}/"), found)?;
        } else if kind.is_file() {
            found.push(name);
        }
        if found.len() > MOST_FILES {
            let remedy = format!("more than {MOST_FILES} files: {READABLE}");
            return Err(Failure::usage(
                "--dist",
                &folder.display().to_string(),
                remedy,
            ));
        }
    }
    Ok(())
}

/// A name that is a file's on every system.
fn plain(name: &str) -> String {
    name.chars()
        .map(|c| {
            if c.is_ascii_alphanumeric() || c == '_' {
                c
            } else {
                '-'
            }
        })
        .collect()
}
