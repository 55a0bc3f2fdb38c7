//! The machine cut through the middle, front to back plane, seen from the front.
//!
//! Everything is where it is in a real machine of this kind; what lies behind the cut is drawn
//! behind it. The rods are turned into the plane of the cut, as is usual in section drawings.

mod cabinet;
mod control;
mod drain;
mod drive;
mod tub;
mod upper;

/// Ids and angles of what turns, for the painter.
pub mod moving {
    pub use super::drive::GEARBOX_MARKS;
    pub use super::drive::MOTOR_MARKS;
    pub use super::tub::COLUMN_STEP_RAD;
    pub use super::tub::COLUMNS;
    pub use super::tub::RIB_STEP_RAD;
    pub use super::tub::RIBS;
}

use crate::drawing::input::DrawingInput;
use crate::drawing::steps::GUARD;
use crate::drawing::svg::{Element, group};

/// The whole machine, without the room.
pub fn machine(input: &DrawingInput) -> Element {
    let swinging = group("tub-and-drive")
        .id("tub-swing")
        .children(drain::overflow(input))
        .children(tub::outer(input))
        .children(drive::gearbox(input))
        .children(drain::under_the_tub(input))
        .children(drive::pulleys(input))
        .children((!input.is_off(&GUARD)).then(|| drive::bottom_guard(input)))
        .children(tub::basket_and_water(input));
    group("machine")
        .id("machine")
        .children(cabinet::inside(input))
        .children(upper::compartment(input, true))
        .child(swinging)
        .children(cabinet::rods(input))
        .children(upper::hanging_down(input))
        .children(cabinet::shell(input))
}

/// What the open back shows below the tub: motor, pulleys, belt, drain and capacitor, uncut.
pub fn lower_back(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = cabinet::inside_back(input);
    drawn.extend(drive::gearbox_closed(input));
    drawn.extend(drain::under_the_tub(input));
    drawn.extend(drive::pulleys(input));
    drawn
}

/// What the lifted top cover shows, with the board still behind its inner cover or not.
pub fn lifted_top(input: &DrawingInput, board_bare: bool) -> Vec<Element> {
    let mut drawn = upper::compartment(input, board_bare);
    drawn.extend(upper::hanging_down(input));
    drawn
}

/// The parts that water meets, for the water view.
pub fn water_path(input: &DrawingInput) -> Element {
    let swinging = group("tub-and-drive")
        .id("tub-swing")
        .children(drain::overflow(input))
        .children(tub::outer(input))
        .children(drain::under_the_tub(input))
        .children(tub::basket_and_water(input));
    group("machine")
        .id("machine")
        .child(cabinet::ghost())
        .children(upper::water_side(input))
        .child(swinging)
}
