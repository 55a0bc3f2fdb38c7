//! What goes back with something: its loose pieces, counted, and its sealant, which needs time.
//!
//! Chances: design choice, of the order a workshop would call "now and then".

use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::state::Sealing;
use crate::bench::state::Short;
use crate::machine::draw_ratio;

/// Purpose of the draws, how often a piece stays out where nobody counts, and how often it is then
/// inside the machine rather than on the cloth.
const SHORT_PURPOSE: u64 = 0x7363_7277;
const INSIDE_PURPOSE: u64 = 0x6c6f_7374;
const SHORT_RATIO: f64 = 0.1;
const INSIDE_RATIO: f64 = 0.4;
/// More water than this has come to a joint, kg.
const WATER_KG: f64 = 0.05;

impl Job {
    /// Counts the pieces of a step or work that goes back; without the count one may be missing.
    pub(in crate::bench) fn count_pieces(&mut self, id: &str, n: u32, counted: bool) {
        if counted || n == 0 {
            self.bench.short.remove(id);
            return;
        }
        let index = self.log().len() as u64;
        let draw = |purpose| draw_ratio(self.seed(), purpose, index);
        if draw(SHORT_PURPOSE) < SHORT_RATIO {
            let is_inside = draw(INSIDE_PURPOSE) < INSIDE_RATIO;
            let short = Short { of: n, is_inside };
            self.bench.short.insert(id.to_owned(), short);
        }
    }

    /// Pieces that are off with their steps, or were left out.
    pub fn n_pieces_off(&self) -> u32 {
        let workshop = &self.scenario().workshop;
        let off = self.bench.off.iter().filter_map(|id| workshop.step(id));
        off.map(|step| step.n_fasteners).sum::<u32>() + self.bench.short.len() as u32
    }

    /// Pieces that lie on the cloth: what is off, and what was left over.
    pub fn n_pieces_on_cloth(&self) -> u32 {
        let lost = self.bench.short.values().filter(|s| s.is_inside).count();
        self.n_pieces_off() - lost as u32
    }

    /// A sealant was put on.
    pub(in crate::bench) fn put_sealant(&mut self, work: &str) {
        let scenario = self.scenario().clone();
        let Some(sealant) = scenario
            .workshop
            .work(work)
            .and_then(|w| w.sealant.as_ref())
        else {
            return;
        };
        let ticks = (sealant.sets_s * TICKS_PER_S as f64) as Tick;
        let sealing = Sealing {
            sets: self.tick() + ticks,
            supplied_kg: self.machine.water_supplied_kg(),
            effects: sealant.effects.clone(),
        };
        self.bench.sealing.insert(work.to_owned(), sealing);
    }

    /// When the last sealant holds; none when all do.
    pub fn sealed_at(&self) -> Option<Tick> {
        self.bench.sealing.values().map(|s| s.sets).max()
    }

    /// The next moment, up to `end`, at which a sealant has had its time.
    pub(in crate::bench) fn next_setting(&self, end: Tick) -> Option<Tick> {
        let times = self.bench.sealing.values().map(|s| s.sets);
        times.filter(|sets| *sets <= end).min()
    }

    /// Sealants whose time is over hold, unless water came first.
    pub(in crate::bench) fn set_sealants(&mut self) {
        let (tick, supplied_kg) = (self.tick(), self.machine.water_supplied_kg());
        let (done, waiting) = std::mem::take(&mut self.bench.sealing)
            .into_iter()
            .partition(|(_, sealing)| sealing.sets <= tick);
        self.bench.sealing = waiting;
        for (work, sealing) in done {
            if supplied_kg - sealing.supplied_kg < WATER_KG {
                continue;
            }
            for effect in &sealing.effects {
                self.bench.healed.remove(&effect.target());
            }
            let key = format!("{work}: sealant");
            self.bench.left_wrong.insert(key, sealing.effects);
            self.refit_machine();
        }
    }
}
