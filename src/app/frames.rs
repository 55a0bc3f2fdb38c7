//! The browser's animation frames, one after the other until stopped.

use std::cell::Cell;
use std::cell::RefCell;
use std::rc::Rc;

use gloo::timers::callback::Timeout;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use yew::Callback;

type Slot = Rc<RefCell<Option<Closure<dyn FnMut(f64)>>>>;

/// A running chain of frames.
pub struct Frames {
    running: Rc<Cell<bool>>,
}

impl Frames {
    /// Calls `on_frame` with the time of each frame, ms.
    pub fn start(on_frame: Callback<f64>) -> Self {
        let running = Rc::new(Cell::new(true));
        let slot: Slot = Rc::default();
        let (goes_on, next) = (Rc::clone(&running), Rc::clone(&slot));
        *slot.borrow_mut() = Some(Closure::new(move |now_ms: f64| {
            if goes_on.get() {
                on_frame.emit(now_ms);
                ask(&next);
            } else {
                // The closure is running: it is let go once it has returned.
                let last = Rc::clone(&next);
                Timeout::new(0, move || drop(last.borrow_mut().take())).forget();
            }
        }));
        ask(&slot);
        Self { running }
    }

    /// Ends the chain; the frame already asked for does nothing more.
    pub fn stop(&self) {
        self.running.set(false);
    }
}

fn ask(slot: &Slot) {
    if let Some(closure) = &*slot.borrow() {
        // Refused only by a window that is going away.
        let _ = gloo::utils::window().request_animation_frame(closure.as_ref().unchecked_ref());
    }
}
