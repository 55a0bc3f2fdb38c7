//! The visit beside the card: phone and van before the drive, who pays, care, parts on order.

use std::collections::BTreeSet;

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::bench::selection_bar::verb;
use crate::app::route::Route;
use crate::app::view::Order;
use crate::app::view::StockView;
use crate::app::view::VerbView;
use crate::app::view::VisitView;
use crate::bench::action::Action;
use crate::bench::visit::VAN_SLOTS;
use crate::say;

/// What the panel shows and tells.
#[derive(Properties, PartialEq)]
pub struct VisitProps {
    /// Name of the scenario, for the way to the report.
    pub id: AttrValue,
    /// The visit as it stands.
    pub visit: VisitView,
    /// Does what is asked.
    pub on_order: Callback<Order>,
}

/// The panel.
#[component]
pub fn Visit(props: &VisitProps) -> Html {
    let visit = &props.visit;
    html! {
        <section class="visit" aria-label={say!("The visit")}>
            if visit.before {
                { phone(props) }
                <Shelf key="van" word={say!("Parts for the van")} go={say!("Load the van")} lines={visit.stock.clone()}
                       before={true} on_order={props.on_order.clone()} />
            } else {
                { told(visit) }
            }
            if visit.before && visit.marked {
                <p class="field__hint">{ say!("At the customer's: with the first of these, or the first touch of the machine, you have driven there.") }</p>
            }
            { for visit.groups.iter().map(|(name, verbs)| group(props, name, verbs)) }
            if !visit.before {
                <Shelf key="order" word={say!("Second visit: parts to bring")} go={say!("Leave until the second visit")}
                       lines={visit.stock.clone()} before={false} on_order={props.on_order.clone()} />
            }
            <p><a class="button" href={Route::Report(props.id.to_string()).href()}>{ say!("See the report") }</a></p>
        </section>
    }
}

fn phone(props: &VisitProps) -> Html {
    let ask = |id: &String, text: &String| {
        let act = Action::Phone {
            question: id.clone(),
        };
        let onclick = props
            .on_order
            .reform(move |_: MouseEvent| Order::Do(vec![act.clone()]));
        html! { <button type="button" class="button button--small" {onclick}>{ text }</button> }
    };
    html! {
        <>
            <h2 class="job-card__heading">{ say!("Before you drive: on the phone") }</h2>
            { told(&props.visit) }
            <div class="job-card__ask">{ for props.visit.questions.iter().map(|q| ask(&q.id, &q.text)) }</div>
        </>
    }
}

fn told(visit: &VisitView) -> Html {
    let line = |(question, answer): &(String, String)| {
        html! {
            <li>
                <span class="job-card__question">{ question }</span>{ " " }
                <span class="job-card__answer">{ answer }</span>
            </li>
        }
    };
    html! {
        if !visit.asked.is_empty() {
            <ol class="job-card__asked" aria-label={say!("Asked on the phone")}>{ for visit.asked.iter().map(line) }</ol>
        }
    }
}

fn group(props: &VisitProps, name: &str, verbs: &[VerbView]) -> Html {
    html! {
        <>
            <h2 class="job-card__heading">{ name }</h2>
            <div class="row">{ for verbs.iter().map(|v| verb(&props.on_order, v, "button button--small")) }</div>
        </>
    }
}

/// What the shelf shows and tells.
#[derive(Properties, PartialEq)]
struct ShelfProps {
    word: AttrValue,
    go: AttrValue,
    lines: Vec<StockView>,
    before: bool,
    on_order: Callback<Order>,
}

/// The store's shelf: tick up to eight.
#[component]
fn Shelf(props: &ShelfProps) -> Html {
    let start = || -> BTreeSet<String> {
        let van = props.lines.iter().filter(|l| props.before && l.in_van);
        van.map(|l| l.id.clone()).collect()
    };
    let chosen = use_state_eq(start);
    let label = use_state_eq(|| true);
    let line = |line: &StockView| {
        let (chosen, id) = (chosen.clone(), line.id.clone());
        let checked = chosen.contains(&id);
        let full = chosen.len() >= VAN_SLOTS;
        let there = if props.before {
            line.today
        } else {
            line.orderable
        };
        let disabled = !there || (full && !checked);
        let onchange = Callback::from(move |_: Event| {
            let mut next = (*chosen).clone();
            if !next.remove(&id) {
                next.insert(id.clone());
            }
            chosen.set(next);
        });
        let when = match (there, line.today) {
            (false, _) if !line.orderable => Some(say!("no longer made")),
            (_, false) => Some(say!("tomorrow")),
            _ => None,
        };
        let when = when.map_or_else(String::new, |when| format!(", {when}"));
        html! {
            <label class="choice">
                <input type="checkbox" {checked} {disabled} {onchange} />
                <span>{ &line.name }{ " " }<span class="numbers">{ &line.price }</span>{ when }</span>
            </label>
        }
    };
    let go = {
        let (chosen, label, before) = (chosen.clone(), label.clone(), props.before);
        props.on_order.reform(move |_: MouseEvent| {
            let parts: Vec<String> = chosen.iter().cloned().collect();
            let label = *label;
            Order::Do(vec![if before {
                Action::LoadVan { parts }
            } else {
                Action::LeaveUntil { parts, label }
            }])
        })
    };
    let on_label = {
        let label = label.clone();
        Callback::from(move |event: Event| {
            label.set(event.target_unchecked_into::<HtmlInputElement>().checked());
        })
    };
    html! {
        <details class="visit__shelf" open={props.before}>
            <summary>{ &props.word }{ " " }<b class="numbers">{ say!("{n} of {most}", n = chosen.len(), most = VAN_SLOTS) }</b></summary>
            if chosen.len() >= VAN_SLOTS {
                <p class="field__hint">{ say!("The van is full: take one out to make room for another.") }</p>
            }
            <div class="visit__lines" role="group" tabindex="0" aria-label={&props.word}>{ for props.lines.iter().map(line) }</div>
            if !props.before {
                <label class="choice">
                    <input type="checkbox" checked={*label} onchange={on_label} />
                    <span>{ say!("Hang on a label “do not use”") }</span>
                </label>
            }
            <button type="button" class="button" onclick={go}>{ &props.go }</button>
        </details>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::library;
    use crate::app::view::visit::visit;
    use crate::bench::job::Job;

    fn props_after(acts: &[Action]) -> VisitProps {
        let mut job =
            Job::new(library::find("no_spin_since_cousin").expect("ships"), 1).expect("starts");
        for act in acts {
            assert_eq!(job.act(act.clone()).refusal, None);
        }
        VisitProps {
            id: "j".into(),
            visit: visit(&job),
            on_order: Callback::noop(),
        }
    }

    #[test]
    fn phone_and_van_stand_there_until_somebody_has_driven() {
        let before = as_text::<Visit>(|| props_after(&[]));
        assert!(before.contains("Load the van") && before.contains("Since when?"));
        assert!(before.contains("8 of 8"), "the usual load is ticked");
        let after = as_text::<Visit>(|| props_after(&[Action::CheckPapers]));
        assert!(!after.contains("Load the van") && after.contains("Leave until"));
    }
}
