//! Asking a server, and chance: what the page may do beyond its own files, in one place.

use js_sys::Function;
use js_sys::Reflect;
use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::Headers;
use web_sys::RequestInit;
use web_sys::Response;

use crate::records::seal::Hash;
use crate::say;

/// Longest wait for an answer, ms: whoever has not answered by then is taken to be away.
const LONGEST_MS: u32 = 30_000;

/// What came back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reply {
    /// Status of HTTP.
    pub status: u16,
    /// Text.
    pub text: String,
    /// Version of what was asked for, as its server names it.
    pub etag: Option<String>,
}

impl Reply {
    /// The server did what was asked.
    pub fn is_ok(&self) -> bool {
        (200..300).contains(&self.status)
    }
}

/// Asks; `None` when nobody answers in time, or the browser does not let the page ask there. With
/// `outlives` the browser sends it even while the page is closed.
pub async fn ask(
    method: &str,
    address: &str,
    headers: &[(&str, &str)],
    body: Option<&str>,
    outlives: bool,
) -> Option<Reply> {
    let with = Headers::new().ok()?;
    for (name, value) in headers {
        with.append(name, value).ok()?;
    }
    let init = RequestInit::new();
    init.set_method(method);
    init.set_headers(&with);
    if let Some(body) = body {
        init.set_body(&JsValue::from_str(body));
    }
    if outlives {
        Reflect::set(&init, &JsValue::from_str("keepalive"), &JsValue::TRUE).ok()?;
    } else {
        // A browser that cannot give up waits on.
        let _ = give_up(&init);
    }
    let request = gloo::utils::window().fetch_with_str_and_init(address, &init);
    let response: Response = JsFuture::from(request).await.ok()?.dyn_into().ok()?;
    let text = JsFuture::from(response.text().ok()?).await.ok()?;
    Some(Reply {
        status: response.status(),
        etag: response.headers().get("ETag").ok().flatten(),
        text: text.as_string().unwrap_or_default(),
    })
}

/// Has the browser give up when it has waited long enough.
fn give_up(init: &RequestInit) -> Result<(), JsValue> {
    let signal = Reflect::get(&js_sys::global(), &JsValue::from_str("AbortSignal"))?;
    let timeout: Function = Reflect::get(&signal, &JsValue::from_str("timeout"))?.dyn_into()?;
    let after = timeout.call1(&signal, &JsValue::from(LONGEST_MS))?;
    Reflect::set(init, &JsValue::from_str("signal"), &after).map(drop)
}

/// A text file of this site, by its address relative to the page.
pub async fn text_of(address: &str) -> Option<String> {
    let reply = ask("GET", address, &[], None, false).await?;
    reply.is_ok().then_some(reply.text)
}

/// A file of this site as it is, by its address relative to the page; without a network as the browser
/// has kept it.
///
/// # Errors
/// What is in the way, in words.
pub async fn bytes_of(address: &str) -> Result<Vec<u8>, String> {
    let none = || say!("nobody answers, and this browser has not kept it").to_owned();
    let cut = |_| say!("it came in pieces only").to_owned();
    let asked = JsFuture::from(gloo::utils::window().fetch_with_str(address));
    let response: Response = asked
        .await
        .ok()
        .and_then(|answer| answer.dyn_into().ok())
        .ok_or_else(none)?;
    if !response.ok() {
        return Err(say!(
            "the server answers {status}",
            status = response.status()
        ));
    }
    let buffer = JsFuture::from(response.array_buffer().map_err(cut)?).await;
    Ok(Uint8Array::new(&buffer.map_err(cut)?).to_vec())
}

/// 32 bytes by chance, from the browser's own source, which also works over plain http; `None` where
/// there is none.
pub fn random() -> Option<Hash> {
    let array = Uint8Array::new_with_length(32);
    let source = gloo::utils::window().crypto().ok()?;
    source
        .get_random_values_with_array_buffer_view(&array)
        .ok()?;
    let mut bytes = [0; 32];
    array.copy_to(&mut bytes);
    Some(Hash(bytes))
}
