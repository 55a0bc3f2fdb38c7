//! What a job keeps in English, as its reader is shown it: readings, warnings, states of the machine.

use std::borrow::Cow;

use crate::language::decimals;
use crate::language::worded;
use crate::say;

/// Digits and unit, or the words an instrument shows in their place.
pub fn reading(display: &str) -> String {
    decimals(worded(display).into_owned())
}

/// What an instrument warns of.
pub fn warning(kept: &str) -> String {
    let volts = kept
        .strip_prefix("voltage on the circuit: about ")
        .and_then(|rest| rest.strip_suffix(" V"));
    match volts {
        Some(volts) => say!("voltage on the circuit: about {volts} V", volts),
        None => worded(kept).into_owned(),
    }
}

/// What the machine is doing, in the notebook.
pub fn state(kept: &str) -> String {
    worded(&kept.replace('_', " ")).into_owned()
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
    use crate::language::Key;
    use crate::language::id;
    use crate::language::speak;

    #[test]
    fn english_is_shown_as_it_is_kept() {
        assert_eq!(reading("21.0 Ω"), "21.0 Ω");
        assert_eq!(state("unplugged_on"), "unplugged on");
        let told = "voltage on the circuit: about 12 V";
        assert_eq!(warning(told), told);
        let told = ["One", "two", "three"].map(str::to_owned);
        assert_eq!(one_after_another(&told), "One. two. three");
    }

    #[test]
    fn a_reading_is_shown_with_the_readers_decimal_sign_and_a_warning_in_their_words() {
        let english = "voltage on the circuit: about {volts} V";
        let name = id(english, Key::of(english));
        let text = format!("{name} = tensión en el circuito: unos {{ $volts }} V\n");
        speak(Catalogue::read("es", &text, ',').ok());
        let shown = (
            reading("21.0 Ω"),
            warning("voltage on the circuit: about 12 V"),
        );
        speak(None);
        assert_eq!(shown.0, "21,0 Ω");
        assert_eq!(shown.1, "tensión en el circuito: unos 12 V");
    }
}
