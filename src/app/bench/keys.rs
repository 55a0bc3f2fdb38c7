//! The bench's single-key shortcuts. The settings list them from here and can turn them off.

use crate::app::view::Picture;
use crate::app::view::Speed;
use crate::app::view::Until;

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
    ("1", KeyUse::Show(Picture::Outside), "picture: outside"),
    ("2", KeyUse::Show(Picture::Opened), "picture: opened"),
    ("3", KeyUse::Show(Picture::Section), "picture: section"),
    ("4", KeyUse::Show(Picture::Wiring), "picture: wiring"),
    ("5", KeyUse::Show(Picture::Water), "picture: water"),
    (
        "d",
        KeyUse::Go("picture"),
        "to the picture; arrows and page keys move, Enter takes in hand",
    ),
    (
        "v",
        KeyUse::Go("verbs"),
        "to what can be done with what is in hand",
    ),
    ("j", KeyUse::JobCard, "to the job card"),
    ("n", KeyUse::Notebook, "to the notebook"),
    (
        "m",
        KeyUse::Go("mode"),
        "to the instrument's modes; arrows change",
    ),
    (
        "r",
        KeyUse::Go("lead-red"),
        "to the red lead; type a point's name",
    ),
    ("b", KeyUse::Go("lead-black"), "to the black lead"),
    ("w", KeyUse::Note, "write the reading down"),
    ("p", KeyUse::Run(Speed::Paused), "stop the clock"),
    ("g", KeyUse::Run(Speed::One), "let the clock go on"),
    (
        "c",
        KeyUse::Wait(Until::Change),
        "wait until something changes",
    ),
    ("t", KeyUse::Wait(Until::Minute), "wait a minute"),
    ("Escape", KeyUse::LetGo, "put the card away, or let go"),
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
