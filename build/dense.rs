//! JSON without the white space between its tokens: what ships is downloaded.

/// The same JSON without the white space that stands outside its strings.
pub fn dense(json: &str) -> String {
    let mut in_string = false;
    let mut is_escaped = false;
    json.chars()
        .filter(|&c| {
            let is_kept = in_string || !c.is_ascii_whitespace();
            in_string ^= c == '"' && !is_escaped;
            is_escaped = in_string && c == '\\' && !is_escaped;
            is_kept
        })
        .collect()
}
