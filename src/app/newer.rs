//! A newer build of the page that waits: said on every screen but the bench, taken when asked.
//!
//! `register.js` tells by an event and an attribute, and is told the same way. Jobs are kept with
//! every act, so taking the newer build loses nothing.

use crate::say;
use gloo::events::EventListener;
use web_sys::Event;
use yew::prelude::*;

/// The attribute of the page's root that says a newer build waits.
const ATTRIBUTE: &str = "data-newer";
/// Told to the page.
const WAITS: &str = "newer-waits";
/// Asked by the page.
const TAKE: &str = "newer-take";

fn is_waiting() -> bool {
    let root = gloo::utils::document().document_element();
    root.is_some_and(|root| root.has_attribute(ATTRIBUTE))
}

/// The line, where there is something to say.
#[component]
pub fn Newer() -> Html {
    let waits = use_state(is_waiting);
    {
        let waits = waits.clone();
        use_effect_with((), move |()| {
            let heard = EventListener::new(&gloo::utils::window(), WAITS, move |_| waits.set(true));
            move || drop(heard)
        });
    }
    if !*waits {
        return Html::default();
    }
    let take = Callback::from(|_: MouseEvent| {
        if let Ok(event) = Event::new(TAKE) {
            // Nobody listens where there is nothing to take.
            let _ = gloo::utils::window().dispatch_event(&event);
        }
    });
    html! {
        <p class="newer" role="status">
            <span>{ say!("A newer build of this page is ready. Your jobs stay as they are.") }</span>
            <button type="button" class="button" onclick={take}>{ say!("Use it now") }</button>
        </p>
    }
}
