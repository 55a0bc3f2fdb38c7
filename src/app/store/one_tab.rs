//! One tab writes a job; a second one that opens it is told.
//!
//! Tabs talk over a broadcast channel named after the job: "who", answered by "mine", and
//! "give". Two tabs that ask at the same moment let the one that asked first have it.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::BroadcastChannel;
use web_sys::MessageEvent;
use yew::Callback;

/// How long an answer may take, ms. Tabs of one browser answer within a few.
const PATIENCE_MS: u32 = 250;

/// Who writes the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Holder {
    /// Not known yet.
    Asking,
    /// This tab.
    Us,
    /// Another tab.
    Other,
}

struct Inner {
    channel: Option<BroadcastChannel>,
    holder: Holder,
    asked: f64,
    changed: Callback<Holder>,
}

/// This tab's claim to a job; given up when dropped.
pub struct Claim {
    inner: Rc<RefCell<Inner>>,
    _listener: Option<EventListener>,
    _patience: Timeout,
}

impl Claim {
    /// Asks whether another tab has the job; `changed` hears the answer and every change.
    pub fn ask(job: &str, changed: Callback<Holder>) -> Self {
        // A browser without the channel has no way to tell; the job is ours then.
        let channel = BroadcastChannel::new(&format!("tubwright/job/{job}")).ok();
        let asked = js_sys::Date::now() + js_sys::Math::random();
        let inner = Rc::new(RefCell::new(Inner {
            channel,
            holder: Holder::Asking,
            asked,
            changed,
        }));
        let listener = inner.borrow().channel.as_ref().map(|channel| {
            let inner = Rc::clone(&inner);
            EventListener::new(channel, "message", move |event| {
                let text = event
                    .dyn_ref::<MessageEvent>()
                    .and_then(|e| e.data().as_string());
                hear(&inner, &text.unwrap_or_default());
            })
        });
        say(&inner, &format!("who {asked}"));
        let waiting = Rc::clone(&inner);
        let patience = Timeout::new(PATIENCE_MS, move || {
            if waiting.borrow().holder == Holder::Asking {
                set(&waiting, Holder::Us);
            }
        });
        Self {
            inner,
            _listener: listener,
            _patience: patience,
        }
    }

    /// Takes the job over; the other tab stops writing.
    pub fn take(&self) {
        say(&self.inner, "give");
        set(&self.inner, Holder::Us);
    }
}

impl Drop for Claim {
    fn drop(&mut self) {
        if let Some(channel) = &self.inner.borrow().channel {
            channel.close();
        }
    }
}

fn hear(inner: &Rc<RefCell<Inner>>, text: &str) {
    let (holder, asked) = (inner.borrow().holder, inner.borrow().asked);
    match text.split_once(' ') {
        Some(("who", time)) => {
            let earlier = time.parse::<f64>().is_ok_and(|time| time < asked);
            match holder {
                Holder::Us => say(inner, "mine"),
                Holder::Asking if !earlier => say(inner, "mine"),
                Holder::Asking => set(inner, Holder::Other),
                Holder::Other => {}
            }
        }
        None if text == "mine" && holder == Holder::Asking => set(inner, Holder::Other),
        None if text == "give" && holder == Holder::Us => set(inner, Holder::Other),
        _ => {}
    }
}

fn say(inner: &Rc<RefCell<Inner>>, text: &str) {
    if let Some(channel) = &inner.borrow().channel {
        // Nobody listening is not an error.
        let _ = channel.post_message(&JsValue::from_str(text));
    }
}

fn set(inner: &Rc<RefCell<Inner>>, holder: Holder) {
    inner.borrow_mut().holder = holder;
    let changed = inner.borrow().changed.clone();
    changed.emit(holder);
}
