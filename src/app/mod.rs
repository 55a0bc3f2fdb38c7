//! The screens: the only part that knows a browser.
//!
//! The page holds one element with the id `app`; everything a person sees is drawn into it.

use yew::prelude::*;

/// Draws the first screen in place of the page's "Opening the workshop".
pub fn start() {
    let root = gloo::utils::document().get_element_by_id("app");
    if let Some(root) = root {
        // What stands there until now is the page's own text.
        root.set_inner_html("");
        yew::Renderer::<Screen>::with_root(root).render();
    }
}

/// The frame around every screen.
#[component]
pub fn Screen() -> Html {
    html! {
        <main>
            <h1>{ "Tubwright" }</h1>
        </main>
    }
}
