//! The few parts of the bench that change while one watches, each alone, so that the rest rests.

use yew::prelude::*;

use crate::app::bench::contexts::use_bench;
use crate::app::bench::contexts::use_door;
use crate::app::bench::contexts::use_live;
use crate::app::bench::estimate::Estimate;
use crate::app::bench::gauges::Gauges;
use crate::app::bench::instrument::Face;
use crate::app::bench::instrument::Instrument;
use crate::app::bench::job_bar::JobBar;
use crate::app::bench::recorder::Recorder;
use crate::app::bench::time_bar::TimeBar;
use crate::app::hooks::use_slow_words;
use crate::app::settings::SettingsHandle;
use crate::app::sitting;
use crate::app::view::Order;
use crate::bench::action::Action;
use crate::say;

/// The line over the bench.
#[component]
pub fn MovingJobBar() -> Html {
    let (bench, live) = (use_bench(), use_live());
    html! {
        <JobBar id={bench.id.clone()} title={format!("{} · {}", bench.card.title, bench.card.customer)} clock={live.clock.clone()}
            on_site={live.on_site.clone()} cost={live.cost.clone()} over={bench.over} time_left={sitting::time_left(&bench.id)} />
    }
}

/// The instrument.
#[component]
pub fn MovingInstrument() -> Html {
    let (bench, live, on_order) = (use_bench(), use_live(), use_door());
    let is_reading = bench.meter.red.is_some();
    html! {
        <>
            <Instrument meter={bench.meter.clone()} face={live.face.clone()} over={bench.over} on_order={on_order.clone()} />
            if !bench.over {
                <div class="instrument instrument--more">
                    <Gauges gauges={bench.gauges.clone()} face={bench.gauge.clone()} on_order={on_order.clone()} />
                    <Recorder view={live.recorder.clone()} can_follow_meter={is_reading} {on_order} />
                </div>
            }
        </>
    }
}

/// The instrument as a bar, where the drawer with it is shut.
#[component]
pub fn MeterBar(props: &MeterBarProps) -> Html {
    let (bench, live, on_order) = (use_bench(), use_live(), use_door());
    let note = on_order.reform(|_: MouseEvent| Order::Do(vec![Action::Note]));
    let show = props.on_show.reform(|_: MouseEvent| ());
    html! {
        <section class="instrument instrument--bar" aria-label={say!("Instrument")}>
            <Face face={live.face.clone()} mode={bench.meter.mode} />
            <button type="button" class="button button--small" onclick={show}>{ say!("leads and mode") }</button>
            if !bench.over {
                <button type="button" class="button button--main button--small" onclick={note}>{ say!("Note it") }</button>
            }
        </section>
    }
}

/// What the bar tells.
#[derive(Properties, PartialEq)]
pub struct MeterBarProps {
    /// Pulls out the drawer with the instrument.
    pub on_show: Callback<()>,
}

/// What came of the last act, over the foot of the drawing: it takes no room from it.
#[component]
pub fn Said() -> Html {
    let live = use_live();
    if live.said.is_empty() {
        return Html::default();
    }
    // A screen reader hears it from the announcer.
    html! { <p class="bench__said" aria-hidden="true">{ &live.said }</p> }
}

/// What is heard, and what the machine's own display shows.
#[component]
pub fn Caption() -> Html {
    let live = use_live();
    html! {
        <div class="caption">
            <p class="caption__sound"><span class="visually-hidden">{ say!("Heard:") }{ " " }</span>{ &live.caption }</p>
            if !live.panel.is_empty() {
                <p class="caption__panel numbers"><span class="visually-hidden">{ say!("Display:") }{ " " }</span>{ &live.panel }</p>
            }
            <SoundKey />
        </div>
    }
}

/// Lets the machine be heard, or not.
#[component]
fn SoundKey() -> Html {
    let Some(handle) = use_context::<SettingsHandle>() else {
        return Html::default();
    };
    let on = handle.now.sound;
    let onclick = Callback::from(move |_: MouseEvent| {
        let mut next = handle.now.clone();
        next.sound = !on;
        handle.change.emit(next);
    });
    html! { <button type="button" class="button button--quiet button--small" {onclick}>{ if on { say!("Sound is on") } else { say!("Sound is off") } }</button> }
}

/// The clock's keys.
#[component]
pub fn MovingTimeBar() -> Html {
    let (live, on_order) = (use_live(), use_door());
    html! { <TimeBar speed={live.speed} waiting={live.waiting} {on_order} /> }
}

/// The estimate with what the job has cost so far.
#[component]
pub fn MovingEstimate() -> Html {
    let (bench, live, on_order) = (use_bench(), use_live(), use_door());
    let named = bench
        .notes
        .iter()
        .filter(|note| note.is_price)
        .map(|note| note.text.clone())
        .collect::<Vec<_>>();
    html! { <Estimate so_far={live.cost.clone()} {named} causes={bench.causes.clone()} {on_order} /> }
}

/// What a screen reader says, at a pace that can be followed.
#[component]
pub fn Announcer() -> Html {
    let live = use_live();
    let said = use_slow_words(live.said.clone().into());
    html! { <p class="visually-hidden" aria-live="polite" role="status">{ said }</p> }
}
