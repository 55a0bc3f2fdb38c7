//! Between the jobs of an assessment: what is there, how much time is left, handing in; and once that
//! is done, the result.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::format;
use crate::app::route::Route;
use crate::app::sitting::jobs;
use crate::app::sitting::jobs::HandingIn;
use crate::app::sitting::limits;
use crate::app::sitting::result::ResultScreen;
use crate::app::sitting::room_pause::RoomPause;
use crate::app::sitting::running;
use crate::app::store::SavedJob;
use crate::app::training_system;
use crate::language::worded;
use crate::say;

/// Changes with every look at the clock, so that the time shown does.
#[derive(Properties, PartialEq)]
pub struct TickProps {
    /// When, ms.
    pub tick: f64,
}

/// The screen.
#[component]
pub fn SittingScreen(props: &TickProps) -> Html {
    match running::with(|now| now.sitting.handed_in) {
        None => html! {
            <main class="page page--narrow" id="main" tabindex="-1">
                <h1>{ say!("No assessment is running") }</h1>
                <p><a href={Route::Assessment(None).href()}>{ say!("Open one") }</a></p>
            </main>
        },
        Some(true) if running::with(|now| now.sitting.is_bare) == Some(true) => html! {
            <main class="page page--narrow" id="main" tabindex="-1">
                <h1>{ say!("Handed in") }</h1>
                <p>{ say!("This assessment was handed in. The training system has its result; the result’s pages are in the browser in which it was sat.") }</p>
            </main>
        },
        Some(true) => html! { <ResultScreen trouble={training_system::trouble()} /> },
        Some(false) if running::is_elsewhere() => html! { <Elsewhere /> },
        Some(false) => html! { <Between tick={props.tick} /> },
    }
}

/// In a second tab: the first has the clock and what is done, and only it hands in.
#[component]
pub fn Elsewhere() -> Html {
    let again = Callback::from(|_: MouseEvent| drop(gloo::utils::window().location().reload()));
    html! {
        <main class="page page--narrow assessment" id="main" tabindex="-1">
            <section class="notice notice--rule" role="alert">
                <h1 class="notice__title">{ say!("This assessment is open in another tab") }</h1>
                <p>{ say!("It goes on there, with its clock: work and hand in there. Nothing that is done here counts, and this tab hands nothing in.") }</p>
                <p>{ say!("To go on here instead, close the other tab, then load this page again. Nothing is lost.") }</p>
                <p><button type="button" class="button" onclick={again}>{ say!("Load this page again") }</button></p>
            </section>
        </main>
    }
}

/// Between two jobs.
#[component]
fn Between(_props: &TickProps) -> Html {
    let saved = use_state(Vec::<Option<SavedJob>>::new);
    let sure = use_state_eq(|| false);
    let trouble = use_state_eq(String::new);
    let n_jobs = running::with(running::Running::n_jobs).unwrap_or(0);
    {
        let saved = saved.clone();
        use_effect_with(n_jobs, move |n_jobs| {
            let n_jobs = *n_jobs;
            spawn_local(async move {
                let known = jobs::progress(n_jobs).await;
                jobs::work_out(&known);
                saved.set(known);
            });
        });
    }
    let hand_in = {
        let trouble = trouble.clone();
        Callback::from(move |_: MouseEvent| {
            let trouble = trouble.clone();
            spawn_local(async move {
                if let Err(error) = jobs::hand_in().await {
                    trouble.set(error.to_string());
                }
            });
        })
    };
    // A second click on the same spot takes the first back: nobody hands in by a double click.
    let ask = {
        let sure = sure.clone();
        Callback::from(move |_: MouseEvent| sure.set(!*sure))
    };
    let pause =
        Callback::from(|_: MouseEvent| running::change(|sitting| sitting.paused = !sitting.paused));
    let shown = running::with(|now| {
        (
            now.assessment.file.title.clone(),
            now.sitting.candidate.clone(),
            now.left_s(),
            now.sitting.paused,
            now.aids().pause,
            now.assessment
                .file
                .room_pause
                .is_some()
                .then(|| now.sitting.room.is_paused()),
        )
    });
    let Some((title, candidate, left_s, paused, may_pause, room)) = shown else {
        return Html::default();
    };
    let room_pauses = room == Some(true);
    let handing_in = jobs::handing_in();
    let open = saved.iter().filter(|job| !is_over(job.as_ref())).count();
    html! {
        <main class="page page--narrow assessment" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ worded(&title).into_owned() }</h1>
                <p class="page__lead"><bdi>{ candidate }</bdi>{ " · " }<b class="numbers" role="timer">{ limits::in_words(left_s) }</b>
                    if paused || room_pauses { { ", " }{ say!("the clock stands") } }</p>
            </header>
            <ol class="opened__list" aria-label={say!("Jobs")}>
                { for (1..=n_jobs as u32).map(|place| line(place, saved.get(place as usize - 1).and_then(Option::as_ref), paused || room_pauses || handing_in.is_some())) }
            </ol>
            if let Some(paused) = room.filter(|_| handing_in.is_none()) { <RoomPause {paused} /> }
            if let Some(far) = handing_in { { wait(far) } } else {
            <p class="row">
                if may_pause && !room_pauses {
                    <button key="pause" type="button" class="button" onclick={pause}>{ if paused { say!("Go on: the clock starts again") } else { say!("Stop the clock") } }</button>
                }
                <button key="hand-in" type="button" class={classes!("button", (open == 0 && !*sure).then_some("button--main"))} aria-expanded={sure.to_string()} onclick={ask}>
                    { if *sure { say!("Not yet" as "of handing in") } else { say!("Hand in") } }
                </button>
                if *sure {
                    <button key="yes" type="button" class={classes!("button", if open == 0 { "button--main" } else { "button--danger" })} onclick={hand_in}>
                        { match open { 0 => say!("Yes, hand in").to_owned(), 1 => say!("Yes, hand in with one job open").to_owned(), n => say!("Yes, hand in with {n} jobs open", n) } }
                    </button>
                }
            </p>
            }
            <p role="alert">{ (*trouble).clone() }</p>
            { training_system::notice("status") }
            <p class="field__hint">{ say!("A job that is not handed over counts as it stands; one that was never opened counts as 0.") }</p>
        </main>
    }
}

/// What stands in place of the buttons while the records are made.
fn wait(far: HandingIn) -> Html {
    html! {
        <p role="status">
            <label>{ say!("Handing in: working out what your decisions were worth. Leave this page open.") }{ " " }
                <progress max={far.of.max(1).to_string()} value={far.done.to_string()} /></label>
        </p>
    }
}

fn is_over(job: Option<&SavedJob>) -> bool {
    job.is_some_and(|job| job.verdict.is_some())
}

fn line(place: u32, saved: Option<&SavedJob>, paused: bool) -> Html {
    let state = match saved {
        Some(job) if job.verdict.is_some() => say!("handed over").to_owned(),
        Some(job) if !job.log.is_empty() => {
            say!(
                "begun, {on_site} on site",
                on_site = format::on_site(job.seen)
            )
        }
        _ => say!("not begun").to_owned(),
    };
    let words = say!("Job {n}", n = place);
    html! {
        <li class="opened__job" key={place}>
            if is_over(saved) || paused { <b>{ words }</b> } else { <a href={Route::Bench(jobs::name(place)).href()}>{ words }</a> }
            <span class="opened__who">{ state }</span>
        </li>
    }
}
