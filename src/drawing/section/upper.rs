//! The compartment behind the panel and what hangs below the top cover.

use crate::drawing::input::{Command, DrawingInput};
use crate::drawing::svg::{Element, circle, group, line, path, rect, rounded};
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
        Command::Board => drawn.extend(board_side(input, board_bare)),
        Command::Timer => drawn.extend(timer_side(input)),
    }
    drawn.extend(water_side(input));
    drawn.extend(mains_side(input));
    drawn
}

fn board_side(input: &DrawingInput, bare: bool) -> Vec<Element> {
    let mut drawn = vec![transformer(input)];
    if bare {
        drawn.extend([board(input), display(input)]);
    } else {
        drawn.push(inner_cover(input));
    }
    if input.features.switch {
        drawn.push(switch(input));
    }
    drawn
}

/// The drip cover over the board, on until the panel is opened.
fn inner_cover(input: &DrawingInput) -> Element {
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
    let sinks = (0..4).map(|index| {
        let x = 664.0 + 18.0 * f64::from(index);
        group("")
            .child(rect(x, 138.0, 11.0, 15.0, "dark fine"))
            .child(rect(x, 133.0, 11.0, 6.0, "steel fine"))
    });
    let board = touch::part(
        input,
        "control_board",
        (580.0, 134.0, 120.0, 48.0),
        vec![
            rounded(576.0, 122.0, 186.0, 74.0, 4.0, "board line"),
            rect(600.0, 142.0, 38.0, 26.0, "dark fine"),
            path(
                "M604 142 v-4 M612 142 v-4 M620 142 v-4 M628 142 v-4 \
                 M604 168 v4 M612 168 v4 M620 168 v4 M628 168 v4",
                "fine no-tone",
            ),
            group("").children(sinks),
            circle(652.0, 172.0, 7.0, "cast fine"),
            rounded(672.0, 164.0, 26.0, 14.0, 2.0, "copper fine"),
            path("M704 166 h22 M704 172 h18", "fine no-tone"),
        ],
    );
    let buzzer = touch::part(
        input,
        "buzzer",
        (738.0, 150.0, 24.0, 24.0),
        vec![
            circle(748.0, 162.0, 9.0, "dark fine"),
            circle(748.0, 162.0, 2.5, "plastic"),
        ],
    );
    group("")
        .child(board)
        .child(buzzer)
        .children(board_plugs(input))
}

/// The board's plugs along its lower and upper edge, as many as the machine has.
fn board_plugs(input: &DrawingInput) -> Vec<Element> {
    const IDS: [&str; 8] = [
        "board_plug_1",
        "board_plug_2",
        "board_plug_3",
        "board_plug_4",
        "board_plug_5",
        "board_plug_6",
        "board_plug_7",
        "board_plug_8",
    ];
    let known = |id: &&str| input.workshop.parts.is_empty() || input.workshop.place(id).is_some();
    IDS.into_iter()
        .filter(known)
        .enumerate()
        .map(|(index, id)| {
            let lower = index < 4;
            let x = 579.0 + 46.0 * (index % 4) as f64;
            let (y, apart) = (if lower { 190.0 } else { 116.0 }, input.apart.contains(id));
            let gap = if apart { 9.0 } else { 0.0 };
            let shift = if lower { gap } else { -gap };
            let wires = if lower {
                y + 12.0 + shift
            } else {
                y + shift - 6.0
            };
            touch::part(
                input,
                id,
                (x, y, 40.0, 12.0),
                vec![
                    rect(
                        x + 5.0,
                        y - if lower { 3.0 } else { -9.0 },
                        30.0,
                        6.0,
                        "dark fine",
                    ),
                    rounded(x + 3.0, y + shift, 34.0, 12.0, 2.0, "plug-housing fine"),
                    path(
                        format!(
                            "M{} {wires} v6 M{} {wires} v6 M{} {wires} v6",
                            x + 12.0,
                            x + 20.0,
                            x + 28.0
                        ),
                        "fine no-tone",
                    ),
                ],
            )
        })
        .collect()
}

fn display(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "display_board",
        (576.0, 94.0, 186.0, 16.0),
        vec![
            rounded(576.0, 95.0, 186.0, 14.0, 4.0, "dark fine"),
            rounded(592.0, 98.0, 50.0, 8.0, 2.0, "lamp").id("display"),
            circle(672.0, 102.0, 4.0, "plastic fine"),
            circle(696.0, 102.0, 4.0, "plastic fine"),
            circle(720.0, 102.0, 4.0, "plastic fine"),
            circle(744.0, 102.0, 4.0, "plastic fine"),
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
        let x = 588.0 + 15.0 * f64::from(index);
        rect(x, 136.0, 10.0, 46.0, "cast fine")
    });
    let timer = touch::part(
        input,
        "timer",
        (572.0, 120.0, 160.0, 76.0),
        vec![
            rounded(574.0, 120.0, 108.0, 78.0, 4.0, "steel line"),
            rect(582.0, 130.0, 96.0, 58.0, "grease fine"),
            line(578.0, 159.0, 686.0, 159.0, "bolt"),
            group("").children(cams),
            path(
                "M590 198 v8 M608 198 v8 M626 198 v8 M644 198 v8 M662 198 v8",
                "tab",
            ),
            circle(710.0, 159.0, 24.0, "copper line"),
            circle(710.0, 159.0, 9.0, "steel fine"),
            path("M702 183 v10 M718 183 v10", "tab"),
        ],
    );
    let selector = group("")
        .child(rounded(520.0, 134.0, 34.0, 44.0, 5.0, "plastic line"))
        .child(circle(537.0, 152.0, 10.0, "steel fine"))
        .child(path("M537 152 L543 145 M528 178 v8 M546 178 v8", "tab"));
    vec![timer, selector]
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
