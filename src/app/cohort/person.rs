//! One person: what their results say, each job with its replay, the decision and rulings; prints on
//! one sheet.

use yew::prelude::*;

use crate::app::cohort::decision;
use crate::app::cohort::half_typed;
use crate::app::cohort::rows::Row;
use crate::app::cohort::rulings::Rule;
use crate::app::cohort::words;
use crate::app::format;
use crate::app::hooks::focus_on;
use crate::app::lost_points::LostPoints;
use crate::app::lost_points::Marked;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::app::proves::Proves;
use crate::assess::decide::Decided;
use crate::language::decimals;
use crate::language::worded;
use crate::records::check::SealState;
use crate::records::cohort::lines::PersonLine;
use crate::records::cohort::lines::Shown;
use crate::records::rulings::About;
use crate::records::rulings::Ruling;
use crate::say;

/// What the page shows.
#[derive(Properties, PartialEq)]
pub struct PersonProps {
    /// The person, once worked out.
    pub line: Option<PersonLine>,
    /// Names of the skills, in the person's order.
    pub skills: Vec<String>,
    /// Number or pseudonym.
    pub candidate: String,
    /// All records of the person.
    pub rows: Vec<Row>,
    /// Those of them, by place, whose job was voided.
    pub voided: Vec<(usize, usize)>,
    /// Marks of the jobs that count.
    pub marks: Vec<f64>,
    /// The decision by the rules.
    pub decided: Option<Decided>,
    /// The assessment that was sat, and how many of its jobs count: voided ones are asked of nobody.
    pub sat: Option<(String, usize)>,
    /// What explains the marks.
    pub lost: Vec<Marked>,
    /// The ruling that holds instead.
    pub ruling: Option<Ruling>,
    /// Opens the jobs behind a skill.
    pub on_skill: Callback<String>,
    /// Replays a record.
    pub on_replay: Callback<(usize, usize)>,
    /// Opens a record as it was written.
    pub on_read: Callback<(usize, usize)>,
    /// A ruling was made.
    pub on_rule: Callback<Ruling>,
    /// Back to all.
    pub on_back: Callback<()>,
}

/// The page.
#[component]
pub fn Person(props: &PersonProps) -> Html {
    let ruling = use_state_eq(|| half_typed::is_begun(&props.candidate));
    let back = props.on_back.reform(|_: MouseEvent| ());
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let ask = {
        let ruling = ruling.clone();
        Callback::from(move |_: MouseEvent| ruling.set(true))
    };
    let on_rule = {
        let (ruling, on_rule) = (ruling.clone(), props.on_rule.clone());
        Callback::from(move |one: Ruling| {
            ruling.set(false);
            on_rule.emit(one);
        })
    };
    let on_cancel = {
        let ruling = ruling.clone();
        Callback::from(move |()| ruling.set(false))
    };
    use_effect_with((), |()| focus_on("person"));
    let name = props.rows.iter().find_map(|row| row.is.name.clone());
    html! {
        <article class="stack" aria-labelledby="person">
            <p class="row no-print"><button type="button" class="button" onclick={back}>{ say!("Back to all") }</button>
                <button type="button" class="button" onclick={print}>{ say!("Print this person") }</button>
                <button type="button" class="button" onclick={ask}>{ say!("Override the decision") }</button></p>
            <h2 id="person" tabindex="-1"><bdi>{ &props.candidate }</bdi>if let Some(name) = name { { ", " }<bdi>{ name }</bdi> }</h2>
            <p class="page__lead">{ sat(props) }</p>
            if *ruling { <Rule about={About::Candidate(props.candidate.clone())} words={decision::WORDS.to_vec()} {on_rule} {on_cancel} /> }
            { decided(props) }
            if let Some(line) = &props.line { { summary(line, props) } }
            { table(props) }
            <LostPoints jobs={props.lost.clone()} />
            <Proves n_jobs={props.sat.as_ref().map_or(props.marks.len(), |(_, n_jobs)| *n_jobs)} marks={props.marks.clone()}
                computed={say!("this sheet was made on {day}.", day = format::date(js_sys::Date::now() / 86_400_000.0))} />
        </article>
    }
}

/// Which assessment, how many jobs, when: such as `Autumn, 6 jobs; begun on 2031-03-04`.
fn sat(props: &PersonProps) -> String {
    let row = props.rows.iter().find(|row| row.is.place > 0);
    let day = row
        .or(props.rows.first())
        .and_then(|row| row.is.started.get(..10))
        .unwrap_or_else(|| say!("an unknown day"));
    let what = match (&props.sat, row) {
        (Some((title, n_jobs)), _) => {
            say!(
                "{assessment}, jobs that count: {n}",
                assessment = title,
                n = n_jobs
            )
        }
        (None, Some(row)) => say!(
            "assessment {assessment}, whose file is not here",
            assessment = row.is.assessment
        ),
        (None, None) => say!("Practice, of no assessment").to_owned(),
    };
    match row.map(|row| row.is.release.as_str()) {
        None | Some("") => say!("{what}; begun on {day}", what, day),
        Some(word) => say!(
            "{what}; begun on {day} with the word “{word}”",
            what,
            day,
            word
        ),
    }
}

fn decided(props: &PersonProps) -> Html {
    if props.decided.is_none() && props.ruling.is_none() {
        return Html::default();
    }
    html! {
        <section class="notice" aria-label={say!("Decision")}>
            if let Some(ruling) = &props.ruling {
                <p class="notice__title">{ overridden(ruling) }</p>
            }
            if let Some(decided) = &props.decided {
                if props.ruling.is_some() {
                    <p>{ say!("By the rules alone: {decision}", decision = decision_words(decided)) }</p>
                } else {
                    <p class="notice__title">{ decision_words(decided) }</p>
                }
                <ul>{ for decided.reasons.iter().map(|line| html! { <li>{ line.to_string() }</li> }) }</ul>
            }
        </section>
    }
}

fn decision_words(decided: &Decided) -> String {
    let whole = |marks: f64| format!("{marks:.0}");
    say!(
        "{decision}: {marks} of 100 marks on average, {cut} are asked",
        decision = format::sentence(decision::word(decided.decision)),
        marks = whole(decided.marks),
        cut = whole(decided.cut)
    )
}

fn overridden(ruling: &Ruling) -> Html {
    let [holds, who, why] = HOLES;
    let sentence = say!(
        "{holds} by {who}, {day}: {why}",
        holds,
        who,
        day = ruling.day,
        why
    );
    let holds = say!("Overridden: {decision}", decision = worded(&ruling.holds));
    phrase(
        &sentence,
        &[
            html! { <b>{ holds }</b> },
            bdi(&ruling.by),
            bdi(&ruling.why),
        ],
    )
}

fn summary(line: &PersonLine, props: &PersonProps) -> Html {
    let shown = props
        .skills
        .iter()
        .zip(&line.skills)
        .filter(|(_, shown)| shown.n > 0);
    let skill = |(skill, shown): (&String, &Shown)| {
        let name = skill.clone();
        let onclick = props.on_skill.reform(move |_: MouseEvent| name.clone());
        let count = say!(
            "{skill} {n} of {of}",
            skill = worded(skill),
            n = shown.n_right,
            of = shown.n
        );
        html! { <li>{ words::go(&count, say!("{count}: the jobs behind it", count), onclick) }</li> }
    };
    let ability = say!(
        "{ability}, sure to about ±{range}; 0 is the middle of these people",
        ability = decimals(format!("{:+.2}", line.ability.value)),
        range = decimals(format!("{:.2}", 2.0 * line.ability.se))
    );
    let jobs = say!(
        "{n} counted, {fixed} put right, {marks} of 100 marks on average",
        n = line.n_jobs,
        fixed = line.n_fixed,
        marks = format!("{:.0}", line.marks)
    );
    let asked = props.sat.as_ref().map_or(0, |(_, n_jobs)| *n_jobs);
    let unopened = asked.saturating_sub(line.n_jobs);
    let each = |taken: String| say!("{taken} each", taken);
    html! {
        <dl class="facts">
            <dt>{ say!("Ability") }</dt><dd>{ ability }</dd>
            <dt>{ say!("Jobs") }</dt><dd>{ jobs }if unopened > 0 { { "; " }{ say!("never opened, 0 marks each: {n}", n = unopened) } }</dd>
            <dt>{ say!("On site") }</dt><dd>{ words::beside(&each(words::minutes(line.minutes)), line.target_minutes.map(words::minutes), line.time_to_target) }</dd>
            <dt>{ say!("Cost") }</dt><dd>{ words::beside(&each(format::money(line.cost)), line.target_cost.map(format::money), line.cost_to_target) }</dd>
            <dt>{ say!("Safety") }</dt><dd>{ say!("rules broken: {n}, critical: {critical}", n = line.n_safety, critical = line.n_critical) }</dd>
            if line.is_unusual { <dt>{ say!("Pattern" as "of scores") }</dt><dd>{ say!("unusual: right on hard jobs and wrong on easy ones; look at the records") }</dd> }
            <dt>{ say!("Skills") }</dt><dd><ul class="row cohort__skills">{ for shown.map(skill) }</ul></dd>
        </dl>
    }
}

fn table(props: &PersonProps) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Records, a table")}>
            <table class="table">
                <thead><tr><th scope="col">{ say!("Job") }</th><th scope="col" class="numbers">{ say!("Marks") }</th><th scope="col">{ say!("Ended" as "how a job ended") }</th><th scope="col" class="numbers">{ say!("On site") }</th><th scope="col" class="numbers">{ say!("Cost") }</th><th scope="col">{ say!("Safety") }</th><th scope="col">{ say!("Began, by their clock") }</th><th scope="col" class="numbers">{ say!("Page left" as "how often it was left") }</th><th scope="col">{ say!("Checked") }</th><th scope="col" class="no-print">{ say!("As written") }</th></tr></thead>
                <tbody>{ for props.rows.iter().map(|row| line(row, props)) }</tbody>
            </table>
        </div>
    }
}

fn line(row: &Row, props: &PersonProps) -> Html {
    let Some(attempt) = &row.is.attempt else {
        return Html::default();
    };
    let result = &attempt.result;
    let title = words::title_of(&attempt.job);
    let at = (row.source, row.line);
    let read = props.on_read.reform(move |_: MouseEvent| at);
    let (label, onclick) = if row.is_foreign() {
        (say!("Read {what}", what = title), read.clone())
    } else {
        let replay = props.on_replay.reform(move |_: MouseEvent| at);
        (say!("Replay {what}", what = title), replay)
    };
    html! {
        <tr key={format!("{at:?}")}>
            <th scope="row">{ words::go(&title, label, onclick) }</th>
            <td class="numbers">{ format!("{:.0}", result.total) }</td><td>{ words::ended(result) }</td>
            <td class="numbers">{ words::of_target(&words::minutes(result.minutes), result.target_minutes.map(words::minutes)) }</td>
            <td class="numbers">{ words::of_target(&format::money(result.cost), words::target_cost(result)) }</td>
            <td>{ words::broken(result) }</td>
            <td class="numbers">{ row.is.started.get(..16).unwrap_or("–").replace('T', " ") }</td>
            <td class="numbers">{ row.is.n_away }</td>
            <td>{ checked(row, props.voided.contains(&at)) }</td>
            <td class="no-print"><button type="button" class="button button--small" aria-label={say!("Read {what} as it was written", what = title)} onclick={read}>{ say!("Read" as "verb, of a record") }</button></td>
        </tr>
    }
}

fn checked(row: &Row, is_void: bool) -> String {
    if is_void {
        return say!("the job was voided: it counts for nobody").to_owned();
    }
    let seal = match (row.is.why(), row.is.seal) {
        (Some(why), _) => return say!("not accepted: {why}", why),
        (None, Some(SealState::Good)) => say!("sealed" as "of a record"),
        (None, Some(SealState::Practice)) => say!("practice, no seal"),
        (None, _) => say!("seal not looked at: no key here"),
    };
    if row.replayed {
        say!("{seal}, run again", seal)
    } else {
        say!("{seal}, not run again yet", seal)
    }
}
