//! Quantities as words and numbers: `2pl_se_b3` is a model, a word and an item.

/// A number at the end of a word, `None` for words that end otherwise: `item3` gives `("item", 3)`.
pub fn word_and_number(text: &str) -> Option<(&str, usize)> {
    let digits = text.chars().rev().take_while(char::is_ascii_digit).count();
    let (word, number) = text.split_at(text.len() - digits);
    number.parse().ok().map(|number| (word, number))
}

/// Scores written one digit each; anything else is a gap.
pub fn pattern(text: &str) -> Vec<Option<u8>> {
    text.chars()
        .map(|c| c.to_digit(10).and_then(|d| u8::try_from(d).ok()))
        .collect()
}
