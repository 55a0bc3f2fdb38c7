//! What the machine's file adds to a picture: names in the margin, places, connectors, test
//! points, and a tray for anything the picture has no shape for.
//!
//! A workshop names its own places and connectors; each says at which part it is. So they are
//! hung on the edges of that part's area, and a machine with things this module never heard of
//! still shows all of them.

use std::collections::BTreeMap;

use crate::drawing::input::{DrawingInput, View};
use crate::drawing::svg::{Element, Node, circle, group, label, num, path, rect, rounded};
use crate::drawing::touch::{self, Area};
use crate::drawing::world::{AXIS, FLOOR, LEFT, SMALLEST_TARGET};

/// Adds all of it to the drawing.
pub fn furnish(input: &DrawingInput, view: View, drawing: &mut Element) {
    name_places(input, drawing);
    let areas = areas(drawing);
    let extra = hang_on(input, view, &areas);
    let missing = if view == View::Opened || view == View::Section {
        tray(input, drawing, &extra)
    } else {
        None
    };
    for element in extra.into_iter().chain(missing) {
        drawing.children.push(Node::Element(element));
    }
    names_in_the_margin(drawing);
    let mut first = true;
    drawing.walk_mut(&mut |element| {
        if first && element.attribute("tabindex").is_some() && input.selected.is_none() {
            element.set("tabindex", "0");
            first = false;
        }
    });
}

/// The attribute that says what a touchable element stands for.
pub const KINDS: [&str; 6] = [
    "data-part",
    "data-place",
    "data-step",
    "data-key",
    "data-connector",
    "data-point",
];

/// A part that is also a place gets both names.
fn name_places(input: &DrawingInput, drawing: &mut Element) {
    drawing.walk_mut(&mut |element| {
        let Some(id) = element.attribute("data-part").map(str::to_owned) else {
            return;
        };
        let place = input
            .workshop
            .place(&id)
            .or_else(|| input.workshop.places.iter().find(|place| place.part == id));
        if let Some(place) = place {
            element.set("data-place", place.id.clone());
        }
    });
}

/// Areas of everything touchable, by id.
fn areas(drawing: &Element) -> BTreeMap<String, Area> {
    let mut found = BTreeMap::new();
    drawing.walk(&mut |element| {
        let Some(area) = hit_area(element) else {
            return;
        };
        for kind in KINDS {
            if let Some(id) = element.attribute(kind) {
                found.entry(id.to_owned()).or_insert(area);
            }
        }
    });
    found
}

fn hit_area(element: &Element) -> Option<Area> {
    element.children.iter().find_map(|child| {
        let Node::Element(inner) = child else {
            return None;
        };
        if inner.attribute("class") != Some("hit") {
            return None;
        }
        let side = |name| inner.attribute(name)?.parse::<f64>().ok();
        Some((side("x")?, side("y")?, side("width")?, side("height")?))
    })
}

/// The area of the part at a place, if the picture has it.
fn area_of(input: &DrawingInput, areas: &BTreeMap<String, Area>, place: &str) -> Option<Area> {
    areas.get(place).copied().or_else(|| {
        let part = &input.workshop.place(place)?.part;
        areas.get(part).copied()
    })
}

fn hang_on(input: &DrawingInput, view: View, areas: &BTreeMap<String, Area>) -> Vec<Element> {
    let mut drawn = Vec::new();
    if view == View::Water {
        return drawn;
    }
    let mut taken: BTreeMap<(i64, i64), f64> = BTreeMap::new();
    let mut next = |area: Area, below: bool| {
        let y = if below { area.1 + area.3 } else { area.1 };
        let key = (area.0 as i64, y as i64);
        let used = taken.entry(key).or_insert(0.0);
        let spot = (area.0 + 14.0 + *used, y);
        *used += 27.0;
        spot
    };
    for place in &input.workshop.places {
        if areas.contains_key(&place.id) {
            continue;
        }
        if let Some(area) = area_of(input, areas, &place.id) {
            let (x, y) = next(area, false);
            drawn.push(touch::place(input, &place.id, around(x, y), eye(x, y)));
        }
    }
    for connector in &input.workshop.connectors {
        if let Some(area) = area_of(input, areas, &connector.place) {
            let (x, y) = next(area, true);
            let apart = input.apart.contains(&connector.id);
            drawn.push(touch::connector(
                input,
                &connector.id,
                around(x, y),
                plug(x, y, apart),
            ));
        }
    }
    for point in &input.workshop.test_points {
        if let Some(area) = area_of(input, areas, &point.place) {
            let (x, y) = next(area, true);
            drawn.push(test_point(input, &point.node, &point.name, x, y));
        }
    }
    drawn
}

fn around(x: f64, y: f64) -> Area {
    (x - 12.0, y - 12.0, 24.0, 24.0)
}

fn eye(x: f64, y: f64) -> Vec<Element> {
    vec![
        circle(x, y, 8.0, "spot line"),
        circle(x, y, 2.5, "spot-middle"),
    ]
}

fn plug(x: f64, y: f64, apart: bool) -> Vec<Element> {
    let gap = if apart { 7.0 } else { 0.0 };
    vec![
        rounded(x - 10.0, y - 9.0 - gap, 20.0, 8.0, 2.0, "plug-housing line"),
        rounded(x - 10.0, y + 1.0 + gap, 20.0, 8.0, 2.0, "plug-housing line"),
        path(
            format!(
                "M{} {} v{} M{} {} v{}",
                x - 4.0,
                y - 1.0 - gap,
                2.0 + gap,
                x + 4.0,
                y - 1.0 - gap,
                2.0 + gap
            ),
            "pin",
        ),
    ]
}

/// A test point with the probe on it, if one is there.
pub fn test_point(input: &DrawingInput, node: &str, name: &str, x: f64, y: f64) -> Element {
    let probe = if input.probes.red == Some(node) {
        " point--red"
    } else if input.probes.black == Some(node) {
        " point--black"
    } else {
        ""
    };
    group(&format!("point{probe}"))
        .with("data-point", node)
        .with("role", "button")
        .with("tabindex", "-1")
        .with("aria-label", name)
        .child(Element::new("title").text(name))
        .child(circle(x, y, 7.0, "point__dot"))
        .child(rect(x - 13.0, y - 26.0, 26.0, SMALLEST_TARGET, "hit"))
        .child(label(x + 11.0, y - 10.0, "tag", name).with("aria-hidden", "true"))
}

/// Parts and places the picture has no shape for, named on a tray at the foot.
fn tray(input: &DrawingInput, drawing: &Element, extra: &[Element]) -> Option<Element> {
    let mut known = areas(drawing);
    for element in extra {
        known.append(&mut areas(element));
    }
    let parts = input.workshop.parts.iter().map(|part| (&part.id, true));
    let places = input.workshop.places.iter().map(|place| (&place.id, false));
    let missing: Vec<(&String, bool)> = parts
        .chain(places)
        .filter(|(id, _)| !known.contains_key(*id) && !hidden_by_cover(input, id))
        .collect();
    if missing.is_empty() {
        return None;
    }
    let mut row = group("tray");
    let (mut x, mut y) = (24.0, FLOOR - 320.0);
    for (id, is_part) in missing {
        let width = 30.0 + 11.5 * input.name(id).chars().count() as f64;
        if x + width > LEFT - 20.0 {
            x = 24.0;
            y += 48.0;
        }
        let area = (x, y, width, 38.0);
        let shape = vec![
            rounded(x, y, width, 38.0, 6.0, "tray-card line"),
            label(x + width / 2.0, y + 26.0, "tray-name", input.name(id)),
        ];
        row = row.child(if is_part {
            touch::part(input, id, area, shape)
        } else {
            touch::place(input, id, area, shape)
        });
        x += width + 12.0;
    }
    Some(row)
}

/// What is behind a cover that is still on is not to be seen at all.
fn hidden_by_cover(input: &DrawingInput, id: &str) -> bool {
    let needs = |steps: &[String]| steps.iter().any(|step| !input.removed.contains(step));
    if let Some(place) = input.workshop.place(id) {
        return needs(&place.needs);
    }
    input
        .workshop
        .works
        .iter()
        .find(|work| work.part == id)
        .is_some_and(|work| needs(&work.needs))
}

/// Moves the names of touchable things into the margins, each on a line of its own, with a thin
/// line to what it names.
fn names_in_the_margin(drawing: &mut Element) {
    let mut wanted: Vec<(String, Area)> = areas(drawing)
        .into_iter()
        .filter(|(_, area)| area.2 < 500.0)
        .collect();
    wanted.sort_by(|a, b| middle(a.1).1.total_cmp(&middle(b.1).1));
    let mut places: BTreeMap<String, (f64, f64, bool)> = BTreeMap::new();
    let mut lowest = [-20.0_f64, -20.0];
    for (id, area) in wanted {
        let (x, y) = middle(area);
        let left = x < AXIS;
        let side = usize::from(!left);
        let at = y.max(lowest[side] + 27.0);
        lowest[side] = at;
        places.insert(id, (if left { LEFT - 46.0 } else { 1020.0 }, at, left));
    }
    drawing.walk_mut(&mut |element| {
        let Some(area) = hit_area(element) else {
            return;
        };
        let id = KINDS.iter().find_map(|kind| element.attribute(kind));
        let Some((x, y, left)) = id.and_then(|id| places.get(id)).copied() else {
            return;
        };
        for child in &mut element.children {
            if let Node::Element(tag) = child
                && tag.attribute("class") == Some("tag")
            {
                let words = core::mem::take(&mut tag.children);
                *tag = margin_name(words, area, (x, y, left));
            }
        }
    });
}

fn margin_name(words: Vec<Node>, area: Area, (x, y, left): (f64, f64, bool)) -> Element {
    let (to_x, to_y) = middle(area);
    let (edge, anchor) = if left {
        (x + 8.0, "end")
    } else {
        (x - 8.0, "start")
    };
    let mut text = label(x, y + 7.0, "tag__text", "").with("text-anchor", anchor);
    text.children = words;
    group("tag")
        .with("aria-hidden", "true")
        .child(path(
            format!("M{} {} L{} {}", num(edge), num(y), num(to_x), num(to_y)),
            "tag__line",
        ))
        .child(circle(to_x, to_y, 4.0, "tag__dot"))
        .child(text)
}

fn middle(area: Area) -> (f64, f64) {
    (area.0 + area.2 / 2.0, area.1 + area.3 / 2.0)
}
