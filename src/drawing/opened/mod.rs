//! The machine as the technician has it: still in its place, turned round with covers off, or
//! laid on its front. What is off lies on the floor to the left.
//!
//! Like the section this is seen from behind, so that both show everything on the same side.

mod aside;
mod behind;
mod underside;

use crate::drawing::input::DrawingInput;
use crate::drawing::outside;
use crate::drawing::steps::{BACK, LAID_DOWN, PULLED_OUT, TOP};
use crate::drawing::svg::{Element, group};

/// The whole machine with what lies beside it.
pub fn machine(input: &DrawingInput) -> Element {
    let whole = if input.is_off(&LAID_DOWN) {
        underside::machine(input)
    } else if input.is_off(&PULLED_OUT) || input.is_off(&BACK) || input.is_off(&TOP) {
        behind::machine(input)
    } else {
        outside::machine(input)
    };
    group("opened").child(aside::items(input)).child(whole)
}
