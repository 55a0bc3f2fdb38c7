//! A training set being made: its words, its jobs in order, kept in this browser from the first letter
//! on.

use serde::Deserialize;
use serde::Serialize;
use serde_json::Value;

use crate::app::desk::draft::Draft;
use crate::app::desk::fields::JOB;
use crate::app::desk::form_table::FormTable;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::Section;
use crate::app::desk::form_table::field;
use crate::app::desk::told::Words;
use crate::app::desk::told::called;
use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::edit;
use crate::scenario::problem::Problem;
use crate::scenario::read::read_back;
use crate::scenario::set_file::SET_FORMAT;
use crate::scenario::set_file::SetFile;
use crate::scenario::share;
use crate::scenario::write;
use crate::text;

/// The form of a training set.
pub const SET: FormTable = FormTable {
    sections: &[Section {
        title: text!("The set"),
        fields: &[
            field("title", text!("Title"), Kind::Line, ""),
            field(
                "about",
                text!("What it is for"),
                Kind::Text,
                text!("A sentence or two for those who work it."),
            ),
            field(
                "mastered_at_marks",
                text!("The next job opens from"),
                Kind::Number(text!("marks of 100")),
                "",
            ),
        ],
    }],
    inside: &[field("jobs", text!("Jobs"), Kind::Inside, "")],
};

/// What it is kept under: one is made at a time.
pub const SET_KEY: &str = "set-draft";
/// Marks from which a job counts as mastered, unless said otherwise. Design choice.
const MASTERED: f64 = 80.0;

/// A job of the set.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Chosen {
    /// Name of a job that ships, or of a draft.
    pub id: String,
    /// It is a draft of this browser.
    pub is_draft: bool,
}

/// The set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SetDraft {
    /// Title.
    pub title: String,
    /// What it is for.
    pub about: String,
    /// Marks of 100 from which the next job opens.
    pub mastered_at_marks: f64,
    /// The jobs in order.
    pub jobs: Vec<Chosen>,
}

impl Default for SetDraft {
    fn default() -> Self {
        Self {
            title: String::new(),
            about: String::new(),
            mastered_at_marks: MASTERED,
            jobs: Vec::new(),
        }
    }
}

/// A text as a set being made is kept.
pub fn is_set_readable(text: &str) -> bool {
    read_back::<SetDraft>(text).is_some()
}

impl SetDraft {
    /// The one that is being made.
    pub async fn find() -> Self {
        // What cannot be read is begun anew.
        let text = Store::open().await.get(SET_KEY).await.ok().flatten();
        text.and_then(|text| read_back(&text)).unwrap_or_default()
    }

    /// Keeps it.
    ///
    /// # Errors
    /// When the browser refuses or has no room.
    pub async fn keep(&self) -> Result<(), StorageError> {
        let text = serde_json::to_string(self).map_err(|_| StorageError::Refused)?;
        Store::open().await.put(SET_KEY, &text).await
    }

    /// Moves a job by one place, up or down.
    pub fn moved(&self, index: usize, is_up: bool) -> Self {
        let mut next = self.clone();
        let to = if is_up {
            index.checked_sub(1)
        } else {
            Some(index + 1).filter(|to| *to < next.jobs.len())
        };
        if let Some(to) = to {
            next.jobs.swap(index, to);
        }
        next
    }

    /// Title of a job, if there still is such a job.
    pub fn title_of(job: &Chosen, drafts: &[Draft]) -> Option<String> {
        if job.is_draft {
            let draft = drafts.iter().find(|draft| draft.id == job.id)?;
            return Some(draft.job.title.clone());
        }
        let shipped = scenario::job_files().unwrap_or_default();
        let found = shipped.iter().find(|shipped| shipped.id == job.id);
        found.map(|found| worded(&found.file.title).into_owned())
    }

    /// The set as a file, drafts as they now are.
    ///
    /// # Errors
    /// All that is wrong with it, each in a sentence.
    pub fn file(&self, drafts: &[Draft]) -> Result<SetFile, Vec<String>> {
        let mut set = SetFile {
            format: SET_FORMAT.to_owned(),
            title: self.title.clone(),
            about: self.about.clone(),
            mastered_at_marks: self.mastered_at_marks,
            jobs: Vec::new(),
            files: Default::default(),
            sealed: Default::default(),
        };
        let mut told = Vec::new();
        for job in &self.jobs {
            if !job.is_draft {
                set.jobs.push(job.id.clone());
                continue;
            }
            match drafts.iter().find(|draft| draft.id == job.id) {
                None => told.push(
                    say!("A draft of this set is no longer in this browser: take it out.")
                        .to_owned(),
                ),
                Some(draft) => {
                    let name = share::name_of(&draft.job);
                    set.jobs.push(name.clone());
                    set.files.insert(name, draft.job.clone());
                }
            }
        }
        let text = write::write(&set).unwrap_or_default();
        match scenario::set_from_text("set", &text) {
            Ok(_) if told.is_empty() => Ok(set),
            Ok(_) => Err(told),
            Err(error) => {
                let problems = error.problems.iter();
                told.extend(problems.map(|problem| in_words(problem, &set)));
                Err(told)
            }
        }
    }
}

/// What is wrong with the set, or with a draft in it, as its form says it.
fn in_words(problem: &Problem, set: &SetFile) -> String {
    let draft = set
        .files
        .iter()
        .find(|(name, _)| problem.file.ends_with(&format!("files.{name}")));
    let Some((_, job)) = draft else {
        let words = Words {
            form: &SET,
            whole: &Value::Null,
            called: &|name| Some(set.files.get(name)?.title.clone()),
        };
        return words.told(problem).line();
    };
    let whole = edit::as_value(job);
    let words = Words {
        form: &JOB,
        whole: &whole,
        called: &|name| called(&job.machine, name),
    };
    let problem = words.told(problem).line();
    match job.title.trim() {
        "" => say!("A draft without a title. {problem}", problem),
        title => say!("Draft “{title}”. {problem}", title, problem),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::draft::blank;

    fn chosen(id: &str, is_draft: bool) -> Chosen {
        let id = id.to_owned();
        Chosen { id, is_draft }
    }

    #[test]
    fn a_job_moves_up_and_down_and_no_further() {
        let set = SetDraft {
            jobs: vec![chosen("a", false), chosen("b", false)],
            ..SetDraft::default()
        };
        let order = |set: &SetDraft| set.jobs.iter().map(|j| j.id.clone()).collect::<String>();
        assert_eq!(order(&set.moved(0, false)), "ba");
        assert_eq!(order(&set.moved(1, true)), "ba");
        assert_eq!(order(&set.moved(0, true)), "ab");
        assert_eq!(order(&set.moved(1, false)), "ab");
    }

    #[test]
    fn a_draft_travels_with_the_set_and_one_that_lacks_something_is_told() {
        let shipped = &scenario::job_files().expect("sound")[0].file;
        let draft = |job| Draft {
            id: "d1".to_owned(),
            job,
            saved_ms: 0.0,
        };
        let set = SetDraft {
            title: "Two".to_owned(),
            jobs: vec![chosen("no_water", false), chosen("d1", true)],
            ..SetDraft::default()
        };
        let file = set.file(&[draft(shipped.clone())]).expect("sound");
        assert_eq!((file.jobs.len(), file.files.len()), (2, 1));
        let told = set.file(&[draft(blank())]).expect_err("no title");
        let lines = ["Title: must not be empty", "Complaint: must not be empty"];
        for line in lines {
            let line = format!("A draft without a title. {line}");
            assert!(told.contains(&line), "{told:?}");
        }
        assert!(!told.iter().any(|why| why.contains('"')), "{told:?}");
        let told = set.file(&[]).expect_err("gone");
        assert!(
            told.iter().any(|why| why.contains("take it out")),
            "{told:?}"
        );
    }
}
