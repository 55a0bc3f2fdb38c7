//! What commands the machine: board with plugs, display, switch and transformer, or the cam timer.

use crate::drawing::input::DrawingInput;
use crate::drawing::svg::{Element, circle, group, line, path, rect, rounded};
use crate::drawing::touch;

/// Board, or the cover over it, with transformer and switch.
pub fn board_side(input: &DrawingInput, bare: bool) -> Vec<Element> {
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

/// Timer and level selector.
pub fn timer_side(input: &DrawingInput) -> Vec<Element> {
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
