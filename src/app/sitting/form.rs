//! What a candidate fills in before the start, and whether it fits together.

use std::collections::BTreeMap;

use crate::records::seal::StartCode;
use crate::say;

/// Longest number or name, letters.
const LONGEST: usize = 120;

/// As it is typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Form {
    /// Number or pseudonym.
    pub candidate: String,
    /// Name; may stay empty.
    pub name: String,
    /// Code released at the start.
    pub release: String,
    /// Start code from the slip.
    pub code: String,
    /// The four letters beside it.
    pub check: String,
    /// Agrees to what is recorded.
    pub agreed: bool,
}

/// Filled in so that one can begin.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Filled {
    /// Number or pseudonym.
    pub candidate: String,
    /// Name, if one was given.
    pub name: Option<String>,
    /// Code released at the start.
    pub release: String,
    /// Start code; none for practice.
    pub code: Option<String>,
    /// Extra time, min.
    pub extra_min: u32,
}

impl Form {
    /// Reads it; what is wrong comes by field.
    ///
    /// # Errors
    /// A remedy for each field that is wrong.
    pub fn read(&self) -> Result<Filled, BTreeMap<&'static str, String>> {
        let mut wrong = BTreeMap::new();
        let candidate = self.candidate.trim();
        if candidate.is_empty() {
            wrong.insert(
                "candidate",
                say!("Give the number on your slip, or one of your own for practice.").to_owned(),
            );
        }
        for (field, text) in [
            ("candidate", candidate),
            ("name", &self.name),
            ("release", &self.release),
        ] {
            if text.chars().count() > LONGEST || text.chars().any(char::is_control) {
                wrong.insert(field, say!("At most {n} letters on one line.", n = LONGEST));
            }
        }
        let (mut code, mut extra_min) = (None, 0);
        if self.is_sealed() {
            match StartCode::read(&self.code) {
                Err(why) => {
                    wrong.insert("code", format!("{why}."));
                }
                Ok(read) => match read.extra_min(candidate, &self.check) {
                    Some(extra) => (code, extra_min) = (Some(read.to_string()), extra),
                    None => {
                        let words = say!(
                            "The letters do not go with the start code and the number: compare all three with your slip."
                        );
                        wrong.insert("check", words.to_owned());
                    }
                },
            }
            if self.release.trim().is_empty() {
                wrong.insert(
                    "release",
                    say!("Your instructor tells this word when all begin.").to_owned(),
                );
            }
        }
        if !self.agreed {
            wrong.insert(
                "agreed",
                say!("Without this nothing can be recorded, and so nothing assessed.").to_owned(),
            );
        }
        if wrong.is_empty() {
            let name = self.name.trim();
            Ok(Filled {
                candidate: candidate.to_owned(),
                name: (!name.is_empty()).then(|| name.to_owned()),
                release: self.release.trim().to_owned(),
                code,
                extra_min,
            })
        } else {
            Err(wrong)
        }
    }

    /// It is to count: a start code or its letters were typed.
    pub fn is_sealed(&self) -> bool {
        !self.code.trim().is_empty() || !self.check.trim().is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::seal::AssessmentKey;

    fn form() -> Form {
        let code = AssessmentKey::new([3; 32]).start_code("autumn", "c-7");
        Form {
            candidate: " c-7 ".to_owned(),
            release: "lake".to_owned(),
            check: code.check_letters("c-7", 25),
            code: code.to_string().to_lowercase(),
            agreed: true,
            ..Form::default()
        }
    }

    #[test]
    fn a_slip_is_read_with_its_extra_time() {
        let filled = form().read().expect("fits");
        assert_eq!((filled.candidate.as_str(), filled.extra_min), ("c-7", 25));
        assert!(filled.code.is_some() && filled.name.is_none());
    }

    #[test]
    fn somebody_elses_slip_or_a_forgotten_word_is_told_beside_its_field() {
        let other = Form {
            candidate: "c-8".to_owned(),
            ..form()
        };
        assert!(
            other
                .read()
                .expect_err("another number")
                .contains_key("check")
        );
        let early = Form {
            release: String::new(),
            ..form()
        };
        assert!(early.read().expect_err("too early").contains_key("release"));
        let silent = Form {
            agreed: false,
            candidate: "a\nb".to_owned(),
            ..form()
        };
        let wrong = silent.read().expect_err("two things");
        assert!(wrong.contains_key("agreed") && wrong.contains_key("candidate"));
    }

    #[test]
    fn without_a_code_it_is_practice() {
        let filled = Form {
            candidate: "me".to_owned(),
            agreed: true,
            ..Form::default()
        }
        .read();
        assert_eq!(filled.expect("fits").code, None);
    }
}
