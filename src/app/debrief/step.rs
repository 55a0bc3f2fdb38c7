//! One step explained: what was done, what it gave, what a sound machine would have given, which
//! rule was broken and where the rule comes from.

use yew::prelude::*;

use crate::app::view::debrief::RuleRow;
use crate::app::view::debrief::StepRow;
use crate::say;

/// Which step.
#[derive(Properties, PartialEq)]
pub struct StepDetailProps {
    /// The step.
    pub step: StepRow,
    /// How many there are.
    pub count: usize,
    /// What it was worth, once that is known.
    pub worth: Option<String>,
    /// What deciding on it was worth, once that is known.
    pub decided: Vec<String>,
}

/// The step.
#[component]
pub fn StepDetail(props: &StepDetailProps) -> Html {
    let step = &props.step;
    html! {
        <section class="debrief__detail" aria-label={say!("This step")}>
            <h2>{ say!("Step {step} of {count}", step = step.number, count = props.count) }</h2>
            <p class="numbers">{ say!("{time} · cost so far {cost}", time = step.time, cost = step.cost) }</p>
            <p class="debrief__did">{ &step.words }</p>
            { for step.notes.iter().map(note) }
            if let Some(worth) = &props.worth { <p class="debrief__worth">{ worth }</p> }
            { for props.decided.iter().map(|words| html! { <p class="debrief__worth">{ words }</p> }) }
            { for step.events.iter().map(|event| html! { <p class="notice notice--danger">{ event }</p> }) }
            { for step.rules.iter().map(rule) }
        </section>
    }
}

fn note((is, sound): &(String, Option<String>)) -> Html {
    html! {
        <div class="debrief__note">
            <p>{ is }</p>
            if let Some(sound) = sound {
                <p class="debrief__sound">{ say!("A sound machine:") }{ " " }<b>{ sound }</b></p>
            }
        </div>
    }
}

fn rule(rule: &RuleRow) -> Html {
    html! {
        <div class="notice notice--rule">
            <p class="notice__title">{ &rule.what }</p>
            if !rule.why.is_empty() { <p class="notice__text">{ &rule.why }</p> }
            if !rule.source.is_empty() { <p class="notice__source">{ &rule.source }</p> }
        </div>
    }
}
