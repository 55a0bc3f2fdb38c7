//! Cases of the rules about tests, hand-over and leaving.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "handed_over_failed_earth",
        Act::HandOver,
        |s| s.tests.earth_bond_ohm = Some(0.8),
        |s| s.tests.earth_bond_ohm = Some(0.05),
    ),
    Case(
        "handed_over_failed_insulation",
        Act::HandOver,
        |s| s.tests.insulation_ohm = Some(0.2e6),
        |s| s.tests.insulation_ohm = Some(5.0e6),
    ),
    Case(
        "handed_over_failed_leakage",
        Act::HandOver,
        |s| s.tests.leakage_a = Some(11.5e-3),
        |s| s.tests.leakage_a = Some(0.25e-3),
    ),
    Case(
        "no_earth_test",
        Act::HandOver,
        |s| s.tests.earth_bond_ohm = None,
        |s| {
            s.tests.earth_bond_ohm = None;
            s.tests.work_was_done = false;
        },
    ),
    Case(
        "no_insulation_test",
        Act::HandOver,
        |s| {
            s.tests.insulation_ohm = None;
            s.tests.leakage_a = None;
        },
        |s| s.tests.insulation_ohm = None,
    ),
    Case(
        "no_functional_run",
        Act::HandOver,
        |s| s.tests.function_was_run = false,
        |s| {
            s.tests.function_was_run = false;
            s.tests.is_put_out_of_use = true;
        },
    ),
    Case(
        "lid_stop_not_tried",
        Act::HandOver,
        |s| {
            s.tests.lid_stop_matters = true;
            s.tests.lid_stop_was_tried = false;
        },
        |s| s.tests.lid_stop_was_tried = false,
    ),
    Case(
        "left_covers_off",
        Act::LeaveUntil,
        |s| s.machine.n_covers_off = 1,
        |_| {},
    ),
    Case(
        "left_earth_off",
        Act::LeaveUntil,
        |s| s.machine.n_earth_links_off = 1,
        |_| {},
    ),
    Case(
        "left_fasteners",
        Act::HandOver,
        |s| s.machine.n_fasteners_left = 2,
        |_| {},
    ),
    Case(
        "left_unfinished_plugged",
        Act::LeaveUntil,
        |s| s.supply.is_plugged = true,
        |_| {},
    ),
    Case(
        "left_loose_items",
        Act::HandOver,
        |s| s.machine.has_loose_items = true,
        |_| {},
    ),
    Case(
        "socket_not_tested",
        Act::HandOver,
        |s| s.site.socket_was_tested = false,
        |_| {},
    ),
    Case(
        "left_on_missing_earth",
        Act::HandOver,
        |s| {
            s.supply.is_plugged = true;
            s.site.earth_is_known_missing = true;
        },
        |s| s.site.earth_is_known_missing = true,
    ),
    Case(
        "house_defect_not_told",
        Act::HandOver,
        |s| s.site.has_seen_house_defect = true,
        |s| {
            s.site.has_seen_house_defect = true;
            s.site.house_defect_was_told = true;
        },
    ),
    Case(
        "left_unlabelled",
        Act::LeaveUntil,
        |s| s.tests.is_labelled = false,
        |_| {},
    ),
];
