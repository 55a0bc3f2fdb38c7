//! Debounce of a switch input, and the keys, in whole ticks.
//!
//! A contact is open after so many open ticks in a row and closed after so many closed
//! ones; in between it keeps what it was. The raw run lengths stay readable, because a
//! shared input tells a knock from a lid by them.

use crate::control::io::Key;
use crate::control::io::Keys;

/// A debounced switch input.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Contact {
    /// The debounced side.
    pub is_closed: bool,
    /// Raw open ticks in a row, up to now.
    pub open_ticks: u32,
    /// Raw closed ticks in a row, up to now.
    pub closed_ticks: u32,
}

impl Contact {
    /// A contact that has long been closed.
    pub const CLOSED: Contact = Contact {
        is_closed: true,
        open_ticks: 0,
        closed_ticks: u32::MAX,
    };

    /// Takes one tick's raw level.
    pub fn read(&mut self, raw_closed: bool, open_after_ticks: u32, closed_after_ticks: u32) {
        if raw_closed {
            self.open_ticks = 0;
            self.closed_ticks = self.closed_ticks.saturating_add(1);
            if self.closed_ticks >= closed_after_ticks {
                self.is_closed = true;
            }
        } else {
            self.closed_ticks = 0;
            self.open_ticks = self.open_ticks.saturating_add(1);
            if self.open_ticks >= open_after_ticks {
                self.is_closed = false;
            }
        }
    }
}

/// Turns held keys into presses: one press when a single key goes down.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct KeyReader {
    /// Keys of the last tick.
    pub last: Keys,
    /// Ticks a single key has been down.
    pub held_ticks: u32,
}

impl KeyReader {
    /// The key pressed in this tick. While a stuck key is down no other key is seen.
    pub fn pressed(&mut self, keys: Keys) -> Option<Key> {
        let is_new = keys != self.last;
        let from_none = self.last == Keys::NONE;
        self.last = keys;
        self.held_ticks = if is_new || keys == Keys::NONE {
            u32::from(keys != Keys::NONE)
        } else {
            self.held_ticks.saturating_add(1)
        };
        if is_new && from_none {
            keys.single()
        } else {
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_contact_opens_fast_and_closes_slowly() {
        let mut lid = Contact::CLOSED;
        lid.read(false, 1, 5);
        assert!(!lid.is_closed);
        for _ in 0..4 {
            lid.read(true, 1, 5);
            assert!(!lid.is_closed);
        }
        lid.read(true, 1, 5);
        assert!(lid.is_closed);
    }

    #[test]
    fn a_held_key_is_one_press() {
        let mut reader = KeyReader::default();
        assert_eq!(reader.pressed(Keys::only(Key::Start)), Some(Key::Start));
        assert_eq!(reader.pressed(Keys::only(Key::Start)), None);
        assert_eq!(reader.held_ticks, 2);
        assert_eq!(reader.pressed(Keys::NONE), None);
        assert_eq!(reader.pressed(Keys::only(Key::Start)), Some(Key::Start));
    }

    #[test]
    fn a_stuck_key_hides_the_others() {
        let mut reader = KeyReader::default();
        let stuck = Keys::only(Key::Level);
        assert_eq!(reader.pressed(stuck), Some(Key::Level));
        assert_eq!(reader.pressed(stuck.with(Key::Start)), None);
        assert_eq!(reader.pressed(stuck), None);
    }
}
