//! What a technician can touch in a picture, ready for mouse, finger, keyboard and screen reader.
//!
//! Each touchable thing is one group with its id, its name, a role, a place in the tab order (one
//! stop for the whole picture; arrow keys move inside) and an area of at least 24 px.

use crate::drawing::input::DrawingInput;
use crate::drawing::svg::{Element, fitted, group, rect, room_for};
use crate::drawing::world::{EDGE, LETTER, SMALLEST_TARGET};

/// A rectangle in the picture: x, y, width, height.
pub type Area = (f64, f64, f64, f64);

/// A part, place, connector or step, whichever the workshop knows under this id. What it does not
/// know is drawn but cannot be touched.
pub fn part(input: &DrawingInput, id: &str, area: Area, drawn: Vec<Element>) -> Element {
    let known = input.workshop;
    let kind = if known.part(id).is_some() {
        "data-part"
    } else if known.place(id).is_some() {
        "data-place"
    } else if known.connector(id).is_some() {
        "data-connector"
    } else if known.step(id).is_some() {
        "data-step"
    } else if known.parts.is_empty() {
        "data-part"
    } else {
        return group("").children(drawn);
    };
    touch(input, id, kind, area, drawn)
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
        .child(tag(area, &name, &input.english_name(id)))
}

/// The name beside a part; shown when all labels are on, or on hover and focus.
fn tag(area: Area, name: &str, english: &str) -> Element {
    let (x, y, width, height) = area;
    let (x, y) = (x + width / 2.0, y + height / 2.0 + 7.0);
    let room = room_for(english, (EDGE - x) / LETTER);
    fitted(x, y, "tag", name, room).with("aria-hidden", "true")
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
