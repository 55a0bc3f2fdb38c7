//! The notebook: every reading, look, sound, answer and act with its time, newest last.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::view::NoteView;
use crate::app::view::Order;
use crate::bench::action::Action;
use crate::say;

/// What the notebook shows and tells.
#[derive(Properties, PartialEq)]
pub struct NotebookProps {
    /// The lines.
    pub notes: Shared<Vec<NoteView>>,
    /// Numbers of the ticked lines.
    #[prop_or_default]
    pub ticked: Vec<u32>,
    /// Ticks a line or takes the tick away; without it no boxes are shown.
    #[prop_or_default]
    pub on_tick: Option<Callback<u32>>,
    /// Writes a remark; without it there is no room for one.
    #[prop_or_default]
    pub on_order: Option<Callback<Order>>,
}

/// The notebook.
#[component]
pub fn Notebook(props: &NotebookProps) -> Html {
    use_effect_with(
        (props.notes.len(), props.on_order.is_some()),
        |(_, is_kept_open)| {
            if *is_kept_open {
                show_the_end();
            }
        },
    );
    if props.notes.is_empty() {
        return html! {
            <section class="notebook" aria-label={say!("Notebook")}>
                <p class="notebook__empty">{ say!("Nothing noted yet. What you look at, listen to, ask or note stands here and counts as evidence; what only passes by does not.") }</p>
                { remark(props) }
            </section>
        };
    }
    html! {
        <section class="notebook" aria-label={say!("Notebook")}>
            <ol class="notebook__list">{ for props.notes.iter().map(|note| line(props, note)) }</ol>
            { remark(props) }
        </section>
    }
}

/// The last line is the one just written: it is brought into sight.
fn show_the_end() {
    let side = gloo::utils::document().query_selector("#card > .drawer__body");
    if let Ok(Some(side)) = side {
        side.set_scroll_top(side.scroll_height());
    }
}

fn remark(props: &NotebookProps) -> Html {
    props
        .on_order
        .clone()
        .map(|on_order| html! { <Remark {on_order} /> })
        .unwrap_or_default()
}

/// Where a remark goes.
#[derive(Properties, PartialEq)]
struct RemarkProps {
    on_order: Callback<Order>,
}

/// Room for a remark of one's own.
#[component]
fn Remark(props: &RemarkProps) -> Html {
    let words = use_state(String::new);
    let oninput = {
        let words = words.clone();
        Callback::from(move |event: InputEvent| {
            words.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let onsubmit = {
        let (words, on_order) = (words.clone(), props.on_order.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            if !words.trim().is_empty() {
                let text = words.trim().to_owned();
                on_order.emit(Order::Do(vec![Action::Remark { text }]));
                words.set(String::new());
            }
        })
    };
    html! {
        <form class="notebook__remark" {onsubmit}>
            <div class="field">
                <label class="field__label" for="remark">{ say!("Remark") }</label>
                <input id="remark" type="text" maxlength="300" autocomplete="off" value={(*words).clone()} {oninput} />
            </div>
            <button type="submit" class="button button--small">{ say!("Write down") }</button>
        </form>
    }
}

fn line(props: &NotebookProps, note: &NoteView) -> Html {
    let class = classes!(
        "notebook__line",
        note.kind.class(),
        note.warning.as_ref().map(|_| "notebook__line--warning")
    );
    html! {
        <li {class} key={note.number}>
            { tick_box(props, note) }
            <span class="notebook__time numbers">{ &note.time }</span>
            <span class="notebook__text">{ &note.text }</span>
            if let Some(value) = &note.value { <b class="notebook__value numbers">{ value }</b> }
            if let Some(sheet) = &note.sheet {
                <span class="notebook__sheet">{ say!("data sheet {range}", range = sheet) }</span>
            }
            if let Some(warning) = &note.warning { <span class="notebook__warning">{ warning }</span> }
            if !note.state.is_empty() { <span class="notebook__state">{ &note.state }</span> }
        </li>
    }
}

fn tick_box(props: &NotebookProps, note: &NoteView) -> Html {
    let Some(on_tick) = &props.on_tick else {
        return Html::default();
    };
    let number = note.number;
    let onchange = on_tick.reform(move |_: Event| number);
    html! {
        <input type="checkbox" class="notebook__tick" checked={props.ticked.contains(&number)} {onchange}
               aria-label={say!("Evidence: {text} {value}", text = note.text, value = note.value.as_deref().unwrap_or(""))} />
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::view::NoteKind;

    fn reading() -> NotebookProps {
        NotebookProps {
            notes: Shared::new(vec![NoteView {
                number: 3,
                time: "10:42".into(),
                kind: NoteKind::Reading,
                text: "ohms, motor terminal A to motor common".into(),
                value: Some("21.0 Ω".into()),
                sheet: Some("19 to 23 Ω".into()),
                state: "unplugged".into(),
                warning: None,
                is_price: false,
            }]),
            ticked: vec![3],
            on_tick: Some(Callback::noop()),
            on_order: Some(Callback::noop()),
        }
    }

    #[test]
    fn there_is_room_for_a_remark_on_the_bench_and_none_where_evidence_is_ticked() {
        let text = as_text::<Notebook>(reading);
        assert!(text.contains("Write down"), "{text}");
        let bare = as_text::<Notebook>(|| NotebookProps {
            on_order: None,
            ..reading()
        });
        assert!(!bare.contains("Write down"), "{bare}");
    }

    #[test]
    fn a_reading_stands_beside_what_the_data_sheet_says() {
        let text = as_text::<Notebook>(reading);
        assert!(
            text.contains("21.0 Ω") && text.contains("data sheet 19 to 23 Ω"),
            "{text}"
        );
    }

    #[test]
    fn a_line_can_be_ticked_as_evidence_and_says_which_it_is() {
        let text = as_text::<Notebook>(reading);
        assert!(
            text.contains("type=\"checkbox\"") && text.contains("aria-label=\"Evidence: ohms"),
            "{text}"
        );
    }
}
