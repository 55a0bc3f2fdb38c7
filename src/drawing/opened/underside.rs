//! Laid on its front and seen from below: pulleys and belt face on, brake, lever, wire, drain.

use core::f64::consts::PI;

use crate::drawing::input::{Drain, DrawingInput};
use crate::drawing::steps::{BELT, GUARD, LAID_DOWN, LEVER, step_id};
use crate::drawing::svg::{Element, circle, group, line, outline, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{
    AXIS, GEARBOX_PULLEY, LEFT, LYING_AXIS, MOTOR, MOTOR_PULLEY, RIGHT, TUB,
};

/// Upper and lower edge of the underside: back and front of the machine.
const TOP: f64 = 440.0;
const BOTTOM: f64 = 1000.0;
/// Height of the wire.
const WIRE: f64 = 590.0;

/// The whole machine lying on its blanket.
pub fn machine(input: &DrawingInput) -> Element {
    let mut whole = group("machine")
        .id("machine")
        .child(body(input))
        .child(tub_from_below(input))
        .child(rods(input))
        .child(motor(input))
        .child(gearbox(input))
        .child(band(input));
    whole = whole
        .children(drain(input))
        .child(lever(input))
        .child(wire(input));
    whole = whole.child(pulley(input, "mechanism_pulley", AXIS, GEARBOX_PULLEY));
    whole = whole.child(pulley(input, "motor_pulley", MOTOR, MOTOR_PULLEY));
    if !input.is_off(&BELT) {
        whole = whole.child(touch::part(
            input,
            "belt",
            (580.0, LYING_AXIS - 26.0, 60.0, 52.0),
            vec![path("", "belt-round").id("belt-face")],
        ));
    }
    if !input.is_off(&GUARD) {
        whole = whole.child(guard(input));
    }
    whole
}

fn body(input: &DrawingInput) -> Element {
    let back = [
        (LEFT, TOP),
        (LEFT + 150.0, TOP - 86.0),
        (RIGHT + 150.0, TOP - 86.0),
        (RIGHT, TOP),
    ];
    let side = [
        (RIGHT, TOP),
        (RIGHT + 150.0, TOP - 86.0),
        (RIGHT + 150.0, BOTTOM - 86.0),
        (RIGHT, BOTTOM),
    ];
    let frame = format!(
        "M{LEFT} {TOP} H{RIGHT} V{BOTTOM} H{LEFT}Z M{l} {t} V{b} H{r} V{t}Z",
        l = LEFT + 34.0,
        r = RIGHT - 34.0,
        t = TOP + 34.0,
        b = BOTTOM - 34.0
    );
    let foot = |x: f64, y: f64| {
        group("")
            .child(circle(x, y, 21.0, "rubber line"))
            .child(circle(x, y, 9.0, "steel fine"))
    };
    let drawn = vec![
        path("M400 1012 L1030 1012 L1170 926 H520 Z", "blanket line"),
        outline(&back, "paint-shade line"),
        outline(&side, "paint line"),
        rect(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, "inside bold"),
        path(frame, "steel line").with("fill-rule", "evenodd"),
        foot(LEFT + 36.0, TOP + 36.0),
        foot(RIGHT - 36.0, TOP + 36.0),
        foot(LEFT + 36.0, BOTTOM - 36.0),
        foot(RIGHT - 36.0, BOTTOM - 36.0),
    ];
    touch::step(
        input,
        step_id(input, &LAID_DOWN),
        (LEFT + 70.0, BOTTOM - 40.0, 400.0, 40.0),
        drawn,
    )
}

fn tub_from_below(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "tub",
        (620.0, 880.0, 180.0, 56.0),
        vec![
            circle(AXIS, LYING_AXIS, TUB, "plastic line"),
            circle(AXIS, LYING_AXIS, TUB - 22.0, "no-tone shine"),
            path(
                format!(
                    "M{} {} H{} V{} H{}Z",
                    MOTOR - 66.0,
                    LYING_AXIS - 92.0,
                    910.0,
                    LYING_AXIS + 92.0,
                    MOTOR - 66.0
                ),
                "steel line",
            ),
            circle(AXIS, LYING_AXIS, 84.0, "inside fine"),
        ],
    )
}

fn rods(input: &DrawingInput) -> Element {
    let cup = |x: f64, y: f64| {
        group("")
            .child(rounded(x - 22.0, y - 22.0, 44.0, 44.0, 8.0, "plastic line"))
            .child(circle(x, y, 13.0, "steel line"))
            .child(circle(x, y, 6.0, "shaft fine"))
    };
    let reach = 176.0;
    touch::part(
        input,
        "rods",
        (AXIS + reach - 22.0, LYING_AXIS + reach - 22.0, 44.0, 44.0),
        [(-1.0, -1.0), (1.0, -1.0), (-1.0, 1.0), (1.0, 1.0)]
            .map(|(x, y)| cup(AXIS + reach * x, LYING_AXIS + reach * y))
            .into(),
    )
}

fn motor(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "motor",
        (MOTOR - 56.0, LYING_AXIS + 34.0, 112.0, 40.0),
        vec![
            rounded(
                MOTOR - 70.0,
                LYING_AXIS - 12.0,
                140.0,
                24.0,
                6.0,
                "steel line",
            ),
            circle(MOTOR, LYING_AXIS, 60.0, "cast line"),
            circle(MOTOR, LYING_AXIS, 44.0, "copper fine"),
            circle(MOTOR, LYING_AXIS, 36.0, "cast fine"),
            circle(MOTOR - 62.0, LYING_AXIS, 6.0, "steel fine"),
            circle(MOTOR + 62.0, LYING_AXIS, 6.0, "steel fine"),
        ],
    )
}

fn gearbox(input: &DrawingInput) -> Element {
    let bolts = (0..4).map(|index| {
        let angle = PI / 4.0 + PI / 2.0 * f64::from(index);
        let reach = 98.0;
        circle(
            AXIS + reach * libm::cos(angle),
            LYING_AXIS + reach * libm::sin(angle),
            8.0,
            "steel line",
        )
    });
    touch::part(
        input,
        "mechanism",
        (AXIS - 30.0, LYING_AXIS + 84.0, 60.0, 30.0),
        vec![
            circle(AXIS, LYING_AXIS, 110.0, "cast line"),
            circle(AXIS, LYING_AXIS, 84.0, "grease fine"),
            group("").children(bolts),
        ],
    )
}

fn band(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "brake_band",
        (AXIS - 90.0, LYING_AXIS - 84.0, 60.0, 30.0),
        vec![
            circle(AXIS, LYING_AXIS, 70.0, "shaft line"),
            path(
                format!(
                    "M{} {} A76 76 0 1 0 {} {}",
                    AXIS + 48.0,
                    LYING_AXIS - 59.0,
                    AXIS + 70.0,
                    LYING_AXIS - 30.0
                ),
                "band",
            ),
            path(
                format!("M{} {} l18 -22", AXIS + 48.0, LYING_AXIS - 59.0),
                "bolt",
            ),
            path(
                format!("M{} {} l22 -14", AXIS + 70.0, LYING_AXIS - 30.0),
                "bolt",
            ),
        ],
    )
}

fn lever(input: &DrawingInput) -> Element {
    let arm = group("").id("lever").child(path(
        "M742 674 L772 606 Q774 598 782 596 H796 V580 H804 V606 H786 L758 682Z",
        "lever line",
    ));
    let pivot = circle(762.0, 664.0, 7.0, "steel line");
    let lever = touch::part(
        input,
        "clutch_lever",
        (752.0, 590.0, 56.0, 80.0),
        vec![arm, pivot],
    );
    group("").child(lever).child(touch::part(
        input,
        "clutch_set",
        (AXIS - 26.0, LYING_AXIS - 110.0, 52.0, 30.0),
        vec![path(
            "M684 632 q26 -14 52 0 M684 640 q26 -14 52 0 M684 648 q26 -14 52 0",
            "spring",
        )],
    ))
}

fn wire(input: &DrawingInput) -> Element {
    // Unhooked, the link hangs beside the lever.
    let drop = if input.is_off(&LEVER) { 26.0 } else { 0.0 };
    group("pull-wire").id("pull-wire").child(
        group("")
            .child(line(884.0, WIRE, 918.0, WIRE, "wire-rope"))
            .child(path(
                format!("M816 {} H888 V{} H816Z", WIRE - 4.0, WIRE + 4.0),
                "lever line",
            ))
            .child(path(
                format!("M816 {WIRE} L{} {}", 802.0, WIRE - drop),
                "wire-rope",
            ))
            .child(circle(800.0, WIRE - drop, 7.0, "lever line").id("link-eye")),
    )
}

fn drain(input: &DrawingInput) -> Vec<Element> {
    let hose = path(
        format!("M850 560 V500 Q850 470 880 470 H{RIGHT}"),
        "hose hose--edge",
    );
    let inner = path(format!("M850 560 V500 Q850 470 880 470 H{RIGHT}"), "hose");
    let puller = |id: &str| {
        touch::part(
            input,
            id,
            (902.0, WIRE - 34.0, 56.0, 68.0),
            vec![
                rounded(906.0, WIRE - 36.0, 40.0, 72.0, 6.0, "plastic line"),
                rect(900.0, WIRE - 44.0, 52.0, 8.0, "steel line"),
                rect(900.0, WIRE + 36.0, 52.0, 8.0, "steel line"),
                circle(926.0, WIRE, 13.0, "steel fine"),
                path(format!("M926 {} v20 M916 {WIRE} h20", WIRE - 10.0), "fine"),
            ],
        )
    };
    let (id, area, shape, motor) = match input.features.drain {
        Drain::Gravity => (
            "drain_valve",
            (816.0, WIRE - 36.0, 66.0, 72.0),
            vec![
                rounded(818.0, WIRE - 36.0, 62.0, 72.0, 12.0, "plastic line"),
                circle(849.0, WIRE, 22.0, "plastic-shade fine"),
                path(format!("M849 {} v26 M836 {WIRE} h26", WIRE - 13.0), "fine"),
            ],
            "drain_motor",
        ),
        Drain::Pump => (
            "drain_pump",
            (806.0, 456.0, 88.0, 88.0),
            vec![
                circle(850.0, 500.0, 46.0, "plastic line"),
                circle(850.0, 500.0, 30.0, "copper line"),
                path("M836 500 h28 M850 486 v28", "fine"),
            ],
            "drain_motor",
        ),
    };
    vec![
        group("").child(hose).child(inner),
        touch::part(input, id, area, shape),
        puller(motor),
    ]
}

fn pulley(input: &DrawingInput, id: &str, axis: f64, radius: f64) -> Element {
    let face = if id == "motor_pulley" {
        "motor-pulley-face"
    } else {
        "gearbox-pulley-face"
    };
    let spokes = (0..4).map(|index| {
        let angle = PI / 2.0 * f64::from(index);
        let (cosine, sine) = (libm::cos(angle), libm::sin(angle));
        line(
            axis + 9.0 * cosine,
            LYING_AXIS + 9.0 * sine,
            axis + (radius - 8.0) * cosine,
            LYING_AXIS + (radius - 8.0) * sine,
            "bold",
        )
    });
    touch::part(
        input,
        id,
        (
            axis - radius * 0.7,
            LYING_AXIS - radius * 0.7,
            radius * 1.4,
            radius * 1.4,
        ),
        vec![
            circle(axis, LYING_AXIS, radius + 5.0, "steel line"),
            circle(axis, LYING_AXIS, radius - 6.0, "shaft fine"),
            group("").id(face).children(spokes),
            circle(axis, LYING_AXIS, 10.0, "brass line"),
        ],
    )
}

fn guard(input: &DrawingInput) -> Element {
    let bolts = [480.0, 640.0, 800.0].into_iter().flat_map(|x| {
        [LYING_AXIS - 66.0, LYING_AXIS + 66.0].map(|y| circle(x, y, 8.0, "steel line"))
    });
    touch::step(
        input,
        step_id(input, &GUARD),
        (470.0, LYING_AXIS - 60.0, 320.0, 120.0),
        vec![
            rounded(452.0, LYING_AXIS - 84.0, 366.0, 168.0, 14.0, "cast line"),
            rounded(476.0, LYING_AXIS - 46.0, 318.0, 92.0, 30.0, "no-tone fine"),
            path(
                format!(
                    "M520 {y} h30 M570 {y} h30 M620 {y} h30 M670 {y} h30 M720 {y} h30",
                    y = LYING_AXIS
                ),
                "bold",
            ),
            group("").children(bolts),
        ],
    )
}
