//! What a reader of foreign bytes is, and how it is to refuse.

use std::fs;
use std::path::Path;

/// Nothing, or what is wrong with how a file was refused.
pub type Said = Result<(), String>;

/// One reader.
pub struct Reader {
    /// What it reads.
    pub name: &'static str,
    /// How much longer than the quickest one run takes, roughly: a divisor of its runs.
    pub slowness: u64,
    /// Sound files.
    pub seeds: Vec<Vec<u8>>,
    /// Reads a file; wrong is only how it is refused.
    pub read: fn(&[u8]) -> Said,
    /// The file is taken.
    pub takes: fn(&[u8]) -> bool,
}

impl Reader {
    /// Its name as a folder's.
    pub fn folder(&self) -> String {
        let words = self.name.split(|c: char| !c.is_ascii_alphanumeric());
        let words: Vec<_> = words.filter(|word| !word.is_empty()).collect();
        words.join("_").to_lowercase()
    }

    /// Inputs that once reached what the sound files do not, in `tests/fixtures/foreign_bytes`.
    pub fn kept(&self) -> Vec<Vec<u8>> {
        let folder = Path::new("tests/fixtures/foreign_bytes").join(self.folder());
        if folder.is_dir() {
            files(&folder)
        } else {
            Vec::new()
        }
    }
}

/// Every file of a folder, in the order of their names.
pub fn files(folder: &Path) -> Vec<Vec<u8>> {
    let entries = fs::read_dir(folder).expect("is there");
    let mut paths: Vec<_> = entries.map(|e| e.expect("readable").path()).collect();
    paths.sort();
    paths
        .iter()
        .map(|path| fs::read(path).expect("readable"))
        .collect()
}

/// Text as a browser hands it over: bytes that are no text are replaced.
pub fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

/// A refusal in words has some.
pub fn told(why: String) -> Said {
    if why.trim().is_empty() {
        return Err("refused without a word".to_owned());
    }
    Ok(())
}
