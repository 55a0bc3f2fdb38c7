//! `package`: a build of the page as a course package for a training system, one zip file.

use std::io;
use std::io::Write;
use std::path::Path;

use crate::cli::Verdict;
use crate::cli::args::results::PackageArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::verify::library;
use crate::records::course::Kind;
use crate::records::course::NoPackage;
use crate::records::course::Package;
use crate::records::sitting::Assessment;
use crate::records::zip::TooMuch;

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
    let kind = if args.scorm12 {
        Kind::Scorm12
    } else if args.scorm2004 {
        Kind::Scorm2004
    } else {
        Kind::Cmi5
    };
    let own = (&assessment.file, text.as_str());
    let package = Package::new(kind, own, build, &args.base, &args.language);
    let package = package.map_err(|error| match &error {
        NoPackage::NoPage => Failure::usage("--dist", &args.dist, READABLE),
        NoPackage::Base(base) => Failure::usage("--base", base, error.to_string()),
    })?;
    let bytes = packed(&package, &args.dist)?;
    std::fs::write(&args.out, bytes).map_err(|error| Failure::File {
        file: args.out.clone(),
        error,
        remedy: "name a file in a folder that can be written",
    })?;
    let (name, n) = (kind.manifest(), package.build().len() + 1);
    writeln!(out, "{}: {name} and {n} files", args.out)?;
    Ok(Verdict::Passed)
}

/// The whole package, with the files of the build in a folder.
fn packed(package: &Package, dist: &str) -> Result<Vec<u8>, Failure> {
    let too_much = |error: TooMuch| Failure::usage("--dist", dist, format!("{error}: {READABLE}"));
    let mut zip = package.begun().map_err(too_much)?;
    for file in package.build() {
        let from = Path::new(dist).join(file);
        let bytes = std::fs::read(&from).map_err(|error| Failure::File {
            file: from.display().to_string(),
            error,
            remedy: READABLE,
        })?;
        zip.add(file, &bytes).map_err(too_much)?;
    }
    package.closed(zip).map_err(too_much)
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
