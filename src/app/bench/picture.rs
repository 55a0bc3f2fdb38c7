//! The machine as a picture that can be touched: mouse, finger, or arrow keys and Enter.
//!
//! The tree comes from `drawing`; Yew draws it when parts or what is in hand change, and a painter
//! writes the attributes that move, each frame.

use wasm_bindgen::JsCast;
use web_sys::Element as DomElement;
use web_sys::EventTarget;
use yew::prelude::*;
use yew::virtual_dom::VTag;
use yew::virtual_dom::VText;

use crate::app::bench::arrows::in_turn;
use crate::app::bench::arrows::neighbour;
use crate::app::bench::zoom::Zoom;
use crate::app::bench::zoom::in_hand;
use crate::app::shared::Shared;
use crate::app::view::Thing;
use crate::drawing::svg::Element;
use crate::drawing::svg::Node;
use crate::say;

/// What the picture shows and tells.
#[derive(Properties, PartialEq)]
pub struct PictureProps {
    /// The tree.
    pub svg: Shared<Element>,
    /// What it is a picture of.
    pub label: AttrValue,
    /// Show all names.
    #[prop_or_default]
    pub names: bool,
    /// Points a lead can go to are shown.
    #[prop_or_default]
    pub probing: bool,
    /// Jaws are in hand: a conductor on the wiring diagram is meant rather than the part it
    /// belongs to.
    #[prop_or_default]
    pub jaws: bool,
    /// Something was touched.
    pub on_touch: Callback<Thing>,
}

/// The picture.
#[component]
pub fn Picture(props: &PictureProps) -> Html {
    let zoom = use_state_eq(Zoom::default);
    let drag = use_mut_ref(|| None::<(f64, f64)>);
    let onclick = {
        let (on_touch, jaws) = (props.on_touch.clone(), props.jaws);
        Callback::from(move |event: MouseEvent| {
            if let Some(thing) = touched(meant(&event), jaws) {
                on_touch.emit(thing);
            }
        })
    };
    let onkeydown = keys(&props.on_touch, props.jaws);
    let onpointerdown = {
        let drag = drag.clone();
        Callback::from(move |event: PointerEvent| {
            *drag.borrow_mut() = Some((f64::from(event.client_x()), f64::from(event.client_y())));
        })
    };
    let onpointerup = {
        let drag = drag.clone();
        Callback::from(move |_: PointerEvent| *drag.borrow_mut() = None)
    };
    let onpointermove = {
        let zoom = zoom.clone();
        Callback::from(move |event: PointerEvent| {
            let here = (f64::from(event.client_x()), f64::from(event.client_y()));
            let Some(before) = *drag.borrow() else { return };
            if zoom.is_whole() {
                return;
            }
            if let Some(width) = event
                .current_target()
                .and_then(|t| t.dyn_into::<DomElement>().ok())
            {
                let width_px = f64::from(width.client_width()).max(1.0);
                *drag.borrow_mut() = Some(here);
                zoom.set(zoom.moved(
                    (before.0 - here.0) / width_px,
                    (before.1 - here.1) / width_px,
                ));
            }
        })
    };
    let set = |next: Zoom| {
        let zoom = zoom.clone();
        Callback::from(move |_: MouseEvent| zoom.set(next))
    };
    let class = classes!(
        "drawing",
        props.names.then_some("drawing--labels"),
        props.probing.then_some("drawing--probing"),
        (!zoom.is_whole()).then_some("drawing--zoomed")
    );
    html! {
        <div {class} role="group" aria-label={&props.label} {onclick} {onkeydown} {onpointerdown}
             onpointerup={onpointerup.clone()} onpointerleave={onpointerup} {onpointermove}>
            { root(&props.svg, *zoom) }
            <div class="drawing__zoom">
                <button type="button" onclick={set(zoom.closer_to(in_hand(&props.svg)))} aria-label={say!("Closer")}>{ "+" }</button>
                <button type="button" onclick={set(zoom.farther())} aria-label={say!("Farther")}>{ "−" }</button>
                <button type="button" aria-disabled={zoom.is_whole().to_string()} onclick={set(Zoom::default())}>{ say!("whole") }</button>
            </div>
        </div>
    }
}

fn keys(on_touch: &Callback<Thing>, jaws: bool) -> Callback<KeyboardEvent> {
    let on_touch = on_touch.clone();
    Callback::from(move |event: KeyboardEvent| {
        let Some(target) = event.target().and_then(|t| t.dyn_into::<DomElement>().ok()) else {
            return;
        };
        match event.key().as_str() {
            "Enter" | " " => {
                let Some(thing) = touched(event.target(), jaws) else {
                    return;
                };
                on_touch.emit(thing);
            }
            key @ ("ArrowLeft" | "ArrowRight" | "ArrowUp" | "ArrowDown") => neighbour(&target, key),
            "PageDown" => in_turn(&target, 1),
            "PageUp" => in_turn(&target, -1),
            _ => return,
        }
        event.prevent_default();
    })
}

/// What a finger means: where the areas of points lie over one another or over a connector's, the
/// one whose middle is nearest.
fn meant(event: &MouseEvent) -> Option<EventTarget> {
    let target = event.target()?;
    let element = target.dyn_ref::<DomElement>()?;
    if !matches!(element.closest(".point"), Ok(Some(_))) {
        return Some(target);
    }
    let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
    let off = |hit: &DomElement| {
        let area = hit.get_bounding_client_rect();
        let right = area.left() + area.width() / 2.0 - x;
        let down = area.top() + area.height() / 2.0 - y;
        right * right + down * down
    };
    const SMALL: &str = ".point > .hit, [data-connector] > .hit";
    gloo::utils::document()
        .elements_from_point(x as f32, y as f32)
        .iter()
        .filter_map(|under| under.dyn_into::<DomElement>().ok())
        .filter(|under| under.matches(SMALL).unwrap_or(false))
        .min_by(|one, other| off(one).total_cmp(&off(other)))
        .map(EventTarget::from)
        .or(Some(target))
}

/// The thing under an event, by the innermost marked element.
fn touched(target: Option<EventTarget>, jaws: bool) -> Option<Thing> {
    let element = target?.dyn_into::<DomElement>().ok()?;
    if jaws && let Some(conductor) = element.closest("[data-element]").ok().flatten() {
        return conductor.get_attribute("data-element").map(Thing::Element);
    }
    const MARKED: &str =
        "[data-point],[data-connector],[data-step],[data-key],[data-part],[data-place]";
    let marked = element.closest(MARKED).ok()??;
    let read = |name: &str| marked.get_attribute(name).filter(|id| !id.is_empty());
    read("data-point")
        .map(Thing::Point)
        .or_else(|| read("data-connector").map(Thing::Connector))
        .or_else(|| read("data-step").map(Thing::Step))
        .or_else(|| read("data-key").map(Thing::Key))
        .or_else(|| read("data-part").map(Thing::Place))
        .or_else(|| read("data-place").map(Thing::Place))
}

/// A picture that is only looked at, not touched.
pub fn still(element: &Element) -> Element {
    let touched = [
        "tabindex",
        "role",
        "aria-label",
        "aria-pressed",
        "aria-disabled",
    ];
    let mut copy = element.clone();
    copy.attributes
        .retain(|(name, _)| !touched.contains(&&**name));
    for child in &mut copy.children {
        if let Node::Element(inside) = child {
            *inside = still(inside);
        }
    }
    copy
}

fn root(svg: &Element, zoom: Zoom) -> Html {
    let mut tag = tag(svg);
    if let Some(view_box) = svg
        .attribute("viewBox")
        .and_then(|whole| zoom.view_box(whole))
    {
        tag.add_attribute("viewBox", view_box);
    }
    tag.into()
}

/// A tree as Yew's nodes.
pub fn tag(element: &Element) -> VTag {
    let mut tag = VTag::new(element.tag);
    for (name, value) in &element.attributes {
        tag.add_attribute(name, value.clone());
    }
    if element.tag == "text" {
        // What a thing is called stands in its label; lettering is part of the picture.
        tag.add_attribute("aria-hidden", "true");
    }
    for child in &element.children {
        tag.add_child(match child {
            Node::Element(element) => self::tag(element).into(),
            Node::Text(text) => VText::new(text.clone()).into(),
        });
    }
    tag
}
