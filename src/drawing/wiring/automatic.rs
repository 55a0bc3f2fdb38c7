//! Columns for a machine nobody laid out by hand.
//!
//! Elements that follow each other through places with two neighbours form a string; each string
//! is a column from one junction down to the next, rows of columns below each other. Stray and
//! insulation elements, which no technician can see or pull apart, are left out by the words in
//! the machine's file. Not pretty, but complete: every place a probe can reach is on the sheet.

use std::collections::BTreeMap;

use crate::drawing::svg::{Element, circle, group, label, num, path};
use crate::drawing::wiring::layout::{Kind, Way};
use crate::drawing::wiring::symbols;
use crate::drawing::wiring::{Symbol, WiringElement, WiringInput, point_at};

/// Columns in a row of the sheet.
const COLUMNS: usize = 14;
/// Width of a column.
const WIDTH: f64 = 108.0;
/// Height of one element with the place below it.
const HEIGHT: f64 = 116.0;
/// Left edge and top of the first column.
const FIRST: (f64, f64) = (70.0, 30.0);
/// Longest string drawn in one piece.
const LONGEST: usize = 8;

/// Words by which a machine's file marks what is no part of a wiring diagram.
const UNSEEN: [&str; 4] = ["stray", "insulation", "leak", "capacitance"];

/// A string of elements: places and what is between them.
struct Chain<'a> {
    places: Vec<&'a str>,
    between: Vec<&'a WiringElement<'a>>,
}

/// The sheet, and its lower edge.
pub fn sheet(input: &WiringInput) -> (Vec<Element>, f64) {
    let mut drawn = Vec::new();
    let (mut column, mut top, mut tallest) = (0, FIRST.1, 0);
    for chain in strings(input) {
        if column == COLUMNS {
            column = 0;
            top += HEIGHT * tallest as f64 + 90.0;
            tallest = 0;
        }
        tallest = tallest.max(chain.between.len());
        let x = FIRST.0 + WIDTH * column as f64;
        drawn.push(chain_at(input, &chain, x, top));
        column += 1;
    }
    (drawn, top + HEIGHT * tallest as f64 + 60.0)
}

fn strings<'a>(input: &WiringInput<'a>) -> Vec<Chain<'a>> {
    let seen: Vec<&WiringElement> = input
        .elements
        .iter()
        .filter(|element| !UNSEEN.iter().any(|word| element.what.contains(word)))
        .collect();
    let mut at: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
    for (index, element) in seen.iter().enumerate() {
        for node in element.nodes {
            at.entry(node).or_default().push(index);
        }
    }
    let mut used = vec![false; seen.len()];
    let mut chains = Vec::new();
    // First what hangs between junctions, then rings that have none.
    for from_junction in [true, false] {
        for start in 0..seen.len() {
            let Some(element) = seen.get(start).filter(|_| !used[start]) else {
                continue;
            };
            let ends = element.nodes.map(|node| at.get(node).map_or(0, Vec::len));
            let first = match (ends[0] == 2, ends[1] == 2) {
                (false, _) => element.nodes[0],
                (true, false) => element.nodes[1],
                (true, true) if !from_junction => element.nodes[0],
                (true, true) => continue,
            };
            chains.push(follow(&seen, &at, &mut used, start, first));
        }
    }
    chains
}

fn follow<'a>(
    seen: &[&'a WiringElement<'a>],
    at: &BTreeMap<&'a str, Vec<usize>>,
    used: &mut [bool],
    start: usize,
    first: &'a str,
) -> Chain<'a> {
    let mut chain = Chain {
        places: vec![first],
        between: Vec::new(),
    };
    let (mut index, mut place) = (start, first);
    loop {
        used[index] = true;
        let element = seen[index];
        place = if element.nodes[0] == place {
            element.nodes[1]
        } else {
            element.nodes[0]
        };
        chain.between.push(element);
        chain.places.push(place);
        let neighbours = at.get(place).map_or(&[][..], Vec::as_slice);
        let next = neighbours.iter().copied().find(|next| !used[*next]);
        match next {
            Some(next) if neighbours.len() == 2 && chain.between.len() < LONGEST => index = next,
            _ => return chain,
        }
    }
}

fn chain_at(input: &WiringInput, chain: &Chain, x: f64, top: f64) -> Element {
    let bottom = top + HEIGHT * chain.between.len() as f64;
    let mut drawn = group("net").child(path(
        format!("M{} {} V{}", num(x), num(top), num(bottom)),
        "conductor conductor--black",
    ));
    for (step, element) in chain.between.iter().enumerate() {
        let y = top + HEIGHT * (step as f64 + 0.5);
        let kind = kind(element);
        let closed = input.closed.contains(element.name);
        let (part, at) = (element.name, (x, y));
        drawn = drawn
            .child(symbols::placed(kind, closed, at, Way::Down).with("data-element", part))
            .child(label(x + 28.0, y + 5.0, "pin-number", element.name));
    }
    for (step, node) in chain.places.iter().enumerate() {
        let y = top + HEIGHT * step as f64;
        match point_at(input, node, x, y) {
            Some(point) => drawn = drawn.child(point),
            None => drawn = drawn.child(circle(x, y, 5.0, "joint")),
        }
        drawn = drawn.child(label(x + 14.0, y + 6.0, "pin-number", *node));
    }
    drawn
}

fn kind(element: &WiringElement) -> Kind {
    let says = |word: &str| element.what.contains(word);
    match element.symbol {
        Symbol::Resistor if says("fuse") => Kind::Fuse,
        Symbol::Resistor => Kind::Resistor,
        Symbol::Capacitor => Kind::Capacitor,
        Symbol::Inductor | Symbol::Winding => Kind::Winding,
        Symbol::Contact if says("triac") => Kind::Electronic,
        Symbol::Contact => Kind::Make,
        Symbol::Source => Kind::Source,
    }
}
