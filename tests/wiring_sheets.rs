//! The wiring diagrams: snapshots, and that every place a probe can reach is on the sheet.

use std::collections::BTreeSet;
use std::path::PathBuf;

use serde_json::Value;
use tubwright::drawing;
use tubwright::drawing::Probes;
use tubwright::drawing::wiring;
use tubwright::drawing::wiring::{Symbol, WiringElement, WiringInput};

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
