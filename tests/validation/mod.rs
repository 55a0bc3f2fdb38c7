//! What an outside check came to, written down for the validation page when somebody asks for it.
//!
//! `make validate` sets `TUBWRIGHT_VALIDATION` to a folder; each row test then leaves one file of
//! comma-separated lines there. Without the variable nothing is written.

use std::fs;
use std::path::PathBuf;

/// One check against something from outside the project.
pub struct Check {
    /// Part of the physics, or of the judgement.
    pub domain: String,
    /// The program, publication or standard the value came from.
    pub source: String,
    /// What was asked, and under which conditions.
    pub condition: String,
    /// The value from outside.
    pub expected: f64,
    /// Ours.
    pub computed: f64,
    /// Unit of both.
    pub unit: String,
    /// Largest difference allowed, in the same unit.
    pub allowed: f64,
}

/// Leaves the checks of a test in the folder that was asked for.
pub fn leave(name: &str, checks: &[Check]) {
    let Some(folder) = std::env::var_os("TUBWRIGHT_VALIDATION").map(PathBuf::from) else {
        return;
    };
    let mut text = String::from("domain,source,condition,expected,computed,unit,allowed\n");
    for c in checks {
        let words = [&c.domain, &c.source, &c.condition].map(|word| quoted(word));
        let unit = quoted(&c.unit);
        let [domain, source, condition] = words;
        text.push_str(&format!(
            "{domain},{source},{condition},{},{},{unit},{}\n",
            c.expected, c.computed, c.allowed
        ));
    }
    fs::create_dir_all(&folder).expect("the folder can be made");
    fs::write(folder.join(format!("{name}.csv")), text).expect("the file can be written");
}

/// A field by RFC 4180.
fn quoted(word: &str) -> String {
    format!("\"{}\"", word.replace('"', "\"\"").replace('\n', " "))
}
