//! The queue: one entry a record and one a sitting, with its statements, how often it was tried, and
//! why it is still here.

use std::cell::Cell;

use gloo::events::EventListener;
use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;
use wasm_bindgen_futures::spawn_local;

use crate::app::outbox::place::Next;
use crate::app::outbox::place::Place;
use crate::app::outbox::place::after;
use crate::app::sitting;
use crate::app::sitting::state::Sitting;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::assess::date;
use crate::assess::decide::Decided;
use crate::language::in_english;
use crate::records::sitting::Assessment;
use crate::records::xapi;
use crate::records::xapi::Deployment;
use crate::records::xapi::Whole;
use crate::say;
use crate::scenario::read::read_back;

/// Keys of what waits start so.
pub const WAITING: &str = "outbox/";
/// Keys of what the store refuses for good.
pub const PARKED: &str = "parked/";
/// Statements sent at once: a store refuses a list whole, so lists stay short.
const BATCH: usize = 50;

/// One entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Statements that the store does not have yet.
    pub statements: Vec<Value>,
    /// How often it was tried.
    pub tries: u32,
    /// Why it is still here.
    pub why: String,
}

thread_local! {
    static SENDING: Cell<bool> = const { Cell::new(false) };
    static ASKED_AGAIN: Cell<bool> = const { Cell::new(false) };
}

/// Puts the statements of a sitting that was handed in into the queue and starts sending: those of each
/// job, then those of the whole. Without a store nothing is done.
///
/// # Errors
/// When the browser refuses or has no room: the file of results is the way then.
pub async fn put(
    own: &Sitting,
    assessment: &Assessment,
    decided: &Decided,
) -> Result<(), StorageError> {
    let Some(place) = Place::kept().await else {
        return Ok(());
    };
    let Ok(library) = sitting::library() else {
        return Ok(());
    };
    let names = Deployment {
        base: format!("{}/", place.address.trim_end_matches('/')),
        home_page: place.address.clone(),
        language: "en".to_owned(),
    };
    let above = xapi::assessment_iri(&names, &assessment.file.id);
    for record in &own.records {
        let drawn = assessment.task(record, &library).ok().map(|(task, _)| task);
        let Some(task) = drawn.or_else(|| library.task(&record.body.job).cloned()) else {
            continue;
        };
        // The same record twice is the same entry; by its start, older ones stand first.
        let key = format!("{} {}", record.body.started, record.link);
        keep(
            &key,
            in_english(|| xapi::statements_under(record, &task, &names, Some(&above))),
        )
        .await?;
    }
    let whole = whole(own, assessment, decided);
    // By its end, it stands after its jobs.
    let ended = date::moment(whole.ended_ms.unwrap_or_default());
    let key = format!("{ended} {}", whole.registration);
    keep(&key, in_english(|| xapi::whole(&whole, &names))).await?;
    send().await;
    Ok(())
}

/// What a sitting came to. The same sitting comes to the same, however often it is looked at.
fn whole<'a>(own: &'a Sitting, assessment: &'a Assessment, decided: &'a Decided) -> Whole<'a> {
    let file = &assessment.file;
    let is_sealed = own.code.is_some();
    let started_ms = own.started_ms as i64;
    Whole {
        id: &file.id,
        title: &file.title,
        candidate: &own.candidate,
        registration: if is_sealed {
            // All jobs of a sitting are one attempt.
            let sitting = assessment.sitting(&own.release, 1);
            xapi::sitting_registration(&own.candidate, &sitting)
        } else {
            xapi::practice_run(&own.candidate, &file.id, started_ms)
        },
        is_sealed,
        started_ms: Some(started_ms),
        ended_ms: Some((own.seen_ms as i64).max(started_ms)),
        took: (own.used_s * 10.0).max(0.0) as u64,
        n_jobs: (file.n_jobs(), own.records.len()),
        decided,
    }
}

async fn keep(id: &str, statements: Vec<Value>) -> Result<(), StorageError> {
    let entry = Entry {
        statements,
        tries: 0,
        why: String::new(),
    };
    let text = serde_json::to_string(&entry).map_err(|_| StorageError::Refused)?;
    Store::open()
        .await
        .put(&format!("{WAITING}{id}"), &text)
        .await
}

/// Sends at once, and again whenever the network comes back.
pub fn watch() {
    let online = EventListener::new(&gloo::utils::window(), "online", |_| spawn_local(send()));
    // It is listened for as long as the page lives.
    online.forget();
    spawn_local(send());
}

/// Sends what waits, the oldest first, until the store cannot be reached.
pub async fn send() {
    if SENDING.replace(true) {
        // What has come meanwhile is seen by another look.
        ASKED_AGAIN.set(true);
        return;
    }
    loop {
        ASKED_AGAIN.set(false);
        send_all().await;
        if !ASKED_AGAIN.get() {
            break;
        }
    }
    SENDING.set(false);
}

/// Sends what waits, and once more what was refused: store or version may be others by now.
pub async fn send_all_again() {
    let store = Store::open().await;
    for (key, text) in store.all(PARKED).await.unwrap_or_default() {
        let id = key.trim_start_matches(PARKED);
        // What cannot be moved stays where it is.
        if store.put(&format!("{WAITING}{id}"), &text).await.is_ok() {
            let _ = store.remove(&key).await;
        }
    }
    send().await;
}

async fn send_all() {
    let store = Store::open().await;
    let waiting = store.all(WAITING).await.unwrap_or_default();
    if waiting.is_empty() {
        return;
    }
    let Some(place) = Place::kept().await else {
        return;
    };
    let version = place.version().await;
    for (key, text) in waiting {
        let Some(mut entry) = read_back::<Entry>(&text) else {
            continue;
        };
        entry.tries += 1;
        let later = send_one(&place, version, &key, &mut entry).await;
        let kept = match &later {
            // What was taken is gone from the queue; what is left of it waits.
            _ if entry.statements.is_empty() => store.remove(&key).await,
            _ => {
                entry.why = later.clone().unwrap_or_default();
                let text = serde_json::to_string(&entry).unwrap_or(text);
                store.put(&key, &text).await
            }
        };
        if later.is_some() || kept.is_err() {
            return;
        }
    }
}

/// Sends one entry in lists; what the store has taken leaves it. Gives why the rest must wait.
async fn send_one(place: &Place, version: &str, key: &str, entry: &mut Entry) -> Option<String> {
    let mut size = BATCH;
    while !entry.statements.is_empty() {
        let n = size.min(entry.statements.len());
        let list = serde_json::to_string(&entry.statements[..n]).unwrap_or_default();
        let reply = place.send(version, &list).await;
        match after(reply.as_ref(), n) {
            Next::Done => drop(entry.statements.drain(..n)),
            Next::Split => size = 1,
            Next::Later(why) => return Some(why),
            Next::Parked(why) => {
                let parked = Entry {
                    statements: entry.statements.drain(..1).collect(),
                    tries: entry.tries,
                    why,
                };
                let id = parked.statements[0]["id"]
                    .as_str()
                    .unwrap_or(key)
                    .to_owned();
                let text = serde_json::to_string(&parked).unwrap_or_default();
                if Store::open()
                    .await
                    .put(&format!("{PARKED}{id}"), &text)
                    .await
                    .is_err()
                {
                    // What cannot be put aside goes back to where it was.
                    entry.statements.insert(0, parked.statements[0].clone());
                    return Some(
                        say!("this browser has no room to put aside what the store refuses")
                            .to_owned(),
                    );
                }
                // The others may be taken together again.
                size = BATCH;
            }
        }
    }
    None
}

/// An entry as it is kept.
pub fn is_readable(text: &str) -> bool {
    read_back::<Entry>(text).is_some()
}

/// How many results wait, how many statements were refused, and why the first one waits.
pub async fn standing() -> (usize, usize, String) {
    let store = Store::open().await;
    let waiting = store.all(WAITING).await.unwrap_or_default();
    let parked = store.all(PARKED).await.unwrap_or_default();
    let why = waiting
        .first()
        .and_then(|(_, text)| read_back::<Entry>(text));
    (
        waiting.len(),
        parked.len(),
        why.map(|entry| entry.why).unwrap_or_default(),
    )
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::assess::decide::Decision;

    const TEXT: &str = include_str!("../../../scenarios/assessments/first_visits.json");

    fn sat(code: Option<&str>) -> Sitting {
        let mut own = Sitting::new(TEXT.to_owned(), "c-1".to_owned(), "0.1.0", 1e12);
        own.code = code.map(str::to_owned);
        own.used_s = 600.0;
        own.seen_ms = 1e12 + 900_000.0;
        own
    }

    #[test]
    fn a_sitting_comes_to_one_whole_with_its_own_time_sealed_or_not() {
        let assessment = sitting::assessment("a.json", TEXT).expect("ships");
        let decided = Decided {
            decision: Decision::NotYet,
            marks: 0.0,
            cut: 65.0,
            cut_se: 0.0,
            reasons: Vec::new(),
        };
        let practice = sat(None);
        let told = whole(&practice, &assessment, &decided);
        assert_eq!(told, whole(&practice, &assessment, &decided));
        assert_eq!((told.is_sealed, told.took), (false, 6000));
        assert_eq!(told.started_ms, Some(1_000_000_000_000));
        assert_eq!(told.ended_ms, Some(1_000_000_900_000));
        let with_code = sat(Some("code"));
        let sealed = whole(&with_code, &assessment, &decided);
        assert!(sealed.is_sealed && sealed.registration != told.registration);
        // Sat anew as practice it is another attempt.
        let mut again = practice.clone();
        again.started_ms += 1.0;
        assert_ne!(
            whole(&again, &assessment, &decided).registration,
            told.registration
        );
    }
}
