//! What the review shows: how far the checking is, the tabs over the whole cohort, or what is opened from them.

use std::collections::BTreeSet;

use yew::prelude::*;

use crate::app::bench::Tabs;
use crate::app::cohort::erase_tab::Erase;
use crate::app::cohort::erasing;
use crate::app::cohort::erasing::Past;
use crate::app::cohort::jobs::Jobs;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::looks::Looks;
use crate::app::cohort::message::Msg;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::opened_page;
use crate::app::cohort::others;
use crate::app::cohort::people::People;
use crate::app::cohort::rows::Refused;
use crate::app::cohort::rulings;
use crate::app::cohort::rulings::Rule;
use crate::app::cohort::save_tab::SaveTab;
use crate::app::cohort::words;
use crate::language::decimals;
use crate::records::cohort::reliability_words;
use crate::records::rulings::About;
use crate::say;
use crate::text;

/// How far it is.
pub fn progress(looks: &Looks<'_>, on: &Callback<Msg>) -> Html {
    let n = looks.n_sources;
    let [looked, run] = looks.done;
    let words = if looked < n {
        say!(
            "Looking at links and seals: {looked} of {n} files",
            looked,
            n
        )
    } else if looks.works && !looks.stopped {
        say!("Running the work again: {run} of {n} files", run, n)
    } else if looks.stopped && looks.rows.all().any(|row| !row.replayed) {
        say!("Stopped: not every record was run again.").to_owned()
    } else if n > 0 {
        say!(
            "Records checked: {records}; files: {files}.",
            records = looks.rows.all().count(),
            files = n
        )
    } else {
        String::new()
    };
    html! {
        <div class="no-print stack">
            <p class="row"><span role="status">{ words }if looks.reckons { { " " }{ say!("Working out the cohort …") } }</span>
                if looks.works {
                    <progress max={(2 * n).max(1).to_string()} value={(looked + run).to_string()} aria-label={say!("Checking")} />
                    if looked >= n && !looks.stopped { <button type="button" class="button button--small" onclick={on.reform(|_: MouseEvent| Msg::Stop)}>{ say!("Stop" as "verb, of the checking") }</button> }
                }
            </p>
            <ul class="opened__told">{ for looks.told.iter().map(|line| html! { <li>{ line }</li> }) }</ul>
        </div>
    }
}

/// The tabs, or what is opened from them.
pub fn shown(looks: &Looks<'_>, on: &Callback<Msg>) -> Html {
    if let Some(opened) = looks.opened {
        return opened_page::page(opened, looks, on);
    }
    if looks.n_sources == 0 {
        return html! { <p>{ say!("Nothing yet. Assessments made in this browser are known here with their keys; for others, drop the assessment’s file and its key too.") }</p> };
    }
    let refused = looks.rows.refused();
    let words: Vec<AttrValue> = vec![
        looks
            .cohort
            .map_or_else(
                || say!("People").to_owned(),
                |cohort| say!("People {n}", n = cohort.people.len()),
            )
            .into(),
        looks
            .cohort
            .map_or_else(
                || say!("Jobs").to_owned(),
                |cohort| say!("Jobs {n}", n = cohort.jobs.len()),
            )
            .into(),
        say!("Safety").into(),
        say!("Faults confused").into(),
        say!("Not accepted {n}", n = refused.len()).into(),
        say!("Rulings {n}", n = looks.rulings.len()).into(),
        say!("Save and print").into(),
        erase_words(looks).into(),
    ];
    let panel = match looks.tab {
        SAVE => {
            html! { <SaveTab on_save={on.reform(Msg::Save)}>{ paper(looks, &refused, &words, on) }</SaveTab> }
        }
        at => tab(looks, at, &refused, on),
    };
    html! {
        <>
            { reliability(looks) }
            <Tabs id="cohort" label={say!("Results")} {words} shown={looks.tab} panel="cohort-panel" on_show={on.reform(Msg::Show)} />
            <div id="cohort-panel" class="tabs__panel stack" role="tabpanel" aria-labelledby={format!("cohort-{}", looks.tab)}>
                { panel }
            </div>
        </>
    }
}

fn reliability(looks: &Looks<'_>) -> Html {
    let Some(cohort) = looks.cohort else {
        return Html::default();
    };
    let words = reliability_words(cohort);
    let told = match cohort.reliability.value {
        None => say!("Reliability: {words}.", words),
        Some(value) => say!(
            "Reliability {value}: {words}.",
            value = decimals(format!("{value:.2}")),
            words
        ),
    };
    html! { <p>{ told }
    if cohort.n_repeats > 0 { { " " }{ say!("Later attempts at the same job do not count: {n}.", n = cohort.n_repeats) } }</p> }
}

/// The tab of records that were not accepted.
const REFUSED: usize = 4;
/// The tab of rulings.
const RULED: usize = 5;
/// The tab for saving and printing.
const SAVE: usize = 6;

/// What to do where no record counts.
fn nothing_counts(looks: &Looks<'_>, n_refused: usize, on: &Callback<Msg>) -> Html {
    let voided = looks.rows.voided(looks.rulings);
    if !voided.is_empty() {
        return without(&voided, on);
    }
    if n_refused == 0 {
        return html! { <p>{ say!("No record counts yet.") }</p> };
    }
    let why = on.reform(|_: MouseEvent| Msg::Show(REFUSED));
    html! {
        <>
            <p>{ say!("No record counts: none was accepted. Where a sealed result is of an assessment that is not known here, drop the assessment’s file, and its key.") }</p>
            <p class="no-print"><button type="button" class="button" onclick={why}>{ say!("See why: not accepted {n}", n = n_refused) }</button></p>
        </>
    }
}

/// People whom voided jobs leave with nothing: no table of numbers has them.
fn without(voided: &BTreeSet<String>, on: &Callback<Msg>) -> Html {
    let one = |name: &String| {
        let opened = Opened::Person(name.clone());
        let onclick = on.reform(move |_: MouseEvent| Msg::Open(Some(opened.clone())));
        html! { <li key={name.clone()}><button type="button" class="desk__go" {onclick}><bdi>{ name }</bdi></button></li> }
    };
    html! {
        if !voided.is_empty() {
            <p>{ say!("Of these people nothing counts: each job that they opened was voided.") }</p>
            <ul>{ for voided.iter().map(one) }</ul>
        }
    }
}

/// What goes on paper, one after the other under the words of their tabs.
fn paper(looks: &Looks<'_>, refused: &[Refused], words: &[AttrValue], on: &Callback<Msg>) -> Html {
    let tabs = [0, 1, REFUSED, RULED].into_iter();
    let shown = tabs.filter(|at| *at != 1 || looks.cohort.is_some());
    let part = |at: usize| html! { <section class="stack"><h3>{ words.get(at).cloned().unwrap_or_default() }</h3>{ tab(looks, at, refused, on) }</section> };
    html! { <>{ for shown.map(part) }</> }
}

fn tab(looks: &Looks<'_>, at: usize, refused: &[Refused], on: &Callback<Msg>) -> Html {
    let Some(cohort) = looks.cohort.filter(|_| at < REFUSED) else {
        return match at {
            REFUSED => others::refused_list(
                refused,
                &looks.rows.broken(),
                &on.reform(|(source, line)| Msg::Read(source, line)),
            ),
            RULED => rulings::list(
                looks.rulings,
                looks.files,
                &looks.rows.assessments(),
                &on.reform(|at| Msg::Rule(Change::TakenBack(at))),
            ),
            7 => erase(looks, on),
            _ => nothing_counts(looks, refused.len(), on),
        };
    };
    match at {
        1 => html! {
            <>
                if let Some(job) = looks.voiding {
                    <Rule key={job.to_owned()} about={About::Job(job.to_owned())} words={vec![text!("void")]} of={of_job(looks, job)}
                        on_rule={on.reform(|ruling| Msg::Rule(Change::Made(ruling)))} on_cancel={on.reform(|()| Msg::Void(None))} />
                }
                <Jobs cohort={cohort.clone()} counting={looks.rows.jobs(looks.rulings).into_keys().collect::<BTreeSet<_>>()} on_open={on.reform(|job| Msg::Open(Some(Opened::Job(job))))} on_void={on.reform(|job| Msg::Void(Some(job)))} />
            </>
        },
        2 => others::safety_table(&cohort.safety),
        3 => others::confused_table(&cohort.confused, words::fault_name),
        _ => html! {
            <>
                <People cohort={cohort.clone()} decisions={looks.decisions.clone()} whole={looks.tab == SAVE} on_open={on.reform(|opened| Msg::Open(Some(opened)))} />
                { without(&looks.rows.voided(looks.rulings), on) }
            </>
        },
    }
}

/// Today as a day since 1970.
fn today() -> i64 {
    (js_sys::Date::now() / 86_400_000.0) as i64
}

fn erase_words(looks: &Looks<'_>) -> String {
    match erasing::past(looks.rows, looks.files, today()).len() {
        0 => say!("Erase" as "verb").to_owned(),
        n => say!("Erase, {n} past their time", n),
    }
}

fn erase(looks: &Looks<'_>, on: &Callback<Msg>) -> Html {
    let past = erasing::past(looks.rows, looks.files, today());
    let title = |one: &Past| words::title_of_assessment(&one.assessment, looks.files);
    let titles: Vec<String> = past.iter().map(title).collect();
    html! {
        <Erase {past} {titles} today={today()} people={looks.rows.people().into_iter().collect::<Vec<_>>()} works={looks.works} n_left={looks.left.len()}
            on_erase={on.reform(Msg::Erase)} on_save={on.reform(|_: MouseEvent| Msg::Save("left"))} />
    }
}

/// Assessments in which a job counts, name and title.
fn of_job(looks: &Looks<'_>, job: &str) -> Vec<(String, String)> {
    let of = looks
        .rows
        .jobs(looks.rulings)
        .remove(job)
        .unwrap_or_default();
    let with_title = |id: String| {
        let title = words::title_of_assessment(&id, looks.files);
        (id, title)
    };
    of.into_iter().map(with_title).collect()
}
