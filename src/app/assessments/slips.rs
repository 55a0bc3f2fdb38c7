//! Giving an assessment out: the file, the course, the link, the key to keep, and a slip for each
//! candidate.

use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use crate::app::assessments::course::CoursePackage;
use crate::app::assessments::given::Given;
use crate::app::desk::QrCode;
use crate::app::hand_over;
use crate::app::route::Route;
use crate::assess::letters;
use crate::language::worded;
use crate::say;

/// A sound assessment.
#[derive(Properties, PartialEq)]
pub struct SlipsProps {
    /// It.
    pub given: Given,
    /// The candidates were changed.
    pub on_candidates: Callback<String>,
}

/// File, link, key and slips.
#[component]
pub fn Slips(props: &SlipsProps) -> Html {
    let told = use_state_eq(|| "");
    let given = &props.given;
    let text = given.text();
    let link = link(&text);
    let save = |name: String, media: &'static str, text: String, done: &'static str| {
        let told = told.clone();
        Callback::from(move |_: MouseEvent| {
            told.set(match hand_over::save(&name, media, &text) {
                Ok(()) => done,
                Err(_) => say!("The browser did not let the page save a file."),
            });
        })
    };
    let oninput = props
        .on_candidates
        .reform(|event: InputEvent| event.target_unchecked_into::<HtmlTextAreaElement>().value());
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let id = &given.file.id;
    html! {
        <section class="stack" aria-labelledby="give">
            <h2 id="give">{ say!("Give it out") }</h2>
            <p class="row">
                <button type="button" class="button" onclick={save(format!("{id}.json"), "application/json", text, say!("The file for all candidates is saved."))}>{ say!("Save the file") }</button>
                <button type="button" class="button" onclick={save(format!("{id}.key"), "text/plain", format!("{}\n", given.key), say!("The key is saved. Keep it where only you can open it: whoever has it can seal results."))}>{ say!("Save the key") }</button>
                <span role="status">{ *told }</span>
            </p>
            <CoursePackage given={given.clone()} folder={page().trim_end_matches("index.html").to_owned()} />
            <label class="field"><span class="field__label">{ say!("Link, {n} characters", n = link.len()) }</span><input readonly=true value={link.clone()} /></label>
            <details><summary>{ say!("The link as a code for a classroom screen") }</summary><QrCode text={link} label={say!("The link as a QR code")} /></details>
            <label class="field"><span class="field__label">{ say!("Candidates") }</span>
                <textarea value={given.candidates.clone()} {oninput} placeholder={"c-01\nc-02, 30"} />
                <span class="field__hint">{ say!("One number a line. After a comma extra minutes, where somebody has them: they do not show on the slip or the screen.") }</span></label>
            { match given.slips() {
                Err(why) => html! { <p class="field__error" role="alert">{ why }</p> },
                Ok(slips) if slips.is_empty() => Html::default(),
                Ok(slips) => html! {
                    <div class="stack slips">
                        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Slips, a table")}>
                            <table class="table">
                                <caption>{ say!("{title}: cut along the lines, one slip each", title = worded(&given.file.title)) }</caption>
                                <thead><tr><th scope="col">{ say!("Your number") }</th><th scope="col">{ say!("Start code") }</th><th scope="col">{ say!("Letters beside it") }</th></tr></thead>
                                <tbody>{ for slips.iter().map(|slip| html! {
                                    <tr key={slip.candidate.clone()}><th scope="row"><bdi>{ &slip.candidate }</bdi></th><td class="slips__code">{ &slip.code }</td><td class="slips__code">{ &slip.check }</td></tr>
                                }) }</tbody>
                            </table>
                        </div>
                        <p class="no-print"><button type="button" class="button" onclick={print}>{ say!("Print the slips") }</button></p>
                    </div>
                },
            } }
            <p class="field__hint">{ say!("When all begin, tell a word for today, the same for all: with another word, other values are drawn, so that yesterday’s group can tell nothing. Write the word down; every result holds it.") }</p>
        </section>
    }
}

/// The page's own address.
fn page() -> String {
    let here = gloo::utils::window().location().href().unwrap_or_default();
    here.split(['#', '?']).next().unwrap_or_default().to_owned()
}

/// The page's own address with the assessment behind it.
fn link(text: &str) -> String {
    let letters = letters::to_letters(text);
    format!("{}{}", page(), Route::SitLink(letters).href())
}
