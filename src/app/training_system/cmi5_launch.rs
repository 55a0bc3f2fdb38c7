//! Launching a cmi5 unit: the five names of its address, the key of the session, the launch data.

use serde_json::Value;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_futures::future_to_promise;
use web_sys::UrlSearchParams;

use crate::app::net;
use crate::app::net::Reply;
use crate::app::training_system::awaiting;
use crate::app::training_system::awaiting::What;
use crate::app::training_system::cmi5_host::Host;
use crate::app::training_system::cmi5_visit::Kept;
use crate::app::training_system::trouble::Refused;

/// What the address of a launch says.
pub struct Named {
    /// The learner, letter for letter.
    pub agent: String,
    endpoint: String,
    fetch: String,
    registration: String,
    activity: String,
}

impl Named {
    /// If the address has all five names.
    pub fn read(query: &UrlSearchParams) -> Option<Self> {
        Some(Self {
            agent: query.get("actor")?,
            endpoint: query.get("endpoint")?,
            fetch: query.get("fetch")?,
            registration: query.get("registration")?,
            activity: query.get("activityId")?,
        })
    }

    /// The store, as who holds the key speaks to it.
    pub fn host(self, token: String) -> Host {
        Host {
            endpoint: format!("{}/", self.endpoint.trim_end_matches('/')),
            token,
            agent: self.agent,
            activity: self.activity,
            registration: self.registration,
        }
    }
}

/// The session of a launch: the one this tab is in, or a new one by its key.
///
/// # Errors
/// When the key is not given, or not waited for. It is given once: it is kept even if nobody waits for it
/// any more.
pub async fn visit(named: &Named) -> Result<Kept, Refused> {
    let slot = format!("tubwright cmi5 {} {}", named.registration, named.fetch);
    if let Some(visit) = Kept::find(slot.clone()) {
        return Ok(visit);
    }
    let (fetch, place) = (named.fetch.clone(), slot.clone());
    let promise = future_to_promise(async move {
        let Some(token) = token(&fetch).await else {
            return Ok(JsValue::NULL);
        };
        let given = JsValue::from_str(&token);
        Kept::begin(place, token);
        Ok(given)
    });
    let asked = awaiting::patiently(What::Key, &named.fetch, async || {
        let given = JsFuture::from(promise.clone()).await;
        given.ok().and_then(|given| given.as_string())
    });
    let token = asked.await.ok_or(Refused::GoneOn)?;
    Ok(Kept::begin(slot, token.ok_or(Refused::NotBegun)?))
}

async fn token(fetch: &str) -> Option<String> {
    let reply = net::ask("POST", fetch, &[], None, false).await?;
    let answer: Value = serde_json::from_str(&reply.text).ok()?;
    answer["auth-token"].as_str().map(str::to_owned)
}

/// The launch data, asked for once a session.
///
/// # Errors
/// When they are not given, or not waited for.
pub async fn data(host: &Host, visit: &Kept) -> Result<Value, Refused> {
    if let Some(data) = visit.now().data {
        return Ok(data);
    }
    let path = host.state_path("LMS.LaunchData");
    let asked = awaiting::patiently(What::Launch, &host.endpoint, async || {
        host.ask("GET", &path, None, None).await
    });
    let reply = asked.await.ok_or(Refused::GoneOn)?.filter(Reply::is_ok);
    let text = reply.ok_or(Refused::NotBegun)?.text;
    let data: Value = serde_json::from_str(&text).map_err(|_| Refused::NotBegun)?;
    visit.change(|visit| visit.data = Some(data.clone()));
    Ok(data)
}

/// What the page is started with, by the launch parameters: whoever keeps the system may have changed
/// them, so they count before the address.
pub fn start(data: &Value) -> Option<String> {
    let parameters: Value = serde_json::from_str(data["launchParameters"].as_str()?).ok()?;
    parameters["start"].as_str().map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn launch_parameters_that_are_not_ours_start_nothing() {
        let with = |parameters: &str| start(&json!({"launchParameters": parameters}));
        let own = with("{\"start\": \"autumn\"}");
        assert_eq!(own.as_deref(), Some("autumn"));
        for other in ["", "autumn", "{}", "{\"start\": 1}", "[1]"] {
            assert_eq!(with(other), None, "{other}");
        }
        assert_eq!(start(&json!({})), None);
    }
}
