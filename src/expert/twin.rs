//! One cause's machine, running beside the job: the same acts at the same ticks.

use std::sync::Arc;

use crate::bench::action::Action;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Seen;
use crate::bench::scenario::Scenario;
use crate::expert::cause::Variant;
use crate::expert::seen::Step;
use crate::expert::weigh;
use crate::machine::FaultDef;
use crate::machine::MachineError;

/// A machine with a cause, at the bench.
#[derive(Clone, Debug)]
pub struct Twin {
    job: Job,
}

/// What an act showed on a twin.
#[derive(Clone, Debug, Default)]
pub struct Shown {
    /// Hands could do it.
    pub was_possible: bool,
    /// Notebook lines it wrote there.
    pub notes: Vec<Note>,
    /// Standard deviation from part tolerances of each line that is a reading, in its SI unit.
    pub spreads_si: Vec<f64>,
    /// The same from the degrees between those reckoned with; empty where there are none.
    pub between_si: Vec<f64>,
    /// The house's protective device is open afterwards.
    pub is_tripped: bool,
    /// Log likelihood of what was seen on machines of the degrees between; none where there are none.
    pub between_fits: Vec<Option<f64>>,
    /// Lines it would have written a little earlier or later, where it was running.
    pub glimpses: Vec<Vec<Note>>,
}

impl Shown {
    /// Log likelihood of a line of the notebook, the `n`th of its step, on this machine.
    pub fn fit(&self, n: usize, note: &Note) -> f64 {
        let spread_si = self.spreads_si.get(n).copied().unwrap_or_default();
        let with = |sd_si| self.in_time(n, |expected| weigh::note(note, expected, sd_si));
        let at_degree = with(spread_si);
        if let Some(Some(between)) = self.between_fits.get(n) {
            return weigh::degrees(at_degree, *between);
        }
        match self.between_si.get(n) {
            Some(between_si) if *between_si > 0.0 => {
                weigh::degrees(at_degree, with(libm::hypot(spread_si, *between_si)))
            }
            _ => at_degree,
        }
    }

    /// Log likelihood of what was seen, the `n`th line of its step, on a machine of a degree between
    /// this one and another; none of what is no observation.
    pub fn between(&self, other: &Self, n: usize, note: &Note) -> Option<f64> {
        let NoteEntry::Observation { sense, seen, .. } = &note.entry else {
            return None;
        };
        let fit = |a: &[Note], b: &[Note]| match (seen_in(a, n), seen_in(b, n)) {
            (Some(a), Some(b)) => weigh::between(*sense, seen, [a, b]),
            _ => libm::log(weigh::OUTLIER),
        };
        let glimpses = self.glimpses.iter().zip(&other.glimpses);
        Some(mixed(
            fit(&self.notes, &other.notes),
            glimpses.map(|(a, b)| fit(a, b)),
        ))
    }

    /// Log likelihood of the words for what the machine is doing.
    pub fn state_fit(&self, n: usize, note: &Note) -> f64 {
        self.in_time(n, |expected| weigh::state(note, expected))
    }

    /// Log likelihood of a line now, or a little earlier or later.
    fn in_time(&self, n: usize, fit: impl Fn(Option<&Note>) -> f64) -> f64 {
        let glimpses = self.glimpses.iter();
        mixed(
            fit(self.notes.get(n)),
            glimpses.map(|lines| fit(lines.get(n))),
        )
    }
}

/// What was seen, where a line is an observation.
fn seen_in(notes: &[Note], n: usize) -> Option<&[Seen]> {
    match &notes.get(n)?.entry {
        NoteEntry::Observation { seen, .. } => Some(seen),
        _ => None,
    }
}

/// `ln((1-w) e^now + w mean e^glimpse)`.
fn mixed(now: f64, glimpses: impl ExactSizeIterator<Item = f64>) -> f64 {
    if glimpses.len() == 0 {
        return now;
    }
    let n = glimpses.len() as f64;
    let mean = glimpses.map(libm::exp).sum::<f64>() / n;
    libm::log((1.0 - UNTIMELY_RATIO) * libm::exp(now) + UNTIMELY_RATIO * mean)
}

/// Glimpses of a running machine, and ticks between them: together they see every phase of a stroke.
const GLIMPSES: usize = 6;
const GLIMPSE_TICKS: u64 = 5;
/// How often a program is not as far on as reckoned. A few drops more in the tub shift it a little, and
/// that decides which way a pulsator turns just now. Design choice, held by the calibration of belief.
const UNTIMELY_RATIO: f64 = 0.1;

impl Twin {
    /// A sound machine at the door.
    ///
    /// # Errors
    /// When the scenario cannot be started.
    pub fn sound(scenario: &Arc<Scenario>) -> Result<Self, MachineError> {
        Job::nominal(Arc::clone(scenario)).map(|job| Self { job })
    }

    /// The same with a cause, before anything was done.
    ///
    /// # Errors
    /// When the machine has no such fault.
    pub fn with(&self, variant: &Variant) -> Result<Self, MachineError> {
        let mut scenario = Scenario::clone(self.job.scenario());
        scenario.faults = variant.faults.clone();
        let job = self.job.fresh_with(Arc::new(scenario))?;
        Ok(Self { job })
    }

    /// Does a step too.
    pub fn follow(&mut self, step: &Step) -> Shown {
        let before = self.job.notebook().len();
        let runs = self.job.machine().switched_on() && step.notes.iter().any(weigh::is_weighed);
        let mut glimpses = Vec::new();
        if runs {
            let mut early = self.job.clone();
            early.advance_to(step.entry.tick);
            glimpses.push(glimpse(&mut early, &step.entry.action));
        }
        let was_possible = self.job.follow(&step.checked(), step.ticks);
        if runs {
            let mut late = self.job.clone();
            for _ in 0..GLIMPSES {
                late.advance(GLIMPSE_TICKS);
                glimpses.push(glimpse(&mut late, &step.entry.action));
            }
        }
        let notes = self.job.notebook()[before..].to_vec();
        let spreads_si = notes
            .iter()
            .map(|note| match &note.entry {
                NoteEntry::Reading(reading) => self.job.spread_si(reading).unwrap_or_default(),
                _ => 0.0,
            })
            .collect();
        Shown {
            was_possible,
            notes,
            spreads_si,
            between_si: Vec::new(),
            between_fits: Vec::new(),
            is_tripped: self.job.machine().supply_tripped(),
            glimpses,
        }
    }

    /// Its fault is that the tap is shut.
    pub fn is_tap_closed(&self) -> bool {
        self.job.machine().plant().params().inlet.tap_closed_ratio >= 0.99
    }

    /// How the bench stands, as far as hands decide it: what was done before in the same words
    /// would show the same again.
    pub fn bench_words(&self) -> String {
        let (bench, machine) = (self.job.bench(), self.job.machine());
        format!(
            "{} {:?} {} {} {}",
            bench.works.len(),
            bench.apart,
            machine.lid_open(),
            machine.plugged(),
            machine.tap_open()
        )
    }

    /// Everything its faults changed has been made good.
    pub fn is_mended(&self) -> bool {
        let scenario = self.job.scenario();
        let faults = scenario.faults.iter();
        let mut defs = faults.filter_map(|f| scenario.machine.fault(&f.id));
        defs.all(|def| self.is_healed(def))
    }

    /// Everything that a fault changes has been made good.
    pub fn is_healed(&self, def: &FaultDef) -> bool {
        let targets = def.targets(&self.job.scenario().machine.wiring);
        let healed = &self.job.bench().healed;
        targets.iter().all(|target| healed.contains(target))
    }

    /// The job on this machine.
    pub fn job(&self) -> &Job {
        &self.job
    }
}

/// Lines an act would write at this moment.
fn glimpse(job: &mut Job, action: &Action) -> Vec<Note> {
    let before = job.notebook().len();
    let entry = Entry {
        tick: job.tick(),
        action: action.clone(),
    };
    job.follow(&entry, 0);
    job.notebook()[before..].to_vec()
}

#[cfg(test)]
mod shown;

#[cfg(test)]
#[cfg(not(target_arch = "wasm32"))]
mod tests {
    use std::path::Path;

    use super::*;
    use crate::bench::accuracy::accuracy;
    use crate::bench::display;
    use crate::bench::notebook::Reading;
    use crate::expert::seen::Seen;
    use crate::machine::Onset;

    /// Lines of a job's log that its own cause's machine would have written otherwise.
    fn other_lines(scenario: &Arc<Scenario>, log: &[Entry]) -> Vec<String> {
        let (job, _) = Job::replay(Arc::clone(scenario), 1, log).expect("starts");
        let seen = Seen::of(&job).expect("runs");
        let sound = Twin::sound(&seen.scenario).expect("starts");
        let variant = Variant {
            cause: 0,
            faults: scenario.faults.clone(),
            prior: 1.0,
            chance: None,
            loose: None,
        };
        let mut twin = sound.with(&variant).expect("starts");
        let mut other = Vec::new();
        for step in &seen.steps {
            let shown = twin.follow(step);
            for (n, note) in step.notes.iter().enumerate() {
                let is_same = shown
                    .notes
                    .get(n)
                    .is_some_and(|twin| is_same_entry(twin, note) && twin.state == note.state);
                if weigh::is_weighed(note) && !is_same {
                    other.push(format!("{note:?}\n      {:?}", shown.notes.get(n)));
                }
            }
        }
        other
    }

    /// The same line; a reading within the class of the instrument that took it.
    fn is_same_entry(twin: &Note, note: &Note) -> bool {
        let (NoteEntry::Reading(a), NoteEntry::Reading(b)) = (&twin.entry, &note.entry) else {
            return twin.entry == note.entry;
        };
        let places = |r: &Reading| (r.mode, r.red.clone(), r.black.clone());
        let is_near = match (a.value, b.value) {
            (Some(x), Some(y)) => {
                let class = accuracy(a.mode);
                let (step, _) = display::resolution_si(a.mode, Some(x));
                (x - y).abs() <= class.share_ratio * x.abs() + f64::from(class.n_counts) * step
            }
            (x, y) => x == y,
        };
        places(a) == places(b) && is_near
    }

    #[test]
    fn a_twin_with_the_true_cause_shows_what_the_job_showed() {
        let mut wrong = String::new();
        for scenario in crate::scenario::jobs().expect("sound") {
            // Chance has its own seed on each machine; a careless repair is checked on the twin.
            let by_chance = |f: &crate::machine::ActiveFault| {
                let usual = scenario.machine.fault(&f.id).map(|def| def.onset);
                let onset = f.onset.or(usual);
                matches!(onset, Some(Onset::Intermittent { .. }))
            };
            if scenario.faults.iter().any(by_chance) {
                continue;
            }
            let path = Path::new(env!("CARGO_MANIFEST_DIR"))
                .join(format!("tests/jobs/{}.json", scenario.id));
            let Ok(text) = std::fs::read_to_string(path) else {
                continue;
            };
            let log: Vec<Entry> = serde_json::from_str(&text).expect("a log");
            let other = other_lines(&scenario, &log);
            if !other.is_empty() {
                wrong += &format!("{} {}\n   {}\n", scenario.id, other.len(), other[0]);
            }
        }
        assert!(wrong.is_empty(), "{wrong}");
    }
}
