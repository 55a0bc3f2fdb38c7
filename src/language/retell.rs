//! What was made in English and kept, such as a line of a notebook, said again in the present language.

use std::borrow::Cow;
use std::fmt::Display;

use super::decimals;
use super::present;

/// A value of this name is somebody's own words: it stays as it is.
const OWN: &str = "own";

/// A text that was kept in English, in the present language: one of the program or of a file, or a
/// sentence with values. Each row is a sentence, then the sentences that its values may be in turn.
pub fn retold<'t>(text: &'t str, rows: &[&[&'static str]]) -> Cow<'t, str> {
    if present::is_english() {
        return Cow::Borrowed(text);
    }
    let found = present::worded(text);
    if matches!(found, Cow::Owned(_)) {
        return found;
    }
    let fitting = rows.iter().find_map(|row| {
        let (sentence, inner) = row.split_first()?;
        Some((*sentence, parts(sentence, text)?, inner))
    });
    match fitting {
        Some((sentence, parts, inner)) => Cow::Owned(again(sentence, &parts, inner)),
        None => found,
    }
}

fn again(sentence: &'static str, parts: &[(&'static str, &str)], inner: &[&'static str]) -> String {
    let said: Vec<(&'static str, String)> = parts
        .iter()
        .map(|(name, part)| (*name, value(name, part, inner)))
        .collect();
    let values: Vec<(&'static str, &dyn Display)> = said
        .iter()
        .map(|(name, part)| (*name, part as &dyn Display))
        .collect();
    present::filled_by_pairs(sentence, &values)
}

fn value(name: &str, part: &str, sentences: &[&'static str]) -> String {
    if name == OWN {
        return part.to_owned();
    }
    if part.parse::<f64>().is_ok() {
        return decimals(part.to_owned());
    }
    let found = present::worded(part);
    let fitting = match found {
        Cow::Owned(_) => None,
        Cow::Borrowed(_) => sentences
            .iter()
            .find_map(|sentence| Some((*sentence, parts(sentence, part)?))),
    };
    match fitting {
        Some((sentence, parts)) => again(sentence, &parts, sentences),
        None => found.into_owned(),
    }
}

/// Names and values of a sentence that a text is; none when it is another.
fn parts<'t>(sentence: &'static str, text: &'t str) -> Option<Vec<(&'static str, &'t str)>> {
    let mut pieces = sentence.split('{').peekable();
    let mut rest = text.strip_prefix(pieces.next()?)?;
    let mut found = Vec::new();
    while let Some(piece) = pieces.next() {
        let (name, words) = piece.split_once('}')?;
        let is_last = pieces.peek().is_none();
        let (part, after) = if is_last {
            (rest.strip_suffix(words)?, "")
        } else {
            rest.split_once(words)?
        };
        if part.is_empty() {
            return None;
        }
        found.push((name, part));
        rest = after;
    }
    rest.is_empty().then_some(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Catalogue;
    use crate::language::Key;
    use crate::language::id;
    use crate::language::speak;

    const ROWS: [&[&str]; 3] = [
        &["Remark: {own}"],
        &[
            "Price named: {offers}",
            "{offer}, or {other}",
            "{what} for {price}",
        ],
        &["{name}: {verb}"],
    ];

    /// A language that says each of these texts like this.
    fn speak_so(messages: &[(&str, &str)]) {
        let line = |(english, said): &(&str, &str)| {
            format!("{} = {said}\n", id(english, Key::of(english)))
        };
        let text: String = messages.iter().map(line).collect();
        speak(Catalogue::read("es", &text, ',').ok());
    }

    #[test]
    fn a_kept_sentence_is_found_with_its_values_and_they_are_said_too() {
        speak_so(&[
            ("belt", "correa"),
            ("take off", "quitar"),
            ("{name}: {verb}", "{ $name }, { $verb }"),
            ("{offer}, or {other}", "{ $offer } o { $other }"),
            ("{what} for {price}", "{ $what } por { $price }"),
            ("Price named: {offers}", "Precio: { $offers }"),
            ("Remark: {own}", "Nota: { $own }"),
        ]);
        assert_eq!(retold("belt: take off", &ROWS), "correa, quitar");
        assert_eq!(
            retold("Price named: belt for 8.5, or pump for 90", &ROWS),
            "Precio: correa por 8,5 o pump por 90"
        );
        // Own words are nobody's to translate.
        assert_eq!(retold("Remark: belt", &ROWS), "Nota: belt");
        assert_eq!(retold("no such sentence", &ROWS), "no such sentence");
        speak(None);
        assert_eq!(retold("belt: take off", &ROWS), "belt: take off");
    }

    #[test]
    fn a_text_is_a_sentence_only_as_a_whole() {
        assert_eq!(parts("dry", "dry"), Some(Vec::new()));
        assert_eq!(parts("dry", "dry floor"), None);
        assert_eq!(
            parts("about {n} mm deep", "about 12 mm deep"),
            Some(vec![("n", "12")])
        );
        assert_eq!(parts("about {n} mm deep", "about 12 mm wide"), None);
        assert_eq!(parts("{a}: {b}, checked", "x: y"), None);
        assert_eq!(parts("{a}: {b}", ": y"), None);
    }
}
