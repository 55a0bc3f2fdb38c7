//! The one sitting of this browser: read once, watched while it runs, kept after every change.

use std::cell::Cell;
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
use crate::app::sitting::state::Sitting;
use crate::app::store::Claim;
use crate::app::store::Holder;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::app::training_system;
use crate::assess::assessment_file::AidsFile;
use crate::records::sitting::Assessment;

/// The key under which it is kept.
pub const KEY: &str = "sitting";
/// Between two looks at the clock, ms.
const LOOK_MS: u32 = 1000;
/// Looks between two savings.
const SAVE_EVERY: u32 = 10;

/// The sitting with its assessment read.
#[derive(Clone)]
pub struct Running {
    /// What is kept.
    pub sitting: Sitting,
    /// The assessment.
    pub assessment: Rc<Assessment>,
}

impl Running {
    /// Time left, s.
    pub fn left_s(&self) -> f64 {
        self.sitting.left_s(self.assessment.file.time_limit_min)
    }

    /// What may be used.
    pub fn aids(&self) -> AidsFile {
        self.assessment.file.aids
    }

    /// How many jobs there are.
    pub fn n_jobs(&self) -> usize {
        self.assessment.file.n_jobs()
    }
}

thread_local! {
    static NOW: RefCell<Option<Running>> = const { RefCell::new(None) };
    static ELSEWHERE: Cell<bool> = const { Cell::new(false) };
    static CHANGED: RefCell<Option<Callback<()>>> = const { RefCell::new(None) };
}

/// Asks something of the sitting; `None` when there is none.
pub fn with<T>(ask: impl FnOnce(&Running) -> T) -> Option<T> {
    NOW.with_borrow(|now| now.as_ref().map(ask))
}

/// A sitting that is not handed in yet.
pub fn is_running() -> bool {
    with(|now| now.sitting.is_running()).unwrap_or(false)
}

/// It is open in another tab, which has the clock: here nothing of it is changed for good.
pub fn is_elsewhere() -> bool {
    ELSEWHERE.get()
}

/// Begins one, or replaces one that was handed in.
///
/// # Errors
/// When the browser refuses or has no room; it has begun all the same.
pub async fn begin(sitting: Sitting, assessment: Rc<Assessment>) -> Result<(), StorageError> {
    NOW.set(Some(Running {
        sitting,
        assessment,
    }));
    jobs::forget_all().await;
    keep().await
}

/// Changes it and keeps the change; whoever shows it is told.
pub fn change(change: impl FnOnce(&mut Sitting)) {
    let is_there = NOW.with_borrow_mut(|now| now.as_mut().map(|now| change(&mut now.sitting)));
    if is_there.is_some() {
        told();
        spawn_local(async {
            // What cannot be kept is told by the job's own saving.
            let _ = keep().await;
        });
    }
}

/// Forgets it: this browser is free for the next candidate.
///
/// # Errors
/// When the browser refuses.
pub async fn forget() -> Result<(), StorageError> {
    NOW.set(None);
    jobs::forget_all().await;
    let done = Store::open().await.remove(KEY).await;
    told();
    done
}

/// Writes what there is, unless another tab writes it.
///
/// # Errors
/// When the browser refuses or has no room.
pub async fn keep() -> Result<(), StorageError> {
    if is_elsewhere() {
        return Ok(());
    }
    let text = with(|now| serde_json::to_string(&now.sitting).unwrap_or_default());
    match text {
        Some(text) => Store::open().await.put(KEY, &text).await,
        None => Ok(()),
    }
}

fn told() {
    if let Some(changed) = CHANGED.with_borrow(Clone::clone) {
        changed.emit(());
    }
}

/// Reads what was kept, once; the time since counts.
async fn read() {
    let kept = Store::open().await.get(KEY).await.ok().flatten();
    let Some(mut sitting) = kept.and_then(|text| Sitting::read(&text)) else {
        return;
    };
    let Ok(assessment) = jobs::assessment("assessment", &sitting.text) else {
        return;
    };
    let now_ms = js_sys::Date::now();
    sitting.back(sitting.seen_ms, now_ms, true);
    NOW.set(Some(Running {
        sitting,
        assessment: Rc::new(assessment),
    }));
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
            CHANGED.set(Some(on_change));
            spawn_local(async move {
                training_system::connect().await;
                read().await;
                known.set(true);
                told();
                outbox::watch();
            });
        });
    }
    let runs = is_running();
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
        ELSEWHERE.set(false);
        let claim = Claim::ask(
            "sitting",
            Callback::from(move |by| {
                ELSEWHERE.set(by == Holder::Other);
                told();
            }),
        );
        let mut last = now_s();
        let mut looks = 0_u32;
        let looking = Interval::new(LOOK_MS, move || {
            let now = now_s();
            looks += 1;
            if !is_elsewhere() {
                look(now - last, looks.is_multiple_of(SAVE_EVERY));
            }
            last = now;
        });
        let left = RefCell::new(None::<f64>);
        let hidden = EventListener::new(&gloo::utils::document(), "visibilitychange", move |_| {
            let now_ms = js_sys::Date::now();
            if gloo::utils::document().visibility_state() == VisibilityState::Hidden {
                left.replace(Some(now_ms));
                change(|_| {});
            } else if let Some(left_ms) = left.take() {
                // The clock has run on meanwhile; only that the page was left is noted.
                change(|sitting| sitting.back(left_ms, now_ms, false));
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
    let left_s = NOW.with_borrow_mut(|now| {
        let now = now.as_mut()?;
        now.sitting.pass(elapsed_s, js_sys::Date::now());
        Some(now.left_s())
    });
    if left_s.is_some_and(|left_s| left_s <= 0.0) && is_running() {
        // Whatever was done until now counts.
        go_to(&Route::Sitting);
        spawn_local(async {
            // What the browser does not keep is told by the result page, which has it.
            let _ = jobs::hand_in().await;
        });
    } else if save {
        change(|_| {});
    } else {
        told();
    }
}
