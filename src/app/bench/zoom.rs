//! How close one looks at a picture. Pure; the picture applies it as a view box.

use crate::drawing::svg::Element;
use crate::drawing::svg::Node;

/// Factor of one step closer.
const STEP: f64 = 1.5;
/// Closest.
const MOST: f64 = STEP * STEP * STEP * STEP;

/// Part of a picture that is shown: how many times closer, and around which point (0..1 of width
/// and height of the whole).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zoom {
    times: f64,
    x: f64,
    y: f64,
}

impl Default for Zoom {
    fn default() -> Self {
        Self {
            times: 1.0,
            x: 0.5,
            y: 0.5,
        }
    }
}

impl Zoom {
    /// All of the picture is shown.
    pub fn is_whole(self) -> bool {
        self.times <= 1.0
    }

    /// A step closer.
    pub fn closer(self) -> Self {
        Self {
            times: (self.times * STEP).min(MOST),
            ..self
        }
        .kept_inside()
    }

    /// A step closer; from the whole picture towards what is in hand.
    pub fn closer_to(self, in_hand: Option<(f64, f64)>) -> Self {
        match in_hand {
            Some((x, y)) if self.is_whole() => Self { x, y, ..self }.closer(),
            _ => self.closer(),
        }
    }

    /// A step back.
    pub fn farther(self) -> Self {
        Self {
            times: (self.times / STEP).max(1.0),
            ..self
        }
        .kept_inside()
    }

    /// Moved by a share of the shown width in both directions.
    pub fn moved(self, right: f64, down: f64) -> Self {
        Self {
            x: self.x + right / self.times,
            y: self.y + down / self.times,
            ..self
        }
        .kept_inside()
    }

    fn kept_inside(self) -> Self {
        let edge = 0.5 / self.times;
        Self {
            x: self.x.clamp(edge, 1.0 - edge),
            y: self.y.clamp(edge, 1.0 - edge),
            ..self
        }
    }

    /// The view box of what is shown, from that of the whole.
    pub fn view_box(self, whole: &str) -> Option<String> {
        let [left, top, width, height] = sides(whole)?;
        let (w, h) = (width / self.times, height / self.times);
        let x = left + self.x * width - w / 2.0;
        let y = top + self.y * height - h / 2.0;
        Some(format!("{x:.1} {y:.1} {w:.1} {h:.1}"))
    }
}

fn sides(view_box: &str) -> Option<[f64; 4]> {
    let numbers: Vec<f64> = view_box
        .split_whitespace()
        .filter_map(|n| n.parse().ok())
        .collect();
    numbers.try_into().ok()
}

/// Where in a picture the middle of what is in hand lies, shares of width and height.
pub fn in_hand(picture: &Element) -> Option<(f64, f64)> {
    let [left, top, width, height] = sides(picture.attribute("viewBox")?)?;
    let mut found = None;
    picture.walk(&mut |element| {
        if found.is_none() && element.attribute("aria-current").is_some() {
            found = element.children.iter().find_map(middle);
        }
    });
    found.map(|(x, y)| ((x - left) / width, (y - top) / height))
}

/// Middle of an area that is touched.
fn middle(node: &Node) -> Option<(f64, f64)> {
    let Node::Element(area) = node else {
        return None;
    };
    if area.attribute("class") != Some("hit") {
        return None;
    }
    let side = |name: &str| area.attribute(name)?.parse::<f64>().ok();
    Some((
        side("x")? + side("width")? / 2.0,
        side("y")? + side("height")? / 2.0,
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::svg::group;
    use crate::drawing::svg::rect;

    #[test]
    fn the_whole_picture_is_shown_at_first_and_after_stepping_back() {
        assert_eq!(
            Zoom::default().view_box("0 -50 1560 1130").as_deref(),
            Some("0.0 -50.0 1560.0 1130.0")
        );
        assert!(Zoom::default().closer().farther().farther().is_whole());
    }

    #[test]
    fn the_first_step_closer_goes_to_what_is_in_hand() {
        let hit = rect(10.0, 10.0, 20.0, 10.0, "hit");
        let mut picture = group("").child(group("touch").with("aria-current", "true").child(hit));
        assert_eq!(in_hand(&picture), None, "no size, no place");
        picture.set("viewBox", "0 0 100 100");
        let close = Zoom::default().closer_to(in_hand(&picture));
        assert_eq!(
            close.view_box("0 0 150 150").as_deref(),
            Some("0.0 0.0 100.0 100.0")
        );
        assert_eq!(close.closer_to(Some((0.9, 0.9))), close.closer());
    }

    #[test]
    fn one_cannot_leave_the_picture() {
        let far = Zoom::default().closer().moved(9.0, -9.0);
        assert_eq!(
            far.view_box("0 0 150 150").as_deref(),
            Some("50.0 0.0 100.0 100.0")
        );
    }

    #[test]
    fn a_view_box_that_is_none_is_left_alone() {
        assert_eq!(Zoom::default().view_box("auto"), None);
    }
}
