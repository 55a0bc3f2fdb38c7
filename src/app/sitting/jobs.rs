//! The jobs of a sitting: drawn for the candidate, worked on the bench under names of their own, and
//! in the end made into records.

use std::cell::Cell;
use std::cell::OnceCell;
use std::rc::Rc;
use std::sync::Arc;

use crate::app::lost_points::Marked;
use crate::app::sitting::running;
use crate::app::sitting::running::Running;
use crate::app::sitting::worth;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::app::worker::Worked;
use crate::assess::date;
use crate::assess::draw::Drawn;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::Reckoning;
use crate::language::in_english;
use crate::records::check::body_of;
use crate::records::library::Library;
use crate::records::record::Body;
use crate::records::record::Record;
use crate::records::result::JudgedResult;
use crate::records::seal::Hash;
use crate::records::seal::StartCode;
use crate::records::sitting::Assessment;
use crate::say;
use crate::scenario::FileError;
use crate::scenario::share;
use crate::score;

/// Jobs of a sitting are on the bench under such names.
const PREFIX: &str = "sit-";

/// How far handing in is: jobs gone through, of those that were worked on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HandingIn {
    /// Gone through.
    pub done: usize,
    /// In all.
    pub of: usize,
}

thread_local! {
    static LIBRARY: OnceCell<Rc<Library>> = const { OnceCell::new() };
    static HANDING_IN: Cell<Option<HandingIn>> = const { Cell::new(None) };
}

/// The jobs that ship, ready to be drawn from; made once.
///
/// # Errors
/// When a shipped file is broken; a test holds that none is.
pub fn library() -> Result<Rc<Library>, FileError> {
    if let Some(library) = LIBRARY.with(|kept| kept.get().cloned()) {
        return Ok(library);
    }
    let library = Rc::new(Library::shipped()?);
    LIBRARY.with(|kept| kept.get_or_init(|| library.clone()).clone());
    Ok(library)
}

/// Reads an assessment against the jobs that ship; `file` is the name errors use.
///
/// # Errors
/// Everything that is wrong in it.
pub fn assessment(file: &str, text: &str) -> Result<Assessment, FileError> {
    Assessment::read(file, text, &*library()?)
}

/// A name of a job of a sitting.
pub fn is_sitting(id: &str) -> bool {
    id.starts_with(PREFIX)
}

/// The name of the job at a place, from 1.
pub fn name(place: u32) -> String {
    format!("{PREFIX}{place}")
}

/// All jobs of the candidate, in order.
pub fn drawn(now: &Running) -> Vec<Drawn> {
    let own = &now.sitting;
    library().map_or_else(
        |_| Vec::new(),
        |library| now.assessment.draw(&library, &own.candidate, &own.release),
    )
}

/// A job of the sitting by its name, as the bench gets it, and its seed. It carries no title of the
/// library's, which would tell who sits elsewhere what it is about.
pub fn find(id: &str) -> Option<(Arc<Scenario>, u64)> {
    let place: u32 = id.strip_prefix(PREFIX)?.parse().ok()?;
    let (own, n) = running::with(|now| {
        let mut all = drawn(now);
        let n = all.len();
        let at = (place as usize).checked_sub(1).filter(|at| *at < n)?;
        Some((all.swap_remove(at), n))
    })??;
    let task = library().ok()?.prepare(&own.job, &own.file).ok()?;
    let scenario = Scenario {
        id: id.to_owned(),
        title: say!("Job {place} of {n}", place, n),
        ..Scenario::clone(&task.scenario)
    };
    let now_ms = js_sys::Date::now();
    if running::with(|now| now.sitting.opened(place).is_none()) == Some(true) {
        running::change(|sitting| {
            sitting.opened_ms.push((place, now_ms));
        });
    }
    Some((Arc::new(scenario), own.seed))
}

/// The jobs handed in, each with what is needed to explain its marks.
pub fn marked(now: &Running) -> Vec<Marked> {
    let drawn = drawn(now);
    let records = now.sitting.records.iter();
    let one = |record: &Record| {
        let body = &record.body;
        let at = place_of(&drawn, record)?;
        Some(Marked {
            name: say!("Job {n}", n = at + 1),
            worked: worked_of(at, &drawn[at], body.log.clone()),
            result: body.counted(),
            judged: body.judged.is_some(),
        })
    };
    records.filter_map(one).collect()
}

/// Which job each record is of, from 1; practice records do not say so themselves.
pub fn places(now: &Running) -> Vec<usize> {
    let drawn = drawn(now);
    let place = |(at, record): (usize, &Record)| match &record.body.sitting {
        Some(sitting) => sitting.place as usize,
        None => place_of(&drawn, record).unwrap_or(at) + 1,
    };
    now.sitting.records.iter().enumerate().map(place).collect()
}

fn place_of(drawn: &[Drawn], record: &Record) -> Option<usize> {
    let body = &record.body;
    let is_it = |one: &Drawn| one.job == body.job && one.seed == body.seed;
    drawn.iter().position(is_it)
}

/// How far each job has got, in order: not opened, begun, or handed over.
pub async fn progress(n_jobs: usize) -> Vec<Option<SavedJob>> {
    let store = Store::open().await;
    let mut all = Vec::new();
    for place in 1..=n_jobs as u32 {
        let text = store.get(&SavedJob::key(&name(place))).await.ok().flatten();
        all.push(text.and_then(|text| SavedJob::read(&text).ok()));
    }
    all
}

/// Has what the decisions of jobs handed over were worth worked out while the others are worked.
pub fn work_out(saved: &[Option<SavedJob>]) {
    let over = |job: &SavedJob| job.verdict.is_some();
    let over: Vec<_> = saved.iter().map(|job| job.clone().filter(over)).collect();
    for worked in running::with(|now| worked(now, &over))
        .iter()
        .flatten()
        .flatten()
    {
        worth::want(worked);
    }
}

/// How far handing in is; none when nobody hands in.
pub fn handing_in() -> Option<HandingIn> {
    HANDING_IN.get()
}

/// Makes the records of everything that was done and ends the sitting. What each decision was worth
/// is waited for; where it cannot be known the job counts by the bill.
///
/// # Errors
/// When the browser refuses to keep them; they are there until the page is closed.
pub async fn hand_in() -> Result<(), StorageError> {
    if HANDING_IN.get().is_some() {
        return Ok(());
    }
    HANDING_IN.set(Some(HandingIn { done: 0, of: 0 }));
    // Decided is decided: whoever leaves meanwhile finds it handed in.
    running::change(|sitting| sitting.closing = true);
    let done = hand_in_once().await;
    HANDING_IN.set(None);
    done
}

async fn hand_in_once() -> Result<(), StorageError> {
    let Some(n_jobs) =
        running::with(|now| now.sitting.is_running().then(|| now.n_jobs())).flatten()
    else {
        return Ok(());
    };
    let saved = progress(n_jobs).await;
    let worked = running::with(|now| worked(now, &saved)).unwrap_or_default();
    let of = worked.iter().flatten().count();
    worked.iter().flatten().for_each(worth::want);
    let mut reckoned = Vec::new();
    for (done, one) in worked.iter().enumerate() {
        HANDING_IN.set(Some(HandingIn {
            done: worked[..done].iter().flatten().count(),
            of,
        }));
        reckoned.push(match one {
            Some(worked) => worth::of(worked).await,
            None => None,
        });
    }
    let records = running::with(|now| in_english(|| records(now, &saved, &reckoned)));
    let records = records.unwrap_or_default();
    running::change(|sitting| {
        sitting.records = records;
        sitting.handed_in = true;
    });
    running::keep().await
}

/// The jobs as the thread is told of them; none for one that was not worked on.
fn worked(now: &Running, saved: &[Option<SavedJob>]) -> Vec<Option<Worked>> {
    let one = |(at, drawn): (usize, &Drawn)| {
        let saved = saved.get(at)?.as_ref()?;
        (!saved.log.is_empty()).then(|| worked_of(at, drawn, saved.log.clone()))
    };
    drawn(now).iter().enumerate().map(one).collect()
}

fn worked_of(at: usize, drawn: &Drawn, log: Vec<Entry>) -> Worked {
    Worked {
        job: name(at as u32 + 1),
        letters: Some(share::to_letters(&drawn.file)),
        seed: drawn.seed,
        log,
    }
}

/// Records in a row, one for each job that was opened and worked on.
fn records(
    now: &Running,
    saved: &[Option<SavedJob>],
    reckoned: &[Option<Reckoning>],
) -> Vec<Record> {
    let own = &now.sitting;
    let code = own
        .code
        .as_deref()
        .and_then(|code| StartCode::read(code).ok());
    // Without a code it is practice: it belongs to no assessment that anybody vouches for.
    let sitting = |place| {
        code.as_ref()
            .map(|_| now.assessment.sitting(&own.release, place))
    };
    let mut previous = Body::root(&own.candidate, sitting(1).as_ref());
    let mut all = Vec::new();
    for (at, drawn) in drawn(now).iter().enumerate() {
        let place = at as u32 + 1;
        let Some(saved) = saved.get(at).and_then(Option::as_ref) else {
            continue;
        };
        let reckoning = reckoned.get(at).and_then(Option::as_ref);
        let Some(mut body) = body(drawn, saved, reckoning, &own.candidate, previous) else {
            continue;
        };
        body.sitting = sitting(place);
        let opened_ms = own.opened(place);
        body.started = date::moment(opened_ms.unwrap_or(own.started_ms) as i64);
        body.away_s = own.away_of(place);
        body.pauses = own.room.all().to_vec();
        let Ok(record) = Record::close(body, own.person.clone(), code.as_ref()) else {
            continue;
        };
        previous = record.link;
        all.push(record);
    }
    all
}

fn body(
    drawn: &Drawn,
    saved: &SavedJob,
    reckoning: Option<&Reckoning>,
    candidate: &str,
    previous: Hash,
) -> Option<Body> {
    if saved.log.is_empty() {
        return None;
    }
    let task = library().ok()?.prepare(&drawn.job, &drawn.file).ok()?;
    let (job, _) = Job::replay(task.scenario.clone(), drawn.seed, &saved.log).ok()?;
    let mut body = body_of(&job, &task, candidate, previous).ok()?;
    if let Some(reckoning) = reckoning {
        let report = score::assess(&job).ok()?;
        body.judged = Some(JudgedResult::of(&job, &report, reckoning));
    }
    Some(body)
}

/// What is kept of the bench under these names: each job as text, with its key.
pub async fn all_kept(store: &Store) -> Vec<(String, String)> {
    store.all(&SavedJob::key(PREFIX)).await.unwrap_or_default()
}

/// Forgets what was done on the bench under these names.
pub async fn forget_all() {
    worth::forget();
    let store = Store::open().await;
    for (key, _) in all_kept(&store).await {
        // What cannot be forgotten is of another seed and would be replaced by the first act.
        let _ = store.remove(&key).await;
    }
}
