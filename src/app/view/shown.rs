//! What a job keeps in English, as its reader is shown it: readings, warnings, states of the machine.

use std::borrow::Cow;

use crate::bench::kept;
use crate::language::decimals;
use crate::language::worded;
use crate::say;

/// Digits and unit, or the words an instrument shows in their place.
pub fn reading(display: &str) -> String {
    decimals(kept::display(display))
}

/// Sentences without their full stops, one after the other.
pub fn one_after_another(sentences: &[String]) -> String {
    let mut whole = String::new();
    for sentence in sentences {
        whole = if whole.is_empty() {
            sentence.clone()
        } else {
            say!("{sentence}. {next}", sentence = whole, next = sentence)
        };
    }
    whole
}

/// Texts out of files, one after the other.
pub fn all<'a>(texts: impl Iterator<Item = &'a str>) -> Vec<Cow<'a, str>> {
    texts.map(worded).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Catalogue;
    use crate::language::speak;

    #[test]
    fn english_is_shown_as_it_is_kept() {
        assert_eq!(reading("21.0 Ω"), "21.0 Ω");
        let told = ["One", "two", "three"].map(str::to_owned);
        assert_eq!(one_after_another(&told), "One. two. three");
    }

    #[test]
    fn a_reading_is_shown_with_the_readers_decimal_sign() {
        speak(Catalogue::read("es", "", ',').ok());
        let shown = reading("21.0 Ω");
        speak(None);
        assert_eq!(shown, "21,0 Ω");
    }
}
