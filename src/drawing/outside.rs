//! The machine as the customer sees it: front, top and one side, receding to the right.

use crate::drawing::input::{Command, DrawingInput};
use crate::drawing::svg::{
    Element, circle, ellipse, fitted, group, line, num, outline, path, rect, rounded,
};
use crate::drawing::touch;
use crate::drawing::world::{DECK, LEFT, RECEDE, RIGHT, SHOULDER, SKIRT, receded};
use crate::say;

/// Depth at which the panel's front face stands, and where it leans back to.
const PANEL_FOOT: f64 = 0.74;
const PANEL_TOP: f64 = 0.86;
const PANEL_HEIGHT: f64 = 104.0;

/// The whole machine, without the room.
pub fn machine(input: &DrawingInput) -> Element {
    group("machine")
        .id("machine")
        .children(feet(input))
        .child(cabinet(input))
        .child(top_cover(input))
        .child(opening(input))
        .child(panel(input))
        .children(front_of_panel(input))
        .child(lid(input))
}

fn feet(input: &DrawingInput) -> Vec<Element> {
    let foot = |x: f64| {
        group("")
            .child(rect(x - 6.0, 968.0, 12.0, 18.0, "steel fine"))
            .child(rounded(x - 20.0, 982.0, 40.0, 18.0, 5.0, "rubber line"))
    };
    vec![touch::part(
        input,
        "foot",
        (LEFT + 14.0, 968.0, 50.0, 34.0),
        vec![
            foot(1050.0).with("transform", "translate(0 -58)"),
            foot(478.0),
            foot(942.0),
        ],
    )]
}

fn cabinet(input: &DrawingInput) -> Element {
    let (dx, dy) = RECEDE;
    let side = [
        (RIGHT, SHOULDER),
        (RIGHT + dx, SHOULDER + dy),
        (RIGHT + dx, SKIRT + dy),
        (RIGHT, SKIRT),
    ];
    touch::part(
        input,
        "cabinet",
        (LEFT + 40.0, 380.0, 440.0, 500.0),
        vec![
            outline(&side, "paint-shade line"),
            rounded(
                LEFT,
                SHOULDER - 6.0,
                RIGHT - LEFT,
                SKIRT - SHOULDER + 6.0,
                10.0,
                "paint bold",
            ),
            path(format!("M{LEFT} 918 H{RIGHT}"), "fine"),
            path(
                "M1004 300 L1080 256 M1004 318 L1080 274 M1004 336 L1080 292",
                "fine",
            ),
            rounded(LEFT + 24.0, 300.0, 6.0, 560.0, 3.0, "paint-shade"),
            plate(),
        ],
    )
}

/// The rating plate: lines only, no words of any maker.
fn plate() -> Element {
    group("")
        .child(rounded(840.0, 876.0, 110.0, 30.0, 3.0, "steel fine"))
        .child(path(
            "M848 885 h58 M848 891 h74 M848 897 h46 M930 884 v14 M936 884 v14",
            "fine no-tone",
        ))
}

fn top_cover(input: &DrawingInput) -> Element {
    let (dx, dy) = RECEDE;
    let deck = [
        (LEFT + 4.0, DECK),
        (LEFT + dx + 4.0, DECK + dy),
        (RIGHT + dx, DECK + dy),
        (RIGHT - 2.0, DECK),
    ];
    let side = [
        (RIGHT, SHOULDER),
        (RIGHT, DECK + 6.0),
        (RIGHT + dx, DECK + dy + 6.0),
        (RIGHT + dx, SHOULDER + dy),
    ];
    touch::part(
        input,
        "top_cover",
        (LEFT, DECK, RIGHT - LEFT, SHOULDER - DECK),
        vec![
            outline(&side, "plastic-shade line"),
            outline(&deck, "plastic line"),
            path(
                format!(
                    "M{LEFT} {SHOULDER} V{} Q{LEFT} {DECK} {} {DECK} H{} Q{RIGHT} {DECK} {RIGHT} {} V{SHOULDER}Z",
                    DECK + 14.0,
                    LEFT + 14.0,
                    RIGHT - 14.0,
                    DECK + 14.0
                ),
                "plastic bold",
            ),
            line(LEFT, SHOULDER, RIGHT, SHOULDER, "line"),
        ],
    )
}

fn lid_corners(inset: f64) -> [(f64, f64); 4] {
    let at = |x, depth| receded(x, DECK, depth);
    [
        at(LEFT + 58.0 + inset, 0.06),
        at(RIGHT - 58.0 - inset, 0.06),
        at(RIGHT - 58.0 - inset, 0.68),
        at(LEFT + 58.0 + inset, 0.68),
    ]
}

/// What one sees through the open lid: the ring of the basket and the pulsator's middle.
fn opening(input: &DrawingInput) -> Element {
    let clip = Element::new("clipPath")
        .id("opening")
        .child(outline(&lid_corners(8.0), ""));
    let inside = group("")
        .with("clip-path", "url(#opening)")
        .child(outline(&lid_corners(0.0), "dark"))
        .child(ellipse(754.0, 196.0, 226.0, 52.0, "ring line"))
        .child(ellipse(754.0, 200.0, 184.0, 40.0, "basket line"))
        .child(ellipse(754.0, 214.0, 140.0, 26.0, "pulsator line"))
        .child(ellipse(754.0, 208.0, 18.0, 6.0, "steel fine"));
    touch::part(
        input,
        "basket_inside",
        (600.0, 172.0, 300.0, 36.0),
        vec![Element::new("defs").child(clip), inside],
    )
}

fn lid(input: &DrawingInput) -> Element {
    let shut = lid_corners(0.0);
    let fold = [
        receded(LEFT + 58.0, DECK, 0.37),
        receded(RIGHT - 58.0, DECK, 0.37),
    ];
    let (left, right) = (shut[3], shut[2]);
    let closed = group("")
        .id("lid-shut")
        .child(outline(&shut, "glass line"))
        .child(line(fold[0].0, fold[0].1, fold[1].0, fold[1].1, "fine"))
        .child(line(
            shut[0].0 + 190.0,
            shut[0].1 - 5.0,
            shut[0].0 + 234.0,
            shut[0].1 - 5.0,
            "bold",
        ));
    let stand = |lean: f64, height: f64| {
        [
            left,
            (left.0 + lean, left.1 - height),
            (right.0 + lean, right.1 - height),
            right,
        ]
    };
    let open = group("")
        .id("lid-open")
        .child(outline(&stand(16.0, 158.0), "glass line"))
        .child(outline(&stand(-18.0, 150.0), "glass line"))
        .child(line(
            left.0 - 18.0 + 190.0,
            left.1 - 141.0,
            left.0 - 18.0 + 234.0,
            left.1 - 141.0,
            "bold",
        ));
    touch::part(
        input,
        "lid",
        (620.0, 168.0, 260.0, 40.0),
        vec![open, closed],
    )
}

/// Corners of the panel's front face: lower left, lower right, upper right, upper left.
fn panel_corners() -> [(f64, f64); 4] {
    let foot = |x| receded(x, DECK, PANEL_FOOT);
    let top = |x| {
        let (x, y) = receded(x, DECK, PANEL_TOP);
        (x, y - PANEL_HEIGHT)
    };
    [foot(LEFT + 4.0), foot(RIGHT), top(RIGHT), top(LEFT + 4.0)]
}

fn panel(input: &DrawingInput) -> Element {
    let front = panel_corners();
    let back = |x: f64| {
        let (x, y) = receded(x, DECK, 1.0);
        (x, y - PANEL_HEIGHT + 8.0)
    };
    let top = [front[3], back(LEFT + 4.0), back(RIGHT), front[2]];
    let side = [front[1], front[2], back(RIGHT), receded(RIGHT, DECK, 1.0)];
    touch::part(
        input,
        "panel",
        (front[0].0, front[3].1 - 16.0, 120.0, 40.0),
        vec![
            outline(&side, "plastic-shade line"),
            outline(&top, "plastic-shade line"),
            outline(&front, "plastic bold"),
        ],
    )
}

fn front_of_panel(input: &DrawingInput) -> Vec<Element> {
    match input.features.command {
        Command::Board => board_panel(input),
        Command::Timer => timer_panel(input),
    }
}

/// Middle of the panel's front face at a share of its width and height.
fn on_panel(across: f64, up: f64) -> (f64, f64) {
    let [foot, right, _, top] = panel_corners();
    (
        foot.0 + across * (right.0 - foot.0) + up * (top.0 - foot.0),
        foot.1 + up * (top.1 - foot.1),
    )
}

fn board_panel(input: &DrawingInput) -> Vec<Element> {
    let (x, y) = on_panel(0.24, 0.5);
    let mut drawn = vec![touch::part(
        input,
        "display_board",
        (x - 84.0, y - 26.0, 168.0, 52.0),
        vec![
            rounded(x - 86.0, y - 28.0, 172.0, 56.0, 8.0, "dark line"),
            rounded(x - 76.0, y - 18.0, 96.0, 36.0, 4.0, "lamp").id("display"),
            group("display-words").id("display-words"),
            circle(x + 38.0, y - 10.0, 5.0, "lamp-dot"),
            circle(x + 58.0, y - 10.0, 5.0, "lamp-dot"),
            circle(x + 38.0, y + 10.0, 5.0, "lamp-dot"),
            circle(x + 58.0, y + 10.0, 5.0, "lamp-dot"),
        ],
    )];
    for (id, across, words) in [
        ("program", 0.56, say!("program" as "lettering of a key")),
        (
            "water_level",
            0.68,
            say!("water" as "lettering of a key: water level"),
        ),
        ("start_pause", 0.80, say!("start" as "lettering of a key")),
    ] {
        let (x, y) = on_panel(across, 0.52);
        drawn.push(touch::key(
            input,
            id,
            (x - 26.0, y - 26.0, 52.0, 52.0),
            vec![
                rounded(x - 22.0, y - 16.0, 44.0, 26.0, 13.0, "key"),
                panel_word(x, y + 30.0, words),
            ],
        ));
    }
    if input.features.switch {
        let (x, y) = on_panel(0.92, 0.52);
        drawn.push(touch::part(
            input,
            "on_off_switch",
            (x - 28.0, y - 28.0, 56.0, 56.0),
            vec![
                rounded(x - 20.0, y - 22.0, 40.0, 36.0, 6.0, "key").id("on-off-key"),
                path(format!("M{x} {} v10 M{} {} h0", y - 14.0, x, y), "bold"),
            ],
        ));
        let words = say!("off on" as "lettering of a switch, its two sides");
        drawn.push(panel_word(x, y + 30.0, words));
    } else {
        let (x, y) = on_panel(0.92, 0.52);
        drawn.push(touch::key(
            input,
            "on_off",
            (x - 26.0, y - 26.0, 52.0, 52.0),
            vec![rounded(x - 22.0, y - 16.0, 44.0, 26.0, 13.0, "key").id("on-off-key")],
        ));
        let words = say!("on/off" as "lettering of a key");
        drawn.push(panel_word(x, y + 30.0, words));
    }
    drawn
}

/// The panel's lettering, between the keys' middles.
fn panel_word(x: f64, y: f64, words: &str) -> Element {
    fitted(x, y, "panel-word", words, 8.0)
}

/// What a timer's dial turns about.
pub(super) fn dial_middle() -> (f64, f64) {
    on_panel(0.42, 0.5)
}

fn timer_panel(input: &DrawingInput) -> Vec<Element> {
    let (x, y) = dial_middle();
    let ticks = (0..12).fold(String::new(), |ticks, index| {
        let angle = f64::from(index) * core::f64::consts::PI / 6.0;
        let (sine, cosine) = (libm::sin(angle), libm::cos(angle));
        format!(
            "{ticks}M{:.1} {:.1} L{:.1} {:.1}",
            x + 38.0 * sine,
            y - 38.0 * cosine,
            x + 44.0 * sine,
            y - 44.0 * cosine
        )
    });
    let (lx, ly) = on_panel(0.72, 0.5);
    vec![
        touch::key(
            input,
            "timer_knob",
            (x - 46.0, y - 46.0, 92.0, 92.0),
            vec![
                path(ticks, "fine no-tone"),
                circle(x, y, 33.0, "steel line"),
                group("")
                    .id("dial")
                    .child(rounded(x - 6.0, y - 32.0, 12.0, 64.0, 5.0, "key").id("on-off-key"))
                    .child(path(format!("M{} {} v14", num(x), num(y - 29.0)), "bold")),
            ],
        ),
        touch::key(
            input,
            "level_knob",
            (lx - 30.0, ly - 30.0, 60.0, 60.0),
            vec![
                circle(lx, ly, 22.0, "steel line"),
                rounded(lx - 4.0, ly - 21.0, 8.0, 42.0, 4.0, "key"),
            ],
        ),
        panel_word(
            lx,
            ly + 42.0,
            say!("water" as "lettering of a key: water level"),
        ),
    ]
}
