//! What was seen while a fault that comes by chance was there or not.
//!
//! ```text
//! q chance that it is there      t, a  log likelihood of lines if it is there, if it is away
//! held    ln( q e^Σt + (1-q) e^Σa )             there or away for a whole start
//! loose   Σ_draws ln( q e^t + (1-q) e^a )       drawn anew all the time
//! L       ½ e^held + ½ e^loose
//! ```
//! A machine that was stopped by such a fault does not go on as if nothing had been, so a whole start
//! is mostly one thing; where the fault flickers, each of its draws is another. Source of the first
//! form: published (latent state shared by an epoch).

use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::expert::cause::Chance;

/// What was seen, start by start.
#[derive(Clone, Copy, Debug, Default)]
pub struct Period {
    /// Log likelihood of the starts that are over.
    done: f64,
    start: u64,
    there: f64,
    away: f64,
    draw: Tick,
    loose: f64,
    draw_there: f64,
    draw_away: f64,
}

impl Period {
    /// Goes on to a line at a tick of a start; true when it belongs to a new draw.
    pub fn enter(&mut self, start: u64, tick: Tick, chance: Chance) -> bool {
        if start != self.start {
            *self = Self {
                done: self.log_likelihood(chance),
                start,
                ..Self::default()
            };
        }
        let ticks = (chance.period_s * TICKS_PER_S as f64).max(1.0) as Tick;
        let draw = tick / ticks + 1;
        if draw == self.draw {
            return false;
        }
        self.loose += either(chance.chance_ratio, self.draw_there, self.draw_away);
        (self.draw, self.draw_there, self.draw_away) = (draw, 0.0, 0.0);
        true
    }

    /// Takes what a line says.
    pub fn see(&mut self, there: f64, away: f64) {
        self.there += there;
        self.away += away;
        self.draw_there += there;
        self.draw_away += away;
    }

    /// Log likelihood of all that was seen.
    pub fn log_likelihood(&self, chance: Chance) -> f64 {
        let q = chance.chance_ratio;
        let held = either(q, self.there, self.away);
        let loose = self.loose + either(q, self.draw_there, self.draw_away);
        self.done + either(0.5, held, loose)
    }
}

/// `ln(q e^a + (1-q) e^b)`.
pub fn either(q: f64, a: f64, b: f64) -> f64 {
    let best = a.max(b);
    best + libm::log(q * libm::exp(a - best) + (1.0 - q) * libm::exp(b - best))
}

#[cfg(test)]
mod tests {
    use super::*;

    const CHANCE: Chance = Chance {
        period_s: 10.0,
        chance_ratio: 0.3,
    };

    #[test]
    fn clean_starts_multiply_the_odds_by_the_chance_that_it_stayed_away() {
        // A start that shows the sound machine: impossible if the fault is there. (1-q)^k, published.
        let mut period = Period::default();
        for start in 1..=5 {
            period.enter(start, start * 1000, CHANCE);
            period.see(-60.0, 0.0);
        }
        let sum = period.log_likelihood(CHANCE);
        assert!((sum - 5.0 * libm::log(0.7)).abs() < 1e-9, "{sum}");
    }

    #[test]
    fn what_is_half_there_within_one_start_is_explained_only_by_flicker() {
        let mut period = Period::default();
        period.enter(1, 0, CHANCE);
        period.see(-5.0, 0.0);
        period.enter(1, 500, CHANCE);
        period.see(0.0, -5.0);
        let flicker = 0.5 * (0.7 + 0.3 * libm::exp(-5.0)) * (0.3 + 0.7 * libm::exp(-5.0));
        let held = 0.5 * libm::exp(-5.0);
        assert!((period.log_likelihood(CHANCE) - libm::log(flicker + held)).abs() < 1e-9);
    }
}
