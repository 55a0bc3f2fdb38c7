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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::machines;

    #[test]
    fn a_spreadsheet_gets_a_row_a_fault_with_a_star_where_it_shows() {
        let pack = &machines().expect("sound")["P"];
        let matrix = Matrix::new(&pack.model, &pack.workshop).expect("solves");
        let fault = matrix.faults().iter().find(|f| f.id == "capacitor_low");
        let row = matrix.row(fault.expect("listed")).expect("solves");
        let text = matrix.csv([&row]);
        let lines: Vec<&str> = text.lines().collect();
        assert_eq!(lines.len(), 3);
        assert!(lines[0].starts_with("fault,what,\""), "{}", lines[0]);
        assert!(!lines[1].contains(" *\""), "a sound machine shows nothing");
        assert!(lines[2].starts_with("capacitor_low,\""), "{}", lines[2]);
        let n_shown = row.cells.iter().filter(|cell| cell.differs).count();
        assert!(n_shown > 0);
        assert_eq!(lines[2].matches(" *\"").count(), n_shown);
    }
}
