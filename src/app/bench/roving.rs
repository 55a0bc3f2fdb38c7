//! One stop of the tab key for a whole group; arrow keys move inside it.

use web_sys::Element;
use yew::prelude::*;

/// Where an arrow, Home or End key leads from `here` in a group of `count`; `None` for other keys.
pub fn moved(key: &str, here: usize, count: usize) -> Option<usize> {
    if count == 0 {
        return None;
    }
    match key {
        "ArrowRight" | "ArrowDown" => Some((here + 1) % count),
        "ArrowLeft" | "ArrowUp" => Some((here + count - 1) % count),
        "Home" => Some(0),
        "End" => Some(count - 1),
        _ => None,
    }
}

/// `0` for the one stop of the group, `-1` for the others.
pub fn stop(is_stop: bool) -> &'static str {
    if is_stop { "0" } else { "-1" }
}

/// A key handler that tells `on_move` where the arrows lead in a group of `count`.
///
/// They lead on from what has the focus, not from what was last drawn: keys may come faster than drawing.
pub fn on_arrows(count: usize, on_move: Callback<usize>) -> Callback<KeyboardEvent> {
    Callback::from(move |event: KeyboardEvent| {
        let there = place(&event).and_then(|here| moved(&event.key(), here, count));
        if let Some(there) = there {
            event.prevent_default();
            on_move.emit(there);
        }
    })
}

/// Where in its group the element stands that the key was pressed on.
fn place(event: &KeyboardEvent) -> Option<usize> {
    let key = event.target_dyn_into::<Element>()?;
    let group = key.closest("[role=tablist], [role=radiogroup]").ok()??;
    let keys = group.query_selector_all("[role=tab], [role=radio]").ok()?;
    (0..keys.length()).position(|index| {
        keys.item(index)
            .is_some_and(|other| other.is_same_node(Some(&key)))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arrows_go_round_and_other_keys_stay() {
        assert_eq!(moved("ArrowRight", 2, 3), Some(0));
        assert_eq!(moved("ArrowUp", 0, 3), Some(2));
        assert_eq!(moved("End", 0, 3), Some(2));
        assert_eq!(moved("a", 0, 3), None);
        assert_eq!(moved("Home", 0, 0), None);
    }
}
