//! Files as a person would lay them out: two spaces a level, and a list or an object on one line
//! where it fits.
//!
//! Every shipped job is written by this, so that a file that was read and written again is the
//! same to the byte, and two versions of one differ only where something was changed.

use serde::Serialize;

/// Longest line, characters.
const WIDTH: usize = 120;

/// A value as the text of a file, with its last line ended.
///
/// # Errors
/// When the value cannot be JSON, such as a map whose keys are no text.
pub fn write<T: Serialize>(value: &T) -> Result<String, serde_json::Error> {
    let compact = serde_json::to_string(value)?;
    let mut text = String::new();
    lay_out(&parse(&compact), 0, 0, &mut text);
    text.push('\n');
    Ok(text)
}

/// A piece of JSON in the order it was written.
enum Piece<'t> {
    /// A number, a text, a word; an empty list or object.
    Word(&'t str),
    /// Opening and closing bracket, and entries with their key.
    Group([char; 2], Vec<(Option<&'t str>, Piece<'t>)>),
}

/// Takes compact JSON apart. The text comes from the serializer, so it is well formed.
fn parse(text: &str) -> Piece<'_> {
    Reader { text, at: 0 }.piece()
}

struct Reader<'t> {
    text: &'t str,
    at: usize,
}

impl<'t> Reader<'t> {
    fn here(&self) -> u8 {
        self.text.as_bytes().get(self.at).copied().unwrap_or(b' ')
    }

    fn piece(&mut self) -> Piece<'t> {
        let (open, close) = match self.here() {
            b'{' => ('{', '}'),
            b'[' => ('[', ']'),
            _ => return Piece::Word(self.word()),
        };
        self.at += 1;
        let mut entries = Vec::new();
        while self.at < self.text.len() && self.here() != close as u8 {
            let key = (open == '{').then(|| {
                let key = self.word();
                self.at += 1;
                key
            });
            entries.push((key, self.piece()));
            if self.here() == b',' {
                self.at += 1;
            }
        }
        self.at += 1;
        Piece::Group([open, close], entries)
    }

    fn word(&mut self) -> &'t str {
        let start = self.at;
        let mut is_text = false;
        while self.at < self.text.len() {
            match self.here() {
                b'\\' => self.at += 1,
                b'"' => is_text = !is_text,
                b',' | b':' | b']' | b'}' if !is_text => break,
                _ => {}
            }
            self.at += 1;
        }
        self.text.get(start..self.at).unwrap_or_default()
    }
}

/// Length on one line, characters.
fn length(piece: &Piece<'_>) -> usize {
    match piece {
        Piece::Word(word) => word.chars().count(),
        Piece::Group(_, entries) => {
            let inside = entries
                .iter()
                .map(|(key, piece)| key.map_or(0, |key| key.chars().count() + 2) + length(piece));
            2 + inside.sum::<usize>() + 2 * entries.len().saturating_sub(1)
        }
    }
}

/// `used`: what stands before on the line and must follow behind.
fn lay_out(piece: &Piece<'_>, depth: usize, used: usize, text: &mut String) {
    let (brackets, entries) = match piece {
        Piece::Word(word) => return text.push_str(word),
        Piece::Group(brackets, entries) => (brackets, entries),
    };
    let fits = depth > 0 && used + length(piece) <= WIDTH;
    text.push(brackets[0]);
    for (index, (key, inside)) in entries.iter().enumerate() {
        if !fits {
            text.push('\n');
            text.push_str(&"  ".repeat(depth + 1));
        }
        let mut before = 2 * (depth + 1) + 1;
        if let Some(key) = key {
            text.push_str(key);
            text.push_str(": ");
            before += key.chars().count() + 2;
        }
        // Inside a line that fits everything fits.
        lay_out(inside, depth + 1, if fits { 0 } else { before }, text);
        if index + 1 < entries.len() {
            text.push_str(if fits { ", " } else { "," });
        }
    }
    if !fits {
        text.push('\n');
        text.push_str(&"  ".repeat(depth));
    }
    text.push(brackets[1]);
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;

    #[test]
    fn what_fits_stands_on_one_line() {
        let value = BTreeMap::from([("a", vec![1.0, 2.5]), ("b", vec![0.1; 40])]);
        let text = write(&value).expect("writes");
        assert!(
            text.starts_with("{\n  \"a\": [1.0, 2.5],\n  \"b\": [\n    0.1,\n"),
            "{text}"
        );
        assert!(text.ends_with("0.1\n  ]\n}\n"), "{text}");
    }

    #[test]
    fn brackets_and_quotes_inside_a_text_are_text() {
        let value = vec!["a]\"b,{", "\\", "“é”"];
        let text = write(&value).expect("writes");
        assert_eq!(
            serde_json::from_str::<Vec<String>>(&text).expect("reads"),
            value
        );
    }
}
