//! Pauses of the whole room as the instructor prepares them: whether there are any, and the codes to read
//! out.

use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::hand_over;
use crate::records::room_pause;
use crate::records::seal::AssessmentKey;
use crate::say;

/// Whose codes.
#[derive(Properties, PartialEq)]
pub struct RoomCodesProps {
    /// The assessment.
    pub given: Given,
    /// There are to be pauses, or none.
    pub on_change: Callback<bool>,
}

/// The tick and the codes.
#[component]
pub fn RoomCodes(props: &RoomCodesProps) -> Html {
    let told = use_state_eq(|| "");
    let is_on = props.given.file.room_pause.is_some();
    let onchange = props.on_change.reform(move |_: Event| !is_on);
    let codes = room_pause::codes(&AssessmentKey::new(props.given.key.0));
    let save = {
        let (told, text) = (told.clone(), as_lines(&props.given.file.title, &codes));
        Callback::from(move |_: MouseEvent| {
            told.set(
                match hand_over::save("pause_codes.txt", "text/plain", &text) {
                    Ok(()) => say!("The codes are saved. Keep them from candidates."),
                    Err(_) => say!("The browser did not let the page save a file."),
                },
            );
        })
    };
    html! {
        <section class="stack" aria-labelledby="room-pauses">
            <h2 id="room-pauses">{ say!("Pauses of the whole room") }</h2>
            <label class="choice"><input type="checkbox" checked={is_on} {onchange} />
                <span>{ say!("The clock can be stopped for the whole room by codes that are read out") }</span></label>
            if is_on {
                <p class="field__hint">{ say!("Each candidate types the code. Read out the first one to stop, the second one to go on, and so forth; cross off what was used, with any group: a code is good once. Each pause stands in the result with its time.") }</p>
                <details><summary>{ say!("Show the codes: not on a screen that candidates see") }</summary>
                    <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Pause codes, a table")}>
                        <table class="table">
                            <thead><tr><th scope="col">{ say!("Pause") }</th><th scope="col">{ say!("To stop") }</th><th scope="col">{ say!("To go on") }</th></tr></thead>
                            <tbody>{ for codes.chunks(2).enumerate().map(|(at, pair)| html! {
                                <tr key={at}><th scope="row">{ at + 1 }</th>{ for pair.iter().map(|code| html! { <td class="slips__code">{ code }</td> }) }</tr>
                            }) }</tbody>
                        </table>
                    </div>
                    <p class="row"><button type="button" class="button button--small" onclick={save}>{ say!("Save the codes as a text") }</button><span role="status">{ *told }</span></p>
                </details>
            }
        </section>
    }
}

fn as_lines(title: &str, codes: &[String]) -> String {
    let pairs = codes.chunks(2).enumerate();
    let lines = pairs.map(|(at, pair)| format!("{}. {}\n", at + 1, pair.join("   ")));
    let head = say!("Pause codes: {title}", title);
    format!("{head}\n{}", lines.collect::<String>())
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::records::seal::Hash;

    fn props(is_on: bool) -> RoomCodesProps {
        let mut given = Given::new(Hash([5; 32]));
        if !is_on {
            given.file.room_pause = None;
        }
        RoomCodesProps {
            given,
            on_change: Callback::noop(),
        }
    }

    #[test]
    fn the_codes_shown_are_those_that_the_file_tells() {
        let given = Given::new(Hash([5; 32]));
        let codes = room_pause::codes(&AssessmentKey::new(given.key.0));
        let anchor = given.file.room_pause.expect("a new one has pauses");
        let meant = room_pause::meaning(&anchor, &codes[0]);
        assert_eq!(meant, Some(room_pause::Meaning::Stop(1)));
        let text = as_text::<RoomCodes>(|| props(true));
        assert!(
            codes.iter().all(|code| text.contains(code.as_str())),
            "{text}"
        );
        let none = as_text::<RoomCodes>(|| props(false));
        assert!(
            codes.iter().all(|code| !none.contains(code.as_str())),
            "{none}"
        );
    }

    #[test]
    fn saved_codes_stand_a_pause_a_line() {
        let codes = ["A", "B", "C"].map(str::to_owned);
        assert_eq!(as_lines("T", &codes), "Pause codes: T\n1. A   B\n2. C\n");
    }
}
