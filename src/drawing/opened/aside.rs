//! What is off: it lies on the floor left of the machine, each with its name.

use crate::drawing::input::DrawingInput;
use crate::drawing::steps::{BACK, BASKET, BELT, GUARD, PULSATOR, TUB_COVER, step_id};
use crate::drawing::svg::{Element, circle, ellipse, fitted, group, outline, path, room_for};
use crate::drawing::touch::{self, Area};
use crate::language::worded;

/// How wide a letter is on what lies there.
const LYING_LETTER: f64 = 10.5;

/// Everything that is off, the tall things behind the flat ones.
pub fn items(input: &DrawingInput) -> Element {
    let mut drawn = group("aside");
    for (spellings, area, shape) in [
        (
            &BACK[..],
            (282.0, 560.0, 136.0, 400.0),
            back_cover as fn() -> Element,
        ),
        (&BASKET[..], (28.0, 640.0, 236.0, 300.0), basket),
        (&TUB_COVER[..], (30.0, 950.0, 220.0, 56.0), tub_cover),
        (&PULSATOR[..], (276.0, 972.0, 150.0, 56.0), pulsator),
        (&GUARD[..], (60.0, 1030.0, 200.0, 40.0), guard),
        (&BELT[..], (300.0, 1040.0, 120.0, 30.0), belt),
    ] {
        if input.is_off(spellings) {
            drawn = drawn.child(item(input, step_id(input, spellings), area, shape()));
        }
    }
    drawn
}

fn item(input: &DrawingInput, id: &str, area: Area, shape: Element) -> Element {
    let step = input.workshop.step(id);
    let english = step.map_or_else(|| input.english_name(id), |step| step.name.clone());
    let words = step.map_or_else(|| input.name(id), |step| worded(&step.name).into_owned());
    let name = fitted(
        area.0 + area.2 / 2.0,
        area.1 + area.3 / 2.0 + 6.0,
        "lying-name",
        words,
        room_for(&english, area.2 / LYING_LETTER),
    );
    touch::step(input, id, area, vec![shape, name])
}

fn back_cover() -> Element {
    group("")
        .child(outline(
            &[
                (300.0, 560.0),
                (420.0, 600.0),
                (408.0, 968.0),
                (276.0, 930.0),
            ],
            "paint-shade line",
        ))
        .child(outline(
            &[
                (316.0, 592.0),
                (404.0, 621.0),
                (394.0, 936.0),
                (294.0, 907.0),
            ],
            "no-tone fine",
        ))
        .child(path(
            "M312 820 L390 843 M311 836 L389 859 M310 852 L388 875",
            "fine",
        ))
}

fn basket() -> Element {
    let holes = (0..5).flat_map(|row| {
        (0..6).map(move |column| {
            circle(
                56.0 + 36.0 * f64::from(column),
                740.0 + 36.0 * f64::from(row),
                3.5,
                "hole",
            )
        })
    });
    group("")
        .child(path(
            "M28 670 V910 Q28 944 146 944 Q264 944 264 910 V670Z",
            "basket line",
        ))
        .child(group("").children(holes))
        .child(path("M28 670 V702 Q146 742 264 702 V670Z", "ring line"))
        .child(ellipse(146.0, 670.0, 118.0, 27.0, "ring line"))
        .child(ellipse(146.0, 670.0, 92.0, 18.0, "dark fine"))
}

fn tub_cover() -> Element {
    group("")
        .child(ellipse(140.0, 980.0, 116.0, 27.0, "plastic line"))
        .child(ellipse(140.0, 978.0, 74.0, 15.0, "floor fine"))
}

fn pulsator() -> Element {
    group("")
        .child(ellipse(351.0, 1006.0, 80.0, 20.0, "pulsator line"))
        .child(path(
            "M276 1002 Q340 998 344 976 H358 Q362 998 426 1002",
            "pulsator line",
        ))
        .child(ellipse(351.0, 976.0, 9.0, 3.5, "steel fine"))
}

fn guard() -> Element {
    outline(
        &[
            (76.0, 1032.0),
            (286.0, 1032.0),
            (262.0, 1070.0),
            (46.0, 1070.0),
        ],
        "cast line",
    )
}

fn belt() -> Element {
    group("").child(ellipse(360.0, 1054.0, 58.0, 13.0, "belt-round"))
}
