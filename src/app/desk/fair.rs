//! The fairness panel: what can be seen of the faults, what looks like them, what to mend, the
//! expert's way, how apprentices fare. Worked out in a thread, always of the job as it stands.

use serde_json::json;
use yew::prelude::*;

use crate::app::desk::apprentices::Apprentices;
use crate::app::desk::judged::Judged;
use crate::app::desk::judged::SEED;
use crate::app::desk::judged::Stage;
use crate::app::desk::state::Edit;
use crate::app::replay::Replayed;
use crate::app::shared::Shared;
use crate::app::view::beside;
use crate::app::view::beside::Way;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::say;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::score;
use crate::score::FairnessLine;

/// A sound job.
#[derive(Properties, PartialEq)]
pub struct FairProps {
    /// The job.
    pub job: JobFile,
    /// What is said of it so far.
    pub judged: Judged,
    /// Where changes go.
    pub edit: Callback<Edit>,
    /// Shows how an apprentice worked it.
    pub on_replay: Callback<Replayed>,
}

/// The panel.
#[component]
pub fn Fair(props: &FairProps) -> Html {
    let judged = &props.judged;
    html! {
        <>
            <p role="status">{ progress(judged) }</p>
            <ul class="fairness desk__list">
                { for judged.lines.iter().flatten().map(line) }
            </ul>
            if let Some(log) = &judged.expert {
                <ExpertsWay job={props.job.clone()} log={log.clone()} edit={props.edit.clone()} />
            }
            if let Some(fared) = &judged.fared {
                <Apprentices job={props.job.clone()} fared={fared.clone()} on_replay={props.on_replay.clone()} />
            }
        </>
    }
}

fn progress(judged: &Judged) -> String {
    if let Some(why) = &judged.failed {
        return why.clone();
    }
    let (done, of) = judged.progress();
    match judged.stage() {
        Stage::Resting if judged.lines.is_some() => {
            say!("The job has changed: it is judged anew once you pause.").to_owned()
        }
        Stage::Resting => say!("Judged once you pause.").to_owned(),
        Stage::Comparing if of > 0 => {
            say!("Comparing with other causes: {done} of {of} …", done, of)
        }
        Stage::Comparing => say!("Comparing with other causes …").to_owned(),
        Stage::Expert => {
            say!("The expert is working the job; this takes some seconds …").to_owned()
        }
        Stage::Crowd if of > 0 => {
            say!("Apprentices are working it: {done} of {of} …", done, of)
        }
        Stage::Crowd => say!("Apprentices are working it …").to_owned(),
        Stage::Done if judged.lines.iter().flatten().all(|line| line.fair) => {
            say!("Judged: nothing to mend.").to_owned()
        }
        Stage::Done => say!("Judged: there is something to mend.").to_owned(),
    }
}

fn line(line: &FairnessLine) -> Html {
    let kind = match (line.open, line.fair) {
        (true, _) => "open",
        (_, true) => "fair",
        _ => "unfair",
    };
    html! { <li class={format!("fairness__line fairness__line--{kind}")}>{ &line.words }</li> }
}

#[derive(Properties, PartialEq)]
struct WayProps {
    job: JobFile,
    log: Shared<Vec<Entry>>,
    edit: Callback<Edit>,
}

/// What the expert's work comes to.
struct Experts {
    line: FairnessLine,
    way: Way,
    cost: f64,
    minutes: f64,
}

/// The expert's verdict, its way, and its figures as a target.
#[component]
fn ExpertsWay(props: &WayProps) -> Html {
    let told = use_memo(props.log.clone(), |log| experts(&props.job, log));
    let Some(told) = &*told else {
        return Html::default();
    };
    let take = {
        let (edit, cost, minutes) = (props.edit.clone(), told.cost, told.minutes);
        Callback::from(move |_: MouseEvent| {
            edit.emit(Edit::Set("reference.cost".to_owned(), json!(cost)));
            edit.emit(Edit::Set("reference.minutes".to_owned(), json!(minutes)));
            edit.emit(Edit::Settle);
        })
    };
    html! {
        <>
            <ul class="fairness desk__list">{ line(&told.line) }</ul>
            if told.line.fair && props.job.reference.is_none() {
                <p><button type="button" class="button button--small" onclick={take}>{ say!("Take this as the target") }</button></p>
            }
            <details><summary>{ say!("The expert's way: {sum}", sum = told.way.sum) }</summary>
                <div class="table__wrap desk__way" tabindex="0" role="region" aria-label={say!("The expert's way")}>
                    <table class="table">
                        <thead><tr><th scope="col">{ say!("min") }</th><th scope="col">{ say!("act") }</th><th scope="col">{ say!("cost") }</th></tr></thead>
                        <tbody>{ for told.way.acts.iter().map(|[minute, act, cost]| html! {
                            <tr><td class="numbers">{ minute }</td><td>{ act }</td><td class="numbers">{ cost }</td></tr>
                        }) }</tbody>
                    </table>
                </div>
            </details>
        </>
    }
}

fn experts(job: &JobFile, log: &[Entry]) -> Option<Experts> {
    let scenario = scenario::job_of("draft", job).ok()?;
    let (worked, _) = Job::replay(scenario.into(), SEED, log).ok()?;
    let rounded = |x: f64| libm::round(10.0 * x) / 10.0;
    Some(Experts {
        line: score::solved(&worked).ok()?,
        way: beside::way(&worked, log)?,
        cost: rounded(worked.cost()),
        minutes: rounded(worked.tick() as f64 / 600.0),
    })
}
