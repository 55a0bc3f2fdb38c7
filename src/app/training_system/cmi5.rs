//! The page as a cmi5 unit: the token is fetched once, the launch data read, the first and the last
//! statement said, and work in between kept in the state of the training system's store.

use std::cell::Cell;

use serde_json::Value;
use serde_json::json;
use uuid::Uuid;
use web_sys::Storage;

use crate::app::net;
use crate::app::net::Reply;
use crate::app::sitting::running;
use crate::app::training_system::cmi5_statement::Launch;
use crate::app::training_system::cmi5_statement::allowed;
use crate::app::training_system::cmi5_statement::defined;
use crate::app::training_system::cmi5_statement::judged;
use crate::assess::date;
use crate::assess::decide::Decided;
use crate::records::record::Record;
use crate::records::xapi;
use crate::records::xapi::Deployment;

/// Version of the Experience API that cmi5 names.
const VERSION: &str = "1.0.3";
/// Where our own state is kept.
const STATE: &str = "tubwright.sitting";
/// Statements sent at once.
const BATCH: usize = 50;

/// A launched unit.
pub struct Unit {
    endpoint: String,
    token: String,
    launch: Launch,
    /// The learner, letter for letter as launched: some hosts compare it so.
    agent: String,
    back: Option<String>,
    since_ms: f64,
    is_over: Cell<bool>,
}

impl Unit {
    /// The unit that the address launches; none for any other address, or when the launch fails.
    pub async fn launched() -> Option<Self> {
        let search = gloo::utils::window().location().search().ok()?;
        let query = web_sys::UrlSearchParams::new_with_str(&search).ok()?;
        let [endpoint, fetch, actor, registration, activity] =
            ["endpoint", "fetch", "actor", "registration", "activityId"]
                .map(|name| query.get(name));
        let (endpoint, fetch, registration) = (endpoint?, fetch?, registration?);
        let agent = actor?;
        let actor: Value = serde_json::from_str(&agent).ok()?;
        let (session, slot) = (session(), format!("tubwright cmi5 {registration} {fetch}"));
        let kept = session
            .as_ref()
            .and_then(|s| s.get_item(&slot).ok().flatten());
        let is_reload = kept.is_some();
        // The token is given once: a reload takes it from the session.
        let token = match kept {
            Some(token) => token,
            None => token(&fetch).await?,
        };
        if let Some(session) = &session {
            // Without it a reload has no token, and the work stays in this browser.
            let _ = session.set_item(&slot, &token);
        }
        let mut unit = Self {
            endpoint: format!("{}/", endpoint.trim_end_matches('/')),
            token,
            launch: Launch {
                actor,
                registration,
                activity: activity?,
                template: Value::Null,
                mode: String::new(),
                mastery: None,
            },
            agent,
            back: None,
            since_ms: js_sys::Date::now(),
            is_over: Cell::new(false),
        };
        let data = unit
            .ask("GET", &unit.state_path("LMS.LaunchData"), None, &[])
            .await?;
        let data: Value = serde_json::from_str(&data.text).ok()?;
        unit.launch.template = data["contextTemplate"].clone();
        unit.launch.mode = data["launchMode"].as_str().unwrap_or("Normal").to_owned();
        unit.launch.mastery = data["masteryScore"].as_f64();
        unit.back = data["returnURL"]
            .as_str()
            .filter(|to| to.starts_with("http"))
            .map(str::to_owned);
        // Asked for, as the specification wants; nothing here depends on the answer.
        let _ = unit
            .ask(
                "GET",
                &format!(
                    "agents/profile?agent={}&profileId=cmi5LearnerPreferences",
                    quoted(&unit.agent)
                ),
                None,
                &[],
            )
            .await;
        if !is_reload {
            unit.say("initialized", None).await;
        }
        Some(unit)
    }

    async fn ask(
        &self,
        method: &str,
        path: &str,
        body: Option<&str>,
        more: &[(&str, &str)],
    ) -> Option<Reply> {
        let basic = format!("Basic {}", self.token);
        let mut headers = vec![
            ("Authorization", basic.as_str()),
            ("X-Experience-API-Version", VERSION),
        ];
        if body.is_some() {
            headers.push(("Content-Type", "application/json"));
        }
        headers.extend_from_slice(more);
        net::ask(
            method,
            &format!("{}{path}", self.endpoint),
            &headers,
            body,
            false,
        )
        .await
    }

    fn state_path(&self, state: &str) -> String {
        format!(
            "activities/state?activityId={}&agent={}&registration={}&stateId={state}",
            quoted(&self.launch.activity),
            quoted(&self.agent),
            quoted(&self.launch.registration)
        )
    }

    /// Says a defined statement.
    async fn say(&self, verb: &str, result: Option<Value>) {
        let at = date::moment(js_sys::Date::now() as i64);
        let id = Uuid::new_v5(
            &Uuid::NAMESPACE_URL,
            format!(
                "{}{verb}{}{}",
                self.launch.registration, self.since_ms, self.token
            )
            .as_bytes(),
        );
        let statement = defined(&self.launch, verb, result, &id.to_string(), &at);
        // What the store refuses it has its reasons for; the page says nothing twice.
        let _ = self
            .ask("POST", "statements", Some(&statement.to_string()), &[])
            .await;
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

    /// What was kept of an earlier visit.
    pub async fn kept(&self) -> Option<String> {
        let reply = self.ask("GET", &self.state_path(STATE), None, &[]).await?;
        let document: Value = serde_json::from_str(&reply.text)
            .ok()
            .filter(|_| reply.is_ok())?;
        document["letters"].as_str().map(str::to_owned)
    }

    /// Keeps work; what another visit has written meanwhile is written over knowingly.
    pub async fn keep(&self, letters: &str) {
        let path = self.state_path(STATE);
        let there = self.ask("GET", &path, None, &[]).await.filter(Reply::is_ok);
        let etag = there.as_ref().and_then(|reply| reply.etag.clone());
        let condition = match (&there, &etag) {
            (Some(_), Some(etag)) => ("If-Match", etag.as_str()),
            _ => ("If-None-Match", "*"),
        };
        let document = json!({"letters": letters, "sent": self.is_over.get()}).to_string();
        // Work is kept in this browser too.
        let _ = self.ask("PUT", &path, Some(&document), &[condition]).await;
    }

    /// Says what came of the assessment, in the order the specification wants.
    pub async fn ended(&self, decided: &Decided, records: &[Record]) {
        if self.launch.only_looks() || self.was_told().await {
            return;
        }
        for batch in self.own_statements(records).chunks(BATCH) {
            let _ = self
                .ask("POST", "statements", Some(&json!(batch).to_string()), &[])
                .await;
        }
        let duration = self.duration();
        if let Some((verb, result)) = judged(&self.launch, decided, &duration) {
            self.say(verb, Some(result)).await;
        }
        self.say(
            "completed",
            Some(json!({"completion": true, "duration": duration})),
        )
        .await;
        self.is_over.set(true);
        if let Some(letters) = super::suspend::letters().await {
            self.keep(&letters).await;
        }
    }

    /// An earlier visit of this attempt has told it: passed and completed are said once.
    async fn was_told(&self) -> bool {
        let Some(reply) = self.ask("GET", &self.state_path(STATE), None, &[]).await else {
            return false;
        };
        serde_json::from_str::<Value>(&reply.text).is_ok_and(|document| document["sent"] == true)
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
    /// work is handed in.
    pub fn leave(&self) {
        let is_handed_in = running::with(|now| now.sitting.handed_in).unwrap_or(false);
        if !is_handed_in && !self.launch.only_looks() {
            return;
        }
        wasm_bindgen_futures::spawn_local(self.last(true));
    }

    /// The last statement as something that needs nothing of this any more.
    fn last(&self, outlives: bool) -> impl Future<Output = ()> + use<> {
        let slot = "tubwright cmi5 over";
        let said = session().and_then(|s| s.get_item(slot).ok().flatten());
        let again = said.as_deref() == Some(self.token.as_str());
        if let Some(session) = session() {
            // Without a session the statement may be said twice; the store refuses the second.
            let _ = session.set_item(slot, &self.token);
        }
        let at = date::moment(js_sys::Date::now() as i64);
        let id = Uuid::new_v5(
            &Uuid::NAMESPACE_URL,
            format!(
                "{}terminated{}{}",
                self.launch.registration, self.since_ms, self.token
            )
            .as_bytes(),
        );
        let result = json!({"duration": self.duration()});
        let statement = defined(
            &self.launch,
            "terminated",
            Some(result),
            &id.to_string(),
            &at,
        )
        .to_string();
        let address = format!("{}statements", self.endpoint);
        let basic = format!("Basic {}", self.token);
        async move {
            if !again {
                let headers = [
                    ("Authorization", basic.as_str()),
                    ("X-Experience-API-Version", VERSION),
                    ("Content-Type", "application/json"),
                ];
                let _ = net::ask("POST", &address, &headers, Some(&statement), outlives).await;
            }
        }
    }
}

async fn token(fetch: &str) -> Option<String> {
    let reply = net::ask("POST", fetch, &[], None, false).await?;
    let answer: Value = serde_json::from_str(&reply.text).ok()?;
    answer["auth-token"].as_str().map(str::to_owned)
}

fn session() -> Option<Storage> {
    gloo::utils::window().session_storage().ok().flatten()
}

fn quoted(text: &str) -> String {
    js_sys::encode_uri_component(text).into()
}
