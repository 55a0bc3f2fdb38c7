//! What was seen while a fault that comes by chance was there or not.
//!
//! ```text
//! q chance that it is there      t, a  log likelihood of lines if it is there, if it is away
//! held    ln( q e^Σt + (1-q) e^Σa )             there or away for a whole start
//! loose   Σ_draws ln( q e^t + (1-q) e^a )       drawn anew all the time
//! L       ½ e^held + ½ e^loose
//! a       ln( ½ e^g + ½ e^i )                   away: it goes on as a sound one does, or stands idle
//! ```
//! A machine that was stopped by such a fault does not go on as if nothing had been, so a whole start
//! is mostly one thing; where the fault flickers, each of its draws is another. A control that lost
//! its supply for a moment has forgotten what it was doing and waits to be started. Source of the
//! first form: published (latent state shared by an epoch).

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
    away: Away,
    draw: Tick,
    loose: f64,
    draw_there: f64,
    draw_away: Away,
}

/// Log likelihood of lines while the fault is away.
#[derive(Clone, Copy, Debug, Default)]
pub struct Away {
    /// If the machine goes on as a sound one.
    pub goes_on: f64,
    /// If it stands idle.
    pub idle: f64,
}

impl Away {
    fn see(&mut self, other: Away) {
        self.goes_on += other.goes_on;
        self.idle += other.idle;
    }

    fn log_likelihood(self) -> f64 {
        either(0.5, self.goes_on, self.idle)
    }
}

impl Period {
    /// Goes on to a line at a tick of a start.
    pub fn enter(&mut self, start: u64, tick: Tick, chance: Chance) {
        if start != self.start {
            *self = Self {
                done: self.log_likelihood(chance),
                start,
                ..Self::default()
            };
        }
        let draw = draw(tick, chance);
        if draw == self.draw {
            return;
        }
        self.loose += either(
            chance.chance_ratio,
            self.draw_there,
            self.draw_away.log_likelihood(),
        );
        (self.draw, self.draw_there) = (draw, 0.0);
        self.draw_away = Away::default();
    }

    /// Takes what a line says.
    pub fn see(&mut self, there: f64, away: Away) {
        self.there += there;
        self.away.see(away);
        self.draw_there += there;
        self.draw_away.see(away);
    }

    /// Log likelihood of all that was seen.
    pub fn log_likelihood(&self, chance: Chance) -> f64 {
        let q = chance.chance_ratio;
        let held = either(q, self.there, self.away.log_likelihood());
        let loose = self.loose + either(q, self.draw_there, self.draw_away.log_likelihood());
        self.done + either(0.5, held, loose)
    }
}

/// Number of the draw a tick belongs to, from 1.
pub fn draw(tick: Tick, chance: Chance) -> Tick {
    let ticks = (chance.period_s * TICKS_PER_S as f64).max(1.0) as Tick;
    tick / ticks + 1
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

    fn both(away: f64) -> Away {
        Away {
            goes_on: away,
            idle: away,
        }
    }

    #[test]
    fn clean_starts_multiply_the_odds_by_the_chance_that_it_stayed_away() {
        // A start that shows the sound machine: impossible if the fault is there. (1-q)^k, published.
        let mut period = Period::default();
        for start in 1..=5 {
            period.enter(start, start * 1000, CHANCE);
            period.see(-60.0, both(0.0));
        }
        let sum = period.log_likelihood(CHANCE);
        assert!((sum - 5.0 * libm::log(0.7)).abs() < 1e-9, "{sum}");
    }

    #[test]
    fn what_is_half_there_within_one_start_is_explained_only_by_flicker() {
        let mut period = Period::default();
        period.enter(1, 0, CHANCE);
        period.see(-5.0, both(0.0));
        period.enter(1, 500, CHANCE);
        period.see(0.0, both(-5.0));
        let flicker = 0.5 * (0.7 + 0.3 * libm::exp(-5.0)) * (0.3 + 0.7 * libm::exp(-5.0));
        let held = 0.5 * libm::exp(-5.0);
        assert!((period.log_likelihood(CHANCE) - libm::log(flicker + held)).abs() < 1e-9);
    }
}
