//! While an assessment runs, the page shows it and what may be used, and nothing else.

use yew::prelude::*;

use crate::app::route::Route;
use crate::app::sitting::jobs;
use crate::app::sitting::overview::Elsewhere;
use crate::app::sitting::running;
use crate::say;

/// The screen may not be shown now.
pub fn lock(route: &Route) -> bool {
    let Some((runs, paused, handbook)) = running::with(|now| {
        (
            now.sitting.is_running(),
            now.sitting.stands(),
            now.aids().handbook,
        )
    }) else {
        return is_of_sitting(route);
    };
    if !runs {
        // What was handed in is no longer worked on.
        return is_of_sitting(route);
    }
    match route {
        Route::Sitting | Route::Settings => false,
        Route::Handbook(_) => !handbook,
        Route::Bench(_) | Route::Finding(_) | Route::Report(_) | Route::Sheets(_) => {
            !is_of_sitting(route)
                || paused
                || running::is_elsewhere()
                || jobs::handing_in().is_some()
        }
        _ => true,
    }
}

fn is_of_sitting(route: &Route) -> bool {
    match route {
        Route::Bench(id)
        | Route::Finding(id)
        | Route::Report(id)
        | Route::Sheets(id)
        | Route::Debrief(id) => jobs::is_sitting(id),
        _ => false,
    }
}

/// What stands there instead.
#[component]
pub fn Lock() -> Html {
    let runs = running::is_running();
    if runs && running::is_elsewhere() {
        return html! { <Elsewhere /> };
    }
    let stands = running::with(|now| now.sitting.stands()).unwrap_or(false);
    let (heading, words) = match (runs, stands) {
        (true, true) => (
            say!("The clock stands"),
            say!(
                "The jobs of the assessment open again once the clock goes on, other pages once it is handed in."
            ),
        ),
        (true, false) => (
            say!("Not during the assessment"),
            say!(
                "An assessment is running in this browser. This page opens again once it is handed in."
            ),
        ),
        (false, _) => (
            say!("This job is handed in"),
            say!("What came of it stands with the result."),
        ),
    };
    html! {
        <main class="page page--narrow" id="main" tabindex="-1">
            <h1>{ heading }</h1>
            <p>{ words }</p>
            <p><a class="button button--main" href={Route::Sitting.href()}>{ say!("To the assessment") }</a></p>
        </main>
    }
}
