//! The strip-chart recorder: a lane for each pen over one axis of time, the same as a table, and both on
//! a printed sheet.

use gloo::events::EventListener;
use yew::prelude::*;

use crate::app::view::Order;
use crate::app::view::PenView;
use crate::app::view::RecorderView;
use crate::say;

/// What the recorder shows and tells.
#[derive(Properties, PartialEq)]
pub struct RecorderProps {
    /// The strip.
    pub view: RecorderView,
    /// A pen can be put on what the meter reads now.
    pub can_follow_meter: bool,
    /// Puts and lifts pens.
    pub on_order: Callback<Order>,
}

/// The recorder.
#[component]
pub fn Recorder(props: &RecorderProps) -> Html {
    let follow = props.on_order.reform(|_: MouseEvent| Order::FollowMeter);
    let fresh = props.on_order.reform(|_: MouseEvent| Order::FreshStrip);
    let pens = &props.view.pens;
    html! {
        <details class="instrument__more recorder" open={!pens.is_empty()}>
            <summary class="instrument__heading">{ say!("recorder, {n} of 4 pens", n = pens.len()) }</summary>
            <div class="recorder__keys">
                <button type="button" class="button button--small" onclick={follow} disabled={!props.can_follow_meter || pens.len() >= 4}>
                    { say!("record the meter") }
                </button>
                if !pens.is_empty() {
                    <button type="button" class="button button--small" onclick={fresh}>{ say!("fresh strip") }</button>
                    <button type="button" class="button button--small" onclick={|_: MouseEvent| print()}>{ say!("Print the chart") }</button>
                }
            </div>
            if pens.is_empty() {
                <p class="instrument__sheet">{ say!("Put a pen on the meter as it is set, or on a speed, a pressure or a temperature above.") }</p>
            }
            if !pens.is_empty() {
                <h2 class="only-print">{ say!("Strip chart, {seconds} s", seconds = props.view.seconds) }</h2>
                { for pens.iter().enumerate().map(|(index, pen)| lane(props, index, pen)) }
                <p class="recorder__axis numbers" aria-hidden="true">{ for props.view.moments.iter().map(|moment| html! { <span>{ moment }</span> }) }</p>
                { table(&props.view) }
            }
        </details>
    }
}

fn lane(props: &RecorderProps, index: usize, pen: &PenView) -> Html {
    let lift = props
        .on_order
        .reform(move |_: MouseEvent| Order::LiftPen(index));
    let label = say!(
        "{pen}, {low} to {high} in {seconds} s, now {now}",
        pen = pen.name,
        low = pen.low,
        high = pen.high,
        seconds = props.view.seconds,
        now = pen.now,
    );
    html! {
        <figure class="recorder__lane">
            <figcaption class="recorder__name">
                <svg class="recorder__key" viewBox="0 0 44 8" aria-hidden="true"><path class={format!("recorder__pen recorder__pen--{index}")} d="M0 4 H44" /></svg>
                <span>{ &pen.name }</span><b class="numbers">{ &pen.now }</b>
                <button type="button" class="button button--small" onclick={lift}
                        aria-label={say!("Lift the pen: {pen}", pen = pen.name)}>{ say!("lift") }</button>
            </figcaption>
            <svg class="recorder__strip" viewBox="0 -3 300 62" preserveAspectRatio="none" role="img" aria-label={label}>
                <path class="recorder__rule" d="M0 0 H300 M0 28 H300 M0 56 H300 M75 0 V56 M150 0 V56 M225 0 V56" />
                <path class={format!("recorder__pen recorder__pen--{index}")} d={pen.path.clone()} />
            </svg>
            <p class="recorder__ends numbers"><span>{ say!("highest {value}", value = pen.high) }</span><span>{ say!("lowest {value}", value = pen.low) }</span></p>
        </figure>
    }
}

fn table(view: &RecorderView) -> Html {
    html! {
        <details class="recorder__table">
            <summary>{ say!("as a table") }</summary>
            <table>
                <thead><tr><th scope="col">{ say!("time") }</th>{ for view.pens.iter().map(|pen| html! { <th scope="col">{ &pen.name }</th> }) }</tr></thead>
                <tbody>{ for view.rows.iter().map(|row| html! { <tr>{ for row.iter().map(|cell| html! { <td class="numbers">{ cell }</td> }) }</tr> }) }</tbody>
            </table>
        </details>
    }
}

/// Prints the chart alone: the style sheets leave the rest of the bench out while the page says so.
fn print() {
    const ON_PAPER: &str = "data-print";
    let root = gloo::utils::document_element();
    // A page that cannot say it prints the bench as it is.
    let _ = root.set_attribute(ON_PAPER, "chart");
    let window = gloo::utils::window();
    let done = EventListener::once(&window, "afterprint", move |_| {
        let _ = root.remove_attribute(ON_PAPER);
    });
    // It ends by itself.
    done.forget();
    // A browser that does not print says so itself.
    let _ = window.print();
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn each_lane_is_told_in_words_and_again_as_a_table() {
        let text = as_text::<Recorder>(|| RecorderProps {
            view: RecorderView {
                pens: vec![PenView {
                    name: "tachometer, basket".into(),
                    path: "M0 56 L300 0".into(),
                    low: "0 r/min".into(),
                    high: "750 r/min".into(),
                    now: "750 r/min".into(),
                }],
                rows: vec![vec!["09:00:01".into(), "12 r/min".into()]],
                moments: vec!["09:00:01".into(), "09:00:31".into()],
                seconds: 30,
            },
            can_follow_meter: false,
            on_order: Callback::noop(),
        });
        assert!(text.contains("0 r/min to 750 r/min in 30 s"), "{text}");
        assert!(text.contains("<td class=\"numbers\">12 r/min"), "{text}");
        assert!(text.contains("<span>09:00:31</span>"), "{text}");
        // The line beside the name is drawn as the one in the lane is.
        assert_eq!(text.matches("recorder__pen--0").count(), 2, "{text}");
        assert!(text.contains("Print the chart"), "{text}");
    }
}
