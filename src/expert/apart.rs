//! What tells two machines apart: everything that can be tried, done on both, easiest first.
//!
//! Readings of a machine held still know nothing of eyes, ears and hands; here a machine runs, is
//! looked at and is moved by hand, through the same acts as on the bench. A
//! fault that comes and goes is taken as there.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::expert::cause::Variant;
use crate::expert::drill::Beat;
use crate::expert::drill::drills;
use crate::expert::drill::sense;
use crate::expert::next_words::next_words;
use crate::expert::plan::Next;
use crate::expert::seen::Seen;
use crate::expert::symptom;
use crate::expert::symptom::Symptoms;
use crate::expert::trial;
use crate::expert::trial::Ground;
use crate::expert::trial::Lines;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::expert::twin::Twin;
use crate::language::said;
use crate::machine::ActiveFault;
use crate::machine::MachineError;
use crate::machine::Onset;
use crate::machine::Target;
use crate::say;
use crate::text;

/// A sound this much louder or softer is heard as another, dB. Published: twice as loud is 10 dB
/// (Stevens 1957, from memory); half of that is common practice for "clearly louder".
const LOUDER_DB: f64 = 6.0;

/// What shows in none of the short runs may show in a long one.
const WHOLE_PROGRAM: &str = text!("let a whole program run, and watch and listen");

/// Machines of a job's type on its site.
#[derive(Debug)]
pub struct Apart {
    sound: Twin,
    tries: Vec<(Trial, String)>,
}

/// What one machine shows of everything that can be tried, and of a whole program.
#[derive(Clone, Debug)]
pub struct Shows {
    lines: Vec<Lines>,
    program: Symptoms,
}

impl Apart {
    /// For a job, with the instruments it allows; what `faults` touch is measured end to end, too.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn new(scenario: &Scenario, faults: &[ActiveFault]) -> Result<Self, MachineError> {
        let touched = across(scenario, faults);
        let scenario = Seen::at_the_door(scenario).scenario;
        let sound = Twin::sound(&scenario)?;
        let with_words = |trial: Trial| {
            let words = next_words(&Next::Try(trial.name.clone()), &scenario);
            (trial, words)
        };
        let usual = trial::trials(&scenario, &drills(&sound), false);
        let mut tries: Vec<_> = usual
            .into_iter()
            .filter(|trial| trial.name != "run wash")
            .map(with_words)
            .chain([service_key()])
            .chain(touched)
            .filter(|(trial, _)| is_allowed(trial, &scenario))
            .collect();
        tries.sort_by_key(|(trial, _)| effort(trial));
        Ok(Self { sound, tries })
    }

    /// What the machine shows with these faults; none of them is a sound machine.
    ///
    /// # Errors
    /// When the machine has no such fault.
    pub fn shows(&self, faults: &[ActiveFault]) -> Result<Shows, MachineError> {
        let there = |fault: &ActiveFault| ActiveFault {
            onset: self.while_there(fault),
            ..fault.clone()
        };
        let variant = Variant {
            cause: 0,
            faults: faults.iter().map(there).collect(),
            prior: 1.0,
            chance: None,
            loose: None,
        };
        let twin = self.sound.with(&variant)?;
        let mut ground = Ground::of(twin.job());
        let tries = self.tries.iter();
        Ok(Shows {
            lines: tries.map(|(trial, _)| ground.shown(trial)).collect(),
            program: symptom::shown_by(twin.job().scenario(), &variant.faults)?,
        })
    }

    /// The easiest thing to try that shows otherwise on the two, plain words such as `look at the
    /// belt`; none where everything shows the same.
    pub fn told_by(&self, one: &Shows, other: &Shows) -> Option<&str> {
        let mut pairs = self.tries.iter().zip(one.lines.iter().zip(&other.lines));
        let found = pairs.find(|(_, (a, b))| differ(a, b));
        let program = (one.program != other.program).then(|| said(WHOLE_PROGRAM));
        found.map(|((_, words), _)| words.as_str()).or(program)
    }

    /// Heat and speed bring a fault about by themselves; chance and time are not waited for.
    fn while_there(&self, fault: &ActiveFault) -> Option<Onset> {
        let machine = &self.sound.job().scenario().machine;
        let usual = machine.fault(&fault.id).map(|def| def.onset);
        match fault.onset.or(usual) {
            Some(Onset::Intermittent { .. } | Onset::From { .. }) => Some(Onset::Constant),
            other => other,
        }
    }
}

fn differ(one: &Lines, other: &Lines) -> bool {
    let heard = |lines: &Lines| -> Vec<(usize, Heard)> {
        let sounds = |(n, (note, _)): (usize, &(Note, f64))| match &note.entry {
            NoteEntry::Observation {
                sense: Sense::Listen,
                seen,
                ..
            } => seen
                .iter()
                .filter_map(|s| Some((n, (s.key.clone(), s.amount?))))
                .collect(),
            _ => Vec::new(),
        };
        lines.iter().enumerate().flat_map(sounds).collect()
    };
    let is_louder = |a: &[(usize, Heard)], b: &[(usize, Heard)]| {
        a.iter().any(|(n, (key, level_db))| {
            let same = b.iter().find(|(m, (other, _))| m == n && other == key);
            same.is_some_and(|(_, (_, other_db))| (level_db - other_db).abs() >= LOUDER_DB)
        })
    };
    trial::outcomes(&[one, other]).is_some() || is_louder(&heard(one), &heard(other))
}

/// A sound and its level, dB.
type Heard = (String, f64);

/// The one key that a lock does not hold off.
fn service_key() -> (Trial, String) {
    let key = |wait, key| Beat {
        wait,
        action: Action::Key { key },
    };
    let trial = Trial {
        name: "run service".to_owned(),
        stand: Stand::Ready,
        apart: Vec::new(),
        beats: vec![
            key(0, PanelKey::Power),
            key(50, PanelKey::Service),
            sense(20, Sense::Look, "display"),
        ],
    };
    let words = say!("press the service key and look at the display");
    (trial, words.to_owned())
}

/// Ohms from end to end of every element that these faults touch, where both ends are places a
/// probe reaches.
fn across(scenario: &Scenario, faults: &[ActiveFault]) -> Vec<(Trial, String)> {
    let (model, workshop) = (&scenario.machine.wiring, &scenario.workshop);
    let defs = faults
        .iter()
        .filter_map(|fault| scenario.machine.fault(&fault.id));
    let names = defs.flat_map(|def| def.targets(model));
    let measured = |target: Target| {
        let Target::Element(name) = target else {
            return None;
        };
        let element = &model.elements[model.element(&name)?.index()];
        let points = element.nodes.map(|node| {
            let name = &model.nodes[node.index()].name;
            workshop.test_point(name)
        });
        let [Some(red), Some(black)] = points else {
            return None;
        };
        let needs: Vec<String> = red.needs.iter().chain(&black.needs).cloned().collect();
        let steps = workshop.closure(&needs).into_iter();
        let place = Action::Meter {
            mode: MeterMode::Ohms,
            red: Some(red.node.clone()),
            black: Some(black.node.clone()),
        };
        let words = words::act(&place, workshop);
        let beat = |action| Beat { wait: 0, action };
        let trial = Trial {
            name: format!("ohms {} {}", red.node, black.node),
            stand: Stand::Open(steps.map(|s| s.id.clone()).collect()),
            apart: Vec::new(),
            beats: vec![beat(place), beat(Action::Note)],
        };
        Some((trial, words))
    };
    names.into_iter().filter_map(measured).collect()
}

/// A look from where one stands is easier than a run, and a run easier than opening.
fn effort(trial: &Trial) -> (u8, usize) {
    match &trial.stand {
        Stand::Any => (0, 0),
        Stand::Ready => (1, trial.beats.len()),
        Stand::Open(steps) => (2, steps.len() + trial.apart.len()),
    }
}

fn is_allowed(trial: &Trial, scenario: &Scenario) -> bool {
    trial.beats.iter().all(|beat| match &beat.action {
        Action::Meter { mode, .. } => scenario.rules.has(*mode),
        _ => true,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    fn told(one: &str, other: &str) -> Option<String> {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let apart = Apart::new(&scenario, &[]).expect("starts");
        let of = |id: &str| {
            let faults: Vec<_> = [id]
                .into_iter()
                .filter(|id| !id.is_empty())
                .map(ActiveFault::constant)
                .collect();
            apart.shows(&faults).expect("listed")
        };
        let told = apart.told_by(&of(one), &of(other));
        told.map(str::to_owned)
    }

    #[test]
    fn what_no_meter_shows_a_look_or_a_hand_tells() {
        let words = told("belt_off", "").expect("told");
        assert!(!words.is_empty());
        let lock = told("key_lock_on", "delayed_start_set");
        assert!(lock.is_some());
    }

    #[test]
    fn a_machine_is_not_told_from_itself() {
        assert_eq!(told("belt_off", "belt_off"), None);
    }

    #[test]
    fn what_comes_and_goes_is_told_as_it_is_while_it_is_there() {
        let scenario = job("hums_and_stands").expect("sound").expect("ships");
        let apart = Apart::new(&scenario, &[]).expect("starts");
        let there = ActiveFault::constant("cord_intermittent");
        let usual = ActiveFault {
            onset: None,
            ..there.clone()
        };
        let onset = Onset::From { start_s: 1e6 };
        let late = ActiveFault {
            onset: Some(onset),
            ..there.clone()
        };
        let sound = apart.shows(&[]).expect("sound");
        let there = apart.shows(&[there]).expect("listed");
        assert!(apart.told_by(&there, &sound).is_some());
        for fault in [usual, late] {
            let shows = apart.shows(&[fault]).expect("listed");
            assert_eq!(apart.told_by(&shows, &there), None);
        }
    }
}
