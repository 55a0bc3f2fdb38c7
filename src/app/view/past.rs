//! The machine and the meter as they were after a step of the log.

use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::Picture;
use crate::app::view::build;
use crate::bench::job::Job;
use crate::bench::words;
use crate::drawing::svg::Element;

/// A moment of a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Past {
    /// The machine, in section.
    pub svg: Shared<Element>,
    /// What the meter showed, plain words.
    pub meter: String,
}

/// The moment after step `index` of the log, from 0.
pub fn at_step(job: &Job, index: usize) -> Option<Past> {
    let log = job.log().get(..=index)?;
    let (past, _) = Job::replay(job.scenario().clone(), job.seed(), log).ok()?;
    let meter = match past.reading() {
        Some(reading) => words::reading(&reading, &past.scenario().workshop),
        None => "the meter is connected to nothing".to_owned(),
    };
    let tick = past.tick();
    let mut session = Session::new(past, tick, Vec::new());
    session.picture = Picture::Section;
    Some(Past {
        svg: Shared::new(build::picture(&session)),
        meter,
    })
}
