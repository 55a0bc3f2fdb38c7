//! SAFE?: what the technician has done and, separately, what they have proved.

use crate::app::view::SafeItem;
use crate::app::view::SafeState;
use crate::app::view::names::name_of;
use crate::bench::isolation::Isolation;
use crate::bench::workshop::Workshop;
use crate::say;

/// The strip's steps in working order. Nothing is said that was not established: `tap_known` says
/// that the technician has turned the tap or looked at it.
pub fn items(isolation: &Isolation, workshop: &Workshop, tap_known: bool) -> Vec<SafeItem> {
    let done = |word: &str, done: bool| SafeItem {
        word: word.to_owned(),
        state: if done {
            SafeState::Done
        } else {
            SafeState::Open
        },
        detail: String::new(),
    };
    vec![
        done(
            say!("off" as "of the machine: switched off"),
            isolation.switched_off,
        ),
        cut_off(isolation),
        done(say!("secured"), isolation.secured),
        done(say!("tap shut"), isolation.tap_shut && tap_known),
        done(say!("hose bled"), isolation.hose_bled),
        discharged(isolation),
        done(say!("tester proved"), isolation.tester_proved.is_some()),
        proved_dead(isolation, workshop),
    ]
}

fn cut_off(isolation: &Isolation) -> SafeItem {
    let at_board = isolation.house_off && !isolation.unplugged;
    SafeItem {
        word: if at_board {
            say!("off at the board")
        } else {
            say!("unplugged")
        }
        .to_owned(),
        state: if isolation.is_isolated() {
            SafeState::Done
        } else {
            SafeState::Open
        },
        detail: String::new(),
    }
}

fn discharged(isolation: &Isolation) -> SafeItem {
    let detail = match (isolation.pins_discharged, isolation.capacitor_discharged) {
        (Some(_), Some(_)) => say!("plug pins, run capacitor"),
        (Some(_), None) => say!("plug pins"),
        (None, Some(_)) => say!("run capacitor"),
        (None, None) => "",
    };
    let state = if detail.is_empty() {
        SafeState::Open
    } else {
        SafeState::Done
    };
    SafeItem {
        word: say!("discharged").to_owned(),
        state,
        detail: detail.to_owned(),
    }
}

fn proved_dead(isolation: &Isolation, workshop: &Workshop) -> SafeItem {
    let at = |(red, black): &(String, String)| {
        say!(
            "{red} to {black}",
            red = name_of(workshop, red),
            black = name_of(workshop, black),
        )
    };
    let (word, state, detail) = match (isolation.proved_dead.last(), isolation.shown_dead.last()) {
        (Some(pair), _) => (say!("proved dead"), SafeState::Proved, at(pair)),
        (None, Some(_)) => (
            say!("shown dead"),
            SafeState::Done,
            say!("prove the tester again").to_owned(),
        ),
        (None, None) => (say!("proved dead"), SafeState::Open, String::new()),
    };
    SafeItem {
        word: word.to_owned(),
        state,
        detail,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn state_of(isolation: &Isolation, word: &str) -> Option<SafeState> {
        items(isolation, &Workshop::default(), false)
            .into_iter()
            .find(|i| i.word == word)
            .map(|i| i.state)
    }

    #[test]
    fn a_tap_found_shut_is_not_said_before_anyone_has_looked() {
        let isolation = Isolation {
            tap_shut: true,
            ..Isolation::default()
        };
        let state = |known| {
            let all = items(&isolation, &Workshop::default(), known);
            all.into_iter()
                .find(|i| i.word == "tap shut")
                .map(|i| i.state)
        };
        assert_eq!(state(false), Some(SafeState::Open));
        assert_eq!(state(true), Some(SafeState::Done));
    }

    #[test]
    fn unplugged_alone_proves_nothing() {
        let isolation = Isolation {
            unplugged: true,
            ..Isolation::default()
        };
        assert_eq!(state_of(&isolation, "unplugged"), Some(SafeState::Done));
        assert_eq!(state_of(&isolation, "proved dead"), Some(SafeState::Open));
    }

    #[test]
    fn dead_is_proved_only_when_the_tester_was_proved_again() {
        let mut isolation = Isolation::default();
        isolation.tester_shows_live(1);
        isolation.unplugged = true;
        isolation.tester_shows_dead("MA", "MC");
        assert_eq!(state_of(&isolation, "shown dead"), Some(SafeState::Done));
        isolation.tester_shows_live(9);
        assert_eq!(state_of(&isolation, "proved dead"), Some(SafeState::Proved));
        isolation.energise();
        assert_eq!(state_of(&isolation, "proved dead"), Some(SafeState::Open));
    }
}
