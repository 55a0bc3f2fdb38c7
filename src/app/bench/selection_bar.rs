//! What is in hand and what can be done with it, in plain verbs with what each takes.

use web_sys::Element as DomElement;
use yew::prelude::*;

use crate::app::view::Order;
use crate::app::view::SelectionView;
use crate::app::view::VerbView;
use crate::bench::action::Action;
use crate::say;

/// What the bar shows and tells.
#[derive(Properties, PartialEq)]
pub struct SelectionBarProps {
    /// What is in hand.
    pub selection: Option<SelectionView>,
    /// Does something.
    pub on_order: Callback<Order>,
}

/// The bar.
#[component]
pub fn SelectionBar(props: &SelectionBarProps) -> Html {
    let bar = use_node_ref();
    {
        let bar = bar.clone();
        let name = props.selection.as_ref().map(|s| s.name.clone());
        use_effect_with(name, move |name| {
            if name.is_some() {
                to_the_top(&bar);
                bring_up(&bar, FIRST_ROWS_PX);
            }
        });
    }
    let Some(selection) = &props.selection else {
        return html! {
            <section class="selection-bar" aria-label={say!("In hand")}>
                <p class="selection-bar__name selection-bar__name--none">
                    { say!("Touch a part of the machine, the tap or the plug to see what can be done with it.") }
                </p>
            </section>
        };
    };
    let put_back = props.on_order.reform(|_: MouseEvent| Order::Select(None));
    html! {
        <section ref={bar} class="selection-bar" aria-label={say!("In hand")}>
            <div class="selection-bar__head">
                <h2 class="selection-bar__name">{ &selection.name }</h2>
                if !selection.about.is_empty() { <p class="selection-bar__about">{ &selection.about }</p> }
                if let Some(blocked) = &selection.blocked {
                    <p class="selection-bar__blocked">
                        { blocked }
                        if let Some(clear) = &selection.clear_way { { verb(&props.on_order, clear, "verb verb--main") } }
                    </p>
                }
            </div>
            <div class="selection-bar__verbs" role="group" aria-label={say!("What to do with: {thing}", thing = selection.name)}>
                { for selection.verbs.iter().map(|v| verb(&props.on_order, v, "verb")) }
                { menu(props, selection, say!("measure here …"), "verbs-measure", &selection.points) }
                { menu(props, selection, say!("repair …"), "verbs-repair", &selection.repairs) }
                <button type="button" class="verb verb--quiet" onclick={put_back} aria-label={say!("Let go")}>{ say!("let go") }</button>
            </div>
        </section>
    }
}

/// As much of the bar as has to be in sight: its head and the first row of verbs, px.
const FIRST_ROWS_PX: f64 = 88.0;

/// Another thing's verbs are read from the first.
fn to_the_top(bar: &NodeRef) {
    if let Some(bar) = bar.cast::<DomElement>() {
        bar.set_scroll_top(0);
        if let Ok(Some(verbs)) = bar.query_selector(".selection-bar__verbs") {
            verbs.set_scroll_top(0);
        }
    }
}

/// Where less than `enough_px` of it lies above the window's edge, as on a telephone, it comes up
/// above the meter's bar. Otherwise nothing moves under the finger.
pub(super) fn bring_up(element: &NodeRef, enough_px: f64) {
    let Some(element) = element.cast::<DomElement>() else {
        return;
    };
    let window = gloo::utils::window();
    let meter = gloo::utils::document().query_selector(".instrument--bar");
    let meter = meter.ok().flatten().map(|m| m.get_bounding_client_rect());
    let edge = match meter.filter(|area| area.height() > 0.0) {
        Some(area) => area.top(),
        None => window
            .inner_height()
            .ok()
            .and_then(|height| height.as_f64())
            .unwrap_or_default(),
    };
    let area = element.get_bounding_client_rect();
    if area.top() + area.height().min(enough_px) > edge {
        // Its head stays in sight.
        let below = (area.bottom() - edge).min(area.top());
        window.scroll_by_with_x_and_y(0.0, below);
    }
}

/// Verbs behind one key: a list to choose from on purpose.
///
/// The browser lays an open list over everything, keeps one open at a time, and shuts it at Esc and
/// when one of its verbs is done. A veil behind it takes a touch outside, which shuts it and does no
/// more.
fn menu(
    props: &SelectionBarProps,
    selection: &SelectionView,
    word: &'static str,
    list: &'static str,
    verbs: &[VerbView],
) -> Html {
    if verbs.is_empty() {
        return Html::default();
    }
    // Esc puts the list away first; what is in hand stays in hand.
    let onkeydown = Callback::from(|event: KeyboardEvent| {
        let open = gloo::utils::document().query_selector(".verb-menu__list:popover-open");
        if event.key() == "Escape" && matches!(open, Ok(Some(_))) {
            event.stop_propagation();
        }
    });
    let title = say!("{label}: {value}", label = selection.name, value = word);
    let one = |(index, v): (usize, &VerbView)| match verbs[..index].last() {
        Some(before) if is_unchecked(before, v) => html! {
            <button type="button" class="verb verb--short" onclick={done(&props.on_order, v)} aria-label={v.word.clone()}
                    popovertarget={list} popovertargetaction="hide">{ say!("no check") }</button>
        },
        _ => verb_in(&props.on_order, v, "verb", Some(list)),
    };
    html! {
        <div class="verb-menu" key={format!("{list} {}", selection.name)} {onkeydown}>
            <button type="button" class="verb" popovertarget={list}>{ word }</button>
            <div id={list} class="verb-menu__list" popover="auto" role="group" aria-label={title.clone()}>
                <button type="button" class="verb-menu__veil" tabindex="-1" aria-hidden="true" popovertarget={list} popovertargetaction="hide" />
                <div class="verb-menu__sheet">
                    <b class="verb-menu__title">{ title }</b>
                    <button type="button" class="verb" popovertarget={list} popovertargetaction="hide" aria-label={say!("put away")}>{ "×" }</button>
                    { for verbs.iter().enumerate().map(one) }
                </div>
            </div>
        </div>
    }
}

/// The same work as the verb before it, without the check: one line for both.
fn is_unchecked(before: &VerbView, verb: &VerbView) -> bool {
    match (&before.order, &verb.order) {
        (Order::Do(with), Order::Do(without)) => matches!(
            (with.as_slice(), without.as_slice()),
            (
                [Action::Work { work: one, check: true }],
                [Action::Work { work: other, check: false }],
            ) if one == other
        ),
        _ => false,
    }
}

fn done(on_order: &Callback<Order>, verb: &VerbView) -> Callback<MouseEvent> {
    let order = verb.order.clone();
    on_order.reform(move |_: MouseEvent| order.clone())
}

/// A verb as a button; also used by the calm card.
pub fn verb(on_order: &Callback<Order>, verb: &VerbView, class: &'static str) -> Html {
    verb_in(on_order, verb, class, None)
}

/// A verb that shuts the list it stands in, where it stands in one.
fn verb_in(
    on_order: &Callback<Order>,
    verb: &VerbView,
    class: &'static str,
    list: Option<&'static str>,
) -> Html {
    let onclick = done(on_order, verb);
    let class = classes!(class, verb.blocked.then_some("verb--blocked"));
    let title = (!verb.hint.is_empty()).then(|| verb.hint.clone());
    html! {
        <button type="button" {class} {onclick} {title} popovertarget={list} popovertargetaction={list.map(|_| "hide")}>
            { &verb.word }
            if !verb.takes.is_empty() { <small class="verb__takes numbers">{ format!(" {}", verb.takes) }</small> }
        </button>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn what_is_in_the_way_is_said_with_a_button_that_removes_it() {
        let text = as_text::<SelectionBar>(|| {
            let clear = VerbView {
                word: "take off the back cover".into(),
                takes: "3 min".into(),
                hint: String::new(),
                blocked: false,
                order: Order::Do(Vec::new()),
            };
            SelectionBarProps {
                selection: Some(SelectionView {
                    name: "run capacitor".into(),
                    blocked: Some("back cover is on: 8 screws, 3 min".into()),
                    clear_way: Some(clear),
                    ..SelectionView::default()
                }),
                on_order: Callback::noop(),
            }
        });
        assert!(text.contains("back cover is on: 8 screws, 3 min"), "{text}");
        assert!(text.contains("take off the back cover"), "{text}");
    }
}
