//! The wiring diagram: symbols by IEC 60617, conductor colours by IEC 60445 with a second cue.
//!
//! Line on top, neutral at the bottom, loads as columns between. Known machines have a layout
//! made by hand, as data; any other machine gets columns made from its list of elements. A layout
//! says only where things are: what is closed, apart or under a probe comes with the input.

mod automatic;
mod layout;
mod layout_n;
mod layout_p;
mod layout_t;
mod symbols;

use std::collections::BTreeSet;

use crate::drawing::input::Probes;
use crate::drawing::sheet;
use crate::drawing::svg::{Element, circle, group, label, num, path, rect};
use crate::drawing::wiring::layout::{Conductor, Piece};
use crate::drawing::world::{SMALLEST_TARGET, VIEW_BOX};

/// What kind of thing an element of the wiring is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Symbol {
    /// Resistor, wire, pin or fuse: told apart by value and words in the machine's file.
    Resistor,
    /// Capacitor.
    Capacitor,
    /// Coil.
    Inductor,
    /// Contact, relay or electronic switch.
    Contact,
    /// Supply.
    Source,
    /// One winding of the motor.
    Winding,
}

/// One element of the wiring, as a machine's file has it.
#[derive(Clone, Debug, PartialEq)]
pub struct WiringElement<'a> {
    /// Name, such as `RIV`.
    pub name: &'a str,
    /// Kind.
    pub symbol: Symbol,
    /// From and to.
    pub nodes: [&'a str; 2],
    /// What it is, in words.
    pub what: &'a str,
}

/// Everything a wiring diagram depends on.
pub struct WiringInput<'a> {
    /// Which hand-made layout: `P`, `T` or `N`. Anything else gets the automatic one.
    pub layout: &'a str,
    /// Elements of the wiring, in the file's order; only the automatic layout reads them.
    pub elements: &'a [WiringElement<'a>],
    /// Nodes a probe can reach, and their plain names.
    pub points: &'a [(&'a str, &'a str)],
    /// Contacts that are closed. None at all: the sheet as printed, everything at rest.
    pub closed: &'a BTreeSet<String>,
    /// Elements that are pulled apart.
    pub apart: &'a BTreeSet<String>,
    /// Node or element in hand.
    pub selected: Option<&'a str>,
    /// Where the probes are.
    pub probes: Probes<'a>,
    /// Names of things by id, such as `run_capacitor`.
    pub names: &'a dyn Fn(&str) -> String,
}

/// The wiring diagram.
pub fn draw(input: &WiringInput) -> Element {
    let (left, top, width, height) = VIEW_BOX;
    let (content, bottom) = match input.layout {
        "P" => by_hand(input, layout_p::PIECES),
        "T" => by_hand(input, layout_t::PIECES),
        "N" => by_hand(input, layout_n::PIECES),
        _ => automatic::sheet(input),
    };
    let bottom = bottom.max(top + height);
    let mut drawing = sheet("drawing__svg drawing__svg--wiring")
        .with(
            "viewBox",
            format!(
                "{} {} {} {}",
                num(left),
                num(top),
                num(width),
                num(bottom - top)
            ),
        )
        .with("aria-label", (input.names)("wiring"))
        .child(rect(left, top, width, bottom - top, "wiring-paper"))
        .children(content);
    let probes = probes(input, &drawing);
    drawing = drawing.children(probes);
    first_in_tab_order(&mut drawing);
    drawing
}

fn by_hand(input: &WiringInput, pieces: &[Piece]) -> (Vec<Element>, f64) {
    let blocks = pieces
        .iter()
        .filter(|piece| matches!(piece, Piece::Block { .. }))
        .map(|piece| symbols::block(input, piece));
    let mut drawn: Vec<Element> = blocks.collect();
    drawn.extend(nets(pieces));
    drawn.extend(
        pieces
            .iter()
            .filter_map(|piece| symbols::thing(input, piece)),
    );
    drawn.extend(pieces.iter().filter_map(|piece| match *piece {
        Piece::Point { node, x, y } => point_at(input, node, x, y),
        _ => None,
    }));
    let bottom = pieces.iter().map(Piece::bottom).fold(0.0, f64::max);
    (drawn, bottom)
}

fn first_in_tab_order(drawing: &mut Element) {
    let mut free = true;
    drawing.walk_mut(&mut |element| {
        if free && element.attribute("tabindex").is_some() {
            element.set("tabindex", "0");
            free = false;
        }
    });
}

/// All wires of a node in one group, so that the whole net lights up under the pointer.
fn nets(pieces: &[Piece]) -> Vec<Element> {
    let mut order: Vec<&str> = Vec::new();
    for piece in pieces {
        if let Piece::Wire { node, .. } = piece
            && !order.contains(node)
        {
            order.push(node);
        }
    }
    order
        .into_iter()
        .map(|wanted| {
            let mut net = group("net").with("data-net", wanted);
            for piece in pieces {
                if let Piece::Wire {
                    node,
                    conductor,
                    data,
                } = piece
                    && *node == wanted
                {
                    net = net.children(wire(*conductor, data));
                }
            }
            net
        })
        .collect()
}

fn wire(conductor: Conductor, data: &str) -> Vec<Element> {
    let mut drawn = vec![path(data, "net__hit")];
    match conductor {
        Conductor::Earth => {
            drawn.push(path(data, "conductor conductor--earth"));
            drawn.push(path(data, "conductor conductor--earth-stripe"));
        }
        Conductor::Line => drawn.push(path(data, "conductor conductor--line")),
        Conductor::Neutral => drawn.push(path(data, "conductor conductor--neutral")),
        Conductor::Black => drawn.push(path(data, "conductor conductor--black")),
        Conductor::Grey => drawn.push(path(data, "conductor conductor--grey")),
        Conductor::Track => drawn.push(path(data, "conductor conductor--track")),
    }
    drawn
}

/// A test point, if the node is one.
fn point_at(input: &WiringInput, node: &str, x: f64, y: f64) -> Option<Element> {
    let name = input
        .points
        .iter()
        .find(|(known, _)| *known == node)
        .map(|(_, name)| *name)?;
    let selected = input.selected == Some(node);
    let class = if selected {
        "point touch--selected"
    } else {
        "point"
    };
    let half = SMALLEST_TARGET / 2.0;
    // Names open towards the middle of the sheet, so that none is cut off at its edge.
    let (side, anchor) = if x > 780.0 {
        (-16.0, "end")
    } else {
        (16.0, "start")
    };
    let mut tag = label(x + side, y - 14.0, "tag", name).with("aria-hidden", "true");
    tag.set("text-anchor", anchor);
    Some(
        group(class)
            .with("data-point", node)
            .with("role", "button")
            .with("tabindex", "-1")
            .with("aria-label", name)
            .child(Element::new("title").text(name))
            .child(circle(x, y, 8.0, "point__dot"))
            .child(
                rect(x - half, y - half, SMALLEST_TARGET, SMALLEST_TARGET, "hit").with("rx", "26"),
            )
            .child(tag),
    )
}

/// The two probes, at the first place where their node is drawn.
fn probes(input: &WiringInput, drawing: &Element) -> Vec<Element> {
    let at = |wanted: Option<&str>| {
        let mut found = None;
        drawing.walk(&mut |element| {
            let here = element.attribute("data-point");
            if found.is_none() && here.is_some() && here == wanted {
                found = dot(element);
            }
        });
        found
    };
    let red = at(input.probes.red).map(|(x, y)| probe(x, y, "probe--red"));
    let black = at(input.probes.black).map(|(x, y)| probe(x, y, "probe--black"));
    red.into_iter().chain(black).collect()
}

/// Middle of a test point's dot.
fn dot(point: &Element) -> Option<(f64, f64)> {
    let mut middle = None;
    point.walk(&mut |element| {
        if let (Some(x), Some(y)) = (element.attribute("cx"), element.attribute("cy")) {
            middle = x.parse().ok().zip(y.parse().ok());
        }
    });
    middle
}

fn probe(x: f64, y: f64, class: &str) -> Element {
    group(&format!("probe {class}"))
        .with("aria-hidden", "true")
        .with("transform", format!("translate({} {})", num(x), num(y)))
        .child(path("M0 0 L16 22", "probe__tip"))
        .child(path(
            "M12 26 L22 18 L62 76 Q66 84 58 88 Q50 92 46 86Z",
            "probe__body",
        ))
        .child(path("M56 88 Q70 120 60 150", "probe__lead"))
}

/// Ids of all test points a diagram shows, in painting order.
pub fn shown_points(drawing: &Element) -> Vec<String> {
    let mut found = Vec::new();
    drawing.walk(&mut |element| {
        if let Some(node) = element.attribute("data-point") {
            found.push(node.to_owned());
        }
    });
    found
}
