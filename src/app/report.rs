//! The report: one page to print, with the numbers, the pictures, the bill and the signature.

use yew::prelude::*;

use crate::app::bench::picture::Picture;
use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::view::report::ReportView;
use crate::app::view::report::report;
use crate::bench::job::Job;
use crate::say;

/// Whose report.
#[derive(Properties, PartialEq)]
pub struct ReportProps {
    /// The job as far as it has got.
    pub job: Shared<Job>,
}

/// The screen.
#[component]
pub fn ReportScreen(props: &ReportProps) -> Html {
    let view = use_memo(props.job.clone(), |job| report(job));
    let print = Callback::from(|_: MouseEvent| {
        // A window that cannot print shows the page, which is all there is to lose.
        let _ = gloo::utils::window().print();
    });
    html! {
        <main class="page page--narrow report" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Report") }</h1>
                <p class="page__lead">{ &view.who }</p>
            </header>
            <div class="page__body stack">
                { facts(&view) }
                { list(say!("What the customer said"), &view.said) }
                { list(say!("Found"), &view.found) }
                { list(say!("Done"), &view.done) }
                { pictures(&view) }
                { numbers(&view) }
                { list(say!("Told and shown"), &view.told) }
                { bill(&view) }
                <p class="report__sign">{ say!("Signature of the customer:") }{ " " }<b>{ &view.signed }</b></p>
                <p>{ say!("From a simulated machine, for training.") }</p>
                <div class="row no-print">
                    <button type="button" class="button button--main" onclick={print}>{ say!("Print") }</button>
                    <a class="button" href={Route::Bench(view.id.clone()).href()}>{ say!("Back to the bench") }</a>
                </div>
            </div>
        </main>
    }
}

fn facts(view: &ReportView) -> Html {
    html! {
        <dl class="job-card__facts">
            { for view.facts.iter().map(|(name, text)| html! { <><dt>{ *name }</dt><dd>{ text }</dd></> }) }
        </dl>
    }
}

fn list(heading: &'static str, lines: &[String]) -> Html {
    html! {
        if !lines.is_empty() {
            <section>
                <h2>{ heading }</h2>
                <ul>{ for lines.iter().map(|line| html! { <li>{ line }</li> }) }</ul>
            </section>
        }
    }
}

fn pictures(view: &ReportView) -> Html {
    let picture = |(when, svg): &(String, Shared<crate::drawing::svg::Element>)| {
        html! {
            <figure>
                <Picture svg={svg.clone()} label={say!("The machine at {when}", when)} on_touch={Callback::noop()} />
                <figcaption>{ when }</figcaption>
            </figure>
        }
    };
    html! {
        if !view.pictures.is_empty() {
            <section class="report__pictures" aria-label={say!("Pictures")}>{ for view.pictures.iter().map(picture) }</section>
        }
    }
}

fn numbers(view: &ReportView) -> Html {
    html! {
        if !view.numbers.is_empty() {
            <section>
                <h2>{ say!("Measured") }</h2>
                <table>
                    <thead><tr><th scope="col">{ say!("What") }</th><th scope="col">{ say!("Reading") }</th></tr></thead>
                    <tbody>{ for view.numbers.iter().map(|(what, value)| html! { <tr><td>{ what }</td><td class="numbers">{ value }</td></tr> }) }</tbody>
                </table>
            </section>
        }
    }
}

fn bill(view: &ReportView) -> Html {
    html! {
        <section>
            <h2>{ say!("Bill") }</h2>
            <table>
                <tbody>{ for view.bill.iter().map(|(what, amount)| html! { <tr><th scope="row">{ what }</th><td class="numbers">{ amount }</td></tr> }) }</tbody>
            </table>
        </section>
    }
}
