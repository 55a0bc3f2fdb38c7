//! Giving an assessment out: the file, the course, the link, the key to keep, and a slip for each
//! candidate.

use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use crate::app::assessments::course::CoursePackage;
use crate::app::assessments::given::Given;
use crate::app::assessments::given::Slip;
use crate::app::desk::QrCode;
use crate::app::desk::field::rows_of;
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
    /// It is given out.
    pub on_given: Callback<()>,
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
        move || {
            told.set(match hand_over::save(&name, media, &text) {
                Ok(()) => done,
                Err(_) => say!("The browser did not let the page save a file."),
            });
        }
    };
    let oninput = props
        .on_candidates
        .reform(|event: InputEvent| event.target_unchecked_into::<HtmlTextAreaElement>().value());
    let print = props.on_given.reform(|_: MouseEvent| {
        // A browser that does not print says so itself.
        drop(gloo::utils::window().print());
    });
    let slips = given.slips();
    let id = &given.file.id;
    let save_file = save(
        format!("{id}.json"),
        "application/json",
        text,
        say!("The file for all candidates is saved."),
    );
    let save_key = save(
        format!("{id}.key"),
        "text/plain",
        format!("{}\n", given.key),
        say!(
            "The key is saved. Keep it where only you can open it: whoever has it can seal results."
        ),
    );
    html! {
        <>
            <section class="stack no-print" aria-labelledby="give">
                <h2 id="give">{ say!("Give it out") }</h2>
                <p class="row">
                    <button type="button" class="button" onclick={props.on_given.reform(move |_: MouseEvent| save_file())}>{ say!("Save the file") }</button>
                    <button type="button" class="button" onclick={move |_: MouseEvent| save_key()}>{ say!("Save the key") }</button>
                    <span role="status">{ *told }</span>
                </p>
                <CoursePackage given={given.clone()} on_given={props.on_given.clone()} folder={page().trim_end_matches("index.html").to_owned()} />
                <label class="field"><span class="field__label">{ say!("Link, {n} characters", n = link.len()) }</span><input readonly=true value={link.clone()} oncopy={props.on_given.reform(|_: Event| ())} /></label>
                <details><summary onclick={props.on_given.reform(|_: MouseEvent| ())}>{ say!("The link as a code for a classroom screen") }</summary><QrCode text={link} label={say!("The link as a QR code")} /></details>
                <label class="field"><span class="field__label">{ say!("Candidates") }</span>
                    <textarea value={given.candidates.clone()} {oninput} rows={rows_of(&given.candidates)} placeholder={"c-01\nc-02, 30"} />
                    <span class="field__hint">{ say!("One number a line. After a comma extra minutes, where somebody has them: they do not show on the slip; the clock on the candidate’s screen has them in it.") }</span></label>
                { match &slips {
                    Err(why) => html! { <p class="field__error" role="alert">{ why }</p> },
                    Ok(slips) if slips.is_empty() => Html::default(),
                    Ok(slips) => html! {
                        <div class="slips">
                            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Slips, a table")}>
                                <table class="table">
                                    <caption>{ say!("{title}: cut along the lines, one slip each", title = worded(&given.file.title)) }</caption>
                                    <thead><tr><th scope="col">{ say!("Your number") }</th><th scope="col">{ say!("Start code") }</th><th scope="col">{ say!("Letters beside it") }</th></tr></thead>
                                    <tbody>{ for slips.iter().map(|slip| html! {
                                        <tr key={slip.candidate.clone()}><th scope="row"><bdi>{ &slip.candidate }</bdi></th><td class="slips__code">{ &slip.code }</td><td class="slips__code">{ &slip.check }</td></tr>
                                    }) }</tbody>
                                </table>
                            </div>
                            <p><button type="button" class="button" onclick={print}>{ say!("Print the slips") }</button></p>
                        </div>
                    },
                } }
                <p class="field__hint">{ say!("When all begin, tell a word for today, the same for all: with another word, other values are drawn, so that yesterday’s group can tell nothing. Write the word down; every result holds it.") }</p>
            </section>
            <div class="only-print">{ for slips.iter().flatten().map(|slip| on_paper(slip, &given.file.title)) }</div>
        </>
    }
}

/// A slip with all that its candidate needs once it is cut off.
fn on_paper(slip: &Slip, title: &str) -> Html {
    html! {
        <section class="slip">
            <h2>{ worded(title).into_owned() }</h2>
            <dl class="facts">
                <dt>{ say!("Your number") }</dt><dd><bdi>{ &slip.candidate }</bdi></dd>
                <dt>{ say!("Start code") }</dt><dd class="slips__code">{ &slip.code }</dd>
                <dt>{ say!("Letters beside it") }</dt><dd class="slips__code">{ &slip.check }</dd>
            </dl>
            <p>{ say!("Open the link or the file that the room is given. Type these in, with the word for today, and begin. The workshop: {page}", page = page()) }</p>
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
