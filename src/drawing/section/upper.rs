//! The compartment behind the panel and what hangs below the top cover.

use crate::drawing::input::{Command, DrawingInput};
use crate::drawing::svg::{Element, circle, group, line, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{CROWN, DECK, LEFT, RIGHT};

/// The panel's back side with everything fixed in it.
pub fn compartment(input: &DrawingInput) -> Vec<Element> {
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
        Command::Board => drawn.extend(board_side(input)),
        Command::Timer => drawn.extend(timer_side(input)),
    }
    drawn.extend(water_side(input));
    drawn.push(mains_side(input));
    drawn
}

fn board_side(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = vec![board(input), display(input), transformer(input)];
    if input.workshop.part("on_off_switch").is_some() || input.workshop.parts.is_empty() {
        drawn.push(switch(input));
    }
    drawn
}

/// The drip cover over the board, on until the panel is opened.
pub fn inner_cover(input: &DrawingInput) -> Element {
    let screw = |x: f64, y: f64| circle(x, y, 4.0, "steel fine");
    touch::step(
        input,
        "panel_open",
        (570.0, 94.0, 200.0, 112.0),
        vec![
            rounded(566.0, 92.0, 206.0, 116.0, 6.0, "plastic-shade line"),
            path("M586 118 H752 M586 130 H752 M586 142 H752", "shine"),
            screw(576.0, 100.0),
            screw(762.0, 100.0),
            screw(576.0, 200.0),
            screw(669.0, 200.0),
            screw(762.0, 200.0),
        ],
    )
}

fn board(input: &DrawingInput) -> Element {
    let connectors = (0..5).map(|index| {
        let x = 586.0 + 34.0 * f64::from(index);
        group("")
            .child(rect(x, 190.0, 26.0, 12.0, "plug-housing fine"))
            .child(path(
                format!(
                    "M{} 202 v6 M{} 202 v6 M{} 202 v6",
                    x + 6.0,
                    x + 13.0,
                    x + 20.0
                ),
                "fine no-tone",
            ))
    });
    let sinks = (0..4).map(|index| {
        let x = 664.0 + 18.0 * f64::from(index);
        group("")
            .child(rect(x, 132.0, 11.0, 15.0, "dark fine"))
            .child(rect(x, 127.0, 11.0, 6.0, "steel fine"))
    });
    touch::part(
        input,
        "control_board",
        (576.0, 122.0, 186.0, 72.0),
        vec![
            rounded(576.0, 122.0, 186.0, 74.0, 4.0, "board line"),
            rect(600.0, 142.0, 38.0, 26.0, "dark fine"),
            path(
                "M604 142 v-4 M612 142 v-4 M620 142 v-4 M628 142 v-4 M604 168 v4 M612 168 v4 M620 168 v4 M628 168 v4",
                "fine no-tone",
            ),
            group("").children(sinks),
            circle(652.0, 176.0, 8.0, "cast fine"),
            rounded(672.0, 160.0, 26.0, 16.0, 2.0, "copper fine"),
            path("M704 164 h40 M704 170 h32 M704 176 h40", "fine no-tone"),
            circle(748.0, 138.0, 7.0, "dark fine"),
            group("").children(connectors),
        ],
    )
}

fn display(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "display_panel",
        (576.0, 98.0, 186.0, 18.0),
        vec![
            rounded(576.0, 100.0, 186.0, 14.0, 4.0, "dark fine"),
            rounded(592.0, 103.0, 50.0, 8.0, 2.0, "lamp").id("display"),
            circle(672.0, 107.0, 4.0, "plastic fine"),
            circle(696.0, 107.0, 4.0, "plastic fine"),
            circle(720.0, 107.0, 4.0, "plastic fine"),
            circle(744.0, 107.0, 4.0, "plastic fine"),
        ],
    )
}

fn switch(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "on_off_switch",
        (532.0, 120.0, 34.0, 60.0),
        vec![
            rounded(534.0, 126.0, 30.0, 46.0, 4.0, "plastic line"),
            rect(542.0, 134.0, 14.0, 22.0, "dark fine").id("on-off-key"),
            path("M541 172 v10 M557 172 v10", "tab"),
        ],
    )
}

fn transformer(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "transformer",
        (774.0, 124.0, 62.0, 68.0),
        vec![
            rect(776.0, 128.0, 58.0, 62.0, "steel line"),
            path(
                "M782 128 V190 M788 128 V190 M822 128 V190 M828 128 V190",
                "shine",
            ),
            rounded(792.0, 122.0, 26.0, 74.0, 3.0, "copper line"),
            line(792.0, 158.0, 818.0, 158.0, "fine"),
            path("M798 122 v-8 M812 122 v-8", "tab"),
        ],
    )
}

fn timer_side(input: &DrawingInput) -> Vec<Element> {
    let cams = (0..6).map(|index| {
        let x = 628.0 + 15.0 * f64::from(index);
        rect(x, 136.0, 10.0, 46.0, "cast fine")
    });
    vec![
        touch::part(
            input,
            "timer",
            (612.0, 120.0, 112.0, 76.0),
            vec![
                rounded(614.0, 120.0, 108.0, 78.0, 4.0, "steel line"),
                rect(622.0, 130.0, 96.0, 58.0, "grease fine"),
                line(618.0, 159.0, 726.0, 159.0, "bolt"),
                group("").children(cams),
                path(
                    "M630 198 v8 M648 198 v8 M666 198 v8 M684 198 v8 M702 198 v8",
                    "tab",
                ),
            ],
        ),
        touch::part(
            input,
            "timer_motor",
            (728.0, 130.0, 44.0, 56.0),
            vec![
                circle(750.0, 159.0, 22.0, "copper line"),
                circle(750.0, 159.0, 9.0, "steel fine"),
                path("M742 181 v10 M758 181 v10", "tab"),
            ],
        ),
        touch::part(
            input,
            "level_selector",
            (546.0, 126.0, 50.0, 60.0),
            vec![
                rounded(548.0, 128.0, 46.0, 52.0, 5.0, "plastic line"),
                circle(571.0, 152.0, 13.0, "steel fine"),
                path(
                    "M571 152 L580 142 M560 180 v8 M571 180 v8 M582 180 v8",
                    "tab",
                ),
            ],
        ),
    ]
}

/// Inlet valve, level sensor and air hose: what water or its pressure meets.
pub fn water_side(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = vec![air_hose(input), level(input)];
    if input.features.hot_inlet {
        drawn.push(inlet(input, "hot_valve", 896.0));
        drawn.push(inlet(input, "cold_valve", 938.0));
    } else {
        drawn.push(inlet(input, "inlet_valve", 925.0));
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

fn inlet(input: &DrawingInput, id: &str, x: f64) -> Element {
    touch::part(
        input,
        id,
        (x - 20.0, 128.0, 42.0, 64.0),
        vec![
            path(
                "M958 112 H864 Q850 112 850 126 V250 L842 268 H854 L862 250 V130 Q862 124 868 124 H958Z",
                "plastic line",
            ),
            rounded(x - 20.0, 136.0, 40.0, 38.0, 4.0, "copper line"),
            path(
                format!("M{} 136 v38 M{} 136 v38", x - 8.0, x + 8.0),
                "fine no-tone",
            ),
            rect(x - 8.0, 122.0, 16.0, 16.0, "steel fine"),
            path(format!("M{} 174 v12 M{} 174 v12", x - 9.0, x + 9.0), "tab"),
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

fn mains_side(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "mains_filter",
        (844.0, 134.0, 36.0, 58.0),
        vec![
            rounded(866.0, 190.0, 36.0, 16.0, 3.0, "plastic line"),
            circle(876.0, 198.0, 3.0, "brass fine"),
            circle(886.0, 198.0, 3.0, "brass fine"),
            path("M896 198 H932 V212", "wire wire--earth"),
            rounded(868.0, 194.0, 4.0, 8.0, 1.0, "dark fine"),
        ],
    )
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
            "out_of_balance_switch",
            (446.0, 226.0, 46.0, 96.0),
            vec![
                rounded(466.0, 228.0, 40.0, 20.0, 3.0, "plastic line"),
                path("M476 248 v8 M494 248 v8", "tab"),
                path("M470 244 L466 262 L464 326", "lever-arm").id("out-of-balance-lever"),
            ],
        ),
    ]
}
