//! Whole cycles with one fault each, against the fault catalogue's computed signatures.
//!
//! Source: 73 whole cycles of an independent program in another language (fault signatures of
//! the plant's fault catalogue), same equations, other integration steps.

use tubwright::plant::params::PlantParams;

use crate::cycle::{Record, run};
use crate::machine::reference;
use crate::motor::{Capacitor, StandIn};

/// Runs a cycle with parameters changed by name.
fn with(changes: &[(&str, f64)]) -> Record {
    with_motor(changes, StandIn::healthy())
}

fn with_motor(changes: &[(&str, f64)], motor: StandIn) -> Record {
    let mut p: PlantParams = reference();
    for (name, value) in changes {
        p.set(name, *value).unwrap_or_else(|e| panic!("{e}"));
    }
    run(p, &motor.table())
}

fn assert_close(what: &str, got: f64, want: f64, allowed: f64, r: &Record) {
    assert!(
        (got - want).abs() <= allowed,
        "{what}: {got} instead of {want}\n{r:?}"
    );
}

#[test]
fn a_closed_tap_ends_in_fills_too_slowly() {
    let r = with(&[("inlet.tap_closed_ratio", 1.0)]);
    assert_eq!(r.end, "Fills too slowly");
    assert_close("end", r.end_s, 1203.0, 2.0, &r);
}

#[test]
fn a_blocked_strainer_fills_slowly_and_all_else_is_normal() {
    let r = with(&[("inlet.strainer_blocked_ratio", 0.9)]);
    assert_close("fill", r.fill_s, 383.0, 2.0, &r);
    assert_close("cycle", r.end_s, 3447.0, 6.0, &r);
}

#[test]
fn a_pinhole_in_the_air_hose_uses_a_lot_of_water() {
    let r = with(&[("trap.leak_m3_per_s_pa", 1e-10)]);
    assert_close("level", r.level_after_fill_m, 0.320, 0.003, &r);
    assert_close("water", r.water_l, 289.0, 6.0, &r);
    assert_eq!(r.n_topups, 4, "{r:?}");
}

#[test]
fn an_air_hose_off_its_sensor_fills_to_the_overflow() {
    let r = with(&[("trap.leak_m3_per_s_pa", 1e-8)]);
    assert_eq!(r.end, "Fills too slowly");
    assert_close("water", r.water_l, 240.0, 1.0, &r);
}

#[test]
fn a_leaking_inlet_valve_ends_in_overflow_danger() {
    let r = with(&[("inlet.leak_by_m3_per_s", 2.0 / 6e4)]);
    assert_eq!(r.end, "Overflow danger");
    assert_close("end", r.end_s, 751.0, 5.0, &r);
}

#[test]
fn a_half_blocked_drain_drains_slowly_and_a_high_hose_not_at_all() {
    let r = with(&[("drain.open_ratio", 0.2)]);
    assert_close("drain", r.drain_s, 244.0, 2.0, &r);
    let r = with(&[("drain.outlet_m", 0.10)]);
    assert_eq!(r.end, "Drains too slowly");
}

#[test]
fn a_low_hose_without_air_break_siphons_on_the_pump_variant() {
    let r = with(&[("drain.pump_fitted_ratio", 1.0), ("drain.outlet_m", -0.10)]);
    assert_close("fill", r.fill_s, 434.0, 4.0, &r);
    assert_close("water", r.water_l, 379.0, 6.0, &r);
}

#[test]
fn a_lever_out_of_its_link_drains_but_does_not_spin() {
    let r = with(&[("lever.seated_ratio", 0.0)]);
    assert_close("drain", r.drain_s, 115.0, 1.0, &r);
    assert_close("spin", r.spin_rpm, 0.0, 1.0, &r);
    assert_close("moisture", r.moisture, 2.2, 0.01, &r);
    assert_close("current", r.spin_line_a, 1.20, 0.02, &r);
}

#[test]
fn a_loose_belt_slips_in_wash_and_spin() {
    let r = with(&[("belt.tension_n", 12.0)]);
    assert_close("pulsator", r.pulsator_rpm, 120.0, 3.0, &r);
    assert_close("spin", r.spin_rpm, 615.0, 3.0, &r);
    assert_close("moisture", r.moisture, 0.95, 0.01, &r);
}

#[test]
fn a_belt_that_is_off_leaves_the_motor_alone() {
    let r = with(&[("belt.tension_n", 0.0)]);
    assert_close("motor", r.motor_rpm, 1492.0, 4.0, &r);
    assert_close("pulsator", r.pulsator_rpm, 0.0, 0.5, &r);
    assert_close("spin", r.spin_rpm, 0.0, 1.5, &r);
}

#[test]
fn a_worn_spline_hurts_wash_only_and_a_worn_clutch_spin_only() {
    let r = with(&[("pulsator.spline_n_m", 3.0)]);
    // The other program smooths the slipping spline over longer steps.
    assert_close("pulsator", r.pulsator_rpm, 46.0, 6.0, &r);
    assert_close("motor", r.motor_rpm, 1469.0, 3.0, &r);
    assert_close("spin", r.spin_rpm, 769.0, 1.5, &r);
    let r = with(&[("clutch.torque_n_m", 1.0)]);
    assert_close("pulsator", r.pulsator_rpm, 149.0, 1.0, &r);
    assert_close("spin", r.spin_rpm, 589.0, 3.0, &r);
}

#[test]
fn worn_holds_let_the_basket_creep() {
    let r = with(&[("clutch.one_way_n_m", 0.3)]);
    assert_close("creep", r.creep_rpm, 42.5, 2.0, &r);
    let r = with(&[("brake.hold_n_m", 0.3)]);
    assert_close("creep", r.creep_rpm, 40.6, 2.0, &r);
}

#[test]
fn a_seized_basket_bearing_stalls_the_motor_until_its_protector_opens() {
    let r = with(&[("basket.bearing_n_m", 3.0)]);
    assert!(r.spin_rpm < 3.0 && r.n_trips == 3, "{r:?}");
    assert_close("current", r.spin_line_a, 4.34, 0.02, &r);
    assert_close("hottest", r.hottest_degc, 140.0, 2.0, &r);
}

#[test]
fn an_open_capacitor_moves_nothing_and_an_aged_one_runs_hot() {
    let open = StandIn {
        capacitor: Capacitor::Open,
        ..StandIn::healthy()
    };
    let r = with_motor(&[], open);
    assert!(
        r.pulsator_rpm < 0.5 && r.spin_rpm < 0.5 && r.n_trips == 5,
        "{r:?}"
    );
    let aged = StandIn {
        capacitor: Capacitor::Farad(8e-6),
        ..StandIn::healthy()
    };
    let r = with_motor(&[], aged);
    assert_close("current", r.wash_line_a, 3.04, 0.06, &r);
    assert_close("hottest", r.hottest_degc, 112.0, 2.0, &r);
}

#[test]
fn foam_slows_the_spin() {
    let r = with(&[("foam.detergent_ratio", 1.0)]);
    assert_close("spin", r.spin_rpm, 673.0, 4.0, &r);
    assert_close("moisture", r.moisture, 0.86, 0.01, &r);
}

#[test]
fn one_heavy_item_keeps_swinging_and_a_loose_load_spreads() {
    let r = with(&[("load.unbalance_kg", 1.5), ("load.spread_ratio", 1.0)]);
    assert_eq!(
        (r.end, r.n_unbalance),
        ("Basket keeps swinging", 4),
        "{r:?}"
    );
    // Whether the first or the second push of step spin trips it decides 12 s of each try.
    assert_close("end", r.end_s, 2007.0, 50.0, &r);
    let r = with(&[("load.unbalance_kg", 1.5), ("load.spread_ratio", 0.5)]);
    assert_eq!((r.end, r.n_unbalance), ("END", 1), "{r:?}");
}

#[test]
fn a_stuck_lever_switch_never_lets_it_spin_and_a_dead_one_lets_it_bang() {
    let r = with(&[("suspension.lever_gap_m", -1.0)]);
    assert_eq!(r.end, "Basket keeps swinging");
    let r = with(&[("suspension.lever_gap_m", 9.0), ("load.unbalance_kg", 1.5)]);
    assert_close("rim", r.rim_mm, 40.3, 1.0, &r);
}

#[test]
fn an_overload_turns_little_and_overheats() {
    let r = with(&[("load.dry_kg", 10.0)]);
    // The other program smooths the jammed textile; the reference row at t = 1.4 s decides here.
    assert!(r.pulsator_rpm < 110.0, "{r:?}");
    assert_close("current", r.wash_line_a, 4.22, 0.05, &r);
    assert_close("hottest", r.hottest_degc, 133.0, 2.0, &r);
    assert_eq!(r.n_trips, 3, "{r:?}");
}
