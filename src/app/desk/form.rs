//! The job as a form, in the order in which a story is told.

use serde_json::Value;
use yew::prelude::*;

use crate::app::desk::answers::AnswerList;
use crate::app::desk::draft::blank;
use crate::app::desk::faults::FaultList;
use crate::app::desk::field::FieldRow;
use crate::app::desk::fields::JOB;
use crate::app::desk::form_table::Field;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::is_beside;
use crate::app::desk::pairs::Pairs;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::app::desk::van::Bag;
use crate::app::desk::van::Van;
use crate::app::desk::visit_lists::Phone;
use crate::app::desk::visit_lists::Place;
use crate::app::desk::visit_lists::Stock;
use crate::language::said;
use crate::say;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;

/// The job and what is wrong with it.
#[derive(Properties, PartialEq)]
pub struct FormProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong, each with its field.
    pub told: Vec<Told>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// The form.
#[component]
pub fn Form(props: &FormProps) -> Html {
    let whole = edit::as_value(&props.job);
    html! {
        <div class="desk__form">
            { for JOB.sections.iter().map(|section| html! {
                <section class="card stack" aria-label={said(section.title)} key={section.title}>
                    <h2 class="card__title">{ said(section.title) }</h2>
                    { for section.fields.iter().map(|field| row(props, field, &whole)) }
                </section>
            }) }
        </div>
    }
}

fn row(props: &FormProps, field: &Field, whole: &Value) -> Html {
    let beside = props
        .told
        .iter()
        .filter(|told| is_beside(field, &told.path));
    let here: Vec<Told> = beside.cloned().collect();
    let problems: Vec<String> = here.iter().map(|told| told.words.clone()).collect();
    let (job, edit) = (props.job.clone(), props.edit.clone());
    match field.kind {
        Kind::Faults => html! {
            <>
                <p class="field__label">{ field.label() }</p>
                <p class="field__hint">{ field.hint() }</p>
                <FaultList {job} told={here} {edit} />
            </>
        },
        Kind::Answers => {
            let preset = blank().customer.answers;
            let is_preset =
                |(id, said): &(&String, &Vec<String>)| job.customer.answers.get(*id) == Some(*said);
            let (n, of) = (preset.iter().filter(is_preset).count(), preset.len());
            html! {
                <>
                    if n > 0 { <p class="field__hint">{ say!("{n} of {of} answers are ready-made: see that none speaks against your story.", n, of) }</p> }
                    <details class="desk__answers">
                        <summary class="field__label">{ field.label() }</summary>
                        <p class="field__hint">{ field.hint() }</p>
                        <AnswerList {job} told={here} {edit} />
                    </details>
                </>
            }
        }
        Kind::Pairs => html! { <Pairs {job} field={*field} {problems} {edit} /> },
        Kind::Phone => html! { <Phone {job} {problems} {edit} /> },
        Kind::Stock => html! { <Stock {job} told={here} {edit} /> },
        Kind::Place => html! { <Place {job} {problems} {edit} /> },
        Kind::Van => html! { <Van {job} {problems} {edit} /> },
        Kind::Instruments => html! { <Bag {job} {problems} {edit} /> },
        kind => html! {
            <FieldRow key={field.path} path={field.path} label={field.label()} hint={field.hint()} {kind}
                      value={edit::get(whole, field.path).cloned().unwrap_or_default()}
                      {problems} {edit} />
        },
    }
}
