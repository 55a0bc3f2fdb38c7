//! Reading aloud what a customer says, where the device can: for whoever reads with effort.

use js_sys::Reflect;
use wasm_bindgen::JsValue;
use web_sys::SpeechSynthesisUtterance;
use yew::prelude::*;

use crate::language;
use crate::say;

/// What is read.
#[derive(Properties, PartialEq)]
pub struct AloudProps {
    /// The words.
    pub words: AttrValue,
}

/// A button that reads aloud; nothing where the device cannot.
#[component]
pub fn Aloud(props: &AloudProps) -> Html {
    let can = use_state(|| false);
    {
        let can = can.clone();
        use_effect_with(props.words.clone(), move |_| {
            can.set(can_speak());
            fall_silent
        });
    }
    if !*can {
        return Html::default();
    }
    let onclick = {
        let words = props.words.clone();
        Callback::from(move |_: MouseEvent| speak(&words))
    };
    html! {
        <button type="button" class="button button--small job-card__aloud" {onclick}>{ say!("Read aloud") }</button>
    }
}

fn can_speak() -> bool {
    web_sys::window().is_some_and(|window| {
        Reflect::has(&window, &JsValue::from_str("speechSynthesis")).unwrap_or(false)
    })
}

fn speak(words: &str) {
    let window = gloo::utils::window();
    let (Ok(voice), Ok(said)) = (
        window.speech_synthesis(),
        SpeechSynthesisUtterance::new_with_text(words),
    ) else {
        return;
    };
    said.set_lang(language::code());
    // Asked twice, it begins again.
    voice.cancel();
    voice.speak(&said);
}

fn fall_silent() {
    if can_speak()
        && let Ok(voice) = gloo::utils::window().speech_synthesis()
    {
        voice.cancel();
    }
}
