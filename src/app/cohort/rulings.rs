//! Ruling on a job or a decision: what holds, who says so, when, why. And the list of all of it.

use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::format;
use crate::records::rulings::About;
use crate::records::rulings::Missing;
use crate::records::rulings::Ruling;

/// What is ruled on.
#[derive(Properties, PartialEq)]
pub struct RuleProps {
    /// About what.
    pub about: About,
    /// What may hold.
    pub words: Vec<&'static str>,
    /// A ruling was made.
    pub on_rule: Callback<Ruling>,
    /// Not after all.
    pub on_cancel: Callback<()>,
}

/// The form.
#[component]
pub fn Rule(props: &RuleProps) -> Html {
    let (by, why) = (use_state_eq(String::new), use_state_eq(String::new));
    // Where there is a choice, nobody's answer is put in the form beforehand.
    let only = match props.words[..] {
        [word] => word,
        _ => "",
    };
    let holds = use_state_eq(|| only.to_owned());
    let missing = use_state_eq(Vec::<Missing>::new);
    let typed = |into: &UseStateHandle<String>| {
        let into = into.clone();
        Callback::from(move |event: InputEvent| {
            into.set(event.target_unchecked_into::<HtmlInputElement>().value())
        })
    };
    let onchange = {
        let holds = holds.clone();
        Callback::from(move |event: Event| {
            holds.set(event.target_unchecked_into::<HtmlSelectElement>().value())
        })
    };
    let onsubmit = {
        let (by, why, holds, missing) = (by.clone(), why.clone(), holds.clone(), missing.clone());
        let (about, on_rule) = (props.about.clone(), props.on_rule.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let day = format::date(js_sys::Date::now() / 86_400_000.0);
            match Ruling::new(about.clone(), &holds, &by, &day, &why) {
                Ok(ruling) => on_rule.emit(ruling),
                Err(all) => missing.set(all),
            }
        })
    };
    let cancel = props.on_cancel.reform(|_: MouseEvent| ());
    let heading = match &props.about {
        About::Job(job) => format!("Void job {job} for everybody"),
        About::Candidate(candidate) => format!("Override the decision about {candidate}"),
    };
    let lacks = |one: Missing| missing.contains(&one).to_string();
    html! {
        <form class="card stack no-print" {onsubmit} aria-label={heading.clone()} novalidate=true>
            <h3>{ heading }</h3>
            if props.words.len() > 1 {
                <label class="field"><span class="field__label">{ "What holds" }</span>
                    <select {onchange} aria-required="true" aria-invalid={lacks(Missing::Holds)} aria-describedby="rule-missing"><option value="" selected={holds.is_empty()}>{ "Choose" }</option>{ for props.words.iter().map(|word| html! { <option value={*word} selected={*word == holds.as_str()}>{ *word }</option> }) }</select></label>
            }
            <label class="field"><span class="field__label">{ "Who rules" }</span><input type="text" value={(*by).clone()} oninput={typed(&by)} aria-required="true" aria-invalid={lacks(Missing::By)} aria-describedby="rule-missing" /></label>
            <label class="field"><span class="field__label">{ "Why" }</span><input type="text" value={(*why).clone()} oninput={typed(&why)} aria-required="true" aria-invalid={lacks(Missing::Why)} aria-describedby="rule-missing" /></label>
            <p class="field__hint">{ "Rulings are kept in this browser; save their file to take them to another one, or to keep them with the results." }</p>
            <p class="row"><button type="submit" class="button button--main">{ "It holds from now on" }</button>
                <button type="button" class="button" onclick={cancel}>{ "Not after all" }</button></p>
            <div id="rule-missing" role="alert">{ for missing.iter().map(|one| html! { <p class="field__error">{ one.words() }</p> }) }</div>
        </form>
    }
}

/// All rulings, each with a way to take it back.
pub fn list(rulings: &[Ruling], take_back: &Callback<usize>) -> Html {
    if rulings.is_empty() {
        return html! { <p>{ "Nothing was ruled. A job is voided from the table of jobs, a decision overridden on the person’s page; each stands with name, day and reason, and the records stay as they are." }</p> };
    }
    let line = |(at, ruling): (usize, &Ruling)| {
        let about = match &ruling.about {
            About::Job(job) => format!("Job {job}"),
            About::Candidate(candidate) => candidate.clone(),
        };
        let onclick = take_back.reform(move |_: MouseEvent| at);
        html! {
            <tr key={at}><th scope="row"><bdi>{ about.clone() }</bdi></th><td>{ &ruling.holds }</td><td><bdi>{ &ruling.by }</bdi></td><td class="numbers">{ &ruling.day }</td><td><bdi>{ &ruling.why }</bdi></td>
                <td><button type="button" class="button button--small no-print" aria-label={format!("Take back the ruling about {about}")} {onclick}>{ "take back" }</button></td></tr>
        }
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label="Rulings, a table">
            <table class="table"><thead><tr><th scope="col">{ "About" }</th><th scope="col">{ "Holds" }</th><th scope="col">{ "By" }</th><th scope="col">{ "Day" }</th><th scope="col">{ "Why" }</th><th scope="col"><span class="visually-hidden">{ "Take back" }</span></th></tr></thead>
            <tbody>{ for rulings.iter().enumerate().map(line) }</tbody></table>
        </div>
    }
}
