//! Single-key shortcuts that leave typing alone.

use gloo::events::EventListener;
use gloo::events::EventListenerOptions;
use wasm_bindgen::JsCast;
use web_sys::Element;
use web_sys::KeyboardEvent;
use yew::prelude::*;

/// Calls `on_key` with the key pressed anywhere on the page, unless a person is typing, a
/// modifier is held, or `enabled` is false. A key that `on_key` says it used does nothing else: it
/// is not typed into the field that it has just moved the focus to.
#[hook]
pub fn use_keys(enabled: bool, on_key: Callback<String, bool>) {
    use_effect_with((enabled, on_key), |(enabled, on_key)| {
        let on_key = on_key.clone();
        let listener = enabled.then(|| {
            let document = gloo::utils::document();
            let options = EventListenerOptions::enable_prevent_default();
            EventListener::new_with_options(&document, "keydown", options, move |event| {
                if let Some(event) = event.dyn_ref::<KeyboardEvent>()
                    && is_free(event)
                    && on_key.emit(event.key())
                {
                    event.prevent_default();
                }
            })
        });
        move || drop(listener)
    });
}

/// The key is not meant for a field, a list or the browser.
fn is_free(event: &KeyboardEvent) -> bool {
    if event.ctrl_key() || event.alt_key() || event.meta_key() || event.default_prevented() {
        return false;
    }
    let target = event
        .target()
        .and_then(|target| target.dyn_into::<Element>().ok());
    target.is_none_or(|element| {
        let typing =
            "input:not([type=checkbox]):not([type=radio]), textarea, select, [role=listbox]";
        !element.matches(typing).unwrap_or(false)
    })
}
