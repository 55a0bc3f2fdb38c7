//! Is a skill mastered? Knowledge tracing over chances to show it (Corbett and Anderson 1995).
//!
//! ```text
//! seen right  L' = L (1-S) / (L (1-S) + (1-L) G)       seen wrong  L' = L S / (L S + (1-L)(1-G))
//! next        L  = L' + (1 - L') T                     P(right)    = L (1-S) + (1-L) G
//! ```
//! Fitted by Baum and Welch from several starts within bounds, since the likelihood has more than
//! one top (Beck and Chang 2007).

/// A skill counts as mastered from here. Corbett and Anderson 1995.
pub const MASTERED: f64 = 0.95;
/// Fewer sequences than this do not settle four numbers; the defaults stay. From memory.
pub const FEWEST_SEQUENCES: usize = 100;
/// Guessing and slipping beyond these would turn the meaning of the states round. From memory, after
/// Baker et al. 2008.
const MOST_GUESS: f64 = 0.3;
const MOST_SLIP: f64 = 0.2;
/// Chances stay off the ends, where a sequence would become impossible.
const LEAST: f64 = 1e-4;
const N_STARTS: usize = 10;
const SETTLED: f64 = 1e-6;
const MOST_ROUNDS: usize = 2000;

/// How a skill is learned and shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tracing {
    /// Chance that it is known at first, L0.
    pub known: f64,
    /// Chance to learn it at a chance to show it, T.
    pub learn: f64,
    /// Chance to fail although it is known, S.
    pub slip: f64,
    /// Chance to succeed although it is not, G.
    pub guess: f64,
}

/// What one chance to show the skill tells.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Traced {
    /// Chance that it was known, this observation included.
    pub known: f64,
    /// Chance that it is known at the next one.
    pub known_next: f64,
    /// Chance that the next one goes right.
    pub right_next: f64,
}

impl Tracing {
    /// Until enough sequences were seen. Design choice.
    pub const ORDINARY: Self = Self {
        known: 0.3,
        learn: 0.15,
        slip: 0.10,
        guess: 0.20,
    };
    /// For a step of safety, hardly done right by luck. Design choice.
    pub const SAFETY: Self = Self {
        slip: 0.05,
        guess: 0.05,
        ..Self::ORDINARY
    };

    /// Chance that it goes right when it is known with the given chance.
    pub fn right(&self, known: f64) -> f64 {
        known * (1.0 - self.slip) + (1.0 - known) * self.guess
    }

    /// Takes one observation in.
    pub fn observe(&self, known: f64, right: bool) -> Traced {
        let (if_known, if_not) = self.chances(right);
        let seen = known * if_known + (1.0 - known) * if_not;
        // An observation that cannot be leaves the chance as it was.
        let known = if seen > 0.0 {
            known * if_known / seen
        } else {
            known
        };
        let known_next = known + (1.0 - known) * self.learn;
        Traced {
            known,
            known_next,
            right_next: self.right(known_next),
        }
    }

    /// Takes a whole sequence in.
    pub fn trace(&self, seen: &[bool]) -> Vec<Traced> {
        let mut known = self.known;
        seen.iter()
            .map(|right| {
                let traced = self.observe(known, *right);
                known = traced.known_next;
                traced
            })
            .collect()
    }

    /// Logarithm of the chance of a whole sequence.
    pub fn log_likelihood(&self, seen: &[bool]) -> f64 {
        let mut known = self.known;
        let mut sum = 0.0;
        for right in seen {
            let p = self.right(known);
            sum += libm::log(if *right { p } else { 1.0 - p });
            known = self.observe(known, *right).known_next;
        }
        sum
    }

    /// After a pause of which a share is retained, what is known falls back towards the start.
    /// Our own convention: the model itself knows no forgetting.
    pub fn rested(&self, known: f64, retained: f64) -> f64 {
        let floor = self.known.min(known);
        floor + (known - floor) * retained
    }

    fn chances(&self, right: bool) -> (f64, f64) {
        if right {
            (1.0 - self.slip, self.guess)
        } else {
            (self.slip, 1.0 - self.guess)
        }
    }
}

/// Fits the four numbers to sequences; `None` for fewer than [`FEWEST_SEQUENCES`] non-empty ones.
pub fn fit(sequences: &[Vec<bool>]) -> Option<Tracing> {
    let used: Vec<&[bool]> = sequences
        .iter()
        .map(Vec::as_slice)
        .filter(|s| !s.is_empty())
        .collect();
    if used.len() < FEWEST_SEQUENCES {
        return None;
    }
    (0..N_STARTS)
        .map(|start| climb(start_of(start), &used))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(tracing, _)| tracing)
}

/// Starts spread evenly: the first is the default, the others follow van der Corput's sequences.
fn start_of(index: usize) -> Tracing {
    if index == 0 {
        return Tracing::ORDINARY;
    }
    Tracing {
        known: 0.05 + 0.9 * corput(index, 2),
        learn: 0.02 + 0.5 * corput(index, 3),
        slip: 0.02 + (MOST_SLIP - 0.04) * corput(index, 5),
        guess: 0.02 + (MOST_GUESS - 0.04) * corput(index, 7),
    }
}

/// Digits of a number in a base, mirrored at the point.
fn corput(index: usize, base: usize) -> f64 {
    let (mut rest, mut place, mut sum) = (index, 1.0, 0.0);
    while rest > 0 {
        place /= base as f64;
        sum += (rest % base) as f64 * place;
        rest /= base;
    }
    sum
}

fn climb(start: Tracing, sequences: &[&[bool]]) -> (Tracing, f64) {
    let mut at = start;
    let mut last = f64::NEG_INFINITY;
    for _ in 0..MOST_ROUNDS {
        let mut sums = Sums::default();
        for seen in sequences {
            sums.add(&at, seen);
        }
        if sums.log_likelihood - last < SETTLED {
            break;
        }
        last = sums.log_likelihood;
        at = sums.maximised(&at);
    }
    let total = sequences.iter().map(|seen| at.log_likelihood(seen)).sum();
    (at, total)
}

/// Expected counts over all sequences.
#[derive(Default)]
struct Sums {
    n: f64,
    known_first: f64,
    could_learn: f64,
    learned: f64,
    known: f64,
    slipped: f64,
    unknown: f64,
    guessed: f64,
    log_likelihood: f64,
}

impl Sums {
    /// Forward and backward through one sequence.
    fn add(&mut self, at: &Tracing, seen: &[bool]) {
        let forward = at.trace(seen);
        self.log_likelihood += at.log_likelihood(seen);
        self.n += 1.0;
        // Chance of the rest of the sequence if known after, and if not, scaled.
        let mut later = (1.0, 1.0);
        for (t, right) in seen.iter().enumerate().rev() {
            let before = forward[t].known;
            let known = before * later.0;
            let unknown = (1.0 - before) * later.1;
            let share = known / (known + unknown);
            self.known += share;
            self.unknown += 1.0 - share;
            if *right {
                self.guessed += 1.0 - share;
            } else {
                self.slipped += share;
            }
            if t == 0 {
                self.known_first += share;
                break;
            }
            // From the step before: learned now, given what came after.
            let (if_known, if_not) = at.chances(*right);
            let ahead = (if_known * later.0, if_not * later.1);
            let from = 1.0 - forward[t - 1].known;
            let learned = from * at.learn * ahead.0;
            let stayed = from * (1.0 - at.learn) * ahead.1;
            let all = (1.0 - from) * ahead.0 + learned + stayed;
            self.learned += learned / all;
            self.could_learn += (learned + stayed) / all;
            let if_not_known = at.learn * ahead.0 + (1.0 - at.learn) * ahead.1;
            let scale = ahead.0 + if_not_known;
            later = (ahead.0 / scale, if_not_known / scale);
        }
    }

    /// Each count is binomial, so the best value within bounds is the clamped share.
    fn maximised(&self, at: &Tracing) -> Tracing {
        let share = |part: f64, of: f64, stay: f64, most: f64| {
            let value = if of > 0.0 { part / of } else { stay };
            value.clamp(LEAST, most)
        };
        Tracing {
            known: share(self.known_first, self.n, at.known, 1.0 - LEAST),
            learn: share(self.learned, self.could_learn, at.learn, 1.0 - LEAST),
            slip: share(self.slipped, self.known, at.slip, MOST_SLIP),
            guess: share(self.guessed, self.unknown, at.guess, MOST_GUESS),
        }
    }
}

#[cfg(test)]
mod tests {
    use rand_chacha::ChaCha8Rng;
    use rand_core::RngCore;
    use rand_core::SeedableRng;

    use super::*;

    fn drawn(truth: &Tracing, n: usize, length: usize) -> Vec<Vec<bool>> {
        let mut rng = ChaCha8Rng::seed_from_u64(7);
        let mut below = |p: f64| (rng.next_u64() as f64 / 2f64.powi(64)) < p;
        (0..n)
            .map(|_| {
                let mut known = below(truth.known);
                (0..length)
                    .map(|_| {
                        let right = below(if known { 1.0 - truth.slip } else { truth.guess });
                        known = known || below(truth.learn);
                        right
                    })
                    .collect()
            })
            .collect()
    }

    #[test]
    fn numbers_that_made_the_sequences_are_found_again() {
        let truth = Tracing {
            known: 0.25,
            learn: 0.2,
            slip: 0.08,
            guess: 0.15,
        };
        let found = fit(&drawn(&truth, 3000, 8)).expect("enough");
        for (got, want) in [
            (found.known, truth.known),
            (found.learn, truth.learn),
            (found.slip, truth.slip),
            (found.guess, truth.guess),
        ] {
            assert!((got - want).abs() < 0.03, "{found:?}");
        }
    }

    #[test]
    fn a_fit_is_never_less_likely_than_the_defaults() {
        let sequences = drawn(&Tracing::SAFETY, 150, 5);
        let found = fit(&sequences).expect("enough");
        let total = |t: &Tracing| sequences.iter().map(|s| t.log_likelihood(s)).sum::<f64>();
        assert!(total(&found) > total(&Tracing::ORDINARY));
        assert!(fit(&sequences[..50]).is_none());
    }

    #[test]
    fn what_is_forgotten_falls_back_to_the_start_and_no_further() {
        let t = Tracing::ORDINARY;
        assert!((t.rested(0.9, 1.0) - 0.9).abs() < 1e-15);
        assert!((t.rested(0.9, 0.0) - 0.3).abs() < 1e-15);
        assert!((t.rested(0.1, 0.5) - 0.1).abs() < 1e-15);
    }
}
