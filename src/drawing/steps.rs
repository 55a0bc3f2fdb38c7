//! The steps a picture knows, by the names a machine's file may give them: by object or by act.

use crate::drawing::input::{DrawingInput, View};

/// The machine is pulled out and turned round.
pub const PULLED_OUT: [&str; 1] = ["pull_out"];
/// It lies on its front.
pub const LAID_DOWN: [&str; 1] = ["lay_down"];
/// The back cover is off.
pub const BACK: [&str; 2] = ["back_cover", "back_cover_off"];
/// The top cover is up.
pub const TOP: [&str; 2] = ["top_cover_up", "top_cover"];
/// The panel is open.
pub const PANEL: [&str; 2] = ["panel_open", "panel"];
/// The tub cover is off.
pub const TUB_COVER: [&str; 2] = ["tub_cover", "tub_cover_off"];
/// The pulsator is off.
pub const PULSATOR: [&str; 2] = ["pulsator_off", "pulsator"];
/// The basket is out.
pub const BASKET: [&str; 2] = ["basket_out", "basket"];
/// The bottom guard is off.
pub const GUARD: [&str; 3] = ["plate_off", "bottom_guard", "bottom_guard_off"];
/// The belt is off.
pub const BELT: [&str; 2] = ["belt_off", "belt"];
/// The lever is out of its link.
pub const LEVER: [&str; 2] = ["lever_unhook", "lever_unhooked"];

/// The picture shows the machine shut and in its place.
pub fn is_shut(input: &DrawingInput, view: View) -> bool {
    match view {
        View::Outside => true,
        View::Opened => !input.is_off(&PULLED_OUT) && !input.is_off(&LAID_DOWN),
        View::Section | View::Water => false,
    }
}

/// The name by which this machine's file knows a step.
pub fn step_id<'a>(input: &DrawingInput, spellings: &[&'a str]) -> &'a str {
    spellings
        .iter()
        .find(|id| input.workshop.step(id).is_some())
        .or(spellings.first())
        .copied()
        .unwrap_or_default()
}
