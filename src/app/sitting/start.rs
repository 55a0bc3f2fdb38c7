//! The way into an assessment: by file, by link or by a course package; its rules; who sits it.

use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::file_kind::taken;
use crate::app::format;
use crate::app::hooks::go_to;
use crate::app::net;
use crate::app::open_files::OpenFiles;
use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::sitting::form::Filled;
use crate::app::sitting::form::Form;
use crate::app::sitting::jobs;
use crate::app::sitting::running;
use crate::app::sitting::state::Sitting;
use crate::app::sitting::watch;
use crate::app::store::Store;
use crate::app::training_system;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::decide;
use crate::assess::letters;
use crate::assess::retention::months_in_words;
use crate::language::worded;
use crate::records::check::ENGINE;
use crate::records::record::Person;
use crate::records::seal::Hash;
use crate::records::sitting::Assessment;
use crate::say;
use crate::scenario::Problem;

/// Where the assessment comes from.
#[derive(Properties, PartialEq)]
pub struct AssessmentProps {
    /// Name of one that lies beside the page, as in a course package.
    #[prop_or_default]
    pub id: Option<AttrValue>,
    /// One in the letters of a link.
    #[prop_or_default]
    pub letters: Option<AttrValue>,
}

/// One that can be begun.
#[derive(PartialEq)]
struct Offered {
    text: String,
    file: AssessmentFile,
}

/// The screen.
#[component]
pub fn AssessmentScreen(props: &AssessmentProps) -> Html {
    let offered = use_state(|| None::<Shared<Offered>>);
    let told = use_state(Vec::<String>::new);
    let take = {
        let (offered, told) = (offered.clone(), told.clone());
        Callback::from(
            move |(name, text): (String, String)| match read(&name, text) {
                Ok(one) => {
                    told.set(Vec::new());
                    offered.set(Some(Shared::new(one)));
                }
                Err(problems) => told.set(problems),
            },
        )
    };
    {
        let (take, told) = (take.clone(), told.clone());
        use_effect_with(
            (props.id.clone(), props.letters.clone()),
            move |(id, letters)| {
                if let Some(letters) = letters {
                    match letters::from_letters(letters) {
                    Some(text) => take.emit((say!("link").to_owned(), text)),
                    None => told.set(vec![say!("The letters were cut or changed on the way: copy the whole address again.").to_owned()]),
                }
                } else if let Some(id) = id.clone() {
                    spawn_local(async move {
                        match net::text_of(&format!("assessments/{id}.json")).await {
                            Some(text) => take.emit((format!("{id}.json"), text)),
                            None => told.set(vec![say!(
                                "There is no assessment “{id}” beside this page: open its file.",
                                id
                            )]),
                        }
                    });
                }
            },
        );
    }
    let on_files = {
        let (offered, told) = (offered.clone(), told.clone());
        Callback::from(move |files: Vec<OpenedFile>| {
            let (one, lines) = sorted(&files);
            told.set(lines);
            if let Some(one) = one {
                offered.set(Some(Shared::new(one)));
            }
        })
    };
    html! {
        <main class="page page--narrow assessment" id="main" tabindex="-1">
            { training_system::notice("alert") }
            if let Some(offered) = &*offered {
                <Offer key={offered.file.id.clone()} offered={offered.clone()} />
            } else {
                <header class="page__head">
                    <h1>{ say!("Sit an assessment") }</h1>
                    <p class="page__lead">{ say!("Open the file or the link that your instructor gave you.") }</p>
                </header>
                <OpenFiles {on_files} what={say!("The assessment’s file")} />
            }
            <div role="alert"><ul class="opened__told">{ for told.iter().map(|line| html! { <li>{ line }</li> }) }</ul></div>
        </main>
    }
}

/// The first assessment among files, and a sentence for each of the others.
fn sorted(files: &[OpenedFile]) -> (Option<Offered>, Vec<String>) {
    let (mut first, mut lines) = (None, Vec::new());
    for file in files {
        match taken(file, &[Kind::Assessment]) {
            Err(untaken) => lines.push(untaken.words()),
            Ok(_) if first.is_some() => lines.push(say!(
                "{name} is an assessment, too: one is sat at a time.",
                name = file.name
            )),
            Ok((_, text)) => match read(&file.name, text.to_owned()) {
                Ok(one) => first = Some(one),
                Err(problems) => lines.extend(problems),
            },
        }
    }
    (first, lines)
}

fn read(name: &str, text: String) -> Result<Offered, Vec<String>> {
    let read = jobs::assessment(name, &text);
    read.map(|read| Offered {
        text,
        file: read.file,
    })
    .map_err(|error| error.problems.iter().map(Problem::to_string).collect())
}

#[derive(Properties, PartialEq)]
struct OfferProps {
    offered: Shared<Offered>,
}

/// The rules and the form.
#[component]
fn Offer(props: &OfferProps) -> Html {
    let launched = training_system::learner();
    let form = use_state_eq(|| Form {
        candidate: launched.clone().unwrap_or_default(),
        ..Form::default()
    });
    let asked = use_state_eq(|| false);
    let trouble = use_state_eq(String::new);
    let wrong = form.read().err().filter(|_| *asked).unwrap_or_default();
    let begin = {
        let (form, asked, trouble, offered) = (
            form.clone(),
            asked.clone(),
            trouble.clone(),
            props.offered.clone(),
        );
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            asked.set(true);
            let (Ok(filled), Ok(assessment)) =
                (form.read(), jobs::assessment("assessment", &offered.text))
            else {
                return;
            };
            let (text, trouble) = (offered.text.clone(), trouble.clone());
            spawn_local(async move {
                if let Err(error) = begin(text, filled, assessment).await {
                    trouble.set(error);
                }
            });
        })
    };
    let field = |name: &'static str,
                 label: &'static str,
                 hint: &'static str,
                 value: &str,
                 set: fn(&mut Form, String)| {
        let form = form.clone();
        let oninput = Callback::from(move |event: InputEvent| {
            let mut next = (*form).clone();
            set(
                &mut next,
                event.target_unchecked_into::<HtmlInputElement>().value(),
            );
            form.set(next);
        });
        let error = wrong.get(name).cloned();
        html! {
            <div class="field">
                <label class="field__label" for={name}>{ label }</label>
                <input id={name} type="text" value={value.to_owned()} {oninput} autocomplete="off" spellcheck="false" readonly={name == "candidate" && launched.is_some()}
                    aria-invalid={error.is_some().to_string()} aria-describedby={format!("{name}-hint")} />
                <span class="field__hint" id={format!("{name}-hint")}>
                    if let Some(error) = error { <b class="field__error">{ error }</b> } else { { hint } }
                </span>
            </div>
        }
    };
    let agree = {
        let form = form.clone();
        Callback::from(move |_: Event| {
            form.set(Form {
                agreed: !form.agreed,
                ..(*form).clone()
            })
        })
    };
    let file = &props.offered.file;
    html! {
        <>
            <header class="page__head">
                <h1>{ worded(&file.title).into_owned() }</h1>
                <p class="page__lead">{ lead(file) }</p>
            </header>
            <section aria-labelledby="rules"><h2 id="rules">{ say!("The rules") }</h2>
                <ul>{ for rules(file).into_iter().map(|line| html! { <li>{ line }</li> }) }</ul>
            </section>
            <section aria-labelledby="checks"><h2 id="checks">{ say!("This computer") }</h2><Checks /></section>
            <form class="stack" onsubmit={begin} aria-labelledby="who" novalidate=true>
                <h2 id="who">{ say!("Who sits it") }</h2>
                { field("candidate", say!("Your number"), say!("As on your slip. A number is enough; no name is needed."), &form.candidate, |f, to| f.candidate = to) }
                { field("name", say!("Your name"), say!("May stay empty. It can be struck out of the result later."), &form.name, |f, to| f.name = to) }
                <details class="stack" open={launched.is_none() || !form.code.is_empty()}>
                <summary>{ if launched.is_some() { say!("You have a slip with a start code") } else { say!("From your slip") } }</summary>
                { field("code", say!("Start code"), say!("Sixteen characters on your slip. Without it this is practice, and the result says so."), &form.code, |f, to| f.code = to) }
                { field("check", say!("The four letters beside it"), say!("They find a misread code."), &form.check, |f, to| f.check = to) }
                { field("release", say!("Word for today"), say!("Your instructor tells it when all begin."), &form.release, |f, to| f.release = to) }
                </details>
                <div>
                    <label class="choice"><input type="checkbox" checked={form.agreed} onchange={agree} />
                        <span>{ if launched.is_some() {
                            say!("I know what is recorded: everything I do at the bench with its time, and when this page is left. It goes to the training system, and stays in this browser until it is erased.")
                        } else {
                            say!("I know what is recorded: everything I do at the bench with its time, and when this page is left. It stays in this browser until I hand the file over or erase it.")
                        } }</span></label>
                    if let Some(error) = wrong.get("agreed") { <p class="field__error">{ error }</p> }
                </div>
                <p class="row">
                    <button type="submit" class="button button--main">{ if form.is_sealed() || launched.is_some() { say!("Begin: the clock starts") } else { say!("Begin as practice") } }</button>
                    <span role="status">{ (*trouble).clone() }</span>
                </p>
            </form>
        </>
    }
}

/// How many jobs, in how much time.
fn lead(file: &AssessmentFile) -> String {
    let minutes = format!("{:.0}", file.time_limit_min);
    let n = file.n_jobs();
    if n == 1 {
        say!("One job, {minutes} minutes for all of them.", minutes)
    } else {
        say!("{n} jobs, {minutes} minutes for all of them.", n, minutes)
    }
}

/// The rules in sentences.
pub fn rules(file: &AssessmentFile) -> Vec<String> {
    let aids = [
        (say!("the data sheet"), file.aids.data_sheet),
        (say!("the wiring diagram"), file.aids.wiring),
        (say!("the handbook"), file.aids.handbook),
    ];
    let yes: Vec<String> = aids
        .iter()
        .filter(|a| a.1)
        .map(|a| a.0.to_owned())
        .collect();
    let (cut, _) = decide::cut(&file.pass.cut);
    let mut lines = vec![
        say!("The jobs are drawn for you: others get other jobs of the same kinds. There are no hints, and nothing is said about right or wrong before you hand in.").to_owned(),
        if yes.is_empty() { say!("No aids: neither data sheet nor wiring diagram nor handbook.").to_owned() } else { say!("You may use {aids}.", aids = format::listed(&yes)) },
        if file.aids.pause { say!("The clock can be stopped between jobs.").to_owned() } else { say!("The clock does not stop once it has started.").to_owned() },
        say!("Leaving the page is noted. After a reload you go on where you were.").to_owned(),
        say!("To pass: {cut} of 100 marks on average. Within {border} marks of that, more jobs decide.", cut = format!("{cut:.0}"), border = format!("{:.0}", file.pass.border)),
    ];
    if file.room_pause.is_some() {
        lines.push(say!("Your instructor can stop the clock for the whole room, by a code that is read out and noted in the result.").to_owned());
    }
    lines.extend(kept_for(file));
    if file.pass.no_critical {
        lines.push(say!("A critical safety rule broken is not made up for by marks.").to_owned());
    }
    if file.pass.fixed_share > 0.0 {
        lines.push(say!(
            "{n} % of the machines must be put right, or rightly made safe and left.",
            n = format!("{:.0}", 100.0 * file.pass.fixed_share)
        ));
    }
    for (part, least) in &file.pass.parts {
        lines.push(say!(
            "Of the marks for {part}, at least {n} % on average.",
            part = worded(part),
            n = format!("{:.0}", 100.0 * least)
        ));
    }
    lines
}

/// How long results are kept, where the assessment says so.
pub fn kept_for(file: &AssessmentFile) -> Option<String> {
    file.erase_after_months.map(|months| {
        say!(
            "Whoever keeps the results is to erase them {months} after the day they began.",
            months = months_in_words(months)
        )
    })
}

async fn begin(text: String, filled: Filled, assessment: Assessment) -> Result<(), String> {
    if running::is_running() {
        return Err(
            say!("An assessment is running in this browser already: hand it in first.").to_owned(),
        );
    }
    let mut sitting = Sitting::new(text, filled.candidate, ENGINE, js_sys::Date::now());
    // A browser without chance is from another age; the moment is still better than nothing.
    let salt = || Hash::of("tubwright salt 1", &[&js_sys::Date::now().to_le_bytes()]);
    sitting.person = filled.name.map(|name| Person {
        name,
        salt: net::random().unwrap_or_else(salt),
    });
    sitting.learner = training_system::learner();
    sitting.release = filled.release;
    sitting.code = filled.code;
    sitting.extra_min = filled.extra_min;
    let kept = watch::begin(sitting, Rc::new(assessment)).await;
    training_system::begun();
    go_to(&Route::Sitting);
    kept.map_err(|error| error.to_string())
}

/// What the computer can do, looked at before the start.
#[component]
fn Checks() -> Html {
    let kept = use_state_eq(|| None::<bool>);
    {
        let kept = kept.clone();
        use_effect_with((), move |()| {
            spawn_local(async move {
                let store = Store::open().await;
                let is_kept =
                    !matches!(store, Store::Memory(_)) && store.put("check", "1").await.is_ok();
                // What cannot be removed is one digit.
                let _ = store.remove("check").await;
                kept.set(Some(is_kept));
            });
        });
    }
    let line = |state: Option<bool>, yes: &'static str, no: &'static str| {
        let (class, mark, words) = match state {
            Some(true) => (
                "assessment__check assessment__check--ok",
                say!("in order:"),
                yes,
            ),
            Some(false) => (
                "assessment__check assessment__check--missing",
                say!("mind:"),
                no,
            ),
            None => ("assessment__check", "", say!("looking …")),
        };
        html! { <li {class}><span class="visually-hidden">{ mark }</span>{ " " }{ words }</li> }
    };
    html! {
        <div role="status"><ul class="opened__told">
            { line(*kept, say!("What you do is kept after every act, also if the page is closed."), say!("This browser keeps nothing: a reload would lose everything. Ask for another one before you begin.")) }
            { line(Some(true), say!("Mouse, finger or keyboard alone: all of it can be worked with any of them. Sounds are captioned."), "") }
        </ul></div>
    }
}
