//! The planning model of a moment: the likeliest causes, what could be tried, what could be done
//! about it, and what opening and closing costs; and the best next step by it.
//!
//! At most 15 causes and the rest as one, 10 ways for the machine to stand, 16 trials kept by bits
//! for their cost and by the pairs they tell apart. Costs in the job's money unit, standard minutes
//! of labour and prices. The policy is two steps ahead with the plain order after them, exact where
//! the problem is small; its cost is no claim of the best there is.

use std::collections::BTreeSet;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::scenario::Scenario;
use crate::expert::belief::Belief;
use crate::expert::choice::choose;
use crate::expert::drill::Drills;
use crate::expert::drill::drills;
use crate::expert::likely::Likely;
use crate::expert::likely::likely;
use crate::expert::likely::rest_cost;
use crate::expert::theory::acts::Repair;
use crate::expert::theory::acts::Test;
use crate::expert::theory::check::ModelError;
use crate::expert::theory::exact::Exact;
use crate::expert::theory::information;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::known::cost_of;
use crate::expert::theory::look_ahead::LookAhead;
use crate::expert::theory::model::Model;
use crate::expert::theory::places::Places;
use crate::expert::theory::policy::ToGo;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::expert::ways::price;
use crate::expert::ways::stand_of;
use crate::expert::ways::way_min;

const MOST_PLACES: usize = 10;
/// Bound on the states of a problem that is searched whole: some milliseconds.
const MOST_EXACT_STATES: f64 = 1e4;
/// Standard minutes: a functional run; what is left unexplained. Common practice.
pub(super) const RUN_MIN: f64 = 9.0;
const UNEXPLAINED_MIN: f64 = 60.0;
/// Minutes of looking until an unlikely cause has become a likely one. Design choice.
const FURTHER_MIN: f64 = 25.0;

/// What can be done about it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Remedy {
    /// A work of the workshop.
    Work(String),
    /// Hand over as it stands.
    HandOver,
    /// Look further: none of the causes reckoned with at this moment.
    LookFurther,
    /// Call for help: what is left when nothing known explains it.
    Help,
}

/// A next step.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Next {
    /// Try something, by its name.
    Try(String),
    /// Do something about it.
    Do(Remedy),
}

/// A next step and what it costs from here on, expected.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Candidate {
    /// The step.
    pub next: Next,
    /// Expected cost until the machine works and is handed over, money unit.
    pub cost: f64,
    /// Bits it promises.
    pub bits: f64,
}

/// The planning model of a moment.
#[derive(Clone)]
pub struct Plan {
    /// The problem.
    pub model: Model,
    /// What is known.
    pub known: Known,
    /// Trials, in the order of the problem's tests.
    pub trials: Vec<Trial>,
    /// Remedies, in the order of the problem's repairs.
    pub remedies: Vec<Remedy>,
    /// Place of each of the problem's causes but the last among the belief's.
    pub(super) causes: Vec<usize>,
    /// How the machine stands at each of the problem's places.
    pub(super) stands: Vec<Stand>,
}

impl Plan {
    /// The plan of a moment at which nothing was tried yet.
    ///
    /// # Errors
    /// As for [`Plan::new`].
    pub fn at(belief: &Belief, scenario: &Scenario) -> Result<Self, ModelError> {
        let drills = drills(belief.sound());
        Self::new(belief, scenario, &drills, &BTreeSet::new())
    }

    /// The plan of a moment; trials named in `done` would show nothing new.
    ///
    /// # Errors
    /// [`ModelError`] when the numbers make no problem; no shipped file gives that.
    pub fn new(
        belief: &Belief,
        scenario: &Scenario,
        drills: &Drills,
        done: &BTreeSet<String>,
    ) -> Result<Self, ModelError> {
        let likely = likely(belief, scenario);
        let here = stand_of(likely[0].job);
        let mut prior: Vec<f64> = likely.iter().map(|l| l.p).collect();
        prior.push((1.0 - prior.iter().sum::<f64>()).max(1e-4));
        let chosen = choose(&likely, &prior, scenario, drills, done, &here);
        let mut repairs = repairs(&likely, scenario);
        let further = Repair {
            cost: scenario.money.labour_per_min * FURTHER_MIN + rest_cost(belief, scenario),
            cost_if_not: 0.0,
            place: None,
            after: (0..prior.len())
                .map(|h| (h + 1 < prior.len()).then_some(h))
                .collect(),
        };
        repairs.push((Remedy::LookFurther, further, None));
        let mut stands: Vec<Stand> = vec![Stand::Ready];
        if here != Stand::Ready {
            stands.push(here.clone());
        }
        let works = repairs.iter().filter_map(|(_, _, stand)| stand.clone());
        let tried = chosen.iter().map(|(trial, ..)| trial.stand.clone());
        for stand in works.chain(tried) {
            let is_new = stand != Stand::Any && !stands.contains(&stand);
            if is_new && stands.len() < MOST_PLACES {
                stands.push(stand);
            }
        }
        let index = |stand: &Stand| stands.iter().position(|s| s == stand);
        let rate = scenario.money.labour_per_min;
        let direct: Vec<Vec<f64>> = stands
            .iter()
            .map(|a| {
                stands
                    .iter()
                    .map(|b| rate * way_min(scenario, a, b))
                    .collect()
            })
            .collect();
        let places = Places::new(&direct, 0);
        let mut tests = Vec::new();
        let mut trials = Vec::new();
        for (trial, test) in chosen {
            let place = index(&trial.stand);
            if place.is_some() || trial.stand == Stand::Any {
                tests.push(Test { place, ..test });
                trials.push(trial);
            }
        }
        repairs.retain(|(_, _, stand)| stand.as_ref().is_none_or(|s| index(s).is_some()));
        let (remedies, repairs): (Vec<_>, Vec<_>) = repairs
            .into_iter()
            .map(|(remedy, repair, stand)| {
                let place = stand.as_ref().and_then(&index);
                (remedy, Repair { place, ..repair })
            })
            .unzip();
        let start = index(&here).unwrap_or(0);
        let model = Model::with_places(prior, repairs, tests, places, start)?;
        Ok(Self {
            known: Known::at_start(&model),
            model,
            trials,
            remedies,
            causes: likely.iter().map(|l| l.cause).collect(),
            stands,
        })
    }

    /// Expected cost of every act: exact where the problem is small, else two steps ahead.
    pub fn costs(&self) -> Vec<(Act, f64)> {
        if self.model.n_states() > MOST_EXACT_STATES {
            return LookAhead::new(&self.model, 2).costs(&self.known);
        }
        let mut search = Exact::new(&self.model);
        let mut cost = |act| cost_of(&self.model, &self.known, act, &mut |k| search.to_go(k));
        let acts = self.known.acts(&self.model);
        acts.map(|act| (act, cost(act))).collect()
    }

    /// Every candidate, cheapest first.
    pub fn candidates(&self) -> Vec<Candidate> {
        let mut all: Vec<Candidate> = self
            .costs()
            .into_iter()
            .map(|(act, cost)| Candidate {
                next: self.next(act),
                cost,
                bits: match act {
                    Act::Test(t) => {
                        information::expected_gain(self.known.p(), &self.model.tests()[t])
                    }
                    Act::Repair(_) => 0.0,
                },
            })
            .collect();
        all.sort_by(|a, b| a.cost.total_cmp(&b.cost));
        all
    }

    pub(super) fn next(&self, act: Act) -> Next {
        match act {
            Act::Test(t) => Next::Try(self.trials[t].name.clone()),
            Act::Repair(r) => Next::Do(self.remedies[r].clone()),
        }
    }

    /// The trial with this name.
    pub fn trial(&self, name: &str) -> Option<&Trial> {
        self.trials.iter().find(|t| t.name == name)
    }
}

fn repairs(likely: &[Likely<'_>], scenario: &Scenario) -> Vec<(Remedy, Repair, Option<Stand>)> {
    let money = &scenario.money;
    let n = likely.len() + 1;
    let mut all: Vec<(Remedy, Repair, Option<Stand>)> = Vec::new();
    let mut seen = BTreeSet::new();
    for cause in likely.iter().filter(|l| !l.is_mended) {
        for work in cause.ways.iter().flat_map(|way| &way.works) {
            if !seen.insert(work.id.clone()) {
                continue;
            }
            let left = |h: usize| match likely.get(h) {
                Some(l) => l.after(work, h, likely),
                None => Some(h),
            };
            let after = (0..n).map(left).collect();
            let minutes = work.work_s / 60.0 + 1.0 + RUN_MIN;
            let closure = scenario.workshop.closure(&work.needs);
            let stand = if work.needs.is_empty() {
                None
            } else {
                Some(Stand::Open(closure.iter().map(|s| s.id.clone()).collect()))
            };
            let repair = Repair {
                cost: money.labour_per_min * minutes + price(scenario, work),
                cost_if_not: 0.0,
                place: None,
                after,
            };
            all.push((Remedy::Work(work.id.clone()), repair, stand));
        }
    }
    let rests = |l: &Likely| l.is_mended || l.ways.iter().all(|way| way.works.is_empty());
    let hand_over = Repair {
        cost: 5.0 * money.labour_per_min,
        cost_if_not: money.callback,
        place: Some(0),
        after: (0..n)
            .map(|h| (!likely.get(h).is_some_and(rests)).then_some(h))
            .collect(),
    };
    if likely.iter().any(rests) {
        all.push((Remedy::HandOver, hand_over, Some(Stand::Ready)));
    }
    let help = Repair {
        cost: money.callback + money.second_visit + money.labour_per_min * UNEXPLAINED_MIN,
        cost_if_not: 0.0,
        place: None,
        after: vec![None; n],
    };
    all.push((Remedy::Help, help, None));
    all
}

#[cfg(test)]
mod offered;
