//! What stands between page and training system as a notice on the page, with the way back to the course.

use yew::prelude::*;

use crate::app::training_system::go_back;
use crate::app::training_system::trouble::ENDED;
use crate::app::training_system::trouble::trouble;
use crate::app::training_system::way_back;
use crate::language::said;
use crate::say;

/// What the learner should know, with the way back to the course where the visit has ended.
pub fn notice(role: &'static str) -> Html {
    let Some(trouble) = trouble() else {
        return Html::default();
    };
    let leads_back = trouble == ENDED && way_back().is_some();
    html! {
        <div class="notice" {role}>
            <p>{ said(trouble) }</p>
            if leads_back { <p><button type="button" class="button" onclick={|_: MouseEvent| go_back()}>{ say!("Back to the course") }</button></p> }
        </div>
    }
}
