//! Local storage: the fallback where the browser's database does not open.

use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::DomException;
use web_sys::Storage;

use crate::app::store::StorageError;

/// Keeps our keys apart from those of other pages of the same host.
const PREFIX: &str = "tubwright/";

/// Something can be written and read back.
pub fn works() -> bool {
    put("probe", "1").is_ok() && remove("probe").is_ok()
}

/// The text under a key.
pub fn get(key: &str) -> Result<Option<String>, StorageError> {
    storage()?
        .get_item(&format!("{PREFIX}{key}"))
        .map_err(refusal)
}

/// Keeps a text.
pub fn put(key: &str, text: &str) -> Result<(), StorageError> {
    storage()?
        .set_item(&format!("{PREFIX}{key}"), text)
        .map_err(refusal)
}

/// Forgets a text.
pub fn remove(key: &str) -> Result<(), StorageError> {
    storage()?
        .remove_item(&format!("{PREFIX}{key}"))
        .map_err(refusal)
}

/// All texts whose key starts with `prefix`.
pub fn all(prefix: &str) -> Result<Vec<(String, String)>, StorageError> {
    let storage = storage()?;
    let mut found = Vec::new();
    for index in 0..storage.length().map_err(refusal)? {
        let Some(full) = storage.key(index).map_err(refusal)? else {
            continue;
        };
        if let Some(key) = full.strip_prefix(PREFIX)
            && key.starts_with(prefix)
            && let Some(text) = storage.get_item(&full).map_err(refusal)?
        {
            found.push((key.to_owned(), text));
        }
    }
    found.sort();
    Ok(found)
}

fn storage() -> Result<Storage, StorageError> {
    gloo::utils::window()
        .local_storage()
        .ok()
        .flatten()
        .ok_or(StorageError::Refused)
}

fn refusal(error: JsValue) -> StorageError {
    error
        .dyn_ref::<DomException>()
        .map_or(StorageError::Refused, |e| StorageError::of_name(&e.name()))
}
