//! Several faults at once: every set of them with its probability.
//!
//! ```text
//! P(set) ∝ Π ρ_i/(1-ρ_i) over its faults, for independent faults with chances ρ
//! ```
//! Source: published (de Kleer and Williams 1987).

/// A set of faults as bits, fault `i` at bit `i`.
pub type Set = u64;

/// Sets of faults that can be there, with how likely each is before any evidence.
#[derive(Clone, Debug, PartialEq)]
pub struct Sets {
    /// The sets, smaller ones first.
    pub sets: Vec<Set>,
    /// Their probabilities.
    pub prior: Vec<f64>,
}

impl Sets {
    /// All sets of one to `most` independent faults, given that there is one at all. At most 64
    /// faults.
    pub fn of(chance: &[f64], most: usize) -> Self {
        let odds: Vec<f64> = chance.iter().map(|r| r / (1.0 - r)).collect();
        let mut sets = Vec::new();
        let mut prior = Vec::new();
        let mut ring: Vec<(Set, f64)> = vec![(0, 1.0)];
        for _ in 0..most.min(chance.len()) {
            let mut next = Vec::new();
            for (set, weight) in &ring {
                let above = (Set::BITS - set.leading_zeros()) as usize;
                for (i, odds) in odds.iter().enumerate().skip(above) {
                    next.push((set | 1 << i, weight * odds));
                }
            }
            next.sort_by_key(|(set, _)| set.reverse_bits());
            next.reverse();
            sets.extend(next.iter().map(|(set, _)| *set));
            prior.extend(next.iter().map(|(_, weight)| *weight));
            ring = next;
        }
        let sum: f64 = prior.iter().sum();
        prior.iter_mut().for_each(|p| *p /= sum);
        Self { sets, prior }
    }

    /// Probability that a fault is there, alone or with others.
    pub fn share(&self, p: &[f64], fault: usize) -> f64 {
        self.sum(p, |set| set >> fault & 1 == 1)
    }

    /// Probability of two faults or more.
    pub fn several(&self, p: &[f64]) -> f64 {
        self.sum(p, |set| set.count_ones() > 1)
    }

    /// Probability that all is well once a fault is repaired.
    pub fn works_after(&self, p: &[f64], fault: usize) -> f64 {
        self.sum(p, |set| set & !(1 << fault) == 0)
    }

    /// What a repair of one fault leaves of each set, by its number; none where all is well.
    pub fn after(&self, fault: usize) -> Vec<Option<usize>> {
        let left = |set: &Set| set & !(1 << fault);
        let number = |set: Set| self.sets.iter().position(|s| *s == set);
        self.sets.iter().map(|set| number(left(set))).collect()
    }

    fn sum(&self, p: &[f64], which: impl Fn(Set) -> bool) -> f64 {
        let each = self.sets.iter().zip(p);
        each.filter(|(set, _)| which(**set)).map(|(_, p)| p).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn smaller_sets_come_first_and_every_one_once() {
        let sets = Sets::of(&[0.1, 0.2, 0.3], 2);
        assert_eq!(sets.sets, [0b001, 0b010, 0b100, 0b011, 0b101, 0b110]);
        assert_eq!(
            sets.after(0),
            [None, Some(1), Some(2), Some(1), Some(2), Some(5)]
        );
        assert_eq!(Sets::of(&[0.1; 4], 4).sets.len(), 15);
    }
}
