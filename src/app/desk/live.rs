//! Beside the form, always live: what is still wrong with the job, how its machine behaves over a
//! program, what its customer would say of that.

use std::sync::Arc;

use gloo::timers::callback::Timeout;
use serde_json::json;
use yew::prelude::*;

use crate::app::desk::checks::check_lines;
use crate::app::desk::fair::Fair;
use crate::app::desk::judged::Judged;
use crate::app::desk::share::Share;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::app::format;
use crate::app::replay::Replayed;
use crate::app::route::Route;
use crate::bench::scenario::Scenario;
use crate::say;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::score;
use crate::score::Behaviour;

/// How long a writer must pause before the machine is run, ms.
const PAUSE_MS: u32 = 400;

/// The job and what is wrong with it.
#[derive(Properties, PartialEq)]
pub struct LiveProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong.
    pub told: Vec<Told>,
    /// Where changes go.
    pub edit: Callback<Edit>,
    /// What is said of the job so far.
    pub judged: Judged,
    /// Shows how an apprentice worked the job.
    pub on_replay: Callback<Replayed>,
}

/// The right-hand side.
#[component]
pub fn LiveSide(props: &LiveProps) -> Html {
    html! {
        <div class="desk__live">
            { checks(&props.told) }
            <Machine job={props.job.clone()} edit={props.edit.clone()} />
            if props.told.is_empty() {
                <section class="card stack" aria-labelledby="fair">
                    <h2 class="card__title" id="fair">{ say!("Fairness") }</h2>
                    <Fair job={props.job.clone()} judged={props.judged.clone()} edit={props.edit.clone()} on_replay={props.on_replay.clone()} />
                </section>
            }
            <section class="card stack" aria-labelledby="share">
                <h2 class="card__title" id="share" tabindex="-1">{ say!("Share") }</h2>
                if props.told.is_empty() {
                    <Share job={props.job.clone()} />
                } else {
                    <p>{ say!("A job can be given away once nothing above is missing.") }</p>
                }
            </section>
        </div>
    }
}

fn checks(all: &[Told]) -> Html {
    html! {
        <section class="card" aria-labelledby="checks">
            <h2 class="card__title" id="checks">{ say!("Checks") }</h2>
            <div role="status"><ul class="fairness desk__list">
                if all.is_empty() {
                    <li class="fairness__line fairness__line--fair">{ say!("Everything that a job needs is there.") }</li>
                }
                { check_lines(all) }
            </ul></div>
        </section>
    }
}

/// What the machine depends on; a letter in the complaint does not run it again.
#[derive(Properties, PartialEq)]
struct MachineProps {
    job: JobFile,
    edit: Callback<Edit>,
}

#[component]
fn Machine(props: &MachineProps) -> Html {
    let told = use_state(|| None::<Result<Behaviour, String>>);
    let seed = use_state(|| 1_u64);
    let cause = (
        props.job.machine.clone(),
        props.job.site.clone(),
        props.job.faults.clone(),
        *seed,
    );
    {
        let (told, job, seed) = (told.clone(), props.job.clone(), *seed);
        use_effect_with(cause, move |_| {
            let pause = Timeout::new(PAUSE_MS, move || told.set(Some(run(&job, seed))));
            move || drop(pause)
        });
    }
    let again = {
        let seed = seed.clone();
        Callback::from(move |_: MouseEvent| seed.set(*seed + 1))
    };
    let by_chance = comes_and_goes(&props.job);
    html! {
        <section class="card stack" aria-labelledby="behaviour">
            <h2 class="card__title" id="behaviour">{ say!("How the machine behaves") }</h2>
            { match &*told {
                None => html! { <p role="status">{ say!("Running a program …") }</p> },
                Some(Err(why)) => html! { <p role="status">{ why }</p> },
                Some(Ok(behaviour)) => behaviour_of(props, behaviour),
            } }
            if by_chance {
                <p class="row"><button type="button" class="button button--small" onclick={again}>{ say!("Run it again") }</button>
                    <span class="field__hint">{ say!("A fault that comes and goes may show in one run and not in the next.") }</span></p>
            }
            <p><a href={Route::Readings(Some(props.job.machine.clone())).href()}>{ say!("What each reading tells apart on this machine") }</a></p>
        </section>
    }
}

/// A fault's own onset says so, or its usual one.
fn comes_and_goes(job: &JobFile) -> bool {
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&job.machine));
    let defs = pack.map_or(&[][..], |pack| &pack.model.faults);
    job.faults.iter().any(|fault| match fault.onset {
        Some(onset) => !onset.is_constant(),
        None => defs
            .iter()
            .any(|def| def.id == fault.id && def.onset.varies()),
    })
}

/// The machine needs the machine's half of the job only: a complaint may still be missing.
fn run(job: &JobFile, seed: u64) -> Result<Behaviour, String> {
    let scenario = playable(job)
        .ok_or_else(|| say!("The machine runs once place, load and faults are in order."))?;
    score::behaviour(&scenario, seed).map_err(|error| error.to_string())
}

fn playable(job: &JobFile) -> Option<Arc<Scenario>> {
    let mut job = job.clone();
    let said = |text: &mut String| {
        if text.trim().is_empty() {
            text.push('?');
        }
    };
    said(&mut job.title);
    said(&mut job.customer.name);
    said(&mut job.customer.complaint);
    job.customer.answers = crate::app::desk::draft::blank().customer.answers;
    job.van.clear();
    scenario::job_of("draft", &job).ok().map(Arc::new)
}

fn behaviour_of(props: &MachineProps, behaviour: &Behaviour) -> Html {
    let line = |told: &score::BehaviourLine| {
        let class = if told.as_sound {
            "fairness__line fairness__line--fair"
        } else {
            "fairness__line fairness__line--differs"
        };
        html! { <li {class}>{ format::sentence(&told.words) }</li> }
    };
    let (wrong, right): (Vec<_>, Vec<_>) = behaviour.lines.iter().partition(|line| !line.as_sound);
    let usual = right.len();
    html! {
        <>
            <p class="field__hint">{ say!("Computed: the program as it starts, with this load at this place, beside a sound machine.") }</p>
            if wrong.is_empty() { <p>{ say!("Nothing in a whole program differs from a sound machine.") }</p> }
            <ul class="fairness desk__list">{ for wrong.into_iter().map(line) }</ul>
            <details><summary>{ say!("{n} figures as on a sound machine", n = usual) }</summary>
                <ul class="fairness desk__list">{ for right.into_iter().map(line) }</ul></details>
            { suggestion(props, behaviour) }
        </>
    }
}

fn suggestion(props: &MachineProps, behaviour: &Behaviour) -> Html {
    // The job's file has the English words, which the expert hears.
    let complaint = &behaviour.complaint;
    if complaint.is_empty() {
        return Html::default();
    }
    let text = complaint.to_owned();
    let take = props
        .edit
        .reform(move |_: MouseEvent| Edit::Set("customer.complaint".to_owned(), json!(text)));
    html! {
        <div class="stack">
            <h3>{ say!("What its customer would say") }</h3>
            <blockquote class="job-card__quote">{ &behaviour.complaint_said }</blockquote>
            if props.job.customer.complaint != *complaint {
                <p><button type="button" class="button" onclick={take}>{ say!("Use as the complaint") }</button></p>
            }
        </div>
    }
}
