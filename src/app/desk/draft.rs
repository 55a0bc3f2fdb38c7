//! Drafts: jobs being written, kept in this browser from the first letter on.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;

use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::questions::QUESTIONS;
use crate::scenario::edit;
use crate::scenario::job_file::CustomerFile;
use crate::scenario::job_file::JOB_FORMAT;
use crate::scenario::job_file::JobFile;
use crate::scenario::job_file::RatesFile;
use crate::scenario::job_file::RulesFile;
use crate::scenario::job_file::SiteFile;
use crate::scenario::read::read_back;
use crate::scenario::read::read_value;
use crate::text;

const PREFIX: &str = "draft/";

/// A draft as it is kept: the job stands in it as JSON.
#[derive(Serialize, Deserialize)]
struct Kept {
    id: String,
    job: Value,
    saved_ms: f64,
}

/// A text as a draft is kept.
pub fn is_readable(text: &str) -> bool {
    Kept::read(text).is_some()
}

impl Kept {
    fn read(text: &str) -> Option<Draft> {
        let kept: Self = read_back(text)?;
        Some(Draft {
            id: kept.id,
            job: read_value("draft", &kept.job).ok()?,
            saved_ms: kept.saved_ms,
        })
    }
}

/// A draft.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// Its name in the address.
    pub id: String,
    /// The job.
    pub job: JobFile,
    /// When it was last saved, ms since 1970 by the browser's clock.
    pub saved_ms: f64,
}

impl Draft {
    /// A new draft of a job, named after the moment.
    pub fn of(job: JobFile) -> Self {
        let now_ms = js_sys::Date::now();
        Self {
            id: format!("d{:x}", now_ms as u64),
            job,
            saved_ms: now_ms,
        }
    }

    /// Keeps it.
    ///
    /// # Errors
    /// When the browser refuses or has no room.
    pub async fn keep(&self) -> Result<(), StorageError> {
        let kept = Kept {
            id: self.id.clone(),
            job: edit::as_value(&self.job),
            saved_ms: self.saved_ms,
        };
        let text = serde_json::to_string(&kept).map_err(|_| StorageError::Refused)?;
        Store::open().await.put(&key(&self.id), &text).await
    }

    /// Finds one again.
    ///
    /// # Errors
    /// When the browser refuses, or what was kept cannot be read.
    pub async fn find(id: &str) -> Result<Option<Self>, StorageError> {
        let text = Store::open().await.get(&key(id)).await?;
        text.map(|text| Kept::read(&text).ok_or(StorageError::Damaged))
            .transpose()
    }

    /// All drafts, the latest first.
    pub async fn all() -> Vec<Self> {
        // A list that cannot be read is an empty one; the screen says where things are kept.
        let texts = Store::open().await.all(PREFIX).await.unwrap_or_default();
        let read = |(_, text): &(String, String)| Kept::read(text);
        let mut drafts: Vec<Self> = texts.iter().filter_map(read).collect();
        drafts.sort_by(|a, b| b.saved_ms.total_cmp(&a.saved_ms));
        drafts
    }
}

/// What a draft is kept under.
pub fn key(id: &str) -> String {
    format!("{PREFIX}{id}")
}

/// A job to begin with: a sound machine in a usual home, and a customer who knows little.
pub fn blank() -> JobFile {
    let answers = QUESTIONS.iter().map(|q| {
        let text = match q.id {
            "since" => text!("For a few days."),
            "always" => text!("Yes, every time."),
            "smell" | "worked_on" | "power" => text!("No."),
            "noise" => text!("Not that I noticed."),
            "load" => text!("The usual, about half full."),
            "water" => text!("Yes, the tap is open."),
            _ => text!("I could not say."),
        };
        (q.id.to_owned(), vec![text.to_owned()])
    });
    JobFile {
        format: JOB_FORMAT.to_owned(),
        title: String::new(),
        level: 2,
        skills: Vec::new(),
        machine: "P".to_owned(),
        customer: CustomerFile {
            name: String::new(),
            home: String::new(),
            attitude: "friendly".to_owned(),
            complaint: String::new(),
            answers: answers.collect::<BTreeMap<_, _>>(),
        },
        site: SiteFile {
            load_kg: 3.0,
            unbalance_kg: 0.3,
            water_l: 0.0,
            tap_open: true,
            rcd_ma: Some(30.0),
            room_degc: 20.0,
            water_mpa: 0.3,
            floor_tilt_deg: 0.0,
            notes: String::new(),
        },
        double_faults: Vec::new(),
        faults: Vec::new(),
        van: Vec::new(),
        money: RatesFile {
            labour_per_min: 1.0,
            call_out: 30.0,
            second_visit: 45.0,
            callback: 120.0,
            new_machine: 350.0,
        },
        rules: RulesFile::default(),
        visit: None,
        reference: None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario;

    #[test]
    fn a_new_draft_lacks_only_what_its_writer_must_say() {
        let problems = scenario::job_of("draft", &blank()).expect_err("blank");
        let paths: Vec<&str> = problems.problems.iter().map(|p| p.path.as_str()).collect();
        assert_eq!(paths, ["title", "customer.name", "customer.complaint"]);
    }
}
