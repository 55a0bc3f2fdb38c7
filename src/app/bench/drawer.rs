//! A side of the bench: always there on a wide screen, a drawer on a small one.

use crate::say;
use yew::prelude::*;

/// What a drawer holds and tells.
#[derive(Properties, PartialEq)]
pub struct DrawerProps {
    /// Identity, for the handle.
    pub id: AttrValue,
    /// What it is called.
    pub word: AttrValue,
    /// Where it stands: `bench__card` or `bench__tool`.
    pub class: Classes,
    /// Pulled out, on a small screen.
    pub open: bool,
    /// Pushes it in.
    pub on_toggle: Callback<()>,
    /// What is inside.
    pub children: Html,
}

/// The drawer.
#[component]
pub fn Drawer(props: &DrawerProps) -> Html {
    let onclick = props.on_toggle.reform(|_: MouseEvent| ());
    html! {
        <aside id={props.id.clone()} class={classes!("drawer", props.class.clone())} aria-label={&props.word}
               data-open={props.open.to_string()}>
            <button type="button" class="drawer__close button button--small" {onclick}
                    aria-label={say!("Put away: {what}", what = props.word)}>{ say!("put away") }</button>
            <div class="drawer__body">{ props.children.clone() }</div>
        </aside>
    }
}

/// What a handle tells.
#[derive(Properties, PartialEq)]
pub struct HandleProps {
    /// Identity of the drawer.
    pub drawer: AttrValue,
    /// The word on it.
    pub word: AttrValue,
    /// The drawer is pulled out.
    pub open: bool,
    /// Pulls it out or pushes it in.
    pub on_toggle: Callback<()>,
}

/// The handle of a drawer, shown on a small screen.
#[component]
pub fn Handle(props: &HandleProps) -> Html {
    let onclick = props.on_toggle.reform(|_: MouseEvent| ());
    html! {
        <button type="button" class="drawer__handle" aria-expanded={props.open.to_string()}
                aria-controls={&props.drawer} {onclick}>{ &props.word }</button>
    }
}
