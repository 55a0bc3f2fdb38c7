//! Finding a test point by typing: `ma` finds MA, `motor` finds all points of the motor.

use crate::app::view::models::PointView;

/// How well a point fits what was typed; lower is better, `None` when it does not fit.
fn rank(point: &PointView, typed: &str) -> Option<u8> {
    let id = point.id.to_lowercase();
    let name = point.name.to_lowercase();
    if id == typed {
        return Some(0);
    }
    if id.starts_with(typed) {
        return Some(1);
    }
    if name.starts_with(typed) {
        return Some(2);
    }
    let starts = |word: &str| {
        name.split(|c: char| !c.is_alphanumeric())
            .any(|w| w.starts_with(word))
    };
    if typed.split_whitespace().all(starts) {
        return Some(3);
    }
    typed
        .split_whitespace()
        .all(|word| name.contains(word))
        .then_some(4)
}

/// Places of the fitting points in `points`, best first, those within reach before the others.
pub fn fitting(points: &[PointView], typed: &str) -> Vec<usize> {
    let typed = typed.trim().to_lowercase();
    let mut found: Vec<(u8, bool, usize)> = points
        .iter()
        .enumerate()
        .filter_map(|(index, point)| {
            let rank = if typed.is_empty() {
                0
            } else {
                rank(point, &typed)?
            };
            Some((rank, point.blocked.is_some(), index))
        })
        .collect();
    found.sort_unstable();
    found.into_iter().map(|(_, _, index)| index).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points() -> Vec<PointView> {
        let point = |id: &str, name: &str, blocked: bool| PointView {
            id: id.into(),
            name: name.into(),
            blocked: blocked.then(|| "back cover is on".into()),
        };
        vec![
            point("L_SOCK", "socket, line", false),
            point("MA", "wash motor, terminal A", true),
            point("MC", "wash motor, common", true),
            point("B3_1", "board plug 3 pin 1, motor forward", false),
        ]
    }

    #[test]
    fn a_short_name_finds_its_point_first() {
        assert_eq!(fitting(&points(), "ma"), [1]);
        assert_eq!(fitting(&points(), " MC "), [2]);
    }

    #[test]
    fn words_of_the_name_find_it_in_any_order() {
        assert_eq!(fitting(&points(), "motor"), [3, 1, 2]);
        assert_eq!(fitting(&points(), "common motor"), [2]);
        assert!(fitting(&points(), "pump").is_empty());
    }

    #[test]
    fn nothing_typed_lists_what_can_be_reached_first() {
        assert_eq!(fitting(&points(), ""), [0, 3, 1, 2]);
    }
}
