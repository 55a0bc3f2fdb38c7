//! The screens: the only part that knows a browser.
//!
//! The page holds one element with the id `app`; everything a person sees is drawn into it.
//! Components get plain view models and give orders; effects live in `hooks` and `job_host`.

mod asking;
mod assessments;
mod bench;
mod cohort;
mod crash;
mod debrief;
mod desk;
mod faults;
mod file_kind;
mod finding;
mod forgotten;
mod format;
mod frames;
mod given_files;
mod hand_over;
mod handbook;
mod hooks;
mod job_filter;
mod job_host;
mod job_tile;
mod jobs;
mod keeping;
mod kept_sets;
mod languages;
mod library;
mod loading;
mod lost_points;
mod markdown;
mod me;
mod net;
mod newer;
mod open_files;
mod open_job;
mod opened;
mod outbox;
mod own;
mod painter;
mod phrase;
mod proves;
mod readings;
mod replay;
mod report;
mod route;
mod rows;
mod session;
mod settings;
mod shared;
mod sheets;
mod shell;
mod sitting;
mod sound;
mod store;
mod suspects;
mod told_files;
mod training_set;
mod training_system;
mod view;
mod waiting;
mod worker;

#[cfg(all(test, not(target_arch = "wasm32")))]
mod as_text;
#[cfg(all(any(test, fuzzing), not(target_arch = "wasm32")))]
pub mod foreign;

/// Draws the first screen in place of the page's "Opening the workshop"; in a thread of the page,
/// takes questions instead.
pub fn start() {
    if web_sys::window().is_none() {
        worker::serve();
        return;
    }
    crash::watch();
    let root = gloo::utils::document().get_element_by_id("app");
    let Some(root) = root else {
        return;
    };
    wasm_bindgen_futures::spawn_local(async move {
        let settings = settings::kept().await;
        languages::begin(settings.language.as_deref()).await;
        library::read_ahead().await;
        // What stands there until now is the page's own text.
        root.set_inner_html("");
        let props = shell::AppProps { settings };
        yew::Renderer::<shell::App>::with_root_and_props(root, props).render();
    });
}
