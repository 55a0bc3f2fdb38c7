//! The bench's clock: how fast it runs, and what to wait for.

use yew::prelude::*;

use crate::app::view::Order;
use crate::app::view::Speed;
use crate::app::view::Until;
use crate::say;

/// What the bar shows and tells.
#[derive(Properties, PartialEq)]
pub struct TimeBarProps {
    /// The clock's speed.
    pub speed: Speed,
    /// Time is being let pass until something is so.
    pub waiting: bool,
    /// Changes the speed or waits.
    pub on_order: Callback<Order>,
}

/// The bar.
#[component]
pub fn TimeBar(props: &TimeBarProps) -> Html {
    html! {
        <div class="time-bar" role="group" aria-label={say!("Clock")}>
            { for Speed::ALL.into_iter().map(|speed| speed_key(props, speed)) }
            <span class="time-bar__word" id="until">{ if props.waiting { say!("waiting until") } else { say!("wait until") } }</span>
            { for Until::ALL.into_iter().map(|until| until_key(props, until)) }
        </div>
    }
}

fn speed_key(props: &TimeBarProps, speed: Speed) -> Html {
    let pressed = !props.waiting && props.speed == speed;
    let onclick = props
        .on_order
        .reform(move |_: MouseEvent| Order::Run(speed));
    html! {
        <button type="button" class="time-bar__speed" aria-pressed={pressed.to_string()} {onclick}>
            { speed.word() }
        </button>
    }
}

fn until_key(props: &TimeBarProps, until: Until) -> Html {
    let onclick = props
        .on_order
        .reform(move |_: MouseEvent| Order::Wait(until));
    html! {
        <button type="button" class="time-bar__until" {onclick}>{ until.words() }</button>
    }
}
