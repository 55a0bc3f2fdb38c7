//! Causes as a list to choose from, grouped by part. Every cause the machine can have is in it,
//! in an order that says nothing about this job.

use yew::prelude::*;

use crate::app::view::CauseView;

/// The options of a `select`, grouped by part.
pub fn cause_groups(causes: &[CauseView]) -> Html {
    let mut groups: Vec<(&str, Vec<&CauseView>)> = Vec::new();
    for cause in causes {
        match groups.iter_mut().find(|(part, _)| *part == cause.part) {
            Some((_, list)) => list.push(cause),
            None => groups.push((&cause.part, vec![cause])),
        }
    }
    groups
        .into_iter()
        .map(|(part, list)| group(part, &list))
        .collect()
}

fn group(part: &str, causes: &[&CauseView]) -> Html {
    html! {
        <optgroup label={part.to_owned()}>
            { for causes.iter().map(|cause| html! {
                <option value={cause.id.clone()}>{ &cause.what }</option>
            }) }
        </optgroup>
    }
}
