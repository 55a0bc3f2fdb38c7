//! Water, speed, length: the instruments that need no circuit, one in hand at a time.

use yew::prelude::*;

use crate::app::bench::gauge_face::GaugeFace;
use crate::app::bench::roving;
use crate::app::hooks::focus_first;
use crate::app::shared::Shared;
use crate::app::view::GaugeFaceView;
use crate::app::view::GaugePlaceView;
use crate::app::view::GaugeView;
use crate::app::view::Order;
use crate::say;

/// What the instruments show and tell.
#[derive(Properties, PartialEq)]
pub struct GaugesProps {
    /// All of them.
    pub gauges: Shared<Vec<GaugeView>>,
    /// What one of them showed last.
    pub face: Option<GaugeFaceView>,
    /// Puts one to a place.
    pub on_order: Callback<Order>,
}

/// The instruments.
#[component]
pub fn Gauges(props: &GaugesProps) -> Html {
    let here = use_state_eq(|| 0_usize);
    let Some(view) = props.gauges.get(*here) else {
        return Html::default();
    };
    let face = props.face.as_ref().filter(|face| face.gauge == view.gauge);
    html! {
        <details class="instrument__more">
            <summary class="instrument__heading">{ say!("water, speed, length, warmth") }</summary>
            { choice(props, &here) }
            <section class="instrument__panel" aria-label={view.name}>
                { shown(view, face) }
                if !view.caution.is_empty() { <p class="instrument__sheet">{ say!("mind: {caution}", caution = view.caution) }</p> }
                <div class="instrument__places">{ for view.places.iter().map(|place| at(props, place)) }</div>
            </section>
        </details>
    }
}

fn choice(props: &GaugesProps, here: &UseStateHandle<usize>) -> Html {
    let count = props.gauges.len();
    let set = {
        let here = here.clone();
        Callback::from(move |there: usize| {
            here.set(there);
            focus_first(&format!(".instrument__mode[data-gauge='{there}']"));
        })
    };
    let onkeydown = roving::on_arrows(count, set.clone());
    let key = |(index, view): (usize, &GaugeView)| {
        let checked = index == **here;
        let onclick = set.reform(move |_: MouseEvent| index);
        html! {
            <button type="button" class="instrument__mode" role="radio" aria-checked={checked.to_string()}
                    tabindex={roving::stop(checked)} data-gauge={index.to_string()} {onclick}>{ view.name }</button>
        }
    };
    html! {
        <div class="instrument__others" role="radiogroup" aria-label={say!("Instruments that need no circuit")} {onkeydown}>
            { for props.gauges.iter().enumerate().map(key) }
        </div>
    }
}

fn shown(view: &GaugeView, face: Option<&GaugeFaceView>) -> Html {
    let Some(face) = face else {
        return html! { <GaugeFace gauge={view.gauge} value="– – –" unit="" share={None::<f64>} /> };
    };
    html! {
        <>
            <GaugeFace gauge={view.gauge} value={face.value.clone()} unit={face.unit.clone()} share={face.share} />
            <p class="instrument__sheet">
                { &face.place }
                if let Some(sheet) = &face.sheet { { ", " }{ say!("data sheet") }{ " " }<b class="numbers">{ sheet }</b> }
            </p>
        </>
    }
}

fn at(props: &GaugesProps, place: &GaugePlaceView) -> Html {
    let order = place.order.clone();
    let onclick = props.on_order.reform(move |_: MouseEvent| order.clone());
    let record = place.channel.clone().map(|channel| {
        let onclick = props
            .on_order
            .reform(move |_: MouseEvent| Order::Follow(channel.clone()));
        html! {
            <button type="button" class="button button--small" {onclick}
                    aria-label={say!("Record: {place}", place = place.name)}>{ say!("record") }</button>
        }
    });
    html! {
        <div class="instrument__place">
            <button type="button" class="button button--small" {onclick}>{ &place.name }</button>
            { record.unwrap_or_default() }
            if let Some(blocked) = &place.blocked { <small class="instrument__sheet">{ blocked }</small> }
        </div>
    }
}
