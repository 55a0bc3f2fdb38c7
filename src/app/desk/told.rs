//! What is wrong, in the words of a form: each problem with the label of its field, in the form's unit,
//! things by their plain names. The command line says the same with the file's own names.

use serde_json::Value;

use crate::app::desk::form_table::FormTable;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::open_steps;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::questions::QUESTIONS;
use crate::bench::store;
use crate::language::decimals;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::MachinePack;
use crate::scenario::edit;
use crate::scenario::problem::Problem;
use crate::scenario::problem::Wrong;

/// A problem as a form says it.
#[derive(Clone, Debug, PartialEq)]
pub struct Told {
    /// Where it stands in the file.
    pub path: String,
    /// What the form calls the field.
    pub label: String,
    /// What is wrong and what would be right.
    pub words: String,
}

impl Told {
    /// As one line of text.
    pub fn line(&self) -> String {
        say!("{label}: {words}", label = self.label, words = self.words)
    }
}

/// A form, what stands in it, and the plain names of what its file names.
pub struct Words<'f> {
    /// Its table.
    pub form: &'f FormTable,
    /// What stands in it.
    pub whole: &'f Value,
    /// The plain name of a name; none for one that has none.
    pub called: &'f dyn Fn(&str) -> Option<String>,
}

impl Words<'_> {
    /// The problem in the words of the form.
    pub fn told(&self, problem: &Problem) -> Told {
        let kind = self.form.field_at(&problem.path).map(|field| field.kind);
        let words = match problem.wrong {
            Wrong::Blank => say!("must not be empty").to_owned(),
            Wrong::Range { low, high } => {
                // A share of the file is a percentage on the form.
                let times = if kind == Some(Kind::Percent) {
                    100.0
                } else {
                    1.0
                };
                let [low, high] = [low, high].map(|end| decimals((times * end).to_string()));
                match kind.map_or("", Kind::unit) {
                    "" => say!("must lie between {low} and {high}", low, high),
                    unit => say!("must lie between {low} and {high} {unit}", low, high, unit),
                }
            }
            Wrong::NoSuch { kind, ref nearest } => {
                let found = self.plain(&problem.found);
                let kind = said(kind);
                match nearest.as_deref().and_then(self.called) {
                    None => say!("{found} is no {kind}", found, kind),
                    Some(name) => {
                        say!(
                            "{found} is no {kind}; nearest is “{name}”",
                            found,
                            kind,
                            name
                        )
                    }
                }
            }
            Wrong::Said => self.plain(&problem.remedy),
        };
        Told {
            path: problem.path.clone(),
            label: self.label(&problem.path),
            words,
        }
    }

    /// What the form calls a field; of an entry, with the entry's name behind it.
    pub fn label(&self, path: &str) -> String {
        let Some(field) = self.form.field_at(path) else {
            return say!("As a whole").to_owned();
        };
        let entries: Vec<String> = open_steps(field.path, path)
            .into_iter()
            .map(|step| self.entry(step))
            .collect();
        if entries.is_empty() {
            field.label().to_owned()
        } else {
            format!("{} ({})", field.label(), entries.join(", "))
        }
    }

    /// An entry of a list by its plain name or its number; a name by its plain name.
    fn entry(&self, step: &str) -> String {
        let id = edit::get(self.whole, &format!("{step}.id")).and_then(Value::as_str);
        let number = || {
            let index = step.strip_suffix(']')?.rsplit('[').next()?;
            Some(say!("no. {n}", n = index.parse::<usize>().ok()? + 1))
        };
        (self.called)(id.unwrap_or(step))
            .or_else(number)
            .unwrap_or_else(|| step.to_owned())
    }

    /// Fields in backticks by their labels, names in quotes by their plain names.
    fn plain(&self, words: &str) -> String {
        let in_marks = |words: &str, mark: char, shown: &dyn Fn(&str) -> String| -> String {
            let parts = words.split(mark).enumerate();
            parts
                .map(|(index, part)| match index % 2 {
                    0 => part.to_owned(),
                    _ => format!("“{}”", shown(part)),
                })
                .collect()
        };
        let labelled = in_marks(words, '`', &|path| self.label(path));
        in_marks(&labelled, '"', &|name| {
            (self.called)(name).unwrap_or_else(|| name.to_owned())
        })
    }
}

/// The plain name of what a job names: questions, faults and parts, of its machine first.
pub fn called(machine: &str, name: &str) -> Option<String> {
    let question = QUESTIONS.iter().chain(&PHONE_QUESTIONS);
    if let Some(question) = question.into_iter().find(|question| question.id == name) {
        return Some(said(question.text).to_owned());
    }
    let packs = scenario::machines().ok()?;
    if let Some(pack) = packs.get(name) {
        return Some(worded(&pack.model.name).into_owned());
    }
    let own = packs.get(machine).into_iter();
    own.chain(packs.values())
        .find_map(|pack| called_by(pack, name))
}

fn called_by(pack: &MachinePack, name: &str) -> Option<String> {
    if let Some(fault) = pack.model.fault(name) {
        return Some(worded(&fault.what).into_owned());
    }
    let item = store::item(&pack.workshop, name)?;
    Some(worded(item.name()).into_owned())
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::app::desk::draft::blank;
    use crate::app::desk::fields::JOB;
    use crate::scenario::job_file::JobFile;
    use crate::scenario::read::read_value;

    fn told(path: &str, value: Value) -> Vec<Told> {
        let mut whole = edit::as_value(&blank());
        whole["title"] = json!("T");
        whole["customer"]["name"] = json!("N");
        whole["customer"]["complaint"] = json!("C");
        let job: JobFile = read_value("t", &whole).expect("a job");
        let job = edit::with(&job, path, value).expect("fits");
        let whole = edit::as_value(&job);
        let words = Words {
            form: &JOB,
            whole: &whole,
            called: &|name| called(&job.machine, name),
        };
        let problems = scenario::job_of("draft", &job).expect_err("wrong").problems;
        problems.iter().map(|problem| words.told(problem)).collect()
    }

    #[test]
    fn a_slope_that_no_floor_has_is_told_once_by_its_label_and_unit() {
        let all = told("site.floor_tilt_deg", json!(50.0));
        let lines: Vec<String> = all.iter().map(Told::line).collect();
        assert_eq!(
            lines,
            ["Slope of the floor: must lie between 0 and 10 degrees"]
        );
    }

    #[test]
    fn what_is_inside_a_list_is_told_by_the_name_of_its_entry() {
        let fault = json!({"id": "capacitor_low", "severity": 3.0});
        let all = told("faults[0]", fault);
        assert_eq!(all[0].words, "must lie between 0 and 1");
        assert!(all[0].label.starts_with("Severity (the run capacitor"));
        let foreign = json!({"id": "timer_motor_open", "severity": 1.0});
        let all = told("faults[0]", foreign);
        let words = &all[0].words;
        assert!(words.contains("is no fault of this machine"), "{words}");
        assert!(!words.contains('_'), "{words}");
    }

    #[test]
    fn no_name_of_a_file_is_shown() {
        let answers = told("customer.answers", json!({"sins": ["a"]}));
        let place = told("visit.place", json!(["no_residual_device", "hot_water"]));
        let van = told("van", json!(["no_such_part"]));
        assert!(
            place
                .iter()
                .any(|told| told.words.contains("“Water left in the tub”"))
        );
        assert!(
            place
                .iter()
                .any(|told| told.words.contains("“Residual current device”"))
        );
        for told in answers.iter().chain(&place).chain(&van) {
            let line = told.line();
            let clean = line.replace("no_such_part", "").replace("sins", "");
            assert!(!clean.contains(['_', '`', '"']), "{line}");
            assert_ne!(told.label, "As a whole", "{line}");
        }
    }

    #[test]
    fn a_field_that_is_empty_says_so() {
        let all = told("title", json!(" "));
        assert_eq!(all[0].line(), "Title: must not be empty");
    }
}
