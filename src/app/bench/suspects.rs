//! The technician's own list of likely causes: added, ordered by how sure they are, struck out.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::bench::causes::cause_groups;
use crate::app::shared::Shared;
use crate::app::view::CauseView;
use crate::app::view::Order;
use crate::app::view::SuspectOrder;
use crate::app::view::SuspectView;
use crate::language::said;
use crate::say;
use crate::text;

/// What the list shows and tells.
#[derive(Properties, PartialEq)]
pub struct SuspectsProps {
    /// The list.
    pub suspects: Vec<SuspectView>,
    /// Causes that can be added.
    pub causes: Shared<Vec<CauseView>>,
    /// Changes the list.
    pub on_order: Callback<Order>,
}

/// How sure, in words.
const SURE: [&str; 3] = [text!("possible"), text!("likely"), text!("nearly sure")];

/// The list of suspects.
#[component]
pub fn Suspects(props: &SuspectsProps) -> Html {
    let add = {
        let on_order = props.on_order.clone();
        Callback::from(move |event: Event| {
            let select: HtmlSelectElement = event.target_unchecked_into();
            let id = select.value();
            select.set_selected_index(0);
            if !id.is_empty() {
                on_order.emit(Order::Suspect(SuspectOrder::Add(id)));
            }
        })
    };
    html! {
        <section class="suspects" aria-label={say!("Suspects")}>
            <h2 class="suspects__heading">{ say!("Suspects") }</h2>
            <ul class="suspects__list">{ for props.suspects.iter().enumerate().map(|(i, s)| line(props, i, s)) }</ul>
            <label class="field suspects__add">
                <span class="field__label">{ say!("Add a suspect") }</span>
                <select onchange={add}>
                    <option value="" selected=true>{ say!("choose a cause …") }</option>
                    { cause_groups(&props.causes) }
                </select>
            </label>
        </section>
    }
}

fn line(props: &SuspectsProps, index: usize, suspect: &SuspectView) -> Html {
    let word = said(SURE[usize::from(suspect.sure.clamp(1, 3)) - 1]);
    let order = |order: SuspectOrder| {
        props
            .on_order
            .reform(move |_: MouseEvent| Order::Suspect(order.clone()))
    };
    let id = &suspect.id;
    let next = suspect.sure % 3 + 1;
    let class = classes!(
        "suspects__item",
        suspect.struck.then_some("suspects__item--struck")
    );
    let strike = if suspect.struck {
        say!("Bring back: {cause}", cause = suspect.what)
    } else {
        say!("Strike out: {cause}", cause = suspect.what)
    };
    html! {
        <li {class} key={id.clone()}>
            <span class="suspects__name">
                { &suspect.what }
                if suspect.struck { <span class="visually-hidden">{ " " }{ say!("(struck out)") }</span> }
            </span>
            <button type="button" class="suspects__confidence button button--quiet button--small"
                    aria-label={say!("How sure: {sure}. Change: {cause}", sure = word, cause = suspect.what)}
                    onclick={order(SuspectOrder::Sure(id.clone(), next))}>{ word }</button>
            if index > 0 {
                <button type="button" class="button button--quiet button--small"
                        aria-label={say!("Move up: {cause}", cause = suspect.what)}
                        onclick={order(SuspectOrder::Up(id.clone()))}>{ "↑" }</button>
            }
            <button type="button" class="button button--quiet button--small"
                    aria-label={strike}
                    onclick={order(SuspectOrder::Strike(id.clone()))}>
                { if suspect.struck { say!("bring back") } else { say!("strike out") } }
            </button>
        </li>
    }
}
