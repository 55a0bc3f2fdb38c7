//! What a technician can touch in a picture, ready for mouse, finger, keyboard and screen reader.
//!
//! Each touchable thing is one group with its id, its name, a role, a place in the tab order (one
//! stop for the whole picture; arrow keys move inside) and an area of at least 24 px.

use crate::drawing::input::DrawingInput;
use crate::drawing::svg::{Element, group, label, rect};
use crate::drawing::world::SMALLEST_TARGET;

/// A rectangle in the picture: x, y, width, height.
pub type Area = (f64, f64, f64, f64);

/// The part with this id, and the place of the same name.
pub fn part(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    touch(input, id, "data-part", area, drawn)
}

/// A place to look at that is no part.
pub fn place(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    touch(input, id, "data-place", area, drawn)
}

/// A cover or other thing in the way, by the id of its step.
pub fn step(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    touch(input, id, "data-step", area, drawn)
}

/// A key or knob of the panel.
pub fn key(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    touch(input, id, "data-key", area, drawn)
}

/// A connector.
pub fn connector(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    touch(input, id, "data-connector", area, drawn)
}

fn touch(
    input: &DrawingInput,
    id: &str,
    kind: &'static str,
    area: Area,
    drawn: Vec<Element>,
) -> Element {
    let name = input.name(id);
    let selected = input.selected == Some(id);
    let mut element = group(if selected {
        "touch touch--selected"
    } else {
        "touch"
    })
    .with(kind, id)
    .with("role", "button")
    .with("tabindex", if selected { "0" } else { "-1" })
    .with("aria-label", name.clone());
    if selected {
        element.set("aria-current", "true");
    }
    let (x, y, width, height) = grown(area);
    element
        .child(Element::new("title").text(name.clone()))
        .children(drawn)
        .child(rect(x, y, width, height, "hit").with("rx", "8"))
        .child(tag(area, &name))
}

/// The name beside a part; shown when all labels are on, or on hover and focus.
fn tag(area: Area, name: &str) -> Element {
    let (x, y, width, height) = area;
    label(x + width / 2.0, y + height / 2.0 + 7.0, "tag", name).with("aria-hidden", "true")
}

/// The area made large enough for a finger.
pub fn grown(area: Area) -> Area {
    let (x, y, width, height) = area;
    let more_x = (SMALLEST_TARGET - width).max(0.0) / 2.0;
    let more_y = (SMALLEST_TARGET - height).max(0.0) / 2.0;
    (
        x - more_x,
        y - more_y,
        width + 2.0 * more_x,
        height + 2.0 * more_y,
    )
}
