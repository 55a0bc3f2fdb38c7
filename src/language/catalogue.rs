//! One language's messages, read from its files.

use std::collections::BTreeMap;
use std::fmt::Display;

use fluent_bundle::FluentArgs;
use fluent_bundle::FluentBundle;
use fluent_bundle::FluentResource;
use fluent_bundle::FluentValue;

use super::dangerous;
use super::key::Key;

/// Why a language cannot be spoken.
#[derive(Debug, thiserror::Error, PartialEq, Eq)]
pub enum CatalogueError {
    /// The language's name is no language tag.
    #[error(
        "'{code}' is no language tag as BCP 47 writes them: name the folder as in 'es' or 'pt-BR'"
    )]
    Code {
        /// As it was given.
        code: String,
    },
    /// A message cannot be read.
    #[error(
        "the words of language '{code}' cannot be read at '{near}': write each message as `name = text`"
    )]
    Syntax {
        /// The language.
        code: String,
        /// The first characters of what cannot be read.
        near: String,
    },
}

/// A language's messages.
pub struct Catalogue {
    code: String,
    /// Texts without values, ready to show.
    plain: BTreeMap<Key, String>,
    /// Names of the messages with values.
    with_values: BTreeMap<Key, String>,
    bundle: FluentBundle<FluentResource>,
    decimal: char,
    is_pseudo: bool,
}

impl Catalogue {
    /// Reads a language: its tag as BCP 47 has it (`es`), the text of its files, its decimal sign.
    ///
    /// # Errors
    /// The tag is none, or a message cannot be read.
    pub fn read(code: &str, text: &str, decimal: char) -> Result<Self, CatalogueError> {
        let tag = code.parse().map_err(|_| CatalogueError::Code {
            code: code.to_owned(),
        })?;
        let unreadable = |at: usize| {
            let line = text.get(..at).and_then(|before| before.rfind('\n'));
            let line = text.get(line.map_or(0, |end| end + 1)..);
            CatalogueError::Syntax {
                code: code.to_owned(),
                near: line.unwrap_or_default().chars().take(40).collect(),
            }
        };
        if let Some(at) = dangerous::place(text) {
            return Err(unreadable(at));
        }
        let resource = FluentResource::try_new(text.to_owned())
            .map_err(|(_, errors)| unreadable(errors.first().map_or(0, |error| error.pos.start)))?;
        let names: Vec<String> = names(text).map(str::to_owned).collect();
        let mut bundle = FluentBundle::new(vec![tag]);
        // Marks around values are only wanted where the line runs the other way.
        bundle.set_use_isolating(is_right_to_left(code));
        // A name given twice keeps its first text; a test holds that there is none.
        let _ = bundle.add_resource(resource);
        let mut catalogue = Self {
            code: code.to_owned(),
            plain: BTreeMap::new(),
            with_values: BTreeMap::new(),
            bundle,
            decimal,
            is_pseudo: false,
        };
        for name in names {
            catalogue.take(name);
        }
        Ok(catalogue)
    }

    /// A language that is none, for trying the screens: every text stands in marks, and the line runs from
    /// right to left. What is seen without marks cannot be translated.
    pub fn pseudo() -> Self {
        Self {
            code: PSEUDO.to_owned(),
            plain: BTreeMap::new(),
            with_values: BTreeMap::new(),
            bundle: FluentBundle::default(),
            decimal: '.',
            is_pseudo: true,
        }
    }

    fn take(&mut self, name: String) {
        let Some(key) = Key::named(&name) else {
            return;
        };
        let mut missing = Vec::new();
        let text = self
            .bundle
            .get_message(&name)
            .and_then(|message| message.value())
            .map(|pattern| {
                self.bundle
                    .format_pattern(pattern, None, &mut missing)
                    .into_owned()
            });
        match text {
            // Whatever is missing are values.
            Some(text) if missing.is_empty() => {
                self.plain.insert(key, text);
            }
            Some(_) => {
                self.with_values.insert(key, name);
            }
            None => {}
        }
    }

    /// The language's tag.
    pub fn code(&self) -> &str {
        &self.code
    }

    /// Does the language run from right to left?
    pub fn is_right_to_left(&self) -> bool {
        is_right_to_left(&self.code)
    }

    /// What stands between a number's whole and its parts.
    pub fn decimal(&self) -> char {
        self.decimal
    }

    /// The text of a message without values.
    pub fn plain(&self, key: Key, english: &str) -> Option<String> {
        if self.is_pseudo {
            return Some(format!("⟦{english}⟧"));
        }
        self.plain.get(&key).cloned()
    }

    /// The text of a message with values.
    pub fn filled(&self, english: &str, values: &[(&str, &dyn Display)]) -> Option<String> {
        if self.is_pseudo {
            return Some(format!("⟦{}⟧", fill(english, values)));
        }
        let key = Key::of(english);
        let Some(name) = self.with_values.get(&key) else {
            // A translation may do without a value.
            return self.plain.get(&key).cloned();
        };
        let pattern = self.bundle.get_message(name)?.value()?;
        let shown = values
            .iter()
            .map(|(name, value)| (*name, value.to_string()));
        // A whole number can choose between singular and plural.
        let given: FluentArgs<'_> = shown
            .map(|(name, text)| (name, number_or_text(text)))
            .collect();
        let mut wrong = Vec::new();
        let text = self
            .bundle
            .format_pattern(pattern, Some(&given), &mut wrong);
        wrong.is_empty().then(|| text.into_owned())
    }
}

/// Only what is shown unchanged as a number is one: `0042` is a name.
fn number_or_text(shown: String) -> FluentValue<'static> {
    match FluentValue::try_number(&shown) {
        FluentValue::Number(number) if number.as_string() == shown => FluentValue::Number(number),
        _ => FluentValue::String(shown.into()),
    }
}

/// The tag of the language that is none: Arabic script's direction, private use.
const PSEUDO: &str = "ar-x-pseudo";

/// Languages written from right to left. Source: Unicode CLDR, character order, from memory.
fn is_right_to_left(code: &str) -> bool {
    let language = code.split('-').next().unwrap_or_default();
    matches!(
        language,
        "ar" | "fa" | "he" | "ur" | "ps" | "sd" | "ug" | "yi" | "dv" | "ckb"
    )
}

/// Names of the messages in a text.
fn names(text: &str) -> impl Iterator<Item = &str> {
    text.lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_alphabetic()))
        .filter_map(|line| line.split_once('=').map(|(name, _)| name.trim()))
}

/// An English text with its values in place.
pub(super) fn fill(text: &str, values: &[(&str, &dyn Display)]) -> String {
    let mut out = String::with_capacity(text.len() + 16);
    let mut rest = text;
    while let Some(at) = rest.find(['{', '}']) {
        let (before, from) = rest.split_at(at);
        out.push_str(before);
        // A doubled brace is one brace.
        if from.starts_with("{{") || from.starts_with("}}") {
            out.push_str(&from[..1]);
            rest = &from[2..];
            continue;
        }
        let named = from[1..].split_once('}');
        let value = named.and_then(|(name, _)| values.iter().find(|(given, _)| *given == name));
        match (named, value) {
            (Some((_, after)), Some((_, value))) => {
                out.push_str(&value.to_string());
                rest = after;
            }
            // A test holds that every name has its value.
            _ => {
                out.push_str(&from[..1]);
                rest = &from[1..];
            }
        }
    }
    out.push_str(rest);
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::key::id;

    fn spanish(english: &str, spanish: &str) -> Catalogue {
        let text = format!(
            "# a comment\n{} = {spanish}\n",
            id(english, Key::of(english))
        );
        Catalogue::read("es", &text, ',').expect("a readable catalogue")
    }

    #[test]
    fn a_plain_text_is_found_by_its_english() {
        let catalogue = spanish("Making safe", "Dejar sin peligro");
        let found = |text: &str| catalogue.plain(Key::of(text), text);
        assert_eq!(found("Making safe").as_deref(), Some("Dejar sin peligro"));
        assert_eq!(found("making safe"), None);
    }

    #[test]
    fn values_stand_where_the_language_puts_them() {
        let english = "{part}: {n} min";
        let catalogue = spanish(english, "{ $n } min para { $part }");
        let said = catalogue.filled(english, &[("part", &"la correa"), ("n", &3)]);
        assert_eq!(said.as_deref(), Some("3 min para la correa"));
        // Rounded before, it stays as it was rounded.
        let said = catalogue.filled(english, &[("part", &"la correa"), ("n", &"1.50")]);
        assert_eq!(said.as_deref(), Some("1.50 min para la correa"));
        let said = catalogue.filled(english, &[("part", &"la correa"), ("n", &"1.00e7")]);
        assert_eq!(said.as_deref(), Some("1.00e7 min para la correa"));
    }

    #[test]
    fn a_number_chooses_its_plural() {
        let english = "{n} jobs";
        let catalogue = spanish(
            english,
            "{ $n ->\n    [one] un trabajo\n   *[other] { $n } trabajos\n }",
        );
        let said = |n: usize| catalogue.filled(english, &[("n", &n)]);
        assert_eq!(said(1).as_deref(), Some("un trabajo"));
        assert_eq!(said(4).as_deref(), Some("4 trabajos"));
        let name = catalogue.filled(english, &[("n", &"0042")]);
        assert_eq!(name.as_deref(), Some("0042 trabajos"));
    }

    #[test]
    fn english_values_and_braces() {
        assert_eq!(
            fill("{a} and {{b}} and {a}", &[("a", &7)]),
            "7 and {b} and 7"
        );
        assert_eq!(fill("half {open", &[]), "half {open");
    }

    #[test]
    fn what_cannot_be_read_is_shown_where_it_is() {
        let error = Catalogue::read("es", "fine-00000000 = yes\nno message here\n", '.').err();
        assert!(
            matches!(&error, Some(CatalogueError::Syntax { near, .. }) if near.starts_with("no message")),
            "{error:?}"
        );
        let error = Catalogue::read("not a tag", "", '.').err();
        assert!(matches!(error, Some(CatalogueError::Code { .. })));
    }

    #[test]
    fn the_language_that_is_none_marks_every_text() {
        let pseudo = Catalogue::pseudo();
        assert!(pseudo.is_right_to_left());
        assert_eq!(
            pseudo.filled("{n} min", &[("n", &2)]).as_deref(),
            Some("⟦2 min⟧")
        );
    }
}
