//! The browser's animation frames, one after the other until stopped.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use yew::Callback;

type Slot = Rc<RefCell<Option<Closure<dyn FnMut(f64)>>>>;

/// A running chain of frames.
pub struct Frames {
    slot: Slot,
}

impl Frames {
    /// Calls `on_frame` with the time of each frame, ms.
    pub fn start(on_frame: Callback<f64>) -> Self {
        let slot: Slot = Rc::default();
        let next = Rc::clone(&slot);
        *slot.borrow_mut() = Some(Closure::new(move |now_ms: f64| {
            on_frame.emit(now_ms);
            ask(&next);
        }));
        ask(&slot);
        Self { slot }
    }

    /// Ends the chain.
    pub fn stop(&self) {
        // The closure may be running now; it is let go after it has returned.
        let slot = Rc::clone(&self.slot);
        gloo::timers::callback::Timeout::new(0, move || drop(slot.borrow_mut().take())).forget();
    }
}

fn ask(slot: &Slot) {
    if let Some(closure) = &*slot.borrow() {
        // Refused only by a window that is going away.
        let _ = gloo::utils::window().request_animation_frame(closure.as_ref().unchecked_ref());
    }
}
