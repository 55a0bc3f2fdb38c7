//! Turned round and standing: the back with its cover on or off, the top cover down or lifted.

use crate::drawing::input::DrawingInput;
use crate::drawing::section;
use crate::drawing::steps::{BACK, PANEL, TOP, step_id};
use crate::drawing::svg::{Element, circle, group, line, outline, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{
    AXIS, CROWN, DECK, LEFT, RECEDE, RIGHT, SHOULDER, SKIRT, TUB, TUB_FLOOR, TUB_RIM,
};

/// The opening in the back: left, top, width, height.
const OPENING: (f64, f64, f64, f64) = (462.0, 470.0, 496.0, 486.0);

/// The whole machine seen from behind.
pub fn machine(input: &DrawingInput) -> Element {
    let whole = group("machine").id("machine").child(feet(input));
    if input.is_off(&TOP) {
        // The sheet of the back covers what hangs down behind it.
        whole
            .child(open_top(input))
            .children(section::lifted_top(input, input.is_off(&PANEL)))
            .children(body(input, TUB_RIM))
            .child(strap())
    } else {
        whole
            .children(body(input, SHOULDER))
            .children(top_down(input))
    }
}

fn feet(input: &DrawingInput) -> Element {
    let foot = |x: f64| {
        group("")
            .child(rect(x - 6.0, 968.0, 12.0, 18.0, "steel fine"))
            .child(rounded(x - 20.0, 982.0, 40.0, 18.0, 5.0, "rubber line"))
    };
    touch::part(
        input,
        "foot",
        (LEFT + 14.0, 968.0, 50.0, 34.0),
        vec![
            foot(1050.0).with("transform", "translate(0 -58)"),
            foot(478.0),
            foot(942.0),
        ],
    )
}

fn body(input: &DrawingInput, upper_edge: f64) -> Vec<Element> {
    let (dx, dy) = RECEDE;
    let side = [
        (RIGHT, SHOULDER),
        (RIGHT + dx, SHOULDER + dy),
        (RIGHT + dx, SKIRT + dy),
        (RIGHT, SKIRT),
    ];
    let (x, y, width, height) = OPENING;
    let mut drawn = vec![touch::part(
        input,
        "cabinet",
        (470.0, 300.0, 400.0, 150.0),
        vec![
            outline(&side, "paint-shade line"),
            rect(
                LEFT,
                upper_edge,
                RIGHT - LEFT,
                SKIRT - upper_edge,
                "paint bold",
            ),
            path("M470 330 H600 M470 346 H600 M470 362 H600", "fine"),
        ],
    )];
    if input.is_off(&BACK) {
        let clip = Element::new("clipPath")
            .id("back-opening")
            .child(rounded(x, y, width, height, 10.0, ""));
        drawn.push(Element::new("defs").child(clip));
        drawn.push(
            group("")
                .with("clip-path", "url(#back-opening)")
                .child(rect(x, y, width, height, "inside"))
                .child(tub(input))
                .child(lower_rods(input))
                .children(section::lower_back(input)),
        );
        drawn.push(rounded(x, y, width, height, 10.0, "no-tone bold"));
    } else {
        drawn.push(back_cover(input));
    }
    drawn
}

/// The cabinet's rim with the tub hanging in it, seen over the edge.
fn open_top(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "tub_cover",
        (590.0, 268.0, 240.0, 34.0),
        vec![
            rect(
                LEFT + 8.0,
                SHOULDER - 34.0,
                RIGHT - LEFT - 16.0,
                74.0,
                "inside line",
            ),
            rounded(
                AXIS - TUB,
                TUB_RIM - 40.0,
                2.0 * TUB,
                42.0,
                10.0,
                "plastic line",
            ),
            path("M496 280 H924", "shine"),
            circle(466.0, 272.0, 9.0, "plastic line"),
            circle(954.0, 272.0, 9.0, "plastic line"),
        ],
    )
}

fn tub(input: &DrawingInput) -> Element {
    let left = AXIS - TUB;
    touch::part(
        input,
        "tub",
        (560.0, 520.0, 300.0, 150.0),
        vec![
            path(
                format!(
                    "M{left} 440 V{} Q{left} {b} {} {b} H{} Q{right} {b} {right} {} V440Z",
                    TUB_FLOOR - 10.0,
                    left + 18.0,
                    AXIS + TUB - 18.0,
                    TUB_FLOOR - 10.0,
                    b = TUB_FLOOR + 8.0,
                    right = AXIS + TUB,
                ),
                "plastic line",
            ),
            path(
                "M560 470 V716 M660 470 V716 M760 470 V716 M860 470 V716",
                "shine",
            ),
            rect(520.0, 728.0, 386.0, 10.0, "steel line"),
        ],
    )
}

fn lower_rods(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "rods",
        (940.0, 520.0, 24.0, 110.0),
        vec![
            line(468.0, 440.0, 470.0, 760.0, "rod"),
            line(952.0, 440.0, 950.0, 760.0, "rod"),
            rounded(460.0, 736.0, 22.0, 8.0, 3.0, "plastic line"),
            rounded(939.0, 736.0, 22.0, 8.0, 3.0, "plastic line"),
        ],
    )
}

fn back_cover(input: &DrawingInput) -> Element {
    let (x, y, width, height) = OPENING;
    // Eight screws: corners and middles of the edges.
    let screws = [
        (0.0, 0.0),
        (0.5, 0.0),
        (1.0, 0.0),
        (0.0, 0.5),
        (1.0, 0.5),
        (0.0, 1.0),
        (0.5, 1.0),
        (1.0, 1.0),
    ]
    .map(|(across, down)| {
        screw(
            x + 14.0 + across * (width - 28.0),
            y + 14.0 + down * (height - 28.0),
        )
    });
    let drawn = vec![
        rounded(x, y, width, height, 10.0, "paint-shade line"),
        rounded(
            x + 34.0,
            y + 34.0,
            width - 68.0,
            height - 68.0,
            16.0,
            "no-tone fine",
        ),
        path(
            "M560 830 H860 M560 846 H860 M560 862 H860 M560 878 H860",
            "fine",
        ),
        group("").children(screws),
    ];
    touch::step(
        input,
        step_id(input, &BACK),
        (x + 60.0, y + 60.0, width - 120.0, height - 120.0),
        drawn,
    )
}

fn screw(x: f64, y: f64) -> Element {
    group("").child(circle(x, y, 6.0, "steel fine")).child(path(
        format!("M{} {y} h8 M{x} {} v8", x - 4.0, y - 4.0),
        "fine",
    ))
}

/// Top cover and panel in place, seen from behind.
fn top_down(input: &DrawingInput) -> Vec<Element> {
    let (dx, dy) = RECEDE;
    let deck_side = [
        (RIGHT, SHOULDER),
        (RIGHT, DECK),
        (RIGHT + dx, DECK + dy),
        (RIGHT + dx, SHOULDER + dy),
    ];
    let panel_top = [
        (LEFT + 14.0, CROWN),
        (LEFT + 60.0, CROWN - 22.0),
        (RIGHT + 34.0, CROWN - 22.0),
        (RIGHT - 12.0, CROWN),
    ];
    let panel_side = [
        (RIGHT, DECK),
        (RIGHT, CROWN + 8.0),
        (RIGHT + 34.0, CROWN - 22.0),
        (RIGHT + 56.0, DECK - 32.0),
    ];
    vec![
        touch::step(
            input,
            step_id(input, &TOP),
            (LEFT + 60.0, DECK - 70.0, 400.0, 110.0),
            vec![
                outline(&deck_side, "plastic-shade line"),
                outline(&panel_side, "plastic-shade line"),
                outline(&panel_top, "plastic-shade line"),
                rounded(
                    LEFT,
                    CROWN,
                    RIGHT - LEFT,
                    DECK - CROWN,
                    10.0,
                    "plastic bold",
                ),
                rounded(
                    LEFT,
                    DECK,
                    RIGHT - LEFT,
                    SHOULDER - DECK,
                    8.0,
                    "plastic bold",
                ),
                path(
                    "M520 130 H720 M520 144 H720 M520 158 H720 M520 172 H720",
                    "fine",
                ),
                screw(LEFT + 20.0, DECK + 24.0),
                screw(RIGHT - 20.0, DECK + 24.0),
                screw(LEFT + 20.0, CROWN + 20.0),
                screw(RIGHT - 90.0, CROWN + 20.0),
            ],
        ),
        touch::part(
            input,
            "inlet_filter",
            (944.0, 104.0, 48.0, 34.0),
            vec![
                circle(958.0, 119.0, 20.0, "plastic line"),
                circle(958.0, 119.0, 12.0, "brass fine"),
                path("M950 113 h16 M950 119 h16 M950 125 h16", "fine"),
            ],
        ),
    ]
}

/// The strap that holds the lifted top cover.
fn strap() -> Element {
    group("strap")
        .child(path("M446 120 Q404 190 438 300", "strap"))
        .child(circle(440.0, 302.0, 5.0, "steel fine"))
}
