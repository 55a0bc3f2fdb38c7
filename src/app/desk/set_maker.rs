//! Making a training set: which jobs, in which order, and the file that a class is given.

use serde_json::json;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::draft::Draft;
use crate::app::desk::field::FieldRow;
use crate::app::desk::form_table::Field;
use crate::app::desk::set_draft::Chosen;
use crate::app::desk::set_draft::SET;
use crate::app::desk::set_draft::SetDraft;
use crate::app::desk::share::data_address;
use crate::app::desk::share::file_stem;
use crate::app::desk::state::Edit;
use crate::app::route::Route;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::set_file::SetFile;
use crate::scenario::share;
use crate::scenario::write;

/// A draft in the list of jobs to add begins with this.
const DRAFT: &str = "draft:";

/// The screen.
#[component]
pub fn SetMaker() -> Html {
    let set = use_state(|| None::<SetDraft>);
    let drafts = use_state(Vec::<Draft>::new);
    let saved = use_state(|| say!("Kept in this browser").to_owned());
    {
        let (set, drafts) = (set.clone(), drafts.clone());
        use_effect_with((), move |()| {
            spawn_local(async move {
                drafts.set(Draft::all().await);
                set.set(Some(SetDraft::find().await));
            });
        });
    }
    let change = {
        let (set, saved) = (set.setter(), saved.setter());
        use_callback((), move |next: SetDraft, ()| {
            let saved = saved.clone();
            set.set(Some(next.clone()));
            spawn_local(async move {
                saved.set(match next.keep().await {
                    Ok(()) => say!("Kept in this browser").to_owned(),
                    Err(error) => error.to_string(),
                });
            });
        })
    };
    let Some(set) = (*set).clone() else {
        return html! { <main class="page page--narrow" id="main" tabindex="-1"><h1>{ say!("Training set") }</h1></main> };
    };
    html! {
        <main class="page page--narrow stack" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Make a training set") }</h1>
                <p class="page__lead">{ say!("Jobs in the order in which a class works them. The next one opens when the one before is mastered.") }</p>
                <p class="field__hint" role="status">{ (*saved).clone() }</p>
            </header>
            { about(&set, &change) }
            { jobs(&set, &drafts, &change) }
            <section class="card stack" aria-labelledby="give">
                <h2 class="card__title" id="give">{ say!("Give it to a class") }</h2>
                if set == SetDraft::default() {
                    <p>{ say!("Give the set a title and add its jobs; its files are made here as soon as they are sound.") }</p>
                } else {
                    { give(&set.file(&drafts)) }
                }
            </section>
            <p class="row">
                <button type="button" class="button" onclick={change.reform(|_: MouseEvent| SetDraft::default())}>{ say!("Begin anew") }</button>
                <a class="button button--quiet" href={Route::Desk(None).href()}>{ say!("To the desk") }</a>
            </p>
        </main>
    }
}

fn about(set: &SetDraft, change: &Callback<SetDraft>) -> Html {
    let edit = {
        let (set, change) = (set.clone(), change.clone());
        Callback::from(move |edit: Edit| {
            let Edit::Set(path, value) = edit else { return };
            let mut next = set.clone();
            let text = || value.as_str().unwrap_or_default().to_owned();
            match path.as_str() {
                "title" => next.title = text(),
                "about" => next.about = text(),
                _ => next.mastered_at_marks = value.as_f64().unwrap_or_default(),
            }
            change.emit(next);
        })
    };
    let row = |field: &Field| {
        let value = match field.path {
            "title" => json!(set.title),
            "about" => json!(set.about),
            _ => json!(set.mastered_at_marks),
        };
        html! { <FieldRow path={field.path} label={field.label()} kind={field.kind} hint={field.hint()} {value} edit={edit.clone()} /> }
    };
    html! {
        { for SET.sections.iter().map(|section| html! {
            <section class="card stack" aria-label={said(section.title)}>{ for section.fields.iter().map(row) }</section>
        }) }
    }
}

fn jobs(set: &SetDraft, drafts: &[Draft], change: &Callback<SetDraft>) -> Html {
    let add = {
        let (set, change) = (set.clone(), change.clone());
        Callback::from(move |event: Event| {
            let select = event.target_unchecked_into::<HtmlSelectElement>();
            let value = select.value();
            select.set_value("");
            let job = match value.strip_prefix(DRAFT) {
                Some(id) => Chosen {
                    id: id.to_owned(),
                    is_draft: true,
                },
                None => Chosen {
                    id: value,
                    is_draft: false,
                },
            };
            let mut next = set.clone();
            next.jobs.push(job);
            change.emit(next);
        })
    };
    let is_in = |id: &str| set.jobs.iter().any(|job| job.id == id);
    let option = |value: String, title: &str| html! { <option {value}>{ title }</option> };
    let shipped = scenario::job_files().unwrap_or_default();
    let level = |level: u8| {
        let of = shipped.iter();
        let of = of.filter(move |job| job.file.level == level && !is_in(job.id));
        html! {
            <optgroup label={say!("Level {level}", level)}>
                { for of.map(|job| option(job.id.to_owned(), &worded(&job.file.title))) }
            </optgroup>
        }
    };
    let own = drafts.iter().filter(|draft| !is_in(&draft.id));
    html! {
        <section class="card stack" aria-labelledby="set-jobs">
            <h2 class="card__title" id="set-jobs">{ say!("Jobs: {n}", n = set.jobs.len()) }</h2>
            <ol class="opened__list">{ for set.jobs.iter().enumerate().map(|(index, job)| row(set, index, job, drafts, change)) }</ol>
            <label class="field"><span class="field__label">{ say!("Add a job") }</span>
                <select onchange={add}>
                    <option value="" selected=true>{ say!("choose a job") }</option>
                    <optgroup label={say!("Your drafts")}>
                        { for own.map(|draft| option(format!("{DRAFT}{}", draft.id), &draft.job.title)) }
                    </optgroup>
                    { for (1..=5).map(level) }
                </select>
            </label>
        </section>
    }
}

fn row(
    set: &SetDraft,
    index: usize,
    job: &Chosen,
    drafts: &[Draft],
    change: &Callback<SetDraft>,
) -> Html {
    let title = SetDraft::title_of(job, drafts)
        .unwrap_or_else(|| say!("A draft that is no longer here").to_owned());
    let to = |next: SetDraft| change.reform(move |_: MouseEvent| next.clone());
    let without = {
        let mut next = set.clone();
        next.jobs.remove(index);
        next
    };
    let line = if job.is_draft {
        say!("{n}. {title} (draft)", n = index + 1, title)
    } else {
        format!("{}. {title}", index + 1)
    };
    html! {
        <li class="opened__job" key={job.id.clone()}>
            <span class="opened__title">{ line }</span>
            <button type="button" class="button button--small" disabled={index == 0} onclick={to(set.moved(index, true))}
                aria-label={say!("Earlier: {title}", title)}>{ say!("Earlier") }</button>
            <button type="button" class="button button--small" disabled={index + 1 == set.jobs.len()} onclick={to(set.moved(index, false))}
                aria-label={say!("Later: {title}", title)}>{ say!("Later") }</button>
            <button type="button" class="button button--small" onclick={to(without)} aria-label={say!("Take out: {name}", name = title)}>{ say!("Take out") }</button>
        </li>
    }
}

fn give(file: &Result<SetFile, Vec<String>>) -> Html {
    match file {
        Err(told) => html! {
            <div role="status"><ul class="fairness desk__list">
                { for told.iter().map(|why| html! { <li class="fairness__line fairness__line--unfair">{ why }</li> }) }
            </ul></div>
        },
        Ok(set) => {
            let stem = file_stem(&set.title);
            let text = |set: &SetFile| data_address(&write::write(set).unwrap_or_default());
            html! {
                <>
                    <p>{ say!("A class opens the file on its list of jobs. In the file for trainees, jobs of your own are covered, so that nobody reads what is wrong in passing; jobs that ship are named only.") }</p>
                    <p class="row">
                        <a class="button button--main" download={format!("{stem}_set_trainee.json")} href={text(&share::covered(set))}>{ say!("Set for trainees") }</a>
                        <a class="button" download={format!("{stem}_set.json")} href={text(set)}>{ say!("Set with the answers") }</a>
                    </p>
                </>
            }
        }
    }
}
