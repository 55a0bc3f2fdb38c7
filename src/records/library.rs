//! Jobs to replay records on, with the hash that says a job, its machine and its faults are the
//! same as then.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::bench::scenario::Scenario;
use crate::records::seal::Hash;
use crate::scenario;
use crate::scenario::FileError;
use crate::scenario::job_file::JobFile;

/// A job ready to be worked, and its hash.
#[derive(Clone, Debug)]
pub struct Task {
    /// The job.
    pub scenario: Arc<Scenario>,
    /// Its hash.
    pub hash: Hash,
}

/// The jobs that ship and those that were added.
#[derive(Clone, Debug)]
pub struct Library {
    files: BTreeMap<String, JobFile>,
    tasks: BTreeMap<String, Task>,
    machines: BTreeMap<String, Hash>,
    catalogue: Hash,
}

impl Library {
    /// The jobs that ship.
    ///
    /// # Errors
    /// When a shipped file is broken; a test holds that none is.
    pub fn shipped() -> Result<Self, FileError> {
        let machines = scenario::machine_files()?.iter();
        let mut library = Self {
            files: BTreeMap::new(),
            tasks: BTreeMap::new(),
            machines: machines
                .map(|machine| (machine.id.clone(), hash_of("tubwright machine 1", machine)))
                .collect(),
            catalogue: hash_of("tubwright faults 1", scenario::catalogue()?),
        };
        for job in scenario::job_files()? {
            library.add(job.id, &job.file)?;
        }
        Ok(library)
    }

    /// Adds a job, or replaces the one of that name.
    ///
    /// # Errors
    /// Everything that is wrong in the file.
    pub fn add(&mut self, id: &str, file: &JobFile) -> Result<(), FileError> {
        let task = self.prepare(id, file)?;
        self.tasks.insert(id.to_owned(), task);
        self.files.insert(id.to_owned(), file.clone());
        Ok(())
    }

    /// Makes a job ready without adding it: a personal variant.
    ///
    /// # Errors
    /// Everything that is wrong in the file.
    pub fn prepare(&self, id: &str, file: &JobFile) -> Result<Task, FileError> {
        let text = serde_json::to_string(file).unwrap_or_default();
        let machine = self.machines.get(&file.machine).copied();
        let machine = machine.unwrap_or(Hash([0; 32]));
        let parts = [
            id.as_bytes(),
            text.as_bytes(),
            &machine.0,
            &self.catalogue.0,
        ];
        Ok(Task {
            scenario: Arc::new(scenario::job_from_text(id, id, &text)?),
            hash: Hash::of("tubwright scenario 1", &parts),
        })
    }

    /// A job by name.
    pub fn task(&self, id: &str) -> Option<&Task> {
        self.tasks.get(id)
    }

    /// The files by name.
    pub fn files(&self) -> &BTreeMap<String, JobFile> {
        &self.files
    }
}

fn hash_of(label: &str, file: &impl serde::Serialize) -> Hash {
    Hash::of(label, &[&serde_json::to_vec(file).unwrap_or_default()])
}
