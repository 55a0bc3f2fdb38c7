//! Cases of the rules about baskets, belts and interlocks.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "hand_in_fast_basket",
        Act::ReachIntoBasket,
        |s| s.motion.basket_rad_per_s = 30.0,
        |s| s.motion.basket_rad_per_s = 3.0,
    ),
    Case(
        "hand_in_turning_basket",
        Act::ReachIntoBasket,
        |s| s.motion.basket_rad_per_s = -3.0,
        |s| s.motion.basket_rad_per_s = 0.1,
    ),
    Case(
        "hand_at_turning_drive",
        Act::ReachInside,
        |s| s.motion.motor_rad_per_s = 150.0,
        |s| s.motion.basket_rad_per_s = 1.0,
    ),
    Case(
        "lid_bridged",
        Act::BridgeLid,
        |_| {},
        |s| s.act = Act::Measure,
    ),
    Case(
        "run_open_with_bridge",
        Act::Start,
        |s| {
            s.machine.lid_is_bridged = true;
            s.machine.lid_is_open = true;
        },
        |s| s.machine.lid_is_bridged = true,
    ),
    Case(
        "left_with_bridge",
        Act::HandOver,
        |s| s.machine.lid_is_bridged = true,
        |s| s.machine.lid_is_open = true,
    ),
    Case(
        "left_spinning_open",
        Act::HandOver,
        |s| s.machine.was_seen_spinning_open = true,
        |s| {
            s.machine.was_seen_spinning_open = true;
            s.tests.is_put_out_of_use = true;
        },
    ),
    Case(
        "started_with_loose_items",
        Act::Start,
        |s| {
            s.supply.is_plugged = true;
            s.machine.has_loose_items = true;
        },
        |s| s.machine.has_loose_items = true,
    ),
    Case(
        "bystander_near",
        Act::Start,
        |s| {
            s.supply.is_plugged = true;
            s.machine.n_covers_off = 1;
            s.site.has_bystander = true;
        },
        |s| {
            s.supply.is_plugged = true;
            s.site.has_bystander = true;
        },
    ),
];
