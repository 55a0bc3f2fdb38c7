//! What of the visit has a shape of its own: answers on the phone, what the store lacks, what is out
//! of the ordinary about the place.

use std::collections::BTreeMap;

use serde_json::json;
use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::field::id_of;
use crate::app::desk::state::Edit;
use crate::bench::visit::Condition;
use crate::bench::visit::PHONE_QUESTIONS;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::scenario::visit_file::ReadyFile;
use crate::scenario::visit_file::StockFile;

/// The job.
#[derive(Properties, PartialEq)]
pub struct VisitProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong here.
    #[prop_or_default]
    pub problems: Vec<String>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

const READY: [(ReadyFile, &str, &str); 3] = [
    (ReadyFile::Today, "today", "today"),
    (ReadyFile::Tomorrow, "tomorrow", "for a second visit"),
    (ReadyFile::Never, "never", "never: no longer made"),
];

const CONDITIONS: [(Condition, &str); 12] = [
    (Condition::GasSmell, "it smells of gas"),
    (Condition::Flood, "water stands in the room"),
    (Condition::Threat, "somebody threatens"),
    (Condition::ScorchedSocket, "the socket is scorched"),
    (Condition::Adaptor, "an adaptor in between"),
    (Condition::ExtensionReel, "a rolled-up extension reel"),
    (
        Condition::NoResidualDevice,
        "no residual current device in the house",
    ),
    (Condition::Child, "a small child about"),
    (Condition::Dog, "a dog about"),
    (Condition::DelicateFloor, "a floor that marks"),
    (Condition::BareEdges, "bare edges on the cabinet"),
    (Condition::HotWater, "hot water in the tub"),
];

fn told(problems: &[String]) -> Html {
    html! { <>{ for problems.iter().map(|told| html! { <span class="field__error field__error--line">{ told }</span> }) }</> }
}

/// An answer for each question asked before the drive.
#[component]
pub fn Phone(props: &VisitProps) -> Html {
    let said: BTreeMap<String, String> = props
        .job
        .visit
        .as_ref()
        .map(|visit| visit.phone.clone())
        .unwrap_or_default();
    let row = |question: &crate::bench::scenario::Question| {
        let id = question.id;
        let oninput = {
            let (edit, said) = (props.edit.clone(), said.clone());
            Callback::from(move |event: InputEvent| {
                let text = event.target_unchecked_into::<HtmlInputElement>().value();
                let mut said = said.clone();
                if text.is_empty() {
                    said.remove(id);
                } else {
                    said.insert(id.to_owned(), text);
                }
                edit.emit(Edit::Set("visit.phone".to_owned(), json!(said)));
            })
        };
        let onblur = props.edit.reform(|_: FocusEvent| Edit::Settle);
        html! {
            <label class="field" key={id}><span class="field__label">{ question.text }</span>
                <input id={id_of(&format!("visit.phone.{id}"))} type="text" autocomplete="off"
                    value={said.get(id).cloned().unwrap_or_default()} {oninput} {onblur} /></label>
        }
    };
    html! {
        <details class="desk__answers stack" id="field-visit-phone" tabindex="-1" open={!said.is_empty() || !props.problems.is_empty()}>
            <summary class="field__label">{ "Answers on the phone" }</summary>
            <p class="field__hint">{ "Empty: what is said at the door." }</p>
            { told(&props.problems) }
            { for PHONE_QUESTIONS.iter().map(row) }
        </details>
    }
}

/// Parts that the store does not hand over today at the listed price.
#[component]
pub fn Stock(props: &VisitProps) -> Html {
    let store: BTreeMap<String, StockFile> = props
        .job
        .visit
        .as_ref()
        .map(|visit| visit.store.clone())
        .unwrap_or_default();
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&props.job.machine));
    let parts = pack.map_or(&[][..], |pack| &pack.workshop.parts);
    let name = |id: &str| {
        let part = parts.iter().find(|part| part.id == id);
        part.map_or_else(|| id.to_owned(), |part| part.name.clone())
    };
    let set = {
        let edit = props.edit.clone();
        move |store: &BTreeMap<String, StockFile>| {
            edit.emit(Edit::Set("visit.store".to_owned(), json!(store)));
            edit.emit(Edit::Settle);
        }
    };
    let row = |(id, line): (&String, &StockFile)| {
        let name = name(id);
        let on_ready = {
            let (set, store, id) = (set.clone(), store.clone(), id.clone());
            Callback::from(move |event: Event| {
                let value = event.target_unchecked_into::<HtmlSelectElement>().value();
                let mut store = store.clone();
                let ready = READY.iter().find(|(_, word, _)| *word == value);
                if let (Some(line), Some((ready, ..))) = (store.get_mut(&id), ready) {
                    line.ready = *ready;
                }
                set(&store);
            })
        };
        let on_price = {
            let (set, store, id) = (set.clone(), store.clone(), id.clone());
            Callback::from(move |event: Event| {
                let text = event.target_unchecked_into::<HtmlInputElement>().value();
                let mut store = store.clone();
                if let Some(line) = store.get_mut(&id) {
                    let price = text.trim().replace(',', ".").parse().ok();
                    line.price = price.filter(|price: &f64| price.is_finite());
                }
                set(&store);
            })
        };
        let on_out = {
            let (set, store, id) = (set.clone(), store.clone(), id.clone());
            Callback::from(move |_: MouseEvent| {
                let mut store = store.clone();
                store.remove(&id);
                set(&store);
            })
        };
        html! {
            <li class="desk__fault" key={id.clone()}>
                <span class="row"><strong>{ &name }</strong>
                    <button type="button" class="button button--small" onclick={on_out} aria-label={format!("Take out: {name}")}>{ "Take out" }</button></span>
                <label class="field"><span class="field__label">{ "Ready" }</span>
                    <select onchange={on_ready}>
                        { for READY.iter().map(|(ready, value, words)| html! {
                            <option value={*value} selected={*ready == line.ready}>{ *words }</option>
                        }) }
                    </select></label>
                <label class="field"><span class="field__label">{ "Price, units" }</span>
                    <input type="text" inputmode="decimal" autocomplete="off" value={line.price.map(|price| price.to_string()).unwrap_or_default()} onchange={on_price} />
                    <span class="field__hint">{ "Empty: the price list." }</span></label>
            </li>
        }
    };
    let on_add = {
        let (set, store) = (set.clone(), store.clone());
        Callback::from(move |event: Event| {
            let select = event.target_unchecked_into::<HtmlSelectElement>();
            let line = StockFile {
                ready: ReadyFile::Tomorrow,
                price: None,
            };
            let mut store = store.clone();
            store.insert(select.value(), line);
            select.set_value("");
            set(&store);
        })
    };
    let left = parts.iter().filter(|part| !store.contains_key(&part.id));
    html! {
        <fieldset class="field" id="field-visit-store" tabindex="-1">
            <legend class="field__label">{ "The parts store" }</legend>
            <span class="field__hint">{ "It has every part today unless it stands here." }</span>
            { told(&props.problems) }
            <ul class="desk__faults">{ for store.iter().map(row) }</ul>
            <label class="field"><span class="field__label">{ "Not in the store today" }</span>
                <select onchange={on_add}>
                    <option value="" selected=true>{ "choose a part" }</option>
                    { for left.map(|part| html! { <option value={part.id.clone()}>{ &part.name }</option> }) }
                </select></label>
        </fieldset>
    }
}

/// What is out of the ordinary about the place, to tick.
#[component]
pub fn Place(props: &VisitProps) -> Html {
    let place: Vec<Condition> = props
        .job
        .visit
        .as_ref()
        .map(|visit| visit.place.clone())
        .unwrap_or_default();
    let tick = |(condition, words): &(Condition, &'static str)| {
        let onchange = {
            let (edit, place, condition) = (props.edit.clone(), place.clone(), *condition);
            Callback::from(move |_: Event| {
                let mut next = place.clone();
                next.retain(|other| *other != condition);
                if next.len() == place.len() {
                    next.push(condition);
                }
                edit.emit(Edit::Set("visit.place".to_owned(), json!(next)));
            })
        };
        html! {
            <label class="choice"><input type="checkbox" checked={place.contains(condition)} {onchange} />
                <span>{ *words }</span></label>
        }
    };
    html! {
        <fieldset class="field" id="field-visit-place" tabindex="-1">
            <legend class="field__label">{ "Out of the ordinary about the place" }</legend>
            { told(&props.problems) }
            <div class="desk__ticks">{ for CONDITIONS.iter().map(tick) }</div>
        </fieldset>
    }
}
