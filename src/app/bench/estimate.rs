//! The estimate: a price named before the work, and the customer's answer in the notebook.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::view::Order;
use crate::bench::action::Action;

/// What the form shows and tells.
#[derive(Properties, PartialEq)]
pub struct EstimateProps {
    /// What the job has cost so far, as a start.
    pub so_far: AttrValue,
    /// Prices named before and what was answered, plain words.
    pub named: Vec<String>,
    /// Names the price.
    pub on_order: Callback<Order>,
}

/// The form.
#[component]
pub fn Estimate(props: &EstimateProps) -> Html {
    let price = use_state(String::new);
    let wrong = use_state(|| false);
    let oninput = {
        let (price, wrong) = (price.clone(), wrong.clone());
        Callback::from(move |event: InputEvent| {
            price.set(event.target_unchecked_into::<HtmlInputElement>().value());
            wrong.set(false);
        })
    };
    let onsubmit = {
        let (price, wrong, on_order) = (price.clone(), wrong.clone(), props.on_order.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match amount(&price) {
                Some(price) => on_order.emit(Order::Do(vec![Action::Quote { price }])),
                None => wrong.set(true),
            }
        })
    };
    html! {
        <form class="estimate" aria-label="Estimate" {onsubmit}>
            <h2 class="estimate__heading">{ "Estimate" }</h2>
            { for props.named.iter().map(|line| html! { <p class="estimate__named">{ line }</p> }) }
            <div class="field">
                <label class="field__label" for="price">{ "Price for the whole job" }</label>
                <input id="price" type="text" inputmode="decimal" autocomplete="off" value={(*price).clone()} {oninput}
                       aria-describedby="price-hint" aria-invalid={wrong.to_string()} />
                <p class="field__hint" id="price-hint">{ "So far " }<b class="numbers">{ &props.so_far }</b>
                    { ". Add the part and the time still needed." }</p>
                if *wrong { <p class="field__error" role="alert">{ "A price is a number above zero, such as 95." }</p> }
            </div>
            <button type="submit" class="button">{ "Name the price" }</button>
        </form>
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
}
