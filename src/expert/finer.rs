//! A degree found more closely: where a fault that comes in degrees is likely and its machines fit
//! differently, those half way to the neighbours of the best are begun and led through all that was
//! done so far.
//!
//! A basket spins at 310 or at 610 turns by the degree of one fault, and another fault's at 460 all
//! the time: without the degrees between, the other would be believed.

use std::ops::Range;

use crate::expert::belief::Belief;
use crate::expert::cause::shares;
use crate::expert::degrees;
use crate::expert::line::Line;
use crate::expert::twin::Shown;
use crate::machine::MachineError;

/// A fault is looked at more closely from this probability on.
const LIKELY: f64 = 5e-4;
/// Degrees fit differently from this difference on, in logarithms.
const DIFFERENT: f64 = 0.5;
/// Degrees no further apart than this are as good as one.
const NEAR: f64 = 0.04;
/// Most machines of one fault.
const MOST_OF_ONE: usize = 12;
/// How many times over degrees are halved after one step.
const AT_ONCE: usize = 3;

fn degree(line: &Line) -> f64 {
    line.variant.faults[0].severity_ratio
}

impl Belief {
    /// Looks more closely at the degrees of likely faults.
    pub(super) fn look_closer(&mut self) {
        for _ in 0..AT_ONCE {
            let shares = self.variant_probabilities();
            let rows = degrees::rows(&self.lines);
            let mut is_finer = false;
            // From the last to the first: what is put in leaves the places before it as they are.
            for row in rows.into_iter().rev() {
                let p: f64 = shares[row.clone()].iter().sum();
                let is_full = self.lines.len() >= self.most_lines || row.len() >= MOST_OF_ONE;
                if p < LIKELY || is_full {
                    continue;
                }
                if let Some(best) = self.coarse(&row) {
                    is_finer |= self.halve(&row, best).is_ok();
                }
            }
            if !is_finer {
                break;
            }
        }
    }

    /// The best degree of a fault, where those beside it fit differently and are not near.
    fn coarse(&self, row: &Range<usize>) -> Option<usize> {
        let lines = &self.lines[row.clone()];
        let fits: Vec<f64> = lines
            .iter()
            .map(|line| self.log_weight(line) - libm::log(line.variant.prior))
            .collect();
        let best = (0..fits.len()).max_by(|a, b| fits[*a].total_cmp(&fits[*b]))?;
        let around = &fits[best.saturating_sub(2)..(best + 3).min(fits.len())];
        let is_different = around.iter().any(|fit| fits[best] - fit > DIFFERENT);
        let sides = [best.checked_sub(1), Some(best + 1)];
        let is_far = sides
            .into_iter()
            .flatten()
            .filter_map(|side| lines.get(side))
            .any(|side| (degree(side) - degree(&lines[best])).abs() > NEAR);
        (is_different && is_far).then_some(row.start + best)
    }

    /// Begins the machines half way between a degree and its neighbours, and that degree's anew, since
    /// it stands for fewer now.
    fn halve(&mut self, row: &Range<usize>, best: usize) -> Result<(), MachineError> {
        let here = degree(&self.lines[best]);
        let sides = [best.checked_sub(1), Some(best + 1)].map(|side| {
            let side = side.filter(|side| row.contains(side))?;
            let there = degree(&self.lines[side]);
            ((there - here).abs() > NEAR).then_some(0.5 * (there + here))
        });
        let degrees = [sides[0], Some(here), sides[1]].into_iter().flatten();
        let like = &self.lines[best];
        let mut lines = degrees
            .map(|degree| {
                let mut variant = like.variant.clone();
                variant.faults[0].severity_ratio = degree;
                let mut line = self.fresh.line(variant, like.shows)?;
                line.run.share = like.run.share;
                Ok(line)
            })
            .collect::<Result<Vec<Line>, MachineError>>()?;
        self.lead_through(&mut lines);
        let prior: f64 = self.lines[row.clone()]
            .iter()
            .map(|line| line.variant.prior)
            .sum();
        let n_new = lines.len() - 1;
        for line in &mut lines {
            line.run.share /= (n_new + 1) as f64;
        }
        self.lines.splice(best..=best, lines);
        let row = &mut self.lines[row.start..row.end + n_new];
        let shares = shares(&row.iter().map(degree).collect::<Vec<_>>());
        for (line, share) in row.iter_mut().zip(shares) {
            line.variant.prior = prior * share;
        }
        Ok(())
    }

    /// Leads machines of one fault through all that was done so far.
    fn lead_through(&self, lines: &mut [Line]) {
        for (step, past) in self.steps.iter().zip(&self.past) {
            let mut shown: Vec<Option<Shown>> = lines
                .iter_mut()
                .map(|line| Some(line.twin.follow(step)))
                .collect();
            degrees::widen_row(&mut shown, &step.notes);
            for (line, shown) in lines.iter_mut().zip(&shown) {
                let Some(shown) = shown else { continue };
                for heard in &past.heard {
                    let note = &step.notes[heard.n];
                    let says = line.says(heard, note, shown);
                    line.run.joins(says, heard.stretch);
                    line.hear(heard, note, shown, says);
                }
                let says = line.hands_and_device(step, shown);
                line.run.joins(says, past.stretch);
                line.feel(says, past);
            }
        }
    }
}
