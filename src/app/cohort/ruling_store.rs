//! Rulings in this browser's store: each under a key of its own, so that two tabs never write over each
//! other, named after the moment it was made.

use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::records::rulings::Ruling;
use crate::records::seal::Hash;
use crate::say;
use crate::scenario::read::read_back;

/// Keys start so.
const PREFIX: &str = "ruling/";
/// Earlier versions kept all rulings under this key.
const OLD: &str = "rulings";
/// Where it is tried whether anything can be kept.
const TRIED: &str = "check-rulings";

/// Whether rulings outlive this visit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Keeping {
    /// Not known yet.
    #[default]
    Asking,
    /// They are kept.
    Kept,
    /// The browser keeps nothing, or has no room.
    Not(StorageError),
}

impl Keeping {
    /// What whoever rules has to know; nothing while it is not known.
    pub fn words(self) -> &'static str {
        match self {
            Self::Asking => "",
            Self::Kept => {
                say!(
                    "Rulings are kept in this browser; save their file to take them to another one, or to keep them with the results."
                )
            }
            Self::Not(StorageError::Full) => {
                say!(
                    "This browser has no room left: rulings made now are gone when this page is closed or loaded again. Save them as a file."
                )
            }
            Self::Not(_) => {
                say!(
                    "This browser does not let the page keep rulings: they are gone when this page is closed or loaded again. Save them as a file."
                )
            }
        }
    }

    /// Nothing is kept.
    pub fn is_not(self) -> bool {
        matches!(self, Self::Not(_))
    }
}

/// A change of what is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Write {
    /// A text under a key.
    Put(String, String),
    /// Nothing under a key.
    Remove(String),
}

/// A key for a ruling made at a moment, ms since 1970; keys are in the order of the moments.
pub fn key(ruling: &Ruling, now_ms: f64) -> String {
    let text = serde_json::to_vec(ruling).unwrap_or_default();
    let hash = Hash::of("tubwright ruling 1", &[&text]).to_string();
    format!("{PREFIX}{:015}-{}", now_ms.max(0.0) as u64, &hash[..16])
}

/// A text is a ruling as it is kept.
pub fn is_readable(text: &str) -> bool {
    read_back::<Ruling>(text).is_some()
}

/// All that are kept, in the order in which they were made.
///
/// # Errors
/// When the browser refuses, or keeps nothing beyond this visit.
pub async fn read() -> Result<Vec<(String, Ruling)>, StorageError> {
    let store = Store::open().await;
    lasts(&store)?;
    take_apart(&store).await?;
    let texts = store.all(PREFIX).await?;
    let one = |(key, text): (String, String)| Some((key, read_back(&text)?));
    Ok(texts.into_iter().filter_map(one).collect())
}

/// Whether the browser keeps anything beyond this visit.
///
/// # Errors
/// Why it does not.
pub async fn try_out() -> Result<(), StorageError> {
    let store = Store::open().await;
    lasts(&store)?;
    store.put(TRIED, "1").await?;
    store.remove(TRIED).await
}

/// Writes changes as far as the browser lets them: the last refusal, and keys that were to be put and
/// are not there.
pub async fn write(writes: Vec<Write>) -> (Result<(), StorageError>, Vec<String>) {
    let store = Store::open().await;
    let lasts = lasts(&store);
    let (mut done, mut unwritten) = (Ok(()), Vec::new());
    for write in writes {
        let one = match (&write, lasts) {
            (_, Err(error)) => Err(error),
            (Write::Put(key, text), Ok(())) => store.put(key, text).await,
            (Write::Remove(key), Ok(())) => store.remove(key).await,
        };
        if let Err(error) = one {
            done = Err(error);
            if let Write::Put(key, _) = write {
                unwritten.push(key);
            }
        }
    }
    (done, unwritten)
}

fn lasts(store: &Store) -> Result<(), StorageError> {
    match store {
        Store::Memory(_) => Err(StorageError::Refused),
        Store::Database(_) | Store::Local => Ok(()),
    }
}

/// Puts the list of an earlier version under keys of their own.
async fn take_apart(store: &Store) -> Result<(), StorageError> {
    let Some(text) = store.get(OLD).await? else {
        return Ok(());
    };
    // What cannot be read stays untouched.
    let Some(all) = read_back::<Vec<Ruling>>(&text) else {
        return Ok(());
    };
    for (at, ruling) in all.iter().enumerate() {
        // Older than any that is made now, in the order of the list.
        let text = serde_json::to_string(ruling).map_err(|_| StorageError::Damaged)?;
        store.put(&key(ruling, at as f64), &text).await?;
    }
    store.remove(OLD).await
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::rulings::About;

    #[test]
    fn keys_are_in_the_order_of_the_moments_and_differ_by_what_is_ruled() {
        let one = |why: &str| {
            let about = About::Job("j1".to_owned());
            Ruling::new(about, "void", "N. Judge", "2031-03-04", why).expect("stands")
        };
        let (first, second) = (key(&one("a"), 999.0), key(&one("a"), 1_930_000_000_000.0));
        assert!(first < second && first.starts_with(PREFIX), "{first}");
        assert_ne!(key(&one("a"), 5.0), key(&one("b"), 5.0));
        let text = serde_json::to_string(&one("a")).expect("writes");
        assert!(is_readable(&text) && !is_readable("[]"));
    }
}
