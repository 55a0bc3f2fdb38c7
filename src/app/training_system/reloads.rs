//! Whether the page that goes away is about to come back: loaded anew by keys or by a button of its own.
//!
//! A browser does not tell a page that is closed from one that is loaded anew. The keys for it are seen
//! before it happens, and so is what the page does itself, where the browser has navigation events; the
//! browser's own button is not.

use std::cell::Cell;

use gloo::events::EventListener;
use js_sys::Reflect;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::EventTarget;
use web_sys::KeyboardEvent;

/// What has not happened by then does not happen, ms.
const SOON_MS: f64 = 3000.0;

thread_local! {
    static SINCE_MS: Cell<f64> = const { Cell::new(f64::NEG_INFINITY) };
}

/// The page is being loaded anew, as far as that can be known.
pub fn is_coming() -> bool {
    js_sys::Date::now() - SINCE_MS.get() < SOON_MS
}

fn comes() {
    SINCE_MS.set(js_sys::Date::now());
}

/// Listens for as long as the page lives.
pub fn watch() {
    let window = gloo::utils::window();
    let keys = EventListener::new(&window, "keydown", |event| {
        if let Some(key) = event.dyn_ref::<KeyboardEvent>()
            && is_reload(&key.key(), key.ctrl_key() || key.meta_key(), key.alt_key())
        {
            comes();
        }
    });
    keys.forget();
    let navigation = Reflect::get(&window, &JsValue::from_str("navigation"));
    // Older browsers have none.
    if let Some(navigation) = navigation
        .ok()
        .and_then(|n| n.dyn_into::<EventTarget>().ok())
    {
        let own = EventListener::new(&navigation, "navigate", |event| {
            let kind = Reflect::get(event, &JsValue::from_str("navigationType"));
            if kind.is_ok_and(|kind| kind.as_string().as_deref() == Some("reload")) {
                comes();
            }
        });
        own.forget();
    }
}

fn is_reload(key: &str, with_control: bool, with_alt: bool) -> bool {
    !with_alt && (key == "F5" || (with_control && key.eq_ignore_ascii_case("r")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_keys_that_load_a_page_anew_are_known() {
        for (key, control, alt, is) in [
            ("F5", false, false, true),
            ("F5", true, false, true),
            ("r", true, false, true),
            ("R", true, false, true),
            ("r", false, false, false),
            ("r", true, true, false),
            ("F6", true, false, false),
        ] {
            assert_eq!(is_reload(key, control, alt), is, "{key} {control} {alt}");
        }
    }
}
