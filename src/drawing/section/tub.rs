//! Outer tub, basket, pulsator, water and load.
//!
//! What turns is drawn as it looks from the side: a rib at angle a is as wide as cos a, a column
//! of holes stands at R sin a. The painter moves them.

use core::f64::consts::PI;

use crate::drawing::input::DrawingInput;
use crate::drawing::steps::{BASKET as BASKET_OUT, PULSATOR as PULSATOR_OFF, TUB_COVER};
use crate::drawing::svg::{Element, circle, ellipse, group, line, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{
    AXIS, BASKET, BASKET_FLOOR, BASKET_RIM, PULSATOR, TUB, TUB_FLOOR, TUB_RIM,
};

/// Ids of the pulsator's ribs.
pub const RIBS: [&str; 3] = ["rib-0", "rib-1", "rib-2"];
/// Ids of the basket's columns of holes, evenly round it.
pub const COLUMNS: [&str; 10] = [
    "holes-0", "holes-1", "holes-2", "holes-3", "holes-4", "holes-5", "holes-6", "holes-7",
    "holes-8", "holes-9",
];
/// Angle between two ribs, rad; a rib reaches to both sides.
pub const RIB_STEP_RAD: f64 = PI / 3.0;
/// Angle between two columns of holes, rad.
pub const COLUMN_STEP_RAD: f64 = PI / 5.0;

/// The outer tub with its cover and the air chamber on its side.
pub fn outer(input: &DrawingInput) -> Vec<Element> {
    let left = AXIS - TUB;
    let right = AXIS + TUB;
    let wall = format!(
        "M{} {TUB_RIM} h12 v8 h-5 V{} q0 6 6 6 H{} V728 H{} q-16 0 -16 -16 V{TUB_RIM}Z",
        left - 3.0,
        TUB_FLOOR - 6.0,
        AXIS - 40.0,
        left + 13.0,
    );
    let clip = Element::new("clipPath").id("inside-the-tub").child(rect(
        left + 6.0,
        TUB_RIM - 16.0,
        2.0 * TUB - 12.0,
        TUB_FLOOR - TUB_RIM + 16.0,
        "",
    ));
    let tub = touch::part(
        input,
        "tub",
        (left - 4.0, 560.0, 22.0, 70.0),
        vec![
            rect(
                left + 4.0,
                TUB_RIM,
                right - left - 8.0,
                TUB_FLOOR - TUB_RIM,
                "tub",
            ),
            path(wall.clone(), "cut-plastic"),
            path(wall, "cut-plastic").with("transform", "translate(1420 0) scale(-1 1)"),
            rect(520.0, 728.0, 386.0, 10.0, "steel line"),
            path("M664 728 L676 700 H744 L756 728Z", "cut-plastic"),
        ],
    );
    let mut drawn = vec![Element::new("defs").child(clip), tub, air_chamber(input)];
    if !input.is_off(&TUB_COVER) {
        drawn.push(tub_cover(input));
    }
    drawn
}

fn tub_cover(input: &DrawingInput) -> Element {
    let left = "M474 300 V290 Q474 284 482 284 H556 Q566 284 566 292 V310 H558 V296 H490 V300Z";
    touch::part(
        input,
        "tub_cover",
        (476.0, 276.0, 84.0, 26.0),
        vec![
            line(566.0, 300.0, 854.0, 300.0, "fine hidden-edge"),
            path(left, "cut-plastic"),
            path(left, "cut-plastic").with("transform", "translate(1420 0) scale(-1 1)"),
        ],
    )
}

/// Air chamber: a dome on the tub's side, open below into the tub.
pub fn air_chamber(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "air_chamber",
        (448.0, 640.0, 36.0, 70.0),
        vec![
            path(
                "M484 640 H464 Q452 640 452 652 V692 Q452 704 464 704 H484Z",
                "cut-plastic",
            ),
            path(
                "M484 648 H466 Q460 648 460 654 V690 Q460 697 466 697 H484Z",
                "tub",
            ),
            rect(456.0, 620.0, 8.0, 22.0, "plastic fine"),
            rect(458.0, 648.0, 26.0, 0.0, "water").id("air-chamber-water"),
        ],
    )
}

/// Basket with ring, holes and filter, pulsator, load and the water over all of it; what is out
/// lies beside the opened machine and is not here.
pub fn basket_and_water(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = Vec::new();
    let basket_in = !input.is_off(&BASKET_OUT);
    if basket_in {
        drawn.extend([basket(input), lint_filter(input), load()]);
    }
    if !input.is_off(&PULSATOR_OFF) {
        drawn.push(pulsator(input));
    }
    if basket_in {
        drawn.push(ring(input));
    }
    drawn.push(water());
    drawn
}

fn basket(input: &DrawingInput) -> Element {
    let height = BASKET_FLOOR - BASKET_RIM;
    let clip = Element::new("clipPath").id("inside-the-basket").child(rect(
        AXIS - BASKET,
        BASKET_RIM,
        2.0 * BASKET,
        height,
        "",
    ));
    let columns = COLUMNS.map(|id| {
        let column = group("holes").id(id).with("transform", "translate(710 0)");
        (0..9).fold(column, |column, row| {
            column.child(circle(0.0, 398.0 + 32.0 * f64::from(row), 4.2, "hole"))
        })
    });
    let wall = group("")
        .with("clip-path", "url(#inside-the-basket)")
        .child(rect(
            AXIS - BASKET,
            BASKET_RIM,
            2.0 * BASKET,
            height,
            "basket",
        ))
        .children([450.0, 578.0].map(|y| line(AXIS - BASKET, y, AXIS + BASKET, y, "shine")))
        .children(columns)
        .child(
            group("streaks")
                .id("basket-streaks")
                .with("opacity", "0")
                .children((0..7).map(|row| {
                    let y = 412.0 + 42.0 * f64::from(row);
                    line(AXIS - BASKET, y, AXIS + BASKET, y, "fine")
                })),
        );
    let edge = |side: f64| {
        let x = AXIS + side * BASKET;
        path(
            format!(
                "M{x} {BASKET_RIM} V{} Q{x} {} {} {}",
                BASKET_FLOOR - 14.0,
                BASKET_FLOOR,
                x - side * 18.0,
                BASKET_FLOOR
            ),
            "sheet",
        )
    };
    let foot = path(
        "M512 694 H560 L600 706 H664 L680 698 H740 L756 706 H820 L860 694 H908",
        "sheet",
    );
    touch::part(
        input,
        "basket",
        (800.0, 430.0, 120.0, 120.0),
        vec![
            Element::new("defs").child(clip),
            wall,
            edge(-1.0),
            edge(1.0),
            foot,
        ],
    )
}

fn lint_filter(input: &DrawingInput) -> Element {
    let bag = group("")
        .id("lint-filter")
        .child(rounded(-22.0, 452.0, 44.0, 92.0, 12.0, "plastic line"))
        .child(path(
            "M-12 470 H12 M-12 484 H12 M-12 498 H12 M-12 512 H12 M-12 526 H12",
            "fine no-tone",
        ));
    let inside = group("")
        .with("clip-path", "url(#inside-the-basket)")
        .child(bag);
    touch::part(
        input,
        "lint_filter",
        (686.0, 450.0, 48.0, 96.0),
        vec![inside],
    )
}

fn ring(input: &DrawingInput) -> Element {
    let half = |x: f64| {
        group("")
            .child(rounded(x, BASKET_RIM - 4.0, 38.0, 48.0, 7.0, "cut-plastic"))
            .child(rounded(x + 5.0, BASKET_RIM + 1.0, 28.0, 38.0, 4.0, "tub"))
            .child(rect(x + 5.0, BASKET_RIM + 16.0, 28.0, 23.0, "liquid"))
    };
    touch::part(
        input,
        "balance_ring",
        (AXIS - BASKET - 3.0, BASKET_RIM - 4.0, 40.0, 48.0),
        vec![
            rect(AXIS - 178.0, BASKET_RIM - 2.0, 356.0, 44.0, "ring fine"),
            line(
                AXIS - 178.0,
                BASKET_RIM + 10.0,
                AXIS + 178.0,
                BASKET_RIM + 10.0,
                "shine",
            ),
            half(AXIS - BASKET - 2.0),
            half(AXIS + BASKET - 36.0),
        ],
    )
}

fn pulsator(input: &DrawingInput) -> Element {
    let ribs = RIBS.map(|id| {
        group("")
            .id(id)
            .with("transform", "translate(710 692)")
            .child(path(
                "M0 -84 C26 -82 34 -40 150 -22 V-8 H-150 V-22 C-34 -40 -26 -82 0 -84Z",
                "pulsator line",
            ))
    });
    touch::part(
        input,
        "pulsator",
        (AXIS - 70.0, 606.0, 140.0, 80.0),
        vec![
            group("").children(ribs),
            path(
                "M545 690 Q547 678 566 674 Q660 660 690 640 H730 Q760 660 854 674 \
                 Q873 678 875 690 Z",
                "pulsator line",
            ),
            ellipse(AXIS, 612.0, 17.0, 7.0, "steel line"),
            line(
                AXIS - PULSATOR + 8.0,
                682.0,
                AXIS + PULSATOR - 8.0,
                682.0,
                "shine",
            ),
        ],
    )
}

/// Textile in the basket; the painter raises it with the load.
fn load() -> Element {
    group("load")
        .id("load")
        .with("display", "none")
        .child(path(
            "M520 690 C500 640 540 600 580 612 C600 560 680 560 700 596 C730 560 800 560 820 604 \
             C870 590 920 640 900 690Z",
            "textile line",
        ))
        .child(path(
            "M560 640 q30 -24 60 0 M640 620 q40 -26 80 4 M760 640 q34 -24 70 4 M600 668 q50 -20 90 0 \
             M730 672 q46 -22 96 -2",
            "no-tone fine",
        ))
}

fn water() -> Element {
    group("water-in-tub")
        .with("clip-path", "url(#inside-the-tub)")
        .with("pointer-events", "none")
        .child(rect(0.0, TUB_FLOOR, 1560.0, 440.0, "water").id("water"))
        .child(rect(AXIS - TUB, TUB_FLOOR, 2.0 * TUB, 0.0, "foam").id("foam"))
        .child(line(AXIS - TUB, TUB_FLOOR, AXIS + TUB, TUB_FLOOR, "water-line").id("water-line"))
        .child(rect(838.0, 270.0, 12.0, 0.0, "stream flow").id("inflow"))
}
