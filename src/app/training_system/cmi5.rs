//! The page as a cmi5 unit: the key is fetched once, the launch data read, the first and the last
//! statement said, and work in between kept in the state of the training system's store.
//!
//! # When a session ends
//!
//! cmi5 7.1.2 and 9.3.8: the unit must send `terminated` as the last statement of a session, as soon as it
//! has determined that the session will end; watching for the window to close is one of the ways it names.
//! Where none comes, the system says `abandoned`, and the time spent is lost. So leaving the page says
//! `terminated`, handed in or not, sent so that it outlives the page. Being hidden behind another tab is
//! not leaving.
//!
//! A page that is loaded anew is left too, and a browser does not say which of the two it is. What the
//! launch data give after that is no second session: the address of the key works once (8.2.3), and after
//! `terminated` nothing may be said with the key that was given (9.3.8). So where it is known that the page
//! comes back, by the keys for it or by its own buttons, nothing is said, and the page goes on in the same
//! session by what the tab keeps (best practice: persist the session's state). Where it is not known, as
//! with the browser's own button, the session has ended: the page says so and leads back to the course.
//! Nothing is lost: work is in the state of the store with every act, and a result that is not told yet
//! is told in the next session. The same holds for a page that comes back from the browser's memory.
//!
//! Before a result is told that was handed in, the session is not over for the unit: leaving then says
//! nothing, and the next session tells it.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::Promise;
use serde_json::Value;
use serde_json::json;
use uuid::Uuid;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_futures::future_to_promise;
use wasm_bindgen_futures::spawn_local;
use web_sys::UrlSearchParams;

use crate::app::sitting::running;
use crate::app::training_system::awaiting;
use crate::app::training_system::awaiting::What;
use crate::app::training_system::cmi5_host::Host;
use crate::app::training_system::cmi5_host::Sent;
use crate::app::training_system::cmi5_last;
use crate::app::training_system::cmi5_last::Last;
use crate::app::training_system::cmi5_launch;
use crate::app::training_system::cmi5_launch::Named;
use crate::app::training_system::cmi5_statement::Launch;
use crate::app::training_system::cmi5_statement::allowed;
use crate::app::training_system::cmi5_statement::by_mastery;
use crate::app::training_system::cmi5_statement::defined;
use crate::app::training_system::cmi5_statement::judged;
use crate::app::training_system::cmi5_told::Told;
use crate::app::training_system::cmi5_visit::Kept;
use crate::app::training_system::first::first;
use crate::app::training_system::first::rest;
use crate::app::training_system::suspend;
use crate::app::training_system::trouble::Refused;
use crate::assess::date;
use crate::assess::decide::Decided;
use crate::language::in_english;
use crate::records::record::Record;
use crate::records::xapi;
use crate::records::xapi::Deployment;
use crate::scenario::read::read_back;

/// Where our own state is kept.
const STATE: &str = "tubwright.sitting";
/// Longest wait for the last statement before the learner goes back to the course, ms.
const LAST_MS: i32 = 3000;

/// A launched unit.
pub struct Unit {
    host: Host,
    launch: Launch,
    back: Option<String>,
    /// What the course starts the page with.
    start: Option<String>,
    visit: Rc<Kept>,
    /// The first statement, while it is on its way.
    beginning: RefCell<Option<Promise>>,
    told: RefCell<Told>,
    /// Work of an earlier session.
    letters: Option<String>,
}

impl Unit {
    /// The unit that the address launches; none for any other address.
    ///
    /// # Errors
    /// When the launch fails: the key was fetched before, the store does not answer, or the learner does
    /// not wait for it.
    pub async fn launched() -> Result<Option<Self>, Refused> {
        let search = gloo::utils::window().location().search();
        let query = search.and_then(|search| UrlSearchParams::new_with_str(&search));
        let Some(named) = query.ok().and_then(|query| Named::read(&query)) else {
            return Ok(None);
        };
        Self::opened(named).await.map(Some)
    }

    async fn opened(named: Named) -> Result<Self, Refused> {
        let actor: Value = serde_json::from_str(&named.agent).map_err(|_| Refused::NotBegun)?;
        let visit = cmi5_launch::visit(&named).await?;
        let host = named.host(visit.now().token);
        spawn_local(cmi5_last::send_left());
        let data = cmi5_launch::data(&host, &visit).await?;
        let back = data["returnURL"].as_str();
        let launch = Launch::of(actor, &host.registration, &host.activity, &data);
        let mut unit = Self {
            launch,
            back: back.filter(|to| to.starts_with("http")).map(str::to_owned),
            start: cmi5_launch::start(&data),
            visit: Rc::new(visit),
            beginning: RefCell::default(),
            told: RefCell::default(),
            letters: None,
            host,
        };
        if !unit.is_over() {
            unit.ask_preferences();
            unit.read_work().await?;
            // Whoever does not wait for it says it later, before anything else.
            let _ = awaiting::patiently(What::Begun, &unit.host.endpoint, async || {
                unit.begin().await
            })
            .await;
        }
        Ok(unit)
    }

    /// Asked for, as the specification wants; nothing here depends on the answer.
    fn ask_preferences(&self) {
        let host = self.host.clone();
        spawn_local(async move {
            let path = format!(
                "agents/profile?agent={}&profileId=cmi5LearnerPreferences",
                String::from(js_sys::encode_uri_component(&host.agent))
            );
            let _ = host.ask("GET", &path, None, None).await;
        });
    }

    /// Reads what was kept of an earlier session, and what it has told.
    async fn read_work(&mut self) -> Result<(), Refused> {
        let (host, path) = (&self.host, self.host.state_path(STATE));
        let asked = awaiting::patiently(What::Work, &host.endpoint, async || {
            host.ask("GET", &path, None, None).await
        });
        let reply = match asked.await.ok_or(Refused::GoneOn)? {
            Some(reply) if reply.is_ok() => reply,
            // There is none.
            Some(reply) if reply.status == 404 => return Ok(()),
            // Who does not know what was told might tell it twice, and write over what is kept.
            _ if !self.launch.only_looks() => return Err(Refused::NotBegun),
            _ => return Ok(()),
        };
        let document: Value = serde_json::from_str(&reply.text).unwrap_or_default();
        let told = read_back(&document["told"].to_string());
        self.told.replace(told.unwrap_or_default());
        self.letters = document["letters"].as_str().map(str::to_owned);
        Ok(())
    }

    /// Says the first statement, once; `false` when the store has not taken it yet. Asked for while it is
    /// on its way, it is not said a second time.
    async fn begin(&self) -> bool {
        if self.visit.now().has_begun {
            return true;
        }
        let promise = self
            .beginning
            .borrow_mut()
            .get_or_insert_with(|| self.said_first())
            .clone();
        // It is kept whatever comes of it.
        let _ = JsFuture::from(promise).await;
        self.beginning.take();
        self.visit.now().has_begun
    }

    fn said_first(&self) -> Promise {
        // Said again, it has the same moment, and so is the same to the letter.
        let now_ms = js_sys::Date::now();
        self.visit.change(|visit| {
            visit.first_ms.get_or_insert(now_ms);
        });
        let first_ms = self.visit.now().first_ms.unwrap_or(now_ms);
        let statement = self.statement("initialized", None, first_ms);
        let (host, visit) = (self.host.clone(), self.visit.clone());
        future_to_promise(async move {
            if host.send(&statement, false).await == Sent::Taken {
                visit.change(|visit| visit.has_begun = true);
            }
            Ok(JsValue::NULL)
        })
    }

    /// A defined statement. Its id is the same whenever it is said within one session, so that a lost
    /// answer does not make it two.
    fn statement(&self, verb: &str, result: Option<Value>, at_ms: f64) -> Value {
        let at = date::moment(at_ms as i64);
        let name = format!("{} {verb} {}", self.host.registration, self.host.token);
        let id = Uuid::new_v5(&Uuid::NAMESPACE_URL, name.as_bytes());
        defined(&self.launch, verb, result, &id.to_string(), &at)
    }

    /// The learner's number.
    pub fn learner(&self) -> String {
        self.launch.actor["account"]["name"]
            .as_str()
            .unwrap_or_default()
            .to_owned()
    }

    /// Where the learner goes next.
    pub fn way_back(&self) -> Option<String> {
        self.back.clone()
    }

    /// The name of the assessment, where the launch data say one.
    pub fn start(&self) -> Option<String> {
        self.start.clone()
    }

    /// Work that was kept of an earlier session.
    pub fn kept(&self) -> Option<&str> {
        self.letters.as_deref()
    }

    /// Keeps work, and what was told. Who only looks leaves what is there as it is.
    pub async fn keep(&self, letters: &str) {
        if self.launch.only_looks() || self.is_over() {
            return;
        }
        let document = json!({"letters": letters, "told": *self.told.borrow()});
        self.host.put_state(STATE, &document).await;
    }

    /// Says what came of the assessment, in the order the specification wants; `false` when something of
    /// it is not taken yet.
    pub async fn ended(&self, decided: &Decided, records: &[Record]) -> bool {
        let began_ms = running::with(|now| now.sitting.started_ms).unwrap_or_default();
        if self.has_told(began_ms) {
            return true;
        }
        // After the last statement of a session nothing may be said in it.
        if self.is_over() || !self.begin().await {
            return false;
        }
        let own = in_english(|| self.own_statements(records));
        if !self.host.send_all(&own).await {
            return false;
        }
        let duration = used();
        let done = json!({"completion": true, "duration": duration});
        let rules = running::with(|now| now.assessment.file.clone());
        let by_mark = rules.and_then(|file| by_mastery(&self.launch, &file, records));
        let decided = by_mark.as_ref().unwrap_or(decided);
        // One session judges once, even if more than one assessment is sat in it.
        let judged =
            judged(&self.launch, decided, &duration).filter(|_| !self.visit.now().has_judged);
        for (verb, result) in judged.into_iter().chain([("completed", done)]) {
            if !self.told.borrow().lacks(verb, began_ms) {
                continue;
            }
            let statement = self.statement(verb, Some(result), js_sys::Date::now());
            if self.host.send(&statement, false).await != Sent::Taken {
                return false;
            }
            self.told.borrow_mut().take(verb, began_ms);
            if verb != "completed" {
                self.visit.change(|visit| visit.has_judged = true);
            }
        }
        self.told.borrow_mut().close(began_ms);
        self.visit.change(|visit| visit.told_ms = Some(began_ms));
        if let Some(letters) = suspend::letters().await {
            self.keep(&letters).await;
        }
        true
    }

    /// All of the assessment that began then is told, or nothing of it is to be told.
    pub fn has_told(&self, began_ms: f64) -> bool {
        let here = self.visit.now().told_ms;
        self.launch.only_looks()
            || self.told.borrow().is_whole(began_ms)
            || here.is_some_and(|told_ms| (told_ms - began_ms).abs() < 0.5)
    }

    /// The jobs' own statements: readings, parts, rules broken, scores. They lie between the first
    /// statement of the session and now, whenever the work was done.
    fn own_statements(&self, records: &[Record]) -> Vec<Value> {
        let place = Deployment {
            base: format!("{}/", self.launch.activity.trim_end_matches('/')),
            home_page: String::new(),
            language: "en".to_owned(),
        };
        let Ok(library) = crate::app::sitting::library() else {
            return Vec::new();
        };
        let above = self.launch.activity.as_str();
        let all = records.iter().flat_map(|record| {
            let task = library.task(&record.body.job);
            task.map(|task| xapi::statements_under(record, task, &place, Some(above)))
                .unwrap_or_default()
        });
        let is_allowed = |statement: &Value| {
            let verb = statement["verb"]["display"]["en"]
                .as_str()
                .unwrap_or_default();
            matches!(verb, "interacted" | "breached" | "scored")
        };
        let now_ms = js_sys::Date::now() as i64;
        let begun_ms = self.visit.now().first_ms.map_or(now_ms, |ms| ms as i64);
        all.filter(is_allowed)
            .map(|statement| allowed(&self.launch, statement, [begun_ms, now_ms]))
            .collect()
    }

    /// Says the last statement, once, and does not wait for long.
    pub async fn terminated(&self) {
        if let Some(last) = self.last() {
            // What is not taken by then is on its way, and kept.
            first(last.send(), rest(LAST_MS)).await;
        }
    }

    /// The page goes away: the last statement is said, unless something is still to be told.
    pub fn leave(&self, is_untold: bool) {
        if is_untold || running::is_elsewhere() {
            return;
        }
        if let Some(last) = self.last() {
            spawn_local(last.send());
        }
    }

    /// The last statement was made.
    pub fn is_over(&self) -> bool {
        self.visit.now().is_over
    }

    /// The last statement; none where it was made, or where nothing has begun.
    fn last(&self) -> Option<Last> {
        let now_ms = js_sys::Date::now();
        let visit = self.visit.now();
        let ticks = visit.ticks(now_ms).filter(|_| !visit.is_over)?;
        self.visit.change(|visit| visit.is_over = true);
        let result = json!({"duration": xapi::duration(ticks)});
        let statement = self.statement("terminated", Some(result), now_ms);
        Some(Last::kept(self.host.clone(), statement))
    }
}

/// Time used in the assessment.
fn used() -> String {
    let used_s = running::with(|now| now.sitting.used_s).unwrap_or_default();
    xapi::duration((used_s * 10.0).max(0.0) as u64)
}
