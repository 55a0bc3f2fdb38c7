//! One stop of the tab key for a whole group; arrow keys move inside it.

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

/// A key handler that tells `on_move` where the arrows lead.
pub fn on_arrows(here: usize, count: usize, on_move: Callback<usize>) -> Callback<KeyboardEvent> {
    Callback::from(move |event: KeyboardEvent| {
        if let Some(there) = moved(&event.key(), here, count) {
            event.prevent_default();
            on_move.emit(there);
        }
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
