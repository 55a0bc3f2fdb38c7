//! The machine drawings: snapshots, and that everything a workshop names can be found in a view.

use std::collections::BTreeSet;
use std::path::PathBuf;

use tubwright::bench::workshop::Workshop;
use tubwright::drawing;
use tubwright::drawing::wiring;
use tubwright::drawing::wiring::WiringInput;
use tubwright::drawing::{Command, Drain, DrawingInput, Features, Probes, View};
use tubwright::machine::Pose;

fn features(machine: char) -> Features {
    Features {
        drain: if machine == 'N' {
            Drain::Pump
        } else {
            Drain::Gravity
        },
        command: if machine == 'T' {
            Command::Timer
        } else {
            Command::Board
        },
        hot_inlet: machine == 'N',
    }
}

fn at_rest() -> Pose {
    Pose {
        plugged: true,
        tap_open: true,
        hose_attached: true,
        lever_in_link: true,
        belt_tension_n: 65.0,
        full_stroke_m: 0.017,
        rim_m: 0.4,
        ..Pose::default()
    }
}

fn washing() -> Pose {
    Pose {
        switched_on: true,
        display_lit: true,
        level_m: 0.29,
        foam_ratio: 0.3,
        load_kg: 3.0,
        pulsator_rad: 0.7,
        motor_rad: 1.3,
        inflow_m3_per_s: 2.0e-4,
        ..at_rest()
    }
}

fn spinning() -> Pose {
    Pose {
        switched_on: true,
        display_lit: true,
        basket_rad: 0.4,
        basket_rad_per_s: 10.0,
        outflow_m3_per_s: 3.0e-4,
        level_m: 0.02,
        stroke_m: 0.017,
        swing_m: 0.01,
        ..at_rest()
    }
}

struct Case {
    name: &'static str,
    machine: char,
    view: View,
    removed: &'static [&'static str],
    pose: Pose,
}

fn cases() -> Vec<Case> {
    let case = |name, machine, view, removed, pose| Case {
        name,
        machine,
        view,
        removed,
        pose,
    };
    vec![
        case("p_outside", 'P', View::Outside, &[], at_rest()),
        case(
            "p_outside_lid_open",
            'P',
            View::Outside,
            &[],
            Pose {
                lid_open: true,
                plugged: false,
                tap_open: false,
                puddle_kg: 0.4,
                ..at_rest()
            },
        ),
        case("t_outside", 'T', View::Outside, &[], at_rest()),
        case("p_section_washing", 'P', View::Section, &[], washing()),
        case("p_section_spinning", 'P', View::Section, &[], spinning()),
        case("t_section", 'T', View::Section, &[], at_rest()),
        case("n_section_spinning", 'N', View::Section, &[], spinning()),
        case("p_opened_in_place", 'P', View::Opened, &[], at_rest()),
        case(
            "p_opened_behind",
            'P',
            View::Opened,
            &["pull_out"],
            at_rest(),
        ),
        case(
            "p_opened_back_and_top",
            'P',
            View::Opened,
            &[
                "pull_out",
                "back_cover",
                "top_cover_up",
                "pulsator_off",
                "tub_cover",
                "basket_out",
            ],
            at_rest(),
        ),
        case(
            "p_opened_lying",
            'P',
            View::Opened,
            &["pull_out", "lay_down"],
            at_rest(),
        ),
        case(
            "p_opened_lying_bare",
            'P',
            View::Opened,
            &["pull_out", "lay_down", "plate_off"],
            Pose {
                stroke_m: 0.017,
                motor_rad: 0.4,
                ..at_rest()
            },
        ),
        case("p_water_filling", 'P', View::Water, &[], washing()),
    ]
}

fn picture(case: &Case, workshop: &Workshop) -> drawing::svg::Element {
    let removed: BTreeSet<String> = case.removed.iter().map(|s| (*s).to_owned()).collect();
    drawing::draw(
        case.view,
        &DrawingInput {
            workshop,
            features: features(case.machine),
            removed: &removed,
            apart: &BTreeSet::new(),
            selected: None,
            probes: Probes::default(),
            pose: &case.pose,
            names: &drawing::plain_name,
        },
    )
}

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures/drawings")
}

/// Compares with the stored picture. `TUBWRIGHT_UPDATE_DRAWINGS=1` stores what is drawn now:
/// look at the difference before it is committed.
fn same_as_stored(name: &str, drawn: &str) {
    let file = folder().join(format!("{name}.svg"));
    let drawn = drawn.replace("><", ">\n<");
    if std::env::var_os("TUBWRIGHT_UPDATE_DRAWINGS").is_some() {
        std::fs::write(&file, &drawn).expect("the fixture folder can be written");
        return;
    }
    let stored = std::fs::read_to_string(&file).unwrap_or_default();
    assert!(
        stored == drawn,
        "{name} differs from {}; draw anew with TUBWRIGHT_UPDATE_DRAWINGS=1",
        file.display()
    );
}

#[test]
fn machines_are_drawn_as_stored() {
    let workshop = Workshop::default();
    for case in cases() {
        let drawn = picture(&case, &workshop);
        same_as_stored(case.name, &drawn.to_svg_string());
        if let Some(folder) = std::env::var_os("TUBWRIGHT_SHOW_DRAWINGS") {
            let file = PathBuf::from(folder).join(format!("{}.svg", case.name));
            std::fs::write(file, drawing::document(&drawn)).expect("the folder can be written");
        }
    }
}

/// Names of a machine's nodes as its published wiring list gives them.
const POINTS_P: &str = include_str!("fixtures/drawings/points_p.txt");

fn points(list: &str) -> Vec<(&str, &str)> {
    list.lines()
        .filter_map(|line| line.split_once('\t'))
        .collect()
}

fn set(names: &[&str]) -> BTreeSet<String> {
    names.iter().map(|name| (*name).to_owned()).collect()
}

#[test]
fn wiring_is_drawn_as_stored() {
    for (name, layout, list) in [("p_wiring", "P", POINTS_P)] {
        let drawn = wiring::draw(&WiringInput {
            layout,
            elements: &[],
            points: &points(list),
            closed: &set(&["SW1", "SLID", "SUNB", "QV"]),
            apart: &set(&["T31"]),
            selected: None,
            probes: Probes {
                red: Some("MA"),
                black: Some("MC"),
            },
            names: &drawing::plain_name,
        });
        same_as_stored(name, &drawn.to_svg_string());
        if let Some(folder) = std::env::var_os("TUBWRIGHT_SHOW_DRAWINGS") {
            let file = PathBuf::from(folder).join(format!("{name}.svg"));
            std::fs::write(file, drawing::document(&drawn)).expect("the folder can be written");
        }
    }
}
