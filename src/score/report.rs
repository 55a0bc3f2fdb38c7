//! The mark sheet: five parts, each with its share, its points and the steps behind them.

use serde::Serialize;

use crate::bench::job::Ending;
use crate::bench::job::Job;
use crate::bench::visit::Advice;
use crate::machine::MachineError;
use crate::score::diagnosis;
use crate::score::economy;
use crate::score::evidence;
use crate::score::functional;
use crate::score::functional::FunctionCheck;
use crate::score::procedure;
use crate::score::safety;
use crate::score::visit;

/// Highest score when a critical safety rule was broken. Design choice.
const CRITICAL_CAP: f64 = 39.0;

/// One part of the mark sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Part {
    /// Plain name, such as "safety".
    pub name: &'static str,
    /// What it can give at most, points.
    pub of: f64,
    /// What it gave, points.
    pub points: f64,
    /// Why, in sentences; each names the step it stands on where there is one.
    pub reasons: Vec<String>,
}

impl Part {
    /// All it can give, with the reason.
    pub(super) fn whole(name: &'static str, of: f64, reason: &str) -> Self {
        Self {
            name,
            of,
            points: of,
            reasons: vec![reason.to_owned()],
        }
    }
}

/// A finished job's marks.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Report {
    /// The machine does what it should at hand-over.
    pub fixed: bool,
    /// No critical safety rule was broken.
    pub safe: bool,
    /// The job was left safe without a repair, and that was right.
    pub rightly_left: bool,
    /// 0..100.
    pub total: f64,
    /// The five parts.
    pub parts: Vec<Part>,
    /// Cost of the job, money unit.
    pub cost: f64,
    /// What a skilled technician's way costs, money unit.
    pub target_cost: f64,
    /// Time on site, min.
    pub minutes: f64,
    /// How the machine did at hand-over beside a sound one.
    pub function: FunctionCheck,
}

/// Nobody should mend this here: the house must be put right first, or a new machine is the better
/// buy and the customer was told so.
fn is_right_to_leave(job: &Job) -> bool {
    let told = job.bench().advice.contains(&Advice::NewMachine);
    diagnosis::needs_others(job.scenario())
        || (told && diagnosis::not_worth_mending(job.scenario()))
}

/// Marks a job. An unfinished job is marked as it stands.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn assess(job: &Job) -> Result<Report, MachineError> {
    let function = functional::function_check(job)?;
    let for_others = job.bench().ending == Some(Ending::MadeSafe) && is_right_to_leave(job);
    let rightly_left = for_others
        || visit::was_left_for_danger(job)
        || visit::was_left_for_the_house(job)
        || visit::was_rightly_declined(job);
    let fixed = function.passed || rightly_left;
    let safety = safety::mark(job);
    let parts = vec![
        safety.part.clone(),
        diagnosis::mark(job, fixed),
        economy::mark(job),
        procedure::mark(job),
        evidence::mark(job)?,
    ];
    let sum: f64 = parts.iter().map(|p| p.points).sum();
    let safe = !safety.critical;
    let total = if safe { sum } else { sum.min(CRITICAL_CAP) };
    let reference = job.scenario().reference;
    Ok(Report {
        fixed,
        safe,
        rightly_left,
        total,
        parts,
        cost: job.cost()
            + if fixed {
                0.0
            } else {
                job.scenario().money.callback
            },
        target_cost: reference.cost,
        minutes: job.tick() as f64 / 600.0,
        function,
    })
}
