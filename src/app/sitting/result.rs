//! What came of an assessment: the receipt, the file to hand over, what the result proves and how
//! sure it is, and the sheets to print.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::desk::QrCode;
use crate::app::format;
use crate::app::hand_over;
use crate::app::hooks::go_to;
use crate::app::lost_points::LostPoints;
use crate::app::me::sure::Sure;
use crate::app::outbox;
use crate::app::proves::Proves;
use crate::app::route::Route;
use crate::app::sitting::jobs;
use crate::app::sitting::mark_sheet::MarkSheet;
use crate::app::sitting::mark_sheet::decided;
use crate::app::sitting::mark_sheet::verdict;
use crate::app::sitting::running;
use crate::app::sitting::start::kept_for;
use crate::app::sitting::watch;
use crate::app::sitting::worth;
use crate::app::training_system;
use crate::app::worker::Worked;
use crate::assess::decide::Decided;
use crate::language::in_english;
use crate::language::said;
use crate::language::worded;
use crate::records::record::Record;
use crate::records::slip;
use crate::say;

/// What the screen shows beside the sitting's own result.
#[derive(Properties, PartialEq)]
pub struct ResultProps {
    /// What stands in the way of telling the training system.
    pub trouble: Option<&'static str>,
}

/// The screen.
#[component]
pub fn ResultScreen(props: &ResultProps) -> Html {
    let told = use_state_eq(|| "");
    let known = use_callback((), |worked: Worked, ()| worth::known(&worked));
    let n_records = running::with(|now| now.sitting.records.len());
    let marked = use_memo(n_records, |_| {
        running::with(jobs::marked).unwrap_or_default()
    });
    let places = use_memo(n_records, |_| {
        running::with(jobs::places).unwrap_or_default()
    });
    let Some((own, assessment)) =
        running::with(|now| (now.sitting.clone(), now.assessment.clone()))
    else {
        return Html::default();
    };
    let file = assessment.file.clone();
    let decision = decided(&file, &own.records);
    {
        let own = own.clone();
        use_effect_with(own.started_ms, move |_| {
            let decision = in_english(|| decided(&assessment.file, &own.records));
            training_system::ended(&decision, &own.records);
            spawn_local(async move {
                // What cannot be queued is in the file all the same.
                let _ = outbox::put(&own, &assessment, &decision).await;
            });
        });
    }
    let save = {
        let (told, text) = (told.clone(), whole(&own.records));
        let name = file_name(&file.id, &own.candidate);
        Callback::from(move |_: MouseEvent| {
            told.set(match hand_over::save(&name, "application/json", &text) {
                Ok(()) => say!("Saved. Hand this file to your instructor."),
                Err(_) => say!("The browser did not let the page save a file."),
            });
        })
    };
    let forget = Callback::from(|()| {
        spawn_local(async move {
            // What the browser does not erase is told by its own page of data.
            let _ = watch::forget().await;
            go_to(&Route::Assessment(None));
        });
    });
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let is_sealed = own.code.is_some();
    html! {
        <main class="page assessment" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Result: {title}", title = worded(&file.title)) }</h1>
                <p class="page__lead"><bdi>{ &own.candidate }</bdi>if let Some(person) = &own.person { { ", " }<bdi>{ &person.name }</bdi> }{ " · " }{ format::date(own.started_ms / 86_400_000.0) }{ " · " }{ if is_sealed { say!("sealed with the start code") } else if training_system::learner().is_some() { say!("told to your training system; not sealed with a start code") } else { say!("practice: not sealed, proves nothing to others") } }</p>
            </header>
            if let Some(trouble) = props.trouble { <p class="notice" role="alert">{ said(trouble) }</p> }
            { verdict_of(&decision) }
            <section class="receipt stack" aria-labelledby="receipt">
                <h2 id="receipt">{ say!("Receipt") }</h2>
                <p class="receipt__hash">{ own.records.last().map_or_else(|| say!("nothing was done").to_owned(), short) }</p>
                <p>{ say!("{done} of {n} jobs. The start of the last record’s hash: write it down, and nobody can exchange the file unseen.", done = own.records.len(), n = file.n_jobs()) }</p>
                <p class="row no-print">
                    <button type="button" class="button button--main" onclick={save}>{ say!("Save the file") }</button>
                    <span role="status">{ *told }</span>
                </p>
                { codes(&own.records) }
            </section>
            <MarkSheet file={file.clone()} records={own.records.clone()} places={(*places).clone()} />
            <LostPoints jobs={(*marked).clone()} {known} />
            <Proves n_jobs={file.n_jobs()} marks={own.records.iter().map(|record| record.body.counted().total).collect::<Vec<_>>()}
                computed={say!("your instructor’s copy computes it again and decides.")} />
            if let Some(line) = kept_for(&file) { <p>{ line }</p> }
            <div class="only-print"><dl class="sheet__head">{ signed(say!("Place and date")) }{ signed(say!("Signature of the candidate")) }</dl></div>
            <p class="row no-print">
                if training_system::way_back().is_some() {
                    <button type="button" class="button button--main" onclick={|_: MouseEvent| training_system::go_back()}>{ say!("Back to the course") }</button>
                }
                <button type="button" class="button" onclick={print}>{ say!("Print this sheet") }</button>
                <a class="button" href={Route::Observer.href()}>{ say!("Observer’s sheet") }</a>
                if !training_system::is_there() { <Sure ask={say!("Clear for the next candidate")} yes={say!("Yes, the file is handed over: clear")} on_yes={forget} /> }
            </p>
        </main>
    }
}

/// A line to write on.
fn signed(words: &'static str) -> Html {
    html! { <div class="sheet__line"><dt>{ words }</dt><dd></dd></div> }
}

fn verdict_of(decided: &Decided) -> Html {
    html! {
        <section class="notice" aria-label={say!("Decision")}>
            <p class="notice__title">{ say!("{verdict} · {marks} of 100 marks on average, {cut} are asked", verdict = verdict(decided.decision), marks = format!("{:.0}", decided.marks), cut = format!("{:.0}", decided.cut)) }</p>
            <ul>{ for decided.reasons.iter().map(|line| html! { <li>{ line.to_string() }</li> }) }</ul>
        </section>
    }
}

/// A QR code for each record, where the browser next to it has no cable and no stick.
fn codes(records: &[Record]) -> Html {
    let here = gloo::utils::window().location().href().unwrap_or_default();
    let page = here.split(['#', '?']).next().unwrap_or_default();
    let code = |record: &Record| {
        let place = record
            .body
            .sitting
            .as_ref()
            .map_or(1, |sitting| sitting.place);
        let letters = slip::to_letters(record)?;
        let text = format!("{page}{}", Route::Result(letters).href());
        Some(
            html! { <figure><figcaption><a href={text.clone()}>{ say!("Job {n} as a link", n = place) }</a></figcaption><QrCode {text} label={say!("Result of job {n} as a QR code", n = place)} /></figure> },
        )
    };
    html! {
        <details class="no-print"><summary>{ say!("As QR codes, to be read with a telephone at the same server") }</summary>
            { for records.iter().filter_map(code) }
        </details>
    }
}

fn short(record: &Record) -> String {
    let hash = record.link.to_string();
    let groups: Vec<&str> = (0..4).map(|n| &hash[n * 4..n * 4 + 4]).collect();
    groups.join(" ")
}

/// One record a line.
fn whole(records: &[Record]) -> String {
    records
        .iter()
        .filter_map(|record| record.write().ok())
        .collect()
}

/// A name that is a file's on every system.
fn file_name(assessment: &str, candidate: &str) -> String {
    let plain = |text: &str| -> String {
        text.chars()
            .map(|c| {
                if c.is_ascii_alphanumeric() || c == '-' {
                    c
                } else {
                    '_'
                }
            })
            .take(60)
            .collect()
    };
    format!("{}_{}.jsonl", plain(assessment), plain(candidate))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hostile_number_makes_a_harmless_file_name() {
        assert_eq!(
            file_name("autumn", "../a\\b=1 \u{202e}x"),
            "autumn____a_b_1__x.jsonl"
        );
    }
}
