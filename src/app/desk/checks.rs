//! What is still wrong with a form as a list: each line names its field and leads to it.

use yew::prelude::*;

use crate::app::desk::field::id_of;
use crate::app::desk::form_table::holders;
use crate::app::desk::told::Told;
use crate::app::hooks::focus_on_first;

/// A line for each.
pub fn check_lines(all: &[Told]) -> Html {
    let line = |told: &Told| {
        let path = told.path.clone();
        let go = Callback::from(move |_: MouseEvent| focus_on_first(holders(&path).map(id_of)));
        html! {
            <li class="fairness__line fairness__line--unfair">
                <button type="button" class="desk__go" onclick={go}>{ &told.label }</button>{ format!(": {}", told.words) }
            </li>
        }
    };
    all.iter().map(line).collect()
}
