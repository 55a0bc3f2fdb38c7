//! Cases of the rules about weight, edges and heat.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "tilted_alone",
        Act::Tilt,
        |s| s.handling.has_help_or_strap = false,
        |_| {},
    ),
    Case(
        "floor_unprotected",
        Act::Tilt,
        |s| s.handling.floor_is_protected = false,
        |_| {},
    ),
    Case(
        "reached_under_unpropped",
        Act::ReachInside,
        |s| {
            s.handling.is_tilted = true;
            s.handling.is_propped = false;
        },
        |s| s.handling.is_tilted = true,
    ),
    Case(
        "top_not_supported",
        Act::ReachInside,
        |s| s.handling.cover_is_supported = false,
        |_| {},
    ),
    Case(
        "cut_by_edges",
        Act::TakeOff,
        |s| {
            s.touched.has_sharp_edges = true;
            s.handling.has_gloves = false;
        },
        |s| s.touched.has_sharp_edges = true,
    ),
    Case(
        "hot_part_touched",
        Act::Touch,
        |s| s.touched.temperature_k = 373.15,
        |s| s.touched.temperature_k = 313.15,
    ),
];
