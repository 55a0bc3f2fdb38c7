//! The file of rows: comma-separated, quotes round a field that holds commas, columns by name.

use std::str::FromStr;

use crate::cli::hold::Link;
use crate::cli::rows::Quantity;
use crate::scenario::FileError;
use crate::scenario::problem::Problems;

/// One row.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Line in the file, from 1.
    pub line: usize,
    /// Short name of the machine.
    pub machine: String,
    /// State of its file.
    pub state: String,
    /// Reference number of a fault, or `none`.
    pub fault: String,
    /// What is asked for.
    pub quantity: Quantity,
    /// The same in the row's words.
    pub asked: String,
    /// The value the other program gave, in `unit`.
    pub value: f64,
    /// Unit of the value.
    pub unit: String,
    /// The lid is open.
    pub is_lid_open: bool,
    /// Elements opened by hand.
    pub open: Vec<String>,
    /// Resistances put in by hand.
    pub links: Vec<Link>,
    /// The row says that the instrument shows over-range.
    pub is_over_range: bool,
}

/// Columns without which there is no row.
const NEEDED: [&str; 5] = ["variant", "state", "fault", "quantity", "value"];

/// Reads a file of rows; `file` is the name errors use.
///
/// # Errors
/// Every row that cannot be read, with line, column and what would be right.
pub fn read(file: &str, text: &str) -> Result<Vec<Row>, FileError> {
    let mut problems = Problems::new(file);
    let mut lines = text.trim_start_matches('\u{feff}').lines();
    let header = split(lines.next().unwrap_or_default());
    for name in NEEDED {
        if !header.iter().any(|column| column == name) {
            let remedy = "the first line names the columns; this one must be among them";
            problems.add("line 1", name, remedy);
        }
    }
    let () = problems.into_result(())?;
    let mut problems = Problems::new(file);
    let mut rows = Vec::new();
    for (index, line) in lines
        .enumerate()
        .filter(|(_, line)| !line.trim().is_empty())
    {
        let fields = Fields {
            header: &header,
            fields: split(line),
            line: index + 2,
        };
        if let Some(row) = fields.row(&mut problems) {
            rows.push(row);
        }
    }
    if rows.is_empty() {
        problems.add("", "no row", "at least one row must follow the first line");
    }
    problems.into_result(rows)
}

/// Fields of a line; two quotes inside quotes are one.
fn split(line: &str) -> Vec<String> {
    let (mut fields, mut field, mut is_quoted) = (Vec::new(), String::new(), false);
    let mut letters = line.trim_end_matches('\r').chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '"' if is_quoted && letters.peek() == Some(&'"') => {
                letters.next();
                field.push('"');
            }
            '"' => is_quoted = !is_quoted,
            ',' if !is_quoted => fields.push(std::mem::take(&mut field)),
            other => field.push(other),
        }
    }
    fields.push(field);
    fields
}

struct Fields<'a> {
    header: &'a [String],
    fields: Vec<String>,
    line: usize,
}

impl Fields<'_> {
    fn get(&self, column: &str) -> &str {
        let index = self.header.iter().position(|name| name == column);
        index
            .and_then(|i| self.fields.get(i))
            .map_or("", |field| field.trim())
    }

    fn at(&self, column: &str) -> String {
        format!("line {}, {column}", self.line)
    }

    fn row(&self, problems: &mut Problems<'_>) -> Option<Row> {
        let asked = self.get("quantity");
        let quantity = Quantity::from_str(asked);
        if let Err(remedy) = &quantity {
            problems.add(&self.at("quantity"), asked, *remedy);
        }
        let value = self.get("value").parse::<f64>().ok();
        let value = value.filter(|v| v.is_finite());
        if value.is_none() {
            problems.add(
                &self.at("value"),
                self.get("value"),
                "it must be a finite number",
            );
        }
        let is_lid_open = match self.get("lid") {
            "" | "closed" => Some(false),
            "open" => Some(true),
            other => {
                problems.add(&self.at("lid"), other, "it must be open or closed");
                None
            }
        };
        let setup = setup(self.get("setup"));
        if let Err(remedy) = &setup {
            problems.add(&self.at("setup"), self.get("setup"), *remedy);
        }
        let (open, links) = setup.ok()?;
        Some(Row {
            line: self.line,
            machine: self.get("variant").to_owned(),
            state: self.get("state").to_owned(),
            fault: self.get("fault").to_owned(),
            quantity: quantity.ok()?,
            asked: asked.to_owned(),
            value: value?,
            unit: self.get("unit").to_owned(),
            is_lid_open: is_lid_open?,
            open,
            links,
            is_over_range: self.get("display") == "OL",
        })
    }
}

/// `open P21` and `BODY 2000 ohm CAB-0`, as often as wanted.
fn setup(words: &str) -> Result<(Vec<String>, Vec<Link>), &'static str> {
    const REMEDY: &str =
        "it must be `open ELEMENT` or `NAME OHM ohm NODE-NODE`, as often as wanted";
    let (mut open, mut links) = (Vec::new(), Vec::new());
    let mut words = words.split_whitespace();
    while let Some(word) = words.next() {
        if word == "open" {
            open.push(words.next().ok_or(REMEDY)?.to_owned());
            continue;
        }
        let ohm = words.next().and_then(|w| w.parse::<f64>().ok());
        let ohm = ohm
            .filter(|ohm| *ohm > 0.0 && ohm.is_finite())
            .ok_or(REMEDY)?;
        let ends = match (words.next(), words.next().and_then(|w| w.split_once('-'))) {
            (Some("ohm"), Some((a, b))) => [a.to_owned(), b.to_owned()],
            _ => return Err(REMEDY),
        };
        links.push(Link {
            name: word.to_owned(),
            ohm,
            ends,
        });
    }
    Ok((open, links))
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEADER: &str = "variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display\n";

    fn rows(line: &str) -> Result<Vec<Row>, FileError> {
        read("rows.csv", &format!("{HEADER}{line}\n"))
    }

    #[test]
    fn a_row_with_everything_is_read() {
        let line = "P,spinning,E51,A through BODY,0.5,A,open,open P21 BODY 2000.0 ohm CAB-0,1.0,OL";
        let row = &rows(line).expect("good")[0];
        assert_eq!(
            (row.line, row.is_lid_open, row.is_over_range),
            (2, true, true)
        );
        assert_eq!(row.open, ["P21"]);
        assert_eq!(row.links[0].ends, ["CAB".to_owned(), "0".to_owned()]);
    }

    #[test]
    fn a_comma_inside_quotes_stays_in_its_field() {
        assert_eq!(split("a,\"b, \"\"c\"\"\",d\r"), ["a", "b, \"c\"", "d"]);
    }

    #[test]
    fn columns_may_stand_in_any_order() {
        let text = "value,quantity,fault,state,variant\n1,torque avg,none,off,P\n";
        let row = &read("rows.csv", text).expect("good")[0];
        assert_eq!((row.machine.as_str(), row.state.as_str()), ("P", "off"));
    }

    #[test]
    fn everything_wrong_in_a_file_is_told_with_line_and_column() {
        let told = rows("P,off,none,furlongs,x,V,ajar,open,,")
            .expect_err("wrong")
            .to_string();
        for part in [
            "line 2, quantity: furlongs",
            "line 2, value: x",
            "lid: ajar",
            "setup: open",
        ] {
            assert!(told.contains(part), "{told}");
        }
    }

    #[test]
    fn a_file_without_the_columns_says_which() {
        let told = read("rows.csv", "a,b\n1,2\n")
            .expect_err("wrong")
            .to_string();
        assert!(told.contains("rows.csv: line 1: quantity"), "{told}");
    }
}
