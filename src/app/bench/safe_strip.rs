//! SAFE?: what was done to make the machine safe, and, separately, what was proved.
//!
//! It never says more than the technician has established.

use yew::prelude::*;

use crate::app::view::SafeItem;
use crate::app::view::SafeState;
use crate::say;

/// What the strip shows.
#[derive(Properties, PartialEq)]
pub struct SafeStripProps {
    /// The steps in working order.
    pub items: Vec<SafeItem>,
}

/// The strip.
#[component]
pub fn SafeStrip(props: &SafeStripProps) -> Html {
    html! {
        <section class="safe-strip" aria-label={say!("Safe?")}>
            <h2 class="safe-strip__title">{ say!("Safe?") }</h2>
            <ol class="safe-strip__list">{ for props.items.iter().map(item) }</ol>
        </section>
    }
}

fn item(item: &SafeItem) -> Html {
    let (class, mark, meaning) = match item.state {
        SafeState::Open => ("safe-strip__item--open", "–", say!("not done")),
        SafeState::Done => ("safe-strip__item--done", "✓", say!("done")),
        SafeState::Proved => ("safe-strip__item--proved", "✓✓", say!("proved")),
    };
    html! {
        <li class={classes!("safe-strip__item", class)}>
            <span class="safe-strip__mark" aria-hidden="true">{ mark }</span>
            <span>{ &item.word }</span>
            if !item.detail.is_empty() { <span class="safe-strip__detail">{ format!(" {}", item.detail) }</span> }
            <span class="visually-hidden">{ format!(": {meaning}") }</span>
        </li>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn done_and_proved_are_told_apart_in_words_and_not_by_colour_alone() {
        let text = as_text::<SafeStrip>(|| SafeStripProps {
            items: vec![
                SafeItem {
                    word: "unplugged".into(),
                    state: SafeState::Done,
                    detail: String::new(),
                },
                SafeItem {
                    word: "proved dead".into(),
                    state: SafeState::Open,
                    detail: String::new(),
                },
            ],
        });
        assert!(
            text.contains(": done") && text.contains(": not done"),
            "{text}"
        );
        assert!(!text.contains(": proved"), "{text}");
    }
}
