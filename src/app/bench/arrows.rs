//! Keys on a picture: arrows go to the nearest touchable thing in that direction, page up and page
//! down through all of them in turn, so that nothing is out of reach.

use wasm_bindgen::JsCast;
use web_sys::Element;
use web_sys::HtmlElement;

/// Everything that can be touched.
const TOUCHABLE: &str = ".touch, .point";

/// Moves the focus from `here` to its neighbour.
pub fn neighbour(here: &Element, key: &str) {
    let Ok(Some(picture)) = here.closest("svg") else {
        return;
    };
    let Ok(all) = picture.query_selector_all(TOUCHABLE) else {
        return;
    };
    let from = middle(here);
    let mut best: Option<(f64, Element)> = None;
    for index in 0..all.length() {
        let Some(element) = all.item(index).and_then(|n| n.dyn_into::<Element>().ok()) else {
            continue;
        };
        if element == *here {
            continue;
        }
        let to = middle(&element);
        if let Some(effort) = effort((to.0 - from.0, to.1 - from.1), key)
            && best.as_ref().is_none_or(|(least, _)| effort < *least)
        {
            best = Some((effort, element));
        }
    }
    if let Some((_, element)) = best {
        // SVG elements take the focus like HTML ones.
        let _ = element.unchecked_into::<HtmlElement>().focus();
    }
}

/// Moves the focus to the next or the last thing in the picture's own order, round and round.
pub fn in_turn(here: &Element, by: i64) {
    let Ok(Some(picture)) = here.closest("svg") else {
        return;
    };
    let Ok(all) = picture.query_selector_all(TOUCHABLE) else {
        return;
    };
    let at = |index: u32| all.item(index).and_then(|n| n.dyn_into::<Element>().ok());
    let count = i64::from(all.length());
    let Some(place) = (0..all.length()).find(|i| at(*i).as_ref() == Some(here)) else {
        return;
    };
    let document = web_sys::window().and_then(|window| window.document());
    // What is drawn but not shown does not take the focus: go on to the next.
    for turn in 1..=count {
        let next = (i64::from(place) + by * turn).rem_euclid(count);
        let Some(element) = at(next as u32) else {
            return;
        };
        // SVG elements take the focus like HTML ones.
        let _ = element.unchecked_ref::<HtmlElement>().focus();
        if document.as_ref().and_then(|d| d.active_element()).as_ref() == Some(&element) {
            return;
        }
    }
}

fn middle(element: &Element) -> (f64, f64) {
    let area = element
        .query_selector(".hit")
        .ok()
        .flatten()
        .unwrap_or_else(|| element.clone());
    let area = area.get_bounding_client_rect();
    (
        area.x() + area.width() / 2.0,
        area.y() + area.height() / 2.0,
    )
}

/// How far away something lies in the direction of a key; sideways counts double, behind not at all.
fn effort((right, down): (f64, f64), key: &str) -> Option<f64> {
    let (along, across) = match key {
        "ArrowRight" => (right, down),
        "ArrowLeft" => (-right, down),
        "ArrowDown" => (down, right),
        _ => (-down, right),
    };
    (along > 1.0).then(|| along + 2.0 * across.abs())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_lies_straight_ahead_is_nearer_than_what_lies_aside() {
        let ahead = effort((50.0, 0.0), "ArrowRight").unwrap_or(f64::MAX);
        let aside = effort((30.0, 40.0), "ArrowRight").unwrap_or(f64::MAX);
        assert!(ahead < aside);
        assert_eq!(effort((-50.0, 0.0), "ArrowRight"), None);
        assert!(effort((0.0, -9.0), "ArrowUp").is_some());
    }
}
