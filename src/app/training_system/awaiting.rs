//! What the page waits for before it can begin: shown at once, announced, and after some seconds with a
//! way to ask again or to go on without it.
//!
//! The seconds stand outside what is announced: a screen reader says what is awaited once, and once more
//! when something can be done about it.

use std::cell::RefCell;

use gloo::timers::callback::Interval;
use js_sys::Function;
use js_sys::Promise;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use yew::prelude::*;

use crate::app::training_system::first::Either;
use crate::app::training_system::first::first;
use crate::say;

/// From here on the learner can do something about it, s.
const PATIENCE_S: u32 = 8;
/// Between two looks, ms. What is answered sooner is not shown at all.
const LOOK_MS: u32 = 150;

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum What {
    /// The key of the visit.
    Key,
    /// What was launched.
    Launch,
    /// Work of an earlier visit.
    Work,
    /// That the first statement is taken.
    Begun,
}

impl What {
    /// Whom it is asked of, and for what.
    fn words(self, address: &str) -> String {
        match self {
            Self::Key => say!(
                "{address} is asked for the key that lets this visit in.",
                address
            ),
            Self::Launch => say!(
                "{address} is asked for what was started, and for whom.",
                address
            ),
            Self::Work => say!(
                "{address} is asked for the work you have done before.",
                address
            ),
            Self::Begun => say!("{address} is asked to note that you begin.", address),
        }
    }

    /// What can be done when no answer comes.
    fn remedy(self) -> &'static str {
        match self {
            Self::Key => say!(
                "The key is given once, so it cannot be asked for again: wait, or go on without it, and start this page anew from the course later."
            ),
            Self::Begun => {
                say!("Go on: it is told as soon as the system takes it, before anything else is.")
            }
            Self::Launch | Self::Work => say!(
                "Ask again, or go on without it: then the system is told nothing until you load this page again, and work you have done elsewhere is not here."
            ),
        }
    }

    /// A key is given once, and what is begun twice is refused.
    fn can_be_asked_again(self) -> bool {
        matches!(self, Self::Launch | Self::Work)
    }
}

/// A question under way.
#[derive(Clone, Debug, PartialEq)]
struct Awaited {
    what: What,
    /// Whom, without what follows a question mark: that may be secret.
    address: String,
    since_ms: f64,
}

/// What the learner wants.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    Again,
    GoOn,
}

thread_local! {
    static AWAITED: RefCell<Option<Awaited>> = const { RefCell::new(None) };
    static GIVE: RefCell<Option<Function>> = const { RefCell::new(None) };
}

/// Waits for an answer and lets the page show it; asks anew when the learner wants that. `None` when the
/// learner goes on without one.
pub async fn patiently<T>(what: What, address: &str, mut ask: impl AsyncFnMut() -> T) -> Option<T> {
    loop {
        AWAITED.set(Some(Awaited {
            what,
            address: public(address).to_owned(),
            since_ms: js_sys::Date::now(),
        }));
        match first(ask(), order()).await {
            Either::One(answer) => return Some(answer),
            Either::Other(Order::Again) => {}
            Either::Other(Order::GoOn) => return None,
        }
    }
}

/// Nothing is awaited any more.
pub fn over() {
    AWAITED.set(None);
    GIVE.set(None);
}

/// What the learner will want.
async fn order() -> Order {
    let promise = Promise::new(&mut |resolve, _| GIVE.set(Some(resolve)));
    match JsFuture::from(promise).await {
        Ok(again) if again.is_truthy() => Order::Again,
        _ => Order::GoOn,
    }
}

fn give(order: Order) {
    if let Some(resolve) = GIVE.take() {
        let again = JsValue::from_bool(order == Order::Again);
        // Nobody waits any more where it was answered meanwhile.
        let _ = resolve.call1(&JsValue::NULL, &again);
    }
}

/// An address without what may be secret in it.
fn public(address: &str) -> &str {
    address.split(['?', '#']).next().unwrap_or(address)
}

/// What stands there while the page waits.
#[component]
pub fn Awaiting() -> Html {
    let now = use_state_eq(|| None::<(Awaited, u32)>);
    {
        let now = now.clone();
        use_effect_with((), move |()| {
            let looking = Interval::new(LOOK_MS, move || {
                let awaited = AWAITED.with_borrow(Clone::clone);
                let since = |one: &Awaited| (js_sys::Date::now() - one.since_ms).max(0.0) / 1000.0;
                now.set(awaited.map(|one| {
                    let seconds = since(&one) as u32;
                    (one, seconds)
                }));
            });
            move || drop(looking)
        });
    }
    let shown = (*now)
        .as_ref()
        .map(|(one, seconds)| (one.what, one.address.as_str(), *seconds));
    view(shown)
}

/// The page with what is awaited, of whom, for how long. The line that is announced is there from the
/// start: screen readers announce what changes in it.
fn view(shown: Option<(What, &str, u32)>) -> Html {
    let late = shown.filter(|(_, _, seconds)| *seconds >= PATIENCE_S);
    let again = Callback::from(|_: MouseEvent| give(Order::Again));
    let go_on = Callback::from(|_: MouseEvent| give(Order::GoOn));
    html! {
        <main class="page page--narrow" id="main" tabindex="-1">
            if shown.is_some() { <h1>{ say!("Waiting for the training system") }</h1> }
            <p role="status">{ shown.map(|(what, address, _)| said(what, address, late.is_some())).unwrap_or_default() }</p>
            if let Some((_, _, seconds)) = shown { <p class="numbers">{ say!("{n} s so far.", n = seconds) }</p> }
            if let Some((what, ..)) = late {
                <p class="row">
                    if what.can_be_asked_again() { <button type="button" class="button button--main" onclick={again}>{ say!("Ask again") }</button> }
                    <button type="button" class="button" onclick={go_on}>{ say!("Go on without it") }</button>
                </p>
            }
        </main>
    }
}

/// What is announced.
fn said(what: What, address: &str, is_late: bool) -> String {
    let words = what.words(address);
    if !is_late {
        return words;
    }
    let late = say!("There is no answer for {n} seconds.", n = PATIENCE_S);
    [&words, &late, what.remedy()].join(" ")
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[component]
    fn Nothing() -> Html {
        view(None)
    }

    #[component]
    fn Early() -> Html {
        view(Some((What::Work, "https://store.example/xapi/", 3)))
    }

    #[component]
    fn Late() -> Html {
        view(Some((What::Work, "https://store.example/xapi/", 8)))
    }

    #[component]
    fn LateKey() -> Html {
        view(Some((What::Key, "https://school.example/fetch", 20)))
    }

    #[test]
    fn whom_for_what_and_how_long_is_said_and_the_seconds_are_not_announced() {
        let text = as_text::<Early>(|| ());
        let announced = "<p role=\"status\">https://store.example/xapi/ is asked for the work you have done before.</p>";
        assert!(text.contains(announced), "{text}");
        assert!(
            text.contains("3 s so far.") && !text.contains("<button"),
            "{text}"
        );
        // The line is there before anything is said in it.
        assert!(as_text::<Nothing>(|| ()).contains("<p role=\"status\"></p>"));
    }

    #[test]
    fn after_some_seconds_there_are_ways_on_and_a_key_is_asked_for_once() {
        let text = as_text::<Late>(|| ());
        assert!(
            text.contains("Ask again") && text.contains("Go on without it"),
            "{text}"
        );
        assert!(text.contains("There is no answer for 8 seconds."), "{text}");
        let text = as_text::<LateKey>(|| ());
        assert!(
            !text.contains(">Ask again<") && text.contains("Go on without it"),
            "{text}"
        );
    }

    #[test]
    fn what_may_be_secret_in_an_address_is_not_shown() {
        assert_eq!(
            public("https://a.example/fetch?k=1"),
            "https://a.example/fetch"
        );
        assert_eq!(public("https://a.example/x/"), "https://a.example/x/");
    }
}
