//! How the expert ends a job: what was found is stated, what was done is told, and the machine is
//! handed over or left safe.

use crate::bench::action::Action;
use crate::bench::visit::Advice;
use crate::expert::play::Expert;
use crate::expert::remedy::is_for_others;

/// Lines offered with a finding.
const MOST_EVIDENCE: usize = 3;

impl Expert<'_> {
    fn state_finding(&mut self) {
        let ranked = self.belief.ranked();
        let was_worked = !self.hands.door.bench().works.is_empty();
        let told = ranked
            .iter()
            .find(|(_, v, twin)| !was_worked || (twin.is_mended() && !v.faults.is_empty()))
            .or(ranked.first());
        let causes = told.map(|(_, v, _)| v.faults.iter().map(|f| f.id.clone()).collect());
        self.telling.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut evidence: Vec<u32> = self
            .telling
            .iter()
            .take(MOST_EVIDENCE)
            .map(|(_, n)| *n)
            .collect();
        evidence.sort_unstable();
        self.hands.act(Action::Finding {
            causes: causes.unwrap_or_default(),
            evidence,
        });
        self.hands.act(Action::Advise {
            advice: Advice::WhatWasDone,
        });
    }

    /// Hands over as working.
    pub fn hand_over(&mut self) -> bool {
        self.hands.mop();
        self.state_finding();
        if self.hands.door.bench().isolation.earth_seen_missing {
            self.hands.act(Action::Advise {
                advice: Advice::HouseWiring,
            });
        }
        self.hands.act(Action::Close);
        true
    }

    /// Leaves the machine isolated and labelled.
    pub fn leave(&mut self) -> bool {
        self.hands.isolate();
        self.hands.empty();
        self.hands.close_up();
        self.hands.mop();
        self.learn();
        self.state_finding();
        let scenario = self.scenario();
        let is_house = self.belief.ranked().first().is_some_and(|(_, v, _)| {
            let defs = v
                .faults
                .iter()
                .filter_map(|f| scenario.machine.fault(&f.id));
            defs.into_iter().any(|def| is_for_others(&scenario, def))
        });
        let advice = if is_house || self.hands.door.bench().isolation.earth_seen_missing {
            Advice::HouseWiring
        } else {
            Advice::NewMachine
        };
        self.hands.act(Action::Advise { advice });
        self.hands.act(Action::MakeSafeAndLeave);
        false
    }
}
