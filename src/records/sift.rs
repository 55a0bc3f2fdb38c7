//! One file of records as the review of a cohort takes it in: what each is of, whether it holds, and
//! what was really wrong with its machine.

use serde::Deserialize;
use serde::Serialize;

use crate::language;
use crate::language::in_english;
use crate::records::as_written;
use crate::records::chain::ERASED_FORMAT;
use crate::records::chain::Erased;
use crate::records::check;
use crate::records::check::SealState;
use crate::records::cohort::Attempt;
use crate::records::library::Library;
use crate::records::library::Task;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::records::record::Sitting;
use crate::records::room_pause::Pause;
use crate::records::seal::AssessmentKey;
use crate::records::seal::Hash;
use crate::records::sitting::Assessment;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::read::read_back;

/// What is known of one record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sifted {
    /// The attempt; none for what could not be read, or was erased.
    pub attempt: Option<Attempt>,
    /// The candidate's name, where the record keeps one.
    pub name: Option<String>,
    /// The assessment's name; empty for practice.
    pub assessment: String,
    /// The word that was released at the start.
    pub release: String,
    /// Which job of it, from 1; 0 for practice.
    pub place: u32,
    /// Names of all jobs its candidate was given, opened or not; empty where that is not known.
    #[serde(default)]
    pub drawn: Vec<String>,
    /// The engine that wrote it; empty for what is no record at all.
    #[serde(default)]
    pub engine: String,
    /// When it began, by the candidate's clock.
    pub started: String,
    /// How often the page was left.
    pub n_away: usize,
    /// Pauses of the whole room.
    #[serde(default)]
    pub pauses: Vec<Pause>,
    /// Why it is not accepted; none when it is, as far as it was looked at.
    pub difference: Option<String>,
    /// The same in the reader's language, where that is not English.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub told: Option<String>,
    /// How far its seal was looked at.
    pub seal: Option<SealState>,
    /// What a candidate's first record stands on, the link before this one, and its own.
    pub links: [Hash; 3],
}

impl Sifted {
    /// What is known of a record that was erased.
    pub fn erased(erased: &Erased) -> Self {
        let why = || {
            if erased.holds() {
                say!("erased; its place in the row is kept").to_owned()
            } else {
                say!("erased, but its link does not follow from what is left: it was edited")
                    .to_owned()
            }
        };
        Self {
            links: [erased.previous, erased.previous, erased.link],
            difference: Some(in_english(why)),
            told: elsewhere(|| Some(why())),
            ..nothing()
        }
    }

    /// Why it is not accepted, as the reader is told it.
    pub fn why(&self) -> Option<&str> {
        self.told
            .as_ref()
            .or(self.difference.as_ref())
            .map(String::as_str)
    }
}

/// What records are held against.
pub struct Against<'a> {
    /// The jobs there are.
    pub library: &'a Library,
    /// Assessments, each with its key where it is known.
    pub assessments: Vec<(Assessment, Option<AssessmentKey>)>,
    /// Logs are run again.
    pub replays: bool,
}

impl Against<'_> {
    /// Takes a file's records in, one a line; `file` is the name errors use.
    pub fn file(&self, file: &str, text: &str) -> Vec<Sifted> {
        let lines: Vec<&str> = Record::lines(text).collect();
        let one_a_line = lines.len() > 1;
        lines
            .iter()
            .enumerate()
            .map(|(at, line)| {
                let name = || {
                    if one_a_line {
                        say!("{file}, line {n}", file, n = at + 1)
                    } else {
                        file.to_owned()
                    }
                };
                self.line(&name, line)
            })
            .collect()
    }

    fn line(&self, name: &dyn Fn() -> String, line: &str) -> Sifted {
        if line.contains(ERASED_FORMAT)
            && let Some(erased) = read_back::<Erased>(line)
        {
            return Sifted::erased(&erased);
        }
        let read = || Record::read(&name(), line).map_err(|error| error.to_string());
        match in_english(read) {
            Ok(record) => self.record(record),
            Err(why) => Sifted {
                engine: as_written::engine_of(line),
                difference: Some(why),
                told: elsewhere(|| read().err()),
                ..nothing()
            },
        }
    }

    /// Takes one record in.
    pub fn record(&self, record: Record) -> Sifted {
        let body = &record.body;
        let sitting = body.sitting.as_ref();
        let (file, checked) = in_english(|| self.checked(&record));
        let told = match checked {
            Ok(_) => None,
            Err(_) => elsewhere(|| self.checked(&record).1.err()),
        };
        let target = file.as_ref().and_then(|file| file.reference);
        let truth = file
            .as_ref()
            .map(|file| file.faults.iter().map(|f| f.id.clone()).collect());
        Sifted {
            name: record.person.as_ref().map(|person| person.name.clone()),
            assessment: sitting.map_or_else(String::new, |s| s.assessment.clone()),
            release: sitting.map_or_else(String::new, |s| s.release.clone()),
            place: sitting.map_or(0, |s| s.place),
            drawn: self.drawn(&record),
            engine: body.engine.clone(),
            started: body.started.clone(),
            n_away: body.away_s.len(),
            pauses: body.pauses.clone(),
            seal: checked.as_ref().ok().copied(),
            difference: checked.err(),
            told,
            links: [
                Body::root(&body.candidate, sitting),
                body.previous,
                record.link,
            ],
            attempt: Some(Attempt {
                truth: truth.unwrap_or_default(),
                skills: file.map(|file| file.skills).unwrap_or_default(),
                result: record.body.counted().with_target_of(target),
                candidate: record.body.candidate,
                job: record.body.job,
            }),
        }
    }

    /// The file of the job that was given, where it is known, and how far the record holds.
    fn checked(&self, record: &Record) -> (Option<JobFile>, Result<SealState, String>) {
        let (task, file, key) = match self.task(record) {
            Ok(found) => found,
            Err(why) => return (None, Err(why)),
        };
        let held = if self.replays {
            check::check_on(record, &task, key.as_ref())
        } else {
            check::check_seal(record, key.as_ref())
        };
        (
            Some(file),
            held.map_err(|difference| difference.to_string()),
        )
    }

    /// Names of the jobs its candidate was given; empty where the assessment is not known.
    fn drawn(&self, record: &Record) -> Vec<String> {
        let body = &record.body;
        let Some(sitting) = &body.sitting else {
            return Vec::new();
        };
        self.of(sitting).map_or_else(Vec::new, |(assessment, _)| {
            assessment.names(self.library, &body.candidate, &sitting.release)
        })
    }

    /// The very assessment that a record is of, with its key.
    fn of(&self, sitting: &Sitting) -> Option<&(Assessment, Option<AssessmentKey>)> {
        let mut known = self.assessments.iter();
        known.find(|(one, _)| one.hash == sitting.file)
    }

    /// The job that a record's candidate was given, its file, and the key that seals it.
    ///
    /// # Errors
    /// Why it cannot be known, in a sentence.
    pub fn task(&self, record: &Record) -> Result<(Task, JobFile, Option<AssessmentKey>), String> {
        let body = &record.body;
        let Some(sitting) = &body.sitting else {
            let file = self.library.files().get(&body.job);
            let found = self.library.task(&body.job).zip(file);
            return found
                .map(|(task, file)| (task.clone(), file.clone(), None))
                .ok_or_else(|| say!("job {job} is not among those here", job = body.job));
        };
        let Some((assessment, key)) = self.of(sitting) else {
            return Err(say!(
                "assessment {assessment} is not here: open its file too",
                assessment = sitting.assessment
            ));
        };
        let (task, file) = assessment
            .task(record, self.library)
            .map_err(|error| error.to_string())?;
        Ok((task, file, key.clone()))
    }
}

/// What is said in the reader's language; none where that is English.
fn elsewhere(why: impl FnOnce() -> Option<String>) -> Option<String> {
    if language::code() == "en" {
        return None;
    }
    why()
}

/// A row of which nothing is known yet.
pub fn nothing() -> Sifted {
    Sifted {
        attempt: None,
        name: None,
        assessment: String::new(),
        release: String::new(),
        place: 0,
        drawn: Vec::new(),
        engine: String::new(),
        started: String::new(),
        n_away: 0,
        pauses: Vec::new(),
        difference: None,
        told: None,
        seal: None,
        links: [Hash([0; 32]); 3],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Catalogue;
    use crate::language::speak;

    #[test]
    fn why_not_stays_english_for_files_and_is_told_in_the_language_that_is_spoken() {
        let left = Erased {
            format: ERASED_FORMAT.to_owned(),
            body: Hash([1; 32]),
            previous: Hash([2; 32]),
            link: Hash([3; 32]),
            seal: None,
        };
        let english = Sifted::erased(&left);
        assert_eq!(english.told, None);
        assert_eq!(english.why(), english.difference.as_deref());
        speak(Some(Catalogue::pseudo()));
        let told = Sifted::erased(&left);
        speak(None);
        assert_eq!(told.difference, english.difference);
        assert!(told.why().is_some_and(|why| why.starts_with('⟦')));
    }
}
