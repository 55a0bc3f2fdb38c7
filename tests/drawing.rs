//! The machine drawings: snapshots, and that everything a workshop names can be found in a view.

use std::collections::BTreeSet;
use std::path::PathBuf;

use serde_json::Value;
use tubwright::bench::workshop::{Connector, Part, Place, Step, TestPoint, Workshop};
use tubwright::drawing;
use tubwright::drawing::wiring;
use tubwright::drawing::wiring::{Symbol, WiringElement, WiringInput};
use tubwright::drawing::{DrawingInput, Features, KINDS, Probes, View};
use tubwright::machine::Pose;

/// The parts of a machine's file that a drawing reads. The scenario module reads all of it; a
/// picture must not depend on that.
fn workshop(machine: char) -> Workshop {
    let name = format!("scenarios/machines/{}.json", machine.to_ascii_lowercase());
    let file = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(name);
    let text = std::fs::read_to_string(file).expect("the machine's file is there");
    let whole: Value = serde_json::from_str(&text).expect("the machine's file is JSON");
    let list = |key: &str| {
        let found = whole["workshop"][key].as_array().cloned();
        found.expect("the machine's file lists its parts, places and points")
    };
    let word = |item: &Value, key: &str| item[key].as_str().unwrap_or_default().to_owned();
    let words = |item: &Value, key: &str| -> Vec<String> {
        let list = item[key].as_array().cloned().unwrap_or_default();
        list.iter()
            .filter_map(|word| word.as_str().map(str::to_owned))
            .collect()
    };
    Workshop {
        steps: list("steps")
            .iter()
            .map(|item| Step {
                id: word(item, "id"),
                name: word(item, "name"),
                verb: word(item, "verb"),
                refit_verb: word(item, "refit_verb"),
                needs: words(item, "needs"),
                tools: Vec::new(),
                fasteners: word(item, "fasteners"),
                off_s: 0.0,
                on_s: 0.0,
                caution: String::new(),
                refit_check: String::new(),
                while_off: Vec::new(),
                mistake: None,
                opens_live_parts: false,
                moves_machine: false,
                needs_help: false,
                lays_down: false,
            })
            .collect(),
        parts: list("parts")
            .iter()
            .map(|item| Part {
                id: word(item, "id"),
                name: word(item, "name"),
                designation: word(item, "designation"),
                price: 0.0,
                does: String::new(),
                fails: String::new(),
                elements: Vec::new(),
                params: Vec::new(),
                sold_once_fitted: false,
            })
            .collect(),
        connectors: list("connectors")
            .iter()
            .map(|item| Connector {
                id: word(item, "id"),
                name: word(item, "name"),
                elements: words(item, "elements"),
                needs: words(item, "needs"),
                place: word(item, "place"),
            })
            .collect(),
        test_points: list("test_points")
            .iter()
            .map(|item| TestPoint {
                node: word(item, "node"),
                name: word(item, "name"),
                needs: words(item, "needs"),
                place: word(item, "place"),
            })
            .collect(),
        places: list("places")
            .iter()
            .map(|item| Place {
                id: word(item, "id"),
                name: word(item, "name"),
                needs: words(item, "needs"),
                part: word(item, "part"),
            })
            .collect(),
        ..Workshop::default()
    }
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

/// Names of a machine's nodes as its published wiring list gives them.
const POINTS_P: &str = include_str!("fixtures/drawings/points_p.txt");
const POINTS_T: &str = include_str!("fixtures/drawings/points_t.txt");
const POINTS_N: &str = include_str!("fixtures/drawings/points_n.txt");

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
    for (name, layout, list) in [
        ("p_wiring", "P", POINTS_P),
        ("t_wiring", "T", POINTS_T),
        ("n_wiring", "N", POINTS_N),
    ] {
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
        show(name, &drawn);
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

#[test]
fn every_accessible_node_of_a_machine_is_on_its_sheet() {
    for (layout, list) in [("P", POINTS_P), ("T", POINTS_T), ("N", POINTS_N)] {
        let known = points(list);
        let drawn = wiring::draw(&WiringInput {
            layout,
            elements: &[],
            points: &known,
            closed: &BTreeSet::new(),
            apart: &BTreeSet::new(),
            selected: None,
            probes: Probes::default(),
            names: &drawing::plain_name,
        });
        let shown = wiring::shown_points(&drawn);
        let missing: Vec<_> = known
            .iter()
            .filter(|(node, _)| *node != "0" && !shown.iter().any(|id| id == node))
            .collect();
        assert!(missing.is_empty(), "sheet {layout} lacks {missing:?}");
    }
}

/// The elements of a machine's file, as the automatic layout gets them.
fn elements(text: &str) -> Vec<(String, Symbol, [String; 2], String)> {
    let whole: Value = serde_json::from_str(text).expect("the machine's file is JSON");
    let list = whole["wiring"]["elements"]
        .as_object()
        .expect("elements by name");
    list.iter()
        .filter_map(|(name, element)| {
            let symbol = match element["kind"].as_str()? {
                "resistor" => Symbol::Resistor,
                "capacitor" => Symbol::Capacitor,
                "inductor" => Symbol::Inductor,
                "contact" => Symbol::Contact,
                "source" => Symbol::Source,
                _ => return None,
            };
            let node = |index: usize| Some(element["nodes"][index].as_str()?.to_owned());
            let what = element["what"].as_str()?.to_owned();
            Some((name.clone(), symbol, [node(0)?, node(1)?], what))
        })
        .collect()
}

#[test]
fn an_unknown_machine_still_gets_a_sheet_with_every_point() {
    let file = elements(include_str!("../scenarios/machines/t.json"));
    let list: Vec<WiringElement> = file
        .iter()
        .map(|(name, symbol, [from, to], what)| WiringElement {
            name,
            symbol: *symbol,
            nodes: [from, to],
            what,
        })
        .collect();
    let known = points(POINTS_T);
    let drawn = wiring::draw(&WiringInput {
        layout: "unknown",
        elements: &list,
        points: &known,
        closed: &BTreeSet::new(),
        apart: &BTreeSet::new(),
        selected: None,
        probes: Probes::default(),
        names: &drawing::plain_name,
    });
    show("automatic_wiring", &drawn);
    let shown = wiring::shown_points(&drawn);
    // The motor is no two-ended element: its star point and frame come with its other elements.
    let missing: Vec<_> = known
        .iter()
        .filter(|(node, _)| !shown.iter().any(|id| id == node))
        .collect();
    assert!(missing.is_empty(), "the sheet lacks {missing:?}");
}

/// Writes a picture with its styles where somebody wants to look at it.
fn show(name: &str, drawn: &drawing::svg::Element) {
    if let Some(folder) = std::env::var_os("TUBWRIGHT_SHOW_DRAWINGS") {
        let file = PathBuf::from(folder).join(format!("{name}.svg"));
        std::fs::write(file, drawing::document(drawn)).expect("the folder can be written");
    }
}
