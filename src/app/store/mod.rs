//! Keeping jobs in the browser: IndexedDB, else local storage, else this visit only.
//!
//! Values are JSON text under plain keys. Nothing leaves the browser.

mod across_tabs;
mod database;
mod error;
mod local;
mod one_tab;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod resumed;
mod saved;

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

pub use across_tabs::AcrossTabs;
pub use error::StorageError;
pub use one_tab::Claim;
pub use one_tab::Holder;
pub use saved::SavedJob;

use crate::say;
use database::Database;

/// Where things are kept.
#[derive(Clone)]
pub enum Store {
    /// The browser's database.
    Database(Database),
    /// The browser's smaller, older store.
    Local,
    /// Nowhere that outlives the page.
    Memory(Rc<RefCell<BTreeMap<String, String>>>),
}

thread_local! {
    static OPENED: RefCell<Option<Store>> = const { RefCell::new(None) };
}

impl Store {
    /// The best place this browser offers; asked once per visit.
    pub async fn open() -> Store {
        if let Some(store) = OPENED.with_borrow(Clone::clone) {
            return store;
        }
        let store = match Database::open().await {
            Ok(database) => Store::Database(database),
            Err(_) if local::works() => Store::Local,
            Err(_) => Store::Memory(Rc::default()),
        };
        OPENED.with_borrow_mut(|opened| opened.get_or_insert(store).clone())
    }

    /// What a person should know about the place, in one sentence.
    pub fn words(&self) -> &'static str {
        match self {
            Store::Database(_) | Store::Local => {
                say!("Your jobs are kept in this browser, on this device only.")
            }
            Store::Memory(_) => {
                say!(
                    "This browser does not let the page keep anything: your jobs are gone when you close it."
                )
            }
        }
    }

    /// The text kept under a key.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn get(&self, key: &str) -> Result<Option<String>, StorageError> {
        match self {
            Store::Database(database) => database.get(key).await,
            Store::Local => local::get(key),
            Store::Memory(map) => Ok(map.borrow().get(key).cloned()),
        }
    }

    /// Keeps a text under a key.
    ///
    /// # Errors
    /// When the browser refuses or has no room.
    pub async fn put(&self, key: &str, text: &str) -> Result<(), StorageError> {
        match self {
            Store::Database(database) => database.put(key, text).await,
            Store::Local => local::put(key, text),
            Store::Memory(map) => {
                map.borrow_mut().insert(key.to_owned(), text.to_owned());
                Ok(())
            }
        }
    }

    /// Forgets a key.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn remove(&self, key: &str) -> Result<(), StorageError> {
        match self {
            Store::Database(database) => database.remove(key).await,
            Store::Local => local::remove(key),
            Store::Memory(map) => {
                map.borrow_mut().remove(key);
                Ok(())
            }
        }
    }

    /// All texts whose key starts with `prefix`.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn all(&self, prefix: &str) -> Result<Vec<(String, String)>, StorageError> {
        match self {
            Store::Database(database) => database.all(prefix).await,
            Store::Local => local::all(prefix),
            Store::Memory(map) => Ok(map
                .borrow()
                .iter()
                .filter(|(key, _)| key.starts_with(prefix))
                .map(|(key, text)| (key.clone(), text.clone()))
                .collect()),
        }
    }
}
