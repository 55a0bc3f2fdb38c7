//! Tabs tell each other what has changed in what they keep together.

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::BroadcastChannel;
use web_sys::MessageEvent;
use yew::Callback;

/// A line to the other tabs of this browser; shut when dropped.
pub struct AcrossTabs {
    channel: Option<BroadcastChannel>,
    _heard: Option<EventListener>,
    _stored: EventListener,
}

/// The speaking end.
#[derive(Clone)]
pub struct Voice(Option<BroadcastChannel>);

impl AcrossTabs {
    /// Opens the line of this name; `hear` gets each message of another tab, and an empty one when
    /// another tab has changed the browser's smaller store.
    pub fn open(name: &str, hear: Callback<String>) -> Self {
        // A browser without the channel has the event of the store alone.
        let channel = BroadcastChannel::new(&format!("tubwright/{name}")).ok();
        let stored = {
            let hear = hear.clone();
            EventListener::new(&gloo::utils::window(), "storage", move |_| {
                hear.emit(String::new());
            })
        };
        let heard = channel.as_ref().map(|channel| {
            EventListener::new(channel, "message", move |event| {
                let message = event.dyn_ref::<MessageEvent>();
                let text = message.and_then(|message| message.data().as_string());
                hear.emit(text.unwrap_or_default());
            })
        });
        Self {
            channel,
            _heard: heard,
            _stored: stored,
        }
    }

    /// What speaks on this line.
    pub fn voice(&self) -> Voice {
        Voice(self.channel.clone())
    }
}

impl Voice {
    /// Tells the other tabs.
    pub fn say(&self, text: &str) {
        if let Some(channel) = &self.0 {
            // Nobody listening is not an error.
            let _ = channel.post_message(&JsValue::from_str(text));
        }
    }
}

impl Drop for AcrossTabs {
    fn drop(&mut self) {
        if let Some(channel) = &self.channel {
            channel.close();
        }
    }
}
