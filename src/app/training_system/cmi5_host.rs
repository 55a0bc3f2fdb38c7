//! The store of learning records that launched a cmi5 unit: asked with the token of the launch.

use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;
use serde_json::json;

use crate::app::net;
use crate::app::net::Reply;

/// Version of the Experience API that cmi5 names.
const VERSION: &str = "1.0.3";
/// Statements sent at once: a store refuses a list whole.
const BATCH: usize = 50;

/// Where and as whom the unit speaks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Host {
    /// Address, ending in a slash.
    pub endpoint: String,
    /// What lets it in.
    pub token: String,
    /// The learner, letter for letter as launched: some hosts compare it so.
    pub agent: String,
    /// The unit.
    pub activity: String,
    /// The attempt.
    pub registration: String,
}

/// What came of a statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sent {
    /// The store has it.
    Taken,
    /// The store does not want it.
    Refused,
    /// Nobody answers, or not now.
    Away,
}

/// What an answer means. A statement that the store has from before is taken: its id is made from
/// the visit and the verb.
pub fn sent(reply: Option<&Reply>) -> Sent {
    match reply.map(|reply| reply.status) {
        Some(200..300 | 409) => Sent::Taken,
        Some(408 | 429) => Sent::Away,
        Some(400..500) => Sent::Refused,
        _ => Sent::Away,
    }
}

impl Host {
    /// Asks something; `None` when nobody answers.
    pub async fn ask(
        &self,
        method: &str,
        path: &str,
        body: Option<&str>,
        condition: Option<(&str, &str)>,
    ) -> Option<Reply> {
        self.asked(method, path, body, condition, false).await
    }

    async fn asked(
        &self,
        method: &str,
        path: &str,
        body: Option<&str>,
        condition: Option<(&str, &str)>,
        outlives: bool,
    ) -> Option<Reply> {
        let basic = format!("Basic {}", self.token);
        let mut headers = vec![
            ("Authorization", basic.as_str()),
            ("X-Experience-API-Version", VERSION),
        ];
        if body.is_some() {
            headers.push(("Content-Type", "application/json"));
        }
        headers.extend(condition);
        let address = format!("{}{path}", self.endpoint);
        net::ask(method, &address, &headers, body, outlives).await
    }

    /// Where a document of the state is.
    pub fn state_path(&self, state: &str) -> String {
        format!(
            "activities/state?activityId={}&agent={}&registration={}&stateId={state}",
            quoted(&self.activity),
            quoted(&self.agent),
            quoted(&self.registration)
        )
    }

    /// Puts a document of the state; what another visit has written meanwhile is written over
    /// knowingly.
    pub async fn put_state(&self, state: &str, document: &Value) {
        let path = self.state_path(state);
        let there = self.ask("GET", &path, None, None).await;
        let there = there.filter(Reply::is_ok);
        let etag = there.as_ref().and_then(|reply| reply.etag.clone());
        let condition = condition(there.is_some(), etag.as_deref());
        // Work is kept in this browser too.
        let _ = self
            .ask("PUT", &path, Some(&document.to_string()), Some(condition))
            .await;
    }

    /// Sends one statement; with `outlives` even while the page is closed.
    pub async fn send(&self, statement: &Value, outlives: bool) -> Sent {
        let body = statement.to_string();
        let reply = self
            .asked("POST", "statements", Some(&body), None, outlives)
            .await;
        sent(reply.as_ref())
    }

    /// Sends statements in lists, and one by one where a list is refused; `false` when nobody
    /// answers.
    pub async fn send_all(&self, statements: &[Value]) -> bool {
        for list in statements.chunks(BATCH) {
            let whole = json!(list);
            let reply = self
                .ask("POST", "statements", Some(&whole.to_string()), None)
                .await;
            // A list of which one is known by another text is refused whole as well.
            let is_taken = reply.as_ref().is_some_and(Reply::is_ok);
            if is_taken {
                continue;
            }
            if sent(reply.as_ref()) == Sent::Away {
                return false;
            }
            for one in list {
                // One that is refused alone has a fault that sending again does not mend.
                if self.send(one, false).await == Sent::Away {
                    return false;
                }
            }
        }
        true
    }
}

/// Written where nothing is, or over the very version that was read; where the store does not let
/// its version be seen, over any.
fn condition(is_there: bool, etag: Option<&str>) -> (&'static str, &str) {
    match (is_there, etag) {
        (true, Some(etag)) => ("If-Match", etag),
        (true, None) => ("If-Match", "*"),
        (false, _) => ("If-None-Match", "*"),
    }
}

fn quoted(text: &str) -> String {
    js_sys::encode_uri_component(text).into()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reply(status: u16) -> Reply {
        Reply {
            status,
            text: String::new(),
            etag: None,
        }
    }

    #[test]
    fn what_is_refused_is_told_from_what_may_be_taken_later() {
        for (status, means) in [
            (200, Sent::Taken),
            (204, Sent::Taken),
            (409, Sent::Taken),
            (400, Sent::Refused),
            (401, Sent::Refused),
            (403, Sent::Refused),
            (422, Sent::Refused),
            (408, Sent::Away),
            (429, Sent::Away),
            (500, Sent::Away),
            (503, Sent::Away),
        ] {
            assert_eq!(sent(Some(&reply(status))), means, "{status}");
        }
        assert_eq!(sent(None), Sent::Away);
    }

    #[test]
    fn a_document_is_never_put_without_saying_over_what() {
        assert_eq!(condition(false, None), ("If-None-Match", "*"));
        assert_eq!(condition(true, Some("\"a\"")), ("If-Match", "\"a\""));
        assert_eq!(condition(true, None), ("If-Match", "*"));
    }
}
