//! The texts of the handbook, as the build cuts its chapters.

#[path = "../../build/chapter.rs"]
mod chapter;

use std::path::Path;

use crate::message::Message;

/// All of them, with the file of `locales/en` they belong in.
pub fn messages() -> Vec<(String, Message)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("handbook");
    let mut chapters: Vec<_> = std::fs::read_dir(root)
        .expect("the handbook")
        .map(|entry| entry.expect("a chapter").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "md"))
        .collect();
    chapters.sort_unstable();
    let mut found = Vec::new();
    for path in chapters {
        let name = path
            .file_name()
            .and_then(|name| name.to_str())
            .expect("a name");
        let text = std::fs::read_to_string(&path).expect("a chapter");
        for line in chapter::lines(&text).lines() {
            let words = line.strip_prefix('=');
            if let Some(words) = words.filter(|words| words.chars().any(char::is_alphabetic)) {
                found.push(("handbook".to_owned(), Message::plain(words, name)));
            }
        }
    }
    found
}
