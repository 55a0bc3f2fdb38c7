//! The compartment behind the panel and what hangs below the top cover.

use crate::drawing::input::{Command, DrawingInput};
use crate::drawing::section::control;
use crate::drawing::svg::{Element, circle, group, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{CROWN, DECK, LEFT, RIGHT};

/// The panel's back side with everything fixed in it; the board only when its cover is off.
pub fn compartment(input: &DrawingInput, board_bare: bool) -> Vec<Element> {
    let mut drawn = vec![touch::part(
        input,
        "panel",
        (LEFT, CROWN - 14.0, 110.0, 24.0),
        vec![path(
            format!(
                "M{LEFT} {DECK} V{c} Q{LEFT} {t} {l} {t} H{r} Q{RIGHT} {t} {RIGHT} {c} V{DECK}Z",
                c = CROWN + 8.0,
                t = CROWN - 8.0,
                l = LEFT + 16.0,
                r = RIGHT - 16.0
            ),
            "inside line",
        )],
    )];
    match input.features.command {
        Command::Board => drawn.extend(control::board_side(input, board_bare)),
        Command::Timer => drawn.extend(control::timer_side(input)),
    }
    drawn.extend(water_side(input));
    drawn.extend(mains_side(input));
    drawn
}

/// Inlet valve, level sensor and air hose: what water or its pressure meets.
pub fn water_side(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = vec![air_hose(input), level(input)];
    if input.features.hot_inlet {
        drawn.push(inlet(input, &[890.0, 932.0]));
    } else {
        drawn.push(inlet(input, &[918.0]));
    }
    drawn.push(touch::part(
        input,
        "inlet_filter",
        (966.0, 106.0, 34.0, 26.0),
        vec![
            rect(958.0, 110.0, 30.0, 18.0, "brass line"),
            path(
                "M970 112 v14 M974 112 v14 M978 112 v14 M982 112 v14",
                "fine no-tone",
            ),
        ],
    ));
    drawn
}

fn inlet(input: &DrawingInput, coils: &[f64]) -> Element {
    let pipe =
        "M958 112 H864 Q850 112 850 126 V250 L842 268 H854 L862 250 V130 Q862 124 868 124 H958Z";
    let coil = |x: f64| {
        group("")
            .child(rounded(x - 20.0, 132.0, 40.0, 36.0, 4.0, "copper line"))
            .child(path(
                format!("M{} 132 v36 M{} 132 v36", x - 8.0, x + 8.0),
                "fine no-tone",
            ))
            .child(rect(x - 8.0, 122.0, 16.0, 12.0, "steel fine"))
            .child(path(
                format!("M{} 168 v10 M{} 168 v10", x - 9.0, x + 9.0),
                "tab",
            ))
    };
    touch::part(
        input,
        "inlet_valve",
        (870.0, 120.0, 76.0, 52.0),
        vec![
            path(pipe, "plastic line"),
            group("").children(coils.iter().map(|x| coil(*x))),
        ],
    )
}

fn level(input: &DrawingInput) -> Element {
    let (id, wide) = match input.features.command {
        Command::Board => ("level_sensor", 0.0),
        Command::Timer => ("pressure_switch", 8.0),
    };
    touch::part(
        input,
        id,
        (452.0, 116.0, 62.0, 76.0),
        vec![
            rect(478.0, 176.0, 9.0, 26.0, "plastic fine"),
            rounded(
                456.0 - wide / 2.0,
                134.0,
                54.0 + wide,
                46.0,
                10.0,
                "plastic line",
            ),
            path("M458 158 H508", "fine"),
            rounded(470.0, 120.0, 26.0, 16.0, 3.0, "plug-housing fine"),
            path("M476 120 v-7 M483 120 v-7 M490 120 v-7", "fine no-tone"),
            circle(483.0, 146.0, 6.0, "copper fine"),
        ],
    )
}

fn air_hose(input: &DrawingInput) -> Element {
    let run =
        "M482 200 V226 Q482 240 468 240 Q452 240 452 256 V560 Q452 580 456 596 Q460 606 460 628";
    touch::part(
        input,
        "air_hose",
        (442.0, 440.0, 22.0, 90.0),
        vec![
            path(run, "hose-thin hose-thin--edge"),
            path(run, "hose-thin"),
        ],
    )
}

fn mains_side(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = vec![touch::part(
        input,
        "terminal_block",
        (928.0, 188.0, 46.0, 18.0),
        vec![
            path("M974 196 H996", "cord"),
            rounded(924.0, 186.0, 48.0, 20.0, 3.0, "plastic line"),
            circle(934.0, 196.0, 4.0, "brass fine"),
            circle(948.0, 196.0, 4.0, "brass fine"),
            circle(962.0, 196.0, 4.0, "brass fine"),
            path("M962 206 V216", "wire wire--earth"),
        ],
    )];
    if input.features.filter_and_fuse {
        drawn.push(touch::part(
            input,
            "mains_filter",
            (846.0, 162.0, 24.0, 40.0),
            vec![
                rounded(858.0, 178.0, 34.0, 28.0, 4.0, "steel line"),
                path("M864 186 h22 M864 192 h22", "shine"),
            ],
        ));
        drawn.push(touch::part(
            input,
            "fuse",
            (888.0, 182.0, 34.0, 24.0),
            vec![
                rounded(896.0, 188.0, 24.0, 14.0, 6.0, "glass line"),
                rect(894.0, 188.0, 6.0, 14.0, "brass fine"),
                rect(916.0, 188.0, 6.0, 14.0, "brass fine"),
            ],
        ));
    } else {
        drawn.push(touch::part(
            input,
            "fuse",
            (726.0, 124.0, 30.0, 20.0),
            vec![
                rounded(728.0, 130.0, 26.0, 11.0, 5.0, "glass fine"),
                rect(726.0, 130.0, 6.0, 11.0, "brass fine"),
                rect(750.0, 130.0, 6.0, 11.0, "brass fine"),
            ],
        ));
    }
    drawn
}

/// Lid switch and out-of-balance switch with its lever beside the tub's rim.
pub fn hanging_down(input: &DrawingInput) -> Vec<Element> {
    vec![
        touch::part(
            input,
            "lid_switch",
            (874.0, 222.0, 50.0, 34.0),
            vec![
                rounded(880.0, 228.0, 44.0, 22.0, 3.0, "plastic line"),
                path("M882 230 L866 222", "lever-arm").id("lid-switch-lever"),
                path("M894 250 v9 M910 250 v9", "tab"),
            ],
        ),
        touch::part(
            input,
            "balance_switch",
            (446.0, 226.0, 46.0, 96.0),
            vec![
                rounded(466.0, 228.0, 40.0, 20.0, 3.0, "plastic line"),
                path("M476 248 v8 M494 248 v8", "tab"),
                path("M470 244 L466 262 L464 326", "lever-arm").id("out-of-balance-lever"),
            ],
        ),
    ]
}
