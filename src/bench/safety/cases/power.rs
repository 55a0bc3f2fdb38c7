//! Cases of the rules about what is energised.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "energised_earth_off",
        Act::Start,
        |s| {
            s.supply.is_plugged = true;
            s.machine.n_earth_links_off = 1;
        },
        |s| s.supply.is_plugged = true,
    ),
    Case(
        "energised_wet",
        Act::PlugIn,
        |s| {
            s.supply.is_plugged = true;
            s.machine.has_wet_electrics = true;
        },
        |s| s.supply.is_plugged = true,
    ),
    Case(
        "energised_after_failed_test",
        Act::PlugIn,
        |s| {
            s.supply.is_plugged = true;
            s.tests.insulation_ohm = Some(1511.0);
        },
        |s| {
            s.supply.is_plugged = true;
            s.tests.earth_bond_ohm = Some(0.29);
        },
    ),
    Case(
        "energised_before_earth_test",
        Act::SwitchOn,
        |s| {
            s.supply.is_plugged = true;
            s.tests.earth_bond_ohm = None;
        },
        |s| {
            s.supply.is_plugged = true;
            s.tests.earth_bond_ohm = None;
            s.tests.work_was_done = false;
        },
    ),
    Case(
        "energised_on_wet_floor",
        Act::PlugIn,
        |s| {
            s.supply.is_plugged = true;
            s.water.floor_is_wet = true;
        },
        |s| s.water.floor_is_wet = true,
    ),
    Case(
        "energised_without_house_earth",
        Act::Start,
        |s| {
            s.supply.is_plugged = true;
            s.site.earth_is_known_missing = true;
        },
        |s| s.supply.is_plugged = true,
    ),
    Case(
        "scorched_socket_used",
        Act::HandOver,
        |s| {
            s.supply.is_plugged = true;
            s.site.socket_is_seen_scorched = true;
        },
        |s| s.site.socket_is_seen_scorched = true,
    ),
    Case(
        "reset_without_cause",
        Act::ResetDevice,
        |s| s.supply.has_tripped_unexplained = true,
        |_| {},
    ),
    Case(
        "fuse_oversized",
        Act::HandOver,
        |s| s.machine.fuse_is_oversized = true,
        |_| {},
    ),
    Case(
        "capacitor_underrated",
        Act::LeaveUntil,
        |s| s.machine.capacitor_is_underrated = true,
        |_| {},
    ),
    Case(
        "house_wiring_worked_on",
        Act::WorkOnHouseWiring,
        |_| {},
        |s| s.act = Act::Other,
    ),
    Case(
        "danger_ignored",
        Act::Measure,
        |s| s.site.danger_is_noticed = true,
        |s| {
            s.act = Act::LeaveUntil;
            s.site.danger_is_noticed = true;
        },
    ),
];
