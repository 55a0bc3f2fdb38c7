//! What is on board: parts of this machine in the van, instruments in the bag.

use serde::Serialize;
use serde_json::Value;
use serde_json::json;
use yew::prelude::*;

use crate::app::desk::field::id_of;
use crate::app::desk::fields::JOB;
use crate::app::desk::state::Edit;
use crate::app::format;
use crate::bench::action::MeterMode;
use crate::bench::gauge::Gauge;
use crate::bench::words;
use crate::scenario;
use crate::scenario::job_file::JobFile;

/// The job.
#[derive(Properties, PartialEq)]
pub struct VanProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong with the list.
    #[prop_or_default]
    pub problems: Vec<String>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// Parts to tick; what is on board without being a part of this machine can be taken off.
#[component]
pub fn Van(props: &VanProps) -> Html {
    let van = &props.job.van;
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&props.job.machine));
    let parts = pack.map_or(&[][..], |pack| &pack.workshop.parts);
    let foreign = van
        .iter()
        .filter(|id| parts.iter().all(|part| part.id != **id));
    let tick = |id: &str, words: String| {
        let on = van.iter().any(|part| part == id);
        let onchange = {
            let (edit, van, id) = (props.edit.clone(), van.clone(), id.to_owned());
            Callback::from(move |_: Event| {
                edit.emit(Edit::Set("van".to_owned(), json!(toggled(&van, &id))))
            })
        };
        html! { <label class="choice"><input type="checkbox" checked={on} {onchange} /><span>{ words }</span></label> }
    };
    html! {
        <fieldset class="field" id="field-van" tabindex="-1">
            <legend class="field__label">{ format!("{}: {} of 8", JOB.label("van"), van.len()) }</legend>
            { for props.problems.iter().map(|told| html! { <span class="field__error">{ told }</span> }) }
            <div class="desk__ticks">
                { for foreign.map(|id| tick(id, format!("{id} (of another machine)"))) }
                { for parts.iter().map(|part| tick(&part.id, format!("{}, {}", part.name, format::money(part.price)))) }
            </div>
            <span class="field__hint">{ "Others come from the store on a second visit." }</span>
        </fieldset>
    }
}

/// Instruments to tick; all of them is the same as no rule.
#[component]
pub fn Bag(props: &VanProps) -> Html {
    let rules = &props.job.rules;
    let modes = ticks(
        props,
        "rules.instruments",
        &MeterMode::ALL,
        rules.instruments.as_deref(),
        words::mode_name,
    );
    let gauges = ticks(
        props,
        "rules.gauges",
        &Gauge::ALL,
        rules.gauges.as_deref(),
        |gauge| gauge.about().name,
    );
    html! {
        <fieldset class="field" id="field-rules-instruments" tabindex="-1">
            <legend class="field__label">{ JOB.label("rules.instruments") }</legend>
            { for props.problems.iter().map(|told| html! { <span class="field__error">{ told }</span> }) }
            <div class="desk__ticks">{ for modes }</div>
            <p class="field__label">{ JOB.label("rules.gauges") }</p>
            <div class="desk__ticks" id={id_of("rules.gauges")} tabindex="-1">{ for gauges }</div>
        </fieldset>
    }
}

/// A box for each instrument of one kind.
fn ticks<T: Copy + PartialEq + Serialize + 'static>(
    props: &VanProps,
    path: &'static str,
    all: &'static [T],
    bag: Option<&[T]>,
    name: fn(T) -> &'static str,
) -> Vec<Html> {
    let bag = bag.unwrap_or(all);
    let tick = |one: &T| {
        let onchange = {
            let (edit, bag, one) = (props.edit.clone(), bag.to_vec(), *one);
            Callback::from(move |_: Event| {
                let next = toggled(&bag, &one);
                let is_whole = all.iter().all(|one| next.contains(one));
                let value = if is_whole { Value::Null } else { json!(next) };
                edit.emit(Edit::Set(path.to_owned(), value));
            })
        };
        html! {
            <label class="choice"><input type="checkbox" checked={bag.contains(one)} {onchange} />
                <span>{ name(*one) }</span></label>
        }
    };
    all.iter().map(tick).collect()
}

/// The list with the entry taken out, or put at its end.
fn toggled<T: Clone + PartialEq>(list: &[T], entry: &T) -> Vec<T> {
    let mut next: Vec<T> = list
        .iter()
        .filter(|other| *other != entry)
        .cloned()
        .collect();
    if next.len() == list.len() {
        next.push(entry.clone());
    }
    next
}
