//! The frame around every screen: the way to the content, the top line, the screen itself.

use yew::prelude::*;

use crate::app::assessments::MakeScreen;
use crate::app::cohort::CohortScreen;
use crate::app::cohort::ReceivedScreen;
use crate::app::desk::DeskHome;
use crate::app::desk::DeskScreen;
use crate::app::desk::SetMaker;
use crate::app::faults::FaultsScreen;
use crate::app::handbook::HandbookScreen;
use crate::app::hooks::focus_on;
use crate::app::hooks::use_route;
use crate::app::job_host::JobHost;
use crate::app::jobs::JobsScreen;
use crate::app::me::MeScreen;
use crate::app::newer::Newer;
use crate::app::open_job::OpenJobScreen;
use crate::app::readings::ReadingsScreen;
use crate::app::route::JobScreen;
use crate::app::route::Route;
use crate::app::settings::Settings;
use crate::app::settings::SettingsHandle;
use crate::app::settings::SettingsScreen;
use crate::app::settings::use_kept_settings;
use crate::app::sitting;
use crate::app::sitting::AssessmentScreen;
use crate::app::sitting::Lock;
use crate::app::sitting::ObserverScreen;
use crate::app::sitting::SittingScreen;
use crate::app::sitting::Watch;
use crate::say;

/// What the page begins with.
#[derive(Properties, PartialEq)]
pub struct AppProps {
    /// What the person has set before.
    pub settings: Settings,
}

/// The whole page.
#[component]
pub fn App(props: &AppProps) -> Html {
    let route = use_route();
    let settings = use_kept_settings(&props.settings);
    let skip = Callback::from(|_: MouseEvent| focus_on("main"));
    {
        let (route, arrived) = (route.clone(), use_mut_ref(|| false));
        use_effect_with(route, move |route| {
            gloo::utils::document().set_title(&format!("{} – Tubwright", title(route)));
            // What had the focus went with the screen before, and so did the place it was scrolled to; a
            // page just opened has its own start.
            if arrived.replace(true) {
                focus_on("main");
                gloo::utils::window().scroll_to_with_x_and_y(0.0, 0.0);
            }
        });
    }
    let redraw = use_force_update();
    let on_change = use_callback((), move |(), ()| redraw.force_update());
    let is_locked = sitting::lock(&route);
    html! {
        <ContextProvider<SettingsHandle> context={settings}>
            <Watch {on_change}>
                <button type="button" class="skip-link" onclick={skip}>{ say!("To the content") }</button>
                if is_locked || !matches!(route, Route::Bench(_)) {
                    <TopBar route={route.clone()} sits={sitting::running::is_running()} />
                    <Newer />
                }
                if is_locked { <Lock /> } else { { screen(&route) } }
            </Watch>
        </ContextProvider<SettingsHandle>>
    }
}

fn title(route: &Route) -> &'static str {
    match route {
        Route::Jobs | Route::Unknown => say!("Jobs"),
        Route::Bench(_) => say!("Bench"),
        Route::Finding(_) => say!("Fault found"),
        Route::Report(_) => say!("Report"),
        Route::Sheets(_) => say!("Sheets to print"),
        Route::Debrief(_) => say!("Debrief"),
        Route::Handbook(_) | Route::Faults { .. } => say!("Handbook"),
        Route::Desk(_) => say!("Desk"),
        Route::OpenJob(_) => say!("A job for you"),
        Route::Readings(_) => say!("Readings and faults"),
        Route::Assessment(_) | Route::SitLink(_) | Route::Sitting => say!("Assessment"),
        Route::Observer => say!("Observer’s sheet"),
        Route::Result(_) | Route::Cohort => say!("Results"),
        Route::MakeAssessment => say!("Make an assessment"),
        Route::MakeSet => say!("Make a training set"),
        Route::Me => say!("Me"),
        Route::Settings => say!("Settings"),
    }
}

fn screen(route: &Route) -> Html {
    let job = |id: &String, screen| html! { <JobHost key={id.clone()} id={id.clone()} {screen} /> };
    match route {
        Route::Jobs => html! { <JobsScreen /> },
        Route::Bench(id) => job(id, JobScreen::Bench),
        Route::Finding(id) => job(id, JobScreen::Finding),
        Route::Report(id) => job(id, JobScreen::Report),
        Route::Sheets(id) => job(id, JobScreen::Sheets),
        Route::Debrief(id) => job(id, JobScreen::Debrief),
        Route::Handbook(chapter) => html! { <HandbookScreen chapter={chapter.clone()} /> },
        Route::Desk(None) => html! { <DeskHome /> },
        Route::Desk(Some(id)) => html! { <DeskScreen key={id.clone()} id={id.clone()} /> },
        Route::OpenJob(letters) => html! { <OpenJobScreen letters={letters.clone()} /> },
        Route::Readings(machine) => html! { <ReadingsScreen machine={machine.clone()} /> },
        Route::Faults { machine, fault } => html! {
            <FaultsScreen machine={machine.clone()} fault={fault.clone()} />
        },
        Route::Assessment(id) => {
            html! { <AssessmentScreen key={id.clone().unwrap_or_default()} id={id.clone().map(AttrValue::from)} /> }
        }
        Route::SitLink(letters) => {
            html! { <AssessmentScreen key={letters.clone()} letters={AttrValue::from(letters.clone())} /> }
        }
        // What it shows is no property: it is drawn anew whenever the page is.
        Route::Sitting => html! { <SittingScreen tick={js_sys::Date::now()} /> },
        Route::Observer => html! { <ObserverScreen /> },
        Route::MakeAssessment => html! { <MakeScreen /> },
        Route::MakeSet => html! { <SetMaker /> },
        Route::Result(letters) => {
            html! { <ReceivedScreen key={letters.clone()} letters={letters.clone()} /> }
        }
        Route::Cohort => html! { <CohortScreen /> },
        Route::Me => html! { <MeScreen /> },
        Route::Settings => html! { <SettingsScreen /> },
        Route::Unknown => html! {
            <main class="page page--narrow" id="main" tabindex="-1">
                <h1>{ say!("There is nothing at this address") }</h1>
                <p><a href={Route::Jobs.href()}>{ say!("To the jobs") }</a></p>
            </main>
        },
    }
}

/// What the top line shows.
#[derive(Properties, PartialEq)]
struct TopBarProps {
    route: Route,
    /// An assessment is running.
    sits: bool,
}

/// The top line of every screen but the bench, which has its own.
#[component]
fn TopBar(props: &TopBarProps) -> Html {
    let link = |route: Route, words: &'static str| {
        let of = |route: &Route| match route {
            Route::Faults { .. } => std::mem::discriminant(&Route::Handbook(None)),
            other => std::mem::discriminant(other),
        };
        let here = of(&route) == of(&props.route);
        html! { <a href={route.href()} aria-current={here.then_some("page")}>{ words }</a> }
    };
    html! {
        <header class="top-bar">
            <a class="top-bar__brand" href={Route::Jobs.href()}>{ say!("Tubwright") }</a>
            <nav class="top-bar__nav" aria-label={say!("Screens")}>
                if props.sits {
                    { link(Route::Sitting, say!("Assessment")) }
                } else {
                    { link(Route::Jobs, say!("Jobs")) }
                }
                { link(Route::Handbook(None), say!("Handbook")) }
                if !props.sits {
                    { link(Route::Desk(None), say!("Desk")) }
                    { link(Route::Me, say!("Me")) }
                }
                { link(Route::Settings, say!("Settings")) }
            </nav>
        </header>
    }
}
