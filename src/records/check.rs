//! Is a record what it says? Its links, its seal, and its log run again on the same engine.
//!
//! The first difference is named, in the order a person would look: is it this candidate's and
//! whole; is the job the same; was each act possible at its tick; did each line read so; do marks
//! and state come out.

use std::sync::Arc;

use serde::Deserialize;
use serde::Serialize;
use thiserror::Error;

use crate::bench::job::Job;
use crate::bench::job::LATEST_TICK;
use crate::bench::notebook::Tick;
use crate::bench::words;
use crate::expert::Reckoning;
use crate::expert::Seen;
use crate::machine::MachineError;
use crate::records::library::Library;
use crate::records::library::Task;
use crate::records::record::Body;
use crate::records::record::Person;
use crate::records::record::Record;
use crate::records::record::link;
use crate::records::result::JobResult;
use crate::records::result::JudgedResult;
use crate::records::seal::AssessmentKey;
use crate::records::seal::Hash;
use crate::say;
use crate::score;
use crate::score::Report;

/// Version of this engine.
pub const ENGINE: &str = env!("CARGO_PKG_VERSION");

/// What is not as it says, the first thing met.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum Difference {
    /// The body does not hash to the link.
    #[error("{}", say!("the link is {link}, body and link before give {own}: the record was edited", link = .link, own = .own))]
    Link {
        /// As it stands.
        link: Hash,
        /// As it would have to be.
        own: Hash,
    },
    /// The name is not the one that was there when the record was made.
    #[error("{}", say!("the name is not the one of the day: it was changed"))]
    Name,
    /// A record of an assessment without its seal.
    #[error("{}", say!("no seal: a record of an assessment has one"))]
    NoSeal,
    /// The seal is another's.
    #[error("{}", say!("the seal is not {candidate}'s for {assessment}: edited, or another candidate's record", candidate = .candidate, assessment = .assessment))]
    Seal {
        /// Who it says it is of.
        candidate: String,
        /// Which assessment.
        assessment: String,
    },
    /// Another engine wrote it.
    #[error("{}", say!("engine {engine} wrote it: verify it with that engine, this is {own}", engine = .0, own = ENGINE))]
    Engine(String),
    /// No such job here.
    #[error("{}", say!("job {job} is not in the library: give its file", job = .0))]
    NoJob(String),
    /// The job of that name is another now.
    #[error("{}", say!("job {job} is another now: {own} instead of {said}", job = .job, own = .own, said = .said))]
    Scenario {
        /// Its name.
        job: String,
        /// As it stands.
        said: Hash,
        /// As the library has it.
        own: Hash,
    },
    /// An act later than a day after the bell.
    #[error("{}", say!("act {act}: tick {tick} is later than a day after the bell", act = .act, tick = .tick))]
    Late {
        /// Which, from 1.
        act: usize,
        /// Its tick.
        tick: Tick,
    },
    /// Hands could not do it.
    #[error("{}", say!("act {act}, {words}: hands could not do this then", act = .act, words = .words))]
    Refused {
        /// Which, from 1.
        act: usize,
        /// What it was.
        words: String,
    },
    /// It was not done at that tick.
    #[error("{}", say!("act {act}, {words}: at tick {said}, could begin at {own} only", act = .act, words = .words, said = .said, own = .own))]
    Tick {
        /// Which, from 1.
        act: usize,
        /// What it was.
        words: String,
        /// As it stands.
        said: Tick,
        /// When it could begin.
        own: Tick,
    },
    /// A notebook line reads otherwise.
    #[error("{}", say!("line {line}: {said}, replay gives {own}", line = .line, said = quoted(.said), own = quoted(.own)))]
    Line {
        /// Which, from 1.
        line: usize,
        /// As it stands; empty where it is missing.
        said: String,
        /// As replayed.
        own: String,
    },
    /// A mark or another number of the result.
    #[error("{}", say!("result, {field}: {said}, replay gives {own}", field = .field, said = .said, own = .own))]
    Result {
        /// Which field.
        field: String,
        /// As it stands.
        said: String,
        /// As replayed.
        own: String,
    },
    /// The machine ended in another state.
    #[error("{}", say!("the machine's last state is another"))]
    State,
    /// The machine cannot be run.
    #[error("{}", say!("the job cannot be run: {why}", why = .0))]
    Machine(String),
}

/// In quotes, with what nobody would see written out; signs of vowels are seen.
fn quoted(text: &str) -> String {
    let shown = |c: char| match c {
        '\'' | '\u{900}'..='\u{97f}' => c.to_string(),
        c => c.escape_debug().to_string(),
    };
    let shown: String = text.chars().map(shown).collect();
    format!("\"{shown}\"")
}

/// How far the seal was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SealState {
    /// It is the candidate's.
    Good,
    /// No key was given.
    NotChecked,
    /// Practice has none.
    Practice,
}

/// Checks a record whole; the job's own task is looked up in the library.
///
/// # Errors
/// The first difference.
pub fn check(
    record: &Record,
    library: &Library,
    key: Option<&AssessmentKey>,
) -> Result<SealState, Difference> {
    let body = &record.body;
    let task = library.task(&body.job);
    let task = task.ok_or_else(|| Difference::NoJob(body.job.clone()));
    let seal = check_seal(record, key)?;
    replay(body, task?).map(|()| seal)
}

/// Checks a record whole against the variant its candidate was given.
///
/// # Errors
/// The first difference.
pub fn check_on(
    record: &Record,
    task: &Task,
    key: Option<&AssessmentKey>,
) -> Result<SealState, Difference> {
    let seal = check_seal(record, key)?;
    replay(&record.body, task).map(|()| seal)
}

/// Link, name and seal alone; no replay.
///
/// # Errors
/// The first difference.
pub fn check_seal(record: &Record, key: Option<&AssessmentKey>) -> Result<SealState, Difference> {
    let body = &record.body;
    let own = body
        .hash()
        .map(|hash| link(&body.previous, &hash))
        .map_err(|error| Difference::Machine(error.to_string()))?;
    if own != record.link {
        return Err(Difference::Link {
            link: record.link,
            own,
        });
    }
    // A name that was struck out leaves its hash behind; a name without a hash was put in.
    if let Some(person) = &record.person
        && body.person_hash != Some(Person::hash(person))
    {
        return Err(Difference::Name);
    }
    let Some(sitting) = &body.sitting else {
        return match record.seal {
            None => Ok(SealState::Practice),
            Some(_) => Err(Difference::Seal {
                candidate: body.candidate.clone(),
                assessment: say!("practice").to_owned(),
            }),
        };
    };
    let seal = record.seal.ok_or(Difference::NoSeal)?;
    let Some(key) = key else {
        return Ok(SealState::NotChecked);
    };
    let code = key.start_code(&sitting.assessment, &body.candidate);
    if code.is_sealed(&record.link, &seal) {
        Ok(SealState::Good)
    } else {
        Err(Difference::Seal {
            candidate: body.candidate.clone(),
            assessment: sitting.assessment.clone(),
        })
    }
}

/// Runs the log again and compares everything that was shown and marked.
fn replay(body: &Body, task: &Task) -> Result<(), Difference> {
    if body.engine != ENGINE {
        return Err(Difference::Engine(body.engine.clone()));
    }
    if body.scenario != task.hash {
        return Err(Difference::Scenario {
            job: body.job.clone(),
            said: body.scenario,
            own: task.hash,
        });
    }
    if let Some(at) = body.log.iter().position(|entry| entry.tick > LATEST_TICK) {
        return Err(Difference::Late {
            act: at + 1,
            tick: body.log[at].tick,
        });
    }
    let failed = |error: &dyn std::fmt::Display| Difference::Machine(error.to_string());
    let scenario = Arc::clone(&task.scenario);
    let mut job = Job::new(scenario, body.seed).map_err(|e| failed(&e))?;
    for (index, entry) in body.log.iter().enumerate() {
        let act = index + 1;
        let words = || words::act(&entry.action, &task.scenario.workshop);
        job.advance_to(entry.tick);
        let own = job.tick();
        if own != entry.tick {
            return Err(Difference::Tick {
                act,
                words: words(),
                said: entry.tick,
                own,
            });
        }
        if job.act(entry.action.clone()).refusal.is_some() {
            return Err(Difference::Refused {
                act,
                words: words(),
            });
        }
    }
    if let Some(trouble) = job.machine().trouble() {
        return Err(failed(trouble));
    }
    compare_lines(body, &job)?;
    let report = score::assess(&job).map_err(|e| failed(&e))?;
    let mut result = JobResult::from_report(&job, &report);
    if body.result.target_minutes.is_none() {
        // It was made before the target time was kept.
        result.target_minutes = None;
    }
    compare_results(&body.result, &result)?;
    if let Some(said) = &body.judged {
        let own = judged_of(&job, &report).map_err(|e| failed(&e))?;
        compare_results(said, &own)?;
    }
    if Hash(job.machine().state_hash().0) == body.state {
        Ok(())
    } else {
        Err(Difference::State)
    }
}

fn compare_lines(body: &Body, job: &Job) -> Result<(), Difference> {
    let workshop = &job.scenario().workshop;
    for line in 0..body.notebook.len().max(job.notebook().len()) {
        let (said, own) = (body.notebook.get(line), job.notebook().get(line));
        if said != own {
            let text = |note: Option<&crate::bench::notebook::Note>| {
                note.map(|note| words::note(note, workshop))
                    .unwrap_or_default()
            };
            return Err(Difference::Line {
                line: line + 1,
                said: text(said),
                own: text(own),
            });
        }
    }
    Ok(())
}

/// Field by field, by the very digits they are written with.
fn compare_results<T: Serialize>(said: &T, own: &T) -> Result<(), Difference> {
    let fields = |result: &T| match serde_json::to_value(result) {
        Ok(serde_json::Value::Object(fields)) => fields,
        _ => serde_json::Map::new(),
    };
    let (said, own) = (fields(said), fields(own));
    for (field, value) in &own {
        let there = said.get(field);
        if there != Some(value) {
            return Err(Difference::Result {
                field: field.clone(),
                said: there.map(ToString::to_string).unwrap_or_default(),
                own: value.to_string(),
            });
        }
    }
    Ok(())
}

/// What each decision of a job was worth; takes seconds.
fn judged_of(job: &Job, report: &Report) -> Result<JudgedResult, MachineError> {
    let reckoning = Reckoning::of(&Seen::of(job)?)?;
    Ok(JudgedResult::of(job, report, &reckoning))
}

/// Makes the body of a finished job's record.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn body_of(
    job: &Job,
    task: &Task,
    candidate: &str,
    previous: Hash,
) -> Result<Body, MachineError> {
    Ok(Body {
        engine: ENGINE.to_owned(),
        candidate: candidate.to_owned(),
        person_hash: None,
        sitting: None,
        job: task.scenario.id.clone(),
        scenario: task.hash,
        seed: job.seed(),
        started: String::new(),
        away_s: Vec::new(),
        pauses: Vec::new(),
        log: job.log().to_vec(),
        notebook: job.notebook().to_vec(),
        result: JobResult::of(job)?,
        judged: None,
        state: Hash(job.machine().state_hash().0),
        previous,
    })
}
