//! A job that somebody else has worked, step by step: its log run again, shown as a debrief.

use std::sync::Arc;

use yew::prelude::*;

use crate::app::bench::contexts::Bench;
use crate::app::bench::contexts::Door;
use crate::app::debrief::DebriefScreen;
use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::build;
use crate::app::view::build::Kept;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;

/// A log that was run again.
#[derive(Clone, PartialEq)]
pub struct Replayed {
    job: Shared<Job>,
    bench: Bench,
    letters: AttrValue,
    by_bill: bool,
}

impl Replayed {
    /// Runs it again; none when the machine cannot be set up. The scenario's name must be none that
    /// ships, so that the thread takes the letters.
    pub fn of(scenario: Scenario, file: &JobFile, seed: u64, log: &[Entry]) -> Option<Self> {
        let (job, _) = Job::replay(Arc::new(scenario), seed, log).ok()?;
        let session = Session::new(job.clone(), 0, Vec::new());
        let bench = build::bench(&session, &Kept::of(&session));
        Some(Self {
            job: Shared::new(job),
            bench: Shared::new(bench),
            letters: share::to_letters(file).into(),
            by_bill: false,
        })
    }

    /// The same, marked as it was counted: by the bill, with nothing said of single decisions.
    #[must_use]
    pub fn by_bill(self, by_bill: bool) -> Self {
        Self { by_bill, ..self }
    }
}

/// What is shown.
#[derive(Properties, PartialEq)]
pub struct ReplayProps {
    /// What was worked.
    pub replayed: Replayed,
    /// Words of the way back, such as `Back to the desk`.
    pub back: AttrValue,
    /// The way back.
    pub on_back: Callback<()>,
}

/// The debrief under a way back.
#[component]
pub fn Replay(props: &ReplayProps) -> Html {
    let back = props.on_back.reform(|_: MouseEvent| ());
    let one = &props.replayed;
    html! {
        <>
            <nav class="page no-print" aria-label={say!("Back")}><button type="button" class="button" onclick={back}>{ &props.back }</button></nav>
            <ContextProvider<Bench> context={one.bench.clone()}>
                <ContextProvider<Door> context={Door(Callback::noop())}>
                    <DebriefScreen job={one.job.clone()} letters={one.letters.clone()} reviews=true by_bill={one.by_bill} />
                </ContextProvider<Door>>
            </ContextProvider<Bench>>
        </>
    }
}
