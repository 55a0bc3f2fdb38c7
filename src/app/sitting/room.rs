//! Pauses of the whole room in one sitting: which codes were used, and whether the clock stands. Knows
//! no browser and no clock.

use serde::Deserialize;
use serde::Serialize;
use thiserror::Error;

use crate::assess::date;
use crate::assess::pause_code;
use crate::records::room_pause::Meaning;
use crate::records::room_pause::Pause;
use crate::records::room_pause::meaning;
use crate::say;

/// Pauses so far.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoomPauses {
    /// Number of the last code that was used; each is good once.
    last: usize,
    /// The pauses; the last one is open while the room pauses.
    all: Vec<Pause>,
}

/// Why a code does nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum NoCode {
    /// It is none of this assessment's.
    #[error("{}", say!("This is no code of this assessment: compare it with what was read out."))]
    Unknown,
    /// It was used already.
    #[error("{}", say!("This code was used already: each is good once. Ask for the next one."))]
    Used,
    /// The clock runs.
    #[error("{}", say!("This code lets the clock go on, and it is running."))]
    Runs,
    /// The clock stands.
    #[error("{}", say!("This code stops the clock, and it stands already. Wait for the code to go on."))]
    Stands,
}

impl RoomPauses {
    /// The room pauses now.
    pub fn is_paused(&self) -> bool {
        self.all.last().is_some_and(|pause| pause.to.is_none())
    }

    /// Takes a code that was typed at a moment, ms since 1970.
    ///
    /// # Errors
    /// Why it does nothing.
    pub fn enter(&mut self, anchor: &str, typed: &str, now_ms: f64) -> Result<(), NoCode> {
        let (number, goes) = match meaning(anchor, typed).ok_or(NoCode::Unknown)? {
            Meaning::Stop(number) => (number, false),
            Meaning::Go(number) => (number, true),
        };
        if number <= self.last {
            return Err(NoCode::Used);
        }
        let now = date::moment(now_ms as i64);
        let code = pause_code::read(typed).unwrap_or_default();
        match self.all.last_mut().filter(|pause| pause.to.is_none()) {
            Some(open) if goes => (open.to, open.go) = (Some(now), Some(code)),
            Some(_) => return Err(NoCode::Stands),
            None if goes => return Err(NoCode::Runs),
            None => self.all.push(Pause {
                from: now,
                to: None,
                stop: code,
                go: None,
            }),
        }
        self.last = number;
        Ok(())
    }

    /// All pauses, as records keep them.
    pub fn all(&self) -> &[Pause] {
        &self.all
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::room_pause;
    use crate::records::seal::AssessmentKey;

    #[test]
    fn codes_count_once_and_in_their_order_and_one_that_was_missed_is_no_harm() {
        let key = AssessmentKey::new([9; 32]);
        let (codes, anchor) = (room_pause::codes(&key), room_pause::anchor(&key));
        let mut room = RoomPauses::default();
        let mut enter = |at: usize| room.enter(&anchor, &codes[at], 1e12 + at as f64);
        assert_eq!(enter(1), Err(NoCode::Runs));
        assert_eq!(enter(0), Ok(()));
        assert_eq!(enter(0), Err(NoCode::Used));
        assert_eq!(enter(2), Err(NoCode::Stands));
        assert_eq!(enter(1), Ok(()));
        assert_eq!(enter(1), Err(NoCode::Used));
        // The second pause was missed; the third is taken all the same, and ended by its own code.
        assert_eq!(enter(4), Ok(()));
        assert_eq!(enter(3), Err(NoCode::Used));
        assert_eq!(enter(5), Ok(()));
        assert_eq!(room.enter(&anchor, "lunch", 1e12), Err(NoCode::Unknown));
        assert_eq!(room.all().len(), 2);
        assert!(room.all().iter().all(|pause| pause.is_of(&anchor)));
        assert!(!room.is_paused());
    }

    #[test]
    fn a_go_that_was_missed_is_made_up_for_by_a_later_one() {
        let key = AssessmentKey::new([9; 32]);
        let (codes, anchor) = (room_pause::codes(&key), room_pause::anchor(&key));
        let mut room = RoomPauses::default();
        assert_eq!(room.enter(&anchor, &codes[0], 1e12), Ok(()));
        assert!(room.is_paused());
        assert_eq!(room.enter(&anchor, &codes[3], 1e12), Ok(()));
        assert!(!room.is_paused());
    }
}
