//! The table of a form: each field by its path in the file, with the label, the unit and the hint that
//! the form shows. The form is drawn from it, and what is wrong is said in its words.

use std::iter::successors;

use crate::language::said;
use crate::say;

/// How a field is filled in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// One line of text.
    Line,
    /// Several lines of text.
    Text,
    /// A list of short texts, with commas between.
    Words,
    /// A number with its unit.
    Number(&'static str),
    /// A number that may be left out.
    MaybeNumber(&'static str),
    /// A whole number from 0 on, with its unit.
    Whole(&'static str),
    /// A whole number that may be left out.
    MaybeWhole(&'static str),
    /// A share, shown as a percentage.
    Percent,
    /// Yes or no.
    Yes,
    /// One of these values, by their words.
    Choice(&'static [(&'static str, &'static str)]),
    /// Yes, no, or as usual.
    MaybeYes(&'static str),
    /// A machine that ships.
    Machine,
    /// 1 to 5.
    Level,
    /// Modes of the instruments, all of them when left out.
    Instruments,
    /// The customer's answers.
    Answers,
    /// What is wrong.
    Faults,
    /// Parts on board.
    Van,
    /// Answers on the phone.
    Phone,
    /// What the parts store lacks.
    Stock,
    /// What is out of the ordinary about the place.
    Place,
    /// Pairs of faults.
    Pairs,
    /// As the list draws it in which it lies.
    Inside,
}

/// One field of the form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Field {
    /// Where it stands in the file; `[]` is any entry of a list, `*` any name.
    pub path: &'static str,
    label: &'static str,
    hint: &'static str,
    /// How.
    pub kind: Kind,
}

impl Field {
    /// What it is called.
    pub fn label(&self) -> &'static str {
        said(self.label)
    }

    /// What helps to fill it in; may be empty.
    pub fn hint(&self) -> &'static str {
        unless_empty(self.hint)
    }
}

/// Of a text that a table may leave out.
fn unless_empty(text: &'static str) -> &'static str {
    if text.is_empty() { "" } else { said(text) }
}

/// A group of fields.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Its heading as the table has it.
    pub title: &'static str,
    /// Its fields.
    pub fields: &'static [Field],
}

/// A field as one line of a table; label, hint and words of its kind are marked by `text!`.
pub const fn field(
    path: &'static str,
    label: &'static str,
    kind: Kind,
    hint: &'static str,
) -> Field {
    Field {
        path,
        label,
        hint,
        kind,
    }
}

/// A form: what it asks, and what lies inside its lists.
#[derive(Clone, Copy, Debug)]
pub struct FormTable {
    /// In the order of the form.
    pub sections: &'static [Section],
    /// Fields of entries.
    pub inside: &'static [Field],
}

impl FormTable {
    fn fields(&self) -> impl Iterator<Item = &'static Field> {
        let fields = self.sections.iter().flat_map(|section| section.fields);
        fields.chain(self.inside)
    }

    /// The field that a path names; else the nearest one that holds it.
    pub fn field_at(&self, path: &str) -> Option<&'static Field> {
        holders(path).find_map(|path| self.fields().find(|field| fits(field.path, path)))
    }

    /// What a field is called.
    pub fn label(&self, path: &str) -> &'static str {
        self.field_at(path).map_or("", Field::label)
    }
}

impl Kind {
    /// The unit the form shows; empty where there is none.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Number(unit)
            | Self::MaybeNumber(unit)
            | Self::Whole(unit)
            | Self::MaybeWhole(unit) => unless_empty(unit),
            Self::Percent => "%",
            _ => "",
        }
    }

    /// What a field of this kind takes, in a sentence for somebody who typed something else.
    pub fn wanted(self) -> &'static str {
        match self {
            Self::Whole(_) => say!("a whole number is needed here, such as 12"),
            Self::MaybeWhole(_) => {
                say!("a whole number is needed here, such as 12, or nothing")
            }
            Self::MaybeNumber(_) => {
                say!("a number is needed here, such as 3.5 or 3,5, or nothing")
            }
            _ => say!("a number is needed here, such as 3.5 or 3,5"),
        }
    }
}

/// A path and all that hold it, from the inside out: `faults[0].id`, `faults[0]`, `faults`.
pub fn holders(path: &str) -> impl Iterator<Item = &str> {
    successors(Some(path), |path| {
        let end = path.rfind(['.', '['])?;
        path.get(..end)
    })
}

/// The path lies at the field or inside it.
pub fn is_beside(field: &Field, path: &str) -> bool {
    holders(path).any(|holder| fits(field.path, holder))
}

/// What the open steps of a pattern stand for in a path: each entry's own path, each name.
pub fn open_steps<'p>(pattern: &str, path: &'p str) -> Vec<&'p str> {
    let mut found = Vec::new();
    let mut end = 0;
    for (wanted, step) in steps(pattern).zip(steps(path)) {
        let start = end;
        end += step.len() + 1;
        match wanted {
            "]" => found.extend(path.get(..start + step.len())),
            "*" => found.push(step),
            _ => {}
        }
    }
    found
}

fn steps(path: &str) -> impl Iterator<Item = &str> {
    path.split(['.', '['])
}

fn fits(pattern: &str, path: &str) -> bool {
    let (mut wanted, mut steps) = (steps(pattern), steps(path));
    loop {
        match (wanted.next(), steps.next()) {
            (None, None) => return true,
            (Some("]"), Some(step)) if step.ends_with(']') => {}
            (Some("*"), Some(step)) if !step.ends_with(']') => {}
            (Some(wanted), Some(step)) if wanted == step => {}
            _ => return false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: FormTable = FormTable {
        sections: &[Section {
            title: "All",
            fields: &[
                field("faults", "Faults", Kind::Faults, ""),
                field("site.load_kg", "Load", Kind::Number("kg"), ""),
            ],
        }],
        inside: &[
            field("faults[].severity", "Severity", Kind::Number(""), ""),
            field("answers.*[0]", "Answer", Kind::Inside, ""),
        ],
    };

    #[test]
    fn a_field_is_found_by_its_path_and_else_the_nearest_that_holds_it() {
        assert_eq!(TABLE.label("site.load_kg"), "Load");
        assert_eq!(TABLE.label("faults[3].severity"), "Severity");
        assert_eq!(TABLE.label("faults[3].onset.hot.above_degc"), "Faults");
        assert_eq!(TABLE.label("answers.when[0]"), "Answer");
        for other in ["colour", "answers[0]", "answers.when[1]", "site"] {
            assert_eq!(TABLE.field_at(other), None, "{other}");
        }
    }

    #[test]
    fn what_holds_a_path_comes_from_the_inside_out() {
        let all: Vec<&str> = holders("a.b[0].c").collect();
        assert_eq!(all, ["a.b[0].c", "a.b[0]", "a.b", "a"]);
    }

    #[test]
    fn open_steps_are_entries_and_names() {
        let steps = open_steps("faults[].severity", "faults[3].severity");
        assert_eq!(steps, ["faults[3]"]);
        assert_eq!(open_steps("answers.*[0]", "answers.when[0]"), ["when"]);
    }
}
