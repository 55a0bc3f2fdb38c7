//! The machine as the technician has it: still in its place, turned round with covers off, or
//! laid on its front. What is off lies on the floor to the left.
//!
//! Like the section this is seen from behind, so that both show everything on the same side.

mod aside;
mod behind;
mod underside;

use crate::drawing::input::DrawingInput;
use crate::drawing::outside;
use crate::drawing::svg::{Element, group};

/// Other spellings of steps, so that a machine's file may name them by object or by act.
const PULLED_OUT: [&str; 1] = ["pull_out"];
const LAID_DOWN: [&str; 1] = ["lay_down"];
const BACK: [&str; 2] = ["back_cover", "back_cover_off"];
const TOP: [&str; 2] = ["top_cover_up", "top_cover"];
const PANEL: [&str; 2] = ["panel_open", "panel"];
const TUB_COVER: [&str; 2] = ["tub_cover", "tub_cover_off"];
const PULSATOR: [&str; 2] = ["pulsator_off", "pulsator"];
const BASKET: [&str; 2] = ["basket_out", "basket"];
const GUARD: [&str; 3] = ["plate_off", "bottom_guard", "bottom_guard_off"];
const BELT: [&str; 2] = ["belt_off", "belt"];
const LEVER: [&str; 2] = ["lever_unhook", "lever_unhooked"];

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

/// The name by which this machine's file knows a step.
fn step_id<'a>(input: &DrawingInput, spellings: &[&'a str]) -> &'a str {
    spellings
        .iter()
        .find(|id| input.workshop.step(id).is_some())
        .or(spellings.first())
        .copied()
        .unwrap_or_default()
}
