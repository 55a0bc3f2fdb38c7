//! The page inside a training system: who learns there, what the system is told while an assessment
//! is sat and once it is handed in, and leaving it in order.
//!
//! Three kinds: SCORM 1.2 and SCORM 2004 run-times, found in the windows above the page, and cmi5,
//! which starts the page with an address to speak to. Without any of them all of this does nothing.

mod cmi5;
mod cmi5_host;
mod cmi5_statement;
mod cmi5_told;
mod fields;
mod scorm;
mod suspend;

use std::cell::Cell;
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

/// A training system has started the page and does not let it begin.
struct Refused;

const NOT_BEGUN: &str = "The training system has started this page but does not let it begin, so it is told nothing of what you do here. Start it anew from the course.";
const NO_ROOM: &str = "The training system has no room for all of your work: it is kept in this browser alone. Go on here, on no other computer, and save the file at the end.";
const NOT_TOLD: &str = "The training system has not taken your result yet. It is told again when the network is back, and by “Back to the course” where that is shown. Save the file.";

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
    static TROUBLE: Cell<Option<&'static str>> = const { Cell::new(None) };
}

/// What the learner should know about the training system, in a sentence or two.
pub fn trouble() -> Option<&'static str> {
    TROUBLE.get()
}

fn say(trouble: Option<&'static str>) {
    if TROUBLE.replace(trouble) != trouble {
        // Whatever shows the sitting shows it too.
        running::change(|_| {});
    }
}

fn connected() -> Option<Rc<Connected>> {
    CONNECTED.with_borrow(Clone::clone)
}

/// Looks for a training system, takes up what it kept of an earlier visit, and goes where it points.
pub async fn connect() {
    let found = match Unit::launched().await {
        Ok(Some(unit)) => Ok(Some(System::Unit(Box::new(unit)))),
        Ok(None) => RunTime::find().map(|found| found.map(System::RunTime)),
        Err(Refused) => Err(Refused),
    };
    let system = match found {
        Ok(Some(system)) => system,
        Ok(None) => return,
        Err(Refused) => {
            TROUBLE.set(Some(NOT_BEGUN));
            return point(started());
        }
    };
    let kept = match &system {
        System::RunTime(run_time) => run_time.get(SUSPENDED),
        System::Unit(unit) => unit.kept().await.unwrap_or_default(),
    };
    // What cannot be taken up is begun anew.
    match suspend::restore(&kept).await {
        Some(()) => go_to(&Route::Sitting),
        None => point(match &system {
            System::Unit(_) => started(),
            System::RunTime(run_time) => Some(run_time.get(run_time.model.launch_data())),
        }),
    }
    let one = Rc::new(Connected {
        system,
        since_s: now_s(),
        untold: RefCell::default(),
        is_telling: Cell::new(false),
        is_over: Cell::new(false),
        goes_back: Cell::new(false),
    });
    CONNECTED.set(Some(one.clone()));
    let back = one.clone();
    let window = gloo::utils::window();
    let left = EventListener::new(&window, "pagehide", move |_| one.leave());
    let online = EventListener::new(&window, "online", move |_| {
        let back = back.clone();
        spawn_local(async move { back.tell().await });
    });
    // They are listened for as long as the page lives.
    left.forget();
    online.forget();
}

/// The name that the page's address is started with.
fn started() -> Option<String> {
    let search = gloo::utils::window().location().search().ok()?;
    UrlSearchParams::new_with_str(&search).ok()?.get("start")
}

/// Goes to the assessment that the system has started, unless the address says so already.
fn point(start: Option<String>) {
    let hash = gloo::utils::window().location().hash();
    if hash.is_ok_and(|hash| hash.len() > 2) {
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
        say((!is_told).then_some(NOT_TOLD));
        if is_told {
            self.untold.take();
            self.is_over.set(true);
        }
        if self.goes_back.replace(false) && is_told {
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
            System::RunTime(run_time) if run_time.counts => {
                let has_room = letters.len() <= run_time.model.most_suspended();
                if has_room {
                    run_time.tell(&[(SUSPENDED.to_owned(), letters.to_owned())]);
                }
                say((!has_room).then_some(NO_ROOM));
            }
            System::RunTime(_) => {}
            System::Unit(unit) => unit.keep(letters).await,
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
