//! Tables as comma-separated text by RFC 4180, safe to open in a spreadsheet.
//!
//! A text that a spreadsheet would take for a formula gets an apostrophe in front, which spreadsheets
//! hide. Marks that turn the direction of writing stay inside their cell: an unclosed one is closed.

/// Characters that start a formula, also after white space that is skipped.
const FORMULA: [char; 8] = ['=', '+', '-', '@', '\t', '\r', '＝', '＋'];
/// Starts of a change of direction, and what ends it.
const OPENERS: [(char, char); 7] = [
    ('\u{202a}', '\u{202c}'),
    ('\u{202b}', '\u{202c}'),
    ('\u{202d}', '\u{202c}'),
    ('\u{202e}', '\u{202c}'),
    ('\u{2066}', '\u{2069}'),
    ('\u{2067}', '\u{2069}'),
    ('\u{2068}', '\u{2069}'),
];

/// A table being written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Table {
    text: String,
}

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Words from anywhere.
    Text(String),
    /// A number with so many decimals; empty when there is none.
    Number(Option<f64>, usize),
    /// A count.
    Count(usize),
}

impl Table {
    /// Adds a row.
    pub fn row(&mut self, cells: impl IntoIterator<Item = Cell>) {
        let cells: Vec<String> = cells.into_iter().map(|cell| cell.written()).collect();
        self.text.push_str(&cells.join(","));
        self.text.push_str("\r\n");
    }

    /// The whole.
    pub fn into_text(self) -> String {
        self.text
    }
}

impl From<&str> for Cell {
    fn from(text: &str) -> Self {
        Cell::Text(text.to_owned())
    }
}

impl Cell {
    fn written(&self) -> String {
        match self {
            Cell::Text(text) => quoted(&harmless(text)),
            Cell::Number(Some(value), decimals) if value.is_finite() => {
                format!("{value:.decimals$}")
            }
            Cell::Number(_, _) => String::new(),
            Cell::Count(count) => count.to_string(),
        }
    }
}

fn harmless(text: &str) -> String {
    let mut safe = String::with_capacity(text.len() + 2);
    let first = text
        .chars()
        .find(|c| *c != ' ' && *c != '\u{a0}' && *c != '\u{feff}');
    // Marks of direction are skipped by spreadsheets, so what they hide counts.
    let visible = text
        .chars()
        .find(|c| !c.is_whitespace() && !is_direction(*c) && *c != '\u{feff}');
    if [first, visible]
        .iter()
        .flatten()
        .any(|c| FORMULA.contains(c))
    {
        safe.push('\'');
    }
    let mut open = Vec::new();
    for c in text.chars().filter(|c| *c != '\0') {
        if let Some((_, closer)) = OPENERS.iter().find(|(opener, _)| *opener == c) {
            open.push(*closer);
        } else if open.last() == Some(&c) {
            open.pop();
        }
        safe.push(c);
    }
    safe.extend(open.into_iter().rev());
    safe
}

fn is_direction(c: char) -> bool {
    matches!(c, '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

fn quoted(text: &str) -> String {
    if text.contains([',', '"', '\r', '\n']) || text.starts_with(' ') || text.ends_with(' ') {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(text: &str) -> String {
        Cell::from(text).written()
    }

    #[test]
    fn a_name_is_never_a_formula() {
        for hostile in [
            "=1+1",
            "+1",
            "-1",
            "@A1",
            " =1",
            "\t=1",
            "\u{202e}=1",
            "\u{feff}=1",
            "＝1",
            "\u{a0}=1",
        ] {
            let cell = written(hostile);
            assert!(
                cell.trim_start_matches('"').starts_with('\''),
                "{hostile:?}"
            );
        }
        assert_eq!(written("Ana-Maria"), "Ana-Maria");
    }

    #[test]
    fn separators_quotes_and_lines_stay_in_their_cell() {
        // Published: RFC 4180, section 2, rules 6 and 7.
        assert_eq!(written("a,\"b\"\r\nc"), "\"a,\"\"b\"\"\r\nc\"");
        let mut table = Table::default();
        table.row([
            Cell::from("x"),
            Cell::Number(Some(1.005), 1),
            Cell::Number(None, 2),
        ]);
        assert_eq!(table.into_text(), "x,1.0,\r\n");
    }

    #[test]
    fn a_turned_direction_ends_with_its_cell() {
        assert_eq!(written("\u{202e}abc"), "\u{202e}abc\u{202c}");
        assert_eq!(written("شادي"), "شادي");
    }

    #[test]
    fn negative_numbers_of_ours_stay_numbers() {
        assert_eq!(Cell::Number(Some(-1.25), 2).written(), "-1.25");
        assert_eq!(Cell::Number(Some(f64::NAN), 2).written(), "");
    }
}
