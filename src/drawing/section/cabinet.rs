//! Cabinet, top cover, lid, feet, suspension rods and what hangs on the back wall.

use crate::drawing::input::DrawingInput;
use crate::drawing::svg::{Element, circle, group, line, outline, path, rect, rounded};
use crate::drawing::touch;
use crate::drawing::world::{AXIS, DECK, LEFT, RIGHT, SHOULDER, SKIRT, TUB_RIM};

/// Inside of the cabinet and what is fixed to its back wall.
pub fn inside(input: &DrawingInput) -> Vec<Element> {
    vec![
        rect(
            LEFT + 2.0,
            SHOULDER,
            RIGHT - LEFT - 4.0,
            SKIRT - SHOULDER,
            "inside",
        ),
        touch::part(
            input,
            "back_cover",
            (560.0, 906.0, 300.0, 52.0),
            vec![
                rounded(560.0, 520.0, 300.0, 436.0, 10.0, "no-tone fine hidden-edge"),
                circle(574.0, 944.0, 4.0, "steel fine"),
                circle(846.0, 944.0, 4.0, "steel fine"),
            ],
        ),
        harness(input),
        capacitor(input),
    ]
}

/// Harness and capacitor alone, as the open back shows them.
pub fn inside_back(input: &DrawingInput) -> Vec<Element> {
    vec![harness(input), capacitor(input)]
}

fn harness(input: &DrawingInput) -> Element {
    let run = "M772 200 H958 Q970 200 970 214 V892 Q970 908 954 908 H640 Q560 908 548 846";
    touch::part(
        input,
        "harness",
        (944.0, 560.0, 30.0, 90.0),
        vec![
            path(run, "cable cable--edge"),
            path(run, "cable"),
            rounded(964.0, 380.0, 12.0, 8.0, 2.0, "plastic fine"),
            rounded(964.0, 700.0, 12.0, 8.0, 2.0, "plastic fine"),
        ],
    )
}

fn capacitor(input: &DrawingInput) -> Element {
    let lead = "M486 884 C486 868 478 858 480 842";
    touch::part(
        input,
        "run_capacitor",
        (462.0, 884.0, 44.0, 72.0),
        vec![
            path(lead, "wire wire--other"),
            rounded(464.0, 892.0, 40.0, 64.0, 7.0, "steel line"),
            rect(464.0, 914.0, 40.0, 9.0, "dark fine"),
            rect(475.0, 882.0, 6.0, 12.0, "brass fine"),
            rect(488.0, 882.0, 6.0, 12.0, "brass fine"),
            line(472.0, 900.0, 472.0, 948.0, "shine"),
        ],
    )
}

/// The cut sheet metal, top cover, lid and feet: painted last.
pub fn shell(input: &DrawingInput) -> Vec<Element> {
    let left_cover = "M440 262 V228 Q440 212 456 212 H548 Q556 212 558 220 L568 258 H558 \
                      L549 224 H458 Q450 224 450 230 V262Z";
    vec![
        touch::part(
            input,
            "cabinet",
            (LEFT - 10.0, 420.0, 24.0, 120.0),
            vec![
                rect(LEFT, SHOULDER, 5.0, SKIRT - SHOULDER, "cut"),
                rect(RIGHT - 5.0, SHOULDER, 5.0, SKIRT - SHOULDER, "cut"),
                rect(LEFT, SKIRT - 5.0, 54.0, 5.0, "cut"),
                rect(RIGHT - 54.0, SKIRT - 5.0, 54.0, 5.0, "cut"),
            ],
        ),
        touch::part(
            input,
            "top_cover",
            (LEFT, DECK, 90.0, 50.0),
            vec![
                path(left_cover, "cut"),
                path(left_cover, "cut").with("transform", "translate(1420 0) scale(-1 1)"),
            ],
        ),
        feet(input),
        lid(input),
    ]
}

fn feet(input: &DrawingInput) -> Element {
    let foot = |x: f64| {
        group("")
            .child(rect(x - 5.0, 962.0, 10.0, 24.0, "steel fine"))
            .child(rect(x - 9.0, 974.0, 18.0, 5.0, "steel fine"))
            .child(rounded(x - 20.0, 984.0, 40.0, 16.0, 5.0, "rubber line"))
    };
    touch::part(
        input,
        "foot",
        (455.0, 960.0, 42.0, 42.0),
        vec![foot(476.0), foot(944.0)],
    )
}

fn lid(input: &DrawingInput) -> Element {
    let shut = group("lid-shut")
        .id("lid-shut")
        .child(path(
            "M550 214 Q552 207 562 207 H858 Q868 207 870 214 L862 221 H558Z",
            "glass line",
        ))
        .child(line(710.0, 208.0, 710.0, 220.0, "fine"));
    let open = group("lid-open")
        .id("lid-open")
        .child(outline(
            &[(556.0, 210.0), (566.0, 36.0), (854.0, 36.0), (864.0, 210.0)],
            "glass line",
        ))
        .child(outline(
            &[(572.0, 200.0), (580.0, 50.0), (840.0, 50.0), (848.0, 200.0)],
            "no-tone fine",
        ));
    touch::part(input, "lid", (600.0, 186.0, 220.0, 40.0), vec![open, shut])
}

/// The suspension rods, turned into the plane of the cut.
pub fn rods(input: &DrawingInput) -> Vec<Element> {
    let mut drawn = Vec::new();
    for (side, id) in [(-1.0, "rod-left"), (1.0, "rod-right")] {
        let top = AXIS + side * 257.0;
        drawn.push(path(format!("M{} 268 l-9 14 h18z", top), "steel line"));
        drawn.push(circle(top, 284.0, 6.0, "plastic line"));
        drawn.push(path("", "rod").id(id));
    }
    let springs = [("spring-left", -1.0), ("spring-right", 1.0)].map(|(id, side)| {
        let x = AXIS + side * 251.0;
        group("")
            .id(id)
            .child(rounded(x - 13.0, 740.0, 26.0, 9.0, 3.0, "plastic line"))
            .child(path(coil(x, 750.0), "spring"))
            .child(rounded(x - 11.0, 794.0, 22.0, 7.0, 3.0, "plastic line"))
    });
    drawn.extend(springs);
    vec![touch::part(
        input,
        "rods",
        (AXIS + 236.0, TUB_RIM + 30.0, 30.0, 80.0),
        drawn,
    )]
}

fn coil(x: f64, top: f64) -> String {
    let mut data = format!("M{} {}", x - 8.0, top);
    for turn in 0..5 {
        let y = top + 9.0 * f64::from(turn);
        data.push_str(&format!("L{} {}L{} {}", x + 8.0, y + 4.0, x - 8.0, y + 9.0));
    }
    data
}

/// The cabinet as a thin outline, for the water view.
pub fn ghost() -> Element {
    group("ghost")
        .child(rect(
            LEFT,
            SHOULDER,
            RIGHT - LEFT,
            SKIRT - SHOULDER,
            "no-tone fine",
        ))
        .child(path(
            "M440 262 V228 Q440 212 456 212 H556 M864 212 H964 Q980 212 980 228 V262",
            "no-tone fine",
        ))
        .child(rounded(456.0, 984.0, 40.0, 16.0, 5.0, "no-tone fine"))
        .child(rounded(924.0, 984.0, 40.0, 16.0, 5.0, "no-tone fine"))
}
