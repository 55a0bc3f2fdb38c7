//! One job over all people: who did it, how the marks lie, how it measures, what was confused and
//! broken, time and cost. Prints on one sheet.

use yew::prelude::*;

use crate::app::cohort::jobs::fit;
use crate::app::cohort::marks_picture;
use crate::app::cohort::others;
use crate::app::cohort::rows::Row;
use crate::app::cohort::words;
use crate::app::format;
use crate::app::hooks::focus_on;
use crate::language::decimals;
use crate::records::cohort::Attempt;
use crate::records::cohort::kinds;
use crate::records::cohort::lines::JobLine;
use crate::records::cohort::spread::Spread;
use crate::records::cohort::spread::spread;
use crate::say;

/// What the page shows.
#[derive(Properties, PartialEq)]
pub struct JobPageProps {
    /// Name of the job.
    pub job: String,
    /// Its numbers; none when nobody's record of it counts any more.
    pub line: Option<JobLine>,
    /// The records of it that count, one a person.
    pub rows: Vec<Row>,
    /// Replays a record.
    pub on_replay: Callback<(usize, usize)>,
    /// Opens a person.
    pub on_person: Callback<String>,
    /// Back to all.
    pub on_back: Callback<()>,
}

/// The page.
#[component]
pub fn JobPage(props: &JobPageProps) -> Html {
    use_effect_with((), |()| focus_on("one-job"));
    let back = props.on_back.reform(|_: MouseEvent| ());
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let all = || props.rows.iter().filter_map(Row::attempt);
    html! {
        <article class="stack" aria-labelledby="one-job">
            <p class="row no-print"><button type="button" class="button" onclick={back}>{ say!("Back to all") }</button>
                <button type="button" class="button" onclick={print}>{ say!("Print this job") }</button></p>
            <h2 id="one-job" tabindex="-1">{ words::title_of(&props.job).into_owned() }</h2>
            if let Some(line) = &props.line {
                { numbers(line, &props.rows) }
                { marks_picture::of(&all().map(|a| a.result.total).collect::<Vec<_>>()) }
                <h3>{ say!("Who did it") }</h3>{ table(props) }
                <h3>{ say!("Faults confused") }</h3>{ others::confused_table(&kinds::confused(all()), words::fault_name) }
                <h3>{ say!("Safety rules broken") }</h3>{ others::safety_table(&kinds::safety(all())) }
            } else {
                <p>{ say!("No record of it counts any more.") }</p>
            }
        </article>
    }
}

fn numbers(line: &JobLine, rows: &[Row]) -> Html {
    let of = |number: fn(&Attempt) -> f64| -> Vec<f64> {
        rows.iter().filter_map(Row::attempt).map(number).collect()
    };
    let marks = spread(&of(|a| a.result.total)).map(marks_words);
    let time = spread(&of(|a| a.result.minutes)).map(|time| {
        let target = line.target_minutes.map(words::minutes);
        words::beside(&time_words(time), target, line.time_to_target)
    });
    html! {
        <dl class="facts">
            <dt>{ say!("People") }</dt><dd>{ line.n_people }</dd>
            <dt>{ say!("Marks of 100") }</dt><dd>{ marks }</dd>
            <dt>{ say!("Score, 0 to 3") }</dt><dd>{ say!("{mean} on average", mean = decimals(format!("{:.1}", line.mean_score))) }</dd>
            <dt>{ say!("Difficulty") }</dt><dd>{ words::difficulty(line) }</dd>
            <dt>{ say!("Tells people apart") }</dt><dd>{ apart(line.discrimination) }</dd>
            <dt>{ say!("Fit" as "of a job to the model") }</dt><dd>{ fit_words(line) }</dd>
            <dt>{ say!("On site") }</dt><dd>{ time }</dd>
            <dt>{ say!("Cost") }</dt><dd>{ cost_words(line) }</dd>
        </dl>
    }
}

fn marks_words(marks: Spread) -> String {
    let whole = |number: f64| format!("{number:.0}");
    let mean = whole(marks.mean);
    marks.deviation.map_or_else(
        || {
            say!(
                "{mean} on average; from so few or equal marks no spread can be told",
                mean
            )
        },
        |deviation| {
            say!(
                "{mean} on average, from {least} to {most}; standard deviation {deviation}",
                mean,
                least = whole(marks.least),
                most = whole(marks.most),
                deviation = whole(deviation)
            )
        },
    )
}

fn time_words(time: Spread) -> String {
    let whole = |minutes: f64| format!("{minutes:.0}");
    match time.deviation {
        None => words::minutes(time.mean),
        Some(_) => say!(
            "{mean} min on average, from {least} to {most} min",
            mean = whole(time.mean),
            least = whole(time.least),
            most = whole(time.most)
        ),
    }
}

fn cost_words(line: &JobLine) -> String {
    let own = say!("{mean} on average", mean = format::money(line.cost));
    words::beside(
        &own,
        line.target_cost.map(format::money),
        line.cost_to_target,
    )
}

fn apart(discrimination: Option<f64>) -> String {
    discrimination.map_or_else(
        || say!("too few people, or all alike: it cannot be told").to_owned(),
        |d| {
            say!(
                "{n}: how far the score goes with the person’s other jobs, 1 at most",
                n = decimals(format!("{d:.2}"))
            )
        },
    )
}

fn fit_words(line: &JobLine) -> String {
    if line.infit.is_none() {
        return say!("too few people to say").to_owned();
    }
    say!("{fit}; 1 is as expected", fit = fit(line))
}

fn table(props: &JobPageProps) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("People at this job, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Person") }</th><th scope="col" class="numbers">{ say!("Marks") }</th><th scope="col" class="numbers">{ say!("Score") }</th><th scope="col">{ say!("Ended" as "how a job ended") }</th><th scope="col" class="numbers">{ say!("On site") }</th><th scope="col" class="numbers">{ say!("Target time") }</th><th scope="col" class="numbers">{ say!("Cost") }</th><th scope="col" class="numbers">{ say!("Target cost") }</th><th scope="col">{ say!("Safety") }</th><th scope="col" class="no-print">{ say!("Step by step") }</th></tr></thead>
                <tbody>{ for props.rows.iter().map(|row| person(row, props)) }</tbody>
            </table>
        </div>
    }
}

fn person(row: &Row, props: &JobPageProps) -> Html {
    let Some(attempt) = row.attempt() else {
        return Html::default();
    };
    let result = &attempt.result;
    let candidate = attempt.candidate.as_str();
    let (at, name) = ((row.source, row.line), candidate.to_owned());
    let open = props.on_person.reform(move |_: MouseEvent| name.clone());
    let replay = props.on_replay.reform(move |_: MouseEvent| at);
    let target = |known: Option<String>| known.unwrap_or_else(|| "–".to_owned());
    html! {
        <tr key={format!("{at:?}")}>
            <th scope="row">{ words::go(candidate, say!("{person}: the person’s page", person = candidate), open) }</th>
            <td class="numbers">{ format!("{:.0}", result.total) }</td>
            <td class="numbers">{ result.graded() }</td>
            <td>{ words::ended(result) }</td>
            <td class="numbers">{ words::minutes(result.minutes) }</td>
            <td class="numbers">{ target(result.target_minutes.map(words::minutes)) }</td>
            <td class="numbers">{ format::money(result.cost) }</td>
            <td class="numbers">{ target(words::target_cost(result)) }</td>
            <td>{ words::broken(result) }</td>
            <td class="no-print"><button type="button" class="button button--small" aria-label={say!("Replay {what}", what = candidate)} onclick={replay}>{ say!("Replay" as "verb") }</button></td>
        </tr>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_or_single_marks_claim_no_spread() {
        for marks in [&[70.0][..], &[70.0, 70.0]] {
            let words = spread(marks).map(marks_words);
            assert_eq!(
                words.as_deref(),
                Some("70 on average; from so few or equal marks no spread can be told")
            );
        }
        let words = spread(&[60.0, 70.0, 80.0]).map(marks_words);
        assert!(words.is_some_and(|words| words.ends_with("from 60 to 80; standard deviation 10")));
    }
}
