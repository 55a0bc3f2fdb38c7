//! The page inside a training system: who learns there, what the system is told while an assessment
//! is sat and once it is handed in, and leaving it in order.
//!
//! Three kinds: SCORM 1.2 and SCORM 2004 run-times, found in the windows above the page, and cmi5,
//! which starts the page with an address to speak to. Without any of them all of this does nothing.

mod cmi5;
mod cmi5_statement;
mod fields;
mod scorm;
mod suspend;

use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use wasm_bindgen_futures::spawn_local;
use web_sys::UrlSearchParams;

use crate::app::hooks::go_to;
use crate::app::route::Route;
use crate::app::sitting::running;
use crate::app::training_system::cmi5::Unit;
use crate::app::training_system::scorm::RunTime;
use crate::assess::decide::Decided;
use crate::records::record::Record;

/// Where suspended work stands, in both editions.
const SUSPENDED: &str = "cmi.suspend_data";

/// A training system.
enum System {
    RunTime(RunTime),
    Unit(Box<Unit>),
}

struct Connected {
    system: System,
    /// When, s by the page's own clock.
    since_s: f64,
    /// The last letters that were told, told again when the page is left.
    letters: RefCell<String>,
    is_over: RefCell<bool>,
}

thread_local! {
    static CONNECTED: RefCell<Option<Rc<Connected>>> = const { RefCell::new(None) };
}

fn connected() -> Option<Rc<Connected>> {
    CONNECTED.with_borrow(Clone::clone)
}

/// Looks for a training system, takes up what it kept of an earlier visit, and goes where it points.
pub async fn connect() {
    let system = match Unit::launched().await {
        Some(unit) => System::Unit(Box::new(unit)),
        None => match RunTime::find() {
            Some(run_time) => System::RunTime(run_time),
            None => return,
        },
    };
    let kept = match &system {
        System::RunTime(run_time) => run_time.get(SUSPENDED),
        System::Unit(unit) => unit.kept().await.unwrap_or_default(),
    };
    // What cannot be taken up is begun anew.
    let is_restored = suspend::restore(&kept).await.is_some();
    point(&system, is_restored);
    let one = Rc::new(Connected {
        system,
        since_s: now_s(),
        letters: RefCell::new(kept),
        is_over: RefCell::new(false),
    });
    CONNECTED.set(Some(one.clone()));
    let left = EventListener::new(&gloo::utils::window(), "pagehide", move |_| one.leave());
    // It is listened for as long as the page lives.
    left.forget();
}

/// Goes to what the system has started, unless the address says so already.
fn point(system: &System, is_restored: bool) {
    let location = gloo::utils::window().location();
    if is_restored {
        return go_to(&Route::Sitting);
    }
    if location.hash().is_ok_and(|hash| hash.len() > 2) {
        return;
    }
    let query = location
        .search()
        .ok()
        .and_then(|search| UrlSearchParams::new_with_str(&search).ok());
    let start = match system {
        System::Unit(_) => query.and_then(|query| query.get("start")),
        System::RunTime(run_time) => Some(run_time.get(run_time.model.launch_data())),
    };
    let is_name = |name: &String| {
        !name.is_empty()
            && name
                .chars()
                .all(|c| c.is_ascii_alphanumeric() || c == '_' || c == '-')
    };
    if let Some(name) = start.filter(is_name) {
        go_to(&Route::Assessment(Some(name)));
    }
}

/// The number of the learner, where a training system has started the page.
pub fn learner() -> Option<String> {
    let one = connected()?;
    let number = match &one.system {
        System::RunTime(run_time) => run_time.get(run_time.model.learner()),
        System::Unit(unit) => unit.learner(),
    };
    Some(number).filter(|number| !number.is_empty())
}

/// An assessment has begun.
pub fn begun() {
    if let Some(one) = connected()
        && let System::RunTime(run_time) = &one.system
        && run_time.counts
    {
        run_time.tell(&run_time.model.begun());
    }
    saved();
}

/// Something was done: what there is now is kept by the system too.
pub fn saved() {
    let Some(one) = connected() else { return };
    if !running::is_running() {
        return;
    }
    spawn_local(async move {
        let Some(letters) = suspend::letters().await else {
            return;
        };
        one.keep(&letters).await;
    });
}

/// An assessment is handed in; told once.
pub fn ended(decided: &Decided, records: &[Record]) {
    let Some(one) = connected() else { return };
    if one.is_over.replace(true) {
        return;
    }
    let (decided, records) = (decided.clone(), records.to_vec());
    spawn_local(async move {
        if let Some(letters) = suspend::letters().await {
            one.keep(&letters).await;
        }
        match &one.system {
            System::RunTime(run_time) if run_time.counts => {
                run_time.tell(&run_time.model.ended(&decided, &records));
            }
            System::RunTime(_) => {}
            System::Unit(unit) => unit.ended(&decided, &records).await,
        }
    });
}

/// Where the page leads back to, if a training system has said so.
pub fn way_back() -> Option<String> {
    match &connected()?.system {
        System::RunTime(_) => None,
        System::Unit(unit) => unit.way_back(),
    }
}

/// Leaves the system in order and goes where it wants the learner next.
pub fn go_back() {
    let Some(one) = connected() else { return };
    spawn_local(async move {
        if let System::Unit(unit) = &one.system {
            unit.terminated().await;
            if let Some(to) = unit.way_back() {
                // An address that cannot be gone to leaves the learner here.
                let _ = gloo::utils::window().location().set_href(&to);
            }
        }
    });
}

impl Connected {
    async fn keep(&self, letters: &str) {
        match &self.system {
            System::RunTime(run_time) => {
                if letters.len() <= run_time.model.most_suspended() {
                    run_time.tell(&[(SUSPENDED.to_owned(), letters.to_owned())]);
                }
            }
            System::Unit(unit) => unit.keep(letters).await,
        }
        self.letters.replace(letters.to_owned());
    }

    fn leave(&self) {
        let seconds = now_s() - self.since_s;
        match &self.system {
            System::RunTime(run_time) => {
                let fields = if *self.is_over.borrow() {
                    run_time.model.over(seconds)
                } else {
                    run_time.model.suspended(seconds)
                };
                run_time.leave(&fields);
            }
            System::Unit(unit) => unit.leave(),
        }
    }
}

/// Real time since the page was opened, s.
fn now_s() -> f64 {
    gloo::utils::window()
        .performance()
        .map_or(0.0, |clock| clock.now() / 1000.0)
}
