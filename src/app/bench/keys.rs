//! The bench's single-key shortcuts. The settings list them from here and can turn them off.

use crate::app::view::Picture;
use crate::app::view::Speed;
use crate::app::view::Until;
use crate::text;

/// What a key does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeyUse {
    /// Shows a picture.
    Show(Picture),
    /// Moves the focus to the element with this id, showing what holds it.
    Go(&'static str),
    /// Shows the job card.
    JobCard,
    /// Shows the notebook.
    Notebook,
    /// Writes the reading down.
    Note,
    /// Sets the clock.
    Run(Speed),
    /// Lets time pass.
    Wait(Until),
    /// Lets go of what is in hand, puts a card away.
    LetGo,
}

/// The keys, what they do, and the words for it.
pub const KEYS: [(&str, KeyUse, &str); 18] = [
    (
        "1",
        KeyUse::Show(Picture::Outside),
        text!("picture: outside"),
    ),
    ("2", KeyUse::Show(Picture::Opened), text!("picture: opened")),
    (
        "3",
        KeyUse::Show(Picture::Section),
        text!("picture: section"),
    ),
    ("4", KeyUse::Show(Picture::Wiring), text!("picture: wiring")),
    ("5", KeyUse::Show(Picture::Water), text!("picture: water")),
    (
        "d",
        KeyUse::Go("picture"),
        text!("to the picture; arrows and page keys move, Enter takes in hand"),
    ),
    (
        "v",
        KeyUse::Go("verbs"),
        text!("to what can be done with what is in hand"),
    ),
    ("j", KeyUse::JobCard, text!("to the job card")),
    ("n", KeyUse::Notebook, text!("to the notebook")),
    (
        "m",
        KeyUse::Go("mode"),
        text!("to the instrument's modes; arrows move, Enter chooses"),
    ),
    (
        "r",
        KeyUse::Go("lead-red"),
        text!("to the red lead; type a point's name"),
    ),
    ("b", KeyUse::Go("lead-black"), text!("to the black lead")),
    ("w", KeyUse::Note, text!("write the reading down")),
    ("p", KeyUse::Run(Speed::Paused), text!("stop the clock")),
    ("g", KeyUse::Run(Speed::One), text!("let the clock go on")),
    (
        "c",
        KeyUse::Wait(Until::Change),
        text!("wait until something changes"),
    ),
    ("t", KeyUse::Wait(Until::Minute), text!("wait a minute")),
    (
        "Escape",
        KeyUse::LetGo,
        text!("put the card away, or let go"),
    ),
];

/// What a pressed key does.
pub fn use_of(key: &str) -> Option<KeyUse> {
    let key = if key.chars().count() == 1 {
        key.to_lowercase()
    } else {
        key.to_owned()
    };
    KEYS.iter()
        .find(|(name, _, _)| *name == key)
        .map(|(_, what, _)| *what)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_key_has_two_uses() {
        let mut names: Vec<&str> = KEYS.iter().map(|(name, _, _)| *name).collect();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), KEYS.len());
    }

    #[test]
    fn capitals_do_the_same_and_other_keys_nothing() {
        assert_eq!(use_of("W"), Some(KeyUse::Note));
        assert_eq!(use_of("F5"), None);
        assert_eq!(use_of(""), None);
    }
}
