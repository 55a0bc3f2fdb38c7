//! A record's work step by step: its log run again, shown as a debrief.

use std::sync::Arc;

use yew::prelude::*;

use crate::app::bench::contexts::Bench;
use crate::app::bench::contexts::Door;
use crate::app::debrief::DebriefScreen;
use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::sitting;
use crate::app::view::build;
use crate::app::view::build::Kept;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::records::library::Task;
use crate::records::record::Record;
use crate::records::sift::Against;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;

/// A record that was run again.
#[derive(Clone, PartialEq)]
pub struct Replayed {
    job: Shared<Job>,
    bench: Bench,
    letters: AttrValue,
}

impl Replayed {
    /// Runs it again; none when the machine cannot be set up.
    pub fn of(record: &Record, task: &Task, file: &JobFile) -> Option<Self> {
        let body = &record.body;
        let scenario = Scenario {
            // No job of that name ships: the thread takes the letters.
            id: format!("{}-drawn", body.job),
            title: format!("{} · {}", body.candidate, task.scenario.title),
            ..Scenario::clone(&task.scenario)
        };
        let (job, _) = Job::replay(Arc::new(scenario), body.seed, &body.log).ok()?;
        let session = Session::new(job.clone(), 0, Vec::new());
        let bench = build::bench(&session, &Kept::of(&session));
        Some(Self {
            job: Shared::new(job),
            bench: Shared::new(bench),
            letters: share::to_letters(file).into(),
        })
    }
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
    Replayed::of(&record, &task, &file)
}

/// What is shown.
#[derive(Properties, PartialEq)]
pub struct ReplayProps {
    /// The record.
    pub replayed: Replayed,
    /// Back to the person.
    pub on_back: Callback<()>,
}

/// The debrief under a way back.
#[component]
pub fn Replay(props: &ReplayProps) -> Html {
    let back = props.on_back.reform(|_: MouseEvent| ());
    let one = &props.replayed;
    html! {
        <>
            <nav class="page no-print" aria-label="Back"><button type="button" class="button" onclick={back}>{ "Back to the person" }</button></nav>
            <ContextProvider<Bench> context={one.bench.clone()}>
                <ContextProvider<Door> context={Door(Callback::noop())}>
                    <DebriefScreen job={one.job.clone()} letters={one.letters.clone()} reviews=true />
                </ContextProvider<Door>>
            </ContextProvider<Bench>>
        </>
    }
}
