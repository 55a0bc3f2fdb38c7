//! Pictures of a machine as pure functions: machine data and state in, SVG out.
//!
//! One source for the bench, the debrief, the report, the handbook and files. No browser here:
//! the app turns the tree into nodes, writes the painter's changes each frame, and reads back
//! what was touched from the `data-` attributes.

pub mod svg; // the element tree and its text
pub mod wiring; // the wiring diagram

mod furnish;
mod input;
mod opened;
mod outside;
mod painter;
mod room;
mod section;
mod steps;
mod touch;
mod world;

pub use furnish::KINDS;
pub use input::Command;
pub use input::Drain;
pub use input::DrawingInput;
pub use input::Features;
pub use input::Probes;
pub use input::View;
pub use input::plain_name;
pub use painter::Change;
pub use painter::animate;
pub use painter::apply;

use crate::drawing::svg::{Element, num};

/// The picture of a machine in this view and state.
pub fn draw(view: View, input: &DrawingInput) -> Element {
    let machine = match view {
        View::Outside => outside::machine(input),
        View::Opened => opened::machine(input),
        View::Section => section::machine(input),
        View::Water => section::water_path(input),
    };
    let mut drawing = sheet(&format!("drawing__svg drawing__svg--{}", view.slug()))
        .with("aria-label", (input.names)(view.slug()))
        .children(room::backdrop(input))
        .children(room::services(input, view))
        .child(machine)
        .child(room::below(input));
    furnish::furnish(input, view, &mut drawing);
    apply(&mut drawing, &animate(view, input.features, input.pose));
    drawing
}

/// An empty sheet of the size all drawings have.
pub fn sheet(class: &str) -> Element {
    let (left, top, width, height) = world::VIEW_BOX;
    Element::new("svg")
        .with("xmlns", "http://www.w3.org/2000/svg")
        .with(
            "viewBox",
            format!("{} {} {} {}", num(left), num(top), num(width), num(height)),
        )
        .with("class", class)
        .with("role", "group")
}

/// A drawing as a file that needs nothing else: colours and line weights included.
pub fn document(drawing: &Element) -> String {
    let style = Element::new("style").text(concat!(
        include_str!("../../styles/tokens.css"),
        include_str!("../../styles/drawing.css"),
        include_str!("../../styles/wiring.css"),
    ));
    let mut whole = drawing.clone();
    whole.children.insert(0, svg::Node::Element(style));
    whole.to_svg_string()
}
