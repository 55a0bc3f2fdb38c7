//! A job as its card shows it: what it is about, what it takes, how far it has got.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::app::format;
use crate::app::store::SavedJob;
use crate::bench::scenario::Scenario;
use crate::language::worded;
use crate::say;
use crate::scenario::parts_of;

/// How far a job has got.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Progress {
    /// Not begun.
    #[default]
    New,
    /// Begun: minutes on site, and when it was last saved.
    Begun {
        /// Minutes on site, such as `12 min`.
        on_site: String,
        /// When it was saved, ms.
        saved_ms: f64,
    },
    /// Finished: verdict and marks.
    Done {
        /// Plain words.
        words: String,
        /// Marks of 100.
        marks: String,
    },
}

/// A job as its card shows it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct JobTile {
    /// Name of the scenario.
    pub id: String,
    /// Title.
    pub title: String,
    /// The complaint.
    pub quote: String,
    /// Customer.
    pub who: String,
    /// Machine.
    pub machine: String,
    /// 1 to 5.
    pub level: u8,
    /// Skills practised.
    pub skills: Vec<String>,
    /// What a skilled technician needs, such as `35 min`.
    pub takes: String,
    /// Parts it is about, shown to nobody unless they choose one to practise.
    pub parts: Vec<String>,
    /// Marks of 100, once it is finished.
    pub marks: Option<f64>,
    /// How far it has got.
    pub progress: Progress,
}

/// The cards, by level and then by title.
pub fn tiles(scenarios: &[Arc<Scenario>], saved: &[SavedJob]) -> Vec<JobTile> {
    let by_id: BTreeMap<&str, &SavedJob> = saved.iter().map(|s| (s.scenario.as_str(), s)).collect();
    let mut scenarios: Vec<&Scenario> = scenarios.iter().map(|s| &**s).collect();
    // By the texts of the files: the order is the same in every language.
    scenarios.sort_by(|a, b| (a.level, &a.skills, &a.title).cmp(&(b.level, &b.skills, &b.title)));
    let words = |texts: &[String]| texts.iter().map(|text| worded(text).into_owned()).collect();
    scenarios
        .into_iter()
        .map(|s| JobTile {
            id: s.id.clone(),
            title: worded(&s.title).into_owned(),
            quote: worded(&s.customer.complaint).into_owned(),
            who: worded(&s.customer.name).into_owned(),
            machine: worded(&s.machine.name).into_owned(),
            level: s.level,
            skills: words(&s.skills),
            takes: takes(s.reference.minutes),
            parts: words(&parts_of(s)),
            marks: by_id
                .get(s.id.as_str())
                .and_then(|s| s.verdict.as_ref())
                .map(|verdict| verdict.marks),
            progress: by_id
                .get(s.id.as_str())
                .map_or(Progress::New, |s| progress(s)),
        })
        .collect()
}

/// How long a skilled technician needs, once that is known.
fn takes(minutes: f64) -> String {
    if minutes >= 1.0 {
        say!("about {n} min", n = format!("{minutes:.0}"))
    } else {
        String::new()
    }
}

fn progress(saved: &SavedJob) -> Progress {
    match &saved.verdict {
        Some(verdict) => Progress::Done {
            words: verdict.said(),
            marks: say!("{marks} of 100", marks = format!("{:.0}", verdict.marks)),
        },
        None if saved.log.is_empty() => Progress::New,
        None => Progress::Begun {
            on_site: format::on_site(saved.seen),
            saved_ms: saved.saved_ms,
        },
    }
}
