//! What a job came to, in numbers a record keeps: marks, money, time, safety, what was stated.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::job::Job;
use crate::bench::safety::Severity;
use crate::bench::state::Ending;
use crate::expert::Reckoning;
use crate::machine::MachineError;
use crate::scenario::job_file::ReferenceFile;
use crate::score;
use crate::score::Report;
use crate::text;

/// A part's share of its points from which it counts as shown. Design choice.
const SHOWN: f64 = 0.5;

/// Marks, money, time, safety.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct JobResult {
    /// How it ended: `closed`, `made_safe` or `open`.
    pub ending: String,
    /// The machine does what it should.
    pub fixed: bool,
    /// No critical safety rule was broken.
    pub safe: bool,
    /// Marks of 100.
    pub total: f64,
    /// The parts of the mark sheet.
    pub parts: Vec<PartResult>,
    /// Cost, money unit.
    pub cost: f64,
    /// Target cost, money unit.
    pub target_cost: f64,
    /// Time on site, min.
    pub minutes: f64,
    /// Target time, min; none where none is known, as in records that were made before it was kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target_minutes: Option<f64>,
    /// Safety rules broken.
    pub safety: Vec<SafetyResult>,
    /// Causes stated last, by name in the catalogue.
    pub stated: Vec<String>,
}

/// One part of the mark sheet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PartResult {
    /// Plain name.
    pub name: String,
    /// Points it can give.
    pub of: f64,
    /// Points it gave.
    pub points: f64,
}

/// The same job marked by what each decision was worth.
///
/// Working that out takes seconds where the rest of a record takes a tenth of one; a record lacks it
/// where the browser had no thread for that. What it says is worked out again when it is checked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct JudgedResult {
    /// Marks of 100.
    pub total: f64,
    /// The parts of the mark sheet.
    pub parts: Vec<PartResult>,
    /// Target cost, money unit.
    pub target_cost: f64,
    /// Cost that other decisions would have avoided, money unit.
    pub avoidable: f64,
}

impl JudgedResult {
    /// From a report by the bill and the decisions.
    pub fn of(job: &Job, report: &Report, reckoning: &Reckoning) -> Self {
        let judged = report.judged(job, reckoning);
        Self {
            total: judged.total,
            parts: parts(&judged),
            target_cost: judged.target_cost,
            avoidable: judged.avoidable.unwrap_or_default(),
        }
    }

    /// Puts its marks in the place of those by the bill.
    pub fn put_into(&self, result: &mut JobResult) {
        result.total = self.total;
        result.target_cost = self.target_cost;
        result.parts.clone_from(&self.parts);
    }
}

/// One safety rule broken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SafetyResult {
    /// Name of the rule.
    pub rule: String,
    /// `minor`, `major` or `critical`.
    pub severity: String,
    /// Step of the log, from 1.
    pub step: usize,
}

impl JobResult {
    /// Of a job that nothing is known of: what a result is filled into.
    pub fn nothing() -> Self {
        Self {
            ending: String::new(),
            fixed: false,
            safe: false,
            total: 0.0,
            parts: Vec::new(),
            cost: 0.0,
            target_cost: 0.0,
            minutes: 0.0,
            target_minutes: None,
            safety: Vec::new(),
            stated: Vec::new(),
        }
    }

    /// Of a job as it stands.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(job: &Job) -> Result<Self, MachineError> {
        Ok(Self::from_report(job, &score::assess(job)?))
    }

    /// Of a job whose report is made already.
    pub fn from_report(job: &Job, report: &Report) -> Self {
        let ending = match job.bench().ending {
            Some(Ending::Closed) => "closed",
            Some(Ending::MadeSafe) => "made_safe",
            None => "open",
        };
        Self {
            ending: ending.to_owned(),
            fixed: report.fixed,
            safe: report.safe,
            total: report.total,
            parts: parts(report),
            cost: report.cost,
            target_cost: report.target_cost,
            minutes: report.minutes,
            target_minutes: Some(job.scenario().reference.minutes).filter(|minutes| *minutes > 0.0),
            safety: job
                .safety()
                .iter()
                .map(|finding| SafetyResult {
                    rule: finding.rule.to_owned(),
                    severity: severity_name(finding.severity).to_owned(),
                    step: finding.step,
                })
                .collect(),
            stated: job
                .bench()
                .findings
                .last()
                .map(|finding| finding.causes.clone())
                .unwrap_or_default(),
        }
    }

    /// The same with the target time of the job that was given, where the record was made before it was
    /// kept.
    #[must_use]
    pub fn with_target_of(mut self, given: Option<ReferenceFile>) -> Self {
        let known = given.map(|target| target.minutes);
        self.target_minutes = self.target_minutes.or(known);
        self
    }

    /// The job as one graded score, for measurement: 0 unsafe or not put right, 1 put right without
    /// evidence, 2 with evidence, 3 and at a good cost.
    pub fn graded(&self) -> u8 {
        if !self.safe || !self.fixed {
            0
        } else if self.share("evidence") < SHOWN {
            1
        } else if self.share("economy") < SHOWN {
            2
        } else {
            3
        }
    }

    /// Share of a part's points, 0 to 1; 0 for a part that is not on the sheet.
    pub fn share(&self, part: &str) -> f64 {
        self.parts
            .iter()
            .find(|p| p.name == part && p.of > 0.0)
            .map_or(0.0, |p| p.points / p.of)
    }
}

fn parts(report: &Report) -> Vec<PartResult> {
    let part = |part: &score::Part| PartResult {
        name: part.name.to_owned(),
        of: part.of,
        points: part.points,
    };
    report.parts.iter().map(part).collect()
}

fn severity_name(severity: Severity) -> &'static str {
    match severity {
        Severity::Minor => text!("minor"),
        Severity::Major => text!("major"),
        Severity::Critical => text!("critical"),
    }
}
