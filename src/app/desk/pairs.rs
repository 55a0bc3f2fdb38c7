//! Pairs of faults that may come together, chosen by what is wrong.

use serde_json::json;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::faults::options;
use crate::app::desk::field::id_of;
use crate::app::desk::field::notes;
use crate::app::desk::form_table::Field;
use crate::app::desk::state::Edit;
use crate::app::desk::told::called;
use crate::say;
use crate::scenario::job_file::JobFile;

/// The job and what is wrong with its pairs.
#[derive(Properties, PartialEq)]
pub struct PairsProps {
    /// The job.
    pub job: JobFile,
    /// The field.
    pub field: Field,
    /// What is wrong here.
    pub problems: Vec<String>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// The pairs, and one more at their end.
#[component]
pub fn Pairs(props: &PairsProps) -> Html {
    let chosen = use_state(<[String; 2]>::default);
    let Field { path, .. } = props.field;
    let set = {
        let edit = props.edit.clone();
        move |pairs: &[[String; 2]]| {
            edit.emit(Edit::Set(path.to_owned(), json!(pairs)));
            edit.emit(Edit::Settle);
        }
    };
    let pairs = &props.job.double_faults;
    let add = {
        let (set, chosen, pairs) = (set.clone(), chosen.clone(), pairs.clone());
        Callback::from(move |_: MouseEvent| {
            let more = std::iter::once((*chosen).clone());
            set(&pairs.iter().cloned().chain(more).collect::<Vec<_>>());
            chosen.set(<[String; 2]>::default());
        })
    };
    let row = |(index, pair): (usize, &[String; 2])| {
        let name = words(&props.job, pair);
        let out = {
            let (set, mut rest) = (set.clone(), pairs.clone());
            rest.remove(index);
            Callback::from(move |_: MouseEvent| set(&rest))
        };
        html! {
            <li class="row" key={index}><span>{ &name }</span>
                <button type="button" class="button button--small" onclick={out} aria-label={say!("Take out: {name}", name)}>{ say!("Take out") }</button></li>
        }
    };
    let choice = |place: usize, label: &'static str| {
        let chosen = chosen.clone();
        let onchange = Callback::from(move |event: Event| {
            let mut next = (*chosen).clone();
            next[place] = event.target_unchecked_into::<HtmlSelectElement>().value();
            chosen.set(next);
        });
        html! {
            <label class="field"><span class="field__label">{ label }</span>
                // Drawn anew with every pair, so that it begins empty.
                <select key={pairs.len()} {onchange}>
                    <option value="" selected=true>{ say!("choose what is wrong") }</option>
                    { options(&props.job.machine) }
                </select></label>
        }
    };
    let id = id_of(path);
    html! {
        <fieldset class="field stack" id={id.clone()} tabindex="-1">
            <legend class="field__label">{ props.field.label() }</legend>
            { notes(&id, props.field.hint(), &props.problems) }
            <ul class="opened__told">{ for pairs.iter().enumerate().map(row) }</ul>
            { choice(0, say!("One fault")) }
            { choice(1, say!("The fault it may come with")) }
            <p><button type="button" class="button button--small" disabled={!is_pair(&chosen)} onclick={add}>{ say!("Add the pair") }</button></p>
        </fieldset>
    }
}

/// Two different faults.
fn is_pair([one, other]: &[String; 2]) -> bool {
    !one.is_empty() && !other.is_empty() && one != other
}

fn words(job: &JobFile, pair: &[String; 2]) -> String {
    let [one, other] = pair
        .each_ref()
        .map(|name| called(&job.machine, name).unwrap_or_else(|| name.clone()));
    say!("{one}, and {other}", one, other)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::draft::blank;

    #[test]
    fn a_pair_is_of_two_faults_and_is_told_by_what_is_wrong() {
        let pair = |one: &str, other: &str| [one.to_owned(), other.to_owned()];
        assert!(is_pair(&pair("belt_off", "capacitor_low")));
        for none in [pair("", "belt_off"), pair("belt_off", ""), pair("a", "a")] {
            assert!(!is_pair(&none), "{none:?}");
        }
        let words = words(&blank(), &pair("capacitor_low", "belt_off"));
        assert!(
            words.starts_with("the run capacitor has lost most of its value, and ")
                && !words.contains('_'),
            "{words}"
        );
    }
}
