//! The table of discrimination as comma-separated values, for a spreadsheet.

use crate::language::in_english;
use crate::score::matrix::Matrix;
use crate::score::matrix::Row;

impl Matrix {
    /// The sound machine and these rows as comma-separated values, `*` behind what differs.
    pub fn csv<'r>(&self, rows: impl IntoIterator<Item = &'r Row>) -> String {
        let quoted = |text: &str| format!("\"{}\"", text.replace('"', "\"\""));
        let mut text = String::from("fault,what");
        // A file does not depend on who reads the screen.
        for column in in_english(|| self.read_columns()) {
            text.push(',');
            text.push_str(&quoted(&format!("{} ({})", column.what, column.how)));
        }
        text.push('\n');
        let mut line = |row: &Row| {
            text.push_str(&format!("{},{}", row.fault, quoted(&row.what)));
            for cell in &row.cells {
                let mark = if cell.differs { " *" } else { "" };
                text.push(',');
                text.push_str(&quoted(&format!("{}{mark}", cell.shown)));
            }
            text.push('\n');
        };
        line(self.sound());
        rows.into_iter().for_each(line);
        text
    }
}
