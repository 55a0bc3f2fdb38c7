//! Giving a job away: as a link, as a code for a classroom screen, as a file. Nothing leaves the
//! browser by itself; what is given away is made here.

use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::desk::qr::QrCode;
use crate::app::route::Route;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;
use crate::scenario::write;

/// The job.
#[derive(Properties, PartialEq)]
pub struct ShareProps {
    /// A sound job.
    pub job: JobFile,
}

/// What can be given away.
#[component]
pub fn Share(props: &ShareProps) -> Html {
    let address = use_memo(props.job.clone(), |job| address(&share::to_letters(job)));
    let files = use_memo(props.job.clone(), files);
    let field = use_node_ref();
    let told = use_state(|| "");
    let select = {
        let field = field.clone();
        move || {
            if let Some(input) = field.cast::<HtmlInputElement>() {
                input.select();
            }
        }
    };
    let copy = {
        let (address, told, select) = (address.clone(), told.clone(), select.clone());
        Callback::from(move |_: MouseEvent| {
            select();
            let (address, told) = (address.clone(), told.clone());
            spawn_local(async move { told.set(copied(&address).await) });
        })
    };
    html! {
        <div class="stack">
            <label class="field"><span class="field__label">{ say!("Link, {n} characters", n = address.len()) }</span>
                <input ref={field} readonly=true value={(*address).clone()} onfocus={move |_| select()} />
                <span class="field__hint">{ say!("The whole job is in the address: it works offline, wherever this page is open. What is wrong with the machine cannot be read from it at a glance.") }</span>
            </label>
            <p class="row"><button type="button" class="button" onclick={copy}>{ say!("Copy the link") }</button>
                <span role="status">{ *told }</span></p>
            <details><summary>{ say!("Code for a classroom screen") }</summary><QrCode text={(*address).clone()} label={say!("The link as a QR code")} /></details>
            <p class="row">
                { for files.iter().map(|(name, words, href)| html! {
                    <a class="button" download={name.clone()} href={href.clone()}>{ *words }</a>
                }) }
            </p>
            <p><a href={Route::Handbook(Some("sharing".to_owned())).href()}>{ say!("What this protects and what not") }</a></p>
        </div>
    }
}

/// The page's own address with the job behind it.
fn address(letters: &str) -> String {
    let here = gloo::utils::window().location().href().unwrap_or_default();
    let page = here.split('#').next().unwrap_or_default();
    format!("{page}{}", Route::OpenJob(letters.to_owned()).href())
}

/// Name, words and address of each file; the bytes are in the address.
fn files(job: &JobFile) -> Vec<(String, &'static str, String)> {
    let data = |text: String| data_address(&text);
    let stem = file_stem(&job.title);
    let copy = write::write(&share::sealed(job)).unwrap_or_default();
    let whole = write::write(job).unwrap_or_default();
    vec![
        (
            format!("{stem}_trainee.json"),
            say!("File for trainees"),
            data(copy),
        ),
        (
            format!("{stem}.json"),
            say!("File with the answer"),
            data(whole),
        ),
    ]
}

/// The text of a file as an address that holds it.
pub(super) fn data_address(text: &str) -> String {
    format!(
        "data:application/json;charset=utf-8,{}",
        String::from(js_sys::encode_uri_component(text))
    )
}

/// A title as a file's name: plain letters, digits and `_`.
pub(super) fn file_stem(title: &str) -> String {
    let words: Vec<String> = title
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    if words.is_empty() {
        "job".to_owned()
    } else {
        words.join("_")
    }
}

/// A page that did not come over an encrypted connection may not write to the clipboard.
async fn copied(text: &str) -> &'static str {
    let window = gloo::utils::window();
    if !window.is_secure_context() {
        return say!("The link is selected: copy it with the keyboard.");
    }
    match JsFuture::from(window.navigator().clipboard().write_text(text)).await {
        Ok(_) => say!("Copied."),
        Err(_) => {
            say!("The browser did not allow it: the link is selected, copy it with the keyboard.")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_title_becomes_a_plain_file_name() {
        assert_eq!(file_stem("It drips / and: hums!"), "it_drips_and_hums");
        assert_eq!(file_stem("../.."), "job");
    }
}
