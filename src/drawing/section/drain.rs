//! Drain valve with drain motor and wire, or drain pump with clutch motor; overflow.

use crate::drawing::input::{Drain, DrawingInput};
use crate::drawing::svg::{Element, circle, group, line, path, rect, rounded};
use crate::drawing::touch;

/// The overflow duct on the tub's side.
pub fn overflow(input: &DrawingInput) -> Vec<Element> {
    vec![touch::part(
        input,
        "overflow",
        (938.0, 310.0, 18.0, 30.0),
        vec![path(
            "M936 314 H950 Q955 314 955 320 V786 Q955 800 941 800 H838 V792 H936 Q946 792 946 782 V326 H936Z",
            "plastic fine",
        )],
    )]
}

/// Everything of the drain below the tub.
pub fn under_the_tub(input: &DrawingInput) -> Vec<Element> {
    match input.features.drain {
        Drain::Gravity => vec![valve(input), wire(), puller(input, "drain_motor")],
        Drain::Pump => vec![pump(input), wire(), puller(input, "drain_motor")],
    }
}

fn valve(input: &DrawingInput) -> Element {
    let plunger = group("")
        .id("drain-plunger")
        .child(path(
            "M842 752 h5 v36 h-5z M847 756 h5 l4 6 l4 -6 l4 6 l4 -6 l4 6 v18 l-4 6 l-4 -6 l-4 6 \
             l-4 -6 l-4 6 h-5z",
            "rubber fine",
        ))
        .child(rect(866.0, 767.0, 22.0, 5.0, "steel fine"));
    touch::part(
        input,
        "drain_valve",
        (812.0, 738.0, 72.0, 66.0),
        vec![
            path(
                "M812 744 H882 V798 H838 V824 Q838 838 852 838 H988 V858 H842 Q814 858 814 830 V798 H812Z",
                "plastic line",
            ),
            path(
                "M820 752 H876 V790 H832 V828 Q832 844 848 844 H988 V852 H846 Q822 852 822 828 V790 H820Z",
                "tub fine",
            ),
            rect(822.0, 728.0, 22.0, 24.0, "tub fine"),
            rect(821.0, 752.0, 55.0, 38.0, "water").id("drain-water"),
            path("M836 752 v10 M836 780 v10", "bolt"),
            plunger,
        ],
    )
}

/// Wire and link plate; the painter shifts them by the stroke.
fn wire() -> Element {
    group("pull-wire")
        .id("pull-wire")
        .child(line(886.0, 769.0, 918.0, 769.0, "wire-rope"))
        .child(path("M884 762 h7 v60 h-92 v-6 h86z", "lever line"))
        .child(circle(798.0, 819.0, 5.0, "lever line").id("link-eye"))
}

fn puller(input: &DrawingInput, id: &str) -> Element {
    touch::part(
        input,
        id,
        (906.0, 742.0, 46.0, 56.0),
        vec![
            rounded(908.0, 742.0, 40.0, 58.0, 5.0, "plastic line"),
            rect(912.0, 738.0, 32.0, 6.0, "steel fine"),
            circle(928.0, 769.0, 14.0, "steel fine"),
            path("M928 757 v24 M916 769 h24", "fine no-tone"),
            rect(914.0, 790.0, 10.0, 8.0, "brass fine"),
            rect(930.0, 790.0, 10.0, 8.0, "brass fine"),
        ],
    )
}

fn pump(input: &DrawingInput) -> Element {
    touch::part(
        input,
        "drain_pump",
        (806.0, 826.0, 90.0, 66.0),
        vec![
            path(
                "M822 728 V812 Q822 826 834 832 L826 846 Q806 836 806 812 V728Z",
                "plastic line",
            ),
            rect(806.0, 728.0, 16.0, 84.0, "tub fine"),
            circle(850.0, 860.0, 32.0, "plastic line"),
            circle(850.0, 860.0, 22.0, "tub fine").id("drain-water"),
            group("").id("impeller").child(path(
                "M850 842 Q858 852 850 860 Q842 852 850 842Z M866 869 Q853 870 850 860 \
                 Q860 856 866 869Z M834 869 Q840 856 850 860 Q847 870 834 869Z",
                "cast fine",
            )),
            path("M872 838 H988 V856 H880Z", "plastic line"),
            rounded(882.0, 862.0, 26.0, 24.0, 4.0, "copper fine"),
        ],
    )
}
