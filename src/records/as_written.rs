//! A record as it was written, for reading alone: who, when, by which engine, each act with what was
//! shown, and the result as it was sealed. Nothing is worked out again.
//!
//! It serves records of engines that are not here any more, so it asks for little: an act, a line or a
//! result that this version does not know is told by the words that stand in the file.

use serde::Serialize;
use serde_json::Value;

use crate::bench::job::Entry;
use crate::bench::kept;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::bench::words;
use crate::bench::workshop::Workshop;
use crate::records::check::ENGINE;
use crate::records::library::Library;
use crate::records::record::Person;
use crate::records::record::Sitting;
use crate::records::result::JobResult;
use crate::records::result::JudgedResult;
use crate::say;
use crate::scenario::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::read::read_value;

/// What every format of a record begins with.
const FORMATS: &str = "tubwright-record-";
/// Longer texts are no records, bytes.
const MOST_BYTES: usize = 4_000_000;
/// Letters of a value that is told as it stands.
const LONGEST: usize = 200;

/// A record to be read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct AsWritten {
    /// Version of the engine that wrote it.
    pub engine: String,
    /// Number or pseudonym of the candidate.
    pub candidate: String,
    /// The person's name, where the record keeps one.
    pub name: Option<String>,
    /// Name of the job.
    pub job: String,
    /// Title of the job of that name here; none where there is none.
    pub title: Option<String>,
    /// Which assessment, and which job of it; none for practice.
    pub sitting: Option<Sitting>,
    /// When it began, by the candidate's clock.
    pub started: String,
    /// How often the page was left.
    pub n_away: usize,
    /// What was done, in order, each with what was written then.
    pub acts: Vec<ActWritten>,
    /// The result that counts; none where this version cannot read it.
    pub result: Option<JobResult>,
    /// The result as it stands, name and value, where this version cannot read it.
    pub as_it_stands: Vec<(String, String)>,
    /// Its link, as it stands.
    pub link: String,
    /// Its seal, as it stands; none for practice.
    pub seal: Option<String>,
}

/// An act.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ActWritten {
    /// Its number, from 1.
    pub step: usize,
    /// When it began.
    pub tick: Tick,
    /// What was done.
    pub words: String,
    /// Lines of the notebook that were written then.
    pub lines: Vec<LineWritten>,
}

/// A line of the notebook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LineWritten {
    /// When.
    pub tick: Tick,
    /// What the machine was doing.
    pub state: String,
    /// What was shown, as it was shown.
    pub words: String,
}

impl AsWritten {
    /// Reads a record's text; `file` is the name errors use. Names of places and parts are those that
    /// the job has in the library.
    ///
    /// # Errors
    /// When it is no record at all.
    pub fn read(file: &str, text: &str, library: &Library) -> Result<Self, FileError> {
        let mut problems = Problems::new(file);
        let whole = if text.len() > MOST_BYTES {
            let remedy = say!("a record has at most {n}", n = MOST_BYTES);
            problems.add("", say!("{n} bytes", n = text.len()), remedy);
            Value::Null
        } else {
            serde_json::from_str(text).unwrap_or_else(|error| {
                problems.add(
                    "",
                    say!("no JSON"),
                    say!("a record is JSON: {error}", error),
                );
                Value::Null
            })
        };
        let () = problems.into_result(())?;
        let mut problems = Problems::new(file);
        if !said(&whole["format"]).starts_with(FORMATS) {
            let remedy = say!(
                "the format of a record begins with {format}",
                format = FORMATS
            );
            problems.add("format", said(&whole["format"]), remedy);
        } else if !whole["body"].is_object() {
            problems.add(
                "body",
                said(&whole["body"]),
                say!("a record says everything in it"),
            );
        }
        problems.into_result(())?;
        Ok(Self::of(&whole, library))
    }

    fn of(whole: &Value, library: &Library) -> Self {
        let body = &whole["body"];
        let job = said(&body["job"]);
        let task = library.task(&job);
        let unknown = Workshop::default();
        let workshop = task.map_or(&unknown, |task| &task.scenario.workshop);
        let result = result(body);
        Self {
            engine: said(&body["engine"]),
            candidate: said(&body["candidate"]),
            name: known::<Person>(&whole["person"]).map(|person| person.name),
            title: task.map(|task| task.scenario.title.clone()),
            sitting: known(&body["sitting"]),
            started: said(&body["started"]),
            n_away: list(&body["away_s"]).len(),
            acts: acts(body, workshop),
            as_it_stands: match &result {
                Some(_) => Vec::new(),
                None => fields(&body["result"]),
            },
            result,
            link: said(&whole["link"]),
            seal: whole.get("seal").map(said),
            job,
        }
    }

    /// This version would have written it so; it may be worked out again here.
    pub fn is_of_this_engine(&self) -> bool {
        self.engine == ENGINE
    }

    /// The sentence that stands under it.
    pub fn caution(&self) -> String {
        let caution = say!(
            "This is the record as version {version} of the program wrote it. It was not worked out again here: nothing on this page shows that its readings and marks come out.",
            version = self.engine
        );
        if self.is_of_this_engine() {
            return caution;
        }
        let only = say!(
            "Only version {version} can run it again to the bit.",
            version = self.engine
        );
        format!("{caution} {only}")
    }
}

/// The engine that a text of a record names; empty for anything else.
pub fn engine_of(text: &str) -> String {
    let whole: Value = serde_json::from_str(text).unwrap_or_default();
    if said(&whole["format"]).starts_with(FORMATS) {
        said(&whole["body"]["engine"])
    } else {
        String::new()
    }
}

/// What counts, marked by decisions where they are known.
fn result(body: &Value) -> Option<JobResult> {
    let mut result: JobResult = known(&body["result"])?;
    if let Some(judged) = known::<JudgedResult>(&body["judged"]) {
        judged.put_into(&mut result);
    }
    Some(result)
}

fn acts(body: &Value, workshop: &Workshop) -> Vec<ActWritten> {
    let entries = list(&body["log"]);
    let mut acts: Vec<ActWritten> = entries
        .iter()
        .enumerate()
        .map(|(at, entry)| ActWritten {
            step: at + 1,
            tick: entry["tick"].as_u64().unwrap_or(0),
            words: match known::<Entry>(entry) {
                Some(known) => words::act(&known.action, workshop),
                None => as_it_stands(entry, "tick"),
            },
            lines: Vec::new(),
        })
        .collect();
    let mut at = 0;
    for note in list(&body["notebook"]) {
        let tick = note["tick"].as_u64().unwrap_or(0);
        // A line is written when its act ends, and the next may begin at that very moment; a few are
        // written as the act begins.
        while acts.get(at + 1).is_some_and(|next| {
            next.tick < tick || (next.tick == tick && is_at_once(note, &entries[at + 1]))
        }) {
            at += 1;
        }
        if let Some(act) = acts.get_mut(at) {
            act.lines.push(LineWritten {
                tick,
                state: kept::doing(&said(&note["state"])),
                words: line(note, workshop),
            });
        }
    }
    acts
}

/// The line is what this act gives at once: an answer on the phone, the light of a contactless tester.
fn is_at_once(note: &Value, entry: &Value) -> bool {
    let (answer, seen) = (&note["entry"]["answer"], &note["entry"]["observation"]);
    match entry["do"].as_str() {
        Some("phone") => answer.is_object() && answer["question"] == entry["question"],
        Some("voltage_pen") => seen["seen"][0]["key"]
            .as_str()
            .is_some_and(|key| key.starts_with("pen_")),
        _ => false,
    }
}

fn line(note: &Value, workshop: &Workshop) -> String {
    let Some(known) = known::<Note>(note) else {
        return as_it_stands(&note["entry"], "");
    };
    let shown = words::note(&known, workshop);
    match &known.entry {
        NoteEntry::Reading(reading) => match &reading.warning {
            Some(warning) => format!("{shown} ({})", kept::warning(warning)),
            None => shown,
        },
        _ => shown,
    }
}

/// A value as a `T`; none where it is something else to this version.
fn known<T: serde::de::DeserializeOwned>(value: &Value) -> Option<T> {
    (!value.is_null())
        .then(|| read_value("record", value).ok())
        .flatten()
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

/// A text as it is, nothing for nothing, anything else as JSON has it.
fn said(value: &Value) -> String {
    match value {
        Value::Null => String::new(),
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

/// Names and values of an object.
fn fields(value: &Value) -> Vec<(String, String)> {
    let Some(object) = value.as_object() else {
        return vec![("value".to_owned(), said(value))];
    };
    let short = |value: &Value| said(value).chars().take(LONGEST).collect();
    object
        .iter()
        .map(|(name, value)| (name.clone(), short(value)))
        .collect()
}

/// Such as `do: ask, question: when`.
fn as_it_stands(value: &Value, without: &str) -> String {
    let all: Vec<String> = fields(value)
        .into_iter()
        .filter(|(name, _)| name != without)
        .map(|(name, value)| format!("{name}: {value}"))
        .collect();
    all.join(", ")
}
