//! One simulated apprentice at work: asks, tries what seems worth it, mends what seems likely, and
//! hands over, with the habits of its kind. Everything it does by chance follows from its seed.

use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::visit::Advice;
use crate::bench::workshop::WorkKind;
use crate::expert::care::Care;
use crate::expert::crowd::almanac::Almanac;
use crate::expert::crowd::habits::Habits;
use crate::expert::crowd::habits::Kind;
use crate::expert::crowd::likeness;
use crate::expert::door::Door;
use crate::expert::routine::Routine;
use crate::expert::theory::information;
use crate::expert::trial;
use crate::expert::trial::Lines;
use crate::expert::trial::Stand;
use crate::expert::twin::Twin;
use crate::expert::ways::way_min;
use crate::machine::draw_ratio;

const WHIM_PURPOSE: u64 = 0x7768_696d;
/// Most things tried in one job.
const MOST_TRIED: usize = 14;
/// A test that promises less is not made, bits.
const LEAST_BITS: f64 = 0.03;
/// How often a second part is fitted in the same go by who likes parts.
const AT_ONCE_RATIO: f64 = 0.7;
/// No cause is ever given up quite.
const NEVER_LESS: f64 = 1e-6;

/// Works a fresh job to its end.
pub fn work(job: &mut Job, almanac: &Almanac, kind: Kind, seed: u64) {
    let habits = kind.habits();
    let care = Care::new(seed, habits.care_ratio);
    let mut apprentice = Apprentice {
        hands: Routine::with_care(Door::new(job), care),
        almanac,
        habits,
        sound: almanac.sound().clone(),
        p: almanac.causes.iter().map(|c| c.p).collect(),
        tried: BTreeSet::new(),
        n_tried: 0,
        n_mended: 0,
        done: BTreeSet::new(),
        telling: Vec::new(),
        stated: None,
        seed,
        drawn: 0,
    };
    apprentice.work();
}

struct Apprentice<'a> {
    hands: Routine<'a>,
    almanac: &'a Almanac,
    habits: Habits,
    /// A sound machine that gets the same keys.
    sound: Twin,
    p: Vec<f64>,
    tried: BTreeSet<String>,
    n_tried: usize,
    /// Repairs done.
    n_mended: usize,
    done: BTreeSet<String>,
    telling: Vec<u32>,
    /// The cause held to be mended.
    stated: Option<usize>,
    seed: u64,
    drawn: u64,
}

impl Apprentice<'_> {
    fn draw(&mut self) -> f64 {
        self.drawn += 1;
        draw_ratio(self.seed, WHIM_PURPOSE, self.drawn)
    }

    fn work(&mut self) {
        for question in ["when", "noise"] {
            if self.draw() < self.habits.care_ratio {
                self.hands.act(Action::Ask {
                    question: question.to_owned(),
                    again: false,
                });
            }
        }
        if self.draw() < self.habits.care_ratio {
            self.hands.prove_socket();
        }
        while self.n_mended <= self.habits.most_works {
            let best = self.likeliest();
            if self.p[best] < self.habits.sure_ratio
                && self.n_tried < MOST_TRIED
                && let Some(i) = self.choose()
            {
                self.try_out(i);
                continue;
            }
            let Some(work) = self.remedy(best) else {
                if self.almanac.causes[best].faults.is_empty() || self.stated.is_some() {
                    return self.hand_over(best);
                }
                return self.leave(best);
            };
            if self.n_mended == self.habits.most_works {
                return self.leave(best);
            }
            if !self.mend(&work) {
                // Too dear, or not to be had: the next best.
                self.put_away(&work);
                continue;
            }
            self.n_mended += 1;
            self.stated = Some(best);
            self.mend_another(&work);
            if self.draw() >= self.habits.proves_ratio || self.prove() {
                return self.hand_over(best);
            }
            self.put_away(&work);
        }
    }

    fn likeliest(&self) -> usize {
        (0..self.p.len())
            .max_by(|a, b| self.p[*a].total_cmp(&self.p[*b]))
            .unwrap_or_default()
    }

    /// The test that seems worth most.
    fn choose(&mut self) -> Option<usize> {
        let almanac = self.almanac;
        let here = if self.hands.door.hands().plugged {
            Stand::Ready
        } else {
            Stand::Open(self.hands.door.bench().off.iter().cloned().collect())
        };
        let mut best: Option<(f64, usize)> = None;
        for (i, sheet) in almanac.sheets.iter().enumerate() {
            if self.tried.contains(&sheet.trial.name) {
                continue;
            }
            let bits = information::expected_gain(&self.p, &sheet.test);
            if bits < LEAST_BITS {
                continue;
            }
            let way = match &sheet.trial.stand {
                Stand::Any => 0.0,
                stand => way_min(&almanac.scenario, &here, stand),
            };
            let cost = sheet.test.cost + almanac.scenario.money.labour_per_min * way + 0.5;
            let whim = self.habits.whim * 4.0 * (self.draw() - 0.5);
            let liking = if likeness::is_measured(sheet) {
                self.habits.meter_ratio
            } else {
                1.0
            };
            let worth = liking * bits / cost * libm::exp(whim);
            if best.is_none_or(|(most, _)| worth > most) {
                best = Some((worth, i));
            }
        }
        best.map(|(_, i)| i)
    }

    fn try_out(&mut self, i: usize) {
        let sheet = &self.almanac.sheets[i];
        self.tried.insert(sheet.trial.name.clone());
        self.n_tried += 1;
        if !self.stand(&sheet.trial.stand, &sheet.trial.apart) {
            return;
        }
        let lines = if sheet.trial.is_run() {
            self.run()
        } else {
            self.follow();
            for beat in &sheet.trial.beats {
                self.hands.door.wait(beat.wait);
                self.hands.act(beat.action.clone());
            }
            self.follow()
        };
        let is_misread = self.draw() < self.habits.misreads_ratio;
        let by = if is_misread {
            let other = (self.draw() * sheet.lines.len() as f64) as usize;
            sheet.lines[other.min(sheet.lines.len() - 1)].clone()
        } else {
            lines
        };
        let weight = likeness::weight(sheet);
        for (p, expected) in self.p.iter_mut().zip(&sheet.lines) {
            *p = (*p * libm::exp(weight * trial::fit(&by, expected))).max(1e-300);
        }
        self.settle();
    }

    fn settle(&mut self) {
        let sum: f64 = self.p.iter().sum();
        for p in &mut self.p {
            *p = (*p / sum).max(NEVER_LESS);
        }
    }

    /// Gives the acts done to the sound machine too; what they showed.
    fn follow(&mut self) -> Lines {
        let mut lines = Lines::new();
        for step in self.hands.take_fresh() {
            self.sound.follow(&step);
            let told = step.notes.iter().filter(|n| trial::tells(n));
            lines.extend(told.map(|n| (n.clone(), 0.0)));
        }
        self.telling.extend(lines.iter().map(|(n, _)| n.number));
        lines
    }

    /// Lets the machine run through everything.
    fn run(&mut self) -> Lines {
        self.hands.switch_off();
        self.follow();
        let keys: Vec<Action> = self
            .hands
            .door
            .seen()
            .steps
            .iter()
            .map(|s| s.entry.action.clone())
            .filter(|a| matches!(a, Action::Key { .. }))
            .collect();
        let drills = self.almanac.drills_after(&keys, &self.sound);
        for beat in drills.wash.iter().chain(&drills.spin) {
            self.hands.door.wait(beat.wait);
            self.hands.act(beat.action.clone());
        }
        let lines = self.follow();
        self.hands.switch_off();
        lines
    }

    fn stand(&mut self, stand: &Stand, apart: &[String]) -> bool {
        match stand {
            Stand::Any => true,
            Stand::Ready => self.hands.door.hands().plugged || self.hands.bring_back(),
            Stand::Open(steps) => {
                self.hands.isolate();
                let steps: Vec<String> = steps.iter().cloned().collect();
                self.hands.reach(&steps) && apart.iter().all(|c| self.hands.pull(c))
            }
        }
    }

    /// What is done about a cause: a new part where one is liked, else the first that helps.
    fn remedy(&self, cause: usize) -> Option<String> {
        let workshop = &self.almanac.scenario.workshop;
        let open = |id: &&String| !self.done.contains(*id);
        let mut works = self.almanac.causes[cause].works.iter().filter(open);
        let is_part = |id: &&String| {
            workshop
                .work(id)
                .is_some_and(|w| w.kind == WorkKind::Replace)
        };
        let first = works.clone().next();
        if self.habits.likes_parts {
            works.find(is_part).or(first).cloned()
        } else {
            first.cloned()
        }
    }

    /// Who likes new parts fits the next likely one in the same go.
    fn mend_another(&mut self, first: &str) {
        if !self.habits.likes_parts || self.draw() >= AT_ONCE_RATIO {
            return;
        }
        let mut order: Vec<usize> = (0..self.p.len()).collect();
        order.sort_by(|a, b| self.p[*b].total_cmp(&self.p[*a]));
        let works: Vec<String> = order.iter().filter_map(|c| self.remedy(*c)).collect();
        let workshop = &self.almanac.scenario.workshop;
        let kind = |id: &String| workshop.work(id).map(|w| w.kind);
        let is_part = |id: &String| id != first && kind(id) == Some(WorkKind::Replace);
        if let Some(work) = works.into_iter().find(is_part) {
            self.n_mended += usize::from(self.mend(&work));
        }
    }

    fn mend(&mut self, id: &str) -> bool {
        let scenario = &self.almanac.scenario;
        let Some(work) = scenario.workshop.work(id) else {
            return false;
        };
        self.done.insert(id.to_owned());
        if !self.hands.name_price(work) {
            return false;
        }
        if work.kind == WorkKind::Instruct && !self.hands.door.were_inside() {
            self.hands.switch_off();
        } else {
            self.hands.isolate();
        }
        if !work.needs.is_empty() && !self.hands.reach(&work.needs) {
            return false;
        }
        let check = self.draw() < self.habits.care_ratio;
        let action = Action::Work {
            work: id.to_owned(),
            check,
        };
        let is_away = self.hands.door.misses(&action);
        if is_away && !(self.hands.fetch(&work.part) && self.hands.reach(&work.needs)) {
            return false;
        }
        self.hands.act(action)
    }

    /// Runs the machine after a repair; true when it does as a sound one.
    fn prove(&mut self) -> bool {
        if !self.hands.door.hands().plugged && !self.hands.bring_back() {
            return false;
        }
        self.hands.close_up();
        self.hands.act(Action::Tap { open: true });
        self.hands.switch_off();
        self.follow();
        let before = self.sound.job().notebook().len();
        let lines = self.run();
        let notes = &self.sound.job().notebook()[before..];
        let sound: Lines = notes
            .iter()
            .filter(|n| trial::tells(n))
            .map(|n| (n.clone(), 0.0))
            .collect();
        likeness::is_like(&lines, &sound) && self.hands.door.has_run_through()
    }

    /// It was not that: what this work would have mended is out.
    fn put_away(&mut self, work: &str) {
        for (p, cause) in self.p.iter_mut().zip(&self.almanac.causes) {
            if cause.faults.is_empty() || cause.works.iter().any(|w| w == work) {
                *p = 0.0;
            }
        }
        self.stated = None;
        self.settle();
    }

    fn state(&mut self, cause: usize) {
        let causes = self.almanac.causes[self.stated.unwrap_or(cause)]
            .faults
            .clone();
        let evidence = self.telling.iter().rev().take(3).copied().collect();
        self.hands.act(Action::Finding { causes, evidence });
        if self.draw() < self.habits.care_ratio {
            let advice = Advice::WhatWasDone;
            self.hands.act(Action::Advise { advice });
        }
    }

    fn hand_over(&mut self, cause: usize) {
        if !self.hands.door.hands().plugged {
            let is_well = self.hands.bring_back();
            if !is_well {
                return self.leave(cause);
            }
        }
        self.hands.close_up();
        self.hands.act(Action::Tap { open: true });
        self.hands.switch_off();
        self.state(cause);
        if self.hands.door.bench().isolation.earth_seen_missing
            && self.draw() < self.habits.care_ratio
        {
            let advice = Advice::HouseWiring;
            self.hands.act(Action::Advise { advice });
            self.hands.isolate();
            self.hands.act(Action::MakeSafeAndLeave);
            return;
        }
        self.hands.act(Action::Close);
    }

    fn leave(&mut self, cause: usize) {
        self.hands.isolate();
        self.hands.close_up();
        self.state(cause);
        let advice = if self.hands.door.bench().isolation.earth_seen_missing {
            Advice::HouseWiring
        } else {
            Advice::NewMachine
        };
        self.hands.act(Action::Advise { advice });
        self.hands.act(Action::MakeSafeAndLeave);
    }
}
