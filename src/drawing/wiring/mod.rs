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
use crate::drawing::svg::{Element, circle, group, label, path, rect};
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
    /// Contacts that are closed.
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
    let pieces: Vec<Piece> = match input.layout {
        "P" => layout_p::PIECES.to_vec(),
        "T" => layout_t::PIECES.to_vec(),
        "N" => layout_n::PIECES.to_vec(),
        _ => automatic::pieces(input.elements, input.points),
    };
    let (left, top, width, height) = VIEW_BOX;
    let bottom = pieces
        .iter()
        .map(Piece::bottom)
        .fold(top + height, f64::max);
    let mut drawing = sheet("drawing__svg drawing__svg--wiring")
        .with("aria-label", (input.names)("wiring"))
        .child(rect(left, top, width, bottom - top, "wiring-paper"));
    if bottom > top + height {
        let text = format!("{left} {top} {width} {}", bottom - top + 20.0);
        drawing.set("viewBox", text);
    }
    for block in pieces
        .iter()
        .filter(|piece| matches!(piece, Piece::Block { .. }))
    {
        drawing = drawing.child(symbols::block(input, block));
    }
    drawing = drawing.children(nets(&pieces));
    let things = pieces
        .iter()
        .filter_map(|piece| symbols::thing(input, piece));
    drawing = drawing.children(things.collect::<Vec<_>>());
    let points: Vec<Element> = pieces
        .iter()
        .filter_map(|piece| point(input, piece))
        .collect();
    drawing = drawing.children(points).children(probes(input, &pieces));
    first_in_tab_order(&mut drawing);
    drawing
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

fn point(input: &WiringInput, piece: &Piece) -> Option<Element> {
    let Piece::Point { node, x, y } = piece else {
        return None;
    };
    let (x, y) = (*x, *y);
    let name = input
        .points
        .iter()
        .find(|(known, _)| known == node)
        .map(|(_, name)| *name)?;
    let selected = input.selected == Some(*node);
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
            .with("data-point", *node)
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
fn probes(input: &WiringInput, pieces: &[Piece]) -> Vec<Element> {
    let at = |wanted: Option<&str>| {
        pieces.iter().find_map(|piece| match piece {
            Piece::Point { node, x, y } if wanted == Some(node) => Some((*x, *y)),
            _ => None,
        })
    };
    let red = at(input.probes.red).map(|(x, y)| probe(x, y, "probe--red"));
    let black = at(input.probes.black).map(|(x, y)| probe(x, y, "probe--black"));
    red.into_iter().chain(black).collect()
}

fn probe(x: f64, y: f64, class: &str) -> Element {
    group(&format!("probe {class}"))
        .with("aria-hidden", "true")
        .with("transform", format!("translate({x} {y})"))
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
