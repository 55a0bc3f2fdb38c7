//! The desk before a draft is chosen: new, from a job that ships, from a file, or where one left off.

use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::draft::Draft;
use crate::app::desk::draft::blank;
use crate::app::desk::draft::key;
use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::file_kind::taken;
use crate::app::forgotten::Forgotten;
use crate::app::forgotten::use_forgotten;
use crate::app::format;
use crate::app::hooks::go_to;
use crate::app::open_files::OpenFiles;
use crate::app::route::Route;
use crate::app::told_files::Told;
use crate::app::told_files::ToldFiles;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::FileError;
use crate::scenario::job_file::JobFile;

/// The screen.
#[component]
pub fn DeskHome() -> Html {
    let drafts = use_state(Vec::<Draft>::new);
    let told = use_state(Told::default);
    let refresh = {
        let drafts = drafts.clone();
        Callback::from(move |()| {
            let drafts = drafts.clone();
            spawn_local(async move { drafts.set(Draft::all().await) });
        })
    };
    {
        let refresh = refresh.clone();
        use_effect_with((), move |()| refresh.emit(()));
    }
    let begin = {
        let told = told.clone();
        Callback::from(move |job: JobFile| {
            let told = told.clone();
            spawn_local(async move {
                let draft = Draft::of(job);
                match draft.keep().await {
                    Ok(()) => go_to(&Route::Desk(Some(draft.id))),
                    Err(error) => told.set(Told {
                        wrong: vec![error.to_string()],
                        ..Told::default()
                    }),
                }
            });
        })
    };
    let from_shipped = {
        let begin = begin.clone();
        Callback::from(move |event: Event| {
            let id = event.target_unchecked_into::<HtmlSelectElement>().value();
            let ships = scenario::job_files()
                .ok()
                .and_then(|jobs| jobs.iter().find(|job| job.id == id));
            if let Some(ships) = ships {
                begin.emit(ships.file.clone());
            }
        })
    };
    let on_files = {
        let (told, refresh) = (told.clone(), refresh.clone());
        Callback::from(move |files: Vec<OpenedFile>| {
            let (told, refresh) = (told.clone(), refresh.clone());
            spawn_local(async move {
                told.set(take(files).await);
                refresh.emit(());
            });
        })
    };
    let forgotten = use_forgotten("forgotten-drafts", &refresh);
    let ships = scenario::job_files().unwrap_or_default();
    html! {
        <main class="page stack" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Desk") }</h1>
                <p class="page__lead">{ say!("Make a job of a story from the field: choose what is wrong, see how the machine then behaves, try it, and give it to a class as a link or a file.") }</p>
            </header>
            <div class="row">
                <button type="button" class="button button--main" onclick={begin.reform(|_: MouseEvent| blank())}>{ say!("Write a new job") }</button>
                <label class="field"><span class="field__label">{ say!("Or begin with one that ships") }</span>
                    <select onchange={from_shipped}>
                        <option value="" selected=true>{ say!("choose a job") }</option>
                        { for ships.iter().map(|job| html! { <option value={job.id}>{ worded(&job.file.title) }</option> }) }
                    </select>
                </label>
            </div>
            <p class="row">
                <a class="button" href={Route::MakeSet.href()}>{ say!("Make a training set") }</a>
                <a class="button" href={Route::MakeAssessment.href()}>{ say!("Make an assessment") }</a>
                <a class="button" href={Route::Cohort.href()}>{ say!("Review results") }</a>
            </p>
            <OpenFiles {on_files} what={say!("Job files and training sets to work on")} />
            <ToldFiles told={(*told).clone()} />
            { list(&drafts, &forgotten) }
            <p><a href={Route::Readings(None).href()}>{ say!("Readings and faults: what each reading tells apart") }</a></p>
        </main>
    }
}

fn list(drafts: &[Draft], forgotten: &Forgotten) -> Html {
    let name = |draft: &Draft| {
        let title = draft.job.title.trim();
        if title.is_empty() {
            say!("A job without a title").to_owned()
        } else {
            title.to_owned()
        }
    };
    let forget = |draft: &Draft| {
        let (forgotten, title, id) = (forgotten.clone(), name(draft), draft.id.clone());
        Callback::from(move |_: MouseEvent| forgotten.forget(title.clone(), vec![key(&id)]))
    };
    // Drafts may have one title: when they were last changed tells them apart.
    let changed = |draft: &Draft| {
        let moment = js_sys::Date::new(&draft.saved_ms.into());
        let here_min = draft.saved_ms / 60_000.0 - moment.get_timezone_offset();
        let (day, minute) = (here_min / 1440.0, here_min.rem_euclid(1440.0) as u32);
        let (day, hour) = (format::date(day), minute / 60);
        say!(
            "changed {when}",
            when = format!("{day} {hour:02}:{:02}", minute % 60)
        )
    };
    html! {
        <section class="stack" aria-labelledby="drafts">
            <h2 id="drafts">{ say!("Drafts") }</h2>
            { forgotten.rows() }
            if drafts.is_empty() { <p>{ say!("None yet. A draft is kept in this browser from its first letter on.") }</p> }
            <ul class="opened__list">
                { for drafts.iter().map(|draft| html! {
                    <li class="opened__job" key={draft.id.clone()}>
                        <a href={Route::Desk(Some(draft.id.clone())).href()}>{ name(draft) }</a>
                        <span class="opened__who">{ say!("machine {machine}, level {level}", machine = draft.job.machine, level = draft.job.level) }{ " · " }{ changed(draft) }</span>
                        <button type="button" class="button button--small" onclick={forget(draft)}
                                aria-label={say!("Forget the draft “{title}”", title = name(draft))}>{ say!("Forget") }</button>
                    </li>
                }) }
            </ul>
        </section>
    }
}

/// Every sound file becomes a draft, and every open job of a training set; a trainee's copy stays
/// shut. Every file is answered for.
async fn take(files: Vec<OpenedFile>) -> Told {
    let mut told = Told::default();
    let mut jobs = Vec::new();
    for file in files {
        match taken(&file, &[Kind::Job, Kind::Set]) {
            Err(untaken) => told.not_taken(untaken),
            Ok((kind, text)) => match read(&file.name, kind, text) {
                Err(error) => told.not_sound(&error),
                Ok(some) if some.is_empty() => told.passed.push(say!(
                    "{file}: this training set holds no open job: it names jobs that ship, or is a class’s copy.",
                    file = file.name
                )),
                Ok(some) => jobs.extend(some.into_iter().map(|job| (file.name.clone(), job))),
            },
        }
    }
    for (index, (file, job)) in jobs.into_iter().enumerate() {
        let mut draft = Draft::of(job);
        draft.id = format!("{}n{index}", draft.id);
        match draft.keep().await {
            Ok(()) => told.opened.push(say!(
                "{file}: “{title}” is a draft now.",
                file,
                title = draft.job.title
            )),
            Err(error) => told.wrong.push(format!("{file}: {error}")),
        }
    }
    told
}

/// The open jobs in a file.
fn read(name: &str, kind: Kind, text: &str) -> Result<Vec<JobFile>, FileError> {
    if kind == Kind::Set {
        let set = scenario::set_from_text(name, text)?;
        return Ok(set.files.into_values().collect());
    }
    let (machines, catalogue) = (scenario::machine_files()?, scenario::catalogue()?);
    Ok(vec![scenario::read_job(name, text, machines, catalogue)?])
}
