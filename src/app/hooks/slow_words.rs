//! Words for a screen reader at a pace that can be listened to.

use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// Shortest time between two announcements, ms. Design choice: a short sentence read aloud.
const PACE_MS: u32 = 1500;

/// The latest of `words`, changed at most once in `PACE_MS`; what comes and goes faster than
/// that is never read.
#[hook]
pub fn use_slow_words(words: AttrValue) -> AttrValue {
    let said = use_state(|| AttrValue::from(""));
    let waiting = use_mut_ref(|| None::<Timeout>);
    let latest = use_mut_ref(|| AttrValue::from(""));
    {
        let said = said.clone();
        use_effect_with(words, move |words| {
            *latest.borrow_mut() = words.clone();
            let pending = waiting.borrow().is_some();
            if !pending && !words.is_empty() {
                let (slot, latest) = (waiting.clone(), latest.clone());
                let timer = Timeout::new(PACE_MS, move || {
                    *slot.borrow_mut() = None;
                    said.set(latest.borrow().clone());
                });
                *waiting.borrow_mut() = Some(timer);
            }
        });
    }
    (*said).clone()
}
