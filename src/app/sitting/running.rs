//! The one sitting of this browser: what there is of it, and how it is changed and kept.

use std::cell::Cell;
use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::sitting::state::Sitting;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::assess::assessment_file::AidsFile;
use crate::records::sitting::Assessment;

/// The key under which it is kept.
pub const KEY: &str = "sitting";

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
    static AT_THE_END: RefCell<Option<Callback<()>>> = const { RefCell::new(None) };
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

/// Puts one in place of what there is, and keeps nothing yet.
pub fn put(now: Option<Running>) {
    NOW.set(now);
}

/// Lets time pass in it, s and ms; time left after it, s.
pub fn pass(elapsed_s: f64, now_ms: f64) -> Option<f64> {
    NOW.with_borrow_mut(|now| {
        let now = now.as_mut()?;
        now.sitting.pass(elapsed_s, now_ms);
        Some(now.left_s())
    })
}

/// Says whether another tab has it.
pub fn put_elsewhere(is_elsewhere: bool) {
    ELSEWHERE.set(is_elsewhere);
}

/// Says who is to be told of changes.
pub fn tell(changed: Callback<()>) {
    CHANGED.set(Some(changed));
}

/// What is still to be said of the job on the screen when time runs out; none when nothing is.
pub fn at_the_end(say: Option<Callback<()>>) {
    AT_THE_END.set(say);
}

/// Has that said, once.
pub fn say_the_last() {
    if let Some(say) = AT_THE_END.take() {
        say.emit(());
    }
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

/// Whoever shows the sitting is told that something of it has changed.
pub fn told() {
    if let Some(changed) = CHANGED.with_borrow(Clone::clone) {
        changed.emit(());
    }
}
