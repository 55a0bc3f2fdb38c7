//! What is behind one cell of people and skills: the person's jobs that count to the skill.

use yew::prelude::*;

use crate::app::cohort::rows::Row;
use crate::app::cohort::words;
use crate::app::format;
use crate::app::hooks::focus_on;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::language::worded;
use crate::records::cohort::Attempt;
use crate::say;

/// What the page shows.
#[derive(Properties, PartialEq)]
pub struct SkillPageProps {
    /// Number or pseudonym.
    pub candidate: String,
    /// The skill.
    pub skill: String,
    /// The person's records that count to it.
    pub rows: Vec<Row>,
    /// Replays a record.
    pub on_replay: Callback<(usize, usize)>,
    /// Opens a job.
    pub on_job: Callback<String>,
    /// Opens the person.
    pub on_person: Callback<String>,
    /// Back to all.
    pub on_back: Callback<()>,
}

/// The page.
#[component]
pub fn SkillPage(props: &SkillPageProps) -> Html {
    use_effect_with((), |()| focus_on("skill"));
    let back = props.on_back.reform(|_: MouseEvent| ());
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let candidate = props.candidate.clone();
    let person = props
        .on_person
        .reform(move |_: MouseEvent| candidate.clone());
    let n_right = attempts(props).filter(|(_, a)| a.is_right()).count();
    html! {
        <article class="stack" aria-labelledby="skill">
            <p class="row no-print"><button type="button" class="button" onclick={back}>{ say!("Back to all") }</button>
                <button type="button" class="button" onclick={person}>{ say!("To the person") }</button>
                <button type="button" class="button" onclick={print}>{ say!("Print this page") }</button></p>
            <h2 id="skill" tabindex="-1">{ heading(props) }</h2>
            <p>{ say!("{right} of {n} jobs that practise it show it. A job shows its skills when it is put right, safely, with evidence.", right = n_right, n = props.rows.len()) }</p>
            if props.rows.is_empty() { <p>{ say!("No record counts to it any more.") }</p> } else { { table(props) } }
        </article>
    }
}

fn heading(props: &SkillPageProps) -> Html {
    let skill = format::sentence(&worded(&props.skill));
    phrase(
        &say!("{skill}: {person}", skill, person = HOLES[0]),
        &[bdi(&props.candidate)],
    )
}

fn attempts(props: &SkillPageProps) -> impl Iterator<Item = (&Row, &Attempt)> {
    let with = |row| Row::attempt(row).map(|attempt| (row, attempt));
    props.rows.iter().filter_map(with)
}

fn table(props: &SkillPageProps) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Jobs behind the skill, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Job") }</th><th scope="col">{ say!("Shows it") }</th><th scope="col" class="numbers">{ say!("Marks") }</th><th scope="col" class="numbers">{ say!("Score, 0 to 3") }</th><th scope="col">{ say!("Ended" as "how a job ended") }</th><th scope="col">{ say!("Safety") }</th><th scope="col" class="no-print">{ say!("Step by step") }</th></tr></thead>
                <tbody>{ for attempts(props).map(|(row, attempt)| line(row, attempt, props)) }</tbody>
            </table>
        </div>
    }
}

fn line(row: &Row, attempt: &Attempt, props: &SkillPageProps) -> Html {
    let result = &attempt.result;
    let title = words::title_of(&attempt.job);
    let (at, job) = ((row.source, row.line), attempt.job.clone());
    let replay = props.on_replay.reform(move |_: MouseEvent| at);
    let open = props.on_job.reform(move |_: MouseEvent| job.clone());
    html! {
        <tr key={format!("{at:?}")}>
            <th scope="row">{ words::go(&title, say!("{job}: how all did at it", job = title), open) }</th>
            <td>{ if attempt.is_right() { say!("yes" as "it shows the skill") } else { say!("not yet" as "it shows the skill") } }</td>
            <td class="numbers">{ format!("{:.0}", result.total) }</td>
            <td class="numbers">{ result.graded() }</td>
            <td>{ words::ended(result) }</td>
            <td>{ words::broken(result) }</td>
            <td class="no-print"><button type="button" class="button button--small" aria-label={say!("Replay {what}", what = title)} onclick={replay}>{ say!("Replay" as "verb") }</button></td>
        </tr>
    }
}
