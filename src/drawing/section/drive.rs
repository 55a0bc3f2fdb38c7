//! Gearbox with clutch and brake, motor, pulleys and belt.

use crate::drawing::input::DrawingInput;
use crate::drawing::steps::BELT as BELT_OFF;
use crate::drawing::svg::{Element, circle, group, line, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{AXIS, BELT, GEARBOX_PULLEY, MOTOR, MOTOR_PULLEY};

/// Ids of the marks on the two pulleys that show how they turn.
pub const MOTOR_MARKS: [&str; 3] = ["motor-mark-0", "motor-mark-1", "motor-mark-2"];
/// The same for the gearbox pulley.
pub const GEARBOX_MARKS: [&str; 4] = [
    "gearbox-mark-0",
    "gearbox-mark-1",
    "gearbox-mark-2",
    "gearbox-mark-3",
];

/// Shafts, seal, gear case, brake band, clutch and its lever.
pub fn gearbox(input: &DrawingInput) -> Vec<Element> {
    vec![
        gear_case(input),
        shaft_seal(input),
        brake_band(input),
        clutch(input),
        lever(input),
    ]
}

/// The same from outside, nothing cut.
pub fn gearbox_closed(input: &DrawingInput) -> Vec<Element> {
    let case = touch::part(
        input,
        "mechanism",
        (AXIS - 40.0, 738.0, 80.0, 64.0),
        vec![
            rect(AXIS - 34.0, 736.0, 68.0, 14.0, "cast line"),
            rounded(AXIS - 58.0, 750.0, 116.0, 54.0, 7.0, "cast line"),
            path(
                "M668 756 v42 M690 756 v42 M712 756 v42 M734 756 v42 M752 756 v42",
                "shine",
            ),
            rect(AXIS - 30.0, 838.0, 60.0, 12.0, "cast line"),
        ],
    );
    let band = touch::part(
        input,
        "brake_band",
        (AXIS - 78.0, 758.0, 22.0, 40.0),
        vec![
            rect(AXIS - 70.0, 764.0, 140.0, 28.0, "steel line"),
            path("M640 770 H780 M640 786 H780", "shine"),
        ],
    );
    vec![case, band, clutch(input), lever(input)]
}

fn gear_case(input: &DrawingInput) -> Element {
    let teeth = |x: f64, width: f64| {
        let gear = group("").child(rect(x, 762.0, width, 30.0, "steel fine"));
        (1..5).fold(gear, |gear, row| {
            let y = 762.0 + 6.0 * f64::from(row);
            gear.child(line(x, y, x + width, y, "fine"))
        })
    };
    touch::part(
        input,
        "mechanism",
        (AXIS - 40.0, 738.0, 80.0, 64.0),
        vec![
            rect(AXIS - 14.0, 640.0, 28.0, 214.0, "steel line"),
            rect(AXIS - 34.0, 736.0, 68.0, 14.0, "cast line"),
            rect(AXIS - 26.0, 739.0, 9.0, 9.0, "steel fine"),
            rect(AXIS + 17.0, 739.0, 9.0, 9.0, "steel fine"),
            rounded(AXIS - 58.0, 750.0, 116.0, 54.0, 7.0, "cast line"),
            rect(AXIS - 50.0, 757.0, 100.0, 40.0, "grease fine"),
            teeth(AXIS - 49.0, 10.0),
            teeth(AXIS + 39.0, 10.0),
            teeth(AXIS - 37.0, 24.0),
            teeth(AXIS + 13.0, 24.0),
            rect(AXIS - 6.0, 606.0, 12.0, 276.0, "shaft fine"),
            teeth(AXIS - 10.0, 20.0),
            rect(AXIS - 30.0, 838.0, 60.0, 12.0, "cast line"),
        ],
    )
}

fn shaft_seal(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "shaft_seal",
        (AXIS - 30.0, 704.0, 60.0, 26.0),
        vec![
            path("M680 706 H696 V728 L688 716 L680 728Z", "rubber fine"),
            path("M740 706 H724 V728 L732 716 L740 728Z", "rubber fine"),
        ],
    )
}

fn brake_band(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "brake_band",
        (AXIS - 78.0, 758.0, 22.0, 40.0),
        vec![
            rect(AXIS - 68.0, 762.0, 10.0, 32.0, "rubber fine").id("band-left"),
            rect(AXIS + 58.0, 762.0, 10.0, 32.0, "rubber fine").id("band-right"),
            rect(AXIS - 72.0, 760.0, 4.0, 36.0, "steel fine"),
            rect(AXIS + 68.0, 760.0, 4.0, 36.0, "steel fine"),
        ],
    )
}

fn clutch(input: &DrawingInput) -> Element {
    let mut coil = String::new();
    for turn in 0..6 {
        let y = 810.0 + 4.6 * f64::from(turn);
        coil.push_str(&format!(
            "M{} {} L{} {}",
            AXIS - 24.0,
            y + 3.0,
            AXIS + 24.0,
            y
        ));
    }
    touch::part(
        input,
        "clutch_set",
        (AXIS - 30.0, 806.0, 52.0, 32.0),
        vec![
            rect(AXIS - 20.0, 806.0, 40.0, 32.0, "shaft fine"),
            path(coil, "spring"),
            rounded(AXIS - 30.0, 828.0, 60.0, 8.0, 3.0, "steel fine"),
        ],
    )
}

fn lever(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "clutch_lever",
        (AXIS + 40.0, 806.0, 60.0, 26.0),
        vec![
            group("")
                .id("lever")
                .child(path(
                    "M734 828 H762 Q772 828 776 820 L784 804 H796 V826 H790 L786 816 \
                     L780 828 Q776 836 764 836 H734Z",
                    "lever line",
                ))
                .child(circle(768.0, 831.0, 3.2, "hole")),
        ],
    )
}

/// Motor, both pulleys and the belt.
pub fn pulleys(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = vec![
        motor(input),
        motor_plug(input),
        pulley(
            input,
            ("mechanism_pulley", AXIS, GEARBOX_PULLEY),
            &GEARBOX_MARKS,
        ),
        pulley(input, ("motor_pulley", MOTOR, MOTOR_PULLEY), &MOTOR_MARKS),
    ];
    if !input.is_off(&BELT_OFF) {
        drawn.push(belt(input));
    }
    drawn
}

fn motor(input: &DrawingInput) -> Element {
    let slots = (0..5).map(|slot| {
        let x = 490.0 + 13.0 * f64::from(slot);
        rounded(x, 824.0, 6.0, 10.0, 3.0, "hole")
    });
    touch::part(
        input,
        "motor",
        (462.0, 752.0, 116.0, 90.0),
        vec![
            path("M476 738 V752 M564 738 V752", "bolt"),
            rounded(470.0, 748.0, 100.0, 10.0, 3.0, "rubber fine"),
            rounded(466.0, 756.0, 108.0, 88.0, 14.0, "cast line"),
            rect(462.0, 778.0, 116.0, 34.0, "steel line"),
            path(
                "M462 785 H578 M462 792 H578 M462 799 H578 M462 806 H578",
                "shine",
            ),
            rounded(474.0, 764.0, 92.0, 12.0, 5.0, "copper fine"),
            rounded(474.0, 813.0, 92.0, 9.0, 4.0, "copper fine"),
            group("").children(slots),
            rect(MOTOR - 6.0, 842.0, 12.0, 36.0, "shaft fine"),
        ],
    )
}

fn motor_plug(input: &DrawingInput) -> Element {
    let gap = if input.apart.contains("motor_plug") {
        10.0
    } else {
        0.0
    };
    touch::part(
        input,
        "motor_plug",
        (588.0, 796.0, 34.0, 30.0),
        vec![
            path("M578 812 H592", "cable"),
            path(
                format!("M{} 812 H640 Q652 812 652 824 V900", 614.0 + gap),
                "cable",
            ),
            rounded(588.0, 802.0, 12.0, 20.0, 2.0, "plug-housing line"),
            rounded(602.0 + gap, 800.0, 14.0, 24.0, 2.0, "plug-housing line"),
        ],
    )
}

fn pulley(
    input: &DrawingInput,
    (id, axis, radius): (&str, f64, f64),
    marks: &[&'static str],
) -> Element {
    let profile = format!(
        "M{l} {t} H{r} L{ri} {m1} V{m2} L{r} {b} H{l} L{li} {m2} V{m1}Z",
        l = axis - radius - 4.0,
        r = axis + radius + 4.0,
        li = axis - radius + 4.0,
        ri = axis + radius - 4.0,
        t = BELT - 12.0,
        b = BELT + 12.0,
        m1 = BELT - 6.0,
        m2 = BELT + 6.0,
    );
    let spokes = marks
        .iter()
        .map(|mark| rect(-2.0, BELT - 11.0, 4.0, 22.0, "mark").id(mark));
    touch::part(
        input,
        id,
        (axis - radius, BELT - 12.0, 2.0 * radius, 24.0),
        vec![
            path(profile, "steel line"),
            group("").children(spokes),
            rect(axis - 10.0, BELT + 12.0, 20.0, 9.0, "brass fine"),
        ],
    )
}

fn belt(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "belt",
        (572.0, BELT - 12.0, 76.0, 24.0),
        vec![
            path("", "belt").id("belt"),
            path("", "belt-marks").id("belt-marks"),
        ],
    )
}

/// The plate below belt and pulleys.
pub fn bottom_guard(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "bottom_guard",
        (620.0, 922.0, 180.0, 20.0),
        vec![
            path("M506 908 h14 l10 24 h352 l10 -24 h14", "sheet"),
            path("M512 902 v12 M900 902 v12", "bolt"),
        ],
    )
}
