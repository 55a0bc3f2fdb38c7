//! Opening files: chosen, a whole folder at once, or dropped anywhere on the page. Texts go to whoever
//! asked; nothing in them is trusted here.

use gloo::events::EventListener;
use gloo::events::EventListenerOptions;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::file_kind::OpenedFile;
use crate::app::given_files;
use crate::app::given_files::Given;
use crate::say;

/// Largest file read unless another bound is given, bytes.
const MOST_BYTES: f64 = 4_000_000.0;

/// Who gets the files.
#[derive(Properties, PartialEq)]
pub struct OpenFilesProps {
    /// Called once with all of them, at least one.
    pub on_files: Callback<Vec<OpenedFile>>,
    /// What can be opened, such as "Job files and trainee's copies".
    pub what: AttrValue,
    /// Largest file read, bytes.
    #[prop_or(MOST_BYTES)]
    pub most_bytes: f64,
}

/// Two buttons and a place to drop files; what is dropped beside it is taken, too, so that the browser
/// does not leave the page for a file.
#[component]
pub fn OpenFiles(props: &OpenFilesProps) -> Html {
    let over = use_state_eq(|| false);
    let give = {
        let (on_files, most_bytes) = (props.on_files.clone(), props.most_bytes);
        Callback::from(move |given: Vec<Given>| {
            let on_files = on_files.clone();
            spawn_local(async move {
                on_files.emit(given_files::read(given, most_bytes).await);
            });
        })
    };
    let latest = use_mut_ref(|| give.clone());
    *latest.borrow_mut() = give.clone();
    {
        let over = over.setter();
        use_effect_with((), move |()| {
            let listeners = ["dragover", "dragleave", "drop"].map(|name| {
                let (over, latest) = (over.clone(), latest.clone());
                let heard = move |event: &DragEvent| match name {
                    "dragover" => over.set(true),
                    "dragleave" => over.set(event.related_target().is_some()),
                    _ => {
                        over.set(false);
                        let give = latest.borrow().clone();
                        give.emit(given_files::dropped(event.data_transfer()));
                    }
                };
                on_files_dragged(name, heard)
            });
            move || drop(listeners)
        });
    }
    let onchange = Callback::from(move |event: Event| {
        let input = event.target_unchecked_into::<HtmlInputElement>();
        give.emit(given_files::chosen(input.files()));
        // The same file can be chosen again.
        input.set_value("");
    });
    html! {
        <div class={classes!("drop", over.then_some("drop--over"))}>
            <span class="drop__words">{ say!("{what}: drop onto this page, or", what = props.what) }</span>
            <label class="button drop__key">{ say!("Open files") }
                <input class="visually-hidden" type="file" multiple=true accept=".json,.zip,application/json,application/zip" onchange={onchange.clone()} />
            </label>
            <label class="button drop__key">{ say!("Open a folder") }
                <input class="visually-hidden" type="file" multiple=true webkitdirectory=true {onchange} />
            </label>
        </div>
    }
}

/// Hears of files dragged over the page; text that is dragged into a field is the browser's own.
fn on_files_dragged(name: &'static str, heard: impl Fn(&DragEvent) + 'static) -> EventListener {
    let document = gloo::utils::document();
    let options = EventListenerOptions::enable_prevent_default();
    EventListener::new_with_options(&document, name, options, move |event| {
        let Some(event) = event.dyn_ref::<DragEvent>() else {
            return;
        };
        let types = event.data_transfer().map(|transfer| transfer.types());
        let files = JsValue::from_str("Files");
        if types.is_some_and(|types| types.includes(&files, 0)) {
            event.prevent_default();
            heard(event);
        }
    })
}
