//! What else a cohort shows: safety by kind, faults taken for others, and what was not accepted.

use yew::prelude::*;

use crate::app::cohort::rows::Refused;
use crate::app::cohort::words;
use crate::language::worded;
use crate::records::cohort::lines::ConfusedLine;
use crate::records::cohort::lines::SafetyLine;
use crate::say;

/// Safety rules broken, by kind, with a bar each.
pub fn safety_table(lines: &[SafetyLine]) -> Html {
    if lines.is_empty() {
        return html! { <p>{ say!("No safety rule was broken.") }</p> };
    }
    let most = lines.iter().map(|line| line.n).max().unwrap_or(1).max(1);
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Safety, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Rule" as "of safety") }</th><th scope="col">{ say!("How grave") }</th><th scope="col" class="numbers">{ say!("Times" as "how often") }</th><th scope="col" class="numbers">{ say!("People") }</th><th scope="col"><span class="visually-hidden">{ say!("Bar" as "drawn in a table") }</span></th></tr></thead>
                <tbody>{ for lines.iter().map(|line| html! {
                    <tr key={format!("{} {}", line.rule, line.severity)}>
                        <th scope="row">{ words::rule_title(&line.rule) }</th>
                        <td>{ worded(&line.severity).into_owned() }</td><td class="numbers">{ line.n }</td><td class="numbers">{ line.n_people }</td>
                        <td>{ bar(line.n, most) }</td>
                    </tr>
                }) }</tbody>
            </table>
        </div>
    }
}

/// Faults taken for others; `name` puts a fault in plain words.
pub fn confused_table(lines: &[ConfusedLine], name: impl Fn(&str) -> String) -> Html {
    if lines.is_empty() {
        return html! { <p>{ say!("No fault was taken for another.") }</p> };
    }
    let most = lines.first().map_or(1, |line| line.n).max(1);
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Faults taken for others, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Was wrong") }</th><th scope="col">{ say!("Was stated") }</th><th scope="col" class="numbers">{ say!("Times" as "how often") }</th><th scope="col"><span class="visually-hidden">{ say!("Bar" as "drawn in a table") }</span></th></tr></thead>
                <tbody>{ for lines.iter().map(|line| html! {
                    <tr key={format!("{} {}", line.is, line.stated)}><th scope="row">{ name(&line.is) }</th><td>{ name(&line.stated) }</td><td class="numbers">{ line.n }</td><td>{ bar(line.n, most) }</td></tr>
                }) }</tbody>
            </table>
        </div>
    }
}

fn bar(n: usize, most: usize) -> Html {
    let width = format!("{:.1}", 100.0 * n as f64 / most as f64);
    html! { <svg class="me__bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true"><rect class="me__bar-known" x="0" y="2" {width} height="6" /></svg> }
}

/// What was not accepted, each with a way to read it as it was written, and rows with a gap.
pub fn refused_list(
    refused: &[Refused],
    broken: &[String],
    on_read: &Callback<(usize, usize)>,
) -> Html {
    const MOST: usize = 200;
    html! {
        <>
            if !broken.is_empty() {
                <section class="notice notice--rule" aria-label={say!("Rows with a gap")}><p class="notice__title">{ say!("Rows that are not whole") }</p>
                    <ul>{ for broken.iter().take(MOST).map(|line| html! { <li><bdi>{ line }</bdi></li> }) }</ul></section>
            }
            if refused.is_empty() { <p>{ say!("Every record is accepted as far as it was looked at.") }</p> } else {
                <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Not accepted, a table")}>
                    <table class="table"><thead><tr><th scope="col">{ say!("Record" as "of a job") }</th><th scope="col">{ say!("First difference") }</th><th scope="col" class="no-print">{ say!("As written") }</th></tr></thead>
                    <tbody>{ for refused.iter().take(MOST).map(|one| refused_row(one, on_read)) }</tbody></table>
                </div>
            }
            if refused.len() > MOST { <p>{ say!("And {n} more.", n = refused.len() - MOST) }</p> }
        </>
    }
}

fn refused_row(one: &Refused, on_read: &Callback<(usize, usize)>) -> Html {
    let label = if one.who.is_empty() {
        say!("Read this record as it was written").to_owned()
    } else {
        say!("Read {what} as it was written", what = one.who)
    };
    let read = |at: (usize, usize)| {
        let onclick = on_read.reform(move |_: MouseEvent| at);
        html! { <button type="button" class="button button--small" aria-label={label} {onclick}>{ say!("Read" as "verb, of a record") }</button> }
    };
    html! {
        <tr><th scope="row"><bdi>{ &one.who }</bdi></th><td>{ &one.told }</td><td class="no-print">{ for one.read.map(read) }</td></tr>
    }
}
