//! A result as a file: one job of one candidate, with everything needed to check it and, without
//! replay, to read it.
//!
//! ```text
//! {"format": "tubwright-record-1", "body": {…}, "person": {…}, "link": "…", "seal": "…"}
//! ```
//! The body is hashed; the person's name stands beside it and is bound by a salted hash in the body,
//! so that it can be struck out later and the record still checks. A record is written in one way
//! only: a file that differs from it in a single byte is refused.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::job::Entry;
use crate::bench::notebook::Note;
use crate::records::result::JobResult;
use crate::records::result::JudgedResult;
use crate::records::room_pause::Pause;
use crate::records::seal::Hash;
use crate::records::seal::StartCode;
use crate::say;
use crate::scenario::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::read::read;

/// The format this version reads and writes.
pub const RECORD_FORMAT: &str = "tubwright-record-1";
/// Longer texts are no records, bytes: a thousand acts are a tenth of it.
const MOST_BYTES: usize = 4_000_000;

/// One job of one candidate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Record {
    /// `tubwright-record-1`.
    pub format: String,
    /// What is hashed.
    pub body: Body,
    /// Who it was, where the department keeps names in records.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<Person>,
    /// Hash of the link before and of the body.
    pub link: Hash,
    /// Code over the link; none for practice.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal: Option<Hash>,
}

/// What a record says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Body {
    /// Version of the engine, which can replay it to the bit.
    pub engine: String,
    /// Number or pseudonym of the candidate.
    pub candidate: String,
    /// Salted hash of the person's name, if one was given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person_hash: Option<Hash>,
    /// The assessment it belongs to; none for practice.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sitting: Option<Sitting>,
    /// Name of the job.
    pub job: String,
    /// Hash of the job as it was given, machine and faults included.
    pub scenario: Hash,
    /// Seed of the job.
    pub seed: u64,
    /// Start by the browser's clock, as it was set, RFC 3339; proves nothing.
    pub started: String,
    /// When the page was left and found again, s since the start by that clock.
    pub away_s: Vec<[u32; 2]>,
    /// Pauses of the whole room in this sitting, by the instructor's codes; the same in all its records.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pauses: Vec<Pause>,
    /// Everything that was done.
    #[cfg_attr(not(target_arch = "wasm32"), schemars(with = "Vec<serde_json::Value>"))]
    pub log: Vec<Entry>,
    /// Every line of the notebook as it was shown.
    #[cfg_attr(not(target_arch = "wasm32"), schemars(with = "Vec<serde_json::Value>"))]
    pub notebook: Vec<Note>,
    /// What it came to, economy and evidence by the bill and the notebook.
    pub result: JobResult,
    /// The same by what each decision was worth, where that was worked out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub judged: Option<JudgedResult>,
    /// Hash of the machine's last state.
    pub state: Hash,
    /// Link of the candidate's record before this one; of the sitting for the first.
    pub previous: Hash,
}

/// Which assessment, and which job of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Sitting {
    /// Name of the assessment.
    pub assessment: String,
    /// Hash of the assessment's file.
    pub file: Hash,
    /// Code released at the start; other codes draw other variants.
    pub release: String,
    /// Which job, from 1.
    pub place: u32,
}

/// Who it was.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Person {
    /// Name as the person writes it.
    pub name: String,
    /// Random, so that a name cannot be guessed from its hash.
    pub salt: Hash,
}

impl Person {
    /// What binds the name to a body.
    pub fn hash(&self) -> Hash {
        Hash::of("tubwright person 1", &[self.name.as_bytes(), &self.salt.0])
    }
}

impl Body {
    /// The link a candidate's first record stands on.
    pub fn root(candidate: &str, sitting: Option<&Sitting>) -> Hash {
        let (assessment, release) = sitting.map_or(("", ""), |s| (&s.assessment, &s.release));
        let parts = [
            candidate.as_bytes(),
            assessment.as_bytes(),
            release.as_bytes(),
        ];
        Hash::of("tubwright sitting 1", &parts)
    }

    /// What counts: the marks by decisions where they are known.
    pub fn counted(&self) -> JobResult {
        let mut result = self.result.clone();
        if let Some(judged) = &self.judged {
            judged.put_into(&mut result);
        }
        result
    }

    /// Its hash.
    ///
    /// # Errors
    /// When a number in it is not finite.
    pub fn hash(&self) -> Result<Hash, serde_json::Error> {
        let text = serde_json::to_vec(self)?;
        Ok(Hash::of("tubwright record 1", &[&text]))
    }
}

/// The link over a body.
pub fn link(previous: &Hash, body: &Hash) -> Hash {
    Hash::of("tubwright link 1", &[&previous.0, &body.0])
}

impl Record {
    /// Closes a body: links it, and seals it with the candidate's code.
    ///
    /// # Errors
    /// When a number in it is not finite.
    pub fn close(
        mut body: Body,
        person: Option<Person>,
        code: Option<&StartCode>,
    ) -> Result<Self, serde_json::Error> {
        body.person_hash = person.as_ref().map(Person::hash);
        let link = link(&body.previous, &body.hash()?);
        Ok(Self {
            format: RECORD_FORMAT.to_owned(),
            seal: code.map(|code| code.seal(&link)),
            body,
            person,
            link,
        })
    }

    /// The same with the name struck out; it still checks.
    pub fn without_name(mut self) -> Self {
        self.person = None;
        self
    }

    /// The file.
    ///
    /// # Errors
    /// When a number in it is not finite.
    pub fn write(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string(self).map(|mut text| {
            text.push('\n');
            text
        })
    }

    /// The records of a file that holds one a line, each with the end of its line.
    pub fn lines(text: &str) -> impl Iterator<Item = &str> {
        text.split_inclusive('\n').filter(|line| line.len() > 1)
    }

    /// Reads a file strictly; `file` is the name errors use.
    ///
    /// # Errors
    /// When it is no record of this format, or not written the one way a record is written.
    pub fn read(file: &str, text: &str) -> Result<Self, FileError> {
        let mut problems = Problems::new(file);
        if text.len() > MOST_BYTES {
            let remedy = say!("a record has at most {n}", n = MOST_BYTES);
            problems.add("", say!("{n} bytes", n = text.len()), remedy);
            return Err(failed(problems));
        }
        let record: Self = read(file, text)?;
        if record.format != RECORD_FORMAT {
            problems.add(
                "format",
                &record.format,
                say!("this version reads {format}", format = RECORD_FORMAT),
            );
        } else if record.write().ok().as_deref() != Some(text) {
            let own = record.write().unwrap_or_default();
            let at = own.bytes().zip(text.bytes()).take_while(|(a, b)| a == b);
            let place = say!("byte {n}", n = at.count() + 1);
            problems.add(
                "",
                place,
                say!("not as a record is written: it was edited or saved anew by another program"),
            );
        }
        problems.into_result(record)
    }
}

fn failed(problems: Problems<'_>) -> FileError {
    match problems.into_result(()) {
        Err(error) => error,
        Ok(()) => FileError {
            problems: Vec::new(),
        },
    }
}
