//! What the customer answers: to each question one answer, and one for when it is asked again.

use serde_json::Value;
use serde_json::json;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use crate::app::desk::field::id_of;
use crate::app::desk::field::notes;
use crate::app::desk::field::rows_of;
use crate::app::desk::fields::JOB;
use crate::app::desk::form_table::holders;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::bench::questions::QUESTIONS;
use crate::language::said;
use crate::scenario::job_file::JobFile;

/// The job and what is wrong in its answers.
#[derive(Properties, PartialEq)]
pub struct AnswerListProps {
    /// The job.
    pub job: JobFile,
    /// Problems inside the answers.
    pub told: Vec<Told>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// The list.
#[component]
pub fn AnswerList(props: &AnswerListProps) -> Html {
    let one = |question: &crate::bench::questions::Question| {
        let answers = props.job.customer.answers.get(question.id);
        let text = |index: usize| {
            answers
                .and_then(|list| list.get(index))
                .cloned()
                .unwrap_or_default()
        };
        let path = format!("customer.answers.{}", question.id);
        let here = props.told.iter();
        let here = here.filter(|told| holders(&told.path).any(|holder| holder == path));
        let told: Vec<String> = here.map(|told| told.words.clone()).collect();
        html! {
            <fieldset class="desk__answer" key={question.id} id={id_of(&path)} tabindex="-1">
                <legend class="field__label">{ said(question.text) }</legend>
                { area(props, &format!("{path}[0]"), text(0)) }
                { area(props, &format!("{path}[1]"), text(1)) }
                { notes(&id_of(&path), "", &told) }
            </fieldset>
        }
    };
    html! { <div class="stack" id="field-customer-answers" tabindex="-1">{ for QUESTIONS.iter().map(one) }</div> }
}

fn area(props: &AnswerListProps, path: &str, value: String) -> Html {
    let rows = rows_of(&value);
    let optional = path.ends_with("[1]");
    let oninput = {
        let (edit, path) = (props.edit.clone(), path.to_owned());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            let gone = optional && text.is_empty();
            let value = if gone { Value::Null } else { json!(text) };
            edit.emit(Edit::Set(path.clone(), value));
        })
    };
    let onblur = props.edit.reform(|_: FocusEvent| Edit::Settle);
    html! {
        <label class="desk__say"><span class="field__hint">{ JOB.label(path) }</span>
            <textarea class="input" id={id_of(path)} {rows} {value} {oninput} {onblur} />
        </label>
    }
}
