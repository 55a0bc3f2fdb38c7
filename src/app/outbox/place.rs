//! The store that results go to: address and credentials as the instructor gave them, and what an
//! answer of it means.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde::Deserialize;
use serde::Serialize;

use crate::app::net;
use crate::app::net::Reply;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::say;
use crate::scenario::read::read_back;

/// Where it is kept.
pub const KEY: &str = "lrs";

/// Which version of the interface is spoken.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Version {
    /// What the store says that it speaks.
    #[default]
    #[serde(rename = "told")]
    Told,
    /// 1.0.3.
    #[serde(rename = "1.0.3")]
    One,
    /// 2.0.0.
    #[serde(rename = "2.0.0")]
    Two,
}

impl Version {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Told, Self::One, Self::Two];

    /// As people call it.
    pub fn words(self) -> &'static str {
        match self {
            Self::Told => say!("as the store says"),
            Self::One => "1.0.3",
            Self::Two => "2.0.0",
        }
    }
}

/// A store of learning records.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// Address, without `/statements`.
    pub address: String,
    /// User.
    pub user: String,
    /// Password.
    pub password: String,
    /// Version of the interface.
    #[serde(default)]
    pub version: Version,
}

/// What is kept of a store.
pub fn is_place(text: &str) -> bool {
    Place::read(text).is_some()
}

/// What follows from an answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Next {
    /// The store has it.
    Done,
    /// Some other time; why.
    Later(String),
    /// One by one: something in it is refused.
    Split,
    /// This one statement is refused as it is; why.
    Parked(String),
}

/// What an answer to `n` statements means; none is no answer.
pub fn after(reply: Option<&Reply>, n: usize) -> Next {
    let Some(reply) = reply else {
        return Next::Later(
            say!("nobody answers: there is no network, or the store does not let this page speak to it")
                .to_owned(),
        );
    };
    match (reply.status, n) {
        (200..300, _) => Next::Done,
        (400 | 409 | 413 | 422, 2..) => Next::Split,
        // Of 409: what was taken before is taken again, so another statement has this one's id.
        (400 | 409 | 413 | 422, _) => Next::Parked(say!(
            "refused ({status}): {why}",
            status = reply.status,
            why = reply.text.chars().take(200).collect::<String>()
        )),
        (401 | 403, _) => {
            Next::Later(say!("the store refuses the user or the password").to_owned())
        }
        (status, _) => Next::Later(say!("the store answers {status}", status)),
    }
}

impl Place {
    /// Reads what was kept; `None` for anything else.
    pub fn read(text: &str) -> Option<Self> {
        read_back(text)
    }

    /// The store that is set, if one is.
    pub async fn kept() -> Option<Self> {
        let text = Store::open().await.get(KEY).await.ok().flatten()?;
        Self::read(&text).filter(|place| !place.address.is_empty())
    }

    /// Keeps it.
    ///
    /// # Errors
    /// When the browser refuses or has no room.
    pub async fn keep(&self) -> Result<(), StorageError> {
        let text = serde_json::to_string(self).map_err(|_| StorageError::Refused)?;
        Store::open().await.put(KEY, &text).await
    }

    /// An address that can be one.
    pub fn is_address(&self) -> bool {
        let is_web = ["https://", "http://"]
            .iter()
            .any(|start| self.address.starts_with(start));
        is_web
            && !self
                .address
                .contains(|c: char| c.is_whitespace() || c.is_control() || c == '"')
    }

    /// Sends statements, a JSON list.
    pub async fn send(&self, version: &str, list: &str) -> Option<Reply> {
        let basic = format!(
            "Basic {}",
            STANDARD.encode(format!("{}:{}", self.user, self.password))
        );
        let headers = [
            ("Authorization", basic.as_str()),
            ("X-Experience-API-Version", version),
            ("Content-Type", "application/json"),
        ];
        let address = format!("{}/statements", self.address.trim_end_matches('/'));
        net::ask("POST", &address, &headers, Some(list), false).await
    }

    /// The version of the interface to speak.
    pub async fn version(&self) -> &'static str {
        match self.version {
            Version::Told => {
                let address = format!("{}/about", self.address.trim_end_matches('/'));
                told(net::ask("GET", &address, &[], None, false).await.as_ref())
            }
            Version::One => ONE,
            Version::Two => TWO,
        }
    }
}

const ONE: &str = "1.0.3";
const TWO: &str = "2.0.0";

/// The version by what a store says about itself: the newer one where it has nothing older.
fn told(about: Option<&Reply>) -> &'static str {
    #[derive(Deserialize)]
    struct About {
        version: Vec<String>,
    }
    let about = about
        .filter(|reply| reply.is_ok())
        .and_then(|reply| read_back::<About>(&reply.text));
    let is_new = |about: About| {
        !about.version.is_empty() && about.version.iter().all(|v| v.starts_with("2."))
    };
    if about.is_some_and(is_new) { TWO } else { ONE }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reply(status: u16) -> Reply {
        Reply {
            status,
            text: "why".to_owned(),
            etag: None,
        }
    }

    #[test]
    fn nothing_is_lost_and_nothing_is_sent_for_ever() {
        assert_eq!(after(Some(&reply(204)), 50), Next::Done);
        for status in [400, 409, 422] {
            assert_eq!(after(Some(&reply(status)), 50), Next::Split, "{status}");
            // What was taken before is answered by 204 when it comes again: 409 is another one's id.
            let alone = after(Some(&reply(status)), 1);
            assert!(matches!(alone, Next::Parked(_)), "{status}");
        }
        for status in [401, 429, 500, 503] {
            assert!(
                matches!(after(Some(&reply(status)), 1), Next::Later(_)),
                "{status}"
            );
        }
        assert!(matches!(after(None, 7), Next::Later(_)));
    }

    #[test]
    fn the_newer_version_is_spoken_only_where_there_is_no_older_one() {
        let about = |status, text: &str| Reply {
            status,
            text: text.to_owned(),
            etag: None,
        };
        for (reply, version) in [
            (
                about(200, "{\"version\": [\"2.0.0\"], \"extensions\": {}}"),
                "2.0.0",
            ),
            (about(200, "{\"version\": [\"1.0.3\", \"2.0.0\"]}"), "1.0.3"),
            (about(200, "{\"version\": []}"), "1.0.3"),
            (about(404, "{\"version\": [\"2.0.0\"]}"), "1.0.3"),
            (about(200, "<html>"), "1.0.3"),
        ] {
            assert_eq!(told(Some(&reply)), version, "{}", reply.text);
        }
        assert_eq!(told(None), "1.0.3");
    }

    #[test]
    fn a_place_kept_before_there_were_versions_is_read() {
        let kept = "{\"address\": \"https://store.example\", \"user\": \"u\", \"password\": \"p\"}";
        let place = Place::read(kept).expect("reads");
        assert_eq!(place.version, Version::Told);
        for version in Version::ALL {
            let text = serde_json::to_string(&Place {
                version,
                ..place.clone()
            });
            let again = Place::read(&text.expect("writes")).expect("reads");
            assert_eq!(again.version, version);
        }
    }

    #[test]
    fn an_address_is_a_web_address() {
        for (address, is) in [
            ("https://store.example/xAPI", true),
            ("http://10.0.0.2:8100", true),
            ("javascript:alert(1)", false),
            ("https://a b", false),
            ("", false),
        ] {
            let place = Place {
                address: address.to_owned(),
                ..Place::default()
            };
            assert_eq!(place.is_address(), is, "{address}");
        }
    }
}
