//! Where safety was at stake: a picture of the machine as it was then, with the rule.

use yew::prelude::*;

use crate::app::bench::picture::still;
use crate::app::bench::picture::tag;
use crate::app::shared::Shared;
use crate::app::view::past;
use crate::bench::job::Job;
use crate::drawing::svg::Element;
use crate::say;

/// Pictures shown at most; the other findings stand at their steps.
const MOST: usize = 6;

/// Which job.
#[derive(Properties, PartialEq)]
pub struct MomentsProps {
    /// The job.
    pub job: Shared<Job>,
    /// Goes to a step.
    pub on_show: Callback<usize>,
}

/// The pictures; nothing where no rule was broken.
#[component]
pub fn Moments(props: &MomentsProps) -> Html {
    let found = use_memo(props.job.clone(), |job| past::of_findings(job, MOST));
    if found.is_empty() {
        return Html::default();
    }
    let one = |(step, words, svg): &(usize, String, Shared<Element>)| {
        let place = step.saturating_sub(1);
        let onclick = props.on_show.reform(move |_: MouseEvent| place);
        let label = say!("The machine at step {step}", step);
        html! {
            <figure class="moments__one">
                <div class="moments__picture" role="img" aria-label={label}>{ Html::from(tag(&still(svg))) }</div>
                <figcaption>
                    <button type="button" class="button button--small" {onclick}>{ say!("Step {step}", step) }</button>
                    { " " }{ words }
                </figcaption>
            </figure>
        }
    };
    html! {
        <section class="moments" aria-labelledby="moments">
            <h2 id="moments">{ say!("Where somebody could have been hurt, or something damaged") }</h2>
            <div class="moments__all">{ for found.iter().map(one) }</div>
        </section>
    }
}
