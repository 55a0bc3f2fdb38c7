//! Where a lead goes: chosen from a list that narrows while typing.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::view::Lead;
use crate::app::view::PointView;
use crate::app::view::points::fitting;
use crate::say;

/// Longest list shown at once; typing narrows it.
const SHOWN: usize = 40;

/// What the picker shows and tells.
#[derive(Properties, PartialEq)]
pub struct PointPickerProps {
    /// Which lead.
    pub lead: Lead,
    /// The red one is a clamp's jaws.
    pub jaws: bool,
    /// Where it is.
    pub at: Option<String>,
    /// Where it can go.
    pub points: Shared<Vec<PointView>>,
    /// It is the lead in hand: the next point touched gets it.
    pub in_hand: bool,
    /// Puts it somewhere, or takes it off.
    pub on_put: Callback<Option<String>>,
    /// Takes it in hand.
    pub on_take: Callback<()>,
}

/// The picker.
#[component]
pub fn PointPicker(props: &PointPickerProps) -> Html {
    let typed = use_state(|| None::<String>);
    let active = use_state(|| 0_usize);
    let name = props
        .at
        .as_ref()
        .map(|id| name_of(&props.points, id))
        .unwrap_or_default();
    let found = typed
        .as_ref()
        .map(|text| fitting(&props.points, text))
        .unwrap_or_default();
    let open = typed.is_some();
    let id = format!("lead-{}", props.lead.word());
    let choose = {
        let (typed, points, on_put) = (typed.clone(), props.points.clone(), props.on_put.clone());
        Callback::from(move |index: usize| {
            typed.set(None);
            if let Some(point) = points.get(index) {
                on_put.emit(Some(point.id.clone()));
            }
        })
    };
    let oninput = {
        let (typed, active) = (typed.clone(), active.clone());
        Callback::from(move |event: InputEvent| {
            typed.set(Some(
                event.target_unchecked_into::<HtmlInputElement>().value(),
            ));
            active.set(0);
        })
    };
    let onfocus = {
        let (typed, active, on_take) = (typed.clone(), active.clone(), props.on_take.clone());
        Callback::from(move |event: FocusEvent| {
            event.target_unchecked_into::<HtmlInputElement>().select();
            typed.set(Some(String::new()));
            active.set(0);
            on_take.emit(());
        })
    };
    let onblur = {
        let typed = typed.clone();
        Callback::from(move |_: FocusEvent| typed.set(None))
    };
    let onkeydown = keys(&typed, &active, &found, &choose);
    let clear = props.on_put.reform(|_: MouseEvent| None);
    let side = format!("instrument__probe--{}", props.lead.word());
    let class = classes!(
        "instrument__probe",
        side,
        props.in_hand.then_some("instrument__probe--in-hand")
    );
    let value = typed
        .as_ref()
        .filter(|text| !text.is_empty())
        .cloned()
        .unwrap_or(name);
    let [word, take_off, list] = words(props.lead, props.jaws);
    html! {
        <div {class}>
            <label class="instrument__probe-label" for={id.clone()}>{ word }</label>
            <input id={id.clone()} class="instrument__probe-name" type="text" role="combobox" autocomplete="off"
                   spellcheck="false" placeholder={say!("touch or type a point")} aria-autocomplete="list"
                   aria-expanded={open.to_string()} aria-controls={format!("{id}-list")}
                   aria-activedescendant={(open && !found.is_empty()).then(|| format!("{id}-{}", *active))}
                   {value} {oninput} {onfocus} {onblur} {onkeydown} />
            if props.at.is_some() {
                <button type="button" class="instrument__probe-clear" onclick={clear}
                        aria-label={take_off}>{ "×" }</button>
            }
            <ul id={format!("{id}-list")} class="instrument__points" role="listbox" hidden={!open}
                aria-label={list}>
                { for found.iter().take(SHOWN).enumerate().map(|(row, index)| {
                    option(&props.points[*index], &id, row, *active == row, choose.reform({ let index = *index; move |_| index }))
                }) }
            </ul>
        </div>
    }
}

/// What a lead is called, taking it off, and the list of its points.
fn words(lead: Lead, jaws: bool) -> [&'static str; 3] {
    match lead {
        Lead::Red if jaws => [
            say!("jaws"),
            say!("Take the jaws lead off"),
            say!("Points for the jaws lead"),
        ],
        Lead::Red => [
            say!("red"),
            say!("Take the red lead off"),
            say!("Points for the red lead"),
        ],
        Lead::Black => [
            say!("black"),
            say!("Take the black lead off"),
            say!("Points for the black lead"),
        ],
    }
}

fn keys(
    typed: &UseStateHandle<Option<String>>,
    active: &UseStateHandle<usize>,
    found: &[usize],
    choose: &Callback<usize>,
) -> Callback<KeyboardEvent> {
    let (typed, active, found, choose) = (
        typed.clone(),
        active.clone(),
        found.to_vec(),
        choose.clone(),
    );
    Callback::from(move |event: KeyboardEvent| {
        let last = found.len().min(SHOWN).saturating_sub(1);
        match event.key().as_str() {
            "ArrowDown" if typed.is_none() => typed.set(Some(String::new())),
            "ArrowDown" => active.set((*active + 1).min(last)),
            "ArrowUp" => active.set(active.saturating_sub(1)),
            "Enter" => {
                if let Some(index) = found.get(*active) {
                    choose.emit(*index);
                }
            }
            "Escape" => typed.set(None),
            _ => return,
        }
        event.prevent_default();
    })
}

fn option(point: &PointView, id: &str, row: usize, active: bool, choose: Callback<()>) -> Html {
    // Pressing must not take the focus away before the click arrives.
    let onmousedown = Callback::from(|event: MouseEvent| event.prevent_default());
    let onclick = choose.reform(|_: MouseEvent| ());
    let class = classes!(
        "instrument__point",
        active.then_some("instrument__point--active")
    );
    html! {
        <li id={format!("{id}-{row}")} {class} role="option" aria-selected={active.to_string()} {onmousedown} {onclick}>
            <b class="instrument__point-id">{ &point.id }</b>
            <span>{ format!(" {}", point.name) }</span>
            if let Some(blocked) = &point.blocked { <small class="instrument__point-blocked">{ format!(" ({blocked})") }</small> }
        </li>
    }
}

fn name_of(points: &[PointView], id: &str) -> String {
    points
        .iter()
        .find(|p| p.id == id)
        .map_or_else(|| id.to_owned(), |p| p.name.clone())
}
