//! What could be tried next, and what each likely machine would show of it: the tests of the
//! planning model.
//!
//! Each trial is done on a copy of each likely machine, with the same acts a person would do, so
//! its outcomes are computed like everything else. Machines that would show the same, within meter
//! and part tolerance, share an outcome.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::observe::place_of;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::DataSheetLine;
use crate::expert::drill::Beat;
use crate::expert::drill::Drills;
use crate::expert::drill::sense;
use crate::expert::weigh;

/// Most outcomes of one trial.
const MOST_OUTCOMES: usize = 6;
/// Two machines show the same when each explains the other's lines this well, in logarithms.
const SAME: f64 = 2.0;

/// How the machine stands for a trial.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stand {
    /// As a customer has it, plug in: for runs and voltages outside.
    Ready,
    /// Any way.
    Any,
    /// Unplugged and proved dead, with these steps off.
    Open(BTreeSet<String>),
}

/// One thing to try.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    /// Stable name, such as `look belt` or `ohms MA MB`.
    pub name: String,
    /// How the machine stands.
    pub stand: Stand,
    /// Connectors to pull before.
    pub apart: Vec<String>,
    /// What is done.
    pub beats: Vec<Beat>,
}

impl Trial {
    /// It lets the machine run.
    pub fn is_run(&self) -> bool {
        self.name.starts_with("run")
    }
}

/// What a machine shows of a trial: lines, each with its spread.
pub type Lines = Vec<(Note, f64)>;

/// All that can be tried on this machine; the spin alone only while it still runs the wash.
pub fn trials(scenario: &Scenario, drills: &Drills, is_on: bool) -> Vec<Trial> {
    let workshop = &scenario.workshop;
    let mut all = Vec::new();
    let both = [drills.wash.clone(), drills.spin.clone()].concat();
    let runs = if is_on {
        vec![("run spin", drills.spin.clone())]
    } else {
        vec![("run wash", drills.wash.clone()), ("run all", both)]
    };
    for (name, beats) in runs {
        all.push(Trial {
            name: name.to_owned(),
            stand: Stand::Ready,
            apart: Vec::new(),
            beats,
        });
    }
    for place in &workshop.places {
        all.push(Trial {
            name: format!("look {}", place.id),
            stand: stand(scenario, &place.needs),
            apart: Vec::new(),
            beats: vec![sense(0, Sense::Look, &place.id)],
        });
    }
    for what in [
        Turnable::Pulsator,
        Turnable::Basket,
        Turnable::MotorPulley,
        Turnable::Belt,
        Turnable::DrainWire,
        Turnable::ClutchLever,
        Turnable::Tub,
        Turnable::BalanceLever,
    ] {
        let Some(place) = workshop.place(place_of(what)) else {
            continue;
        };
        let lid = |open| Beat {
            wait: 0,
            action: Action::Lid { open },
        };
        let turn = Beat {
            wait: 0,
            action: Action::Turn { what },
        };
        let above = matches!(what, Turnable::Pulsator | Turnable::Basket | Turnable::Tub);
        all.push(Trial {
            name: format!("turn {}", place.id),
            stand: Stand::Open(steps(scenario, &place.needs)),
            apart: Vec::new(),
            beats: if above {
                vec![lid(true), turn, lid(false)]
            } else {
                vec![turn]
            },
        });
    }
    all.extend(
        workshop
            .data_sheet
            .iter()
            .filter_map(|l| reading(scenario, l)),
    );
    all
}

fn steps(scenario: &Scenario, needs: &[String]) -> BTreeSet<String> {
    let closure = scenario.workshop.closure(needs);
    closure.into_iter().map(|s| s.id.clone()).collect()
}

fn stand(scenario: &Scenario, needs: &[String]) -> Stand {
    if needs.is_empty() {
        Stand::Any
    } else {
        Stand::Open(steps(scenario, needs))
    }
}

/// A line of the data sheet that can be measured dead, or at the socket and cabinet.
fn reading(scenario: &Scenario, line: &DataSheetLine) -> Option<Trial> {
    let workshop = &scenario.workshop;
    let mode: MeterMode = serde_json::from_value(line.mode.clone().into()).ok()?;
    let black = (!line.black.is_empty()).then(|| line.black.clone());
    let mut needs: Vec<String> = Vec::new();
    for node in std::iter::once(&line.red).chain(&black) {
        needs.extend(workshop.test_point(node)?.needs.iter().cloned());
    }
    for connector in &line.apart {
        needs.extend(workshop.connector(connector)?.needs.iter().cloned());
    }
    let stand = if mode.needs_dead_circuit() {
        Stand::Open(steps(scenario, &needs))
    } else if needs.is_empty() && mode == MeterMode::AcVolts {
        Stand::Ready
    } else {
        return None;
    };
    let place = Action::Meter {
        mode,
        red: Some(line.red.clone()),
        black,
    };
    let beat = |action| Beat { wait: 0, action };
    Some(Trial {
        name: format!("{} {} {}", line.mode, line.red, line.black),
        stand,
        apart: line.apart.clone(),
        beats: vec![beat(place), beat(Action::Note)],
    })
}

/// A likely machine on which things are tried: copies of it, one for each way of standing, so that it
/// is brought there once. What stands in the way is passed over, as its steps are reckoned with
/// elsewhere; what is looked at or measured dead leaves a copy as it was.
pub struct Ground<'a> {
    job: &'a Job,
    copies: BTreeMap<(bool, Vec<String>), Job>,
    /// The last run tried: a longer one that begins alike goes on from its end.
    ran: Option<Ran>,
}

/// A run, the machine at its end, and what it showed.
struct Ran {
    beats: Vec<Beat>,
    end: Job,
    lines: Lines,
}

impl<'a> Ground<'a> {
    /// For a machine as it stands.
    pub fn of(job: &'a Job) -> Self {
        Self {
            job,
            copies: BTreeMap::new(),
            ran: None,
        }
    }

    /// What the machine shows of a trial.
    pub fn shown(&mut self, trial: &Trial) -> Lines {
        let is_in = self.job.machine().plugged();
        let goes_in = match trial.stand {
            Stand::Ready => true,
            Stand::Open(_) => false,
            Stand::Any => is_in,
        };
        let job = self.job;
        let copy = self
            .copies
            .entry((goes_in, trial.apart.clone()))
            .or_insert_with(|| brought(job, goes_in, &trial.apart));
        // A machine that is running, or will be, goes on meanwhile.
        if trial.is_run() {
            let known = self.ran.take();
            let mut ran = known
                .filter(|ran| trial.beats.starts_with(&ran.beats))
                .unwrap_or_else(|| Ran {
                    beats: Vec::new(),
                    end: copy.clone(),
                    lines: Lines::new(),
                });
            let rest = &trial.beats[ran.beats.len()..];
            ran.lines.extend(tried(&mut ran.end, rest));
            ran.beats.clone_from(&trial.beats);
            self.ran.insert(ran).lines.clone()
        } else if goes_in && copy.machine().switched_on() {
            tried(&mut copy.clone(), &trial.beats)
        } else {
            tried(copy, &trial.beats)
        }
    }
}

fn brought(from: &Job, goes_in: bool, apart: &[String]) -> Job {
    let mut job = from.clone();
    if job.machine().plugged() != goes_in {
        job.advance(if goes_in { 0 } else { 50 });
        force(&mut job, &Action::Plug { inserted: goes_in });
    }
    if !goes_in {
        job.advance(1);
        job.lead_charge_off();
    }
    for connector in apart {
        let connector = connector.clone();
        force(&mut job, &Action::PullApart { connector });
    }
    job
}

/// Does an act whether or not hands could.
fn force(job: &mut Job, action: &Action) {
    let entry = Entry {
        tick: job.tick(),
        action: action.clone(),
    };
    let ticks = crate::bench::ledger::ticks_of(action, &job.scenario().workshop, 0.0);
    job.follow(&entry, ticks);
}

fn tried(job: &mut Job, beats: &[Beat]) -> Lines {
    let mut lines = Vec::new();
    for beat in beats {
        job.advance(beat.wait);
        let before = job.notebook().len();
        force(job, &beat.action);
        for note in job.notebook()[before..].iter().filter(|n| tells(n)) {
            let spread_si = match &note.entry {
                NoteEntry::Reading(reading) => job.spread_si(reading).unwrap_or_default(),
                _ => 0.0,
            };
            lines.push((note.clone(), spread_si));
        }
    }
    lines
}

pub(super) fn tells(note: &Note) -> bool {
    matches!(
        note.entry,
        NoteEntry::Reading(_) | NoteEntry::Observation { .. }
    )
}

/// Log likelihood of lines where the machine would show others.
pub(super) fn fit(is: &Lines, expected: &Lines) -> f64 {
    is.iter()
        .enumerate()
        .map(|(i, (note, _))| match expected.get(i) {
            Some((other, spread_si)) => weigh::note(note, Some(other), *spread_si),
            None => weigh::note(note, None, 0.0),
        })
        .sum()
}

/// Probability of each outcome under each machine, machine after machine; none when all show the
/// same. The machines stand in order of their likelihood.
pub fn outcomes(shown: &[&Lines]) -> Option<(usize, Vec<f64>)> {
    let mut kinds: Vec<usize> = Vec::new();
    for (h, lines) in shown.iter().enumerate() {
        let is_known = kinds.iter().any(|&k| {
            let like = |a: &Lines, b: &Lines| fit(a, b) > fit(a, a) - SAME;
            like(lines, shown[k]) && like(shown[k], lines)
        });
        if !is_known && kinds.len() < MOST_OUTCOMES {
            kinds.push(h);
        }
    }
    if kinds.len() < 2 {
        return None;
    }
    let mut table = Vec::with_capacity(shown.len() * kinds.len());
    for lines in shown {
        let logs: Vec<f64> = kinds.iter().map(|&k| fit(shown[k], lines)).collect();
        let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let shares: Vec<f64> = logs.iter().map(|l| libm::exp(l - best)).collect();
        let sum: f64 = shares.iter().sum();
        table.extend(shares.iter().map(|s| s / sum));
    }
    Some((kinds.len(), table))
}
