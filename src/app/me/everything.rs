//! Everything a person has here, as one file: to take along, to bring in on another device, and to
//! erase. The file is checked entry by entry; what is newer here stays.
//!
//! ```text
//! {"format": "tubwright-everything-1", "entries": {"job/…": "…", "done/…": "…"}}
//! ```

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::app::assessments::given::Given;
use crate::app::cohort;
use crate::app::desk;
use crate::app::kept_sets;
use crate::app::me::history;
use crate::app::outbox;
use crate::app::own;
use crate::app::settings::Settings;
use crate::app::sitting::state::Sitting;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::bench::job::ends_some_day;
use crate::records::practice::Practice;
use crate::say;

/// The format this version reads and writes.
pub const EVERYTHING_FORMAT: &str = "tubwright-everything-1";

/// The file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Everything {
    format: String,
    entries: BTreeMap<String, String>,
}

/// What has become of a file's entries.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Merged {
    /// What is to be kept, by key.
    pub taken: BTreeMap<String, String>,
    /// Entries that were here already, or newer here.
    pub n_left: usize,
    /// What cannot be read, a sentence each.
    pub refused: Vec<String>,
}

/// The file's text.
///
/// # Errors
/// When the browser refuses.
pub async fn gather() -> Result<String, StorageError> {
    let entries = Store::open().await.all("").await?.into_iter().collect();
    let file = Everything {
        format: EVERYTHING_FORMAT.to_owned(),
        entries,
    };
    serde_json::to_string(&file).map_err(|_| StorageError::Refused)
}

/// Brings a file in; says what happened.
pub async fn bring(name: &str, text: &str) -> Vec<String> {
    let store = Store::open().await;
    let here: BTreeMap<String, String> = match store.all("").await {
        Ok(all) => all.into_iter().collect(),
        Err(error) => return vec![error.to_string()],
    };
    let merged = match merge(name, text, &here) {
        Ok(merged) => merged,
        Err(why) => return vec![why],
    };
    for (key, text) in &merged.taken {
        if let Err(error) = store.put(key, text).await {
            return vec![say!(
                "{file}: not all could be kept. {why}",
                file = name,
                why = error
            )];
        }
    }
    let mut told = vec![match (merged.taken.len(), merged.n_left) {
        (n @ 1, left) => say!(
            "{file}: {n} entry taken in, {left} left as they are here.",
            file = name,
            n,
            left
        ),
        (n, left) => say!(
            "{file}: {n} entries taken in, {left} left as they are here.",
            file = name,
            n,
            left
        ),
    }];
    told.extend(merged.refused);
    told
}

/// Erases everything.
///
/// # Errors
/// When the browser refuses; the rest is still there then.
pub async fn erase() -> Result<(), StorageError> {
    let store = Store::open().await;
    for (key, _) in store.all("").await? {
        store.remove(&key).await?;
    }
    Ok(())
}

/// What a file brings to what is here.
///
/// # Errors
/// When it is no such file, in a sentence.
pub fn merge(name: &str, text: &str, here: &BTreeMap<String, String>) -> Result<Merged, String> {
    let file: Everything = serde_json::from_str(text).map_err(|error| {
        say!("{file}: this is no file of everything you have here ({error}); choose the one that “Save everything” made.", file = name, error)
    })?;
    if file.format != EVERYTHING_FORMAT {
        return Err(say!(
            "{file}: format: \"{found}\": this version reads \"{format}\".",
            file = name,
            found = file.format,
            format = EVERYTHING_FORMAT
        ));
    }
    let mut merged = Merged::default();
    for (key, text) in file.entries {
        if !is_readable(&key, &text) {
            merged.refused.push(say!(
                "{file}: entries.{key}: it cannot be read and was left out.",
                file = name,
                key
            ));
        } else if here
            .get(&key)
            .is_some_and(|old| !is_newer(&key, &text, old))
        {
            merged.n_left += 1;
        } else {
            merged.taken.insert(key, text);
        }
    }
    Ok(merged)
}

/// A text as it is kept under this key.
pub fn is_readable(key: &str, text: &str) -> bool {
    match key.split_once('/') {
        Some(("job", id)) => {
            SavedJob::read(text).is_ok_and(|saved| saved.scenario == id && saved.ends_some_day())
        }
        Some(("own", id)) => own::is_readable(id, text),
        Some(("draft", _)) => desk::is_readable(text),
        Some(("set", _)) => kept_sets::is_readable(text),
        None if key == desk::SET_KEY => desk::is_set_readable(text),
        Some(_) if key.starts_with(history::PREFIX) => {
            Practice::read(text).is_some_and(|done| ends_some_day(&done.log))
        }
        Some(("outbox" | "parked", _)) => outbox::is_readable(text),
        None if key == "lrs" => outbox::is_place(text),
        Some(("ruling", _)) => cohort::is_ruling(text),
        Some(("given", _)) => Given::read(text).is_some(),
        None if key == "sitting" => Sitting::read(text).is_some(),
        None if key == "settings" => serde_json::from_str::<Settings>(text).is_ok(),
        _ => false,
    }
}

/// Later than what is here. Only jobs and drafts change; all else stays as it was first kept.
fn is_newer(key: &str, text: &str, old: &str) -> bool {
    #[derive(Deserialize)]
    struct Dated {
        saved_ms: f64,
    }
    let saved = |text: &str| serde_json::from_str::<Dated>(text).map_or(0.0, |d| d.saved_ms);
    (key.starts_with("job/") || key.starts_with("draft/")) && saved(text) > saved(old)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::Action;
    use crate::bench::job::Entry;

    fn job(saved_ms: f64) -> String {
        let mut saved = SavedJob::fresh("j1", 7);
        saved.saved_ms = saved_ms;
        saved.write().expect("finite")
    }

    fn file(entries: &[(&str, &str)]) -> String {
        let entries = entries
            .iter()
            .map(|(key, text)| ((*key).to_owned(), (*text).to_owned()))
            .collect();
        let file = Everything {
            format: EVERYTHING_FORMAT.into(),
            entries,
        };
        serde_json::to_string(&file).expect("finite")
    }

    #[test]
    fn what_is_newer_here_stays_and_what_is_older_is_replaced() {
        let here = BTreeMap::from([("job/j1".to_owned(), job(20.0))]);
        let of = |ms| merge("f", &file(&[("job/j1", &job(ms))]), &here).expect("a file");
        assert_eq!((of(10.0).taken.len(), of(10.0).n_left), (0, 1));
        assert_eq!((of(30.0).taken.len(), of(30.0).n_left), (1, 0));
        assert_eq!(of(20.0).n_left, 1);
    }

    #[test]
    fn what_cannot_be_read_is_named_and_the_rest_is_taken() {
        let text = file(&[
            ("job/j1", &job(1.0)),
            ("job/other", &job(1.0)),
            ("job/j2", "{}"),
            ("done/5/j1", "[]"),
            ("elsewhere", "1"),
            ("settings", "{\"volume\":0.2}"),
        ]);
        let merged = merge("mine.json", &text, &BTreeMap::new()).expect("a file");
        let taken: Vec<&str> = merged.taken.keys().map(String::as_str).collect();
        assert_eq!(taken, ["job/j1", "settings"]);
        assert_eq!(merged.refused.len(), 4);
        assert!(merged.refused[0].contains("mine.json: entries.done/5/j1"));
    }

    #[test]
    fn a_job_that_would_run_for_ever_is_not_taken_in() {
        let with = |change: &dyn Fn(&mut SavedJob)| {
            let mut saved = SavedJob::fresh("j1", 7);
            change(&mut saved);
            is_readable("job/j1", &saved.write().expect("finite"))
        };
        let late = || Entry {
            tick: u64::MAX,
            action: Action::Note,
        };
        assert!(with(&|saved| saved.seen = 36_000));
        assert!(!with(&|saved| saved.seen = u64::MAX));
        assert!(!with(&|saved| saved.log.push(late())));
        assert!(!with(&|saved| {
            saved.log.push(late());
            saved.try_from(0);
        }));
    }

    #[test]
    fn another_file_is_refused_by_name() {
        for text in ["", "[]", "{\"format\":\"x\",\"entries\":{}}"] {
            let why = merge("a.json", text, &BTreeMap::new()).expect_err("refused");
            assert!(why.starts_with("a.json: "), "{why}");
        }
    }
}
