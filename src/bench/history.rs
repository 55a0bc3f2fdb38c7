//! What a job's log says of the hands that worked: when they last changed something, and whether
//! they did at all.

use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::workshop::Effect;
use crate::bench::workshop::WorkKind;

impl Job {
    /// When something was last taken off, put back, pulled, bridged or repaired; 0 when never.
    pub fn last_change(&self) -> Tick {
        let changes = |action: &Action| {
            matches!(
                action,
                Action::TakeOff { .. }
                    | Action::Refit { .. }
                    | Action::Work { .. }
                    | Action::PullApart { .. }
                    | Action::PushTogether { .. }
                    | Action::BridgeLid { .. }
                    | Action::PutOldBack { .. }
                    | Action::DryOut
            )
        };
        self.log()
            .iter()
            .filter(|e| changes(&e.action))
            .map(|e| e.tick)
            .max()
            .unwrap_or(0)
    }

    /// The machine was opened or something was done to it; telling the customer how to use it does
    /// not count.
    pub fn hands_were_on_it(&self) -> bool {
        let workshop = &self.scenario().workshop;
        let is_hands_on = |action: &Action| match action {
            Action::TakeOff { .. } => true,
            Action::Work { work, .. } => workshop
                .work(work)
                .is_none_or(|w| w.kind != WorkKind::Instruct),
            _ => false,
        };
        self.log().iter().any(|e| is_hands_on(&e.action))
    }

    /// A joint that holds water was opened or sealed.
    pub fn joint_was_opened(&self) -> bool {
        let workshop = &self.scenario().workshop;
        let holds_water =
            |effect: &Effect| matches!(effect, Effect::Param(name, _) if name.contains("joint"));
        self.log().iter().any(|entry| match &entry.action {
            Action::TakeOff { step, .. } => workshop
                .step(step)
                .is_some_and(|s| s.while_off.iter().any(holds_water)),
            Action::Work { work, .. } => workshop.work(work).is_some_and(|w| {
                w.params.iter().any(|name| name.contains("joint"))
                    || w.mistakes.iter().flat_map(|m| &m.effects).any(holds_water)
            }),
            _ => false,
        })
    }
}
