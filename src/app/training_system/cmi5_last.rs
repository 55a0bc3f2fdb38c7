//! The last statement of a session, kept until the store is known to have it.
//!
//! A page that goes away cannot hear whether it was taken. So the next page that a course starts asks the
//! store for it by its id, with the key of the session it belongs to, and sends it only where the store
//! does not have it: nothing is said twice. cmi5 orders statements by their moment, not by their arrival,
//! and a session is open until its last statement has come or the system has given it up; one that it has
//! given up is refused, and then it is let go here too.

use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;
use web_sys::Storage;

use crate::app::net::Reply;
use crate::app::training_system::cmi5_host::Host;
use crate::app::training_system::cmi5_host::Sent;
use crate::app::training_system::cmi5_host::sent;
use crate::assess::date;
use crate::scenario::read::read_back;

/// Keys of what is kept start so.
const PREFIX: &str = "tubwright cmi5 last ";
/// No session is open for longer, ms: three days.
const LONGEST_MS: f64 = 3.0 * 86_400_000.0;

/// A last statement with the store that it is for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Last {
    host: Host,
    statement: Value,
}

/// What the store says of a statement that it was asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum There {
    Has,
    Lacks,
    /// It does not let the session in any more.
    Shut,
    Away,
}

impl Last {
    /// Kept from now on.
    pub fn kept(host: Host, statement: Value) -> Self {
        let last = Self { host, statement };
        if let (Some(storage), Ok(text)) = (storage(), serde_json::to_string(&last)) {
            // A browser that keeps nothing has this one chance.
            let _ = storage.set_item(&last.key(), &text);
        }
        last
    }

    /// Sends it, even while the page is closed. What is taken or refused is not kept any longer.
    pub async fn send(self) {
        if self.host.send(&self.statement, true).await != Sent::Away {
            self.forget();
        }
    }

    fn id(&self) -> &str {
        self.statement["id"].as_str().unwrap_or_default()
    }

    fn key(&self) -> String {
        format!("{PREFIX}{}", self.id())
    }

    fn forget(&self) {
        if let Some(storage) = storage() {
            // What stays is too old some day.
            let _ = storage.remove_item(&self.key());
        }
    }

    /// No session that it belongs to can be open any more, or its moment is none.
    pub fn is_too_old(&self, now_ms: f64) -> bool {
        let at = self.statement["timestamp"].as_str().unwrap_or_default();
        date::moment_ms(at).is_none_or(|at| now_ms - at as f64 > LONGEST_MS)
    }

    async fn send_if_lacking(self) {
        if self.is_too_old(js_sys::Date::now()) {
            return self.forget();
        }
        let path = format!("statements?statementId={}", self.id());
        let reply = self.host.ask("GET", &path, None, None).await;
        match there(reply.as_ref(), self.id()) {
            There::Has | There::Shut => self.forget(),
            There::Lacks => self.send().await,
            There::Away => {}
        }
    }
}

/// What an answer means. Some stores answer with a list, which may be empty.
fn there(reply: Option<&Reply>, id: &str) -> There {
    match reply {
        Some(reply) if reply.is_ok() && reply.text.contains(id) => There::Has,
        Some(reply) if reply.is_ok() || reply.status == 404 => There::Lacks,
        reply => match sent(reply) {
            Sent::Away => There::Away,
            Sent::Taken | Sent::Refused => There::Shut,
        },
    }
}

/// Sends what earlier sessions have left.
pub async fn send_left() {
    for last in left() {
        last.send_if_lacking().await;
    }
}

fn left() -> Vec<Last> {
    let Some(storage) = storage() else {
        return Vec::new();
    };
    let n = storage.length().unwrap_or(0);
    let keys = (0..n).filter_map(|at| storage.key(at).ok().flatten());
    keys.filter(|key| key.starts_with(PREFIX))
        .filter_map(|key| storage.get_item(&key).ok().flatten())
        .filter_map(|text| read_back(&text))
        .collect()
}

fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn reply(status: u16, text: &str) -> Reply {
        Reply {
            status,
            text: text.to_owned(),
            etag: None,
        }
    }

    #[test]
    fn what_the_store_has_is_not_sent_again_and_what_it_lacks_is() {
        for (status, text, means) in [
            (200, "{\"id\": \"one\"}", There::Has),
            (200, "{\"statements\": [{\"id\": \"one\"}]}", There::Has),
            (200, "{\"statements\": []}", There::Lacks),
            (404, "", There::Lacks),
            (401, "", There::Shut),
            (403, "", There::Shut),
            (503, "", There::Away),
            (429, "", There::Away),
        ] {
            assert_eq!(
                there(Some(&reply(status, text)), "one"),
                means,
                "{status} {text}"
            );
        }
        assert_eq!(there(None, "one"), There::Away);
    }

    #[test]
    fn after_three_days_no_session_is_waited_for() {
        let last = |at: &str| Last {
            host: Host {
                endpoint: "https://s.example/".to_owned(),
                token: "t".to_owned(),
                agent: "{}".to_owned(),
                activity: "a".to_owned(),
                registration: "r".to_owned(),
            },
            statement: json!({"id": "one", "timestamp": at}),
        };
        let day_ms = 86_400_000.0;
        assert!(!last("1970-01-01T00:00:00.000Z").is_too_old(2.9 * day_ms));
        assert!(last("1970-01-01T00:00:00.000Z").is_too_old(3.1 * day_ms));
        assert!(last("").is_too_old(0.0));
        let text = serde_json::to_string(&last("x")).expect("writes");
        assert_eq!(read_back::<Last>(&text), Some(last("x")));
    }
}
