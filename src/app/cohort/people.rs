//! People by skills: a table of which only the rows in view are drawn, however many there are.

use web_sys::HtmlElement;
use yew::prelude::*;

use crate::app::cohort::opened::Opened;
use crate::app::cohort::words;
use crate::app::format;
use crate::app::shared::Shared;
use crate::language::worded;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::lines::PersonLine;
use crate::records::cohort::lines::Shown;
use crate::say;

/// Height of a row, px; the style sheet has the same.
const ROW_PX: i32 = 36;
/// Rows drawn above and below what is in view.
const SPARE: usize = 8;
/// Rows in view before the first scroll.
const IN_VIEW: usize = 24;

/// What the table shows.
#[derive(Properties, PartialEq)]
pub struct PeopleProps {
    /// The cohort.
    pub cohort: Shared<Cohort>,
    /// What is decided about each, in the cohort's order; empty where nothing is.
    pub decisions: Shared<Vec<String>>,
    /// All rows are drawn, for paper.
    #[prop_or_default]
    pub whole: bool,
    /// Opens a person, or what is behind a skill.
    pub on_open: Callback<Opened>,
}

/// How people are ordered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum By {
    Name,
    Ability,
    Marks,
    Critical,
}

/// The table.
#[component]
pub fn People(props: &PeopleProps) -> Html {
    let by = use_state_eq(|| By::Name);
    let first = use_state_eq(|| 0_usize);
    let (cohort, decisions) = (&props.cohort, &props.decisions);
    let order = use_memo((cohort.clone(), *by), |(cohort, by)| order(cohort, *by));
    let onscroll = {
        let first = first.clone();
        Callback::from(move |event: Event| {
            let top = event.target_unchecked_into::<HtmlElement>().scroll_top();
            first.set((top / ROW_PX).max(0) as usize);
        })
    };
    let n = order.len();
    let (from, to) = if props.whole {
        (0, n)
    } else {
        let from = first.saturating_sub(SPARE).min(n);
        (from, (*first + IN_VIEW + SPARE).min(n))
    };
    let sort = |to: By, word: &'static str| {
        let (by, first) = (by.clone(), first.clone());
        let sorted = if *by == to { "ascending" } else { "none" };
        let onclick = Callback::from(move |_: MouseEvent| {
            by.set(to);
            first.set(0);
        });
        html! { <th scope="col" aria-sort={sorted}><button type="button" class="readings__sort" {onclick}>{ word }</button></th> }
    };
    let space = |rows: usize| {
        // The page's policy allows no style in the markup; a height is none.
        let height = (rows as i32 * ROW_PX).to_string();
        html! { if rows > 0 { <tr aria-hidden="true" class="cohort__space"><td {height}></td></tr> } }
    };
    html! {
        <div class="cohort__people readings" tabindex="0" role="region" aria-label={say!("People and skills, a table")} {onscroll}>
            <table class="table" aria-rowcount={(n + 1).to_string()}>
                <thead><tr>
                    { sort(By::Name, say!("Person")) }
                    <th scope="col">{ say!("Decision") }</th>
                    { sort(By::Ability, say!("Ability ± error")) }
                    { sort(By::Marks, say!("Marks")) }
                    <th scope="col">{ say!("Put right") }</th>
                    { sort(By::Critical, say!("Critical")) }
                    <th scope="col">{ say!("On site") }</th>
                    <th scope="col">{ say!("Time to target") }</th>
                    <th scope="col">{ say!("Cost to target") }</th>
                    { for cohort.skills.iter().map(|skill| html! { <th scope="col">{ format::sentence(&worded(skill)) }</th> }) }
                </tr></thead>
                <tbody>
                    { space(from) }
                    { for (from..to).map(|at| row(&cohort.people[order[at]], decisions.get(order[at]), at, props)) }
                    { space(n - to) }
                </tbody>
            </table>
        </div>
    }
}

fn order(cohort: &Cohort, by: By) -> Vec<usize> {
    let mut order: Vec<usize> = (0..cohort.people.len()).collect();
    let people = &cohort.people;
    match by {
        By::Name => {}
        By::Ability => order.sort_by(|a, b| {
            people[*b]
                .ability
                .value
                .total_cmp(&people[*a].ability.value)
        }),
        By::Marks => order.sort_by(|a, b| people[*b].marks.total_cmp(&people[*a].marks)),
        By::Critical => order.sort_by_key(|at| std::cmp::Reverse(people[*at].n_critical)),
    }
    order
}

fn row(line: &PersonLine, decision: Option<&String>, at: usize, props: &PeopleProps) -> Html {
    let candidate = line.candidate.clone();
    let onclick = props
        .on_open
        .reform(move |_: MouseEvent| Opened::Person(candidate.clone()));
    let skills = props.cohort.skills.iter().zip(&line.skills);
    html! {
        <tr key={at} aria-rowindex={(at + 2).to_string()}>
            <th scope="row"><button type="button" class="desk__go" {onclick}><bdi>{ &line.candidate }</bdi></button></th>
            <td>{ decision.cloned().unwrap_or_default() }</td>
            <td class="numbers">{ ability(line) }</td>
            <td class="numbers">{ format!("{:.0}", line.marks) }</td>
            <td class="numbers">{ say!("{n} of {of}", n = line.n_fixed, of = line.n_jobs) }</td>
            <td class="numbers">{ line.n_critical }</td>
            <td class="numbers">{ words::minutes(line.minutes) }</td>
            <td class="numbers">{ words::ratio(line.time_to_target) }</td>
            <td class="numbers">{ words::ratio(line.cost_to_target) }</td>
            { for skills.map(|(skill, shown)| cell(&line.candidate, skill, shown, &props.on_open)) }
        </tr>
    }
}

fn ability(line: &PersonLine) -> String {
    let ability = words::measured(line.ability);
    if line.is_unusual {
        say!("{ability}, unusual", ability)
    } else {
        ability
    }
}

/// A skill's cell: the count in words, which opens the jobs behind it, and a ground that goes with it.
fn cell(candidate: &str, skill: &str, shown: &Shown, on_open: &Callback<Opened>) -> Html {
    let class = match (shown.n, 3 * shown.n_right) {
        (0, _) => return html! { <td class="cell cell--none">{ "–" }</td> },
        (n, right) if right >= 3 * n => "cell cell--mastered",
        (n, right) if right >= 2 * n => "cell cell--near",
        _ => "cell cell--not-yet",
    };
    let count = say!("{n} of {of}", n = shown.n_right, of = shown.n);
    let label = say!(
        "{count}, {skill}, {person}: the jobs behind it",
        count,
        skill = worded(skill),
        person = candidate
    );
    let opened = Opened::Skill(candidate.to_owned(), skill.to_owned());
    let onclick = on_open.reform(move |_: MouseEvent| opened.clone());
    html! { <td {class}>{ words::go(&count, label, onclick) }</td> }
}
