//! Whole jobs worked by the expert, through the same acts as a person: ask, look, make safe, measure,
//! mend, prove, explain, hand over. Nothing here knows a machine or a fault.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::workshop::WorkKind;
use crate::expert::belief::Belief;
use crate::expert::door::Door;
use crate::expert::drill::Beat;
use crate::expert::drill::Drills;
use crate::expert::drill::drills;
use crate::expert::drill::sense;
use crate::expert::plan::Next;
use crate::expert::plan::Plan;
use crate::expert::plan::Remedy;
use crate::expert::routine::Routine;
use crate::expert::seen::Step;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::machine::MachineError;

/// Most decisions of one job; a person would have called for help long before.
const MOST_DECISIONS: usize = 40;
/// Questions asked of every customer. Common practice.
const QUESTIONS: [&str; 2] = ["when", "noise"];
/// Runs that may fail to show a sound machine before help is called.
const MOST_UNPROVED: u32 = 2;
/// The machine counts as mended from here.
const SURE: f64 = 0.8;

/// How a job was worked.
#[derive(Clone, Debug)]
pub struct Played {
    /// What the expert believed, step by step.
    pub belief: Belief,
    /// Its decisions, plain names, in order.
    pub decisions: Vec<Next>,
    /// It was handed over as working.
    pub is_handed_over: bool,
}

/// Works a fresh job to its end.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn play(job: &mut Job) -> Result<Played, MachineError> {
    let door = Door::new(job);
    let belief = Belief::new(&door.seen().scenario)?;
    let drills = drills(belief.sound());
    let mut expert = Expert {
        hands: Routine::new(door),
        belief,
        drills,
        done: BTreeSet::new(),
        decisions: Vec::new(),
        runs: BTreeSet::new(),
        n_keys: 0,
        telling: Vec::new(),
        n_unproved: 0,
        can_be_live: true,
        is_held_back: false,
    };
    let is_handed_over = expert.work();
    Ok(Played {
        belief: expert.belief,
        decisions: expert.decisions,
        is_handed_over,
    })
}

pub(super) struct Expert<'a> {
    pub hands: Routine<'a>,
    pub belief: Belief,
    drills: Drills,
    /// Trials that would show nothing new.
    done: BTreeSet<String>,
    decisions: Vec<Next>,
    /// Keys pressed when the runs were last found.
    n_keys: usize,
    /// Runs since the machine was last changed.
    runs: BTreeSet<&'static str>,
    /// Notebook lines with how far they moved the belief.
    pub telling: Vec<(f64, u32)>,
    /// Runs after which the machine had not done all it should.
    n_unproved: u32,
    /// Tests allow the plug in the socket.
    can_be_live: bool,
    /// It could not be handed over, and nothing was tried since.
    is_held_back: bool,
}

impl Expert<'_> {
    fn work(&mut self) -> bool {
        for question in QUESTIONS {
            self.hands.act(Action::Ask {
                question: question.to_owned(),
                again: false,
            });
        }
        // What makes any work here wrong is seen, or smelt, before anything is touched.
        self.hands.act(sense(0, Sense::Look, "floor").action);
        self.hands.act(sense(0, Sense::Smell, "floor").action);
        if self.hands.door.is_in_danger() {
            self.hands.act(Action::MakeSafeAndLeave);
            return false;
        }
        // A shut tap is seen from the door, and makes any run tell of nothing else.
        self.hands.act(sense(0, Sense::Look, "tap").action);
        self.hands.prove_socket();
        self.learn();
        while self.decisions.len() < MOST_DECISIONS {
            let Some(next) = self.decide() else { break };
            self.decisions.push(next.clone());
            match next {
                Next::Try(name) => self.try_out(&name),
                Next::Do(Remedy::Work(work)) => {
                    if !self.mend(&work) {
                        return self.leave();
                    }
                }
                Next::Do(Remedy::HandOver) => {
                    if self.prove() {
                        return self.hand_over();
                    }
                    if self.n_unproved > MOST_UNPROVED {
                        return self.leave();
                    }
                    self.is_held_back = self.mended() <= SURE;
                }
                Next::Do(Remedy::LookFurther | Remedy::Help) => return self.leave(),
            }
        }
        self.leave()
    }

    pub fn scenario(&self) -> std::sync::Arc<crate::bench::scenario::Scenario> {
        self.hands.door.seen().scenario.clone()
    }

    /// Takes what was shown into the belief.
    pub fn learn(&mut self) {
        for step in self.hands.take_fresh() {
            self.belief.take(&step);
            let moved = self
                .belief
                .history()
                .last()
                .map_or(0.0, |e| e.surprise_bits);
            self.telling
                .extend(step.notes.iter().map(|n| (moved, n.number)));
        }
    }

    /// Finds the runs anew where the panel was touched meanwhile: it keeps what was set.
    fn find_drills(&mut self) {
        if self.hands.door.hands().switched_on {
            return;
        }
        let steps = &self.hands.door.seen().steps;
        let is_key = |step: &&Step| matches!(step.entry.action, Action::Key { .. });
        let n_keys = steps.iter().filter(is_key).count();
        if n_keys != self.n_keys {
            self.n_keys = n_keys;
            let ranked = self.belief.ranked();
            let works = ranked.iter().find(|(_, _, twin)| twin.is_mended());
            self.drills = drills(works.map_or(self.belief.sound(), |(_, _, twin)| twin));
        }
    }

    fn decide(&mut self) -> Option<Next> {
        self.find_drills();
        let scenario = self.scenario();
        let plan = Plan::new(&self.belief, &scenario, &self.drills, &self.done).ok()?;
        let isolation = &self.hands.door.bench().isolation;
        let is_risky = isolation.earth_seen_missing || !self.can_be_live;
        let is_dead = self.hands.door.is_tripped();
        let may = |next: &Next| match next {
            Next::Try(name) => {
                let is_run = name.starts_with("run");
                let is_live = plan.trial(name).is_some_and(|t| t.stand == Stand::Ready);
                !(is_run && (is_risky || is_dead)) && (!is_live || self.can_be_live)
            }
            Next::Do(Remedy::HandOver) => !is_risky && !self.is_held_back,
            Next::Do(_) => true,
        };
        let all = plan.candidates();
        let next = all.iter().map(|c| &c.next).find(|next| may(next))?;
        if *next != Next::Do(Remedy::LookFurther) {
            return Some(next.clone());
        }
        let tries = all
            .iter()
            .filter(|c| matches!(c.next, Next::Try(_)) && may(&c.next));
        let most = tries.max_by(|a, b| a.bits.total_cmp(&b.bits));
        let plain = || self.plain_look(&may);
        most.map(|c| c.next.clone())
            .or_else(plain)
            .or(Some(Next::Do(Remedy::Help)))
    }

    /// What a technician does who has no idea: let it run, look round.
    fn plain_look(&self, may: &impl Fn(&Next) -> bool) -> Option<Next> {
        let scenario = self.scenario();
        let is_on = self.hands.door.hands().switched_on;
        crate::expert::trial::trials(&scenario, &self.drills, is_on)
            .into_iter()
            .filter(|t| t.is_run() || t.stand == Stand::Any)
            .filter(|t| !self.done.contains(&t.name))
            .map(|t| Next::Try(t.name))
            .find(|next| may(next))
    }

    fn try_out(&mut self, name: &str) {
        self.done.insert(name.to_owned());
        self.is_held_back = false;
        let scenario = self.scenario();
        let is_on = self.hands.door.hands().switched_on;
        let all = crate::expert::trial::trials(&scenario, &self.drills, is_on);
        let Some(trial) = all.into_iter().find(|t| t.name == name) else {
            return;
        };
        if self.stand(&trial) {
            for beat in &trial.beats {
                self.hands.door.wait(beat.wait);
                if matches!(beat.action, Action::Key { .. }) {
                    self.hands.mop();
                }
                self.hands.act(beat.action.clone());
            }
        }
        let runs = ["run wash", "run spin"].into_iter();
        self.runs
            .extend(runs.filter(|run| name == *run || name == "run all"));
        if name == "run all" || name == "run spin" {
            self.hands.switch_off();
        }
        self.learn();
    }

    fn stand(&mut self, trial: &Trial) -> bool {
        match &trial.stand {
            Stand::Any => true,
            Stand::Ready => {
                self.hands.mop();
                self.bring_back()
            }
            Stand::Open(steps) => {
                self.hands.isolate();
                let steps: Vec<String> = steps.iter().cloned().collect();
                if !self.hands.reach(&steps) {
                    return false;
                }
                if !steps.is_empty() {
                    self.runs.clear();
                }
                self.lead_pins_off(trial);
                trial
                    .apart
                    .iter()
                    .all(|connector| self.hands.pull(connector))
            }
        }
    }

    /// Leads off what a filter, or an insulation test, left on the plug before ohms are read there.
    fn lead_pins_off(&mut self, trial: &Trial) {
        let pins = self
            .hands
            .door
            .seen()
            .scenario
            .machine
            .roles
            .plug_pins
            .clone();
        let is_at_plug = |beat: &Beat| match &beat.action {
            Action::Meter { mode, red, black } => {
                *mode == MeterMode::Ohms
                    && [red, black].into_iter().flatten().any(|n| pins.contains(n))
            }
            _ => false,
        };
        if trial.beats.iter().any(is_at_plug) {
            self.hands.act(Action::Discharge {
                what: Charged::PlugPins,
                tool: DischargeTool::BleedResistor,
            });
        }
    }

    fn bring_back(&mut self) -> bool {
        if self.hands.door.hands().plugged {
            return true;
        }
        self.can_be_live = self.hands.bring_back();
        self.learn();
        self.can_be_live
    }

    /// Does a work; false when the customer does not agree or the part is not there.
    fn mend(&mut self, id: &str) -> bool {
        let scenario = self.scenario();
        let Some(work) = scenario.workshop.work(id) else {
            return false;
        };
        // What was tested after a repair is tested again after whatever follows it.
        if work.kind == WorkKind::Instruct && !self.hands.door.were_inside() {
            self.hands.switch_off();
        } else {
            self.hands.isolate();
        }
        if !work.needs.is_empty() && !self.hands.reach(&work.needs) {
            return false;
        }
        let action = Action::Work {
            work: id.to_owned(),
            check: true,
        };
        if !self.hands.name_price(work) {
            return false;
        }
        let is_away = self.hands.door.misses(&action);
        if is_away && !(self.hands.fetch(&work.part) && self.hands.reach(&work.needs)) {
            return false;
        }
        if !self.hands.act(action) {
            return false;
        }
        self.learn();
        self.done.clear();
        self.runs.clear();
        self.can_be_live = true;
        self.is_held_back = false;
        true
    }

    /// Puts everything together and runs the machine; true when it still counts as mended.
    fn prove(&mut self) -> bool {
        if !self.bring_back() {
            return false;
        }
        self.hands.close_up();
        self.hands.prove_socket();
        // Refused where it is open already.
        self.hands.act(Action::Tap { open: true });
        if self.runs.len() < 2 {
            self.hands.switch_off();
            self.learn();
            self.find_drills();
            self.try_out("run all");
            self.hands
                .act(sense(0, Sense::Look, "under_machine").action);
        }
        self.hands.switch_off();
        self.learn();
        if !self.hands.door.has_run_through() {
            // It did not do what a sound one does in that time: once more, then somebody else's turn.
            self.runs.clear();
            self.n_unproved += u32::from(self.mended() > SURE);
            return false;
        }
        self.mended() > SURE
    }

    /// Probability that nothing is wrong any more.
    fn mended(&self) -> f64 {
        let ranked = self.belief.ranked();
        ranked
            .iter()
            .filter(|(_, _, twin)| twin.is_mended())
            .map(|(p, ..)| p)
            .sum()
    }
}
