//! A decision and what it was worth.

use serde::Deserialize;
use serde::Serialize;

use crate::expert::plan::Next;

/// What was decided.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Decided {
    /// To read, look, listen, feel or turn.
    Try,
    /// To do a work, by its name.
    Work(String),
    /// To hand over with nothing done.
    HandOver,
    /// To ask for a hint.
    Hint,
}

/// One decision, judged.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Judged {
    /// Number of the step in the log, from 1.
    pub step: usize,
    /// What was decided.
    pub decided: Decided,
    /// Cost of the act itself, money unit.
    pub cost: f64,
    /// Cost that another decision would have avoided, expected; money unit.
    pub avoidable: f64,
    /// How far the evidence then justified it, 0..1: for works and hand-over.
    pub justification: Option<f64>,
    /// Probability, as the evidence stood, that a work puts it right.
    pub p: Option<f64>,
    /// Bits it promised.
    pub promised_bits: f64,
    /// What would have been better, when something was.
    pub better: Option<Next>,
}

impl Judged {
    /// Something tried, with nothing known against it yet.
    pub(super) fn tried(step: usize, cost: f64) -> Self {
        Self {
            step,
            decided: Decided::Try,
            cost,
            avoidable: 0.0,
            justification: None,
            p: None,
            promised_bits: 0.0,
            better: None,
        }
    }
}
