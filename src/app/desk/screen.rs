//! One draft on the desk: form at the left, the live side at the right, and a bar over both.

use serde_json::Value;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::desk::draft::Draft;
use crate::app::desk::field::unread_words;
use crate::app::desk::fields::JOB;
use crate::app::desk::form::Form;
use crate::app::desk::judged::use_judged;
use crate::app::desk::live::LiveSide;
use crate::app::desk::state::Desk;
use crate::app::desk::state::Edit;
use crate::app::desk::state::Unread;
use crate::app::desk::told::Told;
use crate::app::desk::told::Words;
use crate::app::desk::told::called;
use crate::app::hooks::focus_on;
use crate::app::hooks::go_to;
use crate::app::own;
use crate::app::replay::Replay;
use crate::app::replay::Replayed;
use crate::app::route::Route;
use crate::say;
use crate::scenario;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;
use crate::scenario::problem::Problem;

/// What stands beside an empty basket in jobs without a load, kg.
const EMPTY_KG: f64 = 0.3;

/// Which draft.
#[derive(Properties, PartialEq)]
pub struct DeskScreenProps {
    /// Its name.
    pub id: AttrValue,
}

/// The screen: finds the draft, then shows it.
#[component]
pub fn DeskScreen(props: &DeskScreenProps) -> Html {
    let draft = use_state(|| None::<Result<Option<Draft>, String>>);
    {
        let draft = draft.clone();
        use_effect_with(props.id.clone(), move |id| {
            let id = id.clone();
            spawn_local(async move {
                draft.set(Some(Draft::find(&id).await.map_err(|e| e.to_string())))
            });
        });
    }
    let words = match &*draft {
        Some(Ok(Some(draft))) => return html! { <Editor draft={draft.clone()} /> },
        Some(Ok(None)) => say!("There is no such draft in this browser."),
        Some(Err(why)) => why,
        None => say!("Opening the draft …"),
    };
    html! {
        <main class="page page--narrow" id="main" tabindex="-1">
            <h1>{ say!("Desk") }</h1>
            <p role="status">{ words }</p>
            <p><a href={Route::Desk(None).href()}>{ say!("To all drafts") }</a></p>
        </main>
    }
}

#[derive(Properties, PartialEq)]
struct EditorProps {
    draft: Draft,
}

#[component]
fn Editor(props: &EditorProps) -> Html {
    let first = props.draft.job.clone();
    let desk = use_reducer(move || Desk::of(first));
    let saved = use_state(|| say!("Kept in this browser").to_owned());
    let replayed = use_state(|| None::<Replayed>);
    let job = desk.history.now().clone();
    {
        let (draft, saved) = (props.draft.clone(), saved.clone());
        use_effect_with(job.clone(), move |job| {
            let draft = Draft {
                job: job.clone(),
                saved_ms: js_sys::Date::now(),
                ..draft
            };
            spawn_local(async move {
                let words = match draft.keep().await {
                    Ok(()) => say!("Kept in this browser").to_owned(),
                    Err(error) => error.to_string(),
                };
                saved.set(words);
            });
        });
    }
    let edit = {
        let desk = desk.dispatcher();
        use_callback((), move |change: Edit, ()| desk.dispatch(change))
    };
    let told = use_memo(
        (job.clone(), desk.refused.clone(), desk.unread.clone()),
        |(job, refused, unread)| told(job, refused.as_deref(), unread),
    );
    let judged = use_judged(told.is_empty().then_some(&job), &job.machine);
    let on_replay = {
        let replayed = replayed.clone();
        use_callback((), move |one: Replayed, ()| replayed.set(Some(one)))
    };
    if let Some(one) = &*replayed {
        let on_back = {
            let replayed = replayed.clone();
            Callback::from(move |()| replayed.set(None))
        };
        return html! { <Replay replayed={one.clone()} back={say!("Back to the desk")} {on_back} /> };
    }
    // The browser's own undoing knows nothing of the draft's steps and would write into its fields.
    let onkeydown = {
        let edit = edit.clone();
        Callback::from(move |event: KeyboardEvent| {
            if let Some(step) = step_of(&event) {
                event.prevent_default();
                edit.emit(step);
            }
        })
    };
    html! {
        <main class="page desk" id="main" tabindex="-1" {onkeydown}>
            <Bar title={job.title.clone()} saved={(*saved).clone()} can_undo={desk.history.can_undo()} can_redo={desk.history.can_redo()}
                 is_sound={told.is_empty()} draft={props.draft.id.clone()} job={job.clone()} edit={edit.clone()} />
            <ContextProvider<Unread> context={desk.unread.clone()}>
                <Form job={job.clone()} told={(*told).clone()} edit={edit.clone()} />
            </ContextProvider<Unread>>
            <LiveSide {job} told={(*told).clone()} {edit} {judged} {on_replay} />
        </main>
    }
}

/// Undo and redo by the keys everybody's fingers know.
fn step_of(event: &KeyboardEvent) -> Option<Edit> {
    if !(event.ctrl_key() || event.meta_key()) || event.alt_key() {
        return None;
    }
    match (event.key().to_lowercase().as_str(), event.shift_key()) {
        ("z", false) => Some(Edit::Undo),
        ("z", true) | ("y", false) => Some(Edit::Redo),
        _ => None,
    }
}

/// What is wrong with the job, in the words of the form.
fn told(job: &JobFile, refused: Option<&str>, unread: &Unread) -> Vec<Told> {
    let whole = edit::as_value(job);
    let words = Words {
        form: &JOB,
        whole: &whole,
        called: &|name| called(&job.machine, name),
    };
    let refused = refused.map(|path| {
        let words = say!("what was entered cannot stand here; what stood here before is kept");
        Problem::new("", path, "", words)
    });
    let unread = unread.0.iter().filter_map(|(path, text)| {
        let field = JOB.field_at(path)?;
        let value = edit::get(&whole, path).unwrap_or(&Value::Null);
        let remedy = unread_words(field.kind, value);
        Some(Problem::new("", path, text, &remedy))
    });
    let site = &job.site;
    let lopsided = (site.unbalance_kg > site.load_kg.max(EMPTY_KG)).then(|| {
        let words = say!("is more than `site.load_kg`");
        Problem::new("", "site.unbalance_kg", "", words)
    });
    let checked = scenario::job_of("draft", job).err();
    let checked = checked.into_iter().flat_map(|error| error.problems);
    let problems = refused
        .into_iter()
        .chain(unread)
        .chain(lopsided)
        .chain(checked);
    problems.map(|problem| words.told(&problem)).collect()
}

#[derive(Properties, PartialEq)]
struct BarProps {
    title: String,
    saved: String,
    can_undo: bool,
    can_redo: bool,
    is_sound: bool,
    draft: String,
    job: JobFile,
    edit: Callback<Edit>,
}

#[component]
fn Bar(props: &BarProps) -> Html {
    let told = use_state(String::new);
    let attempt = {
        let (job, told) = (props.job.clone(), told.clone());
        let draft = props.draft.clone();
        Callback::from(move |_: MouseEvent| {
            let (job, told) = (job.clone(), told.clone());
            let draft = draft.clone();
            spawn_local(async move {
                match own::keep_to_try(&job, &draft).await {
                    Ok(id) => go_to(&Route::Bench(id)),
                    Err(error) => told.set(error.to_string()),
                }
            });
        })
    };
    let title = if props.title.is_empty() {
        say!("A new job")
    } else {
        &props.title
    };
    html! {
        <header class="desk__bar desk__bar--stays">
            <h1>{ title }</h1>
            <span class="field__hint desk__saved" role="status">{ if told.is_empty() { &props.saved } else { &*told } }</span>
            <button type="button" class="button" disabled={!props.can_undo} onclick={props.edit.reform(|_: MouseEvent| Edit::Undo)}>{ say!("Undo") }</button>
            <button type="button" class="button" disabled={!props.can_redo} onclick={props.edit.reform(|_: MouseEvent| Edit::Redo)}>{ say!("Redo") }</button>
            <button type="button" class="button button--main" disabled={!props.is_sound} onclick={attempt}>{ say!("Try it") }</button>
            <button type="button" class="button" onclick={|_: MouseEvent| focus_on("share")}>{ say!("Share") }</button>
            <a class="button button--quiet" href={Route::Desk(None).href()}>{ say!("All drafts") }</a>
        </header>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_washing_on_one_side_than_there_is_is_told_by_both_fields() {
        let mut job = scenario::job_files().expect("sound")[0].file.clone();
        let lines = |job: &JobFile| -> Vec<String> {
            let all = told(job, None, &Unread::default());
            all.iter().map(Told::line).collect()
        };
        (job.site.load_kg, job.site.unbalance_kg) = (3.0, 4.0);
        let both = "Of it on one side: is more than “Dry washing in the basket”";
        assert_eq!(lines(&job), [both]);
        // An empty basket is off by what it always is.
        (job.site.load_kg, job.site.unbalance_kg) = (0.0, 0.3);
        assert_eq!(lines(&job), Vec::<String>::new());
    }
}
