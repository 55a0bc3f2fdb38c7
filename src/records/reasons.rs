//! Why each part of the mark sheet is below full: what cost points, at which step, and why; from a job
//! and its report, as data.

use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::words;
use crate::records::result::PartResult;
use crate::score::Lost;
use crate::score::Part;
use crate::score::Report;
use crate::score::Why;

/// Fewer points are not told one by one.
const LEAST_POINTS: f64 = 0.05;

/// What a job lost, part by part.
#[derive(Clone, Debug, PartialEq)]
pub struct Reasons {
    /// Parts that are below full, in the order of the sheet.
    pub parts: Vec<PartReasons>,
    /// Points that a rule whose breach can kill took off the whole job.
    pub capped: f64,
}

/// What one part lost.
#[derive(Clone, Debug, PartialEq)]
pub struct PartReasons {
    /// Plain name.
    pub name: String,
    /// Points it can give.
    pub of: f64,
    /// Points it gave.
    pub points: f64,
    /// What cost points, in the order of the job; what belongs to no step comes last.
    pub reasons: Vec<Reason>,
    /// Points that went in amounts too small to be told.
    pub rest: f64,
}

/// One thing that cost points.
#[derive(Clone, Debug, PartialEq)]
pub struct Reason {
    /// When; none for what belongs to no single step.
    pub at: Option<Moment>,
    /// Points it cost.
    pub points: f64,
    /// Why.
    pub why: Why,
}

/// A step of the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Moment {
    /// Its number, from 1.
    pub step: usize,
    /// When it began.
    pub tick: Tick,
    /// What was done, plain words.
    pub act: String,
}

impl Reasons {
    /// Of a job and its report.
    pub fn of(job: &Job, report: &Report) -> Self {
        let given: f64 = report.parts.iter().map(|part| part.points).sum();
        Self {
            parts: report
                .parts
                .iter()
                .map(|part| of_part(job, part))
                .filter(|part| part.is_below() || !part.reasons.is_empty())
                .collect(),
            capped: (given - report.total).max(0.0),
        }
    }

    /// They are of these very marks: as many points in each part.
    pub fn explain<'a>(&self, parts: impl IntoIterator<Item = &'a PartResult>) -> bool {
        let own = |name: &str| self.parts.iter().find(|part| part.name == name);
        parts.into_iter().all(|part| match own(&part.name) {
            Some(own) => (own.points - part.points).abs() < LEAST_POINTS,
            None => (part.of - part.points).abs() < LEAST_POINTS,
        })
    }

    /// Those of some parts alone.
    #[must_use]
    pub fn only(mut self, names: &[&str]) -> Self {
        self.parts
            .retain(|part| names.contains(&part.name.as_str()));
        self
    }
}

impl PartReasons {
    /// It gave less than it can.
    fn is_below(&self) -> bool {
        self.of - self.points >= LEAST_POINTS
    }
}

fn of_part(job: &Job, part: &Part) -> PartReasons {
    let (told, small): (Vec<&Lost>, Vec<&Lost>) = part.lost.iter().partition(|lost| is_told(lost));
    let mut reasons: Vec<Reason> = told.into_iter().map(|lost| reason(job, lost)).collect();
    reasons.sort_by_key(|reason| reason.at.as_ref().map_or(usize::MAX, |at| at.step));
    PartReasons {
        name: part.name.to_owned(),
        of: part.of,
        points: part.points,
        reasons,
        rest: small.iter().map(|lost| lost.points).sum(),
    }
}

/// A rule whose breach can kill takes nothing off its part; it is told all the same.
fn is_told(lost: &Lost) -> bool {
    lost.points >= LEAST_POINTS || matches!(lost.why, Why::Rule { can_kill: true, .. })
}

fn reason(job: &Job, lost: &Lost) -> Reason {
    let workshop = &job.scenario().workshop;
    let at = lost.step.and_then(|step| {
        let entry = job.log().get(step.checked_sub(1)?)?;
        Some(Moment {
            step,
            tick: entry.tick,
            act: words::act(&entry.action, workshop),
        })
    });
    Reason {
        at,
        points: lost.points,
        why: lost.why.clone(),
    }
}
