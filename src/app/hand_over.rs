//! Handing a text or bytes to the person as a file. It is made when it is asked for, however large.

use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::Blob;
use web_sys::BlobPropertyBag;
use web_sys::HtmlElement;
use web_sys::Url;

/// Saves a text as a file of this name and media type, where the browser saves what is downloaded.
///
/// # Errors
/// When the browser refuses.
pub fn save(name: &str, media_type: &str, text: &str) -> Result<(), JsValue> {
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    hand(
        name,
        &Blob::new_with_str_sequence_and_options(&parts, &typed(media_type))?,
    )
}

/// Saves bytes as a file of this name and media type.
///
/// # Errors
/// When the browser refuses.
pub fn save_bytes(name: &str, media_type: &str, bytes: &[u8]) -> Result<(), JsValue> {
    let parts = js_sys::Array::of1(&js_sys::Uint8Array::from(bytes));
    hand(
        name,
        &Blob::new_with_u8_array_sequence_and_options(&parts, &typed(media_type))?,
    )
}

fn typed(media_type: &str) -> BlobPropertyBag {
    let options = BlobPropertyBag::new();
    options.set_type(media_type);
    options
}

fn hand(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(blob)?;
    let link = gloo::utils::document().create_element("a")?;
    link.set_attribute("href", &address)?;
    link.set_attribute("download", name)?;
    if let Some(link) = link.dyn_ref::<HtmlElement>() {
        link.click();
    }
    Url::revoke_object_url(&address)
}
