//! The machine and the meter as they were after a step of the log.

use std::cmp::Reverse;

use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::Picture;
use crate::app::view::build;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::words;
use crate::drawing::svg::Element;
use crate::language::said;
use crate::say;

/// A moment of a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Past {
    /// The machine, in section.
    pub svg: Shared<Element>,
    /// What the meter showed, plain words.
    pub meter: String,
}

/// Moments at which something dangerous was done, the gravest `most` of them in the order of the job.
pub fn of_findings(job: &Job, most: usize) -> Vec<(usize, String, Shared<Element>)> {
    let mut found: Vec<(usize, String)> = Vec::new();
    let mut gravest: Vec<_> = job.safety().iter().collect();
    gravest.sort_by_key(|finding| (Reverse(finding.severity), finding.step));
    for finding in gravest {
        let title = safety::rule(finding.rule).map_or(finding.rule, |rule| said(rule.title));
        match found.iter_mut().find(|(step, _)| *step == finding.step) {
            Some((_, words)) => *words = format!("{words}; {title}"),
            None => found.push((finding.step, title.to_owned())),
        }
    }
    found.truncate(most);
    found.sort_by_key(|(step, _)| *step);
    let picture = |(step, words): (usize, String)| {
        let past = at_step(job, step.checked_sub(1)?)?;
        Some((step, words, past.svg))
    };
    found.into_iter().filter_map(picture).collect()
}

/// The moment after step `index` of the log, from 0.
pub fn at_step(job: &Job, index: usize) -> Option<Past> {
    let log = job.log().get(..=index)?;
    let (past, _) = Job::replay(job.scenario().clone(), job.seed(), log).ok()?;
    let meter = match past.reading() {
        Some(reading) => words::reading(&reading, &past.scenario().workshop),
        None => say!("the meter is connected to nothing").to_owned(),
    };
    let tick = past.tick();
    let mut session = Session::new(past, tick, Vec::new());
    session.picture = Picture::Section;
    Some(Past {
        svg: Shared::new(build::picture(&session)),
        meter,
    })
}
