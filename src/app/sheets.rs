//! Sheets to print from the bench: the job card and each picture of the machine on a sheet of its own,
//! black on white, with a caption and nothing of the screen around them.

use std::collections::BTreeSet;

use yew::prelude::*;

use crate::app::bench::contexts::use_bench;
use crate::app::bench::picture::still;
use crate::app::bench::picture::tag;
use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::view::Picture;
use crate::app::view::sheets::SheetsView;
use crate::app::view::sheets::sheets;
use crate::bench::job::Job;
use crate::drawing::svg::Element;
use crate::language::said;
use crate::say;
use crate::text;

/// Lines to write on, on the printed card.
const BLANKS: [&str; 4] = [
    text!("Found"),
    text!("Done"),
    text!("Told the customer"),
    text!("Date and name"),
];

/// Whose sheets.
#[derive(Properties, PartialEq)]
pub struct SheetsProps {
    /// The job as far as it has got.
    pub job: Shared<Job>,
}

/// The screen.
#[component]
pub fn SheetsScreen(props: &SheetsProps) -> Html {
    let bench = use_bench();
    let wiring = bench.exam.is_none_or(|exam| exam.wiring);
    let view = use_memo((props.job.clone(), wiring), |(job, wiring)| {
        sheets(job, *wiring)
    });
    // By place: the card is 0, pictures follow.
    let left_out = use_state_eq(BTreeSet::<usize>::new);
    let n = view.pictures.len() + 1;
    let words: Vec<&str> = std::iter::once(say!("job card"))
        .chain(view.pictures.iter().map(|(picture, _)| picture.word()))
        .collect();
    let choice = |(at, word): (usize, &&str)| {
        let left_out = left_out.clone();
        let checked = !left_out.contains(&at);
        let onchange = Callback::from(move |_: Event| {
            let mut next = (*left_out).clone();
            if !next.remove(&at) {
                next.insert(at);
            }
            left_out.set(next);
        });
        html! { <label class="choice"><input type="checkbox" {checked} {onchange} /><span>{ *word }</span></label> }
    };
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let chosen = |at: usize| !left_out.contains(&at);
    html! {
        <main class="page sheets" id="main" tabindex="-1">
            <header class="page__head no-print">
                <h1>{ say!("Sheets to print") }</h1>
                <p class="page__lead">{ say!("{who}: the machine as it stands after the last act. Each sheet prints alone, black on white.", who = view.card.who) }</p>
            </header>
            <fieldset class="row no-print"><legend>{ say!("Which sheets") }</legend>{ for words.iter().enumerate().map(choice) }</fieldset>
            <p class="row no-print">
                <button type="button" class="button button--main" onclick={print} disabled={left_out.len() == n}>{ say!("Print") }</button>
                <a class="button" href={Route::Bench(view.id.clone()).href()}>{ say!("Back to the bench") }</a>
            </p>
            if chosen(0) { { card(&view) } }
            { for view.pictures.iter().enumerate().filter(|(at, _)| chosen(at + 1)).map(|(_, (picture, svg))| sheet(&view, *picture, svg)) }
        </main>
    }
}

fn card(view: &SheetsView) -> Html {
    let card = &view.card;
    html! {
        <section key="card" class="sheets__sheet stack" aria-labelledby="sheet-card">
            <h2 id="sheet-card">{ say!("Job card: {title}", title = card.title) }</h2>
            <p class="job-card__who">{ &card.who }</p>
            <blockquote class="job-card__quote">{ &card.complaint }</blockquote>
            if !card.asked.is_empty() {
                <h3>{ say!("Asked") }</h3>
                <ol class="job-card__asked">{ for card.asked.iter().map(|asked| html! {
                    <li><span class="job-card__question">{ &asked.question }</span>{ " " }<span class="job-card__answer">{ &asked.answer }</span></li>
                }) }</ol>
            }
            <h3>{ say!("Machine and place") }</h3>
            <dl class="job-card__facts">{ for card.facts.iter().map(|(name, text)| html! { <><dt>{ name }</dt><dd>{ text }</dd></> }) }</dl>
            <dl class="only-print">{ for BLANKS.iter().map(|words| html! { <div class="sheet__line"><dt>{ said(words) }</dt><dd></dd></div> }) }</dl>
            <p>{ say!("A simulated job, for training.") }</p>
        </section>
    }
}

fn sheet(view: &SheetsView, picture: Picture, svg: &Shared<Element>) -> Html {
    let label = say!("The machine, {picture}", picture = picture.word());
    html! {
        <figure key={picture.word()} class="sheets__sheet sheets__sheet--picture">
            <div class="drawing drawing--labels sheets__picture" role="img" aria-label={label}>{ Html::from(tag(&still(svg))) }</div>
            <figcaption>{ say!("{machine}, {picture}. {title}, {customer}, {clock}.", machine = view.machine, picture = picture.word(), title = view.card.title, customer = view.card.customer, clock = view.clock) }</figcaption>
        </figure>
    }
}
