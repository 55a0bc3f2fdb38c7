//! A record's work step by step: its log run again, shown as a debrief.

use crate::app::replay::Replayed;
use crate::app::sitting;
use crate::bench::scenario::Scenario;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::sift::Against;
use crate::scenario::job_file::JobFile;

/// Runs a record again; none when the machine cannot be set up.
pub fn of(record: &Record, task: &Task, file: &JobFile) -> Option<Replayed> {
    let body = &record.body;
    let scenario = Scenario {
        // No job of that name ships.
        id: format!("{}-drawn", body.job),
        title: format!("{} · {}", body.candidate, task.scenario.title),
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
    of(&record, &task, &file)
}
