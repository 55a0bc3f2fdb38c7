//! A record's work step by step: its log run again, shown as a debrief, or explained as far as it lost
//! points.

use crate::app::cohort::source::Source;
use crate::app::cohort::words;
use crate::app::lost_points::Marked;
use crate::app::replay::Replayed;
use crate::app::sitting;
use crate::app::worker::Worked;
use crate::bench::scenario::Scenario;
use crate::language::worded;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::sift::Against;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;

/// Runs a record again; none when the machine cannot be set up.
pub fn of(record: &Record, task: &Task, file: &JobFile) -> Option<Replayed> {
    let body = &record.body;
    let scenario = Scenario {
        id: own_name(record),
        title: format!("{} · {}", body.candidate, worded(&task.scenario.title)),
        ..Scenario::clone(&task.scenario)
    };
    let replayed = Replayed::of(scenario, file, body.seed, &body.log)?;
    Some(replayed.by_bill(body.judged.is_none()))
}

/// Runs one line of a text again.
pub fn of_line(
    name: &str,
    text: &str,
    line: usize,
    against: &[(String, String)],
) -> Option<Replayed> {
    let (record, task, file) = given(name, text, line, against)?;
    of(&record, &task, &file)
}

/// What explains the marks of some records, each a line of a text; those that cannot be had are left
/// out.
pub async fn marked(lines: Vec<(Source, usize)>, against: Vec<(String, String)>) -> Vec<Marked> {
    let mut all = Vec::new();
    for (source, line) in lines {
        let text = source.text().await.unwrap_or_default();
        if let Some((record, _, file)) = given(&source.name, &text, line, &against) {
            all.push(marked_of(&record, &file));
        }
    }
    all
}

fn marked_of(record: &Record, file: &JobFile) -> Marked {
    let body = &record.body;
    let title = words::title_of(&body.job);
    Marked {
        name: match &body.sitting {
            Some(sitting) => say!("Job {n}, {title}", n = sitting.place, title),
            None => title.into_owned(),
        },
        worked: Worked {
            job: own_name(record),
            letters: Some(share::to_letters(file)),
            seed: body.seed,
            log: body.log.clone(),
        },
        result: body.counted(),
        judged: body.judged.is_some(),
    }
}

/// No job of that name ships.
fn own_name(record: &Record) -> String {
    format!("{}-drawn", record.body.job)
}

/// A record with the job that its candidate was given.
fn given(
    name: &str,
    text: &str,
    line: usize,
    against: &[(String, String)],
) -> Option<(Record, Task, JobFile)> {
    let record = Record::read(name, Record::lines(text).nth(line)?).ok()?;
    let library = sitting::library().ok()?;
    let read =
        |(text, _): &(String, String)| Some((sitting::assessment("assessment", text).ok()?, None));
    let against = Against {
        library: &library,
        assessments: against.iter().filter_map(read).collect(),
        replays: false,
    };
    let (task, file, _) = against.task(&record).ok()?;
    Some((record, task, file))
}
