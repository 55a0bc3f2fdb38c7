//! The thread's side: takes a question, says how far it is, answers.

use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::DedicatedWorkerGlobalScope;
use web_sys::MessageEvent;

use crate::app::worker::messages::Answer;
use crate::app::worker::messages::Question;
use crate::app::worker::messages::Sent;
use crate::app::worker::work;
use crate::say;
use crate::scenario::read::read_back;

/// Serves questions for as long as the thread lives.
pub fn serve() {
    let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() else {
        return;
    };
    let asked = scope.clone();
    let on_message = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
        let answer = match read(&event) {
            Ok(Sent::Speak(spoken)) => match spoken.begin() {
                Ok(()) => return,
                Err(error) => Answer::Failed {
                    why: error.to_string(),
                },
            },
            Ok(Sent::Ask(question)) => {
                work::answer(question, &mut |progress| tell(&asked, &progress))
            }
            Err(why) => Answer::Failed { why },
        };
        tell(&asked, &answer);
    });
    scope.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
    // It lives as long as the thread.
    on_message.forget();
    tell(&scope, &Answer::Ready);
}

fn read(event: &MessageEvent) -> Result<Sent<Question>, String> {
    let text = event.data().as_string().unwrap_or_default();
    read_back(&text).ok_or_else(|| say!("The question cannot be read.").to_owned())
}

fn tell(scope: &DedicatedWorkerGlobalScope, answer: &Answer) {
    if let Ok(text) = serde_json::to_string(answer) {
        // Where the page is gone there is nobody to tell.
        let _ = scope.post_message(&JsValue::from_str(&text));
    }
}
