//! The page as a cmi5 unit: the token is fetched once, the launch data read, the first and the last
//! statement said, and work in between kept in the state of the training system's store.

use std::cell::Cell;
use std::cell::RefCell;

use serde_json::Value;
use serde_json::json;
use uuid::Uuid;
use web_sys::Storage;
use web_sys::UrlSearchParams;

use crate::app::net;
use crate::app::net::Reply;
use crate::app::sitting::running;
use crate::app::training_system::Refused;
use crate::app::training_system::cmi5_host::Host;
use crate::app::training_system::cmi5_host::Sent;
use crate::app::training_system::cmi5_statement::Launch;
use crate::app::training_system::cmi5_statement::allowed;
use crate::app::training_system::cmi5_statement::defined;
use crate::app::training_system::cmi5_statement::judged;
use crate::app::training_system::cmi5_told::Told;
use crate::app::training_system::suspend;
use crate::assess::date;
use crate::assess::decide::Decided;
use crate::records::record::Record;
use crate::records::xapi;
use crate::records::xapi::Deployment;
use crate::scenario::read::read_back;

/// Where our own state is kept.
const STATE: &str = "tubwright.sitting";
/// What the browser keeps for the visit: the token of the visit that has said its first statement, of
/// the one that has judged, and of the one that has said its last.
const BEGUN: &str = "tubwright cmi5 begun";
const JUDGED: &str = "tubwright cmi5 judged";
const OVER: &str = "tubwright cmi5 over";

/// A launched unit.
pub struct Unit {
    host: Host,
    launch: Launch,
    back: Option<String>,
    since_ms: f64,
    has_begun: Cell<bool>,
    has_judged: Cell<bool>,
    told: RefCell<Told>,
}

impl Unit {
    /// The unit that the address launches; none for any other address.
    ///
    /// # Errors
    /// When the launch fails: the token was fetched before, or the store does not answer.
    pub async fn launched() -> Result<Option<Self>, Refused> {
        let search = gloo::utils::window().location().search();
        let query = search.and_then(|search| UrlSearchParams::new_with_str(&search));
        let Some(named) = query.ok().and_then(|query| named(&query)) else {
            return Ok(None);
        };
        Self::opened(named).await.ok_or(Refused).map(Some)
    }

    async fn opened([endpoint, fetch, agent, registration, activity]: [String; 5]) -> Option<Self> {
        let actor: Value = serde_json::from_str(&agent).ok()?;
        let slot = format!("tubwright cmi5 {registration} {fetch}");
        // The token is given once: a reload takes it from the session.
        let token = match in_session(&slot) {
            Some(token) => token,
            None => token(&fetch).await?,
        };
        // Without it a reload has no token, and the work stays in this browser.
        keep_in_session(&slot, &token);
        let host = Host {
            endpoint: format!("{}/", endpoint.trim_end_matches('/')),
            token,
            agent,
            activity,
            registration,
        };
        let data = host
            .ask("GET", &host.state_path("LMS.LaunchData"), None, None)
            .await
            .filter(Reply::is_ok)?;
        let data: Value = serde_json::from_str(&data.text).ok()?;
        let back = data["returnURL"].as_str();
        let unit = Self {
            launch: Launch {
                actor,
                registration: host.registration.clone(),
                activity: host.activity.clone(),
                template: data["contextTemplate"].clone(),
                mode: data["launchMode"].as_str().unwrap_or("Normal").to_owned(),
                mastery: data["masteryScore"].as_f64(),
            },
            back: back.filter(|to| to.starts_with("http")).map(str::to_owned),
            since_ms: js_sys::Date::now(),
            has_begun: Cell::new(in_session(BEGUN).as_ref() == Some(&host.token)),
            has_judged: Cell::new(in_session(JUDGED).as_ref() == Some(&host.token)),
            told: RefCell::default(),
            host,
        };
        // Asked for, as the specification wants; nothing here depends on the answer.
        let path = format!(
            "agents/profile?agent={}&profileId=cmi5LearnerPreferences",
            String::from(js_sys::encode_uri_component(&unit.host.agent))
        );
        let _ = unit.host.ask("GET", &path, None, None).await;
        // What is not taken now is said again before anything else is.
        let _ = unit.begin().await;
        Some(unit)
    }

    /// Says the first statement, once; `false` when the store has not taken it yet.
    async fn begin(&self) -> bool {
        if self.has_begun.get() {
            return true;
        }
        let is_taken = self.say("initialized", None).await;
        if is_taken {
            self.has_begun.set(true);
            keep_in_session(BEGUN, &self.host.token);
        }
        is_taken
    }

    /// A defined statement now. Its id is the same whenever it is said within one visit, so that a
    /// lost answer does not make it two.
    fn statement(&self, verb: &str, result: Option<Value>) -> Value {
        let at = date::moment(js_sys::Date::now() as i64);
        let name = format!("{} {verb} {}", self.host.registration, self.host.token);
        let id = Uuid::new_v5(&Uuid::NAMESPACE_URL, name.as_bytes());
        defined(&self.launch, verb, result, &id.to_string(), &at)
    }

    /// Says a defined statement; `false` when the store has not taken it.
    async fn say(&self, verb: &str, result: Option<Value>) -> bool {
        let statement = self.statement(verb, result);
        self.host.send(&statement, false).await == Sent::Taken
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

    /// What was kept of an earlier visit, and what it has told.
    pub async fn kept(&self) -> Option<String> {
        let path = self.host.state_path(STATE);
        let reply = self.host.ask("GET", &path, None, None).await?;
        let document: Value = serde_json::from_str(&reply.text)
            .ok()
            .filter(|_| reply.is_ok())?;
        let told = read_back(&document["told"].to_string());
        self.told.replace(told.unwrap_or_default());
        document["letters"].as_str().map(str::to_owned)
    }

    /// Keeps work, and what was told. Who only looks leaves what is there as it is.
    pub async fn keep(&self, letters: &str) {
        if self.launch.only_looks() {
            return;
        }
        let document = json!({"letters": letters, "told": *self.told.borrow()});
        self.host.put_state(STATE, &document).await;
    }

    /// Says what came of the assessment, in the order the specification wants; `false` when
    /// something of it is not taken yet.
    pub async fn ended(&self, decided: &Decided, records: &[Record]) -> bool {
        let began_ms = running::with(|now| now.sitting.started_ms).unwrap_or_default();
        if self.launch.only_looks() || self.told.borrow().is_whole(began_ms) {
            return true;
        }
        // After the last statement of a visit nothing may be said in it.
        if self.is_over() || !self.begin().await {
            return false;
        }
        if !self.host.send_all(&self.own_statements(records)).await {
            return false;
        }
        let duration = self.duration();
        let done = json!({"completion": true, "duration": duration});
        // One visit judges once, even if more than one assessment is sat in it.
        let judged = judged(&self.launch, decided, &duration).filter(|_| !self.has_judged.get());
        for (verb, result) in judged.into_iter().chain([("completed", done)]) {
            if !self.told.borrow().lacks(verb, began_ms) {
                continue;
            }
            if !self.say(verb, Some(result)).await {
                return false;
            }
            self.told.borrow_mut().take(verb, began_ms);
            if verb != "completed" {
                self.has_judged.set(true);
                keep_in_session(JUDGED, &self.host.token);
            }
        }
        self.told.borrow_mut().close(began_ms);
        if let Some(letters) = suspend::letters().await {
            self.keep(&letters).await;
        }
        true
    }

    /// The jobs' own statements: readings, parts, rules broken, scores.
    fn own_statements(&self, records: &[Record]) -> Vec<Value> {
        let place = Deployment {
            base: format!("{}/", self.launch.activity.trim_end_matches('/')),
            home_page: String::new(),
            language: "en".to_owned(),
        };
        let Ok(library) = crate::app::sitting::library() else {
            return Vec::new();
        };
        let all = records.iter().flat_map(|record| {
            let task = library.task(&record.body.job);
            task.map(|task| xapi::statements(record, task, &place))
                .unwrap_or_default()
        });
        let is_allowed = |statement: &Value| {
            let verb = statement["verb"]["display"]["en"]
                .as_str()
                .unwrap_or_default();
            matches!(verb, "interacted" | "breached" | "scored")
        };
        all.filter(is_allowed)
            .map(|statement| allowed(&self.launch, statement))
            .collect()
    }

    fn duration(&self) -> String {
        let used_s = running::with(|now| now.sitting.used_s)
            .unwrap_or((js_sys::Date::now() - self.since_ms) / 1000.0);
        xapi::duration((used_s * 10.0).max(0.0) as u64)
    }

    /// Says the last statement, once.
    pub async fn terminated(&self) {
        self.last(false).await;
    }

    /// The page is put away. A reload comes back to the same session, so nothing is said before the
    /// work is handed in and told.
    pub fn leave(&self, is_untold: bool) {
        let is_handed_in = running::with(|now| now.sitting.handed_in).unwrap_or(false);
        if is_untold || (!is_handed_in && !self.launch.only_looks()) {
            return;
        }
        wasm_bindgen_futures::spawn_local(self.last(true));
    }

    fn is_over(&self) -> bool {
        in_session(OVER).as_ref() == Some(&self.host.token)
    }

    /// The last statement as something that needs nothing of this any more.
    fn last(&self, outlives: bool) -> impl Future<Output = ()> + use<> {
        let is_said = self.is_over();
        // Without a session the statement may be said twice; the store refuses the second.
        keep_in_session(OVER, &self.host.token);
        let statement = self.statement("terminated", Some(json!({"duration": self.duration()})));
        let host = self.host.clone();
        async move {
            if !is_said {
                // Whoever does not take it now learns nothing more of this visit.
                let _ = host.send(&statement, outlives).await;
            }
        }
    }
}

/// The five names of a launch, if the address has them all.
fn named(query: &UrlSearchParams) -> Option<[String; 5]> {
    let [endpoint, fetch, actor, registration, activity] =
        ["endpoint", "fetch", "actor", "registration", "activityId"].map(|name| query.get(name));
    Some([endpoint?, fetch?, actor?, registration?, activity?])
}

async fn token(fetch: &str) -> Option<String> {
    let reply = net::ask("POST", fetch, &[], None, false).await?;
    let answer: Value = serde_json::from_str(&reply.text).ok()?;
    answer["auth-token"].as_str().map(str::to_owned)
}

fn session() -> Option<Storage> {
    gloo::utils::window().session_storage().ok().flatten()
}

fn in_session(slot: &str) -> Option<String> {
    session()?.get_item(slot).ok().flatten()
}

fn keep_in_session(slot: &str, text: &str) {
    if let Some(session) = session() {
        // A browser that keeps nothing has only this page.
        let _ = session.set_item(slot, text);
    }
}
