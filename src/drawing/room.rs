//! The room: wall, floor, tap, socket, gully, hoses and cord. The same in every view.

use crate::drawing::input::{Drain, DrawingInput, View};
use crate::drawing::svg::{Element, circle, ellipse, group, line, outline, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{FLOOR, GULLY, METRE, SOCKET, TAP, TUB_FLOOR, VIEW_BOX, WALL_FOOT};

/// How far wall and floor reach beyond the sheet.
const BEYOND: f64 = 2000.0;

/// Wall and floor, behind everything.
pub fn backdrop(input: &DrawingInput) -> Vec<Element> {
    // The room goes on beyond the sheet, for windows of another shape.
    let (left, top, width, height) = VIEW_BOX;
    let (left, top, width, height) = (
        left - BEYOND,
        top - BEYOND,
        width + 2.0 * BEYOND,
        height + 2.0 * BEYOND,
    );
    vec![
        rect(left, top, width, WALL_FOOT - 30.0 - top, "wall"),
        rect(left, WALL_FOOT - 30.0, width, 30.0, "skirting"),
        touch::part(
            input,
            "floor",
            (1010.0, FLOOR + 10.0, 130.0, 56.0),
            vec![
                rect(left, WALL_FOOT, width, top + height - WALL_FOOT, "floor"),
                line(left, WALL_FOOT, left + width, WALL_FOOT, "floor-edge"),
                line(
                    left,
                    WALL_FOOT - 30.0,
                    left + width,
                    WALL_FOOT - 30.0,
                    "floor-edge",
                ),
                outline(
                    &[
                        (452.0, 1003.0),
                        (970.0, 1003.0),
                        (1092.0, 938.0),
                        (560.0, 938.0),
                    ],
                    "shade",
                ),
                ellipse(900.0, FLOOR + 16.0, 0.0, 0.0, "puddle").id("puddle"),
            ],
        ),
    ]
}

/// The space under the machine, where one looks for water.
pub fn below(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "under_machine",
        (620.0, 976.0, 180.0, 30.0),
        Vec::new(),
    )
}

/// Tap, socket, gully, hoses and cord, in front of the wall.
pub fn services(input: &DrawingInput, view: View) -> Vec<Element> {
    let mut drawn = vec![socket(input), drain_hose(input, view), gully(input)];
    drawn.push(supply_hose(input, view));
    if input.features.hot_inlet {
        drawn.push(tap(input, "hot_tap", TAP.0 + 74.0));
    }
    drawn.push(tap(input, "tap", TAP.0));
    if view != View::Water {
        drawn.push(cord(input, view));
        drawn.push(plug(input));
    }
    drawn
}

/// How the machine stands in a view: decides where hoses and cord leave it.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Standing {
    FrontOn,
    BackOn,
    Lying,
}

fn standing(input: &DrawingInput, view: View) -> Standing {
    match view {
        View::Outside => Standing::FrontOn,
        View::Opened if input.is_off(&["lay_down"]) => Standing::Lying,
        View::Opened if !input.is_off(&["pull_out"]) => Standing::FrontOn,
        View::Opened | View::Section | View::Water => Standing::BackOn,
    }
}

fn tap(input: &DrawingInput, id: &'static str, x: f64) -> Element {
    let y = TAP.1;
    touch::part(
        input,
        id,
        (x - 34.0, y - 92.0, 68.0, 84.0),
        vec![
            rounded(x - 22.0, y - 70.0, 44.0, 30.0, 6.0, "steel line"),
            circle(x, y - 55.0, 18.0, "steel line"),
            path(
                format!(
                    "M{} {} V{} H{} V{}",
                    x - 11.0,
                    y - 40.0,
                    y - 8.0,
                    x + 11.0,
                    y - 40.0
                ),
                "steel line",
            ),
            rect(x - 15.0, y - 12.0, 30.0, 14.0, "brass line"),
            group("")
                .id(if id == "tap" {
                    "tap-handle"
                } else {
                    "hot-tap-handle"
                })
                .child(rounded(x - 6.0, y - 104.0, 12.0, 52.0, 6.0, "handle line"))
                .child(circle(x, y - 55.0, 8.0, "handle line")),
        ],
    )
}

fn socket(input: &DrawingInput) -> Element {
    let (x, y) = SOCKET;
    touch::part(
        input,
        "socket",
        (x - 46.0, y - 46.0, 92.0, 92.0),
        vec![
            rounded(x - 44.0, y - 44.0, 88.0, 88.0, 10.0, "plastic line"),
            circle(x, y, 30.0, "paint line"),
            circle(x - 11.0, y, 4.5, "hole"),
            circle(x + 11.0, y, 4.5, "hole"),
            path(format!("M{x} {} v9 M{x} {} v9", y - 29.0, y + 20.0), "tab"),
        ],
    )
}

fn gully(input: &DrawingInput) -> Element {
    let (x, top) = match input.features.drain {
        Drain::Gravity => GULLY,
        Drain::Pump => (GULLY.0 + 74.0, 470.0),
    };
    let foot = WALL_FOOT + 22.0;
    touch::part(
        input,
        "floor_drain",
        (x - 34.0, top - 6.0, 68.0, 60.0),
        vec![
            path(
                format!(
                    "M{} {top} h52 l-6 24 V{foot} h-40 V{}Z",
                    x - 26.0,
                    top + 24.0
                ),
                "plastic line",
            ),
            rect(x - 30.0, foot - 10.0, 60.0, 10.0, "plastic line"),
        ],
    )
}

/// An end this far over the floor drain's edge does not stand in it.
const HUNG_UP: f64 = 60.0;

fn drain_hose(input: &DrawingInput, view: View) -> Element {
    let start = match standing(input, view) {
        Standing::FrontOn => (1040.0, 835.0),
        Standing::BackOn | Standing::Lying => (984.0, 848.0),
    };
    let (x, top) = GULLY;
    let hangs_at = TUB_FLOOR - input.pose.outlet_m * METRE;
    let run = match input.features.drain {
        // Hung up beside its drain, over a hook.
        Drain::Gravity if hangs_at < top - HUNG_UP => format!(
            "M{} {} C1070 {} 1120 840 1120 790 V{} C1120 {top} 1176 {top} 1176 {hangs_at}",
            start.0,
            start.1,
            start.1,
            hangs_at + 20.0,
            top = hangs_at - 46.0,
        ),
        Drain::Gravity => format!(
            "M{} {} C1060 {} 1100 820 1150 826 Q{x} 832 {x} {}",
            start.0,
            start.1,
            start.1,
            top + 18.0
        ),
        Drain::Pump => format!(
            "M{} {} C1090 {} 1110 820 1110 700 V560 C1110 430 1284 400 1284 {}",
            start.0, start.1, start.1, 490.0
        ),
    };
    let end = match input.features.drain {
        Drain::Gravity if hangs_at < top - HUNG_UP => (1176.0, hangs_at),
        Drain::Gravity => (x, top + 18.0),
        Drain::Pump => (x + 74.0, 490.0),
    };
    touch::part(
        input,
        "drain_hose",
        (1080.0, 808.0, 80.0, 40.0),
        vec![
            path(run.clone(), "hose hose--edge"),
            path(run.clone(), "hose"),
            path(run.clone(), "hose-ribs"),
            path(run, "hose-flow flow")
                .id("outflow-hose")
                .with("opacity", "0"),
            line(end.0, end.1, end.0, end.1 + 30.0, "stream flow")
                .id("outflow")
                .with("opacity", "0"),
        ],
    )
}

fn supply_hose(input: &DrawingInput, view: View) -> Element {
    let end = match standing(input, view) {
        Standing::FrontOn => (1090.0, 180.0),
        Standing::BackOn => (1000.0, 119.0),
        Standing::Lying => (1040.0, 440.0),
    };
    let (x, y) = TAP;
    let on = format!(
        "M{x} {} C{x} 470 1110 470 1090 {} C1070 {} {} {} {} {}",
        y + 6.0,
        end.1 + 160.0,
        end.1 + 30.0,
        end.0 + 46.0,
        end.1,
        end.0,
        end.1
    );
    let off = format!("M{x} {} C{x} 520 1120 560 1112 {}", y + 6.0, FLOOR - 8.0);
    touch::part(
        input,
        "supply_hose",
        (1150.0, 330.0, 70.0, 90.0),
        vec![
            group("")
                .id("supply-on")
                .child(path(on.clone(), "hose hose--edge"))
                .child(path(on.clone(), "hose hose--supply"))
                .child(
                    path(on, "hose-flow flow")
                        .id("inflow-hose")
                        .with("opacity", "0"),
                )
                .child(rounded(
                    end.0 - 14.0,
                    end.1 - 15.0,
                    22.0,
                    30.0,
                    5.0,
                    "plastic line",
                )),
            group("")
                .id("supply-off")
                .child(path(off.clone(), "hose hose--edge"))
                .child(path(off, "hose hose--supply")),
            rounded(x - 17.0, y, 34.0, 20.0, 5.0, "plastic line"),
        ],
    )
}

fn cord(input: &DrawingInput, view: View) -> Element {
    let (x, y) = SOCKET;
    // Lying on its front, the machine hides where the cord goes in.
    let start = if standing(input, view) == Standing::Lying {
        "M1090 520 C1130 560"
    } else {
        "M1000 236 C1120 236"
    };
    let on = format!(
        "{start} 1090 640 1250 650 C1400 660 {x} 520 {x} {}",
        y + 26.0
    );
    let off = format!(
        "{start} 1090 640 1220 720 C1330 790 1300 {f} 1392 {f}",
        f = FLOOR + 34.0
    );
    touch::part(
        input,
        "mains_cord",
        (1216.0, 614.0, 80.0, 60.0),
        vec![
            group("")
                .id("cord-on")
                .child(path(on.clone(), "cord cord--edge"))
                .child(path(on, "cord")),
            group("")
                .id("cord-off")
                .child(path(off.clone(), "cord cord--edge"))
                .child(path(off, "cord")),
        ],
    )
}

fn plug(input: &DrawingInput) -> Element {
    let (x, y) = SOCKET;
    touch::part(
        input,
        "plug",
        (x - 30.0, y - 10.0, 60.0, 74.0),
        vec![
            group("").id("plug-on").child(path(
                format!(
                    "M{} {} h44 v26 q0 16 -14 20 v14 h-16 v-14 q-14 -4 -14 -20z",
                    x - 22.0,
                    y - 12.0
                ),
                "rubber line",
            )),
            group("")
                .id("plug-off")
                .child(path(
                    format!(
                        "M1384 {} h14 q4 -14 20 -14 h26 v44 h-26 q-16 0 -20 -14 h-14z",
                        FLOOR + 26.0
                    ),
                    "rubber line",
                ))
                .child(path(
                    format!("M1444 {} h20 M1444 {} h20", FLOOR + 23.0, FLOOR + 45.0),
                    "pin",
                )),
        ],
    )
}
