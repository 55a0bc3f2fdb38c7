//! Jobs of a cohort: how hard, how well each tells people apart, whether it behaves, what it takes;
//! as a table and as a picture of the same.

use std::collections::BTreeSet;

use yew::prelude::*;

use crate::app::cohort::words;
use crate::app::format;
use crate::app::shared::Shared;
use crate::language::decimals;
use crate::language::worded;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::lines::JobLine;
use crate::say;

/// Mean squares above this are looked at: scores there go with nothing. Common practice.
const WORST_FIT: f64 = 1.3;
/// Ends of the picture's scale, logits.
const SCALE: f64 = 4.0;

/// What the table shows.
#[derive(Properties, PartialEq)]
pub struct JobsProps {
    /// The cohort.
    pub cohort: Shared<Cohort>,
    /// Jobs of which something counts, by name: these can be voided.
    pub counting: BTreeSet<String>,
    /// Opens a job.
    pub on_open: Callback<String>,
    /// Asks to void a job.
    pub on_void: Callback<String>,
}

/// Picture and table.
#[component]
pub fn Jobs(props: &JobsProps) -> Html {
    let jobs = &props.cohort.jobs;
    let known = jobs.iter().filter(|job| job.difficulty.is_some()).count();
    html! {
        <>
            if known > 0 { { map(&props.cohort) } } else { <p>{ say!("With fewer than ten people no number is given for a job: it would be noise.") }</p> }
            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Jobs, a table")}>
                <table class="table">
                    <thead><tr><th scope="col">{ say!("Job") }</th><th scope="col" class="numbers">{ say!("People") }</th><th scope="col" class="numbers">{ say!("Mean score, 0 to 3") }</th><th scope="col">{ say!("Difficulty") }</th><th scope="col" class="numbers">{ say!("Tells people apart") }</th><th scope="col">{ say!("Fit" as "of a job to the model") }</th><th scope="col" class="numbers">{ say!("On site") }</th><th scope="col" class="numbers">{ say!("Time to target") }</th><th scope="col" class="numbers">{ say!("Cost to target") }</th><th scope="col"><span class="visually-hidden">{ say!("Void" as "verb, of a job") }</span></th></tr></thead>
                    <tbody>{ for jobs.iter().map(|job| row(job, props)) }</tbody>
                </table>
            </div>
        </>
    }
}

fn row(job: &JobLine, props: &JobsProps) -> Html {
    let name = job.job.clone();
    let onclick = props.on_void.reform(move |_: MouseEvent| name.clone());
    let (name, title) = (job.job.clone(), words::title_of(&job.job));
    let open = props.on_open.reform(move |_: MouseEvent| name.clone());
    html! {
        <tr key={job.job.clone()}>
            <th scope="row">{ words::go(&title, say!("{job}: more about this job", job = title), open) }</th>
            <td class="numbers">{ job.n_people }</td>
            <td class="numbers">{ decimals(format!("{:.1}", job.mean_score)) }</td>
            <td>{ words::difficulty(job) }</td>
            <td class="numbers">{ words::ratio(job.discrimination) }</td>
            <td>{ fit(job) }</td>
            <td class="numbers">{ words::minutes(job.minutes) }</td>
            <td class="numbers">{ words::ratio(job.time_to_target) }</td>
            <td class="numbers">{ words::ratio(job.cost_to_target) }</td>
            <td>if props.counting.contains(&job.job) { <button type="button" class="button button--small no-print" aria-label={say!("Void {job} for everybody", job = title)} {onclick}>{ say!("void" as "verb, of a job") }</button> }</td>
        </tr>
    }
}

/// Both mean squares; a dash for few people.
pub fn fit(job: &JobLine) -> String {
    match (job.infit, job.outfit) {
        (Some(infit), Some(outfit)) => {
            let odd = [infit, outfit].iter().any(|ms| *ms > WORST_FIT);
            let [infit, outfit] = [infit, outfit].map(|ms| decimals(format!("{ms:.2}")));
            if odd {
                say!("{infit} in, {outfit} out: look at it", infit, outfit)
            } else {
                say!("{infit} in, {outfit} out", infit, outfit)
            }
        }
        _ => "–".to_owned(),
    }
}

/// People above, jobs below, on the one scale they share; the table beside it says the same.
fn map(cohort: &Cohort) -> Html {
    let x = |logits: f64| 10.0 + (logits.clamp(-SCALE, SCALE) + SCALE) / (2.0 * SCALE) * 580.0;
    let bins = 33;
    let mut counts = vec![0_usize; bins];
    for person in &cohort.people {
        let at =
            (person.ability.value.clamp(-SCALE, SCALE) + SCALE) / (2.0 * SCALE) * (bins - 1) as f64;
        counts[at.round() as usize] += 1;
    }
    let most = counts.iter().copied().max().unwrap_or(1).max(1) as f64;
    let mut jobs: Vec<(&JobLine, f64, f64)> = cohort
        .jobs
        .iter()
        .filter_map(|job| job.difficulty.map(|d| (job, d.value, d.se)))
        .collect();
    jobs.sort_by(|a, b| a.1.total_cmp(&b.1));
    let height = 110.0 + 14.0 * jobs.len() as f64;
    let text = |at: f64, y: f64, words: String| html! { <text x={format!("{at:.1}")} y={format!("{y:.1}")} text-anchor="middle" class="cohort__ink">{ words }</text> };
    html! {
        <figure class="cohort__map">
            <figcaption>{ say!("People (bars, {n} of them) and jobs (dots with their error) on one scale: who stands above a job gets it right more often than not. The numbers are in the tables.", n = cohort.people.len()) }</figcaption>
            <svg viewBox={format!("0 0 600 {height:.0}")} role="img" aria-label={say!("Abilities of people and difficulties of jobs on one scale; the same numbers stand in the tables")}>
                { for counts.iter().enumerate().map(|(at, n)| {
                    let share = 70.0 * *n as f64 / most;
                    let left = x(-SCALE + 2.0 * SCALE * at as f64 / (bins - 1) as f64) - 7.0;
                    html! { <rect x={format!("{left:.1}")} y={format!("{:.1}", 80.0 - share)} width="14" height={format!("{share:.1}")} class="cohort__bar" /> }
                }) }
                <path d="M10 80H590" class="cohort__axis" />
                { for (-4..=4).map(|n| text(x(f64::from(n)), 95.0, n.to_string())) }
                { for jobs.iter().enumerate().map(|(at, (job, value, se))| {
                    let y = 108.0 + 14.0 * at as f64;
                    html! { <g><title>{ say!("{job}: {difficulty}", job = job.job, difficulty = format::sentence(&worded(&job.words))) }</title>
                        <path d={format!("M{:.1} {y:.1}H{:.1}", x(value - se), x(value + se))} class="cohort__axis" />
                        <circle cx={format!("{:.1}", x(*value))} cy={format!("{y:.1}")} r="3.5" class="cohort__dot" /></g> }
                }) }
            </svg>
        </figure>
    }
}
