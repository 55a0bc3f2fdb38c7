//! Cases of the rules about instruments.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::ProbeMode;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "ohms_on_live",
        Act::Measure,
        |s| {
            s.probe.mode = ProbeMode::Ohms;
            s.probe.voltage_v = 230.0;
        },
        |s| {
            s.probe.mode = ProbeMode::Ohms;
            s.probe.voltage_v = 0.2;
        },
    ),
    Case(
        "amperes_across_voltage",
        Act::Measure,
        |s| {
            s.probe.mode = ProbeMode::Amperes;
            s.probe.voltage_v = 230.0;
        },
        |s| {
            s.probe.mode = ProbeMode::Clamp;
            s.probe.voltage_v = 230.0;
        },
    ),
    Case(
        "category_too_low",
        Act::Measure,
        |s| {
            s.probe.category = 1;
            s.probe.voltage_v = 230.0;
        },
        |s| s.probe.category = 1,
    ),
    Case(
        "damaged_leads",
        Act::Measure,
        |s| {
            s.probe.leads_are_damaged = true;
            s.probe.voltage_v = 230.0;
        },
        |s| s.probe.voltage_v = 230.0,
    ),
    Case(
        "instrument_not_checked",
        Act::Measure,
        |s| s.probe.was_checked = false,
        |_| {},
    ),
    Case(
        "needless_live_probe",
        Act::Measure,
        |s| {
            s.probe.voltage_v = 230.0;
            s.probe.dead_test_would_do = true;
            s.supply.is_plugged = true;
        },
        |s| {
            s.probe.dead_test_would_do = true;
            s.supply.is_plugged = true;
        },
    ),
    Case(
        "live_probe_on_wet_floor",
        Act::Measure,
        |s| {
            s.probe.voltage_v = 230.0;
            s.supply.is_plugged = true;
            s.water.floor_is_wet = true;
        },
        |s| s.water.floor_is_wet = true,
    ),
    Case(
        "insulation_test_plugged",
        Act::Measure,
        |s| {
            s.probe.mode = ProbeMode::Insulation;
            s.supply.is_plugged = true;
        },
        |s| s.probe.mode = ProbeMode::Insulation,
    ),
    Case(
        "insulation_test_across_board",
        Act::Measure,
        |s| {
            s.probe.mode = ProbeMode::Insulation;
            s.probe.spans_electronics = true;
        },
        |s| s.probe.spans_electronics = true,
    ),
];
