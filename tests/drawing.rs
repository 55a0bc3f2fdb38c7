//! The machine drawings: snapshots, and that everything a workshop names can be found in a view.

use std::collections::BTreeSet;
use std::path::PathBuf;

use tubwright::bench::workshop::Workshop;
use tubwright::drawing;
use tubwright::drawing::{DrawingInput, Features, KINDS, Probes, View};
use tubwright::machine::Pose;
use tubwright::scenario;

fn workshop(machine: char) -> Workshop {
    let files = scenario::machine_files().expect("the files that ship are sound");
    let wanted = machine.to_string();
    let file = files.iter().find(|file| file.id == wanted);
    file.expect("the machine ships").workshop.to_plain()
}

/// Names replaced by ids: a stored picture shall not change with a word.
fn without_names(mut known: Workshop) -> Workshop {
    for part in &mut known.parts {
        part.name.clone_from(&part.id);
    }
    for place in &mut known.places {
        place.name.clone_from(&place.id);
    }
    for step in &mut known.steps {
        step.name.clone_from(&step.id);
    }
    for connector in &mut known.connectors {
        connector.name.clone_from(&connector.id);
    }
    for point in &mut known.test_points {
        point.name.clone_from(&point.node);
    }
    known
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
        outlet_m: -0.15,
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
            features: Features::of(workshop),
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
    for case in cases() {
        let drawn = picture(&case, &without_names(workshop(case.machine)));
        same_as_stored(case.name, &drawn.to_svg_string());
        show(case.name, &drawn);
    }
}

/// Ids of everything a picture offers to the hand.
fn offered(drawing: &drawing::svg::Element) -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    drawing.walk(&mut |element| {
        for kind in KINDS {
            ids.extend(element.attribute(kind).map(str::to_owned));
        }
    });
    ids
}

/// All that some view shows: with nothing off, with everything off, and laid down.
fn shown_somewhere(machine: char) -> BTreeSet<String> {
    let known = workshop(machine);
    let mut shown = BTreeSet::new();
    const STANDING: &[&str] = &[
        "pull_out",
        "back_cover",
        "top_cover_up",
        "panel_open",
        "tub_cover",
        "pulsator_off",
    ];
    const LYING: &[&str] = &["pull_out", "lay_down", "plate_off"];
    for view in View::ALL {
        for removed in [&[][..], STANDING, LYING] {
            let case = Case {
                name: "",
                machine,
                view,
                removed,
                pose: at_rest(),
            };
            shown.append(&mut offered(&picture(&case, &known)));
        }
    }
    shown
}

#[test]
fn every_part_place_connector_and_point_can_be_found_in_a_view() {
    for machine in ['P', 'T', 'N'] {
        let known = workshop(machine);
        let shown = shown_somewhere(machine);
        let parts = known.parts.iter().map(|part| &part.id);
        let places = known.places.iter().map(|place| &place.id);
        let connectors = known.connectors.iter().map(|connector| &connector.id);
        let points = known.test_points.iter().map(|point| &point.node);
        let missing: Vec<&String> = parts
            .chain(places)
            .chain(connectors)
            .chain(points)
            .filter(|id| !shown.contains(*id))
            .collect();
        assert!(missing.is_empty(), "machine {machine} shows no {missing:?}");
    }
}

#[test]
fn the_section_has_a_shape_for_everything_of_the_machines_that_ship() {
    for machine in ['P', 'T', 'N'] {
        let case = Case {
            name: "",
            machine,
            view: View::Section,
            removed: &[],
            pose: at_rest(),
        };
        let drawn = picture(&case, &workshop(machine));
        drawn.walk(&mut |element| {
            assert_ne!(
                element.attribute("class"),
                Some("tray"),
                "machine {machine} needs a tray"
            );
        });
    }
}

#[test]
fn a_part_nobody_drew_lies_on_the_tray() {
    let mut known = workshop('P');
    known.parts[0].id = "heat_exchanger".to_owned();
    let case = Case {
        name: "",
        machine: 'P',
        view: View::Section,
        removed: &[],
        pose: at_rest(),
    };
    assert!(offered(&picture(&case, &known)).contains("heat_exchanger"));
}

/// Writes a picture with its styles where somebody wants to look at it.
fn show(name: &str, drawn: &drawing::svg::Element) {
    if let Some(folder) = std::env::var_os("TUBWRIGHT_SHOW_DRAWINGS") {
        let file = PathBuf::from(folder).join(format!("{name}.svg"));
        std::fs::write(file, drawing::document(drawn)).expect("the folder can be written");
    }
}
