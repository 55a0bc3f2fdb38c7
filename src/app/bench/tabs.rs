//! A row of tabs: one stop of the tab key, arrows inside.

use yew::prelude::*;

use crate::app::bench::roving;
use crate::app::hooks::focus_on;

/// What a row shows and tells.
#[derive(Properties, PartialEq)]
pub struct TabsProps {
    /// Start of the tabs' ids; tab 2 of `view` has the id `view-2`.
    pub id: AttrValue,
    /// What the row is for.
    pub label: AttrValue,
    /// The words.
    pub words: Vec<AttrValue>,
    /// The tab shown.
    pub shown: usize,
    /// Id of the panel they change.
    pub panel: AttrValue,
    /// Shows another.
    pub on_show: Callback<usize>,
}

/// The row.
#[component]
pub fn Tabs(props: &TabsProps) -> Html {
    let (on_show, id) = (props.on_show.clone(), props.id.clone());
    let onkeydown = roving::on_arrows(
        props.words.len(),
        Callback::from(move |there: usize| {
            on_show.emit(there);
            focus_on(&format!("{id}-{there}"));
        }),
    );
    html! {
        <div class="tabs" role="tablist" aria-label={&props.label} {onkeydown}>
            { for props.words.iter().enumerate().map(|(index, word)| {
                let shown = index == props.shown;
                let onclick = props.on_show.reform(move |_: MouseEvent| index);
                html! {
                    <button type="button" id={format!("{}-{index}", props.id)} class="tabs__tab" role="tab"
                            aria-selected={shown.to_string()} aria-controls={&props.panel}
                            tabindex={roving::stop(shown)} {onclick}>{ word }</button>
                }
            }) }
        </div>
    }
}
