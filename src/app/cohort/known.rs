//! The assessments that results are held against, with their keys where they are known.

use std::collections::BTreeMap;

use crate::app::sitting;
use crate::assess::assessment_file::AssessmentFile;

/// All that are known.
#[derive(Default)]
pub struct Known {
    /// Text and key of each, by its name.
    texts: BTreeMap<String, (String, String)>,
    files: Vec<AssessmentFile>,
    /// A key that came as a file.
    key: Option<String>,
}

impl Known {
    /// Takes an assessment in, with its key if it is known; `false` when it does not fit the jobs here.
    pub fn take(&mut self, text: String, key: String) -> bool {
        let Ok(read) = sitting::assessment("assessment", &text) else {
            return false;
        };
        let kept = self
            .texts
            .get(&read.file.id)
            .map_or_else(String::new, |(_, key)| key.clone());
        let key = if key.is_empty() { kept } else { key };
        self.texts.insert(read.file.id.clone(), (text, key));
        self.files.retain(|file| file.id != read.file.id);
        self.files.push(read.file);
        true
    }

    /// Takes a key in; `false` when it is known already.
    pub fn take_key(&mut self, key: String) -> bool {
        let is_new = self.key.as_ref() != Some(&key);
        self.key = Some(key);
        is_new
    }

    /// This very text is known.
    pub fn has(&self, text: &str) -> bool {
        self.texts.values().any(|(known, _)| known == text)
    }

    /// Texts of all assessments, each with the key that may seal it.
    pub fn against(&self) -> Vec<(String, String)> {
        let any = || self.key.clone().unwrap_or_default();
        let pair = |(text, key): &(String, String)| {
            let key = if key.is_empty() { any() } else { key.clone() };
            (text.clone(), key)
        };
        self.texts.values().map(pair).collect()
    }

    /// The assessments, read.
    pub fn files(&self) -> &[AssessmentFile] {
        &self.files
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_that_came_as_a_file_serves_where_an_assessment_has_none_of_its_own() {
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let mut known = Known::default();
        assert!(known.take(text.to_owned(), String::new()) && known.has(text));
        assert!(known.take_key("k1".to_owned()) && !known.take_key("k1".to_owned()));
        assert_eq!(known.against()[0].1, "k1");
        assert!(known.take(text.to_owned(), "k2".to_owned()));
        assert_eq!(known.against()[0].1, "k2");
        assert!(!known.take("{}".to_owned(), String::new()));
        assert_eq!(known.files().len(), 1);
    }
}
