//! The estimate: what is held to be wrong, the ways out with their prices, and the customer's
//! answer in the notebook.

use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::bench::causes::cause_groups;
use crate::app::shared::Shared;
use crate::app::view::CauseView;
use crate::app::view::Order;
use crate::bench::action::Action;
use crate::bench::visit::OfferKind;
use crate::bench::visit::OfferOption;
use crate::language::said;
use crate::say;
use crate::text;

/// The ways out, in the order they are named.
const WAYS: [(OfferKind, &str, &str); 3] = [
    (OfferKind::Repair, "price", text!("Price for the whole job")),
    (
        OfferKind::OtherPart,
        "price-other",
        text!("Or with a part of another make"),
    ),
    (
        OfferKind::NewMachine,
        "price-new",
        text!("Or a new machine"),
    ),
];

/// What the form shows and tells.
#[derive(Properties, PartialEq)]
pub struct EstimateProps {
    /// What the job has cost so far, as a start.
    pub so_far: AttrValue,
    /// Prices named before and what was answered, plain words.
    pub named: Vec<String>,
    /// Causes to choose from.
    pub causes: Shared<Vec<CauseView>>,
    /// Names the price.
    pub on_order: Callback<Order>,
}

/// The form.
#[component]
pub fn Estimate(props: &EstimateProps) -> Html {
    let prices = use_state(|| [const { String::new() }; WAYS.len()]);
    let cause = use_state(String::new);
    let wrong = use_state(|| false);
    let onsubmit = {
        let (prices, cause, wrong) = (prices.clone(), cause.clone(), wrong.clone());
        let on_order = props.on_order.clone();
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match act(&*prices, &cause) {
                Some(act) => on_order.emit(Order::Do(vec![act])),
                None => wrong.set(true),
            }
        })
    };
    let on_cause = {
        let cause = cause.clone();
        Callback::from(move |event: Event| {
            cause.set(event.target_unchecked_into::<HtmlSelectElement>().value());
        })
    };
    let way = |(index, (_, id, word)): (usize, &(OfferKind, &'static str, &'static str))| {
        let (prices, wrong, is_wrong) = (prices.clone(), wrong.clone(), *wrong && index == 0);
        let value = prices[index].clone();
        let oninput = Callback::from(move |event: InputEvent| {
            let mut next = (*prices).clone();
            next[index] = event.target_unchecked_into::<HtmlInputElement>().value();
            prices.set(next);
            wrong.set(false);
        });
        html! {
            <div class="field">
                <label class="field__label" for={*id}>{ said(word) }</label>
                <input id={*id} type="text" inputmode="decimal" autocomplete="off" {value} {oninput}
                       aria-describedby={(index == 0).then_some("price-hint")} aria-invalid={is_wrong.to_string()} />
            </div>
        }
    };
    html! {
        <form class="estimate" aria-label={say!("Estimate")} {onsubmit}>
            <h2 class="estimate__heading">{ say!("Estimate") }</h2>
            { for props.named.iter().map(|line| html! { <p class="estimate__named">{ line }</p> }) }
            <div class="field">
                <label class="field__label" for="price-cause">{ say!("For what is held to be wrong") }</label>
                <select id="price-cause" onchange={on_cause}>
                    <option value="" selected=true>{ say!("not known yet") }</option>
                    { cause_groups(&props.causes) }
                </select>
            </div>
            { for WAYS.iter().enumerate().map(way) }
            <p class="field__hint" id="price-hint">{ say!("So far") }{ " " }<b class="numbers">{ &props.so_far }</b>
                { ". " }{ say!("Add the part and the time still needed. A way without a price is not named.") }</p>
            if *wrong { <p class="field__error" role="alert">{ say!("A price is a number above zero, such as 95. At least one is needed.") }</p> }
            <button type="submit" class="button">{ say!("Name the price") }</button>
        </form>
    }
}

/// What the form asks for; none when a price cannot be read or none is named.
fn act(prices: &[String], cause: &str) -> Option<Action> {
    let mut options = Vec::new();
    for ((what, ..), typed) in WAYS.iter().zip(prices) {
        if !typed.trim().is_empty() {
            let (what, price) = (*what, amount(typed)?);
            options.push(OfferOption { what, price });
        }
    }
    let causes = Some(cause.to_owned()).filter(|c| !c.is_empty());
    match options.as_slice() {
        [] => None,
        [only] if causes.is_none() && only.what == OfferKind::Repair => {
            Some(Action::Quote { price: only.price })
        }
        _ => Some(Action::Offer {
            causes: causes.into_iter().collect(),
            options,
        }),
    }
}

/// A price in hundredths of a unit at the finest, so that it is kept exactly.
pub fn amount(typed: &str) -> Option<f64> {
    let price: f64 = typed.trim().replace(',', ".").parse().ok()?;
    let whole = (price * 100.0).round() / 100.0;
    (whole > 0.0 && whole < 1e6).then_some(whole)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_price_is_a_number_above_zero_however_it_is_written() {
        assert_eq!(amount(" 95,50 "), Some(95.5));
        for text in ["", "abc", "-3", "0", "NaN", "inf", "1e9"] {
            assert_eq!(amount(text), None, "{text}");
        }
    }

    #[test]
    fn only_ways_with_a_price_are_named_and_a_wrong_price_stops_all() {
        let typed = |texts: [&str; 3]| texts.map(str::to_owned);
        assert_eq!(
            act(&typed(["95", "", ""]), ""),
            Some(Action::Quote { price: 95.0 })
        );
        assert_eq!(act(&typed(["", "", ""]), "x"), None);
        assert_eq!(act(&typed(["95", "x", ""]), ""), None);
        let both = act(&typed(["95", "", "350"]), "belt_off");
        assert!(
            matches!(both, Some(Action::Offer { causes, options }) if causes.len() == 1 && options.len() == 2)
        );
    }
}
