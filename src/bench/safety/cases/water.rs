//! Cases of the rules about taps, hoses and tubs.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "inlet_hose_tap_open",
        Act::PullInletHose,
        |s| s.water.tap_is_open = true,
        |_| {},
    ),
    Case(
        "inlet_hose_under_pressure",
        Act::PullInletHose,
        |s| s.water.hose_pressure_is_released = false,
        |_| {},
    ),
    Case(
        "tap_opened_hose_off",
        Act::OpenTap,
        |s| s.water.inlet_hose_is_on = false,
        |_| {},
    ),
    Case(
        "water_let_out_on_floor",
        Act::PullDrainHose,
        |s| s.water.has_catch_tray = false,
        |_| {},
    ),
    Case(
        "tilted_full",
        Act::Tilt,
        |s| s.water.tub_m3 = 0.052,
        |s| s.water.tub_m3 = 0.001,
    ),
    Case(
        "hot_water_let_out",
        Act::PullDrainHose,
        |s| {
            s.water.tub_m3 = 0.04;
            s.water.tub_temperature_k = 333.15;
        },
        |s| s.water.tub_m3 = 0.04,
    ),
    Case(
        "sealant_not_set",
        Act::Start,
        |s| {
            s.supply.is_plugged = true;
            s.supply.is_switched_on = true;
            s.water.tap_is_open = true;
            s.water.sealant_has_set = false;
        },
        |s| s.water.sealant_has_set = false,
    ),
    Case(
        "water_test_unsealed",
        Act::OpenTap,
        |s| s.machine.n_unsealed_joints = 1,
        |_| {},
    ),
    Case(
        "left_unsealed",
        Act::HandOver,
        |s| s.machine.has_weeping_joint = true,
        |s| {
            s.machine.has_weeping_joint = true;
            s.tests.is_put_out_of_use = true;
        },
    ),
    Case(
        "joint_not_tried",
        Act::HandOver,
        |s| {
            s.tests.joint_was_opened = true;
            s.tests.joints_were_tried = false;
        },
        |s| s.tests.joints_were_tried = false,
    ),
    Case(
        "left_tap_open",
        Act::LeaveUntil,
        |s| s.water.tap_is_open = true,
        |_| {},
    ),
    Case(
        "left_floor_wet",
        Act::HandOver,
        |s| s.water.floor_is_wet = true,
        |_| {},
    ),
];
