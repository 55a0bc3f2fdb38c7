//! The line over the bench: whose job, what time, what it costs so far, and the way out.

use yew::prelude::*;

use crate::app::desk::BACK_TO_DRAFT;
use crate::app::desk::use_draft_of;
use crate::app::route::Route;
use crate::language::said;
use crate::say;

/// What the line shows.
#[derive(Properties, PartialEq)]
pub struct JobBarProps {
    /// Name of the scenario.
    pub id: AttrValue,
    /// Title and customer.
    pub title: AttrValue,
    /// Time of day.
    pub clock: AttrValue,
    /// Minutes on site.
    pub on_site: AttrValue,
    /// Cost so far.
    pub cost: AttrValue,
    /// The job is over; the debrief is next.
    pub over: bool,
    /// Time left in an assessment, in words.
    #[prop_or_default]
    pub time_left: Option<String>,
}

/// The line over the bench.
#[component]
pub fn JobBar(props: &JobBarProps) -> Html {
    let sits = props.time_left.is_some();
    let (next, words) = match (props.over, sits) {
        (true, true) => (Route::Sitting, say!("Next job")),
        (true, false) => (Route::Debrief(props.id.to_string()), say!("Debrief")),
        (false, _) => (Route::Finding(props.id.to_string()), say!("Finish")),
    };
    let draft = use_draft_of(&props.id);
    let (back, back_words) = match draft {
        _ if sits => (Route::Sitting, say!("Assessment")),
        Some(draft) => (Route::Desk(Some(draft)), said(BACK_TO_DRAFT)),
        None => (Route::Jobs, say!("Jobs")),
    };
    html! {
        <header class="job-bar">
            <a class="job-bar__back" href={back.href()}>{ back_words }</a>
            <h1 class="job-bar__title">{ &props.title }</h1>
            <p class="job-bar__clock numbers">
                <span class="visually-hidden">{ say!("Time of day") }{ " " }</span>
                <b>{ &props.clock }</b>
                <span class="job-bar__site">{ " " }{ say!("on site {time}", time = props.on_site) }</span>
            </p>
            if let Some(left) = &props.time_left { <p class="job-bar__clock numbers"><b>{ left }</b></p> }
            <p class="job-bar__cost numbers">
                <span class="job-bar__label">{ say!("cost so far") }{ " " }</span><b>{ &props.cost }</b>
            </p>
            <a class="job-bar__finish button button--main" href={next.href()}>
                { words }
            </a>
        </header>
    }
}
