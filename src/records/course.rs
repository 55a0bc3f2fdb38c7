//! A course package for a training system: an assessment, the files of a build of the page, and the
//! manifest that names them. The command line and the page make the same bytes of it.

use thiserror::Error;

use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::records::manifest;
use crate::records::manifest::Course;
use crate::records::zip::TooMuch;
use crate::records::zip::Zip;
use crate::say;

/// The page itself, in every build.
pub const PAGE: &str = "index.html";
/// Language of titles where nobody says another.
pub const LANGUAGE: &str = "en";

/// Which training systems a package is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// SCORM 1.2.
    Scorm12,
    /// SCORM 2004, 4th edition.
    Scorm2004,
    /// cmi5.
    Cmi5,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Scorm12, Self::Scorm2004, Self::Cmi5];

    /// As training systems call it.
    pub fn words(self) -> &'static str {
        match self {
            Self::Scorm12 => "SCORM 1.2",
            Self::Scorm2004 => "SCORM 2004 4th edition",
            Self::Cmi5 => "cmi5",
        }
    }

    /// As a part of a file's name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Scorm12 => "scorm12",
            Self::Scorm2004 => "scorm2004",
            Self::Cmi5 => "cmi5",
        }
    }

    /// The manifest's name.
    pub fn manifest(self) -> &'static str {
        match self {
            Self::Scorm12 | Self::Scorm2004 => "imsmanifest.xml",
            Self::Cmi5 => "cmi5.xml",
        }
    }
}

/// Why there can be no package.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum NoPackage {
    /// What should be a build has no page.
    #[error("{}", say!("there is no {file} among the files of the build", file = PAGE))]
    NoPage,
    /// The names in the course would be no addresses.
    #[error("{}", say!("“{base}” cannot begin names: give an address such as https://school.example/, without ? and #", base = .0))]
    Base(String),
}

/// A package before it is packed.
#[derive(Clone, Debug, PartialEq)]
pub struct Package {
    kind: Kind,
    manifest: String,
    build: Vec<String>,
    own: String,
    text: String,
}

impl Package {
    /// A package of an assessment, given as it was read and as its text, with the files of a build
    /// named relative to it. `base` is what the names of a cmi5 course begin with.
    ///
    /// # Errors
    /// When the build has no page, or the base is no address.
    pub fn new(
        kind: Kind,
        (file, text): (&AssessmentFile, &str),
        mut build: Vec<String>,
        base: &str,
        language: &str,
    ) -> Result<Self, NoPackage> {
        // The others have no addresses for names.
        let base = match kind {
            Kind::Cmi5 => base_address(base)?,
            Kind::Scorm12 | Kind::Scorm2004 => String::new(),
        };
        let start = plain(&file.id);
        let own = format!("assessments/{start}.json");
        // A build that was taken out of a package brings these along.
        build.retain(|name| *name != own && name != kind.manifest());
        build.sort();
        build.dedup();
        if !build.iter().any(|name| name == PAGE) {
            return Err(NoPackage::NoPage);
        }
        let n_jobs = file.n_jobs();
        let jobs = if n_jobs == 1 { "job" } else { "jobs" };
        let mut files = build.clone();
        files.push(own.clone());
        let course = Course {
            base,
            id: file.id.clone(),
            title: file.title.clone(),
            description: format!("{n_jobs} {jobs}, {} minutes.", file.time_limit_min),
            start,
            pass_marks: Some(decide::cut(&file.pass.cut).0),
            language: language.to_owned(),
            files,
        };
        let manifest = match kind {
            Kind::Scorm12 => manifest::scorm12(&course),
            Kind::Scorm2004 => manifest::scorm2004(&course),
            Kind::Cmi5 => manifest::cmi5(&course),
        };
        Ok(Self {
            kind,
            manifest,
            build,
            own,
            text: text.to_owned(),
        })
    }

    /// Files of the build to be added, in this order.
    pub fn build(&self) -> &[String] {
        &self.build
    }

    /// The archive with its manifest alone; the files of the build are added next.
    ///
    /// # Errors
    /// When a zip file has no room for it.
    pub fn begun(&self) -> Result<Zip, TooMuch> {
        let mut zip = Zip::default();
        zip.add(self.kind.manifest(), self.manifest.as_bytes())?;
        Ok(zip)
    }

    /// The whole archive, once every file of the build is in it.
    ///
    /// # Errors
    /// When a zip file has no room for it.
    pub fn closed(&self, mut zip: Zip) -> Result<Vec<u8>, TooMuch> {
        zip.add(&self.own, self.text.as_bytes())?;
        zip.close()
    }
}

/// What names may begin with: an address with a scheme, as a folder.
fn base_address(base: &str) -> Result<String, NoPackage> {
    let text = base.trim();
    let is_scheme = |scheme: &str| {
        scheme.starts_with(|c: char| c.is_ascii_alphabetic())
            && scheme
                .chars()
                .all(|c| c.is_ascii_alphanumeric() || "+-.".contains(c))
    };
    // What no address holds, RFC 3987, and what would end its path.
    let is_out = |c: char| c.is_whitespace() || c.is_control() || "<>\"{}|\\^`?#".contains(c);
    match text.split_once(':') {
        Some((scheme, rest))
            if is_scheme(scheme)
                && !rest.trim_matches('/').is_empty()
                && !rest.contains(is_out) =>
        {
            Ok(format!("{}/", text.trim_end_matches('/')))
        }
        _ => Err(NoPackage::Base(text.to_owned())),
    }
}

/// A name that is a file's on every system, and that the page may be started with.
fn plain(name: &str) -> String {
    let plain = |c: char| {
        if c.is_ascii_alphanumeric() || c == '_' {
            c
        } else {
            '-'
        }
    };
    name.chars().map(plain).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = include_str!("../../scenarios/assessments/first_visits.json");

    fn file() -> AssessmentFile {
        serde_json::from_str(TEXT).expect("ships")
    }

    fn package(kind: Kind, build: &[&str], base: &str) -> Result<Package, NoPackage> {
        let build = build.iter().map(|&name| name.to_owned()).collect();
        Package::new(kind, (&file(), TEXT), build, base, LANGUAGE)
    }

    #[test]
    fn the_order_of_the_list_and_what_an_earlier_package_left_change_nothing() {
        for kind in Kind::ALL {
            let one = package(kind, &["b.js", "index.html", "a.css"], "https://s.example");
            let left = [kind.manifest(), "assessments/first_visits.json"];
            let other = package(
                kind,
                &["a.css", "b.js", left[0], "index.html", left[1], "b.js"],
                " https://s.example/ ",
            );
            assert_eq!(one, other, "{}", kind.words());
            assert_eq!(one.expect("fits").build(), ["a.css", "b.js", "index.html"]);
        }
    }

    #[test]
    fn a_package_holds_manifest_build_and_assessment_in_this_order() {
        let package = package(Kind::Cmi5, &["index.html"], "urn:school").expect("fits");
        let mut zip = package.begun().expect("room");
        zip.add("index.html", b"<!doctype html>").expect("room");
        let bytes = package.closed(zip).expect("room");
        let entries = crate::records::unzip::entries(&bytes).expect("an archive");
        let names: Vec<&str> = entries.iter().map(|entry| entry.name.as_str()).collect();
        assert_eq!(
            names,
            ["cmi5.xml", "index.html", "assessments/first_visits.json"]
        );
        let own = crate::records::unzip::unpacked(&bytes, &entries[2]).expect("whole");
        assert_eq!(own, TEXT.as_bytes());
    }

    #[test]
    fn what_is_no_build_and_what_is_no_address_is_refused() {
        assert_eq!(
            package(Kind::Scorm12, &["a.css"], "https://s.example"),
            Err(NoPackage::NoPage)
        );
        for base in [
            "",
            "school",
            "https://",
            "1x:a",
            "https://a b",
            "https://a/?b",
            "https://a/#b",
            "https://a/\"",
        ] {
            let refused = package(Kind::Cmi5, &["index.html"], base);
            assert_eq!(refused, Err(NoPackage::Base(base.to_owned())), "{base}");
        }
    }

    #[test]
    fn the_page_is_started_with_the_name_of_the_file_that_lies_there() {
        let mut file = file();
        file.id = "Früh & spät".to_owned();
        let build = vec![PAGE.to_owned()];
        let packed = |kind| {
            Package::new(
                kind,
                (&file, TEXT),
                build.clone(),
                "https://s.example",
                "de",
            )
            .expect("fits")
        };
        for kind in Kind::ALL {
            let package = packed(kind);
            assert_eq!(package.own, "assessments/Fr-h---sp-t.json");
            let started = match kind {
                Kind::Cmi5 => "<url>index.html?start=Fr-h---sp-t</url>",
                Kind::Scorm12 => "<adlcp:datafromlms>Fr-h---sp-t</adlcp:datafromlms>",
                Kind::Scorm2004 => "parameters=\"#/assessment/Fr-h---sp-t\"",
            };
            assert!(package.manifest.contains(started), "{}", package.manifest);
        }
    }
}
