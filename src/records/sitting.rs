//! One candidate's jobs in an assessment, and whether a record is of the job that was drawn.

use std::collections::BTreeMap;

use thiserror::Error;

use crate::assess::assessment_file::AssessmentFile;
use crate::assess::assessment_file::read_assessment;
use crate::assess::decide::Taken;
use crate::assess::draw;
use crate::assess::draw::Drawn;
use crate::records::check;
use crate::records::check::Difference;
use crate::records::check::SealState;
use crate::records::library::Library;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::record::Sitting;
use crate::records::result::JobResult;
use crate::records::seal::AssessmentKey;
use crate::records::seal::Hash;
use crate::say;
use crate::scenario;
use crate::scenario::FileError;
use crate::scenario::job_file::JobFile;

/// An assessment ready to be drawn from.
#[derive(Clone, Debug)]
pub struct Assessment {
    /// The file.
    pub file: AssessmentFile,
    /// Its hash.
    pub hash: Hash,
    machines_of_fault: BTreeMap<String, Vec<String>>,
}

/// Why a record is not what was asked of its candidate.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum NotDrawn {
    /// It belongs to another assessment or none.
    #[error("{}", say!("it is of another assessment than {assessment}", assessment = .0))]
    OtherAssessment(String),
    /// The candidate was given another job at this place.
    #[error("{}", say!("job {n} of this candidate is {own}, not {said}", n = .place, own = .own, said = .said))]
    OtherJob {
        /// Which, from 1.
        place: u32,
        /// As it was drawn.
        own: String,
        /// As it stands.
        said: String,
    },
    /// The drawn variant is no job.
    #[error("{}", say!("the variant that was drawn is no job: {why}", why = .0))]
    Variant(FileError),
    /// The record itself.
    #[error(transparent)]
    Record(#[from] Difference),
}

impl Assessment {
    /// Reads an assessment against a library; `file` is the name errors use.
    ///
    /// # Errors
    /// Everything that is wrong in it.
    pub fn read(file: &str, text: &str, library: &Library) -> Result<Self, FileError> {
        let catalogue = scenario::catalogue()?;
        let read = read_assessment(file, text, library.files(), catalogue)?;
        let canonical = serde_json::to_vec(&read).unwrap_or_default();
        Ok(Self {
            hash: Hash::of("tubwright assessment 1", &[&canonical]),
            file: read,
            machines_of_fault: catalogue
                .faults
                .iter()
                .map(|fault| (fault.id.clone(), fault.machines.keys().cloned().collect()))
                .collect(),
        })
    }

    /// The jobs of one candidate under one released code.
    pub fn draw(&self, library: &Library, candidate: &str, release: &str) -> Vec<Drawn> {
        let seed = self.seed(candidate, release);
        draw::draw(&self.file, library.files(), &self.machines_of_fault, seed.0)
            // A library that has shrunk since the assessment was read.
            .unwrap_or_default()
    }

    /// Names of the jobs of one candidate, in order, whether they were opened or not; empty where the
    /// library has too few.
    pub fn names(&self, library: &Library, candidate: &str, release: &str) -> Vec<String> {
        let seed = self.seed(candidate, release);
        let names = draw::names(&self.file, library.files(), seed.0).unwrap_or_default();
        names.into_iter().map(str::to_owned).collect()
    }

    fn seed(&self, candidate: &str, release: &str) -> Hash {
        let parts = [&self.hash.0[..], candidate.as_bytes(), release.as_bytes()];
        Hash::of("tubwright draw 1", &parts)
    }

    /// What a record of this assessment says about where it belongs.
    pub fn sitting(&self, release: &str, place: u32) -> Sitting {
        Sitting {
            assessment: self.file.id.clone(),
            file: self.hash,
            release: release.to_owned(),
            place,
        }
    }

    /// Checks a record whole: it is of this assessment, of the job and variant its candidate was
    /// given, and holds when it is run again.
    ///
    /// # Errors
    /// The first thing that is not so.
    pub fn check(
        &self,
        record: &Record,
        library: &Library,
        key: Option<&AssessmentKey>,
    ) -> Result<SealState, NotDrawn> {
        let (task, _) = self.task(record, library)?;
        Ok(check::check_on(record, &task, key)?)
    }

    /// The job and variant that a record's candidate was given, with its file.
    ///
    /// # Errors
    /// When the record is of another assessment, or of another job than was drawn.
    pub fn task(&self, record: &Record, library: &Library) -> Result<(Task, JobFile), NotDrawn> {
        let body = &record.body;
        let other = || NotDrawn::OtherAssessment(self.file.id.clone());
        let sitting = body.sitting.as_ref().ok_or_else(other)?;
        if sitting.assessment != self.file.id || sitting.file != self.hash {
            return Err(other());
        }
        let drawn = self.draw(library, &body.candidate, &sitting.release);
        let place = (sitting.place as usize).wrapping_sub(1);
        let own = drawn.get(place);
        let is_own = |own: &&Drawn| own.job == body.job && own.seed == body.seed;
        let Some(own) = own.filter(is_own) else {
            return Err(NotDrawn::OtherJob {
                place: sitting.place,
                own: drawn.get(place).map_or_else(
                    || say!("none" as "no job").to_owned(),
                    |own| format!("{} {}", own.job, own.seed),
                ),
                said: format!("{} {}", body.job, body.seed),
            });
        };
        let task = library.prepare(&own.job, &own.file);
        Ok((task.map_err(NotDrawn::Variant)?, own.file.clone()))
    }
}

impl From<&JobResult> for Taken {
    fn from(result: &JobResult) -> Self {
        Self {
            marks: result.total,
            safe: result.safe,
            fixed: result.fixed,
            parts: result
                .parts
                .iter()
                .map(|part| (part.name.clone(), result.share(&part.name)))
                .collect(),
        }
    }
}
