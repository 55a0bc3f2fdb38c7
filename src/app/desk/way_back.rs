//! From a job that is tried on the bench back to the draft it came from.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::desk::draft::Draft;
use crate::app::own;
use crate::app::route::Route;
use crate::language::said;
use crate::text;

/// What the way back is called: shown by `said`.
pub const BACK_TO_DRAFT: &str = text!("Back to the draft");

/// The draft a job of one's own was tried from, as long as there still is one.
#[hook]
pub fn use_draft_of(job: &AttrValue) -> Option<String> {
    let draft = use_state_eq(|| None::<String>);
    {
        let draft = draft.setter();
        use_effect_with(job.clone(), move |job| {
            let job = job.clone();
            spawn_local(async move { draft.set(draft_of(&job).await) });
        });
    }
    (*draft).clone()
}

async fn draft_of(job: &str) -> Option<String> {
    let id = own::draft_of(job).await?;
    // A draft that was forgotten, or cannot be read, is no place to go back to.
    Draft::find(&id).await.ok()?.map(|draft| draft.id)
}

/// Which job.
#[derive(Properties, PartialEq)]
pub struct BackToDraftProps {
    /// Its name.
    pub job: AttrValue,
}

/// The way back as a link; nothing for a job that came from no draft.
#[component]
pub fn BackToDraft(props: &BackToDraftProps) -> Html {
    let draft = use_draft_of(&props.job);
    html! {
        if let Some(draft) = draft {
            <a class="button" href={Route::Desk(Some(draft)).href()}>{ said(BACK_TO_DRAFT) }</a>
        }
    }
}
