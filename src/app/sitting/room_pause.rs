//! A pause of the whole room: where the candidate types the code that the instructor reads out, to stop
//! the clock and to let it go on.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::hooks::focus_on;
use crate::app::sitting::room::NoCode;
use crate::app::sitting::running;
use crate::say;

/// Whether the clock stands for the room.
#[derive(Properties, PartialEq)]
pub struct RoomPauseProps {
    /// The room pauses.
    pub paused: bool,
}

/// The form.
#[component]
pub fn RoomPause(props: &RoomPauseProps) -> Html {
    let code = use_state_eq(String::new);
    let wrong = use_state_eq(|| None::<NoCode>);
    let oninput = {
        let code = code.clone();
        Callback::from(move |event: InputEvent| {
            code.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let onsubmit = {
        let (code, wrong) = (code.clone(), wrong.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match entered(&code) {
                Ok(()) => {
                    code.set(String::new());
                    wrong.set(None);
                    // The form goes with what it was typed in.
                    focus_on("main");
                }
                Err(why) => wrong.set(Some(why)),
            }
        })
    };
    use_effect_with(props.paused, |paused| {
        if *paused {
            focus_on("room-code");
        }
    });
    let form = html! {
        <form class="stack" {onsubmit} novalidate=true>
            <div class="field">
                <label class="field__label" for="room-code">{ say!("Pause code") }</label>
                <input id="room-code" type="text" value={(*code).clone()} {oninput} autocomplete="off" spellcheck="false"
                    aria-invalid={wrong.is_some().to_string()} aria-describedby="room-code-wrong" />
            </div>
            <div id="room-code-wrong" role="alert">
                if let Some(why) = &*wrong { <p class="field__error">{ why.to_string() }</p> }
            </div>
            <p><button type="submit" class="button">{ if props.paused { say!("Go on: the clock starts again") } else { say!("Stop the clock for the room") } }</button></p>
        </form>
    };
    if props.paused {
        html! {
            <section key="paused" class="notice" aria-labelledby="room-pauses">
                <h2 id="room-pauses" class="notice__title">{ say!("The room pauses: the clock stands") }</h2>
                <p>{ say!("Nothing can be done at the jobs meanwhile, and the time does not count. Type the code that your instructor reads out to go on.") }</p>
                { form }
            </section>
        }
    } else {
        html! {
            <details key="runs"><summary>{ say!("Pause of the whole room") }</summary>
                <p>{ say!("When your instructor reads out a pause code, type it here. The clock stands until you type the next one.") }</p>
                { form }
            </details>
        }
    }
}

/// Takes a code for the sitting.
fn entered(typed: &str) -> Result<(), NoCode> {
    let anchor = running::with(|now| now.assessment.file.room_pause.clone()).flatten();
    let anchor = anchor.ok_or(NoCode::Unknown)?;
    let now_ms = js_sys::Date::now();
    let mut taken = Err(NoCode::Unknown);
    running::change(|sitting| taken = sitting.room.enter(&anchor, typed, now_ms));
    taken
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn the_form_says_whether_the_clock_stands() {
        let runs = as_text::<RoomPause>(|| RoomPauseProps { paused: false });
        assert!(runs.contains("Stop the clock for the room"), "{runs}");
        let stands = as_text::<RoomPause>(|| RoomPauseProps { paused: true });
        assert!(
            stands.contains("The room pauses: the clock stands"),
            "{stands}"
        );
        assert!(stands.contains("the time does not count"), "{stands}");
    }
}
