//! Where texts come from: files, and files inside archives; read when they are needed and not kept.

use std::rc::Rc;

use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Blob;
use web_sys::File;

use crate::app::file_kind;
use crate::assess::assessment_file::ASSESSMENT_FORMAT;
use crate::language::in_english;
use crate::records::rulings::Ruling;
use crate::records::seal::AssessmentKey;
use crate::records::unzip;
use crate::say;
use crate::scenario::read::read_back;
use crate::text;

/// Largest archive, bytes.
const MOST_ARCHIVE: f64 = 1_500_000_000.0;
/// Largest text file, bytes: a candidate's forty records are a tenth of it.
const MOST_TEXT: f64 = 64_000_000.0;
/// Files passed over that are told by name; a cohort's folder may hold thousands.
const MOST_NAMED: usize = 20;

/// A text that can be read, again and again.
#[derive(Clone)]
pub struct Source {
    /// Its name, for errors.
    pub name: String,
    place: Place,
}

#[derive(Clone)]
enum Place {
    File(File),
    Archive(Rc<Vec<u8>>, unzip::Entry),
    Text(Rc<str>),
}

/// A name that may hold records, an assessment or a key.
fn is_ours(name: &str) -> bool {
    let name = name.to_lowercase();
    [".json", ".jsonl", ".key"]
        .iter()
        .any(|ending| name.ends_with(ending))
}

/// All texts of chosen files, archives opened; what cannot be opened is told.
pub async fn sources(files: Vec<File>) -> (Vec<Source>, Vec<String>) {
    let (mut all, mut told, mut passed) = (Vec::new(), Vec::new(), Vec::new());
    for file in files {
        let name = file.name();
        if name.to_lowercase().ends_with(".zip") {
            match opened(&file).await {
                Some((inside, others)) => {
                    all.extend(inside);
                    passed.extend(others.iter().map(|other| format!("{name}/{other}")));
                }
                None => told.push(say!("{file}: this archive cannot be opened: pack it anew as a plain zip, or open the folder.", file = name)),
            }
        } else if is_ours(&name) {
            all.push(Source {
                name,
                place: Place::File(file),
            });
        } else {
            passed.push(name);
        }
    }
    told.extend(passed_words(&passed));
    if all.is_empty() && told.is_empty() {
        let none =
            say!("There are no results among these files: they end in .json, .jsonl or .zip.");
        told.push(none.to_owned());
    }
    (all, told)
}

/// What is no result by its name, the first few by name.
fn passed_words(passed: &[String]) -> Option<String> {
    let (named, more) = passed.split_at(passed.len().min(MOST_NAMED));
    let files = named.join(", ");
    (!passed.is_empty()).then(|| match more.len() {
        0 => say!("Passed over, since their names do not end as those of results do (.json, .jsonl, .key, .zip): {files}.", files),
        n => say!("Passed over, since their names do not end as those of results do (.json, .jsonl, .key, .zip): {files} and {n} more.", files, n),
    })
}

/// Texts of ours in an archive, and the names of what else is in it.
async fn opened(file: &File) -> Option<(Vec<Source>, Vec<String>)> {
    if file.size() > MOST_ARCHIVE {
        return None;
    }
    let bytes = Rc::new(bytes_of(file).await?);
    let entries = unzip::entries(&bytes)?;
    let files = entries
        .into_iter()
        .filter(|entry| !entry.name.ends_with('/'));
    let (ours, others): (Vec<_>, Vec<_>) = files.partition(|entry| is_ours(&entry.name));
    let source = |entry: unzip::Entry| Source {
        name: entry.name.clone(),
        place: Place::Archive(bytes.clone(), entry),
    };
    let others = others.into_iter().map(|entry| entry.name).collect();
    Some((ours.into_iter().map(source).collect(), others))
}

async fn bytes_of(file: &File) -> Option<Vec<u8>> {
    let read = JsFuture::from(file.unchecked_ref::<Blob>().array_buffer());
    Some(Uint8Array::new(&read.await.ok()?).to_vec())
}

impl Source {
    /// A text that is here already.
    pub fn of_text(name: String, text: &str) -> Self {
        Self {
            name,
            place: Place::Text(text.into()),
        }
    }

    /// A text that is here in place of a file, with its name; none for what lies in a file.
    pub fn here(&self) -> Option<(&str, &str)> {
        match &self.place {
            Place::Text(text) => Some((self.name.as_str(), &**text)),
            Place::File(_) | Place::Archive(..) => None,
        }
    }

    /// The text.
    ///
    /// # Errors
    /// What it is instead, or why there is none, in English: files have it so.
    pub async fn text(&self) -> Result<String, String> {
        let bytes = match &self.place {
            Place::Text(text) => return Ok(text.to_string()),
            Place::File(file) if file.size() > MOST_TEXT => None,
            Place::File(file) => bytes_of(file).await,
            Place::Archive(bytes, entry) => unzip::unpacked(bytes, entry),
        };
        let bytes = bytes.ok_or(text!("it cannot be read, or is too large"))?;
        in_english(|| file_kind::text(bytes))
    }
}

/// What a text is.
pub enum Kind {
    /// An assessment's key.
    Key(String),
    /// An assessment.
    Assessment(String),
    /// Rulings that were saved.
    Rulings(Vec<Ruling>),
    /// Records, or something that is none.
    Records(String),
}

/// Looks at a text's beginning.
pub fn kind(name: &str, text: String) -> Kind {
    if name.to_lowercase().ends_with(".key") && AssessmentKey::read(&text).is_ok() {
        return Kind::Key(text.trim().to_owned());
    }
    let head: String = text.chars().take(200).collect();
    if head.contains(ASSESSMENT_FORMAT) {
        return Kind::Assessment(text);
    }
    if head.trim_start().starts_with('[')
        && let Some(all) = read_back(&text)
    {
        return Kind::Rulings(all);
    }
    Kind::Records(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_passed_over_is_named_and_the_rest_counted() {
        assert_eq!(passed_words(&[]), None);
        let few = passed_words(&["a.png".to_owned(), "z.zip/b.txt".to_owned()]);
        assert!(few.is_some_and(|words| words.ends_with("a.png, z.zip/b.txt.")));
        let many: Vec<String> = (0..MOST_NAMED + 5).map(|n| format!("{n}.png")).collect();
        assert!(passed_words(&many).is_some_and(|words| words.ends_with("19.png and 5 more.")));
    }
}
