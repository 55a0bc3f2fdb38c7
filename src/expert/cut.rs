//! The stretch of a log that leads to a decision: what of its time belongs to the trial itself, and
//! what was taken off and put back for nothing.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::scenario::Scenario;
use crate::expert::seen::Step;

/// The stretch of the log that led to a decision.
#[derive(Clone, Debug, Default)]
pub(super) struct Cut {
    /// When the act before ended, ticks.
    ended: u64,
    /// Time of the acts that belong to the trial itself, and of watching.
    pub own_ticks: u64,
    /// What was taken off in this stretch.
    opened: BTreeSet<String>,
    /// Time of taking off and putting back for nothing, s.
    pub wasted_s: f64,
}

impl Cut {
    /// A new stretch that begins where this one ends.
    pub fn next(&self) -> Self {
        Self {
            ended: self.ended,
            ..Self::default()
        }
    }

    /// Takes the next step.
    pub fn take(&mut self, step: &Step, scenario: &Scenario) {
        let watched = step.entry.tick.saturating_sub(self.ended);
        self.ended = step.entry.tick + step.ticks;
        match &step.entry.action {
            Action::Meter { .. }
            | Action::Note
            | Action::Sense { .. }
            | Action::Turn { .. }
            | Action::Key { .. }
            | Action::PullApart { .. }
            | Action::PushTogether { .. }
            | Action::Lid { .. } => self.own_ticks += watched + step.ticks,
            Action::TakeOff { step, .. } => {
                self.opened.insert(step.clone());
            }
            Action::Refit { step, .. } if self.opened.remove(step) => {
                let time = |s: &crate::bench::workshop::Step| s.off_s + s.on_s;
                self.wasted_s += scenario.workshop.step(step).map_or(0.0, time);
            }
            _ => {}
        }
    }
}
