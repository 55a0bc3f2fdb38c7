//! The screen the address bar names.

use gloo::events::EventListener;
use yew::prelude::*;

use crate::app::route::Route;

/// The present route; changes with the address.
#[hook]
pub fn use_route() -> Route {
    let route = use_state(current);
    {
        let route = route.clone();
        use_effect_with((), move |()| {
            let listener = EventListener::new(&gloo::utils::window(), "hashchange", move |_| {
                route.set(current())
            });
            move || drop(listener)
        });
    }
    (*route).clone()
}

fn current() -> Route {
    Route::parse(&gloo::utils::window().location().hash().unwrap_or_default())
}

/// Goes to a screen.
pub fn go_to(route: &Route) {
    // Setting the fragment of one's own page cannot be refused.
    let _ = gloo::utils::window().location().set_hash(&route.href());
}
