//! What people ruled on results, with name, day and reason: a job voided for everybody, a decision
//! overridden after an appeal. The records themselves stay as they are.

use serde::Deserialize;
use serde::Serialize;

/// Longest text taken, letters.
const LONGEST: usize = 400;

/// One ruling.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ruling {
    /// About what.
    pub about: About,
    /// What holds from now on; for a job always `void`.
    pub holds: String,
    /// Who ruled.
    pub by: String,
    /// Day, such as `2031-03-04`.
    pub day: String,
    /// Why.
    pub why: String,
}

/// What a ruling is about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum About {
    /// A job, for everybody.
    Job(String),
    /// A candidate's decision.
    Candidate(String),
}

impl Ruling {
    /// A ruling that can stand: somebody, some day, for some reason.
    ///
    /// # Errors
    /// What is missing.
    pub fn new(
        about: About,
        holds: &str,
        by: &str,
        day: &str,
        why: &str,
    ) -> Result<Self, &'static str> {
        let plain = |text: &str| {
            text.trim()
                .chars()
                .filter(|c| !c.is_control())
                .take(LONGEST)
                .collect::<String>()
        };
        let (by, why) = (plain(by), plain(why));
        if holds.is_empty() {
            return Err("What holds? Choose one.");
        }
        if by.is_empty() {
            return Err("Who rules? Give a name.");
        }
        if why.is_empty() {
            return Err("Why? A ruling stands with its reason.");
        }
        Ok(Self {
            about,
            holds: holds.to_owned(),
            by,
            day: day.to_owned(),
            why,
        })
    }
}

/// The job counts for nobody.
pub fn is_void(rulings: &[Ruling], job: &str) -> bool {
    rulings
        .iter()
        .any(|ruling| matches!(&ruling.about, About::Job(name) if name == job))
}

/// The last ruling on a candidate.
pub fn of_candidate<'a>(rulings: &'a [Ruling], candidate: &str) -> Option<&'a Ruling> {
    rulings
        .iter()
        .rev()
        .find(|ruling| matches!(&ruling.about, About::Candidate(name) if name == candidate))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ruling_needs_a_name_and_a_reason_and_the_last_one_holds() {
        let about = || About::Candidate("c-1".to_owned());
        assert!(Ruling::new(about(), "passed", " ", "2031-03-04", "why").is_err());
        assert!(Ruling::new(about(), "passed", "N. Judge", "2031-03-04", "").is_err());
        assert!(Ruling::new(about(), "", "N. Judge", "2031-03-04", "why").is_err());
        let first = Ruling::new(about(), "not yet", "N. Judge", "2031-03-04", "as computed")
            .expect("stands");
        let second = Ruling::new(
            about(),
            "passed",
            "O. Judge",
            "2031-03-05",
            "heard on appeal",
        )
        .expect("stands");
        let void = Ruling::new(
            About::Job("j1".to_owned()),
            "void",
            "O. Judge",
            "2031-03-05",
            "wrong file",
        )
        .expect("stands");
        let all = [first, second.clone(), void];
        assert_eq!(of_candidate(&all, "c-1"), Some(&second));
        assert!(is_void(&all, "j1") && !is_void(&all, "c-1"));
    }
}
