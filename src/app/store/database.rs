//! The browser's database as a map from key to text, with promises instead of events.

use gloo::events::EventListener;
use js_sys::Function;
use js_sys::Promise;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::DomException;
use web_sys::EventTarget;
use web_sys::IdbDatabase;
use web_sys::IdbObjectStore;
use web_sys::IdbRequest;
use web_sys::IdbTransaction;
use web_sys::IdbTransactionMode;

use crate::app::store::StorageError;

const NAME: &str = "tubwright";
const VERSION: u32 = 1;
const TABLE: &str = "texts";

/// An open database.
#[derive(Clone)]
pub struct Database {
    handle: IdbDatabase,
}

impl Database {
    /// Opens the database, and makes its one table the first time.
    pub async fn open() -> Result<Self, StorageError> {
        let factory = gloo::utils::window()
            .indexed_db()
            .ok()
            .flatten()
            .ok_or(StorageError::Refused)?;
        let request = factory.open_with_u32(NAME, VERSION).map_err(refusal)?;
        let made = request.clone();
        let upgrade = EventListener::once(&request, "upgradeneeded", move |_| {
            if let Ok(value) = made.result() {
                // A failure shows again as a failed transaction.
                let _ = value
                    .unchecked_into::<IdbDatabase>()
                    .create_object_store(TABLE);
            }
        });
        let opened = result(&request).await;
        drop(upgrade);
        Ok(Self {
            handle: opened?.unchecked_into(),
        })
    }

    /// The text under a key.
    pub async fn get(&self, key: &str) -> Result<Option<String>, StorageError> {
        let (_, table) = self.table(IdbTransactionMode::Readonly)?;
        let request = table.get(&JsValue::from_str(key)).map_err(refusal)?;
        Ok(result(&request).await?.as_string())
    }

    /// Keeps a text; returns once it is written.
    pub async fn put(&self, key: &str, text: &str) -> Result<(), StorageError> {
        let (transaction, table) = self.table(IdbTransactionMode::Readwrite)?;
        table
            .put_with_key(&JsValue::from_str(text), &JsValue::from_str(key))
            .map_err(refusal)?;
        written(&transaction).await
    }

    /// Forgets a text.
    pub async fn remove(&self, key: &str) -> Result<(), StorageError> {
        let (transaction, table) = self.table(IdbTransactionMode::Readwrite)?;
        table.delete(&JsValue::from_str(key)).map_err(refusal)?;
        written(&transaction).await
    }

    /// All texts whose key starts with `prefix`, by key.
    pub async fn all(&self, prefix: &str) -> Result<Vec<(String, String)>, StorageError> {
        let (_, table) = self.table(IdbTransactionMode::Readonly)?;
        let keys = result(&table.get_all_keys().map_err(refusal)?).await?;
        let mut found = Vec::new();
        for key in js_sys::Array::from(&keys)
            .iter()
            .filter_map(|key| key.as_string())
        {
            if key.starts_with(prefix)
                && let Some(text) = self.get(&key).await?
            {
                found.push((key, text));
            }
        }
        Ok(found)
    }

    fn table(
        &self,
        mode: IdbTransactionMode,
    ) -> Result<(IdbTransaction, IdbObjectStore), StorageError> {
        let transaction = self
            .handle
            .transaction_with_str_and_mode(TABLE, mode)
            .map_err(refusal)?;
        let table = transaction.object_store(TABLE).map_err(refusal)?;
        Ok((transaction, table))
    }
}

async fn result(request: &IdbRequest) -> Result<JsValue, StorageError> {
    if first_event(request, "success", &["error", "blocked"])
        .await
        .is_err()
    {
        let name = request
            .error()
            .ok()
            .flatten()
            .map(|e| e.name())
            .unwrap_or_default();
        return Err(StorageError::of_name(&name));
    }
    request.result().map_err(refusal)
}

async fn written(transaction: &IdbTransaction) -> Result<(), StorageError> {
    if first_event(transaction, "complete", &["error", "abort"])
        .await
        .is_err()
    {
        let name = transaction.error().map(|e| e.name()).unwrap_or_default();
        return Err(StorageError::of_name(&name));
    }
    Ok(())
}

/// Waits for the good event, or fails on the first bad one.
async fn first_event(
    target: &EventTarget,
    good: &'static str,
    bad: &[&'static str],
) -> Result<(), ()> {
    let mut listeners = Vec::new();
    let promise = Promise::new(&mut |resolve, reject| {
        listeners.push(settle(target, good, resolve));
        for name in bad {
            listeners.push(settle(target, name, reject.clone()));
        }
    });
    let outcome = JsFuture::from(promise).await;
    drop(listeners);
    outcome.map(|_| ()).map_err(|_| ())
}

fn settle(target: &EventTarget, name: &'static str, with: Function) -> EventListener {
    EventListener::once(target, name, move |_| {
        // Settling a promise does not throw.
        let _ = with.call0(&JsValue::NULL);
    })
}

fn refusal(error: JsValue) -> StorageError {
    error
        .dyn_ref::<DomException>()
        .map_or(StorageError::Refused, |e| StorageError::of_name(&e.name()))
}
