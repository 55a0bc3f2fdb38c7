//! Graphical symbols after IEC 60617, drawn from their middle, leads included.

use crate::drawing::svg::{
    Element, circle, fitted, group, label, num, path, rect, room_for, rounded,
};
use crate::drawing::wiring::WiringInput;
use crate::drawing::wiring::layout::{Kind, NameSide, Piece, Way};
use crate::language::{in_english, said};
use crate::say;

/// How wide a letter is.
const LETTER: f64 = 10.5;
/// Letters there is room for beside any symbol.
const SMALL_NAME: f64 = 9.0;

/// The outline of a part with several elements and its name.
pub fn block(input: &WiringInput, piece: &Piece) -> Element {
    let Piece::Block {
        x,
        y,
        width,
        height,
        part,
        which,
        round,
        name: side,
    } = *piece
    else {
        return group("");
    };
    let title = || match which {
        "" => (input.names)(part),
        which => say!(
            "{part}, {which}",
            part = (input.names)(part),
            which = said(which),
        ),
    };
    let (title, english) = (title(), in_english(title));
    let body = group("block").with("data-part", part);
    if round {
        let radius = width / 2.0;
        return body
            .child(circle(
                x + radius,
                y + radius,
                radius,
                "block__edge block__edge--motor",
            ))
            .child(label(x + radius, y + radius + 12.0, "motor-letter", "M"))
            .child(label(x + radius, y + radius + 34.0, "motor-kind", "1 ~"))
            .child(
                fitted(
                    x + radius,
                    y + radius - 34.0,
                    "part-name",
                    title,
                    room_for(&english, 0.8 * width / LETTER),
                )
                .with("text-anchor", "middle"),
            );
    }
    let outline = rounded(x, y, width, height, 10.0, "block__edge");
    let (class, x, y, anchor) = match side {
        NameSide::Top => ("block__name", x + 14.0, y + 27.0, "start"),
        NameSide::Below => ("part-name", x + width / 2.0, y + height + 26.0, "middle"),
        NameSide::Left => ("part-name", x - 12.0, y + 40.0, "end"),
    };
    let free = match side {
        NameSide::Top => (width - 28.0) / LETTER,
        NameSide::Below | NameSide::Left => width.min(SMALL_NAME * LETTER) / LETTER,
    };
    let name = fitted(x, y, class, title, room_for(&english, free));
    body.child(outline).child(name.with("text-anchor", anchor))
}

/// A symbol, pin, earth sign or note.
pub fn thing(input: &WiringInput, piece: &Piece) -> Option<Element> {
    match *piece {
        Piece::Part {
            kind,
            element,
            x,
            y,
            way,
            part,
            name_at,
        } => {
            let at_rest = input.closed.is_empty() && kind == Kind::Break;
            let closed = at_rest || input.closed.contains(element);
            let whole = placed(kind, closed, (x, y), way).with("data-element", element);
            if part.is_empty() {
                return Some(whole);
            }
            let english = in_english(|| (input.names)(part));
            let name = fitted(
                x + name_at.0,
                y + name_at.1,
                "part-name",
                (input.names)(part),
                room_for(&english, SMALL_NAME),
            );
            let anchor = if name_at.0 > 0.0 {
                "start"
            } else if name_at.0 < 0.0 {
                "end"
            } else {
                "middle"
            };
            Some(
                whole
                    .with("data-part", part)
                    .child(name.with("text-anchor", anchor)),
            )
        }
        Piece::Pin {
            element,
            x,
            y,
            way,
            number,
        } => Some(pin(input, element, (x, y), way, number)),
        Piece::Ground { x, y } => Some(path(
            format!(
                "M{x} {y} v16 M{} {} h36 M{} {} h24 M{} {} h12",
                x - 18.0,
                y + 16.0,
                x - 12.0,
                y + 24.0,
                x - 6.0,
                y + 32.0
            ),
            "symbol__line symbol__line--earth",
        )),
        Piece::Joint { x, y } => Some(circle(x, y, 5.0, "joint")),
        Piece::Note { x, y, words } => {
            let room = room_for(words, SMALL_NAME);
            Some(fitted(x, y, "wiring-note", said(words), room))
        }
        Piece::Wire { .. } | Piece::Point { .. } | Piece::Block { .. } => None,
    }
}

/// A symbol at its place.
pub fn placed(kind: Kind, closed: bool, (x, y): (f64, f64), way: Way) -> Element {
    let turned = match way {
        Way::Down => format!("translate({} {})", num(x), num(y)),
        Way::Across => format!("translate({} {}) rotate(-90)", num(x), num(y)),
    };
    let drawn = group("symbol")
        .with("transform", turned)
        .children(shape(kind, closed));
    group("element").child(drawn).children(letter(kind, x, y))
}

/// Letters stay upright, so they are no part of the turned shape.
fn letter(kind: Kind, x: f64, y: f64) -> Option<Element> {
    match kind {
        Kind::Motor => Some(label(x, y + 8.0, "motor-letter motor-letter--small", "M")),
        Kind::Oscillator => {
            Some(label(x, y + 7.0, "part-name", "G \u{2248}").with("text-anchor", "middle"))
        }
        _ => None,
    }
}

fn shape(kind: Kind, closed: bool) -> Vec<Element> {
    let body = |x: f64, y: f64, width: f64, height: f64| rect(x, y, width, height, "symbol__body");
    let lines = |data: &str| path(data, "symbol__line");
    match kind {
        Kind::Resistor => vec![body(-10.0, -24.0, 20.0, 48.0)],
        Kind::Fuse => vec![body(-10.0, -24.0, 20.0, 48.0), lines("M0 -24 V24")],
        Kind::Capacitor => vec![
            gap(9.0),
            lines("M-24 -7 H24 M-24 7 H24 M0 -26 V-7 M0 7 V26"),
        ],
        Kind::Coil => vec![body(-24.0, -15.0, 48.0, 30.0), lines("M-24 15 L-6 -15")],
        Kind::Winding => vec![
            gap(36.0),
            lines("M0 -36 a9 9 0 0 1 0 18 a9 9 0 0 1 0 18 a9 9 0 0 1 0 18 a9 9 0 0 1 0 18"),
        ],
        Kind::Make | Kind::Break => contact(closed),
        Kind::Electronic => {
            let mut drawn = vec![body(-24.0, -34.0, 48.0, 68.0)];
            drawn.extend(contact(closed));
            drawn.push(lines("M-24 14 h8 M-20 8 l6 6 l-6 6"));
            drawn
        }
        Kind::Motor => vec![circle(0.0, 0.0, 30.0, "symbol__body")],
        Kind::Source => vec![
            circle(0.0, 0.0, 24.0, "symbol__body"),
            lines("M-13 0 q6.5 -14 13 0 q6.5 14 13 0"),
        ],
        Kind::Protector => vec![
            gap(22.0),
            lines("M0 -26 V-18 M0 26 V18 M0 18 L0 -18"),
            lines("M-22 0 h10 v-10 h8 v20 h-8"),
        ],
        Kind::Rectifier => vec![
            body(-34.0, -44.0, 68.0, 88.0),
            lines("M-34 44 L34 -44 M-24 -26 q6 -10 12 0 q6 10 12 0 M2 22 h24 M2 30 h24"),
        ],
        Kind::Oscillator => vec![body(-62.0, -17.0, 124.0, 34.0)],
    }
}

fn gap(half: f64) -> Element {
    rect(-5.0, -half, 10.0, 2.0 * half, "symbol__gap")
}

/// A contact: the fixed side below, the moving arm hinged below and reaching up.
fn contact(closed: bool) -> Vec<Element> {
    let arm = if closed {
        "M0 22 L0 -22"
    } else {
        "M0 22 L-20 -18"
    };
    vec![
        gap(21.0),
        circle(0.0, 22.0, 3.5, "symbol__joint"),
        circle(0.0, -22.0, 3.5, "symbol__joint"),
        path(
            arm,
            if closed {
                "symbol__arm symbol__arm--closed"
            } else {
                "symbol__arm"
            },
        ),
    ]
}

fn pin(input: &WiringInput, element: &str, (x, y): (f64, f64), way: Way, number: &str) -> Element {
    let apart = input.apart.contains(element);
    let turn = match way {
        Way::Down => 0,
        Way::Across => -90,
    };
    let shape = if apart {
        "M-9 -20 L0 -11 L9 -20 M-9 10 L0 19 L9 10"
    } else {
        "M-9 -10 L0 -1 L9 -10 M-9 -2 L0 7 L9 -2"
    };
    let mut drawn = group(if apart {
        "pin-pair pin-pair--apart"
    } else {
        "pin-pair"
    })
    .with("data-element", element);
    if apart {
        drawn = drawn.child(
            rect(x - 7.0, y - 10.0, 14.0, 20.0, "symbol__gap")
                .with("transform", format!("rotate({turn} {x} {y})")),
        );
    }
    drawn = drawn.child(
        path(shape, "symbol__line").with("transform", format!("translate({x} {y}) rotate({turn})")),
    );
    if number.is_empty() {
        return drawn;
    }
    let (tx, ty) = match way {
        Way::Down => (x + 13.0, y + 6.0),
        Way::Across => (x - 8.0, y + 26.0),
    };
    drawn.child(label(tx, ty, "pin-number", number))
}
