//! The job as a line in time: one dot a step, a mark where safety was at stake; drag to go there.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::view::debrief::StepRow;
use crate::say;

/// Width of the line in picture units.
const WIDTH: f64 = 1000.0;
/// Distance from its ends.
const EDGE: f64 = 20.0;

/// What the line shows and tells.
#[derive(Properties, PartialEq)]
pub struct TrackProps {
    /// The steps.
    pub steps: Vec<StepRow>,
    /// Place of the step shown, from 0.
    pub shown: usize,
    /// Goes to a step.
    pub on_show: Callback<usize>,
}

/// The line.
#[component]
pub fn Track(props: &TrackProps) -> Html {
    let last = props.steps.len().saturating_sub(1);
    let oninput = props.on_show.reform(move |event: InputEvent| {
        let value = event.target_unchecked_into::<HtmlInputElement>().value();
        value.parse::<usize>().unwrap_or(0).min(last)
    });
    let words = props.steps.get(props.shown).map(|s| {
        let (step, count) = (s.number, last + 1);
        say!(
            "step {step} of {count}: {words}",
            step,
            count,
            words = s.words
        )
    });
    html! {
        <div class="debrief__chart">
            <svg class="track" viewBox="0 0 1000 48" aria-hidden="true" preserveAspectRatio="none">
                <line class="track__line" x1="20" x2="980" y1="24" y2="24" />
                { for props.steps.iter().enumerate().map(|(index, step)| dot(step, index == props.shown)) }
            </svg>
            <input class="track__slider" type="range" min="0" max={last.to_string()} value={props.shown.to_string()}
                   aria-label={say!("Step")} aria-valuetext={words} {oninput} />
        </div>
    }
}

fn dot(step: &StepRow, shown: bool) -> Html {
    let x = format!(
        "{:.1}",
        EDGE + (WIDTH - 2.0 * EDGE) * step.place_ratio.clamp(0.0, 1.0)
    );
    let class = classes!(
        "track__step",
        step.is_unsafe().then_some("track__step--safety"),
        step.is_telling().then_some("track__step--good"),
        shown.then_some("track__step--shown")
    );
    let radius = if shown { "9" } else { "5" };
    html! {
        <g {class}>
            <circle cx={x.clone()} cy="24" r={radius} />
            if step.is_unsafe() { <text {x} y="12" text-anchor="middle">{ "!" }</text> }
        </g>
    }
}
