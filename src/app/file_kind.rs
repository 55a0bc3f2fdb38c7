//! What a file is that somebody gives: one of the workshop's own, or what it is instead, in words.
//! Nothing that is given is passed over without a word.

use serde_json::Value;

use crate::app::me::EVERYTHING_FORMAT;
use crate::assess::assessment_file::ASSESSMENT_FORMAT;
use crate::language::said;
use crate::records::chain::ERASED_FORMAT;
use crate::records::practice::PRACTICE_FORMAT;
use crate::records::record::RECORD_FORMAT;
use crate::say;
use crate::scenario::fault_file::FAULT_FORMAT;
use crate::scenario::job_file::JOB_FORMAT;
use crate::scenario::machine_file::MACHINE_FORMAT;
use crate::scenario::set_file::SET_FORMAT;
use crate::scenario::share::SEALED_FORMAT;
use crate::text;

/// Every format of ours begins with this.
const OURS: &str = "tubwright-";
/// First bytes of what a folder holds besides, and what it is.
const STARTS: [(&[u8], &str); 7] = [
    (b"\x89PNG", text!("it is a picture")),
    (b"\xff\xd8\xff", text!("it is a picture")),
    (b"GIF8", text!("it is a picture")),
    (b"RIFF", text!("it is a picture, a sound or a film")),
    (b"%PDF", text!("it is a PDF document")),
    (b"PK", text!("it is an archive or an office document")),
    (
        b"\xff\xfe",
        text!("its text is not UTF-8: save it as UTF-8 and open it again"),
    ),
];

/// What no text is made of.
const NO_TEXT: &str = text!("its bytes are no text");

/// A file as it was given.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenedFile {
    /// Its name, with the folders it lay in.
    pub name: String,
    /// Its text, or why there is none.
    pub text: Result<String, String>,
}

impl OpenedFile {
    /// One that cannot be read, and why.
    pub fn without(name: String, why: &str) -> Self {
        let text = Err(why.to_owned());
        Self { name, text }
    }
}

/// A file of ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A job with its answer.
    Job,
    /// A trainee's copy of a job.
    Copy,
    /// A training set.
    Set,
    /// An assessment.
    Assessment,
    /// Results, whole or erased.
    Result,
    /// All that somebody keeps here.
    Everything,
    /// A machine, or faults.
    Machine,
}

const FORMATS: [(&str, Kind); 10] = [
    (JOB_FORMAT, Kind::Job),
    (SEALED_FORMAT, Kind::Copy),
    (SET_FORMAT, Kind::Set),
    (ASSESSMENT_FORMAT, Kind::Assessment),
    (RECORD_FORMAT, Kind::Result),
    (PRACTICE_FORMAT, Kind::Result),
    (ERASED_FORMAT, Kind::Result),
    (EVERYTHING_FORMAT, Kind::Everything),
    (MACHINE_FORMAT, Kind::Machine),
    (FAULT_FORMAT, Kind::Machine),
];

impl Kind {
    /// What it is and which screen opens it.
    pub fn elsewhere(self) -> &'static str {
        match self {
            Self::Job => say!("it is a job with its answer: the list of jobs and the desk open it"),
            Self::Copy => {
                say!("it is a trainee’s copy, which stays shut: the list of jobs opens it")
            }
            Self::Set => say!("it is a training set: the list of jobs and the desk open it"),
            Self::Assessment => {
                say!(
                    "it is an assessment: “Sit an assessment” opens it, and “Make an assessment” to work on it"
                )
            }
            Self::Result => say!("it is a result: “Review results” on the desk opens it"),
            Self::Everything => {
                say!("it is all that somebody keeps here: the page “Me” opens it")
            }
            Self::Machine => {
                say!(
                    "it describes machines or faults: those come with the program and are not opened here"
                )
            }
        }
    }
}

/// Why a file is not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Untaken {
    /// It is something else; a sentence that names it.
    Passed(String),
    /// It is ours, but damaged; a sentence that names it.
    Damaged(String),
}

impl Untaken {
    /// The sentence.
    pub fn words(self) -> String {
        match self {
            Self::Passed(words) | Self::Damaged(words) => words,
        }
    }
}

/// A file's kind and text on a screen that takes some kinds.
///
/// # Errors
/// Why this screen does not take it.
pub fn taken<'f>(file: &'f OpenedFile, takes: &[Kind]) -> Result<(Kind, &'f str), Untaken> {
    let name = &file.name;
    let none = |why: &str| {
        Untaken::Passed(say!(
            "{name} is no job, set or assessment of this workshop: {why}.",
            name,
            why
        ))
    };
    let text = file.text.as_ref().map_err(|why| none(why))?;
    match kind(text) {
        Ok(kind) if takes.contains(&kind) => Ok((kind, text)),
        Ok(kind) => Err(Untaken::Passed(told_of(name, kind.elsewhere()))),
        Err(Strange::Other(why)) => Err(none(&why)),
        Err(Strange::Damaged(why)) => Err(Untaken::Damaged(told_of(name, &why))),
    }
}

fn told_of(name: &str, what: &str) -> String {
    say!("{name}: {what}.", name, what)
}

/// The text in a file's bytes.
///
/// # Errors
/// What it is instead.
pub fn text(bytes: Vec<u8>) -> Result<String, String> {
    let known = STARTS.iter().find(|(start, _)| bytes.starts_with(start));
    if let Some((_, what)) = known {
        return Err(said(what).to_owned());
    }
    let text = String::from_utf8(bytes).map_err(|_| said(NO_TEXT).to_owned())?;
    // Some editors put a mark before the first letter.
    let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
    if text.trim().is_empty() {
        return Err(say!("it is empty").to_owned());
    }
    if text.contains('\0') {
        return Err(said(NO_TEXT).to_owned());
    }
    Ok(text.to_owned())
}

enum Strange {
    Other(String),
    Damaged(String),
}

fn kind(text: &str) -> Result<Kind, Strange> {
    let value: Value = match serde_json::from_str(text) {
        Ok(value) => value,
        Err(error) => {
            // Results may stand one on each line.
            let first = text.lines().next().unwrap_or_default();
            match serde_json::from_str::<Value>(first) {
                Ok(value) if of_format(&value) == Some(Kind::Result) => return Ok(Kind::Result),
                _ => return Err(unreadable(text, error.line())),
            }
        }
    };
    of_format(&value).ok_or_else(|| Strange::Other(foreign(&value)))
}

fn format_of(value: &Value) -> Option<&str> {
    value.get("format")?.as_str()
}

fn of_format(value: &Value) -> Option<Kind> {
    let format = format_of(value)?;
    let known = FORMATS.iter().find(|(name, _)| *name == format);
    known.map(|(_, kind)| *kind)
}

/// What is no JSON: a damaged file of ours, or another program's.
fn unreadable(text: &str, line: usize) -> Strange {
    if text.contains(OURS) {
        Strange::Damaged(say!(
            "it is damaged or cut off at line {line}: get the file once more",
            line
        ))
    } else if text.trim_start().starts_with(['{', '[']) {
        Strange::Other(say!("it cannot be read from line {line} on", line))
    } else {
        Strange::Other(say!("it is a text of another kind").to_owned())
    }
}

/// JSON without a format that this version knows.
fn foreign(value: &Value) -> String {
    match format_of(value) {
        Some(format) if format.starts_with(OURS) => {
            say!(
                "it says “{format}”, which this version does not read: use a newer one",
                format
            )
        }
        Some(_) => say!("another program has written it").to_owned(),
        None => {
            say!(
                "it does not say so by its “format”, which is “{format}” in a job",
                format = JOB_FORMAT
            )
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job_files;
    use crate::scenario::share;

    const JOBS: [Kind; 3] = [Kind::Job, Kind::Copy, Kind::Set];

    fn file(bytes: &[u8]) -> OpenedFile {
        OpenedFile {
            name: "week/x.json".to_owned(),
            text: text(bytes.to_vec()),
        }
    }

    fn told(bytes: &[u8]) -> Untaken {
        taken(&file(bytes), &JOBS).expect_err("not taken")
    }

    #[test]
    fn every_strange_file_is_answered_for_by_its_name() {
        let cases: [(&[u8], &str); 12] = [
            (b"", "it is empty"),
            (b" \n", "it is empty"),
            (b"\x89PNG\r\n\x1a\n....", "it is a picture"),
            (b"%PDF-1.7", "PDF"),
            (b"PK\x03\x04rest", "archive"),
            (b"\x00\x9f\x92\x96", "no text"),
            (b"\xff\xfe{\0}\0", "UTF-8"),
            (b"Roses are red", "a text of another kind"),
            (b"{\"colour\": \"red\", \"size\": 3}", "by its “format”"),
            (b"[1, 2]", "by its “format”"),
            (b"{\"format\": \"song-2\"}", "another program"),
            (
                b"{\"format\": \"tubwright-job-9\"}",
                "“tubwright-job-9”, which this version does not read",
            ),
        ];
        for (bytes, why) in cases {
            let Untaken::Passed(words) = told(bytes) else {
                panic!("{bytes:?} is none of ours");
            };
            let begins = "week/x.json is no job, set or assessment of this workshop: ";
            assert!(words.starts_with(begins) && words.contains(why), "{words}");
            assert!(!words.contains("colour"), "{words}");
        }
    }

    #[test]
    fn what_is_ours_is_taken_or_sent_to_its_screen() {
        let job = &job_files().expect("sound")[0].file;
        let whole = serde_json::to_string(job).expect("writes");
        let copy = serde_json::to_string(&share::sealed(job)).expect("writes");
        let kind = |text: &str| taken(&file(text.as_bytes()), &JOBS).map(|(kind, _)| kind);
        assert_eq!(kind(&whole), Ok(Kind::Job));
        assert_eq!(kind(&copy), Ok(Kind::Copy));
        assert_eq!(kind(&format!("\u{feff}{whole}")), Ok(Kind::Job));
        for (format, screen) in [
            (ASSESSMENT_FORMAT, "Sit an assessment"),
            (RECORD_FORMAT, "Review results"),
            (EVERYTHING_FORMAT, "“Me”"),
            (FAULT_FORMAT, "come with the program"),
        ] {
            let words = told(format!("{{\"format\": \"{format}\"}}").as_bytes()).words();
            assert!(words.contains(screen), "{words}");
        }
        let lines = format!("{{\"format\": \"{RECORD_FORMAT}\"}}\n{{}}\n");
        assert!(told(lines.as_bytes()).words().contains("Review results"));
    }

    #[test]
    fn a_file_of_ours_that_was_cut_is_damaged_and_not_foreign() {
        let job = &job_files().expect("sound")[0].file;
        let whole = serde_json::to_string(job).expect("writes");
        let Untaken::Damaged(words) = told(&whole.as_bytes()[..200]) else {
            panic!("it is ours");
        };
        assert!(words.contains("cut off at line 1"), "{words}");
    }
}
