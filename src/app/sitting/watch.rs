//! Watching the sitting of this browser: read once, its clock and its page looked at while it runs,
//! begun and forgotten.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use gloo::timers::callback::Interval;
use wasm_bindgen_futures::spawn_local;
use web_sys::VisibilityState;
use yew::prelude::*;

use crate::app::hooks::go_to;
use crate::app::outbox;
use crate::app::route::Route;
use crate::app::sitting::jobs;
use crate::app::sitting::running;
use crate::app::sitting::running::Running;
use crate::app::sitting::state::Sitting;
use crate::app::store::Claim;
use crate::app::store::Holder;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::app::training_system;
use crate::records::sitting::Assessment;

/// Between two looks at the clock, ms.
const LOOK_MS: u32 = 1000;
/// Looks between two savings.
const SAVE_EVERY: u32 = 10;
/// Time left at which what is filled in is said, so that it is kept when time is over, s.
const LAST_S: f64 = 3.0;

/// Begins one, or replaces one that was handed in.
///
/// # Errors
/// When the browser refuses or has no room; it has begun all the same.
pub async fn begin(sitting: Sitting, assessment: Rc<Assessment>) -> Result<(), StorageError> {
    running::put(Some(Running {
        sitting,
        assessment,
    }));
    jobs::forget_all().await;
    running::keep().await
}

/// Forgets it: this browser is free for the next candidate.
///
/// # Errors
/// When the browser refuses.
pub async fn forget() -> Result<(), StorageError> {
    running::put(None);
    jobs::forget_all().await;
    let done = Store::open().await.remove(running::KEY).await;
    running::told();
    done
}

/// Reads what was kept, once; the time since counts.
async fn read() {
    let kept = Store::open().await.get(running::KEY).await.ok().flatten();
    let Some(mut sitting) = kept.and_then(|text| Sitting::read(&text)) else {
        return;
    };
    let Ok(assessment) = jobs::assessment("assessment", &sitting.text) else {
        return;
    };
    let now_ms = js_sys::Date::now();
    sitting.back(sitting.seen_ms, now_ms, true);
    let was_left_closing = sitting.closing && sitting.is_running();
    running::put(Some(Running {
        sitting,
        assessment: Rc::new(assessment),
    }));
    if was_left_closing {
        hand_in();
    }
}

/// Watches the clock and the page while a sitting runs, and tells the page of changes. Renders its
/// children once it is known whether there is one.
#[derive(Properties, PartialEq)]
pub struct WatchProps {
    /// The page.
    pub children: Html,
    /// Called when anything about the sitting has changed.
    pub on_change: Callback<()>,
}

/// See [`WatchProps`].
#[component]
pub fn Watch(props: &WatchProps) -> Html {
    let known = use_state_eq(|| false);
    {
        let (known, on_change) = (known.clone(), props.on_change.clone());
        use_effect_with((), move |()| {
            running::tell(on_change);
            spawn_local(async move {
                training_system::connect().await;
                read().await;
                known.set(true);
                running::told();
                outbox::watch();
            });
        });
    }
    let runs = running::is_running();
    use_effect_with((*known, runs), move |(known, runs)| {
        let watching = (*known && *runs).then(Watching::start);
        move || drop(watching)
    });
    if *known {
        props.children.clone()
    } else {
        html! { <training_system::Awaiting /> }
    }
}

/// The clock and the ears of a running sitting.
struct Watching {
    _looks: Interval,
    _hidden: EventListener,
    _claim: Claim,
}

impl Watching {
    fn start() -> Self {
        running::put_elsewhere(false);
        let claim = Claim::ask(
            "sitting",
            Callback::from(move |by| {
                running::put_elsewhere(by == Holder::Other);
                running::told();
            }),
        );
        let mut last = now_s();
        let mut looks = 0_u32;
        let looking = Interval::new(LOOK_MS, move || {
            let now = now_s();
            looks += 1;
            if !running::is_elsewhere() {
                look(now - last, looks.is_multiple_of(SAVE_EVERY));
            }
            last = now;
        });
        let left = RefCell::new(None::<f64>);
        let hidden = EventListener::new(&gloo::utils::document(), "visibilitychange", move |_| {
            let now_ms = js_sys::Date::now();
            if gloo::utils::document().visibility_state() == VisibilityState::Hidden {
                left.replace(Some(now_ms));
                running::change(|_| {});
            } else if let Some(left_ms) = left.take() {
                // The clock has run on meanwhile; only that the page was left is noted.
                running::change(|sitting| sitting.back(left_ms, now_ms, false));
            }
        });
        Self {
            _looks: looking,
            _hidden: hidden,
            _claim: claim,
        }
    }
}

/// Real time since the page was opened, s; it only goes forward, whatever the clock is set to.
fn now_s() -> f64 {
    gloo::utils::window()
        .performance()
        .map_or(0.0, |clock| clock.now() / 1000.0)
}

fn look(elapsed_s: f64, save: bool) {
    let left_s = running::pass(elapsed_s, js_sys::Date::now());
    if left_s.is_some_and(|left_s| left_s <= LAST_S) {
        running::say_the_last();
    }
    if left_s.is_some_and(|left_s| left_s <= 0.0) && running::is_running() {
        // Whatever was done until now counts.
        hand_in();
    } else if save {
        running::change(|_| {});
    } else {
        running::told();
    }
}

fn hand_in() {
    go_to(&Route::Sitting);
    spawn_local(async {
        // What the browser does not keep is told by the result page, which has it.
        let _ = jobs::hand_in().await;
    });
}
