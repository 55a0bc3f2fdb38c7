//! One calm card: what happened, the rule, its source. It never covers the machine in alarm.

use yew::prelude::*;

use crate::app::bench::selection_bar::bring_up;
use crate::app::bench::selection_bar::verb;
use crate::app::route::Route;
use crate::app::view::NoticeView;
use crate::app::view::Order;
use crate::say;

/// What the card shows and tells.
#[derive(Properties, PartialEq)]
pub struct NoticeProps {
    /// The card.
    pub notice: NoticeView,
    /// Puts it away, or does what it offers.
    pub on_order: Callback<Order>,
}

/// The card.
#[component]
pub fn Notice(props: &NoticeProps) -> Html {
    let notice = &props.notice;
    let card = use_node_ref();
    {
        let card = card.clone();
        // Its keys are to be reached at once, all of them.
        use_effect_with(notice.clone(), move |_| bring_up(&card, f64::INFINITY));
    }
    let class = classes!(
        "notice",
        notice.danger.then_some("notice--danger"),
        notice.source.as_ref().map(|_| "notice--rule")
    );
    let safe = Route::Handbook(Some("safe".to_owned()));
    let read = props.on_order.reform(|_: MouseEvent| Order::CardRead);
    html! {
        <section ref={card} {class} role="alert">
            <h2 class="notice__title">{ &notice.title }</h2>
            { for notice.text.iter().map(|line| html! { <p class="notice__text">{ line }</p> }) }
            if let Some(source) = &notice.source {
                <p class="notice__source">{ source }{ " " }<a href={safe.href()} target="_blank">{ say!("Making safe") }</a></p>
            }
            <div class="row">
                { for notice.verbs.iter().map(|v| verb(&props.on_order, v, "button button--main")) }
                <button type="button" id="notice-read" class="button" onclick={read}>
                    { if notice.danger { say!("I have read this") } else if notice.verbs.is_empty() { say!("All right") } else { say!("Leave it") } }
                </button>
            </div>
        </section>
    }
}
