//! Handing a text to the person as a file. It is made when it is asked for, however large.

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
    let options = BlobPropertyBag::new();
    options.set_type(media_type);
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options)?;
    let address = Url::create_object_url_with_blob(&blob)?;
    let link = gloo::utils::document().create_element("a")?;
    link.set_attribute("href", &address)?;
    link.set_attribute("download", name)?;
    if let Some(link) = link.dyn_ref::<HtmlElement>() {
        link.click();
    }
    Url::revoke_object_url(&address)
}
