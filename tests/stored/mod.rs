//! Texts that must stay as they are: compared with the files under `tests/fixtures`.

/// Compares a text, made of headings and indented lines under them, with the stored one of this name.
/// `make marks` stores it anew: look at the difference before it is committed.
pub fn assert_stands(name: &str, text: &str) {
    let path = format!("{}/tests/fixtures/{name}.txt", env!("CARGO_MANIFEST_DIR"));
    if std::env::var_os("TUBWRIGHT_WRITE").is_some() {
        std::fs::write(&path, text).expect("the fixture folder can be written");
    }
    let stored = std::fs::read_to_string(&path).expect("the fixture is there");
    let mut heading = "";
    for (there, is) in stored.lines().zip(text.lines()) {
        if !is.starts_with(' ') {
            heading = is;
        }
        assert_eq!(there, is, "{name}, {heading} is no longer as stored");
    }
    assert_eq!(stored.lines().count(), text.lines().count(), "{name}");
}
