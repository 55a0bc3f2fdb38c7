//! A text that can be said in several languages.

use tubwright::language::Key;
use tubwright::language::id;

/// A text, where it is met, and what of it is data.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// Its key.
    pub key: Key,
    /// In English, as the program or the data have it.
    pub english: String,
    /// Its meaning, where it has several.
    pub meaning: Option<String>,
    /// File it is met in.
    pub place: String,
    /// Braces in it name values.
    pub has_values: bool,
}

impl Message {
    /// A text as it is.
    pub fn plain(english: &str, place: &str) -> Self {
        Self {
            key: Key::of(english),
            english: english.to_owned(),
            meaning: None,
            place: place.to_owned(),
            has_values: false,
        }
    }

    /// Its name in the files of languages.
    pub fn id(&self) -> String {
        id(&self.english, self.key)
    }

    /// Names of its values, each once.
    pub fn values(&self) -> Vec<String> {
        match self.has_values {
            true => values(&self.english),
            false => Vec::new(),
        }
    }

    /// As a line of a Project Fluent file.
    pub fn line(&self) -> String {
        let mut out = String::new();
        if let Some(meaning) = &self.meaning {
            out.push_str(&format!("# {meaning}\n"));
        }
        out.push_str(&format!("{} = {}\n", self.id(), self.pattern()));
        out
    }

    /// As a pattern of a Project Fluent file.
    pub fn pattern(&self) -> String {
        let mut out = String::new();
        let mut rest = self.english.as_str();
        while let Some(at) = rest.find(['{', '}']) {
            out.push_str(&rest[..at]);
            let from = &rest[at..];
            if self.has_values && !from.starts_with("{{") && !from.starts_with("}}") {
                let (name, after) = from[1..].split_once('}').expect("a brace that closes");
                out.push_str(&format!("{{ ${name} }}"));
                rest = after;
                continue;
            }
            let letters = if self.has_values { 2 } else { 1 };
            out.push_str(&format!("{{\"{}\"}}", &from[..1]));
            rest = &from[letters..];
        }
        out.push_str(rest);
        // What Fluent would take for something else, or trim.
        if out.starts_with(['[', '*', '.', ' ']) {
            out = format!("{{\"{}\"}}{}", &out[..1], &out[1..]);
        }
        if let Some(trimmed) = out.strip_suffix(' ') {
            out = format!("{trimmed}{{\" \"}}");
        }
        if !out.contains('\n') {
            return out;
        }
        out.lines().fold(String::new(), |mut lines, line| {
            lines.push_str("\n    ");
            lines.push_str(line);
            lines
        })
    }
}

/// The names between single braces, sorted, each once.
pub fn values(text: &str) -> Vec<String> {
    let without = text.replace("{{", "").replace("}}", "");
    let mut names: Vec<String> = without
        .split('{')
        .skip(1)
        .filter_map(|after| after.split_once('}').map(|(name, _)| name.to_owned()))
        .collect();
    names.sort_unstable();
    names.dedup();
    names
}
