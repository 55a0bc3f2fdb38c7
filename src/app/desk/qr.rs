//! A link as a QR code, drawn as one path of black squares.

use crate::say;
use qrcodegen::QrCodeEcc;
use yew::prelude::*;

/// White squares around a code. Published: ISO/IEC 18004, four.
const QUIET: i32 = 4;

/// A code as a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// Squares along a side, the quiet edge included.
    pub side: i32,
    /// Path of the black squares, one run of them a step.
    pub path: String,
}

/// Draws a text; none when it is longer than any code can hold (2,953 letters).
pub fn drawn(text: &str) -> Option<Drawn> {
    let code = qrcodegen::QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
    let mut path = String::new();
    for y in 0..code.size() {
        let mut x = 0;
        while x < code.size() {
            let run = (x..code.size())
                .take_while(|&at| code.get_module(at, y))
                .count() as i32;
            if run > 0 {
                path.push_str(&format!("M{} {}h{run}v1h-{run}z", x + QUIET, y + QUIET));
            }
            x += run.max(1);
        }
    }
    Some(Drawn {
        side: code.size() + 2 * QUIET,
        path,
    })
}

/// What is drawn.
#[derive(Properties, PartialEq)]
pub struct QrCodeProps {
    /// The text in it.
    pub text: AttrValue,
    /// What a screen reader says.
    pub label: AttrValue,
}

/// A text as a QR code, or a word that it is too long for one.
#[component]
pub fn QrCode(props: &QrCodeProps) -> Html {
    let code = use_memo(props.text.clone(), |text| drawn(text));
    let Some(code) = &*code else {
        return html! { <p>{ say!("This is too long for a code: give the link or the file.") }</p> };
    };
    html! {
        <svg class="qr" role="img" aria-label={props.label.clone()} viewBox={format!("0 0 {0} {0}", code.side)} shape-rendering="crispEdges">
            <rect class="qr__paper" width={code.side.to_string()} height={code.side.to_string()} />
            <path class="qr__ink" d={code.path.clone()} />
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_has_its_three_corner_marks_and_a_quiet_edge() {
        // Version 1 has 21 squares a side; each corner mark begins with a run of seven.
        let code = drawn("https://a.example").expect("short");
        assert_eq!(code.side, 21 + 8);
        assert!(
            code.path.starts_with("M4 4h7v1h-7z") && code.path.contains("M18 4h7v1h-7z"),
            "{}",
            code.path
        );
    }

    #[test]
    fn what_no_code_can_hold_has_none() {
        assert_eq!(drawn(&"x".repeat(2954)), None);
        assert!(drawn(&"x".repeat(2953)).is_some());
    }
}
