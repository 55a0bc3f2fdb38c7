//! Sentences with markup in them: whole for whoever translates them, with a hole where the markup stands.

use yew::prelude::*;

/// A hole for each piece of markup, in their order. Unicode keeps these letters for private use: they
/// stand in no text.
pub const HOLES: [char; 3] = ['\u{e000}', '\u{e001}', '\u{e002}'];

/// A sentence with markup in its holes.
pub fn phrase(sentence: &str, markup: &[Html]) -> Html {
    let mut all: Vec<Html> = Vec::new();
    let mut words = String::new();
    for letter in sentence.chars() {
        let hole = HOLES.iter().position(|hole| *hole == letter);
        match hole.and_then(|at| markup.get(at)) {
            None => words.push(letter),
            Some(piece) => {
                if !words.is_empty() {
                    all.push(std::mem::take(&mut words).into());
                }
                all.push(piece.clone());
            }
        }
    }
    if !words.is_empty() {
        all.push(words.into());
    }
    html! { <>{ for all }</> }
}

/// A name or text that somebody typed, which may run the other way than the line.
pub fn bdi(text: &str) -> Html {
    html! { <bdi>{ text }</bdi> }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[component]
    fn Shown() -> Html {
        let [who, what, _] = HOLES;
        let sentence = format!("{what} says {who}.");
        html! { <p>{ phrase(&sentence, &[bdi("N. Judge"), html! { <b>{ "Yes" }</b> }]) }</p> }
    }

    #[test]
    fn markup_stands_where_the_sentence_has_it() {
        let text = as_text::<Shown>(|| ());
        assert!(
            text.contains("<p><b>Yes</b> says <bdi>N. Judge</bdi>.</p>"),
            "{text}"
        );
    }
}
