//! What can be known of a job's machine before it is touched: the likely causes after the complaint,
//! and what each would show of everything that can be tried. Worked out once a job and shared by all
//! apprentices.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::sync::Arc;
use std::sync::Mutex;

use crate::bench::action::Action;
use crate::bench::ledger::ticks_of;
use crate::bench::scenario::Scenario;
use crate::expert::belief::Belief;
use crate::expert::drill::Drills;
use crate::expert::drill::drills;
use crate::expert::remedy::remedies;
use crate::expert::seen::Seen;
use crate::expert::theory::acts::Test;
use crate::expert::trial;
use crate::expert::trial::Ground;
use crate::expert::trial::Lines;
use crate::expert::trial::Trial;
use crate::expert::twin::Twin;
use crate::machine::MachineError;

/// Causes reckoned with: an apprentice thinks of no more.
const MOST_CAUSES: usize = 40;

/// A cause as apprentices know it.
#[derive(Clone, Debug)]
pub struct Known {
    /// Probability after the complaint.
    pub p: f64,
    /// Names of the faults; none for a sound machine.
    pub faults: Vec<String>,
    /// Works that put it right.
    pub works: Vec<String>,
}

/// A trial and what each cause would show of it.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// The trial.
    pub trial: Trial,
    /// Lines by cause.
    pub lines: Vec<Lines>,
    /// Its outcomes.
    pub test: Test,
}

/// All of it.
#[derive(Debug)]
pub struct Almanac {
    /// The call, without what is wrong.
    pub scenario: Arc<Scenario>,
    /// Causes, the likeliest first.
    pub causes: Vec<Known>,
    /// What can be tried.
    pub sheets: Vec<Sheet>,
    sound: Twin,
    /// Runs by the keys pressed before them.
    drills: Mutex<BTreeMap<String, Arc<Drills>>>,
}

impl Almanac {
    /// For a job as it is at the door; `told` hears how many of how many causes are done.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(
        scenario: &Scenario,
        told: &mut dyn FnMut(usize, usize),
    ) -> Result<Self, MachineError> {
        let scenario = Seen::at_the_door(scenario).scenario;
        let belief = Belief::new(&scenario)?;
        let sound = belief.sound().clone();
        let first = drills(&sound);
        let all: Vec<Trial> = trial::trials(&scenario, &first, false)
            .into_iter()
            .filter(|t| t.name != "run wash")
            .collect();
        let mut names = BTreeSet::new();
        let likely: Vec<_> = belief
            .ranked()
            .into_iter()
            .filter(|(_, variant, _)| names.insert(variant.cause))
            .take(MOST_CAUSES)
            .collect();
        let p = belief.probabilities();
        let (mut causes, mut shown) = (Vec::new(), Vec::new());
        for (done, (_, variant, twin)) in likely.iter().enumerate() {
            told(done, likely.len());
            let faults = belief.causes()[variant.cause].0.clone();
            let defs: Vec<_> = faults
                .iter()
                .filter_map(|id| scenario.machine.fault(id))
                .collect();
            let works = defs.iter().flat_map(|def| remedies(&scenario, def));
            causes.push(Known {
                p: p[variant.cause],
                works: works.map(|w| w.id.clone()).collect(),
                faults,
            });
            let mut ground = Ground::of(twin.job());
            shown.push(all.iter().map(|t| ground.shown(t)).collect::<Vec<_>>());
        }
        let rate = scenario.money.labour_per_min;
        let sheet = |(i, trial): (usize, Trial)| {
            let lines: Vec<Lines> = shown.iter().map(|by_trial| by_trial[i].clone()).collect();
            let (n_outcomes, likelihood) = trial::outcomes(&lines.iter().collect::<Vec<_>>())?;
            let ticks: u64 = trial
                .beats
                .iter()
                .map(|b| b.wait + ticks_of(&b.action, &scenario.workshop, 0.0))
                .sum();
            let test = Test {
                cost: rate * ticks as f64 / 600.0,
                place: None,
                n_outcomes,
                likelihood,
            };
            Some(Sheet { trial, lines, test })
        };
        let sheets = all.into_iter().enumerate().filter_map(sheet).collect();
        Ok(Self {
            causes,
            sheets,
            sound,
            drills: Mutex::default(),
            scenario,
        })
    }

    /// The sound machine's twin.
    pub(super) fn sound(&self) -> &Twin {
        &self.sound
    }

    /// The runs after these keys were pressed; `sound` is a sound machine whose panel had them.
    pub(super) fn drills_after(&self, keys: &[Action], sound: &Twin) -> Arc<Drills> {
        let name = format!("{keys:?}");
        let known = self.drills.lock().ok().and_then(|d| d.get(&name).cloned());
        known.unwrap_or_else(|| {
            let found = Arc::new(drills(sound));
            if let Ok(mut all) = self.drills.lock() {
                all.insert(name, Arc::clone(&found));
            }
            found
        })
    }
}
