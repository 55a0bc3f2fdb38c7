//! The mechanical fault catalogue, row by row, as changes of plant parameters.
//!
//! Source: fault catalogue of the plant, rows 1 to 82 and the trade's additions. The shipped
//! catalogue is data; this list proves that the plant has a parameter for each row.

use tubwright::plant::faults::ChangeTo::{self, Scale, Set};

/// Rows whose change lies in the harness: sensor plug, supply and capacitor, lid and lid
/// switch, earth wire.
pub const ELECTRICAL: [u32; 8] = [19, 54, 55, 56, 60, 79, 80, 81];

type Changes = Vec<(&'static str, ChangeTo)>;

pub fn mechanical_faults() -> Vec<(u32, Changes)> {
    let mut rows = water_side();
    rows.extend(drive_side());
    rows.extend(body_side());
    rows
}

fn water_side() -> Vec<(u32, Changes)> {
    vec![
        (1, vec![("inlet.tap_closed_ratio", Set(1.0))]),
        (2, vec![("inlet.hose_kinked_ratio", Set(0.95))]),
        (3, vec![("inlet.strainer_blocked_ratio", Set(0.9))]),
        (4, vec![("inlet.strainer_blocked_ratio", Set(0.97))]),
        (5, vec![("inlet.supply_pa", Set(30_000.0))]),
        (
            6,
            vec![
                ("inlet.supply_pa", Set(10_000.0)),
                ("inlet.leak_by_m3_per_s", Set(1e-6)),
            ],
        ),
        (7, vec![("inlet.valve_m3_per_s_sqrt_pa", Set(0.0))]),
        (8, vec![("inlet.leak_by_m3_per_s", Set(0.3 / 6e4))]),
        (9, vec![("inlet.leak_by_m3_per_s", Set(2.0 / 6e4))]),
        (10, vec![("inlet.regulator_m3_per_s", Set(60.0 / 6e4))]),
        (
            11,
            vec![
                ("inlet.closing_s", Set(0.005)),
                ("inlet.pipe_m", Set(10.0)),
                ("inlet.wave_m_per_s", Set(1300.0)),
            ],
        ),
        (12, vec![("inlet.joint_leak_m3_per_s", Set(2e-6))]),
        (13, vec![("trap.leak_m3_per_s_pa", Set(1e-10))]),
        (14, vec![("trap.leak_m3_per_s_pa", Set(1e-11))]),
        (15, vec![("trap.leak_m3_per_s_pa", Set(1e-8))]),
        (16, vec![("trap.lag_s", Set(1e9))]),
        (17, vec![("trap.lag_s", Set(30.0))]),
        (18, vec![("sensor.coil_h", Scale(0.96))]),
        (20, vec![("level_switch.stuck_full_ratio", Set(1.0))]),
        (21, vec![("drain.open_ratio", Set(0.2))]),
        (22, vec![("drain.open_ratio", Set(0.07))]),
        (23, vec![("drain.open_ratio", Set(0.12))]),
        (24, vec![("drain.outlet_m", Set(0.10))]),
        (25, vec![("drain.leak_m3_per_s", Set(1.0 / 6e4))]),
        (26, vec![("drain.leak_m3_per_s", Set(6.0 / 6e4))]),
        (27, vec![("actuator.pull_m_per_s", Set(0.0))]),
        (28, vec![("actuator.stroke_m", Set(0.010))]),
        (29, vec![("drain.open_ratio", Set(0.0))]),
        (
            30,
            vec![
                ("drain.outlet_m", Set(-0.10)),
                ("drain.pump_fitted_ratio", Set(1.0)),
            ],
        ),
        (
            31,
            vec![
                ("drain.open_ratio", Set(0.3)),
                ("drain.outlet_m", Set(0.05)),
            ],
        ),
        (32, vec![("drain.joint_leak_ratio", Set(0.05))]),
    ]
}

fn drive_side() -> Vec<(u32, Changes)> {
    vec![
        (33, vec![("belt.tension_n", Set(25.0))]),
        (34, vec![("belt.tension_n", Set(12.0))]),
        (35, vec![("belt.tension_n", Set(0.0))]),
        (36, vec![("belt.tension_n", Set(200.0))]),
        (
            37,
            vec![
                ("belt.friction_ratio", Set(0.08)),
                ("belt.wet_ratio", Set(1.0)),
            ],
        ),
        (38, vec![("belt.pulley_grip_n_m", Set(0.5))]),
        (39, vec![("pulsator.spline_n_m", Set(3.0))]),
        (40, vec![("pulsator.play_rad", Set(0.2))]),
        (
            41,
            vec![
                ("load.textile_n_m_per_kg", Set(8.0)),
                ("pulsator.scrape_n_m", Set(10.0)),
            ],
        ),
        (
            42,
            vec![
                ("gear.efficiency_ratio", Set(0.75)),
                ("gear.worn_ratio", Set(1.0)),
            ],
        ),
        (43, vec![("lever.seated_ratio", Set(0.0))]),
        (44, vec![("lever.play_m", Set(0.008))]),
        (45, vec![("clutch.torque_n_m", Set(1.0))]),
        (46, vec![("lever.bent_m", Set(0.011))]),
        (
            47,
            vec![("brake.stop_n_m", Set(2.0)), ("brake.hold_n_m", Set(3.0))],
        ),
        (48, vec![("clutch.one_way_n_m", Set(0.3))]),
        (
            49,
            vec![("brake.hold_n_m", Set(0.3)), ("brake.stop_n_m", Set(0.3))],
        ),
        (50, vec![("brake.free_m", Set(0.016))]),
        (51, vec![("brake.free_m", Set(0.025))]),
        (
            52,
            vec![
                ("tub.seal_leak_m3_per_s", Set(1e-6)),
                ("basket.bearing_n_m", Set(0.6)),
            ],
        ),
        (53, vec![("gear.bolts_play_rad", Set(0.15))]),
        (57, vec![("rotor.friction_n_m", Set(0.8))]),
        (
            58,
            vec![
                ("heat.core_air_w_per_k", Scale(0.4)),
                ("heat.fan_w_per_k", Scale(0.13)),
            ],
        ),
        (
            59,
            vec![("heat.trip_k", Set(348.15)), ("heat.reset_k", Set(333.15))],
        ),
    ]
}

fn body_side() -> Vec<(u32, Changes)> {
    vec![
        (61, vec![("basket.bearing_n_m", Set(1.5))]),
        (62, vec![("basket.bearing_n_m", Set(3.0))]),
        (63, vec![("basket.loose_kg_m", Set(0.1))]),
        (64, vec![("basket.scrape_n_m", Set(0.3))]),
        (
            65,
            vec![
                ("load.unbalance_kg", Set(1.5)),
                ("load.spread_ratio", Set(1.0)),
            ],
        ),
        (66, vec![("load.unbalance_kg", Set(1.5))]),
        (67, vec![("ring.fill_ratio", Set(0.0))]),
        (
            68,
            vec![
                ("suspension.damping_ratio", Set(0.02)),
                ("suspension.swing_friction_n", Set(0.5)),
                ("suspension.rock_friction_n_m", Set(0.1)),
            ],
        ),
        (69, vec![("suspension.lean_m", Set(0.017))]),
        (70, vec![("suspension.lean_m", Set(0.040))]),
        (
            71,
            vec![(
                "site.floor_tilt_rad",
                Set(2.0 * std::f64::consts::PI / 180.0),
            )],
        ),
        (72, vec![("suspension.lever_gap_m", Set(-1.0))]),
        (73, vec![("suspension.lever_gap_m", Set(9.0))]),
        (74, vec![("suspension.locked_ratio", Set(1.0))]),
        (75, vec![("site.foot_firm_ratio", Set(0.5))]),
        (76, vec![("foam.detergent_ratio", Set(1.0))]),
        (77, vec![("load.dry_kg", Set(10.0))]),
        (78, vec![("load.dry_kg", Set(13.0))]),
        (82, vec![("belt.guard_fitted_ratio", Set(0.0))]),
    ]
}
