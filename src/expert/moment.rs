//! One moment of a job as a problem to decide: the planning model with what is likely then, and what
//! any act would cost by it.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::sync::Arc;

use crate::bench::action::Sense;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Work;
use crate::expert::belief::Belief;
use crate::expert::drill::Drills;
use crate::expert::foreseen::Foreseen;
use crate::expert::judged::Decided;
use crate::expert::judged::Judged;
use crate::expert::plan::Next;
use crate::expert::plan::Plan;
use crate::expert::plan::RUN_MIN;
use crate::expert::plan::Remedy;
use crate::expert::remedy::remedies;
use crate::expert::theory::acts::Test;
use crate::expert::theory::information;
use crate::expert::theory::justify;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::leaf::Leaf;
use crate::expert::theory::look_ahead::LookAhead;
use crate::expert::theory::policy::ToGo;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::expert::ways::price;
use crate::expert::ways::way_min;

/// Steps the reference policy looks ahead.
const AHEAD: usize = 2;
/// Outcomes less likely than this are left out of account.
const LEAST_CHANCE: f64 = 1e-3;
/// A decision this close to the best counts as the best in words, share of the cost to go.
const AS_GOOD_RATIO: f64 = 0.02;

/// A moment.
#[derive(Clone)]
pub(super) struct Moment {
    plan: Plan,
    scenario: Arc<Scenario>,
    chances: Chances,
}

impl Moment {
    /// The moment a belief stands for; none when the numbers make no problem. Trials in `done` would
    /// show nothing new.
    pub fn of(
        belief: &Belief,
        scenario: &Arc<Scenario>,
        drills: &Drills,
        done: &BTreeSet<String>,
    ) -> Option<Self> {
        let plan = Plan::new(belief, scenario, drills, done).ok()?;
        Some(Self {
            chances: Chances::of(belief, scenario, &plan),
            plan,
            scenario: Arc::clone(scenario),
        })
    }

    /// The reference policy's next step.
    pub fn best(&self) -> Option<Next> {
        let best = LookAhead::new(&self.plan.model, AHEAD).best(&self.plan.known);
        best.map(|(act, _)| self.plan.next(act))
    }

    /// The trial with this name.
    pub fn trial(&self, name: &str) -> Option<&Trial> {
        self.plan.trial(name)
    }

    /// Cost to go of the reference policy.
    pub fn value(&self) -> f64 {
        LookAhead::new(&self.plan.model, AHEAD).to_go(&self.plan.known)
    }

    /// Cost to go of repairing without tests.
    pub fn without_tests(&self) -> f64 {
        let known = &self.plan.known;
        Leaf::new(&self.plan.model).cost(&self.plan.model, known.p(), known.place())
    }

    /// Judges a work, decided when the machine stood as `from`.
    pub fn work(&self, work: &str, from: &Stand, step: usize) -> Judged {
        let scenario = &self.scenario;
        let rate = scenario.money.labour_per_min;
        let alone = scenario.workshop.work(work).map_or(0.0, |w| {
            let closure = scenario.workshop.closure(&w.needs);
            let there = Stand::Open(closure.iter().map(|s| s.id.clone()).collect());
            let way = if w.needs.is_empty() {
                0.0
            } else {
                way_min(scenario, from, &there) + way_min(scenario, &there, from)
            };
            rate * (w.work_s / 60.0 + 1.0 + RUN_MIN + way) + price(scenario, w)
        });
        let remedy = Remedy::Work(work.to_owned());
        let mut judged = self.remedy(&remedy, from, alone);
        judged.step = step;
        judged.decided = Decided::Work(work.to_owned());
        judged
    }

    /// Judges handing over with nothing done. What is at stake is the callback.
    pub fn hand_over(&self, from: &Stand, step: usize) -> Judged {
        let callback = self.scenario.money.callback;
        let mut judged = self.remedy(&Remedy::HandOver, from, callback);
        judged.step = step;
        judged.decided = Decided::HandOver;
        judged.cost = callback;
        judged.justification = Some(justify::justification(judged.avoidable, callback));
        judged
    }

    /// What a remedy puts right outside the plan is reckoned with too: it saves looking further for
    /// it. One the plan does not know at all costs `alone`.
    fn remedy(&self, remedy: &Remedy, from: &Stand, alone: f64) -> Judged {
        let model = &self.plan.model;
        let known = Known::new(self.plan.known.p().to_vec(), self.nearest(from));
        let further = self.plan.remedies.iter();
        let further = further.zip(model.repairs());
        let further = further.filter(|(r, _)| **r == Remedy::LookFurther);
        let further = further.map(|(_, repair)| repair.cost).next().unwrap_or(0.0);
        let costs = LookAhead::new(model, AHEAD).costs(&known).into_iter();
        let costs: Vec<(Act, f64)> = costs
            .map(|(act, cost)| match act {
                Act::Repair(i) => {
                    let (_, outside) = self.chances.of_remedy(&self.plan.remedies[i]);
                    (act, cost - outside * further)
                }
                Act::Test(_) => (act, cost),
            })
            .collect();
        let best = costs.iter().min_by(|a, b| a.1.total_cmp(&b.1));
        let index = self.plan.remedies.iter().position(|r| r == remedy);
        let found = index.filter(|&i| known.can_repair(model, i));
        let q = found.and_then(|i| costs.iter().find(|(act, _)| *act == Act::Repair(i)));
        let cost = found.map_or(alone, |i| model.repairs()[i].cost);
        let (p, _) = self.chances.of_remedy(remedy);
        let avoidable = match (q, best) {
            (Some((_, q)), Some((_, v))) => (q - v).max(0.0),
            // Where it does not help, all is as it was.
            (None, Some((_, v))) => (cost - p * v).clamp(0.0, cost),
            _ => cost,
        };
        Judged {
            cost,
            avoidable,
            justification: Some(justify::justification(avoidable, cost)),
            p: Some(p),
            better: best.and_then(|(act, v)| self.better(*act, avoidable, *v)),
            ..Judged::tried(0, 0.0)
        }
    }

    /// The problem's shares from those of all causes: what it leaves out is one more.
    fn shares(&self, p: &[f64]) -> Vec<f64> {
        let sum: f64 = p.iter().sum();
        let mut shares: Vec<f64> = self.plan.causes.iter().map(|&h| p[h]).collect();
        let rest = sum - shares.iter().sum::<f64>();
        shares.push(rest.max(1e-4 * sum));
        shares
    }

    /// Judges something tried, from what could have come of it.
    pub fn tried(&self, tried: &Tried<'_>, step: usize) -> Judged {
        let mut judged = Judged::tried(step, tried.cost);
        judged.avoidable = tried.cost + tried.way;
        let model = &self.plan.model;
        let mut search = LookAhead::new(model, AHEAD);
        let (from, to) = (self.nearest(tried.from), self.nearest(tried.to));
        let trials = self.plan.trials.iter().enumerate();
        let used = trials.filter(|(_, trial)| tried.done.contains(&trial.name));
        let used: Vec<usize> = used.map(|(test, _)| test).collect();
        let mut value = |p: &[f64], place: usize| {
            let known = Known::new(self.shares(p), place);
            search.best(&used.iter().fold(known, |k, test| k.with_used(*test)))
        };
        let Some((best, v)) = value(tried.before, from) else {
            return judged;
        };
        let mut q = tried.cost + tried.way;
        match tried.foreseen {
            Some(foreseen) => {
                let test = Test {
                    cost: tried.cost,
                    place: None,
                    n_outcomes: foreseen.n_outcomes,
                    likelihood: foreseen.likelihood.clone(),
                };
                judged.promised_bits = information::expected_gain(tried.before, &test);
                for outcome in 0..foreseen.n_outcomes {
                    let after: Vec<f64> = tried
                        .before
                        .iter()
                        .enumerate()
                        .map(|(h, p)| p * test.row(h)[outcome])
                        .collect();
                    let z: f64 = after.iter().sum();
                    let reached = if z > LEAST_CHANCE {
                        &after[..]
                    } else {
                        tried.before
                    };
                    q += z * value(reached, to).map_or(0.0, |(_, cost)| cost);
                }
            }
            None => q += value(tried.before, to).map_or(0.0, |(_, cost)| cost),
        }
        judged.avoidable = (q - v).max(0.0);
        judged.better = self.better(best, judged.avoidable, v);
        judged
    }

    /// Share of what is likely that the model knows only as the rest.
    pub fn rest(&self, p: &[f64]) -> f64 {
        1.0 - self.plan.causes.iter().map(|&h| p[h]).sum::<f64>()
    }

    /// The model's place for a stand, or the one that is least work away.
    fn nearest(&self, stand: &Stand) -> usize {
        let way = |other: &Stand| way_min(&self.scenario, stand, other);
        let places = self.plan.stands.iter().enumerate();
        places
            .min_by(|a, b| way(a.1).total_cmp(&way(b.1)))
            .map_or(0, |(place, _)| place)
    }

    fn better(&self, best: Act, avoidable: f64, v: f64) -> Option<Next> {
        (avoidable > AS_GOOD_RATIO * v).then(|| self.plan.next(best))
    }
}

/// How likely each remedy is to put the machine right, over all causes and not only the planned ones.
#[derive(Clone)]
struct Chances {
    /// By work: of all causes, and of those outside the plan.
    works: BTreeMap<String, (f64, f64)>,
    /// Nothing is wrong, or no longer, or nothing can be done.
    as_it_is: (f64, f64),
}

impl Chances {
    fn of(belief: &Belief, scenario: &Scenario, plan: &Plan) -> Self {
        let mut chances = Self {
            works: BTreeMap::new(),
            as_it_is: (0.0, 0.0),
        };
        let add = |to: &mut (f64, f64), p: f64, cause: usize| {
            to.0 += p;
            if !plan.causes.contains(&cause) {
                to.1 += p;
            }
        };
        for (p, variant, twin) in belief.ranked().into_iter().filter(|(p, ..)| *p > 0.0) {
            let ids = &belief.causes()[variant.cause].0;
            let healed = &twin.job().bench().healed;
            let defs = ids.iter().filter_map(|id| scenario.machine.fault(id));
            let left = defs.filter(|def| {
                let targets = def.targets(&scenario.machine.wiring);
                targets.is_empty() || !targets.iter().all(|target| healed.contains(target))
            });
            let works: Vec<Vec<&Work>> = left.map(|def| remedies(scenario, def)).collect();
            let Some((first, others)) = works.split_first().filter(|_| !twin.is_mended()) else {
                add(&mut chances.as_it_is, p, variant.cause);
                continue;
            };
            if works.iter().all(Vec::is_empty) {
                add(&mut chances.as_it_is, p, variant.cause);
            }
            // Of two faults, only what mends both puts the machine right.
            let mends_all = |work: &&&Work| others.iter().all(|o| o.contains(work));
            for work in first.iter().filter(mends_all) {
                let of = chances.works.entry(work.id.clone()).or_default();
                add(of, p, variant.cause);
            }
        }
        chances
    }

    fn of_remedy(&self, remedy: &Remedy) -> (f64, f64) {
        match remedy {
            Remedy::Work(id) => self.works.get(id).copied().unwrap_or_default(),
            Remedy::HandOver => self.as_it_is,
            Remedy::LookFurther | Remedy::Help => (0.0, 0.0),
        }
    }
}

/// Something tried.
pub(super) struct Tried<'a> {
    /// Probabilities of the belief's causes before it.
    pub before: &'a [f64],
    /// How the machine stood when it was decided.
    pub from: &'a Stand,
    /// The same when it was done.
    pub to: &'a Stand,
    /// What could have come of it.
    pub foreseen: Option<&'a Foreseen>,
    /// Cost of the act itself.
    pub cost: f64,
    /// Cost of the cheapest way from one stand to the other.
    pub way: f64,
    /// Trials that would show nothing new.
    pub done: &'a BTreeSet<String>,
}

/// The trial that a notebook line is the outcome of.
pub(super) fn name_of(note: &Note) -> Option<String> {
    match &note.entry {
        NoteEntry::Reading(reading) => {
            let mode = serde_json::to_value(reading.mode).ok()?;
            let red = reading.red.as_deref().unwrap_or_default();
            let black = reading.black.as_deref().unwrap_or_default();
            Some(format!("{} {red} {black}", mode.as_str()?))
        }
        NoteEntry::Observation {
            sense: Sense::Look,
            place,
            ..
        } => Some(format!("look {place}")),
        _ => None,
    }
}

#[cfg(test)]
mod judging;
