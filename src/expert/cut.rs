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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::PanelKey;
    use crate::bench::job::Entry;
    use crate::scenario::job;

    fn taken(acts: &[(u64, u64, Action)]) -> Cut {
        let scenario = job("no_water").expect("sound").expect("ships");
        let mut cut = Cut::default();
        for (tick, ticks, action) in acts {
            let step = Step {
                entry: Entry {
                    tick: *tick,
                    action: action.clone(),
                },
                ticks: *ticks,
                notes: Vec::new(),
                is_tripped: false,
            };
            cut.take(&step, &scenario);
        }
        cut
    }

    fn off(step: &str) -> Action {
        Action::TakeOff {
            step: step.to_owned(),
            helped: true,
        }
    }

    fn on(step: &str) -> Action {
        Action::Refit {
            step: step.to_owned(),
            check: true,
        }
    }

    #[test]
    fn watching_belongs_to_a_trial_and_making_safe_does_not() {
        let start = Action::Key {
            key: PanelKey::Start,
        };
        // Ten ticks of pressing, fifty of watching, five of noting.
        let cut = taken(&[(0, 10, start), (60, 5, Action::Note)]);
        assert_eq!(cut.own_ticks, 65);
        let pull = Action::Plug { inserted: false };
        let cut = taken(&[(0, 30, pull), (100, 5, Action::Note)]);
        assert_eq!(cut.own_ticks, 75, "the wait before the line and the line");
        assert_eq!(cut.next().own_ticks, 0);
    }

    #[test]
    fn taking_off_and_putting_back_without_a_decision_between_is_for_nothing() {
        let scenario = job("no_water").expect("sound").expect("ships");
        let step = scenario.workshop.step("back_cover").expect("listed");
        let both = step.off_s + step.on_s;
        let cut = taken(&[(0, 10, off("back_cover")), (10, 10, on("back_cover"))]);
        assert!((cut.wasted_s - both).abs() < 1e-9, "{}", cut.wasted_s);
        assert_eq!(cut.own_ticks, 0);
        // What was off before, or stays off, is not.
        let cut = taken(&[(0, 10, off("back_cover")), (10, 10, on("panel_open"))]);
        assert!(cut.wasted_s.abs() < 1e-12);
        let cut = taken(&[(0, 10, on("back_cover")), (10, 10, on("back_cover"))]);
        assert!(cut.wasted_s.abs() < 1e-12);
    }
}
