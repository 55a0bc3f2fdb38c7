//! A record as it was written: who, when, by which engine, each act with what was shown, the result as
//! it was sealed, and that none of it was worked out again.

use yew::prelude::*;

use crate::app::cohort::words;
use crate::app::format;
use crate::app::hooks::focus_on;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::language::worded;
use crate::records::as_written::ActWritten;
use crate::records::as_written::AsWritten;
use crate::records::as_written::LineWritten;
use crate::records::result::JobResult;
use crate::records::result::PartResult;
use crate::say;

/// What the page shows.
#[derive(Properties, PartialEq)]
pub struct WrittenProps {
    /// The record.
    pub written: AsWritten,
    /// Words of the way back.
    pub back: AttrValue,
    /// The way back.
    pub on_back: Callback<()>,
}

/// The page.
#[component]
pub fn Written(props: &WrittenProps) -> Html {
    use_effect_with((), |()| focus_on("written"));
    let written = &props.written;
    let back = props.on_back.reform(|_: MouseEvent| ());
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let title = worded(written.title.as_ref().unwrap_or(&written.job));
    let heading = say!(
        "As written: {candidate}, {job}",
        candidate = HOLES[0],
        job = HOLES[1]
    );
    html! {
        <main class="page page--wide" id="main" tabindex="-1">
            <article class="stack" aria-labelledby="written">
                <p class="row no-print"><button type="button" class="button" onclick={back}>{ &props.back }</button>
                    <button type="button" class="button" onclick={print}>{ say!("Print this record") }</button></p>
                <h1 id="written" tabindex="-1">{ phrase(&heading, &[bdi(&written.candidate), bdi(&title)]) }</h1>
                <p class="notice">{ written.caution() }</p>
                { facts(written) }
                <h2>{ say!("Result, as it was sealed") }</h2>
                { result(written) }
                <h2>{ say!("What was done, and what was shown") }</h2>
                { acts(written) }
            </article>
        </main>
    }
}

fn facts(written: &AsWritten) -> Html {
    let sitting = written.sitting.as_ref().map_or_else(
        || say!("practice, of no assessment").to_owned(),
        |sitting| {
            say!(
                "{assessment}, job {n}, with the word “{word}”",
                assessment = sitting.assessment,
                n = sitting.place,
                word = sitting.release
            )
        },
    );
    let begun = written.started.get(..16);
    let begun = begun.map_or_else(
        || say!("an unknown day").to_owned(),
        |moment| moment.replace('T', " "),
    );
    let seal = match written.seal {
        Some(_) => say!("there is one; it was not looked at here"),
        None => say!("none" as "no seal"),
    };
    html! {
        <dl class="facts">
            <dt>{ say!("Candidate") }</dt><dd><bdi>{ &written.candidate }</bdi>if let Some(name) = &written.name { { ", " }<bdi>{ name }</bdi> }</dd>
            <dt>{ say!("Written by") }</dt><dd>{ say!("version {version} of the program", version = written.engine) }</dd>
            <dt>{ say!("Assessment") }</dt><dd><bdi>{ sitting }</bdi></dd>
            <dt>{ say!("Job") }</dt><dd><bdi>{ &written.job }</bdi></dd>
            <dt>{ say!("Began, by their clock") }</dt><dd>{ begun }</dd>
            <dt>{ say!("Page left" as "how often it was left") }</dt><dd>{ format::times(written.n_away) }</dd>
            <dt>{ say!("Seal" as "of a record") }</dt><dd>{ seal }</dd>
            <dt>{ say!("Link begins with") }</dt><dd class="numbers">{ written.link.chars().take(16).collect::<String>() }</dd>
        </dl>
    }
}

fn result(written: &AsWritten) -> Html {
    let Some(result) = &written.result else {
        let fact = |(name, value): &(String, String)| html! { <><dt>{ name }</dt><dd><bdi>{ value }</bdi></dd></> };
        return html! {
            <>
                <p>{ say!("This version does not know a result of this kind; its fields stand here as they are in the file.") }</p>
                <dl class="facts">{ for written.as_it_stands.iter().map(fact) }</dl>
            </>
        };
    };
    html! {
        <dl class="facts">
            <dt>{ say!("Marks") }</dt><dd>{ say!("{marks} of 100", marks = format!("{:.0}", result.total)) }</dd>
            <dt>{ say!("Parts" as "of the marks") }</dt><dd>{ parts(result) }</dd>
            <dt>{ say!("Ended" as "how a job ended") }</dt><dd>{ words::ended(result) }</dd>
            <dt>{ say!("On site") }</dt><dd>{ words::of_target(&words::minutes(result.minutes), result.target_minutes.map(words::minutes)) }</dd>
            <dt>{ say!("Cost") }</dt><dd>{ words::of_target(&format::money(result.cost), words::target_cost(result)) }</dd>
            <dt>{ say!("Safety") }</dt><dd>{ words::broken(result) }</dd>
            <dt>{ say!("Cause stated") }</dt><dd>{ stated(result) }</dd>
        </dl>
    }
}

fn parts(result: &JobResult) -> String {
    let one = |part: &PartResult| {
        say!(
            "{part} {points} of {of}",
            part = worded(&part.name),
            points = format!("{:.0}", part.points),
            of = format!("{:.0}", part.of)
        )
    };
    let all: Vec<String> = result.parts.iter().map(one).collect();
    all.join(", ")
}

fn stated(result: &JobResult) -> String {
    let names: Vec<String> = result
        .stated
        .iter()
        .map(|id| words::fault_name(id))
        .collect();
    if names.is_empty() {
        say!("none" as "no cause").to_owned()
    } else {
        names.join("; ")
    }
}

fn acts(written: &AsWritten) -> Html {
    let broken = |step: usize| -> Vec<&str> {
        let safety = written.result.iter().flat_map(|result| &result.safety);
        let of_it = safety.filter(|broken| broken.step == step);
        of_it
            .map(|broken| words::rule_title(&broken.rule))
            .collect()
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("What was done, a table")}>
            <table class="table">
                <thead><tr><th scope="col" class="numbers">{ say!("Step") }</th><th scope="col" class="numbers">{ say!("When") }</th><th scope="col">{ say!("What was done") }</th><th scope="col">{ say!("What was shown") }</th><th scope="col">{ say!("Safety rule broken") }</th></tr></thead>
                <tbody>{ for written.acts.iter().map(|act| row(act, &broken(act.step))) }</tbody>
            </table>
        </div>
    }
}

fn row(act: &ActWritten, broken: &[&str]) -> Html {
    let line =
        |line: &LineWritten| html! { <div><bdi>{ format::sentence(&line.words) }</bdi></div> };
    html! {
        <tr key={act.step}>
            <th scope="row" class="numbers">{ act.step }</th>
            <td class="numbers">{ format::clock_with_seconds(act.tick) }</td>
            <td><bdi>{ format::sentence(&act.words) }</bdi></td>
            <td>{ for act.lines.iter().map(line) }</td>
            <td>{ broken.join("; ") }</td>
        </tr>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::records::library::Library;

    #[component]
    fn Shown() -> Html {
        let text = r#"{"format":"tubwright-record-1","body":{"engine":"0.0.7","candidate":"c-1","job":"no_water",
            "log":[{"tick":600,"do":"x_ray","of":"motor"}],"notebook":[],"result":{"stars":3}},"link":"00"}"#;
        let library = Library::shipped().expect("ships");
        let written = AsWritten::read("old.json", text, &library).expect("a record");
        html! { <>{ facts(&written) }{ result(&written) }{ acts(&written) }<p>{ written.caution() }</p></> }
    }

    #[test]
    fn a_record_of_a_version_long_gone_is_shown_as_it_stands() {
        let text = as_text::<Shown>(|| ());
        for part in [
            "version 0.0.7 of the program",
            "stars",
            "Do: x_ray, of: motor",
            "10:16:00",
            "It was not worked out again here",
        ] {
            assert!(text.contains(part), "{part} in {text}");
        }
    }
}
