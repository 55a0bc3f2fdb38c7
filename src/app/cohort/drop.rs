//! Where results are dropped or chosen: files, folders, archives, in any number.

use crate::say;
use web_sys::File;
use web_sys::FileList;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Who gets the files.
#[derive(Properties, PartialEq)]
pub struct DropProps {
    /// Called once with all of them.
    pub on_files: Callback<Vec<File>>,
}

/// Two buttons and a place to drop.
#[component]
pub fn Drop(props: &DropProps) -> Html {
    let over = use_state_eq(|| false);
    let onchange = {
        let on_files = props.on_files.clone();
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            on_files.emit(listed(input.files()));
            // The same file can be chosen again.
            input.set_value("");
        })
    };
    let hover = |is_over: bool| {
        let over = over.clone();
        Callback::from(move |event: DragEvent| {
            event.prevent_default();
            over.set(is_over);
        })
    };
    let ondrop = {
        let (over, on_files) = (over.clone(), props.on_files.clone());
        Callback::from(move |event: DragEvent| {
            event.prevent_default();
            over.set(false);
            on_files.emit(listed(event.data_transfer().and_then(|data| data.files())));
        })
    };
    html! {
        <div class={classes!("drop", "no-print", over.then_some("drop--over"))} ondragover={hover(true)} ondragleave={hover(false)} {ondrop}>
            <span class="drop__words">{ say!("Results, their assessment and its key: drop them here, or") }</span>
            <label class="button drop__key">{ say!("Open files") }
                <input class="visually-hidden" type="file" multiple=true accept=".json,.jsonl,.key,.zip" onchange={onchange.clone()} /></label>
            <label class="button drop__key">{ say!("Open a folder") }
                <input class="visually-hidden" type="file" multiple=true webkitdirectory=true {onchange} /></label>
        </div>
    }
}

/// Taken out now: the browser empties the list once the event is over.
fn listed(list: Option<FileList>) -> Vec<File> {
    list.iter()
        .flat_map(|list| (0..list.length()).filter_map(|index| list.get(index)))
        .collect()
}
