//! Slots: a number of its own for each pair of unknowns whose conductance is kept.
//!
//! With them come the flat lists that the elimination follows, so that it searches nothing.

use std::collections::BTreeMap;

/// Marks earth in lists of unknowns, and "no slot" in lists of slots.
pub const NONE: u32 = u32::MAX;

/// Slots of all pairs, with the flat lists of the elimination.
pub(in crate::network) struct Slots {
    pub(in crate::network) slot_of: BTreeMap<(u32, u32), u32>,
    pub(in crate::network) later_range: Vec<(u32, u32)>,
    pub(in crate::network) later: Vec<(u32, u32)>,
    pub(in crate::network) updates: Vec<u32>,
}

impl Slots {
    /// Slots in the order of elimination; `outer` unknowns are eliminated before the coils' block.
    pub(in crate::network) fn of(later: &[Vec<u32>], outer: usize) -> Slots {
        let mut slot_of = BTreeMap::new();
        for (a, list) in later.iter().enumerate() {
            for b in list {
                let next = slot_of.len() as u32;
                slot_of.insert((a as u32, *b), next);
            }
        }
        let mut slots = Slots {
            slot_of,
            later_range: Vec::new(),
            later: Vec::new(),
            updates: Vec::new(),
        };
        for (a, list) in later.iter().enumerate().take(outer) {
            let start = slots.later.len() as u32;
            for (k, b) in list.iter().enumerate() {
                slots.later.push((*b, slots.get(a as u32, *b)));
                for c in &list[k + 1..] {
                    slots.updates.push(slots.get(*b, *c));
                }
            }
            slots.later_range.push((start, slots.later.len() as u32));
        }
        slots
    }

    /// Slot of a pair, [`NONE`] if there is none.
    pub(in crate::network) fn get(&self, a: u32, b: u32) -> u32 {
        let key = if a < b { (a, b) } else { (b, a) };
        self.slot_of.get(&key).copied().unwrap_or(NONE)
    }
}
