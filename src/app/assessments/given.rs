//! An assessment as its instructor keeps it: the file, the secret key, and who sits it.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::app::store::StorageError;
use crate::app::store::Store;
use crate::assess::assessment_file::ASSESSMENT_FORMAT;
use crate::assess::assessment_file::AidsFile;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::assessment_file::CallerFile;
use crate::assess::assessment_file::CutFile;
use crate::assess::assessment_file::PassFile;
use crate::assess::assessment_file::RefreshFile;
use crate::assess::assessment_file::SlotFile;
use crate::assess::assessment_file::VariantsFile;
use crate::records::room_pause;
use crate::records::seal::AssessmentKey;
use crate::records::seal::EXTRA_STEP_MIN;
use crate::records::seal::Hash;
use crate::records::seal::MOST_EXTRA_MIN;
use crate::say;
use crate::scenario::read::read_back;
use crate::text;

/// Keys start so.
pub const PREFIX: &str = "given/";

/// What is kept.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Given {
    /// The file.
    pub file: AssessmentFile,
    /// Its key.
    pub key: Hash,
    /// Candidates as they were typed, one a line: number, and extra minutes after a comma.
    pub candidates: String,
    /// Its file, link, course or slips were given out, so that results may stand on it as it is.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub given_out: bool,
}

/// A candidate's slip.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// Number.
    pub candidate: String,
    /// Start code.
    pub code: String,
    /// The four letters beside it.
    pub check: String,
}

impl Given {
    /// A new one, with rules that are good for most.
    pub fn new(key: Hash) -> Self {
        let slot = |level| SlotFile {
            level: Some(level),
            skills: Vec::new(),
            machines: Vec::new(),
            from: Vec::new(),
            n: 2,
        };
        let file = AssessmentFile {
            format: ASSESSMENT_FORMAT.to_owned(),
            id: String::new(),
            title: String::new(),
            time_limit_min: 180.0,
            aids: AidsFile {
                data_sheet: true,
                wiring: true,
                handbook: true,
                pause: false,
            },
            jobs: vec![slot(1), slot(2), slot(3)],
            variants: usual_variants(),
            pass: PassFile {
                cut: CutFile::Fixed(65.0),
                border: 5.0,
                no_critical: true,
                fixed_share: 0.5,
                parts: BTreeMap::from([("safety".to_owned(), 0.7)]),
            },
            refresh: RefreshFile::default(),
            erase_after_months: None,
            room_pause: Some(room_pause::anchor(&AssessmentKey::new(key.0))),
        };
        Self {
            file,
            key,
            candidates: String::new(),
            given_out: false,
        }
    }

    /// One to go on with from a file, under a key of its own.
    pub fn of(key: Hash, file: AssessmentFile) -> Self {
        let pauses = file.room_pause.is_some();
        let given = Self {
            file,
            ..Self::new(key)
        };
        given.with_pauses(pauses)
    }

    /// It after a change on its form, when `others` are kept beside it. A result stands on every letter
    /// of what was given out, so a change of that makes a new one under another name and leaves it be.
    pub fn changed(mut self, before: &Self, others: &[Self]) -> Self {
        let is_new = before.given_out && self.file != before.file;
        let name = name_of(&self.file.title);
        if is_new || (self.file.title != before.file.title && !name.is_empty()) {
            let is_taken = |id: &str| {
                let here = is_new && before.file.id == id;
                here || others.iter().any(|other| other.file.id == id)
            };
            self.file.id = free_name(&name, is_taken);
            self.given_out &= !is_new;
        }
        self
    }

    /// The same with pauses of the whole room, or without.
    pub fn with_pauses(mut self, pauses: bool) -> Self {
        let anchor = || room_pause::anchor(&AssessmentKey::new(self.key.0));
        self.file.room_pause = pauses.then(anchor);
        self
    }

    /// Reads what was kept; `None` for anything else.
    pub fn read(text: &str) -> Option<Self> {
        read_back(text)
    }

    /// Keeps it under its assessment's name.
    ///
    /// # Errors
    /// When the browser refuses or has no room.
    pub async fn keep(&self) -> Result<(), StorageError> {
        let text = serde_json::to_string(self).map_err(|_| StorageError::Refused)?;
        Store::open().await.put(&self.stored_at(), &text).await
    }

    /// What it is kept under.
    pub fn stored_at(&self) -> String {
        format!("{PREFIX}{}", self.file.id)
    }

    /// All that are kept, by name.
    pub async fn all() -> Vec<Self> {
        // A list that cannot be read is an empty one.
        let texts = Store::open().await.all(PREFIX).await.unwrap_or_default();
        texts
            .iter()
            .filter_map(|(_, text)| Self::read(text))
            .collect()
    }

    /// The file's text, as it is given to candidates.
    pub fn text(&self) -> String {
        crate::scenario::write::write(&self.file).unwrap_or_default()
    }

    /// A slip for each candidate.
    ///
    /// # Errors
    /// The line that cannot be read, and what would be right.
    pub fn slips(&self) -> Result<Vec<Slip>, String> {
        let key = AssessmentKey::new(self.key.0);
        let mut slips: Vec<Slip> = Vec::new();
        for line in self
            .candidates
            .lines()
            .filter(|line| !line.trim().is_empty())
        {
            let (candidate, extra) = line.split_once(',').unwrap_or((line, "0"));
            let candidate = candidate.trim();
            let extra_min: u32 = extra.trim().parse().map_err(|_| remedy(line))?;
            let fits = extra_min <= MOST_EXTRA_MIN && extra_min.is_multiple_of(EXTRA_STEP_MIN);
            if !fits || candidate.is_empty() {
                return Err(remedy(line));
            }
            if slips.iter().any(|slip| slip.candidate == candidate) {
                return Err(say!(
                    "“{candidate}” stands twice: each candidate has one slip.",
                    candidate
                ));
            }
            let code = key.start_code(&self.file.id, candidate);
            slips.push(Slip {
                check: code.check_letters(candidate, extra_min),
                code: code.to_string(),
                candidate: candidate.to_owned(),
            });
        }
        Ok(slips)
    }
}

fn remedy(line: &str) -> String {
    say!(
        "“{line}”: a line is a number, or a number, a comma and extra minutes in steps of {step}, at most {most}.",
        line,
        step = EXTRA_STEP_MIN,
        most = MOST_EXTRA_MIN
    )
}

/// Values and people vary; how hard a job is does not. Design choice.
pub fn usual_variants() -> VariantsFile {
    let caller = |name: &str, home: &str| CallerFile {
        name: name.to_owned(),
        home: home.to_owned(),
    };
    VariantsFile {
        water_mpa: Some([0.15, 0.45]),
        room_degc: Some([12.0, 28.0]),
        load_share: Some([0.5, 1.0]),
        severity_share: Some([0.95, 1.0]),
        customers: vec![
            caller(text!("Mrs Alder"), text!("flat on the third floor")),
            caller(text!("Mr Birch"), text!("house at the end of the lane")),
            caller(
                text!("Mrs Cedar"),
                text!("ground floor, kitchen to the yard"),
            ),
            caller(text!("Mr Dogwood"), text!("two rooms above the bakery")),
        ],
        equal_faults: Vec::new(),
    }
}

/// A title as a stable name: lower case, digits and `_`.
pub fn name_of(title: &str) -> String {
    let words: Vec<String> = title
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    words.join("_")
}

/// The name, or the first of those with a number behind it, that is not taken.
pub fn free_name(name: &str, is_taken: impl Fn(&str) -> bool) -> String {
    let numbered = (2..).map(|n| format!("{name}_{n}"));
    let mut all = std::iter::once(name.to_owned()).chain(numbered);
    all.find(|name| !is_taken(name)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_given_out_stays_as_it_is_and_a_change_makes_a_new_one() {
        let titled = |given: &Given, title: &str| {
            let mut next = given.clone();
            next.file.title = title.to_owned();
            next
        };
        let blank = Given::new(Hash([5; 32]));
        let first = titled(&blank, "Autumn").changed(&blank, &[]);
        assert_eq!(first.file.id, "autumn");
        let second = titled(&blank, "Autumn").changed(&blank, std::slice::from_ref(&first));
        assert_eq!(second.file.id, "autumn_2");
        let out = Given {
            given_out: true,
            ..first.clone()
        };
        assert_eq!(out.clone().changed(&first, &[]), out);
        // Who sits it is no part of the file.
        let mut more = out.clone();
        more.candidates = "c-1".to_owned();
        assert_eq!(more.clone().changed(&out, &[]), more);
        let mut next = out.clone();
        next.file.pass.border = 7.0;
        let next = next.changed(&out, &[]);
        assert_eq!((next.file.id.as_str(), next.given_out), ("autumn_2", false));
        let renamed = titled(&next, "").changed(&next, std::slice::from_ref(&out));
        assert_eq!(renamed.file.id, "autumn_2");
    }

    #[test]
    fn each_candidate_has_a_slip_of_their_own_and_extra_time_does_not_show() {
        let mut given = Given::new(Hash([5; 32]));
        given.file.id = "autumn".to_owned();
        given.candidates = "c-1\n\n c-2 , 30\n".to_owned();
        let slips = given.slips().expect("fits");
        assert_eq!(slips.len(), 2);
        assert!(
            slips
                .iter()
                .all(|slip| slip.check.len() == 4 && slip.code.len() == 19)
        );
        for wrong in ["c-1\nc-1", "c-1,7", "c-1,x", ",5", "c-1,900"] {
            given.candidates = wrong.to_owned();
            assert!(given.slips().is_err(), "{wrong}");
        }
    }

    #[test]
    fn a_file_worked_on_anew_has_the_pauses_of_its_new_key() {
        let old = Given::new(Hash([5; 32]));
        let new = Given::of(Hash([6; 32]), old.file.clone());
        let anchor = |given: &Given| room_pause::anchor(&AssessmentKey::new(given.key.0));
        assert_eq!(new.file.room_pause, Some(anchor(&new)));
        assert_ne!(new.file.room_pause, old.file.room_pause);
        let without = old.with_pauses(false);
        assert_eq!(Given::of(Hash([6; 32]), without.file).file.room_pause, None);
    }

    #[test]
    fn a_new_one_lacks_its_title_alone() {
        let mut given = Given::new(Hash([5; 32]));
        let wrong = crate::app::sitting::assessment("a", &given.text()).expect_err("no title");
        let paths: Vec<&str> = wrong.problems.iter().map(|p| p.path.as_str()).collect();
        assert_eq!(paths, ["id", "title"]);
        given.file.title = "Autumn & more".to_owned();
        given.file.id = name_of(&given.file.title);
        assert_eq!(given.file.id, "autumn_more");
        assert!(crate::app::sitting::assessment("a", &given.text()).is_ok());
        let kept = serde_json::to_string(&given).expect("writes");
        assert_eq!(Given::read(&kept), Some(given));
    }
}
