//! What each step cost beside the best one, and what chance did.
//!
//! ```text
//! avoidable A = max(0, Q - V)        chance L = cost + V' - Q        (V' = 0 once the machine works)
//! total cost = V at the start + ΣA + ΣL
//! ```
//! Q is the expected cost of the step taken with the reference policy after it, V that of the
//! reference policy. An act that shows nothing new (a repeat, waiting, a hint, damage) leaves what is
//! known as it was: its avoidable cost is its cost. Source: published (advantage sums; Zinkevich and
//! others 2006, Kakade and Langford 2002).

use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::known::cost_now;
use crate::expert::theory::known::cost_of;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::ToGo;

/// One step judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// What was paid.
    pub paid: f64,
    /// Expected cost of this step and all after it, when it was decided.
    pub q: f64,
    /// Expected cost of the reference policy at that moment.
    pub v: f64,
    /// Expected cost of the reference policy after the step; 0 once the machine works.
    pub v_after: f64,
}

impl Step {
    /// An act that shows and changes nothing.
    pub fn idle(paid: f64, v: f64) -> Self {
        Self {
            paid,
            q: v + paid,
            v,
            v_after: v,
        }
    }

    /// Cost that could have been avoided by deciding otherwise.
    pub fn avoidable(&self) -> f64 {
        (self.q - self.v).max(0.0)
    }

    /// What chance did: positive is bad luck. Expected to be 0 before the step.
    pub fn chance(&self) -> f64 {
        self.paid + self.v_after - self.q
    }
}

/// All steps of a run.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Account {
    /// Expected cost of the reference policy before the first step.
    pub start: f64,
    /// The steps.
    pub steps: Vec<Step>,
}

impl Account {
    /// What was paid in all.
    pub fn paid(&self) -> f64 {
        self.steps.iter().map(|s| s.paid).sum()
    }

    /// What could have been avoided.
    pub fn avoidable(&self) -> f64 {
        self.steps.iter().map(Step::avoidable).sum()
    }

    /// What is left: paid, less the reference policy's cost and what could have been avoided.
    pub fn chance(&self) -> f64 {
        self.paid() - self.start - self.avoidable()
    }
}

/// Something that happened in a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Happened {
    /// A test gave an outcome.
    Test {
        /// Which test.
        test: usize,
        /// Its outcome.
        outcome: usize,
    },
    /// Something was repaired.
    Repair {
        /// Which repair.
        repair: usize,
        /// The machine works now.
        works: bool,
    },
    /// Cost without news: a repeat, waiting, a hint, damage.
    Idle {
        /// Cost.
        cost: f64,
    },
}

/// A run with its account: what was known before each step, and after the last.
#[derive(Clone, Debug, PartialEq)]
pub struct Walk {
    /// The account.
    pub account: Account,
    /// What was known before each step; none once the machine works.
    pub before: Vec<Option<Known>>,
    /// What is known at the end; none when the machine works.
    pub last: Option<Known>,
}

/// Walks through what happened, judging each step by the reference policy. What cannot have happened
/// by the model (an impossible outcome, a test used up) counts as cost without news.
pub fn walk(
    model: &Model,
    start: &Known,
    happened: &[Happened],
    reference: &mut impl ToGo,
) -> Walk {
    let mut account = Account {
        start: reference.to_go(start),
        steps: Vec::new(),
    };
    let mut now = Some(start.clone());
    let mut before = Vec::new();
    for event in happened {
        let (step, next) = match &now {
            Some(known) => judge(model, known, *event, reference),
            None => (Step::idle(own_cost(model, *event), 0.0), None),
        };
        account.steps.push(step);
        before.push(core::mem::replace(&mut now, next));
    }
    Walk {
        account,
        before,
        last: now,
    }
}

fn judge(
    model: &Model,
    known: &Known,
    event: Happened,
    reference: &mut impl ToGo,
) -> (Step, Option<Known>) {
    let v = reference.to_go(known);
    let idle = |cost: f64| (Step::idle(cost, v), Some(known.clone()));
    match event {
        Happened::Test { test, outcome } => {
            let act = Act::Test(test);
            let paid = cost_now(model, known, act);
            let next = known.after_outcome(model, test, outcome);
            let Some((_, next)) = next.filter(|_| known.can_test(model, test)) else {
                return idle(paid);
            };
            let q = cost_of(model, known, act, &mut |k| reference.to_go(k));
            let v_after = reference.to_go(&next);
            (
                Step {
                    paid,
                    q,
                    v,
                    v_after,
                },
                Some(next),
            )
        }
        Happened::Repair { repair, works } => {
            let act = Act::Repair(repair);
            let of = &model.repairs()[repair];
            let q = cost_of(model, known, act, &mut |k| reference.to_go(k));
            let mut paid = cost_now(model, known, act);
            let (_, place) = model.places().go(known.place(), of.place);
            let (_, still) = known.after_repair(model, repair);
            let next = if works { None } else { still };
            match &next {
                None => paid += model.places().way(place, model.places().end),
                Some(_) => paid += of.cost_if_not,
            }
            let v_after = next.as_ref().map_or(0.0, |k| reference.to_go(k));
            (
                Step {
                    paid,
                    q,
                    v,
                    v_after,
                },
                next,
            )
        }
        Happened::Idle { cost } => idle(cost),
    }
}

fn own_cost(model: &Model, event: Happened) -> f64 {
    match event {
        Happened::Test { test, .. } => model.tests()[test].cost,
        Happened::Repair { repair, .. } => model.repairs()[repair].cost,
        Happened::Idle { cost } => cost,
    }
}
