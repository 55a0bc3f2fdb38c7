//! A job as it is kept: scenario, seed and log; everything else is computed again from them.

use serde::Deserialize;
use serde::Serialize;

use crate::app::session::Session;
use crate::app::store::StorageError;
use crate::app::suspects::SavedSuspect;
use crate::app::view::debrief::in_words;
use crate::bench::job::Entry;
use crate::bench::job::LATEST_TICK;
use crate::bench::job::ends_some_day;
use crate::bench::notebook::Tick;
use crate::language::in_english;
use crate::language::worded;
use crate::records::practice::PRACTICE_FORMAT;
use crate::records::practice::Practice;
use crate::records::result::JobResult;
use crate::scenario::read::read_back;
use crate::score;

/// Version of this format.
const FORMAT: u32 = 1;
/// Between the words of a verdict.
const BETWEEN: &str = " · ";

/// The engine that wrote a log, and that can replay it to the bit.
pub fn engine() -> &'static str {
    env!("CARGO_PKG_VERSION")
}

/// A job as it is kept.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SavedJob {
    /// Version of the format.
    pub format: u32,
    /// Version of the engine.
    pub engine: String,
    /// Name of the scenario.
    pub scenario: String,
    /// Seed.
    pub seed: u64,
    /// Everything that was done.
    pub log: Vec<Entry>,
    /// How far the technician had watched.
    pub seen: Tick,
    /// Suspects on the card.
    #[serde(default)]
    pub suspects: Vec<SavedSuspect>,
    /// When it was last saved, ms since 1970 by the browser's clock; orders the list of jobs.
    pub saved_ms: f64,
    /// How it ended, once it did.
    #[serde(default)]
    pub verdict: Option<Verdict>,
    /// It is a try from the middle of a finished job: practice that does not count.
    #[serde(default)]
    pub tried: Option<Tried>,
}

/// A try from the middle of a finished job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tried {
    /// Steps that were taken over.
    pub steps: usize,
    /// The finished job's log.
    pub whole: Vec<Entry>,
    /// How it had ended.
    pub verdict: Option<Verdict>,
}

/// What the list of jobs shows of a finished one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Verdict {
    /// Plain English words, such as `Repaired · safe`.
    pub words: String,
    /// Marks of 100.
    pub marks: f64,
}

impl Verdict {
    /// The words as they are shown.
    pub fn said(&self) -> String {
        let words: Vec<_> = self.words.split(BETWEEN).map(worded).collect();
        words.join(BETWEEN)
    }
}

impl SavedJob {
    /// A job nobody has touched yet.
    pub fn fresh(scenario: &str, seed: u64) -> Self {
        Self {
            format: FORMAT,
            engine: engine().to_owned(),
            scenario: scenario.to_owned(),
            seed,
            log: Vec::new(),
            seen: 0,
            suspects: Vec::new(),
            saved_ms: 0.0,
            verdict: None,
            tried: None,
        }
    }

    /// Goes back to before a step, counted from 0, of a finished job, which is kept beside.
    pub fn try_from(&mut self, step: usize) {
        let tried = self.tried.take().unwrap_or_else(|| Tried {
            steps: 0,
            whole: self.log.clone(),
            verdict: self.verdict.take(),
        });
        self.log.truncate(step);
        (self.seen, self.verdict) = (0, None);
        self.tried = Some(Tried {
            steps: self.log.len(),
            ..tried
        });
    }

    /// Leaves a try: the finished job is as it was.
    pub fn back_to_whole(&mut self) {
        if let Some(tried) = self.tried.take() {
            (self.log, self.verdict, self.seen) = (tried.whole, tried.verdict, 0);
        }
    }

    /// Takes over what a session has come to. Once the job is over, and then only, this gives what a
    /// person keeps of it for good.
    pub fn take(&mut self, session: &Session, now_ms: f64) -> Option<Practice> {
        self.log = session.job().log().to_vec();
        self.seen = session.live().tick();
        self.suspects.clone_from(&session.suspects);
        self.saved_ms = now_ms;
        if !session.job().is_over() || self.verdict.is_some() || self.tried.is_some() {
            return None;
        }
        let job = session.job();
        // A machine that was set up for the job is set up for its marks.
        let report = in_english(|| score::assess(job)).ok()?;
        self.verdict = Some(Verdict {
            words: in_english(|| in_words(&report)),
            marks: report.total,
        });
        Some(Practice {
            format: PRACTICE_FORMAT.to_owned(),
            engine: self.engine.clone(),
            job: self.scenario.clone(),
            title: job.scenario().title.clone(),
            skills: job.scenario().skills.clone(),
            seed: self.seed,
            ended_ms: now_ms,
            log: self.log.clone(),
            result: in_english(|| JobResult::from_report(job, &report)),
        })
    }

    /// The key under which a scenario's job is kept.
    pub fn key(scenario: &str) -> String {
        format!("job/{scenario}")
    }

    /// Reads what was kept.
    ///
    /// # Errors
    /// When it is no job of this format.
    pub fn read(text: &str) -> Result<Self, StorageError> {
        let saved: Self = read_back(text).ok_or(StorageError::Damaged)?;
        if saved.format == FORMAT {
            Ok(saved)
        } else {
            Err(StorageError::Damaged)
        }
    }

    /// It can be run in a time that somebody waits: what this browser has not kept itself is held to that.
    pub fn ends_some_day(&self) -> bool {
        let whole = self.tried.as_ref().map_or(&[][..], |tried| &tried.whole);
        self.seen <= LATEST_TICK && ends_some_day(&self.log) && ends_some_day(whole)
    }

    /// As text.
    ///
    /// # Errors
    /// When a number in the log is not finite; acts are checked before they are logged.
    pub fn write(&self) -> Result<String, StorageError> {
        serde_json::to_string(self).map_err(|_| StorageError::Damaged)
    }

    /// The engine that wrote it is this one, so the replay is exact.
    pub fn is_of_this_engine(&self) -> bool {
        self.engine == engine()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::Action;
    use crate::language::Catalogue;
    use crate::language::Key;
    use crate::language::id;
    use crate::language::speak;

    #[test]
    fn a_saved_job_is_read_back_as_it_was() {
        let mut job = SavedJob::fresh("j1", u64::MAX);
        job.log.push(Entry {
            tick: 12,
            action: Action::Lid { open: true },
        });
        job.log.push(Entry {
            tick: 40,
            action: Action::Quote { price: 0.1 + 0.2 },
        });
        job.suspects.push(SavedSuspect {
            cause: "tap_shut".into(),
            confidence: 2,
            struck: false,
        });
        let text = job.write().expect("finite numbers");
        assert_eq!(SavedJob::read(&text), Ok(job));
    }

    #[test]
    fn a_try_from_the_middle_leaves_the_finished_job_as_it_was() {
        let mut job = SavedJob::fresh("j1", 3);
        job.log = (0..5)
            .map(|tick| Entry {
                tick,
                action: Action::Note,
            })
            .collect();
        job.verdict = Some(Verdict {
            words: "Repaired".into(),
            marks: 80.0,
        });
        let whole = job.clone();
        job.try_from(3);
        assert_eq!((job.log.len(), &job.verdict), (3, &None));
        job.try_from(2);
        assert_eq!(job.tried.as_ref().map(|t| t.steps), Some(2));
        job.back_to_whole();
        assert_eq!(job, whole);
    }

    #[test]
    fn a_verdict_that_is_kept_in_english_is_said_in_the_language_of_the_reader() {
        let verdict = Verdict {
            words: "Repaired · not safe".into(),
            marks: 80.0,
        };
        assert_eq!(verdict.said(), "Repaired · not safe");
        let message = |english: &str, spanish: &str| {
            format!("{} = {spanish}\n", id(english, Key::of(english)))
        };
        let text = message("Repaired", "Reparada") + &message("not safe", "no es segura");
        speak(Catalogue::read("es", &text, ',').ok());
        assert_eq!(verdict.said(), "Reparada · no es segura");
        speak(None);
    }

    #[test]
    fn foreign_text_is_damaged_and_never_a_panic() {
        for text in ["", "{}", "null", "[1]", "{\"format\":9}"] {
            assert_eq!(SavedJob::read(text), Err(StorageError::Damaged), "{text}");
        }
    }
}
