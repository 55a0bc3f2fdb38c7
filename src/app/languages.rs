//! Which languages the page comes in, which one a person reads, and fetching it.
//!
//! English is in the program. The page names the others, each with a file that is fetched when it is
//! wanted and kept for use without a network. A language is chosen before the first screen is drawn.

use std::cell::RefCell;

use serde::Deserialize;
use serde::Serialize;
use wasm_bindgen::JsValue;

use crate::app::net;
use crate::language;
use crate::language::Catalogue;
use crate::scenario::read::read_back;

/// Where the page names its languages.
const LIST: &str = "meta[name=languages]";
/// In the address, before `#`, of a page whose every text is to stand in marks.
const MARKED: &str = "?marked-texts";

/// A language that the page comes in.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct Offered {
    /// Its tag as BCP 47 has it.
    pub code: String,
    /// Its own name for itself.
    pub name: String,
    /// Tag of how its numbers are written.
    pub numbers: String,
    /// Where its file is.
    pub file: String,
}

/// A language on its way to a thread.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Spoken {
    code: String,
    text: String,
    decimal: char,
}

thread_local! {
    /// What threads are told; none is English.
    static SPOKEN: RefCell<Option<Spoken>> = const { RefCell::new(None) };
}

impl Spoken {
    /// What this thread speaks, for another one.
    pub fn here() -> Option<Self> {
        SPOKEN.with_borrow(Clone::clone)
    }

    /// Speaks it in this thread.
    ///
    /// # Errors
    /// Its file cannot be read.
    pub fn begin(self) -> Result<(), language::CatalogueError> {
        let catalogue = Catalogue::read(&self.code, &self.text, self.decimal)?;
        language::speak(Some(catalogue));
        SPOKEN.set(Some(self));
        Ok(())
    }
}

/// The languages beside English, as the page names them.
pub fn offered() -> Vec<Offered> {
    let meta = gloo::utils::document().query_selector(LIST).ok().flatten();
    meta.and_then(|meta| meta.get_attribute("content"))
        .and_then(|list| read_back(&list))
        .unwrap_or_default()
}

/// Speaks the language chosen, or what the device asks for; English where that cannot be had.
pub async fn begin(chosen: Option<&str>) {
    let search = gloo::utils::window().location().search();
    if search.is_ok_and(|search| search == MARKED) {
        language::speak(Some(Catalogue::pseudo()));
    } else if let Some(wanted) = wanted(chosen, offered()) {
        fetch(wanted).await;
    }
    if let Some(root) = gloo::utils::document().document_element() {
        let direction = if language::is_right_to_left() {
            "rtl"
        } else {
            "ltr"
        };
        // Only a malformed name is refused.
        let _ = root.set_attribute("lang", language::code());
        let _ = root.set_attribute("dir", direction);
    }
}

async fn fetch(wanted: Offered) {
    let Some(text) = net::text_of(&wanted.file).await else {
        gloo::console::warn!(format!(
            "{}: nobody answers; the page speaks English",
            wanted.file
        ));
        return;
    };
    let spoken = Spoken {
        decimal: decimal_sign(&wanted.numbers),
        code: wanted.code,
        text,
    };
    if let Err(error) = spoken.begin() {
        gloo::console::warn!(error.to_string());
    }
}

/// Which of the languages: the one chosen, or else the first that the device asks for; none is English.
fn wanted(chosen: Option<&str>, offered: Vec<Offered>) -> Option<Offered> {
    match chosen {
        Some(chosen) => offered.into_iter().find(|one| one.code == chosen),
        None => first_asked(&asked_by_device(), offered),
    }
}

/// Tags of the languages the device asks for, the most wanted first.
fn asked_by_device() -> Vec<String> {
    let languages = gloo::utils::window().navigator().languages();
    languages.iter().filter_map(|one| one.as_string()).collect()
}

/// The first language asked for that there is, by its main part: `es-MX` finds `es`.
fn first_asked(asked: &[String], offered: Vec<Offered>) -> Option<Offered> {
    for tag in asked {
        let main = tag.split('-').next().unwrap_or_default();
        if main == "en" {
            return None;
        }
        let found = offered.iter().find(|one| one.code == *tag);
        if let Some(found) = found.or_else(|| offered.iter().find(|one| one.code == main)) {
            return Some(found.clone());
        }
    }
    None
}

/// What stands between a number's whole and its parts, as the browser has it for a language.
fn decimal_sign(code: &str) -> char {
    let locales = js_sys::Array::of1(&JsValue::from_str(code));
    let format = js_sys::Intl::NumberFormat::new(&locales, &js_sys::Object::new());
    let written = format
        .format()
        .call1(&JsValue::NULL, &JsValue::from_f64(1.5));
    written
        .ok()
        .and_then(|text| text.as_string())
        .and_then(|text| text.chars().find(|c| !c.is_alphanumeric()))
        .unwrap_or('.')
}

#[cfg(test)]
mod tests {
    use super::*;

    fn offered(codes: &[&str]) -> Vec<Offered> {
        let one = |code: &&str| Offered {
            code: (*code).to_owned(),
            name: String::new(),
            numbers: String::new(),
            file: String::new(),
        };
        codes.iter().map(one).collect()
    }

    fn found(asked: &[&str], codes: &[&str]) -> Option<String> {
        let asked: Vec<String> = asked.iter().map(|&tag| tag.to_owned()).collect();
        first_asked(&asked, offered(codes)).map(|one| one.code)
    }

    #[test]
    fn the_device_s_first_language_that_there_is() {
        assert_eq!(
            found(&["es-MX", "en"], &["es", "hi"]).as_deref(),
            Some("es")
        );
        assert_eq!(
            found(&["nl", "hi-IN"], &["es", "hi"]).as_deref(),
            Some("hi")
        );
        assert_eq!(
            found(&["pt-BR"], &["pt", "pt-BR"]).as_deref(),
            Some("pt-BR")
        );
        assert_eq!(found(&["en-GB", "es"], &["es", "hi"]), None);
        assert_eq!(found(&["nl"], &["es"]), None);
    }
}
