//! The language that is spoken now, and saying a text in it.

use std::borrow::Cow;
use std::cell::Cell;
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::fmt::Display;

use super::catalogue::Catalogue;
use super::catalogue::fill;
use super::key::Key;

thread_local! {
    /// None is English. A language stays for as long as the page, so that its texts can be lent out.
    static PRESENT: Cell<Option<&'static Catalogue>> = const { Cell::new(None) };
    /// Texts of tables in the present language, each made once.
    static SAID: RefCell<BTreeMap<Key, &'static str>> = const { RefCell::new(BTreeMap::new()) };
}

/// Speaks a language from now on, in this thread; none is English.
pub fn speak(language: Option<Catalogue>) {
    SAID.with_borrow_mut(BTreeMap::clear);
    PRESENT.set(language.map(|catalogue| &*Box::leak(Box::new(catalogue))));
}

/// The present language's tag.
pub fn code() -> &'static str {
    PRESENT.get().map_or("en", Catalogue::code)
}

/// Does the present language run from right to left?
pub fn is_right_to_left() -> bool {
    PRESENT.get().is_some_and(Catalogue::is_right_to_left)
}

/// Is English spoken?
pub(super) fn is_english() -> bool {
    PRESENT.get().is_none()
}

/// What stands between a number's whole and its parts.
pub(super) fn decimal() -> char {
    PRESENT.get().map_or('.', Catalogue::decimal)
}

/// Does something in English, for what is kept or sent.
pub fn in_english<T>(make: impl FnOnce() -> T) -> T {
    let spoken = PRESENT.replace(None);
    let made = make();
    PRESENT.set(spoken);
    made
}

/// A text of a table of the program.
pub fn said(text: &'static str) -> &'static str {
    match PRESENT.get() {
        None => text,
        Some(language) => kept(language, Key::of(text), text),
    }
}

/// A text of the program that has several meanings, in one of them.
pub fn said_as(text: &'static str, meaning: &'static str) -> &'static str {
    match PRESENT.get() {
        None => text,
        Some(language) => kept(language, Key::with_meaning(text, meaning), text),
    }
}

fn kept(language: &Catalogue, key: Key, text: &'static str) -> &'static str {
    SAID.with_borrow_mut(|said| {
        *said
            .entry(key)
            .or_insert_with(|| language.plain(key, text).map_or(text, |found| found.leak()))
    })
}

/// A text out of a file: in the present language where it is a text that ships, else as it is.
pub fn worded(text: &str) -> Cow<'_, str> {
    if text.is_empty() {
        return Cow::Borrowed(text);
    }
    match PRESENT
        .get()
        .and_then(|language| language.plain(Key::of(text), text))
    {
        Some(found) => Cow::Owned(found),
        None => Cow::Borrowed(text),
    }
}

/// A text of the program with the values of these names; see [`say!`](crate::say). Names and values come
/// apart since the names never change: so a call is small, and there are thousands.
pub fn filled(text: &'static str, names: &[&'static str], values: &[&dyn Display]) -> String {
    let pairs: Vec<_> = names.iter().copied().zip(values.iter().copied()).collect();
    filled_by_pairs(text, &pairs)
}

/// The same, each name beside its value.
pub(super) fn filled_by_pairs(text: &'static str, values: &[(&str, &dyn Display)]) -> String {
    PRESENT
        .get()
        .and_then(|language| language.filled(text, values))
        .unwrap_or_else(|| fill(text, values))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::key::id;

    #[test]
    fn what_is_said_follows_the_language_and_what_is_kept_does_not() {
        let word = "belt";
        let text = format!("{} = correa\n", id(word, Key::of(word)));
        speak(Catalogue::read("es", &text, ',').ok());
        assert_eq!(code(), "es");
        assert_eq!(
            (said("belt"), worded("belt").as_ref()),
            ("correa", "correa")
        );
        assert_eq!(said("no such message"), "no such message");
        assert_eq!(in_english(|| said("belt")), "belt");
        assert_eq!(crate::language::decimals("1.50".to_owned()), "1,50");
        speak(None);
        assert_eq!((code(), said("belt")), ("en", "belt"));
    }
}
