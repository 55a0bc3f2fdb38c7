//! A side of the bench: always there on a wide screen, a drawer that remembers its place on a
//! small one.

use yew::prelude::*;

/// What a drawer holds and tells.
#[derive(Properties, PartialEq)]
pub struct DrawerProps {
    /// Identity, for the handle.
    pub id: AttrValue,
    /// The word on the handle.
    pub word: AttrValue,
    /// Where it stands: `bench__card` or `bench__tool`, and its side.
    pub class: Classes,
    /// Pulled out, on a small screen.
    pub open: bool,
    /// Pulls it out or pushes it in.
    pub on_toggle: Callback<()>,
    /// What is inside.
    pub children: Html,
}

/// The drawer.
#[component]
pub fn Drawer(props: &DrawerProps) -> Html {
    let onclick = props.on_toggle.reform(|_: MouseEvent| ());
    let body = format!("{}-body", props.id);
    html! {
        <aside id={props.id.clone()} class={classes!("drawer", props.class.clone())} aria-label={&props.word}
               open={props.open}>
            <button type="button" class="drawer__handle" aria-expanded={props.open.to_string()}
                    aria-controls={body.clone()} {onclick}>{ &props.word }</button>
            <div id={body} class="drawer__body">{ props.children.clone() }</div>
        </aside>
    }
}
