//! Which jobs: rows of level, skill, machine and number.

use std::collections::BTreeSet;

use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::field::id_of;
use crate::app::desk::skills;
use crate::app::sitting;
use crate::assess::assessment_file::SlotFile;
use crate::language::worded;
use crate::say;
use crate::scenario;

/// The rows.
#[derive(Properties, PartialEq)]
pub struct SlotsProps {
    /// As they are.
    pub slots: Vec<SlotFile>,
    /// As they are to be.
    pub on_change: Callback<Vec<SlotFile>>,
}

/// The table of rows.
#[component]
pub fn Slots(props: &SlotsProps) -> Html {
    let skills = skills::known();
    let machines: Vec<&str> = scenario::machine_files()
        .unwrap_or_default()
        .iter()
        .map(|machine| machine.id.as_str())
        .collect();
    let add = {
        let (slots, on_change) = (props.slots.clone(), props.on_change.clone());
        Callback::from(move |_: MouseEvent| {
            let mut next = slots.clone();
            next.push(SlotFile {
                level: None,
                skills: Vec::new(),
                machines: Vec::new(),
                from: Vec::new(),
                n: 1,
            });
            on_change.emit(next);
        })
    };
    html! {
        <section class="stack" id={id_of("jobs")} tabindex="-1" aria-labelledby="slots">
            <h2 id="slots">{ say!("Jobs") }</h2>
            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Jobs asked for, a table")}>
                <table class="table">
                    <thead><tr><th scope="col">{ say!("Level") }</th><th scope="col">{ say!("Skill") }</th><th scope="col">{ say!("Machine") }</th><th scope="col">{ say!("How many") }</th><th scope="col">{ say!("There are") }</th><th scope="col"><span class="visually-hidden">{ say!("Take off") }</span></th></tr></thead>
                    <tbody>{ for (0..props.slots.len()).map(|at| row(props, at, &skills, &machines)) }</tbody>
                </table>
            </div>
            <p><button type="button" class="button button--small" onclick={add}>{ say!("One more kind of job") }</button></p>
        </section>
    }
}

fn row(props: &SlotsProps, at: usize, skills: &BTreeSet<&str>, machines: &[&str]) -> Html {
    let slot = &props.slots[at];
    let change = |change: fn(&mut SlotFile, String)| {
        let (slots, on_change) = (props.slots.clone(), props.on_change.clone());
        Callback::from(move |to: String| {
            let mut next = slots.clone();
            if let Some(slot) = next.get_mut(at) {
                change(slot, to);
            }
            on_change.emit(next);
        })
    };
    let select = |label: String, now: &str, words: Vec<String>, to: Callback<String>| {
        let onchange =
            to.reform(|event: Event| event.target_unchecked_into::<HtmlSelectElement>().value());
        let options = words.into_iter().map(
            |word| html! { <option value={word.clone()} selected={word == now}>{ worded(&word).into_owned() }</option> },
        );
        html! {
            <select class="input" aria-label={label} {onchange}>
                <option value="" selected={now.is_empty()}>{ say!("any") }</option>{ for options }
            </select>
        }
    };
    let level = change(|slot, to| slot.level = to.parse().ok());
    let skill =
        change(|slot, to| slot.skills = Some(to).filter(|to| !to.is_empty()).into_iter().collect());
    let machine = change(|slot, to| {
        slot.machines = Some(to).filter(|to| !to.is_empty()).into_iter().collect()
    });
    // What is no number leaves the last one standing while it is typed.
    let number = change(|slot, to| slot.n = to.trim().parse().unwrap_or(slot.n));
    let oninput = number
        .reform(|event: InputEvent| event.target_unchecked_into::<HtmlInputElement>().value());
    let there = sitting::library().map_or(0, |library| {
        library
            .files()
            .iter()
            .filter(|(id, job)| slot.takes(id, job))
            .count()
    });
    let (slots, on_change) = (props.slots.clone(), props.on_change.clone());
    let off = Callback::from(move |_: MouseEvent| {
        let mut next = slots.clone();
        next.remove(at);
        on_change.emit(next);
    });
    let n = at + 1;
    let first = |list: &[String]| list.first().cloned().unwrap_or_default();
    html! {
        <tr key={at}>
            <td>{ select(say!("Level of row {n}", n), &slot.level.map_or(String::new(), |level| level.to_string()), (1..=5).map(|n| n.to_string()).collect(), level) }</td>
            <td>{ select(say!("Skill of row {n}", n), &first(&slot.skills), skills.iter().map(|s| (*s).to_owned()).collect(), skill) }</td>
            <td>{ select(say!("Machine of row {n}", n), &first(&slot.machines), machines.iter().map(|m| (*m).to_owned()).collect(), machine) }</td>
            <td><input class="input" id={id_of(&format!("jobs[{at}].n"))} type="number" min="1" max="60" value={slot.n.to_string()} aria-label={say!("How many of row {n}", n)} {oninput} /></td>
            <td class="numbers">{ there }</td>
            <td><button type="button" class="button button--small" aria-label={say!("Take off row {n}", n)} onclick={off}>{ say!("take off" as "of a list") }</button></td>
        </tr>
    }
}
