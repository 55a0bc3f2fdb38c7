//! The page inside a training system: who learns there, what the system is told while an assessment
//! is sat and once it is handed in, and leaving it in order.
//!
//! Three kinds: SCORM 1.2 and SCORM 2004 run-times, found in the windows above the page, and cmi5,
//! which starts the page with an address to speak to. Without any of them all of this does nothing.

mod awaiting;
mod cmi5;
mod cmi5_host;
pub mod cmi5_last;
pub mod cmi5_launch;
pub mod cmi5_statement;
mod cmi5_told;
pub mod cmi5_visit;
pub mod fields;
mod first;
mod notice;
mod reloads;
mod scorm;
pub mod suspend;
mod trouble;

use std::cell::Cell;
use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use js_sys::Reflect;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;
use web_sys::UrlSearchParams;

use crate::app::hooks::go_to;
use crate::app::route::Route;
use crate::app::sitting::running;
use crate::app::sitting::state::Sitting;
use crate::app::store::Store;
use crate::app::training_system::cmi5::Unit;
use crate::app::training_system::scorm::RunTime;
use crate::app::training_system::suspend::Found;
use crate::app::training_system::suspend::Started;
use crate::app::training_system::trouble::ENDED;
use crate::app::training_system::trouble::NO_ROOM;
use crate::app::training_system::trouble::NOT_TOLD;
use crate::app::training_system::trouble::say;
use crate::assess::decide::Decided;
use crate::records::record::Record;

pub use awaiting::Awaiting;
pub use notice::notice;
pub use trouble::trouble;

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
    /// What came of the assessment, until it is told.
    untold: RefCell<Option<(Decided, Vec<Record>)>>,
    is_telling: Cell<bool>,
    is_over: Cell<bool>,
    /// The learner goes back to the course as soon as that is told.
    goes_back: Cell<bool>,
}

thread_local! {
    static CONNECTED: RefCell<Option<Rc<Connected>>> = const { RefCell::new(None) };
}

fn connected() -> Option<Rc<Connected>> {
    CONNECTED.with_borrow(Clone::clone)
}

/// Looks for a training system, takes up what it kept of an earlier visit, and goes where it points.
pub async fn connect() {
    let found = match Unit::launched().await {
        Ok(Some(unit)) => Ok(Some(System::Unit(Box::new(unit)))),
        Ok(None) => RunTime::find().map(|found| found.map(System::RunTime)),
        Err(refused) => Err(refused),
    };
    awaiting::over();
    let system = match found {
        Ok(Some(system)) => system,
        Ok(None) => return,
        Err(refused) => {
            trouble::begin_with(refused.words());
            return point(started());
        }
    };
    match &system {
        System::Unit(unit) if unit.is_over() => look_back(unit).await,
        System::Unit(unit) => {
            let by = Started {
                learner: unit.learner(),
                is_first: false,
            };
            let start = unit.start().or_else(started);
            take_up(unit.kept().unwrap_or_default(), &by, start).await;
        }
        System::RunTime(run_time) => {
            let by = Started {
                learner: run_time.get(run_time.model.learner()),
                is_first: run_time.get(run_time.model.entry()) == "ab-initio",
            };
            let start = run_time.get(run_time.model.launch_data());
            take_up(&run_time.get(SUSPENDED), &by, Some(start)).await;
        }
    }
    listen(system);
}

/// Takes up kept work, here or there; what cannot be taken up is begun anew. Who is somewhere in it
/// already, since the page was loaded anew, stays there.
async fn take_up(kept: &str, by: &Started, start: Option<String>) {
    match suspend::restore(kept, by).await {
        Found::Restored => go_to(&Route::Sitting),
        Found::Here if !is_somewhere() || is_at_the_start() => go_to(&Route::Sitting),
        Found::Here => {}
        Found::Nothing => point(start),
    }
}

/// The address says already which screen it is.
fn is_somewhere() -> bool {
    let hash = gloo::utils::window().location().hash();
    hash.is_ok_and(|hash| hash.len() > 2)
}

/// It is the one where an assessment begins.
fn is_at_the_start() -> bool {
    let hash = gloo::utils::window().location().hash();
    hash.is_ok_and(|hash| matches!(Route::parse(&hash), Route::Assessment(_)))
}

/// The page was loaded anew after its session had ended: that is said, unless all was told in it.
async fn look_back(unit: &Unit) {
    let kept = Store::open().await.get(running::KEY).await.ok().flatten();
    let sitting = kept.and_then(|text| Sitting::read(&text));
    let is_told = sitting
        .as_ref()
        .is_some_and(|own| own.handed_in && unit.has_told(own.started_ms));
    if !is_told {
        trouble::begin_with(ENDED);
    }
    match sitting {
        Some(_) => go_to(&Route::Sitting),
        None => point(started()),
    }
}

/// From now on the system is spoken to, for as long as the page lives.
fn listen(system: System) {
    let one = Rc::new(Connected {
        system,
        since_s: now_s(),
        untold: RefCell::default(),
        is_telling: Cell::new(false),
        is_over: Cell::new(false),
        goes_back: Cell::new(false),
    });
    CONNECTED.set(Some(one.clone()));
    reloads::watch();
    let (back, again) = (one.clone(), one.clone());
    let window = gloo::utils::window();
    EventListener::new(&window, "pagehide", move |_| one.leave()).forget();
    EventListener::new(&window, "pageshow", move |event| {
        let persisted = Reflect::get(event, &JsValue::from_str("persisted"));
        if persisted.is_ok_and(|kept| kept.is_truthy()) {
            again.came_back();
        }
    })
    .forget();
    EventListener::new(&window, "online", move |_| {
        let back = back.clone();
        spawn_local(async move { back.tell().await });
        spawn_local(cmi5_last::send_left());
    })
    .forget();
}

/// The name that the page's address is started with.
fn started() -> Option<String> {
    let search = gloo::utils::window().location().search().ok()?;
    UrlSearchParams::new_with_str(&search).ok()?.get("start")
}

/// Goes to the assessment that the system has started, unless the address says so already.
fn point(start: Option<String>) {
    if is_somewhere() {
        return;
    }
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

/// A training system has started the page.
pub fn is_there() -> bool {
    connected().is_some()
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

/// An assessment is handed in; told once, and again until the system has taken it.
pub fn ended(decided: &Decided, records: &[Record]) {
    let Some(one) = connected() else { return };
    if one.is_over.get() {
        return;
    }
    one.untold
        .replace(Some((decided.clone(), records.to_vec())));
    spawn_local(async move { one.tell().await });
}

/// Where the page leads back to, if a training system has said so.
pub fn way_back() -> Option<String> {
    match &connected()?.system {
        System::RunTime(_) => None,
        System::Unit(unit) => unit.way_back(),
    }
}

/// Leaves the system in order and goes where it wants the learner next, once the result is told.
pub fn go_back() {
    let Some(one) = connected() else { return };
    one.goes_back.set(true);
    spawn_local(async move {
        if one.untold.borrow().is_some() {
            one.tell().await;
        } else {
            one.go().await;
        }
    });
}

impl Connected {
    /// Tells what came of the assessment, unless that is done or under way.
    async fn tell(&self) {
        let Some((decided, records)) = self.untold.borrow().clone() else {
            return;
        };
        if self.is_telling.replace(true) {
            return;
        }
        if let Some(letters) = suspend::letters().await {
            self.keep(&letters).await;
        }
        let is_told = match &self.system {
            System::RunTime(run_time) => {
                run_time.ended(&decided, &records);
                true
            }
            System::Unit(unit) => unit.ended(&decided, &records).await,
        };
        self.is_telling.set(false);
        say((!is_told).then_some(if self.is_shut() { ENDED } else { NOT_TOLD }));
        if is_told {
            self.untold.take();
            self.is_over.set(true);
        }
        // Once the visit has ended, the result is told in the next one.
        if self.goes_back.replace(false) && (is_told || self.is_shut()) {
            self.go().await;
        }
    }

    /// Says the last statement and goes where the learner comes from.
    async fn go(&self) {
        if let System::Unit(unit) = &self.system {
            unit.terminated().await;
            if let Some(to) = unit.way_back() {
                // An address that cannot be gone to leaves the learner here.
                let _ = gloo::utils::window().location().set_href(&to);
            }
        }
    }

    /// Keeps work there too. Who only looks leaves what is there as it is.
    async fn keep(&self, letters: &str) {
        match &self.system {
            System::RunTime(run_time) if run_time.counts && run_time.is_open() => {
                let most = run_time.model.most_suspended();
                let has_room = |letters: &String| letters.len() <= most;
                let whole = Some(letters.to_owned()).filter(has_room);
                let short = || suspend::shortened(letters).filter(has_room);
                let kept = whole.or_else(short);
                say(kept.is_none().then_some(NO_ROOM));
                if let Some(kept) = kept {
                    run_time.tell(&[(SUSPENDED.to_owned(), kept)]);
                }
            }
            System::RunTime(_) => {}
            System::Unit(unit) => unit.keep(letters).await,
        }
    }

    /// The system hears nothing more in this visit.
    fn is_shut(&self) -> bool {
        match &self.system {
            System::RunTime(run_time) => !run_time.is_open(),
            System::Unit(unit) => unit.is_over(),
        }
    }

    /// The page was left and is shown again as it was.
    fn came_back(&self) {
        if self.is_shut() && !self.is_over.get() {
            say(Some(ENDED));
        }
    }

    fn leave(&self) {
        let seconds = now_s() - self.since_s;
        match &self.system {
            System::RunTime(run_time) => {
                // It answers at once, so what is untold is told on the way out.
                if let Some((decided, records)) = self.untold.take() {
                    run_time.ended(&decided, &records);
                    self.is_over.set(true);
                }
                let fields = match (run_time.counts, self.is_over.get()) {
                    (true, true) => run_time.model.over(seconds),
                    (true, false) => run_time.model.suspended(seconds),
                    (false, _) => Vec::new(),
                };
                run_time.leave(&fields);
            }
            // Nothing is said where the page comes back and goes on, unless all is told anyway.
            System::Unit(_) if reloads::is_coming() && !self.is_over.get() => {}
            System::Unit(unit) => unit.leave(self.untold.borrow().is_some()),
        }
    }
}

/// Real time since the page was opened, s.
fn now_s() -> f64 {
    gloo::utils::window()
        .performance()
        .map_or(0.0, |clock| clock.now() / 1000.0)
}
