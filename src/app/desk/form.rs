//! The job as a form, in the order in which a story is told.

use serde_json::Value;
use yew::prelude::*;

use crate::app::desk::answers::AnswerList;
use crate::app::desk::faults::FaultList;
use crate::app::desk::field::FieldRow;
use crate::app::desk::fields::Field;
use crate::app::desk::fields::Kind;
use crate::app::desk::fields::SECTIONS;
use crate::app::desk::fields::is_beside;
use crate::app::desk::state::Edit;
use crate::app::desk::van::Bag;
use crate::app::desk::van::Van;
use crate::app::desk::visit_lists::Phone;
use crate::app::desk::visit_lists::Place;
use crate::app::desk::visit_lists::Stock;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;
use crate::scenario::problem::Problem;

/// The job and what is wrong with it.
#[derive(Properties, PartialEq)]
pub struct FormProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong, each with its field.
    pub problems: Vec<Problem>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// The form.
#[component]
pub fn Form(props: &FormProps) -> Html {
    let whole = edit::as_value(&props.job);
    html! {
        <div class="desk__form">
            { for SECTIONS.iter().map(|section| html! {
                <section class="card stack" aria-label={section.title} key={section.title}>
                    <h2 class="card__title">{ section.title }</h2>
                    { for section.fields.iter().map(|field| row(props, field, &whole)) }
                </section>
            }) }
        </div>
    }
}

fn row(props: &FormProps, field: &Field, whole: &Value) -> Html {
    let beside = props.problems.iter().filter(|p| is_beside(field, &p.path));
    let (job, edit) = (props.job.clone(), props.edit.clone());
    let told = |problems: Vec<Problem>| problems.into_iter().map(|p| p.remedy).collect::<Vec<_>>();
    let here: Vec<Problem> = beside.cloned().collect();
    match field.kind {
        Kind::Faults => html! {
            <>
                <p class="field__hint">{ field.hint }</p>
                <FaultList {job} problems={here} {edit} />
            </>
        },
        Kind::Answers => html! {
            <details class="desk__answers" open={!here.is_empty()}>
                <summary class="field__label">{ "Answers to the technician's questions" }</summary>
                <p class="field__hint">{ field.hint }</p>
                <AnswerList {job} problems={here} {edit} />
            </details>
        },
        Kind::Phone => html! { <Phone {job} problems={told(here)} {edit} /> },
        Kind::Stock => html! { <Stock {job} problems={told(here)} {edit} /> },
        Kind::Place => html! { <Place {job} problems={told(here)} {edit} /> },
        Kind::Van => html! { <Van {job} problems={told(here)} {edit} /> },
        Kind::Instruments => html! { <Bag {job} problems={told(here)} {edit} /> },
        kind => html! {
            <FieldRow key={field.path} path={field.path} label={field.label} hint={field.hint} {kind}
                      value={edit::get(whole, field.path).cloned().unwrap_or_default()}
                      problems={told(here)} {edit} />
        },
    }
}
