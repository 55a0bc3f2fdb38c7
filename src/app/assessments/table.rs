//! The form of an assessment: its fields by their paths in the file, one as a row, and what is wrong in
//! the form's words.

use serde_json::Value;
use yew::prelude::*;

use crate::app::desk::field::FieldRow;
use crate::app::desk::form_table::FormTable;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::Section;
use crate::app::desk::form_table::field;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::app::desk::told::Words;
use crate::app::sitting;
use crate::assess::assessment_file::AssessmentFile;
use crate::say;
use crate::scenario::write;
use crate::text;

/// The form.
pub const ASSESSMENT: FormTable = FormTable {
    sections: &[
        Section {
            title: text!("The assessment"),
            fields: &[field(
                "title",
                text!("Title"),
                Kind::Line,
                text!("As candidates see it. Its name in files comes from it."),
            )],
        },
        Section {
            title: text!("Time and aids"),
            fields: &[field(
                "time_limit_min",
                text!("Time for all jobs"),
                Kind::Number(text!("minutes")),
                text!(
                    "Generous: it is to be a limit, not a race. Extra time is given to single candidates, on their slips."
                ),
            )],
        },
        Section {
            title: text!("After"),
            fields: &[field(
                "erase_after_months",
                text!("Results are erased after"),
                Kind::MaybeWhole(text!("months")),
                text!(
                    "Counted from the day they began. Candidates are told; the review says which are past it. Empty: nothing is said."
                ),
            )],
        },
        Section {
            title: text!("What passes"),
            fields: &[
                field(
                    "pass.cut.fixed",
                    text!("Marks to pass"),
                    Kind::Number(text!("marks")),
                    text!("Of 100."),
                ),
                field(
                    "pass.border",
                    text!("Border"),
                    Kind::Number(text!("marks")),
                    text!(
                        "To either side of the cut. Within it more jobs decide: it is neither passed nor failed."
                    ),
                ),
                field(
                    "pass.fixed_share",
                    text!("Machines put right"),
                    Kind::Percent,
                    text!("Of the jobs."),
                ),
                field(
                    "pass.parts.safety",
                    text!("Safety, least of its points"),
                    Kind::Percent,
                    text!("Marks elsewhere do not make up for it."),
                ),
            ],
        },
    ],
    inside: &[
        field("id", text!("Title"), Kind::Inside, ""),
        field("jobs", text!("Jobs"), Kind::Inside, ""),
        field("jobs[].n", text!("How many"), Kind::Inside, ""),
        field(
            "room_pause",
            text!("Pauses of the whole room"),
            Kind::Inside,
            "",
        ),
        field(
            "pass.parts.*",
            text!("Least of the points"),
            Kind::Percent,
            "",
        ),
        field(
            "pass.cut.judges",
            text!("One judge a line"),
            Kind::Inside,
            "",
        ),
        field(
            "pass.cut.judges[]",
            text!("One judge a line"),
            Kind::Inside,
            "",
        ),
        field(
            "pass.cut.judges[][]",
            text!("One judge a line"),
            Kind::Inside,
            "",
        ),
        field(
            "variants",
            text!("Each candidate gets other values, loads and customers"),
            Kind::Inside,
            "",
        ),
    ],
};

/// A field of the form with what stands in it and what is wrong with it.
pub fn row(path: &'static str, value: Value, told: &[Told], edit: Callback<Edit>) -> Html {
    let Some(field) = ASSESSMENT.field_at(path) else {
        return Html::default();
    };
    let here = told.iter().filter(|told| told.path == path);
    let problems: Vec<String> = here.map(|told| told.words.clone()).collect();
    html! {
        <FieldRow {path} label={field.label()} kind={field.kind} hint={field.hint()} {value} {problems} {edit} />
    }
}

/// What is wrong with an assessment, in the words of its form.
pub fn told(file: &AssessmentFile) -> Vec<Told> {
    let text = write::write(file).unwrap_or_default();
    let problems = sitting::assessment("", &text).err();
    let words = Words {
        form: &ASSESSMENT,
        whole: &Value::Null,
        called: &|_| None,
    };
    let mut all: Vec<Told> = Vec::new();
    for problem in problems.into_iter().flat_map(|error| error.problems) {
        let mut told = words.told(&problem);
        if problem.path == "id" {
            if file.title.trim().is_empty() {
                // The title's own problem says it.
                continue;
            }
            told.path = "title".to_owned();
            told.words =
                say!("needs a letter from a to z or a digit, for the names of files").to_owned();
        }
        all.push(told);
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::assessments::given::Given;
    use crate::app::assessments::given::name_of;
    use crate::records::seal::Hash;

    fn lines(change: fn(&mut AssessmentFile)) -> Vec<String> {
        let mut file = Given::new(Hash([5; 32])).file;
        file.title = "Autumn".to_owned();
        change(&mut file);
        file.id = name_of(&file.title);
        told(&file).iter().map(Told::line).collect()
    }

    #[test]
    fn what_is_missing_is_told_by_the_forms_own_labels_and_units() {
        assert_eq!(lines(|_| ()), Vec::<String>::new());
        assert_eq!(
            lines(|file| file.title = String::new()),
            ["Title: must not be empty"]
        );
        assert!(lines(|file| file.title = "!".to_owned())[0].contains("from a to z"));
        assert_eq!(
            lines(|file| file.pass.fixed_share = 1.5),
            ["Machines put right: must lie between 0 and 100 %"]
        );
        assert_eq!(
            lines(|file| file.time_limit_min = 0.0),
            ["Time for all jobs: must lie between 1 and 10000 minutes"]
        );
        assert_eq!(
            lines(|file| file.erase_after_months = Some(0)),
            ["Results are erased after: must lie between 1 and 240 months"]
        );
        let many = lines(|file| file.jobs[1].n = 900);
        assert!(
            many.iter()
                .any(|line| line.starts_with("How many (no. 2): ")),
            "{many:?}"
        );
    }
}
