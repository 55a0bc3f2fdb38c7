//! A record short enough for a QR code: what cannot be computed again, as letters.
//!
//! Notebook and result follow from the log, so they are left out and made again by replay; that they
//! are the same is seen from the record's link, which holds all of it.

use crate::assess::letters;
use crate::bench::job::Job;
use crate::bench::job::ends_some_day;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::record::link;
use crate::records::result::JobResult;
use crate::records::seal::Hash;
use crate::scenario::read::read_back;

/// The letters; none when a number in the record is not finite.
pub fn to_letters(record: &Record) -> Option<String> {
    let mut short = record.clone();
    short.body.notebook.clear();
    short.body.result = JobResult::nothing();
    let text = serde_json::to_string(&short).ok()?;
    Some(letters::to_letters(&text))
}

/// The short record again, not to be trusted before it is whole and checked.
pub fn read(letters: &str) -> Option<Record> {
    let short: Record = read_back(&letters::from_letters(letters)?)?;
    // It is run before it can be checked.
    ends_some_day(&short.body.log).then_some(short)
}

/// The whole record, by running its log again on the job that its candidate was given; `None` where
/// it does not come out as it was made.
pub fn whole(mut short: Record, task: &Task) -> Option<Record> {
    let body = &mut short.body;
    let (job, _) = Job::replay(task.scenario.clone(), body.seed, &body.log).ok()?;
    body.notebook = job.notebook().to_vec();
    body.result = JobResult::of(&job).ok()?;
    body.state = Hash(job.machine().state_hash().0);
    if is_linked(&short) {
        return Some(short);
    }
    // It may have been made before the target time was kept.
    short.body.result.target_minutes = None;
    is_linked(&short).then_some(short)
}

fn is_linked(record: &Record) -> bool {
    let body = record.body.hash();
    body.is_ok_and(|body| link(&record.body.previous, &body) == record.link)
}
