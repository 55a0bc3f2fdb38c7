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
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::scenario::job_file::RulesFile;

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
            <legend class="field__label">{ say!("{label}: {n} of 8", label = JOB.label("van"), n = van.len()) }</legend>
            { for props.problems.iter().map(|told| html! { <span class="field__error">{ told }</span> }) }
            <div class="desk__ticks">
                { for foreign.map(|id| tick(id, say!("{id} (of another machine)", id))) }
                { for parts.iter().map(|part| tick(&part.id, format!("{}, {}", worded(&part.name), format::money(part.price)))) }
            </div>
            <span class="field__hint">{ say!("Others come from the store on a second visit.") }</span>
        </fieldset>
    }
}

/// All instruments, or those that are ticked; all of them ticked is the same as no rule.
#[component]
pub fn Bag(props: &VanProps) -> Html {
    let rules = &props.job.rules;
    let is_ruled = rules.instruments.is_some() || rules.gauges.is_some();
    let choice = |words: &'static str, chosen: bool, is_to_rule: bool| {
        let (edit, rules) = (props.edit.clone(), rules.clone());
        let onchange = Callback::from(move |_: Event| {
            let next = json!(bag_ruled(&rules, is_to_rule));
            edit.emit(Edit::Set("rules".to_owned(), next));
            edit.emit(Edit::Settle);
        });
        html! {
            <label class="choice"><input type="radio" name="bag" checked={chosen} {onchange} /><span>{ words }</span></label>
        }
    };
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
        |gauge| said(gauge.about().name),
    );
    html! {
        <fieldset class="field" id="field-rules-instruments" tabindex="-1">
            <legend class="field__label">{ JOB.label("rules.instruments") }</legend>
            { for props.problems.iter().map(|told| html! { <span class="field__error">{ told }</span> }) }
            { choice(say!("All instruments"), !is_ruled, false) }
            { choice(say!("Only those that are ticked here"), is_ruled, true) }
            <div class="desk__ticks">{ for modes }</div>
            <p class="field__label">{ JOB.label("rules.gauges") }</p>
            <div class="desk__ticks" id={id_of("rules.gauges")} tabindex="-1">{ for gauges }</div>
        </fieldset>
    }
}

/// The rules with every instrument allowed, or with a list of them to take from.
fn bag_ruled(rules: &RulesFile, is_to_rule: bool) -> RulesFile {
    let mut next = rules.clone();
    if is_to_rule {
        next.instruments.get_or_insert(MeterMode::ALL.to_vec());
        next.gauges.get_or_insert(Gauge::ALL.to_vec());
    } else {
        (next.instruments, next.gauges) = (None, None);
    }
    next
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_instruments_is_one_choice_that_leaves_the_other_rules() {
        let rules = RulesFile {
            instruments: Some(vec![MeterMode::Ohms]),
            gauges: Some(Vec::new()),
            budget: Some(90.0),
            ..RulesFile::default()
        };
        let all = bag_ruled(&rules, false);
        assert_eq!((&all.instruments, &all.gauges), (&None, &None));
        assert_eq!(all.budget, Some(90.0));
        let ruled = bag_ruled(&all, true);
        assert_eq!(
            ruled.instruments.map(|list| list.len()),
            Some(MeterMode::ALL.len())
        );
        // What was chosen before stays when one of the two is ruled already.
        assert_eq!(bag_ruled(&rules, true).instruments, rules.instruments);
    }

    #[test]
    fn a_tick_takes_out_or_puts_at_the_end() {
        assert_eq!(toggled(&[1, 2], &1), [2]);
        assert_eq!(toggled(&[2], &1), [2, 1]);
    }
}
