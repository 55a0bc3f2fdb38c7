//! What of the visit has a shape of its own: answers on the phone, what the store lacks, what is out
//! of the ordinary about the place.

use std::collections::BTreeMap;

use serde_json::json;
use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::field::FieldRow;
use crate::app::desk::field::id_of;
use crate::app::desk::fields::JOB;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::store;
use crate::bench::visit::Condition;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::scenario::visit_file::ReadyFile;
use crate::scenario::visit_file::StockFile;
use crate::text;

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
    (ReadyFile::Today, "today", text!("today")),
    (ReadyFile::Tomorrow, "tomorrow", text!("for a second visit")),
    (ReadyFile::Never, "never", text!("never: no longer made")),
];

const CONDITIONS: [(Condition, &str); 12] = [
    (Condition::GasSmell, text!("it smells of gas")),
    (Condition::Flood, text!("water stands in the room")),
    (Condition::Threat, text!("somebody threatens")),
    (Condition::ScorchedSocket, text!("the socket is scorched")),
    (Condition::Adaptor, text!("an adaptor in between")),
    (
        Condition::ExtensionReel,
        text!("a rolled-up extension reel"),
    ),
    (
        Condition::NoResidualDevice,
        text!("no residual current device in the house"),
    ),
    (Condition::Child, text!("a small child about")),
    (Condition::Dog, text!("a dog about")),
    (Condition::DelicateFloor, text!("a floor that marks")),
    (Condition::BareEdges, text!("bare edges on the cabinet")),
    (Condition::HotWater, text!("hot water in the tub")),
];

fn told(problems: &[String]) -> Html {
    html! { <>{ for problems.iter().map(|told| html! { <span class="field__error field__error--line">{ told }</span> }) }</> }
}

/// An answer for each question asked before the drive.
#[component]
pub fn Phone(props: &VisitProps) -> Html {
    let answers: BTreeMap<String, String> = props
        .job
        .visit
        .as_ref()
        .map(|visit| visit.phone.clone())
        .unwrap_or_default();
    // Afterwards it is the person's to fold.
    let begins_open = use_state(|| !answers.is_empty());
    let row = |question: &crate::bench::questions::Question| {
        let id = question.id;
        let oninput = {
            let (edit, answers) = (props.edit.clone(), answers.clone());
            Callback::from(move |event: InputEvent| {
                let text = event.target_unchecked_into::<HtmlInputElement>().value();
                let mut answers = answers.clone();
                if text.is_empty() {
                    answers.remove(id);
                } else {
                    answers.insert(id.to_owned(), text);
                }
                edit.emit(Edit::Set("visit.phone".to_owned(), json!(answers)));
            })
        };
        let onblur = props.edit.reform(|_: FocusEvent| Edit::Settle);
        html! {
            <label class="field" key={id}><span class="field__label">{ said(question.text) }</span>
                <input id={id_of(&format!("visit.phone.{id}"))} type="text" autocomplete="off"
                    value={answers.get(id).cloned().unwrap_or_default()} {oninput} {onblur} /></label>
        }
    };
    html! {
        <details class="desk__answers stack" id="field-visit-phone" tabindex="-1" open={*begins_open}>
            <summary class="field__label">{ JOB.label("visit.phone") }</summary>
            <p class="field__hint">{ say!("Empty: what is said at the door.") }</p>
            { told(&props.problems) }
            { for PHONE_QUESTIONS.iter().map(row) }
        </details>
    }
}

/// The job and what is wrong in its store.
#[derive(Properties, PartialEq)]
pub struct StockProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong here.
    pub told: Vec<Told>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// Parts that the store does not hand over today at the listed price.
#[component]
pub fn Stock(props: &StockProps) -> Html {
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
        let item = pack.and_then(|pack| store::item(&pack.workshop, id));
        item.map_or_else(|| id.to_owned(), |item| worded(item.name()).into_owned())
    };
    let on_add = set_store(props, &store, |store, part| {
        let line = StockFile {
            ready: ReadyFile::Tomorrow,
            price: None,
        };
        store.insert(part, line);
    });
    let on_add = on_add.reform(|event: Event| {
        let select = event.target_unchecked_into::<HtmlSelectElement>();
        let part = select.value();
        select.set_value("");
        part
    });
    let is_price = |told: &&Told| told.path.ends_with(".price");
    let problems: Vec<String> = props
        .told
        .iter()
        .filter(|told| !is_price(told))
        .map(|told| told.words.clone())
        .collect();
    let left = parts.iter().filter(|part| !store.contains_key(&part.id));
    html! {
        <fieldset class="field" id={id_of("visit.store")} tabindex="-1">
            <legend class="field__label">{ JOB.label("visit.store") }</legend>
            <span class="field__hint">{ say!("It has every part today unless it stands here.") }</span>
            { told(&problems) }
            <ul class="desk__faults">{ for store.iter().map(|(id, line)| stock_row(props, &store, id, &name(id), line)) }</ul>
            <label class="field"><span class="field__label">{ say!("Not in the store today") }</span>
                <select onchange={on_add}>
                    <option value="" selected=true>{ say!("choose a part") }</option>
                    { for left.map(|part| html! { <option value={part.id.clone()}>{ worded(&part.name) }</option> }) }
                </select></label>
        </fieldset>
    }
}

/// Changes the store by what a control says.
fn set_store(
    props: &StockProps,
    store: &BTreeMap<String, StockFile>,
    change: impl Fn(&mut BTreeMap<String, StockFile>, String) + 'static,
) -> Callback<String> {
    let (edit, store) = (props.edit.clone(), store.clone());
    Callback::from(move |said: String| {
        let mut store = store.clone();
        change(&mut store, said);
        edit.emit(Edit::Set("visit.store".to_owned(), json!(store)));
        edit.emit(Edit::Settle);
    })
}

fn stock_row(
    props: &StockProps,
    store: &BTreeMap<String, StockFile>,
    id: &str,
    name: &str,
    line: &StockFile,
) -> Html {
    let (ready_at, price_at) = (
        format!("visit.store.{id}.ready"),
        format!("visit.store.{id}.price"),
    );
    let part = id.to_owned();
    let on_ready = set_store(props, store, move |store, word| {
        let ready = READY.iter().find(|(_, known, _)| *known == word);
        if let (Some(line), Some((ready, ..))) = (store.get_mut(&part), ready) {
            line.ready = *ready;
        }
    });
    let on_ready =
        on_ready.reform(|event: Event| event.target_unchecked_into::<HtmlSelectElement>().value());
    let part = id.to_owned();
    let on_out = set_store(props, store, move |store, _| {
        store.remove(&part);
    });
    let on_out = on_out.reform(|_: MouseEvent| String::new());
    let here = props.told.iter().filter(|told| told.path == price_at);
    let problems: Vec<String> = here.map(|told| told.words.clone()).collect();
    html! {
        <li class="desk__fault" key={id.to_owned()}>
            <span class="row"><strong>{ name }</strong>
                <button type="button" class="button button--small" onclick={on_out} aria-label={say!("Take out: {name}", name)}>{ say!("Take out") }</button></span>
            <label class="field"><span class="field__label">{ JOB.label(&ready_at) }</span>
                <select id={id_of(&ready_at)} onchange={on_ready}>
                    { for READY.iter().map(|&(ready, value, words)| html! {
                        <option value={value} selected={ready == line.ready}>{ said(words) }</option>
                    }) }
                </select></label>
            if let Some(field) = JOB.field_at(&price_at) {
                <FieldRow path={price_at} label={field.label()} kind={field.kind} hint={field.hint()}
                    value={json!(line.price)} {problems} edit={props.edit.clone()} />
            }
        </li>
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
    let tick = |&(condition, words): &(Condition, &'static str)| {
        let onchange = {
            let (edit, place) = (props.edit.clone(), place.clone());
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
            <label class="choice"><input type="checkbox" checked={place.contains(&condition)} {onchange} />
                <span>{ said(words) }</span></label>
        }
    };
    html! {
        <fieldset class="field" id="field-visit-place" tabindex="-1">
            <legend class="field__label">{ JOB.label("visit.place") }</legend>
            { told(&props.problems) }
            <div class="desk__ticks">{ for CONDITIONS.iter().map(tick) }</div>
        </fieldset>
    }
}
