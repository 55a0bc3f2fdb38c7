//! A button for what cannot be taken back: pressed once, it stands for the safe answer, and the deed beside it.

use yew::prelude::*;

use crate::say;

/// What it is for.
#[derive(Properties, PartialEq)]
pub struct SureProps {
    /// Its words at first.
    pub ask: AttrValue,
    /// Words of the deed, once it is asked for.
    pub yes: AttrValue,
    /// What it is about, where its words alone do not say so.
    #[prop_or_default]
    pub label: Option<AttrValue>,
    /// In a table.
    #[prop_or_default]
    pub small: bool,
    /// Not now.
    #[prop_or_default]
    pub disabled: bool,
    /// It is to be done.
    pub on_yes: Callback<()>,
}

/// The button, or both.
#[component]
pub fn Sure(props: &SureProps) -> Html {
    let sure = use_state_eq(|| false);
    // A second click on the same spot takes the first back: nothing is lost by a double click.
    let ask = {
        let sure = sure.clone();
        Callback::from(move |_: MouseEvent| sure.set(!*sure))
    };
    let yes = {
        let (sure, on_yes) = (sure.clone(), props.on_yes.clone());
        Callback::from(move |_: MouseEvent| {
            sure.set(false);
            on_yes.emit(());
        })
    };
    let words = if *sure {
        // As wide as before in any language, so that the deed is not under the pointer.
        html! { <span class="sure"><span>{ say!("Not after all") }</span><span aria-hidden="true">{ &props.ask }</span></span> }
    } else {
        html! { { &props.ask } }
    };
    let small = props.small.then_some("button--small");
    let label = props.label.clone().filter(|_| !*sure);
    html! {
        <>
            <button type="button" class={classes!("button", small, (!*sure).then_some("button--danger"))} aria-label={label} aria-expanded={sure.to_string()} disabled={props.disabled} onclick={ask}>{ words }</button>
            if *sure {
                <button type="button" class={classes!("button", small, "button--danger")} disabled={props.disabled} onclick={yes}>{ &props.yes }</button>
            }
        </>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn the_deed_is_not_offered_before_it_is_asked_for() {
        let text = as_text::<Sure>(|| SureProps {
            ask: "Erase everything".into(),
            yes: "Yes, erase everything".into(),
            label: None,
            small: false,
            disabled: false,
            on_yes: Callback::noop(),
        });
        assert!(
            text.contains("Erase everything") && !text.contains("Yes, erase"),
            "{text}"
        );
    }
}
