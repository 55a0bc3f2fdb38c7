//! How close one looks at a picture. Pure; the picture applies it as a view box.

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
        let numbers: Vec<f64> = whole
            .split_whitespace()
            .filter_map(|n| n.parse().ok())
            .collect();
        let [left, top, width, height] = numbers[..] else {
            return None;
        };
        let (w, h) = (width / self.times, height / self.times);
        let x = left + self.x * width - w / 2.0;
        let y = top + self.y * height - h / 2.0;
        Some(format!("{x:.1} {y:.1} {w:.1} {h:.1}"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_whole_picture_is_shown_at_first_and_after_stepping_back() {
        assert_eq!(
            Zoom::default().view_box("0 -50 1560 1130").as_deref(),
            Some("0.0 -50.0 1560.0 1130.0")
        );
        assert!(Zoom::default().closer().farther().farther().is_whole());
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
