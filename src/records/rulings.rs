//! What people ruled on results, with name, day and reason: a job voided for everybody, a decision
//! overridden after an appeal. The records themselves stay as they are.

use serde::Deserialize;
use serde::Serialize;

use crate::say;

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
    /// Name of the assessment it belongs to, empty for practice. Files of earlier versions name none:
    /// such a ruling holds in any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assessment: Option<String>,
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

/// What a ruling cannot stand without.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// Of which assessment.
    Assessment,
    /// What holds from now on.
    Holds,
    /// Who rules.
    By,
    /// Why.
    Why,
}

impl Missing {
    /// In words for the person at the form.
    pub fn words(self) -> &'static str {
        match self {
            Self::Assessment => say!("Of which assessment? Choose one."),
            Self::Holds => say!("What holds? Choose one."),
            Self::By => say!("Who rules? Give a name."),
            Self::Why => say!("Why? A ruling stands with its reason."),
        }
    }
}

impl Ruling {
    /// A ruling that can stand: it says something, by somebody, some day, for some reason.
    ///
    /// # Errors
    /// All that is missing.
    pub fn new(
        about: About,
        holds: &str,
        by: &str,
        day: &str,
        why: &str,
    ) -> Result<Self, Vec<Missing>> {
        let plain = |text: &str| {
            text.trim()
                .chars()
                .filter(|c| !c.is_control())
                .take(LONGEST)
                .collect::<String>()
        };
        let (by, why) = (plain(by), plain(why));
        let missing: Vec<Missing> = [
            (holds, Missing::Holds),
            (&by, Missing::By),
            (&why, Missing::Why),
        ]
        .into_iter()
        .filter_map(|(text, missing)| text.is_empty().then_some(missing))
        .collect();
        if !missing.is_empty() {
            return Err(missing);
        }
        Ok(Self {
            about,
            holds: holds.to_owned(),
            by,
            day: day.to_owned(),
            why,
            assessment: None,
        })
    }

    /// The same, of this assessment alone; an empty name is practice.
    pub fn within(mut self, assessment: &str) -> Self {
        self.assessment = Some(assessment.to_owned());
        self
    }

    /// It holds in this assessment; an empty name is practice.
    pub fn holds_in(&self, assessment: &str) -> bool {
        self.assessment
            .as_deref()
            .is_none_or(|own| own == assessment)
    }
}

/// Both lists as one by day, each ruling once; on one day those of `more` come later.
pub fn merged(known: &[Ruling], more: &[Ruling]) -> Vec<Ruling> {
    let mut all = known.to_vec();
    for ruling in more {
        if !all.contains(ruling) {
            all.push(ruling.clone());
        }
    }
    all.sort_by(|a, b| a.day.cmp(&b.day));
    all
}

/// The job counts for nobody in this assessment.
pub fn is_void(rulings: &[Ruling], job: &str, assessment: &str) -> bool {
    rulings.iter().any(|ruling| {
        matches!(&ruling.about, About::Job(name) if name == job) && ruling.holds_in(assessment)
    })
}

/// The last ruling on a candidate in this assessment.
pub fn of_candidate<'a>(
    rulings: &'a [Ruling],
    candidate: &str,
    assessment: &str,
) -> Option<&'a Ruling> {
    rulings.iter().rev().find(|ruling| {
        matches!(&ruling.about, About::Candidate(name) if name == candidate)
            && ruling.holds_in(assessment)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ruling_needs_a_name_and_a_reason_and_the_last_one_holds() {
        let about = || About::Candidate("c-1".to_owned());
        let missing = |holds, by, why| Ruling::new(about(), holds, by, "2031-03-04", why).err();
        assert_eq!(missing("passed", " ", "why"), Some(vec![Missing::By]));
        assert_eq!(missing("passed", "N. Judge", ""), Some(vec![Missing::Why]));
        assert_eq!(
            missing("", "", ""),
            Some(vec![Missing::Holds, Missing::By, Missing::Why])
        );
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
        assert_eq!(of_candidate(&all, "c-1", "a"), Some(&second));
        assert!(is_void(&all, "j1", "a") && !is_void(&all, "c-1", "a"));
    }

    #[test]
    fn a_ruling_holds_in_its_own_assessment_and_one_of_an_older_file_in_any() {
        let one = |about| Ruling::new(about, "void", "N. Judge", "2031-03-04", "why");
        let job = || About::Job("j1".to_owned());
        let own = [one(job()).expect("stands").within("autumn")];
        assert!(is_void(&own, "j1", "autumn"));
        assert!(!is_void(&own, "j1", "spring") && !is_void(&own, "j1", ""));
        let person = || About::Candidate("c-1".to_owned());
        let practice = [one(person()).expect("stands").within("")];
        assert!(of_candidate(&practice, "c-1", "").is_some());
        assert_eq!(of_candidate(&practice, "c-1", "autumn"), None);
        // As earlier versions wrote it.
        let text = r#"{"about":{"job":"j1"},"holds":"void","by":"N. Judge","day":"2031-03-04","why":"why"}"#;
        let old: Ruling = serde_json::from_str(text).expect("reads");
        assert!(is_void(std::slice::from_ref(&old), "j1", "spring"));
        assert_eq!(serde_json::to_string(&old).expect("writes"), text);
        let named = serde_json::to_string(&own[0]).expect("writes");
        assert_eq!(
            serde_json::from_str::<Ruling>(&named).ok().as_ref(),
            own.first()
        );
    }

    #[test]
    fn rulings_of_two_files_are_one_list_by_day_with_nothing_lost_and_nothing_twice() {
        let one = |holds: &str, day: &str| {
            let about = About::Candidate("c-1".to_owned());
            Ruling::new(about, holds, "N. Judge", day, "heard").expect("stands")
        };
        let (early, late) = (one("not yet", "2031-03-04"), one("passed", "2031-03-09"));
        let same_day = one("border: more jobs", "2031-03-09");
        let known = [early.clone(), late.clone()];
        assert_eq!(merged(&known, &known), known);
        let (first, second) = (std::slice::from_ref(&late), std::slice::from_ref(&early));
        assert_eq!(merged(first, second), known);
        let all = merged(&known, std::slice::from_ref(&same_day));
        assert_eq!(all, [early, late, same_day.clone()]);
        assert_eq!(of_candidate(&all, "c-1", "a"), Some(&same_day));
    }
}
