//! The page's side: starts the thread, asks, and hears the answers.

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::MessageEvent;
use web_sys::Worker;
use web_sys::WorkerOptions;
use web_sys::WorkerType;
use yew::Callback;

use crate::app::languages::Spoken;
use crate::app::worker::messages::Answer;
use crate::app::worker::messages::Question;
use crate::app::worker::messages::Sent;
use crate::say;
use crate::scenario::read::read_back;

/// Where the page says the thread's script is.
const ADDRESS: &str = "meta[name=thread]";

/// A thread with one question at a time; it ends when this is dropped, answered or not.
pub struct Thread {
    worker: Worker,
    _heard: [EventListener; 2],
}

impl Thread {
    /// Starts a thread and asks; none where the browser has no threads.
    pub fn ask(question: &Question, answered: Callback<Answer>) -> Option<Self> {
        let text = serde_json::to_string(&Sent::Ask(question)).ok()?;
        let language = match Spoken::here() {
            Some(spoken) => Some(serde_json::to_string(&Sent::<&Question>::Speak(spoken)).ok()?),
            None => None,
        };
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        let worker = Worker::new_with_options(&address()?, &options).ok()?;
        let asked = worker.clone();
        let failed = answered.clone();
        let heard = EventListener::new(&worker, "message", move |event| {
            let told = event
                .dyn_ref::<MessageEvent>()
                .and_then(|message| message.data().as_string())
                .and_then(|text| read_back(&text));
            match told {
                Some(Answer::Ready) => {
                    // A thread that has ended meanwhile is heard of below.
                    for text in language.iter().chain([&text]) {
                        let _ = asked.post_message(&JsValue::from_str(text));
                    }
                }
                Some(answer) => answered.emit(answer),
                None => {}
            }
        });
        let broken = EventListener::new(&worker, "error", move |_| {
            failed.emit(Answer::Failed {
                why: say!("The browser has stopped the computation.").to_owned(),
            });
        });
        worker.post_message(&wasm_bindgen::module()).ok()?;
        Some(Self {
            worker,
            _heard: [heard, broken],
        })
    }
}

impl Thread {
    /// Asks the next question, once the one before is answered.
    pub fn again(&self, question: &Question) {
        if let Ok(text) = serde_json::to_string(&Sent::Ask(question)) {
            // A thread that has ended meanwhile has told so.
            let _ = self.worker.post_message(&JsValue::from_str(&text));
        }
    }
}

impl Drop for Thread {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}

fn address() -> Option<String> {
    let meta = gloo::utils::document().query_selector(ADDRESS).ok()??;
    meta.get_attribute("content")
}
