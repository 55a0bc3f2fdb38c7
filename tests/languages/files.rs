//! The files of languages: `locales/en` as it is written, the others as they are read and compared.

use std::collections::BTreeMap;
use std::path::Path;
use std::path::PathBuf;

use crate::message::Message;

fn locales() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("locales")
}

fn read_folder(folder: &Path) -> BTreeMap<String, String> {
    let Ok(entries) = std::fs::read_dir(folder) else {
        return BTreeMap::new();
    };
    entries
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "ftl"))
        .map(|path| {
            let name = path
                .file_stem()
                .and_then(|name| name.to_str())
                .expect("a name");
            (
                name.to_owned(),
                std::fs::read_to_string(&path).expect("a file of a language"),
            )
        })
        .collect()
}

/// The stored English files by name.
pub fn english() -> BTreeMap<String, String> {
    read_folder(&locales().join("en"))
}

/// Writes the English files anew.
pub fn write_english(by_file: &BTreeMap<String, Vec<Message>>) {
    let folder = locales().join("en");
    // What nothing says any more goes.
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder that can be made");
    for (file, list) in by_file {
        std::fs::write(folder.join(format!("{file}.ftl")), written(list))
            .expect("a file that can be written");
    }
}

/// Messages as a file, under the places they are met in.
pub fn written(list: &[Message]) -> String {
    let mut out = String::new();
    let mut place = "";
    for message in list {
        if message.place != place {
            place = &message.place;
            out.push_str(&format!(
                "{}### {place}\n\n",
                if out.is_empty() { "" } else { "\n" }
            ));
        }
        out.push_str(&message.line());
    }
    out
}

/// A language beside English.
pub struct Language {
    /// Its tag: the folder's name.
    pub code: String,
    files: BTreeMap<String, String>,
}

/// Files of a language that hold no message of the program.
const ASIDE: [&str; 2] = ["glossary", "language"];

impl Language {
    /// All there are.
    pub fn all() -> Vec<Self> {
        let mut folders: Vec<PathBuf> = std::fs::read_dir(locales())
            .expect("the languages")
            .map(|entry| entry.expect("an entry").path())
            .filter(|path| path.is_dir() && !path.ends_with("en"))
            .collect();
        folders.sort_unstable();
        folders
            .into_iter()
            .map(|folder| Self {
                code: folder
                    .file_name()
                    .and_then(|name| name.to_str())
                    .expect("a name")
                    .to_owned(),
                files: read_folder(&folder),
            })
            .collect()
    }

    /// All its messages as one text.
    pub fn text(&self) -> String {
        self.of_the_program()
            .map(|(_, text)| text.as_str())
            .collect::<Vec<_>>()
            .join("\n")
    }

    fn of_the_program(&self) -> impl Iterator<Item = (&String, &String)> {
        self.files
            .iter()
            .filter(|(name, _)| !ASIDE.contains(&name.as_str()))
    }

    /// What it says of itself, and while the page opens.
    pub fn about(&self, key: &str) -> Option<&str> {
        let text = self.files.get("language")?;
        text.lines()
            .find_map(|line| line.strip_prefix(key)?.strip_prefix(" = "))
    }

    /// Its words of the trade.
    pub fn glossary(&self) -> Vec<&str> {
        let text = self
            .files
            .get("glossary")
            .map(String::as_str)
            .unwrap_or_default();
        text.lines()
            .filter(|line| !line.starts_with('#') && line.contains(" = "))
            .collect()
    }

    /// What is missing, what nothing says any more, what is there twice, and what does not fit.
    pub fn differences(&self, wanted: &[Message]) -> Vec<String> {
        let mut wrong = Vec::new();
        let mut had: BTreeMap<String, (String, String)> = BTreeMap::new();
        for (file, text) in self.of_the_program() {
            for (id, said) in entries(text) {
                let place = format!("locales/{}/{file}.ftl", self.code);
                if let Some((_, before)) = had.insert(id.clone(), (said, place.clone())) {
                    wrong.push(format!("{place}: '{id}' stands in {before} too"));
                }
            }
        }
        for message in wanted {
            let id = message.id();
            let Some((said, place)) = had.remove(&id) else {
                wrong.push(format!(
                    "locales/{}: '{id}' is missing: {:?} of {}",
                    self.code, message.english, message.place
                ));
                continue;
            };
            let (named, meant) = (variables(&said), message.values());
            if named != meant {
                wrong.push(format!(
                    "{place}: '{id}' names {named:?}, the English text {meant:?}"
                ));
            }
            let is_chapter = message.place.ends_with(".md");
            if is_chapter && marks(&said) != marks(&message.pattern()) {
                wrong.push(format!(
                    "{place}: '{id}' has other marks (**, `, [](…)) than the English text"
                ));
            }
        }
        for (id, (_, place)) in had {
            wrong.push(format!(
                "{place}: '{id}' is said by nothing any more: remove it"
            ));
        }
        wrong
    }
}

/// Messages of a text: name and what follows, over several lines where they are indented.
fn entries(text: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        match (line.split_once(" ="), found.last_mut()) {
            (Some((id, said)), _) if line.starts_with(|c: char| c.is_ascii_alphabetic()) => {
                found.push((id.to_owned(), said.trim().to_owned()));
            }
            (_, Some((_, said))) => {
                said.push('\n');
                said.push_str(line);
            }
            _ => {}
        }
    }
    found
}

/// Names of the values a message uses, sorted, each once.
fn variables(said: &str) -> Vec<String> {
    let name = |after: &str| -> String {
        after
            .chars()
            .take_while(|c| c.is_ascii_alphanumeric() || *c == '_')
            .collect()
    };
    let mut names: Vec<String> = said.split('$').skip(1).map(name).collect();
    names.sort_unstable();
    names.dedup();
    names
}

/// How many of each mark.
fn marks(text: &str) -> [usize; 3] {
    ["**", "`", "]("].map(|mark| text.matches(mark).count())
}
