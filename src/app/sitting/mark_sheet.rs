//! The mark sheet of an assessment: each job with its parts, the decision, and what it proves.

use std::collections::BTreeMap;

use yew::prelude::*;

use crate::app::format;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::assess::decide::Taken;
use crate::bench::safety;
use crate::language::said;
use crate::language::worded;
use crate::records::record::Record;
use crate::say;

/// What the sheet shows.
#[derive(Properties, PartialEq)]
pub struct MarkSheetProps {
    /// The assessment.
    pub file: AssessmentFile,
    /// The records.
    pub records: Vec<Record>,
    /// Which job each is of, from 1.
    pub places: Vec<usize>,
}

/// The decision on records of one assessment.
pub fn decided(file: &AssessmentFile, records: &[Record]) -> Decided {
    let taken: Vec<Taken> = records
        .iter()
        .map(|record| Taken::from(&record.body.counted()))
        .collect();
    decide::decide(&file.pass, &taken, file.n_jobs())
}

/// Such as `Passed`.
pub fn verdict(decision: Decision) -> &'static str {
    match decision {
        Decision::Passed => say!("Passed"),
        Decision::Border => say!("On the border: more jobs decide"),
        Decision::NotYet => say!("Not yet" as "of a pass"),
    }
}

/// The sheet.
#[component]
pub fn MarkSheet(props: &MarkSheetProps) -> Html {
    let names: Vec<String> = props
        .records
        .first()
        .map(|record| {
            record
                .body
                .result
                .parts
                .iter()
                .map(|part| part.name.clone())
                .collect()
        })
        .unwrap_or_default();
    html! {
        <section aria-labelledby="sheet">
            <h2 id="sheet">{ say!("Mark sheet") }</h2>
            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Mark sheet, a table")}>
                <table class="table">
                    <thead><tr><th scope="col">{ say!("Job") }</th><th scope="col" class="numbers">{ say!("Marks") }</th>
                        { for names.iter().map(|name| html! { <th scope="col" class="numbers">{ worded(name).into_owned() }</th> }) }
                        <th scope="col">{ say!("Ended") }</th><th scope="col" class="numbers">{ say!("On site") }</th><th scope="col" class="numbers">{ say!("Cost") }</th></tr></thead>
                    <tbody>{ for (1..=props.file.n_jobs()).map(|place| row(place, of_place(props, place), names.len())) }</tbody>
                </table>
            </div>
            { by_bill(props) }
            { broken(&props.records) }
        </section>
    }
}

/// The record of a job; none where nothing was done.
fn of_place(props: &MarkSheetProps, place: usize) -> Option<&Record> {
    let at = props.places.iter().position(|one| *one == place)?;
    props.records.get(at)
}

/// Which jobs are marked by the bill, and why.
fn by_bill(props: &MarkSheetProps) -> Html {
    let pairs = props.records.iter().zip(&props.places);
    let places: Vec<String> = pairs
        .filter(|(record, _)| record.body.judged.is_none())
        .map(|(_, place)| place.to_string())
        .collect();
    if places.is_empty() {
        return Html::default();
    }
    html! {
        <p>{ say!("Economy and evidence go by the bill and the notebook in job {places}: this browser could not work out what each decision was worth.", places = places.join(", ")) }</p>
    }
}

/// A job's line; one on which nothing was done counts as 0 and stands here with the others.
fn row(place: usize, record: Option<&Record>, n_parts: usize) -> Html {
    let Some(record) = record else {
        let none = || html! { <td class="numbers">{ "–" }</td> };
        return html! {
            <tr key={place}>
                <th scope="row">{ say!("Job {n}", n = place) }</th><td class="numbers">{ "0" }</td>
                { for (0..n_parts).map(|_| none()) }
                <td>{ say!("not begun") }</td>{ none() }{ none() }
            </tr>
        };
    };
    let result = record.body.counted();
    let ended = match (result.ending.as_str(), result.fixed) {
        ("made_safe", _) => say!("made safe and left"),
        ("closed", true) => say!("put right"),
        ("closed", false) => say!("not put right"),
        _ => say!("not handed over"),
    };
    html! {
        <tr key={place}>
            <th scope="row">{ say!("Job {n}", n = place) }</th>
            <td class="numbers">{ whole(result.total) }</td>
            { for result.parts.iter().map(|part| html! { <td class="numbers">{ say!("{points} of {all}", points = whole(part.points), all = whole(part.of)) }</td> }) }
            <td>{ ended }</td>
            <td class="numbers">{ say!("{n} min", n = whole(result.minutes)) }</td>
            <td class="numbers">{ format::money(result.cost) }</td>
        </tr>
    }
}

fn whole(number: f64) -> String {
    format!("{number:.0}")
}

/// A severity of a record in words.
fn severity_words(severity: &str) -> &str {
    match severity {
        "minor" => say!("minor"),
        "major" => say!("major"),
        "critical" => say!("critical"),
        other => other,
    }
}

/// Safety rules broken, by rule.
fn broken(records: &[Record]) -> Html {
    let mut counts: BTreeMap<(&str, &str), usize> = BTreeMap::new();
    for one in records.iter().flat_map(|record| &record.body.result.safety) {
        *counts.entry((&one.severity, &one.rule)).or_default() += 1;
    }
    if counts.is_empty() {
        return html! { <p>{ say!("No safety rule was broken.") }</p> };
    }
    html! {
        <>
            <h3>{ say!("Safety rules broken") }</h3>
            <ul>{ for counts.iter().map(|((severity, id), n)| html! {
                <li>{ say!("{severity}: {rule}, {times}", severity = severity_words(severity), rule = safety::rule(id).map_or(*id, |rule| said(rule.title)), times = format::times(*n)) }</li>
            }) }</ul>
        </>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::sitting;

    fn props() -> MarkSheetProps {
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let read = sitting::assessment("assessment", text).expect("ships");
        MarkSheetProps {
            file: read.file,
            records: Vec::new(),
            places: Vec::new(),
        }
    }

    #[test]
    fn jobs_on_which_nothing_was_done_stand_on_the_sheet_too() {
        let text = as_text::<MarkSheet>(props);
        assert_eq!(
            text.matches("not begun").count(),
            props().file.n_jobs(),
            "{text}"
        );
    }
}
