//! Opening files: chosen, a whole folder at once, or dropped on the page. Texts go to whoever
//! asked; nothing in them is trusted here.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_futures::spawn_local;
use web_sys::File;
use web_sys::FileList;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Files taken at once.
const MOST_FILES: usize = 500;
/// Largest file read unless another bound is given, bytes.
const MOST_BYTES: f64 = 4_000_000.0;

/// A file as it was given.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenedFile {
    /// Its name.
    pub name: String,
    /// Its text, or why there is none.
    pub text: Result<String, String>,
}

/// Who gets the files.
#[derive(Properties, PartialEq)]
pub struct OpenFilesProps {
    /// Called once with all of them.
    pub on_files: Callback<Vec<OpenedFile>>,
    /// What can be opened, such as "Job files and trainee's copies".
    pub what: AttrValue,
    /// Largest file read, bytes.
    #[prop_or(MOST_BYTES)]
    pub most_bytes: f64,
}

/// Two buttons and a place to drop files.
#[component]
pub fn OpenFiles(props: &OpenFilesProps) -> Html {
    let over = use_state(|| false);
    let most_bytes = props.most_bytes;
    let onchange = props.on_files.reform_files(most_bytes);
    let ondragover = {
        let over = over.clone();
        Callback::from(move |event: DragEvent| {
            event.prevent_default();
            over.set(true);
        })
    };
    let ondragleave = {
        let over = over.clone();
        Callback::from(move |_: DragEvent| over.set(false))
    };
    let ondrop = {
        let (over, on_files) = (over.clone(), props.on_files.clone());
        Callback::from(move |event: DragEvent| {
            event.prevent_default();
            over.set(false);
            give(
                event.data_transfer().and_then(|data| data.files()),
                on_files.clone(),
                most_bytes,
            );
        })
    };
    html! {
        <div class={classes!("drop", over.then_some("drop--over"))} {ondragover} {ondragleave} {ondrop}>
            <span class="drop__words">{ format!("{}: drop them here, or", props.what) }</span>
            <label class="button drop__key">{ "Open files" }
                <input class="visually-hidden" type="file" multiple=true accept=".json,application/json" onchange={onchange.clone()} />
            </label>
            <label class="button drop__key">{ "Open a folder" }
                <input class="visually-hidden" type="file" multiple=true webkitdirectory=true {onchange} />
            </label>
        </div>
    }
}

/// A callback of files as a callback of an input's change.
trait Reform {
    fn reform_files(&self, most_bytes: f64) -> Callback<Event>;
}

impl Reform for Callback<Vec<OpenedFile>> {
    fn reform_files(&self, most_bytes: f64) -> Callback<Event> {
        let on_files = self.clone();
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            give(input.files(), on_files.clone(), most_bytes);
            // The same file can be chosen again.
            input.set_value("");
        })
    }
}

fn give(list: Option<FileList>, to: Callback<Vec<OpenedFile>>, most_bytes: f64) {
    // Taken out now: the browser empties the list once this returns.
    let files: Vec<File> = list
        .iter()
        .flat_map(|list| (0..list.length()).filter_map(|index| list.get(index)))
        .filter(|file| file.name().to_lowercase().ends_with(".json"))
        .take(MOST_FILES)
        .collect();
    spawn_local(async move {
        let mut opened = Vec::new();
        for file in files {
            opened.push(OpenedFile {
                name: file.name(),
                text: text_of(&file, most_bytes).await,
            });
        }
        to.emit(opened);
    });
}

async fn text_of(file: &File, most_bytes: f64) -> Result<String, String> {
    if file.size() > most_bytes {
        return Err("this file is larger than any that is meant here".to_owned());
    }
    let text = JsFuture::from(file.unchecked_ref::<web_sys::Blob>().text()).await;
    text.ok()
        .and_then(|text| text.as_string())
        .ok_or_else(|| "the browser could not read this file".to_owned())
}
