//! What the machine's file adds to a picture: names in the margin, places, connectors, test
//! points, and a tray for anything the picture has no shape for.
//!
//! A workshop names its own places and connectors; each says at which part it is. So they are
//! hung on the edges of that part's area, and a machine with things this module never heard of
//! still shows all of them.

use std::collections::BTreeMap;

use crate::drawing::input::{DrawingInput, View};
use crate::drawing::steps::is_shut;
use crate::drawing::svg::{
    Element, Node, circle, fitted, group, letters, num, path, rect, room_for, rounded,
};
use crate::drawing::touch::{self, Area};
use crate::drawing::world::{
    AXIS, EDGE, FLOOR, LEFT, LETTER, RECEDE, RIGHT, SMALLEST_TARGET, VIEW_BOX,
};
use crate::language::worded;

/// Height of a line of names in the margin.
const NAME_LINE: f64 = 27.0;
/// How wide a letter is at least in the margin: a name may reach to the sheet's edge.
const MARGIN_LETTER: f64 = 11.0;
/// How wide a letter is on the tray.
const TRAY_LETTER: f64 = 11.5;

/// Adds all of it to the drawing.
pub fn furnish(input: &DrawingInput, view: View, drawing: &mut Element) {
    name_places(input, drawing);
    let areas = areas(drawing);
    let extra = hang_on(input, view, &areas);
    let missing = if view == View::Section {
        tray(input, drawing, &extra)
    } else {
        None
    };
    for element in extra.into_iter().chain(missing) {
        drawing.children.push(Node::Element(element));
    }
    names_in_the_margin(view, drawing);
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

/// One shape may stand for a part, its place and a connector there: it gets all the names that no
/// other shape has.
fn name_places(input: &DrawingInput, drawing: &mut Element) {
    let drawn = areas(drawing);
    let known = input.workshop;
    drawing.walk_mut(&mut |element| {
        if let Some(id) = element.attribute("data-part").map(str::to_owned) {
            // A part in two places, such as a cord with its two ends, stands for neither.
            let mut others = known.places.iter().filter(|place| place.part == id);
            let only = others.next().filter(|_| others.next().is_none());
            let place = known
                .place(&id)
                .or(only.filter(|place| !drawn.contains_key(&place.id)));
            if let Some(place) = place {
                element.set("data-place", place.id.clone());
            }
        }
        if let Some(id) = element.attribute("data-place").map(str::to_owned) {
            let part = known.place(&id).map(|place| place.part.clone());
            if let Some(part) = part.filter(|part| !part.is_empty() && !drawn.contains_key(part)) {
                element.set("data-part", part);
            }
            if known.connector(&id).is_some() {
                element.set("data-connector", id);
            }
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

/// The area of a place. In the section, which shows everything, a place without a shape of its
/// own is where its part is; elsewhere it is behind a cover.
fn area_of(
    input: &DrawingInput,
    view: View,
    areas: &BTreeMap<String, Area>,
    place: &str,
) -> Option<Area> {
    let own = areas.get(place).copied();
    if own.is_some() || view != View::Section {
        return own;
    }
    areas.get(&input.workshop.place(place)?.part).copied()
}

fn hang_on(input: &DrawingInput, view: View, areas: &BTreeMap<String, Area>) -> Vec<Element> {
    let mut drawn = Vec::new();
    if view == View::Water {
        return drawn;
    }
    let mut spots = Spots::default();
    for place in &input.workshop.places {
        if areas.contains_key(&place.id) {
            continue;
        }
        if let Some(area) = area_of(input, view, areas, &place.id) {
            let (x, y) = spots.next((area.0, area.1 - 40.0, area.2, 20.0));
            drawn.push(touch::part(input, &place.id, around(x, y), eye(x, y)));
        }
    }
    for connector in &input.workshop.connectors {
        if areas.contains_key(&connector.id) {
            continue;
        }
        if let Some(area) = area_of(input, view, areas, &connector.place) {
            let (x, y) = spots.next(area);
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
        // From outside, what lies behind a cover cannot be measured: the key before it is pressed.
        let is_hidden = !point.needs.is_empty() && is_shut(input, view);
        if let Some(area) = area_of(input, view, areas, &point.place).filter(|_| !is_hidden) {
            let (x, y) = spots.next(area);
            let stalk = (area.0 + area.2 / 2.0, area.1 + area.3 / 2.0);
            drawn.push(test_point(input, &point.node, &point.name, (x, y), stalk));
        }
    }
    drawn
}

/// Hands out spots along the lower edges of areas, none nearer to another than a finger is wide.
#[derive(Default)]
struct Spots {
    taken: Vec<(f64, f64)>,
}

impl Spots {
    fn next(&mut self, (x, y, width, height): Area) -> (f64, f64) {
        let first = (x + width / 2.0, y + height);
        // Rows downwards; in a row outwards from the middle, to both sides.
        let rows = (0..12).map(|row| f64::from(row) * SMALLEST_TARGET);
        let columns = [0.0, 1.0, -1.0, 2.0, -2.0].map(|column| column * SMALLEST_TARGET);
        let spot = rows
            .flat_map(|down| columns.map(|along| (first.0 + along, first.1 + down)))
            .find(|spot| {
                let far = |other: &(f64, f64)| {
                    libm::hypot(spot.0 - other.0, spot.1 - other.1) >= SMALLEST_TARGET - 2.0
                };
                self.taken.iter().all(far)
            })
            .unwrap_or(first);
        self.taken.push(spot);
        spot
    }
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

/// A test point with the probe on it, if one is there, and a thin line to what it belongs to.
fn test_point(
    input: &DrawingInput,
    node: &str,
    english: &str,
    (x, y): (f64, f64),
    stalk: (f64, f64),
) -> Element {
    let probe = if input.probes.red == Some(node) {
        " point--red"
    } else if input.probes.black == Some(node) {
        " point--black"
    } else {
        ""
    };
    let name = worded(english);
    let room = room_for(english, (EDGE - x - 11.0) / LETTER);
    group(&format!("point{probe}"))
        .with("data-point", node)
        .with("role", "button")
        .with("tabindex", "-1")
        .with("aria-label", &*name)
        .child(Element::new("title").text(&*name))
        .child(path(
            format!("M{} {} L{} {}", num(x), num(y), num(stalk.0), num(stalk.1)),
            "point__stalk",
        ))
        .child(circle(x, y, 7.0, "point__dot"))
        .child(rect(x - 25.0, y - 25.0, 50.0, 50.0, "hit").with("rx", "25"))
        .child(fitted(x + 11.0, y - 12.0, "tag", &*name, room).with("aria-hidden", "true"))
}

/// Parts and places the section has no shape for, named on a tray beside the machine.
fn tray(input: &DrawingInput, drawing: &Element, extra: &[Element]) -> Option<Element> {
    let mut known = areas(drawing);
    for element in extra {
        known.append(&mut areas(element));
    }
    let parts = input.workshop.parts.iter().map(|part| &part.id);
    let places = input.workshop.places.iter().map(|place| &place.id);
    let missing: Vec<&String> = parts
        .chain(places)
        .filter(|id| !known.contains_key(*id))
        .collect();
    if missing.is_empty() {
        return None;
    }
    let mut row = group("tray");
    let (mut x, mut y) = (24.0, FLOOR - 320.0);
    for id in missing {
        let name = input.name(id);
        let room = room_for(&input.english_name(id), (LEFT - 74.0) / TRAY_LETTER);
        let width = 30.0 + TRAY_LETTER * letters(&name).min(room);
        if x + width > LEFT - 20.0 {
            x = 24.0;
            y += 48.0;
        }
        let area = (x, y, width, 38.0);
        let shape = vec![
            rounded(x, y, width, 38.0, 6.0, "tray-card line"),
            fitted(x + width / 2.0, y + 26.0, "tray-name", name, room),
        ];
        row = row.child(touch::part(input, id, area, shape));
        x += width + 12.0;
    }
    Some(row)
}

/// Moves the names of touchable things into the margins, each on a line of its own, with a thin
/// line to what it names.
fn names_in_the_margin(view: View, drawing: &mut Element) {
    let mut wanted: Vec<(String, Area)> = Vec::new();
    drawing.walk(&mut |element| {
        let fixed = ["data-part", "data-place", "data-step", "data-key"];
        let id = fixed.iter().find_map(|kind| element.attribute(kind));
        if let (Some(id), Some(area)) = (id, hit_area(element)) {
            wanted.push((id.to_owned(), area));
        }
    });
    wanted.sort_by(|a, b| middle(a.1).1.total_cmp(&middle(b.1).1));
    let mut places: BTreeMap<String, (f64, f64, bool)> = BTreeMap::new();
    for left in [true, false] {
        let side: Vec<&(String, Area)> = wanted
            .iter()
            .filter(|(_, area)| (middle(*area).0 < AXIS) == left)
            .collect();
        let heights = spread(
            &side
                .iter()
                .map(|(_, area)| middle(*area).1)
                .collect::<Vec<_>>(),
        );
        // The cabinet's side recedes to the right where it is not cut.
        let right = match view {
            View::Section | View::Water => RIGHT + 40.0,
            View::Outside | View::Opened => RIGHT + RECEDE.0 + 60.0,
        };
        let x = if left { LEFT - 46.0 } else { right };
        for ((id, _), y) in side.into_iter().zip(heights) {
            places.insert(id.clone(), (x, y, left));
        }
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

/// Heights as near to the wanted ones (given in rising order) as a line of text each allows, all
/// of them on the sheet.
fn spread(wanted: &[f64]) -> Vec<f64> {
    let (_, top, _, height) = VIEW_BOX;
    let line = NAME_LINE.min((height - 40.0) / wanted.len().max(1) as f64);
    let mut heights = Vec::with_capacity(wanted.len());
    let mut lowest = top + 20.0 - line;
    for y in wanted {
        lowest = y.max(lowest + line);
        heights.push(lowest);
    }
    let mut highest = top + height - 20.0 + line;
    for y in heights.iter_mut().rev() {
        highest = y.min(highest - line);
        *y = highest;
    }
    heights
}

fn margin_name(words: Vec<Node>, area: Area, (x, y, left): (f64, f64, bool)) -> Element {
    let (to_x, to_y) = middle(area);
    let (edge, anchor, room) = if left {
        (x + 8.0, "end", x - VIEW_BOX.0)
    } else {
        (x - 8.0, "start", EDGE - x)
    };
    let words = words.into_iter().filter_map(|node| match node {
        Node::Text(text) => Some(text),
        Node::Element(_) => None,
    });
    let words: String = words.collect();
    let text = fitted(x, y + 7.0, "tag__text", words, room / MARGIN_LETTER);
    let text = text.with("text-anchor", anchor);
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
