//! Moving the keyboard's focus.

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Moves the focus to the element with this id; nothing happens when there is none.
pub fn focus_on(id: &str) {
    if let Some(element) = gloo::utils::document().get_element_by_id(id) {
        focus(element.unchecked_ref());
    }
}

/// Moves the focus to the first element that fits a selector.
pub fn focus_first(selector: &str) {
    if let Ok(Some(element)) = gloo::utils::document().query_selector(selector) {
        focus(element.unchecked_ref());
    }
}

/// Moves the focus to the first of these ids that is there, unfolding what it lies in.
pub fn focus_on_first(ids: impl IntoIterator<Item = String>) {
    let document = gloo::utils::document();
    let found = ids
        .into_iter()
        .find_map(|id| document.get_element_by_id(&id));
    if let Some(element) = found {
        // A folded element can be unfolded only by what it lies in.
        while let Ok(Some(folded)) = element.closest("details:not([open])") {
            if folded.set_attribute("open", "").is_err() {
                break;
            }
        }
        focus(element.unchecked_ref());
    }
}

fn focus(element: &HtmlElement) {
    // An element that cannot take the focus leaves it where it is.
    let _ = element.focus();
}
