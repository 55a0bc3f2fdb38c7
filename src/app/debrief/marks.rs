//! The mark sheet: each part opens to the reasons behind it.

use yew::prelude::*;

use crate::app::view::debrief::MarkRow;
use crate::say;

/// What the sheet shows.
#[derive(Properties, PartialEq)]
pub struct MarksProps {
    /// The parts.
    pub marks: Vec<MarkRow>,
    /// What economy and evidence go by.
    pub basis: String,
    /// What is still missing; empty while the marks are not settled.
    pub asked_for: String,
}

/// The sheet.
#[component]
pub fn Marks(props: &MarksProps) -> Html {
    html! {
        <section class="marks" aria-labelledby="marks">
            <h2 id="marks">{ say!("Marks") }</h2>
            if !props.asked_for.is_empty() { <p>{ &props.asked_for }</p> }
            { for props.marks.iter().map(row) }
            <p class="field__hint" role="status">{ &props.basis }</p>
        </section>
    }
}

fn row(mark: &MarkRow) -> Html {
    let [points, of] = [mark.points, mark.of].map(|n| format!("{n:.0}"));
    let value = say!("{points} of {of}", points, of);
    html! {
        <details class="marks__row" key={mark.name.clone()}>
            <summary>
                <span class="marks__name">{ &mark.name }</span>
                <meter class="marks__bar" min="0" max={mark.of.to_string()} value={mark.points.to_string()}
                       aria-label={say!("{label}: {value}", label = mark.name, value)} />
                <span class="marks__value numbers">{ value.clone() }</span>
            </summary>
            if mark.reasons.is_empty() {
                <p>{ say!("Nothing to remark.") }</p>
            } else {
                <ul>{ for mark.reasons.iter().map(|reason| html! { <li>{ reason }</li> }) }</ul>
            }
        </details>
    }
}
